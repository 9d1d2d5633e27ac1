//! Finding a wood by its name, as a person writes it. The tables are left to `material.rs` and `species.rs`.

use alloc::vec::Vec;

use super::error::CaseworkError;

/// The row of a name, whatever its capitals, commas and the order of its words.
pub(super) fn named<'a, Row>(name: &str, rows: &'a [Row], of: impl Fn(&Row) -> &'static str) -> Option<&'a Row> {
    let wanted = words(name).collect::<Vec<_>>();
    let is_same = |row: &&Row| {
        let has = words(of(row)).collect::<Vec<_>>();
        has.len() == wanted.len() && wanted.iter().all(|word| has.iter().any(|other| word.eq_ignore_ascii_case(other)))
    };
    rows.iter().find(is_same)
}

/// A refusal that tells the names with a word in common.
pub(super) fn known(name: &str, names: impl Iterator<Item = &'static str>) -> CaseworkError {
    let shares = |other: &&str| words(name).any(|word| words(other).any(|own| word.eq_ignore_ascii_case(own)));
    CaseworkError::NoFigure { name: name.into(), nearest: names.filter(shares).take(5).collect() }
}

fn words(name: &str) -> impl Iterator<Item = &str> {
    name.split(|letter: char| letter == ',' || letter.is_whitespace()).filter(|word| !word.is_empty())
}
