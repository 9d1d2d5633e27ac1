//! The inner form of every spacing, and the one solver. A pattern is a list of members, run-length
//! coded, each with the gap before it, and the gap after the last; every gap is `weight × x + fixed`.
//! Which kind makes which pattern is left to the file of the kind, positions to `layout.rs`.

use alloc::collections::BTreeMap;
use alloc::vec::Vec;

use num_rational::Ratio;

use super::{Layout, SpacingError};
use crate::length::{Fraction, Length};

/// A gap before it is solved: `weight × x + fixed`. Gaps that are equal here are meant to be equal.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Gap {
    pub(super) weight: Ratio<i128>,
    pub(super) fixed: Length,
}

/// So many members of one width, each with the same gap before it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Segment {
    pub(super) count: usize,
    pub(super) gap: Gap,
    pub(super) width: Length,
}

/// A whole run, from the datum to the far end. Counts are above zero; widths and weights not below it.
#[derive(Clone, Debug)]
pub(super) struct Pattern {
    pub(super) segments: Vec<Segment>,
    pub(super) last: Gap,
}

/// What a pattern adds up to.
pub(super) struct Sums {
    pub(super) members: usize,
    /// Members and gaps of fixed size.
    pub(super) need: Length,
    /// The fixed parts of gaps that have a weight too; they may be below zero.
    pub(super) steps: Length,
    pub(super) weight: Fraction,
}

impl Gap {
    pub(super) const OPEN: Self = Self { weight: Ratio::new_raw(1, 1), fixed: Length::ZERO };
    pub(super) const HALF: Self = Self { weight: Ratio::new_raw(1, 2), fixed: Length::ZERO };
    pub(super) const NONE: Self = Self { weight: Ratio::new_raw(0, 1), fixed: Length::ZERO };

    pub(super) const fn fixed(fixed: Length) -> Self {
        Self { fixed, ..Self::NONE }
    }

    /// So many shares of the run; the same share is the same gap.
    pub(super) const fn share(share: u64) -> Self {
        Self { weight: Ratio::new_raw(share as i128, 1), ..Self::NONE }
    }

    /// The one gap left where no member stands between two ends: a margin has nothing to keep clear of.
    pub(super) fn met_by(self, other: Self) -> Self {
        if self.is_fixed() && other.is_fixed() { Self::NONE } else { Self::OPEN }
    }

    pub(super) fn is_fixed(self) -> bool {
        *self.weight.numer() == 0
    }

    /// How wide the gap is once `x` is known.
    pub(super) fn solved(self, opening: Length, run: Length) -> Result<Length, SpacingError> {
        match opening.checked_mul_ratio(self.weight).and_then(|share| share.checked_add(self.fixed)) {
            Some(gap) if gap.is_negative() => Err(SpacingError::NegativeGap { gap, run }),
            gap => gap.ok_or(SpacingError::OutOfRange { run }),
        }
    }
}

impl Pattern {
    /// One gap and no member.
    pub(super) const fn open() -> Self {
        Self { segments: Vec::new(), last: Gap::OPEN }
    }

    /// Goes on with so many members, each behind the same gap.
    pub(super) fn push(&mut self, count: usize, gap: Gap, width: Length) {
        match self.segments.last_mut() {
            _ if count == 0 => {}
            Some(last) if last.gap == gap && last.width == width && last.count.checked_add(count).is_some() => {
                last.count += count;
            }
            _ => self.segments.push(Segment { count, gap, width }),
        }
    }

    /// The same with other gaps in some places, each known by how many members stand before it.
    pub(super) fn setting(self, gaps: &BTreeMap<usize, Gap>, run: Length) -> Result<Self, SpacingError> {
        if gaps.is_empty() {
            return Ok(self);
        }
        let mut set = Self { segments: Vec::with_capacity(self.segments.len() + 2 * gaps.len()), last: self.last };
        let mut first = 0_usize;
        for Segment { count, gap, width } in self.segments {
            let end = first.checked_add(count).ok_or(SpacingError::OutOfRange { run })?;
            for (after, other) in gaps.range(first..end) {
                set.push(after - first, gap, width);
                set.push(1, *other, width);
                first = after + 1;
            }
            set.push(end - first, gap, width);
            first = end;
        }
        match gaps.range(first..).next_back() {
            Some((after, other)) if *after == first => set.last = *other,
            Some((after, _)) => return Err(SpacingError::NoSuchOpening { after: *after, members: first }),
            None => {}
        }
        Ok(set)
    }

    /// Solves for `x` and lays the run out.
    pub(super) fn over(&self, run: Length) -> Result<Layout, SpacingError> {
        if run.is_negative() {
            return Err(SpacingError::NegativeRun { run });
        }
        let out_of_range = SpacingError::OutOfRange { run };
        let Sums { members, need, steps, weight } = self.sums().ok_or(out_of_range)?;
        let left = run.checked_sub(need).ok_or(out_of_range)?;
        if left.is_negative() {
            return Err(SpacingError::DoesNotFit { members, need, run, short: -left });
        }
        if weight == Fraction::ZERO {
            return if left.is_zero() {
                Layout::new(self, run, Length::ZERO)
            } else {
                Err(SpacingError::NothingToShare { members, need, run, left })
            };
        }
        let shared = left.checked_sub(steps).ok_or(out_of_range)?;
        let weight = Ratio::new_raw(weight.num(), weight.den().into());
        Layout::new(self, run, shared.checked_div_ratio(weight).ok_or(out_of_range)?)
    }

    /// `None` when they cannot be held.
    pub(super) fn sums(&self) -> Option<Sums> {
        let none = Sums { members: 0, need: Length::ZERO, steps: Length::ZERO, weight: Fraction::ZERO };
        let sums = self.segments.iter().try_fold(none, |sums, segment| {
            let count = Ratio::from_integer(segment.count as i128);
            let members = sums.members.checked_add(segment.count)?;
            let need = sums.need.checked_add(segment.width.checked_mul_ratio(count)?)?;
            Sums { members, need, ..sums }.with(segment.gap, count)
        })?;
        // One gap more than members must be countable too.
        sums.members.checked_add(1)?;
        sums.with(self.last, Ratio::from_integer(1))
    }
}

impl Sums {
    fn with(self, gap: Gap, count: Ratio<i128>) -> Option<Self> {
        let fixed = gap.fixed.checked_mul_ratio(count)?;
        if gap.is_fixed() {
            return Some(Self { need: self.need.checked_add(fixed)?, ..self });
        }
        let (num, den) = (*gap.weight.numer(), u128::try_from(*gap.weight.denom()).ok()?);
        let weight = Fraction::reduced(num, den)?.checked_mul_int(*count.numer())?;
        Some(Self { steps: self.steps.checked_add(fixed)?, weight: self.weight.checked_add(weight)?, ..self })
    }
}
