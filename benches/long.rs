//! What a long text costs: a quarter of a megabyte beside its first half, through every reader. Nothing here is a length,
//! or is refused late, and none of it may be gone over again and again: twice the text is twice the work.
//!
//! Instructions are counted by `valgrind --tool=callgrind --toggle-collect=long::half`, and then `long::whole`, on this
//! program, given `--test long/digits` and the like: of a function that the rest is inlined into, since a jump at its end
//! would count as its end. `.ci/run` holds them to 2.1 times as many.

mod support;

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use scantling::LengthParser;

use support::{Subject, side_by_side};

const HALF: usize = 1 << 17;
const KINDS: [(&str, &str); 6] = [
    ("digits", "17"),
    ("blanks", " "),
    ("hyphens", "-"),
    ("brackets", "(1+"),
    ("words", "twenty five "),
    ("lengths", "17 5/8\", "),
];

criterion_group!(benches, long);
criterion_main!(benches);

fn long(criterion: &mut Criterion) {
    for (kind, piece) in KINDS {
        let text = piece.repeat(2 * HALF / piece.len());
        let first = &text[..text.len() / 2];
        let subjects = vec![Subject::new("half", || half(first)), Subject::new("whole", || whole(&text))];
        side_by_side(criterion, "long", kind, 1, subjects);
    }
}

#[inline(never)]
fn half(text: &str) {
    read(text);
}

/// Not quite the same code, or the two would become one function.
#[inline(never)]
fn whole(text: &str) {
    read(black_box(text));
}

#[inline(always)]
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
