//! Lengths as a shop types them, beside floats, which must be told the number alone, beside floats behind a wrapper that knows the
//! same marks, beside ratios of machine integers, and beside a library of units that reads a decimal and a unit. Then the same where
//! every text has a slip in it, since a form is checked at every stroke.

#![allow(clippy::needless_for_each)] // a pass over a corpus is one line

use std::hint::black_box;

use num_rational::Ratio;
use scantling::{Length, Unit};
use uom::si::f64::Length as UomLength;

use crate::support::floats::marked_float;
use crate::support::pair::{Case, Subject};
use crate::support::texts::{KINDS, Kind, SLIPS, Typed, broken, lines, packed, typed, typed_as};
use crate::support::{Random, SEED};

pub fn shop(count: usize) -> Case {
    read("shop", &typed(count))
}

/// In the order of their kinds, so that no branch comes as a surprise: the work alone.
pub fn sorted(count: usize) -> Case {
    let mut corpus = typed(count);
    corpus.sort_by_cached_key(|typed| shape(&typed.text));
    read("sorted", &corpus)
}

pub fn kinds(count: usize) -> impl Iterator<Item = Case> {
    KINDS.into_iter().map(move |kind: Kind| read(kind.0, &typed_as(kind, count)))
}

/// Every digit is like every other.
fn shape(text: &str) -> String {
    text.replace(|letter: char| letter.is_ascii_digit(), "0")
}

fn read(case: &str, corpus: &[Typed]) -> Case {
    corpus.iter().for_each(check);
    let texts = lines(packed(corpus.iter().map(|typed| &typed.text)));
    let decimals = lines(packed(corpus.iter().map(|typed| &typed.decimal)));
    let fractions = lines(packed(corpus.iter().map(|typed| &typed.fraction)));
    let with_units = lines(packed(&corpus.iter().map(with_unit).collect::<Vec<_>>()));
    let marked = texts.clone();
    let subjects = vec![
        Subject::new("length", move || each_length(&texts)),
        Subject::new("float", move || each_float(&decimals)),
        Subject::new("marked_float", move || each_marked_float(&marked)),
        Subject::new("ratio", move || each_ratio(&fractions)),
        Subject::new("uom", move || each_uom(&with_units)),
    ];
    Case::new("parse", case, corpus.len(), subjects)
}

fn with_unit(Typed { decimal, unit, .. }: &Typed) -> String {
    let symbol = match unit {
        Unit::Millimeter => "mm",
        Unit::Centimeter => "cm",
        Unit::Meter => "m",
        _ => "in",
    };
    format!("{decimal} {symbol}")
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

#[inline(never)]
fn each_uom(texts: &[&str]) {
    texts.iter().for_each(|text| _ = black_box(text.parse::<UomLength>()));
}

/// All are the same number, or as near as floats come.
fn check(typed: &Typed) {
    let Typed { text, decimal, unit, fraction, exact } = typed;
    assert_eq!(text.parse(), Ok(*exact), "{text:?}");
    let ratio: Ratio<i64> = fraction.parse().expect("a fraction");
    assert_eq!(Length::fraction(*ratio.numer(), ratio.denom().unsigned_abs(), Unit::Inch), *exact, "{fraction:?}");
    let is_near = |float: f64, unit| (float - exact.to_f64_lossy(unit)).abs() < 1e-9;
    assert!(is_near(decimal.parse().expect("a decimal"), *unit), "{decimal:?}");
    assert!(marked_float(text).is_some_and(|inches| is_near(inches, Unit::Inch)), "{text:?}");
    let length: UomLength = with_unit(typed).parse().expect("a decimal and a unit");
    assert!(is_near(length.value, Unit::Meter), "{text:?}");
}

pub fn refused(count: usize) -> Case {
    let mut random = Random::new(SEED);
    let corpus: Vec<(String, String)> = typed(count).iter().map(|typed| broken(typed, &mut random)).collect();
    for (text, decimal) in &corpus {
        let error = text.parse::<Length>().expect_err(text);
        let (slip, blamed) = (text.find(SLIPS).expect("a slip"), error.span());
        assert!((blamed.start..=blamed.end).contains(&slip), "{text:?}: {error}");
        assert!(decimal.parse::<f64>().is_err(), "{decimal:?}");
    }
    let texts = lines(packed(corpus.iter().map(|(text, _)| text)));
    let decimals = lines(packed(corpus.iter().map(|(_, decimal)| decimal)));
    let subjects =
        vec![Subject::new("length", move || each_length(&texts)), Subject::new("float", move || each_float(&decimals))];
    Case::new("refuse", "shop", corpus.len(), subjects)
}
