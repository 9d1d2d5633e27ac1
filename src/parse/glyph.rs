//! Characters past ASCII that a shop's text is full of: fraction glyphs, raised and lowered digits,
//! primes and curly quotes, wide and narrow blanks. What they add up to is left to the other files.
//!
//! Code points and names: The Unicode Standard, version 15, chart "Number Forms" (U+2150 to U+218F),
//! "Superscripts and Subscripts" (U+2070 to U+209F), "General Punctuation" (U+2000 to U+206F).

use super::scan::Bytes;

/// What one character past ASCII stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Glyph {
    Blank,
    /// A hyphen or an en dash.
    Dash,
    /// The true minus sign, which subtracts and never joins.
    Minus,
    /// A prime or a quote, single: feet.
    Single,
    /// The same, double: inches.
    Double,
    Slash,
    /// A whole fraction in one character.
    Vulgar(u8, u8),
    Raised(u8),
    Lowered(u8),
    /// The numerator one with its slash, U+215F.
    OneOver,
    /// The sign between the lengths of a size, which also multiplies.
    Times,
    /// A dot in the middle of the line, which multiplies.
    Dot,
    /// The division sign.
    Obelus,
    Other,
}

/// The character at the start of the input and what follows it; `None` when it is ASCII or the end.
#[inline]
pub(super) fn glyph(input: Bytes<'_>) -> Option<(Glyph, Bytes<'_>)> {
    match input {
        [0x80..=0xFF, ..] => Some(decode(input)),
        _ => None,
    }
}

#[cold]
fn decode(input: Bytes<'_>) -> (Glyph, Bytes<'_>) {
    let (found, rest) = split_char(input);
    (found.map_or(Glyph::Other, meaning), rest)
}

/// One whole character off the front. The bytes were a `str` and are only ever cut at characters, so
/// the lead byte can be trusted; what is no character all the same comes out as none, as does one of four bytes, of
/// which there is no glyph.
#[inline]
pub(super) fn split_char(input: Bytes<'_>) -> (Option<char>, Bytes<'_>) {
    let tail = |byte: &u8| u32::from(byte & 0x3F);
    let (code, rest) = match input {
        [] => return (None, input),
        [0xF0..=0xFF, _, _, _, rest @ ..] => return (None, rest),
        [lead @ 0xE0..=0xEF, a, b, rest @ ..] => (u32::from(lead & 0x0F) << 12 | tail(a) << 6 | tail(b), rest),
        [lead @ 0xC0..=0xDF, a, rest @ ..] => (u32::from(lead & 0x1F) << 6 | tail(a), rest),
        [other, rest @ ..] => (u32::from(*other), rest),
    };
    (char::from_u32(code), rest)
}

fn meaning(character: char) -> Glyph {
    match character {
        '\u{A0}' | '\u{2000}'..='\u{200A}' | '\u{202F}' | '\u{205F}' | '\u{3000}' => Glyph::Blank,
        '\u{2010}' | '\u{2011}' | '\u{2013}' => Glyph::Dash,
        '\u{2212}' => Glyph::Minus,
        '′' | '‘' | '’' | '´' | 'ʹ' => Glyph::Single,
        '″' | '“' | '”' | 'ʺ' => Glyph::Double,
        '⁄' | '∕' => Glyph::Slash,
        '⅟' => Glyph::OneOver,
        '×' => Glyph::Times,
        '·' | '⋅' => Glyph::Dot,
        '÷' => Glyph::Obelus,
        _ => raised_or_lowered(character).or_else(|| vulgar(character)).unwrap_or(Glyph::Other),
    }
}

#[allow(clippy::cast_possible_truncation)] // one digit
fn raised_or_lowered(character: char) -> Option<Glyph> {
    match character {
        '²' => Some(Glyph::Raised(2)),
        '³' => Some(Glyph::Raised(3)),
        '¹' => Some(Glyph::Raised(1)),
        '⁰' | '⁴'..='⁹' => Some(Glyph::Raised((character as u32 - '⁰' as u32) as u8)),
        '₀'..='₉' => Some(Glyph::Lowered((character as u32 - '₀' as u32) as u8)),
        _ => None,
    }
}

fn vulgar(character: char) -> Option<Glyph> {
    let (num, den) = match character {
        '¼' => (1, 4),
        '½' => (1, 2),
        '¾' => (3, 4),
        '⅐' => (1, 7),
        '⅑' => (1, 9),
        '⅒' => (1, 10),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        '⅕' => (1, 5),
        '⅖' => (2, 5),
        '⅗' => (3, 5),
        '⅘' => (4, 5),
        '⅙' => (1, 6),
        '⅚' => (5, 6),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        '↉' => (0, 3),
        _ => return None,
    };
    Some(Glyph::Vulgar(num, den))
}
