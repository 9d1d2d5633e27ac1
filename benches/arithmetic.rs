//! What exactness costs: sums, multiples, parts and order of exact lengths, beside floats and beside
//! checked ratios of machine integers. Sums are dependent chains, since a compiler turns anything looser
//! into vector arithmetic for floats alone.

mod support;

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use num_rational::Ratio;
use num_traits::{CheckedAdd, CheckedDiv, CheckedMul};
use scantling::{Length, Unit};

use support::{Measure, Mix, Subject, measures, side_by_side};

/// Pairs enough that no branch predictor learns them by heart.
const COUNT: usize = 1 << 16;

/// Terms few enough that both sides stay in the cache: a sum is timed, not the memory.
const TERMS: usize = 1 << 13;

/// A thousand terms is a long cut list; a chain much longer would take ratios of 64 bits out of range.
const CHAIN: usize = 1000;

criterion_group!(benches, sums, by_whole_numbers, order);
criterion_main!(benches);

fn sums(criterion: &mut Criterion) {
    for (case, mix) in Mix::ALL {
        let corpus = measures(mix, TERMS);
        let lengths: Vec<Length> = corpus.iter().map(|measure| measure.length).collect();
        let ratios: Vec<Ratio<i64>> = corpus.iter().map(|measure| measure.ratio).collect();
        let floats: Vec<f64> = corpus.iter().map(|measure| measure.inches).collect();
        corpus.chunks(CHAIN).for_each(check_sum);
        let subjects = vec![
            Subject::new("length", || each_chain(&lengths, sum_of_lengths)),
            Subject::new("float", || each_chain(&floats, sum_of_floats)),
            Subject::new("ratio", || each_chain(&ratios, sum_of_ratios)),
        ];
        side_by_side(criterion, "sum", case, TERMS, subjects);
    }
}

fn each_chain<T, U>(terms: &[T], sum: fn(&[T]) -> U) {
    for chain in terms.chunks(CHAIN) {
        black_box(sum(chain));
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

fn by_whole_numbers(criterion: &mut Criterion) {
    let corpus = measures(Mix::Shop, COUNT);
    let count = |place: usize| i64::try_from(2 + place % 11).expect("a small number");
    for (place, measure) in corpus.iter().enumerate() {
        let count = count(place);
        assert_eq!((measure.length * count).in_unit(Unit::Inch), wide(measure.ratio * count));
        assert_eq!((measure.length / count).in_unit(Unit::Inch), wide(measure.ratio / count));
    }
    let each = |operation: &dyn Fn(&Measure, i64)| {
        corpus.iter().enumerate().for_each(|(place, measure)| operation(measure, count(place)));
    };
    let times = vec![
        Subject::new("length", || each(&|measure, count| _ = black_box(measure.length.checked_mul(count)))),
        Subject::new("ratio", || each(&|measure, count| _ = black_box(measure.ratio.checked_mul(&count.into())))),
    ];
    side_by_side(criterion, "times", "shop", COUNT, times);
    let over = vec![
        Subject::new("length", || each(&|measure, count| _ = black_box(measure.length.checked_div(count)))),
        Subject::new("ratio", || each(&|measure, count| _ = black_box(measure.ratio.checked_div(&count.into())))),
    ];
    side_by_side(criterion, "over", "shop", COUNT, over);
}

fn order(criterion: &mut Criterion) {
    let corpus = measures(Mix::Shop, COUNT);
    for pair in corpus.windows(2) {
        assert_eq!(pair[0].length.cmp(&pair[1].length), pair[0].ratio.cmp(&pair[1].ratio));
    }
    let rising =
        |is_below: &dyn Fn(&Measure, &Measure) -> bool| corpus.windows(2).filter(|pair| is_below(&pair[0], &pair[1])).count();
    let subjects = vec![
        Subject::new("length", || rising(&|a, b| a.length < b.length)),
        Subject::new("ratio", || rising(&|a, b| a.ratio < b.ratio)),
    ];
    side_by_side(criterion, "order", "shop", COUNT, subjects);
}
