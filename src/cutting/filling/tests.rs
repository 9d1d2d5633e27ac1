//! Fillings against every filling there is, and the proof on top of them against worths that nobody in their right mind proposes.

use std::vec::Vec;

use quickcheck::quickcheck;

use super::{best_fillings, bundles};
use crate::cutting::job::{Job, Kind, Supply};
use crate::cutting::patience::Patience;
use crate::cutting::worth::{Worth, in_range};

/// A small job and a worth for each of its kinds, from bytes: sizes falling, a few of each.
fn job(bytes: &[(u8, u8, u8)], capacities: &[(u8, u8, bool)]) -> Option<(Job, Vec<i64>)> {
    let mut kinds: Vec<_> =
        bytes.iter().take(4).map(|(size, count, worth)| (u64::from(size % 20) + 1, *count % 7, *worth)).collect();
    kinds.sort_unstable_by(|a, b| b.cmp(a));
    kinds.dedup_by_key(|kind| kind.0);
    let supply = |(capacity, cost, limited): &(u8, u8, bool)| Supply {
        capacity: u64::from(capacity % 60) + 1,
        cost: u64::from(cost % 9) + 1,
        limit: limited.then_some(2),
    };
    let supplies: Vec<_> = capacities.iter().take(3).map(supply).collect();
    // From nothing to far beyond what any board costs.
    let worths = kinds.iter().map(|kind| in_range(i64::MAX >> (u32::from(kind.2) % 64))).collect();
    let kinds: Vec<_> = kinds.into_iter().map(|(size, count, _)| Kind { size, count: count.into() }).collect();
    (!kinds.is_empty() && !supplies.is_empty()).then_some((Job { kinds, supplies }, worths))
}

/// Every way to fill a capacity: what each is worth, by given worths.
fn every_filling(kinds: &[Kind], worths: &[i64], capacity: u64) -> Vec<i128> {
    let Some((kind, rest)) = kinds.split_first() else { return [0].into() };
    let most = kind.count.min(capacity / kind.size);
    let with = |count| every_filling(rest, &worths[1..], capacity - count * kind.size).into_iter().map(move |rest| (count, rest));
    (0..=most).flat_map(with).map(|(count, rest)| rest + i128::from(count) * i128::from(worths[0])).collect()
}

/// Every number up to the most is a sum of some of them: 1, 2, 4 and what is left.
#[test]
fn counts_in_bundles() {
    for (most, wanted) in [(0, &[][..]), (1, &[1]), (2, &[1, 1]), (3, &[1, 2]), (7, &[1, 2, 4]), (11, &[1, 2, 4, 4])] {
        assert_eq!(bundles(most).collect::<Vec<_>>(), wanted);
    }
}

quickcheck! {
    fn no_filling_is_worth_more(bytes: Vec<(u8, u8, u8)>, capacities: Vec<(u8, u8, bool)>) -> bool {
        let Some((job, worths)) = job(&bytes, &capacities) else { return true };
        let fillings = best_fillings(&job, &worths, &mut Patience::new(u64::MAX, &|| true)).unwrap();
        job.supplies.iter().zip(fillings).all(|(supply, filling)| {
            let room: u64 = filling.pattern.iter().map(|(kind, count)| job.kinds[*kind].size * count).sum();
            let worth: i64 = filling.pattern.iter().map(|(kind, count)| worths[*kind] * i64::try_from(*count).unwrap()).sum();
            let is_there = filling.pattern.iter().all(|(kind, count)| *count <= job.kinds[*kind].count);
            let best = every_filling(&job.kinds, &worths, supply.capacity).into_iter().max();
            is_there && room <= supply.capacity && worth == filling.worth && best == Some(worth.into())
        })
    }

    /// Whatever was proposed, no filling is worth more than its board once the worths are proved.
    fn what_is_proved_holds_for_any_proposal(bytes: Vec<(u8, u8, u8)>, capacities: Vec<(u8, u8, bool)>) -> bool {
        let Some((job, worths)) = job(&bytes, &capacities) else { return true };
        let fillings = best_fillings(&job, &worths, &mut Patience::new(u64::MAX, &|| true)).unwrap();
        [Worth::proved(&job, &worths, &fillings), Worth::by_size(&job)].iter().all(|worth| {
            job.supplies.iter().zip(&worth.extra).all(|(supply, extra)| {
                let board = i128::from(supply.cost) * i128::from(worth.unit) + i128::from(*extra);
                let is_limited = supply.limit.is_some() || *extra == 0;
                is_limited && every_filling(&job.kinds, &worth.parts, supply.capacity).into_iter().all(|filling| filling <= board)
            })
        })
    }
}
