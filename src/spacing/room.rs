//! The room that the limits of a spacing leave a gap, and where along a row of sizes a gap stays in it. What
//! the rows are is left to `whole.rs`.

use core::ops::Bound;

use super::{Narrowest, Spacing, Widest};
use crate::length::{Length, Rounding, RoundingMode};

/// What a length may come to.
#[derive(Clone, Copy)]
pub(super) struct Room {
    least: Bound<Length>,
    most: Bound<Length>,
}

/// Whole numbers from one to another; none when the first is the larger.
#[derive(Clone, Copy)]
pub(super) struct Places {
    pub(super) low: i128,
    pub(super) high: i128,
}

impl Room {
    pub(super) const AT_LEAST_ZERO: Self = Self { least: Bound::Included(Length::ZERO), most: Bound::Unbounded };

    pub(super) const fn between(least: Length, most: Length) -> Self {
        Self { least: Bound::Included(least), most: Bound::Included(most) }
    }

    fn contains(self, length: Length) -> bool {
        core::ops::RangeBounds::contains(&(self.least, self.most), &length)
    }

    /// The room that the same lengths have below zero.
    fn mirrored(self) -> Self {
        Self { least: self.most.map(|most| -most), most: self.least.map(|least| -least) }
    }
}

impl Places {
    pub(super) const ALL: Self = Self { low: i128::MIN, high: i128::MAX };
    pub(super) const ONE: Self = Self { low: 0, high: 0 };
    const NONE: Self = Self { low: 0, high: -1 };

    /// How many there are, or more than can be held.
    pub(super) const fn count(self) -> u128 {
        if self.low > self.high { 0 } else { self.high.abs_diff(self.low).saturating_add(1) }
    }

    pub(super) const fn contains(self, place: i128) -> bool {
        self.low <= place && place <= self.high
    }

    /// Those of them with which `start + place × step` stays in a room; `None` when they cannot be held.
    pub(super) fn with(self, room: Room, start: Length, step: Length) -> Option<Self> {
        if step.is_zero() {
            return Some(if room.contains(start) { self } else { Self::NONE });
        }
        if step.is_negative() {
            return self.with(room.mirrored(), -start, -step);
        }
        let steps = |bound: Length, mode| bound.checked_sub(start)?.steps(Rounding::to(step).mode(mode)).ok();
        let low = match room.least {
            Bound::Included(least) => steps(least, RoundingMode::Up)?,
            Bound::Excluded(least) => steps(least, RoundingMode::Down)?.checked_add(1)?,
            Bound::Unbounded => self.low,
        };
        let high = match room.most {
            Bound::Included(most) => steps(most, RoundingMode::Down)?,
            Bound::Excluded(most) => steps(most, RoundingMode::Up)?.checked_sub(1)?,
            Bound::Unbounded => self.high,
        };
        Some(Self { low: self.low.max(low), high: self.high.min(high) })
    }
}

impl Spacing {
    /// How much farther from the exact gap a gap as cut can be, from either side: the two marks beside it lean apart by
    /// a graduation at most.
    pub(super) fn slack(&self) -> Length {
        self.limits.cut.map_or(Length::ZERO, |(tape, _)| tape.step())
    }

    /// What the gap with so many members before it may come to, with some slack at either limit; with as much of it below
    /// zero, what it may come to however the marks lean. `None` when it cannot be held.
    pub(super) fn room(&self, after: usize, members: usize, slack: Length) -> Option<Room> {
        let narrowest = match self.limits.narrowest.filter(|_| self.is_full(after, members)) {
            None => Bound::Unbounded,
            Some(Narrowest::AtLeast(limit)) => Bound::Included(limit.checked_sub(slack)?),
            Some(Narrowest::Over(limit)) => Bound::Excluded(limit.checked_sub(slack)?),
        };
        // However narrow a gap may be, it is not below zero.
        let least = match narrowest {
            Bound::Included(least) | Bound::Excluded(least) if !least.is_negative() => narrowest,
            _ => Bound::Included(Length::ZERO),
        };
        let most = match self.limits.widest {
            None => Bound::Unbounded,
            Some(Widest::AtMost(limit)) => Bound::Included(limit.checked_add(slack)?),
            Some(Widest::Under(limit)) => Bound::Excluded(limit.checked_add(slack)?),
        };
        Some(Room { least, most })
    }
}
