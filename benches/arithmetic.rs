//! What exactness costs: the cases in `support/cases/arithmetic.rs`.

mod support;

use criterion::{Criterion, criterion_group, criterion_main};

use support::Mix;
use support::cases::arithmetic;

/// Pairs enough that no branch predictor learns them by heart.
const COUNT: usize = 1 << 16;

/// Terms few enough that both sides stay in the cache: a sum is timed, not the memory.
const TERMS: usize = 1 << 13;

criterion_group!(benches, sums, operations);
criterion_main!(benches);

fn sums(criterion: &mut Criterion) {
    for mix in Mix::ALL {
        arithmetic::sum(mix, TERMS).side_by_side(criterion);
    }
}

fn operations(criterion: &mut Criterion) {
    use arithmetic::{order, over, plus, times};

    for case in [plus, times, over, order] {
        case(COUNT).side_by_side(criterion);
    }
}
