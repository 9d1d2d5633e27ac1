//! What lies between the marks: each opening exactly and as cut, how far equal ones will differ, and the
//! worst mark.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use scantling::Length;

use super::Report;
use crate::table::table;

/// Openings are listed one by one up to here, and counted by size beyond.
const MOST_OPENINGS_LISTED: usize = 12;

impl Report<'_> {
    pub(super) fn openings(&self) -> String {
        let (name, spread) = (self.plan.gap_name(), self.spread());
        let mut text = if self.plan.is_equal { self.equal() } else { self.uneven() };
        let _ = match (self.plan.is_equal, spread.is_zero()) {
            (true, true) => writeln!(text, "The full {name}s will be equal as cut."),
            (true, false) => {
                writeln!(text, "The widest and the narrowest full {name} differ by {}.", self.bench.amount(spread))
            }
            (false, true) => Ok(()),
            (false, false) => {
                writeln!(text, "Of {name}s meant to be equal, no two differ by more than {}.", self.bench.amount(spread))
            }
        };
        let worst = self.on_tape.worst();
        if !worst.is_zero() {
            let _ = writeln!(text, "No mark is off its true place by more than {}.", self.bench.amount(worst));
        }
        text
    }

    fn equal(&self) -> String {
        let name = self.plan.gap_name();
        let mut text = format!("Each full {name} is {} exactly.\n", self.bench.exact(self.layout.opening()));
        let _ = writeln!(text, "As cut, from the near end: {}.", self.sizes(self.cut().collect()));
        for (end, gap) in self.ends_as_cut() {
            let _ = writeln!(text, "At the {end} end, as cut: {}.", self.bench.amount(gap));
        }
        text
    }

    /// Each with a line of its own, since no one size says it.
    fn uneven(&self) -> String {
        let cut = self.bench.marks(self.on_tape.gaps());
        let exact = self.bench.exacts(self.layout.gaps());
        let rows = cut.into_iter().zip(exact).enumerate().map(|(before, (cut, exact))| [(before + 1).to_string(), cut, exact]);
        table([self.plan.gap_name(), "as cut", "exactly"], ['r', 'r', 'r'], rows) + "\n"
    }

    /// One by one, or counted by size where there are many.
    fn sizes(&self, cut: Vec<Length>) -> String {
        let amounts: Vec<_> = if cut.len() <= MOST_OPENINGS_LISTED {
            cut.into_iter().map(|gap| self.bench.amount(gap)).collect()
        } else {
            let mut counted = BTreeMap::new();
            for gap in cut {
                *counted.entry(gap).or_insert(0_usize) += 1;
            }
            counted.into_iter().map(|(gap, count)| format!("{count} of {}", self.bench.amount(gap))).collect()
        };
        amounts.join(", ")
    }
}
