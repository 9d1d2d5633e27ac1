//! Cuts a spoken line into words and figures, as a voice note or a speech recognizer writes it: in any
//! capitals, with hyphens, commas and a full stop where they fell. Stops at the first thing it does not
//! know. What the words add up to is left to the files behind it.

use super::words::{Ending, Numeral, Word, lookup};
use crate::parse::error::ParseErrorKind as Kind;
use crate::parse::number::{Form, Number, number};
use crate::parse::parser::Comma;
use crate::parse::scan::{Bytes, Flow, blanks, dash, outer_blanks, refuse, starts_digit, starts_number, word};
use crate::parse::unit::{full_stop, is_ordinal, lookup as unit_word, unit};

/// The longest run of words that is looked at. A length in three units, each with a number of four
/// digits and the last with a fraction of three, has fewer.
const MOST: usize = 48;

/// One word, with the text from it on and the text behind it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Token<'a> {
    pub(super) word: Word,
    pub(super) at: Bytes<'a>,
    pub(super) end: Bytes<'a>,
}

/// The words of a line, as far as they are known.
pub(super) struct Tokens<'a> {
    list: [Token<'a>; MOST],
    length: usize,
    /// What is left behind them.
    pub(super) rest: Bytes<'a>,
    /// What a comma between digits was taken for.
    pub(super) comma: Comma,
}

impl<'a> Tokens<'a> {
    pub(super) fn read(text: Bytes<'a>, comma: Comma) -> Flow<Self> {
        let mut tokens = Self { list: [Token { word: Word::And, at: b"", end: b"" }; MOST], length: 0, rest: text, comma };
        while let Some(token) = token(tokens.rest, comma)? {
            let place = tokens.list.get_mut(tokens.length);
            *place.ok_or_else(|| refuse(Kind::TooManyWords, token.at, token.end))? = token;
            tokens.length += 1;
            tokens.rest = gap(token.end, comma);
        }
        Ok(tokens)
    }

    pub(super) fn all(&self) -> &[Token<'a>] {
        &self.list[..self.length]
    }
}

/// Whether there is a word among those at the front that the plain notations do not know. Looked for before
/// any word is kept, since a plain text with a slip in it has none.
pub(in crate::parse) fn has_speech(text: Bytes<'_>, comma: Comma) -> bool {
    if !text.iter().any(|byte| byte.is_ascii_alphabetic() || *byte == b'&') {
        return false;
    }
    let mut rest = text;
    while let Ok(Some(token)) = token(rest, comma) {
        if token.word.is_speech() {
            return true;
        }
        rest = gap(token.end, comma);
    }
    false
}

/// Whether a text begins with a word for a sign, minus or not, and what stands behind it.
pub(in crate::parse) fn said_sign(text: Bytes<'_>) -> Option<(Bytes<'_>, bool)> {
    let (name, behind) = word(text);
    match lookup(name)? {
        Word::Sign { negative } if hyphen(behind).is_none() => Some((gap(behind, Comma::Refuse), negative)),
        _ => None,
    }
}

/// What may stand between two words: blanks, commas, a hyphen with no blank beside it, and the full stop
/// at the end of the line. A comma that is a decimal point is no gap.
pub(in crate::parse) fn gap(behind: Bytes<'_>, comma: Comma) -> Bytes<'_> {
    let mut at = blanks(behind);
    while let [b',', rest @ ..] = at {
        if comma == Comma::Decimal && starts_digit(rest) {
            return at;
        }
        at = blanks(rest);
    }
    match at {
        [b'.', rest @ ..] if outer_blanks(rest).is_empty() => b"",
        _ if outer_blanks(at).is_empty() => b"",
        _ => hyphen(behind).unwrap_or(at),
    }
}

fn hyphen(behind: Bytes<'_>) -> Option<Bytes<'_>> {
    dash(behind).filter(|rest| starts_number(rest) || !word(rest).0.is_empty())
}

fn token(at: Bytes<'_>, comma: Comma) -> Flow<Option<Token<'_>>> {
    let found = match at {
        _ if starts_number(at) => figures(at, comma)?,
        [b'a'..=b'z' | b'A'..=b'Z', ..] => letters(at)?,
        [b'&', end @ ..] => Some((end, Word::And)),
        _ => mark(at)?,
    };
    Ok(found.map(|(end, word)| Token { word, at, end }))
}

type Piece<'a> = Flow<Option<(Bytes<'a>, Word)>>;

/// A number in figures, `7/16ths` and the denominator in `7 16ths` included.
fn figures(at: Bytes<'_>, comma: Comma) -> Piece<'_> {
    let (end, number) = match number(at, comma) {
        Err(nom::Err::Error(_)) => return Ok(None),
        found => found?,
    };
    let (letters, behind) = word(end);
    let (end, ending) = match letters {
        _ if number.form == Form::Decimal || !is_ordinal(letters) => (end, Ending::Cardinal),
        [.., b's' | b'S'] => (behind, Ending::Plural),
        _ => (behind, Ending::Singular),
    };
    let whole = Word::Numeral(Numeral::Digits(number.whole), ending);
    Ok(Some((end, if number.form == Form::Whole { whole } else { Word::Figures(number) })))
}

/// A whole word of letters, taken before it is looked up.
fn letters(at: Bytes<'_>) -> Piece<'_> {
    let (name, end) = word(at);
    match unit_word(name) {
        Some(unit) => full_stop(end, unit).map(|(end, _)| Some((end, Word::Unit(unit)))),
        None => Ok(lookup(name).map(|word| (end, word))),
    }
}

/// An inch or foot mark.
fn mark(at: Bytes<'_>) -> Piece<'_> {
    let (end, unit) = unit(at, at, &Number::whole(1))?;
    Ok(unit.map(|unit| (end, Word::Unit(unit))))
}
