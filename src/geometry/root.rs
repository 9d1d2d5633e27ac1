//! Square roots of sums and differences of squared lengths, rounded correctly: every graduation is tried by
//! comparing squares as whole numbers, so that no digit is ever cut off. Which root is wanted is left to
//! `diagonal.rs`, `square.rs` and `slant.rs`, the search to `rounded.rs`.

use core::cmp::Ordering;

use super::natural::Natural;
use super::{GeometryError, Rounded};
use crate::length::{Length, Rounding};

/// The square root of `square`, over `grain`, in ticks.
pub(super) struct Root {
    square: Natural,
    grain: Natural,
    /// One of the lengths it came from, for a refusal.
    length: Length,
}

impl Root {
    /// Of the sum of two squares.
    pub(super) fn of_sum(a: Length, b: Length) -> Self {
        Self::of(a, b, Natural::plus)
    }

    /// Of the difference of two squares, whichever is greater.
    pub(super) fn of_difference(a: Length, b: Length) -> Self {
        Self::of(a, b, Natural::apart)
    }

    /// Of the mean of two squares, which is half their sum: twice it over four.
    pub(super) fn of_mean(a: Length, b: Length) -> Self {
        let Self { square, grain, length } = Self::of_sum(a, b);
        let two = Natural::from(2_u64);
        Self { square: square.times(&two), grain: grain.times(&two), length }
    }

    fn of(a: Length, b: Length, join: fn(&Natural, &Natural) -> Natural) -> Self {
        let [own, other] = [a, b].map(|side| Natural::from(side.ticks().num().unsigned_abs()));
        let [own_den, other_den] = [a, b].map(|side| Natural::from(side.ticks().den()));
        let square = join(&own.times(&other_den).squared(), &other.times(&own_den).squared());
        Self { square, grain: own_den.times(&other_den), length: a }
    }

    /// The graduation the root rounds to.
    pub(super) fn round(&self, rounding: Rounding) -> Result<Rounded, GeometryError> {
        let step = rounding.step().ticks();
        let (num, den) = (Natural::from(step.num().unsigned_abs()), Natural::from(step.den()));
        // root / grain beside halves × num / (2 × den), both squared and freed of what is below the line.
        let own = self.square.times(&den.times(&Natural::from(2_u64)).squared());
        let unit = num.times(&self.grain);
        let beside = |halves: &Natural| -> Option<Ordering> { Some(own.cmp(&halves.times(&unit).squared())) };
        Rounded::found(rounding, beside, self.length)
    }
}
