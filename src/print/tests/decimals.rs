//! Decimals of every unit, as many as there are or a fixed count.

use std::format;

use num_rational::Ratio;
use quickcheck::quickcheck;

use super::{inches, millimeters, show};
use crate::length::{Length, Unit};
use crate::print::Style::{Centimeters, DecimalFeet, DecimalInches, FeetInches, Inches, Meters, Millimeters};
use crate::print::{Join, LengthPrinter, Marks, Places};

#[test]
fn decimals_in_every_unit_and_mark() {
    let yards = Length::new(i64::MAX, Unit::Yard);
    let cases = [
        (inches(0, 1), DecimalInches, r#"0" | 0 in"#),
        (inches(141, 8), DecimalInches, r#"17.625" | 17.625 in"#),
        (inches(-141, 8), DecimalInches, r#"-17.625" | -17.625 in"#),
        (inches(17, 1), DecimalInches, r#"17" | 17 in"#),
        (inches(-1, 64), DecimalInches, r#"-0.015625" | -0.015625 in"#),
        (inches(1001, 100), DecimalInches, r#"10.01" | 10.01 in"#),
        (inches(0, 1), DecimalFeet, "0' | 0 ft"),
        (inches(63, 1), DecimalFeet, "5.25' | 5.25 ft"),
        (inches(-63, 1), DecimalFeet, "-5.25' | -5.25 ft"),
        (inches(96, 1), DecimalFeet, "8' | 8 ft"),
        (millimeters(0, 1), Millimeters, "0 mm | 0 mm"),
        (inches(141, 8), Millimeters, "447.675 mm | 447.675 mm"),
        (inches(-141, 8), Millimeters, "-447.675 mm | -447.675 mm"),
        (inches(1, 1), Millimeters, "25.4 mm | 25.4 mm"),
        (millimeters(18, 1), Millimeters, "18 mm | 18 mm"),
        (millimeters(-1, 1000), Millimeters, "-0.001 mm | -0.001 mm"),
        (inches(0, 1), Centimeters, "0 cm | 0 cm"),
        (inches(141, 8), Centimeters, "44.7675 cm | 44.7675 cm"),
        (millimeters(-365, 1), Centimeters, "-36.5 cm | -36.5 cm"),
        (inches(0, 1), Meters, "0 m | 0 m"),
        (inches(141, 8), Meters, "0.447675 m | 0.447675 m"),
        (millimeters(-1200, 1), Meters, "-1.2 m | -1.2 m"),
        // The most decimals, and the most digits before them that are reached with any.
        (millimeters(1, 1_000_000_000_000) / 1_000_000_000_000, Millimeters, "0.000000000000000000000001 mm | same"),
        (millimeters(-1, 1_000_000_000_000) / 1_000_000_000, Meters, "-0.000000000000000000000001 m | same"),
        (yards, Millimeters, "8433851390500006997920.8 mm | same"),
        (-yards, Meters, "-8433851390500006997.9208 m | same"),
        (yards, DecimalInches, r#"332041393326771929052" | 332041393326771929052 in"#),
        (yards, DecimalFeet, "27670116110564327421' | 27670116110564327421 ft"),
    ];
    for (length, style, texts) in cases {
        let printer = LengthPrinter::new().style(style);
        let (quotes, words) = texts.split_once(" | ").unwrap();
        for join in [Join::Space, Join::Hyphen] {
            assert_eq!(show(printer.join(join), length), quotes);
            assert_eq!(show(printer.join(join).marks(Marks::Words), length), if words == "same" { quotes } else { words });
        }
    }
}

#[test]
fn a_fixed_count_of_decimals() {
    let cases = [
        (inches(141, 8), DecimalInches, 3, r#"17.625""#),
        (inches(141, 8), DecimalInches, 4, r#"17.6250""#),
        (inches(-1, 2), DecimalInches, 1, r#"-0.5""#),
        (inches(17, 1), DecimalInches, 0, r#"17""#),
        (inches(63, 1), DecimalFeet, 3, "5.250'"),
        (inches(0, 1), Millimeters, 2, "0.00 mm"),
        (millimeters(18, 1), Millimeters, 1, "18.0 mm"),
        (inches(1, 64), Millimeters, 6, "0.396875 mm"),
        (millimeters(-50, 1), Centimeters, 2, "-5.00 cm"),
        (millimeters(1, 1), Meters, 3, "0.001 m"),
        (millimeters(1, 1), Millimeters, 24, "1.000000000000000000000000 mm"),
        // Fractions pay no heed, not even to a count that no decimal could have.
        (inches(141, 8), Inches, 1, r#"17 5/8""#),
        (inches(151, 2), FeetInches, 255, r#"6'-3 1/2""#),
    ];
    for (length, style, places, text) in cases {
        assert_eq!(show(LengthPrinter::new().style(style).places(Places::Exactly(places)), length), text);
    }
}

quickcheck! {
    fn decimals_are_the_exact_value(count: i64, places: u8) -> bool {
        let scale = 10_u64.pow(u32::from(places % 10));
        let text = show(LengthPrinter::new().style(Millimeters), millimeters(count, scale));
        let (whole, decimals) = text.trim_end_matches(" mm").split_once('.').unwrap_or((text.trim_end_matches(" mm"), ""));
        let digits: i128 = format!("{whole}{decimals}").parse().unwrap();
        let kept = 10_i128.pow(decimals.len().try_into().unwrap());
        !decimals.ends_with('0') && Ratio::new(digits, kept) == Ratio::new(count.into(), scale.into())
    }

    fn a_fixed_count_is_the_shortest_with_zeros(count: i64) -> bool {
        let printer = LengthPrinter::new().style(Meters);
        let length = millimeters(count, 1000);
        let fixed = show(printer.places(Places::Exactly(9)), length);
        let fixed = fixed.trim_end_matches(" m").trim_end_matches('0').trim_end_matches('.');
        fixed == show(printer, length).trim_end_matches(" m")
    }
}
