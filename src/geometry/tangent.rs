//! Tangents with a proved bound, by whole numbers alone: sine and cosine as sums of a series, each known to
//! lie between two numbers a hair apart. A comparison that falls between them is refused, never guessed.
//! Pieces and their points are left to `miter.rs`, the search for a graduation to `rounded.rs`.

use alloc::vec;
use core::cmp::Ordering;

use super::natural::Natural;
use super::{Angle, GeometryError, Rounded};
use crate::length::{Fraction, Length, Rounding};

/// The words behind the binary point: sine and cosine are known to 2^-247.
const WORDS: usize = 4;

/// Pi to the same, cut off; the least word first. Its digits are checked in the tests, by Machin's formula.
const PI: [u64; WORDS + 1] = [0x082e_fa98_ec4e_6c89, 0xa409_3822_299f_31d0, 0x1319_8a2e_0370_7344, 0x243f_6a88_85a3_08d3, 3];

/// How far sine and cosine can be off, in units of their last bit. With an angle of at most 45 degrees, x is
/// under 0.79. Pi and x are cut off, which leaves x short by less than 2 units. A term of the series is the
/// one before it times x over its number, and each of the two steps is cut off: it is short by less than
/// 3 units. Fewer than 70 terms are above zero, and those left out come to less than 5 units in all. That
/// makes less than 2 + 70 × 3 + 5.
const MARGIN: u64 = 256;

/// A tangent, as a rise over a run that each lie within the margin of a known number.
pub(super) struct Tangent {
    rise: Natural,
    over: Natural,
}

/// `base + run × tangent`, a length that is not rational unless the angle is 0 or 45 degrees.
#[derive(Clone, Copy)]
pub(super) struct Slope {
    pub(super) base: Length,
    pub(super) run: Length,
}

impl Tangent {
    /// Of an angle above 0 and below 90 degrees.
    pub(super) fn of(angle: Angle) -> Self {
        Self::to_words(angle, WORDS)
    }

    fn to_words(angle: Angle, words: usize) -> Self {
        let (num, den) = (angle.fraction_of_degree().num().unsigned_abs(), angle.fraction_of_degree().den());
        let right = 90 * u128::from(den);
        // Past 45 degrees the tangent is one over that of what is missing to 90.
        let (steep, num) = if 2 * num > right { (true, right - num) } else { (false, num) };
        let x = Natural::of_words(PI.to_vec()).without(WORDS - words).times(&Natural::from(num)).over(den).over(180);
        let (sine, cosine) = sine_and_cosine(&x, words);
        if steep { Self { rise: cosine, over: sine } } else { Self { rise: sine, over: cosine } }
    }

    /// How `run` times this lies beside `gap`, both fractions above zero; `None` within the margin.
    fn compare(&self, run: (&Natural, &Natural), gap: (&Natural, &Natural)) -> Option<Ordering> {
        let (own, other) = (run.0.times(gap.1), gap.0.times(run.1));
        let margin = Natural::from(MARGIN);
        // The sine of the least angle that can be held, 2^-64 degrees, is far above the margin.
        let low = own.times(&self.rise.apart(&margin)) > other.times(&self.over.plus(&margin));
        let high = own.times(&self.rise.plus(&margin)) < other.times(&self.over.apart(&margin));
        if low { Some(Ordering::Greater) } else { high.then_some(Ordering::Less) }
    }
}

/// The sine and the cosine of `x`, all three with so many words behind the binary point: the terms
/// `x^k / k!`, with signs that alternate within each of the two.
fn sine_and_cosine(x: &Natural, words: usize) -> (Natural, Natural) {
    let mut one = vec![0; words];
    one.push(1);
    let mut term = Natural::of_words(one);
    let mut sums = [Natural::ZERO, Natural::ZERO, Natural::ZERO, Natural::ZERO];
    for (place, number) in (0..4).cycle().zip(1_u64..) {
        sums[place] = sums[place].plus(&term);
        term = term.times(x).without(words).over(number);
        if term.is_zero() {
            break;
        }
    }
    let [cosine, sine, less_cosine, less_sine] = sums;
    (sine.apart(&less_sine), cosine.apart(&less_cosine))
}

impl Slope {
    /// The length at an angle whose tangent is 1.
    pub(super) fn at_45(self) -> Option<Length> {
        self.base.checked_add(self.run)
    }

    /// The graduation that the length rounds to at an angle from 0 to under 90 degrees; `None` when it is
    /// below zero.
    pub(super) fn round(self, angle: Angle, rounding: Rounding) -> Result<Option<Rounded>, GeometryError> {
        let out_of_range = GeometryError::OutOfRange { length: self.base };
        let level = self.run.is_zero() || angle == Angle::degrees(0);
        if level || angle == Angle::degrees(45) {
            let exact = if level { self.base } else { self.at_45().ok_or(out_of_range)? };
            return if exact.is_negative() { Ok(None) } else { Rounded::of(exact, rounding).map(Some) };
        }
        self.round_by(&Tangent::of(angle), rounding)
    }

    fn round_by(self, tangent: &Tangent, rounding: Rounding) -> Result<Option<Rounded>, GeometryError> {
        let beside = |halves: &Natural| self.beside(halves, rounding.step().ticks(), tangent);
        match beside(&Natural::ZERO) {
            Some(Ordering::Less) => Ok(None),
            _ => Rounded::found(rounding, beside, self.base).map(Some),
        }
    }

    /// How the length lies beside so many half steps. The base is not below zero, the run not zero.
    fn beside(self, halves: &Natural, step: Fraction, tangent: &Tangent) -> Option<Ordering> {
        let (base, run) = (self.base.ticks(), self.run.ticks());
        let (step_num, step_den) = (Natural::from(step.num().unsigned_abs()), Natural::from(step.den()));
        let (base_num, base_den) = (Natural::from(base.num().unsigned_abs()), Natural::from(base.den()));
        let twice = step_den.times(&Natural::from(2_u64));
        // From the base to the mark, over `twice × base_den`.
        let (mark, start) = (halves.times(&step_num).times(&base_den), base_num.times(&twice));
        let toward = if run.num() < 0 { Ordering::Less } else { Ordering::Greater };
        if mark.cmp(&start) != toward {
            return Some(toward); // the run leads away from the mark
        }
        let run = (&Natural::from(run.num().unsigned_abs()), &Natural::from(run.den()));
        let reached = tangent.compare(run, (&mark.apart(&start), &twice.times(&base_den)))?;
        Some(if toward.is_lt() { reached.reverse() } else { reached })
    }
}

#[cfg(test)]
mod tests;
