//! What stands beside the bytes of a refusal: the numbers that its hint needs, where they are no part of what is to
//! blame. What is said with them is left to `proposal.rs`.

use super::compound::{compound, term};
use super::error::{ParseError, ParseErrorKind as Kind};
use super::parser::LengthParser;
use super::reading::Reading;
use super::scan::{Bytes, Fault, blanks, outer_blanks};
use crate::length::Unit;

type Readings = [Option<Reading>; 2];

impl ParseError {
    /// An error with the numbers beside it, if its hint needs them.
    #[cold]
    pub(super) fn explained(text: &str, fault: Fault, parser: LengthParser) -> Self {
        Self::locate(text, fault).with_readings(beside(text.as_bytes(), &fault, parser))
    }
}

fn beside(text: Bytes<'_>, fault: &Fault, parser: LengthParser) -> Readings {
    let (start, end) = (text.len() - fault.from, text.len() - fault.until);
    let (before, found, behind) = (&text[..start], &text[start..], &text[end..]);
    match fault.kind {
        Kind::MinusJoins => [ending(before, parser), next(behind, parser)],
        Kind::PointReadings => [ending(before, parser), next(found, parser)],
        Kind::MeterDecimals => [ending(before, parser), None],
        Kind::ImproperFraction => [None, ending(before, parser).filter(|feet| feet.unit() == Some(Unit::Foot))],
        Kind::FractionNotLast => first_two(found, parser),
        _ => [None; 2],
    }
}

/// The number that ends a text, as far as it is a length.
fn ending(text: Bytes<'_>, parser: LengthParser) -> Option<Reading> {
    let (_, found) = compound(text, parser).ok()?;
    Reading::new(&found.last.number, found.last.unit)
}

/// The number that begins a text.
fn next(text: Bytes<'_>, parser: LengthParser) -> Option<Reading> {
    let (_, term) = term(blanks(text), parser).ok().map(|term| (term.end, term))?;
    Reading::new(&term.number, term.unit)
}

/// Two numbers with their units that are a whole text.
fn first_two(text: Bytes<'_>, parser: LengthParser) -> Readings {
    let two = || {
        let first = term(text, parser).ok()?;
        let second = term(blanks(first.end.strip_prefix(b"-").unwrap_or(first.end)), parser).ok()?;
        let unit = second.unit.or((first.unit == Some(Unit::Foot)).then_some(Unit::Inch));
        let is_all = outer_blanks(second.end).is_empty();
        is_all.then(|| [Reading::new(&first.number, first.unit), Reading::new(&second.number, unit)])
    };
    two().unwrap_or_default()
}
