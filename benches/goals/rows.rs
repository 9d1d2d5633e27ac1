//! The rows of the table: what is compared with what, what is wanted, and what is let through. How it is measured is left to
//! `times.rs` and `instructions.rs`.

use crate::support::Mix;
use crate::support::cases::{arithmetic, batch, layout, long, parse, print};
use crate::support::pair::{Case, Times};

/// Which share of times, or of instructions, a row is about. Less is better in all of them.
#[derive(Clone, Copy)]
pub enum Share {
    /// Ours of another subject's.
    Over(&'static str),
    /// The same for each byte of text.
    PerByte(&'static str),
    /// What two threads gain in a loop that needs nothing but the processor, of what they gain with us.
    Threads,
}

/// One comparison.
pub struct Row {
    pub number: &'static str,
    pub what: &'static str,
    pub share: Share,
    pub time: Option<Time>,
    /// In instructions: what fails, with the 5 in a hundred more that another build of the same source may bring.
    pub most: Option<f64>,
}

/// In time: what is wanted, and what fails.
#[derive(Clone, Copy)]
pub struct Time {
    pub goal: f64,
    pub gate: f64,
}

impl Row {
    const fn new(number: &'static str, what: &'static str, share: Share) -> Self {
        Self { number, what, share, time: None, most: None }
    }

    const fn time(self, goal: f64, gate: f64) -> Self {
        Self { time: Some(Time { goal, gate }), ..self }
    }

    /// A gate that was set in instructions, or else what they were when the row was written, in the build of profile `release`:
    /// with optimization over crates, floats are read and ours refused at other costs.
    const fn instructions(self, share: f64) -> Self {
        Self { most: Some(share * 1.05), ..self }
    }

    /// The share, of times or counts of the subjects of a case.
    pub fn share_of(&self, case: &Case, costs: &[f64]) -> f64 {
        let bytes = |subject: usize| {
            #[allow(clippy::cast_precision_loss)] // of a share
            let bytes = case.subjects[subject].bytes as f64;
            bytes
        };
        match self.share {
            Share::Over(other) => costs[0] / costs[case.place_of(other)],
            Share::PerByte(other) => {
                let other = case.place_of(other);
                costs[0] / bytes(0) / (costs[other] / bytes(other))
            }
            Share::Threads => (costs[2] / costs[3]) / (costs[0] / costs[1]),
        }
    }

    pub fn share_of_times(&self, case: &Case, times: &Times) -> f64 {
        self.share_of(case, &times.iter().map(std::time::Duration::as_secs_f64).collect::<Vec<_>>())
    }
}

/// A case, over a corpus so many times smaller than it should be for times, and its rows.
pub struct Matter {
    pub case: Box<dyn Fn(usize) -> Case>,
    pub rows: Vec<Row>,
}

fn matter(case: impl Fn(usize) -> Case + 'static, rows: impl Into<Vec<Row>>) -> Matter {
    Matter { case: Box::new(case), rows: rows.into() }
}

/// Texts and pairs enough that no branch predictor learns them by heart; terms of sums few enough to stay in the cache.
const TEXTS: usize = 100_000;
const PAIRS: usize = 1 << 16;
const TERMS: usize = 1 << 13;
const LINES: usize = 1_000_000;
const LONG: usize = 1 << 18;

pub fn matters() -> Vec<Matter> {
    [reading(), reckoning(), writing(), marking(), lines(), long()].into_iter().flatten().collect()
}

fn reading() -> Vec<Matter> {
    use Share::Over;

    let shop = [
        Row::new("1a", "read a length / a bare decimal as f64", Over("float")).time(1.8, 2.2),
        Row::new("1b", "read a length / a bare decimal as f64", Over("float")).instructions(2.0),
        Row::new("1c", "read a length / the same marks with f64", Over("marked_float")).time(0.95, 1.1).instructions(1.07),
        Row::new("1d", "read a length / a/b as Ratio<i64>", Over("ratio")).time(0.85, 1.0).instructions(0.767),
        Row::new("1d", "read a length / a decimal and a unit by uom", Over("uom")).time(0.85, 1.0).instructions(0.558),
    ];
    let refused = [Row::new("1e", "refuse a text, and say where / f64", Over("float")).time(1.5, 2.0).instructions(2.16)];
    vec![matter(|part| parse::shop(TEXTS / part), shop), matter(|part| parse::refused(TEXTS / part), refused)]
}

fn reckoning() -> Vec<Matter> {
    use Share::Over;

    let ratio = Over("ratio");
    let sum = [Row::new("2a", "a checked exact sum / f64 sum", Over("float")).time(1.1, 1.5).instructions(15.8)];
    let plus = [
        Row::new("2b", "plus / Ratio<i64>, checked", ratio).time(0.1, 0.15).instructions(0.147),
        Row::new("2d", "plus / Ratio<i128>, checked", Over("wide ratio")).time(0.05, 0.08).instructions(0.036),
    ];
    let times = [Row::new("2b", "times a whole number / Ratio<i64>, checked", ratio).time(0.1, 0.15).instructions(0.131)];
    let over = [Row::new("2c", "over a whole number / Ratio<i64>, checked", ratio).time(0.2, 0.3).instructions(0.195)];
    let order = [Row::new("2c", "order / Ratio<i64>", ratio).time(0.6, 0.8).instructions(0.222)];
    vec![
        matter(|part| arithmetic::sum(("shop", Mix::Shop), TERMS / part), sum),
        matter(|part| arithmetic::plus(PAIRS / part), plus),
        matter(|part| arithmetic::times(PAIRS / part), times),
        matter(|part| arithmetic::over(PAIRS / part), over),
        matter(|part| arithmetic::order(PAIRS / part), order),
    ]
}

fn writing() -> Vec<Matter> {
    use Share::Over;

    let written = [
        Row::new("3a", "write a length / f64 with four places", Over("float")).time(0.12, 0.16).instructions(0.12),
        Row::new("3b", "write a length / f64 by zmij", Over("shortest")).time(1.0, 1.2).instructions(1.67),
    ];
    let pushed = [Row::new("3c", "push a length / f64 by zmij", Over("shortest")).time(0.8, 1.0).instructions(0.765)];
    vec![matter(|part| print::written(PAIRS / part), written), matter(|part| print::pushed(PAIRS / part), pushed)]
}

fn marking() -> Vec<Matter> {
    use Share::Over;

    let thousand = [
        Row::new("4a", "1,000 rounded marks / f64", Over("float")).time(0.6, 0.8).instructions(0.626),
        Row::new("4b", "1,000 rounded marks / Ratio<i128>", Over("ratio of inches")).time(0.006, 0.01).instructions(0.0105),
    ];
    let million = [Row::new("4a", "1,000,000 rounded marks / f64", Over("float")).time(0.6, 0.8)];
    vec![matter(|_| layout::marks(1_001), thousand), matter(|_| layout::marks(1_000_001), million)]
}

fn lines() -> Vec<Matter> {
    let folded = [
        Row::new("5a", "lines to lengths / lines to f64", Share::Over("float")).time(1.6, 1.9).instructions(1.13),
        Row::new("5a", "the same, for each byte", Share::PerByte("float")).time(1.0 / 0.85, 1.0 / 0.7),
    ];
    let threaded = [Row::new("5b", "gain of two threads, spinning / reading", Share::Threads).time(1.0 / 0.95, 1.0 / 0.85)];
    vec![matter(|part| batch::folded(LINES / part), folded), matter(|part| batch::threaded(LINES / part), threaded)]
}

fn long() -> Vec<Matter> {
    // Twice the text, twice the work: instructions show what times on a busy machine do not.
    let row = |what| [Row::new("long", what, Share::Over("half")).instructions(2.0)];
    long::KINDS.map(|kind| matter(move |part| long::twice(kind, LONG / part), row(kind.0))).into()
}
