//! Millimeters in inches to five decimals, against the 75 rows of `data/mm_to_inch_hawkins.csv`.
//!
//! Source, as named in the file: HAWKINS is N. Hawkins, "Self-Help Mechanical Drawing" (about 1902), table of
//! decimal equivalents. It takes 1 mm as .03937 in, from before the inch was 25.4 mm; at five places all its
//! rows agree with the inch of today. The column `n_over_25.4_5dp` was worked out apart from this crate.

use csv::Reader;
use scantling::{Length, LengthPrinter, Marks, Places, Style, Unit};

const TABLE: &str = include_str!("../data/mm_to_inch_hawkins.csv");

const INCHES: LengthPrinter = LengthPrinter::new().style(Style::DecimalInches).places(Places::Exactly(5)).marks(Marks::Words);

/// `7/50` or `13` millimeters.
fn millimeters(text: &str) -> Length {
    let (num, den) = text.split_once('/').unwrap_or((text, "1"));
    Length::fraction(num.parse().unwrap(), den.parse().unwrap(), Unit::Millimeter)
}

#[test]
fn every_row_is_printed_as_it_was_in_1902() {
    let mut reader = Reader::from_reader(TABLE.as_bytes());
    assert_eq!(reader.headers().unwrap(), vec!["mm", "printed_in", "n_over_25.4_5dp", "agrees", "source", "seen"]);
    let rows: Vec<_> = reader.records().map(Result::unwrap).collect();
    assert_eq!(rows.len(), 75);
    for row in rows {
        let rounded = millimeters(&row[0]).round(Length::fraction(1, 100_000, Unit::Inch)).unwrap();
        let text = INCHES.show(rounded).unwrap().to_string();
        assert_eq!(text, format!("{} in", &row[2]), "{row:?}");
        // The book has no zero before its point.
        let printed = if row[1].starts_with('.') { format!("0{}", &row[1]) } else { row[1].to_string() };
        assert_eq!(text, format!("{printed} in"), "{row:?}");
    }
}
