//! A stretch of a name that holds one size, or a size and the length behind it, read by the parser of lengths.

use alloc::vec::Vec;
use core::ops::Range;

use super::error::{NominalError, NominalErrorKind as Kind};
use crate::length::{Length, Unit};
use crate::parse::{LengthParser, ParseError};

/// One size of a name.
#[derive(Clone, Debug)]
pub(super) struct Number {
    pub(super) length: Length,
    /// Where it stands in the name.
    pub(super) span: Range<usize>,
    /// Whether it has no unit.
    pub(super) bare: bool,
    /// Whether it was written in quarters of an inch, from four on: `5/4`.
    pub(super) quarters: bool,
    /// Whether an x stands before it, and not a blank or a dash.
    pub(super) times: bool,
    /// The unit of its last part, where it was written in figures.
    pub(super) unit: Option<Unit>,
}

impl Number {
    /// Whether it is a whole number of inches.
    pub(super) fn is_whole(&self) -> bool {
        self.length.in_unit(Unit::Inch).is_integer()
    }

    /// Whether it could be a thickness or a width in inches.
    pub(super) fn is_inches(&self) -> bool {
        self.bare || self.unit == Some(Unit::Inch)
    }

    /// The same as it would be in another unit, if it has none.
    pub(super) fn taken_as(&self, text: &str, unit: Unit) -> Option<Length> {
        if self.bare { LengthParser::new().default_unit(unit).parse(&text[self.span.clone()]).ok() } else { Some(self.length) }
    }
}

/// Longer stretches are no size and a length, and are not cut at every blank to find out.
const LONGEST: usize = 48;

/// The numbers of a stretch, of which the first may have an x before it.
pub(super) fn numbers(text: &str, span: Range<usize>, times: bool) -> Result<Vec<Number>, NominalError> {
    let refused = match number(text, span.clone(), times) {
        Ok(number) => return Ok(Vec::from([number])),
        Err(refused) => refused,
    };
    let stretch = &text[span.clone()];
    let mut found: Option<[Number; 2]> = None;
    let cuts = stretch.char_indices().filter(|(_, letter)| is_gap(*letter) && stretch.len() <= LONGEST);
    for (cut, _) in cuts {
        let first = number(text, trimmed(text, span.start..span.start + cut), times);
        let second = number(text, trimmed(text, span.start + cut..span.end), false);
        let (Ok(first), Ok(second)) = (first, second) else { continue };
        match &found {
            Some([one, _]) if one.length != first.length => {
                return Err(NominalError::at(text, span, Kind::TwoReadings).hinting("join sizes by x, and mark the length"));
            }
            _ => found = Some([first, second]),
        }
    }
    match found {
        Some(found) => Ok(Vec::from(found)),
        None => Err(NominalError::number(text, span.start, &refused)),
    }
}

/// What may stand between a size and the length behind it.
pub(super) fn is_gap(letter: char) -> bool {
    letter.is_whitespace() || matches!(letter, '-' | '–' | '—')
}

/// Without the gaps at its ends.
fn trimmed(text: &str, span: Range<usize>) -> Range<usize> {
    let part = &text[span.clone()];
    let start = span.end - part.trim_start_matches(is_gap).len();
    start..start + text[start..span.end].trim_end_matches(is_gap).len()
}

fn number(text: &str, span: Range<usize>, times: bool) -> Result<Number, ParseError> {
    let part = &text[span.clone()];
    let (length, written) = LengthParser::new().parse_written(part)?;
    let in_yards = LengthParser::new().default_unit(Unit::Yard).parse(part);
    let bare = in_yards != Ok(length);
    let unit = written.last_unit().or_else(|| written.first_unit().map(|_| Unit::Inch));
    Ok(Number { length, bare, quarters: bare && is_quarters(part, length), times, unit, span })
}

/// `5/4`, `5⁄4`, `five quarters`: four quarters or more, and no whole number before them.
fn is_quarters(part: &str, length: Length) -> bool {
    let part = part.trim_end_matches('.');
    let of_four = part.strip_suffix('4').and_then(|front| front.strip_suffix(['/', '⁄', '∕']));
    let digits = of_four.is_some_and(|front| !front.is_empty() && front.bytes().all(|byte| byte.is_ascii_digit()));
    let said = ["quarter", "quarters"].iter().any(|word| {
        let front = part.len().checked_sub(word.len());
        front.and_then(|front| part.get(front..)).is_some_and(|end| end.eq_ignore_ascii_case(word)) && !part.contains(" and ")
    });
    (digits || said) && length >= Unit::Inch.length()
}
