//! Rounding and readings of a tape, in every mode on every graduation.

use scantling::Rounding;

use super::{MODES, golden, inches, tape};

#[test]
fn every_rounding() {
    let rows = golden("rounding.csv");
    for row in &rows {
        let (value, step) = (inches(&row[0]), inches(&row[1]));
        for (cell, (name, mode)) in row.iter().skip(2).zip(MODES) {
            let expected = step.checked_mul(cell.parse().unwrap());
            assert_eq!(value.round(Rounding::to(step).mode(mode)).ok(), expected, "{name}: {row:?}");
        }
    }
    assert_eq!(rows.len(), 2518);
}

#[test]
fn every_reading_of_a_tape() {
    let rows = golden("tape.csv");
    for row in &rows {
        let tape = tape(&row[1], &row[2]).offset(inches(&row[3]));
        let reading = tape.read(inches(&row[0])).unwrap();
        let figures = [reading.mark(), reading.shown(), reading.leftover()];
        assert_eq!(figures, [4, 5, 6].map(|column| inches(&row[column])), "{row:?}");
        assert_eq!(reading.to_string(), row[7], "{row:?}");
    }
    assert_eq!(rows.len(), 600);
}
