//! Inches with a fraction, feet and inches, areas and volumes, from the finest to the longest.

use std::format;
use std::string::{String, ToString};

use num_rational::Ratio;
use quickcheck::quickcheck;

use super::{inches, millimeters, show};
use crate::length::{Area, Length, Unit, Volume};
use crate::print::Style::{FeetInches, Inches};
use crate::print::{Join, LengthPrinter, Marks};

fn ratio(num: i128, den: i128) -> Length {
    Length::try_from_ratio(Ratio::new_raw(num, den), Unit::Inch).unwrap()
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
        (inches(64, 1), Inches, r#"64""#),
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
}
