//! What a long text costs, a quarter of a megabyte beside its first half: the cases in `support/cases/long.rs`.

mod support;

use criterion::{Criterion, criterion_group, criterion_main};

use support::cases::long;

const BYTES: usize = 1 << 18;

criterion_group!(benches, kinds);
criterion_main!(benches);

fn kinds(criterion: &mut Criterion) {
    for kind in long::KINDS {
        long::twice(kind, BYTES).side_by_side(criterion);
    }
}
