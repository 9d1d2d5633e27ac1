//! The way down on small programs solved by hand: what is taken whole, what is rounded up, what is made up.

use std::vec;
use std::vec::Vec;

use super::{dive, round};
use crate::cutting::job::{Batch, Job, Kind, Pattern, Supply};
use crate::cutting::packing::largest_first;
use crate::cutting::patience::Patience;
use crate::cutting::simplex::Master;

fn job(kinds: &[(u64, u64)], capacity: u64) -> Job {
    let kinds = kinds.iter().map(|(size, count)| Kind { size: *size, count: *count }).collect();
    Job { kinds, supplies: vec![Supply { capacity, cost: 1, limit: None }] }
}

fn solved(job: &Job, patterns: &[&[(usize, u64)]]) -> Master {
    let mut master = Master::new(job);
    for pattern in patterns {
        master.add(job, 0, pattern.to_vec());
    }
    master.solve(&mut Patience::new(u64::MAX, &|| true)).unwrap();
    master
}

/// Three of each of three kinds, two different ones to a board: each board is cut one and a half times. What is left after three
/// boards is one of each, of which one board more takes two.
#[test]
fn halves_are_rounded_up_from_a_half() {
    let job = job(&[(5, 3), (4, 3), (3, 3)], 9);
    let master = solved(&job, &[&[(0, 1), (1, 1)], &[(0, 1), (2, 1)], &[(1, 1), (2, 1)]]);
    for (up_from, boards) in [(60, 3), (51, 3), (50, 4), (40, 4)] {
        let taken = round(&mut job.clone(), &master, up_from).unwrap();
        assert_eq!(taken.iter().map(|batch| batch.times).sum::<u64>(), boards, "{up_from}");
    }
}

/// The pattern asks for 5 and 4, of which the 5 is cut already: a 4, though there is a 7 that is larger.
#[test]
fn a_board_that_is_made_up() {
    let master = solved(&job(&[(7, 0), (5, 2), (4, 2)], 10), &[&[(1, 1), (2, 1)]]);
    let taken = round(&mut job(&[(7, 1), (5, 0), (4, 1)], 10), &master, 99);
    assert_eq!(taken, Some(vec![Batch { supply: 0, pattern: vec![(2, 1)], times: 1 }]));
}

/// The largest first take three boards of 11, and two are enough: 5 + 3 + 3 and 4 + 4 + 3.
#[test]
fn only_plans_that_cost_less() {
    let job = job(&[(5, 1), (4, 2), (3, 3)], 11);
    let greedy = largest_first(&job).unwrap();
    let down = |below, steps| {
        let patterns: Vec<Pattern> = greedy.iter().map(|batch| batch.pattern.clone()).collect();
        let mut master = solved(&job, &patterns.iter().map(Vec::as_slice).collect::<Vec<_>>());
        dive(&job, &mut master, below, 60, &mut Patience::new(steps, &|| true)).map(|plan| job.cost(&plan))
    };
    assert_eq!([4, 3, 2, 1].map(|below| down(below, u64::MAX)).map(|cost| cost.is_some()), [true, true, false, false]);
    assert_eq!(down(3, u64::MAX), Some(2));
    // Without patience the greedy plan is what comes of it, if that is less.
    assert_eq!([4, 3].map(|below| down(below, 0)), [Some(3), None]);
}
