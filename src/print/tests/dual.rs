//! Two dimensions at once: what is marked as rounded, and what is refused.

use std::format;
use std::string::ToString;

use super::{inches, millimeters};
use crate::length::{Length, Rounding, RoundingMode, Unit};
use crate::print::{DualPrinter, Join, LengthPrinter, Marks, Places, PrintError, Sign, Style};

const METRIC: LengthPrinter = LengthPrinter::new().style(Style::Millimeters);

fn tenths() -> Rounding {
    Rounding::to(millimeters(1, 10))
}

#[test]
fn a_rounded_dimension_is_marked_and_an_exact_one_is_not() {
    let cases = [
        (inches(141, 8), r#"17 5/8" [≈447.7 mm]"#),
        (inches(-141, 8), r#"-17 5/8" [≈-447.7 mm]"#),
        (inches(17, 1), r#"17" [431.8 mm]"#),
        (inches(5, 1), r#"5" [127 mm]"#),
        (inches(1, 64), r#"1/64" [≈0.4 mm]"#),
        (inches(1, 1000), r#"1/1000" [≈0 mm]"#),
        (inches(0, 1), r#"0" [0 mm]"#),
        (inches(2, 5), r#"2/5" [≈10.2 mm]"#),
        (inches(1, 2), r#"1/2" [12.7 mm]"#),
    ];
    for (length, text) in cases {
        let shown = DualPrinter::new(LengthPrinter::new(), METRIC, tenths()).show(length).unwrap();
        assert_eq!(shown.to_string(), text);
        assert_eq!(shown.is_exact(), !text.contains('≈'));
    }
}

#[test]
fn each_dimension_has_its_own_settings() {
    let feet = LengthPrinter::new().style(Style::FeetInches).marks(Marks::Primes).join(Join::Glyph);
    let whole = METRIC.places(Places::Exactly(1)).sign(Sign::TrueMinus);
    let dual = DualPrinter::new(feet, whole, Rounding::to(Unit::Millimeter.length()).mode(RoundingMode::Down));
    assert_eq!(dual.show(inches(-151, 2)).unwrap().to_string(), "-6′-3½″ [≈−1918.0 mm]");
    let other = DualPrinter::new(METRIC, feet, Rounding::to(inches(1, 16)));
    assert_eq!(other.show(millimeters(1000, 1)).unwrap().to_string(), "1000 mm [≈3′-3⅜″]");
    assert_eq!(other.show(millimeters(127, 1)).unwrap().to_string(), "127 mm [0′-5″]");
}

#[test]
fn it_is_padded_as_a_whole() {
    let shown = DualPrinter::new(LengthPrinter::new(), METRIC, tenths()).show(inches(141, 8)).unwrap();
    assert_eq!(format!("{shown:>22}|"), r#"   17 5/8" [≈447.7 mm]|"#);
    assert_eq!(format!("{shown:·^21.3}|"), r#"·17 5/8" [≈447.7 mm]·|"#);
}

#[test]
fn what_cannot_be_rounded_or_written_is_refused() {
    let refused = |second, rounding, length| DualPrinter::new(LengthPrinter::new(), second, rounding).show(length).unwrap_err();
    let even = "printing never rounds, so round it first";
    let cases = [
        (
            refused(METRIC, Rounding::to(Length::ZERO), inches(1, 2)),
            r#"cannot round 1/2" before it is written: cannot round to a step of 0": a step must be above zero"#,
        ),
        (
            refused(METRIC, Rounding::to(millimeters(1, u64::MAX)), Length::MAX),
            "cannot round 3098046300820592933817554 54777228105727/54918864000000\" before it is written: \
             the exact answer is out of range: longer, or more finely divided, than a length can hold",
        ),
        (
            refused(METRIC, Rounding::to(inches(1, 3)), inches(1, 2)),
            &format!("2/3\" does not come out even in millimeters within 24 decimals: {even}"),
        ),
        (
            refused(METRIC.places(Places::Exactly(0)), tenths(), inches(17, 1)),
            &format!("17\" does not come out even in millimeters within 0 decimals: {even}"),
        ),
    ];
    for (error, text) in &cases {
        assert_eq!(error.to_string(), *text);
    }
    let first = DualPrinter::new(METRIC, LengthPrinter::new(), tenths()).show(inches(1, 3)).unwrap_err();
    assert!(matches!(first, PrintError::Uneven { unit: Unit::Millimeter, .. }));
}
