//! One line of the cut list: a part, how many, and its three sizes with where they come from. Which parts there are is
//! left to `parts.rs`.

use core::fmt;

use super::sum::Sum;
use crate::length::{Length, RoundingMode};
use crate::tape::{Reading, Tape, TapeError};

/// How many there are of a part, and whether they are mirror images.
///
/// ```
/// use scantling::Pieces;
///
/// assert_eq!(Pieces::Alike(4).to_string(), "4");
/// assert_eq!((Pieces::Mirrored(1).to_string(), Pieces::Mirrored(1).count()), ("1 left + 1 right".into(), 2));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Pieces {
    /// So many, one like the other.
    Alike(u32),
    /// So many for the left and as many for the right, mirror images of each other.
    Mirrored(u32),
}

impl Pieces {
    /// How many there are in all.
    ///
    /// ```
    /// assert_eq!(scantling::Pieces::Mirrored(2).count(), 4);
    /// ```
    #[must_use]
    pub const fn count(self) -> u64 {
        match self {
            Self::Alike(count) => count as u64,
            Self::Mirrored(count) => 2 * count as u64,
        }
    }
}

impl fmt::Display for Pieces {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Alike(count) => write!(out, "{count}"),
            Self::Mirrored(count) => write!(out, "{count} left + {count} right"),
        }
    }
}

/// A part of a case.
///
/// ```
/// use scantling::{Case, Length, Pieces, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).plan()?;
/// let side = &plan.parts()[0];
/// assert_eq!((side.name(), side.pieces()), ("side", Pieces::Mirrored(1)));
/// assert_eq!((side.thickness(), side.width().total()?, side.length().total()?), (inches(3, 4), inches(12, 1), inches(72, 1)));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CasePart {
    pub(super) name: &'static str,
    pub(super) pieces: Pieces,
    pub(super) thickness: Length,
    pub(super) width: Sum,
    pub(super) length: Sum,
    pub(super) sawn_width: Option<Sum>,
    pub(super) fits_inside: bool,
    /// Whether it is as wide as the sides, so that both its edges are flush with theirs.
    pub(super) is_flush: bool,
    pub(super) shows: &'static str,
    pub(super) is_panel: bool,
    pub(super) notch: Option<Notch>,
}

/// What is cut out of both front corners of a part that goes into stopped dadoes, so that its front edge passes the ends of
/// these.
///
/// ```
/// use scantling::{Case, Joint, Length, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let case = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).joined(Joint::Dado(inches(1, 4))).stopped(inches(1, 2));
/// let notch = case.plan()?.parts()[1].notch().unwrap();
/// assert_eq!((notch.deep, notch.back), (inches(1, 4), inches(1, 2)));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct Notch {
    /// Off each end, along the length.
    pub deep: Length,
    /// From the front edge as it is sawn, across the width.
    pub back: Length,
}

impl CasePart {
    /// A part that shows nothing in particular and fits inside nothing.
    pub(super) const fn new(name: &'static str, pieces: Pieces, thickness: Length, width: Sum, length: Sum) -> Self {
        Self {
            name,
            pieces,
            thickness,
            width,
            length,
            sawn_width: None,
            fits_inside: false,
            is_flush: false,
            shows: "",
            is_panel: false,
            notch: None,
        }
    }

    /// Of a sheet.
    pub(super) const fn panel(mut self) -> Self {
        self.is_panel = true;
        self
    }

    pub(super) const fn notched(mut self, notch: Option<Notch>) -> Self {
        self.notch = notch;
        self
    }

    pub(super) const fn inside(mut self) -> Self {
        self.fits_inside = true;
        self
    }

    pub(super) const fn showing(mut self, shows: &'static str) -> Self {
        self.shows = shows;
        self
    }

    /// What it is called.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// let names: Vec<_> = Case::new(3 * foot, 6 * foot, foot).plan()?.parts().iter().map(|part| part.name()).collect();
    /// assert_eq!(names, ["side", "bottom", "top"]);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn name(&self) -> &'static str {
        self.name
    }

    /// How many there are.
    ///
    /// ```
    /// use scantling::{Case, Length, Pieces, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.parts()[1].pieces(), Pieces::Alike(1));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn pieces(&self) -> Pieces {
        self.pieces
    }

    /// How thick it is.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.parts()[0].thickness(), Length::fraction(3, 4, Unit::Inch));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn thickness(&self) -> Length {
        self.thickness
    }

    /// How wide it is when it is finished, across the grain.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.parts()[0].width().to_string(), "overall depth 12\"");
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn width(&self) -> &Sum {
        &self.width
    }

    /// How long it is, with the grain; from long point to long point where it is mitered.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.parts()[0].length().to_string(), "overall height 72\"");
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn length(&self) -> &Sum {
        &self.length
    }

    /// How wide it is sawn, where edging makes up the rest.
    ///
    /// ```
    /// use scantling::{Case, Length, Shelves, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let case = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).shelves(Shelves::Equal(2)).edging(inches(1, 4));
    /// let plan = case.plan()?;
    /// let shelf = plan.parts().iter().find(|part| part.name() == "shelf").unwrap();
    /// assert_eq!(shelf.sawn_width().total()?, inches(47, 4));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn sawn_width(&self) -> &Sum {
        match &self.sawn_width {
            Some(sawn) => sawn,
            None => &self.width,
        }
    }

    /// Whether it goes inside another part, so that it must never be a hair too large.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// let plan = Case::new(3 * foot, 6 * foot, foot).plan()?;
    /// assert_eq!((plan.parts()[0].fits_inside(), plan.parts()[1].fits_inside()), (false, true));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn fits_inside(&self) -> bool {
        self.fits_inside
    }

    /// The face and the edge that show, to be marked before anything is cut.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.parts()[0].shows(), "outer face, front edge");
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn shows(&self) -> &'static str {
        self.shows
    }

    /// Whether it is a panel, which is cut from a sheet unless it is of solid wood. All else is cut from boards.
    ///
    /// ```
    /// use scantling::{Case, FaceFrame, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let case = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).frame(FaceFrame::new(inches(3, 4), inches(3, 2)));
    /// let plan = case.plan()?;
    /// let solid: Vec<_> = plan.parts().iter().filter(|part| !part.is_panel()).map(|part| part.name()).collect();
    /// assert_eq!(solid, ["stile", "rail"]);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn is_panel(&self) -> bool {
        self.is_panel
    }

    /// What is cut out of its front corners, where it goes into stopped dadoes.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.parts()[1].notch(), None);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn notch(&self) -> Option<Notch> {
        self.notch
    }

    /// A length of the part on a tape: rounded down where the part goes inside another, as the tape rounds otherwise.
    ///
    /// # Errors
    ///
    /// When the tape cannot show it.
    ///
    /// ```
    /// use scantling::{Case, Length, Tape, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).sheet(inches(29, 40)).plan()?; // 0.725 in
    /// let bottom = &plan.parts()[1];
    /// let reading = bottom.length_on(&Tape::sixteenths(), bottom.length().total()?)?;
    /// assert_eq!(reading.mark(), inches(69, 2)); // 34 11/20 in, and never 34 9/16
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn length_on(&self, tape: &Tape, length: Length) -> Result<Reading, TapeError> {
        rounding_down(self.fits_inside, tape).read(length)
    }

    /// A width of the part on a tape, finished or as sawn: rounded as its length is, but for a part as wide as the sides, which is
    /// flush with them in front and behind and ripped at one setting with them.
    ///
    /// # Errors
    ///
    /// When the tape cannot show it.
    ///
    /// ```
    /// use scantling::{Back, Case, Length, Tape, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let back = Back::Applied { thickness: inches(7, 32) };
    /// let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).back(back).plan()?;
    /// for part in &plan.parts()[..2] {
    ///     let reading = part.width_on(&Tape::sixteenths(), part.width().total()?)?;
    ///     assert_eq!(reading.mark(), inches(189, 16)); // side and bottom, 11 25/32 in
    /// }
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn width_on(&self, tape: &Tape, width: Length) -> Result<Reading, TapeError> {
        rounding_down(self.fits_inside && !self.is_flush, tape).read(width)
    }
}

const fn rounding_down(is_so: bool, tape: &Tape) -> Tape {
    if is_so { tape.mode(RoundingMode::Down) } else { *tape }
}
