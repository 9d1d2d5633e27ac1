//! A sheet of paper: the heading, the rows below each other, and the scale check to hold a rule to. What is in a row is
//! left to `band.rs`, which sheets there are to `page.rs`.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::band::{Band, text};
use super::{Anchor, Item, Kind, Picture, Place, Strip, Turn, paper, width};
use crate::length::{Length, Unit};
use crate::pole::label::isolated;

/// A sheet and all that is on it.
pub(in crate::pole) struct Sheet {
    pub(in crate::pole) width: Place,
    pub(in crate::pole) height: Place,
    pub(in crate::pole) items: Vec<Item>,
}

/// The stretch of a pole that is on a sheet.
#[derive(Clone, Copy)]
pub(in crate::pole) struct Stretch {
    /// Where it begins on the pole, and where the pole or the stretch ends.
    pub(in crate::pole) from: Place,
    pub(in crate::pole) to: Place,
    /// Where the room for it ends, which may be past the end of the pole.
    pub(in crate::pole) end: Place,
    /// How far its beginning lies from the left rim of the paper.
    pub(in crate::pole) left: Place,
    /// The joints with the sheets before and behind it: a number each, and a place on the pole.
    pub(in crate::pole) before: Option<(usize, Place)>,
    pub(in crate::pole) behind: Option<(usize, Place)>,
}

impl Stretch {
    pub(super) fn x(&self, place: Place) -> Place {
        self.left + place - self.from
    }

    pub(super) fn has(&self, place: Place) -> bool {
        (self.from..=self.to).contains(&place)
    }

    pub(super) fn joins(&self) -> impl Iterator<Item = (usize, Place)> {
        self.before.into_iter().chain(self.behind)
    }
}

impl Sheet {
    /// The whole pole on one sheet.
    #[cfg(feature = "svg")]
    pub(in crate::pole) fn whole(picture: &Picture<'_>) -> Self {
        let left = paper::MARGIN + paper::DATUM;
        let end = picture.length.max(paper::LEAST_WIDTH);
        let stretch = Stretch { from: 0, to: picture.length, end, left, before: None, behind: None };
        let rows = i64::try_from(picture.rows.len().max(1)).unwrap_or(i64::MAX);
        let height = 2 * paper::MARGIN + paper::HEADING + rows * paper::BAND + paper::CHECK;
        Self::new(picture, (end + 2 * left, height), &stretch, &picture.rows, "")
    }

    /// Some rows of a stretch of the pole; `which` says what sheet it is.
    pub(in crate::pole) fn new(
        picture: &Picture<'_>,
        (width, height): (Place, Place),
        stretch: &Stretch,
        rows: &[Strip],
        which: &str,
    ) -> Self {
        let mut sheet = Self { width, height, items: Vec::new() };
        sheet.heading(picture, stretch.left, which);
        let mut y = paper::MARGIN + paper::HEADING;
        for strip in rows {
            Band { picture, strip, stretch, y }.draw(&mut sheet.items);
            y += paper::BAND;
        }
        sheet.check(stretch.left, height - paper::MARGIN - paper::CHECK);
        sheet.left_out(picture.off, (width - stretch.left, check_line(height - paper::MARGIN - paper::CHECK, 2)));
        sheet
    }

    /// How many marks are not on the stick, in the last line, where the words of the scale check leave most room.
    fn left_out(&mut self, off: usize, end: (Place, Place)) {
        let words = match off {
            0 => return,
            1 => "1 mark lies off the stick and is not drawn".into(),
            many => format!("{many} marks lie off the stick and are not drawn"),
        };
        self.items.push(text(end, words, true, Anchor::End, Turn::Across));
    }

    fn heading(&mut self, picture: &Picture<'_>, x: Place, which: &str) {
        let pole = picture.pole;
        let rest = described(picture);
        let name = super::width::fitted(&super::label(pole.name(), 80), paper::TITLE - width(&rest, true));
        let foot = paper::MARGIN + paper::CAPITAL;
        self.items.push(text((x, foot), isolated(name) + &rest, true, Anchor::Start, Turn::Across));
        self.items.push(text((x, foot + paper::LEADING), which.into(), false, Anchor::Start, Turn::Across));
    }

    /// The two bars, and what to do if they are not true.
    fn check(&mut self, x: Place, y: Place) {
        const BARS: [(Place, Length, &str); 2] =
            [(0, Length::new(4, Unit::Inch), "4 in"), (paper::SECOND_BAR, Length::new(100, Unit::Millimeter), "100 mm")];
        for (start, length, name) in BARS {
            let left = x + start;
            // Both are whole or rounded to a millionth of an inch.
            let right = left + super::place(length).unwrap_or_default();
            let middle = y + paper::BAR_END / 2;
            let ends = [((left, y), (left, y + paper::BAR_END)), ((right, y), (right, y + paper::BAR_END))];
            for (from, to) in ends.into_iter().chain([((left, middle), (right, middle))]) {
                self.items.push(Item::Stroke { kind: Kind::Bar, from, to });
            }
            let at = (right + paper::mils(80), y + paper::BAR_END);
            self.items.push(text(at, name.into(), true, Anchor::Start, Turn::Across));
        }
        let lines = [
            "Lay a rule on both bars, end to end. If either does not match, do not use this sheet:",
            "print it again at 100 % (actual size), not fitted to the page.",
        ];
        for (number, line) in (1..).zip(lines) {
            self.items.push(text((x, check_line(y, number)), line.into(), false, Anchor::Start, Turn::Across));
        }
    }
}

/// Where a line of the words below the bars stands.
fn check_line(y: Place, number: i64) -> Place {
    y + paper::BAR_END + number * paper::LEADING + paper::mils(60)
}

/// What stands behind the name of a pole: its hand, its length and its datum. A length that takes too much room is left to
/// the list: a figure is never shortened.
fn described(picture: &Picture<'_>) -> String {
    let pole = picture.pole;
    let hand = pole.hand().map_or_else(String::new, |hand| format!(", {hand} hand"));
    let (figures, length, way) = (picture.figures, pole.length(), pole.datum().way());
    let long = [figures.long(length), figures.mark_text(length)].map(|long| format!("{hand}: {long}, measured {way}"));
    let fits = long.into_iter().find(|text| width(text, true) <= paper::DESCRIBED);
    fits.unwrap_or_else(|| format!("{hand}: measured {way}"))
}
