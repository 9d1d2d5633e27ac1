//! `scantling case`: a whole case on one sheet, in the order of the work. What was asked for is left to `job.rs` and
//! `typed.rs`, how the answer is shown to `text.rs`, `object.rs` and `html/`.

use scantling::{CasePlan, FrontKind, Length, Sum};

use crate::Outcome;
use crate::problem::Problem;
use crate::words::Bench;

mod arguments;
mod before;
mod buying;
mod files;
mod html;
mod job;
mod object;
mod place;
mod seasons;
mod stock;
mod strength;
mod text;
mod typed;

pub use arguments::Case;
use buying::{Bought, Saw};
use job::Job;
use seasons::Seasons;
use strength::{Sag, refused};

/// Longer lists are no paper to work from.
const MOST_PIECES: u64 = 10_000;

/// All that the answer is made from.
struct Report<'a> {
    options: &'a Case,
    bench: Bench,
    job: Job,
    plan: CasePlan,
    bought: Vec<Bought>,
    saw: Saw,
    sag: Option<Sag>,
    seasons: Option<Seasons>,
}

pub fn run(options: &Case) -> Outcome {
    let parser = options.notation.parser();
    let bench = Bench::new(&options.tape, parser)?;
    let job = typed::job(options, parser)?;
    refuse_many(&job)?;
    let plan = job.case.plan().map_err(refused)?;
    let saw = Saw::new(&options.buying, &job.seasons.solid, parser)?;
    let bought = buying::buying(plan.parts(), &saw)?;
    let (sag, seasons) = (strength::sag(&job, &plan)?, seasons::seasons(&job, &plan, &saw)?);
    let report = Report { options, bench, job, plan, bought, saw, sag, seasons };
    let answer = if options.json { format!("{}\n", report.object()?) } else { report.text()? };
    files::save(&report)?;
    Ok(answer)
}

/// Before anything is worked out for each of them.
fn refuse_many(job: &Job) -> Result<(), Problem> {
    let shelves = u64::try_from(job.case.shelves.count()).unwrap_or(u64::MAX);
    let fronts = match job.case.fronts.map(|set| set.kind) {
        Some(FrontKind::Doors(count) | FrontKind::Drawers(count, _)) => u64::from(count),
        _ => 0,
    };
    let openings = shelves.saturating_add(1);
    let (most, what) = if fronts > openings { (fronts, "fronts") } else { (openings, "openings") };
    let pieces = most.saturating_mul(job.case.bays.into());
    if pieces > MOST_PIECES {
        return Err(Problem::plain(format!("{pieces} {what} are too many to list: at most {MOST_PIECES}")));
    }
    Ok(())
}

impl Report<'_> {
    /// A thickness as it is measured: on the tape where a tape could show it, else with a caliper.
    fn thick(&self, thickness: Length) -> String {
        use scantling::{LengthPrinter, Places, Style, Unit};

        let parts = *thickness.in_unit(Unit::Inch).denom();
        let decimals = LengthPrinter::new().style(Style::DecimalInches).places(Places::Shortest);
        match decimals.show(thickness) {
            Ok(shown) if !self.bench.is_metric() && parts > 64 && parts <= 1000 => shown.to_string(),
            _ => self.bench.mark(thickness),
        }
    }
}

fn total(sum: &Sum) -> Result<Length, Problem> {
    sum.total().map_err(refused)
}
