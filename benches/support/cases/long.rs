//! A long text beside its first half, through every reader. Nothing here is a length, or is refused late, and none of it may be gone
//! over again and again: twice the text is twice the work.

use std::hint::black_box;

use scantling::LengthParser;

use crate::support::pair::{Case, Subject};

pub const KINDS: [(&str, &str); 6] = [
    ("digits", "17"),
    ("blanks", " "),
    ("hyphens", "-"),
    ("brackets", "(1+"),
    ("words", "twenty five "),
    ("lengths", "17 5/8\", "),
];

/// One kind of text, of so many bytes.
pub fn twice((kind, piece): (&'static str, &str), bytes: usize) -> Case {
    let text: &str = piece.repeat(bytes / piece.len()).leak();
    let half = &text[..text.len() / 2];
    Case::new("long", kind, 1, vec![Subject::new("whole", || read(text)), Subject::new("half", || read(half))])
}

#[inline(never)]
fn read(text: &str) {
    let parser = LengthParser::new();
    let _ = black_box(parser.parse(text));
    let _ = black_box(parser.parse_written(text));
    let _ = black_box(parser.parse_called(text));
    let _ = black_box(parser.parse_size(text));
    let _ = black_box(parser.parse_toleranced(text));
    let _ = black_box(parser.evaluate(text));
    black_box(parser.find_iter(text).count());
}
