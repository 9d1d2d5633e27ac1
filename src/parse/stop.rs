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
            Site::Unit => leftover(at, Kind::UnknownUnit),
            Site::End => leftover(at, Kind::Trailing),
        }
    }
}

#[inline(always)]
fn leftover(rest: Bytes<'_>, of_a_word: Kind) -> Option<Fault> {
    let at = rest.strip_prefix(b" ").unwrap_or(rest);
    match at {
        [b'-' | b'.', tail @ ..] => is_foreign(tail).then(|| fault(Kind::Trailing, at, behind_piece(at))),
        [b'a'..=b'z' | b'A'..=b'Z', ..] => is_foreign(at).then(|| fault(of_a_word, at, word(at).1)),
        _ => is_foreign(at).then(|| fault(Kind::Trailing, at, &at[1..])),
    }
}

/// Whether here stands what no notation knows, whatever is behind it: a sign without a meaning, or a word without one.
#[inline]
fn is_foreign(at: Bytes<'_>) -> bool {
    match at {
        [b'!' | b'#'..=b'%' | b':'..=b'@' | b'['..=b'`' | b'{'..=b'~', ..] => true,
        [b'a'..=b'z' | b'A'..=b'Z', b'a'..=b'z' | b'A'..=b'Z', ..] => !is_known(word(at).0),
        [letter @ (b'a'..=b'z' | b'A'..=b'Z'), ..] => !LONE_LETTERS.contains(letter),
        _ => false,
    }
}

/// The letters that are words by themselves.
const LONE_LETTERS: [u8; 8] = *b"amoxAMOX";

#[cold]
#[inline(never)]
fn is_known(word: Bytes<'_>) -> bool {
    lookup(word).is_some() || is_ordinal(word) || is_spoken(word)
}

#[cfg(test)]
mod tests {
    use super::{LONE_LETTERS, is_known};

    #[test]
    fn lone_letters_are_known_words() {
        let letters = (b'A'..=b'z').filter(u8::is_ascii_alphabetic);
        letters.for_each(|letter| assert_eq!(LONE_LETTERS.contains(&letter), is_known(&[letter]), "{letter}"));
    }
}
