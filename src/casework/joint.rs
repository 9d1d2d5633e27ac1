//! How one panel meets another. What that does to lengths is left to `parts.rs`.

use crate::length::Length;

/// How the end of a panel meets the face of another.
///
/// ```
/// use scantling::{Joint, Length, Unit};
///
/// let quarter = Length::fraction(1, 4, Unit::Inch);
/// assert_eq!((Joint::Butt.depth(), Joint::Dado(quarter).depth()), (Length::ZERO, quarter));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Joint {
    /// End against face: nothing is let in.
    Butt,
    /// Let into a dado of this depth, in from the ends of the other panel.
    Dado(Length),
    /// Let into a rabbet of this depth, along an end of the other panel.
    Rabbet(Length),
}

impl Joint {
    /// How deep the panel is let in.
    ///
    /// ```
    /// use scantling::{Joint, Length, Unit};
    ///
    /// let eighth = Length::fraction(1, 8, Unit::Inch);
    /// assert_eq!(Joint::Rabbet(eighth).depth(), eighth);
    /// ```
    #[must_use]
    pub const fn depth(self) -> Length {
        match self {
            Self::Butt => Length::ZERO,
            Self::Dado(depth) | Self::Rabbet(depth) => depth,
        }
    }

    /// What it is called in a sum.
    pub(super) const fn name(self) -> &'static str {
        match self {
            Self::Butt => "butt joint",
            Self::Dado(_) => "dado",
            Self::Rabbet(_) => "rabbet",
        }
    }
}
