//! What the crate writes, under any setting, it reads back as the length it came from, in figures and in words; and no
//! text whatever makes a reader contradict another one, or itself. The properties start from lengths, but for the
//! last, which holds for any text. The fuzz targets hold the crate to the same.

use crate::support::chance::{random, source};
use crate::support::printers::{
    Choose, STYLES, both_come_back, comes_back, length, one_of, printer, reading_comes_back, several_come_back,
};
use crate::support::texts::{PARSERS, PIECES, parser, read_by_all};
use crate::support::{Any, Choices};
use quickcheck::Arbitrary;
use scantling::{Denominator, Join, Length, LengthPrinter, Marks, Places, Sign, Tape, Unit, Zeros};

/// Every printer there is, with one fixed denominator and one fixed count of decimals, but for the style of feet, inches
/// and sixteenths, which takes no settings.
fn printers() -> Vec<LengthPrinter> {
    let mut all = vec![LengthPrinter::new()];
    all = all.into_iter().flat_map(|printer| STYLES.map(|style| printer.style(style))).collect();
    all = all.into_iter().flat_map(|printer| [Join::Space, Join::Hyphen, Join::Glyph].map(|join| printer.join(join))).collect();
    all = all
        .into_iter()
        .flat_map(|printer| [Marks::Quotes, Marks::Primes, Marks::Words].map(|marks| printer.marks(marks)))
        .collect();
    all = all.into_iter().flat_map(|printer| [Sign::Minus, Sign::TrueMinus, Sign::Plus].map(|sign| printer.sign(sign))).collect();
    all = all.into_iter().flat_map(|printer| [Zeros::Kept, Zeros::Dropped].map(|zeros| printer.zeros(zeros))).collect();
    let fixed = |printer: LengthPrinter| printer.denominator(Denominator::Fixed(192)).places(Places::Exactly(9));
    all.into_iter().flat_map(|printer| [printer, fixed(printer)]).collect()
}

fn below(choose: &mut Choose<'_>, count: usize) -> usize {
    usize::try_from(choose(count as u64)).unwrap()
}

fn check(tests: u64, property: fn(Choices) -> bool) {
    random().tests(tests).quickcheck(property);
}

#[test]
fn a_length_comes_back_from_any_printer() {
    check(500, |choices| {
        let mut choose = choices.take();
        let (length, printer) = (length(&mut choose), printer(&mut choose));
        comes_back(length, printer);
        true
    });
}

#[test]
fn a_dual_dimension_comes_back() {
    check(2000, |choices| {
        let mut choose = choices.take();
        let (first, second) = (printer(&mut choose), printer(&mut choose));
        both_come_back(length(&mut choose), first, second, length(&mut choose));
        true
    });
}

#[test]
fn a_reading_comes_back() {
    check(2000, |choices| {
        let mut choose = choices.take();
        let tape = one_of(&mut choose, &[Tape::sixteenths(), Tape::eighths(), Tape::millimeters()]);
        let (mark, leftover) = (printer(&mut choose), printer(&mut choose));
        reading_comes_back(length(&mut choose), &tape.offset(length(&mut choose)), mark, leftover);
        true
    });
}

#[test]
fn lengths_together_come_back() {
    check(2000, |choices| {
        let mut choose = choices.take();
        let printer = printer(&mut choose);
        let lengths = [(); 3].map(|()| length(&mut choose));
        several_come_back(lengths, printer, &mut choose);
        true
    });
}

#[test]
fn what_every_printer_can_write() {
    // Worked by hand: each ends within nine decimals of every unit and is a whole count of 1/192 in.
    for quarters in [0, 51, -3603] {
        let length = Length::fraction(quarters, 4, Unit::Inch);
        assert!(printers().into_iter().all(|printer| comes_back(length, printer)), "{quarters}/4");
    }
}

/// Fractions in lowest terms can be written of every length, those at the edges too.
#[test]
fn what_can_be_held_can_be_written() {
    let edges = [Length::MAX, Length::MIN, Length::fraction(1, u64::MAX, Unit::Inch), Length::new(i64::MIN, Unit::Yard)];
    assert!(edges.into_iter().all(|length| comes_back(length, LengthPrinter::new())));
    random().tests(200).quickcheck((|Any(length)| comes_back(length, LengthPrinter::new())) as fn(Any) -> bool);
}

/// The properties above pass over what a printer cannot write, so most of it must be written.
#[test]
fn most_is_written() {
    let mut written = [0; 4];
    let mut random = source();
    for _ in 0..1000 {
        let choices = Choices::arbitrary(&mut random);
        let mut choose = choices.take();
        let (first, second, size) = (printer(&mut choose), printer(&mut choose), length(&mut choose));
        written[0] += usize::from(first.show(size).is_ok());
        written[1] += usize::from(both_come_back(size, first, second, length(&mut choose)));
        written[2] += usize::from(several_come_back([size; 3], first, &mut choose));
        written[3] += usize::from(reading_comes_back(size, &Tape::sixteenths(), first, second));
    }
    assert!(written.iter().all(|count| *count > 150), "{written:?}");
}

#[test]
fn readers_agree_on_any_text() {
    check(4000, |choices| {
        let mut choose = choices.take();
        let parser = parser(below(&mut choose, PARSERS));
        let pieces = 1 + below(&mut choose, 7);
        let text: String = (0..pieces).map(|_| PIECES[below(&mut choose, PIECES.len())]).collect();
        read_by_all(parser, &text);
        true
    });
    random()
        .tests(2000)
        .quickcheck((|text: String, kind: usize| read_by_all(parser(kind % PARSERS), &text)) as fn(String, usize));
}
