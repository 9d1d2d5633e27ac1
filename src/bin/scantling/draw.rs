//! The tape with the mark on it, below an answer. How it is drawn is left to the library.

use std::fmt::Write as _;

use scantling::{Length, TapeDrawing};

use crate::Outcome;
use crate::arguments::Read;
use crate::problem::Problem;
use crate::words::Bench;

/// A blank line, the drawing and what to mark, if they were asked for.
pub fn below(length: Length, options: &Read, bench: Bench) -> Outcome {
    let Some(strokes) = options.draw else { return Ok(String::new()) };
    let drawing = drawing(length, bench)?.strokes(strokes.into());
    let rows = format!("\n{drawing}\nMark {}.\n", drawing.words());
    Ok(rows.lines().fold(String::new(), |mut indented, row| {
        let _ = writeln!(indented, "{}{row}", if row.is_empty() { "" } else { "  " });
        indented
    }))
}

pub fn drawing(length: Length, bench: Bench) -> Result<TapeDrawing, Problem> {
    let reading = bench.tape.read(length).map_err(|error| Problem::plain(error.to_string()))?;
    TapeDrawing::new(&bench.tape, &reading).map_err(|error| Problem::plain(error.to_string()))
}
