//! Whatever the printer writes, under any of its settings, the parser reads back to the same length. The
//! properties start from lengths. What the texts look like is left to the tests of `print/`.

use quickcheck::{Arbitrary, Gen, QuickCheck};
use scantling::{
    Called, Comma, Denominator, DualPrinter, Join, Length, LengthParser, LengthPrinter, Marks, Places, PrintError,
    ReadingPrinter, Rounding, Shorthand, Side, Sign, Style, Tape, Unit, Zeros,
};

const STYLES: [Style; 9] = [
    Style::Inches,
    Style::FeetInches,
    Style::FeetInchesSixteenths,
    Style::Yards,
    Style::DecimalInches,
    Style::DecimalFeet,
    Style::Millimeters,
    Style::Centimeters,
    Style::Meters,
];

/// Every printer there is, with one fixed denominator and one fixed count of decimals.
fn printers() -> Vec<LengthPrinter> {
    let mut all = Vec::new();
    for style in STYLES {
        for join in [Join::Space, Join::Hyphen, Join::Glyph] {
            for marks in [Marks::Quotes, Marks::Primes, Marks::Words] {
                for sign in [Sign::Minus, Sign::TrueMinus, Sign::Plus] {
                    for zeros in [Zeros::Kept, Zeros::Dropped] {
                        let plain = LengthPrinter::new().style(style).join(join).marks(marks).sign(sign).zeros(zeros);
                        let fixed = plain.denominator(Denominator::Fixed(192)).places(Places::Exactly(9));
                        all.extend([plain, fixed]);
                    }
                }
            }
        }
    }
    all
}

/// Reads back what each printer writes; tells how many could write the length at all.
#[track_caller]
fn comes_back(length: Length) -> usize {
    let shown = printers().into_iter().filter_map(|printer| match printer.show(length) {
        Ok(shown) => Some((printer, shown.to_string())),
        Err(PrintError::Uneven { .. } | PrintError::NoWholeCount { .. }) => None,
        Err(error) => panic!("{error}"),
    });
    let read = shown.map(|(printer, text)| {
        // Where the comma is the decimal sign a printed point may group, and is refused.
        let pointed = text.contains('.');
        for comma in
            [Comma::Refuse, Comma::Groups, Comma::Decimal].into_iter().filter(|comma| !pointed || *comma != Comma::Decimal)
        {
            let parser = LengthParser::new().default_unit(Unit::Yard).comma(comma).shorthand(Shorthand::FeetInchesSixteenths);
            assert_eq!(parser.parse(&text), Ok(length), "{text:?} by {printer:?}, {comma:?}");
        }
    });
    read.count()
}

/// A length as shops have them, or any at all.
#[derive(Clone, Copy, Debug)]
struct Any(Length);

impl Arbitrary for Any {
    fn arbitrary(random: &mut Gen) -> Self {
        let count = i64::from(i16::arbitrary(random));
        let parts = u64::from(u8::arbitrary(random)) + 1;
        Self(match u8::arbitrary(random) % 7 {
            0 => Length::new(count % 300, Unit::Inch),
            1 => Length::fraction(count, 64, Unit::Inch),
            2 => Length::fraction(count, 1000, Unit::Foot),
            3 => Length::fraction(count, 10, Unit::Millimeter),
            4 => Length::fraction(count, 192, Unit::Inch),
            5 => Length::fraction(count, parts, Unit::Inch),
            _ => Length::fraction(i64::arbitrary(random), u64::arbitrary(random).max(1), Unit::Inch),
        })
    }
}

#[test]
fn any_length_by_every_printer() {
    fn property(Any(length): Any) -> bool {
        comes_back(length) >= 162 // the fractions in lowest terms, which cannot fail
    }
    QuickCheck::new().tests(400).quickcheck(property as fn(Any) -> bool);
}

#[test]
fn what_every_printer_can_write() {
    // Worked by hand: each ends within nine decimals of every unit and is a whole count of 1/192 in.
    for (num, den) in [(0, 1), (3, 4), (6, 1), (12, 1), (36, 1), (51, 4), (147, 4), (219, 4), (300, 1), (3603, 4)] {
        for num in [num, -num] {
            assert_eq!(comes_back(Length::fraction(num, den, Unit::Inch)), 972, "{num}/{den}");
        }
    }
}

#[test]
fn the_edges_of_what_can_be_held() {
    for length in [Length::MAX, Length::MIN, Length::fraction(1, u64::MAX, Unit::Inch), Length::new(i64::MIN, Unit::Yard)] {
        assert!(comes_back(length) >= 162, "{length:?}");
    }
}

#[test]
fn both_of_two_dimensions() {
    fn property(Any(length): Any) -> bool {
        let step = Length::fraction(1, 10, Unit::Millimeter);
        let metric = LengthPrinter::new().style(Style::Millimeters);
        let dual = DualPrinter::new(LengthPrinter::new(), metric, Rounding::to(step));
        let Ok(shown) = dual.show(length) else { return false };
        let text = shown.to_string();
        let (first, second) = text.trim_end_matches(']').split_once(" [").unwrap();
        let (second, marked) = second.strip_prefix('≈').map_or((second, false), |second| (second, true));
        let (first, second): (Length, Length) = (first.parse().unwrap(), second.parse().unwrap());
        let half = Length::fraction(1, 20, Unit::Millimeter);
        first == length && (second - length).abs() <= half && marked == (second != length)
    }
    QuickCheck::new().tests(1000).quickcheck(property as fn(Any) -> bool);
}

#[test]
fn the_mark_and_the_leftover_of_a_reading() {
    fn property(Any(length): Any, settings: usize) -> bool {
        let printers = printers();
        let (mark, leftover) = (printers[settings % printers.len()], printers[settings / printers.len() % printers.len()]);
        let Ok(reading) = Tape::sixteenths().read(length) else { return false };
        let Ok(shown) = ReadingPrinter::new().mark(mark).leftover(leftover).show(&reading) else { return true };
        let text = shown.to_string();
        let parser = LengthParser::new().shorthand(Shorthand::FeetInchesSixteenths);
        let called: Called = parser.parse_called(&text).unwrap_or_else(|error| panic!("{text}: {error}"));
        let amount = called.said().unwrap_or_default();
        let leftover = if called.side() == Side::Under { -amount } else { amount };
        (called.mark(), leftover) == (reading.shown(), reading.leftover())
    }
    QuickCheck::new().tests(5000).quickcheck(property as fn(Any, usize) -> bool);
}
