//! What reading costs, text by text and line by line: the cases in `support/cases/parse.rs` and `batch.rs`.

mod support;

use criterion::{Criterion, criterion_group, criterion_main};

use support::cases::{batch, parse};

const COUNT: usize = 100_000;

criterion_group!(benches, shop, kinds, refusals, lines);
criterion_main!(benches);

fn shop(criterion: &mut Criterion) {
    parse::shop(COUNT).side_by_side(criterion);
    parse::sorted(COUNT).side_by_side(criterion);
}

fn kinds(criterion: &mut Criterion) {
    parse::kinds(COUNT).for_each(|case| case.side_by_side(criterion));
}

fn refusals(criterion: &mut Criterion) {
    parse::refused(COUNT).side_by_side(criterion);
}

fn lines(criterion: &mut Criterion) {
    batch::folded(COUNT).side_by_side(criterion);
    batch::threaded(COUNT).side_by_side(criterion);
}
