//! Proof of the rounding kernel: an exhaustive small model and edge values, each mode against its rule
//! said in another way on plain or big rationals. Published examples are left to `tests/outside/rounding.rs`.

use std::string::ToString;
use std::vec::Vec;

use num_rational::{BigRational, Ratio};

use super::RoundingMode::{Down, TiesAway, TiesEven, TiesUp, TowardZero, Up};
use super::{Floor, Fraction, Length, LengthError, Rounding, RoundingMode};
use crate::Unit;

const MODES: [RoundingMode; 6] = [TiesUp, TiesEven, TiesAway, Down, Up, TowardZero];

/// The whole number a mode takes, by rules that share nothing with the kernel. `round` of `num-rational`
/// takes ties away from zero, as its documentation says; the nearest even number to a tie is twice the
/// nearest whole number to its half.
macro_rules! whole {
    ($mode:expr, $value:expr) => {{
        let (value, two) = ($value, Ratio::from_integer(2.into()));
        let half = two.recip();
        match $mode {
            TiesUp => (value + half).floor(),
            TiesEven if (value - half).is_integer() => (value / &two).round() * two,
            TiesEven | TiesAway => value.round(),
            Down => value.floor(),
            Up => value.ceil(),
            TowardZero => value.trunc(),
        }
    }};
}

fn ticks(num: i128, den: u64) -> Length {
    Length::from_ticks(Fraction::reduced(num, den.into()).unwrap())
}

#[track_caller]
fn rounds_to(value: Length, rounding: Rounding, expected: Option<&BigRational>) {
    let got = value.round(rounding).map(|got| BigRational::new(got.ticks().num().into(), got.ticks().den().into()));
    let expected = expected.ok_or(&LengthError::OutOfRange);
    assert_eq!(got.as_ref(), expected, "{value:?} by {rounding:?}");
}

#[test]
fn every_small_value_rounds_by_the_rule_to_every_small_step() {
    let small = |least: i64| (least..=14).flat_map(|num| (1..=6).map(move |den| (num, den)));
    for (num, den) in small(-14) {
        let value = ticks(num.into(), den);
        for (step_num, step_den) in small(1) {
            let step = ticks(step_num.into(), step_den);
            #[allow(clippy::cast_possible_wrap)] // one digit
            let in_steps = Ratio::new(num * step_den as i64, den as i64 * step_num);
            for mode in MODES {
                let count = whole!(mode, &in_steps).to_integer();
                let rounding = Rounding::to(step).mode(mode);
                assert_eq!(value.steps(rounding), Ok(count.into()), "{num}/{den} by {step_num}/{step_den}, {mode:?}");
                assert_eq!(value.round(rounding), Ok(step * count), "{num}/{den} by {step_num}/{step_den}, {mode:?}");
            }
        }
    }
}

#[test]
fn an_edge_is_refused_only_when_it_or_its_count_does_not_fit() {
    const MAX: i128 = i128::MAX;
    let positive = [1, 2, 5, 1 << 63, 1 << 64, 1 << 126, MAX / 3, MAX / 2, MAX / 2 + 1, MAX - 1, MAX];
    let numerators: Vec<i128> = positive.into_iter().flat_map(|num| [num, -num]).chain([0]).collect();
    let denominators = [1, 2, 3, 4, 6, 1 << 63, u64::MAX];
    let all = || numerators.iter().flat_map(|num| denominators.map(|den| (*num, den)));
    for (step_num, step_den) in all().filter(|(num, _)| *num > 0) {
        let step = BigRational::new(step_num.into(), step_den.into());
        for (num, den) in all() {
            let in_steps = BigRational::new(num.into(), den.into()) / &step;
            for mode in MODES {
                let count = whole!(mode, &in_steps);
                let rounded = &count * &step;
                let fits = held(&count) && held(&rounded);
                rounds_to(ticks(num, den), Rounding::to(ticks(step_num, step_den)).mode(mode), fits.then_some(&rounded));
            }
        }
    }
}

/// Whether it fits the fraction; see `fraction.rs`.
fn held(exact: &BigRational) -> bool {
    let num = i128::try_from(exact.numer()).is_ok_and(|num| num != i128::MIN);
    num && u64::try_from(exact.denom()).is_ok()
}

#[test]
fn the_count_of_steps_ends_at_the_same_place_on_both_sides() {
    // A quarter of (2^128 - 1) / 3 is 2^127 sixths less half a sixth: worked by hand.
    let (num, sixth) = (i128::MAX / 3 * 2 + 1, ticks(1, 6));
    let most = BigRational::new(i128::MAX.into(), 6.into());
    rounds_to(ticks(num, 4), Rounding::to(sixth).mode(Up), None);
    rounds_to(ticks(num, 4), Rounding::to(sixth).mode(Down), Some(&most));
    rounds_to(ticks(-num, 4), Rounding::to(sixth).mode(Down), None);
    rounds_to(ticks(-num, 4), Rounding::to(sixth).mode(Up), Some(&-most));
}

#[test]
fn the_near_way_and_the_wide_way_are_one() {
    let wholes = [1, 2, 3, 7, 64, 1_000, 1 << 31, 1 << 62, i64::MAX - 1, i64::MAX].map(i128::from);
    for step in wholes {
        for value in wholes.into_iter().flat_map(|num| [num, -num]).chain([0, i64::MIN.into()]) {
            let (value, step) = (Fraction::whole(value).unwrap(), Fraction::whole(step).unwrap());
            let near = Floor::of_near(value, step).map(|near| (near.whole, near.exact, near.half));
            let wide = Floor::of(value, step).map(|wide| (wide.whole, wide.exact, wide.half));
            assert!(near.is_some() && near == wide, "{} by {}: {near:?}, {wide:?}", value.num(), step.num());
        }
    }
}

#[test]
fn below_zero_a_floor_is_a_floor() {
    // Worked by hand. Cutting off the fraction instead would give the other neighbor in each line.
    let inch = Unit::Inch.length();
    let whole = |num, den, mode| Length::fraction(num, den, Unit::Inch).steps(Rounding::to(inch).mode(mode)).unwrap();
    assert_eq!(whole(-5, 4, TiesUp), -1);
    assert_eq!(whole(-5, 4, TiesEven), -1);
    assert_eq!(whole(-5, 4, TiesAway), -1);
    assert_eq!(whole(-5, 4, Down), -2);
    assert_eq!(whole(-7, 4, TiesUp), -2);
    assert_eq!(whole(-1, 2, Down), -1);
    assert_eq!(whole(-1, 2, Up), 0);
    assert_eq!(whole(-1, 2, TowardZero), 0);
    assert_eq!(whole(-5, 2, TiesUp), -2);
    assert_eq!(whole(-5, 2, TiesEven), -2);
    assert_eq!(whole(-5, 2, TiesAway), -3);
}

#[test]
fn a_step_must_be_above_zero() {
    for step in [Length::ZERO, Length::fraction(-1, 16, Unit::Inch)] {
        let refused = Length::new(1, Unit::Inch).round(step).unwrap_err();
        assert_eq!(refused, LengthError::NotAStep { step });
    }
    let refused = Length::ZERO.round(Length::fraction(-1, 16, Unit::Inch)).unwrap_err();
    assert_eq!(refused.to_string(), "cannot round to a step of -1/16\": a step must be above zero");
}
