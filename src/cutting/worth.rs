//! The proof of a lower bound: what each part is worth, in whole units of so small a share of a cost that no filling of a board
//! is worth more than the board. The parts together then cost at least their worth, whoever proposed it.

use alloc::vec;
use alloc::vec::Vec;

use super::filling::Filling;
use super::job::{Job, MOST_PARTS};

/// The largest worth of one part: as many as there may be can be added in 63 bits.
#[allow(clippy::cast_possible_wrap)] // 2^20
const MOST_WORTH: i64 = i64::MAX / MOST_PARTS as i64;

/// Worths that are proved: no filling of a supply is worth more than `cost × unit + extra` of it.
#[derive(Clone, Debug)]
pub(super) struct Worth {
    /// How many units of worth make one unit of cost.
    pub(super) unit: i64,
    /// For each kind.
    pub(super) parts: Vec<i64>,
    /// For each supply: how much more than it costs a board is worth because there are only so many. Zero where there is no limit.
    pub(super) extra: Vec<i64>,
}

/// How many units of worth make one unit of cost: so many that rounding a worth down is no loss.
pub(super) fn unit(job: &Job) -> i64 {
    let most = MOST_WORTH / 4;
    most / i64::try_from(job.dearest()).unwrap_or(i64::MAX).min(most)
}

/// A proposed worth in a range in which sums cannot overflow.
pub(super) fn in_range(worth: i64) -> i64 {
    worth.clamp(0, MOST_WORTH)
}

impl Worth {
    /// By size alone: the least that any board costs for its capacity, all of it used.
    pub(super) fn by_size(job: &Job) -> Self {
        let unit = unit(job);
        let share = |size: u64, cost: u64, capacity: u64| {
            i128::from(size) * i128::from(cost) * i128::from(unit) / i128::from(capacity.max(1))
        };
        let part = |size| job.supplies.iter().map(|supply| share(size, supply.cost, supply.capacity)).min().unwrap_or(0);
        let parts = job.kinds.iter().map(|kind| in_range(i64::try_from(part(kind.size)).unwrap_or(0))).collect();
        Self { unit, parts, extra: vec![0; job.supplies.len()] }
    }

    /// From proposed worths and the best fillings for them. Where a filling is worth more than a board of which there are
    /// enough, all worths are brought down; where there is a limit, the board may be worth more.
    pub(super) fn proved(job: &Job, worths: &[i64], fillings: &[Filling]) -> Self {
        let candidates = [false, true].map(|limited_too| Self::scaled(job, worths, fillings, limited_too));
        let [first, second] = candidates;
        if first.total(job) >= second.total(job) { first } else { second }
    }

    fn scaled(job: &Job, worths: &[i64], fillings: &[Filling], limited_too: bool) -> Self {
        let unit = unit(job);
        let mut factor = (1_i128, 1_i128);
        for (supply, filling) in job.supplies.iter().zip(fillings) {
            let allowed = i128::from(supply.cost) * i128::from(unit);
            if supply.limit.is_some() && !limited_too {
                continue;
            }
            let worth = i128::from(filling.worth);
            if worth * factor.0 > allowed * factor.1 {
                factor = (allowed, worth);
            }
        }
        let (num, den) = factor;
        let parts = worths.iter().map(|worth| i64::try_from(i128::from(*worth) * num / den).unwrap_or(0)).collect();
        let extra = job.supplies.iter().zip(fillings).map(|(supply, filling)| {
            let scaled = (i128::from(filling.worth) * num + den - 1) / den;
            i64::try_from((scaled - i128::from(supply.cost) * i128::from(unit)).max(0)).unwrap_or(i64::MAX)
        });
        Self { unit, parts, extra: extra.collect() }
    }

    /// What all parts of the job are worth, less what its limited boards are worth beyond their cost.
    pub(super) fn total(&self, job: &Job) -> i128 {
        let parts: i128 =
            job.kinds.iter().zip(&self.parts).map(|(kind, worth)| i128::from(kind.count) * i128::from(*worth)).sum();
        let extra = |(supply, extra): (&super::job::Supply, &i64)| i128::from(supply.limit.unwrap_or(0)) * i128::from(*extra);
        parts - job.supplies.iter().zip(&self.extra).map(extra).sum::<i128>()
    }

    /// The least that any plan for the job costs.
    pub(super) fn bound(&self, job: &Job) -> u64 {
        let unit = i128::from(self.unit);
        u64::try_from((self.total(job).max(0) + unit - 1) / unit).unwrap_or(u64::MAX)
    }
}

#[cfg(test)]
mod tests;
