//! `scantling read`: what a text says, in every notation at once.

use std::fmt::Write as _;
use std::io;
use std::process::ExitCode;

use scantling::{Length, LengthParser, Warning, Written};
use serde_json::json;

use crate::arguments::{Read, typed};
use crate::lines::{self, Answers, LONGEST_LINE};
#[cfg(feature = "svg")]
use crate::picture;
use crate::problem::{self, BAD_INPUT, Problem};
use crate::words::{Bench, millimeters};
use crate::{Outcome, draw, json, notations};

/// All texts that were typed as arguments; nothing is shown unless every one is good.
pub fn run(options: &Read) -> Outcome {
    let parser = options.notation.parser();
    let bench = Bench::new(&options.tape, parser)?;
    refuse_unquoted(&options.texts, parser)?;
    #[cfg(feature = "svg")]
    picture::refuse_many(options)?;
    let mut answer = String::new();
    for (number, text) in options.texts.iter().enumerate() {
        let (length, written) = problem::read_written(parser, "", text)?;
        if options.json {
            let _ = writeln!(answer, "{}", object(typed(text), length, written.warning(), bench)?);
        } else {
            let gap = if number == 0 { "" } else { "\n" };
            let _ = write!(answer, "{gap}{}", block(typed(text), length, Some(written), written.warning(), bench)?);
        }
        answer += &draw::below(length, options, bench)?;
        #[cfg(feature = "svg")]
        picture::save(length, options, bench)?;
    }
    Ok(answer)
}

/// A number followed by a word is one length whose quotes were forgotten.
fn refuse_unquoted(texts: &[String], parser: LengthParser) -> Result<(), Problem> {
    let is_word = |text: &String| text.starts_with(|first: char| first.is_ascii_alphabetic()) && parser.parse(text).is_err();
    if texts.len() > 1 && texts.iter().any(is_word) {
        let all = texts.iter().map(|text| typed(text)).collect::<Vec<_>>().join(" ");
        return Err(Problem::plain(format!("several words and no quotes: {all}")).hint(format!("write \"{all}\" for one length")));
    }
    Ok(())
}

/// What to mark, and below it the length in every notation.
pub fn block(text: &str, length: Length, written: Option<Written>, warning: Option<Warning>, bench: Bench) -> Outcome {
    let reading = bench.tape.read(length).map_err(|error| Problem::plain(error.to_string()))?;
    let mark = format!("{}, {}", bench.mark_in_feet_too(reading.shown()), bench.lean(&reading));
    let mut lines = vec![("on the tape".to_owned(), mark)];
    lines.extend(notations::leftover(&reading));
    lines.extend(notations::rows(length).into_iter().map(|(name, figure)| (name.to_owned(), figure)));
    lines.extend(notations::words(length, written).map(|words| ("in words".to_owned(), words)));
    lines.extend(warning.map(|warning| ("look again".to_owned(), warning.to_string())));
    let heading = format!("{text}\n");
    Ok(lines.iter().fold(heading, |block, (name, figure)| format!("{block}  {name:<19}{}\n", figure.trim_end())))
}

pub fn object(text: &str, length: Length, warning: Option<Warning>, bench: Bench) -> Result<serde_json::Value, Problem> {
    let mut object = json!({ "text": text });
    json::extend(&mut object, json::length(length, bench)?);
    json::extend(&mut object, warning.map(|warning| ("warning".to_owned(), warning.to_string().into())));
    Ok(object)
}

/// Lines from standard input, each answered as it comes: a result or an error with its line number.
pub fn stream(options: Read) -> ExitCode {
    #[cfg(feature = "svg")]
    if let Err(problem) = picture::refuse_many(&options) {
        return problem.report();
    }
    let parser = options.notation.parser();
    let bench = match Bench::new(&options.tape, parser) {
        Ok(bench) => bench,
        Err(problem) => return problem.report(),
    };
    let answered = lines::answer_all(move |number, line, answers| answer(number, line, &options, parser, bench, answers));
    match answered {
        Ok(0) => ExitCode::SUCCESS,
        Ok(failed) => {
            let lines = if failed == 1 { "line" } else { "lines" };
            problem::warn(format_args!("{failed} {lines} could not be read"));
            ExitCode::from(BAD_INPUT)
        }
        Err(error) if error.kind() == io::ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(error) => Problem::plain(format!("cannot go on: {error}")).report(),
    }
}

fn answer(number: usize, line: Option<&[u8]>, options: &Read, parser: LengthParser, bench: Bench, answers: &mut Answers) {
    match answer_line(line, options, parser, bench) {
        Ok(answer) if answer.is_empty() => {}
        Ok(answer) if options.json => answers.say(format_args!("{{\"line\":{number},{}", &answer[1..])),
        Ok(answer) => answers.say(format_args!("{number}: {answer}")),
        Err(problem) => {
            if options.json {
                answers.say(format_args!("{}", json!({ "line": number, "error": problem.title() })));
            }
            answers.complain(format!("line {number}: {}", problem.in_line(number)));
        }
    }
}

fn answer_line(line: Option<&[u8]>, options: &Read, parser: LengthParser, bench: Bench) -> Outcome {
    let line = line.ok_or_else(|| Problem::plain(format!("longer than {LONGEST_LINE} bytes")))?;
    let text = std::str::from_utf8(line).map_err(|_| Problem::plain("not text (UTF-8)"))?;
    let text = text.trim_start_matches('\u{FEFF}').trim_end_matches(['\r', '\n']);
    if text.trim().is_empty() {
        return Ok(String::new());
    }
    let (length, written) = problem::read_written(parser, "", text)?;
    if options.json {
        return object(text, length, written.warning(), bench).map(|object| object.to_string());
    }
    let reading = bench.tape.read(length).map_err(|error| Problem::plain(error.to_string()))?;
    let (mark, lean, metric) = (bench.mark(reading.shown()), bench.lean(&reading), millimeters(length));
    let look_again = written.warning().map_or_else(String::new, |warning| format!("; look again: {warning}"));
    let below = draw::below(length, options, bench)?;
    let gap = if below.is_empty() { "" } else { "\n" };
    Ok(format!("{mark}, {lean} ({length}, {metric}){look_again}{gap}{below}"))
}
