//! The lines of a picture and its arrow: each in its place, each with its length, and in true size.

use std::vec;
use std::vec::Vec;

use num_rational::Ratio;
use quickcheck::quickcheck;

use super::{Exact, svg};
use crate::length::Unit;
use crate::print::drawn::tests::{drawn, every, inches, kinds, millimeters};
use crate::tape::Tape;

fn whole(number: i128) -> Exact {
    Ratio::from_integer(number)
}

#[test]
fn each_line_has_its_place_and_its_length() {
    // In thousandths of an inch, the longest first; every line between two numbers, by its size.
    let halves =
        |power: u32| (0..1_i64 << power).map(move |line| if line == 0 { 0 } else { (power - line.trailing_zeros()) as usize });
    let inch = [500, 380, 300, 230, 170, 125, 90];
    let metric = [500, 380, 230, 150];
    let plain = [500, 230];
    let cases: Vec<(Tape, Vec<usize>, &[i128])> = vec![
        (every(inches(1, 1)), halves(0).collect(), &inch),
        (every(inches(1, 2)), halves(1).collect(), &inch),
        (every(inches(1, 4)), halves(2).collect(), &inch),
        (Tape::eighths(), halves(3).collect(), &inch),
        (Tape::sixteenths(), halves(4).collect(), &inch),
        (Tape::thirty_seconds(), halves(5).collect(), &inch),
        (Tape::sixty_fourths(), halves(6).collect(), &inch),
        (every(millimeters(10, 1)), vec![0], &metric),
        (every(millimeters(5, 1)), vec![0, 1], &metric),
        (Tape::millimeters(), vec![0, 2, 2, 2, 2, 1, 2, 2, 2, 2], &metric),
        (Tape::half_millimeters(), vec![0, 3, 2, 3, 2, 3, 2, 3, 2, 3, 1, 3, 2, 3, 2, 3, 2, 3, 2, 3], &metric),
        (every(inches(1, 3)), vec![0, 1, 1], &plain),
        (every(millimeters(2, 1)), vec![0], &plain),
    ];
    for (tape, sizes, lengths) in cases {
        let seen = svg(&drawn(tape, tape.step()));
        assert!(seen.lines.len() >= 4);
        for [place, length, _] in &seen.lines {
            // The tape begins at zero, so places are counted from there.
            let line = whole(*place) / (seen.marked()[0]);
            assert!(line.is_integer(), "{place} every {}", tape.step());
            let size = sizes[usize::try_from(line.to_integer()).unwrap() % sizes.len()];
            assert!((seen.mils(*length) - lengths[size]).abs() <= 1, "{line}: {length} every {}", tape.step());
        }
    }
}

#[test]
fn at_a_scale_of_one_the_tape_has_its_true_size() {
    for (tape, per_number, _) in kinds() {
        for (num, den) in [(1, 1), (2, 1), (1, 4)] {
            let drawing = drawn(tape, tape.step() * (per_number * 3 + 1)).scale(Ratio::new(num, den));
            let seen = svg(&drawing);
            let places = seen.places();
            let (first, last) = (places[0], places[places.len() - 1]);
            let measured = seen.unit() * (last - first) * Ratio::new(den, num);
            let meant = tape.step().in_unit(Unit::Inch) * i128::try_from(places.len() - 1).unwrap();
            let off = if measured > meant { measured - meant } else { meant - measured };
            // The paper is known to a millionth, and the tape takes up less than all of it.
            assert!(off <= Ratio::new(den, num * 1_000_000), "{measured} is not {meant}, every {}", tape.step());
            let even = |pair: &[i128]| pair[1] - pair[0] == places[1] - places[0];
            assert!(places.windows(2).all(even), "every {}", tape.step());
        }
    }
}

#[test]
fn without_a_scale_lines_can_be_told_apart() {
    for (tape, ..) in kinds() {
        let seen = svg(&drawn(tape, tape.step() * 100));
        let places = seen.places();
        let step = seen.mils(places[1] - places[0]);
        assert!((62..=1000).contains(&step), "{step} every {}", tape.step());
    }
    let step = |tape: Tape| {
        let seen = svg(&drawn(tape, tape.step() * 100));
        seen.mils(seen.places()[1] - seen.places()[0])
    };
    // Sixteenths and eighths in true size, thirty-seconds and millimeters twice as large.
    assert_eq!((step(Tape::sixteenths()), step(Tape::eighths())), (63, 125));
    assert_eq!((step(Tape::thirty_seconds()), step(Tape::millimeters())), (63, 79));
}

#[test]
fn there_is_more_white_than_black_between_lines() {
    for (tape, ..) in kinds() {
        for scale in [Ratio::new(1, 1), Ratio::new(1, 4), Ratio::new(8, 1)] {
            let seen = svg(&drawn(tape, tape.step() * 100).scale(scale));
            let step = seen.places()[1] - seen.places()[0];
            assert!(seen.lines.iter().all(|line| line[2] >= 1 && (2 * line[2] < step || step <= 2)), "every {}", tape.step());
        }
    }
    let seen = svg(&drawn(Tape::sixteenths(), inches(141, 8)));
    assert_eq!((seen.mils(seen.lines[0][2]), seen.mils(seen.marked()[2])), (10, 20));
}

quickcheck! {
    fn the_arrow_stands_exactly_at_the_reading(kind: usize, line: i32, num: u8, den: u8) -> bool {
        let kinds = kinds();
        let (tape, per_number, number) = kinds[kind % kinds.len()];
        let drawing = drawn(tape, tape.step() * i64::from(line));
        let scale = Ratio::new(i128::from(num) + 1, i128::from(den) + 1);
        [drawing, drawing.scale(scale)].into_iter().all(|drawing| {
            let seen = svg(&drawing);
            let (tip, places) = (seen.arrow[0], seen.places());
            let step = places[1] - places[0];
            // From each number that stands in the middle below its line, in steps of the tape, exactly.
            let on_lines = seen.texts.iter().filter(|text| text.foot > 0 && text.bold && text.anchor == "middle");
            let numbered: Vec<_> = on_lines.filter_map(|text| Some((text.x, text.text.parse::<i128>().ok()?))).collect();
            tip == seen.marked()[0] && numbered.iter().all(|(x, at)| {
                let from_zero = whole(*at) / i128::from(number) * i128::from(per_number);
                from_zero + Ratio::new(tip - x, step) == whole(line.into())
            })
        })
    }
}
