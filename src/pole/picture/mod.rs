//! A pole in true size, as lines, shapes and texts on paper, before it becomes a document of some kind. Which stretch
//! of the pole and which rows are on a sheet is left to `page.rs` and to the one sheet of an SVG; how strokes and texts
//! are written to `svg.rs` and `pdf/`.
//!
//! Places are whole millionths of an inch: a place on paper is off by half of one at most, which is four thousand times
//! finer than 1/128 in. Everything is black on white; no meaning is carried by color or by thickness alone.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::figure::Figures;
use super::label::label;
use super::{Mark, PartSide, PoleError, Row, StoryPole};
use crate::length::{Length, Rounding, Unit};
use crate::tape::{Lean, Tape};

mod band;
#[cfg(feature = "pdf")]
pub(super) mod page;
pub(super) mod paper;
mod sheet;
mod spread;
mod width;

pub(super) use sheet::Sheet;
pub(super) use width::width;

/// Millionths of an inch on paper, from the upper left corner to the right and down.
pub(super) type Place = i64;

/// The longest pole that is drawn: a hundred yards.
const LONGEST: Length = Length::new(100, Unit::Yard);

/// One thing on paper.
pub(super) enum Item {
    Stroke {
        kind: Kind,
        from: (Place, Place),
        to: (Place, Place),
    },
    /// A shape filled with black.
    Shape(Vec<(Place, Place)>),
    Text(Text),
}

/// What a stroke stands for. All are of one thickness but those of the scale check, whose ends are measured from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Kind {
    /// The outline of the stick.
    Stick,
    /// The line of a mark.
    Mark,
    /// The other edge of a part.
    Edge,
    /// A stroke of the X.
    Cross,
    /// From a mark to its name.
    Leader,
    /// Where two pages are joined; dashed.
    Join,
    /// The scale check.
    Bar,
}

/// A line of text; its foot is the line that letters stand on.
pub(super) struct Text {
    pub(super) at: (Place, Place),
    pub(super) written: String,
    pub(super) bold: bool,
    pub(super) anchor: Anchor,
    pub(super) turn: Turn,
}

/// Which point of a text its place is.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Anchor {
    Start,
    Middle,
    End,
}

/// Which way a text is read: across, down, or up, for a pole that is then stood on its end.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Turn {
    Across,
    Down,
    Up,
}

/// A pole made ready to be drawn: every place on paper, every text as it will be shown.
pub(super) struct Picture<'a> {
    pub(super) pole: &'a StoryPole,
    pub(super) figures: Figures,
    pub(super) length: Place,
    pub(super) rows: Vec<Strip>,
    /// How many marks are not on the stick.
    pub(super) off: usize,
}

/// One row on paper, in order from the datum.
pub(super) struct Strip {
    pub(super) name: String,
    pub(super) marks: Vec<Placed>,
}

pub(super) struct Placed {
    pub(super) at: Place,
    /// Where the part is, if its thickness is known.
    pub(super) edges: Option<(Place, Place)>,
    pub(super) side: PartSide,
    pub(super) name: String,
    pub(super) reading: String,
}

impl<'a> Picture<'a> {
    pub(super) fn new(pole: &'a StoryPole, tape: &Tape) -> Result<Self, PoleError> {
        pole.has_length()?;
        if pole.length() > LONGEST {
            return Err(PoleError::TooLongToDraw { length: pole.length(), most: LONGEST });
        }
        let figures = Figures::of(tape);
        let length = place(pole.length()).ok_or_else(|| PoleError::out_of_range(pole.name()))?;
        let mut picture = Self { pole, figures, length, rows: Vec::new(), off: 0 };
        for row in pole.rows() {
            let strip = picture.strip(row, tape)?;
            picture.off += row.marks().len() - strip.marks.len();
            picture.rows.push(strip);
        }
        Ok(picture)
    }

    fn strip(&self, row: &Row, tape: &Tape) -> Result<Strip, PoleError> {
        let length = self.pole.length();
        let on_stick = row.marks().iter().filter(|mark| !mark.position.is_negative() && mark.position <= length);
        let marks = on_stick.map(|mark| self.placed(mark, tape)).collect::<Result<_, _>>()?;
        Ok(Strip { name: label(row.name(), 60), marks })
    }

    fn placed(&self, mark: &Mark, tape: &Tape) -> Result<Placed, PoleError> {
        let out_of_range = || PoleError::out_of_range(&mark.name);
        let reading = tape.read(mark.position)?;
        let lean = match reading.lean() {
            Lean::DeadOn => String::new(),
            lean => format!(" {lean}"),
        };
        let reading = format!("{}{lean}", self.figures.mark_text(reading.shown()));
        // A figure is never shortened.
        let reading = if width(&reading, false) > paper::LABEL { String::new() } else { reading };
        // What lies off the stick is not on the paper, wherever it is.
        let (least, most) = (-Unit::Inch.length(), LONGEST + Unit::Inch.length());
        let drawn = |edge: Length| place(edge.max(least).min(most)).ok_or_else(out_of_range);
        let edges = match (mark.thickness, mark.checked_edges()) {
            (Some(_), Some((near, far))) => Some((drawn(near)?, drawn(far)?)),
            _ => None,
        };
        let name = width::fitted(&label(&mark.name, 40), paper::LABEL);
        Ok(Placed { at: place(mark.position).ok_or_else(out_of_range)?, edges, side: mark.side, name, reading })
    }
}

/// A length on paper, to the nearest millionth of an inch.
pub(super) fn place(length: Length) -> Option<Place> {
    const FINE: Length = Length::fraction(1, 1_000_000, Unit::Inch);
    let count = length.round(Rounding::to(FINE)).ok()?.checked_ratio(FINE)?;
    i64::try_from(count.to_integer()).ok()
}
