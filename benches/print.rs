//! What writing costs: the cases in `support/cases/print.rs`.

mod support;

use criterion::{Criterion, criterion_group, criterion_main};

use support::cases::print::{pushed, rounded, written};

const COUNT: usize = 65_536;

criterion_group!(benches, printed);
criterion_main!(benches);

fn printed(criterion: &mut Criterion) {
    for case in [written, pushed, rounded] {
        case(COUNT).side_by_side(criterion);
    }
}
