//! Unit marks and words behind a number, in every spelling a shop uses. Which units may follow one
//! another is left to `compound.rs`.

use super::error::ParseErrorKind as Kind;
use super::glyph::{Glyph, glyph};
use super::number::Number;
use super::scan::{Bytes, Step, blanks, dash, lowercase, refuse, word};
use crate::length::Unit;

/// The unit behind a number, or none, with nothing used up. `start` is where the number began.
#[inline]
pub(super) fn unit<'a>(start: Bytes<'a>, input: Bytes<'a>, number: &Number) -> Step<'a, Option<Unit>> {
    match input {
        [] => Ok((input, None)),
        [b'"', rest @ ..] | [b'\'', b'\'', rest @ ..] => Ok((rest, Some(Unit::Inch))),
        [b'\'', rest @ ..] => foot_mark(start, rest),
        [b' ', b'a'..=b'z', ..] => worded(input, &input[1..], number),
        [b'a'..=b'z', ..] => worded(input, input, number),
        _ => unusual(start, input, number),
    }
}

/// Feet, unless the mark doubles as something else.
#[inline]
fn foot_mark<'a>(start: Bytes<'a>, rest: Bytes<'a>) -> Step<'a, Option<Unit>> {
    match rest {
        [b'0'..=b'9', b'0'..=b'9', b'0'..=b'9', ..] => Err(refuse(Kind::ApostropheReadings, start, &rest[3..])),
        _ => match glyph(rest) {
            Some((Glyph::Single, rest)) => Ok((rest, Some(Unit::Inch))),
            _ => Ok((rest, Some(Unit::Foot))),
        },
    }
}

/// A unit in letters. The whole word is taken before it is looked up, so that `month` is never `m`.
#[inline]
fn worded<'a>(input: Bytes<'a>, at: Bytes<'a>, number: &Number) -> Step<'a, Option<Unit>> {
    let (name, rest) = word(at);
    match lookup(name) {
        Some(unit) => full_stop(rest, unit),
        None => of_a_unit(input, at, number),
    }
}

#[inline]
pub(super) fn lookup(name: Bytes<'_>) -> Option<Unit> {
    match name {
        b"in" => Some(Unit::Inch),
        b"mm" => Some(Unit::Millimeter),
        b"ft" => Some(Unit::Foot),
        b"cm" => Some(Unit::Centimeter),
        b"m" => Some(Unit::Meter),
        _ => lookup_long(name),
    }
}

fn lookup_long(name: Bytes<'_>) -> Option<Unit> {
    match lowercase(name, &mut [0; "millimeters".len()])? {
        b"in" | b"ins" | b"inch" | b"inches" => Some(Unit::Inch),
        b"ft" | b"foot" | b"feet" => Some(Unit::Foot),
        b"yd" | b"yds" | b"yard" | b"yards" => Some(Unit::Yard),
        b"mm" | b"mms" | b"millimeter" | b"millimeters" | b"millimetre" | b"millimetres" => Some(Unit::Millimeter),
        b"cm" | b"cms" | b"centimeter" | b"centimeters" | b"centimetre" | b"centimetres" => Some(Unit::Centimeter),
        b"m" | b"meter" | b"meters" | b"metre" | b"metres" => Some(Unit::Meter),
        _ => None,
    }
}

/// An abbreviation's full stop, which must not be the decimal point of the next number.
#[inline]
pub(super) fn full_stop(rest: Bytes<'_>, unit: Unit) -> Step<'_, Option<Unit>> {
    match rest {
        [b'.', b'0'..=b'9', ..] => Err(refuse(Kind::PointReadings, rest, after_decimals(rest))),
        [b'.', rest @ ..] => Ok((rest, Some(unit))),
        _ => Ok((rest, Some(unit))),
    }
}

fn after_decimals(rest: Bytes<'_>) -> Bytes<'_> {
    &rest[1 + rest[1..].iter().take_while(|byte| byte.is_ascii_digit()).count()..]
}

/// Everything but the common spellings: blanks before a mark, primes, capitals, `49-in`.
#[cold]
#[inline(never)]
fn unusual<'a>(start: Bytes<'a>, input: Bytes<'a>, number: &Number) -> Step<'a, Option<Unit>> {
    let at = blanks(input);
    match at {
        [b'"', rest @ ..] | [b'\'', b'\'', rest @ ..] => Ok((rest, Some(Unit::Inch))),
        [b'\'', rest @ ..] => foot_mark(start, rest),
        [b'a'..=b'z' | b'A'..=b'Z', ..] => worded(input, at, number),
        _ => match glyph(at) {
            Some((Glyph::Double, rest)) => Ok((rest, Some(Unit::Inch))),
            Some((Glyph::Single, rest)) => single_mark(start, rest),
            _ => hyphenated(input, number),
        },
    }
}

/// A prime or curly quote: two of them make an inch mark.
fn single_mark<'a>(start: Bytes<'a>, rest: Bytes<'a>) -> Step<'a, Option<Unit>> {
    match rest {
        [b'\'', rest @ ..] => Ok((rest, Some(Unit::Inch))),
        _ => foot_mark(start, rest),
    }
}

/// A hyphen glued between a number and its unit word, as in a 49-in. sheet.
fn hyphenated<'a>(input: Bytes<'a>, number: &Number) -> Step<'a, Option<Unit>> {
    match dash(input) {
        Some(at @ [b'a'..=b'z' | b'A'..=b'Z', ..]) => worded(input, at, number),
        _ => Ok((input, None)),
    }
}

/// `ths`, `of an inch` and the like, which only a fraction can have.
#[cold]
#[inline(never)]
fn of_a_unit<'a>(input: Bytes<'a>, at: Bytes<'a>, number: &Number) -> Step<'a, Option<Unit>> {
    if !number.has_fraction() {
        return Ok((input, None));
    }
    let glued = at.len() == input.len();
    let (name, after) = word(at);
    let rest = if glued && is_ordinal(name) { after } else { input };
    let at = blanks(rest);
    let (name, tail) = word(at);
    let of = name.eq_ignore_ascii_case(b"of");
    let at = if of { article(blanks(tail)) } else { at };
    let (name, tail) = word(at);
    match lookup(name) {
        Some(unit) => full_stop(tail, unit), // not the word itself, which is no unit
        _ => Ok((rest, None)),
    }
}

pub(super) fn is_ordinal(name: Bytes<'_>) -> bool {
    ["th", "ths", "rd", "rds", "nd", "nds"].iter().any(|ending| name.eq_ignore_ascii_case(ending.as_bytes()))
}

/// Skips `a`, `an` or `one`.
pub(super) fn article(input: Bytes<'_>) -> Bytes<'_> {
    let (name, rest) = word(input);
    let is_article = ["a", "an", "one"].iter().any(|article| name.eq_ignore_ascii_case(article.as_bytes()));
    if is_article { blanks(rest) } else { input }
}
