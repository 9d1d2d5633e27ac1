//! The 64ths of an inch in millimeters and in decimals, against `data/fraction_mm.csv`.
//!
//! Sources, as named in the file: AMS is the fraction, decimal and millimeter chart of A.M. Supply (undated);
//! ICS is "The Building Trades Pocketbook" of the International Correspondence Schools, decimal
//! equivalents of 64ths (about 1900); HAWKINS is N. Hawkins, "Self-Help Mechanical Drawing" (about 1902).
//! The exact and rounded columns were worked out apart from this crate, with rational arithmetic, and
//! agree with what is printed there. The column `printed_decimal` (AMS) is not used: it has a misprint
//! at 35/64 and keeps no fixed count of places.

use csv::Reader;
use scantling::{Length, LengthPrinter, Places, Rounding, RoundingMode, Style, Unit};

const TABLE: &str = include_str!("../data/fraction_mm.csv");

const INCHES: LengthPrinter = LengthPrinter::new().style(Style::DecimalInches);
const MILLIMETERS: LengthPrinter = LengthPrinter::new().style(Style::Millimeters);

/// A column of the table, each cell with its length, which is made from the first column, `k64`.
fn column(name: &str) -> Vec<(Length, String)> {
    let mut reader = Reader::from_reader(TABLE.as_bytes());
    let place = reader.headers().unwrap().iter().position(|header| header == name).unwrap();
    let rows = reader.records().map(Result::unwrap);
    let cells: Vec<_> = rows.map(|row| (sixty_fourths(&row[0]), row[place].to_string())).collect();
    assert_eq!(cells.len(), 64);
    cells
}

fn sixty_fourths(count: &str) -> Length {
    Length::fraction(count.parse().unwrap(), 64, Unit::Inch)
}

fn show(printer: LengthPrinter, length: Length) -> String {
    printer.show(length).unwrap().to_string()
}

/// Rounded to four decimals of a unit and printed with exactly four.
fn four_places(printer: LengthPrinter, length: Length, unit: Unit, mode: RoundingMode) -> String {
    let rounding = Rounding::to(Length::fraction(1, 10_000, unit)).mode(mode);
    show(printer.places(Places::Exactly(4)), length.round(rounding).unwrap())
}

#[test]
fn fractions_are_in_lowest_terms() {
    for (length, fraction) in column("fraction") {
        assert_eq!(length.to_string(), format!("{fraction}\""));
    }
}

#[test]
fn every_64th_has_an_exact_decimal() {
    for (length, inches) in column("exact_decimal") {
        assert_eq!(show(INCHES, length), format!("{inches}\""));
    }
    for (length, millimeters) in column("exact_mm_decimal") {
        assert_eq!(show(MILLIMETERS, length), format!("{millimeters} mm"));
    }
}

#[test]
fn four_decimals_of_a_millimeter_follow_the_tie_rule() {
    for (name, mode) in [("mm_4dp_half_up", RoundingMode::TiesUp), ("mm_4dp_half_even", RoundingMode::TiesEven)] {
        for (length, millimeters) in column(name) {
            assert_eq!(four_places(MILLIMETERS, length, Unit::Millimeter, mode), format!("{millimeters} mm"), "{name}");
        }
    }
}

#[test]
fn more_decimals_than_four_are_not_cut() {
    for (length, exact) in column("exact_mm_decimal") {
        let decimals = exact.split_once('.').unwrap().1.len();
        assert_eq!(MILLIMETERS.places(Places::Exactly(4)).show(length).is_ok(), decimals <= 4, "{exact}");
    }
}

/// AMS prints millimeters and ICS inches, both half up and without the zero before the point. The last
/// row of AMS, the whole inch, has three decimals and is left out.
#[test]
fn the_printed_tables_agree() {
    for (length, printed) in column("printed_mm").into_iter().take(63) {
        let millimeters = four_places(MILLIMETERS, length, Unit::Millimeter, RoundingMode::TiesUp);
        assert_eq!(millimeters.trim_start_matches('0'), format!("{printed} mm"));
    }
    for (length, printed) in column("ics_decimal") {
        let inches = four_places(INCHES, length, Unit::Inch, RoundingMode::TiesUp);
        assert_eq!(inches.trim_start_matches('0'), format!("{printed}\""));
    }
}
