//! The end of a stick that everything is measured from, and which way that goes. What it means for a part is left
//! to `side.rs`.

use core::fmt;

/// The end of a pole that every position is measured from; the direction is toward the other end.
///
/// ```
/// use scantling::Datum;
///
/// assert_eq!(Datum::Bottom.to_string(), "bottom");
/// assert_eq!(Datum::Bottom.opposite(), Datum::Top);
/// assert_eq!(Datum::default(), Datum::Bottom); // a pole stands on the floor
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(clippy::exhaustive_enums)] // there are no others
pub enum Datum {
    /// Measured up from the bottom end.
    #[default]
    Bottom,
    /// Measured down from the top end.
    Top,
    /// Measured to the right from the left end.
    Left,
    /// Measured to the left from the right end.
    Right,
}

impl Datum {
    /// The other end of the stick.
    ///
    /// ```
    /// use scantling::Datum;
    ///
    /// assert_eq!(Datum::Left.opposite(), Datum::Right);
    /// ```
    #[must_use]
    pub const fn opposite(self) -> Self {
        match self {
            Self::Bottom => Self::Top,
            Self::Top => Self::Bottom,
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }

    /// Where the end lies in a mirror that stands beside the work: left and right change places, heights do not.
    ///
    /// ```
    /// use scantling::Datum;
    ///
    /// assert_eq!(Datum::Left.mirrored(), Datum::Right);
    /// assert_eq!(Datum::Bottom.mirrored(), Datum::Bottom);
    /// ```
    #[must_use]
    pub const fn mirrored(self) -> Self {
        match self {
            Self::Bottom | Self::Top => self,
            Self::Left | Self::Right => self.opposite(),
        }
    }

    /// Which way positions are counted, as it is said to a person: `up from the bottom`.
    pub(super) const fn way(self) -> &'static str {
        match self {
            Self::Bottom => "up from the bottom",
            Self::Top => "down from the top",
            Self::Left => "to the right from the left end",
            Self::Right => "to the left from the right end",
        }
    }

    /// On which side of a line lies what is farther from this end, and what is nearer to it.
    pub(super) const fn beyond_and_within(self) -> (&'static str, &'static str) {
        match self {
            Self::Bottom => ("above", "below"),
            Self::Top => ("below", "above"),
            Self::Left => ("to the right of", "to the left of"),
            Self::Right => ("to the left of", "to the right of"),
        }
    }

    /// The name of the edge of a part that is nearer to this end, and of the other.
    pub(super) const fn edges(self) -> (&'static str, &'static str) {
        match self {
            Self::Bottom => ("lower edge", "upper edge"),
            Self::Top => ("upper edge", "lower edge"),
            Self::Left => ("left edge", "right edge"),
            Self::Right => ("right edge", "left edge"),
        }
    }

    const fn word(self) -> &'static str {
        match self {
            Self::Bottom => "bottom",
            Self::Top => "top",
            Self::Left => "left",
            Self::Right => "right",
        }
    }
}

impl fmt::Display for Datum {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.pad(self.word())
    }
}
