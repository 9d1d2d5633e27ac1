//! Where the lengths of a size are apart: at an `x`, `×`, `*` or `by`, or, behind a length that names its axis, at a
//! comma, an `and` or a blank. What the pieces say is left to `size.rs`.

use super::axis::{Axis, Place, axis_place, split_axis};
use super::error::{ParseError, ParseErrorKind as Kind};
use super::piece::Piece;
use super::scan::starts_number;

/// The pieces between the separators.
pub(super) fn split(whole: Piece<'_>) -> Result<([Piece<'_>; 3], usize), ParseError> {
    let next = if separator(whole.text()).is_some() { next_separator } else { next_named };
    let (mut pieces, mut count, mut rest, mut blanks) = ([whole; 3], 0, whole, false);
    while let Some((from, to)) = next(rest) {
        let (piece, behind) = rest.around(from, to);
        blanks |= from == to;
        if count == 2 {
            return Err(behind.refuse(Kind::TooManyLengths));
        }
        pieces[count] = piece;
        (count, rest) = (count + 1, behind);
    }
    pieces[count] = rest;
    // An axis between two numbers could be that of either, unless each has its own.
    let alone = |piece: &Piece<'_>| split_axis(*piece).1.is_none();
    if count == 0 || (blanks && pieces[..=count].iter().any(alone)) {
        Err(whole.refuse(Kind::NotASize))
    } else {
        Ok((pieces, count + 1))
    }
}

/// An `x` and the like, or what is between lengths that name their axis: `1/2" thick, 24" x 36"`.
fn next_separator(piece: Piece<'_>) -> Option<(usize, usize)> {
    let times = separator(piece.text());
    let until = times.map_or(piece.text().len(), |(from, _)| from);
    behind_axis(piece, until, comma_or_and).or(times)
}

/// What is between lengths that all name their axis: `24 W, 36 H`, `24 wide and 36 high`, `W 24 H 36`.
fn next_named(piece: Piece<'_>) -> Option<(usize, usize)> {
    let until = piece.text().len();
    let between = behind_axis(piece, until, comma_or_and);
    between.or_else(|| blank_behind_axis(piece))
}

/// The first place up to `until` where something separates and a length with its axis stands before it.
fn behind_axis(piece: Piece<'_>, until: usize, separates: impl Fn(&str) -> Option<usize>) -> Option<(usize, usize)> {
    let text = piece.text();
    let ends =
        text.char_indices().take_while(|(at, _)| *at < until).filter_map(|(at, _)| Some((at, at + separates(&text[at..])?)));
    ends.into_iter().find(|(from, _)| split_axis(piece.part(0, *from)).1.is_some())
}

/// The bytes of a comma, a semicolon or an `and` with its blanks.
fn comma_or_and(text: &str) -> Option<usize> {
    match text.as_bytes() {
        [b',' | b';', ..] => Some(1),
        [b' ', b'a' | b'A', b'n' | b'N', b'd' | b'D', b' ', ..] => Some(" and ".len()),
        _ => None,
    }
}

/// A blank between a length with its axis behind it and a number, or one with its axis in front and another axis.
fn blank_behind_axis(piece: Piece<'_>) -> Option<(usize, usize)> {
    let text = piece.text();
    // The first of each run of blanks.
    let is_first = |at: &usize| !text[..*at].ends_with(char::is_whitespace) && text[*at..].starts_with(char::is_whitespace);
    let blanks = text.char_indices().map(|(at, _)| at).filter(is_first);
    let is_end = |at: &usize| {
        let behind = text[*at..].trim_start();
        let word = behind.split(|letter: char| !letter.is_ascii_alphabetic()).next().unwrap_or_default();
        match axis_place(piece.part(0, *at)) {
            Some(Place::Behind) => starts_number(behind.as_bytes()),
            Some(Place::InFront) => Axis::named(word).is_some(),
            None => false,
        }
    };
    blanks.into_iter().find(is_end).map(|at| (at, at))
}

/// The bytes of the first `x`, `X`, `×`, `*` or `by` that stands between two lengths.
pub(super) fn separator(text: &str) -> Option<(usize, usize)> {
    let mut word = 0;
    for (at, letter) in text.char_indices().chain([(text.len(), ' ')]) {
        if is_times(letter) {
            return Some((at, at + letter.len_utf8()));
        }
        if letter.is_ascii_alphabetic() {
            continue;
        }
        let name = &text[word..at];
        if name.eq_ignore_ascii_case("by") || name.eq_ignore_ascii_case("x") {
            return Some((word, at));
        }
        // Glued to a unit or an axis, as in `600mmx300mm`; `ex` and `six` are words.
        if let Some(unit) = name.strip_suffix(['x', 'X']).filter(|unit| is_glued(unit)) {
            return Some((word + unit.len(), at));
        }
        // Or to an axis behind it: `H24xW36`.
        if name.strip_prefix(['x', 'X']).is_some_and(|axis| Axis::named(axis).is_some()) {
            return Some((word, word + 1));
        }
        word = at + letter.len_utf8();
    }
    None
}

/// The sign between the lengths of a size, and what keyboards and catalogs make of it.
pub(super) fn is_times(letter: char) -> bool {
    matches!(letter, '×' | '*' | '\u{2715}' | '\u{2716}' | '\u{2A2F}')
}

fn is_glued(word: &str) -> bool {
    Axis::named(word).is_some() || ["in", "ft", "yd", "mm", "cm", "m"].iter().any(|unit| word.eq_ignore_ascii_case(unit))
}
