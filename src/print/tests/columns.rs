//! Columns: where whole numbers end is one place, and all cells are equally wide.

use std::format;
use std::vec::Vec;

use super::{inches, millimeters};
use crate::length::Length;
use crate::print::{Column, Denominator, InColumn, Join, LengthPrinter, Marks, Places, Shown, Sign, Style, Zeros};

const PLAIN: LengthPrinter = LengthPrinter::new();
const FEET: LengthPrinter = PLAIN.style(Style::FeetInches);

fn cells(shown: &[Shown]) -> Vec<InColumn> {
    let column: Column = shown.iter().copied().collect();
    shown.iter().map(|shown| column.cell(*shown)).collect()
}

/// The cells between bars, one a line.
#[track_caller]
fn lines_up(shown: &[Shown], expected: &str) {
    let lines: Vec<_> = cells(shown).into_iter().map(|cell| format!("|{cell}|")).collect();
    assert_eq!(format!("\n{}\n", lines.join("\n")), expected);
}

fn show(printer: LengthPrinter, lengths: &[Length]) -> Vec<Shown> {
    lengths.iter().map(|length| printer.show(*length).unwrap()).collect()
}

fn marks() -> [Length; 7] {
    [inches(1, 2), inches(217, 16), inches(169, 4), inches(156, 1), inches(-13, 4), inches(-1, 64), Length::ZERO]
}

#[test]
fn inches_and_fractions() {
    lines_up(
        &show(PLAIN.join(Join::Hyphen), &marks()),
        r#"
|    1/2" |
| 13-9/16"|
| 42-1/4" |
|156"     |
| -3-1/4" |
|   -1/64"|
|  0"     |
"#,
    );
    lines_up(
        &show(PLAIN.join(Join::Glyph).marks(Marks::Words), &marks()[..4]),
        "
|   ½ in   |
| 13⁹⁄₁₆ in|
| 42¼ in   |
|156 in    |
",
    );
    lines_up(
        &show(PLAIN.denominator(Denominator::Fixed(16)).sign(Sign::Plus), &marks()[..3]),
        r#"
|   +8/16"|
|+13 9/16"|
|+42 4/16"|
"#,
    );
}

#[test]
fn feet_and_yards() {
    let posts = [inches(151, 2), inches(24, 1), inches(3, 4), inches(37085, 16), Length::ZERO];
    lines_up(
        &show(FEET, &posts),
        r#"
|  6'-3 1/2"  |
|  2'-0"      |
|  0'-0 3/4"  |
|193'-1 13/16"|
|  0'-0"      |
"#,
    );
    lines_up(
        &show(FEET.zeros(Zeros::Dropped), &posts[..3]),
        r#"
|6'-3 1/2"|
|  2'     |
|     3/4"|
"#,
    );
    lines_up(
        &show(PLAIN.style(Style::Yards), &posts[..2]),
        r#"
|2 yd 0'-3 1/2"|
|0 yd 2'-0"    |
"#,
    );
    lines_up(
        &show(PLAIN.style(Style::FeetInchesSixteenths), &[inches(151, 2), inches(192, 1)]),
        "
| 6-03-08|
|16-00-00|
",
    );
}

#[test]
fn decimals_and_styles_of_every_kind_together() {
    lines_up(
        &show(PLAIN.style(Style::Millimeters), &[millimeters(18, 1), millimeters(7314, 10), millimeters(-1, 1000)]),
        "
| 18 mm    |
|731.4 mm  |
| -0.001 mm|
",
    );
    let styles = [PLAIN, FEET, PLAIN.style(Style::DecimalInches).places(Places::Exactly(3)), PLAIN.style(Style::Millimeters)];
    let shown: Vec<_> = styles.iter().map(|printer| printer.show(inches(151, 2)).unwrap()).collect();
    lines_up(
        &shown,
        r#"
|  75 1/2"|
|6'-3 1/2"|
|  75.500"|
|1917.7 mm|
"#,
    );
}

#[test]
fn a_column_of_nothing_and_a_length_too_wide_for_its_column() {
    let (small, large) = (PLAIN.show(inches(1, 2)).unwrap(), PLAIN.show(inches(2001, 16)).unwrap());
    let column: Column = [small].into_iter().collect();
    assert_eq!(format!("[{}] [{}]", column.cell(small), column.cell(large)), r#"[ 1/2"] [125 1/16"]"#);
    assert_eq!(format!("[{}]", Column::default().cell(large)), r#"[125 1/16"]"#);
    let column: Column = [small, large].into_iter().collect();
    assert_eq!(format!("[{:·>12.1}]", column.cell(small)), r#"[···    1/2" ]"#);
}
