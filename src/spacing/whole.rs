//! Where every opening of a pattern is a whole number of graduations at once: for each size that may be changed, the row
//! of its changes that bring that about. Going along the rows in order is left to `friendly.rs`.

use num_rational::Ratio;

use super::friendly::Change;
use super::pattern::{Gap, Pattern};
use super::progression::Progression;
use super::room::{Places, Room};
use super::{Spacing, SpacingError};
use crate::length::Length;
use crate::tape::Grain;

/// What changes are looked for.
pub(super) struct Task<'a> {
    pub(super) spacing: &'a Spacing,
    pub(super) pattern: &'a Pattern,
    pub(super) run: Length,
    pub(super) graduation: Length,
    /// No change is larger than this.
    pub(super) limit: Length,
}

/// The changes of one size, `first + place × step` for these places, and what the opening is with each.
#[derive(Clone)]
pub(super) struct Row<T> {
    pub(super) what: Change,
    pub(super) old: T,
    pub(super) first: T,
    /// Above zero, but for a row of one place.
    pub(super) step: T,
    pub(super) opening: T,
    pub(super) opening_step: T,
    /// Where the layout may keep to the limits of the spacing.
    pub(super) places: Places,
    /// Where it does for certain. What lies between is to be judged as cut.
    pub(super) sure: Places,
}

impl Task<'_> {
    /// Every `x` with which the gaps that have a share in it are whole; `None` when there is none.
    pub(super) fn whole(&self) -> Result<Option<Progression>, SpacingError> {
        let mut whole: Option<Progression> = None;
        for (_, _, gap) in self.pattern.gaps().filter(|(_, _, gap)| !gap.is_fixed()) {
            let own = Progression::of(gap, self.graduation).ok_or(SpacingError::OutOfRange { run: self.run })?;
            let Some(met) = whole.map_or(Ok(Some(own)), |whole| whole.meet(own, self.run))? else { return Ok(None) };
            whole = Some(met);
        }
        Ok(Some(whole.unwrap_or(Progression::ZERO)))
    }

    /// The changes of one size, if there are any, given every `x` that will do.
    pub(super) fn row(&self, what: Change, whole: Progression) -> Result<Option<Row<Length>>, SpacingError> {
        let out_of_range = SpacingError::OutOfRange { run: self.run };
        let changed = if let Change::Opening { after } = what { Some(after) } else { None };
        let others_are_whole = self
            .pattern
            .gaps()
            .all(|(first, count, gap)| !gap.is_fixed() || self.is_whole(gap.fixed) || count == 1 && changed == Some(first));
        let row = self.unbounded(what, whole).ok_or(out_of_range)?;
        let size = row.old.checked_add(row.first).ok_or(out_of_range)?;
        if !others_are_whole || changed.is_some() && !self.is_whole(size) {
            return Ok(None);
        }
        let slack = self.spacing.slack();
        let places = self.places(&row, slack).ok_or(out_of_range)?;
        let sure = self.places(&row, -slack).ok_or(out_of_range)?;
        Ok(Some(Row { places, sure, ..row }).filter(|row| row.places.count() > 0))
    }

    /// What the openings take or leave with each `x` is what the size must change by: the run by all of it, each member by
    /// its part.
    fn unbounded(&self, what: Change, whole: Progression) -> Option<Row<Length>> {
        let sums = self.pattern.sums()?;
        let weight = Ratio::new_raw(sums.weight.num(), sums.weight.den().into());
        let taken = whole.start.checked_mul_ratio(weight)?.checked_add(sums.need)?.checked_add(sums.steps)?;
        let (spare, step) = (self.run.checked_sub(taken)?, whole.step.checked_mul_ratio(weight)?);
        let (opening, opening_step, all) = (whole.start, whole.step, Places::ALL);
        let row = Row { what, old: self.run, first: -spare, step, opening, opening_step, places: all, sure: all };
        let less = Row { first: spare, opening_step: -whole.step, ..row.clone() };
        match what {
            Change::Run => Some(row),
            Change::Opening { after } => Some(Row { old: self.pattern.gap(after).fixed, ..less }),
            Change::Thickness => {
                let members = Ratio::from_integer(sums.members as i128);
                let (first, step) = (spare.checked_div_ratio(members)?, step.checked_div_ratio(members)?);
                Some(Row { old: self.pattern.thickness()?, first, step, ..less })
            }
        }
    }

    /// Where no change is over the limit, no size below zero, and every gap within its room.
    fn places(&self, row: &Row<Length>, slack: Length) -> Option<Places> {
        let one = if row.step.is_zero() { Places::ONE } else { Places::ALL };
        let limited = one.with(Room::between(-self.limit, self.limit), row.first, row.step)?;
        let size = row.old.checked_add(row.first)?;
        let mut places = limited.with(Room::AT_LEAST_ZERO, size, row.step)?;
        let changed = if let Change::Opening { after } = row.what { Some(after) } else { None };
        let members = self.pattern.members();
        for (first, count, gap) in self.pattern.gaps() {
            let start = row.opening.checked_mul_ratio(gap.weight)?.checked_add(gap.fixed)?;
            let step = row.opening_step.checked_mul_ratio(gap.weight)?;
            // Two of them, since at an end the first may have a right of its own.
            for after in (first..first + count).filter(|after| changed != Some(*after)).take(2) {
                places = places.with(self.spacing.room(after, members, slack)?, start, step)?;
            }
        }
        let changed = changed.map(|after| self.spacing.room(after, members, slack));
        changed.map_or(Some(places), |room| places.with(room?, size, row.step))
    }

    fn is_whole(&self, length: Length) -> bool {
        length.round(self.graduation) == Ok(length)
    }
}

impl Row<Length> {
    pub(super) fn lengths(&self) -> [Length; 5] {
        [self.old, self.first, self.step, self.opening, self.opening_step]
    }

    /// The same in counts of a grain that measures it; `None` when they cannot be held, at either end.
    pub(super) fn counted(&self, grain: Grain) -> Option<Row<i128>> {
        let row = Row {
            what: self.what,
            old: grain.count(self.old)?,
            first: grain.count(self.first)?,
            step: grain.count(self.step)?.max(1),
            opening: grain.count(self.opening)?,
            opening_step: grain.count(self.opening_step)?,
            places: self.places,
            sure: self.sure,
        };
        for place in [row.places.low, row.places.high] {
            row.old.checked_add(place.checked_mul(row.step)?.checked_add(row.first)?)?;
            place.checked_mul(row.opening_step)?.checked_add(row.opening)?;
        }
        Some(row)
    }
}

impl Row<i128> {
    pub(super) const fn change(&self, place: i128) -> i128 {
        self.first + place * self.step
    }
}

impl Pattern {
    /// Every gap with how many members stand before the first of its like in a row, and how many of them there are.
    pub(super) fn gaps(&self) -> impl Iterator<Item = (usize, usize, Gap)> {
        let mut first = 0;
        let each = self.segments.iter().map(|segment| (segment.count, segment.gap));
        each.chain([(1, self.last)]).map(move |(count, gap)| {
            first += count;
            (first - count, count, gap)
        })
    }

    pub(super) fn members(&self) -> usize {
        self.segments.iter().map(|segment| segment.count).sum()
    }

    /// The gap with so many members before it, or the last.
    pub(super) fn gap(&self, after: usize) -> Gap {
        self.gaps().find(|(first, count, _)| (*first..first + count).contains(&after)).map_or(self.last, |(_, _, gap)| gap)
    }

    /// How thick every member is, if they are all alike and have a thickness.
    pub(super) fn thickness(&self) -> Option<Length> {
        let first = self.segments.first()?.width;
        self.segments.iter().all(|segment| segment.width == first && !first.is_zero()).then_some(first)
    }

    /// The same with members of another thickness.
    pub(super) fn of_thickness(&self, width: Length) -> Self {
        let mut pattern = self.clone();
        pattern.segments.iter_mut().for_each(|segment| segment.width = width);
        pattern
    }
}
