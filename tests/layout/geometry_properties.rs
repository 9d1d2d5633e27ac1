//! What holds for every length: roots against whole roots of big integers, results that add up, and no panic
//! on any input. Tangents have their oracle beside the code.

use std::fmt::Debug;

use num_bigint::BigInt;
use num_rational::{BigRational, Ratio};
use quickcheck::{Arbitrary, Gen};
use scantling::{
    Angle, FrameSize, GeometryError, Hook, Lean, Length, Miters, Molding, Polygon, Rounded, Rounding, RoundingMode, Triple, Unit,
    burned_inch, center_from_ends, check_miters, diagonal, exact_diagonal, hinges, midpoint, out_of_square, slanted_reading,
    slanted_rule, squared_diagonal,
};

use crate::support::chance::random;
use crate::support::{Any, Shop, held_as_length, inches, whole};

#[derive(Clone, Copy, Debug)]
struct Mode(RoundingMode);

impl Arbitrary for Mode {
    fn arbitrary(random: &mut Gen) -> Self {
        use RoundingMode::{Down, TiesAway, TiesEven, TiesUp, TowardZero, Up};
        Self(*random.choose(&[TiesUp, TiesEven, TiesAway, Down, Up, TowardZero]).unwrap())
    }
}

/// Twice as many tests as by default, each from values.
fn check<A: Arbitrary + Debug>(holds: fn(A) -> bool) {
    random().tests(400).quickcheck(holds);
}

/// What the root of `square`, in square inches, rounds to, or that it cannot be held: by the whole root of a
/// big integer and the rule of the mode.
fn root(square: &BigRational, step: Length, mode: RoundingMode) -> (Option<Length>, Lean) {
    let in_steps = square / (inches(step) * inches(step));
    // The whole root of a fraction is that of its whole part.
    let floor = in_steps.to_integer().sqrt();
    let squared = |halves: BigInt| BigRational::new(&halves * &halves, 4.into());
    let half = in_steps.cmp(&squared(2 * &floor + 1));
    let exact = in_steps == squared(2 * &floor);
    let is_odd = &floor % 2 != BigInt::ZERO;
    let rises = match mode {
        RoundingMode::Down | RoundingMode::TowardZero => false,
        RoundingMode::Up => !exact,
        RoundingMode::TiesEven => half.is_gt() || half.is_eq() && is_odd,
        _ => half.is_ge(),
    };
    let lean = if exact {
        Lean::DeadOn
    } else if rises {
        Lean::Shy
    } else {
        Lean::Strong
    };
    let count = floor + i32::from(rises);
    let mark = whole(count.clone()) * inches(step);
    let held = i128::try_from(&count).is_ok() && held_as_length(&mark);
    let narrow = |number: &BigInt| i128::try_from(number).unwrap();
    let length = || Length::try_from_ratio(Ratio::new_raw(narrow(mark.numer()), narrow(mark.denom())), Unit::Inch).unwrap();
    (held.then(length), lean)
}

/// The mark and the lean are those of the root, and the root lies within the bound of the mark.
fn agrees(rounded: Result<Rounded, GeometryError>, square: &BigRational, step: Length, mode: RoundingMode) -> bool {
    match (rounded, root(square, step, mode)) {
        (Ok(rounded), (Some(mark), lean)) => {
            let (mark_inches, bound) = (inches(mark), inches(rounded.bound()));
            let squared = |length: BigRational| &length * &length;
            let is_bounded = squared(&mark_inches + &bound) >= *square
                && (mark_inches < bound || squared(&mark_inches - &bound) <= *square)
                && rounded.bound() <= step;
            (rounded.mark(), rounded.lean()) == (mark, lean) && is_bounded
        }
        (Err(GeometryError::OutOfRange { .. }), (None, _)) => true,
        _ => false,
    }
}

/// The roots of the sum, of the mean and of the difference of two squares.
fn roots_are_right(width: Length, height: Length, step: Length, Mode(mode): Mode) -> bool {
    let [width, height, step] = [width, height, step].map(Length::abs);
    if [width, height, step].contains(&Length::ZERO) {
        return diagonal(width, height, step).is_err();
    }
    let square = |side| inches(side) * inches(side);
    let rounding = Rounding::to(step).mode(mode);
    let sum = square(width) + square(height);
    let difference = square(width.max(height)) - square(width.min(height));
    // The difference and its half are both given, so both must be held.
    let apart = inches(width) - inches(height);
    let is_held = held_as_length(&apart) && held_as_length(&(apart / whole(2)));
    let frame = out_of_square(width, height);
    agrees(diagonal(width, height, rounding), &sum, step, mode)
        && frame.is_ok() == is_held
        && frame.iter().all(|frame| agrees(frame.squared(rounding), &(&sum / whole(2)), step, mode))
        && slanted_rule(width.min(height), 1, width.max(height))
            .is_ok_and(|slant| agrees(slant.along(rounding), &difference, step, mode))
}

#[test]
fn roots_agree_with_big_integers_in_the_shop() {
    check(|(width, height, step, mode): (Shop, Shop, Shop, Mode)| roots_are_right(width.0, height.0, step.0, mode));
    check(|(width, height, per_inch, mode): (Shop, Shop, u8, Mode)| {
        roots_are_right(width.0, height.0, Length::fraction(1, 1 << (per_inch % 8), Unit::Inch), mode)
    });
}

#[test]
fn roots_agree_with_big_integers_at_the_edges() {
    check(|(width, height, step, mode): (Any, Any, Any, Mode)| roots_are_right(width.0, height.0, step.0, mode));
}

/// Roots a hair off a graduation, and off the middle between two: where decimals cut off would go wrong. Legs
/// of n² - 1 and 2n make n² + 1 across, and one of them is a ten-thousand-millionth of an inch off.
#[test]
fn roots_a_hair_off() {
    let unit = Length::fraction(1, 128, Unit::Inch);
    for count in [2_i64, 7, 64, 1000, 1_000_003, 3_000_000_000] {
        let (long, short) = (unit * (count * count - 1), unit * (2 * count));
        for hair in [-1, 0, 1].map(|count| Length::fraction(count, 10_000_000_000, Unit::Inch)) {
            for step in [unit, 2 * unit] {
                assert!(roots_are_right(long + hair, short, step, Mode(RoundingMode::TiesUp)), "{count}, {hair:?}");
                assert!(roots_are_right(long + hair, short, step, Mode(RoundingMode::TiesEven)), "{count}, {hair:?}");
            }
            let across = diagonal(long + hair, short, unit).unwrap();
            assert_eq!((across.mark(), across.exact().is_some()), (unit * (count * count + 1), hair.is_zero()), "{count}");
        }
    }
}

/// Every triple is `m² - n²`, `2mn`, `m² + n²` times something.
#[test]
fn exact_diagonals_are_found() {
    check(|(m, n, unit): (u8, u8, Shop)| {
        let (m, n, unit) = (i64::from(m), i64::from(n), unit.0.abs());
        if m <= n || n == 0 || unit.is_zero() {
            return true;
        }
        let (short, long, across) = ((m * m - n * n) * unit, 2 * m * n * unit, (m * m + n * n) * unit);
        let [one, other, longest] = [m * m - n * n, 2 * m * n, m * m + n * n].map(|count| u32::try_from(count).unwrap());
        let triple = Triple::new(one, other, longest).unwrap();
        let corner = triple.within(short, long, unit).or_else(|_| triple.within(long, short, unit));
        exact_diagonal(short, long) == Ok(Some(across)) && corner.is_ok_and(|corner| corner.across() >= across)
    });
    check(|(width, height): (Shop, Shop)| {
        let (width, height) = (width.0.abs(), height.0.abs());
        let Ok(exact) = exact_diagonal(width, height) else { return width.is_zero() || height.is_zero() };
        let square = squared_diagonal(width, height).unwrap().checked_in_square(Unit::Inch).unwrap();
        let is_square = |number: i128| u128::try_from(number).is_ok_and(|number| number.isqrt().pow(2) == number);
        exact.is_some() == (is_square(*square.numer()) && is_square(*square.denom()))
            && exact.is_none_or(|exact| exact * exact == width * width + height * height)
    });
}

#[test]
fn a_shift_is_the_difference_of_the_squares() {
    check(|(first, second, side): (Shop, Shop, Shop)| {
        let [first, second, side] = [first, second, side].map(|length| length.0.abs());
        let Ok(frame) = out_of_square(first, second) else { return first.is_zero() || second.is_zero() };
        let square = |length| inches(length) * inches(length);
        let expected = || (square(frame.long()) - square(frame.short())) / (whole(4) * inches(side));
        match frame.sideways(side) {
            // The top cannot stand further off than the sides are long, whose square is the mean less the side's.
            Ok(shift) => {
                let upright = (square(first) + square(second)) / whole(2) - square(side);
                inches(shift) == expected() && square(shift) < upright && frame.push() * 2 == frame.difference()
            }
            Err(_) => side.is_zero() || frame.difference() >= 2 * side || first + second <= 2 * side,
        }
    });
}

#[test]
fn a_larger_corner_is_not_within_reach() {
    check(|(first, second, unit): (Shop, Shop, u8)| {
        let (first, second, unit) = (first.0.abs(), second.0.abs(), Length::fraction(1 + i64::from(unit), 4, Unit::Inch));
        let legs = |times: i64| (3 * times * unit, 4 * times * unit);
        let fits = |times| {
            let (short, long) = legs(times);
            (short <= first && long <= second) || (long <= first && short <= second)
        };
        match Triple::THREE_FOUR_FIVE.within(first, second, unit) {
            Ok(corner) => {
                let legs = legs(corner.times());
                fits(corner.times())
                    && !fits(corner.times() + 1)
                    && [legs, (legs.1, legs.0)].contains(&(corner.first(), corner.second()))
                    && corner.first() <= first
                    && corner.second() <= second
                    && corner.across() == 5 * corner.times() * unit
            }
            Err(_) => first.is_zero() || second.is_zero() || !fits(1),
        }
    });
}

/// All sizes of a frame lead to the same piece, and its miters converge.
#[test]
fn sizes_of_a_frame_agree() {
    check(|(width, rabbet, allowance, picture): (Shop, Shop, Shop, Shop)| {
        let [width, rabbet, allowance, picture] = [width, rabbet, allowance, picture].map(|length| length.0.abs());
        let stock = Molding::new(width).rabbet(rabbet).allowance(allowance);
        let Ok(piece) = stock.piece(FrameSize::Picture(picture)) else {
            return width.is_zero() || picture.is_zero() || rabbet >= width || 2 * rabbet > picture + allowance;
        };
        let (long, short) = (piece.long_point(), piece.short_point());
        stock.piece(FrameSize::Outside(long)) == Ok(piece)
            && (short.is_zero() || stock.piece(FrameSize::Opening(short)) == Ok(piece))
            && long == picture + allowance + 2 * (width - rabbet)
            && check_miters(width, long, short, Length::ZERO) == Ok(Miters::Converge)
    });
}

#[test]
fn polygons_close() {
    check(|sides: u32| {
        let Ok(polygon) = Polygon::new(sides) else { return sides < 3 };
        let degrees = |angle: Angle| angle.in_degrees();
        let all = Ratio::from_integer(i128::from(sides));
        degrees(polygon.turn()) * all == 360.into()
            && degrees(polygon.setting()) * Ratio::from_integer(2) == degrees(polygon.turn())
            && degrees(polygon.corner()) + degrees(polygon.turn()) == 180.into()
    });
}

#[test]
fn strips_and_readings_keep_their_ratio() {
    check(|(width, parts, unit): (Shop, u8, u8)| {
        let (width, parts, unit) = (width.0.abs(), u32::from(parts), Length::fraction(1 + i64::from(unit), 16, Unit::Inch));
        let rule = Length::new(1_000_000, Unit::Inch);
        let Ok(slant) = slanted_reading(width, parts, unit, rule) else { return width.is_zero() || parts == 0 };
        let every = unit * i64::from(parts);
        slant.reading() >= width
            && slant.reading() - every < width
            && slant.strip() * i64::from(parts) == width
            && slant.marks().count() + 1 == parts as usize
            && slant.marks().zip(1..).all(|(mark, number)| {
                inches(mark) * inches(width) == inches(slant.strip() * number) * inches(slant.reading())
                    && mark.checked_ratio(unit).unwrap().is_integer()
            })
    });
}

#[test]
fn a_center_is_as_far_from_both_ends() {
    check(|(run, measure): (Shop, Shop)| {
        let (run, measure) = (run.0.abs(), measure.0.abs());
        match center_from_ends(measure, 2 * measure - run) {
            Ok(center) => center == run / 2 && midpoint(Length::ZERO, run) == Ok(center),
            Err(_) => measure.is_zero() || measure > run,
        }
    });
}

/// A simulated tape: the true width, and what is shown by a hook that is out.
#[test]
fn a_known_hook_gives_the_true_length() {
    check(|(length, thickness, slide, bent): (Shop, Shop, Shop, Shop)| {
        let (length, thickness, slide) = (length.0.abs(), thickness.0.abs(), slide.0.abs());
        let hook = Hook::new(thickness).slide(slide).bent(bent.0);
        // Pulled, its inner face lies where the tape shows `bent`; pushed, its outer face a slide on, a thickness back.
        let (pulled, pushed) = (bent.0, bent.0 + slide - thickness);
        hook.outside(pulled + length) == Ok(length) && hook.inside(pushed + length) == Ok(length)
    });
}

/// Any lengths at all: an answer or a refusal, never a panic, and no time without end.
#[test]
fn nothing_panics() {
    check(|(a, b, c, d, parts, (num, den), count): (Any, Any, Any, Any, u32, (i64, u64), u8)| {
        let (a, b, c, d) = (a.0, b.0, c.0, d.0);
        let angle = Angle::fraction(num, den.max(1));
        let small = Angle::fraction(num.rem_euclid(90), 1);
        let stock = Molding::new(a).rabbet(b).allowance(c);
        for size in [FrameSize::Outside(d), FrameSize::Opening(d), FrameSize::Picture(d)] {
            let _ = (stock.piece(size), stock.piece_at(size, angle, b), stock.piece_at(size, small, c));
        }
        let frame = out_of_square(a, b);
        let _ = frame.map(|frame| (frame.push(), frame.sideways(c), frame.verdict(d), frame.squared(d)));
        let _ = (diagonal(a, b, c), exact_diagonal(a, b), squared_diagonal(a, b), check_miters(a, b, c, d));
        let _ = (Triple::FIVE_TWELVE_THIRTEEN.within(a, b, c), midpoint(a, b), center_from_ends(a, b), burned_inch(a, b));
        let hook = Hook::new(a).slide(b).bent(c);
        let _ = (hook.inside(d), hook.outside(d), hinges(count.into(), a, b, c).over(d));
        for slant in [slanted_rule(a, parts, b), slanted_rule(a, count.into(), b), slanted_reading(a, count.into(), b, c)] {
            let _ = slant.map(|slant| (slant.marks().take(300).last(), slant.marks().next_back(), slant.along(d)));
        }
        true
    });
}
