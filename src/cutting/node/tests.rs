//! Boards to choose from, all of them told by hand.

use std::vec;
use std::vec::Vec;

use super::choices;
use crate::cutting::job::{Job, Kind, Pattern, Supply};
use crate::cutting::patience::Patience;
use crate::cutting::worth::Worth;

/// Parts of 6, 4 and twice 3, each worth its size in units of which a board of 10 costs ten.
fn told(supplies: &[(u64, u64, Option<u64>)], extra: Vec<i64>, slack: i128) -> Vec<(usize, Pattern, i128)> {
    let kinds = [(6, 1), (5, 0), (4, 1), (3, 2)].map(|(size, count)| Kind { size, count });
    let supplies = supplies.iter().map(|(capacity, cost, limit)| Supply { capacity: *capacity, cost: *cost, limit: *limit });
    let job = Job { kinds: kinds.into(), supplies: supplies.collect() };
    let worth = Worth { unit: 10, parts: vec![6, 5, 4, 3], extra };
    let found = choices(&job, &worth, slack, &mut Patience::new(u64::MAX, &|| true)).unwrap();
    found.into_iter().map(|choice| (choice.supply, choice.pattern, choice.lost)).collect()
}

#[test]
fn only_boards_that_no_other_is_as_good_as() {
    // 6 + 3 leaves 1: a 4 goes in the place of the 3.
    assert_eq!(told(&[(10, 1, None)], vec![0], 100), [(0, vec![(0, 1), (2, 1)], 0)]);
    // 6 + 4 is cheaper from the short board; a long one is for 6 + 3 + 3, which leaves nothing but is worth 8 less than it costs.
    let both = [(0, vec![(0, 1), (2, 1)], 0), (1, vec![(0, 1), (3, 2)], 8)];
    assert_eq!(told(&[(10, 1, None), (12, 2, None)], vec![0, 0], 100), both);
    assert_eq!(told(&[(10, 1, None), (12, 2, None)], vec![0, 0], 8), both);
    assert_eq!(told(&[(10, 1, None), (12, 2, None)], vec![0, 0], 7), both[..1]);
    // Of the short boards there are only so many, so the long one is for 6 + 4 too; a scarce board loses what more it is worth.
    let scarce = [(0, vec![(0, 1), (2, 1)], 3), (1, vec![(0, 1), (3, 2)], 8), (1, vec![(0, 1), (2, 1)], 10)];
    assert_eq!(told(&[(10, 1, Some(1)), (12, 2, None)], vec![3, 0], 100), scarce);
    assert_eq!(told(&[(10, 1, Some(0))], vec![0], 100), []);
}
