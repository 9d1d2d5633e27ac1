//! The parser as a value: a few options, and the text goes in. The grammar itself is left to
//! `compound.rs` and below, words to `spoken/`.

use core::str::FromStr;

use super::compound::{Compound, compound};
use super::error::{ParseError, ParseErrorKind};
use super::quick::quick;
use super::refuse::{leftover, no_number};
use super::scan::{Bytes, Fault, outer_blanks};
use super::shorthand::Shorthand;
use super::spoken::spoken;
use super::stop::Stop;
use crate::length::{Fraction, Length, Unit};

/// What a comma between digits means.
///
/// ```
/// use scantling::{Comma, Length, LengthParser, Unit};
///
/// let millimeters = LengthParser::new().default_unit(Unit::Millimeter);
/// assert!(millimeters.parse("1,250").is_err());
/// assert_eq!(millimeters.comma(Comma::Groups).parse("1,250")?, Length::new(1250, Unit::Millimeter));
/// assert_eq!(millimeters.comma(Comma::Decimal).parse("1,250")?, Length::fraction(5, 4, Unit::Millimeter));
/// # Ok::<(), scantling::ParseError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Comma {
    /// Nobody has said: a comma between digits is an error that names both readings.
    #[default]
    Refuse,
    /// It groups thousands, as do an apostrophe and a blank before exactly three digits: `1,250`, `1'250`, `1 250`.
    Groups,
    /// It is the decimal sign: `12,5`. An apostrophe and a blank before exactly three digits group, and so
    /// does a point where a comma follows: `1.250,5`.
    Decimal,
}

/// Reads one length from text.
///
/// ```
/// use scantling::{Length, LengthParser, Unit};
///
/// const PLAN: LengthParser = LengthParser::new().default_unit(Unit::Millimeter);
///
/// assert_eq!(PLAN.parse("365")?, Length::new(365, Unit::Millimeter));
/// assert_eq!(PLAN.parse("17 5/8 in")?, Length::fraction(141, 8, Unit::Inch));
/// # Ok::<(), scantling::ParseError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct LengthParser {
    pub(super) default_unit: Unit,
    pub(super) comma: Comma,
    pub(super) shorthand: Shorthand,
}

impl LengthParser {
    /// A parser for which a bare number is inches and a comma between digits is an error.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, Unit};
    ///
    /// assert_eq!(LengthParser::new().parse("72"), Ok(Length::new(72, Unit::Inch)));
    /// ```
    #[must_use]
    pub const fn new() -> Self {
        Self { default_unit: Unit::Inch, comma: Comma::Refuse, shorthand: Shorthand::None }
    }

    /// The unit of a bare number. Behind feet a bare number is inches all the same.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, Unit};
    ///
    /// let feet = LengthParser::new().default_unit(Unit::Foot);
    /// assert_eq!(feet.parse("6"), Ok(Length::new(6, Unit::Foot)));
    /// assert_eq!(feet.parse("6' 3"), Ok(Length::new(75, Unit::Inch)));
    /// ```
    #[must_use]
    pub const fn default_unit(self, unit: Unit) -> Self {
        Self { default_unit: unit, ..self }
    }

    /// What a comma between digits means.
    ///
    /// ```
    /// use scantling::{Comma, Length, LengthParser, Unit};
    ///
    /// let catalog = LengthParser::new().comma(Comma::Decimal);
    /// assert_eq!(catalog.parse("1,3 cm"), Ok(Length::new(13, Unit::Millimeter)));
    /// ```
    #[must_use]
    pub const fn comma(self, comma: Comma) -> Self {
        Self { comma, ..self }
    }

    /// A crew's shorthand, read beside everything else.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, Shorthand, Unit};
    ///
    /// let truss = LengthParser::new().shorthand(Shorthand::FeetInchesSixteenths);
    /// assert_eq!(truss.parse("25-0-14"), Ok(Length::fraction(2407, 8, Unit::Inch)));
    /// assert_eq!(truss.parse("25' 1\""), Ok(Length::new(301, Unit::Inch)));
    /// ```
    #[must_use]
    pub const fn shorthand(self, shorthand: Shorthand) -> Self {
        Self { shorthand, ..self }
    }

    /// Reads a text that is one length and nothing else.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, Unit};
    ///
    /// let parse = |text| LengthParser::new().parse(text);
    /// assert_eq!(parse("6'-3 1/2\"")?, Length::fraction(151, 2, Unit::Inch));
    /// assert_eq!(parse("8' -5/8\"")?, Length::fraction(773, 8, Unit::Inch));
    /// assert_eq!(parse("-11'2\"")?, Length::new(-134, Unit::Inch));
    /// assert_eq!(parse("1m20")?, Length::new(120, Unit::Centimeter));
    /// assert_eq!(parse("six foot two and a half")?, Length::fraction(149, 2, Unit::Inch));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// A [`ParseError`] with the bytes to blame when the text is no length, has two readings of different
    /// value, or is a length that cannot be held. Nothing is ever read in part or repaired.
    #[inline]
    pub fn parse(&self, text: &str) -> Result<Length, ParseError> {
        let plain = self.comma == Comma::Refuse && self.shorthand == Shorthand::None;
        match if plain { quick(text.as_bytes(), self.default_unit) } else { Err(Stop::UNSURE) } {
            Ok(ticks) => Fraction::whole(ticks).map_or_else(|| self.parse_any(text), |ticks| Ok(Length::from_ticks(ticks))),
            Err(stop) => self.parse_stopped(text, stop),
        }
    }

    /// Says what is wrong if that is clear, and reads by the whole grammar if not. The error is made here, so that it
    /// is written where it goes and never moved.
    #[cold]
    #[inline(never)]
    fn parse_stopped(self, text: &str, stop: Stop<'_>) -> Result<Length, ParseError> {
        if let Some((kind, byte, left)) = stop.lone() {
            return Err(ParseError::at_lone(text, kind, byte, left));
        }
        match stop.fault() {
            Some(fault) => Err(ParseError::locate(text, fault)),
            None => self.parse_any(text),
        }
    }

    /// By the whole grammar, whatever the spelling.
    #[inline(never)]
    pub(super) fn parse_any(self, text: &str) -> Result<Length, ParseError> {
        if self.shorthand != Shorthand::None {
            if let Some(read) = self.shorthand.read(text) {
                return read;
            }
        }
        match self.read(text.as_bytes()) {
            Ok(found) => Ok(found.length),
            Err(fault) => self.parse_spoken(text, fault),
        }
    }

    /// A text that is one length in figures and nothing else, with what is known of its last term.
    pub(super) fn read(self, text: Bytes<'_>) -> Result<Compound<'_>, Fault> {
        match compound(text, self) {
            // A sentence's full stop may end the text.
            Ok((rest, found)) if outer_blanks(without_full_stop(rest)).is_empty() => Ok(found),
            Ok((rest, found)) => Err(leftover(text, rest, &found.last)),
            Err(nom::Err::Failure(fault)) => Err(fault),
            Err(_) => Err(no_number(text)),
        }
    }

    /// In words, if the plain grammar stopped where words could go on; else the error that it stopped with.
    #[cold]
    fn parse_spoken(self, text: &str, fault: Fault) -> Result<Length, ParseError> {
        let heard = if may_be_words(fault.kind) { spoken(text.as_bytes(), self) } else { Ok(None) };
        match heard {
            Ok(Some(length)) => Ok(length),
            Ok(None) => Err(ParseError::explained(text, fault, self)),
            Err(refusal) => Err(ParseError::locate(text, refusal.fault).with_readings(refusal.readings)),
        }
    }
}

fn without_full_stop(rest: Bytes<'_>) -> Bytes<'_> {
    let at = outer_blanks(rest);
    at.strip_prefix(b".").unwrap_or(at)
}

/// The kinds of error that a text in words ends with when it is read as figures.
const fn may_be_words(kind: ParseErrorKind) -> bool {
    use ParseErrorKind::{LooseTail, NotANumber, Qualified, Trailing, TwoNumbers, UnknownUnit};
    matches!(kind, LooseTail | NotANumber | Qualified | Trailing | TwoNumbers | UnknownUnit)
}

impl Default for LengthParser {
    fn default() -> Self {
        Self::new()
    }
}

/// Reads as [`LengthParser::new`] does: a bare number is inches.
impl FromStr for Length {
    type Err = ParseError;

    fn from_str(text: &str) -> Result<Self, ParseError> {
        LengthParser::new().parse(text)
    }
}
