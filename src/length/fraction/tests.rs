//! Proof of the fraction: an exhaustive small model against schoolbook formulas, and every pair of edge
//! values against big rationals. An operation may refuse if and only if its exact answer, in lowest
//! terms, does not fit. Expected values never come from the code under test.

use std::vec::Vec;

use num_bigint::BigInt;
use num_rational::{BigRational, Ratio};

use super::{Fraction, inverse, product};

/// Every fraction with a numerator to 20 and a denominator to 12, once, beside its plain twin.
fn small() -> Vec<(Fraction, Ratio<i64>)> {
    let pairs = (-20..=20_i64).flat_map(|num| (1..=12_i64).map(move |den| (num, den)));
    let plain = pairs.map(|(num, den)| (num, den, Ratio::new(num, den)));
    let lowest = plain.filter(|(num, den, value)| (value.numer(), value.denom()) == (num, den));
    lowest.map(|(num, den, value)| (Fraction { num: num.into(), den: den.unsigned_abs() }, value)).collect()
}

fn plain(num: i64, den: i64) -> Option<Ratio<i64>> {
    (den != 0).then(|| Ratio::new(num, den))
}

fn parts(value: Fraction) -> (i128, u128) {
    (value.num, value.den.into())
}

fn quotient(a: Fraction, b: Fraction) -> Option<Fraction> {
    product(parts(a), inverse(parts(b))).and_then(|(num, den)| Fraction::reduced(num, den))
}

#[track_caller]
fn agrees(got: Option<Fraction>, expected: Option<Ratio<i64>>, case: &str, a: Ratio<i64>, b: Ratio<i64>) {
    let got = got.map(|got| (got.num, i128::from(got.den)));
    let expected = expected.map(|expected| (i128::from(*expected.numer()), i128::from(*expected.denom())));
    assert_eq!(got, expected, "{a} {case} {b}");
}

#[test]
fn every_small_pair_agrees_with_the_schoolbook() {
    let all = small();
    assert_eq!(all.len(), 307); // the coprime pairs, and zero once; counted in another language
    for &(a, x) in &all {
        for &(b, y) in &all {
            let (xn, xd, yn, yd) = (*x.numer(), *x.denom(), *y.numer(), *y.denom());
            agrees(a.checked_add(b), plain(xn * yd + yn * xd, xd * yd), "plus", x, y);
            agrees(a.checked_sub(b), plain(xn * yd - yn * xd, xd * yd), "minus", x, y);
            agrees(a.checked_scale(b.num, b.den.into()), plain(xn * yn, xd * yd), "times", x, y);
            agrees(quotient(a, b), plain(xn * yd, xd * yn), "over", x, y);
            assert_eq!(a.compare(b), (xn * yd).cmp(&(yn * xd)), "{x} beside {y}");
        }
    }
}

#[test]
fn every_small_value_agrees_with_the_schoolbook_by_whole_numbers() {
    for (a, x) in small() {
        let (num, den) = (*x.numer(), *x.denom());
        agrees(Some(a.negated()), plain(-num, den), "negated", x, x);
        agrees(Some(a.magnitude()), plain(num.abs(), den), "without its sign", x, x);
        for k in -40..=40 {
            agrees(a.checked_mul_int(k.into()), plain(num * k, den), "times", x, k.into());
            agrees(a.checked_div_int(k.into()), plain(num, den * k), "over", x, k.into());
            let widened = Fraction::reduced((num * k).into(), (den * k).unsigned_abs().into());
            agrees(widened, plain(num * k, (den * k).abs()), "widened by", x, k.into());
        }
    }
}

/// Numerators where something changes: signs, 64 bits, the ends, and thirds and halves of the ends.
fn edge_numerators() -> Vec<i128> {
    const MAX: i128 = i128::MAX;
    let above = [1, 2, 3, 6, (1 << 63) - 1, 1 << 63, (1 << 64) - 1, 1 << 64, (1 << 64) + 1];
    let ends = [1 << 126, MAX / 3, MAX / 2, MAX / 2 + 1, MAX - 1, MAX];
    let positive = above.into_iter().chain(ends);
    positive.flat_map(|num| [num, -num]).chain([0]).collect()
}

/// Denominators likewise. The last three share a prime of 32 bits: their sums can cancel back into range.
fn edge_denominators() -> Vec<u64> {
    const PRIME: u64 = (1 << 32) - 5;
    let sixty_four_bits = [1 << 63, (1 << 63) + 1, u64::MAX / 3, u64::MAX];
    let shared = [PRIME, 3 * PRIME, PRIME * ((1 << 32) - 17)];
    [1, 2, 3].into_iter().chain(sixty_four_bits).chain(shared).collect()
}

/// The fraction, if it can be held at all.
fn held(value: &BigRational) -> Option<Fraction> {
    let num = i128::try_from(value.numer()).ok().filter(|num| *num != i128::MIN)?;
    Some(Fraction { num, den: u64::try_from(value.denom()).ok()? })
}

fn edges() -> Vec<(Fraction, BigRational)> {
    let numerators = edge_numerators().into_iter();
    let pairs = numerators.flat_map(|num| edge_denominators().into_iter().map(move |den| (num, den)));
    let exact = pairs.map(|(num, den)| BigRational::new(num.into(), den.into()));
    let mut all: Vec<_> = exact.filter_map(|exact| Some((held(&exact)?, exact))).collect();
    all.sort_by(|a, b| a.1.cmp(&b.1));
    all.dedup();
    all
}

#[track_caller]
fn is_held(got: Option<Fraction>, exact: &BigRational, case: &str, (a, b): (&BigRational, &BigRational)) {
    let (got, expected) = (got.map(parts), held(exact).map(parts));
    assert_eq!(got, expected, "{a} {case} {b} is {exact}");
}

#[test]
fn an_edge_sum_is_refused_only_when_it_does_not_fit() {
    let all = edges();
    for (a, x) in &all {
        for (b, y) in &all {
            let (sum, difference) = (x + y, x - y);
            is_held(a.checked_add(*b), &sum, "plus", (x, y));
            is_held(a.checked_sub(*b), &difference, "minus", (x, y));
            // Backward from the answer: operands that cancel are rare among edges, and refused most easily.
            if let Some(difference) = held(&difference) {
                is_held(b.checked_add(difference), x, "plus what is missing to", (y, x));
            }
        }
    }
}

#[test]
fn an_edge_product_is_refused_only_when_it_does_not_fit() {
    let all = edges();
    for (a, x) in &all {
        for (b, y) in &all {
            is_held(a.checked_scale(b.num, b.den.into()), &(x * y), "times", (x, y));
            if b.num == 0 {
                assert!(quotient(*a, *b).is_none(), "{x} over zero");
                continue;
            }
            let exact = x / y;
            is_held(quotient(*a, *b), &exact, "over", (x, y));
            if let Some(exact) = held(&exact) {
                is_held(b.checked_scale(exact.num, exact.den.into()), x, "times what leads to", (y, x));
            }
        }
    }
}

#[test]
fn edges_are_ordered_as_big_rationals_are() {
    let all = edges(); // sorted by the oracle, without duplicates
    for (place, (a, x)) in all.iter().enumerate() {
        for (other, (b, y)) in all.iter().enumerate() {
            assert_eq!(a.compare(*b), place.cmp(&other), "{x} beside {y}");
        }
    }
}

#[test]
fn an_edge_by_a_whole_number_is_refused_only_when_it_does_not_fit() {
    let wholes = edge_numerators().into_iter().chain([i128::MIN, i64::MIN.into(), i64::MAX.into()]);
    for k in wholes {
        let exact = BigRational::from(BigInt::from(k));
        for (a, x) in &edges() {
            is_held(a.checked_mul_int(k), &(x * &exact), "times", (x, &exact));
            match k {
                0 => assert!(a.checked_div_int(k).is_none(), "{x} over zero"),
                _ => is_held(a.checked_div_int(k), &(x / &exact), "over", (x, &exact)),
            }
        }
    }
}

#[test]
fn any_pair_of_integers_is_reduced_or_refused() {
    let wide = [1 << 64, (1 << 64) + 1, 1 << 127, u128::MAX - 1, u128::MAX];
    let denominators = edge_denominators().into_iter().map(u128::from).chain(wide);
    for den in denominators {
        for num in edge_numerators().into_iter().chain([i128::MIN, i128::MIN + 2]) {
            let exact = BigRational::new(num.into(), den.into());
            is_held(Fraction::reduced(num, den), &exact, "from", (&BigInt::from(num).into(), &BigInt::from(den).into()));
        }
    }
    assert!(Fraction::reduced(1, 0).is_none() && Fraction::reduced(0, 0).is_none());
    assert!(Fraction::whole(i128::MIN).is_none());
}

#[test]
fn a_sign_turns_without_fail() {
    for (a, x) in &edges() {
        is_held(Some(a.negated()), &-x, "negated", (x, x));
        is_held(Some(a.magnitude()), &x.max(&-x).clone(), "without its sign", (x, x));
    }
}
