//! What to write instead: fixed words for most kinds of error, worked out from the text for the few
//! where the right answer can be named.

use core::fmt;

use super::error::{ParseError, ParseErrorKind as Kind};
use super::number::{Form, Number, number};
use super::parser::Comma;

/// A suggestion, to be shown as it is.
///
/// ```
/// use scantling::Length;
///
/// let error = "1,250".parse::<Length>().unwrap_err();
/// assert_eq!(
///     error.hint().unwrap().to_string(),
///     "this is 1250 if the comma groups thousands, 1.250 if it is a decimal comma: write it so, or say which a comma is"
/// );
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Hint<'a> {
    kind: Kind,
    found: &'a str,
}

impl<'a> Hint<'a> {
    pub(super) fn new(error: &'a ParseError) -> Option<Self> {
        let hint = Self { kind: error.kind(), found: error.found() };
        let worked_out = matches!(hint.kind, Kind::ImproperFraction | Kind::CommaReadings | Kind::ApostropheReadings);
        (worked_out || !error.kind().wording().hint.is_empty()).then_some(hint)
    }

    fn improper(self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Some((whole, rest, den)) = carried(self.found) else {
            return out.write_str("carry the whole part of the fraction");
        };
        match rest {
            0 => write!(out, "write {whole}"),
            _ => write!(out, "write {whole} {rest}/{den}"),
        }
    }

    /// Both readings, each only where it is one: groups have three digits, decimals have one comma.
    fn comma(self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let groups = self.found.split(',').skip(1).all(|group| group.split('.').next().is_some_and(|it| it.len() == 3));
        let decimal = self.found.matches(',').count() == 1 && !self.found.contains('.');
        out.write_str("this is ")?;
        if groups {
            self.found.split(',').try_for_each(|group| out.write_str(group))?;
            out.write_str(" if the comma groups thousands")?;
        }
        if let (true, Some((whole, decimals))) = (decimal, self.found.split_once(',')) {
            write!(out, "{}{whole}.{decimals} if it is a decimal comma", if groups { ", " } else { "" })?;
        }
        if !groups && !decimal {
            out.write_str("neither grouped thousands nor a decimal")?;
        }
        out.write_str(": write it so, or say which a comma is")
    }

    fn apostrophe(self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let parts = self.found.split_once(|mark: char| !mark.is_ascii_digit());
        let Some((feet, rest)) = parts.filter(|(_, rest)| rest.bytes().all(|byte| byte.is_ascii_digit())) else {
            return out.write_str("put a blank behind the foot mark, or leave the mark out");
        };
        write!(out, "this is {feet}{rest} if the mark groups thousands, {feet}' {rest}\" if it means feet: write it so")
    }
}

impl fmt::Display for Hint<'_> {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.kind {
            Kind::ImproperFraction => self.improper(out),
            Kind::CommaReadings => self.comma(out),
            Kind::ApostropheReadings => self.apostrophe(out),
            kind => out.write_str(kind.wording().hint),
        }
    }
}

/// A whole number and an improper fraction with the whole part carried over.
fn carried(found: &str) -> Option<(u128, u128, u128)> {
    let (rest, whole) = whole(found.as_bytes(), Form::Whole)?;
    let joined = rest.trim_ascii_start();
    let (_, fraction) = whole_or_fraction(joined.strip_prefix(b"-").unwrap_or(joined))?;
    let carried = whole.whole.checked_add(fraction.num / fraction.den)?;
    Some((carried, fraction.num % fraction.den, fraction.den))
}

fn whole(text: &[u8], form: Form) -> Option<(&[u8], Number)> {
    let digits = text.iter().take_while(|byte| byte.is_ascii_digit()).count();
    let (run, rest) = text.split_at(digits);
    number(run, Comma::Refuse).ok().map(|(_, number)| (rest, number)).filter(|(_, number)| number.form == form)
}

fn whole_or_fraction(text: &[u8]) -> Option<(&[u8], Number)> {
    number(text, Comma::Refuse).ok().filter(|(rest, number)| rest.is_empty() && number.form == Form::Fraction)
}
