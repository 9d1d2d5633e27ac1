//! What a cut plan costs: triplets, where a third of the parts is known to be the fewest boards there can be; uniform parts, the usual
//! other family of bin packing; a small shop's job and a large one. How many boards a plan takes over the bound is printed once.
//!
//! Triplets are built so that three parts fill a board and nothing is left, after Falkenauer; uniform parts are 20 to 100 in boards
//! of 150, without a kerf. Both are drawn here, not read from a file.

use std::hint::black_box;
use std::time::Duration;

use criterion::{Criterion, criterion_group, criterion_main};
use scantling::{Cutting, Length, Part, PlanCost, Stock, Unit};

criterion_group!(benches, plans);
criterion_main!(benches);

/// A plain generator of numbers that look random: xorshift, 64 bits.
struct Random(u64);

impl Random {
    fn between(&mut self, least: i64, most: i64) -> i64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        least + i64::try_from(self.0 % u64::try_from(most - least + 1).expect("a range")).expect("small")
    }
}

fn sixteenths(count: i64) -> Length {
    Length::fraction(count, 16, Unit::Inch)
}

fn job(parts: impl IntoIterator<Item = (i64, i64)>, board: i64) -> Cutting {
    let cutting = Cutting::new().stock(Stock::new("board", sixteenths(board)));
    let part = |(size, count): (i64, i64)| Part::new("part", sixteenths(size), count.unsigned_abs());
    parts.into_iter().map(part).fold(cutting, Cutting::part)
}

fn triplets(items: usize, random: &mut Random) -> Cutting {
    let triple = |_| {
        let first = random.between(380, 490);
        let second = random.between(250, (1000 - first) / 2);
        [(first, 1), (second, 1), (1000 - first - second, 1)]
    };
    job((0..items / 3).flat_map(triple).collect::<Vec<_>>(), 1000)
}

fn uniform(items: usize, random: &mut Random) -> Cutting {
    job((0..items).map(|_| (random.between(20, 100), 1)).collect::<Vec<_>>(), 150)
}

/// A dozen lengths or more from boards of 8 ft, in sixteenths, with a kerf of an eighth.
fn shop(kinds: usize, most: i64, random: &mut Random) -> Cutting {
    let parts = (0..kinds).map(|_| (random.between(96, 800), random.between(1, most)));
    job(parts.collect::<Vec<_>>(), 96 * 16).kerf(sixteenths(2))
}

fn plans(criterion: &mut Criterion) {
    let mut random = Random(7919);
    let mut group = criterion.benchmark_group("cutting");
    group.sample_size(10).warm_up_time(Duration::from_millis(200)).measurement_time(Duration::from_secs(2));
    let cases = [60, 120, 249, 501].map(|items| (format!("triplets/{items}"), triplets(items, &mut random)));
    let cases =
        cases.into_iter().chain([120, 250, 500, 1000].map(|items| (format!("uniform/{items}"), uniform(items, &mut random))));
    let cases = cases.chain(
        [(12, 6), (12, 500), (40, 150), (150, 40)]
            .map(|(kinds, most)| (format!("shop/{kinds} lengths, up to {most} of each"), shop(kinds, most, &mut random))),
    );
    let many = (0..2000).map(|_| (random.between(300, 800), 1)).collect::<Vec<_>>();
    let cases = cases.chain([("380 lengths, two to five to a board".to_string(), job(many, 96 * 16).kerf(sixteenths(2)))]);
    for (name, cutting) in cases.collect::<Vec<_>>() {
        let plan = cutting.plan().expect("every part fits");
        let PlanCost::Boards(bound) = plan.bound() else { unreachable!("boards of one length, no price") };
        println!("{name}: {} boards, the bound is {bound}", plan.board_count());
        assert!(plan.board_count() <= bound + 1, "{name}");
        group.bench_function(name, |bench| bench.iter(|| black_box(&cutting).plan()));
    }
    group.finish();
}
