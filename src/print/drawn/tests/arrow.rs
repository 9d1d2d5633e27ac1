//! The arrow on its line, in drawings of characters: what is seen is counted.

use std::string::{String, ToString};
use std::vec::Vec;

use quickcheck::quickcheck;

use super::{drawn, kinds};
use crate::print::Strokes;

fn columns(row: &str, wanted: char) -> Vec<usize> {
    row.chars().enumerate().filter(|(_, char)| *char == wanted).map(|(column, _)| column).collect()
}

/// How many lines past that of the first number the arrow is, and that number; `None` when no number is seen.
fn from_first_number(drawing: &str) -> Option<(i64, i64)> {
    let rows: Vec<_> = drawing.lines().collect();
    let (lines, arrow) = (columns(rows[2], '+'), columns(rows[1], 'v'));
    let place = |column: usize| lines.iter().position(|line| *line == column).map(|place| i64::try_from(place).unwrap());
    let is_number =
        |row: &&&str| row.chars().all(|char| char.is_ascii_digit() || "|- ".contains(char)) && row.contains(char::is_numeric);
    let row = rows.iter().find(is_number)?.trim_end();
    let number: String = row.chars().skip_while(|char| "| ".contains(*char)).take_while(|char| *char != ' ').collect();
    // At the beginning of the tape zero is moved in, and an even number stands half a column to the left.
    let line = if row.trim_start().starts_with('|') { row.find('|')? } else { row.find(&number)? + number.len() / 2 };
    Some((place(arrow[0])? - place(line)?, number.parse().ok()?))
}

quickcheck! {
    fn the_arrow_stands_as_many_lines_from_a_number_as_the_reading_does(kind: usize, number: i16, line: i64) -> bool {
        let kinds = kinds();
        let (tape, per_number, step_of_number) = kinds[kind % kinds.len()];
        let line = i64::from(number) * per_number + line % per_number;
        let drawing = drawn(tape, tape.step() * line).strokes(Strokes::Ascii).to_string();
        match from_first_number(&drawing) {
            None => per_number > 72,
            Some((lines, number)) => number % step_of_number == 0 && number / step_of_number * per_number + lines == line,
        }
    }

    fn ascii_is_ascii_and_both_have_the_same_columns(kind: usize, line: i16) -> bool {
        let kinds = kinds();
        let tape = kinds[kind % kinds.len()].0;
        let drawing = drawn(tape, tape.step() * i64::from(line));
        let (ascii, lines) = (drawing.strokes(Strokes::Ascii).to_string(), drawing.to_string());
        let widths = |text: &str| text.lines().map(|row| row.chars().count()).collect::<Vec<_>>();
        ascii.is_ascii() && widths(&ascii) == widths(&lines) && widths(&ascii).iter().all(|width| *width <= 80)
    }
}
