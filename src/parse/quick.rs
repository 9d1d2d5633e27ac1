//! The spellings that nearly all shop text is made of, read in one straight line: a number, a fraction, a
//! mark, perhaps inches behind feet. It answers only when it is certain; everything else is left to the grammar
//! in `compound.rs`, which reads the same texts to the same values. What is wrong where it stopped, if that is
//! clear at once, is found in `stop.rs`.
//!
//! It exists for speed alone: most of the time goes into telling shapes apart, so nothing here calls out
//! of line, and every value stays in a register.

use super::number::Form;
use super::scan::starts_digit;
use super::stop::{Site, Stop};
use super::value::near_ticks;
use crate::length::Unit;

/// What was read for certain, or where the certainty ended.
type Certain<'a, T> = Result<T, Stop<'a>>;

/// A number whose parts fit 64 bits: `whole + num / den`.
#[derive(Clone, Copy)]
struct Number {
    whole: u64,
    num: u64,
    den: u64,
    form: Form,
}

impl Number {
    #[inline(always)]
    fn ticks<'a>(self, unit: Unit) -> Certain<'a, i128> {
        near_ticks(self.whole, self.num, self.den, unit).ok_or(Stop::UNSURE)
    }
}

/// The ticks of a text in one of the common spellings, all of it.
#[inline(always)]
pub(super) fn quick(text: &[u8], default_unit: Unit) -> Certain<'_, i128> {
    if !starts_digit(text) {
        return Stop::at(Site::Number, text, text);
    }
    let (rest, first) = number(text)?;
    let Some((rest, unit)) = unit(rest, default_unit) else {
        first.ticks(default_unit)?;
        return Stop::at(Site::Unit, rest, rest);
    };
    let ticks = first.ticks(unit)?;
    match rest {
        [] => Ok(ticks),
        _ if unit != Unit::Foot || first.form != Form::Whole => Stop::at(Site::End, rest, rest),
        [b' ' | b'-', inches @ ..] | inches if starts_digit(inches) => quick_inches(inches, ticks),
        _ => Stop::at(Site::End, rest, rest),
    }
}

/// Inches to the end of the text, behind whole feet.
#[inline(always)]
fn quick_inches(text: &[u8], feet: i128) -> Certain<'_, i128> {
    let (rest, number) = number(text).map_err(Stop::behind_feet)?;
    if number.form == Form::Fraction && number.num >= number.den {
        return Err(Stop::UNSURE);
    }
    let inches = number.ticks(Unit::Inch)?;
    match unit(rest, Unit::Inch) {
        Some(([], Unit::Inch)) => Ok(feet + inches),
        Some((rest, Unit::Inch)) => Stop::at(Site::End, rest, rest),
        Some(_) => Err(Stop::UNSURE),
        None => Stop::at(Site::Unit, rest, rest),
    }
}

#[inline(always)]
fn number(text: &[u8]) -> Certain<'_, (&[u8], Number)> {
    let (rest, whole) = digits(text).ok_or(Stop::UNSURE)?;
    let (rest, num, den, form) = match rest {
        [b'/', rest @ ..] => {
            let (rest, den) = denominator(text, rest)?;
            let number = Number { whole: 0, num: whole, den, form: Form::Fraction };
            return if whole < 100 { Ok((rest, number)) } else { Err(Stop::UNSURE) };
        }
        [joint @ (b' ' | b'-'), b'0'..=b'9', ..] => {
            let (behind, num) = digits(&rest[1..]).ok_or(Stop::UNSURE)?;
            let [b'/', rest @ ..] = behind else {
                return Stop::at(if *joint == b' ' { Site::Slash } else { Site::JoinedSlash }, text, behind);
            };
            let (rest, den) = denominator(text, rest)?;
            (rest, num, den, Form::Mixed)
        }
        [b'.', b'0'..=b'9', ..] => {
            let rest = &rest[1..];
            let (behind, num) = digits(rest).ok_or(Stop::UNSURE)?;
            (behind, num, power_of_ten(rest.len() - behind.len()), Form::Decimal)
        }
        [0xC2, glyph @ 0xBC..=0xBE, rest @ ..] => (rest, u64::from(glyph - 0xBB), 4, Form::Mixed),
        [0xE2, 0x85, glyph @ 0x9B..=0x9E, rest @ ..] => (rest, u64::from(glyph - 0x9B) * 2 + 1, 8, Form::Mixed),
        _ => return Ok((rest, Number { whole, num: 0, den: 1, form: Form::Whole })),
    };
    if num < den { Ok((rest, Number { whole, num, den, form })) } else { Stop::at(Site::Improper, text, rest) }
}

/// A run of one to eighteen digits.
#[inline(always)]
fn digits(text: &[u8]) -> Option<(&[u8], u64)> {
    let (mut rest, mut value) = (text, 0_u64);
    while let [digit @ b'0'..=b'9', tail @ ..] = rest {
        value = value.wrapping_mul(10).wrapping_add(u64::from(digit - b'0'));
        rest = tail;
    }
    matches!(text.len() - rest.len(), 1..=18).then_some((rest, value))
}

/// What stands below the line of a number, if nothing odd follows it.
#[inline(always)]
fn denominator<'a>(number: &'a [u8], text: &'a [u8]) -> Certain<'a, (&'a [u8], u64)> {
    let Some((rest, den)) = digits(text) else { return Stop::at(Site::Denominator, number, text) };
    if den != 0 && !matches!(rest, [b'/' | b'.', ..]) { Ok((rest, den)) } else { Err(Stop::UNSURE) }
}

#[inline(always)]
fn power_of_ten(places: usize) -> u64 {
    const POWERS: [u64; 19] = {
        let mut powers = [1; 19];
        let mut place = 1;
        while place < 19 {
            powers[place] = powers[place - 1] * 10;
            place += 1;
        }
        powers
    };
    POWERS[places]
}

#[inline(always)]
fn unit(text: &[u8], bare: Unit) -> Option<(&[u8], Unit)> {
    let (rest, unit) = match text {
        [] => return Some((text, bare)),
        [b'"', rest @ ..] | [b'\'', b'\'', rest @ ..] | [0xE2, 0x80, 0xB3, rest @ ..] => return Some((rest, Unit::Inch)),
        [b'\'', rest @ ..] | [0xE2, 0x80, 0xB2, rest @ ..] => return foot_mark(rest),
        [b' ', b'i', b'n', rest @ ..] | [b'i', b'n', rest @ ..] => (rest, Unit::Inch),
        [b' ', b'f', b't', rest @ ..] | [b'f', b't', rest @ ..] => (rest, Unit::Foot),
        [b' ', b'm', b'm', rest @ ..] | [b'm', b'm', rest @ ..] => (rest, Unit::Millimeter),
        [b' ', b'c', b'm', rest @ ..] | [b'c', b'm', rest @ ..] => (rest, Unit::Centimeter),
        [b' ', b'm', rest @ ..] | [b'm', rest @ ..] => (rest, Unit::Meter),
        _ => return None,
    };
    // The whole word, and nothing that could make its full stop a decimal point.
    let ends = !matches!(rest, [b'a'..=b'z' | b'A'..=b'Z' | b'.' | 0x80..=0xFF, ..]);
    ends.then_some((rest, unit))
}

/// A foot mark that is not one half of an inch mark, nor a mark between thousands.
#[inline(always)]
fn foot_mark(rest: &[u8]) -> Option<(&[u8], Unit)> {
    let uncertain = matches!(rest, [b'\'' | 0x80..=0xFF, ..] | [b'0'..=b'9', b'0'..=b'9', b'0'..=b'9', ..]);
    (!uncertain).then_some((rest, Unit::Foot))
}

#[cfg(test)]
mod tests {
    use std::format;
    use std::string::String;

    use super::quick;
    use crate::length::{Fraction, Length, Unit};
    use crate::parse::LengthParser;
    use crate::parse::error::ParseError;
    use crate::parse::stop::Stop;

    const PIECES: [&str; 38] = [
        "1", "0", "12", "000", "/", ".", "-", " ", "'", "\"", "½", "⅝", "″", "′", "in", "ft", "m", "mm", "cm", "i", "yd", ",",
        "x", "+", "⁄", "²", "–", "''", "th", "5/8", "#", "q", "by", "o", "inq", "8/8", "[", "±",
    ];
    const FEET: [&str; 4] = ["5'", "5'-", "5 ft ", "6'-3 "];

    /// Every text of four pieces, and of three behind feet: whatever the quick way is certain of, the grammar reads to the same
    /// value or refuses for the same bytes.
    #[test]
    fn what_is_read_quickly_is_what_the_grammar_reads() {
        let mut certain = [0; 2];
        let of_pieces = |count, number: usize| {
            (0..count).map(move |place| PIECES[number / PIECES.len().pow(place) % PIECES.len()]).collect::<String>()
        };
        let of_four = (0..PIECES.len().pow(4)).map(|number| of_pieces(4, number));
        let of_three = (0..PIECES.len().pow(3)).map(|number| of_pieces(3, number));
        for text in of_four.chain(of_three.flat_map(|text| FEET.map(|feet| format!("{feet}{text}")))) {
            for unit in [Unit::Inch, Unit::Millimeter] {
                let outcome = match quick(text.as_bytes(), unit).map_err(Stop::fault) {
                    Ok(ticks) => Ok(Length::from_ticks(Fraction::whole(ticks).unwrap())),
                    Err(Some(fault)) => Err(ParseError::locate(&text, fault)),
                    Err(None) => continue,
                };
                certain[usize::from(outcome.is_err())] += 1;
                assert_eq!(LengthParser::new().default_unit(unit).parse_any(&text), outcome, "{text:?}");
            }
        }
        assert!(certain[0] > 4_000 && certain[1] > 100_000, "{certain:?}");
    }
}
