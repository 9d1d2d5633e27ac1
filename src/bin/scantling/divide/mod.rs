//! `scantling divide`: a run divided between members or into parts, and the marks to make. What was asked for
//! is left to `kind.rs`, how it is shown to the file of each part of the answer.

use std::fmt::Write as _;

use scantling::{Layout, Length, OnTape, SpacerBlock};

use crate::Outcome;
use crate::problem::{self, Problem};
use crate::words::Bench;

mod arguments;
mod block;
mod friendly;
mod heading;
mod kind;
mod object;
mod openings;
mod places;
mod sketch;

pub use arguments::Divide;
use friendly::Friendly;
use kind::Plan;

/// More marks than this are no list that a person works from.
const MOST_MARKS: usize = 10_000;

pub fn run(options: &Divide) -> Outcome {
    let parser = options.notation.parser();
    let bench = Bench::new(&options.tape, parser)?;
    let run = problem::read(parser, "", &options.run)?;
    let plan = kind::plan(options, parser, bench)?;
    let layout = plan.spacing.over(run).map_err(|error| Problem::plain(error.to_string()))?;
    if layout.members() > MOST_MARKS {
        return Err(too_many(layout.members()));
    }
    let on_tape = layout.on_edge(&bench.tape, options.edge.into()).map_err(|error| Problem::plain(error.to_string()))?;
    refuse_overlap(&on_tape, bench)?;
    let block = plan.block(run, bench, options.block)?;
    let friendly = plan.friendly(run, bench, options.friendly.as_ref(), parser)?;
    let report = Report { options, bench, plan: &plan, layout: &layout, on_tape: &on_tape, block, friendly };
    if options.json { Ok(format!("{}\n", report.object())) } else { Ok(report.text()) }
}

fn too_many(marks: usize) -> Problem {
    Problem::plain(format!("{marks} are too many to list: at most {MOST_MARKS}"))
}

fn refuse_overlap(on_tape: &OnTape<'_>, bench: Bench) -> Result<(), Problem> {
    let Some(overlap) = on_tape.gaps().find(|gap| gap.is_negative()) else { return Ok(()) };
    let overlap = bench.amount(overlap.abs());
    Err(Problem::plain(format!("marked with this tape, two members would overlap by {overlap}"))
        .hint("take a tape with finer graduations, fewer members or thinner ones"))
}

/// All that the answer is made from.
struct Report<'a> {
    options: &'a Divide,
    bench: Bench,
    plan: &'a Plan,
    layout: &'a Layout,
    on_tape: &'a OnTape<'a>,
    block: Option<SpacerBlock>,
    friendly: Option<Friendly>,
}

impl Report<'_> {
    fn text(&self) -> String {
        let (mut text, sketch) = (self.heading(), self.sketch());
        if !sketch.is_empty() {
            let _ = write!(text, "\n{sketch}");
        }
        if self.layout.members() > 0 {
            let _ = write!(text, "\n{}\n\n{}", self.how_to_mark(), self.places());
        }
        let _ = write!(text, "\n{}", self.openings());
        text += &self.block.as_ref().map_or_else(String::new, |block| self.block(block));
        text + &self.friendly.as_ref().map_or_else(String::new, |friendly| self.friendly(friendly))
    }

    /// The full openings as cut. What is at an end and is something else has a line of its own.
    fn cut(&self) -> impl Iterator<Item = Length> {
        let full = self.layout.gaps().map(|gap| !self.plan.is_equal || gap == self.layout.opening());
        self.on_tape.gaps().zip(full).filter(|(_, full)| *full).map(|(gap, _)| gap)
    }

    /// How far openings that are meant to be equal will differ, whatever is at the ends.
    fn spread(&self) -> Length {
        if !self.plan.is_equal {
            return self.on_tape.spread();
        }
        let widest = self.cut().max().unwrap_or_default();
        widest - self.cut().min().unwrap_or_default()
    }

    /// Half openings and margins at the ends; where a member is flush there is neither.
    fn ends_as_cut(&self) -> impl Iterator<Item = (&'static str, Length)> {
        let last = self.layout.members();
        let name = move |place| if place == 0 { "near" } else { "far" };
        let ends =
            self.on_tape.gaps().enumerate().zip(self.layout.gaps()).filter(move |((place, _), _)| [0, last].contains(place));
        let odd = ends.filter(|(_, exact)| self.plan.is_equal && *exact != self.layout.opening() && !exact.is_zero());
        odd.map(move |((place, gap), _)| (name(place), gap))
    }
}
