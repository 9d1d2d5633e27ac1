//! A piece of a longer text, read for itself: what sizes, tolerances and qualified lengths are made of.
//! Its errors point into the whole text. Where a text is cut is left to those.

use alloc::format;

use super::compound::compound;
use super::error::{ParseError, ParseErrorKind as Kind};
use super::number::Number;
use super::parser::LengthParser;
use super::reading::Reading;
use super::scan::outer_blanks;
use super::unit::unit;
use super::written::Written;
use crate::length::{Length, Unit};

#[derive(Clone, Copy, Debug)]
pub(super) struct Piece<'a> {
    whole: &'a str,
    start: usize,
    end: usize,
}

impl<'a> Piece<'a> {
    pub(super) fn new(whole: &'a str) -> Self {
        Self { whole, start: 0, end: whole.len() }.trimmed()
    }

    pub(super) fn text(self) -> &'a str {
        &self.whole[self.start..self.end]
    }

    /// Without the blanks at its ends.
    fn trimmed(self) -> Self {
        let text = self.text();
        let front = text.len() - outer_blanks(text.as_bytes()).len();
        let start = self.start + front;
        let end = start + self.whole[start..self.end].trim_end().len();
        Self { start, end, ..self }
    }

    /// The piece from `from` to `to`, counted from its own start, without the blanks at the ends.
    pub(super) fn part(self, from: usize, to: usize) -> Self {
        Self { whole: self.whole, start: self.start + from, end: self.start + to }.trimmed()
    }

    /// The piece from `from` to `to`, with what `trim` leaves of its text's front.
    pub(super) fn trimmed_of(self, from: usize, to: usize, trim: impl Fn(&str) -> &str) -> Self {
        let piece = self.part(from, to);
        piece.part(0, trim(piece.text()).len())
    }

    /// Two pieces, before and behind the bytes from `from` to `to`.
    pub(super) fn around(self, from: usize, to: usize) -> (Self, Self) {
        (self.part(0, from), self.part(to, self.text().len()))
    }

    pub(super) fn read(self, parser: LengthParser) -> Result<Length, ParseError> {
        parser.parse(self.text()).map_err(|error| error.moved(self.start))
    }

    /// One of what a piece names and does not count: an `eighth`, an `inch`.
    pub(super) fn read_one(self, parser: LengthParser) -> Option<Length> {
        parser.parse(&format!("a {}", self.text())).ok()
    }

    pub(super) fn read_written(self, parser: LengthParser) -> Result<(Length, Written), ParseError> {
        parser.parse_written(self.text()).map_err(|error| error.moved(self.start))
    }

    /// The unit of the last number of a length in figures, written or, behind feet, implied; `None` for a bare
    /// number and for words.
    pub(super) fn last_unit(self, parser: LengthParser) -> Option<Unit> {
        let bytes = self.text().as_bytes();
        let (_, found) = compound(bytes, parser).ok()?;
        (!found.is_bare(bytes)).then_some(found.unit)
    }

    /// The unit of a length that is one number with its unit: what may serve other numbers too.
    pub(super) fn only_unit(self, parser: LengthParser) -> Option<Unit> {
        let bytes = self.text().as_bytes();
        match compound(bytes, parser) {
            Ok((_, found)) => found.last.unit.filter(|_| found.is_single(bytes)),
            Err(_) => self.said_unit(parser),
        }
    }

    /// The same in words: `thirty-six inches`, not `six feet two inches`.
    fn said_unit(self, parser: LengthParser) -> Option<Unit> {
        let (number, word) = self.text().trim_end_matches('.').rsplit_once(' ')?;
        let (number, word) = (self.part(0, number.len()), self.part(number.len(), number.len() + 1 + word.len()));
        word.unit().filter(|_| number.is_bare(parser))
    }

    /// Whether the last number of a length in figures is a fraction, or has one.
    pub(super) fn has_fraction(self, parser: LengthParser) -> bool {
        compound(self.text().as_bytes(), parser).is_ok_and(|(_, found)| found.last.number.has_fraction())
    }

    /// The unit that the whole piece is: a mark, a symbol or a word.
    pub(super) fn unit(self) -> Option<Unit> {
        let bytes = self.text().as_bytes();
        let (rest, found) = unit(bytes, bytes, &Number::whole(1)).ok()?;
        found.filter(|_| rest.is_empty())
    }

    /// Whether the length depends on the unit that a bare number takes.
    pub(super) fn is_bare(self, parser: LengthParser) -> bool {
        let read = |unit| parser.default_unit(unit).parse(self.text()).ok();
        read(Unit::Inch) != read(Unit::Yard)
    }

    /// Whether it is a number without a unit. A bare zero is one, though no unit makes it another length.
    pub(super) fn is_unmarked(self, parser: LengthParser) -> bool {
        let bytes = self.text().as_bytes();
        let zero = || compound(bytes, parser).is_ok_and(|(_, found)| found.length.is_zero() && found.is_bare(bytes));
        self.is_bare(parser) || zero()
    }

    /// This piece as the one to blame.
    pub(super) fn refuse(self, kind: Kind) -> ParseError {
        ParseError::at(self.whole, self.start..self.end, kind)
    }

    /// This bare amount as the one to blame, beside a length in `unit`.
    pub(super) fn refuse_unit(self, unit: Option<Unit>) -> ParseError {
        self.refuse_beside(Kind::ToleranceUnit, unit)
    }

    /// This bare number as the one to blame, where others are in `unit`.
    pub(super) fn refuse_beside(self, kind: Kind, unit: Option<Unit>) -> ParseError {
        let error = self.refuse(kind);
        error.with_readings([unit.and_then(|unit| Reading::new(&Number::whole(0), Some(unit))), None])
    }
}
