//! Proof of the tangents: sine and cosine against a series of a thousand bits, graduations against roots that
//! some tangents are, and refusals where too few digits are kept on purpose.

use std::sync::LazyLock;

use num_bigint::BigInt;
use num_rational::BigRational;
use quickcheck::{TestResult, quickcheck};

use super::{Angle, MARGIN, Natural, PI, Slope, Tangent, WORDS};
use crate::geometry::{GeometryError, Rounded};
use crate::length::{Length, Rounding, RoundingMode, Unit};

/// The bits behind the binary point of the oracle.
const BITS: u32 = 1024;

const MODES: [RoundingMode; 6] = [
    RoundingMode::TiesUp,
    RoundingMode::TiesEven,
    RoundingMode::TiesAway,
    RoundingMode::Down,
    RoundingMode::Up,
    RoundingMode::TowardZero,
];

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

/// The angle whose tangent is one over a whole number, by Gregory's series.
fn arc_tangent_of_one_over(number: u32) -> BigInt {
    let mut power = (BigInt::from(1) << BITS) / number;
    let mut sum = BigInt::ZERO;
    for odd in (1_u32..).step_by(2) {
        let term = &power / odd;
        if term == BigInt::ZERO {
            break;
        }
        if odd % 4 == 1 {
            sum += term;
        } else {
            sum -= term;
        }
        power /= number * number;
    }
    sum
}

/// Pi by Machin's formula, 16 arctan 1/5 - 4 arctan 1/239; its last bits are not to be trusted.
static MACHIN: LazyLock<BigInt> = LazyLock::new(|| 16 * arc_tangent_of_one_over(5) - 4 * arc_tangent_of_one_over(239));

/// Sine and cosine of an angle, by a series that takes two steps at a time.
fn oracle(angle: Angle) -> [BigInt; 2] {
    let (num, den) = (*angle.in_degrees().numer(), *angle.in_degrees().denom());
    let x: BigInt = &*MACHIN * num / (180 * BigInt::from(den));
    [1_u32, 0].map(|start| {
        let mut term = if start == 1 { x.clone() } else { BigInt::from(1) << BITS };
        let mut sum = BigInt::ZERO;
        for last in (start..).step_by(2) {
            if term == BigInt::ZERO {
                break;
            }
            sum += &term;
            term = -((((&term * &x) >> BITS) * &x) >> BITS) / ((last + 1) * (last + 2));
        }
        sum
    })
}

/// What the code keeps, with the bits of the oracle.
fn lifted(number: &Natural) -> BigInt {
    BigInt::from(number.big()) << (BITS as usize - 64 * WORDS)
}

#[test]
fn pi_is_right_to_the_last_bit() {
    let short = &*MACHIN - lifted(&Natural::of_words(PI.to_vec()));
    assert!(short > BigInt::ZERO && short < lifted(&Natural::from(1_u64)));
}

/// Every quarter of a degree, and angles near the ends and the middle. The margin is a proof; this would find
/// a mistake in it.
#[test]
fn sine_and_cosine_lie_within_the_margin() {
    let quarters = (1..360).map(|quarter| Angle::fraction(quarter, 4));
    let near = |degrees: i64| [-1, 1].map(|hair| Angle::fraction(degrees * 1_000_000_007 + hair, 1_000_000_007));
    let ends = [Angle::fraction(1, u64::MAX), Angle::fraction(i64::MAX, i64::MAX.unsigned_abs() / 90 + 1)];
    for angle in quarters.chain(near(45)).chain(near(30)).chain(ends) {
        let tangent = Tangent::of(angle);
        for (known, exact) in [&tangent.rise, &tangent.over].into_iter().zip(oracle(angle)) {
            let off = lifted(known) - exact;
            assert!(off.magnitude() < lifted(&Natural::from(MARGIN)).magnitude(), "{angle:?}");
        }
    }
}

fn round(base: Length, run: Length, angle: Angle, step: Length, mode: RoundingMode) -> Option<Rounded> {
    Slope { base, run }.round(angle, Rounding::to(step).mode(mode)).unwrap()
}

/// Tangents whose squares are rational: 3 at 60 degrees and 1/3 at 30, so that the right graduation is a whole
/// root. Half a graduation is never met, since the tangents are not rational.
#[test]
fn thirty_and_sixty_degrees_are_whole_roots() {
    for sixteenths in 1_u64..2000 {
        let run = inches(sixteenths.try_into().unwrap(), 16);
        for (angle, num, den) in [(60, 3_u64, 1_u64), (30, 1, 3)] {
            // The root of 4 × 16² × num / den counts half steps.
            let halves = (4 * sixteenths * sixteenths * num / den).isqrt();
            let (down, nearest) = ((halves / 2).try_into().unwrap(), halves.div_ceil(2).try_into().unwrap());
            let mark = |mode| round(Length::ZERO, run, Angle::degrees(angle), inches(1, 16), mode).unwrap().mark();
            assert_eq!(mark(RoundingMode::Down), inches(down, 16), "{run:?} at {angle}");
            assert_eq!(mark(RoundingMode::Up), inches(down + 1, 16), "{run:?} at {angle}");
            assert_eq!(mark(RoundingMode::TiesUp), inches(nearest, 16), "{run:?} at {angle}");
        }
    }
}

/// Tangents from memory, each a root added to a whole number: 2 - root 3 at 15 degrees, 2 + root 3 at 75,
/// root 2 - 1 at 22 1/2, root 2 + 1 at 67 1/2. With a run of 10^12 in, twelve of their decimals come out.
#[test]
fn other_angles_that_are_roots() {
    let run = inches(1_000_000_000_000, 1);
    let rows = [
        (Angle::degrees(15), 267_949_192_431),
        (Angle::degrees(75), 3_732_050_807_568),
        (Angle::fraction(45, 2), 414_213_562_373),
        (Angle::fraction(135, 2), 2_414_213_562_373),
    ];
    for (angle, expected) in rows {
        let rounded = round(Length::ZERO, run, angle, inches(1, 1), RoundingMode::Down).unwrap();
        assert_eq!(rounded.mark(), inches(expected, 1), "{angle}");
    }
}

/// With a single word of 64 bits, the bound reaches over a graduation of a fine enough step, and that is said.
#[test]
fn too_few_digits_are_no_answer() {
    let tangent = Tangent::to_words(Angle::degrees(30), 1);
    let slope = Slope { base: inches(0, 1), run: inches(1000, 1) };
    let by = |step| slope.round_by(&tangent, Rounding::to(step));
    assert_eq!(by(inches(1, 64)).unwrap().unwrap().mark(), inches(36_950, 64)); // 577.3503 in is 36950.4 of them
    let step = inches(1, 1 << 60);
    assert_eq!(by(step), Err(GeometryError::TooCloseToCall { length: Length::ZERO, step }));
}

#[test]
fn nothing_below_zero_is_rounded() {
    let slope = Slope { base: inches(4, 1), run: inches(-4, 1) };
    let mark = |angle| slope.round(angle, Rounding::to(inches(1, 16))).unwrap().map(|rounded| rounded.mark());
    assert_eq!(mark(Angle::degrees(0)), Some(inches(4, 1)));
    assert_eq!(mark(Angle::degrees(45)), Some(Length::ZERO));
    assert_eq!(mark(Angle::fraction(4501, 100)), None);
    assert_eq!(mark(Angle::fraction(4499, 100)), Some(Length::ZERO)); // 0.0014 in
    let whole = Slope { base: inches(4, 1), run: inches(-5, 1) };
    assert_eq!(whole.round(Angle::degrees(45), Rounding::to(inches(1, 16))), Ok(None));
}

/// The graduation by the oracle: the floor, and whether the rest is past the middle. A rest that the oracle
/// cannot place would have to lie within 2^-900 of it.
fn expected(slope: Slope, angle: Angle, rounding: Rounding) -> Option<Length> {
    let [sine, cosine] = oracle(angle);
    let in_inches = |length: Length| {
        let ratio = length.in_unit(Unit::Inch);
        BigRational::new((*ratio.numer()).into(), (*ratio.denom()).into())
    };
    let length = in_inches(slope.base) + in_inches(slope.run) * BigRational::new(sine, cosine);
    let steps = length / in_inches(rounding.step());
    let floor = steps.floor();
    let past_the_middle = (&steps - &floor) * BigRational::from(BigInt::from(2)) > BigRational::from(BigInt::from(1));
    let rises = match rounding.rounding_mode() {
        RoundingMode::Down | RoundingMode::TowardZero => false,
        RoundingMode::Up => true,
        _ => past_the_middle,
    };
    let floor: i64 = floor.to_integer().try_into().unwrap();
    (floor >= 0).then(|| rounding.step() * (floor + i64::from(rises)))
}

quickcheck! {
    fn graduations_agree_with_a_thousand_bits(
        base: (u32, u8), run: (i32, u8), angle: (u32, u16), step: (u8, u8), mode: usize
    ) -> TestResult {
        let angle = Angle::fraction(i64::from(angle.0) % (90 * (i64::from(angle.1) + 1)), u64::from(angle.1) + 1);
        if [Angle::degrees(0), Angle::degrees(45)].contains(&angle) || run.0 == 0 {
            return TestResult::discard();
        }
        let length = |num: i64, den: u8| inches(num, u64::from(den) + 1);
        let slope = Slope { base: length(base.0.into(), base.1), run: length(run.0.into(), run.1) };
        let rounding = Rounding::to(length(i64::from(step.0) + 1, step.1)).mode(MODES[mode % 6]);
        let rounded = slope.round(angle, rounding).unwrap();
        TestResult::from_bool(rounded.map(|rounded| rounded.mark()) == expected(slope, angle, rounding))
    }
}
