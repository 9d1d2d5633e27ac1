//! Shorthands that are read only when the caller asks for them, because without that they would have
//! other readings: numbers joined by dashes, or packed, whose places say what they are.

use num_rational::Ratio;

use super::compound::any_sign;
use super::error::{ParseError, ParseErrorKind as Kind};
use super::number::Number;
use super::parser::Comma;
use super::piece::Piece;
use super::scan::Bytes;
use super::spoken::pair::side_by_side;
use super::spoken::said_sign;
use super::written::Precision;
use crate::length::{Length, Unit};

/// A crew's shorthand for lengths.
///
/// ```
/// use scantling::{Length, LengthParser, Shorthand, Unit};
///
/// let truss = LengthParser::new().shorthand(Shorthand::FeetInchesSixteenths);
/// assert_eq!(truss.parse("12-04-08")?, Length::fraction(297, 2, Unit::Inch));
/// assert_eq!(truss.parse("120408")?, Length::fraction(297, 2, Unit::Inch));
///
/// let doors = LengthParser::new().shorthand(Shorthand::FeetInches);
/// assert_eq!(doors.parse("2-6")?, Length::new(30, Unit::Inch));
/// # Ok::<(), scantling::ParseError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Shorthand {
    /// None: such a text is an error that names the mode.
    #[default]
    None,
    /// `12-04-08` is 12 ft 4 8/16 in, as truss sheets print it; packed, with two digits each for inches
    /// and sixteenths, `120408`.
    FeetInchesSixteenths,
    /// `2-6` is 2 ft 6 in, as door sizes are written; called out, `two-six` and `three-oh`.
    FeetInches,
    /// `36-12` is 36 12/16 in, as some crews call a cut; called out, `36-twelve` or `36-twelve and a half`.
    InchesSixteenths,
}

/// One place of a shorthand: its unit in sixteenths of an inch, and how many make one of the next.
struct Place {
    sixteenths: i64,
    most: u128,
}

const FEET: Place = Place { sixteenths: 192, most: u128::MAX };
const WHOLE_INCHES: Place = Place { sixteenths: 16, most: u128::MAX };
const INCHES: Place = Place { sixteenths: 16, most: 11 };
const SIXTEENTHS: Place = Place { sixteenths: 1, most: 15 };

/// Whatever dash a keyboard made of the hyphen; never the minus sign.
pub(super) const DASHES: [char; 4] = ['-', '\u{2010}', '\u{2011}', '\u{2013}'];

impl Shorthand {
    const fn places(self) -> &'static [Place] {
        match self {
            Self::None => &[],
            Self::FeetInchesSixteenths => &[FEET, INCHES, SIXTEENTHS],
            Self::FeetInches => &[FEET, INCHES],
            Self::InchesSixteenths => &[WHOLE_INCHES, SIXTEENTHS],
        }
    }

    /// Reads a text that is in this shorthand; `None` when it is in none, and may be a plain length.
    pub(super) fn read(self, text: &str) -> Option<Result<Length, ParseError>> {
        let whole = Piece::new(text);
        let bytes = whole.text().as_bytes();
        let (unsigned, negative) = said_sign(bytes).unwrap_or_else(|| any_sign(bytes));
        // A sentence's full stop may end the text, as it may end any length.
        let unstopped = unsigned.strip_suffix(b".").unwrap_or(unsigned);
        let start = bytes.len() - unsigned.len();
        let piece = whole.part(start, start + unstopped.len());
        let value = self.dashed(piece).or_else(|| self.packed(piece)).or_else(|| self.called_out(piece))?;
        Some(value.map(|length| if negative { -length } else { length }))
    }

    /// The unit of the first place of a text in this shorthand, and how fine its last one is; `None` for other texts.
    pub(super) fn written(self, text: &str) -> Option<(Unit, Precision)> {
        let (first, last) = (self.places().first()?, self.places().last()?);
        self.read(text)?.ok()?;
        let unit = if first.sixteenths == FEET.sixteenths { Unit::Foot } else { Unit::Inch };
        let in_words = Piece::new(text).text().contains(|letter: char| letter.is_ascii_alphabetic());
        let precision = match last.sixteenths {
            _ if in_words => Precision::Spoken,
            1 => Precision::Fraction(16),
            _ => Precision::Whole,
        };
        Some((unit, precision))
    }

    /// `12-04-08`: as many numbers as there are places.
    fn dashed(self, piece: Piece<'_>) -> Option<Result<Length, ParseError>> {
        let (text, places) = (piece.text(), self.places());
        let is_number = |field: &str| !field.is_empty() && field.bytes().all(|byte| byte.is_ascii_digit());
        if text.split(DASHES).count() != places.len() || !text.split(DASHES).all(is_number) {
            return None;
        }
        let mut rest = piece;
        Some(places.iter().zip(text.split(DASHES)).try_fold(Length::ZERO, |total, (place, field)| {
            let (number, behind) = (rest.part(0, field.len()), &rest.text()[field.len()..]);
            let dash = behind.chars().next().map_or(0, char::len_utf8);
            rest = rest.part(field.len() + dash, rest.text().len());
            add(total, place, number)
        }))
    }

    /// `120408`: feet, and two digits each for inches and sixteenths.
    fn packed(self, piece: Piece<'_>) -> Option<Result<Length, ParseError>> {
        let text = piece.text();
        if self != Self::FeetInchesSixteenths || text.is_empty() || !text.bytes().all(|byte| byte.is_ascii_digit()) {
            return None;
        }
        let Some(feet) = text.len().checked_sub(4).filter(|feet| *feet > 0) else {
            return Some(Err(piece.refuse(Kind::PackedTooShort)));
        };
        let fields = [(0, feet), (feet, feet + 2), (feet + 2, text.len())];
        Some(
            self.places()
                .iter()
                .zip(fields)
                .try_fold(Length::ZERO, |total, (place, (from, to))| add(total, place, piece.part(from, to))),
        )
    }
}

impl Shorthand {
    /// An operand of a calculation, if it is a bare number of enough digits to be packed.
    pub(super) fn packed_operand(self, operand: Bytes<'_>) -> Option<Result<Length, Kind>> {
        let read = self.packed(Piece::new(core::str::from_utf8(operand).ok()?))?;
        Some(read.map_err(|error| error.kind())).filter(|read| *read != Err(Kind::PackedTooShort))
    }

    /// `36-twelve and a half`: two numbers in words, the second perhaps with a fraction.
    fn called_out(self, piece: Piece<'_>) -> Option<Result<Length, ParseError>> {
        let [first, second] = self.places() else { return None };
        let pair = side_by_side(piece.text().as_bytes(), Comma::Refuse)?;
        if !matches!(pair.end, [] | b".") {
            return None;
        }
        let (front, back) = (counted(first, &pair.first), counted(second, &pair.second));
        let sum = front.zip(back).and_then(|(front, back)| front.checked_add(back));
        Some(match sum {
            _ if pair.second.whole > second.most => Err(piece.refuse(Kind::FieldTooLarge)),
            Some(length) => Ok(length),
            None => Err(piece.refuse(Kind::TooLarge)),
        })
    }
}

/// A number of a place's unit.
fn counted(place: &Place, number: &Number) -> Option<Length> {
    let part = |part: u128| i128::try_from(part).ok();
    let (num, den) = (part(number.whole)?.checked_mul(part(number.den)?)?.checked_add(part(number.num)?)?, part(number.den)?);
    Length::fraction(place.sixteenths, 16, Unit::Inch).checked_mul_ratio(Ratio::new_raw(num, den))
}

fn add(total: Length, place: &Place, field: Piece<'_>) -> Result<Length, ParseError> {
    let count: u128 = field.text().parse().map_err(|_| field.refuse(Kind::TooLarge))?;
    if count > place.most {
        return Err(field.refuse(Kind::FieldTooLarge));
    }
    let added = counted(place, &Number::whole(count)).and_then(|length| length.checked_add(total));
    added.ok_or_else(|| field.refuse(Kind::TooLarge))
}
