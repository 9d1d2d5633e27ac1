//! Published tables in `tests/data`, each row with its source, and the figures in them. The figures are
//! read by the few lines here, never by the crate's own parser.

use std::collections::HashMap;
use std::path::Path;

use scantling::{Length, Unit};

/// One row by column name.
pub type Row = HashMap<String, String>;

/// Every row of a table.
pub fn rows(file: &str) -> Vec<Row> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/data").join(file);
    let mut table = csv::Reader::from_path(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    table.deserialize().map(|row| row.unwrap_or_else(|error| panic!("{file}: {error}"))).collect()
}

/// Inches as tables print them: a whole number, a fraction or both; `None` for an empty cell.
pub fn inches(cell: &str) -> Option<Length> {
    let parts: Vec<_> = cell.split(' ').filter(|part| !part.is_empty()).map(figure).collect();
    (!parts.is_empty()).then(|| parts.into_iter().sum())
}

/// A printed figure: a decimal or a fraction, with a unit after a blank, or else in inches.
pub fn figure(text: &str) -> Length {
    let (number, unit) = text.split_once(' ').unwrap_or((text, "in"));
    let unit = Unit::ALL.into_iter().find(|known| known.symbol() == unit).unwrap_or_else(|| panic!("unit of {text}"));
    let (num, den) = match number.split_once('/') {
        Some((num, den)) => (integer(num), integer(den)),
        None => decimal(number),
    };
    Length::fraction(num, den.unsigned_abs(), unit)
}

/// The digits without their point, over the power of ten that the point stands for.
fn decimal(number: &str) -> (i64, i64) {
    let (whole, places) = number.split_once('.').unwrap_or((number, ""));
    (integer(&format!("{whole}{places}")), 10_i64.pow(u32::try_from(places.len()).unwrap()))
}

fn integer(digits: &str) -> i64 {
    digits.parse().unwrap_or_else(|error| panic!("{digits}: {error}"))
}
