//! Sums, multiples, parts and order of exact lengths, beside floats and beside checked ratios of machine integers. Sums are dependent
//! chains, since a compiler turns anything looser into vector arithmetic for floats alone.

use std::hint::black_box;

use num_rational::Ratio;
use num_traits::{CheckedAdd, CheckedDiv, CheckedMul};
use scantling::{Length, Unit};

use crate::support::pair::{Case, Subject};
use crate::support::{Measure, Mix, measures};

/// A thousand terms is a long cut list; a chain much longer would take ratios of 64 bits out of range.
const CHAIN: usize = 1000;

/// A pass goes over its terms as often, so that it finds them in the cache and is long enough for a clock.
const AGAIN: usize = 32;

pub fn sum((name, mix): (&'static str, Mix), terms: usize) -> Case {
    let corpus = measures(mix, terms);
    let lengths: Vec<Length> = corpus.iter().map(|measure| measure.length).collect();
    let ratios: Vec<Ratio<i64>> = corpus.iter().map(|measure| measure.ratio).collect();
    let floats: Vec<f64> = corpus.iter().map(|measure| measure.inches).collect();
    corpus.chunks(CHAIN).for_each(check_sum);
    let subjects = vec![
        Subject::new("length", move || each_chain(&lengths, sum_of_lengths)),
        Subject::new("float", move || each_chain(&floats, sum_of_floats)),
        Subject::new("ratio", move || each_chain(&ratios, sum_of_ratios)),
    ];
    Case::new("sum", name, AGAIN * terms, subjects)
}

fn each_chain<T, U>(terms: &[T], sum: fn(&[T]) -> U) {
    for _ in 0..AGAIN {
        for chain in terms.chunks(CHAIN) {
            black_box(sum(chain));
        }
    }
}

#[inline(never)]
fn sum_of_lengths(terms: &[Length]) -> Option<Length> {
    terms.iter().try_fold(Length::ZERO, |total, term| total.checked_add(*term))
}

#[inline(never)]
fn sum_of_floats(terms: &[f64]) -> f64 {
    terms.iter().fold(0.0, |total, term| total + term)
}

#[inline(never)]
fn sum_of_ratios(terms: &[Ratio<i64>]) -> Option<Ratio<i64>> {
    terms.iter().try_fold(Ratio::ZERO, |total, term| total.checked_add(term))
}

/// The three sums are the same number, or as near as floats come.
fn check_sum(chain: &[Measure]) {
    let lengths: Vec<Length> = chain.iter().map(|measure| measure.length).collect();
    let ratios: Vec<Ratio<i64>> = chain.iter().map(|measure| measure.ratio).collect();
    let floats: Vec<f64> = chain.iter().map(|measure| measure.inches).collect();
    let total = sum_of_lengths(&lengths).expect("a sum in range");
    assert_eq!(total.in_unit(Unit::Inch), wide(sum_of_ratios(&ratios).expect("a sum in range")));
    assert!((total.to_f64_lossy(Unit::Inch) - sum_of_floats(&floats)).abs() < 1e-6);
}

fn wide(ratio: Ratio<i64>) -> Ratio<i128> {
    Ratio::new((*ratio.numer()).into(), (*ratio.denom()).into())
}

/// Each measurement and the next, which have nothing to wait for.
pub fn plus(count: usize) -> Case {
    let corpus = measures(Mix::Shop, count);
    let lengths: Vec<Length> = corpus.iter().map(|measure| measure.length).collect();
    let ratios: Vec<Ratio<i64>> = corpus.iter().map(|measure| measure.ratio).collect();
    let wides: Vec<Ratio<i128>> = ratios.iter().copied().map(wide).collect();
    for (lengths, wides) in lengths.windows(2).zip(wides.windows(2)) {
        assert_eq!((lengths[0] + lengths[1]).in_unit(Unit::Inch), wides[0] + wides[1]);
    }
    let subjects = vec![
        Subject::new("length", move || each_pair(&lengths, |one, other| one.checked_add(*other))),
        Subject::new("ratio", move || each_pair(&ratios, CheckedAdd::checked_add)),
        Subject::new("wide ratio", move || each_pair(&wides, CheckedAdd::checked_add)),
    ];
    Case::new("plus", "shop", count, subjects)
}

#[inline(never)]
fn each_pair<T, U>(terms: &[T], operation: impl Fn(&T, &T) -> U) {
    for pair in terms.windows(2) {
        black_box(operation(&pair[0], &pair[1]));
    }
}

pub fn times(count: usize) -> Case {
    let corpus = measures(Mix::Shop, count);
    for Measure { length, ratio, count, .. } in &corpus {
        assert_eq!((*length * *count).in_unit(Unit::Inch), wide(ratio * count));
    }
    let lengths = corpus.clone();
    let subjects = vec![
        Subject::new("length", move || each(&lengths, |measure| measure.length.checked_mul(measure.count))),
        Subject::new("ratio", move || each(&corpus, |measure| measure.ratio.checked_mul(&measure.count.into()))),
    ];
    Case::new("times", "shop", count, subjects)
}

pub fn over(count: usize) -> Case {
    let corpus = measures(Mix::Shop, count);
    for Measure { length, ratio, count, .. } in &corpus {
        assert_eq!((*length / *count).in_unit(Unit::Inch), wide(ratio / count));
    }
    let lengths = corpus.clone();
    let subjects = vec![
        Subject::new("length", move || each(&lengths, |measure| measure.length.checked_div(measure.count))),
        Subject::new("ratio", move || each(&corpus, |measure| measure.ratio.checked_div(&measure.count.into()))),
    ];
    Case::new("over", "shop", count, subjects)
}

#[inline(never)]
fn each<T>(corpus: &[Measure], operation: impl Fn(&Measure) -> T) {
    for measure in corpus {
        black_box(operation(measure));
    }
}

pub fn order(count: usize) -> Case {
    let corpus = measures(Mix::Shop, count);
    for pair in corpus.windows(2) {
        assert_eq!(pair[0].length.cmp(&pair[1].length), pair[0].ratio.cmp(&pair[1].ratio));
    }
    let lengths: Vec<Length> = corpus.iter().map(|measure| measure.length).collect();
    let ratios: Vec<Ratio<i64>> = corpus.iter().map(|measure| measure.ratio).collect();
    let subjects = vec![Subject::new("length", move || rising(&lengths)), Subject::new("ratio", move || rising(&ratios))];
    Case::new("order", "shop", count, subjects)
}

#[inline(never)]
fn rising<T: PartialOrd>(terms: &[T]) -> usize {
    terms.windows(2).filter(|pair| pair[0] < pair[1]).count()
}
