//! What a fraction looks like: plain digits round a slash, or one raised sign. Which fraction it is, is
//! left to `pieces.rs`.
//!
//! Code points: The Unicode Standard, version 15, charts "Latin-1 Supplement" (U+00B2 to U+00BE), "Number
//! Forms" (U+2150 to U+215E), "Superscripts and Subscripts" (U+2070 to U+2089), "General Punctuation" (U+2044).

use core::fmt::{self, Write};

use super::Join;

/// Writes a fraction, without what joins it to a whole number.
pub(super) fn write_fraction((num, den): (u128, u128), join: Join, out: &mut impl Write) -> fmt::Result {
    match (join, single_sign(num, den)) {
        (Join::Space | Join::Hyphen, _) => write!(out, "{num}/{den}"),
        (Join::Glyph, Some(sign)) => out.write_str(sign),
        (Join::Glyph, None) => {
            write!(Digits { out, forms: &RAISED }, "{num}")?;
            out.write_str("⁄")?;
            write!(Digits { out, forms: &LOWERED }, "{den}")
        }
    }
}

/// The fractions that are one character.
fn single_sign(num: u128, den: u128) -> Option<&'static str> {
    Some(match (num, den) {
        (1, 2) => "½",
        (1, 3) => "⅓",
        (2, 3) => "⅔",
        (1, 4) => "¼",
        (3, 4) => "¾",
        (1, 5) => "⅕",
        (2, 5) => "⅖",
        (3, 5) => "⅗",
        (4, 5) => "⅘",
        (1, 6) => "⅙",
        (5, 6) => "⅚",
        (1, 7) => "⅐",
        (1, 8) => "⅛",
        (3, 8) => "⅜",
        (5, 8) => "⅝",
        (7, 8) => "⅞",
        (1, 9) => "⅑",
        (1, 10) => "⅒",
        _ => return None,
    })
}

const RAISED: [&str; 10] = ["⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"];
const LOWERED: [&str; 10] = ["₀", "₁", "₂", "₃", "₄", "₅", "₆", "₇", "₈", "₉"];

/// Passes digits on in another form, each as it comes.
pub(super) struct Digits<'a, W> {
    pub(super) out: &'a mut W,
    /// From zero to nine.
    pub(super) forms: &'a [&'static str; 10],
}

impl<W: Write> Write for Digits<'_, W> {
    fn write_str(&mut self, digits: &str) -> fmt::Result {
        digits.bytes().try_for_each(|digit| self.out.write_str(self.forms[usize::from(digit - b'0')]))
    }
}
