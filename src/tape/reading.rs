//! One position as a tape shows it: the graduation, and exactly what is left over. Choosing the
//! graduation is left to `mod.rs`, the words and signs for it to `print/`.

use core::fmt;

use super::Grain;
use crate::length::Length;

/// A position read on a tape: the graduation to mark, and the exact rest.
///
/// Always, to the last digit: `true_position() == mark() + leftover()`.
///
/// ```
/// use scantling::{Lean, Length, Tape, Unit};
///
/// // The second of five parts of a 72 in case.
/// let reading = Tape::sixteenths().read(Length::fraction(144, 5, Unit::Inch))?;
/// assert_eq!(reading.mark(), Length::fraction(461, 16, Unit::Inch)); // 28 13/16 in
/// assert_eq!(reading.leftover(), Length::fraction(-1, 80, Unit::Inch));
/// assert_eq!(reading.lean(), Lean::Shy);
/// # Ok::<(), scantling::TapeError>(())
/// ```
#[derive(Clone, Copy)]
pub struct Reading {
    mark: Length,
    offset: Length,
    // Kept as a count, not in lowest terms: most readers of a long row never ask for it.
    leftover: i128,
    grain: Grain,
}

/// On which side of its mark a true position lies.
///
/// ```
/// use scantling::{Lean, Length, Tape, Unit};
///
/// let lean = |num, den| Tape::eighths().read(Length::fraction(num, den, Unit::Inch)).unwrap().lean();
/// assert_eq!(lean(17, 1), Lean::DeadOn);
/// assert_eq!(lean(173, 10), Lean::Strong); // 17.3 in is past 17 1/4 in
/// assert_eq!(lean(177, 10), Lean::Shy); // 17.7 in is short of 17 3/4 in
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(clippy::exhaustive_enums)] // there are no others
pub enum Lean {
    /// Past the mark: the leftover is above zero.
    Strong,
    /// Short of the mark: the leftover is below zero.
    Shy,
    /// On the mark: nothing is left over.
    DeadOn,
}

impl Reading {
    /// From a leftover of so many grains. The caller answers for `mark + offset` and `mark + leftover`
    /// being lengths that can be held.
    #[inline]
    pub(crate) const fn new(mark: Length, offset: Length, leftover: i128, grain: Grain) -> Self {
        Self { mark, offset, leftover, grain }
    }

    /// The true place of the graduation, measured from the datum.
    ///
    /// ```
    /// # use scantling::{Length, Tape, Unit};
    /// let almost_a_foot = Length::fraction(767, 64, Unit::Inch);
    /// assert_eq!(Tape::sixteenths().read(almost_a_foot)?.mark(), Length::new(1, Unit::Foot));
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[inline]
    #[must_use]
    pub const fn mark(&self) -> Length {
        self.mark
    }

    /// What the tape shows at the mark: the mark plus the tape's offset.
    ///
    /// ```
    /// # use scantling::{Length, Tape, Unit};
    /// let tape = Tape::sixteenths().offset(Length::new(1, Unit::Inch));
    /// assert_eq!(tape.read(Length::new(24, Unit::Inch))?.shown(), Length::new(25, Unit::Inch));
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub fn shown(&self) -> Length {
        self.mark + self.offset
    }

    /// The exact rest: how far the true position lies past the mark, negative when it is short of it.
    ///
    /// ```
    /// # use scantling::{Length, Tape, Unit};
    /// let third = Length::fraction(1, 3, Unit::Inch);
    /// assert_eq!(Tape::sixteenths().read(third)?.leftover(), Length::fraction(1, 48, Unit::Inch));
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub const fn leftover(&self) -> Length {
        self.grain.length(self.leftover)
    }

    /// The exact position that was read, measured from the datum.
    ///
    /// ```
    /// # use scantling::{Length, Tape, Unit};
    /// let third = Length::fraction(1, 3, Unit::Inch);
    /// assert_eq!(Tape::sixteenths().read(third)?.true_position(), third);
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub fn true_position(&self) -> Length {
        self.mark + self.leftover()
    }

    /// On which side of the mark the true position lies.
    ///
    /// ```
    /// # use scantling::{Lean, Length, Tape, Unit};
    /// let third = Length::fraction(1, 3, Unit::Inch);
    /// assert_eq!(Tape::sixteenths().read(third)?.lean(), Lean::Strong);
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub const fn lean(&self) -> Lean {
        match self.leftover {
            0 => Lean::DeadOn,
            1.. => Lean::Strong,
            _ => Lean::Shy,
        }
    }
}

/// Readings are equal when they show the same and stand for the same position.
impl PartialEq for Reading {
    fn eq(&self, other: &Self) -> bool {
        self.mark == other.mark && self.offset == other.offset && self.leftover() == other.leftover()
    }
}

impl Eq for Reading {}

impl fmt::Debug for Reading {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (mark, shown, leftover) = (self.mark, self.shown(), self.leftover());
        write!(out, "Reading {{ mark: {mark:?}, shown: {shown:?}, leftover: {leftover:?} }}")
    }
}
