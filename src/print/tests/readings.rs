//! Readings in the words of a shop: the mark, how the true place leans to it, and by how much. Every case was
//! worked by hand.

use std::format;
use std::string::ToString;

use super::{inches, millimeters};
use crate::length::{Length, Rounding, RoundingMode};
use crate::print::{Join, LengthPrinter, Marks, PrintError, ReadingPrinter, Sign, Style};
use crate::tape::{Reading, Tape};

const DECIMAL: LengthPrinter = LengthPrinter::new().style(Style::DecimalInches);
const METRIC: LengthPrinter = LengthPrinter::new().style(Style::Millimeters);
const BENCH: ReadingPrinter = ReadingPrinter::new();

fn read(tape: Tape, position: Length) -> Reading {
    tape.read(position).unwrap()
}

fn said(printer: ReadingPrinter, position: Length) -> std::string::String {
    printer.show(&read(Tape::sixteenths(), position)).unwrap().to_string()
}

#[test]
fn the_exact_leftover_in_three_notations() {
    let cases = [
        (inches(87, 5), [r#"17-3/8" strong by 1/40""#, r#"17-3/8" strong by 0.025""#, r#"17-3/8" strong by 0.635 mm"#]),
        (inches(1129, 64), [r#"17-5/8" strong by 1/64""#, r#"17-5/8" strong by 0.015625""#, r#"17-5/8" strong by 0.396875 mm"#]),
        (inches(1127, 64), [r#"17-5/8" shy by 1/64""#, r#"17-5/8" shy by 0.015625""#, r#"17-5/8" shy by 0.396875 mm"#]),
        (inches(-87, 5), [r#"-17-3/8" shy by 1/40""#, r#"-17-3/8" shy by 0.025""#, r#"-17-3/8" shy by 0.635 mm"#]),
        (inches(1, 50), [r#"0" strong by 1/50""#, r#"0" strong by 0.02""#, r#"0" strong by 0.508 mm"#]),
        (inches(-1, 50), [r#"0" shy by 1/50""#, r#"0" shy by 0.02""#, r#"0" shy by 0.508 mm"#]),
        (inches(141, 8), [r#"17-5/8""#; 3]),
        (inches(0, 1), [r#"0""#; 3]),
        (inches(360, 1), [r#"360""#; 3]),
    ];
    for (position, expected) in cases {
        let printers = [BENCH, BENCH.leftover(DECIMAL), BENCH.leftover(METRIC)];
        assert_eq!(printers.map(|printer| said(printer, position)), expected);
        assert_eq!(read(Tape::sixteenths(), position).to_string(), expected[0]);
    }
}

#[test]
fn a_rounded_leftover_is_marked_and_an_exact_one_is_not() {
    let mils = BENCH.leftover(DECIMAL).rounded(Rounding::to(inches(1, 1000)));
    let hundredths = BENCH.leftover(METRIC).rounded(Rounding::to(millimeters(1, 100)));
    let cases = [
        (inches(87, 5), [r#"17-3/8" strong by 0.025""#, r#"17-3/8" strong by ≈0.64 mm"#]),
        (inches(1, 3), [r#"5/16" strong by ≈0.021""#, r#"5/16" strong by ≈0.53 mm"#]),
        (inches(-1, 3), [r#"-5/16" shy by ≈0.021""#, r#"-5/16" shy by ≈0.53 mm"#]),
        (inches(1, 9999), [r#"0" strong by ≈0""#, r#"0" strong by ≈0 mm"#]),
        (millimeters(-1, 2), [r#"0" shy by ≈0.02""#, r#"0" shy by 0.5 mm"#]),
        (inches(141, 8), [r#"17-5/8""#; 2]),
    ];
    for (position, expected) in cases {
        assert_eq!([mils, hundredths].map(|printer| said(printer, position)), expected);
        for (printer, text) in [mils, hundredths].into_iter().zip(expected) {
            let shown = printer.show(&read(Tape::sixteenths(), position)).unwrap();
            assert_eq!(shown.is_exact(), !text.contains('≈'), "{text}");
        }
    }
    let up = BENCH.rounded(Rounding::to(inches(1, 64)).mode(RoundingMode::Up));
    assert_eq!(said(up, inches(1, 3)), r#"5/16" strong by ≈1/32""#);
}

#[test]
fn mark_and_leftover_have_their_own_settings() {
    let feet = LengthPrinter::new().style(Style::FeetInches).join(Join::Hyphen);
    let words = LengthPrinter::new().marks(Marks::Words).join(Join::Glyph);
    let cases = [
        (BENCH.mark(feet), inches(372, 5), r#"6'-2-3/8" strong by 1/40""#),
        (BENCH.mark(feet), inches(767, 64), r#"1'-0" shy by 1/64""#),
        (BENCH.mark(words).leftover(words), inches(87, 5), "17⅜ in strong by ¹⁄₄₀ in"),
        (BENCH.mark(METRIC.sign(Sign::TrueMinus)), inches(-87, 5), r#"−441.325 mm shy by 1/40""#),
    ];
    for (printer, position, expected) in cases {
        assert_eq!(said(printer, position), expected);
    }
    let metric = BENCH.mark(METRIC).leftover(METRIC);
    let on = |tape, position| metric.show(&read(tape, position)).unwrap().to_string();
    assert_eq!(on(Tape::millimeters(), inches(87, 5)), "442 mm shy by 0.04 mm");
    assert_eq!(on(Tape::half_millimeters(), millimeters(3, 2)), "1.5 mm");
    // The mark is what the tape shows.
    assert_eq!(on(Tape::millimeters().offset(millimeters(100, 1)), millimeters(401, 10)), "140 mm strong by 0.1 mm");
}

#[test]
fn it_is_padded_as_a_whole() {
    let shown = BENCH.leftover(METRIC).show(&read(Tape::sixteenths(), inches(87, 5))).unwrap();
    assert_eq!(format!("{shown:>28}|{shown:.3}"), r#"  17-3/8" strong by 0.635 mm|17-3/8" strong by 0.635 mm"#);
}

#[test]
fn what_cannot_be_rounded_or_written_is_refused() {
    let third = read(Tape::sixteenths(), inches(1, 3));
    let even = "printing never rounds, so round it first";
    let cases = [
        (BENCH.leftover(DECIMAL), format!("1/48\" does not come out even in inches within 24 decimals: {even}")),
        (BENCH.mark(METRIC).leftover(METRIC), format!("1/48\" does not come out even in millimeters within 24 decimals: {even}")),
        (
            BENCH.rounded(Rounding::to(Length::ZERO)),
            "cannot round 1/48\" before it is written: cannot round to a step of 0\": a step must be above zero".into(),
        ),
    ];
    for (printer, expected) in cases {
        assert_eq!(printer.show(&third).unwrap_err().to_string(), expected);
    }
    let seventh = read(Tape::with_step(inches(1, 7)).unwrap(), inches(3, 7));
    assert!(matches!(BENCH.mark(METRIC).show(&seventh), Err(PrintError::Uneven { .. })));
}
