//! The signs of a calculation in every spelling, words among them. What a hyphen or a slash does where it
//! may belong to a number instead is left to `readings.rs`.

use crate::parse::glyph::{Glyph, glyph};
use crate::parse::scan::{Bytes, blanks, dash, word};

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Operator {
    Plus,
    Minus,
    Times,
    Over,
}

impl Operator {
    pub(super) const fn scales(self) -> bool {
        matches!(self, Self::Times | Self::Over)
    }
}

/// The sign that stands here, and the text behind it.
pub(super) fn operator(input: Bytes<'_>) -> Option<(Operator, Bytes<'_>)> {
    match input {
        [b'+', b'/', b'-', ..] => None, // a tolerance
        [b'+', rest @ ..] => Some((Operator::Plus, rest)),
        [b'-', rest @ ..] => Some((Operator::Minus, rest)),
        [b'*', rest @ ..] => Some((Operator::Times, rest)),
        [b'/', rest @ ..] => Some((Operator::Over, rest)),
        [b'a'..=b'z' | b'A'..=b'Z', ..] => worded(input),
        _ => match glyph(input)? {
            (Glyph::Dash | Glyph::Minus, rest) => Some((Operator::Minus, rest)),
            (Glyph::Times | Glyph::Dot, rest) => Some((Operator::Times, rest)),
            (Glyph::Obelus, rest) => Some((Operator::Over, rest)),
            // Without a blank it is a fraction's.
            (Glyph::Slash, rest) if blanks(rest).len() < rest.len() => Some((Operator::Over, rest)),
            _ => None,
        },
    }
}

fn worded(input: Bytes<'_>) -> Option<(Operator, Bytes<'_>)> {
    const NAMES: [(&str, Operator); 3] = [("plus", Operator::Plus), ("minus", Operator::Minus), ("times", Operator::Times)];
    let (name, rest) = word(input);
    if name.eq_ignore_ascii_case(b"divided") {
        let (by, rest) = word(blanks(rest));
        return by.eq_ignore_ascii_case(b"by").then_some((Operator::Over, rest));
    }
    let known = NAMES.iter().find(|(known, _)| name.eq_ignore_ascii_case(known.as_bytes()));
    // `minus-3/4` would be minus three quarters to one, and minus minus three quarters to another.
    known.filter(|_| dash(rest).is_none()).map(|(_, operator)| (*operator, rest))
}
