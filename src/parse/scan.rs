//! The smallest pieces of text: runs of digits, blanks, dashes, slashes. Each is a function with nom's
//! signature. What a run of digits means is left to `number.rs`, what a mark means to `unit.rs`.
//!
//! They work on bytes, because every character that decides anything on the common path is ASCII; a
//! byte past 0x7F goes to `glyph.rs`. Cuts are made only at whole characters.

use nom::IResult;

use super::error::ParseErrorKind;
use super::glyph::{Glyph, glyph};

pub(super) type Bytes<'a> = &'a [u8];
/// What is left, and what was read.
pub(super) type Step<'a, T> = IResult<Bytes<'a>, T, Fault>;
/// The same where what is left is known otherwise.
pub(super) type Flow<T> = Result<T, nom::Err<Fault>>;

/// What went wrong, and where, counted in bytes that were left: turned into a place only when the whole
/// text is known again, so that nothing on the way has to carry an offset.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Fault {
    pub(super) kind: ParseErrorKind,
    /// Bytes left where the faulty piece begins.
    pub(super) from: usize,
    /// Bytes left behind it.
    pub(super) until: usize,
}

impl<'a> nom::error::ParseError<Bytes<'a>> for Fault {
    fn from_error_kind(input: Bytes<'a>, _: nom::error::ErrorKind) -> Self {
        Self { kind: ParseErrorKind::NotANumber, from: input.len(), until: input.len() }
    }

    fn append(_: Bytes<'a>, _: nom::error::ErrorKind, first: Self) -> Self {
        first
    }
}

/// Stops for good, with the piece between two places as the culprit.
#[cold]
#[inline(never)]
pub(super) fn refuse(kind: ParseErrorKind, from: Bytes<'_>, until: Bytes<'_>) -> nom::Err<Fault> {
    nom::Err::Failure(Fault { kind, from: from.len(), until: until.len() })
}

/// "Not here": lets nom's combinators try something else.
pub(super) fn absent<T>(input: Bytes<'_>) -> Step<'_, T> {
    Err(nom::Err::Error(Fault { kind: ParseErrorKind::NotANumber, from: input.len(), until: input.len() }))
}

#[inline]
pub(super) fn starts_digit(input: Bytes<'_>) -> bool {
    matches!(input, [b'0'..=b'9', ..])
}

/// One or more digits.
#[inline]
pub(super) fn digits(input: Bytes<'_>) -> Step<'_, u128> {
    let mut value: u64 = 0;
    let mut rest = input;
    while let [digit @ b'0'..=b'9', tail @ ..] = rest {
        value = value.wrapping_mul(10).wrapping_add(u64::from(digit - b'0'));
        rest = tail;
    }
    match input.len() - rest.len() {
        0 => absent(input),
        1..=19 => Ok((rest, value.into())), // 19 digits stay below 2^64
        _ => wide_digits(input, rest),
    }
}

#[cold]
fn wide_digits<'a>(input: Bytes<'a>, rest: Bytes<'a>) -> Step<'a, u128> {
    let run = &input[..input.len() - rest.len()];
    match run.iter().try_fold(0, |value, digit| push_digit(value, digit - b'0')) {
        Some(value) => Ok((rest, value)),
        None => Err(refuse(ParseErrorKind::TooLarge, input, rest)),
    }
}

/// The number with one more digit behind it; `None` when it does not fit.
pub(super) fn push_digit(value: u128, digit: u8) -> Option<u128> {
    value.checked_mul(10)?.checked_add(digit.into())
}

/// Skips spaces and tabs, and the no-break, thin and narrow ones.
#[inline]
pub(super) fn blanks(input: Bytes<'_>) -> Bytes<'_> {
    match input {
        [b' ' | b'\t' | 0x80..=0xFF, ..] => more_blanks(input),
        _ => input,
    }
}

fn more_blanks(input: Bytes<'_>) -> Bytes<'_> {
    let mut rest = input;
    loop {
        match rest {
            [b' ' | b'\t', tail @ ..] => rest = tail,
            _ => match glyph(rest) {
                Some((Glyph::Blank, tail)) => rest = tail,
                _ => return rest,
            },
        }
    }
}

/// The blanks and line ends round a whole text.
pub(super) fn outer_blanks(input: Bytes<'_>) -> Bytes<'_> {
    let mut rest = input;
    loop {
        let trimmed = blanks(rest.trim_ascii_start());
        if trimmed.len() == rest.len() {
            return rest;
        }
        rest = trimmed;
    }
}

/// A hyphen or an en dash: what may join a whole to its fraction. The minus sign never does.
#[inline]
pub(super) fn dash(input: Bytes<'_>) -> Option<Bytes<'_>> {
    match input {
        [b'-', rest @ ..] => Some(rest),
        _ => match glyph(input) {
            Some((Glyph::Dash, rest)) => Some(rest),
            _ => None,
        },
    }
}

/// A fraction's slash: the plain one, the fraction slash or the division slash.
#[inline]
pub(super) fn slash(input: Bytes<'_>) -> Option<Bytes<'_>> {
    match input {
        [b'/', rest @ ..] => Some(rest),
        _ => match glyph(input) {
            Some((Glyph::Slash, rest)) => Some(rest),
            _ => None,
        },
    }
}

/// A whole word of ASCII letters, which may be empty.
#[inline]
pub(super) fn word(input: Bytes<'_>) -> (Bytes<'_>, Bytes<'_>) {
    let length = input.iter().take_while(|byte| byte.is_ascii_alphabetic()).count();
    input.split_at(length)
}

/// A word in small letters, for a table of known ones; `None` when it is longer than the longest of them.
#[inline]
pub(super) fn lowercase<'a>(word: Bytes<'_>, room: &'a mut [u8]) -> Option<Bytes<'a>> {
    let lower = room.get_mut(..word.len())?;
    lower.iter_mut().zip(word).for_each(|(lower, letter)| *lower = letter.to_ascii_lowercase());
    Some(lower)
}

/// Whether a number could begin here.
#[inline]
pub(super) fn starts_number(input: Bytes<'_>) -> bool {
    match input {
        [b'0'..=b'9', ..] | [b'.', b'0'..=b'9', ..] => true,
        _ => matches!(glyph(input), Some((Glyph::Vulgar(..) | Glyph::Raised(_) | Glyph::OneOver, _))),
    }
}
