//! What the benchmarks share: a seeded generator of shop measurements, and a way to time candidates side
//! by side in one run. Two figures taken apart, on a machine that others use too, are not a pair.
//!
//! Each benchmark checks every result against the generator's own value before anything is timed.

#![allow(dead_code)] // each benchmark is a crate of its own and takes what it needs

pub mod floats;
pub mod texts;

use std::fmt;
use std::hint::black_box;
use std::time::{Duration, Instant};

use criterion::{BenchmarkId, Criterion, Throughput};
use num_rational::Ratio;
use scantling::{Length, Unit};

/// The seed of every corpus, so that runs can be compared.
pub const SEED: u64 = 0x5ca9_711e;

/// The same numbers in every run: `splitmix64`, as its author gave it to the public domain.
pub struct Random(u64);

impl Random {
    pub const fn new(seed: u64) -> Self {
        Self(seed)
    }

    pub const fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// A number below another that is not zero.
    pub const fn below(&mut self, bound: u64) -> u64 {
        self.next() % bound
    }

    pub fn pick<T: Copy>(&mut self, from: &[T]) -> T {
        #[allow(clippy::cast_possible_truncation)] // an index
        from[self.below(from.len() as u64) as usize]
    }
}

/// Which measurements a corpus is made of.
#[derive(Clone, Copy)]
pub enum Mix {
    /// Sixteenths alone.
    Sixteenths,
    /// Halves to sixty-fourths.
    Dyadic,
    /// Seven in ten dyadic, one in tenths, fifteen in a hundred in millimeters, and the rest in odd parts.
    Shop,
}

impl Mix {
    pub const ALL: [(&'static str, Self); 3] = [("sixteenths", Self::Sixteenths), ("dyadic", Self::Dyadic), ("shop", Self::Shop)];

    /// How many parts of an inch one measurement is counted in, as a fraction: 5/127 for millimeters.
    fn part(self, random: &mut Random) -> (i64, u64) {
        const DYADIC: [u64; 6] = [2, 4, 8, 16, 32, 64];
        match (self, random.below(100)) {
            (Self::Sixteenths, _) => (1, 16),
            (Self::Dyadic, _) | (Self::Shop, 0..70) => (1, random.pick(&DYADIC)),
            (Self::Shop, 70..80) => (1, 10),
            (Self::Shop, 80..95) => (5, 127),
            (Self::Shop, _) => (1, random.pick(&[3, 7, 9, 11])),
        }
    }
}

/// One measurement up to ten feet in each of the forms that are timed against each other.
#[derive(Clone, Copy)]
pub struct Measure {
    pub length: Length,
    pub inches: f64,
    pub ratio: Ratio<i64>,
}

/// A corpus in random order: large enough, from 65,536 up, that no branch predictor learns it by heart.
pub fn measures(mix: Mix, count: usize) -> Vec<Measure> {
    let mut random = Random::new(SEED);
    let measure = |_| {
        let (num, den) = mix.part(&mut random);
        #[allow(clippy::cast_possible_wrap)] // small numbers
        let num = num * (1 + random.below(120 * den / num.unsigned_abs()) as i64);
        #[allow(clippy::cast_possible_wrap)]
        let ratio = Ratio::new(num, den as i64);
        #[allow(clippy::cast_precision_loss)] // what floats do
        let inches = num as f64 / den as f64;
        Measure { length: Length::fraction(num, den, Unit::Inch), inches, ratio }
    };
    (0..count).map(measure).collect()
}

/// A candidate: its name, and one pass over the whole corpus.
pub struct Subject<'a> {
    name: &'static str,
    pass: Box<dyn FnMut() + 'a>,
}

impl<'a> Subject<'a> {
    /// The pass gives something back, so that it cannot be left out.
    pub fn new<T>(name: &'static str, mut pass: impl FnMut() -> T + 'a) -> Self {
        Self { name, pass: Box::new(move || _ = black_box(pass())) }
    }

    fn time(&mut self) -> Duration {
        let start = Instant::now();
        (self.pass)();
        start.elapsed()
    }
}

/// Times the subjects over a corpus of so many items, each round all of them in turn, and each round from
/// the next one on. Reports each by itself as `group/case/subject`, then what share of each other's time
/// the first takes, round by round.
pub fn side_by_side(criterion: &mut Criterion, group: &str, case: &str, items: usize, mut subjects: Vec<Subject>) {
    let mut rounds: Vec<Vec<Duration>> = Vec::new();
    let mut timed = criterion.benchmark_group(group);
    timed.throughput(Throughput::Elements(items as u64));
    for own in 0..subjects.len() {
        timed.bench_function(BenchmarkId::new(case, subjects[own].name), |bencher| {
            bencher.iter_custom(|iterations| {
                let from = rounds.len();
                for _ in 0..iterations {
                    rounds.push(round(&mut subjects, rounds.len()));
                }
                rounds[from..].iter().map(|times| times[own]).sum()
            });
        });
    }
    timed.finish();
    // Without rounds, the case was not asked for.
    for other in (1..subjects.len()).filter(|_| !rounds.is_empty()) {
        println!("{group}/{case}: {} / {} = {}", subjects[0].name, subjects[other].name, Spread::of(&rounds, other));
    }
}

/// The time of each subject in one round.
fn round(subjects: &mut [Subject], number: usize) -> Vec<Duration> {
    let mut times = vec![Duration::ZERO; subjects.len()];
    for turn in 0..subjects.len() {
        let subject = (number + turn) % subjects.len();
        times[subject] = subjects[subject].time();
    }
    times
}

/// The first subject's time over another's: in the middle round, in four rounds of five, in the best of each.
struct Spread {
    median: f64,
    mostly: (f64, f64),
    best: f64,
    rounds: usize,
}

impl Spread {
    fn of(rounds: &[Vec<Duration>], other: usize) -> Self {
        let share = |times: &Vec<Duration>| times[0].div_duration_f64(times[other]);
        let mut shares: Vec<f64> = rounds.iter().map(share).collect();
        shares.sort_by(f64::total_cmp);
        let best = |subject: usize| rounds.iter().map(|times| times[subject]).min().unwrap_or_default();
        let at = |tenth: usize| shares[(shares.len() - 1) * tenth / 10];
        let best = best(0).div_duration_f64(best(other));
        Self { median: at(5), mostly: (at(1), at(9)), best, rounds: shares.len() }
    }
}

impl fmt::Display for Spread {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { median, mostly: (low, high), best, rounds } = self;
        write!(out, "{median:.3} ({low:.3} to {high:.3}, best {best:.3}, {rounds} rounds)")
    }
}
