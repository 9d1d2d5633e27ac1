//! The spacer block that sets equal openings, and where members stand that are set with it.

use scantling::{Layout, Length, Remainder, SpacerBlock};
use serde_json::{Value, json};

use super::Report;
use super::arguments::Left;
use super::kind::Plan;
use crate::problem::Problem;
use crate::words::Bench;

impl Plan {
    /// The block, if one was asked for.
    pub(super) fn block(&self, run: Length, bench: Bench, left: Option<Left>) -> Result<Option<SpacerBlock>, Problem> {
        let remainder = left.map(|left| match left {
            Left::Last => Remainder::Last,
            Left::First => Remainder::First,
            Left::Split => Remainder::Split,
        });
        let block = remainder.map(|remainder| self.spacing.spacer_block(run, &bench.tape, remainder));
        block.transpose().map_err(|error| Problem::plain(format!("--block: {error}")))
    }
}

impl Report<'_> {
    pub(super) fn block(&self, block: &SpacerBlock) -> String {
        let name = self.plan.gap_name();
        let (size, left) = (self.bench.mark(block.block()), self.bench.exact(block.left()));
        let times = match block.times() {
            1 => "once".to_owned(),
            times => format!("{times} times"),
        };
        let open = match self.options.block.unwrap_or(Left::Last) {
            Left::Last => format!("the last of the {name}s set by it is left at {left}"),
            Left::First => format!("the first of the {name}s set by it is left at {left}"),
            Left::Split => format!("the first and the last of the {name}s set by it are left at {left}"),
        };
        format!("\nSpacer block: cut it {size} long and set {name}s with it {times};\n{open}.\n")
    }

    pub(super) fn block_object(&self, block: &SpacerBlock) -> Value {
        json!({
            "block": self.figure(block.block()),
            "times": block.times(),
            "left": self.figure(block.left()),
            "near_edges": self.near_edges(block.layout()),
        })
    }

    fn near_edges(&self, layout: &Layout) -> Vec<String> {
        layout.marks().map(|member| self.in_words(member.near())).collect()
    }
}
