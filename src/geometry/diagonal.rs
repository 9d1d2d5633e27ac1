//! The diagonal of a rectangle: to the nearest graduation, exactly where a fraction is equal to it, and
//! squared for comparing. How a root is rounded is left to `root.rs`.

use num_rational::Ratio;

use super::error::above_zero;
use super::root::Root;
use super::{GeometryError, Rounded};
use crate::length::{Area, Length, Rounding};

/// The diagonal of a rectangle, rounded correctly to a graduation of any step, in any mode.
///
/// Where a diagonal has no exact fraction, and few have, the mark is still the one that the true length
/// rounds to: squares are compared as whole numbers, and no decimal is cut off on the way.
///
/// ```
/// use scantling::{Length, Unit, diagonal};
///
/// // A pottery's ware case, 30 1/4 in wide and 72 in high, checked for square.
/// let (width, height) = (Length::fraction(121, 4, Unit::Inch), Length::new(72, Unit::Inch));
/// let across = diagonal(width, height, Length::fraction(1, 16, Unit::Inch))?;
/// assert_eq!(across.to_string(), r#"78-1/8" shy"#);
/// # Ok::<(), scantling::GeometryError>(())
/// ```
///
/// # Errors
///
/// [`GeometryError::NotAboveZero`] for a side, [`GeometryError::NotAStep`] for a step that is not above zero,
/// [`GeometryError::OutOfRange`] when the rounded diagonal cannot be held.
pub fn diagonal(width: Length, height: Length, rounding: impl Into<Rounding>) -> Result<Rounded, GeometryError> {
    Root::of_sum(above_zero("a side", width)?, above_zero("a side", height)?).round(rounding.into())
}

/// The diagonal of a rectangle where a fraction is equal to it, and `None` where none is.
///
/// ```
/// use scantling::{Length, Unit, exact_diagonal};
///
/// let inches = |num| Length::fraction(num, 8, Unit::Inch);
/// assert_eq!(exact_diagonal(inches(15), inches(20))?, Some(inches(25))); // 1 7/8, 2 1/2, 3 1/8 in
/// assert_eq!(exact_diagonal(inches(15), inches(15))?, None);
/// # Ok::<(), scantling::GeometryError>(())
/// ```
///
/// # Errors
///
/// [`GeometryError::NotAboveZero`] for a side, [`GeometryError::OutOfRange`] when the greatest length that
/// measures both sides, or the diagonal, cannot be held.
pub fn exact_diagonal(width: Length, height: Length) -> Result<Option<Length>, GeometryError> {
    let out_of_range = GeometryError::out_of_range(width);
    let ratio = above_zero("a side", width)?.checked_ratio(above_zero("a side", height)?).ok_or_else(&out_of_range)?;
    // In lowest terms the sides are p and q of their greatest common measure, and the root of p² + q² is a
    // whole number or no fraction at all: a diagonal that has a fraction is a whole number of it too.
    let measure = width.checked_div_ratio(Ratio::from_integer(*ratio.numer())).ok_or_else(&out_of_range)?;
    Ok(diagonal(width, height, measure)?.exact())
}

/// The square of a diagonal, `width² + height²`: exact, for comparing two diagonals without a root.
///
/// ```
/// use scantling::{Length, Unit, squared_diagonal};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// assert_eq!(squared_diagonal(inches(24), inches(36))?.checked_in_square(Unit::Inch), Some(1872.into()));
/// assert!(squared_diagonal(inches(24), inches(36))? < squared_diagonal(inches(23), inches(37))?);
/// # Ok::<(), scantling::GeometryError>(())
/// ```
///
/// # Errors
///
/// [`GeometryError::NotAboveZero`] for a side, [`GeometryError::OutOfRange`] when the area cannot be held.
pub fn squared_diagonal(width: Length, height: Length) -> Result<Area, GeometryError> {
    let square = |side: Length| above_zero("a side", side)?.checked_area(side).ok_or(GeometryError::OutOfRange { length: side });
    square(width)?.checked_add(square(height)?).ok_or(GeometryError::OutOfRange { length: width })
}
