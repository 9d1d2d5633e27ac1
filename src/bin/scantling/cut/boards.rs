//! One board on paper: a box to tick for every board and every part, the marks of every cut, and what is left.

use std::fmt::Write as _;

use scantling::{Cut, CutBoard};

use super::Report;
use crate::Outcome;
use crate::problem::Problem;
use crate::table::table;
use crate::words::Bench;

/// Boards cut alike have a box each up to here, and a count beyond.
const MOST_BOXES: u64 = 12;

impl Report<'_> {
    pub(super) fn board(&self, number: usize, board: &CutBoard) -> Outcome {
        let stock = self.plan.stock(board);
        let mut text = format!("\nBoard {number}: {}, {} long", stock.name, self.bench.mark_in_feet_too(stock.length));
        match board.times() {
            1 => text.push('\n'),
            times @ 2..=MOST_BOXES => {
                let boxes = vec!["[ ]"; usize::try_from(times).unwrap_or(0)].join(" ");
                let _ = writeln!(text, "; cut {times} like this  {boxes}");
            }
            times => {
                let _ = writeln!(text, "; cut {times} like this");
            }
        }
        let _ = write!(text, "\n{}\n{}", self.bar(board), self.cuts(board)?);
        let left = self.bench.measured(board.offcut(), Bench::mark);
        let _ = match (board.offcut().is_zero(), board.is_kept()) {
            (true, _) => writeln!(text, "Nothing is left."),
            (false, true) => writeln!(text, "Left: {left}, to keep."),
            (false, false) => writeln!(text, "Left: {left}, waste."),
        };
        Ok(text)
    }

    fn cuts(&self, board: &CutBoard) -> Outcome {
        let wrong = |error: scantling::TapeError| Problem::plain(error.to_string());
        let (mut near, mut fresh) = (Vec::new(), Vec::new());
        for cut in board.cuts() {
            near.push(self.bench.tape.read(cut.far()).map_err(wrong)?);
            fresh.push(self.bench.tape.read(cut.length()).map_err(wrong)?);
        }
        let from_near = self.bench.marks(near.iter().map(scantling::Reading::shown));
        let from_fresh = self.bench.marks(fresh.iter().map(scantling::Reading::shown));
        let rows = board.cuts().iter().enumerate().map(|(place, cut)| {
            let (near, fresh) = (&near[place], &fresh[place]);
            [
                "[ ]".to_owned(),
                self.name(cut),
                from_near[place].clone(),
                self.bench.lean(near),
                from_fresh[place].clone(),
                self.bench.lean(fresh),
            ]
        });
        let heading = ["", "part", "from near end", "true place is", "or fresh end", "true length is"];
        Ok(table(heading, ['l', 'l', 'r', 'l', 'r', 'l'], rows))
    }

    pub(super) fn name(&self, cut: &Cut) -> String {
        let name = &self.plan.part(cut).name;
        cut.piece().map_or_else(|| name.clone(), |(piece, of)| format!("{name}, piece {piece} of {of}"))
    }
}
