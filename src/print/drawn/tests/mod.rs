//! Drawings against hand-made ones. Positions are made by hand and read on the tape by `tape/`, which has
//! tests of its own; the look is our own, so no source is named for it. That lines of a rule are the shorter
//! the finer they are is common practice, no source.

use std::string::ToString;
use std::vec::Vec;

use super::TapeDrawing;
use crate::length::{Length, Unit};
use crate::tape::Tape;

mod arrow;
mod characters;
mod labels;
#[cfg(feature = "svg")]
mod picture;
mod words;

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn millimeters(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Millimeter)
}

fn every(step: Length) -> Tape {
    Tape::with_step(step).unwrap()
}

#[track_caller]
fn drawn(tape: Tape, position: Length) -> TapeDrawing {
    TapeDrawing::new(&tape, &tape.read(position).unwrap()).unwrap()
}

/// A tape of some kind, how many lines it has from one number to the next, and what is added to the number.
type Kind = (Tape, i64, i64);

/// Each size of the rules in inches and millimeters, and steps that belong to no rule.
fn kinds() -> Vec<Kind> {
    let halves = (0..=6).map(|power| (inches(1, 1 << power), 1 << power, 1));
    let others = [
        (millimeters(10, 1), 1, 10),
        (millimeters(5, 1), 2, 10),
        (millimeters(1, 1), 10, 10),
        (millimeters(1, 2), 20, 10),
        (inches(1, 3), 3, 1),
        (inches(1, 7), 7, 1),
        (inches(1, 10), 10, 1),
        (inches(3, 16), 16, 3),
        (inches(5, 2), 2, 5),
        (inches(12, 1), 1, 12),
        (inches(6, 5), 5, 6), // a tenth of a foot
        (inches(1, 128), 128, 1),
        (inches(1, 1000), 1000, 1),
        (inches(355, 113), 113, 355),
        (millimeters(2, 1), 1, 2),
        (millimeters(1, 3), 3, 1),
        (millimeters(1, 10), 10, 1),
        (millimeters(1000, 1), 1, 1000),
    ];
    halves.chain(others).map(|(step, lines, number)| (every(step), lines, number)).collect()
}

#[test]
fn a_reading_of_another_tape_is_refused() {
    let refused = |tape: Tape, other: Tape, position| TapeDrawing::new(&tape, &other.read(position).unwrap()).unwrap_err();
    let sixteen_feet = Tape::sixteenths().length(Length::new(16, Unit::Foot));
    let finest = Length::fraction(1, u64::MAX, Unit::Inch);
    let cases = [
        (
            refused(Tape::eighths(), Tape::sixteenths(), inches(5, 16)),
            r#"5/16" lies on no line of a tape with a line every 1/8""#,
        ),
        (
            refused(Tape::sixteenths(), Tape::millimeters(), millimeters(365, 1)),
            r#"14 47/127" lies on no line of a tape with a line every 1/16""#,
        ),
        (refused(sixteen_feet, Tape::sixteenths(), inches(193, 1)), r#"193" is not on a tape that goes from 0" to 192""#),
        (refused(sixteen_feet, Tape::sixteenths(), inches(-1, 16)), r#"-1/16" is not on a tape that goes from 0" to 192""#),
        (
            refused(every(finest), Tape::sixteenths(), Length::new(i64::MAX, Unit::Foot)),
            "the tape around 110680464442257309684\", with a line every 1/18446744073709551615\", cannot be drawn: \
             its lines are out of range",
        ),
    ];
    for (error, text) in cases {
        assert_eq!(error.to_string(), text);
    }
}
