//! What is wrong with words before or behind a length: qualifiers, a second number, a size, a calculation.
//! Everything that is no matter of words is left to the plain `refuse.rs`.

use super::ambiguity::Outcome;
use super::grammar::number;
use super::length::Spoken;
use super::pair::side_by_side;
use super::tokens::{Token, Tokens};
use super::words::{Numeral, Word};
use crate::parse::compound::minus;
use crate::parse::error::ParseErrorKind as Kind;
use crate::parse::number::{Form, Number};
use crate::parse::parser::Comma;
use crate::parse::reading::{Reading, Refusal};
use crate::parse::refuse::{leftover as plain_leftover, names_thickness};
use crate::parse::scan::{Bytes, blanks, dash, outer_blanks};

/// `just shy of 3/4`: a qualifier in front of a number.
pub(super) fn leaning_in_front(tokens: &[Token<'_>]) -> Option<Refusal> {
    let (words, behind) = tokens.split_at(leaning(tokens));
    let is_number = |token: &Token<'_>| {
        matches!(token.word, Word::Numeral(..) | Word::Part(..) | Word::Figures(_) | Word::Point | Word::Unit(_))
    };
    qualified(words).filter(|_| begins_number(behind) || behind.first().is_some_and(is_number))
}

/// Something behind a complete length.
pub(super) fn leftover<'a>(text: Bytes<'a>, tokens: &[Token<'a>], words: &Tokens<'a>, spoken: &Spoken<'a>) -> Refusal {
    let at = tokens.first().map_or(words.rest, |token| token.at);
    match tokens {
        [] => subtraction(at, words.comma),
        [Token { word: Word::Sign { .. }, end, .. }, behind @ ..] if begins_number(behind) => {
            Some(Refusal::new(Kind::Arithmetic, at, end))
        }
        [Token { word: Word::By, .. }, behind @ ..] if begins_number(behind) => Some(size(text, behind, spoken)),
        _ => qualified(&tokens[..leaning(tokens)])
            .or_else(|| two_numbers(tokens, words.comma, spoken))
            .or_else(|| ordinal_in_figures(tokens)),
    }
    .unwrap_or_else(|| plain_leftover(text, at, &spoken.last).into())
}

fn begins_number(tokens: &[Token<'_>]) -> bool {
    number(tokens).length().is_some()
}

/// How many words at the front only qualify: `strong`, `a hair over`, `just shy of`, `and a hair`.
fn leaning(tokens: &[Token<'_>]) -> usize {
    if let [Token { word: Word::And, .. }, Token { word: Word::Article, .. }, Token { word: Word::Qualifier, .. }, ..] = tokens {
        return 1 + leaning(&tokens[1..]);
    }
    let leans = |token: &Token<'_>| matches!(token.word, Word::Qualifier | Word::Over | Word::Sign { .. });
    let run = tokens.iter().take_while(|token| leans(token) || matches!(token.word, Word::Article | Word::Of));
    let Some(last) = tokens[..run.count()].iter().rposition(leans) else { return 0 };
    let of = matches!(tokens.get(last + 1), Some(Token { word: Word::Of, .. }));
    last + 1 + usize::from(of)
}

fn qualified(words: &[Token<'_>]) -> Option<Refusal> {
    Some(Refusal::new(Kind::Qualified, words.first()?.at, words.last()?.end))
}

/// A dash or a minus sign with blanks, and a number in words behind it.
fn subtraction(at: Bytes<'_>, comma: Comma) -> Option<Refusal> {
    let tail = dash(at).or_else(|| minus(at))?;
    let tokens = Tokens::read(blanks(tail), comma).ok()?;
    begins_number(tokens.all()).then(|| Refusal::new(Kind::Arithmetic, at, tail))
}

/// `two by four`: the name of a board if it sounds like one.
fn size(text: Bytes<'_>, behind: &[Token<'_>], spoken: &Spoken<'_>) -> Refusal {
    let (last, width) = (&spoken.last, number(behind));
    let is_width = matches!(width, Outcome::One(_, Number { whole: ..=16, form: Form::Whole, .. }));
    let unit = width.length().and_then(|length| behind.get(length)).is_some_and(|token| matches!(token.word, Word::Unit(_)));
    let is_name = spoken.alone && last.unit.is_none() && names_thickness(&last.number) && is_width && !unit;
    let kind = if is_name { Kind::NominalName } else { Kind::SizeNotLength };
    Refusal::new(kind, outer_blanks(text), &text[text.trim_ascii_end().len()..])
}

/// A number behind a number without a unit: a crew code, if there are two whole ones and no more.
fn two_numbers(tokens: &[Token<'_>], comma: Comma, spoken: &Spoken<'_>) -> Option<Refusal> {
    let last = &spoken.last;
    if last.unit.is_some() {
        return None;
    }
    let pair = side_by_side(last.start, comma).filter(|pair| spoken.alone && is_all(tokens, pair.end));
    if let Some(pair) = pair {
        let readings = [Reading::new(&pair.first, None), Reading::new(&pair.second, None)];
        return Some(Refusal::new(Kind::CrewCode, last.start, pair.end).with(readings));
    }
    let behind = match tokens {
        [Token { word: Word::And, .. }, behind @ ..] => behind,
        _ => tokens,
    };
    let second = number(behind);
    let kind = match (last.number.form, second) {
        (Form::Decimal, Outcome::One(_, second)) if second.has_fraction() => Kind::DecimalWithFraction,
        _ => Kind::TwoNumbers,
    };
    Some(Refusal::new(kind, last.start, behind[second.length()? - 1].end))
}

/// `six feet 16ths`: in figures, but no number that could be a second one.
fn ordinal_in_figures(tokens: &[Token<'_>]) -> Option<Refusal> {
    let token = tokens.first().filter(|token| matches!(token.word, Word::Numeral(Numeral::Digits(_), _)))?;
    Some(Refusal::new(Kind::Trailing, token.at, token.end))
}

/// Whether neither a number nor a unit follows.
fn is_all(tokens: &[Token<'_>], end: Bytes<'_>) -> bool {
    let mut behind = tokens.iter().skip_while(|token| token.at.len() > end.len());
    !behind.next().is_some_and(|token| matches!(token.word, Word::Unit(_) | Word::Numeral(..) | Word::Figures(_)))
}
