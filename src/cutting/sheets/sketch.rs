//! A sheet drawn in plain characters, its length from left to right: the outlines of its panels, in each its name where there is room,
//! and dots where something is left.

use alloc::format;
use alloc::string::String;
use alloc::vec;
use alloc::vec::Vec;

use super::{CutSheet, PanelPlace, SheetPlan};
use crate::length::{Length, Rounding};

/// How many characters the length of a sheet is drawn with.
const COLUMNS: usize = 72;
/// And its width at the most, for one that is wider than long.
const MOST_ROWS: usize = 72;

impl SheetPlan {
    /// A sheet of the plan in plain characters, its length from left to right and its near edge at the bottom. Panels have the
    /// first of name and number that there is room for; the number is that of the panel in the plan, counted from one.
    ///
    /// ```
    /// use scantling::{Length, Panel, Sheet, SheetCutting, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let plan = SheetCutting::new()
    ///     .panel(Panel::new("shelf", inches(36), inches(6), 2))
    ///     .sheet(Sheet::new("plank", inches(48), inches(12)))
    ///     .plan()?;
    /// let sketch = plan.sketch(&plan.sheets()[0]);
    /// assert_eq!(sketch.lines().count(), 10);
    /// assert_eq!(sketch.matches("shelf").count(), 2);
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub fn sketch(&self, cut: &CutSheet) -> String {
        let sheet = self.sheet(cut);
        let rows = cells(sheet.width, sheet.length, COLUMNS).div_ceil(2).clamp(2, MOST_ROWS);
        let mut grid = Grid { cells: vec![vec!['.'; COLUMNS + 1]; rows + 1], length: sheet.length, width: sheet.width, rows };
        grid.outline(0, COLUMNS, 0, rows);
        for placed in &cut.panels {
            let (left, right, bottom, top) = grid.corners(&placed.place);
            grid.blank(left, right, bottom, top);
            grid.outline(left, right, bottom, top);
            let turned = if placed.is_turned { ", turned" } else { "" };
            let name = &self.panel(placed).name;
            grid.label(left, right, bottom, top, &[&format!("{name}{turned}"), name, &format!("{}", placed.panel + 1)]);
        }
        grid.finish()
    }
}

/// Where a place falls when a length is drawn with so many characters.
fn cells(place: Length, length: Length, columns: usize) -> usize {
    let cell = i64::try_from(columns).ok().and_then(|columns| length.checked_div(columns)).filter(|cell| !cell.is_zero());
    let count = cell.and_then(|cell| place.round(Rounding::to(cell)).ok()?.checked_ratio(cell));
    count.and_then(|count| usize::try_from(count.to_integer()).ok()).unwrap_or(0)
}

struct Grid {
    cells: Vec<Vec<char>>,
    length: Length,
    width: Length,
    rows: usize,
}

impl Grid {
    /// Its left and right column, its bottom and top row, counted from below. No two panels share more than an edge.
    fn corners(&self, place: &PanelPlace) -> (usize, usize, usize, usize) {
        let end = |from: Length, size: Length| from.checked_add(size).unwrap_or(from);
        let column = |place| cells(place, self.length, COLUMNS).min(COLUMNS);
        let row = |place| cells(place, self.width, self.rows).min(self.rows);
        let (right, top) = (end(place.along, place.length), end(place.across, place.width));
        (column(place.along), column(right), row(place.across), row(top))
    }

    fn put(&mut self, column: usize, row: usize, char: char) {
        self.cells[self.rows - row][column] = char;
    }

    fn at(&self, column: usize, row: usize) -> char {
        self.cells[self.rows - row][column]
    }

    fn blank(&mut self, left: usize, right: usize, bottom: usize, top: usize) {
        for (column, row) in (left + 1..right).flat_map(|column| (bottom + 1..top).map(move |row| (column, row))) {
            self.put(column, row, ' ');
        }
    }

    fn outline(&mut self, left: usize, right: usize, bottom: usize, top: usize) {
        for row in [bottom, top] {
            for column in left..=right {
                let char = if matches!(self.at(column, row), '|' | '+') { '+' } else { '-' };
                self.put(column, row, char);
            }
        }
        for column in [left, right] {
            for row in bottom..=top {
                let char = if matches!(self.at(column, row), '-' | '+') { '+' } else { '|' };
                self.put(column, row, char);
            }
        }
    }

    fn label(&mut self, left: usize, right: usize, bottom: usize, top: usize, labels: &[&str]) {
        let room = (right - left).saturating_sub(1);
        let Some(label) = labels.iter().find(|label| label.chars().count() <= room) else { return };
        if top - bottom < 2 {
            return;
        }
        let start = left + 1 + (room - label.chars().count()) / 2;
        for (column, char) in (start..).zip(label.chars()) {
            self.put(column, bottom + (top - bottom) / 2, char);
        }
    }

    fn finish(self) -> String {
        let mut text = String::new();
        for row in self.cells {
            text.extend(row);
            text.push('\n');
        }
        text
    }
}
