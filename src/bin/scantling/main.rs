//! The command line for the person at the bench. It uses the public API alone, prints only when a whole
//! answer is ready, and exits with 0 when it answered, 2 when the input was bad.

use std::io::{self, Write};
use std::process::ExitCode;

use clap::Parser;

mod arguments;
mod calc;
mod case;
mod cut;
mod divide;
mod draw;
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
mod table;
mod words;

use arguments::{Command, Scantling};
use problem::Problem;

/// What a command has to say: an answer for standard output and, where lines failed, the failures.
type Outcome = Result<String, Problem>;

fn main() -> ExitCode {
    let arguments = Scantling::parse_from(arguments::shielded(std::env::args_os()));
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

/// Writes an answer in one go. A reader that has seen enough (`| head`) is no error.
fn say(answer: &str) -> ExitCode {
    let mut out = io::stdout().lock();
    match out.write_all(answer.as_bytes()).and_then(|()| out.flush()) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) if error.kind() == io::ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(error) => Problem::plain(format!("cannot write the answer: {error}")).report(),
    }
}
