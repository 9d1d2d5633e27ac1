//! A plan at once, board by board: the largest parts first, good enough to begin with and what is left to do where patience ends;
//! or each board filled as full as it gets, for jobs of so many lengths that there is always one more to fit. Better ones are left to
//! `dive.rs` and `search.rs`.

use alloc::collections::BTreeMap;
use alloc::vec::Vec;

use super::filling::best_fillings;
use super::job::{Batch, Job, Pattern};
use super::patience::Patience;

/// After so many boards the kinds that are used up are left out, so that they need not be passed over again.
const BOARDS_BETWEEN: usize = 500;

/// A whole plan; `None` when the boards run out.
pub(super) fn largest_first(job: &Job) -> Option<Vec<Batch>> {
    let (mut left, mut kinds) = job.kinds_left();
    let mut batches = Vec::new();
    while !left.is_done() {
        let batch = cheapest_board(&left)?;
        left.take(&batch);
        batches.push(batch.renamed(&kinds));
        if batches.len() % BOARDS_BETWEEN == 0 {
            let (fewer, still) = left.kinds_left();
            kinds = still.into_iter().map(|kind| kinds[kind]).collect();
            left = fewer;
        }
    }
    Some(batches)
}

/// A whole plan of boards that hold the largest part left and are else as full as can be, as long as patience lasts; `None` when the
/// boards run out.
pub(super) fn fullest(job: &Job, patience: &mut Patience) -> Option<Vec<Batch>> {
    let mut left = job.clone();
    let mut batches = Vec::new();
    while !left.is_done() {
        let Some(batch) = fullest_board(&left, patience) else {
            batches.extend(largest_first(&left)?);
            break;
        };
        left.take(&batch);
        batches.push(batch);
    }
    Some(batches)
}

fn fullest_board(left: &Job, patience: &mut Patience) -> Option<Batch> {
    let largest = left.kinds.iter().position(|kind| kind.count > 0)?;
    let size = left.kinds[largest].size;
    let mut rest = left.clone();
    rest.kinds[largest].count -= 1;
    // What is left of each board behind the largest part; boards that do not hold it have no room for anything.
    let holds: Vec<bool> = left.supplies.iter().map(|supply| supply.limit != Some(0) && supply.capacity >= size).collect();
    for (supply, holds) in rest.supplies.iter_mut().zip(&holds) {
        supply.capacity = if *holds { supply.capacity - size } else { 0 };
    }
    let worths: Vec<i64> = left.kinds.iter().map(|kind| i64::try_from(kind.size).unwrap_or(0)).collect();
    let fillings = best_fillings(&rest, &worths, patience)?;
    let filled = fillings.into_iter().enumerate().filter(|(supply, _)| holds[*supply]).map(|(supply, filling)| {
        let mut pattern = filling.pattern;
        match pattern.first_mut().filter(|(kind, _)| *kind == largest) {
            Some((_, count)) => *count += 1,
            None => pattern.insert(0, (largest, 1)),
        }
        (supply, pattern)
    });
    let (supply, pattern) = filled.min_by(|a, b| share(left, a).cmp(&share(left, b)))?;
    let times = left.most_times(supply, &pattern);
    Some(Batch { supply, pattern, times })
}

/// Of the boards that hold the largest part left, the one that costs least for what is cut from it, as often as it can be cut.
fn cheapest_board(left: &Job) -> Option<Batch> {
    let largest = left.kinds.iter().find(|kind| kind.count > 0)?.size;
    let fitting = (0..left.supplies.len()).filter(|supply| left.is_there(*supply) && left.supplies[*supply].capacity >= largest);
    let filled = fitting.map(|supply| (supply, filled(left, &[], left.supplies[supply].capacity)));
    let (supply, pattern) = filled.min_by(|a, b| share(left, a).cmp(&share(left, b)))?;
    let times = left.most_times(supply, &pattern);
    Some(Batch { supply, pattern, times })
}

/// Cost for size, as a fraction to compare by. All sizes are above zero.
fn share(left: &Job, (supply, pattern): &(usize, Pattern)) -> num_rational::Ratio<u128> {
    let size: u128 = pattern.iter().map(|(kind, count)| u128::from(left.kinds[*kind].size) * u128::from(*count)).sum();
    num_rational::Ratio::new(left.supplies[*supply].cost.into(), size.max(1))
}

/// A pattern with as many more parts of the job as fit, the largest first. The pattern's own parts must be among the job's.
pub(super) fn filled(job: &Job, pattern: &[(usize, u64)], capacity: u64) -> Pattern {
    let mut whole: BTreeMap<usize, u64> = pattern.iter().copied().collect();
    let mut free = capacity - pattern.iter().map(|(kind, count)| job.kinds[*kind].size * count).sum::<u64>();
    let mut index = 0;
    while let Some(kind) = job.kinds.get(index) {
        // Kinds too large for the room left are leaped over.
        if kind.count == 0 {
            index += 1;
        } else if kind.size > free {
            index += job.kinds[index..].partition_point(|kind| kind.size > free);
        } else {
            let own = whole.get(&index).copied().unwrap_or(0);
            let more = (kind.count - own).min(free / kind.size);
            whole.insert(index, own + more);
            free -= more * kind.size;
            index += 1;
        }
    }
    whole.into_iter().collect()
}

#[cfg(test)]
mod tests;
