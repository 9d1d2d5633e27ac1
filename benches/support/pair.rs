//! Candidates timed side by side, each round all of them in turn. Two figures taken apart, on a machine that others use too, are
//! not a pair. What they do is left to `cases/`.

use std::fmt;
use std::hint::black_box;
use std::time::{Duration, Instant};

use criterion::{BenchmarkId, Criterion, Throughput};

/// A candidate: its name, and one pass over the whole corpus.
pub struct Subject {
    pub name: &'static str,
    /// How many bytes of text it reads, if that is what it does.
    pub bytes: usize,
    pass: Box<dyn FnMut()>,
}

impl Subject {
    /// The pass gives something back, so that it cannot be left out.
    pub fn new<T>(name: &'static str, mut pass: impl FnMut() -> T + 'static) -> Self {
        Self { name, bytes: 0, pass: Box::new(move || _ = black_box(pass())) }
    }

    pub fn of_bytes(self, bytes: usize) -> Self {
        Self { bytes, ..self }
    }

    fn time(&mut self) -> Duration {
        let start = Instant::now();
        (self.pass)();
        start.elapsed()
    }

    /// One pass for `valgrind --toggle-collect`, behind one that fills what is kept.
    pub fn count(&mut self) {
        (self.pass)();
        counted(&mut self.pass);
    }
}

/// The only function whose instructions are counted. Nothing may be called at its very end, since the jump there would count
/// as its end.
#[inline(never)]
fn counted(pass: &mut dyn FnMut()) {
    pass();
    black_box(());
}

/// Subjects that do the same over a corpus of so many items. The first is ours.
pub struct Case {
    pub group: &'static str,
    pub name: String,
    pub items: usize,
    pub subjects: Vec<Subject>,
}

/// How long each subject took in one round.
pub type Times = Vec<Duration>;

impl Case {
    pub fn new(group: &'static str, name: impl Into<String>, items: usize, subjects: Vec<Subject>) -> Self {
        Self { group, name: name.into(), items, subjects }
    }

    pub fn place_of(&self, subject: &str) -> usize {
        self.subjects.iter().position(|other| other.name == subject).expect("a subject of the case")
    }

    /// So many rounds, each from the next subject on.
    pub fn rounds(&mut self, count: usize) -> Vec<Times> {
        (0..count).map(|number| self.round(number)).collect()
    }

    fn round(&mut self, number: usize) -> Times {
        let mut times = vec![Duration::ZERO; self.subjects.len()];
        for turn in 0..self.subjects.len() {
            let subject = (number + turn) % self.subjects.len();
            times[subject] = self.subjects[subject].time();
        }
        times
    }

    /// Reports each subject by itself as `group/case/subject`, then what share of each other's time the first takes, round
    /// by round.
    pub fn side_by_side(mut self, criterion: &mut Criterion) {
        let mut rounds: Vec<Times> = Vec::new();
        let mut timed = criterion.benchmark_group(self.group);
        timed.throughput(Throughput::Elements(self.items as u64));
        for own in 0..self.subjects.len() {
            timed.bench_function(BenchmarkId::new(&self.name, self.subjects[own].name), |bencher| {
                bencher.iter_custom(|iterations| {
                    let from = rounds.len();
                    for _ in 0..iterations {
                        rounds.push(self.round(rounds.len()));
                    }
                    rounds[from..].iter().map(|times| times[own]).sum()
                });
            });
        }
        timed.finish();
        // Without rounds, the case was not asked for.
        for (other, subject) in self.subjects.iter().enumerate().skip(1).filter(|_| !rounds.is_empty()) {
            let spread = Spread::of(&rounds, |times| times[0].div_duration_f64(times[other]));
            println!("{}/{}: {} / {} = {spread}", self.group, self.name, self.subjects[0].name, subject.name);
        }
    }
}

/// A share of times: in the middle round, in four rounds of five, in the best of each.
pub struct Spread {
    pub median: f64,
    pub mostly: (f64, f64),
    pub best: f64,
    rounds: usize,
}

impl Spread {
    pub fn of(rounds: &[Times], share: impl Fn(&Times) -> f64) -> Self {
        let mut shares: Vec<f64> = rounds.iter().map(&share).collect();
        shares.sort_by(f64::total_cmp);
        let at = |tenth: usize| shares[(shares.len() - 1) * tenth / 10];
        let best = |subject: usize| rounds.iter().map(|times| times[subject]).min().unwrap_or_default();
        let best = share(&(0..rounds[0].len()).map(best).collect());
        Self { median: at(5), mostly: (at(1), at(9)), best, rounds: shares.len() }
    }

    /// How far the rounds are apart, or the middle round is from the best.
    pub fn width(&self) -> f64 {
        let (low, high) = self.mostly;
        (high / low / 1.3).max(self.median.max(self.best) / self.median.min(self.best) / 1.1)
    }
}

impl fmt::Display for Spread {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { median, mostly: (low, high), best, rounds } = self;
        write!(out, "{median:.3} ({low:.3} to {high:.3}, best {best:.3}, {rounds} rounds)")
    }
}
