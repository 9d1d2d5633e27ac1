//! What can go wrong with a length as a number. Errors of text, tape and layout live with those layers.

use thiserror::Error;

use super::Length;

/// Why a length could not be made or worked out.
///
/// ```
/// use num_rational::Ratio;
/// use scantling::{Length, LengthError, Unit};
///
/// let broken = Ratio::new_raw(1, 0);
/// assert_eq!(Length::try_from_ratio(broken, Unit::Inch), Err(LengthError::ZeroDenominator));
/// ```
#[derive(Clone, Copy, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum LengthError {
    /// A ratio with nothing below the line.
    #[error("a fraction with a zero denominator has no value")]
    ZeroDenominator,
    /// The exact answer is too long, or too finely divided, to be held.
    #[error("the exact answer is out of range: longer, or more finely divided, than a length can hold")]
    OutOfRange,
    /// Rounding to a step that is zero or negative.
    #[error("cannot round to a step of {step}: a step must be above zero")]
    NotAStep {
        /// The step that was given.
        step: Length,
    },
    /// A float that is infinite or not a number.
    #[error("{value} is not a length")]
    NotFinite {
        /// How the float is written: `NaN`, `inf` or `-inf`.
        value: &'static str,
    },
}
