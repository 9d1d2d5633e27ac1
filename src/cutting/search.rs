//! Every way to cut a job within a cost, tried one board after the other: until one is found, or until there is none, which
//! then is proved. A board is passed over when no plan that goes on from it can cost so little, by the proved worths, or
//! when another board is as good in every plan.

use alloc::collections::BTreeMap;
use alloc::vec;
use alloc::vec::Vec;

use super::job::{Batch, Job};
use super::node::{Choice, choices};
use super::patience::Patience;
use super::worth::Worth;

/// More parts than this are not tried one by one: each board takes a step down the stack.
pub(super) const MOST_SEARCHED: u64 = 400;
/// How many dead ends are kept in mind.
const MOST_DEAD_ENDS: usize = 200_000;

/// What a search came to.
pub(super) enum Found {
    Plan(Vec<Batch>),
    /// No plan costs so little.
    NoneThere,
    /// Patience ended first.
    NoneYet,
}

/// The first plan that costs at most `allowed`.
pub(super) fn search(job: &Job, worth: &Worth, allowed: u64, patience: &mut Patience) -> Found {
    if worth.bound(job) > allowed {
        return Found::NoneThere;
    }
    if job.parts() > MOST_SEARCHED {
        return Found::NoneYet;
    }
    let slack = i128::from(allowed) * i128::from(worth.unit) - worth.total(job);
    let mut search = Search { worth, allowed, left: job.clone(), chosen: Vec::new(), dead_ends: BTreeMap::new(), patience };
    match search.go_on(slack, 0) {
        Some(true) => Found::Plan(search.chosen.into_iter().map(Choice::batch).collect()),
        Some(false) => Found::NoneThere,
        None => Found::NoneYet,
    }
}

struct Search<'a, 'b> {
    worth: &'a Worth,
    allowed: u64,
    left: Job,
    chosen: Vec<Choice>,
    /// What is left of a job that no plan finishes within so much slack.
    dead_ends: BTreeMap<Vec<u64>, i128>,
    patience: &'a mut Patience<'b>,
}

impl Search<'_, '_> {
    /// Whether the parts left can be cut with so much slack; `None` when patience ended.
    fn go_on(&mut self, slack: i128, cost: u64) -> Option<bool> {
        if self.left.is_done() {
            return Some(cost <= self.allowed);
        }
        let key = self.key();
        if self.dead_ends.get(&key).is_some_and(|dead| *dead >= slack) {
            return Some(false);
        }
        for choice in choices(&self.left, self.worth, slack, self.patience)? {
            let (after, cost) = (slack - choice.lost, cost + self.left.supplies[choice.supply].cost);
            let batch = choice.clone().batch();
            self.left.take(&batch);
            self.chosen.push(choice);
            if self.go_on(after, cost)? {
                return Some(true);
            }
            self.chosen.pop();
            self.left.put_back(&batch);
        }
        if self.dead_ends.len() < MOST_DEAD_ENDS {
            self.dead_ends.insert(key, slack);
        }
        Some(false)
    }

    fn key(&self) -> Vec<u64> {
        let mut key = vec![0; self.left.kinds.len() + self.left.supplies.len()];
        let limits = self.left.supplies.iter().map(|supply| supply.limit.unwrap_or(0));
        let counts = self.left.kinds.iter().map(|kind| kind.count).chain(limits);
        key.iter_mut().zip(counts).for_each(|(place, count)| *place = count);
        key
    }
}

#[cfg(test)]
mod tests;
