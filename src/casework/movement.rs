//! How far a board grows and shrinks across the grain as its moisture changes. Which wood moves how much is left to
//! `species.rs`.

use num_rational::Ratio;

use super::error::CaseworkError;
use crate::geometry::above_zero;
use crate::length::Length;

/// How much a wood moves: the part of its width by which each percent of moisture changes it, in hundred thousandths.
///
/// `change = width × coefficient × change in moisture`, good between 6 and 14 percent. Source: Wood Handbook, chapter
/// 13, equation 13-2; the limits are from memory. Along the grain wood hardly moves; panels have figures of their own.
///
/// ```
/// use num_rational::Ratio;
/// use scantling::{Length, Movement, Unit};
///
/// // Red alder, 8 in, six percent more: 0.1248 in, about an eighth.
/// let change = Movement::new(260).change(Length::new(8, Unit::Inch), Ratio::from(6), Ratio::from(12))?;
/// assert_eq!(change, Length::fraction(1248, 10_000, Unit::Inch));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Movement {
    hundred_thousandths: u32,
}

impl Movement {
    /// A wood that moves so many hundred thousandths of its width with each percent: 190 for 0.00190.
    ///
    /// ```
    /// use scantling::{Movement, species};
    ///
    /// assert_eq!(species("American beech")?.radial(), Some(Movement::new(190)));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn new(hundred_thousandths: u32) -> Self {
        Self { hundred_thousandths }
    }

    /// The part of the width for each percent.
    ///
    /// ```
    /// use num_rational::Ratio;
    ///
    /// assert_eq!(scantling::Movement::new(250).coefficient(), Ratio::new(1, 400));
    /// ```
    #[must_use]
    pub fn coefficient(self) -> Ratio<i128> {
        Ratio::new(self.hundred_thousandths.into(), 100_000)
    }

    /// By how much a board of one width changes from one percentage of moisture to another: below zero where it shrinks.
    ///
    /// # Errors
    ///
    /// When the width is not above zero, or the figures are too large or too fine.
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::{Length, Movement, Unit};
    ///
    /// let (summer, winter) = (Ratio::from(11), Ratio::from(8));
    /// let change = Movement::new(245).change(Length::new(232, Unit::Millimeter), summer, winter)?;
    /// assert_eq!(change, -Length::fraction(17_052, 10_000, Unit::Millimeter));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn change(self, width: Length, from: Ratio<i128>, to: Ratio<i128>) -> Result<Length, CaseworkError> {
        above_zero("a width", width)?;
        let at = |percent| width.checked_mul_ratio(self.coefficient())?.checked_mul_ratio(percent);
        at(to).zip(at(from)).and_then(|(to, from)| to.checked_sub(from)).ok_or(CaseworkError::TooLarge)
    }
}
