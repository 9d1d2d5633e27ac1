//! Every way tried, against every way tried by other means; where it gives up.

use std::vec;
use std::vec::Vec;

use super::{Found, MOST_SEARCHED, search};
use crate::cutting::job::{Job, Kind, Supply};
use crate::cutting::patience::Patience;
use crate::cutting::worth::Worth;

fn tried(job: &Job, allowed: u64) -> Found {
    search(job, &Worth::by_size(job), allowed, &mut Patience::new(u64::MAX, &|| true))
}

/// The least cost, part by part: each into a board in use or into a new one.
fn least(parts: &[u64], boards: &mut Vec<u64>, left: &mut [Supply]) -> Option<u64> {
    let Some((part, rest)) = parts.split_first() else { return Some(0) };
    let mut best = None;
    for index in 0..boards.len() {
        if boards[index] >= *part {
            boards[index] -= part;
            best = best.into_iter().chain(least(rest, boards, left)).min();
            boards[index] += part;
        }
    }
    for index in 0..left.len() {
        let Supply { capacity, cost, limit } = left[index];
        if capacity >= *part && limit != Some(0) {
            left[index].limit = limit.map(|limit| limit - 1);
            boards.push(capacity - part);
            best = best.into_iter().chain(least(rest, boards, left).map(|rest| rest + cost)).min();
            boards.pop();
            left[index].limit = limit;
        }
    }
    best
}

#[test]
fn the_least_cost_is_found_and_no_less() {
    let mut random = 7919_u64;
    let mut between = |least: u64, most: u64| {
        random = (random ^ (random << 13)) & 0xffff_ffff;
        random ^= random >> 17;
        random = (random ^ (random << 5)) & 0xffff_ffff;
        least + random % (most - least + 1)
    };
    let mut solved = 0;
    for case in 0..300 {
        let mut kinds: Vec<Kind> = (0..between(2, 4)).map(|_| Kind { size: between(3, 20), count: between(1, 2) }).collect();
        kinds.sort_by_key(|kind| core::cmp::Reverse(kind.size));
        kinds.dedup_by_key(|kind| kind.size);
        let supplies = (0..between(1, 3)).map(|_| Supply {
            capacity: between(15, 40),
            cost: between(1, 9),
            limit: (between(0, 1) == 1).then(|| between(1, 2)),
        });
        let job = Job { supplies: supplies.collect(), kinds };
        let parts: Vec<u64> = job.kinds.iter().flat_map(|kind| vec![kind.size; usize::try_from(kind.count).unwrap()]).collect();
        let Some(least) = least(&parts, &mut Vec::new(), &mut job.supplies.clone()) else {
            assert!(matches!(tried(&job, 100), Found::NoneThere), "{case}: {job:?}");
            continue;
        };
        solved += 1;
        for allowed in [least, least + 1, least + 4] {
            let Found::Plan(plan) = tried(&job, allowed) else { panic!("{case}: {job:?} for {allowed}") };
            assert!(job.cost(&plan) <= allowed, "{case}: {job:?}");
            let mut left = job.clone();
            for batch in &plan {
                left.take(batch);
            }
            assert!(left.is_done(), "{case}: {job:?}");
        }
        assert!(matches!(tried(&job, least - 1), Found::NoneThere), "{case}: {job:?} for less than {least}");
    }
    assert!(solved > 150, "{solved}");
}

/// As many parts as are tried one by one, and one more.
#[test]
fn so_many_parts_and_no_more() {
    let job = |count| Job { kinds: vec![Kind { size: 9, count }], supplies: vec![Supply { capacity: 9, cost: 1, limit: None }] };
    assert!(matches!(tried(&job(MOST_SEARCHED), MOST_SEARCHED), Found::Plan(_)));
    assert!(matches!(tried(&job(MOST_SEARCHED + 1), MOST_SEARCHED + 1), Found::NoneYet));
}

/// By worths that prove nothing. 6 alone and 5 alone twice cost 15 and leave a 5, as 6 + 5 and 5 do for 14: within 18 only the dearer
/// board first leads to a plan, though what it leaves led nowhere before.
#[test]
fn a_dead_end_is_none_for_who_comes_cheaper() {
    let supplies = [(5, 4), (6, 7), (11, 10)].map(|(capacity, cost)| Supply { capacity, cost, limit: None });
    let job = Job { kinds: vec![Kind { size: 6, count: 1 }, Kind { size: 5, count: 3 }], supplies: supplies.into() };
    let worth = Worth { unit: 1, parts: vec![0, 0], extra: vec![0; 3] };
    let found = |allowed| search(&job, &worth, allowed, &mut Patience::new(u64::MAX, &|| true));
    assert!(matches!(found(18), Found::Plan(plan) if job.cost(&plan) == 18));
    assert!(matches!(found(17), Found::NoneThere));
}
