//! A plan for a job of very many lengths. Lengths near each other are taken for one, and of the linear program over those few what is
//! whole is cut, each board from parts that fill it best. Then lengths are fewer, and nearer to each other; when every one stands for
//! itself, what is left is planned as any job is.

use alloc::collections::BTreeMap;
use alloc::vec::Vec;
use core::iter::repeat_n;
use core::ops::Range;

use super::columns::relax;
use super::job::{Batch, Job, Kind, Pattern};
use super::packing::largest_first;
use super::patience::Patience;
use super::simplex::Master;
use super::solve::solve;

/// How many lengths are told apart.
const MOST_GROUPS: usize = 120;

/// The share of a board that may be left empty beside what a pattern leaves: twice as much each time.
const WASTE: u64 = 1 << 13;

/// A whole plan; `None` when the boards run out.
pub(super) fn coarse(job: &Job, patience: &mut Patience) -> Option<Vec<Batch>> {
    let mut left = job.clone();
    let mut batches = Vec::new();
    let mut share = WASTE;
    while !left.is_done() {
        let groups = Groups::of(&left);
        if groups.are_single() {
            let rest = solve(&groups.job, patience).batches?;
            batches.extend(rest.iter().map(|batch| batch.renamed(&groups.kinds)));
            break;
        }
        batches.extend(groups.cut(&mut left, share, patience));
        if share == 1 || patience.is_out() {
            batches.extend(largest_first(&left)?);
            break;
        }
        share /= 2;
    }
    Some(batches)
}

/// The kinds left of a job, those next to each other together.
struct Groups {
    job: Job,
    /// The kinds left, group by group.
    kinds: Vec<usize>,
    places: Vec<Range<usize>>,
}

impl Groups {
    fn of(left: &Job) -> Self {
        let (left, kinds) = left.kinds_left();
        let most = kinds.len().div_ceil(MOST_GROUPS).max(1);
        let places: Vec<Range<usize>> = (0..kinds.len()).step_by(most).map(|from| from..(from + most).min(kinds.len())).collect();
        let job = Job { kinds: places.iter().map(|place| mean(&left.kinds[place.clone()])).collect(), supplies: left.supplies };
        Self { job, kinds, places }
    }

    fn are_single(&self) -> bool {
        self.places.len() == self.kinds.len()
    }

    /// The boards that are whole in the linear program over the groups and leave no more than a share of a board empty, beside what
    /// their patterns do.
    fn cut(&self, left: &mut Job, share: u64, patience: &mut Patience) -> Vec<Batch> {
        let mut master = Master::new(&self.job);
        for batch in largest_first(&self.job).into_iter().flatten() {
            master.add(&self.job, batch.supply, batch.pattern);
        }
        relax(&self.job, &mut master, u64::MAX, patience);
        let mut taken = Vec::new();
        for (supply, pattern, amount) in master.amounts() {
            let least = self.job.used(pattern).saturating_sub(left.supplies[supply].capacity / share);
            for _ in 0..amount.floor() {
                let board = self.board(left, supply, pattern).filter(|board| left.used(&board.pattern) >= least);
                let Some(board) = board.filter(|_| patience.spend(left.kinds.len() as u64 / 64 + 1).is_some()) else { break };
                left.take(&board);
                taken.push(board);
            }
        }
        taken
    }

    /// A board with so many parts of each group.
    fn board(&self, left: &mut Job, supply: usize, pattern: &Pattern) -> Option<Batch> {
        let mut groups = Vec::new();
        for (group, count) in pattern {
            groups.extend(repeat_n(*group, usize::try_from(*count).ok()?));
        }
        let mut chosen = Vec::new();
        let is_filled =
            left.is_there(supply) && self.choose(left, left.supplies[supply].capacity, &groups, &mut chosen).is_some();
        let mut pattern = BTreeMap::new();
        for kind in chosen {
            left.kinds[kind].count += 1;
            *pattern.entry(kind).or_insert(0) += 1;
        }
        is_filled.then(|| Batch { supply, pattern: pattern.into_iter().collect(), times: 1 })
    }

    /// Takes a part from each group, each time the largest that leaves room for the others; `None` when there is no room.
    fn choose(&self, left: &mut Job, capacity: u64, groups: &[usize], chosen: &mut Vec<usize>) -> Option<()> {
        let mut free = capacity;
        for (place, group) in groups.iter().enumerate() {
            let others: Option<u64> = groups[place + 1..].iter().map(|group| self.least(left, *group)).sum();
            let room = free.checked_sub(others?)?;
            let kind =
                *self.members(*group).iter().find(|kind| left.kinds[**kind].count > 0 && left.kinds[**kind].size <= room)?;
            left.kinds[kind].count -= 1;
            free -= left.kinds[kind].size;
            chosen.push(kind);
        }
        Some(())
    }

    /// The smallest size that is left of a group.
    fn least(&self, left: &Job, group: usize) -> Option<u64> {
        let smallest = self.members(group).iter().rev().find(|kind| left.kinds[**kind].count > 0)?;
        Some(left.kinds[*smallest].size)
    }

    fn members(&self, group: usize) -> &[usize] {
        &self.kinds[self.places[group].clone()]
    }
}

/// One kind for many, of the size that they have on average.
fn mean(kinds: &[Kind]) -> Kind {
    let count = kinds.iter().map(|kind| kind.count).sum();
    let size: u128 = kinds.iter().map(|kind| u128::from(kind.size) * u128::from(kind.count)).sum();
    Kind { size: u64::try_from(size.div_ceil(u128::from(count))).unwrap_or(u64::MAX), count }
}

#[cfg(test)]
mod tests;
