//! A pole as text: every mark as the tape shows it, how the true place lies to it, what the line is an edge of, and on
//! which side of it the X goes. Drawings are left to `drawing.rs` and `picture/`.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt::{self, Write as _};

use super::figure::Figures;
use super::label::{isolated, label};
use super::{Mark, PartSide, PoleError, Row, StoryPole};
use crate::length::Length;
use crate::print::{Column, Shown};
use crate::tape::{Lean, Reading, Tape};

/// How much of a name and of a note is shown.
const NAME: usize = 40;
const NOTE: usize = 60;

/// A pole as aligned text, made by [`StoryPole::listed`].
///
/// Its `Display` cannot fail; it pays no heed to width or alignment.
///
/// ```
/// use scantling::{Length, Mark, PartSide, StoryPole, Tape, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let shelf = |count: i64, name| Mark::new(inches(72 * count, 5), name, PartSide::Past).thick(inches(3, 4));
/// let pole = StoryPole::new("ware case", inches(72, 1)).row("side", [shelf(1, "shelf 1"), shelf(2, "shelf 2")])?;
/// assert_eq!(
///     format!("\n{}", pole.listed(&Tape::sixteenths())?),
///     r#"
/// Story pole  ware case
/// Stick       72" = 6'-0" long, measured up from the bottom
/// Tape        a line every 1/16"; hook it at the bottom end, and leave it there for every mark
///
/// Row  side
///       line at     true place is     exact place   it is the    the X goes                         mark
///   1   14-3/8"     strong by 1/40"   14 2/5"       lower edge   3/4" above it, to 15-1/8" strong   shelf 1
///   2   28-13/16"   shy by 1/80"      28 4/5"       lower edge   3/4" above it, to 29-9/16" shy     shelf 2
/// "#
/// );
/// # Ok::<(), scantling::PoleError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PoleList {
    text: String,
}

impl fmt::Display for PoleList {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(&self.text)
    }
}

impl StoryPole {
    /// The pole as text, its marks as this tape shows them.
    ///
    /// ```
    /// use scantling::{StoryPole, Tape, Unit};
    ///
    /// let pole = StoryPole::new("north wall", Unit::Yard.length());
    /// assert!(pole.listed(&Tape::sixteenths())?.to_string().starts_with("Story pole  north wall\n"));
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`PoleError::Tape`] when the tape does not reach a mark, or a reading cannot be held; [`PoleError::NoLength`].
    pub fn listed(&self, tape: &Tape) -> Result<PoleList, PoleError> {
        self.has_length()?;
        let list = List { pole: self, tape, figures: Figures::of(tape) };
        let mut text = list.heading();
        for row in self.rows() {
            text += &list.row(row)?;
        }
        Ok(PoleList { text })
    }

    /// What it is, in a few words: `ware case, left hand`.
    pub(super) fn title(&self, most: usize) -> String {
        let name = isolated(label(self.name(), most));
        match self.hand() {
            Some(hand) => format!("{name}, {hand} hand"),
            None => name,
        }
    }
}

struct List<'a> {
    pole: &'a StoryPole,
    tape: &'a Tape,
    figures: Figures,
}

impl List<'_> {
    fn heading(&self) -> String {
        let Self { pole, tape, figures } = self;
        let datum = pole.datum();
        let long = figures.long(pole.length());
        let mut text = format!("Story pole  {}\nStick       {long} long, measured {}\n", pole.title(NOTE), datum.way());
        let (step, held) = (figures.mark_text(tape.step()), tape.datum_reading());
        let burned = figures.mark_text(held);
        let _ = if held.is_zero() {
            writeln!(text, "Tape        a line every {step}; hook it at the {datum} end, and leave it there for every mark")
        } else {
            writeln!(
                text,
                "Tape        a line every {step}; lay its {burned} line on the {datum} end: it shows {burned} more than each exact place"
            )
        };
        text
    }

    fn row(&self, row: &Row) -> Result<String, PoleError> {
        let mut text = format!("\nRow  {}\n", isolated(label(row.name(), NAME)));
        if let Some((from, to)) = row.closes() {
            let _ = writeln!(text, "     must reach from {} to {}", self.figures.long(from), self.figures.long(to));
        }
        if row.marks().is_empty() {
            return Ok(text + "     no marks\n");
        }
        let readings = row.marks().iter().map(|mark| self.tape.read(mark.position)).collect::<Result<Vec<_>, _>>()?;
        let shown = self.column(readings.iter().map(Reading::shown), Figures::mark);
        let exact = self.column(row.marks().iter().map(|mark| mark.position), Figures::exact);
        let mut lines = Vec::from([["", "line at", "true place is", "exact place", "it is the", "the X goes"].map(String::from)]);
        for (number, mark) in row.marks().iter().enumerate() {
            let edge = mark.side.words(self.pole.datum()).0;
            lines.push([
                (number + 1).to_string(),
                shown[number].clone(),
                self.figures.lean(&readings[number]),
                exact[number].clone(),
                edge.into(),
                self.side(mark)?,
            ]);
        }
        let names = core::iter::once("mark".into()).chain(row.marks().iter().map(named));
        Ok(text + &aligned(&lines, names))
    }

    /// Where the X goes, and how far: `3/4" above it, to 15-1/8"`.
    fn side(&self, mark: &Mark) -> Result<String, PoleError> {
        let (_, way) = mark.side.words(self.pole.datum());
        let at = |place| {
            let reading = self.tape.read(place)?;
            let shown = self.figures.mark_text(reading.shown());
            Ok::<_, PoleError>(if reading.lean() == Lean::DeadOn { shown } else { format!("{shown} {}", reading.lean()) })
        };
        let edges = mark.checked_edges().unwrap_or((mark.position, mark.position));
        let thick = mark.thickness.map(|thickness| self.figures.mark_text(thickness));
        Ok(match (mark.side, thick) {
            (PartSide::Line, _) => "no X".into(),
            (PartSide::Centered, None) => "half on each side".into(),
            (PartSide::Centered, Some(thick)) => {
                format!("half of {thick} on each side, {} to {}", at(edges.0)?, at(edges.1)?)
            }
            (_, None) => format!("{way} it"),
            (PartSide::Past, Some(thick)) => format!("{thick} {way} it, to {}", at(edges.1)?),
            (PartSide::Before, Some(thick)) => format!("{thick} {way} it, to {}", at(edges.0)?),
        })
    }

    /// Figures one below the other, lined up where whole numbers end.
    fn column(&self, lengths: impl Iterator<Item = Length>, figure: fn(Figures, Length) -> Option<Shown>) -> Vec<String> {
        let cells: Vec<_> = lengths.map(|length| (length, figure(self.figures, length))).collect();
        let column: Column = cells.iter().filter_map(|(_, shown)| *shown).collect();
        let text = |(length, shown): (Length, Option<Shown>)| {
            shown.map_or_else(|| self.figures.unshown(length), |shown| column.cell(shown).to_string())
        };
        cells.into_iter().map(text).collect()
    }
}

/// The name of a mark with its note behind it.
fn named(mark: &Mark) -> String {
    let name = isolated(label(&mark.name, NAME));
    match &mark.note {
        Some(note) => format!("{name} ({})", isolated(label(note, NOTE))),
        None => name,
    }
}

/// Columns as wide as they need to be, then the names, whose width no terminal agrees on with another.
fn aligned<const COLUMNS: usize>(lines: &[[String; COLUMNS]], names: impl Iterator<Item = String>) -> String {
    let width = |column: usize| lines.iter().map(|line| line[column].chars().count()).max().unwrap_or(0);
    let widths: [usize; COLUMNS] = core::array::from_fn(width);
    let mut text = String::new();
    for (line, name) in lines.iter().zip(names) {
        let cells = line.iter().zip(widths).enumerate().map(|(column, (cell, width))| match column {
            0 => format!("{cell:>width$}"),
            _ => format!("   {cell:<width$}"),
        });
        let row: String = cells.collect();
        text += format!("  {row}   {name}").trim_end();
        text.push('\n');
    }
    text
}
