//! Lengths taken for one, and the boards cut from them. Groups and boards worked by hand.

use std::vec;
use std::vec::Vec;

use super::{Groups, MOST_GROUPS, coarse, mean};
use crate::cutting::job::{Batch, Job, Kind, Supply};
use crate::cutting::patience::Patience;

fn job(sizes: impl Iterator<Item = u64>, capacity: u64, limit: Option<u64>) -> Job {
    let kinds = sizes.map(|size| Kind { size, count: 1 }).collect();
    Job { kinds, supplies: vec![Supply { capacity, cost: 1, limit }] }
}

#[test]
fn one_kind_for_many() {
    let kind = |size, count| Kind { size, count };
    // 10 and three times 5 are 25, so 6 1/4 on average.
    assert_eq!(mean(&[kind(10, 1), kind(5, 3)]), kind(7, 4));
}

#[test]
fn groups_of_neighbors() {
    let most = u64::try_from(MOST_GROUPS).unwrap();
    let single = Groups::of(&job((1..=most).rev(), 500, None));
    assert!(single.are_single());
    let double = Groups::of(&job((1..=most + 1).rev(), 500, None));
    assert!(!double.are_single());
    assert_eq!((double.places.len(), &double.places[0], double.places.last()), (61, &(0..2), Some(&(120..121))));
}

/// Two groups, 9 and 8, 5 and 4: the largest of each that leaves room for what comes after.
#[test]
fn boards_from_groups() {
    for (counts, groups, capacity, wanted) in [
        ([1, 1, 1, 1], vec![(0, 1), (1, 1)], 13, Some(vec![(0, 1), (3, 1)])),
        ([1, 1, 1, 1], vec![(0, 1), (1, 1)], 14, Some(vec![(0, 1), (2, 1)])),
        ([1, 1, 1, 1], vec![(0, 1), (1, 1)], 12, Some(vec![(1, 1), (3, 1)])),
        ([1, 1, 1, 1], vec![(0, 1), (1, 1)], 11, None),
        // One 9 and no more, as many as there are of the 5.
        ([1, 1, 2, 0], vec![(0, 2)], 18, Some(vec![(0, 1), (1, 1)])),
        ([0, 1, 2, 0], vec![(0, 1), (1, 2)], 18, Some(vec![(1, 1), (2, 2)])),
        // The 4 is used up, so there is no room for two of the smaller ones.
        ([1, 1, 2, 0], vec![(0, 1), (1, 1)], 13, Some(vec![(1, 1), (2, 1)])),
        ([1, 1, 0, 0], vec![(1, 1)], 13, None),
    ] {
        let mut left = job([9, 8, 5, 4].into_iter(), capacity, None);
        let groups_of_two = Groups { job: left.clone(), kinds: (0..4).collect(), places: vec![0..2, 2..4] };
        for (kind, count) in left.kinds.iter_mut().zip(counts) {
            kind.count = count;
        }
        let before = left.clone();
        let board = groups_of_two.board(&mut left, 0, &groups);
        assert_eq!(board, wanted.map(|pattern| Batch { supply: 0, pattern, times: 1 }), "{counts:?} {groups:?} in {capacity}");
        assert_eq!(left, before);
        left.supplies[0].limit = Some(0);
        assert_eq!(groups_of_two.board(&mut left, 0, &groups), None);
    }
}

fn is_whole(plan: &[Batch], job: &Job) -> bool {
    let mut left = job.clone();
    for batch in plan {
        left.take(batch);
    }
    left.is_done() && plan.iter().all(|batch| job.used(&batch.pattern) <= job.supplies[0].capacity)
}

/// 260 lengths, two of which fill a board each time: a whole plan, near the least there can be, that is 130 boards. Without patience
/// a plan comes all the same; without boards none does.
#[test]
fn whole_plans() {
    let job = job((0..260).map(|number| 630 - number), 1001, None);
    for (steps, most) in [(10_000_000, 132), (0, 260)] {
        let plan = coarse(&job, &mut Patience::new(steps, &|| true)).unwrap();
        assert!(is_whole(&plan, &job));
        assert!((130..=most).contains(&job.cost(&plan)), "{}", job.cost(&plan));
    }
    let few = Job { supplies: vec![Supply { limit: Some(100), ..job.supplies[0] }], ..job };
    assert_eq!(coarse(&few, &mut Patience::new(0, &|| true)), None::<Vec<Batch>>);
}

/// 300 and 400 lengths without any order, which take some rounds: on as many boards as all the lengths together fill. 350 that
/// are alike but for a little, of which no round has any use until the last one: on one more at the most.
#[test]
fn rounds_until_nothing_is_lost() {
    for (count, step, range, least, capacity, more) in
        [(300, 101, 701, 100, 1000, 0), (400, 173, 1009, 300, 2400, 0), (350, 1, 5000, 211, 1999, 1)]
    {
        let mut sizes: Vec<u64> = (0..count).map(|number| least + number * step % range).collect();
        sizes.sort_unstable_by_key(|size| core::cmp::Reverse(*size));
        let job = job(sizes.iter().copied(), capacity, None);
        let plan = coarse(&job, &mut Patience::new(40_000_000, &|| true)).unwrap();
        assert!(is_whole(&plan, &job));
        let filled = sizes.iter().sum::<u64>().div_ceil(capacity);
        assert!((filled..=filled + more).contains(&job.cost(&plan)), "{count} lengths on {}", job.cost(&plan));
    }
}
