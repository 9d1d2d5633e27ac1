//! How a length was written, for tools that answer in kind or want to look twice: its units and marks,
//! its precision, and what about it is suspicious. The value is the same however it was written.

use super::compound::Compound;
use super::error::ParseError;
use super::glyph::{Glyph, glyph};
use super::number::{Form, lost_blank};
use super::parser::LengthParser;
use super::scan::{Bytes, blanks};
use crate::length::{Length, Unit};

/// How a length was written.
///
/// ```
/// use scantling::{LengthParser, Precision, Unit, UnitMark};
///
/// let (_, written) = LengthParser::new().parse_written("6'-3 1/2\"")?;
/// assert_eq!((written.first_unit(), written.last_unit()), (Some(Unit::Foot), Some(Unit::Inch)));
/// assert_eq!(written.mark(), UnitMark::Quote);
/// assert_eq!(written.precision(), Precision::Fraction(2));
/// # Ok::<(), scantling::ParseError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Written {
    first_unit: Option<Unit>,
    last_unit: Option<Unit>,
    /// What a bare number was taken for.
    bare_unit: Option<Unit>,
    mark: UnitMark,
    precision: Precision,
    warning: Option<Warning>,
}

/// How the units of a length were marked.
///
/// ```
/// use scantling::{LengthParser, UnitMark};
///
/// let mark = |text| LengthParser::new().parse_written(text).map(|(_, written)| written.mark());
/// assert_eq!(mark("6 ft"), Ok(UnitMark::Word));
/// assert_eq!(mark("6′"), Ok(UnitMark::Prime));
/// assert_eq!(mark("6"), Ok(UnitMark::None));
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum UnitMark {
    /// Not at all.
    #[default]
    None,
    /// By straight quotes: `6'`.
    Quote,
    /// By primes or curly quotes: `6′`.
    Prime,
    /// By a word or a symbol: `6 ft`, `365 mm`.
    Word,
}

/// How finely the last number of a length was written.
///
/// ```
/// use scantling::{LengthParser, Precision};
///
/// let precision = |text| LengthParser::new().parse_written(text).map(|(_, written)| written.precision());
/// assert_eq!(precision("17 6/16"), Ok(Precision::Fraction(16)));
/// assert_eq!(precision("17.50"), Ok(Precision::Decimals(2)));
/// assert_eq!(precision("17"), Ok(Precision::Whole));
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Precision {
    /// A whole number.
    #[default]
    Whole,
    /// A fraction, with the denominator as it was written.
    Fraction(u64),
    /// So many decimals, trailing zeros counted.
    Decimals(u32),
    /// In words.
    Spoken,
}

/// What about a text is suspicious, though it has only one reading. Nothing is ever repaired.
///
/// ```
/// use scantling::{LengthParser, Warning};
///
/// let warning = |text| LengthParser::new().parse_written(text).map(|(_, written)| written.warning());
/// assert_eq!(warning("13/4"), Ok(Some(Warning::LostBlank)));
/// assert_eq!(warning("34 \""), Ok(Some(Warning::LostBar)));
/// assert_eq!(warning("5.6'"), Ok(Some(Warning::DecimalFeet)));
/// assert_eq!(warning("6'13"), Ok(Some(Warning::FootOfInches)));
/// assert_eq!(warning("17 5/8"), Ok(None));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Warning {
    /// `13/4`, which is 3 1/4, where 1 3/4 may have lost its blank.
    LostBlank,
    /// `34 "`, which is 34 inches, where 3/4 may have lost its bar; or a bare number of inches with five digits and more.
    LostBar,
    /// `5.6'`, which is 5 ft 7 1/5 in, where 5 ft 6 in may have been meant.
    DecimalFeet,
    /// `6'13`, which is 7 ft 1 in: a foot or more of inches behind the feet, where `6' 1/3` or another number may have been meant.
    FootOfInches,
}

impl Written {
    /// The unit of the first number, if one was written.
    ///
    /// ```
    /// use scantling::{LengthParser, Unit};
    ///
    /// assert_eq!(LengthParser::new().parse_written("1 m 20 cm")?.1.first_unit(), Some(Unit::Meter));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn first_unit(&self) -> Option<Unit> {
        self.first_unit
    }

    /// The unit of the last number, if one was written.
    ///
    /// ```
    /// use scantling::{LengthParser, Unit};
    ///
    /// assert_eq!(LengthParser::new().parse_written("6'3")?.1.last_unit(), None);
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn last_unit(&self) -> Option<Unit> {
        self.last_unit
    }

    /// The unit that the first number has, written or taken from the parser.
    ///
    /// ```
    /// use scantling::{LengthParser, Unit};
    ///
    /// let plan = LengthParser::new().default_unit(Unit::Millimeter);
    /// assert_eq!(plan.parse_written("365")?.1.unit(), Some(Unit::Millimeter));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn unit(&self) -> Option<Unit> {
        if self.first_unit.is_some() { self.first_unit } else { self.bare_unit }
    }

    /// How the units were marked; of several, the first.
    ///
    /// ```
    /// use scantling::{LengthParser, UnitMark};
    ///
    /// assert_eq!(LengthParser::new().parse_written("17 in")?.1.mark(), UnitMark::Word);
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn mark(&self) -> UnitMark {
        self.mark
    }

    /// How finely the last number was written.
    ///
    /// ```
    /// use scantling::{LengthParser, Precision};
    ///
    /// assert_eq!(LengthParser::new().parse_written("4/8")?.1.precision(), Precision::Fraction(8));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn precision(&self) -> Precision {
        self.precision
    }

    /// What is suspicious about it, if anything is.
    ///
    /// ```
    /// use scantling::{LengthParser, Warning};
    ///
    /// assert_eq!(LengthParser::new().parse_written("31/2")?.1.warning(), Some(Warning::LostBlank));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn warning(&self) -> Option<Warning> {
        self.warning
    }
}

/// What may have been meant, in a few words.
///
/// ```
/// assert_eq!(scantling::Warning::DecimalFeet.to_string(), "decimal feet: 5.6' is not 5 ft 6 in");
/// ```
impl core::fmt::Display for Warning {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        out.pad(match self {
            Self::LostBlank => "a fraction above one: a blank may have been lost, as from 1 3/4 to 13/4",
            Self::LostBar => "a number that may have lost the bar of a fraction, as from 3/4 to 34",
            Self::DecimalFeet => "decimal feet: 5.6' is not 5 ft 6 in",
            Self::FootOfInches => "a foot or more of inches behind the feet",
        })
    }
}

impl LengthParser {
    /// Reads a length as [`parse`](Self::parse) does, and says how it was written.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, Precision, Unit};
    ///
    /// let (length, written) = LengthParser::new().parse_written("365.0 mm")?;
    /// assert_eq!(length, Length::new(365, Unit::Millimeter));
    /// assert_eq!(written.precision(), Precision::Decimals(1));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// As [`parse`](Self::parse).
    pub fn parse_written(&self, text: &str) -> Result<(Length, Written), ParseError> {
        let length = self.parse(text)?;
        if let Some((unit, precision)) = self.shorthand.written(text) {
            return Ok((length, Written { bare_unit: Some(unit), precision, ..Written::default() }));
        }
        let written = match self.read(text.as_bytes()) {
            Ok(found) => Written::of(text, &found),
            Err(_) => Written { precision: Precision::Spoken, ..Written::default() },
        };
        Ok((length, Written { bare_unit: Some(self.default_unit), ..written }))
    }
}

impl Written {
    fn of(text: &str, found: &Compound<'_>) -> Self {
        let last = &found.last;
        let number = last_number(text.as_bytes(), found);
        let precision = match last.number.form {
            Form::Whole => Precision::Whole,
            Form::Decimal => Precision::Decimals(decimals(number)),
            Form::Fraction | Form::Mixed => Precision::Fraction(u64::try_from(last.number.den).unwrap_or(u64::MAX)),
        };
        Self {
            first_unit: found.first_unit,
            last_unit: last.unit,
            bare_unit: None,
            mark: mark(text.as_bytes()),
            precision,
            warning: suspicion(found, number),
        }
    }
}

/// What is suspicious about a length that was read from a text, if anything is.
pub(super) fn warning(text: Bytes<'_>, found: &Compound<'_>) -> Option<Warning> {
    suspicion(found, last_number(text, found))
}

/// The bytes of its last number.
fn last_number<'a>(text: Bytes<'a>, found: &Compound<'_>) -> Bytes<'a> {
    &text[text.len() - found.last.start.len()..text.len() - found.last.behind_number.len()]
}

fn decimals(number: Bytes<'_>) -> u32 {
    let places = number.iter().rev().take_while(|byte| byte.is_ascii_digit()).count();
    u32::try_from(places).unwrap_or(u32::MAX)
}

/// The first mark in a text that has been read.
fn mark(text: Bytes<'_>) -> UnitMark {
    let mut rest = text;
    loop {
        match (rest, glyph(rest)) {
            ([], _) => return UnitMark::None,
            ([b'\'' | b'"', ..], _) => return UnitMark::Quote,
            ([letter, ..], _) if letter.is_ascii_alphabetic() => return UnitMark::Word,
            (_, Some((Glyph::Single | Glyph::Double, _))) => return UnitMark::Prime,
            (_, Some((_, tail))) | ([_, tail @ ..], None) => rest = tail,
        }
    }
}

fn suspicion(found: &Compound<'_>, number: Bytes<'_>) -> Option<Warning> {
    let last = &found.last;
    // Digits and a slash, U+2044 and U+2215 among them.
    let plain = number.iter().all(|byte| byte.is_ascii_digit() || b"/\xE2\x81\x84\x88\x95".contains(byte));
    let is_bare = found.first_unit.is_none() && found.unit == Unit::Inch;
    match last.number.form {
        _ if found.first_unit == Some(Unit::Foot) && found.unit == Unit::Inch && last.number.is_at_least(12) => {
            Some(Warning::FootOfInches)
        }
        Form::Fraction if plain && last.number.num > last.number.den => {
            lost_blank(last.number.num, last.number.den).map(|_| Warning::LostBlank)
        }
        Form::Decimal if last.unit == Some(Unit::Foot) && could_be_inches(number) => Some(Warning::DecimalFeet),
        Form::Whole if plain && is_bare && number.len() >= 5 => Some(Warning::LostBar),
        Form::Whole if plain && apart_from_inch_mark(last.behind_number) && has_lost_bar(last.number.whole) => {
            Some(Warning::LostBar)
        }
        _ => None,
    }
}

/// Decimals that could have been inches: one digit, or 10 or 11.
fn could_be_inches(number: Bytes<'_>) -> bool {
    let at = number.len() - number.iter().rev().take_while(|byte| byte.is_ascii_digit()).count();
    matches!(&number[at..], [b'1'..=b'9'] | [b'1', b'0' | b'1'])
}

/// An inch mark that a blank keeps from its number: what is left where a small fraction stood.
fn apart_from_inch_mark(behind: Bytes<'_>) -> bool {
    let at = blanks(behind);
    at.len() < behind.len() && (at.starts_with(b"\"") || matches!(glyph(at), Some((Glyph::Double, _))))
}

/// Whether digits split into a tape's fraction in lowest terms, as 34 into 3/4 and 1516 into 15/16.
fn has_lost_bar(digits: u128) -> bool {
    [(10, [2, 4, 8]), (100, [16, 32, 64])].iter().any(|(power, denominators)| {
        let (num, den) = (digits / power, digits % power);
        denominators.contains(&den) && num % 2 == 1 && num < den
    })
}
