//! Rounding against the rules said in another way, on big rationals. The proof of the kernel is left to its own tests, published
//! examples to `tests/outside/rounding.rs`.

use num_rational::BigRational;
use scantling::{Rounding, RoundingMode, Unit};

use crate::support::chance::random;
use crate::support::{Any, Shop, held_as_length, inches, whole};

const NEAREST: [RoundingMode; 3] = [RoundingMode::TiesUp, RoundingMode::TiesEven, RoundingMode::TiesAway];

#[test]
fn ties_away_agree_with_the_rounding_of_big_rationals() {
    // `num-rational` documents its `round` as half away from zero.
    fn property(Any(value): Any, Shop(step): Shop) -> bool {
        let step = if step.is_zero() { Unit::Inch.length() } else { step.abs() };
        let away = Rounding::to(step).mode(RoundingMode::TiesAway);
        let exact = (inches(value) / inches(step)).round() * inches(step);
        value.round(away).ok().map(inches) == Some(exact).filter(held_as_length)
    }
    random().tests(5_000).quickcheck(property as fn(Any, Shop) -> bool);
}

#[test]
fn a_rounded_length_is_the_nearest_multiple_and_stays_where_it_is() {
    fn property(Any(value): Any, Shop(step): Shop) -> bool {
        let step = if step.is_zero() { Unit::Inch.length() } else { step.abs() };
        let (exact, half) = (inches(value), inches(step) / whole(2));
        let off = |mode| {
            let Ok(rounded) = value.round(Rounding::to(step).mode(mode)) else { return None };
            assert_eq!(rounded.round(Rounding::to(step).mode(mode)), Ok(rounded), "{value:?} by {step:?}, {mode:?}");
            assert!((inches(rounded) / inches(step)).is_integer(), "{value:?} by {step:?}, {mode:?}");
            Some(inches(rounded) - &exact)
        };
        let within = |off: Option<BigRational>| off.is_none_or(|off| -&half <= off && off <= half);
        let below = off(RoundingMode::Down).is_none_or(|off| off <= whole(0) && off > -inches(step));
        let above = off(RoundingMode::Up).is_none_or(|off| off >= whole(0) && off < inches(step));
        NEAREST.into_iter().all(|mode| within(off(mode))) && below && above
    }
    random().tests(3_000).quickcheck(property as fn(Any, Shop) -> bool);
}
