//! What is refused because it would have to be rounded, with the whole message.

use std::format;
use std::string::ToString;

use super::{inches, millimeters};
use crate::length::Length;
use crate::print::Style::{Centimeters, DecimalFeet, DecimalInches, Meters, Millimeters};
use crate::print::{Denominator, LengthPrinter, Places, PrintError, Style};

#[test]
fn what_does_not_come_out_even_is_refused() {
    let even = "printing never rounds, so round it first";
    let tiny = millimeters(1, 1_000_000_000_000) / 10_000_000_000_000;
    let cases = [
        (inches(1, 3), DecimalInches, None, r#"1/3" does not come out even in inches within 24 decimals: "#),
        (inches(151, 2), DecimalFeet, None, r#"75 1/2" does not come out even in feet within 24 decimals: "#),
        (millimeters(10, 1), DecimalInches, None, r#"50/127" does not come out even in inches within 24 decimals: "#),
        (-inches(1, 7), Centimeters, None, r#"-1/7" does not come out even in centimeters within 24 decimals: "#),
        (tiny, Millimeters, None, r#"1/254000000000000000000000000" does not come out even in millimeters within 24 decimals: "#),
        (inches(141, 8), Millimeters, Some(2), r#"17 5/8" does not come out even in millimeters within 2 decimals: "#),
        (inches(1, 2), DecimalInches, Some(0), r#"1/2" does not come out even in inches within 0 decimals: "#),
        (inches(1, 3), Meters, Some(24), r#"1/3" does not come out even in meters within 24 decimals: "#),
    ];
    for (length, style, places, text) in cases {
        let places = places.map_or(Places::Shortest, Places::Exactly);
        let error = LengthPrinter::new().style(style).places(places).show(length).unwrap_err();
        assert_eq!(error.to_string(), format!("{text}{even}"));
    }
    let printer = LengthPrinter::new().style(Millimeters).places(Places::Exactly(25));
    let error = printer.show(inches(1, 1)).unwrap_err();
    assert_eq!(error, PrintError::TooManyPlaces { length: inches(1, 1), places: 25 });
    assert_eq!(error.to_string(), r#"cannot write 1" with 25 decimals: 24 are the most"#);
}

#[test]
fn the_longest_lengths_have_no_decimal() {
    for style in [DecimalInches, DecimalFeet, Millimeters, Centimeters, Meters] {
        for length in [Length::MAX, Length::MIN, inches(1, u64::MAX)] {
            let unit = style.decimal_unit().unwrap();
            let error = Err(PrintError::Uneven { length, unit, places: 24 });
            assert_eq!(LengthPrinter::new().style(style).show(length), error);
        }
    }
}

#[test]
fn what_is_no_whole_count_is_refused() {
    let even = "printing never rounds, so round it first";
    let fixed = |den| LengthPrinter::new().denominator(Denominator::Fixed(den));
    let sheet = LengthPrinter::new().style(Style::FeetInchesSixteenths);
    let cases = [
        (fixed(16), inches(1, 32), 16, r#"1/32" is no whole count of 1/16 in: "#),
        (fixed(8), inches(-87, 5), 8, r#"-17 2/5" is no whole count of 1/8 in: "#),
        (fixed(1), inches(1, 2), 1, r#"1/2" is no whole count of 1/1 in: "#),
        (fixed(16).style(Style::FeetInches), inches(151, 3), 16, r#"50 1/3" is no whole count of 1/16 in: "#),
        (fixed(16).style(Style::Yards), millimeters(1, 1), 16, r#"5/127" is no whole count of 1/16 in: "#),
        (fixed(u32::MAX), inches(1, 2), u32::MAX, r#"1/2" is no whole count of 1/4294967295 in: "#),
        (sheet, inches(1, 32), 16, r#"1/32" is no whole count of 1/16 in: "#),
        (sheet.denominator(Denominator::Fixed(32)), inches(1, 32), 16, r#"1/32" is no whole count of 1/16 in: "#),
    ];
    for (printer, length, denominator, text) in cases {
        let error = printer.show(length).unwrap_err();
        assert_eq!(error, PrintError::NoWholeCount { length, denominator });
        assert_eq!(error.to_string(), format!("{text}{even}"));
        assert_eq!(printer.say(length), Err(error));
    }
    let error = fixed(0).show(inches(17, 1)).unwrap_err();
    assert_eq!(error, PrintError::ZeroDenominator { length: inches(17, 1) });
    assert_eq!(error.to_string(), r#"cannot write 17" with a zero below the line"#);
}
