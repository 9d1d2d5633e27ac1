//! An angle as an exact fraction of a degree. Its tangent is left to `tangent.rs`, what it is the angle of
//! to `polygon.rs` and `miter.rs`.

use core::fmt;

use num_rational::Ratio;

use super::GeometryError;
use crate::length::Fraction;
use crate::print::{WithSymbol, padded};

/// An angle in degrees, exact.
///
/// ```
/// use num_rational::Ratio;
/// use scantling::Angle;
///
/// const OCTAGON: Angle = Angle::fraction(45, 2);
/// assert_eq!(OCTAGON.in_degrees(), Ratio::new(45, 2));
/// assert!(OCTAGON < Angle::degrees(30));
/// ```
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct Angle {
    degrees: Fraction,
}

impl Angle {
    /// A whole number of degrees.
    ///
    /// ```
    /// # use scantling::Angle;
    /// assert_eq!(Angle::degrees(45), Angle::fraction(90, 2));
    /// ```
    #[must_use]
    pub const fn degrees(count: i64) -> Self {
        Self::fraction(count, 1)
    }

    /// A fraction of a degree.
    ///
    /// ```
    /// # use scantling::Angle;
    /// assert_eq!(Angle::fraction(180, 7).to_string(), "25 5/7°");
    /// ```
    ///
    /// # Panics
    ///
    /// When the denominator is zero: at compile time in a constant.
    #[must_use]
    #[track_caller]
    pub const fn fraction(num: i64, den: u64) -> Self {
        assert!(den != 0, "a fraction with a zero denominator has no value");
        match Fraction::reduced(num as i128, den as u128) {
            Some(degrees) => Self { degrees },
            None => unreachable!(), // 64 bits over 64 bits
        }
    }

    /// How many degrees this is, exactly, in lowest terms.
    ///
    /// ```
    /// # use num_rational::Ratio;
    /// # use scantling::Angle;
    /// assert_eq!(Angle::fraction(360, 16).in_degrees(), Ratio::new(45, 2));
    /// ```
    #[must_use]
    pub const fn in_degrees(self) -> Ratio<i128> {
        Ratio::new_raw(self.degrees.num(), self.degrees.den() as i128)
    }

    pub(super) const fn fraction_of_degree(self) -> Fraction {
        self.degrees
    }

    /// Refuses what no saw is set to for a miter.
    pub(super) fn miter(self) -> Result<Self, GeometryError> {
        let setting = self;
        if self < Self::degrees(0) || self >= Self::degrees(90) { Err(GeometryError::NotAMiter { setting }) } else { Ok(self) }
    }
}

impl Ord for Angle {
    fn cmp(&self, other: &Self) -> core::cmp::Ordering {
        self.degrees.compare(other.degrees)
    }
}

impl PartialOrd for Angle {
    fn partial_cmp(&self, other: &Self) -> Option<core::cmp::Ordering> {
        Some(self.cmp(other))
    }
}

/// Degrees and a fraction, exact: `45°`, `22 1/2°`.
///
/// ```
/// # use scantling::Angle;
/// assert_eq!(format!("[{:>8}]", Angle::fraction(45, 2)), "[ 22 1/2°]");
/// ```
impl fmt::Display for Angle {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let parts = (self.degrees.num(), self.degrees.den().into());
        padded(WithSymbol { parts, symbol: "°" }, out)
    }
}

impl fmt::Debug for Angle {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "Angle({}°)", self.in_degrees())
    }
}
