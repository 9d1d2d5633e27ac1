//! Boards filled one by one, on jobs so small that every other way to fill them is told at a glance.

use std::vec;

use super::{cheapest_board, filled, fullest, fullest_board, largest_first};
use crate::cutting::job::{Batch, Job, Kind, Supply};
use crate::cutting::patience::Patience;

fn job(kinds: &[(u64, u64)], supplies: &[(u64, u64, Option<u64>)]) -> Job {
    let kinds = kinds.iter().map(|(size, count)| Kind { size: *size, count: *count }).collect();
    let supplies = supplies.iter().map(|(capacity, cost, limit)| Supply { capacity: *capacity, cost: *cost, limit: *limit });
    Job { kinds, supplies: supplies.collect() }
}

#[test]
fn patterns_with_as_many_more_as_fit() {
    for (kinds, pattern, capacity, wanted) in [
        // 9 of 11 are taken: no room for another, and no more of them than there are.
        (&[(3, 4)][..], &[(0, 3)][..], 11, &[(0, 3)][..]),
        (&[(3, 4)], &[(0, 3)], 100, &[(0, 4)]),
        (&[(3, 3)], &[(0, 3)], 100, &[(0, 3)]),
        // The first is too large, the second just fits.
        (&[(7, 1), (4, 1), (3, 1)], &[], 4, &[(1, 1)]),
        (&[(7, 1), (4, 0), (3, 2)], &[], 6, &[(2, 2)]),
    ] {
        assert_eq!(filled(&job(kinds, &[]), pattern, capacity), wanted, "{kinds:?} in {capacity}");
    }
}

#[test]
fn the_board_that_costs_least_for_what_is_cut_from_it() {
    // 10 for two parts of 5, 24 for five.
    let two = job(&[(5, 10)], &[(10, 10, None), (25, 24, None)]);
    assert_eq!(cheapest_board(&two), Some(Batch { supply: 1, pattern: vec![(0, 5)], times: 2 }));
    // What is used up already is no part to find room for.
    let one = Batch { supply: 0, pattern: vec![(1, 1)], times: 1 };
    assert_eq!(cheapest_board(&job(&[(10, 0), (5, 1)], &[(5, 1, None)])), Some(one));
}

#[test]
fn the_fullest_board_with_the_largest_part() {
    let fullest = |kinds: &[_], supplies: &[_]| fullest_board(&job(kinds, supplies), &mut Patience::new(u64::MAX, &|| true));
    let board = |supply, pattern| Some(Batch { supply, pattern, times: 1 });
    for (kinds, supplies, wanted) in [
        // 5 and twice 3 fill 11; 5 and 4 do not.
        (&[(9, 0), (5, 1), (4, 1), (3, 2)][..], &[(11, 1, None)][..], board(0, vec![(1, 1), (3, 2)])),
        (&[(5, 2), (1, 1)], &[(10, 1, None)], board(0, vec![(0, 2)])),
        // There is none of the first and the second is too short; the third just holds the part.
        (&[(5, 1), (2, 1)], &[(9, 1, Some(0)), (4, 1, None), (5, 3, None)], board(2, vec![(0, 1)])),
        (&[(5, 1)], &[(4, 1, None)], None),
    ] {
        assert_eq!(fullest(kinds, supplies), wanted, "{kinds:?}");
    }
}

/// 5 + 3 + 3 and 4 + 4 + 3 fill two boards of 11; the largest first are 5 + 4, 4 + 3 + 3 and 3. Without patience they are what comes.
#[test]
fn plans_of_full_boards() {
    let job = job(&[(5, 1), (4, 2), (3, 3)], &[(11, 1, None)]);
    assert_eq!(largest_first(&job).map(|plan| job.cost(&plan)), Some(3));
    for (steps, cost) in [(u64::MAX, 2), (0, 3)] {
        assert_eq!(fullest(&job, &mut Patience::new(steps, &|| true)).map(|plan| job.cost(&plan)), Some(cost));
    }
}
