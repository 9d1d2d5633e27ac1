//! Friendly sizes: the small changes that make every opening a whole number of graduations.

use scantling::{Change, FriendlySize, Length, LengthParser};
use serde_json::{Value, json};

use super::kind::Plan;
use super::{MOST_MARKS, Report};
use crate::problem::{self, Problem};
use crate::table::table;
use crate::words::Bench;

/// Sizes are shown up to here; the smallest changes come first.
const MOST_SIZES_SHOWN: usize = 12;

/// Every size within a limit.
pub struct Friendly {
    limit: Length,
    sizes: Vec<FriendlySize>,
}

impl Plan {
    /// The sizes, if they were asked for.
    pub(super) fn friendly(
        &self,
        run: Length,
        bench: Bench,
        limit: Option<&String>,
        parser: LengthParser,
    ) -> Result<Option<Friendly>, Problem> {
        let Some(text) = limit else { return Ok(None) };
        let limit = problem::read(parser, "--friendly", text)?;
        if limit.is_negative() {
            return Err(Problem::plain(format!("--friendly: a change of {limit} at most: it must not be below zero")));
        }
        let sizes = self.spacing.friendly_sizes(run, &bench.tape, limit);
        let sizes = sizes.map_err(|error| Problem::plain(format!("--friendly: {error}")))?;
        let sizes: Vec<_> = sizes.take(MOST_MARKS + 1).collect();
        if sizes.len() > MOST_MARKS {
            let problem = format!("--friendly: over {MOST_MARKS} sizes lie within {}", bench.mark(limit));
            return Err(Problem::plain(problem).hint("ask for smaller changes"));
        }
        Ok(Some(Friendly { limit, sizes }))
    }
}

impl Report<'_> {
    pub(super) fn friendly(&self, friendly: &Friendly) -> String {
        let (name, limit, step) =
            (self.plan.gap_name(), self.bench.mark(friendly.limit), self.bench.mark(self.bench.tape.step()));
        if friendly.sizes.is_empty() {
            return format!("\nNo one change of up to {limit} makes every {name} a whole count of {step}.\n");
        }
        let shown = &friendly.sizes[..friendly.sizes.len().min(MOST_SIZES_SHOWN)];
        let more = match friendly.sizes.len() - shown.len() {
            0 => String::new(),
            more => format!("and {more} more within {limit}\n"),
        };
        format!("\nEvery {name} is a whole count of {step} with one of these changes:\n\n{}{more}", self.changes(shown))
    }

    fn changes(&self, sizes: &[FriendlySize]) -> String {
        let changes = self.bench.exacts(sizes.iter().map(|size| size.change().abs()));
        let new = self.bench.exacts(sizes.iter().map(FriendlySize::size));
        let full = self.bench.exacts(sizes.iter().map(FriendlySize::opening));
        let rows = sizes
            .iter()
            .zip(changes)
            .zip(new)
            .zip(full)
            .map(|(((size, change), new), full)| [self.what(size.what()), way(size.change()).to_owned(), change, new, full]);
        if self.plan.is_equal {
            let full = format!("each full {}", self.plan.gap_name());
            return table(["change", "", "by", "to", &full], ['l', 'l', 'r', 'r', 'r'], rows);
        }
        // No one opening stands for the others.
        table(["change", "", "by", "to"], ['l', 'l', 'r', 'r'], rows.map(|[what, way, change, new, _]| [what, way, change, new]))
    }

    fn what(&self, what: Change) -> String {
        match what {
            Change::Run => "the run".into(),
            Change::Thickness => "every thickness".into(),
            Change::Opening { after: 0 } => format!("the first {}", self.plan.gap_name()),
            Change::Opening { after } => format!("the {} after member {after}", self.plan.gap_name()),
            _ => "a size".into(),
        }
    }

    pub(super) fn friendly_object(&self, friendly: &Friendly) -> Value {
        let sizes = friendly.sizes.iter().map(|size| {
            let (what, after) = match size.what() {
                Change::Thickness => ("thickness", None),
                Change::Opening { after } => ("opening", Some(after)),
                _ => ("run", None),
            };
            json!({
                "what": what,
                "after": after,
                "change": self.in_words(size.change()),
                "size": self.in_words(size.size()),
                "opening": self.in_words(size.opening()),
            })
        });
        sizes.collect()
    }
}

fn way(change: Length) -> &'static str {
    match change {
        change if change.is_negative() => "less",
        change if change.is_zero() => "as it is",
        _ => "more",
    }
}
