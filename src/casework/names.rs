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

/// A refusal that tells the names with words in common, those with most of them first.
pub(super) fn known(name: &str, names: impl Iterator<Item = &'static str>) -> CaseworkError {
    let shared = |other: &&str| words(name).filter(|word| words(other).any(|own| word.eq_ignore_ascii_case(own))).count();
    let mut near: Vec<_> = names.filter(|other| shared(other) > 0).collect();
    near.sort_by_key(|other| core::cmp::Reverse(shared(other)));
    near.truncate(5);
    CaseworkError::NoFigure { name: name.into(), nearest: near.into() }
}

fn words(name: &str) -> impl Iterator<Item = &str> {
    name.split(|letter: char| letter == ',' || letter.is_whitespace()).filter(|word| !word.is_empty())
}
