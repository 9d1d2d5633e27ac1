//! A board drawn in plain characters, its near end at the left: parts between the lines of their cuts, in each its name where
//! there is room, and what is left as dots.

use scantling::{CutBoard, Length, Rounding};

use super::Report;

/// How many characters the board is drawn with, between the lines that stand for its ends.
const WIDTH: usize = 76;

impl Report<'_> {
    pub(super) fn bar(&self, board: &CutBoard) -> String {
        let length = self.plan.stock(board).length;
        let mut cells = vec!['.'; WIDTH];
        let mut from = 0;
        for (number, cut) in (1..).zip(board.cuts()) {
            let start = cell(cut.near(), length).max(from).min(WIDTH - 1);
            let end = cell(cut.far(), length).clamp(start + 1, WIDTH);
            let width = end - start;
            let name = self.name(cut);
            let label = [name, format!("{number}")].into_iter().find(|label| label.chars().count() + 3 <= width);
            let inside = format!("{:-^1$}", label.map_or_else(String::new, |label| format!(" {label} ")), width - 1);
            cells.splice(start..end, inside.chars().chain(['|']));
            from = end;
        }
        format!(" |{}|\n", cells.into_iter().collect::<String>())
    }
}

/// The character that a place falls on.
fn cell(place: Length, length: Length) -> usize {
    let cells = length.checked_div(WIDTH.try_into().unwrap_or(i64::MAX)).filter(|cell| !cell.is_zero());
    let count = cells.and_then(|cell| place.round(Rounding::to(cell)).ok()?.checked_ratio(cell));
    count.and_then(|count| usize::try_from(count.to_integer()).ok()).unwrap_or(0)
}
