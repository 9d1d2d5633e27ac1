//! Every setting against hand-made lengths; here what they share, and what holds for all of them. Unless
//! a line says otherwise its text is common practice and was worked by hand; the huge values were worked
//! out with big integers elsewhere.

use core::fmt::{self, Write};
use std::collections::BTreeSet;
use std::format;
use std::string::{String, ToString};
use std::vec::Vec;

use super::{Denominator, Join, LengthPrinter, Marks, Places, Sign, Style, Zeros};
use crate::length::{Length, Unit};

mod columns;
mod decimals;
mod dual;
mod ear;
mod fractions;
mod readings;
mod refused;
mod settings;
mod spoken;

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn millimeters(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Millimeter)
}

#[track_caller]
fn show(printer: LengthPrinter, length: Length) -> String {
    let shown = printer.show(length).unwrap();
    let mut written = String::new();
    shown.write_to(&mut written).unwrap();
    assert_eq!(shown.to_string(), written);
    written
}

#[test]
fn width_fill_and_alignment_are_honored_and_a_precision_is_not() {
    let length = inches(141, 8);
    let metric = LengthPrinter::new().style(Style::Millimeters).show(length).unwrap();
    let shown = LengthPrinter::new().show(-length).unwrap();
    let area = length * inches(1, 1);
    let cases = [
        (format!("[{length:9}]"), r#"[17 5/8"  ]"#),
        (format!("[{length:<9}]"), r#"[17 5/8"  ]"#),
        (format!("[{length:>9}]"), r#"[  17 5/8"]"#),
        (format!("[{length:^10}]"), r#"[ 17 5/8"  ]"#),
        (format!("[{length:·^9}]"), r#"[·17 5/8"·]"#),
        (format!("[{length:3}]"), r#"[17 5/8"]"#),
        (format!("[{length:7}]"), r#"[17 5/8"]"#),
        (format!("[{length:0}]"), r#"[17 5/8"]"#),
        (format!("[{length:.2}]"), r#"[17 5/8"]"#),
        (format!("[{length:>8.0}]"), r#"[ 17 5/8"]"#),
        (format!("[{length:+09}]"), r#"[17 5/8"  ]"#),
        (format!("[{:>width$}]", length, width = 9), r#"[  17 5/8"]"#),
        (format!("[{length:#9}]"), r#"[1'-5 5/8"]"#),
        (format!("[{length:>#11.1}]"), r#"[  1'-5 5/8"]"#),
        (format!("[{shown:>9}]"), r#"[ -17 5/8"]"#),
        (format!("[{shown:#}]"), r#"[-17 5/8"]"#),
        (format!("[{metric:>12.1}]"), "[  447.675 mm]"),
        (format!("[{metric:_<12}]"), "[447.675 mm__]"),
        (format!("[{:>4.1}]", Unit::Inch), "[  in]"),
        (format!("[{:.0}]", Unit::Millimeter), "[mm]"),
        (format!("[{area:>14.3}]"), "[  17 5/8 sq in]"),
        (format!("[{:^15.3}]", area * inches(1, 1)), "[ 17 5/8 cu in  ]"),
        (format!("[{:>25}]", inches(1, u64::MAX)), r#"[  1/18446744073709551615"]"#),
    ];
    for (padded, text) in cases {
        assert_eq!(padded, text);
    }
}

/// A sink that takes so many bytes and no more.
pub(super) struct Narrow(pub(super) usize);

impl Write for Narrow {
    fn write_str(&mut self, text: &str) -> fmt::Result {
        self.0 = self.0.checked_sub(text.len()).ok_or(fmt::Error)?;
        Ok(())
    }
}

#[test]
fn a_sink_that_fails_is_heard() {
    let shown = |style, length| LengthPrinter::new().style(style).show(length).unwrap();
    let cases = [
        shown(Style::Inches, inches(-141, 8)),
        shown(Style::FeetInches, inches(-151, 2)),
        shown(Style::FeetInchesSixteenths, inches(-151, 2)),
        shown(Style::Yards, inches(-151, 2)),
        shown(Style::Inches, inches(-87, 5)),
        shown(Style::FeetInches, inches(-72, 5)),
        shown(Style::Millimeters, inches(-141, 8)),
    ];
    for shown in cases {
        let len = shown.to_string().len();
        assert_eq!(shown.write_to(&mut Narrow(len)), Ok(()));
        for room in 0..len {
            assert_eq!(shown.write_to(&mut Narrow(room)), Err(fmt::Error), "{shown} in {room}");
        }
    }
}

#[test]
fn a_printer_is_a_constant() {
    const PRINTER: LengthPrinter = LengthPrinter::new().style(Style::Meters).places(Places::Exactly(2)).marks(Marks::Words);
    assert_eq!(show(PRINTER.join(Join::Hyphen), millimeters(1200, 1)), "1.20 m");
    assert_eq!(LengthPrinter::default(), LengthPrinter::new());
}

/// The settings by the names that the table in the documentation calls them by.
fn setting(printer: LengthPrinter, name: &str) -> LengthPrinter {
    match name {
        "Style::Inches" => printer.style(Style::Inches),
        "Style::FeetInches" => printer.style(Style::FeetInches),
        "Style::FeetInchesSixteenths" => printer.style(Style::FeetInchesSixteenths),
        "Style::Yards" => printer.style(Style::Yards),
        "Style::DecimalInches" => printer.style(Style::DecimalInches),
        "Style::DecimalFeet" => printer.style(Style::DecimalFeet),
        "Style::Millimeters" => printer.style(Style::Millimeters),
        "Style::Centimeters" => printer.style(Style::Centimeters),
        "Style::Meters" => printer.style(Style::Meters),
        "Join::Space" => printer.join(Join::Space),
        "Join::Hyphen" => printer.join(Join::Hyphen),
        "Join::Glyph" => printer.join(Join::Glyph),
        "Marks::Quotes" => printer.marks(Marks::Quotes),
        "Marks::Primes" => printer.marks(Marks::Primes),
        "Marks::Words" => printer.marks(Marks::Words),
        "Sign::Minus" => printer.sign(Sign::Minus),
        "Sign::TrueMinus" => printer.sign(Sign::TrueMinus),
        "Sign::Plus" => printer.sign(Sign::Plus),
        "Zeros::Kept" => printer.zeros(Zeros::Kept),
        "Zeros::Dropped" => printer.zeros(Zeros::Dropped),
        "Denominator::Lowest" => printer.denominator(Denominator::Lowest),
        "Denominator::Fixed(16)" => printer.denominator(Denominator::Fixed(16)),
        "Places::Shortest" => printer.places(Places::Shortest),
        "Places::Exactly(3)" => printer.places(Places::Exactly(3)),
        _ => panic!("what is {name}?"),
    }
}

/// The settings of the table, each row's names without their ticks, and the text beside them.
fn documented() -> impl Iterator<Item = (Vec<&'static str>, &'static str)> {
    let rows = include_str!("../mod.rs").lines().filter_map(|line| line.strip_prefix("//! | `"));
    rows.map(|row| {
        let (settings, text) = row.trim_end_matches(" |").split_once(" | ").unwrap();
        (settings.split(", ").map(|name| name.trim_matches(['`', ' '])).collect(), text.trim())
    })
}

#[test]
fn the_table_in_the_documentation_is_complete_and_true() {
    let mut names = BTreeSet::new();
    for (settings, text) in documented() {
        let printer = settings.iter().fold(LengthPrinter::new(), |printer, name| setting(printer, name));
        let shown = printer.show(inches(151, 2)).map(|shown| format!("`{shown}`"));
        assert_eq!(shown.as_deref().unwrap_or("an error: 6.291666... feet"), text, "{settings:?}");
        names.extend(settings);
    }
    assert_eq!(names.len(), 24, "a setting without a row: {names:?}");
}
