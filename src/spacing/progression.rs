//! Numbers a step apart, and those that two such rows have in common: the arithmetic of
//! openings that are whole at once. What is done with it is left to `whole.rs`.

use super::SpacingError;
use super::pattern::Gap;
use crate::length::{Length, gcd};
use crate::tape::Grain;

/// Every `start + k × step`, for any whole `k`; the step is above zero, or zero for one number alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Progression {
    pub(super) start: Length,
    pub(super) step: Length,
}

impl Progression {
    /// Zero alone.
    pub(super) const ZERO: Self = Self { start: Length::ZERO, step: Length::ZERO };

    /// Every `x` that makes a gap with a weight above zero a whole number of graduations; `None` when they cannot be
    /// held.
    pub(super) fn of(gap: Gap, graduation: Length) -> Option<Self> {
        let start = (-gap.fixed).checked_div_ratio(gap.weight)?;
        Some(Self { start, step: graduation.checked_div_ratio(gap.weight)? })
    }

    /// What two rows with steps above zero have in common, if they ever meet: by the Chinese remainder theorem, in a grain
    /// that measures both.
    pub(super) fn meet(self, other: Self, run: Length) -> Result<Option<Self>, SpacingError> {
        let out_of_range = SpacingError::OutOfRange { run };
        let lengths = [self.start, self.step, other.start, other.step];
        let grain = common_grain(lengths).ok_or(out_of_range)?;
        let [start, step, other_start, other_step] = lengths.map(|length| grain.count(length).ok_or(out_of_range));
        let (start, step) = (start?, step?);
        let (apart, other_step) = (other_start?.checked_sub(start).ok_or(out_of_range)?, other_step?);
        let shared = i128::try_from(gcd(step.unsigned_abs(), other_step.unsigned_abs())).map_err(|_| out_of_range)?;
        if apart % shared != 0 {
            return Ok(None);
        }
        let around = other_step / shared;
        let steps = (apart / shared).rem_euclid(around).checked_mul(inverse(step / shared, around)).ok_or(out_of_range)? % around;
        let start = step.checked_mul(steps).and_then(|steps| steps.checked_add(start)).ok_or(out_of_range)?;
        let step = step.checked_mul(around).ok_or(out_of_range)?;
        Ok(Some(Self { start: grain.length(start), step: grain.length(step) }))
    }
}

/// The coarsest grain that measures all of these.
pub(super) fn common_grain(lengths: impl IntoIterator<Item = Length>) -> Option<Grain> {
    lengths.into_iter().try_fold(Grain::of(Length::ZERO), |grain, length| grain.common(Grain::of(length)))
}

/// What, times `number`, leaves 1 over `around`; the two have no common divisor. Euclid's rule, keeping track of how often
/// the number went in; no value passes `around`.
fn inverse(number: i128, around: i128) -> i128 {
    let (mut rests, mut times) = ((around, number.rem_euclid(around)), (0, 1));
    while rests.1 != 0 {
        let quotient = rests.0 / rests.1;
        rests = (rests.1, rests.0 - quotient * rests.1);
        times = (times.1, times.0 - quotient * times.1);
    }
    times.0.rem_euclid(around)
}

#[cfg(test)]
mod tests {
    use super::{Progression, inverse};
    use crate::length::{Fraction, Length, Unit};

    #[test]
    fn inverses_of_every_small_number() {
        for around in 1..60 {
            for number in (0..200).filter(|number| crate::length::gcd(*number, around) == 1) {
                let (number, around) = (i128::try_from(number).unwrap(), i128::try_from(around).unwrap());
                assert_eq!(inverse(number, around) * number % around, 1 % around, "{number} around {around}");
            }
        }
    }

    /// Worked by trying: which of the first so many numbers of one row are in the other.
    #[test]
    fn rows_meet_where_trying_finds_them() {
        let row = |start, step| Progression { start: twelfths(start), step: twelfths(step) };
        for (start, step, other_start, other_step) in cases() {
            let met = row(start, step).meet(row(other_start, other_step), Length::ZERO).unwrap();
            let is_in_both = |number: &i64| (number - start) % step == 0 && (number - other_start) % other_step == 0;
            let mut both = (0..10_000).filter(is_in_both);
            let tried = both.next().zip(both.next()).map(|(first, second)| (first, second - first));
            let step_of_it = met.map(|met| met.step);
            assert_eq!(step_of_it, tried.map(|(_, step)| twelfths(step)), "{start} {step} {other_start} {other_step}");
            if let (Some(met), Some((first, _))) = (met, tried) {
                assert!((met.start - twelfths(first)).checked_ratio(met.step).unwrap().is_integer());
            }
        }
    }

    /// Worked by hand: every 2^40, and every 2^50 + 1 from 2^49, have in common every 2^40 × (2^50 + 1) from 2^49. On the way
    /// there no number may grow so that the rows could not be held.
    #[test]
    fn long_steps_meet() {
        let row = |start, step| Progression { start: ticks(start), step: ticks(step) };
        let (short, long) = (1_i128 << 40, (1_i128 << 50) + 1);
        let met = row(0, short).meet(row(1 << 49, long), Length::ZERO);
        assert_eq!(met, Ok(Some(row(1 << 49, short * long))));
    }

    fn ticks(count: i128) -> Length {
        Length::from_ticks(Fraction::whole(count).unwrap())
    }

    fn twelfths(count: i64) -> Length {
        Length::fraction(count, 12, Unit::Inch)
    }

    fn cases() -> impl Iterator<Item = (i64, i64, i64, i64)> {
        let steps = [1, 2, 3, 4, 6, 9, 10, 35];
        let each = move |start: i64| steps.into_iter().map(move |step| (start, step));
        [-7, 0, 1, 5].into_iter().flat_map(each).flat_map(move |(start, step)| {
            [-2, 0, 3, 8].into_iter().flat_map(each).map(move |(other, other_step)| (start, step, other, other_step))
        })
    }
}
