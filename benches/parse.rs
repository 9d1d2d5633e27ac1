//! What reading costs: lengths as a shop types them, beside floats, which must be told the number alone, beside
//! floats behind a wrapper that knows the same marks, and beside ratios of machine integers. Then the same where
//! every text has a slip in it, since a form is checked at every stroke.
//!
//! Instructions are counted by `valgrind --tool=callgrind` on this program, given `--test parse/shop`: the
//! inclusive cost of each function named `each_…`, over its calls.

#![allow(clippy::needless_for_each)] // a pass over a corpus is one line

mod support;

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use num_rational::Ratio;
use scantling::{Length, Unit};

use support::floats::marked_float;
use support::texts::{KINDS, Typed, broken, lines, packed, typed, typed_as};
use support::{Random, SEED, Subject, side_by_side};

const COUNT: usize = 100_000;

criterion_group!(benches, shop, kinds, refusals);
criterion_main!(benches);

fn shop(criterion: &mut Criterion) {
    let mut corpus = typed(COUNT);
    corpus.iter().for_each(check);
    read(criterion, "shop", &corpus);
    // In the order of their kinds, so that no branch comes as a surprise: the work alone.
    corpus.sort_by_cached_key(|typed| shape(&typed.text));
    read(criterion, "sorted", &corpus);
}

fn kinds(criterion: &mut Criterion) {
    for kind in KINDS {
        let corpus = typed_as(kind, COUNT);
        corpus.iter().for_each(check);
        read(criterion, kind.0, &corpus);
    }
}

/// Every digit is like every other.
fn shape(text: &str) -> String {
    text.replace(|letter: char| letter.is_ascii_digit(), "0")
}

fn read(criterion: &mut Criterion, case: &str, corpus: &[Typed]) {
    let texts = packed(corpus.iter().map(|typed| &typed.text));
    let decimals = packed(corpus.iter().map(|typed| &typed.decimal));
    let fractions = packed(corpus.iter().map(|typed| &typed.fraction));
    let [texts, decimals, fractions] = [&texts, &decimals, &fractions].map(|packed| lines(packed));
    let subjects = vec![
        Subject::new("length", || each_length(&texts)),
        Subject::new("float", || each_float(&decimals)),
        Subject::new("marked_float", || each_marked_float(&texts)),
        Subject::new("ratio", || each_ratio(&fractions)),
    ];
    side_by_side(criterion, "parse", case, corpus.len(), subjects);
}

#[inline(never)]
fn each_length(texts: &[&str]) {
    texts.iter().for_each(|text| _ = black_box(text.parse::<Length>()));
}

#[inline(never)]
fn each_float(texts: &[&str]) {
    texts.iter().for_each(|text| _ = black_box(text.parse::<f64>()));
}

#[inline(never)]
fn each_marked_float(texts: &[&str]) {
    texts.iter().for_each(|text| _ = black_box(marked_float(text)));
}

#[inline(never)]
fn each_ratio(texts: &[&str]) {
    texts.iter().for_each(|text| _ = black_box(text.parse::<Ratio<i64>>()));
}

/// All four are the same number, or as near as floats come.
fn check(Typed { text, decimal, unit, fraction, exact }: &Typed) {
    assert_eq!(text.parse(), Ok(*exact), "{text:?}");
    let ratio: Ratio<i64> = fraction.parse().expect("a fraction");
    assert_eq!(Length::fraction(*ratio.numer(), ratio.denom().unsigned_abs(), Unit::Inch), *exact, "{fraction:?}");
    let is_near = |float: f64, unit| (float - exact.to_f64_lossy(unit)).abs() < 1e-9;
    assert!(is_near(decimal.parse().expect("a decimal"), *unit), "{decimal:?}");
    assert!(marked_float(text).is_some_and(|inches| is_near(inches, Unit::Inch)), "{text:?}");
}

fn refusals(criterion: &mut Criterion) {
    let mut random = Random::new(SEED);
    let corpus: Vec<(String, String)> = typed(COUNT).iter().map(|typed| broken(typed, &mut random)).collect();
    for (text, decimal) in &corpus {
        let error = text.parse::<Length>().expect_err(text);
        assert!(text.get(error.span()).is_some_and(|found| found.starts_with(error.found())), "{text:?}");
        assert!(decimal.parse::<f64>().is_err(), "{decimal:?}");
    }
    let texts = packed(corpus.iter().map(|(text, _)| text));
    let decimals = packed(corpus.iter().map(|(_, decimal)| decimal));
    let [texts, decimals] = [&texts, &decimals].map(|packed| lines(packed));
    let subjects = vec![Subject::new("length", || each_length(&texts)), Subject::new("float", || each_float(&decimals))];
    side_by_side(criterion, "refuse", "shop", corpus.len(), subjects);
}
