//! Readings against figures worked by hand or printed elsewhere, and the two promises: the leftover is
//! exact, and no mark is further off than the mode allows.

use std::string::ToString;
use std::vec::Vec;

use quickcheck::{TestResult, quickcheck};

use super::{Grain, Lean, Tape, TapeError};
use crate::length::{Length, RoundingMode, Unit};

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

const fn millimeters(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Millimeter)
}

#[test]
fn graduations() {
    let steps = [
        (Tape::eighths(), inches(1, 8)),
        (Tape::sixteenths(), inches(1, 16)),
        (Tape::thirty_seconds(), inches(1, 32)),
        (Tape::sixty_fourths(), inches(1, 64)),
        (Tape::millimeters(), millimeters(1, 1)),
        (Tape::half_millimeters(), millimeters(1, 2)),
        (Tape::with_step(inches(1, 10)).unwrap(), inches(1, 10)),
    ];
    for (tape, step) in steps {
        assert_eq!(tape.step(), step);
        assert_eq!(tape.rounding_mode(), RoundingMode::TiesUp);
    }
}

/// Position, tape, where the mark is.
#[test]
fn nearest_marks() {
    let cases = [
        // Common practice, no source: five openings of a 72 in case.
        (inches(72, 5), Tape::sixteenths(), inches(115, 8)),
        (inches(144, 5), Tape::sixteenths(), inches(461, 16)),
        (inches(216, 5), Tape::sixteenths(), inches(691, 16)),
        (inches(288, 5), Tape::sixteenths(), inches(461, 8)),
        // Worked by hand: 11 63/64 in carries into the foot.
        (inches(767, 64), Tape::sixteenths(), inches(12, 1)),
        (inches(767, 64), Tape::sixty_fourths(), inches(767, 64)),
        // Worked by hand: carries through thirty-seconds, inch and foot.
        (inches(71_999, 1000), Tape::thirty_seconds(), inches(72, 1)),
        (inches(730_185, 10_000), Tape::thirty_seconds(), inches(2337, 32)),
        // Worked by hand: 1 m is 39.3701 in, nearest 39 12/32; 1.5 m is 59 1/16 in.
        (millimeters(1000, 1), Tape::thirty_seconds(), inches(315, 8)),
        (millimeters(1500, 1), Tape::sixteenths(), inches(945, 16)),
        (millimeters(2300, 1), Tape::sixteenths(), inches(1449, 16)),
        (millimeters(11, 1), Tape::sixteenths(), inches(7, 16)),
        (millimeters(140, 1), Tape::sixteenths(), inches(11, 2)),
        (inches(99, 4), Tape::millimeters(), millimeters(629, 1)),
        (inches(99, 4), Tape::half_millimeters(), millimeters(1257, 2)),
        // BHE, headboard slats: 2.8375 in is set out as 2 13/16 in.
        (inches(28_375, 10_000), Tape::sixteenths(), inches(45, 16)),
        // NAV14045, page AI-12: 12.65 ft is 12 ft 7 13/16 in.
        (inches(1518, 10), Tape::sixteenths(), inches(2429, 16)),
        // Worked by hand, below zero.
        (inches(-72, 5), Tape::sixteenths(), inches(-115, 8)),
        (inches(-767, 64), Tape::sixteenths(), inches(-12, 1)),
        (Length::ZERO, Tape::sixteenths(), Length::ZERO),
    ];
    for (position, tape, mark) in cases {
        let reading = tape.read(position).unwrap();
        assert_eq!(reading.mark(), mark, "{position:?}");
        assert_eq!(reading.shown(), mark, "{position:?}");
        assert_eq!(reading.leftover(), position - mark, "{position:?}");
        assert_eq!(reading.true_position(), position);
    }
}

/// Thirty-seconds read on sixteenths, in sixteenths under each mode in the order of `MODES`. The even
/// graduation as NIST Handbook 44, 10.3, has it; the rest worked by hand.
#[test]
fn ties_and_directions() {
    let cases = [
        (1, [1, 0, 1, 0, 1, 0]),
        (3, [2, 2, 2, 1, 2, 1]),
        (5, [3, 2, 3, 2, 3, 2]),
        (7, [4, 4, 4, 3, 4, 3]),
        (8, [4, 4, 4, 4, 4, 4]),
        (0, [0, 0, 0, 0, 0, 0]),
        (-1, [0, 0, -1, -1, 0, 0]),
        (-3, [-1, -2, -2, -2, -1, -1]),
        (-5, [-2, -2, -3, -3, -2, -2]),
        (-8, [-4, -4, -4, -4, -4, -4]),
    ];
    for (thirty_seconds, expected) in cases {
        for (mode, sixteenths) in MODES.into_iter().zip(expected) {
            let reading = Tape::sixteenths().mode(mode).read(inches(thirty_seconds, 32)).unwrap();
            assert_eq!(reading.mark(), inches(sixteenths, 16), "{thirty_seconds}/32 {mode:?}");
            assert_eq!(reading.leftover(), inches(thirty_seconds - 2 * sixteenths, 32), "{thirty_seconds}/32 {mode:?}");
        }
    }
}

#[test]
fn strong_shy_and_dead_on() {
    let lean = |position| Tape::sixteenths().read(position).unwrap().lean();
    assert_eq!(lean(inches(72, 5)), Lean::Strong); // 14 2/5 in is past 14 3/8 in
    assert_eq!(lean(inches(144, 5)), Lean::Shy); // 28 4/5 in is short of 28 13/16 in
    assert_eq!(lean(inches(141, 8)), Lean::DeadOn);
    assert_eq!(lean(inches(-72, 5)), Lean::Shy);
    assert_eq!(lean(inches(-144, 5)), Lean::Strong);
}

/// Common practice, no source: held at its 1 in line the tape shows 25 in for a 24 in piece.
#[test]
fn a_tape_read_from_its_one_inch_line() {
    let tape = Tape::sixteenths().offset(inches(1, 1));
    let reading = tape.read(inches(24, 1)).unwrap();
    assert_eq!((reading.shown(), reading.mark()), (inches(25, 1), inches(24, 1)));
}

/// Worked by hand: graduations lie where the tape has them, so an offset of half a step moves the marks.
#[test]
fn an_offset_between_graduations() {
    let tape = Tape::sixteenths().offset(inches(1, 32));
    let reading = tape.read(inches(3, 1)).unwrap();
    assert_eq!(reading.shown(), inches(49, 16)); // 3 1/32 in would be shown: the tie goes up
    assert_eq!(reading.mark(), inches(97, 32));
    assert_eq!(reading.leftover(), inches(-1, 32));

    let below = tape.mode(RoundingMode::TowardZero).read(inches(-1, 64)).unwrap();
    assert_eq!((below.shown(), below.mark(), below.leftover()), (Length::ZERO, inches(-1, 32), inches(1, 64)));
}

#[test]
fn the_ends_of_the_tape() {
    let tape = Tape::sixteenths().length(inches(72, 1));
    let shown = |position| tape.read(position).map(|reading| reading.shown());
    assert_eq!(shown(inches(72, 1)), Ok(inches(72, 1)));
    assert_eq!(shown(inches(7201, 100)), Ok(inches(72, 1))); // the last mark, a hair strong
    assert_eq!(shown(inches(2305, 32)), Err(TapeError::PastEnd { shown: inches(1153, 16), length: inches(72, 1) }));
    assert_eq!(shown(inches(-1, 32)), Ok(Length::ZERO));
    assert_eq!(shown(inches(-1, 16)), Err(TapeError::BelowZero { shown: inches(-1, 16) }));
    assert_eq!(tape.offset(inches(1, 1)).read(inches(-1, 1)).unwrap().shown(), Length::ZERO);
    assert!(tape.offset(inches(1, 1)).read(inches(72, 1)).is_err());
    assert!(Tape::sixteenths().length(-inches(1, 1)).read(Length::ZERO).is_err());
}

#[test]
fn refusals_say_why() {
    let out_of_range = TapeError::OutOfRange { position: Length::MAX };
    assert_eq!(Tape::with_step(Length::ZERO), Err(TapeError::NotAStep { step: Length::ZERO }));
    assert_eq!(Tape::with_step(-inches(1, 16)), Err(TapeError::NotAStep { step: inches(-1, 16) }));
    assert_eq!(Tape::sixteenths().offset(inches(1, 1)).read(Length::MAX), Err(out_of_range));
    assert_eq!(Tape::sixteenths().mode(RoundingMode::Up).read(Length::MAX), Err(out_of_range));

    let texts = [
        (TapeError::NotAStep { step: Length::ZERO }, "a tape cannot have a graduation every 0\": it must be above zero"),
        (
            TapeError::PastEnd { shown: inches(1153, 16), length: inches(72, 1) },
            "the mark would read 72 1/16\", past the end of the tape at 72\"",
        ),
        (TapeError::BelowZero { shown: inches(-1, 16) }, "the mark would read -1/16\", below the zero of the tape"),
        (
            TapeError::OutOfRange { position: inches(72, 5) },
            "the reading of 14 2/5\" is out of range: longer, or more finely divided, than a length can hold",
        ),
    ];
    for (error, text) in texts {
        assert_eq!(error.to_string(), text);
    }
}

#[test]
fn equal_readings() {
    let read = |tape: Tape, position| tape.read(position).unwrap();
    assert_eq!(read(Tape::sixteenths(), inches(1, 4)), read(Tape::eighths(), inches(1, 4)));
    assert_ne!(read(Tape::sixteenths(), inches(1, 4)), read(Tape::sixteenths().offset(inches(1, 1)), inches(1, 4)));
    assert_ne!(read(Tape::sixteenths(), inches(1, 3)), read(Tape::sixteenths(), inches(1, 4)));
}

#[test]
fn debug_shows_mark_and_leftover() {
    let reading = Tape::sixteenths().offset(inches(1, 1)).read(inches(144, 5)).unwrap();
    let text = "Reading { mark: Length(461/16 in), shown: Length(477/16 in), leftover: Length(-1/80 in) }";
    assert_eq!(std::format!("{reading:?}"), text);
}

#[test]
fn grains_measure_what_they_were_made_for() {
    let ticks = |num, den| inches(num, den) / 54_918_864_000_000;
    let (thirds, halves) = (Grain::of(ticks(1, 3)), Grain::of(ticks(1, 2)));
    let sixths = thirds.common(halves).unwrap();
    assert_eq!((sixths.count(ticks(5, 6)), sixths.count(ticks(1, 3)), sixths.count(ticks(-7, 1))), (Some(5), Some(2), Some(-42)));
    assert_eq!((thirds.count(ticks(1, 2)), sixths.in_one_of(halves)), (None, 3));
    assert_eq!((sixths.length(-4), sixths.count(Length::MAX)), (ticks(-2, 3), None));
    assert_eq!(Grain::of(ticks(1, u64::MAX)).common(halves), None);
}

quickcheck! {
    fn no_mark_is_further_off_than_its_mode_allows(position: (i32, u32), offset: (i16, u8), step: (u16, u16)) -> TestResult {
        let Some(step) = step_of(step) else { return TestResult::discard() };
        let position = inches(position.0.into(), u64::from(position.1) + 1);
        let tape = Tape::with_step(step).unwrap().offset(inches(offset.0.into(), u64::from(offset.1) + 1));
        let good: Vec<bool> = MODES.into_iter().map(|mode| is_right(tape.mode(mode), position)).collect();
        TestResult::from_bool(good == [true; 6])
    }

    fn never_panics(position: i128, offset: i128, step: i128, length: i128, mode: usize) -> bool {
        let length_of = |ticks| Length::from_ticks(crate::length::Fraction::whole(ticks).unwrap_or(crate::length::Fraction::MAX));
        let Ok(tape) = Tape::with_step(length_of(step)) else { return step <= 0 };
        let tape = tape.offset(length_of(offset)).length(length_of(length)).mode(MODES[mode % 6]);
        tape.read(length_of(position)).map_or(true, |reading| reading.true_position() == length_of(position))
    }
}

fn step_of((num, den): (u16, u16)) -> Option<Length> {
    (num > 0).then(|| inches(num.into(), u64::from(den) + 1))
}

fn is_right(tape: Tape, position: Length) -> bool {
    let reading = tape.read(position).unwrap();
    let (leftover, step) = (reading.leftover(), tape.step());
    let near_enough = match tape.rounding_mode() {
        RoundingMode::Down => !leftover.is_negative() && leftover < step,
        RoundingMode::Up => leftover <= Length::ZERO && -leftover < step,
        RoundingMode::TowardZero => leftover.abs() < step,
        _ => 2 * leftover.abs() <= step,
    };
    near_enough
        && reading.mark() + leftover == position
        && reading.true_position() == position
        && reading.mark() + tape.datum_reading() == reading.shown()
        && reading.shown().checked_ratio(step).is_some_and(|steps| steps.is_integer())
}
