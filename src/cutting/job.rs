//! A job in whole numbers: sizes and capacities counted in one grain, costs in one unit. What the numbers stand for is left to
//! `grain.rs`; from here on nothing is rounded, because nothing needs to be.

use alloc::vec::Vec;

/// Parts of one size that are still to be cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Kind {
    /// What one takes up of a board's capacity, its kerf included. Never zero.
    pub(super) size: u64,
    pub(super) count: u64,
}

/// Boards of one length.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Supply {
    pub(super) capacity: u64,
    pub(super) cost: u64,
    /// How many there are; `None` for as many as it takes.
    pub(super) limit: Option<u64>,
}

/// What is to be cut, and from what.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Job {
    /// From the largest size down, each size once.
    pub(super) kinds: Vec<Kind>,
    pub(super) supplies: Vec<Supply>,
}

/// What is cut from one board: kinds with how many of each, from the largest down.
pub(super) type Pattern = Vec<(usize, u64)>;

/// So many boards of one supply, all cut alike.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Batch {
    pub(super) supply: usize,
    pub(super) pattern: Pattern,
    pub(super) times: u64,
}

/// The largest capacity and cost, and the most parts: what worths and their sums still have room for.
pub(super) const MOST_CAPACITY: u64 = 1 << 40;
pub(super) const MOST_COST: u64 = 1 << 34;
pub(super) const MOST_PARTS: u64 = 1 << 20;

impl Batch {
    /// Told in other kinds: each by its name in a list.
    pub(super) fn renamed(&self, kinds: &[usize]) -> Self {
        let pattern = self.pattern.iter().map(|(kind, count)| (kinds[*kind], *count)).collect();
        Self { pattern, ..*self }
    }
}

impl Job {
    /// The same without kinds that are used up, and which of them each kind is.
    pub(super) fn kinds_left(&self) -> (Self, Vec<usize>) {
        let kinds: Vec<usize> = (0..self.kinds.len()).filter(|kind| self.kinds[*kind].count > 0).collect();
        let left = Self { kinds: kinds.iter().map(|kind| self.kinds[*kind]).collect(), supplies: self.supplies.clone() };
        (left, kinds)
    }

    pub(super) fn parts(&self) -> u64 {
        self.kinds.iter().map(|kind| kind.count).sum()
    }

    pub(super) fn is_done(&self) -> bool {
        self.kinds.iter().all(|kind| kind.count == 0)
    }

    pub(super) fn widest(&self) -> u64 {
        self.supplies.iter().map(|supply| supply.capacity).max().unwrap_or(0)
    }

    pub(super) fn dearest(&self) -> u64 {
        self.supplies.iter().map(|supply| supply.cost).max().unwrap_or(0).max(1)
    }

    pub(super) fn cost(&self, batches: &[Batch]) -> u64 {
        batches.iter().map(|batch| self.supplies[batch.supply].cost * batch.times).sum()
    }

    /// What no plan costs more than that leaves no board empty.
    pub(super) fn highest_cost(&self) -> u64 {
        self.parts() * self.dearest()
    }

    /// The room that a pattern takes.
    pub(super) fn used(&self, pattern: &[(usize, u64)]) -> u64 {
        pattern.iter().map(|(kind, count)| self.kinds[*kind].size * count).sum()
    }

    pub(super) fn is_there(&self, supply: usize) -> bool {
        self.supplies[supply].limit != Some(0)
    }

    /// How often a pattern can still be cut from a supply without cutting anything twice.
    pub(super) fn most_times(&self, supply: usize, pattern: &[(usize, u64)]) -> u64 {
        let by_parts = pattern.iter().map(|(kind, count)| self.kinds[*kind].count / count).min().unwrap_or(0);
        by_parts.min(self.supplies[supply].limit.unwrap_or(u64::MAX))
    }

    /// Takes boards that have been cut out of the job. They must be there, and their parts be needed.
    pub(super) fn take(&mut self, batch: &Batch) {
        for (kind, count) in &batch.pattern {
            self.kinds[*kind].count -= count * batch.times;
        }
        if let Some(limit) = &mut self.supplies[batch.supply].limit {
            *limit -= batch.times;
        }
    }

    /// Puts them back.
    pub(super) fn put_back(&mut self, batch: &Batch) {
        for (kind, count) in &batch.pattern {
            self.kinds[*kind].count += count * batch.times;
        }
        if let Some(limit) = &mut self.supplies[batch.supply].limit {
            *limit += batch.times;
        }
    }
}

#[cfg(test)]
mod tests {
    use std::vec;

    use super::{Batch, Job, Kind, Supply};

    #[test]
    fn boards_taken_and_put_back() {
        let kinds = [(7, 4), (5, 0), (3, 9)].map(|(size, count)| Kind { size, count });
        let job = Job { kinds: kinds.into(), supplies: vec![Supply { capacity: 20, cost: 1, limit: Some(3) }] };
        let batch = Batch { supply: 0, pattern: vec![(0, 1), (2, 4)], times: 2 };
        // 7 and 4 times 3.
        assert_eq!((job.used(&batch.pattern), job.used(&[(2, 3)]), job.used(&[])), (19, 9, 0));
        assert_eq!(job.kinds_left().1, [0, 2]);
        let mut left = job.clone();
        left.take(&batch);
        assert_eq!((left.kinds[0].count, left.kinds[2].count, left.supplies[0].limit), (2, 1, Some(1)));
        left.put_back(&batch);
        assert_eq!(left, job);
    }
}
