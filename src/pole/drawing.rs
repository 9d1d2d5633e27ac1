//! A pole in characters: each row as a stick with its lines, and the X where the part lies, to the nearest character.
//! True size is left to `picture/`.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec;
use alloc::vec::Vec;
use core::fmt;

use super::label::{isolated, label};
use super::{Mark, PartSide, Row, StoryPole};
use crate::length::{Length, Rounding, RoundingMode};
use crate::print::Strokes;

/// How many characters a stick is drawn with, between its ends.
const WIDTH: usize = 76;

/// A pole drawn in characters, made by [`StoryPole::drawing`].
///
/// Numbers are those of the marks in [`listed`](StoryPole::listed), where there is room for them. Its `Display` cannot
/// fail; it pays no heed to width or alignment.
///
/// ```
/// use scantling::{Length, Mark, PartSide, StoryPole, Strokes, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let shelf = |place, side| Mark::new(inches(place, 1), "shelf", side).thick(inches(3, 4));
/// let pole = StoryPole::new("ware case", inches(72, 1))
///     .row("side", [shelf(18, PartSide::Past), shelf(36, PartSide::Centered), shelf(54, PartSide::Before)])?;
/// assert_eq!(
///     format!("\n{}", pole.drawing().strokes(Strokes::Ascii)),
///     r#"
/// side
///                      1                  2                  3
///  |-------------------|X----------------X|X----------------X|------------------|
///  bottom                                                                     top
/// "#
/// );
/// # Ok::<(), scantling::PoleError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PoleDrawing {
    rows: Vec<Drawn>,
    ends: String,
    strokes: Strokes,
}

/// One row: its name, the numbers above it, and what is at each character.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Drawn {
    name: String,
    numbers: String,
    cells: Vec<Cell>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Cell {
    Stick,
    Part,
    Edge,
    Line,
}

impl StoryPole {
    /// The pole in characters, datum at the left, no wider than a terminal. Marks off the stick are not drawn.
    ///
    /// ```
    /// use scantling::{StoryPole, Unit};
    ///
    /// let pole = StoryPole::new("north wall", Unit::Yard.length()).row("studs", [])?;
    /// assert!(pole.drawing().to_string().lines().all(|line| line.chars().count() <= 79));
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    #[must_use]
    pub fn drawing(&self) -> PoleDrawing {
        let rows = self.rows().iter().map(|row| Drawn::new(row, self.length())).collect();
        let (near, far) = (self.datum().to_string(), self.datum().opposite().to_string());
        let ends = format!(" {near}{far:>rest$}", rest = WIDTH + 2 - near.len());
        PoleDrawing { rows, ends, strokes: Strokes::Unicode }
    }
}

impl PoleDrawing {
    /// The same with other characters.
    ///
    /// ```
    /// use scantling::{StoryPole, Strokes, Unit};
    ///
    /// let pole = StoryPole::new("north wall", Unit::Yard.length()).row("studs", [])?;
    /// assert!(pole.drawing().strokes(Strokes::Ascii).to_string().is_ascii());
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    #[must_use]
    pub fn strokes(self, strokes: Strokes) -> Self {
        Self { strokes, ..self }
    }
}

impl fmt::Display for PoleDrawing {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let [near, stick, edge, line, far] = match self.strokes {
            Strokes::Unicode => ['├', '─', '│', '┃', '┤'],
            Strokes::Ascii => ['|', '-', ':', '|', '|'],
        };
        for row in &self.rows {
            let cells = row.cells.iter().map(|cell| match cell {
                Cell::Stick => stick,
                Cell::Part => 'X',
                Cell::Edge => edge,
                Cell::Line => line,
            });
            let cells: String = cells.collect();
            writeln!(out, "{}\n{}\n {near}{cells}{far}", row.name, row.numbers)?;
        }
        writeln!(out, "{}", self.ends)
    }
}

impl Drawn {
    fn new(row: &Row, length: Length) -> Self {
        let at = |place| cell(place, length);
        let marks: Vec<_> = row.marks().iter().map(|mark| (mark, at(mark.position))).collect();
        let mut cells = vec![Cell::Stick; WIDTH];
        let mut put = |place: usize, cell: Cell| cells[place.min(WIDTH - 1)] = cell;
        let drawn = || marks.iter().filter_map(|(mark, line)| Some((*mark, (*line)?)));
        for (mark, line) in drawn() {
            let (from, to) = part(mark, line, length);
            (from..to).for_each(|place| put(place, Cell::Part));
        }
        for (mark, line) in drawn() {
            let (from, to) = part(mark, line, length);
            // An edge of its own only where there is room for an X between it and the line.
            if mark.thickness.is_some() && to > line + 2 {
                put(to - 1, Cell::Edge);
            }
            if mark.thickness.is_some() && from + 2 <= line.saturating_sub(1) {
                put(from, Cell::Edge);
            }
        }
        drawn().for_each(|(_, line)| put(line, Cell::Line));
        let numbers = (1..).zip(&marks).filter_map(|(number, (_, line))| Some((number, (*line)?)));
        Self { name: isolated(label(row.name(), 40)), numbers: numbered(numbers), cells }
    }
}

/// The characters of a part: from the line to its other edge, one at least where it lies.
fn part(mark: &Mark, line: usize, length: Length) -> (usize, usize) {
    let (near, far) = mark.checked_edges().unwrap_or((mark.position, mark.position));
    let from = cell(near.max(Length::ZERO), length).unwrap_or(line);
    let to = cell(far.min(length), length).unwrap_or(line) + 1;
    let (before, past) = (from.min(line.saturating_sub(1)), to.max(line + 2).min(WIDTH));
    match mark.side {
        PartSide::Past => (line, past),
        PartSide::Before => (before, line),
        PartSide::Centered => (before, past),
        PartSide::Line => (line, line),
    }
}

/// At which character a place of the stick lies.
fn cell(place: Length, length: Length) -> Option<usize> {
    if place.is_negative() || place > length {
        return None;
    }
    let one = length.checked_div(i64::try_from(WIDTH).ok()?).filter(|one| !one.is_zero())?;
    let count = place.round(Rounding::to(one).mode(RoundingMode::Down)).ok()?.checked_ratio(one)?;
    Some(usize::try_from(count.to_integer()).ok()?.min(WIDTH - 1))
}

/// Each number above its line, unless it would touch the one before.
fn numbered(numbers: impl Iterator<Item = (usize, usize)>) -> String {
    let mut text = String::new();
    let mut end = 0;
    for (number, place) in numbers {
        let number = number.to_string();
        let start = (place + 2).saturating_sub((number.len() - 1) / 2);
        if start >= end + usize::from(end > 0) {
            text += &" ".repeat(start - end);
            text += &number;
            end = start + number.len();
        }
    }
    text
}
