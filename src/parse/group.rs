//! Digits in groups of three and the decimal comma, read only when the caller has said which of the two
//! a comma is. Everything else about numbers is left to `number.rs`.

use super::error::ParseErrorKind as Kind;
use super::glyph::{Glyph, glyph};
use super::parser::Comma;
use super::scan::{Bytes, Step, blanks, digits, push_digit, refuse, slash};

/// The groups behind a first run of digits, if there are any: the number with them, and what is left.
pub(super) fn groups<'a>(input: Bytes<'a>, rest: Bytes<'a>, whole: u128, comma: Comma) -> Step<'a, u128> {
    let first_is_short = input.len() - rest.len() <= 3 && !input.starts_with(b"0");
    let pointed = comma == Comma::Decimal && points_group(rest);
    let (mut value, mut rest) = (whole, rest);
    while let Some((group, after)) = next_group(rest, comma, pointed).filter(|_| first_is_short) {
        let pushed = group.iter().try_fold(value, |value, digit| push_digit(value, digit - b'0'));
        let Some(longer) = pushed else {
            return Err(refuse(Kind::TooLarge, input, after));
        };
        (value, rest) = (longer, after);
    }
    if let (Comma::Groups, [b',', b'0'..=b'9', ..]) = (comma, rest) {
        return Err(refuse(Kind::BadGroup, input, run(rest)));
    }
    Ok((rest, value))
}

/// Exactly three digits behind a comma, or behind an apostrophe or a blank if they are no numerator.
fn next_group(rest: Bytes<'_>, comma: Comma, pointed: bool) -> Option<(Bytes<'_>, Bytes<'_>)> {
    let tail = match rest {
        [b',', tail @ ..] if comma == Comma::Groups => tail,
        [b'.', tail @ ..] if pointed => tail,
        [b'\'' | b' ', tail @ ..] => tail,
        _ => match glyph(rest) {
            Some((Glyph::Blank | Glyph::Single, tail)) => tail,
            _ => return None,
        },
    };
    let (after, _) = digits(tail).ok()?;
    let group = &tail[..tail.len() - after.len()];
    let numerator = slash(blanks(after)).is_some() && !rest.starts_with(b",");
    (group.len() == 3 && !numerator).then_some((group, after))
}

/// `.250.000,5`: points group where three digits follow each of them and a decimal comma the last.
fn points_group(rest: Bytes<'_>) -> bool {
    let mut tail = rest;
    while let [b'.', b'0'..=b'9', b'0'..=b'9', b'0'..=b'9', behind @ ..] = tail {
        tail = behind;
    }
    matches!(tail, [b',', b'0'..=b'9', ..])
}

/// The end of a run of digits, commas and points.
pub(super) fn run(input: Bytes<'_>) -> Bytes<'_> {
    let is_part = |byte: &u8| byte.is_ascii_digit() || matches!(byte, b',' | b'.');
    let length = input.iter().take_while(|byte| is_part(byte)).count();
    // A comma or a full stop at the end belongs to the sentence.
    let last = input[..length].iter().rposition(u8::is_ascii_digit);
    &input[last.map_or(0, |last| last + 1)..]
}
