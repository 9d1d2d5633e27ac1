//! Texts that carry their own unit, as text that is stored or sent on has to: lengths whose unit must be
//! written, areas and volumes, which have no default unit. Numbers and names of units are left to
//! `number.rs` and `unit.rs`.

use core::str::FromStr;

use super::compound::any_sign;
use super::error::{ParseError, ParseErrorKind as Kind};
use super::number::{Number, number};
use super::parser::{Comma, LengthParser};
use super::piece::Piece;
use super::refuse::no_number;
use super::scan::{Bytes, Fault, blanks, outer_blanks, word};
use super::unit::lookup;
use super::value::too_much;
use crate::length::{Area, Length, Unit, Volume, product};

impl LengthParser {
    /// Reads a length as [`parse`](Self::parse) does, if it has a unit of its own: for text that is stored or
    /// sent on, where the next reader may take a bare number for something else.
    ///
    /// A bare number behind feet is inches whoever reads it.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, ParseErrorKind, Unit};
    ///
    /// let parser = LengthParser::new();
    /// assert_eq!(parser.parse_with_unit("365 mm"), Ok(Length::new(365, Unit::Millimeter)));
    /// assert_eq!(parser.parse_with_unit("6' 3"), Ok(Length::new(75, Unit::Inch)));
    /// assert_eq!(parser.parse_with_unit("365").unwrap_err().kind(), ParseErrorKind::NoUnit);
    /// ```
    ///
    /// # Errors
    ///
    /// Those of [`parse`](Self::parse), and [`NoUnit`](Kind::NoUnit) for a bare number.
    pub fn parse_with_unit(&self, text: &str) -> Result<Length, ParseError> {
        let length = self.parse(text)?;
        let whole = Piece::new(text);
        let bare = match self.read(text.as_bytes()) {
            Ok(found) if self.shorthand.written(text).is_none() => found.first_unit.is_none(),
            _ => whole.is_bare(*self),
        };
        if bare { Err(whole.refuse(Kind::NoUnit)) } else { Ok(length) }
    }
}

/// A number and its unit: `1872 sq in`, `13 1/2 sq ft`, `0.5 square meters`.
///
/// ```
/// use scantling::{Area, Length, Unit};
///
/// let shelf = Length::new(72, Unit::Inch) * Length::new(26, Unit::Inch);
/// assert_eq!("1872 sq in".parse(), Ok(shelf));
/// assert_eq!("13 sq ft".parse(), Ok(shelf));
/// assert!("1872".parse::<Area>().is_err());
/// ```
impl FromStr for Area {
    type Err = ParseError;

    fn from_str(text: &str) -> Result<Self, ParseError> {
        let measure = Measure::read(text, ["sq", "square"], Kind::AreaUnit)?;
        let square = product(measure.inches(), measure.inches());
        let parts = square.and_then(|square| product(measure.parts, square));
        Self::from_parts(parts).ok_or_else(|| measure.too_much())
    }
}

/// A number and its unit: `144 cu in`, `2 1/2 cu yd`, `0.5 cubic meters`.
///
/// ```
/// use scantling::{Length, Unit, Volume};
///
/// let foot = Unit::Foot.length();
/// assert_eq!("144 cu in".parse(), Ok(foot * foot * Unit::Inch.length()));
/// assert_eq!("1 cu ft".parse(), Ok(foot * foot * foot));
/// assert!("144 sq in".parse::<Volume>().is_err());
/// ```
impl FromStr for Volume {
    type Err = ParseError;

    fn from_str(text: &str) -> Result<Self, ParseError> {
        let measure = Measure::read(text, ["cu", "cubic"], Kind::VolumeUnit)?;
        let square = product(measure.inches(), measure.inches());
        let cube = square.and_then(|square| product(square, measure.inches()));
        let parts = cube.and_then(|cube| product(measure.parts, cube));
        Self::from_parts(parts).ok_or_else(|| measure.too_much())
    }
}

/// A number of square or cubic units.
struct Measure<'a> {
    text: &'a str,
    /// The text from the number on, and behind it.
    number: (Bytes<'a>, Bytes<'a>),
    parts: (i128, u128),
    unit: Unit,
}

impl<'a> Measure<'a> {
    fn read(text: &'a str, powers: [&str; 2], kind: Kind) -> Result<Self, ParseError> {
        let (start, negative) = any_sign(outer_blanks(text.as_bytes()));
        let (rest, found) = number(start, Comma::Refuse).map_err(|error| match error {
            nom::Err::Failure(fault) => ParseError::locate(text, fault),
            _ => ParseError::locate(text, no_number(text.as_bytes())),
        })?;
        let at = blanks(rest);
        let end = text.len() - text.trim_end().len();
        let no_unit = || ParseError::locate(text, Fault { kind, from: at.len(), until: end.min(at.len()) });
        let unit = unit(at, powers).ok_or_else(no_unit)?;
        let too_large = || ParseError::locate(text, Fault { kind: Kind::TooLarge, from: start.len(), until: rest.len() });
        let num = numerator(&found).ok_or_else(too_large)?;
        let parts = (if negative { -num } else { num }, found.den);
        Ok(Self { text, number: (start, rest), parts, unit })
    }

    /// The unit, in inches.
    fn inches(&self) -> (i128, u128) {
        self.unit.length().in_unit_parts(Unit::Inch)
    }

    fn too_much(&self) -> ParseError {
        let kind = too_much(self.parts.0, self.parts.1);
        ParseError::locate(self.text, Fault { kind, from: self.number.0.len(), until: self.number.1.len() })
    }
}

/// Everything above one line.
fn numerator(number: &Number) -> Option<i128> {
    let sum = number.whole.checked_mul(number.den)?.checked_add(number.num)?;
    i128::try_from(sum).ok()
}

/// The unit of which the rest of the text names the square or the cube.
fn unit(at: Bytes<'_>, powers: [&str; 2]) -> Option<Unit> {
    let (power, rest) = word(at);
    powers.iter().find(|known| power.eq_ignore_ascii_case(known.as_bytes()))?;
    let (name, rest) = word(blanks(full_stop(rest)));
    lookup(name).filter(|_| outer_blanks(full_stop(rest)).is_empty())
}

/// Skips an abbreviation's full stop.
fn full_stop(rest: Bytes<'_>) -> Bytes<'_> {
    rest.strip_prefix(b".").unwrap_or(rest)
}
