//! The way to a plan: a quick one, a bound, better ones from the linear program, and for jobs that are small enough every way
//! to cut them. Each step is taken only if the one before has not proved its plan to be the best.

use alloc::vec::Vec;

use super::coarse::coarse;
use super::columns::relax;
use super::dive::{WAYS_DOWN, dive};
use super::job::{Batch, Job};
use super::packing::{fullest, largest_first};
use super::patience::Patience;
use super::search::{Found, search};
use super::simplex::Master;
use super::worth::Worth;

/// With more lengths than this boards are easily filled, and that is tried first; this and the next within a share of patience each.
const MANY_KINDS: usize = 20;
/// With more than this the linear program takes long, and lengths near each other are taken for one before.
const VERY_MANY_KINDS: usize = 300;
const FILLING: u64 = 150_000_000;
/// With more than this the linear program is too large.
const MOST_KINDS: usize = 1000;

type WayToPlan = fn(&Job, &mut Patience) -> Option<Vec<Batch>>;

/// What came of a job.
pub(super) struct Answer {
    /// The best plan found, if any was.
    pub(super) batches: Option<Vec<Batch>>,
    /// What no plan costs less than. Without a plan, and with the bound out of reach, there is none.
    pub(super) bound: u64,
    /// Whether all ways were tried: without a plan there is none.
    pub(super) is_settled: bool,
}

pub(super) fn solve(job: &Job, patience: &mut Patience) -> Answer {
    let mut solver = Solver { job, best: largest_first(job), worth: Worth::by_size(job), bound: 0 };
    solver.bound = solver.worth.bound(job);
    let is_settled = solver.is_settled() || solver.improve(patience);
    Answer { batches: solver.best, bound: solver.bound, is_settled }
}

struct Solver<'a> {
    job: &'a Job,
    best: Option<Vec<Batch>>,
    worth: Worth,
    bound: u64,
}

impl Solver<'_> {
    /// One more than the most that a better plan costs.
    fn below(&self) -> u64 {
        self.best.as_ref().map_or(self.job.highest_cost() + 1, |best| self.job.cost(best))
    }

    fn is_settled(&self) -> bool {
        self.below() <= self.bound
    }

    fn take(&mut self, plan: Option<Vec<Batch>>) {
        if let Some(better) = plan.filter(|plan| self.job.cost(plan) < self.below()) {
            self.best = Some(better);
        }
    }

    fn improve(&mut self, patience: &mut Patience) -> bool {
        for (kinds, way) in [(MANY_KINDS, fullest as WayToPlan), (VERY_MANY_KINDS, coarse)] {
            if !self.is_settled() && self.job.kinds.len() > kinds {
                let mut share = patience.some(FILLING);
                let plan = way(self.job, &mut share);
                patience.settle(FILLING, &share);
                self.take(plan);
            }
        }
        if self.is_settled() || self.job.kinds.len() > MOST_KINDS {
            return self.is_settled();
        }
        let mut master = Master::new(self.job);
        for batch in self.best.iter().flatten() {
            master.add(self.job, batch.supply, batch.pattern.clone());
        }
        self.worth = relax(self.job, &mut master, self.below(), patience);
        self.bound = self.bound.max(self.worth.bound(self.job));
        for way in WAYS_DOWN {
            if self.is_settled() || patience.is_out() {
                break;
            }
            let plan = dive(self.job, &mut master, self.below(), way, patience);
            self.take(plan);
        }
        self.is_settled() || self.try_every_way(patience)
    }

    /// Whether the best plan is proved to be that, in the end.
    fn try_every_way(&mut self, patience: &mut Patience) -> bool {
        while !self.is_settled() {
            match search(self.job, &self.worth, self.below() - 1, patience) {
                Found::Plan(better) => self.best = Some(better),
                Found::NoneThere => {
                    self.bound = self.below();
                    return true;
                }
                Found::NoneYet => return false,
            }
        }
        true
    }
}

#[cfg(test)]
mod tests;
