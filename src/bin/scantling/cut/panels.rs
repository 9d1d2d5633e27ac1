//! Panels from sheets: what was asked for, and the plan. How it is shown is left to `sheets.rs`.

use std::time::{Duration, Instant};

use scantling::{Length, LengthParser, SheetCutting};

use super::arguments::Cut;
use super::items::{Item, PANEL_FIELDS, SHEET_FIELDS};
use super::list;
use super::sheets::SheetReport;
use crate::Outcome;
use crate::problem::Problem;
use crate::words::Bench;

pub fn run(options: &Cut, parser: LengthParser, bench: Bench, kerf: Length, trim: Length) -> Outcome {
    let end = Instant::now() + Duration::from_secs(options.seconds.min(86_400));
    let plan = cutting(options, parser, kerf, trim)?.plan_while(&|| Instant::now() < end);
    let plan = plan.map_err(|error| Problem::plain(error.to_string()))?;
    let report = SheetReport { plan: &plan, bench, kerf, trim, round: options.tape.round };
    let answer = if options.json { format!("{}\n", report.object()?) } else { report.text()? };
    #[cfg(feature = "svg")]
    super::pictures::save(&plan, &options.panels)?;
    Ok(answer)
}

fn cutting(options: &Cut, parser: LengthParser, kerf: Length, trim: Length) -> Result<SheetCutting, Problem> {
    let mut cutting = SheetCutting::new().kerf(kerf).trim(trim);
    let panels = &options.panels;
    for text in &panels.panel {
        cutting = cutting.panel(Item::of_option("--panel", text, "size", false).panel(parser)?);
    }
    for text in &panels.turnable {
        cutting = cutting.panel(Item::of_option("--turnable", text, "size", false).panel(parser)?.turnable());
    }
    for item in panels.panels.as_ref().map_or(Ok(Vec::new()), |path| list::items(path, &PANEL_FIELDS))? {
        cutting = cutting.panel(item.panel(parser)?);
    }
    for text in &panels.sheet {
        cutting = cutting.sheet(Item::of_option("--sheet", text, "size", true).sheet(parser)?);
    }
    for item in panels.sheets.as_ref().map_or(Ok(Vec::new()), |path| list::items(path, &SHEET_FIELDS))? {
        cutting = cutting.sheet(item.sheet(parser)?);
    }
    Ok(cutting)
}
