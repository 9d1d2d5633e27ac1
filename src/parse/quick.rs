//! The spellings that nearly all shop text is made of, read in one straight line: a number, a fraction, a
//! mark, perhaps inches behind feet. It answers only when it is certain; everything else, and every
//! error, is left to the grammar in `compound.rs`, which reads the same texts to the same values.
//!
//! It exists for speed alone: most of the time goes into telling shapes apart, so nothing here calls out
//! of line, and every value stays in a register.

use super::number::Form;
use super::value::near_ticks;
use crate::length::Unit;

/// A number whose parts fit 64 bits: `whole + num / den`.
#[derive(Clone, Copy)]
struct Number {
    whole: u64,
    num: u64,
    den: u64,
    form: Form,
}

/// The ticks of a text in one of the common spellings, all of it.
#[inline(always)]
pub(super) fn quick(text: &[u8], default_unit: Unit) -> Option<i128> {
    let (rest, first) = number(text)?;
    let (rest, unit) = unit(rest, default_unit)?;
    let ticks = near_ticks(first.whole, first.num, first.den, unit)?;
    match rest {
        [] => Some(ticks),
        _ if unit != Unit::Foot || first.form != Form::Whole => None,
        [b' ' | b'-', inches @ ..] | inches => quick_inches(inches, ticks),
    }
}

/// Inches to the end of the text, behind whole feet.
#[inline(always)]
fn quick_inches(text: &[u8], feet: i128) -> Option<i128> {
    let (rest, number) = number(text)?;
    let (rest, unit) = unit(rest, Unit::Inch)?;
    let proper = number.form != Form::Fraction || number.num < number.den;
    if unit != Unit::Inch || !rest.is_empty() || !proper {
        return None;
    }
    near_ticks(number.whole, number.num, number.den, unit).map(|inches| feet + inches)
}

#[inline(always)]
fn number(text: &[u8]) -> Option<(&[u8], Number)> {
    let (rest, whole) = digits(text)?;
    let (rest, num, den, form) = match rest {
        [b'/', rest @ ..] => {
            let (rest, den) = denominator(rest)?;
            return (whole < 100).then_some((rest, Number { whole: 0, num: whole, den, form: Form::Fraction }));
        }
        [b' ' | b'-', b'0'..=b'9', ..] => {
            let (rest, num) = digits(&rest[1..])?;
            let [b'/', rest @ ..] = rest else { return None };
            let (rest, den) = denominator(rest)?;
            (rest, num, den, Form::Mixed)
        }
        [b'.', rest @ ..] => {
            let (behind, num) = digits(rest)?;
            (behind, num, power_of_ten(rest.len() - behind.len()), Form::Decimal)
        }
        [0xC2, glyph @ 0xBC..=0xBE, rest @ ..] => (rest, u64::from(glyph - 0xBB), 4, Form::Mixed),
        [0xE2, 0x85, glyph @ 0x9B..=0x9E, rest @ ..] => (rest, u64::from(glyph - 0x9B) * 2 + 1, 8, Form::Mixed),
        _ => return Some((rest, Number { whole, num: 0, den: 1, form: Form::Whole })),
    };
    (num < den).then_some((rest, Number { whole, num, den, form }))
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

/// What stands below the line, if nothing odd follows it.
#[inline(always)]
fn denominator(text: &[u8]) -> Option<(&[u8], u64)> {
    let (rest, den) = digits(text)?;
    (den != 0 && !matches!(rest, [b'/' | b'.', ..])).then_some((rest, den))
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
    use std::string::String;

    use super::quick;
    use crate::length::{Fraction, Length, Unit};
    use crate::parse::LengthParser;

    const PIECES: [&str; 30] = [
        "1", "0", "12", "000", "/", ".", "-", " ", "'", "\"", "½", "⅝", "″", "′", "in", "ft", "m", "mm", "cm", "i", "yd", ",",
        "x", "+", "⁄", "²", "–", "''", "th", "5/8",
    ];

    /// Every text of four pieces: whatever the quick way is certain of, the grammar reads to the same value.
    #[test]
    fn what_is_read_quickly_is_what_the_grammar_reads() {
        let mut certain = 0;
        for number in 0..PIECES.len().pow(4) {
            let piece = |place| PIECES[number / PIECES.len().pow(place) % PIECES.len()];
            let text = (0..4).map(piece).collect::<String>();
            for unit in [Unit::Inch, Unit::Millimeter] {
                if let Some(ticks) = quick(text.as_bytes(), unit) {
                    certain += 1;
                    let value = Length::from_ticks(Fraction::whole(ticks).unwrap());
                    assert_eq!(LengthParser::new().default_unit(unit).parse_any(&text), Ok(value), "{text:?}");
                }
            }
        }
        assert!(certain > 4_000, "only {certain} texts were certain");
    }
}
