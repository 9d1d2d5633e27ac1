//! The boards that can be cut next in a search: each holds the largest part left, since some board must. What they lead to is
//! left to `search.rs`.

use alloc::vec;
use alloc::vec::Vec;

use super::job::{Batch, Job, Pattern};
use super::patience::Patience;
use super::worth::Worth;

/// More boards than this to choose from at one place are too many to go on.
const MOST_CHOICES: usize = 50_000;

/// What one of these takes, beside other steps.
const STEP: u64 = 3;

/// A board that can be cut next.
#[derive(Clone)]
pub(super) struct Choice {
    pub(super) supply: usize,
    pattern: Pattern,
    /// How much more the board is worth than what is cut from it.
    pub(super) lost: i128,
    free: u64,
}

impl Choice {
    pub(super) fn batch(self) -> Batch {
        Batch { supply: self.supply, pattern: self.pattern, times: 1 }
    }
}

/// All of them that lose no more than the slack, the least loss first; `None` when patience ended.
pub(super) fn choices(left: &Job, worth: &Worth, slack: i128, patience: &mut Patience) -> Option<Vec<Choice>> {
    let kinds: Vec<usize> = (0..left.kinds.len()).filter(|kind| left.kinds[*kind].count > 0).collect();
    let mut found = Vec::new();
    for supply in (0..left.supplies.len()).filter(|supply| left.is_there(*supply)) {
        let densest = densest(left, worth, &kinds);
        let counts = vec![0; kinds.len()];
        let mut node = Node { left, worth, slack, kinds: &kinds, densest, supply, counts, found: &mut found, patience };
        let value = i128::from(left.supplies[supply].cost) * i128::from(worth.unit) + i128::from(worth.extra[supply]);
        if left.kinds[kinds[0]].size <= left.supplies[supply].capacity {
            node.fill(0, left.supplies[supply].capacity, value)?;
        }
    }
    found.sort_by(|a, b| a.lost.cmp(&b.lost).then(a.free.cmp(&b.free)));
    Some(found)
}

/// From each kind on, the worth and the size of the one that is worth most for its size.
fn densest(left: &Job, worth: &Worth, kinds: &[usize]) -> Vec<(i64, u64)> {
    let mut densest = vec![(0, 1); kinds.len() + 1];
    for (place, kind) in kinds.iter().enumerate().rev() {
        let (own, other) = ((worth.parts[*kind], left.kinds[*kind].size), densest[place + 1]);
        let is_denser = i128::from(own.0) * i128::from(other.1) > i128::from(other.0) * i128::from(own.1);
        densest[place] = if is_denser { own } else { other };
    }
    densest
}

struct Node<'a, 'b> {
    left: &'a Job,
    worth: &'a Worth,
    slack: i128,
    kinds: &'a [usize],
    densest: Vec<(i64, u64)>,
    supply: usize,
    counts: Vec<u64>,
    found: &'a mut Vec<Choice>,
    patience: &'a mut Patience<'b>,
}

impl Node<'_, '_> {
    /// All counts of the kinds from a place on that go into the room left, where so much worth is not yet made up for.
    fn fill(&mut self, place: usize, free: u64, lost: i128) -> Option<()> {
        self.patience.spend(STEP)?;
        let (worth, size) = self.densest[place];
        if (lost - self.slack) * i128::from(size) > i128::from(free) * i128::from(worth) {
            return Some(());
        }
        let Some(kind) = self.kinds.get(place).copied() else { return self.finish(free, lost) };
        let (size, worth) = (self.left.kinds[kind].size, i128::from(self.worth.parts[kind]));
        let most = self.left.kinds[kind].count.min(free / size);
        // The first kind is the largest: some board must hold it.
        let least = u64::from(place == 0);
        for count in (least..=most).rev() {
            self.counts[place] = count;
            self.fill(place + 1, free - count * size, lost - i128::from(count) * worth)?;
        }
        self.counts[place] = 0;
        Some(())
    }

    fn finish(&mut self, free: u64, lost: i128) -> Option<()> {
        if lost > self.slack || !self.is_best_filled(free) || self.fits_cheaper(free) {
            return Some(());
        }
        if self.found.len() == MOST_CHOICES {
            return None;
        }
        let counted = self.kinds.iter().zip(&self.counts).filter(|(_, count)| **count > 0);
        let pattern = counted.map(|(kind, count)| (*kind, *count)).collect();
        self.found.push(Choice { supply: self.supply, pattern, lost, free });
        Some(())
    }

    /// Whether neither one more part fits, nor a larger one in the place of one that is cut. In every plan such a part could
    /// change places, so the board it makes fuller is enough.
    fn is_best_filled(&self, free: u64) -> bool {
        let mut larger = None;
        for (place, kind) in self.kinds.iter().enumerate() {
            let size = self.left.kinds[*kind].size;
            let is_left = self.left.kinds[*kind].count > self.counts[place];
            if is_left && size <= free {
                return false;
            }
            if self.counts[place] > 0 && larger.is_some_and(|larger| larger - size <= free) {
                return false;
            }
            if is_left {
                larger = Some(size);
            }
        }
        true
    }

    /// Whether the same parts come from a board that costs less, or as much and is shorter, of which there are enough.
    fn fits_cheaper(&self, free: u64) -> bool {
        let own = self.left.supplies[self.supply];
        let used = own.capacity - free;
        self.left.supplies.iter().enumerate().any(|(index, other)| {
            let is_better = (other.cost, other.capacity, index) < (own.cost, own.capacity, self.supply);
            other.limit.is_none() && other.capacity >= used && is_better
        })
    }
}

#[cfg(test)]
mod tests;
