//! `scantling pole`: every mark of a job on one stick, listed, checked, drawn and saved in true size. What the pole is
//! is left to `build.rs`, the answer as JSON to `object.rs`.

use std::fmt::Write as _;

use scantling::StoryPole;

use crate::Outcome;
use crate::words::Bench;

mod arguments;
mod build;
mod object;
#[cfg(any(feature = "svg", feature = "pdf"))]
mod pictures;
mod typed;

pub use arguments::Pole;
use build::refused;

/// More findings than this are read by nobody; all of them are in the JSON.
const MOST_FINDINGS: usize = 20;

pub fn run(options: &Pole) -> Outcome {
    let bench = Bench::new(&options.tape, options.notation.parser())?;
    let poles = build::poles(options, bench)?;
    let answers = poles.iter().map(|pole| answer(pole, options, bench)).collect::<Result<Vec<_>, _>>()?;
    #[cfg(any(feature = "svg", feature = "pdf"))]
    pictures::save(&poles, options, bench)?;
    Ok(answers.join(if options.json { "" } else { "\n" }))
}

fn answer(pole: &StoryPole, options: &Pole, bench: Bench) -> Outcome {
    let findings = pole.check(&bench.tape);
    if options.json {
        return Ok(format!("{}\n", object::object(pole, &findings, bench)?));
    }
    let mut text = pole.listed(&bench.tape).map_err(refused)?.to_string();
    if let Some(strokes) = options.pictures.draw {
        let _ = write!(text, "\n{}", pole.drawing().strokes(strokes.into()));
    }
    if findings.is_empty() {
        text += "\nChecked: every mark is on the stick, no two parts overlap, and marks of one name agree.\n";
        return Ok(text);
    }
    text += "\nLook again before you cut:\n";
    for finding in findings.iter().take(MOST_FINDINGS) {
        let _ = writeln!(text, "  {}", finding.told(&bench.tape));
    }
    if let Some(more) = findings.len().checked_sub(MOST_FINDINGS).filter(|more| *more > 0) {
        let _ = writeln!(text, "  and {more} more");
    }
    Ok(text)
}
