//! The public face of calculations. How they are worked out is left to the files beside this one.

use super::{Calculation, Quantity};
use crate::length::Length;
use crate::parse::error::{ParseError, ParseErrorKind};
use crate::parse::parser::LengthParser;
use crate::parse::scan::Fault;
use crate::parse::shorthand::{DASHES, Shorthand};
use crate::parse::written::Warning;

/// Works out a calculation, exactly, as [`LengthParser::evaluate`] does by default: a bare number beside
/// inches is inches.
///
/// ```
/// use scantling::{Length, Quantity, Unit, evaluate};
///
/// assert_eq!(evaluate("72 - 2*3/4\"")?, Quantity::Length(Length::fraction(141, 2, Unit::Inch)));
/// assert_eq!(evaluate("3 m 35 cm + 2 m 75 cm")?.length(), Some(Length::new(6100, Unit::Millimeter)));
/// assert_eq!(evaluate("96\" / 3/4\"")?.number(), Some(128.into()));
/// assert!(evaluate("4' * 8'")?.area().is_some());
/// assert!(evaluate("4' + 4' * 8'").is_err());
/// # Ok::<(), scantling::ParseError>(())
/// ```
///
/// # Errors
///
/// As for [`LengthParser::evaluate`].
pub fn evaluate(text: &str) -> Result<Quantity, ParseError> {
    LengthParser::new().evaluate(text)
}

impl LengthParser {
    /// Works out a calculation, exactly: lengths and numbers with `+ - * /` and brackets, in the usual order;
    /// `×`, `·`, `÷`, `−`, `plus`, `minus`, `times` and `divided by` do as well.
    ///
    /// A length times a length is an area; lengths are added to lengths alone. A bare number scales a length;
    /// added to a length in the default unit it takes that unit, and beside any other it is refused. Without a
    /// unit anywhere the answer is a number: [`LengthParser::evaluate_length`] takes it for a length.
    ///
    /// A hyphen subtracts, but still joins feet to inches without blanks, as in `6'-2" + 1"`. Between a whole number
    /// and a fraction, as in `72-3/4`, it has two readings and is refused.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, ParseErrorKind, Unit};
    ///
    /// let metric = LengthParser::new().default_unit(Unit::Millimeter);
    /// assert_eq!(metric.evaluate("2 * (18 + 3 mm)")?.length(), Some(Length::new(42, Unit::Millimeter)));
    /// assert_eq!(metric.evaluate("(32 1/2 - 1 1/2) / 4")?.number(), Some((31, 4).into()));
    ///
    /// let two_readings = metric.evaluate("2 * 72-3/4").unwrap_err();
    /// assert_eq!(two_readings.kind(), ParseErrorKind::HyphenReadings);
    /// assert_eq!(two_readings.hint().unwrap().to_string(), "this is 72 3/4 joined, 71 1/4 subtracted: write 72 3/4 or 72 - 3/4");
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// A [`ParseError`] with the bytes to blame when an operand is no length or number, a sign or a bracket is
    /// missing, the quantities do not go together, the answer cannot be held, or a hyphen or a slash has two
    /// readings of different value.
    pub fn evaluate(&self, text: &str) -> Result<Quantity, ParseError> {
        self.calculated(text, |calculation| Ok(calculation.quantity))
    }

    /// Works out a calculation as [`evaluate`](Self::evaluate) does, and says what is suspicious about the first of its
    /// lengths that is. Of bare numbers nothing is said: `13/4` is as likely a division there.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, Unit, Warning};
    ///
    /// let (sum, warning) = LengthParser::new().evaluate_warned("5.6' + 1\"")?;
    /// assert_eq!(sum.length(), Some(Length::fraction(341, 5, Unit::Inch)));
    /// assert_eq!(warning, Some(Warning::DecimalFeet));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// As for [`LengthParser::evaluate`].
    pub fn evaluate_warned(&self, text: &str) -> Result<(Quantity, Option<Warning>), ParseError> {
        self.calculated(text, |calculation| Ok((calculation.quantity, calculation.warning)))
    }

    /// Works out a calculation whose answer is a length. Without a unit anywhere the answer is in the default unit.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, ParseErrorKind, Unit};
    ///
    /// let inches = LengthParser::new();
    /// assert_eq!(inches.evaluate_length("72 - 2*3/4")?, Length::fraction(141, 2, Unit::Inch));
    /// assert_eq!(inches.evaluate_length("6'-3 1/2\"")?, Length::fraction(151, 2, Unit::Inch));
    /// assert!(inches.evaluate_length("17-5/8").is_err());
    /// assert_eq!(inches.evaluate_length("4' * 8'").unwrap_err().kind(), ParseErrorKind::AreaResult);
    /// assert_eq!(inches.evaluate_length("8' / 4'").unwrap_err().kind(), ParseErrorKind::NumberResult);
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// As for [`LengthParser::evaluate`], and when the answer is an area, a volume or a ratio of two lengths.
    pub fn evaluate_length(&self, text: &str) -> Result<Length, ParseError> {
        self.calculated(text, |calculation| calculation.length(self.default_unit))
    }

    fn calculated<T>(self, text: &str, answer: impl FnOnce(super::Value<'_>) -> Result<T, Fault>) -> Result<T, ParseError> {
        let text = text.trim_end();
        if self.shorthand != Shorthand::None {
            if let Some(read) = self.shorthand.read(text) {
                return answer(super::Value::whole(read?, text.as_bytes())).map_err(|fault| ParseError::locate(text, fault));
            }
            // Inside a calculation it could as well be subtracted.
            if let Some(joined) = joined_numbers(text) {
                return Err(ParseError::at(text, joined, ParseErrorKind::JoinedNumbers));
            }
        }
        let found = Calculation::whole(text.as_bytes(), self).and_then(answer);
        found.map_err(|fault| ParseError::locate(text, fault))
    }
}

/// The bytes of the first two numbers with nothing but a hyphen between them.
fn joined_numbers(text: &str) -> Option<core::ops::Range<usize>> {
    let is_digit = |letter: char| letter.is_ascii_digit();
    text.match_indices(DASHES).find_map(|(at, dash)| {
        let (before, behind) = (&text[..at], &text[at + dash.len()..]);
        let (first, second) = (before.trim_end_matches(is_digit), behind.trim_start_matches(is_digit));
        (first.len() < before.len() && second.len() < behind.len()).then(|| first.len()..text.len() - second.len())
    })
}
