//! The pole that was asked for: from options, from a job, and from what is then changed about it. How one mark is typed
//! is left to `typed.rs`.

use std::path::Path;

use scantling::{Length, LengthParser, PoleError, StoryPole};

use super::arguments::Pole;
use super::typed::Typed;
use crate::input::Input;
use crate::json;
use crate::problem::{self, Problem};
use crate::words::Bench;

/// The pole, with all changes but the cutting to sticks.
pub fn pole(options: &Pole, bench: Bench) -> Result<StoryPole, Problem> {
    let parser = options.notation.parser();
    let typed = Typed { options: &options.marks, parser, bench };
    let pole = begun(options, parser)?;
    let pole = if typed.is_empty() { pole } else { typed.onto(&pole, options.job.is_some())? };
    changed(pole, options, parser)
}

#[allow(clippy::needless_pass_by_value)] // so that it can stand behind `map_err`
pub fn refused(error: PoleError) -> Problem {
    Problem::plain(error.to_string())
}

/// The pole before any typed mark.
fn begun(options: &Pole, parser: LengthParser) -> Result<StoryPole, Problem> {
    let pole = match (&options.job, &options.length) {
        (Some(job), _) => stored(job)?,
        (None, Some(length)) => {
            let length = problem::read(parser, "--length", length)?;
            if length <= Length::ZERO {
                return Err(refused(PoleError::NoLength { length }));
            }
            StoryPole::new("pole", length).measured_from(options.from.map_or_else(Default::default, Into::into))
        }
        (None, None) => return Err(Problem::plain("nothing says how long the pole is").hint("--length 72, or --job FILE")),
    };
    let pole = match options.hand {
        Some(hand) => pole.for_hand(hand.into()),
        None => pole,
    };
    Ok(match &options.name {
        Some(name) => pole.named(name),
        None => pole,
    })
}

/// A pole from a file, or from standard input.
fn stored(path: &Path) -> Result<StoryPole, Problem> {
    let input = Input::read(path)?;
    let (name, text) = (&input.name, input.text()?);
    let whole = || {
        let mut json = serde_json::Deserializer::from_str(text);
        let pole = json::read(&mut json)?;
        json.end().map_err(|error| error.to_string())?;
        Ok(pole)
    };
    let pole = answered(text).unwrap_or_else(whole);
    pole.map_err(|error| Problem::plain(format!("{name} has no story pole: {error}")).hint("scantling pole --json gives one"))
}

/// The pole in an answer of this command, if the text is one, or begins with one.
fn answered(text: &str) -> Option<Result<StoryPole, String>> {
    let mut answers = serde_json::Deserializer::from_str(text).into_iter::<serde_json::Value>();
    let pole = answers.next()?.ok()?.get_mut("pole")?.take();
    match answers.next() {
        None => Some(json::read(pole)),
        Some(_) => Some(Err("it has several, one a line, where one is read".to_owned())),
    }
}

fn changed(pole: StoryPole, options: &Pole, parser: LengthParser) -> Result<StoryPole, Problem> {
    let changes = &options.changes;
    let mut pole = merged(pole, &changes.merge, parser)?;
    if !changes.only.is_empty() {
        pole = pole.only(changes.only.iter().map(String::as_str)).map_err(refused)?;
    }
    if let Some(shift) = &changes.shift {
        pole = pole.try_shifted(problem::read(parser, "--shift", shift)?).map_err(refused)?;
    }
    if changes.flip {
        pole = pole.flipped();
    }
    if changes.mirror {
        let mirrored = pole.mirrored();
        if mirrored == pole {
            return Err(Problem::plain("--mirror: the pole is for neither hand").hint("--hand left says which it is for"));
        }
        pole = mirrored;
    }
    Ok(pole)
}

fn merged(pole: StoryPole, files: &[String], parser: LengthParser) -> Result<StoryPole, Problem> {
    if files.is_empty() {
        return Ok(pole);
    }
    let other = |text: &String| {
        let (file, place) = text.rsplit_once('=').unwrap_or((text, "0"));
        Ok((stored(Path::new(file))?, problem::read(parser, "--merge", place)?))
    };
    let others = files.iter().map(other).collect::<Result<Vec<_>, Problem>>()?;
    let others = others.iter().map(|(other, place)| (other, *place));
    StoryPole::merged(pole.name(), std::iter::once((&pole, Length::ZERO)).chain(others)).map_err(refused)
}

/// The pole itself, or one for each stick.
pub fn sticks(pole: &StoryPole, options: &Pole) -> Result<Vec<StoryPole>, Problem> {
    let (changes, parser) = (&options.changes, options.notation.parser());
    let (Some(stick), Some(overlap)) = (&changes.stick, &changes.overlap) else { return Ok(vec![pole.clone()]) };
    let (stick, overlap) = (problem::read(parser, "--stick", stick)?, problem::read(parser, "--overlap", overlap)?);
    let mut sticks = pole.sticks(stick, overlap).map_err(refused)?;
    match changes.number {
        None => Ok(sticks),
        Some(number) if (1..=sticks.len()).contains(&number) => Ok(vec![sticks.swap_remove(number - 1)]),
        Some(number) => {
            Err(Problem::plain(format!("--number {number}: there is no such stick, the sticks are {}", sticks.len())))
        }
    }
}
