//! Lengths as they are called out: `nine and a half`, `six foot two`, `two thirds of a yard`, in words or in
//! words and figures. Reached only when the plain grammar has stopped, so plain text pays nothing for it.
//!
//! ```text
//! length = [sign] term { ["and"] term }
//! term   = number [["of" ["a"]] unit]
//! ```
//!
//! Speech has no brackets. So every grouping that the words allow is tried, and a text is refused when two
//! of them make different lengths. Hyphens, commas and plurals decide nothing: a recognizer puts them where
//! it likes. Each number takes a bounded run of words, and so the work is bounded too.

use super::compound::any_sign;
use super::parser::LengthParser;
use super::reading::Refusal;
use super::scan::{Bytes, dash, outer_blanks, starts_number};
use crate::length::Length;

mod ambiguity;
mod count;
mod grammar;
mod leftover;
mod length;
pub(super) mod pair;
mod tokens;
mod words;

use length::length;
use tokens::{Token, Tokens};

pub(super) use tokens::{gap, has_speech, said_sign};
use words::{Word, lookup};

/// Whether a word is one that lengths are spoken in.
pub(super) fn is_spoken(word: Bytes<'_>) -> bool {
    lookup(word).is_some()
}

/// The length that a text is in words; `None` when it has no words, or does not begin with a number.
#[cold]
#[inline(never)]
pub(super) fn spoken(text: Bytes<'_>, parser: LengthParser) -> Result<Option<Length>, Refusal> {
    let start = outer_blanks(text);
    let (at, dashed) = any_sign(start);
    if !has_speech(at, parser.comma) {
        return Ok(None);
    }
    let words = Tokens::read(at, parser.comma)?;
    let (from, negative) = match words.all() {
        // `minus-1` would be minus one to one, and minus minus one to another.
        [Token { word: Word::Sign { .. }, end, .. }, ..] if dash(end).is_some_and(starts_number) => return Ok(None),
        [Token { word: Word::Sign { negative }, .. }, ..] if at.len() == start.len() => (1, *negative),
        _ => (0, dashed),
    };
    let magnitude = length(text, &words, from, parser.default_unit)?;
    Ok(magnitude.map(|length| if negative { -length } else { length }))
}
