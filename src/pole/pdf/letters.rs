//! Texts in the letters that the fonts of every reader have, those of `WinAnsiEncoding`. What is not among them is
//! replaced where it is seen.

use alloc::vec::Vec;

const REPLACED: u8 = b'?';

/// A text in the codes of `WinAnsiEncoding` (ISO 32000-1, annex D.2).
pub(super) fn encoded(text: &str) -> Vec<u8> {
    text.chars().filter(|char| !is_isolate(*char)).map(code).collect()
}

/// What keeps right-to-left text from turning round its neighbors; here every letter stands where it is put.
const fn is_isolate(char: char) -> bool {
    matches!(char, '\u{2068}' | '\u{2069}')
}

fn code(char: char) -> u8 {
    match char {
        ' '..='~' | '\u{A1}'..='\u{AC}' | '\u{AE}'..='\u{FF}' => u8::try_from(u32::from(char)).unwrap_or(REPLACED),
        '€' => 0x80,
        '…' => 0x85,
        '‘' => 0x91,
        '’' => 0x92,
        '“' => 0x93,
        '”' => 0x94,
        '•' => 0x95,
        '–' => 0x96,
        '—' => 0x97,
        '™' => 0x99,
        _ => REPLACED,
    }
}

#[cfg(test)]
mod tests {
    use super::encoded;

    // Codes from ISO 32000-1, annex D.2.
    #[test]
    fn letters_that_the_font_lacks_are_replaced_where_they_are_seen() {
        assert_eq!(encoded(r#"14-3/8" strong"#), br#"14-3/8" strong"#);
        assert_eq!(encoded("é½…"), [0xE9, 0xBD, 0x85]);
        assert_eq!(encoded("\u{2068}א\u{2069}: 40\""), b"?: 40\"");
        assert_eq!(encoded("壺\u{1F3FA}\n\u{202E}א"), b"?????");
    }
}
