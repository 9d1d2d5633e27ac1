//! A million short chains of operations against fractions of big integers that are never reduced on the way: what the crate gives is
//! compared by cross-multiplication, and what it refuses is brought to lowest terms, to see that it could not be held. Long chains, with
//! areas and volumes on the way, are left to `arithmetic.rs`.

use num_bigint::BigInt;
use num_rational::{BigRational, Ratio};
use scantling::{Length, Unit};

use crate::support::{held_as_length, ticks};

/// All of them where the code is optimized, one in fifty where it is not.
const CHAINS: u64 = if cfg!(debug_assertions) { 20_000 } else { 1_000_000 };
const STEPS: usize = 4;

/// Steele, Lea and Flood's `SplitMix64`: every run takes the same choices.
struct Random(u64);

impl Random {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    fn below(&mut self, most: u64) -> u64 {
        self.next() % most
    }

    /// Small for the most part, and now and then of any size.
    #[allow(clippy::cast_possible_wrap)] // of any sign
    fn count(&mut self) -> i64 {
        let bits = [6, 6, 10, 17, 40, 64][usize::try_from(self.below(6)).unwrap()];
        (self.next() as i64) >> (64 - bits)
    }

    fn den(&mut self) -> u64 {
        match self.below(8) {
            0..3 => 1 << self.below(7),
            3..5 => self.below(24) + 1,
            5 => 10_u64.pow(u32::try_from(self.below(4)).unwrap()),
            6 => self.below(1000) + 1,
            _ => self.next() >> self.below(60) | 1,
        }
    }

    fn length(&mut self) -> Length {
        let unit = Unit::ALL[usize::try_from(self.below(6)).unwrap()];
        match self.below(16) {
            0 => ticks(i128::MAX >> self.below(127), self.den()),
            _ => Length::fraction(self.count(), self.den(), unit),
        }
    }
}

/// An exact number of inches, not in lowest terms.
struct Exact {
    num: BigInt,
    den: BigInt,
}

impl Exact {
    fn of(length: Length) -> Self {
        Self::ratio(length.in_unit(Unit::Inch))
    }

    fn ratio(ratio: Ratio<i128>) -> Self {
        Self { num: (*ratio.numer()).into(), den: (*ratio.denom()).into() }
    }

    fn plus(self, other: &Self, sign: i32) -> Self {
        Self { num: self.num * &other.den + &other.num * &self.den * sign, den: self.den * &other.den }
    }

    fn times(self, num: impl Into<BigInt>, den: impl Into<BigInt>) -> Self {
        Self { num: self.num * num.into(), den: self.den * den.into() }
    }

    fn is(&self, length: Length) -> bool {
        let other = Self::of(length);
        &self.num * other.den == other.num * &self.den
    }

    fn can_be_held(&self) -> bool {
        held_as_length(&BigRational::new(self.num.clone(), self.den.clone()))
    }
}

/// One step: what the crate makes of it, and what it is; `None` where there is nothing to divide by.
fn step(random: &mut Random, length: Length, exact: Exact) -> Option<(Option<Length>, Exact)> {
    Some(match random.below(7) {
        0..2 => {
            let other = random.length();
            (length.checked_add(other), exact.plus(&Exact::of(other), 1))
        }
        2 => {
            let other = random.length();
            (length.checked_sub(other), exact.plus(&Exact::of(other), -1))
        }
        3 => {
            let count = random.count();
            (length.checked_mul(count), exact.times(count, 1))
        }
        4 => {
            let count = random.count();
            let over = (length.checked_div(count), exact.times(1, count));
            return (count != 0).then_some(over);
        }
        5 => {
            let (num, den) = (random.count(), random.den());
            (length.checked_mul_ratio(Ratio::new_raw(num.into(), den.into())), exact.times(num, den))
        }
        _ => {
            let (num, den) = (random.count(), random.den());
            let over = (length.checked_div_ratio(Ratio::new_raw(num.into(), den.into())), exact.times(den, num));
            return (num != 0).then_some(over);
        }
    })
}

#[test]
fn a_million_chains_agree_with_big_fractions() {
    let mut random = Random(1);
    let (mut given, mut refused) = (0_u64, 0_u64);
    for chain in 0..CHAINS {
        let mut length = random.length();
        let mut exact = Exact::of(length);
        for _ in 0..STEPS {
            let Some((got, expected)) = step(&mut random, length, exact) else { break };
            let Some(got) = got else {
                assert!(!expected.can_be_held(), "chain {chain}: behind {length:?} a length was refused that can be held");
                refused += 1;
                break;
            };
            assert!(expected.is(got), "chain {chain}: {length:?} came to {got:?}");
            given += 1;
            (length, exact) = (got, expected);
        }
    }
    // Both happen often enough to tell.
    assert!(given > 2 * CHAINS && refused > CHAINS / 100, "{given} given and {refused} refused");
}
