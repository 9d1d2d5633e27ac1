//! The table of marks: what the tape shows at each, how the true place lies to it, and where that is exactly.

use scantling::Edge;

use super::Report;
use crate::table::table;

impl Report<'_> {
    pub(super) fn places(&self) -> String {
        let (what, edge) = match self.on_tape.edge() {
            _ if self.plan.is_of_parts() => ("line", "line at"),
            Edge::Near => ("member", "near edge at"),
            Edge::Center => ("member", "center at"),
            Edge::Far => ("member", "far edge at"),
        };
        let readings = || self.on_tape.marks().map(|mark| mark.reading());
        let shown = self.bench.marks(readings().map(|reading| reading.shown()));
        let exact = self.bench.exacts(readings().map(|reading| reading.true_position()));
        let rows = self
            .on_tape
            .marks()
            .zip(shown)
            .zip(exact)
            .map(|((mark, shown), exact)| [mark.number().to_string(), shown, self.bench.lean(&mark.reading()), exact]);
        table([what, edge, "true place is", "exact place"], ['r', 'r', 'l', 'r'], rows)
    }
}
