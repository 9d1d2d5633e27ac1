//! What is left off a part so that it goes in: play and room for glue. Which part takes which is left to `parts.rs`.

use crate::length::{Length, Unit};

/// What is taken off parts that go inside others. A part that fits inside is rounded down on the tape, besides.
///
/// ```
/// use scantling::{Allowances, Length, Unit};
///
/// assert_eq!(Allowances::USUAL.back, Length::fraction(1, 16, Unit::Inch));
/// assert_eq!(Allowances::NONE.adjustable_shelf, Length::ZERO);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct Allowances {
    /// Off the width and the height of a back in a rabbet or a groove.
    pub back: Length,
    /// Off the length of a shelf that lies on pins.
    pub adjustable_shelf: Length,
    /// Off the length of each part that is let into dadoes or rabbets, for glue.
    pub glue: Length,
}

impl Allowances {
    /// 1/16 in off a back, 1/8 in off a shelf on pins, nothing for glue. Common practice, no source.
    pub const USUAL: Self = Self::new(Length::fraction(1, 16, Unit::Inch), Length::fraction(1, 8, Unit::Inch), Length::ZERO);
    /// Nothing off anything: the exact fit.
    pub const NONE: Self = Self::new(Length::ZERO, Length::ZERO, Length::ZERO);

    /// Off a back, off a shelf on pins, and for glue.
    ///
    /// ```
    /// use scantling::{Allowances, Length, Unit};
    ///
    /// let millimeters = |count| Length::new(count, Unit::Millimeter);
    /// assert_eq!(Allowances::new(millimeters(2), millimeters(3), millimeters(1)).glue, millimeters(1));
    /// ```
    #[must_use]
    pub const fn new(back: Length, adjustable_shelf: Length, glue: Length) -> Self {
        Self { back, adjustable_shelf, glue }
    }
}
