//! Bounds worked by hand, in units: no more than is proved, and all that is.

use std::vec;
use std::vec::Vec;

use super::{Worth, unit};
use crate::cutting::filling::Filling;
use crate::cutting::job::{Job, Kind, Supply};

fn supply(capacity: u64, cost: u64, limit: Option<u64>) -> Supply {
    Supply { capacity, cost, limit }
}

/// Five parts of 3 take 15 of boards of 10 for 2 each: 3, and not 4. The cheaper board for its length counts.
#[test]
fn bounds_by_size() {
    for (count, supplies, bound) in [
        (5, vec![supply(10, 2, None)], 3),
        (10, vec![supply(10, 2, None)], 6),
        (10, vec![supply(10, 2, None), supply(15, 2, None)], 4),
        (1, vec![supply(1 << 40, 1, None)], 1),
        (1 << 20, vec![supply(1 << 20, 7, None)], 21),
    ] {
        let job = Job { kinds: vec![Kind { size: 3, count }], supplies };
        let worth = Worth::by_size(&job);
        assert_eq!(worth.bound(&job), bound, "{count}");
        let board = &job.supplies[0];
        let share = i128::from(worth.unit) * i128::from(board.cost) * 3 / i128::from(board.capacity);
        assert!(job.supplies.len() > 1 || i128::from(worth.parts[0]) == share, "{count}");
    }
}

/// Two parts, each a board by itself: one from the only board for 1, one for 2. Worth 2 each, the scarce board 1 more than it costs: 3.
/// Brought down to what the scarce board costs, they would be 2.
#[test]
fn bounds_with_scarce_boards() {
    let job = Job { kinds: vec![Kind { size: 6, count: 2 }], supplies: vec![supply(10, 1, Some(1)), supply(10, 2, None)] };
    let fillings = |worth| -> Vec<Filling> { (0..2).map(|_| Filling { worth, pattern: vec![(0, 1)] }).collect() };
    let unit = unit(&job);
    let worth = Worth::proved(&job, &[2 * unit], &fillings(2 * unit));
    assert_eq!((worth.bound(&job), worth.parts, worth.extra), (3, vec![2 * unit], vec![unit, 0]));
    // Twice as much as any board costs is brought down by half.
    let worth = Worth::proved(&job, &[4 * unit], &fillings(4 * unit));
    assert_eq!((worth.bound(&job), worth.parts), (3, vec![2 * unit]));
}

/// A board for nothing, and parts that nobody gives anything for.
#[test]
fn nothing_for_nothing() {
    let job = Job { kinds: vec![Kind { size: 6, count: 1 }], supplies: vec![supply(10, 0, Some(1))] };
    let nothing = [Filling { worth: 0, pattern: Vec::new() }];
    assert_eq!(Worth::proved(&job, &[0], &nothing).bound(&job), 0);
}
