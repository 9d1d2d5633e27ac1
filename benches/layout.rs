//! What laying out costs: the cases in `support/cases/layout.rs`.

mod support;

use criterion::{Criterion, criterion_group, criterion_main};

use support::cases::layout;

criterion_group!(benches, marks);
criterion_main!(benches);

fn marks(criterion: &mut Criterion) {
    for parts in [11, 1_001, 1_000_001] {
        layout::marks(parts).side_by_side(criterion);
    }
}
