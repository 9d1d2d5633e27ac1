//! Yards, sixteenths, glyphs, primes, signs, zeros and fixed denominators, one line a case.

use std::string::String;

use super::{inches, show};
use crate::length::{Length, Unit};
use crate::print::{Denominator, Join, LengthPrinter, Marks, Places, Sign, Style, Zeros};

const PLAIN: LengthPrinter = LengthPrinter::new();
const FEET: LengthPrinter = PLAIN.style(Style::FeetInches);
const YARDS: LengthPrinter = PLAIN.style(Style::Yards);
const SIXTEENTHS: LengthPrinter = PLAIN.style(Style::FeetInchesSixteenths);

#[track_caller]
fn shows(printer: LengthPrinter, cases: &[(i64, u64, &str)]) {
    for (num, den, text) in cases {
        assert_eq!(show(printer, inches(*num, *den)), *text);
    }
}

#[test]
fn fractions_as_glyphs() {
    // With quotes; then primes and words put in their place.
    let cases = [
        (0, 1, r#"0""#),
        (17, 1, r#"17""#),
        (1, 2, r#"½""#),
        (-1, 2, r#"-½""#),
        (35, 2, r#"17½""#),
        (141, 8, r#"17⅝""#),
        (-141, 8, r#"-17⅝""#),
        (79, 16, r#"4¹⁵⁄₁₆""#),
        (1, 16, r#"¹⁄₁₆""#),
        (41, 64, r#"⁴¹⁄₆₄""#),
        (767, 64, r#"11⁶³⁄₆₄""#),
        (1, 3, r#"⅓""#),
        (88, 5, r#"17⅗""#),
        (7, 6, r#"1⅙""#),
        (8, 7, r#"1⅐""#),
        (9, 7, r#"1²⁄₇""#),
        (10, 9, r#"1⅑""#),
        (11, 10, r#"1⅒""#),
        (13, 10, r#"1³⁄₁₀""#),
        (55, 127, r#"⁵⁵⁄₁₂₇""#),
        (1, 1_234_567_890, r#"¹⁄₁₂₃₄₅₆₇₈₉₀""#),
        (1_234_567_889, 1_234_567_890, r#"¹²³⁴⁵⁶⁷⁸⁸⁹⁄₁₂₃₄₅₆₇₈₉₀""#),
    ];
    for (num, den, text) in cases {
        let (printer, length) = (PLAIN.join(Join::Glyph), inches(num, den));
        assert_eq!(show(printer, length), text);
        assert_eq!(show(printer.marks(Marks::Primes), length), text.replace('"', "″"));
        assert_eq!(show(printer.marks(Marks::Words), length), text.replace('"', " in"));
    }
}

#[test]
fn every_fraction_of_one_sign() {
    // Code points and values: The Unicode Standard, version 15, charts "Latin-1 Supplement", "Number Forms".
    let signs = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    let values = [
        (1, 4),
        (1, 2),
        (3, 4),
        (1, 7),
        (1, 9),
        (1, 10),
        (1, 3),
        (2, 3),
        (1, 5),
        (2, 5),
        (3, 5),
        (4, 5),
        (1, 6),
        (5, 6),
        (1, 8),
        (3, 8),
        (5, 8),
        (7, 8),
    ];
    let printer = PLAIN.join(Join::Glyph).marks(Marks::Words);
    let shown = values.map(|(num, den)| show(printer, inches(num, den)).trim_end_matches(" in").chars().collect::<String>());
    assert_eq!(shown.concat(), signs);
}

#[test]
fn the_table_of_fractions_is_what_would_be_put_together() {
    // Past 64 bits of ticks the table is not used.
    let far = Length::new(200_000, Unit::Inch);
    for join in [Join::Space, Join::Hyphen, Join::Glyph] {
        for marks in [Marks::Quotes, Marks::Primes, Marks::Words] {
            let printer = PLAIN.join(join).marks(marks);
            for count in 0..64 {
                let (near, part) = (show(printer, inches(64 + count, 64)), inches(count, 64));
                assert_eq!(show(printer, far + part).strip_prefix("200000"), near.strip_prefix('1'));
            }
            for whole in 0..12 {
                let feet = printer.style(Style::FeetInches);
                let near = show(feet, inches(12 + whole, 1));
                let far = show(feet, Length::new(20_000, Unit::Foot) + inches(whole, 1));
                assert_eq!(far.strip_prefix("20000"), near.strip_prefix('1'));
            }
        }
    }
}

#[test]
fn primes() {
    shows(PLAIN.marks(Marks::Primes), &[(141, 8, "17 5/8″"), (-1, 2, "-1/2″"), (0, 1, "0″"), (87, 5, "17 2/5″")]);
    shows(FEET.marks(Marks::Primes), &[(151, 2, "6′-3 1/2″"), (96, 1, "8′-0″"), (-6, 1, "-0′-6″"), (72, 5, "1′-2 2/5″")]);
    shows(FEET.marks(Marks::Primes).join(Join::Glyph), &[(151, 2, "6′-3½″"), (3, 4, "0′-0¾″")]);
    shows(FEET.marks(Marks::Primes).join(Join::Hyphen), &[(151, 2, "6′-3-1/2″")]);
    shows(PLAIN.marks(Marks::Primes).style(Style::DecimalInches), &[(141, 8, "17.625″")]);
    shows(PLAIN.marks(Marks::Primes).style(Style::DecimalFeet), &[(63, 1, "5.25′")]);
    shows(PLAIN.marks(Marks::Primes).style(Style::Millimeters), &[(1, 1, "25.4 mm")]);
}

#[test]
fn yards_feet_and_inches() {
    let cases = [
        (0, 1, r#"0 yd 0'-0""#),
        (87, 1, r#"2 yd 1'-3""#),
        (-87, 1, r#"-2 yd 1'-3""#),
        (151, 2, r#"2 yd 0'-3 1/2""#),
        (36, 1, r#"1 yd 0'-0""#),
        (12, 1, r#"0 yd 1'-0""#),
        (-1, 2, r#"-0 yd 0'-0 1/2""#),
        (432, 5, r#"2 yd 1'-2 2/5""#),
        (143, 4, r#"0 yd 2'-11 3/4""#),
    ];
    shows(YARDS, &cases);
    shows(YARDS.marks(Marks::Words), &[(87, 1, "2 yd 1 ft 3 in"), (151, 2, "2 yd 0 ft 3 1/2 in")]);
    shows(YARDS.marks(Marks::Words).join(Join::Hyphen), &[(151, 2, "2 yd 0 ft 3-1/2 in")]);
    shows(YARDS.marks(Marks::Primes).join(Join::Glyph), &[(-151, 2, "-2 yd 0′-3½″")]);
    let words = YARDS.marks(Marks::Words).zeros(Zeros::Dropped);
    shows(words, &[(87, 1, "2 yd 1 ft 3 in"), (75, 1, "2 yd 3 in"), (84, 1, "2 yd 1 ft"), (72, 1, "2 yd"), (15, 1, "1 ft 3 in")]);
    shows(words, &[(3, 1, "3 in"), (0, 1, "0 in"), (145, 2, "2 yd 0 1/2 in"), (-1, 2, "-1/2 in"), (-36, 1, "-1 yd")]);
}

#[test]
fn zeros_kept_and_dropped() {
    let cases = [
        (0, 1, r#"0'-0" | 0""#),
        (72, 1, r#"6'-0" | 6'"#),
        (-72, 1, r#"-6'-0" | -6'"#),
        (6, 1, r#"0'-6" | 6""#),
        (-6, 1, r#"-0'-6" | -6""#),
        (3, 4, r#"0'-0 3/4" | 3/4""#),
        (-3, 4, r#"-0'-0 3/4" | -3/4""#),
        (27, 4, r#"0'-6 3/4" | 6 3/4""#),
        (243, 4, r#"5'-0 3/4" | 5'-0 3/4""#),
        (151, 2, r#"6'-3 1/2" | 6'-3 1/2""#),
        (12, 1, r#"1'-0" | 1'"#),
        (2, 5, r#"0'-0 2/5" | 2/5""#),
        (62, 5, r#"1'-0 2/5" | 1'-0 2/5""#),
    ];
    for (num, den, texts) in cases {
        let dropped = show(FEET.zeros(Zeros::Dropped), inches(num, den));
        assert_eq!(std::format!("{} | {dropped}", show(FEET, inches(num, den))), texts);
        // A style of one unit, and numbers that stand in fixed places, drop nothing.
        for printer in [PLAIN, SIXTEENTHS] {
            let shown = |zeros| printer.zeros(zeros).show(inches(num, den)).map(|shown| std::format!("{shown}"));
            assert_eq!(shown(Zeros::Kept), shown(Zeros::Dropped));
        }
    }
    let words = FEET.marks(Marks::Words).zeros(Zeros::Dropped);
    shows(words, &[(72, 1, "6 ft"), (6, 1, "6 in"), (75, 1, "6 ft 3 in"), (145, 2, "6 ft 0 1/2 in"), (0, 1, "0 in")]);
}

#[test]
fn signs_of_every_style() {
    // 11 ft 2 in either way, and nothing.
    let cases = [
        (Style::Inches, r#"134" | 0""#),
        (Style::FeetInches, r#"11'-2" | 0'-0""#),
        (Style::FeetInchesSixteenths, "11-02-00 | 0-00-00"),
        (Style::Yards, r#"3 yd 2'-2" | 0 yd 0'-0""#),
        (Style::DecimalInches, r#"134" | 0""#),
        (Style::Millimeters, "3403.6 mm | 0 mm"),
        (Style::Centimeters, "340.36 cm | 0 cm"),
        (Style::Meters, "3.4036 m | 0 m"),
    ];
    for (style, texts) in cases {
        let (text, zero) = texts.split_once(" | ").unwrap();
        for (sign, below, above) in [(Sign::Minus, "-", ""), (Sign::TrueMinus, "−", ""), (Sign::Plus, "-", "+")] {
            let printer = PLAIN.style(style).sign(sign);
            assert_eq!(show(printer, inches(-134, 1)), std::format!("{below}{text}"));
            assert_eq!(show(printer, inches(134, 1)), std::format!("{above}{text}"));
            assert_eq!(show(printer, Length::ZERO), zero);
        }
    }
    shows(PLAIN.sign(Sign::Plus), &[(1, 2, r#"+1/2""#), (-1, 2, r#"-1/2""#), (1, 3, r#"+1/3""#)]);
    shows(PLAIN.sign(Sign::TrueMinus), &[(-1, 2, r#"−1/2""#), (-1, 3, r#"−1/3""#)]);
    shows(FEET.sign(Sign::TrueMinus), &[(-1, 2, r#"−0'-0 1/2""#)]);
    shows(PLAIN.style(Style::DecimalFeet).sign(Sign::Plus), &[(63, 1, "+5.25'"), (-63, 1, "-5.25'"), (0, 1, "0'")]);
}

#[test]
fn fixed_denominators() {
    let sixteenths = PLAIN.denominator(Denominator::Fixed(16));
    let cases = [(0, 1, r#"0""#), (17, 1, r#"17""#), (3, 8, r#"6/16""#), (-139, 8, r#"-17 6/16""#), (17, 16, r#"1 1/16""#)];
    shows(sixteenths, &cases);
    shows(sixteenths.join(Join::Hyphen), &[(35, 2, r#"17-8/16""#)]);
    // Not ½, which would be lowest terms.
    shows(sixteenths.join(Join::Glyph), &[(35, 2, r#"17⁸⁄₁₆""#), (1, 16, r#"¹⁄₁₆""#)]);
    shows(PLAIN.denominator(Denominator::Fixed(8)).join(Join::Glyph), &[(141, 8, r#"17⅝""#), (1, 2, r#"⁴⁄₈""#)]);
    shows(sixteenths.style(Style::FeetInches), &[(151, 2, r#"6'-3 8/16""#), (243, 4, r#"5'-0 12/16""#), (96, 1, r#"8'-0""#)]);
    shows(sixteenths.style(Style::Yards), &[(151, 2, r#"2 yd 0'-3 8/16""#)]);
    shows(PLAIN.denominator(Denominator::Fixed(64)), &[(1, 2, r#"32/64""#), (767, 64, r#"11 63/64""#)]);
    shows(PLAIN.denominator(Denominator::Fixed(1)), &[(17, 1, r#"17""#), (0, 1, r#"0""#)]);
    shows(PLAIN.denominator(Denominator::Fixed(5)), &[(87, 5, r#"17 2/5""#)]);
    shows(PLAIN.denominator(Denominator::Fixed(254)), &[(50, 127, r#"100/254""#)]);
    shows(PLAIN.denominator(Denominator::Fixed(u32::MAX)), &[(1, 3, r#"1431655765/4294967295""#)]);
    shows(PLAIN.denominator(Denominator::Fixed(2)), &[(i64::MIN, 1, r#"-9223372036854775808""#)]);
    // Decimals and sixteenths pay no heed, not even to a denominator that could not be.
    let none = Denominator::Fixed(0);
    shows(PLAIN.style(Style::DecimalInches).denominator(none), &[(141, 8, r#"17.625""#)]);
    shows(SIXTEENTHS.denominator(none), &[(1185, 8, "12-04-02")]);
}

#[test]
fn feet_inches_and_sixteenths() {
    let cases = [
        // Field case N042, and 12-04-08 from the same kind of sheet.
        (2407, 8, "25-00-14"),
        (5979, 16, "31-01-11"),
        (297, 2, "12-04-08"),
        (0, 1, "0-00-00"),
        (1, 16, "0-00-01"),
        (-1, 16, "-0-00-01"),
        (-2483, 16, "-12-11-03"),
        (191, 16, "0-11-15"),
        (12, 1, "1-00-00"),
        (1200, 1, "100-00-00"),
        (i64::MAX, 1, "768614336404564650-07-00"),
    ];
    shows(SIXTEENTHS, &cases);
    // The other settings pass it by.
    let other = SIXTEENTHS.join(Join::Glyph).marks(Marks::Words).zeros(Zeros::Dropped).places(Places::Exactly(3));
    shows(other, &cases);
}
