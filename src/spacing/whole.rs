//! Where every opening of a pattern is a whole number of graduations at once: for each size that may be changed, the row
//! of its changes that bring that about. Going along the rows in order is left to `friendly.rs`.

use num_rational::Ratio;

use super::SpacingError;
use super::friendly::Change;
use super::pattern::{Gap, Pattern};
use super::progression::Progression;
use crate::length::{Length, Rounding, RoundingMode};
use crate::tape::Grain;

/// What changes are looked for.
pub(super) struct Task<'a> {
    pub(super) pattern: &'a Pattern,
    pub(super) run: Length,
    pub(super) graduation: Length,
    /// No change is larger than this.
    pub(super) limit: Length,
}

/// The changes of one size, `first + place × step` for places from `low` to `high`, and what the opening is with each.
#[derive(Clone)]
pub(super) struct Row<T> {
    pub(super) what: Change,
    pub(super) old: T,
    pub(super) first: T,
    /// Above zero, but for a row of one place.
    pub(super) step: T,
    pub(super) opening: T,
    pub(super) opening_step: T,
    pub(super) low: i128,
    pub(super) high: i128,
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
        let (low, high) = self.bounds(&row).ok_or(out_of_range)?;
        Ok(Some(Row { low, high, ..row }).filter(|row| row.low <= row.high))
    }

    /// What the openings take or leave with each `x` is what the size must change by: the run by all of it, each member by
    /// its part.
    fn unbounded(&self, what: Change, whole: Progression) -> Option<Row<Length>> {
        let sums = self.pattern.sums()?;
        let weight = Ratio::new_raw(sums.weight.num(), sums.weight.den().into());
        let taken = whole.start.checked_mul_ratio(weight)?.checked_add(sums.need)?.checked_add(sums.steps)?;
        let (spare, step) = (self.run.checked_sub(taken)?, whole.step.checked_mul_ratio(weight)?);
        let row =
            Row { what, old: self.run, first: -spare, step, opening: whole.start, opening_step: whole.step, low: 0, high: 0 };
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

    /// From where to where no change is over the limit, and no size and no gap below zero.
    fn bounds(&self, row: &Row<Length>) -> Option<(i128, i128)> {
        let (least, most) = ((-self.limit).max(-row.old), self.limit);
        if row.step.is_zero() {
            return Some((0, if (least..=most).contains(&row.first) { 0 } else { -1 }));
        }
        let low = steps(least.checked_sub(row.first)?, row.step, RoundingMode::Up)?;
        let high = steps(most.checked_sub(row.first)?, row.step, RoundingMode::Down)?;
        let room = row.opening.checked_sub(self.pattern.least_opening()?)?;
        if row.opening_step.is_negative() {
            Some((low, high.min(steps(room, -row.opening_step, RoundingMode::Down)?)))
        } else {
            Some((low.max(-steps(room, row.opening_step, RoundingMode::Down)?), high))
        }
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
            low: self.low,
            high: self.high,
        };
        for place in [row.low, row.high] {
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

fn steps(length: Length, step: Length, mode: RoundingMode) -> Option<i128> {
    length.steps(Rounding::to(step).mode(mode)).ok()
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

    /// The least `x` with which no gap is below zero; `None` when it cannot be held.
    fn least_opening(&self) -> Option<Length> {
        let weighted = self.gaps().filter(|(_, _, gap)| !gap.is_fixed());
        let mut least = weighted.map(|(_, _, gap)| (-gap.fixed).checked_div_ratio(gap.weight));
        let first = least.next()??;
        least.try_fold(first, |so_far, least| Some(so_far.max(least?)))
    }
}
