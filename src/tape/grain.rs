//! A common unit for many lengths, so that their sums are whole numbers and one step of a long row of
//! marks is one integer addition. Turning a count back into a length is left to the moment it is asked for.

use crate::length::{Fraction, Length, gcd};

/// The `per_tick`th part of a tick.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Grain {
    per_tick: u64,
}

impl Grain {
    /// The coarsest grain that measures one length in whole numbers.
    pub(crate) const fn of(length: Length) -> Self {
        Self { per_tick: length.ticks().den() }
    }

    /// The coarsest grain that measures both of two; `None` when it is too fine to be held.
    pub(crate) fn common(self, other: Self) -> Option<Self> {
        let shared = gcd(self.per_tick.into(), other.per_tick.into());
        let per_tick = u128::from(self.per_tick) / shared * u128::from(other.per_tick);
        Some(Self { per_tick: u64::try_from(per_tick).ok()? })
    }

    /// How many of this grain a length is; `None` when that is no whole number, or too many to be held.
    pub(crate) fn count(self, length: Length) -> Option<i128> {
        let (num, den) = (length.ticks().num(), length.ticks().den());
        if self.per_tick % den != 0 {
            return None;
        }
        num.checked_mul((self.per_tick / den).into())
    }

    /// How many of this grain one of a coarser grain is, where `self` came from `coarser.common(..)`.
    pub(crate) fn in_one_of(self, coarser: Self) -> i128 {
        (self.per_tick / coarser.per_tick).into()
    }

    /// So many of this grain, as a length in lowest terms.
    #[inline]
    pub(crate) const fn length(self, count: i128) -> Length {
        let ticks = if self.per_tick == 1 { Fraction::whole(count) } else { Fraction::reduced(count, self.per_tick as u128) };
        match ticks {
            Some(ticks) => Length::from_ticks(ticks),
            // Only `i128::MIN` over one would fail, and every count is checked to be nearer to zero.
            None => unreachable!(),
        }
    }
}
