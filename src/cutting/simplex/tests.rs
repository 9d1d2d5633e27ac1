//! The linear program held to what makes a solution one: everything needed is there, nothing is negative, no column would save anything,
//! and what is needed is worth what it costs. On random programs, solved anew after some of it is taken away; small ones by hand.

use std::vec;
use std::vec::Vec;

use super::{FRESH, Fine, Master, dot, inverted, unit_matrix};
use crate::cutting::job::{Job, Kind, Pattern, Supply};
use crate::cutting::patience::Patience;

fn supply(cost: u64, limit: Option<u64>) -> Supply {
    Supply { capacity: 100, cost, limit }
}

fn near(one: Fine, other: Fine) -> bool {
    one - other < Fine::share(1, 1000) && other - one < Fine::share(1, 1000)
}

fn solve(master: &mut Master) {
    master.solve(&mut Patience::new(u64::MAX, &|| true)).unwrap();
}

fn saves_nothing(master: &Master) -> bool {
    master.columns.iter().all(|column| column.along(&master.duals) - column.cost < Fine::share(1, 1000))
}

#[track_caller]
fn is_solved(master: &Master) {
    let used = || master.basis.iter().map(|column| &master.columns[*column]).zip(&master.amounts);
    assert!(master.amounts.iter().all(|amount| -Fine::share(1, 1000) < *amount), "{:?}", master.amounts);
    for (row, needed) in master.needed.iter().enumerate() {
        let entries = used().flat_map(|(column, amount)| column.entries.iter().map(move |entry| (entry, *amount)));
        let there = dot(entries.filter(|((at, _), _)| *at == row).map(|((_, entry), amount)| (*entry, amount)));
        assert!(near(there, *needed), "{row}: {there:?} of {needed:?}");
    }
    assert!(saves_nothing(master));
    let cost = dot(used().map(|(column, amount)| (column.cost, *amount)));
    let worth = dot(master.duals.iter().copied().zip(master.needed.iter().copied()));
    assert!(near(cost, worth), "{cost:?} for {worth:?}");
}

/// A plain generator of numbers that look random: xorshift, 64 bits.
struct Random(u64);

impl Random {
    fn between(&mut self, least: u64, most: u64) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        least + self.0 % (most - least + 1)
    }

    fn job(&mut self) -> Job {
        let kinds = (0..self.between(2, 7)).map(|_| Kind { size: 1, count: self.between(1, 30) }).collect();
        let supplies = (0..self.between(1, 3)).map(|_| {
            let limit = (self.between(0, 1) == 1).then(|| self.between(1, 12));
            supply(self.between(1, 9), limit)
        });
        Job { kinds, supplies: supplies.collect() }
    }

    fn pattern(&mut self, kinds: usize) -> Pattern {
        (0..kinds).map(|kind| (kind, self.between(0, 6).saturating_sub(2))).filter(|(_, count)| *count > 0).collect()
    }
}

#[test]
fn programs_are_solved_and_solved_anew() {
    let mut random = Random(7919);
    for _ in 0..150 {
        let mut job = random.job();
        let mut master = Master::new(&job);
        for round in 0..6 {
            for _ in 0..4 {
                let number = usize::try_from(random.between(0, job.supplies.len() as u64 - 1)).unwrap();
                let pattern = random.pattern(job.kinds.len());
                if !pattern.is_empty() {
                    master.add(&job, number, pattern);
                }
            }
            solve(&mut master);
            is_solved(&master);
            // Worked out anew, whatever stood there.
            let (inverse, basis) = (master.inverse.clone(), master.basis.clone());
            master.inverse = unit_matrix(master.rows);
            master.invert();
            assert!(inverse.iter().zip(&master.inverse).all(|(one, other)| near(*one, *other)));
            assert_eq!(master.basis, basis);
            is_solved(&master);
            for kind in &mut job.kinds {
                kind.count = random.between(kind.count / 2, kind.count);
            }
            if round % 2 == 0 {
                for supply in &mut job.supplies {
                    supply.limit = supply.limit.map(|limit| random.between(limit / 2, limit));
                }
            }
            master.need(&job);
            // What is negative is mended, and still no column would save anything. Else it is mended with new columns there.
            if round % 3 > 0 {
                while master.mend_step() {}
                assert!(saves_nothing(&master));
                is_solved(&master);
            }
        }
    }
}

/// Two parts, each a board by itself: one from the only board for 1, one from those for 2. So a part is worth 2, and one more of the
/// cheap boards would save 1.
#[test]
fn worths_of_parts_and_of_scarce_boards() {
    let job = Job { kinds: vec![Kind { size: 60, count: 2 }], supplies: vec![supply(1, Some(1)), supply(2, None)] };
    let mut master = Master::new(&job);
    for number in [0, 1] {
        assert!(!master.knows(number, &vec![(0, 1)]));
        master.add(&job, number, vec![(0, 1)]);
        assert!(master.knows(number, &vec![(0, 1)]) && !master.knows(number, &vec![(0, 2)]));
    }
    solve(&mut master);
    assert_eq!(
        (master.worths(1000), master.extra(0, 1000), master.extra(1, 1000), master.whole_cost()),
        (vec![2000], 1000, 0, 3)
    );
}

/// Errors end with the hundredth exchange, and not before.
#[test]
fn an_exchange_now_and_then_works_the_inverse_out() {
    let job = Job { kinds: vec![Kind { size: 1, count: 6 }, Kind { size: 1, count: 4 }], supplies: vec![supply(1, None)] };
    for (exchanges, is_fresh) in [(FRESH - 1, true), (FRESH - 2, false), (0, false)] {
        let mut master = Master::new(&job);
        master.add(&job, 0, vec![(0, 2), (1, 1)]);
        let index = master.columns.len() - 1;
        let direction = master.direction(index);
        master.inverse[1] = Fine::whole(7);
        master.exchanges = exchanges;
        master.exchange(0, index, &direction);
        // From the column 2, 1 and the unit column: 1/2, 0 and -1/2, 1.
        let half = Fine::share(1, 2);
        assert_eq!(master.inverse == [half, Fine::ZERO, -half, Fine::ONE], is_fresh, "{exchanges}");
    }
}

#[test]
fn inverses() {
    let fine = |entries: &[i64]| -> Vec<Fine> {
        entries
            .iter()
            .map(|entry| if *entry < 0 { -Fine::whole(entry.unsigned_abs()) } else { Fine::whole(entry.unsigned_abs()) })
            .collect()
    };
    for (matrix, inverse) in [
        (fine(&[0, 1, 1, 0]), Some(fine(&[0, 1, 1, 0]))),
        (fine(&[1, 1, 0, 1]), Some(fine(&[1, -1, 0, 1]))),
        (fine(&[2, 1, 1, 1]), Some(fine(&[1, -1, -1, 2]))),
        (fine(&[1, 2, 2, 4]), None),
        (fine(&[0, 0, 0, 1]), None),
    ] {
        assert_eq!(inverted(matrix, 2), inverse);
    }
    // The smallest pivot that is one, and a part less.
    assert_eq!(inverted(vec![Fine::SMALL], 1), Some(vec![Fine::whole(1 << 26)]));
    assert_eq!(inverted(vec![Fine::SMALL - Fine::share(1, 1 << 42)], 1), None);
}
