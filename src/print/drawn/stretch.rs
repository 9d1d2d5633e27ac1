//! Which lines of the tape are drawn: the numbers on either side of the reading, as much again around them
//! as there is room for, and nothing past the ends of the tape.

use num_rational::Ratio;

use super::rule::Rule;
use crate::length::Length;

/// A row of lines, by their count from the zero of the tape.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Stretch {
    pub(super) first: i128,
    pub(super) last: i128,
    /// Whether the tape begins at the first line.
    pub(super) begins: bool,
    /// If the tape ends here: the part of a step between the last line and its end.
    pub(super) ends: Option<Ratio<i128>>,
}

/// Where a tape has lines.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Reach {
    pub(super) from_zero: bool,
    pub(super) length: Option<Length>,
}

impl Stretch {
    /// Around a line that the tape has, with room for so many steps; `None` when they cannot be counted.
    pub(super) fn around(line: i128, rule: &Rule, reach: Reach, room: i128) -> Option<Self> {
        let whole = rule.interval(0);
        let below = line.checked_sub(line.rem_euclid(whole))?;
        let above = if below == line { line } else { below.checked_add(whole)? };
        let (below, above) = if above.checked_sub(below)? <= room { (below, above) } else { (line, line) };
        let margin = (room - (above - below)) / 2;
        let (first, last) = (below.checked_sub(margin)?, above.checked_add(margin)?);
        let begins = reach.from_zero && first <= 0;
        let stretch = Self { first: if begins { 0 } else { first }, last, begins, ends: None };
        reach.length.map_or(Some(stretch), |length| stretch.up_to(length.checked_ratio(rule.step)?))
    }

    /// Cut where a tape of so many steps ends; `None` when the part of a step that is left is too fine.
    fn up_to(self, steps: Ratio<i128>) -> Option<Self> {
        let last = steps.floor().to_integer();
        if last > self.last {
            return Some(self);
        }
        let part = steps.fract();
        u64::try_from(*part.denom()).ok()?;
        Some(Self { last, ends: Some(part), ..self })
    }

    pub(super) const fn steps(&self) -> i128 {
        self.last - self.first
    }

    pub(super) fn lines(&self) -> impl Iterator<Item = i128> + use<> {
        self.first..=self.last
    }
}
