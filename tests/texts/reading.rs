//! Texts that are a length, one line each, with the exact value in hand-made fractions. What must be
//! refused is left to `refusing.rs`.

use scantling::{Comma, Length, LengthParser, Unit};

/// A text and what it must read as: `(text, numerator, denominator, unit)`.
type Row = (&'static str, i64, u64, Unit);

const IN: Unit = Unit::Inch;
const FT: Unit = Unit::Foot;
const YD: Unit = Unit::Yard;
const MM: Unit = Unit::Millimeter;
const CM: Unit = Unit::Centimeter;
const M: Unit = Unit::Meter;

#[track_caller]
fn reads(parser: LengthParser, rows: &[Row]) {
    for &(text, num, den, unit) in rows {
        assert_eq!(parser.parse(text), Ok(Length::fraction(num, den, unit)), "{text:?}");
    }
}

// Every notation below is common practice, no source, unless the line says otherwise.

#[test]
fn whole_numbers_and_fractions() {
    reads(
        LengthParser::new(),
        &[
            ("72", 72, 1, IN),
            ("0", 0, 1, IN),
            ("000017", 17, 1, IN),
            ("5/8", 5, 8, IN),
            ("3/16\" ", 3, 16, IN),
            ("0/8", 0, 1, IN),
            ("0 5/8", 5, 8, IN),
            ("13/4", 13, 4, IN),
            ("17 5/8", 141, 8, IN),
            ("17-5/8", 141, 8, IN),
            ("17  5 / 8", 141, 8, IN),
            ("17 5/ 8", 141, 8, IN),
            ("5 / 8", 5, 8, IN),
            ("17–5/8", 141, 8, IN),
            ("17‑5/8", 141, 8, IN),
            ("17\u{A0}5/8", 141, 8, IN),
            ("17\u{2009}5/8", 141, 8, IN),
            ("17\u{202F}5/8", 141, 8, IN),
            ("17\t5/8", 141, 8, IN),
            ("  17 5/8  ", 141, 8, IN),
            ("17 5/8\r\n", 141, 8, IN),
            ("17 5/8.", 141, 8, IN),
            ("72.", 72, 1, IN),
            ("17 5/8\".", 141, 8, IN),
            ("3’'", 3, 1, IN),
            ("\n17 5/8", 141, 8, IN),
            ("7/16ths", 7, 16, IN),
            ("3/8th", 3, 8, IN),
            ("1/32nd", 1, 32, IN),
            ("2/3rds", 2, 3, IN),
            ("17 7/16ths", 279, 16, IN),
            ("7/16ths in", 7, 16, IN),
            ("9/16ths of an inch", 9, 16, IN),
            ("3/4 of an inch", 3, 4, IN),
            ("2/3 of a yard", 2, 3, YD),
            ("1/2 of one foot", 1, 2, FT),
            ("83/128", 83, 128, IN),
            ("7/13", 7, 13, IN),
            ("1/3 yard", 12, 1, IN),
        ],
    );
}

#[test]
fn decimals_digit_by_digit() {
    reads(
        LengthParser::new(),
        &[
            (".5", 1, 2, IN),
            ("0.5", 1, 2, IN),
            ("17.625", 141, 8, IN),
            ("17.625\"", 141, 8, IN),
            ("5.25'", 21, 4, FT),
            ("5.6'", 336, 5, IN),
            ("1.2", 6, 5, IN),
            ("0.333333", 333_333, 1_000_000, IN),
            ("1100.142857", 1_100_142_857, 1_000_000, IN),
            ("-0.5341", -5341, 10_000, IN),
            ("1.50000000000000000000000000000000000000000000000000", 3, 2, IN),
            ("0.0000000000000000001", 1, 10_000_000_000_000_000_000, IN),
            ("10.8 ft", 648, 5, IN),
            ("6' 3.5", 151, 2, IN),
            ("6'.5\"", 145, 2, IN),
        ],
    );
}

#[test]
fn inch_marks_and_words() {
    for mark in [
        "\"", " \"", "''", "″", "”", "“", "′′", "’’", "´´", " in", "in", " in.", " IN.", " In", " inch", "inches", " ins",
        "-in.", "-inch",
    ] {
        reads(LengthParser::new(), &[(&*format!("17 5/8{mark}").leak(), 141, 8, IN)]);
    }
}

#[test]
fn feet_and_inches() {
    for foot in ["'", "′", "’", "´", " '", " ft", "ft", " ft.", " FT", " foot", " feet", "-ft"] {
        for between in ["", " ", "-", " - ", "- ", " -", ", ", "–"] {
            // A letter's full stop and a glued digit are another matter, and have a test of their own.
            let glued_point = foot.ends_with('.') && between.is_empty();
            for inch in ["\"", "", "″", " in", "in.", "''"] {
                let text = format!("6{foot}{between}3{inch}").leak();
                if !glued_point {
                    reads(LengthParser::new(), &[(text, 75, 1, IN)]);
                }
            }
        }
    }
    reads(
        LengthParser::new(),
        &[
            ("6'", 6, 1, FT),
            ("6 ft", 6, 1, FT),
            ("6'-0\"", 6, 1, FT),
            ("6' - 2\"", 74, 1, IN),
            ("6'3 1/2", 151, 2, IN),
            ("6'-3-1/2\"", 151, 2, IN),
            ("6'3½\"", 151, 2, IN),
            ("5' 3/4\"", 243, 4, IN),
            ("5' ½", 121, 2, IN),
            ("8' -5/8\"", 773, 8, IN),
            ("4'-7 1/4", 221, 4, IN),
            ("12' 11-1/2\"", 311, 2, IN),
            ("5' 14\"", 74, 1, IN),
            ("2 1/2'", 30, 1, IN),
            ("25/6 ft", 50, 1, IN),
            ("432'1\"", 5185, 1, IN),
            ("1′ 1″", 13, 1, IN),
            ("6’3”", 75, 1, IN),
            ("2 yd 1 ft 3 in", 87, 1, IN),
            ("2 yards 3 inches", 75, 1, IN),
            ("2yd1ft", 7, 1, FT),
            ("3ft5-15/32in", 1327, 32, IN),
            ("5 foot 2 in", 62, 1, IN),
            ("6ft120", 192, 1, IN),
        ],
    );
}

#[test]
fn the_sign_covers_the_whole_value() {
    reads(
        LengthParser::new(),
        &[
            ("-11'2\"", -134, 1, IN),
            ("-1/2", -1, 2, IN),
            ("−3 1/4", -13, 4, IN),
            ("- 1′ 1″", -13, 1, IN),
            ("-1'-2\"", -14, 1, IN),
            ("–1/2", -1, 2, IN),
            ("-8 3/4", -35, 4, IN),
            ("-1 2/3", -5, 3, IN),
            ("-0 ft 1 in", -1, 1, IN),
            ("-0' 6\"", -6, 1, IN),
            ("-.5", -1, 2, IN),
            ("-½", -1, 2, IN),
            ("-0", 0, 1, IN),
            ("+3 1/2", 7, 2, IN),
            (" -10inch", -10, 1, IN),
        ],
    );
}

#[test]
fn glyphs_and_raised_digits() {
    // Code points: The Unicode Standard, version 15, "Number Forms" and "Superscripts and Subscripts".
    reads(
        LengthParser::new(),
        &[
            ("3½", 7, 2, IN),
            ("3 ½", 7, 2, IN),
            ("3-½", 7, 2, IN),
            ("½", 1, 2, IN),
            ("1⁄2", 1, 2, IN),
            ("1∕2", 1, 2, IN),
            ("31⁄2", 31, 2, IN),
            ("¹⁄₁₆", 1, 16, IN),
            ("¹/₁₆", 1, 16, IN),
            ("¹⁄₂", 1, 2, IN),
            ("⅟₂", 1, 2, IN),
            ("⅟2", 1, 2, IN),
            ("4²⁹/₃₂″", 157, 32, IN),
            ("4 ²⁹⁄₃₂ in", 157, 32, IN),
            // Every raised and every lowered digit.
            ("¹²³⁄₄₅₆ in", 123, 456, IN),
            ("⁴⁵⁶⁄₇₈₉ in", 456, 789, IN),
            ("⁷⁸⁹⁰⁄₁₂₃₀ in", 7890, 1230, IN),
            ("4²⁹/32", 157, 32, IN),
            ("5¹/₃₂″", 161, 32, IN),
            ("5⅛″", 41, 8, IN),
            ("4⅑ m", 37, 9, M),
            ("¼", 1, 4, IN),
            ("¾", 3, 4, IN),
            ("⅐", 1, 7, IN),
            ("⅒", 1, 10, IN),
            ("⅓", 1, 3, IN),
            ("⅔", 2, 3, IN),
            ("⅕", 1, 5, IN),
            ("⅖", 2, 5, IN),
            ("⅗", 3, 5, IN),
            ("⅘", 4, 5, IN),
            ("⅙", 1, 6, IN),
            ("⅚", 5, 6, IN),
            ("⅜", 3, 8, IN),
            ("⅝", 5, 8, IN),
            ("⅞", 7, 8, IN),
            ("↉", 0, 1, IN),
        ],
    );
}

#[test]
fn metric() {
    reads(
        LengthParser::new(),
        &[
            ("365 mm", 365, 1, MM),
            ("36.5cm", 365, 1, MM),
            ("1.2 m", 1200, 1, MM),
            ("1 m 20 cm", 120, 1, CM),
            ("1 m 5 mm", 1005, 1, MM),
            ("3 cm 5 mm", 35, 1, MM),
            ("1m20", 120, 1, CM),
            ("1m20cm", 120, 1, CM),
            ("1m05", 105, 1, CM),
            ("1M20", 120, 1, CM),
            ("1 Meter", 1, 1, M),
            ("2 metres", 2, 1, M),
            ("5 millimeters", 5, 1, MM),
            ("5 millimetres", 5, 1, MM),
            ("5 MM", 5, 1, MM),
            ("1/2 cm", 5, 1, MM),
            ("25.4mm", 1, 1, IN),
            ("-3 mm", -3, 1, MM),
            ("5-mm", 5, 1, MM),
        ],
    );
}

#[test]
fn the_unit_of_a_bare_number_is_the_callers_choice() {
    reads(
        LengthParser::new().default_unit(MM),
        &[("365", 365, 1, MM), ("1/2", 1, 2, MM), ("1 in", 127, 5, MM), ("6' 3", 75, 1, IN)],
    );
    reads(LengthParser::new().default_unit(FT), &[("6", 6, 1, FT), ("6 1/2", 78, 1, IN), ("-3", -3, 1, FT)]);
}

#[test]
fn commas_group_or_point_when_the_caller_says_so() {
    reads(
        LengthParser::new().comma(Comma::Groups),
        &[
            ("1,250 mm", 1250, 1, MM),
            ("1'000 mm", 1000, 1, MM),
            ("1’234 ft 5 in", 14_813, 1, IN),
            ("1 250 mm", 1250, 1, MM),
            ("29\u{202F}000 mm", 29, 1, M),
            ("387,737,263,297.2403 feet", 3_877_372_632_972_403, 10_000, FT),
            ("1,250 5/8", 10_005, 8, IN),
            ("1 250 5/8", 10_005, 8, IN),
            ("1,250½", 2501, 2, IN),
            ("1,250/3", 1250, 3, IN),
            ("6' 3", 75, 1, IN),
            ("17 5/8", 141, 8, IN),
            ("17 100/128", 569, 32, IN),
            ("17.625", 141, 8, IN),
            ("6 ft, 3 in", 75, 1, IN),
            ("24", 24, 1, IN),
        ],
    );
    reads(
        LengthParser::new().comma(Comma::Decimal),
        &[
            ("1,3 cm", 13, 1, MM),
            ("1.3cm", 13, 1, MM),
            ("1,30 cm", 13, 1, MM),
            ("1,250 mm", 5, 4, MM),
            ("1 250,5 mm", 2501, 2, MM),
            ("1.250,5 mm", 2501, 2, MM),
            ("1.250.000,5 mm", 2_500_001, 2, MM),
            ("1.25 mm", 5, 4, MM),
            ("0.125 mm", 1, 8, MM),
            (",5", 1, 2, IN),
            ("17 5/8", 141, 8, IN),
            ("6 ft, 3 in", 75, 1, IN),
        ],
    );
}

#[test]
fn numbers_as_long_as_they_can_be_held() {
    let read = |text: &str| text.parse::<Length>().map(|length| length.in_unit(IN));
    let ratio = |num: i128, den: i128| Ok(num_rational::Ratio::new(num, den));
    assert_eq!(read("3000000000000000000000000"), ratio(3 * 10_i128.pow(24), 1));
    assert_eq!(read("00000000000000000000000000000000000000000000000001"), ratio(1, 1));
    // 10^25 is 10^6 of the tick's own divisions times a denominator just below 2^64.
    assert_eq!(read("1/10000000000000000000000000"), ratio(1, 10_i128.pow(25)));
    assert_eq!(read("0.0000000000000000000000001"), ratio(1, 10_i128.pow(25)));
    assert_eq!(read("12345678901234567890/12345678901234567891"), ratio(12_345_678_901_234_567_890, 12_345_678_901_234_567_891));
}
