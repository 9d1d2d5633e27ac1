//! A reader of shop measurements as one would write it with floats, and with some care for speed: bytes, no
//! backing up, no allocation. It knows the marks of the corpora, takes what it must and asks no questions.

use scantling::Unit;

/// A length in inches.
pub fn marked_float(text: &str) -> Option<f64> {
    let (first, rest) = number(text)?;
    let (unit, rest) = unit(rest)?;
    if rest.is_empty() {
        return Some(first * worth(unit));
    }
    let (second, rest) = number(rest.strip_prefix([' ', '-']).unwrap_or(rest))?;
    let rest = self::unit(rest)?.1;
    (unit == Unit::Foot && rest.is_empty()).then_some(first * 12.0 + second)
}

fn worth(unit: Unit) -> f64 {
    match unit {
        Unit::Foot => 12.0,
        Unit::Millimeter => 1.0 / 25.4,
        Unit::Centimeter => 10.0 / 25.4,
        Unit::Meter => 1000.0 / 25.4,
        _ => 1.0,
    }
}

/// A number, a fraction or both.
fn number(text: &str) -> Option<(f64, &str)> {
    let (whole, rest) = numeral(text)?;
    match rest.as_bytes() {
        [b'/', ..] => over(whole, &rest[1..]),
        [b' ' | b'-', b'0'..=b'9', ..] => {
            let (num, rest) = small(&rest[1..])?;
            let (part, rest) = over(num, rest.strip_prefix('/')?)?;
            Some((whole + part, rest))
        }
        [0xC2 | 0xE2, ..] => Some(glyph(rest).map_or((whole, rest), |(part, rest)| (whole + part, rest))),
        _ => Some((whole, rest)),
    }
}

fn over(num: f64, text: &str) -> Option<(f64, &str)> {
    let (den, rest) = small(text)?;
    Some((num / den, rest))
}

/// Digits with or without a point.
fn numeral(text: &str) -> Option<(f64, &str)> {
    let (whole, rest) = small(text)?;
    if !rest.starts_with('.') {
        return Some((whole, rest));
    }
    let length = text.bytes().position(|byte| !matches!(byte, b'0'..=b'9' | b'.')).unwrap_or(text.len());
    let (digits, rest) = text.split_at(length);
    Some((digits.parse().ok()?, rest))
}

/// Digits alone, for which the parser of floats would be too much.
fn small(text: &str) -> Option<(f64, &str)> {
    let (mut value, mut length) = (0_u32, 0);
    while let Some(digit @ b'0'..=b'9') = text.as_bytes().get(length) {
        value = value.wrapping_mul(10).wrapping_add(u32::from(digit - b'0'));
        length += 1;
    }
    (1..=9).contains(&length).then(|| (f64::from(value), &text[length..]))
}

fn glyph(text: &str) -> Option<(f64, &str)> {
    let glyph = text.chars().next()?;
    let part = match glyph {
        '½' => 0.5,
        '¼' => 0.25,
        '¾' => 0.75,
        '⅛' => 0.125,
        '⅜' => 0.375,
        '⅝' => 0.625,
        '⅞' => 0.875,
        _ => return None,
    };
    Some((part, &text[glyph.len_utf8()..]))
}

/// The unit behind a number, inches where there is none.
#[allow(clippy::match_same_arms)] // one spelling a line, in the order they are tried
fn unit(text: &str) -> Option<(Unit, &str)> {
    let (unit, length) = match text.as_bytes() {
        [] => (Unit::Inch, 0),
        [b'"', ..] => (Unit::Inch, 1),
        [b'\'', b'\'', ..] => (Unit::Inch, 2),
        [b'\'', ..] => (Unit::Foot, 1),
        [0xE2, 0x80, 0xB3, ..] => (Unit::Inch, 3),
        [0xE2, 0x80, 0xB2, ..] => (Unit::Foot, 3),
        [b' ', b'i', b'n', ..] => (Unit::Inch, 3),
        [b' ', b'f', b't', ..] => (Unit::Foot, 3),
        [b' ', b'm', b'm', ..] => (Unit::Millimeter, 3),
        [b' ', b'c', b'm', ..] => (Unit::Centimeter, 3),
        [b' ', b'm', ..] => (Unit::Meter, 2),
        [b'i', b'n', ..] => (Unit::Inch, 2),
        [b'f', b't', ..] => (Unit::Foot, 2),
        [b'm', b'm', ..] => (Unit::Millimeter, 2),
        [b'c', b'm', ..] => (Unit::Centimeter, 2),
        [b'm', ..] => (Unit::Meter, 1),
        _ => return None,
    };
    Some((unit, &text[length..]))
}
