//! What the whole-crate tests share: big rationals as the oracle, what a quantity can hold, and lengths
//! of every kind. Each test file uses a part of it. Nothing here goes through the crate's own parser.

#![allow(dead_code)] // each test file is a crate of its own and takes what it needs

pub mod bytes;
pub mod calculation;
#[macro_use]
pub mod chance;
pub mod printers;
pub mod saw;
#[cfg(feature = "serde")]
pub mod stored;
pub mod tables;
pub mod texts;

use num_bigint::BigInt;
use num_rational::{BigRational, Ratio};
use quickcheck::{Arbitrary, Gen};
use scantling::{Length, Unit};

/// The ticks of an inch, 2^10 × 3^3 × 5^6 × 7 × 11 × 13 × 127: worked by hand.
pub const TICKS: i128 = 54_918_864_000_000;

/// A ratio of machine integers as a big one.
pub fn big(ratio: Ratio<i128>) -> BigRational {
    BigRational::new((*ratio.numer()).into(), (*ratio.denom()).into())
}

/// A length in inches.
pub fn inches(length: Length) -> BigRational {
    big(length.in_unit(Unit::Inch))
}

/// A whole number.
pub fn whole(number: impl Into<BigInt>) -> BigRational {
    BigRational::from(number.into())
}

/// Whether a quantity can hold this many of its own unit, ticks or square or cubic inches: an `i128`
/// whose sign can turn, over a `u64`.
pub fn held(exact: &BigRational) -> bool {
    held_as_ratio(exact) && u64::try_from(exact.denom()).is_ok()
}

/// Whether a ratio of machine integers can hold it.
pub fn held_as_ratio(exact: &BigRational) -> bool {
    let num = i128::try_from(exact.numer()).is_ok_and(|num| num != i128::MIN);
    num && i128::try_from(exact.denom()).is_ok()
}

/// Whether a length can hold this many inches.
pub fn held_as_length(inches: &BigRational) -> bool {
    held(&(inches * whole(TICKS)))
}

/// A length of this many ticks; any can be held but one of `i128::MIN`.
pub fn ticks(num: i128, den: u64) -> Length {
    let inches = Ratio::new_raw(num, i128::from(den) * TICKS);
    Length::try_from_ratio(inches, Unit::Inch).expect("a held number of ticks")
}

/// An integer from small to the ends of its range, as often near a power of two as not.
pub fn wide(random: &mut Gen) -> i128 {
    let near_a_power = (1_i128 << (u8::arbitrary(random) % 127)) - 1 + i128::from(u8::arbitrary(random) % 3);
    let magnitude = match u8::arbitrary(random) % 5 {
        0 => i128::from(u8::arbitrary(random)),
        1 => i128::from(u64::arbitrary(random)),
        2 => i128::MAX / i128::from(u8::arbitrary(random).max(1)),
        3 => near_a_power,
        _ => (i128::arbitrary(random) / 2).abs(),
    };
    if bool::arbitrary(random) { -magnitude } else { magnitude }
}

/// A denominator: one, small, near a power of two, or any.
pub fn below_the_line(random: &mut Gen) -> u64 {
    let den = match u8::arbitrary(random) % 4 {
        0 => 1,
        1 => u64::from(u8::arbitrary(random) % 48),
        2 => (1_u64 << (u8::arbitrary(random) % 64)).wrapping_sub(u64::from(bool::arbitrary(random))),
        _ => u64::arbitrary(random),
    };
    den.max(1)
}

/// A length as a shop writes it: sixty-fourths, decimals, tenths of a millimeter, equal parts.
#[derive(Clone, Copy, Debug)]
pub struct Shop(pub Length);

impl Arbitrary for Shop {
    fn arbitrary(random: &mut Gen) -> Self {
        let count = i64::from(i16::arbitrary(random));
        let parts = u64::from(u8::arbitrary(random) % 24) + 1;
        Self(match u8::arbitrary(random) % 5 {
            0 => Length::new(count, Unit::Inch),
            1 => Length::fraction(count, 64, Unit::Inch),
            2 => Length::fraction(count, 1000, Unit::Foot),
            3 => Length::fraction(count, 10, Unit::Millimeter),
            _ => Length::fraction(count, parts, Unit::Inch),
        })
    }
}

/// Any length at all: one a shop writes, or one that lies at the edges of what can be held.
#[derive(Clone, Copy, Debug)]
pub struct Any(pub Length);

impl Arbitrary for Any {
    fn arbitrary(random: &mut Gen) -> Self {
        let shop = Shop::arbitrary(random).0;
        if bool::arbitrary(random) { Self(shop) } else { Self(ticks(wide(random), below_the_line(random))) }
    }
}

/// A run of choices, for whatever is made by choosing. When they are used up, the first of everything is chosen.
#[derive(Clone, Debug)]
pub struct Choices(Vec<u64>);

impl Choices {
    /// Takes one after the other.
    pub fn take(self) -> impl FnMut(u64) -> u64 {
        let mut left = self.0.into_iter();
        move |below| left.next().map_or(0, |choice| choice % below)
    }
}

impl Arbitrary for Choices {
    fn arbitrary(random: &mut Gen) -> Self {
        Self((0..256).map(|_| u64::arbitrary(random)).collect())
    }

    fn shrink(&self) -> Box<dyn Iterator<Item = Self>> {
        Box::new(self.0.shrink().map(Self))
    }
}
