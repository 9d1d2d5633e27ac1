//! When a plan is proved at once, no more work is done.

use std::vec;

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
