//! Lines from standard input, answered in their order by every core there is. Whoever is free takes the whole lines that are there,
//! works out their answers, and writes them when its turn has come: a line that was typed is answered when it is entered, and a
//! million of them need no more memory than a few thousand. What the answer to one line is, is left to `read.rs`.

use std::fmt::{self, Write as _};
use std::io::{self, BufRead, BufReader, Read as _, Stdin, Write as _};
use std::num::NonZero;
use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Mutex};
use std::thread;

use crate::problem;

/// The longest line that standard input may have, so that memory stays bounded.
pub const LONGEST_LINE: usize = 64 * 1024;

/// How much is taken at a time: enough that handing it over costs nothing beside its answers, which may be fifty times as long.
const TAKEN: usize = 32 * 1024;

/// More cores than this would wait for each other: lines are read and answers are written by one at a time.
const MOST_THREADS: usize = 8;

/// What some lines are answered with, each complaint behind so many bytes of the rest.
#[derive(Default)]
pub struct Answers {
    out: String,
    complaints: Vec<(usize, String)>,
}

impl Answers {
    /// A line for standard output.
    pub fn say(&mut self, line: fmt::Arguments) {
        let _ = writeln!(self.out, "{line}");
    }

    /// For standard error, what is wrong with a line.
    pub fn complain(&mut self, complaint: String) {
        self.complaints.push((self.out.len(), complaint));
    }

    /// Writes both in the order in which they were given, says how many were complaints, and holds nothing any more.
    fn write(&mut self) -> io::Result<usize> {
        let (mut out, mut written) = (io::stdout().lock(), 0);
        for (end, complaint) in &self.complaints {
            out.write_all(&self.out.as_bytes()[written..*end])?;
            out.flush()?;
            problem::warn(complaint);
            written = *end;
        }
        out.write_all(&self.out.as_bytes()[written..])?;
        out.flush()?;
        self.out.clear();
        Ok(self.complaints.drain(..).count())
    }
}

/// Answers every line, and says how many could not be. `answer` is given the number of the line and its bytes, `None` if
/// they are too many.
pub fn answer_all(answer: impl Fn(usize, Option<&[u8]>, &mut Answers) + Send + Sync + 'static) -> io::Result<usize> {
    let (first, turn) = channel();
    let (done, outcome) = channel();
    let input = Mutex::new(Input { from: BufReader::with_capacity(TAKEN, io::stdin()), line: 1, turn: Some(turn) });
    let shared = Arc::new((input, answer));
    for _ in 0..thread::available_parallelism().map_or(1, NonZero::get).min(MOST_THREADS) {
        let (shared, done) = (Arc::clone(&shared), done.clone());
        thread::Builder::new().spawn(move || work(&shared.0, &shared.1, &done))?;
    }
    drop(done);
    let _ = first.send(0); // the first turn has nobody to wait for
    // The others are not waited for: one of them may still wait for a line that nobody will type.
    outcome.recv().unwrap_or_else(|_| Err(io::Error::other("the work was given up")))
}

/// Takes lines and answers them until there are none.
fn work(input: &Mutex<Input>, answer: &impl Fn(usize, Option<&[u8]>, &mut Answers), done: &Sender<io::Result<usize>>) {
    let mut answers = Answers::default();
    while let Some(Share { lines, turn, next }) = input.lock().ok().and_then(|mut input| input.share()) {
        let lines = lines.inspect(|lines| lines.answer(answer, &mut answers));
        // Whoever was before may have given up.
        let Ok(failed) = turn.recv() else { return };
        let outcome = lines.and_then(|_| Ok(failed + answers.write()?));
        let _ = match (outcome, next) {
            (Ok(failed), Some(next)) => next.send(failed).is_ok(),
            (outcome, _) => done.send(outcome).is_ok(),
        };
    }
}

/// Standard input, and the turn of whoever takes from it next; none when it has ended.
struct Input {
    from: BufReader<Stdin>,
    line: usize,
    turn: Option<Receiver<usize>>,
}

/// Some lines, when it is their turn to be answered, and whom to tell when they are. A turn brings how many lines before it failed.
struct Share {
    lines: io::Result<Lines>,
    turn: Receiver<usize>,
    next: Option<Sender<usize>>,
}

impl Input {
    fn share(&mut self) -> Option<Share> {
        let turn = self.turn.take()?;
        let lines = self.lines();
        let goes_on = lines.as_ref().is_ok_and(|lines| !lines.bytes.is_empty());
        let next = goes_on.then(|| {
            let (next, turn) = channel();
            self.turn = Some(turn);
            next
        });
        Some(Share { lines, turn, next })
    }

    /// All the whole lines that are there, at least one; without bytes at the end. A line that is too long is not taken whole.
    fn lines(&mut self) -> io::Result<Lines> {
        let mut bytes = Vec::new();
        let end = loop {
            let held = match self.from.fill_buf() {
                Err(error) if error.kind() == io::ErrorKind::Interrupted => continue,
                held => held?,
            };
            match held.iter().rposition(|byte| *byte == b'\n') {
                Some(last) => break last + 1,
                None if held.is_empty() => break 0,
                None => bytes.extend_from_slice(held),
            }
            let taken = held.len();
            self.from.consume(taken);
            if bytes.len() >= LONGEST_LINE {
                self.from.skip_until(b'\n')?;
                break 0;
            }
        };
        self.from.by_ref().take(end as u64).read_to_end(&mut bytes)?;
        let first = self.line;
        self.line += bytes.split_inclusive(|byte| *byte == b'\n').count();
        Ok(Lines { first, bytes })
    }
}

/// Lines as they were read, with the number of the first.
struct Lines {
    first: usize,
    bytes: Vec<u8>,
}

impl Lines {
    fn answer(&self, answer: &impl Fn(usize, Option<&[u8]>, &mut Answers), answers: &mut Answers) {
        for (number, line) in (self.first..).zip(self.bytes.split_inclusive(|byte| *byte == b'\n')) {
            let is_whole = line.len() < LONGEST_LINE || line.len() == LONGEST_LINE && line.ends_with(b"\n");
            answer(number, is_whole.then_some(line), answers);
        }
    }
}
