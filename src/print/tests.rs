//! Every style, join and mark against hand-made lengths. Unless a line says otherwise its text is
//! common practice and was worked by hand; the huge values were worked out with big integers elsewhere.

use core::fmt::{self, Write};
use std::format;
use std::string::{String, ToString};

use num_rational::Ratio;
use quickcheck::quickcheck;

use super::{Join, LengthPrinter, Marks, Places, PrintError, Style};
use crate::length::{Area, Length, Unit, Volume};

use Style::{Centimeters, DecimalFeet, DecimalInches, FeetInches, Inches, Meters, Millimeters};

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn millimeters(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Millimeter)
}

fn ratio(num: i128, den: i128) -> Length {
    Length::try_from_ratio(Ratio::new_raw(num, den), Unit::Inch).unwrap()
}

#[track_caller]
fn show(printer: LengthPrinter, length: Length) -> String {
    let shown = printer.show(length).unwrap();
    let mut written = String::new();
    shown.write_to(&mut written).unwrap();
    assert_eq!(shown.to_string(), written);
    written
}

const TICKS_OF_AN_INCH: i128 = 54_918_864_000_000;
const MOST_PARTS: i128 = u64::MAX as i128;

#[test]
fn fractions_in_every_join_and_mark() {
    // Spaces and hyphens with quotes, then with words.
    let cases = [
        (inches(0, 1), Inches, r#"0" | 0" | 0 in | 0 in"#),
        (inches(17, 1), Inches, r#"17" | 17" | 17 in | 17 in"#),
        (inches(141, 8), Inches, r#"17 5/8" | 17-5/8" | 17 5/8 in | 17-5/8 in"#),
        (inches(-141, 8), Inches, r#"-17 5/8" | -17-5/8" | -17 5/8 in | -17-5/8 in"#),
        (inches(1, 2), Inches, r#"1/2" | 1/2" | 1/2 in | 1/2 in"#),
        (inches(-1, 2), Inches, r#"-1/2" | -1/2" | -1/2 in | -1/2 in"#),
        (inches(-1, 1), Inches, r#"-1" | -1" | -1 in | -1 in"#),
        (inches(1, 64), Inches, r#"1/64" | 1/64" | 1/64 in | 1/64 in"#),
        (inches(767, 64), Inches, r#"11 63/64" | 11-63/64" | 11 63/64 in | 11-63/64 in"#),
        (inches(17, 16), Inches, r#"1 1/16" | 1-1/16" | 1 1/16 in | 1-1/16 in"#),
        (inches(199, 2), Inches, r#"99 1/2" | 99-1/2" | 99 1/2 in | 99-1/2 in"#),
        (inches(201, 2), Inches, r#"100 1/2" | 100-1/2" | 100 1/2 in | 100-1/2 in"#),
        (inches(87, 5), Inches, r#"17 2/5" | 17-2/5" | 17 2/5 in | 17-2/5 in"#),
        (inches(-87, 5), Inches, r#"-17 2/5" | -17-2/5" | -17 2/5 in | -17-2/5 in"#),
        (inches(1, 3), Inches, r#"1/3" | 1/3" | 1/3 in | 1/3 in"#),
        (inches(-1, 128), Inches, r#"-1/128" | -1/128" | -1/128 in | -1/128 in"#),
        (millimeters(11, 1), Inches, r#"55/127" | 55/127" | 55/127 in | 55/127 in"#),
        (inches(0, 1), FeetInches, r#"0'-0" | 0'-0" | 0 ft 0 in | 0 ft 0 in"#),
        (inches(151, 2), FeetInches, r#"6'-3 1/2" | 6'-3-1/2" | 6 ft 3 1/2 in | 6 ft 3-1/2 in"#),
        (inches(-151, 2), FeetInches, r#"-6'-3 1/2" | -6'-3-1/2" | -6 ft 3 1/2 in | -6 ft 3-1/2 in"#),
        (inches(243, 4), FeetInches, r#"5'-0 3/4" | 5'-0-3/4" | 5 ft 0 3/4 in | 5 ft 0-3/4 in"#),
        (inches(96, 1), FeetInches, r#"8'-0" | 8'-0" | 8 ft 0 in | 8 ft 0 in"#),
        (inches(6, 1), FeetInches, r#"0'-6" | 0'-6" | 0 ft 6 in | 0 ft 6 in"#),
        (inches(-6, 1), FeetInches, r#"-0'-6" | -0'-6" | -0 ft 6 in | -0 ft 6 in"#),
        (inches(-14, 1), FeetInches, r#"-1'-2" | -1'-2" | -1 ft 2 in | -1 ft 2 in"#),
        (inches(3, 4), FeetInches, r#"0'-0 3/4" | 0'-0-3/4" | 0 ft 0 3/4 in | 0 ft 0-3/4 in"#),
        (inches(767, 64), FeetInches, r#"0'-11 63/64" | 0'-11-63/64" | 0 ft 11 63/64 in | 0 ft 11-63/64 in"#),
        (inches(72, 5), FeetInches, r#"1'-2 2/5" | 1'-2-2/5" | 1 ft 2 2/5 in | 1 ft 2-2/5 in"#),
        (inches(-72, 5), FeetInches, r#"-1'-2 2/5" | -1'-2-2/5" | -1 ft 2 2/5 in | -1 ft 2-2/5 in"#),
        (inches(-2, 5), FeetInches, r#"-0'-0 2/5" | -0'-0-2/5" | -0 ft 0 2/5 in | -0 ft 0-2/5 in"#),
    ];
    for (length, style, texts) in cases {
        let printer = LengthPrinter::new().style(style);
        let words = printer.marks(Marks::Words);
        let all = [printer, printer.join(Join::Hyphen), words, words.join(Join::Hyphen)];
        assert_eq!(all.map(|printer| show(printer, length)).join(" | "), texts);
    }
}

#[test]
fn huge_and_minute_fractions() {
    let finest = ratio(1, TICKS_OF_AN_INCH * MOST_PARTS);
    let longest_text = ratio(i128::MAX, TICKS_OF_AN_INCH * MOST_PARTS);
    let cases = [
        (inches(63_999, 64), Inches, r#"999 63/64""#),
        (inches(64_001, 64), Inches, r#"1000 1/64""#),
        (inches(-767_999, 64), FeetInches, r#"-999'-11 63/64""#),
        (inches(768_001, 64), FeetInches, r#"1000'-0 1/64""#),
        // The last 64th that is 64 bits of ticks, and the next.
        (inches(10_748_507, 64), Inches, r#"167945 27/64""#),
        (inches(10_748_508, 64), Inches, r#"167945 7/16""#),
        (inches(10_748_508, 64), FeetInches, r#"13995'-5 7/16""#),
        (inches(i64::MAX, 64), Inches, r#"144115188075855871 63/64""#),
        (inches(i64::MIN, 64), FeetInches, r#"-12009599006321322'-8""#),
        (Length::new(i64::MAX, Unit::Yard), Inches, r#"332041393326771929052""#),
        (Length::new(i64::MIN, Unit::Yard), FeetInches, r#"-27670116110564327424'-0""#),
        (inches(1, u64::MAX), Inches, r#"1/18446744073709551615""#),
        (inches(-1, u64::MAX), FeetInches, r#"-0'-0 1/18446744073709551615""#),
        (Length::MAX, Inches, r#"3098046300820592933817554 54777228105727/54918864000000""#),
        (Length::MIN, Inches, r#"-3098046300820592933817554 54777228105727/54918864000000""#),
        (Length::MAX, FeetInches, r#"258170525068382744484796'-2 54777228105727/54918864000000""#),
        (Length::MIN, FeetInches, r#"-258170525068382744484796'-2 54777228105727/54918864000000""#),
        (finest, Inches, r#"1/1013074229026860840645165360000000""#),
        (-finest, FeetInches, r#"-0'-0 1/1013074229026860840645165360000000""#),
        (longest_text, Inches, r#"167945 432066553087849535007330684105727/1013074229026860840645165360000000""#),
        (longest_text, FeetInches, r#"13995'-5 432066553087849535007330684105727/1013074229026860840645165360000000""#),
    ];
    for (length, style, text) in cases {
        assert_eq!(show(LengthPrinter::new().style(style), length), text);
        assert_eq!(if style == Inches { format!("{length}") } else { format!("{length:#}") }, text);
    }
}

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
fn rounded_first_it_prints() {
    // Field cases: 1.5 m is 4'-11 1/16" and 3.9999 ft is 4'-0", never 3'-12".
    let sixteenth = inches(1, 16);
    assert_eq!(format!("{:#}", millimeters(1500, 1).round(sixteenth).unwrap()), r#"4'-11 1/16""#);
    assert_eq!(format!("{:#}", Length::fraction(39_999, 10_000, Unit::Foot).round(sixteenth).unwrap()), r#"4'-0""#);
}

#[test]
fn units_areas_and_volumes() {
    assert_eq!(Unit::ALL.map(|unit| unit.to_string()), ["in", "ft", "yd", "mm", "cm", "m"]);
    let square = inches(1, 1) * inches(1, 1);
    let cases = [
        (Area::ZERO, "0 sq in"),
        (inches(72, 1) * inches(26, 1), "1872 sq in"),
        (inches(1, 2) * inches(1, 1), "1/2 sq in"),
        (inches(7, 2) * inches(1, 1), "3 1/2 sq in"),
        (inches(-7, 2) * inches(1, 1), "-3 1/2 sq in"),
        (inches(-1, 2) * inches(1, 1), "-1/2 sq in"),
        (square * Ratio::new(i128::MAX, 1), "170141183460469231731687303715884105727 sq in"),
        (square * Ratio::new(-i128::MAX, MOST_PARTS), "-9223372036854775808 9223372036854775807/18446744073709551615 sq in"),
    ];
    for (area, text) in cases {
        assert_eq!(area.to_string(), text);
        assert_eq!((area * inches(1, 1)).to_string(), text.replace("sq", "cu"));
    }
    assert_eq!((inches(12, 1) * inches(12, 1) * inches(1, 1)).to_string(), "144 cu in");
    assert_eq!(Volume::ZERO.to_string(), "0 cu in");
}

#[test]
fn width_fill_and_alignment_are_honored_and_a_precision_is_not() {
    let length = inches(141, 8);
    let metric = LengthPrinter::new().style(Millimeters).show(length).unwrap();
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

/// A sink that takes so many characters and no more.
struct Narrow(usize);

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
        shown(Inches, inches(-141, 8)),
        shown(FeetInches, inches(-151, 2)),
        shown(Inches, inches(-87, 5)),
        shown(FeetInches, inches(-72, 5)),
        shown(Millimeters, inches(-141, 8)),
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
    const PRINTER: LengthPrinter = LengthPrinter::new().style(Meters).places(Places::Exactly(2)).marks(Marks::Words);
    assert_eq!(show(PRINTER.join(Join::Hyphen), millimeters(1200, 1)), "1.20 m");
    assert_eq!(LengthPrinter::default(), LengthPrinter::new());
}

/// The text of inches as it would be put together from a ratio in lowest terms.
fn plain_text(value: Ratio<i128>) -> String {
    let sign = if value < Ratio::ZERO { "-" } else { "" };
    let (num, den) = (value.numer().abs(), *value.denom());
    match (num / den, num % den) {
        (whole, 0) => format!("{sign}{whole}\""),
        (0, part) => format!("{sign}{part}/{den}\""),
        (whole, part) => format!("{sign}{whole} {part}/{den}\""),
    }
}

#[test]
fn every_64th_of_two_thousand_inches_either_way() {
    for count in -128_000..=128_000_i64 {
        assert_eq!(inches(count, 64).to_string(), plain_text(Ratio::new(count.into(), 64)));
    }
}

quickcheck! {
    fn any_fraction_of_an_inch(num: i64, den: u64) -> bool {
        let den = den.max(1);
        inches(num, den).to_string() == plain_text(Ratio::new(num.into(), den.into()))
    }

    fn feet_and_inches_add_up(count: i64) -> bool {
        let text = format!("{:#}", inches(count, 64));
        let (feet, rest) = text.trim_start_matches('-').split_once("'-").unwrap();
        let whole: i64 = rest.trim_end_matches('"').split(' ').next().unwrap().parse().unwrap();
        let size = count.unsigned_abs() / 64;
        whole < 12 && feet.parse::<u64>().unwrap() == size / 12 && whole.unsigned_abs() == size % 12
    }

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
