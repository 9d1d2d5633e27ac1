//! No two texts meet, at any reading on any tape: their boxes are compared, and what lies between them.

use std::vec::Vec;

use super::{drawn, every, inches, kinds, millimeters};
use crate::length::{Length, Unit};
use crate::print::drawn::labels::{Label, Laid, Row};
use crate::tape::Tape;

const ROWS: [Row; 4] = [Row::Reading, Row::Count, Row::Number, Row::Flag];

/// The texts of a row from left to right.
fn row(labels: &[Label], row: Row) -> Vec<&Label> {
    let mut labels: Vec<_> = labels.iter().filter(|label| label.row == row).collect();
    labels.sort_by_key(|label| label.span.start);
    labels
}

/// Holds all texts apart, by a blank at least where they are not counts, and within the ends of the tape.
#[track_caller]
fn are_apart(laid: &Laid<'_>) -> usize {
    let (labels, mark) = (laid.labels(), laid.at(laid.drawing.line));
    for (row, labels) in ROWS.map(|name| (name, row(&labels, name))) {
        let gap = if row == Row::Count { 0 } else { laid.measure.gap };
        assert!(labels.windows(2).all(|pair| pair[0].span.end + gap <= pair[1].span.start), "{labels:?}");
        let ends = (if laid.stretch.begins { 1 } else { i128::MIN }, laid.end.unwrap_or(i128::MAX));
        let on_tape = matches!(row, Row::Number | Row::Flag);
        assert!(!on_tape || labels.iter().all(|label| ends.0 <= label.span.start && label.span.end <= ends.1), "{labels:?}");
        let half = (laid.measure.arrow + 1) / 2;
        let beside = |label: &&Label| label.span.end <= mark + 1 - half || label.span.start >= mark + half;
        assert!(row != Row::Count || labels.iter().all(beside), "{labels:?}");
    }
    labels.len()
}

#[test]
fn texts_never_meet_in_characters() {
    let mut readings = 0;
    for (tape, per_number, _) in kinds() {
        let shorter = tape.length(tape.step() * (per_number * 40) + tape.step() / 3);
        for tape in [tape, tape.offset(tape.step() * 3), shorter] {
            let around = |line: i64| line * per_number - per_number.min(70)..=line * per_number + per_number.min(70);
            for line in [0, 2, 12, 38, 100, 360, 1000, 123_456].into_iter().flat_map(around) {
                let Ok(reading) = tape.read(tape.step() * line + tape.step() / 5) else { continue };
                let drawing = super::TapeDrawing::new(&tape, &reading).unwrap();
                are_apart(&drawing.in_columns());
                readings += 1;
            }
        }
    }
    assert!(readings > 8000, "{readings}");
}

#[test]
fn texts_never_meet_at_half_an_inch_and_at_thirty_feet() {
    for (tape, ..) in kinds() {
        for position in [inches(1, 2), Length::new(30, Unit::Foot), millimeters(25, 2), millimeters(9144, 1)] {
            let few = are_apart(&drawn(tape, position).in_columns());
            assert!(few >= 1, "{position} every {}", tape.step());
        }
    }
    let at_thirty_feet = drawn(Tape::sixteenths(), Length::new(30, Unit::Foot));
    let texts = at_thirty_feet.in_columns().labels().into_iter().map(|label| label.text);
    assert!(texts.eq(["360\"", "359", "360", "361", "30 ft"]));
}

#[test]
fn numbers_that_have_no_room_are_left_out_evenly() {
    let numbers = |step, position| {
        let drawing = drawn(every(step), position);
        let labels = drawing.in_columns().labels();
        row(&labels, Row::Number).iter().map(|label| label.text.clone()).collect::<Vec<_>>()
    };
    assert_eq!(numbers(inches(1, 1), inches(59, 1)), ["55", "56", "57", "58", "59", "60", "61", "62", "63"]);
    assert_eq!(numbers(inches(1, 1), inches(12_345_678, 1)), ["12345674", "12345676", "12345678", "12345680", "12345682"]);
    let huge = Length::new(i64::MAX, Unit::Foot);
    assert_eq!(numbers(inches(1, 1), huge), ["110680464442257309680", "110680464442257309685"]);
    assert_eq!(numbers(inches(1, 16), huge), ["110680464442257309683", "110680464442257309684", "110680464442257309685"]);
}

#[test]
fn an_end_of_the_tape_is_seen_wherever_the_drawing_ends() {
    // Around 1 in there is room for 1 1/8 in on either side.
    let ends = |sixteenths, ending: &str| {
        let tape = Tape::sixteenths().length(inches(sixteenths, 16));
        let drawing = std::format!("{}", drawn(tape, inches(1, 1)));
        assert!(drawing.lines().nth(2).unwrap().ends_with(ending), "{drawing}");
    };
    ends(33, "┬─┐");
    ends(34, "┬─┐");
    ends(35, "┬─┬╌");
}
