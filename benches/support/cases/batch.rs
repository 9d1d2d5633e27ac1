//! Very many lengths, one a line, beside floats, one a line; on one thread and on two, whose gain is held against that of a loop
//! that needs nothing but the processor.

use std::hint::black_box;
use std::thread;

use scantling::{Length, LengthParser};

use crate::support::pair::{Case, Subject};
use crate::support::texts::{packed, typed};

pub fn folded(count: usize) -> Case {
    let corpus = typed(count);
    let texts = packed(corpus.iter().map(|typed| &typed.text));
    let decimals = packed(corpus.iter().map(|typed| &typed.decimal));
    let read = LengthParser::new().parse_lines(texts).map(|line| line.expect("a length"));
    assert!(read.eq(corpus.iter().map(|typed| typed.exact)));
    let mut kept = Vec::new();
    let subjects = vec![
        Subject::new("length", move || fold(texts)).of_bytes(texts.len()),
        Subject::new("float", move || fold_floats(decimals)).of_bytes(decimals.len()),
        Subject::new("list", move || {
            kept.clear();
            LengthParser::new().parse_lines_into(texts, &mut kept).expect("lengths");
            kept.len()
        })
        .of_bytes(texts.len()),
    ];
    Case::new("lines", "shop", count, subjects)
}

/// Every line is looked at, and nothing is kept.
#[inline(never)]
fn fold(text: &str) -> usize {
    LengthParser::new().parse_lines(text).flat_map(black_box).count()
}

#[inline(never)]
fn fold_floats(text: &str) -> usize {
    text.lines().flat_map(|line| black_box(line.parse::<f64>())).count()
}

/// One thread and two, over lines and over the other loop.
pub fn threaded(count: usize) -> Case {
    let texts = packed(typed(count).iter().map(|typed| &typed.text));
    let middle = texts.len() / 2;
    let middle = middle + texts[middle..].find('\n').map_or(0, |end| end + 1);
    let (near, far) = texts.split_at(middle);
    let steps = 30 * count as u64;
    let subjects = vec![
        Subject::new("one thread", move || fold(near) + fold(far)),
        Subject::new("two threads", move || in_two(move || fold(near), move || fold(far))),
        Subject::new("spinning on one", move || spin(steps) + spin(steps)),
        Subject::new("spinning on two", move || in_two(move || spin(steps), move || spin(steps))),
    ];
    Case::new("threads", "shop", count, subjects)
}

fn in_two<T: Send>(one: impl FnOnce() -> T + Send, other: impl FnOnce() -> T + Send) -> (T, T) {
    thread::scope(|scope| {
        let other = scope.spawn(other);
        (one(), other.join().expect("no panic"))
    })
}

/// Steps that no compiler sees through.
fn spin(steps: u64) -> u64 {
    (0..steps).fold(1, |state, _| black_box(state) ^ (state << 7))
}

/// How much memory a list of so many lengths took at most, over the size of the lengths; `None` where that cannot be told.
pub fn growth(count: usize) -> Option<f64> {
    // What was made and given back before would be taken again.
    let texts = packed(typed(count / 1000).iter().map(|typed| &typed.text)).repeat(1000);
    let mut lengths = Vec::with_capacity(count);
    std::fs::write("/proc/self/clear_refs", "5").ok()?; // forgets the most that was held so far
    let before = memory("VmRSS:")?;
    LengthParser::new().parse_lines_into(&texts, &mut lengths).expect("lengths");
    let grown = memory("VmHWM:")?.saturating_sub(before);
    assert_eq!(black_box(lengths).len(), count);
    #[allow(clippy::cast_precision_loss)] // of a share
    Some(grown as f64 / (count * size_of::<Length>()) as f64)
}

/// The bytes of memory that this program holds, or held at most, where the system tells.
fn memory(which: &str) -> Option<usize> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let kilobytes = status.lines().find_map(|line| line.strip_prefix(which))?;
    Some(kilobytes.trim().trim_end_matches(" kB").parse::<usize>().ok()? * 1024)
}
