//! The run drawn in plain characters, near end at the left: members where they truly lie, to the nearest
//! character, each mark with its number, and in every opening its size as cut where there is room for it.

use scantling::{Length, MemberMark, Rounding};

use super::Report;

/// How many characters the run is drawn with, between the lines that stand for its ends.
const WIDTH: u8 = 76;
/// Up to so many characters a member is drawn with one.
const THIN: usize = 2;
/// The blanks before every row.
const MARGIN: &str = " ";

/// Where a member is drawn: its first character and the one past its last.
#[derive(Clone, Copy)]
struct Drawn {
    from: usize,
    to: usize,
}

impl Report<'_> {
    /// Nothing, where there is nothing to draw or the members are too many to be told apart.
    pub(super) fn sketch(&self) -> String {
        let Some(drawn) = self.drawn() else { return String::new() };
        let marks: Vec<_> = self.layout.marks().filter_map(|mark| self.cell(mark.at(self.on_tape.edge()))).collect();
        let marks = marks.iter().zip(&drawn).map(|(mark, member)| (*mark).clamp(member.from, member.to - 1));
        let mut rows = [Row::blank(), Row::blank(), Row::run(), Row::blank()];
        for (number, mark) in (1..).zip(marks) {
            rows[0].center(mark, &format!("{number}"));
            rows[1].put(mark, "v");
        }
        for member in &drawn {
            rows[2].put(member.from, &shape(*member, self.plan.is_of_parts()));
        }
        for (opening, size) in openings(&drawn).zip(self.on_tape.gaps()) {
            rows[3].center_within(opening, &self.bench.amount(size));
        }
        rows.into_iter().map(Row::finish).filter(|row| !row.trim().is_empty()).collect()
    }

    fn drawn(&self) -> Option<Vec<Drawn>> {
        if !(1..=usize::from(WIDTH)).contains(&self.layout.members()) {
            return None;
        }
        let drawn = self.layout.marks().map(|member| self.member(&member)).collect::<Option<Vec<_>>>()?;
        let are_apart = drawn.windows(2).all(|pair| pair[0].to <= pair[1].from);
        are_apart.then_some(drawn)
    }

    /// From edge to edge, within the ends; what is thin has one character, so that equal members look equal.
    fn member(&self, member: &MemberMark) -> Option<Drawn> {
        let (near, far) = (self.cell(member.near())?, self.cell(member.far())?);
        let from = near.min(usize::from(WIDTH) - 1);
        Some(Drawn { from, to: if far > from + THIN { far } else { from + 1 } })
    }

    /// How many characters from the near end a place lies.
    fn cell(&self, place: Length) -> Option<usize> {
        let cell = self.layout.run().checked_div(WIDTH.into()).filter(|cell| !cell.is_zero())?;
        let count = place.round(Rounding::to(cell)).ok()?.checked_ratio(cell)?;
        usize::try_from(count.to_integer()).ok()
    }
}

/// What lies before, between and behind the members.
fn openings(drawn: &[Drawn]) -> impl Iterator<Item = Drawn> {
    let begins = std::iter::once(0).chain(drawn.iter().map(|member| member.to));
    begins.zip(drawn.iter().map(|member| member.from).chain([WIDTH.into()])).map(|(from, to)| Drawn { from, to })
}

/// A member with its two edges; the one character of a thin one, or a line.
fn shape(Drawn { from, to }: Drawn, is_line: bool) -> String {
    match to - from {
        0..=THIN => if is_line { "+" } else { "#" }.into(),
        wide => format!("[{}]", "#".repeat(wide - 2)),
    }
}

/// A row of characters, the ends of the run and what is between them.
struct Row {
    cells: Vec<char>,
    end: char,
}

impl Row {
    fn blank() -> Self {
        Self { cells: vec![' '; usize::from(WIDTH)], end: ' ' }
    }

    fn run() -> Self {
        Self { cells: vec!['-'; usize::from(WIDTH)], end: '|' }
    }

    fn put(&mut self, from: usize, text: &str) {
        self.cells.iter_mut().skip(from).zip(text.chars()).for_each(|(cell, char)| *cell = char);
    }

    /// A text about a place, unless it would touch another or an end.
    fn center(&mut self, place: usize, text: &str) {
        let from = place.saturating_sub((text.len() - 1) / 2);
        let to = from + text.len();
        let around = from.saturating_sub(1)..(to + 1).min(self.cells.len());
        if to <= self.cells.len() && self.cells[around].iter().all(|cell| *cell == ' ') {
            self.put(from, text);
        }
    }

    /// A text in the middle of an opening, if there is room for it and a blank on both sides.
    fn center_within(&mut self, Drawn { from, to }: Drawn, text: &str) {
        let width = text.chars().count();
        if let Some(room) = to.saturating_sub(from).checked_sub(width).filter(|room| *room >= 2) {
            self.put(from + room / 2, text);
        }
    }

    fn finish(self) -> String {
        let cells: String = self.cells.into_iter().collect();
        format!("{}\n", format!("{MARGIN}{}{cells}{}", self.end, self.end).trim_end())
    }
}
