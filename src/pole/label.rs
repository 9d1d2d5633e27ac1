//! Names and notes as they can be shown: what would steer a terminal, a browser or the reading order is replaced, and
//! what is too long is shortened. The values themselves keep every byte.

use alloc::string::String;

/// What stands for a character that must not be shown.
const REPLACED: char = '\u{FFFD}';
const SHORTENED: char = '…';

/// A text on one line, of at most so many characters.
pub(super) fn label(text: &str, most: usize) -> String {
    // A text of thousands of blanks is cut off unread.
    let mut words = text.chars().take(4 * most + 1).map(shown);
    let mut label = String::new();
    let (mut length, mut blank) = (0, false);
    for char in words.by_ref() {
        if char == ' ' {
            blank = length > 0;
            continue;
        }
        if length + usize::from(blank) >= most {
            label.pop();
            label.push(SHORTENED);
            return label;
        }
        if blank {
            label.push(' ');
        }
        length += 1 + usize::from(blank);
        blank = false;
        label.push(char);
    }
    if text.chars().nth(4 * most + 1).is_some() {
        label.push(SHORTENED);
    }
    label
}

/// A name in a sentence.
pub(crate) fn name(text: &str) -> String {
    match label(text, 40) {
        label if label.is_empty() => "a mark without a name".into(),
        label => isolated(label),
    }
}

/// What is written from right to left, kept from turning round what stands beside it.
pub(super) fn isolated(label: String) -> String {
    if label.chars().any(is_right_to_left) { alloc::format!("\u{2068}{label}\u{2069}") } else { label }
}

fn shown(char: char) -> char {
    match char {
        char if char.is_whitespace() => ' ',
        char if char.is_control() || is_steering(char) => REPLACED,
        char => char,
    }
}

/// Marks and overrides of the reading order, and what has no shape or no place in a document, from the Unicode
/// Character Database; joiners stay, which scripts and emoji are written with.
const fn is_steering(char: char) -> bool {
    matches!(
        char,
        '\u{00AD}'
            | '\u{061C}'
            | '\u{180E}'
            | '\u{200B}'
            | '\u{200E}'..='\u{200F}'
            | '\u{202A}'..='\u{202E}'
            | '\u{2060}'..='\u{206F}'
            | '\u{FEFF}'
            | '\u{FFF9}'..='\u{FFFB}'
            | '\u{FFFE}'..='\u{FFFF}'
            | '\u{E0000}'..='\u{E0FFF}'
    )
}

/// The blocks of the scripts that are written so.
const fn is_right_to_left(char: char) -> bool {
    matches!(
        char,
        '\u{0590}'..='\u{08FF}' | '\u{FB1D}'..='\u{FDFF}' | '\u{FE70}'..='\u{FEFC}' | '\u{10800}'..='\u{10FFF}' | '\u{1E800}'..='\u{1EFFF}'
    )
}

#[cfg(test)]
mod tests {
    use super::{label, name};

    // Worked by hand; the steering characters are those of UAX #9 and the format characters beside them.
    #[test]
    fn hostile_labels_are_shown_on_one_line_or_shortened() {
        for (text, most, shown) in [
            ("shelf 1", 40, "shelf 1"),
            ("  shelf \t\n 1 ", 40, "shelf 1"),
            ("a\u{202E}b", 40, "a\u{FFFD}b"),
            ("\u{1b}[31mred", 40, "\u{FFFD}[31mred"),
            ("<b>&amp;", 40, "<b>&amp;"),
            ("\u{FFFE}", 40, "\u{FFFD}"),
            ("", 40, ""),
            ("0123456789", 10, "0123456789"),
            ("0123456789a", 10, "012345678…"),
            ("012345678 a", 10, "01234567…"),
        ] {
            assert_eq!(label(text, most), shown, "{text}");
        }
        assert_eq!(label(&"x".repeat(10_000), 10), "xxxxxxxxx…");
        assert_eq!(label(&" ".repeat(10_000), 10), "…");
        assert_eq!(name("\u{5D0}\u{5D1}"), "\u{2068}\u{5D0}\u{5D1}\u{2069}");
        assert_eq!(name(" \n"), "a mark without a name");
    }
}
