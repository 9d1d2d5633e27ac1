//! Calculations and what they come to, one line each, with exact values in hand-made fractions. What must be
//! refused is left to `refusing_calculations.rs`, random calculations to `random_calculations.rs`.

use num_rational::Ratio;
use scantling::{Comma, Length, LengthParser, Quantity, Unit, Warning, evaluate};

/// A text and the length it must come to: `(text, numerator, denominator, unit)`.
type Row = (&'static str, i64, u64, Unit);

const IN: Unit = Unit::Inch;
const FT: Unit = Unit::Foot;
const MM: Unit = Unit::Millimeter;
const CM: Unit = Unit::Centimeter;
const M: Unit = Unit::Meter;

#[track_caller]
fn comes_to(parser: LengthParser, rows: &[Row]) {
    for &(text, num, den, unit) in rows {
        assert_eq!(parser.evaluate_length(text), Ok(Length::fraction(num, den, unit)), "{text:?}");
    }
}

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, IN)
}

// Every value below is worked by hand unless the line says otherwise.

#[test]
fn sums_and_differences() {
    comes_to(
        LengthParser::new(),
        &[
            ("51 5/8 - 11 1/16", 649, 16, IN), // tape slid on tape: common practice, no source
            ("8 1/8 + 38 7/8", 47, 1, IN),
            ("((148 7/16)-(147 1/8))-((145 7/8)-(147 1/4))", 43, 16, IN),
            ("3 m 35 cm + 2 m 75 cm", 6100, 1, MM),
            ("2m + 37.4cm", 2374, 1, MM),
            ("47.5 in. + 47 3/4 in.", 381, 4, IN),
            ("47.5 in. plus 47 3/4 in.", 381, 4, IN),
            ("12 ft 1/4 in + 12 ft 1/4 in", 577, 2, IN),
            ("0.1 ft + 0.2 ft", 18, 5, IN),
            ("70'0\" minus 45'3\"", 297, 1, IN),
            ("10 in - 1 7/16 in", 137, 16, IN),
            ("96-3-3-3", 87, 1, IN), // a number too many for feet, inches and sixteenths
            ("12-04-16", -8, 1, IN), // and sixteenths too many
            ("8 ft - 2'-6\" - 3'-4\" - 1'-2\"", 12, 1, IN),
            ("1 m + 3/8\"", 40_381, 1016, IN),
            ("1 yd - 2 ft", 1, 1, FT),
            ("48 plus 1/2", 97, 2, IN),
            ("3½ + 2⅝", 49, 8, IN),
            ("4²⁹/₃₂″ + ³⁄₃₂″", 5, 1, IN),
            ("7/16ths + 9/16ths of an inch", 1, 1, IN),
            ("2/3 of a yard - 1 ft", 1, 1, FT),
            ("1m20 + 5 cm", 125, 1, CM),
            ("6′ 3″ + 6’3”", 150, 1, IN),
            ("6 ft, 3 in + 1 in", 76, 1, IN),
        ],
    );
}

#[test]
fn products_quotients_and_brackets_in_the_usual_order() {
    comes_to(
        LengthParser::new(),
        &[
            ("72 - 2*3/4", 141, 2, IN),
            ("(32 1/2 - 1 1/2) / 3", 31, 3, IN),
            ("(6' 2\" + 20 cm) / 2", 5199, 127, IN),
            ("12 ft 1/4 in * 2", 577, 2, IN),
            ("4 * 6' 4\"", 304, 1, IN),
            ("6' 4\" × 4", 304, 1, IN),
            ("4 · 6' 4\"", 304, 1, IN),
            ("4 ⋅ 6' 4\"", 304, 1, IN),
            ("4 times 6' 4\"", 304, 1, IN),
            ("20' ÷ 3", 80, 1, IN),
            ("20' Divided By 3", 80, 1, IN),
            ("8'-10 3/4\" / 14", 61, 8, IN),
            ("2 + 3 * 4 - 6 / 3", 12, 1, IN),
            ("2 * (3 + 4)", 14, 1, IN),
            ("((((5))))", 5, 1, IN),
            ("( 1 + 2 )*( 3 - 1 )", 6, 1, IN),
            ("8' - 2 * 3/4\"", 189, 2, IN),
            ("8' - 2\u{A0}*\u{2009}3/4\"", 189, 2, IN),
            ("72 in / 2 * 3", 108, 1, IN),
            ("4' * 8' / 2'", 16, 1, FT),
            ("2' * 3' * 4' / (1' * 1')", 24, 1, FT),
            ("2\" * 3\" / 4\" + 1", 5, 2, IN),
            ("8' / 2' * 3\"", 12, 1, IN),
            ("8 + 2 * (2 - 1/8)", 47, 4, IN),
            ("(34 1/2 - 3/16) / 3", 183, 16, IN),
        ],
    );
}

#[test]
fn signs_in_front() {
    comes_to(
        LengthParser::new(),
        &[
            ("-2 + 3", 1, 1, IN),
            ("−2 + 3", 1, 1, IN),
            ("+2 - 3", -1, 1, IN),
            ("- 2 * - 3", 6, 1, IN),
            ("2 - -3", 5, 1, IN),
            ("2 - - -3", -1, 1, IN),
            ("2 + + 3", 5, 1, IN),
            ("-(3'-7\")", -43, 1, IN),
            ("-(1' - (3\"))", -9, 1, IN),
            ("- 1′ 1″", -13, 1, IN),
            ("-0' 6\" * 2", -12, 1, IN),
            ("12 / -3", -4, 1, IN),
            ("-1/2 * -1/2", 1, 4, IN),
            ("-6' - 12⅝'", -447, 2, IN), // feet are not joined to feet
            ("minus 3 plus 5", 2, 1, IN),
        ],
    );
}

/// A hyphen joins only what a plain length joins, and inside a calculation only feet to inches without blanks,
/// unless both readings come to the same. What differs is in `refusing_calculations.rs`.
#[test]
fn hyphens_with_one_reading() {
    comes_to(
        LengthParser::new(),
        &[
            // One plain length.
            ("6'-3 1/2\"", 151, 2, IN),
            ("6'-3-1/2\"", 151, 2, IN),
            ("12' 11-1/2\"", 311, 2, IN),
            ("8' -5/8\"", 773, 8, IN),
            ("6'- 2\"", 74, 1, IN),
            ("-1'-2\"", -14, 1, IN),
            ("-17-5/8", -141, 8, IN),
            ("-85-1/2 mm", -171, 2, MM),
            // Feet and inches, without blanks.
            ("6'-2\" + 1\"", 75, 1, IN),
            ("6'-2 + 1", 75, 1, IN),
            ("6'-2\" * 2", 148, 1, IN),
            ("3ft-5in / 2", 41, 2, IN),
            ("49-in. + 1 in", 50, 1, IN),
            // Blanks on both sides: subtracted.
            ("72 - 3/4", 285, 4, IN),
            ("72 - 3/4\"", 285, 4, IN),
            ("5 - 3/8", 37, 8, IN),
            ("72 – 3/4", 285, 4, IN),
            ("72 - ½", 143, 2, IN),
            ("6' 2\" - 3\"", 71, 1, IN),
            // The minus sign subtracts, blanks or not.
            ("72−3/4", 285, 4, IN),
            ("72 −3/4", 285, 4, IN),
            ("6'−2\"", 70, 1, IN),
            ("17−5/8 + 1", 139, 8, IN),
            // Beside a bracket: subtracted.
            ("(148 7/16)-(147 1/8)", 21, 16, IN),
            ("(72)-3/4", 285, 4, IN),
            ("72-(3/4)", 285, 4, IN),
            ("6'-(2\")", 70, 1, IN),
            ("(6') - 2\"", 70, 1, IN),
            // Nothing that could be joined.
            ("17 5/8-3/4", 135, 8, IN),
            ("½-1/4", 1, 4, IN),
            ("2.5-1/2", 2, 1, IN),
            ("32-0.5", 63, 2, IN),
            ("72-3", 69, 1, IN),
            ("72 -3", 69, 1, IN),
            ("5-3 1/2", 3, 2, IN),
            ("5--3", 8, 1, IN),
            ("100-45-3", 52, 1, IN),
            ("96-3-3-3", 87, 1, IN),
            ("1 m - 20 cm", 80, 1, CM),
            ("1 m-20 cm", 80, 1, CM),
            ("1 yd-2 ft", 1, 1, FT),
            ("3\"-1/2\"", 5, 2, IN),
            ("12' - 6' 3\"", 69, 1, IN),
            ("12'-6'", 6, 1, FT),
            ("6' - 20 cm", 8144, 5, MM),
            ("5 1/2' - 3\"", 63, 1, IN),
            ("2 yd - 3 in", 69, 1, IN),
            // Taken away as a whole or piece by piece, it is the same.
            ("-6' - 2\"", -74, 1, IN),
            ("100\" - 6' - 2\"", 26, 1, IN),
            ("100 - 72-3/4", 109, 4, IN),
            ("5 - -(72) - 72-3/4 + 1", 21, 4, IN),
            ("20-3-1/2", 33, 2, IN),
            ("3-3-½", -1, 2, IN),
            ("2'-0-0", 24, 1, IN),
            ("12-12-08", -8, 1, IN),
            ("0-00⅛-01", -9, 8, IN),
        ],
    );
}

/// A slash is a fraction's or divides: mostly that is the same. What differs is in `refusing_calculations.rs`.
#[test]
fn slashes_with_one_reading() {
    comes_to(
        LengthParser::new(),
        &[
            ("3/4", 3, 4, IN),
            ("12/4", 3, 1, IN),
            ("12 /4", 3, 1, IN),
            ("2*3/4", 3, 2, IN),
            ("3/4*2", 3, 2, IN),
            ("20*3*10/12", 50, 1, IN),
            ("2*10/12*18", 30, 1, IN),
            ("12 + 3/4", 51, 4, IN),
            // Blanks on both sides: each divides.
            ("6 / 2 / 3", 1, 1, IN),
            ("12 / 3 / 4", 1, 1, IN),
            ("12/3 / 4", 1, 1, IN),
            ("1 m / 3 / 4", 250, 3, MM),
            ("12 / 4", 3, 1, IN),
            // A mixed number is one thing.
            ("12 / 2 1/2", 24, 5, IN),
            ("2 1/2/3", 5, 6, IN),
            ("2 1/2 / 3", 5, 6, IN),
            ("28 1/8 / 15", 15, 8, IN),
            ("17 5 / 8 + 1", 149, 8, IN),
            ("12 / 4 1/2", 8, 3, IN),
            // A fraction with its unit, in a glyph or in brackets is one thing.
            ("1\" * (96\" / 3/4\")", 128, 1, IN),
            ("3/4\" / 2", 3, 8, IN),
            ("3 / 4\"", 3, 4, IN),
            ("72 - 3 / 4\"", 285, 4, IN),
            ("12 / ¾", 16, 1, IN),
            ("12 / 3⁄4", 16, 1, IN),
            ("12 ⁄ 4", 3, 1, IN),
            ("72\" ⁄ 3", 24, 1, IN),
            ("1 ⁄2 * 3", 3, 2, IN),
            ("12 / ³/₄", 16, 1, IN),
            ("12 / (3/4)", 16, 1, IN),
            ("12 / 3/4ths", 16, 1, IN),
            ("½/2", 1, 4, IN),
            ("17 ⅟5/8", 43, 20, IN),
            ("⅟4\"/2", 1, 8, IN),
            // A length is no part of a fraction.
            ("72\" * 4\" / 3\"/4", 24, 1, IN),
            // A decimal is no part of a fraction.
            ("1/2.5", 2, 5, IN),
            ("2.5/2", 5, 4, IN),
            ("12 / 3/1.5", 8, 3, IN),
            ("12/1.5/2", 4, 1, IN),
            // Behind feet, an improper fraction is none.
            ("6' 5/8\" + 1\"", 589, 8, IN),
            ("6' 4 / 2", 38, 1, IN),
            ("6'4 / 2", 38, 1, IN),
            ("6'-4 / 2", 38, 1, IN),
        ],
    );
}

#[test]
fn the_kind_of_the_answer() {
    let number = |num, den| Quantity::Number(Ratio::new(num, den));
    let (inch, foot) = (inches(1, 1), Length::new(1, FT));
    for (text, answer) in [
        // Without a unit it is a number, whatever it may be taken for.
        ("72", number(72, 1)),
        ("17 5/8", number(141, 8)),
        ("72 - 2*3/4", number(141, 2)),
        ("2 * 3", number(6, 1)),
        ("24*4*4*16/12", number(512, 1)),
        ("1/3 - 1/2", number(-1, 6)),
        // With one it is a length.
        ("72\"", Quantity::Length(inches(72, 1))),
        ("72 - 2*3/4\"", Quantity::Length(inches(141, 2))),
        ("2 * 3\"", Quantity::Length(inches(6, 1))),
        ("6'2", Quantity::Length(inches(74, 1))),
        // Lengths multiplied and divided.
        ("2in * 1in", Quantity::Area(2 * (inch * inch))),
        ("4' * 8'", Quantity::Area(32 * (foot * foot))),
        ("4' * 8' - (1\" * 1\")", Quantity::Area(32 * (foot * foot) - inch * inch)),
        ("4' * 8' / 2", Quantity::Area(16 * (foot * foot))),
        ("12' * 12\" * 1\"", Quantity::Volume(144 * (inch * inch * foot))),
        ("2\" * 3\" * 4\" + 1\" * 1\" * 1\"", Quantity::Volume(25 * (inch * inch * inch))),
        ("2\" * 3\" * 4\" / 2", Quantity::Volume(12 * (inch * inch * inch))),
        ("1\" * (12\" * 12\")", Quantity::Volume(144 * (inch * inch * inch))),
        ("4' * 8' * 3/4\" / 4'", Quantity::Area(6 * (inch * foot))),
        ("96\" / 3/4\"", number(128, 1)),
        ("1 m / 1 in", number(5000, 127)),
        ("1' * 1' / (1\" * 1\")", number(144, 1)),
        ("1' * 1' * 1' / (1\" * 1\" * 1\")", number(1728, 1)),
        ("1' * 1' * 1' / (1' * 1')", Quantity::Length(foot)),
        ("8' / 2' + 72", number(76, 1)),
        ("3 * (8' / 2')", number(12, 1)),
    ] {
        assert_eq!(evaluate(text), Ok(answer), "{text:?}");
        let found = [answer.number().is_some(), answer.length().is_some(), answer.area().is_some(), answer.volume().is_some()];
        assert_eq!(found.iter().filter(|found| **found).count(), 1, "{text:?}");
    }
}

/// A caller's own number need be neither in lowest terms nor over a denominator above zero.
#[test]
fn numbers_that_no_text_makes() {
    let raw = |num, den| Quantity::Number(Ratio::new_raw(num, den));
    for (found, answer) in [
        (raw(1, -2).checked_add(raw(1, 4)), Some(raw(-1, 4))),
        (raw(2, -4).checked_sub(raw(-2, -4)), Some(raw(-1, 1))),
        (raw(2, 4).checked_mul(raw(-6, -4)), Some(raw(3, 4))),
        (raw(1, 2).checked_div(raw(1, -4)), Some(raw(-2, 1))),
        (raw(1, -2).checked_neg(), Some(raw(1, 2))),
        (raw(1, 0).checked_add(raw(1, 1)), None),
        (raw(1, 1).checked_div(raw(0, -1)), None),
        (raw(i128::MIN, -1).checked_add(raw(0, 1)), None),
    ] {
        assert_eq!(found, answer);
    }
}

/// A bare number beside a length takes the default unit if nothing but that unit is written there.
#[test]
fn bare_numbers_beside_lengths() {
    comes_to(
        LengthParser::new(),
        &[
            ("72 - 3/4\"", 285, 4, IN),
            ("3/4\" + 72", 291, 4, IN),
            ("1 + 2 + 3\"", 6, 1, IN),
            ("2 * 3 + 1\"", 7, 1, IN),
            ("72 - (1\" + 2\") * 2", 66, 1, IN),
            ("6' 2\" + 3/4", 299, 4, IN), // inches stand last, as they do where a bare number follows feet
            ("6' 2 + 3/4", 299, 4, IN),
            ("2 + 3\" + 6'", 77, 1, IN),
        ],
    );
    comes_to(
        LengthParser::new().default_unit(MM),
        &[("600 - 2*18", 564, 1, MM), ("600 - 18 mm", 582, 1, MM), ("1 m 20 mm + 5", 1025, 1, MM), ("2 * 1 in", 254, 5, MM)],
    );
    comes_to(LengthParser::new().default_unit(CM), &[("1m20 + 5", 125, 1, CM), ("3/4", 3, 4, CM)]);
    comes_to(LengthParser::new().default_unit(FT), &[("6' + 2", 8, 1, FT), ("2 * 3", 6, 1, FT)]);
    comes_to(LengthParser::new().default_unit(M), &[("2.4 - 2 * 0.6", 6, 5, M)]);
}

#[test]
fn commas_as_the_caller_says() {
    comes_to(
        LengthParser::new().comma(Comma::Groups),
        &[
            ("1,250 mm + 1 m", 2250, 1, MM),
            ("1'000 mm / 8", 125, 1, MM),
            ("1,250/2", 625, 1, IN),
            ("1 250 - 250", 1000, 1, IN),
            ("1’234 ft 5 in - 5 in", 1234, 1, FT),
        ],
    );
    comes_to(
        LengthParser::new().comma(Comma::Decimal),
        &[("1,5 * 2", 3, 1, IN), (",5 - ,25", 1, 4, IN), ("2,5/2", 5, 4, IN), (",5/2", 1, 4, IN), ("1,5-1/2", 1, 1, IN)],
    );
}

/// Whatever reads as a plain length is worked out as that length. Where a dash, or a slash with blanks round it,
/// could be a sign of the calculation it may be refused, but it never comes to something else.
#[test]
fn a_plain_length_is_worth_what_it_reads_as() {
    let pieces = ["1", "12", "5/8", "½", "/", " / ", "-", " - ", " ", "'", "\"", "m", "cm"];
    let (mut plain, mut refused) = (0, 0);
    for number in 0..pieces.len().pow(5) {
        let text = (0..5).map(|place| pieces[number / pieces.len().pow(place) % pieces.len()]).collect::<String>();
        let Ok(length) = text.parse::<Length>() else { continue };
        plain += 1;
        let evaluated = LengthParser::new().evaluate_length(&text);
        refused += usize::from(evaluated.is_err());
        assert!(evaluated == Ok(length) || evaluated.is_err() && (text.contains('-') || text.contains(" / ")), "{text:?}");
    }
    assert!(plain > 2_000 && refused * 10 < plain, "{refused} of {plain} refused");
}

/// What is suspicious about a length stays so in a calculation; a bare number there counts or divides.
#[test]
fn suspicious_lengths_in_a_calculation() {
    for (text, warning) in [
        ("13/4\" + 2", Some(Warning::LostBlank)),
        ("34 \"", Some(Warning::LostBar)),
        ("2 * (5.6' - 1\")", Some(Warning::DecimalFeet)),
        ("72\" - 6'13", Some(Warning::FootOfInches)),
        ("1\" - -5.6' + 6'13", Some(Warning::DecimalFeet)),
        ("4' * 5.6'", Some(Warning::DecimalFeet)),
        ("13/4", None),
        ("72\" - 13/4", None),
        ("12345 * 2\"", None),
        ("5.5 * 1'", None),
        ("6'11 + 3/4\"", None),
    ] {
        let (quantity, found) = LengthParser::new().evaluate_warned(text).unwrap_or_else(|error| panic!("{text:?}: {error}"));
        assert_eq!((Ok(quantity), found), (evaluate(text), warning), "{text:?}");
    }
    assert_eq!(LengthParser::new().evaluate_warned("5.6' +").map(|_| ()), evaluate("5.6' +").map(|_| ()));
}
