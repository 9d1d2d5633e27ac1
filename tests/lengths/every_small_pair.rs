//! Every pair of small fractions of an inch by every operation, against fractions of plain machine integers put together here. The
//! model of the number beneath, in ticks, is left to its own tests; this is what the public face makes of it.

use std::cmp::Ordering;

use num_rational::Ratio;
use scantling::{Length, Rounding, RoundingMode, Unit};

/// A fraction by schoolbook: lowest terms, the sign above the line.
type Plain = (i64, i64);

fn lowest(num: i64, den: i64) -> Plain {
    let (mut a, mut b) = (num.abs(), den.abs());
    while b != 0 {
        (a, b) = (b, a % b);
    }
    (num * den.signum() / a, den.abs() / a)
}

/// Every fraction with a denominator to 16 from minus one to two, once.
fn small() -> Vec<Plain> {
    let pairs = (1..=16).flat_map(|den| (-den..=2 * den).map(move |num| (num, den)));
    pairs.filter(|(num, den)| (*num, *den) == lowest(*num, *den)).collect()
}

fn inches((num, den): Plain) -> Length {
    Length::fraction(num, den.unsigned_abs(), Unit::Inch)
}

fn ratio((num, den): Plain) -> Ratio<i128> {
    Ratio::new_raw(num.into(), den.into())
}

#[track_caller]
fn is(got: Option<Ratio<i128>>, expected: Option<Plain>, case: (Plain, &str, Plain)) {
    let got = got.map(|got| (*got.numer(), *got.denom()));
    assert_eq!(got, expected.map(|(num, den)| (num.into(), den.into())), "{case:?}");
}

#[test]
fn every_operation_on_every_pair() {
    let all = small();
    // 79 fractions between each two whole numbers, by the count of coprime pairs, and four whole numbers.
    assert_eq!(all.len(), 3 * 79 + 4);
    for &a in &all {
        for &b in &all {
            pair(a, b);
        }
    }
}

fn pair(a: Plain, b: Plain) {
    let ((an, ad), (bn, bd)) = (a, b);
    let (one, other) = (inches(a), inches(b));
    let in_inches = |length: Option<Length>| length.map(|length| length.in_unit(Unit::Inch));
    let quotient = (bn != 0).then(|| lowest(an * bd, ad * bn));
    let product = lowest(an * bn, ad * bd);

    is(in_inches(one.checked_add(other)), Some(lowest(an * bd + bn * ad, ad * bd)), (a, "+", b));
    is(in_inches(one.checked_sub(other)), Some(lowest(an * bd - bn * ad, ad * bd)), (a, "-", b));
    is(one.checked_ratio(other), quotient, (a, "over", b));
    is(in_inches(one.checked_mul_ratio(ratio(b))), Some(product), (a, "times the ratio", b));
    is(in_inches(one.checked_div_ratio(ratio(b))), quotient, (a, "over the ratio", b));
    is(in_inches(one.checked_mul(bn)), Some(lowest(an * bn, ad)), (a, "times", (bn, 1)));
    is(in_inches(one.checked_div(bd)), Some(lowest(an, ad * bd)), (a, "parts", (bd, 1)));

    let area = one.checked_area(other);
    is(area.and_then(|area| area.checked_in_square(Unit::Inch)), Some(product), (a, "by", b));
    is(in_inches(area.and_then(|area| area.checked_div_length(other))), (bn != 0).then_some(a), (a, "by and over", b));
    let volume = area.and_then(|area| area.checked_volume(other));
    let cubed = lowest(an * bn * bn, ad * bd * bd);
    is(volume.and_then(|volume| volume.checked_in_cubic(Unit::Inch)), Some(cubed), (a, "by twice", b));
    let back = volume.zip(area).and_then(|(volume, area)| volume.checked_div_area(area));
    is(in_inches(back), (an != 0 && bn != 0).then_some(b), (a, "by twice, over the area", b));

    assert_eq!(one.cmp(&other), (an * bd).cmp(&(bn * ad)), "{a:?} beside {b:?}");
    assert_eq!(one == other, one.cmp(&other) == Ordering::Equal, "{a:?} beside {b:?}");
    if bn > 0 {
        rounded(a, b);
    }
}

/// To whole counts of the second fraction, each mode by its own words.
fn rounded(a: Plain, step: Plain) {
    let ((an, ad), (bn, bd)) = (a, step);
    let (num, den) = (an * bd, ad * bn);
    let (floor, rest) = (num.div_euclid(den), num.rem_euclid(den));
    let beside_half = (2 * rest).cmp(&den);
    let nearest = |tie: i64| match beside_half {
        Ordering::Less => floor,
        Ordering::Greater => floor + 1,
        Ordering::Equal => tie,
    };
    let ceiling = if rest == 0 { floor } else { floor + 1 };
    for (mode, count) in [
        (RoundingMode::TiesUp, nearest(floor + 1)),
        (RoundingMode::TiesEven, nearest(floor + floor.rem_euclid(2))),
        (RoundingMode::TiesAway, nearest(if num < 0 { floor } else { floor + 1 })),
        (RoundingMode::Down, floor),
        (RoundingMode::Up, ceiling),
        (RoundingMode::TowardZero, if num < 0 { ceiling } else { floor }),
    ] {
        let got = inches(a).round(Rounding::to(inches(step)).mode(mode)).ok();
        is(got.map(|got| got.in_unit(Unit::Inch)), Some(lowest(count * bn, bd)), (a, "rounded to", step));
    }
}
