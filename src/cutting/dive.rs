//! A plan from the solution of the linear program: what is whole in it is cut, what is nearly whole is rounded up, and the rest
//! is solved anew, until so little is left that every way to cut it can be tried.

use alloc::vec::Vec;
use core::cmp::Reverse;

use super::columns::relax;
use super::fine::Fine;
use super::job::{Batch, Job, Pattern};
use super::packing::{filled, largest_first};
use super::patience::Patience;
use super::search::{self, Found};
use super::simplex::Master;

/// Down to so few parts every way to cut them is tried, within a share of patience.
const FEW_PARTS: u64 = 100;
const SHARE: u64 = 1_000_000;

/// The percentage of a board from which a number of boards is rounded up, for one way down after the other.
pub(super) const WAYS_DOWN: [u64; 8] = [60, 99, 80, 40, 70, 90, 50, 75];

/// A plan that costs less than `below`; `None` when this way down leads to none.
pub(super) fn dive(job: &Job, master: &mut Master, below: u64, up_from: u64, patience: &mut Patience) -> Option<Vec<Batch>> {
    let mut left = job.clone();
    let mut batches: Vec<Batch> = Vec::new();
    while !left.is_done() {
        let cost = job.cost(&batches);
        let allowed = below.checked_sub(cost + 1)?;
        master.need(&left);
        let worth = relax(&left, master, allowed.saturating_add(1), patience);
        if worth.bound(&left) > allowed {
            return None;
        }
        if left.parts() <= FEW_PARTS {
            let mut share = patience.some(SHARE);
            let found = search::search(&left, &worth, allowed, &mut share);
            patience.settle(SHARE, &share);
            match found {
                Found::Plan(rest) => {
                    batches.extend(rest);
                    break;
                }
                Found::NoneThere => return None,
                Found::NoneYet => {}
            }
        }
        if patience.is_out() {
            batches.extend(largest_first(&left)?);
            break;
        }
        batches.extend(round(&mut left, master, up_from)?);
    }
    (job.cost(&batches) < below).then_some(batches)
}

/// Takes what is whole, and what is to be rounded up, the fullest first; at least one board.
fn round(left: &mut Job, master: &Master, up_from: u64) -> Option<Vec<Batch>> {
    let mut wanted: Vec<(usize, Pattern, u64, Fine)> = Vec::new();
    for (supply, pattern, amount) in master.amounts().filter(|(.., amount)| *amount > Fine::SMALL) {
        let whole = amount.floor();
        wanted.push((supply, pattern.clone(), whole, amount - Fine::whole(whole)));
    }
    let mut taken = Vec::new();
    for (supply, pattern, whole, _) in &wanted {
        take(left, *supply, pattern, *whole, &mut taken);
    }
    wanted.sort_by_key(|(.., part)| Reverse(*part));
    for (supply, pattern, _, part) in &wanted {
        if *part >= Fine::share(up_from, 100) || taken.is_empty() {
            take(left, *supply, pattern, 1, &mut taken);
        }
    }
    if taken.is_empty() {
        // Every pattern asks for parts that are cut already: one board by the first of them, made up with what is left.
        let (supply, pattern, ..) = wanted.iter().find(|(supply, ..)| left.is_there(*supply))?;
        let needed =
            pattern.iter().map(|(kind, count)| (*kind, left.kinds[*kind].count.min(*count))).filter(|(_, count)| *count > 0);
        let needed: Pattern = needed.collect();
        let pattern = filled(left, &needed, left.supplies[*supply].capacity);
        take(left, *supply, &pattern, 1, &mut taken);
    }
    (!taken.is_empty()).then_some(taken)
}

fn take(left: &mut Job, supply: usize, pattern: &Pattern, wanted: u64, taken: &mut Vec<Batch>) {
    let times = left.most_times(supply, pattern).min(wanted);
    if times > 0 && !pattern.is_empty() {
        let batch = Batch { supply, pattern: pattern.clone(), times };
        left.take(&batch);
        taken.push(batch);
    }
}

#[cfg(test)]
mod tests;
