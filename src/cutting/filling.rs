//! The filling of a board that is worth most, for given worths of the parts: the exact answer, by going over every filling
//! that no other beats in both room and worth. What parts are worth is left to `columns.rs`.

use alloc::vec;
use alloc::vec::Vec;

use super::job::{Job, Pattern};
use super::patience::Patience;

/// The best filling of one supply.
pub(super) struct Filling {
    pub(super) worth: i64,
    pub(super) pattern: Pattern,
}

/// A filling on the way. Of two, the one that takes less room and is worth no less is kept.
#[derive(Clone, Copy)]
struct State {
    room: u64,
    worth: i64,
    link: usize,
}

impl State {
    fn moved(self, room: u64, worth: i64) -> Self {
        Self { room: self.room + room, worth: self.worth + worth, ..self }
    }
}

/// How a state came from another.
struct Link {
    kind: usize,
    count: u64,
    before: usize,
}

const EMPTY: usize = 0;

/// The best filling of each supply with the parts of the job; `None` when patience ran out.
pub(super) fn best_fillings(job: &Job, worths: &[i64], patience: &mut Patience) -> Option<Vec<Filling>> {
    let mut fronts = Fronts::new(job);
    let order = by_density(job, worths);
    for (place, kind) in order.iter().copied().enumerate() {
        let most = job.kinds[kind].count.min(job.widest() / job.kinds[kind].size);
        for count in bundles(most) {
            patience.spend(fronts.front.len() as u64 / 8 + 1)?;
            fronts.add(kind, count, worths[kind]);
        }
        fronts.note_best();
        let next = order.get(place + 1).map(|next| (worths[*next], job.kinds[*next].size));
        fronts.drop_hopeless(next);
    }
    Some(fronts.finish())
}

/// The kinds that are worth something, most worth for their size first.
fn by_density(job: &Job, worths: &[i64]) -> Vec<usize> {
    let mut order: Vec<usize> = (0..worths.len()).filter(|kind| worths[*kind] > 0 && job.kinds[*kind].count > 0).collect();
    order.sort_by(|a, b| {
        let left = i128::from(worths[*a]) * i128::from(job.kinds[*b].size);
        let right = i128::from(worths[*b]) * i128::from(job.kinds[*a].size);
        right.cmp(&left)
    });
    order
}

/// Counts whose sums are every number up to the most, and none above it: 1, 2, 4 .. and a rest.
fn bundles(most: u64) -> impl Iterator<Item = u64> {
    let mut left = most;
    let mut next = 1;
    core::iter::from_fn(move || {
        let bundle = next.min(left);
        left -= bundle;
        next *= 2;
        (bundle > 0).then_some(bundle)
    })
}

struct Fronts<'a> {
    job: &'a Job,
    /// By room and by worth, both rising.
    front: Vec<State>,
    links: Vec<Link>,
    /// Worth and link of the best filling met so far, for each supply.
    best: Vec<(i64, usize)>,
}

impl<'a> Fronts<'a> {
    fn new(job: &'a Job) -> Self {
        Self {
            job,
            front: vec![State { room: 0, worth: 0, link: EMPTY }],
            links: vec![Link { kind: 0, count: 0, before: EMPTY }],
            best: vec![(0, EMPTY); job.supplies.len()],
        }
    }

    /// So many more of a kind, or not: the front of before merged with itself moved on.
    fn add(&mut self, kind: usize, count: u64, worth: i64) {
        let (room, widest) = (self.job.kinds[kind].size * count, self.job.widest());
        let worth = worth * i64::try_from(count).unwrap_or(i64::MAX); // at most MOST_PARTS
        let before = core::mem::take(&mut self.front);
        let mut merged: Vec<State> = Vec::with_capacity(before.len() * 2);
        let (mut old, mut moved) = (0, 0);
        while old < before.len() || before.get(moved).is_some_and(|state| state.room + room <= widest) {
            let next = before.get(moved).filter(|state| state.room + room <= widest);
            let takes_old = match (before.get(old), next) {
                (Some(old), Some(next)) => old.room <= next.room + room,
                (old, _) => old.is_some(),
            };
            let state = if takes_old { before[old] } else { before[moved].moved(room, worth) };
            *(if takes_old { &mut old } else { &mut moved }) += 1;
            if merged.last().is_some_and(|last| last.worth >= state.worth) {
                continue;
            }
            if merged.last().is_some_and(|last| last.room == state.room) {
                merged.pop();
            }
            let link = if takes_old { state.link } else { self.link(kind, count, state.link) };
            merged.push(State { link, ..state });
        }
        self.front = merged;
    }

    fn link(&mut self, kind: usize, count: u64, before: usize) -> usize {
        self.links.push(Link { kind, count, before });
        self.links.len() - 1
    }

    fn note_best(&mut self) {
        for (best, supply) in self.best.iter_mut().zip(&self.job.supplies) {
            let fitting = self.front.partition_point(|state| state.room <= supply.capacity);
            let last = fitting.checked_sub(1).map(|last| self.front[last]);
            if let Some(state) = last.filter(|state| state.worth > best.0) {
                *best = (state.worth, state.link);
            }
        }
    }

    /// Drops what cannot become better than the best, were all room left as well used as the next kind uses it.
    fn drop_hopeless(&mut self, next: Option<(i64, u64)>) {
        let Some((worth, size)) = next else { return };
        let (best, supplies) = (&self.best, &self.job.supplies);
        self.front.retain(|state| {
            best.iter().zip(supplies).any(|((best, _), supply)| {
                let free = supply.capacity.checked_sub(state.room);
                free.is_some_and(|free| i128::from(free) * i128::from(worth) > i128::from(best - state.worth) * i128::from(size))
            })
        });
    }

    fn finish(self) -> Vec<Filling> {
        self.best.iter().map(|(worth, link)| Filling { worth: *worth, pattern: self.pattern(*link) }).collect()
    }

    fn pattern(&self, link: usize) -> Pattern {
        let mut counts: Pattern = Vec::new();
        let mut at = link;
        while at != EMPTY {
            let Link { kind, count, before } = self.links[at];
            match counts.iter_mut().find(|(other, _)| *other == kind) {
                Some((_, total)) => *total += count,
                None => counts.push((kind, count)),
            }
            at = before;
        }
        counts.sort_unstable();
        counts
    }
}

#[cfg(test)]
mod tests;
