//! `scantling cut`: which parts to cut from which boards, with the marks to make. What was asked for is left to `arguments.rs`,
//! `items.rs` and `list.rs`, how the plan is shown to the other files, panels from sheets to `panels.rs`.

use std::time::{Duration, Instant};

use scantling::{Cutting, Length, LengthParser, Plan};

use crate::Outcome;
use crate::problem::{self, Problem};
use crate::words::Bench;

mod arguments;
mod bar;
mod boards;
mod heading;
mod items;
mod list;
mod object;
mod panels;
#[cfg(feature = "svg")]
mod pictures;
mod sheets;

pub use arguments::Cut;
use items::{Item, PART_FIELDS, STOCK_FIELDS};

/// Longer lists are no paper to work from.
const MOST_BOARDS_LISTED: usize = 2000;

/// What stands below every plan.
pub const CAUTION: &str = "Cut one piece and measure before cutting the rest. Follow the manual of the saw and of its blade, keep the\n\
guards on, do not cut pieces too short to hold safely, and collect the dust.";

pub fn run(options: &Cut) -> Outcome {
    let parser = options.notation.parser();
    let bench = Bench::new(&options.tape, parser)?;
    let (kerf, trims) = (problem::read_kerf(parser, &options.kerf)?, trims(options, parser)?);
    if options.panels.is_given() {
        // Both trims are the same for sheets.
        return panels::run(options, parser, bench, kerf, trims.0);
    }
    let cutting = cutting(options, parser, kerf, trims)?;
    let end = Instant::now() + Duration::from_secs(options.seconds.min(86_400));
    let plan = cutting.patience(u64::MAX).plan_while(&|| Instant::now() < end);
    let plan = plan.map_err(|error| Problem::plain(error.to_string()))?;
    if plan.boards().len() > MOST_BOARDS_LISTED && !options.json {
        let many = plan.boards().len();
        return Err(Problem::plain(format!("{many} boards cut differently are too many to list: at most {MOST_BOARDS_LISTED}"))
            .hint("--json has all of them"));
    }
    let report = Report { options, bench, plan: &plan, kerf, trims };
    if options.json { Ok(format!("{}\n", report.object()?)) } else { report.text() }
}

/// What is cut off the near and the far end.
fn trims(options: &Cut, parser: LengthParser) -> Result<(Length, Length), Problem> {
    let length = |name: &str, text: &Option<String>, other: Length| {
        text.as_ref().map_or(Ok(other), |text| problem::read(parser, name, text))
    };
    let both = length("--trim", &options.trim, Length::ZERO)?;
    Ok((length("--trim-near", &options.trim_near, both)?, length("--trim-far", &options.trim_far, both)?))
}

fn cutting(options: &Cut, parser: LengthParser, kerf: Length, (near, far): (Length, Length)) -> Result<Cutting, Problem> {
    let length = |name: &str, text: &str| problem::read(parser, name, text);
    let mut cutting = Cutting::new()
        .kerf(kerf)
        .kerf_rule(options.kerf_rule.into())
        .trim(near, far)
        .keep_offcuts_from(length("--keep", &options.keep)?)
        .shortest_piece(length("--shortest-piece", &options.shortest_piece)?);
    if let Some(aim) = options.aim {
        cutting = cutting.aim(aim.into());
    }
    for text in &options.part {
        cutting = cutting.part(Item::of_option("--part", text, "length", false).part(parser)?);
    }
    for text in &options.joined {
        cutting = cutting.part(Item::of_option("--joined", text, "length", false).part(parser)?.joined());
    }
    for item in options.parts.as_ref().map_or(Ok(Vec::new()), |path| list::items(path, &PART_FIELDS))? {
        cutting = cutting.part(item.part(parser)?);
    }
    for text in &options.stock {
        cutting = cutting.stock(Item::of_option("--stock", text, "length", true).stock(parser)?);
    }
    for item in options.stocks.as_ref().map_or(Ok(Vec::new()), |path| list::items(path, &STOCK_FIELDS))? {
        cutting = cutting.stock(item.stock(parser)?);
    }
    Ok(cutting)
}

/// All that the answer is made from.
struct Report<'a> {
    options: &'a Cut,
    bench: Bench,
    plan: &'a Plan,
    kerf: Length,
    trims: (Length, Length),
}

impl Report<'_> {
    fn text(&self) -> Outcome {
        let mut text = self.heading();
        for (number, board) in (1..).zip(self.plan.boards()) {
            text += &self.board(number, board)?;
        }
        Ok(format!("{text}\n{}\n{CAUTION}\n", self.sums()))
    }
}
