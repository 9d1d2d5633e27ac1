//! What lies between an end of the run and the member nearest to it. What an end comes to as a gap
//! depends on the kind of spacing, and is left to the file of each.

use super::SpacingError;
use super::pattern::Gap;
use crate::length::Length;

/// What lies between an end of the run and the nearest member.
///
/// ```
/// use scantling::{End, Length, Spacing, Unit};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// let first = |end| Spacing::equal_openings(2, inches(4)).near_end(end).over(inches(48)).unwrap().gap(0).unwrap();
/// assert_eq!(first(End::Gap), Length::fraction(40, 3, Unit::Inch)); // one of three equal gaps
/// assert_eq!(first(End::HalfGap), inches(8)); // half as much as the others, 16 in each
/// assert_eq!(first(End::Flush), inches(0));
/// assert_eq!(first(End::Margin(inches(2))), inches(2));
/// ```
///
/// Where a spacing counts openings, as drawers and shares do, or goes by a pitch, its own openings reach to
/// the ends of the run. There any end but [`End::Gap`] stands for one member more: the top of a chest, the last
/// stud of a wall.
///
/// ```
/// # use scantling::{End, Growth, Length, Spacing, Unit};
/// let divider = Length::fraction(3, 4, Unit::Inch);
/// let bank = Spacing::drawers_from_top(6, divider, Growth::Step(Length::new(1, Unit::Inch)));
/// let run = Length::new(48, Unit::Inch);
/// assert_eq!(bank.over(run)?.members(), 5);
/// assert_eq!(bank.near_end(End::Flush).far_end(End::Flush).over(run)?.members(), 7); // with top and bottom
/// # Ok::<(), scantling::SpacingError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum End {
    /// A gap like those between the members.
    #[default]
    Gap,
    /// Half such a gap.
    HalfGap,
    /// None: the member stands at the end of the run.
    Flush,
    /// This much, whatever the others come to.
    Margin(Length),
}

impl End {
    pub(super) fn gap(self) -> Result<Gap, SpacingError> {
        match self {
            Self::Gap => Ok(Gap::OPEN),
            Self::HalfGap => Ok(Gap::HALF),
            Self::Flush => Ok(Gap::NONE),
            Self::Margin(margin) if margin.is_negative() => Err(SpacingError::NegativeMargin { margin }),
            Self::Margin(margin) => Ok(Gap::fixed(margin)),
        }
    }

    /// Whether the gap here is less, or more, than a full one on purpose.
    pub(super) fn is_set_apart(self) -> bool {
        self != Self::Gap
    }

    /// Whether it is the same whatever the openings are.
    pub(super) const fn is_fixed(self) -> bool {
        matches!(self, Self::Flush | Self::Margin(_))
    }
}
