//! Takes the qualifier of a called length off its mark: `strong`, `a hair under`, `by 1/40`, in front or behind. The
//! words are in `qualifier.rs`; what a side means for the length is left to `called.rs`.

use super::called::{Amount, Side};
use super::error::{ParseError, ParseErrorKind as Kind};
use super::parser::LengthParser;
use super::piece::Piece;
use super::qualifier::{Qualifier, qualifier};
use super::shorthand::DASHES;
use crate::length::{Length, Unit};

/// What a text says of its mark.
#[derive(Clone, Copy)]
pub(super) struct Phrase {
    pub(super) side: Side,
    pub(super) amount: Amount,
}

/// What a text says of its mark, and the mark.
pub(super) fn phrase(whole: Piece<'_>, parser: LengthParser) -> Result<(Phrase, Piece<'_>), ParseError> {
    if let Some((mark, side, amount)) = said_behind(whole).or_else(|| said_in_front(whole, parser)) {
        // As with a tolerance: a bare amount is inches, and only behind inches.
        if amount.is_bare(parser) && !mark.is_bare(parser) && mark.last_unit(parser) != Some(Unit::Inch) {
            return Err(amount.refuse_unit(mark.last_unit(parser)));
        }
        mark.read(parser)?; // the first of two that cannot be read is the one to blame
        return Ok((Phrase { side, amount: Amount::Said(amount.read(parser)?) }, mark));
    }
    let (mut mark, mut side, mut count) = in_front(whole).map_or((whole, Side::On, 0_u8), |(mark, side)| (mark, side, 1));
    while let Some((before, found)) = behind(mark) {
        if side != Side::On && side != found {
            return Err(whole.refuse(Kind::QualifiersDisagree));
        }
        (mark, side, count) = (before, found, count.saturating_add(1));
    }
    Ok((Phrase { side, amount: Amount::Steps(count) }, mark))
}

/// A qualifier that says how much: `strong by 1/40`, `shy by 1/64`.
fn said_behind(piece: Piece<'_>) -> Option<(Piece<'_>, Side, Piece<'_>)> {
    let text = piece.text();
    let by = |at: &usize| text.get(*at..at + 4).is_some_and(|word| word.eq_ignore_ascii_case(" by "));
    let by = text.char_indices().rev().map(|(at, _)| at).find(by)?;
    let (before, amount) = piece.around(by, by + 4);
    if without_hedges(amount).is_some_and(|rest| rest.text().is_empty()) {
        return None; // `strong by a hair`
    }
    let (mark, side) = behind(before)?;
    Some((mark, side, amount))
}

/// The same the other way round: `1/16 shy of 3/4`, `a sixteenth over 5/8`.
fn said_in_front(piece: Piece<'_>, parser: LengthParser) -> Option<(Piece<'_>, Side, Piece<'_>)> {
    let text = piece.text();
    let is_letter = |letter: char| letter.is_ascii_alphabetic();
    let starts = text.char_indices().skip(1).filter(|(at, letter)| is_letter(*letter) && text[..*at].ends_with(' '));
    starts.take(MOST_WORDS).find_map(|(at, _)| {
        let (amount, rest) = piece.around(at, at);
        let (word, behind) = leading(rest)?;
        let side = side_of(word).filter(|_| !is_sign(word))?;
        let mark = joint(behind);
        // Without `of` or `than` only the words for a place; `1 over 4` may be a fourth.
        let (said, length) = (amount.read(parser).ok()?, mark?.read(parser).ok()?);
        let counts = amount.is_bare(parser) && said.in_unit(parser.default_unit).is_integer();
        let told = mark?.text().len() < behind.text().len() || (is_place(word) && !counts);
        (told && Length::ZERO < said && said < length).then_some((mark?, side, amount))
    })
}

/// So many words of an amount are looked at.
const MOST_WORDS: usize = 16;

/// A qualifier in front: `a hair over 11-1/4`, `just shy of 3/4`, `a strong 5/8`.
fn in_front(piece: Piece<'_>) -> Option<(Piece<'_>, Side)> {
    let mut rest = piece;
    while let Some((_, behind)) = leading(rest).filter(|(word, _)| is_hedge(word) || is_article(word)) {
        rest = behind;
    }
    let (word, behind) = leading(rest)?;
    // A sign in front of a number is a sign: `minus 1/2` is a length below zero, `1/2 minus` is a shy one.
    let side = side_of(word).filter(|_| !is_sign(word))?;
    Some((joint(behind)?, side))
}

/// The qualifier that ends a piece, and what stands before it: `strong`, `+`, `a hair over`, `plus a hair`, `and a bit`.
fn behind(piece: Piece<'_>) -> Option<(Piece<'_>, Side)> {
    let hedged = without_hedges(piece);
    let rest = hedged.unwrap_or(piece);
    let rest = last(rest).filter(|(_, word)| hedged.is_some() && is_among(word, &["by"])).map_or(rest, |(before, _)| before);
    let (before, word) = last(rest)?;
    let and = hedged.is_some() && (word == "&" || word.eq_ignore_ascii_case("and"));
    let side = if and { Side::Over } else { side_of(word)? };
    let mark = last_comma(without_hedges(before).unwrap_or(before));
    // A sign alone, or two of them, is no length with a qualifier.
    (!mark.text().is_empty()).then_some((mark, side))
}

/// A piece without the hedges that end it, and the articles before them; `None` when it has none.
fn without_hedges(piece: Piece<'_>) -> Option<Piece<'_>> {
    let mut found = None;
    while let Some((before, _)) =
        last(found.unwrap_or(piece)).filter(|(_, word)| is_hedge(word) || (found.is_some() && is_article(word)))
    {
        found = Some(before);
    }
    found
}

fn last_comma(piece: Piece<'_>) -> Piece<'_> {
    piece.part(0, piece.text().trim_end_matches(',').len())
}

/// The last word or sign of a piece, and what stands before it.
fn last(piece: Piece<'_>) -> Option<(Piece<'_>, &str)> {
    let text = piece.text();
    let text = text.strip_suffix('.').unwrap_or(text);
    let end = text.chars().next_back()?;
    let is_word = end.is_ascii_alphabetic();
    let start = match end {
        _ if is_word => text.trim_end_matches(|letter: char| letter.is_ascii_alphabetic()).len(),
        _ => text.len() - end.len_utf8(),
    };
    // `5/8-strong`
    let before = text[..start].strip_suffix(DASHES).filter(|_| is_word).unwrap_or(&text[..start]);
    Some((last_comma(piece.part(0, before.len())), &text[start..]))
}

/// The first word of a piece, and what stands behind it.
fn leading(piece: Piece<'_>) -> Option<(&str, Piece<'_>)> {
    let text = piece.text();
    let end = text.find(|letter: char| !letter.is_ascii_alphabetic())?;
    Some((&text[..end], piece.part(end, text.len())))
}

/// What stands behind an `of` or a `than`, or the whole piece.
fn joint(piece: Piece<'_>) -> Option<Piece<'_>> {
    let behind = leading(piece).filter(|(word, _)| qualifier(word.as_bytes()) == Some(Qualifier::Joint));
    Some(behind.map_or(piece, |(_, behind)| behind)).filter(|mark| !mark.text().is_empty())
}

fn side_of(word: &str) -> Option<Side> {
    match (word, qualifier(word.as_bytes())) {
        ("+", _) => Some(Side::Over),
        ("-" | "−", _) => Some(Side::Under),
        (_, Some(Qualifier::Side(side))) => Some(side),
        _ => None,
    }
}

/// Whether any word of a qualifier says on which side of the mark it is.
pub(super) fn names_side(qualifier: &str) -> bool {
    qualifier.split_whitespace().any(|word| side_of(word).is_some())
}

fn is_hedge(word: &str) -> bool {
    qualifier(word.as_bytes()) == Some(Qualifier::Hedge)
}

fn is_among(word: &str, words: &[&str]) -> bool {
    words.iter().any(|known| word.eq_ignore_ascii_case(known))
}

fn is_article(word: &str) -> bool {
    is_among(word, &["a", "an"])
}

fn is_sign(word: &str) -> bool {
    is_among(word, &["plus", "minus"])
}

fn is_place(word: &str) -> bool {
    is_among(word, &["over", "under", "past", "above", "below"])
}
