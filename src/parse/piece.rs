//! A piece of a longer text, read for itself: what sizes, tolerances and qualified lengths are made of.
//! Its errors point into the whole text. Where a text is cut is left to those.

use super::compound::compound;
use super::error::{ParseError, ParseErrorKind as Kind};
use super::parser::LengthParser;
use super::scan::outer_blanks;
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

    /// Two pieces, before and behind the bytes from `from` to `to`.
    pub(super) fn around(self, from: usize, to: usize) -> (Self, Self) {
        (self.part(0, from), self.part(to, self.text().len()))
    }

    pub(super) fn read(self, parser: LengthParser) -> Result<Length, ParseError> {
        parser.parse(self.text()).map_err(|error| error.moved(self.start))
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
        let (_, found) = compound(bytes, parser).ok()?;
        found.last.unit.filter(|_| found.is_single(bytes))
    }

    /// Whether the length depends on the unit that a bare number takes.
    pub(super) fn is_bare(self, parser: LengthParser) -> bool {
        let read = |unit| parser.default_unit(unit).parse(self.text()).ok();
        read(Unit::Inch) != read(Unit::Yard)
    }

    /// This piece as the one to blame.
    pub(super) fn refuse(self, kind: Kind) -> ParseError {
        ParseError::at(self.whole, self.start..self.end, kind)
    }
}
