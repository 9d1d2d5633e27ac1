//! A common unit for many lengths, so that their sums are whole numbers and one step of a long row of
//! marks is one integer addition. Turning a count back into a length is left to the moment it is asked for.

use crate::length::{Fraction, Length};

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
