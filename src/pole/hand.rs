//! The hand of a pole: which of two mirror images its parts are for. Mirroring is left to `change.rs`.

use core::fmt;

/// Which of a pair of mirror images a pole is for.
///
/// The left and the right side of a case have the same heights and are still two parts: what is bored into one face
/// of the one is bored into the other face of the other.
///
/// ```
/// use scantling::Hand;
///
/// assert_eq!(Hand::Left.other(), Hand::Right);
/// assert_eq!(Hand::Right.to_string(), "right");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(clippy::exhaustive_enums)] // there are no others
pub enum Hand {
    /// The left part of the pair.
    Left,
    /// The right part of the pair.
    Right,
}

impl Hand {
    /// The other part of the pair.
    ///
    /// ```
    /// use scantling::Hand;
    ///
    /// assert_eq!(Hand::Left.other().other(), Hand::Left);
    /// ```
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }
}

impl fmt::Display for Hand {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.pad(match self {
            Self::Left => "left",
            Self::Right => "right",
        })
    }
}
