//! Where the straight line of `quick.rs` stopped, and what is wrong there when that is clear at once: something stands
//! there that no notation knows, in figures or in words. Whatever could go on in a rarer spelling is left to the
//! grammar, which refuses the same texts for the same bytes.

use super::error::ParseErrorKind as Kind;
use super::refuse::{behind_piece, fault};
use super::scan::{Bytes, Fault, word};
use super::spoken::is_spoken;
use super::unit::{is_ordinal, lookup};

/// What was due where it stopped.
#[derive(Clone, Copy)]
pub(super) enum Site {
    Number,
    /// The slash of a fraction behind a whole number and a blank.
    Slash,
    /// The same behind a hyphen.
    JoinedSlash,
    Denominator,
    /// A fraction part below one; it ends where it stopped.
    Improper,
    Unit,
    End,
    /// Nothing that is clear at once.
    Unsure,
}

#[derive(Clone, Copy)]
pub(super) struct Stop<'a> {
    site: Site,
    /// The text from the number on that it stopped in.
    from: Bytes<'a>,
    at: Bytes<'a>,
}

impl<'a> Stop<'a> {
    pub(super) const UNSURE: Self = Self { site: Site::Unsure, from: &[], at: &[] };

    #[inline(always)]
    pub(super) const fn at<T>(site: Site, from: Bytes<'a>, at: Bytes<'a>) -> Result<T, Self> {
        Err(Self { site, from, at })
    }

    /// This stop, but behind feet not at an improper fraction: what to write for one has the feet in it, which the grammar knows.
    #[inline(always)]
    pub(super) const fn behind_feet(self) -> Self {
        if matches!(self.site, Site::Improper) { Self::UNSURE } else { self }
    }

    /// A sign or a lone letter without a meaning where a number, a unit or the end was due, and the bytes left from it
    /// on: the commonest slip, told from one byte.
    #[inline(always)]
    pub(super) fn lone(self) -> Option<(Kind, u8, usize)> {
        let (of_a_sign, of_a_letter, at) = match self.site {
            Site::Number => (Kind::NotANumber, None, self.at),
            Site::Unit => (Kind::Trailing, Some(Kind::UnknownUnit), behind_blank(self.at)),
            Site::End => (Kind::Trailing, Some(Kind::Trailing), behind_blank(self.at)),
            _ => return None,
        };
        let (byte, tail) = at.split_first()?;
        let kind = match FOREIGN[usize::from(*byte)] {
            Foreign::Sign => of_a_sign,
            Foreign::Letter if !tail.first().is_some_and(u8::is_ascii_alphabetic) => of_a_letter?,
            _ => return None,
        };
        Some((kind, *byte, at.len()))
    }

    /// What is wrong with the text, if that is clear.
    #[inline(always)]
    pub(super) fn fault(self) -> Option<Fault> {
        let Self { site, from, at } = self;
        match site {
            Site::Unsure => None,
            Site::Number => is_foreign(at).then(|| fault(Kind::NotANumber, at, behind_piece(at))),
            Site::Slash => is_foreign(at).then(|| fault(Kind::TwoNumbers, from, at)),
            Site::JoinedSlash => is_foreign(at).then(|| fault(Kind::JoinedNumbers, from, at)),
            Site::Denominator => is_foreign(at).then(|| fault(Kind::MissingDenominator, from, at)),
            Site::Improper => is_foreign(at).then(|| fault(Kind::ImproperFraction, from, at)),
            Site::Unit => leftover(at, Kind::UnknownUnit),
            Site::End => leftover(at, Kind::Trailing),
        }
    }
}

#[inline(always)]
fn behind_blank(rest: Bytes<'_>) -> Bytes<'_> {
    rest.strip_prefix(b" ").unwrap_or(rest)
}

#[inline(always)]
fn leftover(rest: Bytes<'_>, of_a_word: Kind) -> Option<Fault> {
    let at = behind_blank(rest);
    match at {
        [b'-' | b'.', tail @ ..] => is_foreign(tail).then(|| fault(Kind::Trailing, at, behind_piece(at))),
        [b'a'..=b'z' | b'A'..=b'Z', ..] => is_foreign(at).then(|| fault(of_a_word, at, word(at).1)),
        _ => is_foreign(at).then(|| fault(Kind::Trailing, at, &at[1..])),
    }
}

/// Whether here stands what no notation knows, whatever is behind it: a sign without a meaning, or a word without one.
#[inline]
fn is_foreign(at: Bytes<'_>) -> bool {
    let Some((first, tail)) = at.split_first() else { return false };
    match FOREIGN[usize::from(*first)] {
        Foreign::Sign => true,
        _ if first.is_ascii_alphabetic() && tail.first().is_some_and(u8::is_ascii_alphabetic) => !is_known(word(at).0),
        known => matches!(known, Foreign::Letter),
    }
}

/// What a byte is that stands in no notation.
#[derive(Clone, Copy)]
enum Foreign {
    No,
    Sign,
    /// As a word by itself.
    Letter,
}

#[allow(clippy::cast_possible_truncation)] // below 256
const FOREIGN: [Foreign; 256] = {
    let (mut table, mut at) = ([Foreign::No; 256], 0);
    while at < 256 {
        table[at] = match at as u8 {
            b'!' | b'#'..=b'%' | b':'..=b'@' | b'\\'..=b'`' | b'{'..=b'~' => Foreign::Sign,
            b'a' | b'm' | b'o' | b'x' | b'A' | b'M' | b'O' | b'X' => Foreign::No,
            b'a'..=b'z' | b'A'..=b'Z' => Foreign::Letter,
            _ => Foreign::No,
        };
        at += 1;
    }
    table
};

#[cold]
#[inline(never)]
fn is_known(word: Bytes<'_>) -> bool {
    lookup(word).is_some() || is_ordinal(word) || is_spoken(word)
}

#[cfg(test)]
mod tests {
    use super::{FOREIGN, Foreign, is_known};

    #[test]
    fn lone_letters_are_known_words() {
        let letters = (b'A'..=b'z').filter(u8::is_ascii_alphabetic);
        let is_word = |letter: u8| matches!(FOREIGN[usize::from(letter)], Foreign::No);
        letters.for_each(|letter| assert_eq!(is_word(letter), is_known(&[letter]), "{letter}"));
    }
}
