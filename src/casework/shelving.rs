//! How the shelves of a bay are spread, and whether they are fixed. Dividing the height is left to `spacing/`.

use alloc::vec::Vec;

use crate::length::Length;
use crate::spacing::{Growth, Spacing};

/// How the shelves of each bay are spread between bottom and top.
///
/// ```
/// use scantling::{Length, Shelves, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// assert_eq!(Shelves::Equal(4).count(), 4);
/// assert_eq!(Shelves::Openings(vec![inches(15, 1), inches(12, 1)]).count(), 2);
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Shelves {
    /// So many, with equal openings.
    Equal(usize),
    /// The openings below the shelves, from the lowest; what is left is above the last shelf.
    Openings(Vec<Length>),
    /// Openings in these proportions, from the lowest: one shelf fewer.
    Proportional(Vec<u64>),
    /// So many, the openings growing downward.
    Growing(usize, Growth),
    /// So many that lie on pins, in rows of holes.
    Adjustable(usize, PinHoles),
}

impl Shelves {
    /// How many shelves there are in a bay.
    ///
    /// ```
    /// assert_eq!(scantling::Shelves::Proportional(vec![3, 2, 2]).count(), 2);
    /// ```
    #[must_use]
    pub fn count(&self) -> usize {
        match self {
            Self::Equal(count) | Self::Growing(count, _) | Self::Adjustable(count, _) => *count,
            Self::Openings(openings) => openings.len(),
            Self::Proportional(shares) => shares.len().saturating_sub(1),
        }
    }

    /// The rows of holes, where the shelves lie on pins.
    pub(super) const fn pins(&self) -> Option<PinHoles> {
        match self {
            Self::Adjustable(_, pins) => Some(*pins),
            _ => None,
        }
    }

    /// Where fixed shelves of one thickness lie.
    pub(super) fn spacing(&self, thickness: Length) -> Option<Spacing> {
        Some(match self {
            Self::Equal(count) => Spacing::equal_openings(*count, thickness),
            Self::Openings(openings) => {
                let free = Spacing::equal_openings(openings.len(), thickness);
                openings.iter().enumerate().fold(free, |spacing, (after, opening)| spacing.hold(after, *opening))
            }
            Self::Proportional(shares) => Spacing::proportional(shares.iter().copied(), thickness),
            Self::Growing(count, growth) => Spacing::drawers_from_bottom(count.checked_add(1)?, thickness, *growth),
            Self::Adjustable(..) => return None,
        })
    }
}

/// Rows of holes for shelf pins in the sides, one near the front and one near the rear.
///
/// ```
/// use scantling::{Length, PinHoles, Unit};
///
/// // The rows of the 32 mm system: holes of 5 mm, 37 mm from the front edge.
/// let millimeters = |count| Length::new(count, Unit::Millimeter);
/// assert_eq!(PinHoles::ROWS_OF_32.pitch, millimeters(32));
/// assert_eq!((PinHoles::ROWS_OF_32.from_edges, PinHoles::ROWS_OF_32.deep), (millimeters(37), millimeters(13)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct PinHoles {
    /// From hole to hole.
    pub pitch: Length,
    /// From the upper face of the bottom to the first hole, and at least as far from the last one to the top.
    pub first: Length,
    /// From the front edge, and from the rear edge of the shelf, to the rows.
    pub from_edges: Length,
    /// How deep a hole is.
    pub deep: Length,
}

impl PinHoles {
    /// Rows 32 mm from hole to hole, 37 mm from the edges, 13 mm deep, the first hole 96 mm up. Source: the pitch and the set-back
    /// are those of the 32 mm system, as published; the depth is from memory, and the first hole is this crate's choice.
    pub const ROWS_OF_32: Self =
        Self { pitch: millimeters(32), first: millimeters(96), from_edges: millimeters(37), deep: millimeters(13) };

    /// Holes at this pitch, the first so far up, so far from the edges and so deep.
    ///
    /// ```
    /// use scantling::{Length, PinHoles, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// assert_eq!(PinHoles::new(inches(1, 1), inches(4, 1), inches(3, 2), inches(3, 8)).first, inches(4, 1));
    /// ```
    #[must_use]
    pub const fn new(pitch: Length, first: Length, from_edges: Length, deep: Length) -> Self {
        Self { pitch, first, from_edges, deep }
    }
}

const fn millimeters(count: i64) -> Length {
    Length::new(count, crate::length::Unit::Millimeter)
}
