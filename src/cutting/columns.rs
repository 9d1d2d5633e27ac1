//! Patterns found one by one: what the parts are worth by the patterns known so far, then the filling that is worth most, until
//! no filling is worth more than its board. Every round ends with a proof, so it can be stopped at any time.

use alloc::vec::Vec;

use super::filling::{Filling, best_fillings};
use super::job::Job;
use super::patience::Patience;
use super::simplex::Master;
use super::worth::{Worth, in_range, unit};

/// Gains below this share of a board are lost in rounding and no gains.
const NO_GAIN: i64 = 1 << 20;

/// The best proof found until no pattern helps, until it reaches `enough`, or until patience ends. The patterns stay in the master.
pub(super) fn relax(job: &Job, master: &mut Master, enough: u64, patience: &mut Patience) -> Worth {
    let mut best = Worth::by_size(job);
    while best.bound(job) < enough {
        let Some((worths, fillings)) = round(job, master, patience) else { break };
        let proved = Worth::proved(job, &worths, &fillings);
        if proved.total(job) > best.total(job) {
            best = proved;
        }
        if best.bound(job) >= master.whole_cost() || !add(job, master, fillings) {
            break;
        }
    }
    best
}

fn round(job: &Job, master: &mut Master, patience: &mut Patience) -> Option<(Vec<i64>, Vec<Filling>)> {
    master.solve(patience)?;
    let worths: Vec<i64> = master.worths(unit(job)).into_iter().map(in_range).collect();
    let fillings = best_fillings(job, &worths, patience)?;
    Some((worths, fillings))
}

/// Whether any of the fillings is a pattern that is new and gains something.
fn add(job: &Job, master: &mut Master, fillings: Vec<Filling>) -> bool {
    let unit = unit(job);
    let mut added = false;
    for (supply, Filling { worth, pattern }) in fillings.into_iter().enumerate() {
        let cost = i64::try_from(job.supplies[supply].cost).unwrap_or(i64::MAX).saturating_mul(unit);
        let least = cost.saturating_add(master.extra(supply, unit)).saturating_add(unit / NO_GAIN);
        if worth > least && job.is_there(supply) && !master.knows(supply, &pattern) {
            master.add(job, supply, pattern);
            added = true;
        }
    }
    added
}
