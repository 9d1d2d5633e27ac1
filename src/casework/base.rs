//! What a case stands on. The parts of it are left to `parts.rs`.

use crate::length::Length;

/// What a case stands on.
///
/// ```
/// use scantling::{Base, Length, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let plinth = Base::Separate { height: inches(4, 1), stock: inches(3, 4), from_front: inches(3, 1), from_sides: inches(1, 2), ties: 1 };
/// assert_eq!((plinth.height(), Base::None.height()), (inches(4, 1), Length::ZERO));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Base {
    /// Nothing: the sides stand on the floor, and the bottom lies between them at their lower ends.
    None,
    /// The sides run to the floor, notched at the front for a toe recess, and a toe board closes it.
    SidesToFloor {
        /// From the floor to the top of the recess, where the bottom lies.
        height: Length,
        /// From the front of the case to the toe board.
        recess: Length,
        /// How thick the toe board is.
        stock: Length,
    },
    /// A frame of its own under the case: a front, a rear, and pieces across between them.
    Separate {
        /// How high it is.
        height: Length,
        /// How thick its pieces are.
        stock: Length,
        /// From the front of the case to its front.
        from_front: Length,
        /// From the outside of each side of the case to its end.
        from_sides: Length,
        /// Pieces across it besides the two at its ends.
        ties: u32,
    },
}

impl Base {
    /// From the floor to where the case proper begins.
    ///
    /// ```
    /// use scantling::{Base, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let toe = Base::SidesToFloor { height: inches(4, 1), recess: inches(3, 1), stock: inches(3, 4) };
    /// assert_eq!(toe.height(), inches(4, 1));
    /// ```
    #[must_use]
    pub const fn height(self) -> Length {
        match self {
            Self::None => Length::ZERO,
            Self::SidesToFloor { height, .. } | Self::Separate { height, .. } => height,
        }
    }

    /// How much of it the sides stand on: their lower end is that far above the floor.
    pub(super) const fn under_sides(self) -> Length {
        match self {
            Self::Separate { height, .. } => height,
            _ => Length::ZERO,
        }
    }

    /// From the lower end of the sides to where the bottom may lie.
    pub(super) const fn within_sides(self) -> Length {
        match self {
            Self::SidesToFloor { height, .. } => height,
            _ => Length::ZERO,
        }
    }
}
