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
    let pole = build::pole(options, bench)?;
    let poles = build::sticks(&pole, options)?;
    // Of a row that does not close, or marks far apart that disagree, no stick can tell.
    let whole: Vec<_> = if poles.contains(&pole) { Vec::new() } else { findings(&pole, bench).collect() };
    let answer = |pole| {
        let whole = whole.iter().map(|finding| format!("the whole pole: {finding}"));
        answer(pole, &whole.chain(findings(pole, bench)).collect::<Vec<_>>(), options, bench)
    };
    let answers = poles.iter().map(answer).collect::<Result<Vec<_>, _>>()?;
    #[cfg(any(feature = "svg", feature = "pdf"))]
    pictures::save(&poles, options, bench)?;
    Ok(answers.join(if options.json { "" } else { "\n" }))
}

fn findings(pole: &StoryPole, bench: Bench) -> impl Iterator<Item = String> {
    pole.check(&bench.tape).into_iter().map(move |finding| finding.told(&bench.tape))
}

fn answer(pole: &StoryPole, findings: &[String], options: &Pole, bench: Bench) -> Outcome {
    if options.json {
        return Ok(format!("{}\n", object::object(pole, findings, bench)?));
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
        let _ = writeln!(text, "  {finding}");
    }
    if let Some(more) = findings.len().checked_sub(MOST_FINDINGS).filter(|more| *more > 0) {
        let _ = writeln!(text, "  and {more} more");
    }
    Ok(text)
}
