//! The tape in characters, for a terminal. A line is as many half characters long as there are sizes of
//! lines up to its own. Which lines and texts there are is left to `stretch.rs` and `labels.rs`.

use alloc::string::{String, ToString};
use alloc::vec;
use alloc::vec::Vec;
use core::fmt::{self, Write};

use super::TapeDrawing;
use super::labels::{Label, Laid, Measure, Row};
use super::rule::Rule;
use super::strokes::Pen;

/// With the edges that run on, and an indent, within the 80 columns of a terminal.
const COLUMNS: i128 = 72;

/// How many columns there are to a step: about 32 from number to number, so that two of them are seen, and
/// two if need be, so that lines do not touch. One for 64ths, of which there are too many.
fn columns(rule: &Rule) -> i128 {
    let whole = rule.interval(0);
    let least = if 2 * whole <= COLUMNS { 2 } else { 1 };
    (32 / whole).clamp(least, 8)
}

/// How many steps there is room for.
pub(super) fn room(rule: &Rule) -> i128 {
    COLUMNS / columns(rule)
}

/// A line of text: pieces, and the columns they begin at.
type Pieces = Vec<(i128, String)>;

struct Sheet<'a> {
    laid: Laid<'a>,
    labels: Vec<Label>,
    pen: Pen,
}

impl TapeDrawing {
    /// Laid out in columns.
    pub(super) fn in_columns(&self) -> Laid<'_> {
        let (stretch, step) = (self.stretch, columns(&self.rule));
        let measure = Measure { step, line: 1, arrow: 1, gap: 1, advance: [1; 4] };
        // A part of a step is under 2^64 over 2^64.
        let end = stretch.ends.map(|part| stretch.steps() * step + (part * step).to_integer());
        Laid { drawing: self, stretch, measure, end }
    }

    /// Writes the drawing, each of its rows ended by a line break.
    ///
    /// ```
    /// use scantling::{Length, Tape, TapeDrawing, Unit};
    ///
    /// let tape = Tape::sixteenths();
    /// let mut page = String::from("Top shelf:\n");
    /// TapeDrawing::new(&tape, &tape.read(Length::fraction(141, 8, Unit::Inch))?)?.write_to(&mut page).unwrap();
    /// assert!(page.starts_with("Top shelf:\n") && page.contains(r#"17-5/8""#));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    ///
    /// # Errors
    ///
    /// What the sink gives; none of its own.
    pub fn write_to(&self, out: &mut impl Write) -> fmt::Result {
        let laid = self.in_columns();
        let sheet = Sheet { labels: laid.labels(), laid, pen: self.strokes.pen() };
        let rows = sheet.rows();
        let leftmost = rows.iter().flatten().map(|(column, _)| *column).min().unwrap_or(0);
        rows.into_iter().try_for_each(|row| write_row(row, leftmost, out))
    }
}

impl fmt::Display for TapeDrawing {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.write_to(out)
    }
}

fn write_row(mut row: Pieces, leftmost: i128, out: &mut impl Write) -> fmt::Result {
    row.sort_unstable();
    let mut at = leftmost;
    for (column, text) in row {
        let text = text.trim_end();
        (at..column).try_for_each(|_| out.write_char(' '))?;
        out.write_str(text)?;
        at = column + length(text);
    }
    out.write_char('\n')
}

#[allow(clippy::cast_possible_wrap)] // a text has no 2^63 characters
fn length(text: &str) -> i128 {
    text.chars().count() as i128
}

impl Sheet<'_> {
    fn rows(&self) -> Vec<Pieces> {
        let mut arrow = self.texts(Row::Count);
        arrow.push((self.laid.at(self.laid.drawing.line), self.pen.arrow.to_string()));
        let mut rows = vec![self.texts(Row::Reading), arrow, self.edge(true)];
        rows.extend((1..=self.halves(0) / 2).map(|depth| self.between_sides(self.lines(depth))));
        rows.push(self.between_sides(self.texts(Row::Number)));
        let flags = self.texts(Row::Flag);
        if !flags.is_empty() {
            rows.push(self.between_sides(flags));
        }
        rows.push(self.edge(false));
        rows.extend(self.laid.drawing.datum().map(|datum| vec![(0, datum)]));
        rows
    }

    fn texts(&self, row: Row) -> Pieces {
        let labels = self.labels.iter().filter(|label| label.row == row);
        labels.map(|label| (label.span.start, label.text.clone())).collect()
    }

    /// How many half characters a line of a size is long, with the half that is in the edge. The numbered
    /// lines stand out by one more.
    fn halves(&self, size: usize) -> usize {
        self.laid.drawing.rule.sizes() - size + usize::from(size == 0)
    }

    /// What is seen of the lines so many characters below the edge.
    fn lines(&self, depth: usize) -> Pieces {
        let Laid { drawing, stretch, .. } = &self.laid;
        let sides = [stretch.begins.then_some(0), self.laid.end];
        let seen = stretch.lines().filter_map(|line| {
            let strokes = if line == drawing.line { self.pen.marked } else { self.pen.line };
            let stroke = match (self.halves(drawing.rule.size(line)) + 1).checked_sub(2 * depth)? {
                0 => return None,
                1 => strokes[2],
                _ => strokes[1],
            };
            Some((self.laid.at(line), stroke.to_string()))
        });
        seen.filter(|(column, _)| !sides.contains(&Some(*column))).collect()
    }

    fn between_sides(&self, mut row: Pieces) -> Pieces {
        let sides = [self.laid.stretch.begins.then_some(0), self.laid.end];
        row.extend(sides.into_iter().flatten().map(|column| (column, self.pen.side.to_string())));
        row
    }

    /// The upper edge, which lines leave from, or the lower one; with corners at the ends of the tape.
    fn edge(&self, upper: bool) -> Pieces {
        let Laid { drawing, stretch, measure, end } = &self.laid;
        let Pen { edge, onward, corners, .. } = self.pen;
        let last = self.laid.width() - 1;
        let stroke = |column: i128| match (column / measure.step + stretch.first, column % measure.step) {
            _ if column == 0 && stretch.begins => corners[0][usize::from(!upper)],
            _ if Some(column) == *end => corners[1][usize::from(!upper)],
            (line, 0) if upper && line == drawing.line => self.pen.marked[0],
            (_, 0) if upper => self.pen.line[0],
            _ => edge,
        };
        let mut row = vec![(0, (0..=last).map(stroke).collect())];
        row.extend((!stretch.begins).then(|| (-1, onward.to_string())));
        row.extend(end.is_none().then(|| (last + 1, onward.to_string())));
        row
    }
}
