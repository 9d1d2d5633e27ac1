//! Whether the two miters of a piece that was cut go together in a frame. What the piece should measure is
//! left to `miter.rs`.

use super::GeometryError;
use super::error::{above_zero, not_below_zero};
use crate::length::Length;

/// How the two miters of a cut piece lie.
///
/// ```
/// use scantling::{Length, Miters, Unit, check_miters};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// let check = |outer, inner| check_miters(inches(2), inches(outer), inches(inner), Length::ZERO).unwrap();
/// assert_eq!(check(24, 20), Miters::Converge);
/// assert_eq!(check(24, 24), Miters::Parallel); // the mistake that spoils a frame
/// assert_eq!(check(24, 21), Miters::Off { by: inches(-1) });
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Miters {
    /// They lean toward each other, as in a frame they must.
    Converge,
    /// They lean the same way: both edges are as long, and the piece goes into no frame.
    Parallel,
    /// Neither: at least one of them is not cut at 45 degrees, or an edge is measured wrong.
    Off {
        /// How much longer the outer edge is past the inner edge than it should be.
        by: Length,
    },
}

/// Looks at the two edges of a piece with miters of 45 degrees, as they measure, each from point to point
/// and the longer one first. `limit` is how far the measures may be off; a limit so wide that parallel
/// miters lie within it says that they converge.
///
/// ```
/// use scantling::{Length, Miters, Unit, check_miters};
///
/// let sixteenths = |count| Length::fraction(count, 16, Unit::Inch);
/// let edges = (sixteenths(384), sixteenths(321));
/// assert_eq!(check_miters(sixteenths(32), edges.0, edges.1, sixteenths(1))?, Miters::Converge);
/// # Ok::<(), scantling::GeometryError>(())
/// ```
///
/// # Errors
///
/// [`GeometryError::NotAboveZero`] for the stock width or the outer edge, [`GeometryError::BelowZero`] for the
/// inner edge or the limit, [`GeometryError::OutOfRange`] when the difference cannot be held.
pub fn check_miters(width: Length, outer: Length, inner: Length, limit: Length) -> Result<Miters, GeometryError> {
    let (width, outer) = (above_zero("a stock width", width)?, above_zero("an outer edge", outer)?);
    let (inner, limit) = (not_below_zero("an inner edge", inner)?, not_below_zero("a limit", limit)?);
    let longer = outer.checked_sub(inner);
    let by = longer.zip(width.checked_mul(2)).and_then(|(longer, both)| longer.checked_sub(both));
    let (longer, by) = longer.zip(by).ok_or(GeometryError::OutOfRange { length: outer })?;
    Ok(match () {
        () if by.abs() <= limit => Miters::Converge,
        () if longer.abs() <= limit => Miters::Parallel,
        () => Miters::Off { by },
    })
}
