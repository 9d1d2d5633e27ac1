//! Every kind of spacing as data, and the pattern each comes to over a run. How many members a counted
//! kind gets is left to `count.rs`, rows on center to `on_center.rs`, solving to `pattern.rs`.

use alloc::vec::Vec;

use super::drawers::Drawers;
use super::on_center::Row;
use super::pattern::{Gap, Pattern};
use super::{End, Spacing, SpacingError};
use crate::length::Length;

#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Rule {
    Parts(usize),
    Openings { members: usize, thickness: Length },
    Counted { thickness: Length, count: Count },
    Widths(Vec<Length>),
    Shares { shares: Vec<u64>, divider: Length },
    Drawers(Drawers),
    OnCenter(Row),
}

/// What makes the number of members right.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Count {
    /// The fewest within the limits.
    Fewest,
    /// The most within the limits.
    Most,
    /// Whose openings come nearest to this.
    Nearest(Length),
}

impl Spacing {
    /// What the spacing comes to over a run, before it is solved.
    pub(super) fn pattern(&self, run: Length) -> Result<Pattern, SpacingError> {
        if run.is_negative() {
            return Err(SpacingError::NegativeRun { run });
        }
        self.limits.check()?;
        if let Some(opening) = self.held.values().map(|held| held.fixed).find(|opening| opening.is_negative()) {
            return Err(SpacingError::NegativeOpening { opening });
        }
        let pattern = match &self.rule {
            Rule::Parts(parts) => self.equal(parts.checked_sub(1).ok_or(SpacingError::ZeroParts)?, Length::ZERO)?,
            Rule::Openings { members, thickness } => self.equal(*members, *thickness)?,
            Rule::Counted { thickness, count } => return self.counted(*count, *thickness, run),
            Rule::Widths(widths) => self.unequal(widths)?,
            Rule::Shares { shares, divider } => self.between(*divider, shares.iter().map(|share| Gap::share(*share)))?,
            Rule::Drawers(drawers) => self.between(drawers.divider, drawers.gaps(run)?)?,
            Rule::OnCenter(row) => row.pattern(self.near, self.far, run)?,
        };
        pattern.setting(&self.held, run)
    }

    /// So many members of one thickness, equal openings between them.
    pub(super) fn equal(&self, members: usize, width: Length) -> Result<Pattern, SpacingError> {
        let (near, far) = (self.near.gap()?, self.far.gap()?);
        refuse_negative(width)?;
        let mut pattern = Pattern::open();
        pattern.push(members.min(1), near, width);
        pattern.push(members.saturating_sub(1), Gap::OPEN, width);
        pattern.last = if members == 0 { near.met_by(far) } else { far };
        Ok(pattern)
    }

    /// Members of these widths, equal openings between them.
    fn unequal(&self, widths: &[Length]) -> Result<Pattern, SpacingError> {
        let (near, far) = (self.near.gap()?, self.far.gap()?);
        let mut pattern = Pattern::open();
        for (before, width) in widths.iter().enumerate() {
            refuse_negative(*width)?;
            pattern.push(1, if before == 0 { near } else { Gap::OPEN }, *width);
        }
        pattern.last = if widths.is_empty() { near.met_by(far) } else { far };
        Ok(pattern)
    }

    /// These openings with a divider between each two, and one more at an end that is not open.
    fn between(&self, divider: Length, mut openings: impl Iterator<Item = Gap>) -> Result<Pattern, SpacingError> {
        refuse_negative(divider)?;
        let mut pattern = Pattern::open();
        if self.near != End::Gap {
            pattern.push(1, self.near.gap()?, divider);
        }
        let mut gap = openings.next().ok_or(SpacingError::ZeroParts)?;
        for next in openings {
            pattern.push(1, gap, divider);
            gap = next;
        }
        if self.far != End::Gap {
            pattern.push(1, gap, divider);
            gap = self.far.gap()?;
        }
        pattern.last = gap;
        Ok(pattern)
    }
}

pub(super) fn refuse_negative(thickness: Length) -> Result<(), SpacingError> {
    if thickness.is_negative() { Err(SpacingError::NegativeThickness { thickness }) } else { Ok(()) }
}
