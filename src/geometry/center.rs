//! The middle of things: between two places, and of a run too long or too awkward to halve. Equal parts are
//! left to the spacing layer.

use super::GeometryError;
use super::error::above_zero;
use crate::length::Length;

/// The place midway between two others.
///
/// ```
/// use scantling::{Length, Unit, midpoint};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// assert_eq!(midpoint(inches(5, 2), inches(55, 2))?, inches(15, 1));
/// # Ok::<(), scantling::GeometryError>(())
/// ```
///
/// # Errors
///
/// [`GeometryError::OutOfRange`] when the sum of the two, or half of it, cannot be held.
pub fn midpoint(first: Length, second: Length) -> Result<Length, GeometryError> {
    let middle = first.checked_add(second).and_then(|sum| sum.checked_div(2));
    middle.ok_or(GeometryError::OutOfRange { length: first })
}

/// The center of a run, found by measuring the same from both ends: nothing awkward has to be halved, only
/// the little by which the two measures overlap, or miss each other where `overlap` is below zero. Measured
/// from either end.
///
/// ```
/// use scantling::{Length, Unit, center_from_ends};
///
/// // A wall a little under 48 ft: 24 ft from either end overlap by a foot.
/// let feet = |count| Length::new(count, Unit::Foot);
/// assert_eq!(center_from_ends(feet(24), feet(1))?, Length::new(282, Unit::Inch)); // 23'-6"
/// assert_eq!(center_from_ends(feet(23), feet(-1))?, Length::new(282, Unit::Inch));
/// # Ok::<(), scantling::GeometryError>(())
/// ```
///
/// # Errors
///
/// [`GeometryError::NotAboveZero`] for the measure, [`GeometryError::OverlapTooLong`] when the overlap is longer
/// than it, [`GeometryError::OutOfRange`] when the center cannot be held.
pub fn center_from_ends(measure: Length, overlap: Length) -> Result<Length, GeometryError> {
    if above_zero("a measure", measure)? < overlap {
        return Err(GeometryError::OverlapTooLong { measure, overlap });
    }
    let center = overlap.checked_div(2).and_then(|half| measure.checked_sub(half));
    center.ok_or(GeometryError::OutOfRange { length: measure })
}
