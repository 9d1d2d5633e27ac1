//! Lengths as they are written and said, and those that are refused because they do not come out even.

use scantling::{Denominator, Join, LengthPrinter, Marks, Places, Sign, Style, Zeros};

use super::{golden, inches};

/// What a cell stands for, by a list of names.
fn named<T: Copy>(cell: &str, all: &[(&str, T)]) -> T {
    all.iter().find(|(name, _)| *name == cell).unwrap_or_else(|| panic!("setting {cell:?}")).1
}

#[rustfmt::skip] // one line a setting
fn printer(row: &csv::StringRecord) -> LengthPrinter {
    let styles = [
        ("inches", Style::Inches), ("feet inches", Style::FeetInches), ("feet inches sixteenths", Style::FeetInchesSixteenths),
        ("yards", Style::Yards), ("decimal inches", Style::DecimalInches), ("decimal feet", Style::DecimalFeet),
        ("millimeters", Style::Millimeters), ("centimeters", Style::Centimeters), ("meters", Style::Meters),
    ];
    let denominator = if &row[6] == "lowest" { Denominator::Lowest } else { Denominator::Fixed(row[6].parse().unwrap()) };
    let places = if &row[7] == "shortest" { Places::Shortest } else { Places::Exactly(row[7].parse().unwrap()) };
    LengthPrinter::new()
        .style(named(&row[1], &styles))
        .join(named(&row[2], &[("space", Join::Space), ("hyphen", Join::Hyphen), ("glyph", Join::Glyph)]))
        .marks(named(&row[3], &[("quotes", Marks::Quotes), ("primes", Marks::Primes), ("words", Marks::Words)]))
        .sign(named(&row[4], &[("minus", Sign::Minus), ("true minus", Sign::TrueMinus), ("plus", Sign::Plus)]))
        .zeros(named(&row[5], &[("kept", Zeros::Kept), ("dropped", Zeros::Dropped)]))
        .denominator(denominator)
        .places(places)
}

#[test]
fn every_text_written_and_said() {
    let rows = golden("printing.csv");
    let mut wrong = Vec::new();
    for row in &rows {
        let (length, printer) = (inches(&row[0]), printer(row));
        let written = printer.show(length).map_or("refused".into(), |shown| shown.to_string());
        let said = printer.say(length).map_or("refused".into(), |said| said.to_string());
        if written != row[8] || said != row[9] {
            wrong.push(format!("{row:?} is written {written:?} and said {said:?}"));
        }
    }
    assert!(wrong.is_empty(), "{} of {}:\n{}", wrong.len(), rows.len(), wrong.join("\n"));
    assert_eq!(rows.len(), 3012);
}
