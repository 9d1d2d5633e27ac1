//! When a plan is proved at once, no more work is done.

use std::vec;
use std::vec::Vec;

use super::{MANY_KINDS, solve};
use crate::cutting::job::{Job, Kind, Supply};
use crate::cutting::patience::Patience;

/// Each part fills a board of its own, by size alone; or all of them a board for nothing. Not a step of patience is spent.
#[test]
fn what_is_proved_at_once_costs_no_patience() {
    let many = u64::try_from(MANY_KINDS).unwrap() + 5;
    for (kinds, capacity, cost, limit, least) in [(many, 1000 + many, 1, None, many), (2, 5000, 0, Some(1), 0)] {
        let kinds = (0..kinds).rev().map(|more| Kind { size: 1001 + more, count: 1 }).collect();
        let job = Job { kinds, supplies: vec![Supply { capacity, cost, limit }] };
        let mut patience = Patience::new(1000, &|| true);
        let answer = solve(&job, &mut patience);
        assert_eq!((answer.batches.map(|plan| job.cost(&plan)), answer.bound, answer.is_settled), (Some(least), least, true));
        assert_eq!(patience.spend(999), Some(()));
    }
}

/// 400 lengths without any order: with no more patience than a plan of all at once would take, the groups of `coarse.rs` fill as
/// many boards as all the lengths together.
#[test]
fn very_many_lengths_are_planned_in_groups() {
    let mut sizes: Vec<u64> = (0..400).map(|number| 300 + number * 173 % 1009).collect();
    sizes.sort_unstable_by_key(|size| core::cmp::Reverse(*size));
    let least = sizes.iter().sum::<u64>().div_ceil(2400);
    let kinds = sizes.into_iter().map(|size| Kind { size, count: 1 }).collect();
    let job = Job { kinds, supplies: vec![Supply { capacity: 2400, cost: 1, limit: None }] };
    let answer = solve(&job, &mut Patience::new(40_000_000, &|| true));
    assert_eq!((answer.batches.map(|plan| job.cost(&plan)), answer.bound), (Some(least), least));
}
