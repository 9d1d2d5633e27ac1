//! The words for strong and shy, all of them in one list: for called lengths, which read them, and for everything
//! else, which refuses them. What they say of a mark is left to `called.rs`.
//!
//! As crews use them: common practice, no source.

use super::called::Side;
use super::scan::{Bytes, lowercase};

/// What a word does in a qualifier.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Qualifier {
    /// It names the side of the mark: `strong`, `shy`.
    Side(Side),
    /// It says that it is not by much, or not for sure, and names no side: `hair`, `just`, `about`.
    Hedge,
    /// It joins a side to its mark: `shy of`, `less than`.
    Joint,
}

/// What a word says in a qualifier, in any capitals.
pub(super) fn qualifier(name: Bytes<'_>) -> Option<Qualifier> {
    lowercase_qualifier(lowercase(name, &mut [0; "approximately".len()])?)
}

/// The same for a word in small letters.
pub(super) fn lowercase_qualifier(name: Bytes<'_>) -> Option<Qualifier> {
    Some(match name {
        b"strong" | b"plus" | b"big" | b"heavy" | b"full" | b"fat" | b"good" | b"generous" | b"proud" | b"over" | b"past"
        | b"above" | b"more" | b"longer" | b"bigger" => Qualifier::Side(Side::Over),
        b"shy" | b"minus" | b"light" | b"scant" | b"bare" | b"small" | b"skinny" | b"weak" | b"under" | b"below" | b"less"
        | b"short" | b"shorter" | b"smaller" | b"almost" | b"nearly" => Qualifier::Side(Side::Under),
        b"just" | b"hair" | b"bit" | b"tad" | b"touch" | b"whisker" | b"shade" | b"smidge" | b"smidgen" | b"skosh"
        | b"little" | b"slightly" | b"barely" | b"about" | b"around" | b"roughly" | b"approximately" | b"approx" => {
            Qualifier::Hedge
        }
        b"of" | b"than" => Qualifier::Joint,
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::{Qualifier, qualifier};
    use crate::parse::called::Side;

    #[test]
    fn words_are_known_in_any_capitals() {
        for (word, expected) in [
            ("Strong", Some(Qualifier::Side(Side::Over))),
            ("SHY", Some(Qualifier::Side(Side::Under))),
            ("barely", Some(Qualifier::Hedge)),
            ("than", Some(Qualifier::Joint)),
            ("", None),
            ("eighth", None),
            ("approximatelyy", None),
        ] {
            assert_eq!(qualifier(word.as_bytes()), expected, "{word:?}");
        }
    }
}
