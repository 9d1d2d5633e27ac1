//! The arithmetic of lengths, areas and volumes against big rationals: an operation gives the exact
//! answer, or refuses it if and only if it cannot be held. Small models of the number beneath are left
//! to its own tests, rounding to `rounding.rs`.

use std::collections::hash_map::DefaultHasher;
use std::hash::{BuildHasher, BuildHasherDefault, Hash};

use num_rational::{BigRational, Ratio};
use quickcheck::{Arbitrary, Gen, Testable};
use scantling::{Area, Length, Unit, Volume};

use crate::support::chance::random;
use crate::support::{Any, Shop, below_the_line, big, held, held_as_length, held_as_ratio, inches, ticks, whole, wide};

fn hold_for(cases: u64, property: impl Testable) {
    random().tests(cases).quickcheck(property);
}

/// A ratio that keeps to no rule: not in lowest terms, a sign on either side, zero below the line, `i128::MIN`.
#[derive(Clone, Copy, Debug)]
struct Raw(i128, i128);

impl Raw {
    fn ratio(self) -> Ratio<i128> {
        Ratio::new_raw(self.0, self.1)
    }

    fn exact(self) -> Option<BigRational> {
        (self.1 != 0).then(|| BigRational::new(self.0.into(), self.1.into()))
    }
}

impl Arbitrary for Raw {
    fn arbitrary(random: &mut Gen) -> Self {
        let small = Self(i8::arbitrary(random).into(), i8::arbitrary(random).into());
        let lowest = i128::MIN >> (u8::arbitrary(random) % 4);
        match u8::arbitrary(random) % 4 {
            0 => small,
            1 => Self(wide(random), below_the_line(random).into()),
            2 => Self(*random.choose(&[lowest, small.0]).unwrap(), *random.choose(&[lowest, small.1]).unwrap()),
            _ => Self(wide(random), wide(random)),
        }
    }
}

/// One step of a chain.
#[derive(Clone, Debug)]
enum Step {
    Plus(Any),
    Minus(Any),
    Times(i64),
    Over(i64),
    TimesRatio(Raw),
    OverRatio(Raw),
    Turned,
    /// Times one length, over another: an area on the way.
    Widened(Any, Any),
    /// The same with a volume on the way.
    Thickened(Any, Shop, Shop),
}

impl Arbitrary for Step {
    fn arbitrary(random: &mut Gen) -> Self {
        let (one, other) = (Any::arbitrary(random), Any::arbitrary(random));
        let count = if bool::arbitrary(random) { i64::arbitrary(random) } else { i8::arbitrary(random).into() };
        match u8::arbitrary(random) % 9 {
            0 => Self::Plus(one),
            1 => Self::Minus(one),
            2 => Self::Times(count),
            3 => Self::Over(count),
            4 => Self::TimesRatio(Raw::arbitrary(random)),
            5 => Self::OverRatio(Raw::arbitrary(random)),
            6 => Self::Turned,
            7 => Self::Widened(one, other),
            _ => Self::Thickened(one, Shop::arbitrary(random), Shop::arbitrary(random)),
        }
    }
}

fn over(exact: &BigRational, divisor: &BigRational) -> Option<BigRational> {
    (*divisor != whole(0)).then(|| exact / divisor)
}

impl Step {
    /// The step as the crate takes it and as big rationals do.
    fn taken(&self, length: Length, exact: &BigRational) -> (Option<Length>, Option<BigRational>) {
        match *self {
            Self::Plus(Any(other)) => (length.checked_add(other), Some(exact + inches(other))),
            Self::Minus(Any(other)) => (length.checked_sub(other), Some(exact - inches(other))),
            Self::Times(count) => (length.checked_mul(count), Some(exact * whole(count))),
            Self::Over(count) => (length.checked_div(count), over(exact, &whole(count))),
            Self::TimesRatio(raw) => (length.checked_mul_ratio(raw.ratio()), raw.exact().map(|ratio| exact * ratio)),
            Self::OverRatio(raw) => (length.checked_div_ratio(raw.ratio()), raw.exact().and_then(|ratio| over(exact, &ratio))),
            Self::Turned => (Some(-length), Some(-exact)),
            Self::Widened(Any(by), Any(width)) => {
                let area = exact * inches(by);
                let got = length.checked_area(by);
                assert_eq!(got.is_some(), held(&area), "{length:?} by {by:?}");
                (got.and_then(|got| got.checked_div_length(width)), over(&area, &inches(width)).filter(|_| held(&area)))
            }
            Self::Thickened(Any(by), Shop(thickness), Shop(side)) => {
                let (area, section) = (exact * inches(by), inches(thickness) * inches(side));
                let volume = &area * inches(thickness);
                let got = length.checked_area(by).and_then(|got| got.checked_volume(thickness));
                assert_eq!(got.is_some(), held(&area) && held(&volume), "{length:?} by {by:?} by {thickness:?}");
                let got = got.and_then(|got| got.checked_div_area(thickness * side));
                (got, over(&volume, &section).filter(|_| held(&area) && held(&volume)))
            }
        }
    }
}

#[test]
fn chains_of_steps_agree_with_big_rationals() {
    fn property(start: Any, steps: Vec<Step>) -> bool {
        let (mut length, mut exact) = (start.0, inches(start.0));
        for step in steps {
            let (got, expected) = step.taken(length, &exact);
            let expected = expected.filter(held_as_length);
            assert_eq!(got.map(inches), expected, "{length:?}, {step:?}");
            // A refused step leaves the chain where it was.
            (length, exact) = (got.unwrap_or(length), expected.unwrap_or(exact));
        }
        true
    }
    hold_for(1_000, property as fn(Any, Vec<Step>) -> bool);
}

#[test]
fn what_brings_a_length_to_another_is_never_refused_at_the_last_step() {
    fn property(Any(from): Any, Any(to): Any) -> bool {
        let difference = from.checked_sub(to).is_none_or(|way| from.checked_sub(way) == Some(to));
        let ratio = to.checked_ratio(from).is_none_or(|way| from.checked_mul_ratio(way) == Some(to));
        difference && ratio
    }
    hold_for(10_000, property as fn(Any, Any) -> bool);
}

#[test]
fn ratios_agree_with_big_rationals() {
    fn property(Any(a): Any, Any(b): Any) -> bool {
        a.checked_ratio(b).map(big) == over(&inches(a), &inches(b)).filter(held_as_ratio)
    }
    hold_for(10_000, property as fn(Any, Any) -> bool);
}

#[test]
fn a_length_goes_in_and_out_of_every_unit() {
    fn property(Any(length): Any, Raw(num, den): Raw) -> bool {
        Unit::ALL.into_iter().all(|unit| {
            let out = length.in_unit(unit);
            let lowest = BigRational::new_raw((*out.numer()).into(), (*out.denom()).into()) == big(out);
            let into = Length::try_from_ratio(Ratio::new_raw(num, den), unit).ok().map(inches);
            let exact = Raw(num, den).exact().map(|exact| exact * inches(unit.length()));
            lowest && Length::try_from_ratio(out, unit) == Ok(length) && into == exact.filter(held_as_length)
        })
    }
    hold_for(3_000, property as fn(Any, Raw) -> bool);
}

/// Areas and volumes have the arithmetic of lengths: the shared part against big rationals.
macro_rules! shared_arithmetic_agrees {
    ($a:expr, $b:expr, $count:expr, $exact:expr) => {{
        let (a, b, count, exact) = ($a, $b, $count, $exact);
        let (x, y, k) = (exact(a), exact(b), whole(count));
        assert_eq!(a.checked_add(b).map(exact), Some(&x + &y).filter(held), "{a:?} + {b:?}");
        assert_eq!(a.checked_sub(b).map(exact), Some(&x - &y).filter(held), "{a:?} - {b:?}");
        assert_eq!(a.checked_mul(count).map(exact), Some(&x * &k).filter(held), "{a:?} * {count}");
        assert_eq!(a.checked_div(count).map(exact), over(&x, &k).filter(held), "{a:?} / {count}");
        assert_eq!(a.checked_ratio(b).map(big), over(&x, &y).filter(held_as_ratio), "{a:?} / {b:?}");
        assert_eq!(a.cmp(&b), x.cmp(&y), "{a:?} beside {b:?}");
        assert_eq!((exact(-a), exact(a.abs())), (-&x, if x < whole(0) { -x } else { x }), "{a:?}");
    }};
}

fn square_inches(area: Area) -> BigRational {
    big(area.checked_in_square(Unit::Inch).unwrap())
}

fn cubic_inches(volume: Volume) -> BigRational {
    big(volume.checked_in_cubic(Unit::Inch).unwrap())
}

#[test]
fn areas_agree_with_big_rationals() {
    fn property(one: (Any, Any), other: (Any, Any), Any(width): Any, count: i64) -> bool {
        let areas = [one, other].map(|(Any(long), Any(wide))| {
            let area = long.checked_area(wide);
            let exact = inches(long) * inches(wide);
            assert_eq!(area.map(square_inches), Some(exact).filter(held), "{long:?} by {wide:?}");
            area.unwrap_or(Area::ZERO)
        });
        let [a, b] = areas;
        shared_arithmetic_agrees!(a, b, count, square_inches);
        let x = square_inches(a);
        for unit in Unit::ALL {
            let side = inches(unit.length());
            assert_eq!(a.checked_in_square(unit).map(big), Some(&x / (&side * &side)).filter(held_as_ratio), "{a:?}");
        }
        a.checked_div_length(width).map(inches) == over(&x, &inches(width)).filter(held_as_length)
            && a.checked_volume(width).map(cubic_inches) == Some(&x * inches(width)).filter(held)
    }
    hold_for(5_000, property as fn((Any, Any), (Any, Any), Any, i64) -> bool);
}

#[test]
fn volumes_agree_with_big_rationals() {
    fn property(one: (Any, Shop, Shop), other: (Any, Shop, Shop), (Any(side), Any(width)): (Any, Any), count: i64) -> bool {
        let [a, b] = [one, other].map(|(Any(long), Shop(wide), Shop(thick))| {
            let volume = long.checked_area(wide).and_then(|area| area.checked_volume(thick));
            volume.unwrap_or(Volume::ZERO)
        });
        shared_arithmetic_agrees!(a, b, count, cubic_inches);
        let (x, section) = (cubic_inches(a), side.checked_area(width).unwrap_or(Area::ZERO));
        for unit in Unit::ALL {
            let edge = inches(unit.length());
            let exact = &x / (&edge * &edge * &edge);
            assert_eq!(a.checked_in_cubic(unit).map(big), Some(exact).filter(held_as_ratio), "{a:?}");
        }
        a.checked_div_length(side).map(square_inches) == over(&x, &inches(side)).filter(held)
            && a.checked_div_area(section).map(inches) == over(&x, &square_inches(section)).filter(held_as_length)
    }
    hold_for(5_000, property as fn((Any, Shop, Shop), (Any, Shop, Shop), (Any, Any), i64) -> bool);
}

#[test]
fn answers_that_fit_though_a_step_on_the_way_does_not() {
    // Worked by hand; each was refused once.
    let prime = (1 << 61) - 1; // of Mersenne
    let sliver = ticks(1, prime);
    let area = Unit::Inch.length() * ticks(1, 1);
    assert_eq!(area.checked_div_length(sliver).map(inches), Some(whole(prime)));
    let half = Ratio::new_raw(i128::MIN, -2);
    assert_eq!(ticks(1, 1).checked_mul_ratio(half), Some(ticks(1 << 126, 1)));
    assert_eq!(ticks(1 << 126, 1).checked_div_ratio(half), Some(ticks(1, 1)));
    assert_eq!(ticks(2, 1).checked_div_ratio(Ratio::new_raw(-1, i128::MIN >> 1)), None);
    assert_eq!(ticks(1, 2).checked_div_ratio(Ratio::new_raw(-1, i128::MIN)), Some(ticks(1 << 126, 1)));
    let nearly = Ratio::new_raw(i128::MIN, -(1 << 100));
    assert_eq!(Length::try_from_ratio(nearly, Unit::Inch), Ok(Length::new(1 << 27, Unit::Inch)));
}

#[test]
fn sums_agree_with_big_rationals() {
    fn property(shop: Vec<Shop>) -> bool {
        let lengths: Vec<Length> = shop.into_iter().map(|Shop(length)| length).collect();
        let exact = lengths.iter().fold(whole(0), |total, length| total + inches(*length));
        let (inch, section) = (Unit::Inch.length(), Unit::Inch.length() * Unit::Inch.length());
        let areas: Vec<Area> = lengths.iter().map(|length| *length * inch).collect();
        let volumes: Vec<Volume> = lengths.iter().map(|length| *length * section).collect();
        let mut running = Length::ZERO;
        for length in &lengths {
            running += *length;
        }
        inches(lengths.iter().sum()) == exact
            && inches(lengths.iter().copied().sum()) == exact
            && inches(running) == exact
            && square_inches(areas.iter().sum()) == exact
            && square_inches(areas.into_iter().sum()) == exact
            && cubic_inches(volumes.iter().sum()) == exact
            && cubic_inches(volumes.into_iter().sum()) == exact
    }
    hold_for(500, property as fn(Vec<Shop>) -> bool);
}

#[test]
fn order_equality_and_hash_agree_with_big_rationals() {
    fn hash(value: impl Hash) -> u64 {
        BuildHasherDefault::<DefaultHasher>::default().hash_one(value)
    }
    fn property(lengths: Vec<Any>, Raw(num, den): Raw) -> bool {
        let mut lengths: Vec<Length> = lengths.into_iter().take(16).map(|Any(length)| length).collect();
        // Twins by another way, so that equal pairs turn up.
        lengths.extend(Length::try_from_ratio(Ratio::new_raw(num, den), Unit::Foot));
        lengths.extend(Length::try_from_ratio(Ratio::new_raw(num, den), Unit::Inch).ok().and_then(|inch| inch.checked_mul(12)));
        for a in &lengths {
            for b in &lengths {
                let (x, y) = (inches(*a), inches(*b));
                assert_eq!(a.cmp(b), x.cmp(&y), "{a:?} beside {b:?}");
                assert_eq!(a.partial_cmp(b), Some(x.cmp(&y)), "{a:?} beside {b:?}");
                assert_eq!(a == b, x == y, "{a:?} beside {b:?}");
                assert!(x != y || hash(a) == hash(b), "{a:?} beside {b:?}");
            }
        }
        let mut exact: Vec<BigRational> = lengths.iter().copied().map(inches).collect();
        exact.sort();
        lengths.sort();
        lengths.into_iter().map(inches).eq(exact)
    }
    hold_for(500, property as fn(Vec<Any>, Raw) -> bool);
}

#[test]
fn operators_are_the_checked_forms() {
    let (long, wide, count) = (Length::fraction(141, 8, Unit::Inch), Length::new(365, Unit::Millimeter), 7);
    let (area, ratio) = (long * wide, Ratio::new(22, 7));
    assert_eq!(Some(long + wide), long.checked_add(wide));
    assert_eq!(Some(long - wide), long.checked_sub(wide));
    assert_eq!(Some(long * count), long.checked_mul(count));
    assert_eq!(Some(count * long), long.checked_mul(count));
    assert_eq!(Some(long / count), long.checked_div(count));
    assert_eq!(Some(long * ratio), long.checked_mul_ratio(ratio));
    assert_eq!(Some(long / ratio), long.checked_div_ratio(ratio));
    assert_eq!(Some(long / wide), long.checked_ratio(wide));
    assert_eq!(Some(area), long.checked_area(wide));
    assert_eq!(Some(area * wide), area.checked_volume(wide));
    assert_eq!(Some(wide * area), area.checked_volume(wide));
    assert_eq!(Some(area / wide), area.checked_div_length(wide));
    assert_eq!(Some(area * wide / wide), (area * wide).checked_div_length(wide));
    assert_eq!(Some(area * wide / area), (area * wide).checked_div_area(area));
    let mut changed = long;
    changed += wide;
    changed *= count;
    changed -= wide;
    changed /= count;
    assert_eq!(changed, ((long + wide) * count - wide) / count);
}

/// One line a case: what an operator says when it panics.
macro_rules! panics_with {
    ($($test:ident: $message:literal, $expression:expr;)+) => {$(
        #[test]
        #[should_panic(expected = $message)]
        fn $test() {
            std::hint::black_box($expression);
        }
    )+};
}

/// Hidden from the compiler, so that nothing is worked out, or refused, before the test runs.
fn most() -> Length {
    std::hint::black_box(Length::MAX)
}

fn square() -> Area {
    Unit::Inch.length() * Unit::Inch.length()
}

panics_with! {
    a_sum_too_long: "sum out of range", most() + ticks(1, 1);
    a_sum_too_fine: "sum out of range", ticks(1, u64::MAX) + ticks(1, u64::MAX - 1);
    a_sum_in_place: "sum out of range", { let mut sum = most(); sum += most(); sum };
    a_sum_of_many: "sum out of range", [most(), most()].iter().sum::<Length>();
    a_difference: "difference out of range", -most() - most();
    a_difference_in_place: "difference out of range", { let mut rest = -most(); rest -= most(); rest };
    a_product: "product out of range", most() * 2;
    a_product_turned_round: "product out of range", 2 * most();
    a_product_in_place: "product out of range", { let mut product = most(); product *= -2; product };
    a_product_by_a_ratio: "product out of range, or a zero denominator", most() * Ratio::new(3, 2);
    a_product_by_no_ratio: "product out of range, or a zero denominator", most() * Ratio::new_raw(1, 0);
    a_quotient: "quotient out of range, or division by zero", ticks(1, u64::MAX) / 2;
    a_quotient_by_zero: "quotient out of range, or division by zero", most() / 0;
    a_quotient_in_place: "quotient out of range, or division by zero", { let mut part = most(); part /= 0; part };
    a_quotient_by_a_ratio: "quotient out of range, or division by zero", most() / Ratio::new(1, 2);
    a_quotient_by_a_zero_ratio: "quotient out of range, or division by zero", most() / Ratio::new(0, 1);
    a_quotient_by_no_ratio: "quotient out of range, or division by zero", most() / Ratio::new_raw(1, 0);
    a_ratio: "ratio out of range, or division by zero", most() / ticks(1, 3);
    a_ratio_to_nothing: "ratio out of range, or division by zero", most() / Length::ZERO;
    an_area: "area out of range", most() * most();
    an_area_sum: "sum out of range", square() * i64::MAX * i64::MAX * 2 + square() * i64::MAX * i64::MAX * 2;
    a_volume: "volume out of range", square() * i64::MAX * most();
    a_volume_turned_round: "volume out of range", most() * (square() * i64::MAX);
    an_area_over_nothing: "quotient out of range, or division by zero", square() / Length::ZERO;
    a_volume_over_no_length: "quotient out of range, or division by zero", square() * most() / Length::ZERO;
    a_volume_over_no_area: "quotient out of range, or division by zero", square() * most() / Area::ZERO;
    a_zero_denominator: "a fraction with a zero denominator has no value", Length::fraction(1, std::hint::black_box(0), Unit::Inch);
}

#[test]
fn quantities_are_small_plain_values() {
    const fn plain<T: Copy + Send + Sync + Unpin + std::panic::UnwindSafe + std::panic::RefUnwindSafe + 'static>() -> usize {
        size_of::<T>()
    }
    assert_eq!([plain::<Length>(), plain::<Area>(), plain::<Volume>()], [32; 3]);
    assert_eq!((Length::default(), Area::default(), Volume::default()), (Length::ZERO, Area::ZERO, Volume::ZERO));
    assert_eq!((inches(Length::MAX) * whole(crate::support::TICKS), -Length::MAX), (whole(i128::MAX), Length::MIN));
}

#[test]
fn constants_are_worked_out_at_compile_time() {
    const SHEET: Length = Length::fraction(23, 32, Unit::Inch);
    const PAIR: Option<Length> = SHEET.checked_add(SHEET);
    const FACE: Option<Area> = Length::new(8, Unit::Foot).checked_area(Length::new(4, Unit::Foot));
    const STEM: Option<Length> = Length::new(1, Unit::Meter).checked_div(3);
    const IN_MILLIMETERS: Ratio<i128> = SHEET.in_unit(Unit::Millimeter);
    // Worked by hand: 23/16 in; 32 ft²; a third of a meter; 23/32 × 127/5.
    assert_eq!(PAIR, Some(Length::fraction(23, 16, Unit::Inch)));
    assert_eq!(FACE.and_then(|face| face.checked_in_square(Unit::Foot)), Some(Ratio::from_integer(32)));
    assert_eq!(STEM, Some(Length::fraction(1, 3, Unit::Meter)));
    assert_eq!(IN_MILLIMETERS, Ratio::new_raw(2921, 160));
}

#[test]
fn debug_shows_the_exact_fraction() {
    let side = Length::fraction(-3, 2, Unit::Inch);
    let square = side * side;
    assert_eq!(format!("{side:?}, {square:?}, {:?}", square * side), "Length(-3/2 in), Area(9/4 in²), Volume(-27/8 in³)");
    assert_eq!(format!("{:?}, {:?}", side * 2, square * 4), "Length(-3 in), Area(9 in²)");
}
