//! Numbers as a shop writes them: whole, decimal, fraction, whole and fraction, in digits or glyphs.
//! Which unit a number has is left to `unit.rs`, what it comes to in ticks to `value.rs`.

use super::error::ParseErrorKind as Kind;
use super::glyph::{Glyph, glyph};
use super::group::{groups, run};
use super::parser::Comma;
use super::scan::{Bytes, Step, absent, blanks, dash, digits, push_digit, refuse, slash, starts_digit};

/// A number as it was written: `whole + num / den`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Number {
    pub(super) whole: u128,
    pub(super) num: u128,
    pub(super) den: u128,
    pub(super) form: Form,
}

/// How a number was written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Form {
    Whole,
    Decimal,
    Fraction,
    /// A whole number and a fraction.
    Mixed,
}

impl Number {
    pub(super) const fn is_at_least(self, count: u128) -> bool {
        self.whole >= count || self.num / self.den >= count
    }

    #[inline]
    pub(super) const fn whole(whole: u128) -> Self {
        Self { whole, num: 0, den: 1, form: Form::Whole }
    }

    pub(super) const fn has_fraction(&self) -> bool {
        matches!(self.form, Form::Fraction | Form::Mixed)
    }
}

/// A number without a sign.
#[inline]
pub(super) fn number(input: Bytes<'_>, comma: Comma) -> Step<'_, Number> {
    if !starts_digit(input) {
        return without_whole(input, comma);
    }
    let (rest, whole) = digits(input)?;
    match rest {
        [] | [b'"' | b'\'' | b'a'..=b'z', ..] if comma == Comma::Refuse => Ok((rest, Number::whole(whole))),
        [b'/', tail @ ..] => {
            let (rest, den) = denominator(input, tail)?;
            pure(input, rest, whole, den)
        }
        [b' ' | b'-', b'0'..=b'9', ..] => {
            let (after, num) = digits(&rest[1..])?;
            match after {
                [b'/', tail @ ..] => mixed(input, whole, num, denominator(input, tail)?),
                _ => after_whole(input, rest, whole, comma),
            }
        }
        [b'.', b'0'..=b'9', ..] if comma != Comma::Decimal => decimals(input, &rest[1..], whole),
        _ => after_whole(input, rest, whole, comma),
    }
}

/// What may follow a whole number, in its rarer spellings; the number alone if none of them does.
#[cold]
#[inline(never)]
fn after_whole<'a>(input: Bytes<'a>, rest: Bytes<'a>, whole: u128, comma: Comma) -> Step<'a, Number> {
    let (rest, whole) = if comma == Comma::Refuse { (rest, whole) } else { groups(input, rest, whole, comma)? };
    match rest {
        [b',', b'0'..=b'9', ..] if comma == Comma::Decimal => return decimals(input, &rest[1..], whole),
        [b',', b'0'..=b'9', ..] => return Err(refuse(Kind::CommaReadings, input, run(rest))),
        [b'.', a, b, c, tail @ ..] if comma == Comma::Decimal && thousands(input, [*a, *b, *c], tail) => {
            return Err(refuse(Kind::PointGroup, input, tail));
        }
        [b'.', b'0'..=b'9', ..] => return decimals(input, &rest[1..], whole),
        _ => {}
    }
    let near = blanks(rest);
    if let Some(tail) = slash(near) {
        let (rest, den) = denominator(input, tail)?;
        return pure(input, rest, whole, den);
    }
    // A dash joins only where no blank stands on either side of it.
    match fraction(dash(rest).unwrap_or(near)) {
        Ok((after, (num, den))) => mixed(input, whole, num, (after, den)),
        Err(nom::Err::Error(_)) => Ok((rest, Number::whole(whole))),
        Err(fault) => Err(fault),
    }
}

/// Whether a point could group thousands where the comma is the decimal sign: exactly three digits behind it, and
/// before it no zero at the front.
fn thousands(input: Bytes<'_>, digits: [u8; 3], tail: Bytes<'_>) -> bool {
    digits.iter().all(u8::is_ascii_digit) && !starts_digit(tail) && !input.starts_with(b"0")
}

/// A number that begins with its fraction or its decimal point.
#[cold]
#[inline(never)]
fn without_whole(input: Bytes<'_>, comma: Comma) -> Step<'_, Number> {
    match input {
        [b'.', b'0'..=b'9', ..] => decimals(input, &input[1..], 0),
        [b',', b'0'..=b'9', ..] if comma == Comma::Decimal => decimals(input, &input[1..], 0),
        _ => {
            let (rest, (num, den)) = fraction(input)?;
            Ok((rest, Number { whole: 0, num, den, form: Form::Fraction }))
        }
    }
}

/// The digits behind a decimal point.
#[inline]
fn decimals<'a>(input: Bytes<'a>, tail: Bytes<'a>, whole: u128) -> Step<'a, Number> {
    let (rest, num) = match digits(tail) {
        Ok(found) if tail.len() - found.0.len() <= 19 => found,
        _ => return many_decimals(input, tail, whole),
    };
    #[allow(clippy::cast_possible_truncation)] // at most 19
    let den = 10_u64.pow((tail.len() - rest.len()) as u32).into();
    Ok((rest, Number { whole, num, den, form: Form::Decimal }))
}

/// More decimals than 64 bits hold, though perhaps only by zeros at the end, which are worth nothing.
#[cold]
fn many_decimals<'a>(input: Bytes<'a>, tail: Bytes<'a>, whole: u128) -> Step<'a, Number> {
    let (run, rest) = tail.split_at(tail.iter().take_while(|byte| byte.is_ascii_digit()).count());
    let worth = run.iter().rposition(|digit| *digit != b'0').map_or(0, |last| last + 1);
    let scaled = run[..worth]
        .iter()
        .try_fold((0, 1_u128), |(num, den), digit| Some((push_digit(num, digit - b'0')?, den.checked_mul(10)?)));
    match scaled {
        Some((num, den)) => Ok((rest, Number { whole, num, den, form: Form::Decimal })),
        None => Err(refuse(Kind::TooFine, input, rest)),
    }
}

#[inline]
fn mixed<'a>(input: Bytes<'a>, whole: u128, num: u128, (rest, den): (Bytes<'a>, u128)) -> Step<'a, Number> {
    if num >= den {
        return Err(refuse(Kind::ImproperFraction, input, rest));
    }
    Ok((rest, Number { whole, num, den, form: Form::Mixed }))
}

/// A fraction alone, in plain digits. Three digits above a tape's denominator are what is left of a whole
/// number and a fraction when the blank between them is lost, as in `341/2`: two readings, so neither.
#[inline]
fn pure<'a>(input: Bytes<'a>, rest: Bytes<'a>, num: u128, den: u128) -> Step<'a, Number> {
    if num >= 100 && lost_blank(num, den).is_some() {
        return Err(refuse(Kind::LostBlank, input, rest));
    }
    Ok((rest, Number { whole: 0, num, den, form: Form::Fraction }))
}

/// The whole number and the numerator that the numerator of a fraction above one splits into, if it splits so that the
/// rest is a fraction that a tape has, in lowest terms.
#[cold]
pub(super) fn lost_blank(num: u128, den: u128) -> Option<(u128, u128)> {
    let on_a_tape = matches!(den, 2 | 4 | 8 | 16 | 32 | 64);
    let split = |power: u128| (num / power, num % power);
    let fits = |&(_, part): &(u128, u128), least: u128| part >= least && part < den && part % 2 == 1;
    let one = Some(split(10)).filter(|parts| fits(parts, 1));
    let two = Some(split(100)).filter(|parts| fits(parts, 10));
    two.or(one).filter(|_| on_a_tape)
}

/// A fraction below the whole number: digits, raised digits, or one glyph. "Not here" when there is none.
fn fraction(input: Bytes<'_>) -> Step<'_, (u128, u128)> {
    let (after, num) = match input {
        [b'0'..=b'9', ..] => digits(input)?,
        _ => match glyph(input) {
            Some((Glyph::Vulgar(num, den), rest)) => return single_glyph(input, rest, (num.into(), den.into())),
            Some((Glyph::OneOver, tail)) => {
                let (rest, den) = denominator(input, tail)?;
                return Ok((rest, (1, den)));
            }
            Some((Glyph::Raised(_), _)) => run_of(input, |glyph| match glyph {
                Glyph::Raised(digit) => Some(digit),
                _ => None,
            })?,
            _ => return absent(input),
        },
    };
    match slash(blanks(after)) {
        Some(tail) => {
            let (rest, den) = denominator(input, tail)?;
            Ok((rest, (num, den)))
        }
        None => absent(input),
    }
}

fn single_glyph<'a>(input: Bytes<'a>, rest: Bytes<'a>, parts: (u128, u128)) -> Step<'a, (u128, u128)> {
    match slash(rest) {
        Some(tail) => Err(refuse(Kind::ChainedFraction, input, tail)),
        None => Ok((rest, parts)),
    }
}

/// What stands below a fraction's line, in plain or lowered digits, and the checks on it.
#[inline]
fn denominator<'a>(input: Bytes<'a>, tail: Bytes<'a>) -> Step<'a, u128> {
    let (rest, den) = if starts_digit(tail) { digits(tail)? } else { apart_or_lowered(input, tail)? };
    match rest {
        _ if den == 0 => Err(refuse(Kind::ZeroDenominator, input, rest)),
        [b'/', ..] | [b'.', b'0'..=b'9', ..] => bad_tail(input, rest),
        _ if slash(rest).is_some() => bad_tail(input, rest),
        _ => Ok((rest, den)),
    }
}

#[cold]
fn bad_tail<'a>(input: Bytes<'a>, rest: Bytes<'a>) -> Step<'a, u128> {
    let is_part = |byte: &u8| byte.is_ascii_digit() || matches!(byte, b'/' | b'.');
    let length = rest.iter().take_while(|byte| is_part(byte)).count();
    let kind = if rest[0] == b'.' { Kind::DecimalWithFraction } else { Kind::ChainedFraction };
    Err(refuse(kind, input, &rest[length..]))
}

#[cold]
fn apart_or_lowered<'a>(input: Bytes<'a>, tail: Bytes<'a>) -> Step<'a, u128> {
    let apart = blanks(tail);
    if starts_digit(apart) {
        return digits(apart);
    }
    let lowered = run_of(apart, |glyph| match glyph {
        Glyph::Lowered(digit) => Some(digit),
        _ => None,
    });
    match lowered {
        Err(nom::Err::Error(_)) => Err(refuse(Kind::MissingDenominator, input, tail)),
        found => found,
    }
}

/// A run of raised or of lowered digits.
fn run_of(input: Bytes<'_>, digit_of: impl Fn(Glyph) -> Option<u8>) -> Step<'_, u128> {
    let (mut value, mut rest) = (0, input);
    while let Some((found, tail)) = glyph(rest) {
        let Some(digit) = digit_of(found) else { break };
        let Some(longer) = push_digit(value, digit) else {
            return Err(refuse(Kind::TooLarge, input, tail));
        };
        (value, rest) = (longer, tail);
    }
    if rest.len() == input.len() { absent(input) } else { Ok((rest, value)) }
}
