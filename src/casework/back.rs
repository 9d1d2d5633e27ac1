//! The back of a case: where it sits, and what room it leaves. Its size is left to `parts.rs`.

use crate::length::Length;

/// How a back is held.
///
/// ```
/// use scantling::{Back, Length, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let back = Back::Rabbet { thickness: inches(7, 32), depth: inches(3, 8) };
/// assert_eq!(back.thickness(), inches(7, 32));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Back {
    /// No back: the sides are as deep as the case.
    None,
    /// Laid on behind sides, top and bottom.
    Applied {
        /// How thick it is.
        thickness: Length,
    },
    /// Let into a rabbet along the rear edges of the sides, as deep as the back is thick; top, bottom and shelves end before it.
    Rabbet {
        /// How thick it is.
        thickness: Length,
        /// How far the rabbet reaches into the side's thickness.
        depth: Length,
    },
    /// In a groove in the sides, top and bottom, with play all round for the wood to move.
    Groove {
        /// How thick it is.
        thickness: Length,
        /// How far the groove reaches into the side's thickness.
        depth: Length,
        /// From the rear edge of the sides to the groove.
        set_in: Length,
    },
}

impl Back {
    /// How thick it is.
    ///
    /// ```
    /// use scantling::{Back, Length};
    ///
    /// assert_eq!(Back::None.thickness(), Length::ZERO);
    /// ```
    #[must_use]
    pub const fn thickness(self) -> Length {
        match self {
            Self::None => Length::ZERO,
            Self::Applied { thickness } | Self::Rabbet { thickness, .. } | Self::Groove { thickness, .. } => thickness,
        }
    }

    /// How far it is let into each side.
    pub(super) const fn let_in(self) -> Length {
        match self {
            Self::None | Self::Applied { .. } => Length::ZERO,
            Self::Rabbet { depth, .. } | Self::Groove { depth, .. } => depth,
        }
    }
}
