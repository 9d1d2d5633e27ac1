//! What the benchmarks share: a seeded generator of shop measurements, what is timed with them (`cases/`), and a way to time
//! candidates side by side in one run (`pair.rs`).

#![allow(dead_code)] // each benchmark is a crate of its own and takes what it needs

pub mod cases;
pub mod floats;
pub mod pair;
pub mod texts;

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
    /// How many of it, or in how many parts: 2 to 12.
    pub count: i64,
}

/// A corpus in random order: large enough, from 65,536 up, that no branch predictor learns it by heart.
pub fn measures(mix: Mix, count: usize) -> Vec<Measure> {
    let mut random = Random::new(SEED);
    let measure = |_| {
        let (num, den) = mix.part(&mut random);
        #[allow(clippy::cast_possible_wrap)] // small numbers
        let num = num * (1 + random.below(120 * den / num.unsigned_abs()) as i64);
        #[allow(clippy::cast_possible_wrap)]
        let (ratio, count) = (Ratio::new(num, den as i64), 2 + random.below(11) as i64);
        #[allow(clippy::cast_precision_loss)] // what floats do
        let inches = num as f64 / den as f64;
        Measure { length: Length::fraction(num, den, Unit::Inch), inches, ratio, count }
    };
    (0..count).map(measure).collect()
}
