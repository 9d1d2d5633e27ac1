//! A plain table: no lines, numbers to the right, nothing wrapped.

use comfy_table::{CellAlignment, ContentArrangement, Table, presets};

/// A table with a heading, each column aligned as its letter says: `r` right, `l` left.
pub fn table<const COLUMNS: usize>(
    heading: [&str; COLUMNS],
    alignment: [char; COLUMNS],
    rows: impl IntoIterator<Item = [String; COLUMNS]>,
) -> String {
    let mut table = Table::new();
    table.load_preset(presets::NOTHING).set_content_arrangement(ContentArrangement::Disabled);
    table.set_header(heading);
    table.add_rows(rows);
    for (column, letter) in table.column_iter_mut().zip(alignment) {
        column.set_cell_alignment(if letter == 'r' { CellAlignment::Right } else { CellAlignment::Left });
        column.set_padding((1, 2));
    }
    let lines: Vec<_> = table.lines().map(|line| line.trim_end().to_owned()).collect();
    lines.join("\n") + "\n"
}
