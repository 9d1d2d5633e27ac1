//! Dimension chains that add up as printed: what is rounded is the running total, and each printed link is the difference
//! of two totals. And a check of chains printed elsewhere. How a figure is written is left to `print/`.

use alloc::vec::Vec;

use super::SpacingError;
use crate::length::Length;
use crate::tape::{Reading, Tape, TapeError};

/// Lengths along one line, end to end, as a drawing dimensions them.
///
/// Rounded one by one, links rarely add up to the rounded whole. Rounded so that they do, **two links that are equal can be
/// printed a graduation apart**: a chain is for places along one line, on a drawing or a wall, and never for a list of
/// like parts. Like parts are cut off one stop, at one size.
///
/// ```
/// use scantling::{Chain, Length, Tape, Unit};
///
/// // Three equal bays of 5 ft 1 in, for a drawing in sixteenths.
/// let bays = [Length::fraction(61, 3, Unit::Inch); 3];
/// let printed: Vec<_> = Chain::new(&bays).on(&Tape::sixteenths()).collect::<Result<_, _>>()?;
/// let sixteenths = |count| Length::fraction(count, 16, Unit::Inch);
/// assert!(printed.iter().map(|link| link.printed()).eq([325, 326, 325].map(sixteenths))); // 20 5/16, 20 3/8, 20 5/16 in
/// assert_eq!(printed[2].total().mark(), Length::new(61, Unit::Inch)); // each alone would be 20 5/16 in: 1/16 in short
/// # Ok::<(), scantling::TapeError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Chain<'a> {
    start: Length,
    links: &'a [Length],
}

/// One link of a chain as it is printed.
///
/// ```
/// use scantling::{Chain, Length, Tape, Unit};
///
/// let links = [Length::fraction(1, 3, Unit::Inch); 2];
/// let second = Chain::new(&links).on(&Tape::sixteenths()).nth(1).unwrap()?;
/// assert_eq!((second.number(), second.exact()), (2, links[1]));
/// assert_eq!(second.printed(), Length::fraction(6, 16, Unit::Inch));
/// assert_eq!(second.total().true_position(), Length::fraction(2, 3, Unit::Inch));
/// # Ok::<(), scantling::TapeError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ChainLink {
    number: usize,
    exact: Length,
    printed: Length,
    total: Reading,
}

/// A link that does not lead from one printed total to the next.
///
/// ```
/// use scantling::{Chain, Length, Unit};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// let slips = Chain::new(&[inches(20), inches(21)]).slips(&[inches(20), inches(40)])?;
/// assert_eq!((slips[0].number(), slips[0].printed(), slips[0].between()), (2, inches(21), inches(20)));
/// assert_eq!(slips[0].off(), inches(1));
/// # Ok::<(), scantling::SpacingError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ChainSlip {
    number: usize,
    printed: Length,
    between: Length,
    off: Length,
}

impl<'a> Chain<'a> {
    /// Links in their order along the line, from its datum.
    ///
    /// ```
    /// # use scantling::{Chain, Unit};
    /// assert_eq!(Chain::new(&[Unit::Foot.length(); 3]).checked_end(), Some(Unit::Yard.length()));
    /// ```
    #[must_use]
    pub const fn new(links: &'a [Length]) -> Self {
        Self { start: Length::ZERO, links }
    }

    /// The same chain, begun where the running total is this much already.
    ///
    /// ```
    /// # use scantling::{Chain, Unit};
    /// let links = [Unit::Foot.length(); 2];
    /// let chain = Chain::new(&links).starting_at(Unit::Foot.length());
    /// assert_eq!(chain.checked_end(), Some(Unit::Yard.length()));
    /// ```
    #[must_use]
    pub const fn starting_at(self, start: Length) -> Self {
        Self { start, ..self }
    }

    /// Where the chain ends, exactly; `None` when that cannot be held.
    ///
    /// Of links that are printed, it is what they add up to; compare it with the whole that is printed beside them.
    ///
    /// ```
    /// use scantling::{Chain, Length, Unit};
    ///
    /// let printed = [Length::fraction(325, 16, Unit::Inch); 3]; // three bays of 20 5/16 in in a whole of 61 in
    /// assert_eq!(Chain::new(&printed).checked_end(), Some(Length::fraction(975, 16, Unit::Inch))); // 60 15/16 in
    /// ```
    #[must_use]
    pub fn checked_end(&self) -> Option<Length> {
        self.links.iter().try_fold(self.start, |total, link| total.checked_add(*link))
    }

    /// The chain as it is printed for a tape: every running total is read on it, and a link is what lies between two of
    /// them. So printed links always add up to the printed totals.
    ///
    /// No total is off by more than half a graduation, and no link by more than a whole one (twice that in the modes that
    /// round up or down on purpose).
    ///
    /// ```
    /// use scantling::{Chain, Length, Tape, Unit};
    ///
    /// let links = [13, 17, 19].map(|sevenths| Length::fraction(sevenths, 7, Unit::Inch));
    /// let printed: Result<Length, _> =
    ///     Chain::new(&links).on(&Tape::eighths()).map(|link| link.map(|link| link.printed())).sum();
    /// assert_eq!(printed?, Length::new(7, Unit::Inch));
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Each link has those of [`Tape::read`] for the totals at its two ends.
    pub fn on(&self, tape: &Tape) -> impl Iterator<Item = Result<ChainLink, TapeError>> + Clone + use<'a> {
        let (tape, mut total, mut before) = (*tape, Some(self.start), None);
        self.links.iter().enumerate().map(move |(index, link)| {
            let out_of_range = TapeError::OutOfRange { position: *link };
            let near = total.ok_or(out_of_range);
            // Once it cannot be held, no later total can be known.
            total = total.and_then(|total| total.checked_add(*link));
            let near = before.take().map_or_else(|| tape.read(near?).map(|reading| reading.mark()), Ok)?;
            let reading = tape.read(total.ok_or(out_of_range)?)?;
            before = Some(reading.mark());
            let printed = reading.mark().checked_sub(near).ok_or(out_of_range)?;
            Ok(ChainLink { number: index + 1, exact: *link, printed, total: reading })
        })
    }

    /// Holds printed links to the running totals printed with them, one at the end of each link, and finds every link
    /// that does not lead from one total to the next.
    ///
    /// ```
    /// use scantling::{Chain, Length, Unit};
    ///
    /// // Feet, inches and sixteenths, as truss sheets print them.
    /// let fis = |feet: i64, inches: i64, sixteenths: i64| Length::fraction((feet * 12 + inches) * 16 + sixteenths, 16, Unit::Inch);
    /// let panels = [fis(6, 0, 14), fis(6, 0, 14), fis(6, 10, 5)];
    /// let totals = [fis(25, 0, 14), fis(31, 1, 11), fis(38, 0, 0)];
    /// let slips = Chain::new(&panels).starting_at(fis(19, 0, 0)).slips(&totals)?;
    /// assert_eq!(slips.len(), 1);
    /// assert_eq!((slips[0].number(), slips[0].off()), (2, fis(0, 0, 1))); // a sixteenth too long
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`SpacingError::TotalsMissing`] when there are not as many totals as links; [`SpacingError::OutOfRange`] when a
    /// difference cannot be held.
    pub fn slips(&self, totals: &[Length]) -> Result<Vec<ChainSlip>, SpacingError> {
        if totals.len() != self.links.len() {
            return Err(SpacingError::TotalsMissing { links: self.links.len(), totals: totals.len() });
        }
        let mut slips = Vec::new();
        let mut before = self.start;
        for (number, (printed, total)) in (1..).zip(self.links.iter().zip(totals)) {
            let out_of_range = SpacingError::OutOfRange { run: *total };
            let between = total.checked_sub(before).ok_or(out_of_range)?;
            let off = printed.checked_sub(between).ok_or(out_of_range)?;
            if !off.is_zero() {
                slips.push(ChainSlip { number, printed: *printed, between, off });
            }
            before = *total;
        }
        Ok(slips)
    }
}

impl ChainLink {
    /// Which link this is, counted from 1.
    ///
    /// ```
    /// # use scantling::{Chain, Tape, Unit};
    /// # let links = [Unit::Foot.length()];
    /// assert_eq!(Chain::new(&links).on(&Tape::sixteenths()).next().unwrap()?.number(), 1);
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub const fn number(&self) -> usize {
        self.number
    }

    /// How long it is.
    ///
    /// ```
    /// # use scantling::{Chain, Tape, Unit};
    /// # let links = [Unit::Foot.length()];
    /// assert_eq!(Chain::new(&links).on(&Tape::sixteenths()).next().unwrap()?.exact(), links[0]);
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub const fn exact(&self) -> Length {
        self.exact
    }

    /// How long to print it, so that the chain adds up.
    ///
    /// ```
    /// # use scantling::{Chain, Tape, Unit};
    /// # let links = [Unit::Foot.length()];
    /// assert_eq!(Chain::new(&links).on(&Tape::sixteenths()).next().unwrap()?.printed(), links[0]);
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub const fn printed(&self) -> Length {
        self.printed
    }

    /// The running total at its far end, as the tape shows it.
    ///
    /// ```
    /// # use scantling::{Chain, Tape, Unit};
    /// # let links = [Unit::Foot.length()];
    /// assert_eq!(Chain::new(&links).on(&Tape::sixteenths()).next().unwrap()?.total().mark(), links[0]);
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub const fn total(&self) -> Reading {
        self.total
    }
}

impl ChainSlip {
    /// Which link it is, counted from 1.
    ///
    /// ```
    /// # use scantling::{Chain, Unit};
    /// let slips = Chain::new(&[Unit::Foot.length()]).slips(&[Unit::Inch.length()])?;
    /// assert_eq!(slips[0].number(), 1);
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn number(&self) -> usize {
        self.number
    }

    /// How long the link is printed.
    ///
    /// ```
    /// # use scantling::{Chain, Unit};
    /// let slips = Chain::new(&[Unit::Foot.length()]).slips(&[Unit::Inch.length()])?;
    /// assert_eq!(slips[0].printed(), Unit::Foot.length());
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn printed(&self) -> Length {
        self.printed
    }

    /// How long it would have to be, from one printed total to the next.
    ///
    /// ```
    /// # use scantling::{Chain, Unit};
    /// let slips = Chain::new(&[Unit::Foot.length()]).slips(&[Unit::Inch.length()])?;
    /// assert_eq!(slips[0].between(), Unit::Inch.length());
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn between(&self) -> Length {
        self.between
    }

    /// How much too long it is printed, below zero for too short.
    ///
    /// ```
    /// # use scantling::{Chain, Unit};
    /// let slips = Chain::new(&[Unit::Inch.length()]).slips(&[Unit::Foot.length()])?;
    /// assert_eq!(slips[0].off(), -11 * Unit::Inch.length());
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn off(&self) -> Length {
        self.off
    }
}
