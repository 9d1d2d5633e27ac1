//! The first bytes of what an error points at, small enough to be kept in it.

use core::fmt;

/// The first bytes of a piece of text, kept inline so that an error needs neither a lifetime nor a box.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub(super) struct Excerpt {
    bytes: [u8; Excerpt::ROOM],
    length: u8,
    cut: bool,
}

impl Excerpt {
    const ROOM: usize = 21;

    pub(super) const EMPTY: Self = Self { bytes: [0; Self::ROOM], length: 0, cut: false };

    #[inline(always)]
    #[allow(clippy::cast_possible_truncation)] // at most ROOM
    pub(super) fn new(text: &str) -> Self {
        let mut length = text.len();
        if length > Self::ROOM {
            length = Self::ROOM;
            while !text.is_char_boundary(length) {
                length -= 1;
            }
        }
        // Gathered in a register and put down once: a copy of a copy would have to wait for the first.
        let bytes = &text.as_bytes()[..length];
        let mut kept = [0; Self::ROOM];
        if length <= 8 {
            kept[..8].copy_from_slice(&word(bytes));
        } else {
            kept[..length].copy_from_slice(bytes);
        }
        Self { bytes: kept, length: length as u8, cut: length < text.len() }
    }

    /// One sign or letter of ASCII.
    #[inline(always)]
    pub(super) fn lone(byte: u8) -> Self {
        let mut bytes = [0; Self::ROOM];
        bytes[0] = byte;
        Self { bytes, length: 1, cut: false }
    }

    pub(super) fn text(&self) -> &str {
        // Cut at a whole character above, so this is always text.
        core::str::from_utf8(&self.bytes[..usize::from(self.length)]).unwrap_or_default()
    }
}

/// Up to eight bytes, with zeros behind them.
#[inline(always)]
fn word(bytes: &[u8]) -> [u8; 8] {
    bytes.iter().rev().fold(0_u64, |word, byte| word << 8 | u64::from(*byte)).to_le_bytes()
}

/// In quotation marks that no shop uses for inches, with unprintable characters spelled out.
impl fmt::Display for Excerpt {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str("`")?;
        for character in self.text().chars() {
            match character {
                '"' | '\'' | '\\' => write!(out, "{character}")?,
                _ => write!(out, "{}", character.escape_debug())?,
            }
        }
        out.write_str(if self.cut { "…`" } else { "`" })
    }
}

#[cfg(test)]
mod tests {
    use super::Excerpt;

    #[test]
    fn an_excerpt_is_cut_at_a_character_and_says_so() {
        let shown = |text| std::string::ToString::to_string(&Excerpt::new(text));
        assert_eq!(shown("5\u{202E}3"), "`5\\u{202e}3`");
        assert_eq!(shown("a\tb"), "`a\\tb`");
        assert_eq!(shown("6'-3\""), "`6'-3\"`");
        assert_eq!(shown("12345678901234567890½"), "`12345678901234567890…`");
        assert_eq!(shown("1234567890123456789½"), "`1234567890123456789½`");
    }
}
