//! A name cut into its sizes and its words, in one pass from the front. What they come to together is left to
//! `sizes.rs`.

use alloc::vec::Vec;
use core::ops::Range;

use super::error::{NominalError, NominalErrorKind as Kind};
use super::number::{Number, is_gap, numbers};
use super::words::{Said, is_of_number, is_unit, said};
use crate::length::Length;

/// What a name consists of.
#[derive(Debug, Default)]
pub(super) struct Cut {
    pub(super) numbers: Vec<Number>,
    /// Each thing that was said, once, and where first.
    pub(super) said: Vec<(Said, Range<usize>)>,
}

/// At most a thickness, a width and a length.
const MOST_NUMBERS: usize = 3;

pub(super) fn cut(text: &str) -> Result<Cut, NominalError> {
    let mut cut = Cut::default();
    let mut at = 0;
    // Where an x stands whose second size is still to come.
    let mut times: Option<Range<usize>> = None;
    while at < text.len() {
        let rest = &text[at..];
        let Some(letter) = rest.chars().next() else { break };
        let parts = times.is_none() && cut.has_something();
        if letter.is_whitespace() || (parts && (is_gap(letter) || matches!(letter, ',' | ';' | '@' | '(' | ')'))) {
            at += letter.len_utf8();
        } else if let Some(length) = times_sign(rest) {
            let sign = at..at + length;
            if times.is_some() || cut.numbers.is_empty() {
                return Err(NominalError::at(text, sign, Kind::LooseTimes));
            }
            at = skip_hyphen(text, &sign);
            times = Some(sign);
        } else if let Some(length) = plural(rest).filter(|_| parts) {
            at += length;
        } else if let Some(length) = stretch(rest) {
            cut.take(text, at..at + length, times.take().is_some())?;
            at += length;
        } else {
            let word = at..at + word(rest).max(letter.len_utf8());
            cut.say(text, word.clone())?;
            at = word.end;
        }
    }
    match times {
        Some(sign) => Err(NominalError::at(text, sign, Kind::LooseTimes)),
        None => Ok(cut),
    }
}

impl Cut {
    /// Whether something stands before, which a comma or a dash can part from what follows.
    fn has_something(&self) -> bool {
        !(self.numbers.is_empty() && self.said.is_empty())
    }

    fn take(&mut self, text: &str, span: Range<usize>, times: bool) -> Result<(), NominalError> {
        for number in numbers(text, span, times)? {
            if self.numbers.len() == MOST_NUMBERS {
                return Err(NominalError::at(text, number.span, Kind::TooManyNumbers));
            }
            if number.length <= Length::ZERO {
                return Err(NominalError::at(text, number.span, Kind::NotAboveZero));
            }
            self.numbers.push(number);
        }
        Ok(())
    }

    fn say(&mut self, text: &str, span: Range<usize>) -> Result<(), NominalError> {
        let Some(said) = said(&text[span.clone()]) else {
            return Err(NominalError::at(text, span, Kind::UnknownWord));
        };
        if !self.says(said) {
            self.said.push((said, span));
        }
        Ok(())
    }

    pub(super) fn says(&self, wanted: Said) -> bool {
        self.said.iter().any(|(said, _)| *said == wanted)
    }

    /// Where something was said.
    pub(super) fn place(&self, wanted: Said) -> Option<Range<usize>> {
        self.said.iter().find(|(said, _)| *said == wanted).map(|(_, span)| span.clone())
    }
}

/// The bytes of an x between two sizes: a sign, `x` before anything but a letter, or `by`.
fn times_sign(rest: &str) -> Option<usize> {
    let first = rest.chars().next()?;
    if matches!(first, '×' | '*' | '\u{2715}' | '\u{2716}' | '\u{2A2F}') {
        return Some(first.len_utf8());
    }
    let word = rest.bytes().take_while(u8::is_ascii_alphabetic).count();
    let is_sign = rest[..word].eq_ignore_ascii_case("x") || rest[..word].eq_ignore_ascii_case("by");
    is_sign.then_some(word)
}

/// `two-by-four`: the hyphen behind a `by` joins, and is no minus.
fn skip_hyphen(text: &str, sign: &Range<usize>) -> usize {
    let is_by = sign.len() == 2 && text[sign.clone()].eq_ignore_ascii_case("by");
    if is_by && text[sign.end..].starts_with('-') { sign.end + 1 } else { sign.end }
}

/// The bytes of a stretch that is read as numbers: digits, marks, units, blanks and dashes up to an x or a word. `None`
/// where no number begins.
fn stretch(rest: &str) -> Option<usize> {
    let mut at = 0;
    while let Some(length) = of_number(&rest[at..]) {
        at += length;
    }
    let stretch = rest[..at].trim_end_matches(|letter| is_gap(letter) || letter == ',');
    stretch.contains(char::is_alphanumeric).then_some(stretch.len())
}

/// The bytes of the next character, or of the next unit or number in words, that can go on a stretch.
fn of_number(rest: &str) -> Option<usize> {
    let letter = rest.chars().next()?;
    if letter.is_ascii_alphabetic() {
        let word = &rest[..rest.bytes().take_while(u8::is_ascii_alphabetic).count()];
        // Glued to a unit, as in `600mmx300mm`.
        let glued = word.strip_suffix(['x', 'X']).filter(|unit| is_unit(unit));
        return if is_of_number(word) { Some(word.len()) } else { glued.map(str::len) };
    }
    let behind = &rest[letter.len_utf8()..];
    let parts = plural(rest).is_some() || (letter == ',' && !behind.starts_with(|next: char| next.is_ascii_digit()));
    (!parts && (letter.is_whitespace() || is_of_stretch(letter))).then_some(letter.len_utf8())
}

/// What may stand in a number beside letters: nothing that parts sizes or words.
fn is_of_stretch(letter: char) -> bool {
    match letter {
        '.' | '/' | '\'' | '"' | '-' | ',' | '+' => true,
        '×' | '*' | '\u{2715}' | '\u{2716}' | '\u{2A2F}' => false,
        _ => letter.is_numeric() || (!letter.is_ascii() && !letter.is_alphabetic()),
    }
}

/// The bytes of the end of `2x4's`, which is no foot mark.
fn plural(rest: &str) -> Option<usize> {
    let end = ["'s", "’s"].into_iter().find(|end| rest.starts_with(end))?;
    (!rest[end.len()..].starts_with(char::is_alphanumeric)).then_some(end.len())
}

/// The bytes of a word: letters and digits, and hyphens before letters, as in `kiln-dried` and `S4S`.
fn word(rest: &str) -> usize {
    let mut letters = rest.char_indices().peekable();
    while let Some((at, letter)) = letters.next() {
        let joins = letter == '-' && letters.peek().is_some_and(|(_, next)| next.is_alphabetic());
        if !letter.is_alphanumeric() && !joins {
            return at;
        }
    }
    rest.len()
}
