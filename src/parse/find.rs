//! Lengths inside longer text: one at its start, or all that are in it. What a length is, is left to
//! `compound.rs`; a length in words is found only where it begins in figures.

use core::ops::Range;

use super::compound::{Compound, compound};
use super::error::{ParseError, ParseErrorKind as Kind};
use super::number::Number;
use super::parser::{Comma, LengthParser};
use super::qualifier::qualifier;
use super::refuse::{leftover, no_number};
use super::scan::{Bytes, Fault, dash, outer_blanks, starts_digit, starts_number, word};
use super::spoken::{gap, has_speech};
use super::unit::unit as unit_at;
use crate::length::Length;

/// A length found in a running text.
///
/// ```
/// use scantling::{Length, LengthParser, Unit};
///
/// let note = "6 shelves at 34 9/16, ripped to 11-1/32\"";
/// let found: Vec<_> = LengthParser::new().find_iter(note).filter_map(Result::ok).collect();
/// assert_eq!(found.len(), 2);
/// assert_eq!(found[1].length(), Length::fraction(353, 32, Unit::Inch));
/// assert_eq!(&note[found[1].span()], "11-1/32\"");
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Found {
    length: Length,
    span: Range<usize>,
}

impl Found {
    /// The length.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, Unit};
    ///
    /// let found = LengthParser::new().find_iter("cut at 30\"").next().unwrap()?;
    /// assert_eq!(found.length(), Length::new(30, Unit::Inch));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn length(&self) -> Length {
        self.length
    }

    /// The bytes of the text that it was read from.
    ///
    /// ```
    /// use scantling::LengthParser;
    ///
    /// assert_eq!(LengthParser::new().find_iter("cut at 30\"").next().unwrap()?.span(), 7..10);
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub fn span(&self) -> Range<usize> {
        self.span.clone()
    }
}

impl LengthParser {
    /// Reads one length at the start of a longer text, and says at which byte it ended.
    ///
    /// What follows may be anything but more of the length: a text that could go on to mean another one, in
    /// figures or in words, is refused as [`parse`](Self::parse) refuses it, and so is a bare whole number
    /// before a word. Shorthands are read only where they are the whole text, but for a bare number, which may be
    /// packed.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, Unit};
    ///
    /// let read = LengthParser::new().parse_prefix("6'-3 1/2\" from the floor")?;
    /// assert_eq!(read, (Length::fraction(151, 2, Unit::Inch), 9));
    /// assert!(LengthParser::new().parse_prefix("17 9/8 from the floor").is_err());
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// A [`ParseError`] with the bytes to blame when no length begins the text, or one that has two
    /// readings.
    pub fn parse_prefix(&self, text: &str) -> Result<(Length, usize), ParseError> {
        let (found, end) = prefix(text, *self).map_err(|fault| ParseError::explained(text, fault, *self))?;
        let length = self.shorthand.read(&text[..end]).unwrap_or(Ok(found.length))?;
        Ok((length, end))
    }

    /// All lengths in a running text, in order: a cut note, a message, a page of a catalog.
    ///
    /// A number counts as a length when it has a unit or a fraction; a bare `6` or `2.5` may be anything.
    /// A length that [`parse`](Self::parse) would refuse is given as the error, its bytes counted in the
    /// whole text, so that nothing is dropped in silence. Dates such as `3/4/26` and ranges such as `3-5` are passed over.
    ///
    /// ```
    /// use scantling::LengthParser;
    ///
    /// let note = "2 rails 32-1/2, stiles 5'-8\", back 17 9/8 x 41";
    /// let found: Vec<_> = LengthParser::new().find_iter(note).collect();
    /// assert_eq!(found.len(), 3);
    /// assert_eq!(found[2].as_ref().unwrap_err().span(), 35..41);
    /// ```
    #[must_use]
    pub fn find_iter<'a>(&self, text: &'a str) -> FindIter<'a> {
        // Blanks at the end would be gone over once for every size that ends nowhere.
        FindIter { parser: *self, text: text.trim_end(), at: 0 }
    }
}

/// The lengths of a running text, made by [`LengthParser::find_iter`].
///
/// ```
/// use scantling::LengthParser;
///
/// assert_eq!(LengthParser::new().find_iter("1/2 and 3/4 ply").count(), 2);
/// ```
#[derive(Clone, Debug)]
pub struct FindIter<'a> {
    parser: LengthParser,
    text: &'a str,
    at: usize,
}

impl Iterator for FindIter<'_> {
    type Item = Result<Found, ParseError>;

    fn next(&mut self) -> Option<Self::Item> {
        while let Some(start) = self.next_start() {
            let rest = &self.text[start..];
            match prefix(rest, self.parser) {
                Ok((found, end)) if is_evident(&found) => {
                    self.at = start + end;
                    return Some(Ok(Found { length: found.length, span: start..self.at }));
                }
                Ok((_, end)) => self.at = start + end,
                Err(fault) => {
                    if let Some((length, end)) = half_in_words(rest, self.parser) {
                        self.at = start + end;
                        return Some(Ok(Found { length, span: start..self.at }));
                    }
                    let error = ParseError::explained(rest, fault, self.parser).moved(start);
                    if is_about_a_length(error.kind()) {
                        self.at = behind_piece(self.text, error.span().end);
                        return Some(Err(error));
                    }
                    self.at = behind_number(self.text, start);
                }
            }
        }
        None
    }
}

impl core::iter::FusedIterator for FindIter<'_> {}

impl FindIter<'_> {
    /// Where the next number begins, with the sign that belongs to it.
    fn next_start(&self) -> Option<usize> {
        let mut last = self.text[..self.at].chars().rev();
        let (mut before, mut earlier) = (last.next().unwrap_or(' '), last.next().unwrap_or(' '));
        for (at, letter) in self.text[self.at..].char_indices() {
            let here = self.at + at;
            // The x between the lengths of a size is no part of a word.
            let times = matches!(before, 'x' | 'X') && !earlier.is_alphabetic();
            let inside = before.is_alphanumeric() && !times || matches!(before, '.' | ',' | '/' | '-');
            let inside = inside && !(before == '/' && matches!(earlier, '"' | '\'' | 'm' | 'n' | '″' | '′'));
            if !inside && starts_number(&self.text.as_bytes()[here..]) {
                return Some(here);
            }
            let signed = matches!(letter, '-' | '−') && before.is_whitespace();
            if signed && starts_number(&self.text.as_bytes()[here + letter.len_utf8()..]) {
                return Some(here);
            }
            (earlier, before) = (before, letter);
        }
        None
    }
}

/// A length that begins in figures and goes on in words, `48 and 7/16` or `6 foot two`: as many words as make one.
fn half_in_words(rest: &str, parser: LengthParser) -> Option<(Length, usize)> {
    const MOST_WORDS: usize = 9;
    const MOST_BYTES: usize = 256; // no text is looked at from end to end for each of its numbers
    let most = (0..=MOST_BYTES.min(rest.len())).rev().find(|end| rest.is_char_boundary(*end)).unwrap_or(0);
    let ends = rest[..most].char_indices().filter(|(_, letter)| letter.is_whitespace()).map(|(at, _)| at);
    let ends = ends.chain((most == rest.len()).then_some(most));
    let second = rest[..most].split_whitespace().nth(1)?;
    if !has_speech(second.as_bytes(), parser.comma) {
        return None;
    }
    let read = |end: usize| {
        let text = rest[..end].trim_end_matches(|letter: char| letter.is_whitespace() || matches!(letter, ',' | ';' | ':' | ')'));
        let length = parser.parse(text).ok()?;
        text.contains(char::is_alphabetic).then_some((length, text.len()))
    };
    ends.take(MOST_WORDS).filter_map(read).last()
}

/// A number with a unit or a fraction is a length; a bare one may be anything.
fn is_evident(found: &Compound<'_>) -> bool {
    found.first_unit.is_some() || found.last.number.has_fraction()
}

/// The end of a number that was passed over, with the fraction that belongs to it: the 5/8 of `2x4-92 5/8` is no
/// length of its own.
fn behind_number(text: &str, start: usize) -> usize {
    let (mut end, piece) = (start, behind_piece(text, start));
    loop {
        let run = text[end..].find(char::is_whitespace).map_or(text.len(), |at| end + at);
        let next = text[run..].trim_start();
        let word = next.split(char::is_whitespace).next().unwrap_or_default();
        end = run.max(piece);
        if !word.contains('/') || !word.starts_with(|first: char| first.is_ascii_digit()) || run >= text.len() {
            return end;
        }
        end = text.len() - next.len();
    }
}

/// The end of the word that a place stands in, or of the one character that is no part of a word.
fn behind_piece(text: &str, at: usize) -> usize {
    let is_part = |letter: char| letter.is_alphanumeric() || matches!(letter, '/' | '.' | ',');
    let rest = &text[at..];
    let other = rest.chars().next().map_or(0, char::len_utf8);
    at + match rest.find(|letter| !is_part(letter)).unwrap_or(rest.len()) {
        0 => other,
        word => word,
    }
}

/// Bare numbers, dates, ranges and names are no lengths gone wrong.
fn is_about_a_length(kind: Kind) -> bool {
    !matches!(
        kind,
        Kind::ChainedFraction
            | Kind::JoinedNumbers
            | Kind::FeetInchesSixteenths
            | Kind::TwoNumbers
            | Kind::NominalName
            | Kind::UnknownUnit
            | Kind::NotANumber
            | Kind::Trailing
    )
}

/// A length at the start of a text, and where it ends.
fn prefix(text: &str, parser: LengthParser) -> Result<(Compound<'_>, usize), Fault> {
    let bytes = text.as_bytes();
    let (rest, found) = match compound(bytes, parser) {
        Ok(read) => read,
        Err(nom::Err::Failure(fault)) => return Err(fault),
        Err(_) => return Err(no_number(bytes)),
    };
    let end = bytes.len() - rest.len();
    if outer_blanks(rest).is_empty() {
        return Ok((found, end));
    }
    let fault = leftover(bytes, rest, &found.last);
    if ends_here(rest, &fault, &found, parser) { Ok((found, end)) } else { Err(fault) }
}

/// Whether what follows a length is another matter, and not more of it that could not be read.
fn ends_here(rest: Bytes<'_>, fault: &Fault, found: &Compound<'_>, parser: LengthParser) -> bool {
    let (unit, fraction) = (found.last.unit.is_some(), found.last.number.has_fraction());
    let at = outer_blanks(rest);
    // `17 and 5/8`, `5 eighths`, `six foot two`, `36-twelve`: the rest of a length in words.
    let behind_mark = at.strip_prefix(b",").or_else(|| dash(at)).unwrap_or(at);
    let (next, behind) = word(behind_mark);
    let abbreviated = next.len() == 1 && behind.starts_with(b"."); // `16" o.c.`
    let goes_on = qualifier(next).is_none() && has_speech(next, parser.comma); // `8 ft above the floor` does not
    if !fraction && !abbreviated && (at.starts_with(b"&") || goes_on) {
        return false;
    }
    // `1/2 an inch`, `1/2 of a, foot`
    let of_what = behind_of_a(at, parser.comma);
    if fraction && !unit && matches!(unit_at(of_what, of_what, &Number::whole(1)), Ok((_, Some(_)))) {
        return false;
    }
    let marked = matches!(found.last.end, [_, ..]) && !unit_is_a_word(found);
    let glued = (rest[0].is_ascii_alphabetic() && !marked) || starts_digit(rest);
    match fault.kind {
        Kind::SizeNotLength | Kind::ToleranceNotLength => true,
        Kind::Qualified | Kind::Trailing => !glued,
        // A bare whole number before a word says nothing of a length.
        Kind::UnknownUnit => !glued && is_evident(found),
        Kind::TwoNumbers => fraction,
        Kind::ChainedFraction => unit,
        _ => matches!(at, [b'(' | b')', ..]) && !glued,
    }
}

/// Skips `of a`, `an` and the like, with commas and hyphens where speech has them.
fn behind_of_a(mut at: Bytes<'_>, comma: Comma) -> Bytes<'_> {
    loop {
        let (next, behind) = word(at);
        if !["of", "a", "an", "one"].iter().any(|known| next.eq_ignore_ascii_case(known.as_bytes())) {
            return at;
        }
        at = gap(behind, comma);
    }
}

/// Whether the last unit is in letters, to which other letters may not be glued.
fn unit_is_a_word(found: &Compound<'_>) -> bool {
    let mark = outer_blanks(found.last.behind_number);
    found.last.unit.is_none() || mark.first().is_some_and(u8::is_ascii_alphabetic)
}
