//! Lengths already on sixteenths, beside floats with four decimals, into a text that is kept, and beside the shortest decimals of
//! floats in a buffer of their own. Rounding is timed apart, since a reading is rounded once and may be written often.

#![allow(clippy::needless_for_each)] // a pass over a corpus is one line

use std::fmt::Write;
use std::hint::black_box;

use scantling::{Length, LengthPrinter, Unit};

use crate::support::pair::{Case, Subject};
use crate::support::{Measure, Mix, measures};

const SIXTEENTH: Length = Length::fraction(1, 16, Unit::Inch);

pub fn written(count: usize) -> Case {
    let corpus: &[Measure] = measures(Mix::Sixteenths, count).leak();
    corpus.iter().for_each(|measure| check(measure, &measure.length.to_string()));
    let (mut lengths, mut floats) = (String::new(), String::new());
    let subjects = vec![
        Subject::new("length", move || {
            lengths.clear();
            corpus.iter().for_each(|measure| write!(lengths, "{}", measure.length).expect("room"));
            lengths.len()
        }),
        Subject::new("float", move || {
            floats.clear();
            corpus.iter().for_each(|measure| write!(floats, "{:.4}", measure.inches).expect("room"));
            floats.len()
        }),
        Subject::new("shortest", || shortest(corpus)),
    ];
    Case::new("print", "sixteenths", count, subjects)
}

/// Past the machinery of `write!`, straight into a text, by a printer that is known when the program is built, as most
/// are. Measured: one whose settings are chosen as it runs takes some four fifths longer.
pub fn pushed(count: usize) -> Case {
    const PLAIN: LengthPrinter = LengthPrinter::new();
    let corpus: &[Measure] = measures(Mix::Sixteenths, count).leak();
    corpus.iter().for_each(|measure| check(measure, &PLAIN.show(measure.length).expect("a fraction").to_string()));
    let mut lengths = String::new();
    let subjects = vec![
        Subject::new("length", move || {
            lengths.clear();
            corpus.iter().for_each(|measure| {
                PLAIN.show(measure.length).expect("a fraction").write_to(&mut lengths).expect("room");
            });
            lengths.len()
        }),
        Subject::new("shortest", || shortest(corpus)),
    ];
    Case::new("push", "sixteenths", count, subjects)
}

/// The text is the number as a ratio is written, its whole apart, and those of floats are the same number.
fn check(measure: &Measure, text: &str) {
    let Measure { inches, ratio, .. } = measure;
    let pieces = [ratio.trunc(), ratio.fract()].into_iter().filter(|piece| *piece.numer() != 0);
    let pieces: Vec<String> = pieces.map(|piece| piece.to_string()).collect();
    assert_eq!(text, pieces.join(" ") + "\"");
    assert_eq!(format!("{inches:.4}").parse(), Ok(*inches));
    assert_eq!(zmij::Buffer::new().format(*inches).parse(), Ok(*inches));
}

/// The shortest decimals that read back as the same floats, each in turn in one buffer.
fn shortest(corpus: &[Measure]) -> usize {
    let mut buffer = zmij::Buffer::new();
    corpus.iter().map(|measure| black_box(buffer.format(measure.inches)).len()).sum()
}

pub fn rounded(count: usize) -> Case {
    let corpus: &[Measure] = measures(Mix::Shop, count).leak();
    for measure in corpus {
        let apart = measure.length.round(SIXTEENTH).expect("a short length") - measure.length;
        assert!(2 * apart.abs() <= SIXTEENTH);
    }
    let subjects = vec![
        Subject::new("length", || corpus.iter().filter_map(|measure| measure.length.round(SIXTEENTH).ok()).max()),
        Subject::new("float", || corpus.iter().map(|measure| (measure.inches * 16.0).round() / 16.0).fold(0.0, f64::max)),
    ];
    Case::new("round", "shop", count, subjects)
}
