//! The crate against golden files that a second, independent implementation wrote: the scripts in `tests/oracle/`, in another
//! language, exact by its own fractions, by the rules of the documentation. `.ci/run` writes the files again and compares.

use std::path::Path;

use csv::{Reader, StringRecord};
use num_rational::Ratio;
use scantling::{Length, RoundingMode, Tape, Unit};

mod kerf;
mod printing;
mod reading;
mod rounding;
mod spacing;

/// The modes in the order of the columns, by the names they have there.
const MODES: [(&str, RoundingMode); 6] = [
    ("ties up", RoundingMode::TiesUp),
    ("ties even", RoundingMode::TiesEven),
    ("ties away", RoundingMode::TiesAway),
    ("down", RoundingMode::Down),
    ("up", RoundingMode::Up),
    ("toward zero", RoundingMode::TowardZero),
];

/// Every row of a golden file.
fn golden(file: &str) -> Vec<StringRecord> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/oracle").join(file);
    let mut table = Reader::from_path(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    table.records().map(Result::unwrap).collect()
}

/// `n/d` inches.
fn inches(cell: &str) -> Length {
    Length::try_from_ratio(ratio(cell), Unit::Inch).unwrap()
}

fn ratio(cell: &str) -> Ratio<i128> {
    let (num, den) = cell.split_once('/').unwrap_or_else(|| panic!("no fraction: {cell:?}"));
    Ratio::new(num.parse().unwrap(), den.parse().unwrap())
}

/// Several lengths in one cell.
fn all_inches(cell: &str) -> Vec<Length> {
    cell.split(' ').filter(|part| !part.is_empty()).map(inches).collect()
}

fn mode(cell: &str) -> RoundingMode {
    MODES.into_iter().find(|(name, _)| *name == cell).unwrap_or_else(|| panic!("mode {cell:?}")).1
}

fn tape(step: &str, mode_name: &str) -> Tape {
    Tape::with_step(inches(step)).unwrap().mode(mode(mode_name))
}
