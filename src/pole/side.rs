//! On which side of a line the part lies: the X that carpenters draw. Where the edges then are is left to `mark.rs`.

use super::Datum;
use crate::spacing::Edge;

/// On which side of its line a part lies, seen from the datum. Carpenters draw an X there, since a line alone does not
/// tell, and a part on the wrong side is off by its whole thickness.
///
/// ```
/// use scantling::{Length, Mark, PartSide, Unit};
///
/// let shelf = Mark::new(Length::new(14, Unit::Inch), "shelf", PartSide::Past).thick(Length::fraction(3, 4, Unit::Inch));
/// let upper = Length::fraction(59, 4, Unit::Inch); // 14 3/4 in
/// assert_eq!(shelf.checked_edges(), Some((Length::new(14, Unit::Inch), upper)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[allow(clippy::exhaustive_enums)] // there are no others
pub enum PartSide {
    /// Past the line, away from the datum: the line is the nearer edge.
    Past,
    /// Before the line, toward the datum: the line is the farther edge.
    Before,
    /// Half on each side: the line is the center.
    Centered,
    /// No part at all: a mere line, such as a level or a cut.
    Line,
}

impl PartSide {
    /// The same, seen from the other end of the stick.
    pub(super) const fn flipped(self) -> Self {
        match self {
            Self::Past => Self::Before,
            Self::Before => Self::Past,
            Self::Centered | Self::Line => self,
        }
    }

    /// What the line is, and where the X goes.
    pub(super) const fn words(self, datum: Datum) -> (&'static str, &'static str) {
        let (beyond, within) = datum.beyond_and_within();
        let (nearer, farther) = datum.edges();
        match self {
            Self::Past => (nearer, beyond),
            Self::Before => (farther, within),
            Self::Centered => ("center", "on both sides of"),
            Self::Line => ("line alone", ""),
        }
    }
}

impl From<Edge> for PartSide {
    /// Where a member lies when this edge of it is marked.
    fn from(edge: Edge) -> Self {
        match edge {
            Edge::Near => Self::Past,
            Edge::Center => Self::Centered,
            Edge::Far => Self::Before,
        }
    }
}
