//! The command line for the person at the bench. It uses the public API alone, prints only when a whole
//! answer is ready, and exits with 0 when it answered, 2 when it could not.

use std::io::{self, Write};
use std::process::ExitCode;

use clap::Parser;

mod arguments;
mod calc;
mod case;
mod cut;
mod divide;
mod draw;
mod input;
mod json;
mod lines;
mod lumber;
mod notations;
#[cfg(feature = "svg")]
mod picture;
mod pole;
mod problem;
mod read;
mod save;
mod slips;
mod table;
mod words;

use arguments::{Command, Scantling};
use problem::{BAD_INPUT, Problem};

/// What a command has to say: an answer for standard output and, where lines failed, the failures.
type Outcome = Result<String, Problem>;

fn main() -> ExitCode {
    let typed: Vec<_> = arguments::shielded(std::env::args_os()).collect();
    let arguments = match Scantling::try_parse_from(&typed) {
        Ok(arguments) => arguments,
        Err(instead) => {
            let instead = slips::unshielded(instead);
            return slips::explained(&instead, &typed).map_or_else(|| show(&instead), |problem| problem.report());
        }
    };
    if let Some(problem) = slips::unequaled(&arguments.command).or_else(|| slips::unquoted(&arguments.command, &typed)) {
        return problem.report();
    }
    let outcome = match arguments.command {
        Command::Read(options) if options.is_standard_input() => return read::stream(options),
        Command::Read(options) => read::run(&options),
        Command::Calc(options) => calc::run(&options),
        Command::Divide(options) => divide::run(&options),
        Command::Lumber(options) => lumber::run(&options),
        Command::Pole(options) => pole::run(&options),
        Command::Case(options) => case::run(&options),
        Command::Cut(options) => cut::run(&options),
    };
    match outcome {
        Ok(answer) => say(&answer),
        Err(problem) => problem.report(),
    }
}

/// Writes an answer in one go.
fn say(answer: &str) -> ExitCode {
    let mut out = io::stdout().lock();
    said(out.write_all(answer.as_bytes()).and_then(|()| out.flush()))
}

/// A reader that has seen enough (`| head`) is no error.
fn said(written: io::Result<()>) -> ExitCode {
    match written {
        Err(error) if error.kind() != io::ErrorKind::BrokenPipe => {
            Problem::plain(format!("cannot write the answer: {error}")).report()
        }
        _ => ExitCode::SUCCESS,
    }
}

/// Help and the version, which are answers too, or what is wrong with the options.
fn show(instead: &clap::Error) -> ExitCode {
    let written = instead.print();
    if instead.use_stderr() { ExitCode::from(BAD_INPUT) } else { said(written) }
}
