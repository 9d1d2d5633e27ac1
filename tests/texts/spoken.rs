//! Lengths as they are called out: what is read, to the exact value, and what is refused, with the kind,
//! the exact bytes to blame and the whole message. Plain notations are left to `reading.rs` and `refusing.rs`.

use core::ops::Range;
use std::collections::{BTreeMap, BTreeSet};

use scantling::{Comma, Length, LengthParser, ParseErrorKind as Kind, Unit};

/// A text and what it must read as: `(text, numerator, denominator, unit)`.
type Row = (&'static str, i64, u64, Unit);
type Refused = (&'static str, Kind, Range<usize>, &'static str);

const IN: Unit = Unit::Inch;
const FT: Unit = Unit::Foot;
const YD: Unit = Unit::Yard;
const MM: Unit = Unit::Millimeter;
const CM: Unit = Unit::Centimeter;

#[track_caller]
fn reads(parser: LengthParser, rows: &[Row]) {
    for &(text, num, den, unit) in rows {
        assert_eq!(parser.parse(text), Ok(Length::fraction(num, den, unit)), "{text:?}");
    }
}

#[track_caller]
fn refuses(rows: &[Refused]) {
    for (text, kind, span, message) in rows {
        let error = text.parse::<Length>().expect_err(text);
        assert_eq!((error.kind(), error.span(), &*error.to_string()), (*kind, span.clone(), *message), "{text:?}");
        assert!(text[span.clone()].starts_with(error.found()), "{text:?}");
    }
}

#[track_caller]
fn hints(kind: Kind, rows: &[(&str, &str)]) {
    for (text, hint) in rows {
        let error = text.parse::<Length>().expect_err(text);
        assert_eq!((error.kind(), error.hint().unwrap().to_string()), (kind, (*hint).to_string()), "{text:?}");
    }
}

// How people say lengths is common practice, no source; values are worked by hand.

#[test]
fn fractions_in_words() {
    reads(
        LengthParser::new(),
        &[
            ("a half", 1, 2, IN),
            ("half", 1, 2, IN),
            ("one half", 1, 2, IN),
            ("half an inch", 1, 2, IN),
            ("half inch", 1, 2, IN),
            ("half of an inch", 1, 2, IN),
            ("one half of one inch", 1, 2, IN),
            ("a half inch", 1, 2, IN),
            ("half a foot", 6, 1, IN),
            ("three halves", 3, 2, IN),
            ("a quarter", 1, 4, IN),
            ("quarter inch", 1, 4, IN),
            ("three quarters", 3, 4, IN),
            ("three fourths", 3, 4, IN),
            ("three quarters of an inch", 3, 4, IN),
            ("three-quarter-inch", 3, 4, IN),
            ("five quarter", 5, 4, IN),
            ("two thirds of a yard", 2, 3, YD),
            ("an eighth", 1, 8, IN),
            ("eighth inch", 1, 8, IN),
            ("an eighth of an inch", 1, 8, IN),
            ("a 16th of inch", 1, 16, IN),
            ("eightieth of an inch", 1, 80, IN),
            ("five eighth", 5, 8, IN),
            ("one sixteenth", 1, 16, IN),
            ("sixteenth of an inch", 1, 16, IN),
            ("eleven twelfths", 11, 12, IN),
            ("one twentieth", 1, 20, IN),
            ("a thirty-second", 1, 32, IN),
            ("one thirty second", 1, 32, IN),
            ("nineteen thirty-seconds", 19, 32, IN),
            ("thirty thirty-seconds", 15, 16, IN),
            ("five sixty-fourths", 5, 64, IN),
            ("a sixty fourth", 1, 64, IN),
            ("seven hundredths", 7, 100, IN),
            ("five two hundredths", 502, 100, IN),
            ("seven five hundredth", 705, 100, IN),
            ("one five hundredths", 105, 100, IN),
            ("five thousandth of an inch", 5, 1000, IN),
            ("fifteen thousandths", 15, 1000, IN),
            ("ten thousandths of an inch", 10, 1000, IN),
            ("a ten thousandth", 1, 10_000, IN),
            ("twenty nine eighths", 29, 8, IN),
            ("zero and twenty five sixty fourths", 25, 64, IN),
        ],
    );
}

#[test]
fn wholes_and_fractions_in_words() {
    reads(
        LengthParser::new(),
        &[
            ("zero", 0, 1, IN),
            ("seventy-two inches", 72, 1, IN),
            ("nine and a half", 19, 2, IN),
            ("nine and half", 19, 2, IN),
            ("one and one half", 3, 2, IN),
            ("thirty-one and eleven sixteenths", 507, 16, IN),
            ("thirty one eleven sixteenths", 507, 16, IN),
            ("seventeen five eighths", 141, 8, IN),
            ("six three quarters", 27, 4, IN),
            ("three and nine thirty seconds", 105, 32, IN),
            ("three and five one hundred and twenty eighths", 389, 128, IN),
            ("two and twenty five hundredths", 9, 4, IN),
            ("two and seventy-five thousandths", 2075, 1000, IN),
            ("one hundred four and a quarter inches", 417, 4, IN),
            ("one hundred and four and a quarter inches", 417, 4, IN),
            ("one hundred and a half", 201, 2, IN),
            ("one hundred and one half", 201, 2, IN),
            ("two hundred and twelve and one twentieth", 4241, 20, IN),
            ("one hundred inches and five eighths", 805, 8, IN),
            ("a hundred and twenty", 120, 1, IN),
            ("hundred and twenty inches", 120, 1, IN),
            ("twenty-four hundred and forty millimeters", 2440, 1, MM),
            ("one thousand two hundred and twenty mm", 1220, 1, MM),
            ("nine hundred and ninety-nine thousand nine hundred and ninety nine", 999_999, 1, IN),
            ("two thirds of a yard", 24, 1, IN),
            ("two and a half feet", 30, 1, IN),
            ("one and a half foot", 18, 1, IN),
            ("minus one half", -1, 2, IN),
            ("negative two feet", -24, 1, IN),
            ("plus two feet", 24, 1, IN),
            ("-nine and a half", -19, 2, IN),
            ("minus six foot two", -74, 1, IN),
        ],
    );
}

#[test]
fn denominators_that_are_no_sixteenths() {
    reads(
        LengthParser::new(),
        &[
            ("one twenty-first of an inch", 1, 21, IN),
            ("one seventieth of an inch", 1, 70, IN),
            ("a ninetieth of an inch", 1, 90, IN),
            ("six and two thirty-firsts inches", 188, 31, IN),
            ("one over one hundred twenty-eight of an inch", 1, 128, IN),
            ("minus fifteen over 128 of an inch", -15, 128, IN),
            ("zero and fifty-five over one hundred twenty-seven inches", 55, 127, IN),
            ("ten and fifty-nine over ninety-six inches", 1019, 96, IN),
            ("two yards zero and nine over ninety-six inches", 6921, 96, IN),
            ("two hundred inches and nine over one hundred twenty-seven of an inch", 25_409, 127, IN),
        ],
    );
}

#[test]
fn decimals_in_words() {
    reads(
        LengthParser::new(),
        &[
            ("point seven five inches", 3, 4, IN),
            ("two point five feet", 30, 1, IN),
            ("zero point five", 1, 2, IN),
            ("oh point five", 1, 2, IN),
            ("point oh six two five", 1, 16, IN),
            ("point zero five", 1, 20, IN),
            ("one hundred and two point five", 205, 2, IN),
            ("point seventy-five inches", 3, 4, IN),
            ("two point twenty five", 9, 4, IN),
            ("three point fifteen", 63, 20, IN),
            ("2 point 5 feet", 30, 1, IN),
            ("point 05", 1, 20, IN),
            ("zero point 625", 5, 8, IN),
            ("six foot two point five", 149, 2, IN),
        ],
    );
}

#[test]
fn feet_and_inches_in_words() {
    reads(
        LengthParser::new(),
        &[
            ("a foot", 12, 1, IN),
            ("an inch", 1, 1, IN),
            ("six foot two", 74, 1, IN),
            ("six-foot-two", 74, 1, IN),
            ("six foot two and a half", 149, 2, IN),
            ("five foot three and three quarters", 255, 4, IN),
            ("five feet, three and three quarter inches", 255, 4, IN),
            ("six feet three quarters", 291, 4, IN),
            ("six feet five eighths of an inch", 581, 8, IN),
            ("six feet and three inches", 75, 1, IN),
            ("two feet and six", 30, 1, IN),
            ("two feet and six and a half", 61, 2, IN),
            ("two feet and a half inch", 49, 2, IN),
            ("two feet and half an inch", 49, 2, IN),
            ("two yards one foot three", 87, 1, IN),
            ("a foot and an inch", 13, 1, IN),
            ("one meter and twenty centimeters", 120, 1, CM),
        ],
    );
}

#[test]
fn part_of_the_unit_just_named() {
    reads(
        LengthParser::new(),
        &[
            ("an inch and a half", 3, 2, IN),
            ("two feet and 0/8", 24, 1, IN),
            ("inch and a half", 3, 2, IN),
            ("an inch and three quarters", 7, 4, IN),
            ("three inches and five eighths", 29, 8, IN),
            ("two inches and half an inch", 5, 2, IN),
            ("two inches and twenty-one sixty-fourths", 149, 64, IN),
            ("two inches and twenty-one sixty-fourths of an inch", 149, 64, IN),
            ("two feet three inches and a half", 55, 2, IN),
            ("a foot and half a foot", 18, 1, IN),
            ("a yard and a half", 54, 1, IN),
            ("two meters and a half", 2500, 1, MM),
        ],
    );
}

#[test]
fn words_and_figures_mixed() {
    reads(
        LengthParser::new(),
        &[
            ("17 and 5 eighths", 141, 8, IN),
            ("17 5 eighths", 141, 8, IN),
            ("20 5 eighths", 165, 8, IN),
            ("17 and a half", 35, 2, IN),
            ("48 and 7/16", 775, 16, IN),
            ("48 and 7/16ths", 775, 16, IN),
            ("48 and 7 16ths", 775, 16, IN),
            ("5 16ths", 5, 16, IN),
            ("a 16th of an inch", 1, 16, IN),
            ("three and 5/8", 29, 8, IN),
            ("three 5/8", 29, 8, IN),
            ("three and ⅝", 29, 8, IN),
            ("9 and a 1/2", 19, 2, IN),
            ("a 3/4 inch", 3, 4, IN),
            ("1/2 an inch", 1, 2, IN),
            ("½ a foot", 6, 1, IN),
            ("6 foot two", 74, 1, IN),
            ("6' and 3 inches", 75, 1, IN),
            ("6 feet and 3 inches", 75, 1, IN),
            ("6 ft. two in.", 74, 1, IN),
            ("5 eighths", 5, 8, IN),
            ("5-eighths", 5, 8, IN),
            ("5 foot 3 and 3 quarters", 255, 4, IN),
            ("2 hundred", 200, 1, IN),
            ("2 thousand 440 mm", 2440, 1, MM),
            ("minus 17 5/8", -141, 8, IN),
        ],
    );
}

#[test]
fn a_line_is_read_as_a_recognizer_writes_it() {
    for text in [
        "nine and a half",
        "Nine And A Half.",
        "NINE AND A HALF",
        "nine & a half",
        "nine, and a half",
        "nine-and-a-half",
        "nine‐and–a‑half",
        "  nine\u{A0}and\ta  half \r\n",
        "nine and a half inches.",
        "nine and a half, ",
        "nine and a half\"",
        "9 & a half″",
    ] {
        assert_eq!(text.parse(), Ok(Length::fraction(19, 2, IN)), "{text:?}");
    }
}

#[test]
fn the_unit_of_a_bare_number_is_the_callers_choice() {
    let millimeters = LengthParser::new().default_unit(MM);
    reads(millimeters, &[("twelve", 12, 1, MM), ("nine and a half", 19, 2, MM), ("six foot two", 74, 1, IN)]);
    reads(LengthParser::new().default_unit(FT), &[("two and a half", 30, 1, IN), ("half an inch", 1, 2, IN)]);
    reads(LengthParser::new().comma(Comma::Groups), &[("1,250 and a half", 2501, 2, IN)]);
}

#[test]
#[rustfmt::skip] // one line a case
fn words_with_two_readings() {
    refuses(&[
        ("twenty five eighths", Kind::SpokenReadings, 0..19, "words with two readings: found `twenty five eighths` at bytes 0..19, expected words that make one length only; write 25/8 or 20 5/8"),
        ("two hundred and five eighths", Kind::SpokenReadings, 0..28, "words with two readings: found `two hundred and five …` at bytes 0..28, expected words that make one length only; write 205/8 or 200 5/8"),
        ("two feet and a half", Kind::SpokenReadings, 0..19, "words with two readings: found `two feet and a half` at bytes 0..19, expected words that make one length only; write 30 or 24 1/2 in"),
        ("one yard, two feet and a half", Kind::SpokenReadings, 10..29, "words with two readings: found `two feet and a half` at bytes 10..29, expected words that make one length only; write 30 or 24 1/2 in"),
        ("two feet and twenty five eighths of an inch", Kind::SpokenReadings, 13..32, "words with two readings: found `twenty five eighths` at bytes 13..32, expected words that make one length only; write 25/8 or 20 5/8"),
        ("six foot twenty five eighths", Kind::SpokenReadings, 9..28, "words with two readings: found `twenty five eighths` at bytes 9..28, expected words that make one length only; write 25/8 or 20 5/8"),
        ("one meter twenty", Kind::SpokenReadings, 0..16, "words with two readings: found `one meter twenty` at bytes 0..16, expected words that make one length only; write 1200 or 1020 mm"),
    ]);
    hints(Kind::SpokenReadings, &[
        ("twenty-five eighths", "write 25/8 or 20 5/8"),
        ("Twenty, five eighths.", "write 25/8 or 20 5/8"),
        ("minus twenty five eighths of an inch", "write 25/8 or 20 5/8"),
        ("twenty one thirty seconds", "write 21/32 or 20 1/32"),
        ("twenty five sixty fourths", "write 25/64 or 20 5/64"),
        ("2 hundred and 5 eighths", "write 205/8 or 200 5/8"),
        ("a hundred and five eighths", "write 105/8 or 100 5/8"),
        ("one hundred and one quarter", "write 101/4 or 100 1/4"),
        ("one thousand one sixteenth", "write 1001/16 or 1000 1/16"),
        ("twenty one halves", "write 21/2 or 20 1/2"),
        ("one hundred twenty eighths", "write 1/128 or 100/28"),
        ("one one hundred twenty-eighth", "write 1/128 or 1 1/128"),
        ("five one hundred twenty-eighths", "write 5/128 or 5 1/128"),
        ("twenty-five over ninety-six of an inch", "write 25/96 or 20 5/96"),
        ("one five hundredth of an inch", "write 1 5/100 or 1/500"),
        ("one two hundredth", "write 1 2/100 or 1/200"),
        ("one hundred one thousandth", "write 100/1000 or 101/1000"),
        ("two hundred thousandths", "write 2/100000 or 200/1000"),
        ("five ten thousandths", "write 5/10000 or 5 10/1000"),
        ("sixty fourths", "write 60/4 or 1/64"),
        ("hundred 19ths", "write 100/19 or 1/119"),
        ("a foot and a half", "write 18 or 12 1/2 in"),
        ("foot and a half", "write 18 or 12 1/2 in"),
        ("6 feet and 3/4", "write 81 or 72 3/4 in"),
        ("two feet and point five", "write 30 or 24 1/2 in"),
        ("two feet and a sixteenth", "write 24 3/4 or 24 1/16 in"),
        ("two meters and five", "write 2050 or 2005 mm"),
        ("minus one meter 5", "write 1050 or 1005 mm"),
        ("9000000 feet and a half", "put a unit behind the whole number, as in twenty inches and five eighths"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn crew_codes() {
    refuses(&[
        ("three-oh", Kind::CrewCode, 0..8, "two numbers side by side: found `three-oh` at bytes 0..8, expected one number, or a unit behind the first; write 3'-0\" for feet and inches, 3 0/16 for inches and sixteenths"),
        ("36-twelve strong", Kind::CrewCode, 0..9, "two numbers side by side: found `36-twelve` at bytes 0..9, expected one number, or a unit behind the first; write 36 12/16 for inches and sixteenths, 3612 for one number"),
        ("one two three", Kind::TwoNumbers, 0..7, "two numbers and nothing to tell them apart: found `one two` at bytes 0..7, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("six two inches", Kind::TwoNumbers, 0..7, "two numbers and nothing to tell them apart: found `six two` at bytes 0..7, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("six foot two eight", Kind::TwoNumbers, 9..18, "two numbers and nothing to tell them apart: found `two eight` at bytes 9..18, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
    ]);
    hints(Kind::CrewCode, &[
        ("two-six", "write 2'-6\" for feet and inches, 2 6/16 for inches and sixteenths"),
        ("two six and a half", "write 2'-6 1/2\" for feet and inches, 2 13/32 for inches and sixteenths"),
        ("36-twelve and a half", "write 36 25/32 for inches and sixteenths"),
        ("thirty six thirteen shy", "write 36 13/16 for inches and sixteenths, 3613 for one number"),
        ("two eleven", "write 2'-11\" for feet and inches, 2 11/16 for inches and sixteenths, 211 for one number"),
        ("twelve twenty", "write 1220 for one number"),
        ("one one hundred", "put a unit behind each number"),
        ("36-sixteen", "write 3616 for one number"),
        ("5 three", "write 5'-3\" for feet and inches, 5 3/16 for inches and sixteenths"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn words_that_only_qualify() {
    refuses(&[
        ("48 and 7/16ths plus, plus plus", Kind::Qualified, 15..30, "a length with a qualifier: found `plus, plus plus` at bytes 15..30, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("just shy of 3/4", Kind::Qualified, 0..11, "a length with a qualifier: found `just shy of` at bytes 0..11, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
    ]);
    for (text, span) in [
        ("a hair over 11-1/4", 0..11),
        ("nine and a half strong", 16..22),
        ("nine and a half, shy.", 17..20),
        ("three quarters a hair under", 15..27),
        ("a big eighth", 0..5),
        ("just a half", 0..4),
        ("about twelve inches", 0..5),
        ("48 and 7/16ths minus", 15..20),
        // A slope, and a length that may be 6'-1".
        ("four over twelve", 5..9),
        ("one over six feet", 4..8),
        ("an inch over six feet", 8..12),
        ("five over zero of an inch", 5..9),
    ] {
        let error = text.parse::<Length>().expect_err(text);
        assert_eq!((error.kind(), error.span()), (Kind::Qualified, span), "{text:?}");
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn other_slips_of_the_tongue() {
    refuses(&[
        ("eighths", Kind::NotANumber, 0..7, "no number: found `eighths` at bytes 0..7, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("third", Kind::NotANumber, 0..5, "no number: found `third` at bytes 0..5, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("and a half", Kind::NotANumber, 0..3, "no number: found `and` at bytes 0..3, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("minus", Kind::NotANumber, 0..5, "no number: found `minus` at bytes 0..5, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("nine furlongs", Kind::UnknownUnit, 5..13, "an unknown unit: found `furlongs` at bytes 5..13, expected in, ft, yd, mm, cm or m"),
        ("two hundred 100 inches", Kind::TwoNumbers, 0..15, "two numbers and nothing to tell them apart: found `two hundred 100` at bytes 0..15, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("two thousand three thousand inches", Kind::TwoNumbers, 0..27, "two numbers and nothing to tell them apart: found `two thousand three th…` at bytes 0..27, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("two hundred and hundred inches", Kind::TwoNumbers, 0..23, "two numbers and nothing to tell them apart: found `two hundred and hundr…` at bytes 0..23, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("two an inch", Kind::TwoNumbers, 0..6, "two numbers and nothing to tell them apart: found `two an` at bytes 0..6, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("thirty seconds", Kind::UnknownUnit, 7..14, "an unknown unit: found `seconds` at bytes 7..14, expected in, ft, yd, mm, cm or m"),
        ("six a half", Kind::TwoNumbers, 0..10, "two numbers and nothing to tell them apart: found `six a half` at bytes 0..10, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("three and sixteenths", Kind::UnknownUnit, 6..9, "an unknown unit: found `and` at bytes 6..9, expected in, ft, yd, mm, cm or m"),
        ("nine and nine eighths", Kind::ImproperFraction, 0..21, "a fraction part of one or more: found `nine and nine eighths` at bytes 0..21, expected a fraction below one behind the whole number; write 10 1/8"),
        ("six foot nineteen eighths", Kind::ImproperFraction, 9..25, "a fraction part of one or more: found `nineteen eighths` at bytes 9..25, expected a fraction below one behind the whole number; write 2 3/8"),
        ("an inch and nine eighths", Kind::ImproperFraction, 0..24, "a fraction part of one or more: found `an inch and nine eigh…` at bytes 0..24, expected a fraction below one behind the whole number; write 2 1/8 in"),
        ("12 m and 9/8", Kind::ImproperFraction, 0..12, "a fraction part of one or more: found `12 m and 9/8` at bytes 0..12, expected a fraction below one behind the whole number; write 13 1/8 m"),
        ("two feet and nine eighths", Kind::ImproperFraction, 13..25, "a fraction part of one or more: found `nine eighths` at bytes 13..25, expected a fraction below one behind the whole number; write 1 1/8"),
        ("three and 9/0", Kind::ZeroDenominator, 10..13, "a fraction over zero: found `9/0` at bytes 10..13, expected a number above zero below the line; check the number below the line"),
        ("point five and a half", Kind::DecimalWithFraction, 0..21, "a decimal together with a fraction: found `point five and a half` at bytes 0..21, expected the one or the other; write 17 7/8 or 17.875, not both at once"),
        ("two and a half feet three inches", Kind::FractionNotLast, 0..14, "a part of a unit before the last number: found `two and a half` at bytes 0..14, expected a whole number of every unit but the last; give the part with the last unit alone, as in 5'-9\""),
        ("half a foot and a quarter", Kind::FractionNotLast, 0..4, "a part of a unit before the last number: found `half` at bytes 0..4, expected a whole number of every unit but the last; give the part with the last unit alone, as in 5'-9\""),
        ("one foot two foot", Kind::RepeatedUnit, 13..17, "the same unit twice: found `foot` at bytes 13..17, expected a smaller unit behind a larger one; if the first should be feet, mark it ' or ft"),
        ("six inches one foot", Kind::RisingUnit, 15..19, "a larger unit behind a smaller one: found `foot` at bytes 15..19, expected a smaller unit behind a larger one; put the feet first"),
        ("one meter three inches", Kind::MixedSystems, 16..22, "metric and imperial in one length: found `inches` at bytes 16..22, expected units of one system; to put the two together, calculate 1 m + 3 in"),
        ("three inches one half", Kind::LooseTail, 13..21, "a number behind a finished length: found `one half` at bytes 13..21, expected the end of the length, or a unit behind the number; put a fraction before its unit, as in 3 1/2 in; a slope is not a length"),
        ("one meter zero", Kind::LooseTail, 10..14, "a number behind a finished length: found `zero` at bytes 10..14, expected the end of the length, or a unit behind the number; put a fraction before its unit, as in 3 1/2 in; a slope is not a length"),
        ("two yards three", Kind::LooseTail, 10..15, "a number behind a finished length: found `three` at bytes 10..15, expected the end of the length, or a unit behind the number; put a fraction before its unit, as in 3 1/2 in; a slope is not a length"),
        ("five and three", Kind::TwoNumbers, 0..14, "two numbers and nothing to tell them apart: found `five and three` at bytes 0..14, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("nine minus one half", Kind::Arithmetic, 5..10, "a calculation, not a length: found `minus` at bytes 5..10, expected one length; work it out first, or calculate it"),
        ("nine - a half", Kind::Arithmetic, 5..6, "a calculation, not a length: found `-` at bytes 5..6, expected one length; work it out first, or calculate it"),
        ("5 plus one half", Kind::Arithmetic, 2..6, "a calculation, not a length: found `plus` at bytes 2..6, expected one length; work it out first, or calculate it"),
        ("two by four", Kind::NominalName, 0..11, "the name of a board, not a length: found `two by four` at bytes 0..11, expected one length; a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths"),
        ("two feet by four", Kind::SizeNotLength, 0..16, "a size, not a length: found `two feet by four` at bytes 0..16, expected one length; give one length of the size at a time"),
        ("two by four feet ", Kind::SizeNotLength, 0..16, "a size, not a length: found `two by four feet` at bytes 0..16, expected one length; give one length of the size at a time"),
        ("nine and a half ±1/32", Kind::ToleranceNotLength, 16..18, "a length with a tolerance: found `±` at bytes 16..18, expected a length alone; give the length without its tolerance"),
        ("six feet 16ths", Kind::Trailing, 9..14, "something behind the length: found `16ths` at bytes 9..14, expected the end of the length"),
        ("nine 2nds", Kind::Trailing, 5..9, "something behind the length: found `2nds` at bytes 5..9, expected the end of the length"),
        ("nine feet and more", Kind::Trailing, 10..13, "something behind the length: found `and` at bytes 10..13, expected the end of the length"),
        ("nine-", Kind::Trailing, 4..5, "something behind the length: found `-` at bytes 4..5, expected the end of the length"),
        ("a 1 3/4", Kind::NotANumber, 0..1, "no number: found `a` at bytes 0..1, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("point", Kind::NotANumber, 0..5, "no number: found `point` at bytes 0..5, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("two by", Kind::UnknownUnit, 4..6, "an unknown unit: found `by` at bytes 4..6, expected in, ft, yd, mm, cm or m"),
        ("0.5 one", Kind::TwoNumbers, 0..7, "two numbers and nothing to tell them apart: found `0.5 one` at bytes 0..7, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("1 one.5", Kind::TwoNumbers, 0..5, "two numbers and nothing to tell them apart: found `1 one` at bytes 0..5, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("half of 2 inches", Kind::UnknownUnit, 5..7, "an unknown unit: found `of` at bytes 5..7, expected in, ft, yd, mm, cm or m"),
        ("7 two,5", Kind::TwoNumbers, 0..5, "two numbers and nothing to tell them apart: found `7 two` at bytes 0..5, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("- minus one", Kind::Qualified, 2..7, "a length with a qualifier: found `minus` at bytes 2..7, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("two hundred and thousand", Kind::TwoNumbers, 0..24, "two numbers and nothing to tell them apart: found `two hundred and thous…` at bytes 0..24, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("five hundred and thousandths inch", Kind::UnknownUnit, 13..16, "an unknown unit: found `and` at bytes 13..16, expected in, ft, yd, mm, cm or m"),
        ("one one two hundredth", Kind::TwoNumbers, 0..21, "two numbers and nothing to tell them apart: found `one one two hundredth` at bytes 0..21, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("two and one five hundredth", Kind::TwoNumbers, 0..26, "two numbers and nothing to tell them apart: found `two and one five hund…` at bytes 0..26, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
    ]);
}

/// A whole number below a thousand in words, by rules of its own.
fn whole(number: u64) -> String {
    const SMALL: [&str; 20] = [
        "zero",
        "one",
        "two",
        "three",
        "four",
        "five",
        "six",
        "seven",
        "eight",
        "nine",
        "ten",
        "eleven",
        "twelve",
        "thirteen",
        "fourteen",
        "fifteen",
        "sixteen",
        "seventeen",
        "eighteen",
        "nineteen",
    ];
    const TENS: [&str; 10] = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];
    let (hundreds, tens, ones) = (number / 100, number / 10 % 10, number % 10);
    let small = |number: u64| SMALL[usize::try_from(number).unwrap()];
    match number {
        0..20 => small(number).into(),
        20..100 if ones == 0 => TENS[usize::try_from(tens).unwrap()].into(),
        20..100 => format!("{} {}", TENS[usize::try_from(tens).unwrap()], small(ones)),
        _ if number % 100 == 0 => format!("{} hundred", small(hundreds)),
        _ => format!("{} hundred and {}", small(hundreds), whole(number % 100)),
    }
}

/// One part of a denominator on a tape, a ruler or a plan.
fn part(den: u64) -> &'static str {
    match den {
        2 => "half",
        3 => "third",
        4 => "quarter",
        8 => "eighth",
        16 => "sixteenth",
        32 => "thirty second",
        64 => "sixty fourth",
        _ => unreachable!(),
    }
}

fn fraction(num: u64, den: u64) -> String {
    match (num, den) {
        (1, _) => format!("one {}", part(den)),
        (_, 2) => format!("{} halves", whole(num)),
        _ => format!("{} {}s", whole(num), part(den)),
    }
}

fn inches(whole: u64, num: u64, den: u64) -> Length {
    Length::fraction(i64::try_from(whole * den + num).unwrap(), den, IN)
}

/// The same fraction with the smallest denominator.
fn lowest(num: u64, den: u64) -> (u64, u64) {
    if num % 2 == 0 && den > 1 { lowest(num / 2, den / 2) } else { (num, den) }
}

#[test]
fn every_64th_up_to_200_inches_reads_back() {
    for count in 0..=200 * 64 {
        let (number, (num, den)) = (count / 64, lowest(count % 64, 64));
        let text = match (number, num, den) {
            (_, 0, _) => whole(number),
            (0, 0..=20, _) => fraction(num, den),
            // Two readings without the unit, and refused below.
            (100 | 200, _, 3..) => format!("{} inches and {}", whole(number), fraction(num, den)),
            _ => format!("{} and {}", whole(number), fraction(num, den)),
        };
        let length = Length::fraction(count.try_into().unwrap(), 64, IN);
        assert_eq!(text.parse(), Ok(length), "{text:?}");
        assert_eq!(text.replace(' ', "-").to_uppercase().parse(), Ok(length), "{text:?} in capitals");
        if den > 2 && matches!(number, 100 | 200) {
            let text = format!("{} and {}", whole(number), fraction(num, den));
            assert_eq!(text.parse::<Length>().map_err(|error| error.kind()), Err(Kind::SpokenReadings), "{text:?}");
        }
    }
}

#[test]
fn every_number_of_feet_and_inches_reads_back() {
    for (feet, number, sixteenths) in (0..20_u64).flat_map(|feet| (0..12_u64 * 16).map(move |i| (feet, i / 16, i % 16))) {
        let (num, den) = lowest(sixteenths, 16);
        let unit = if feet == 1 { "foot" } else { "feet" };
        let tail = match (number, num) {
            (_, 0) => whole(number),
            (0, _) => fraction(num, den),
            _ => format!("{} and {}", whole(number), fraction(num, den)),
        };
        let length = inches(feet * 12 + number, num, den);
        for (text, expected) in [
            (format!("{} {unit} {tail}", whole(feet)), length),
            (format!("{feet} foot {tail} inches"), length),
            (format!("{} {unit} and {tail} inches", whole(feet)), length),
            (format!("minus {} {unit}, {tail} inches", whole(feet)), -length),
        ] {
            assert_eq!(text.parse(), Ok(expected), "{text:?}");
        }
    }
}

/// Spells values, each with every wording it has, and looks which wordings are shared. Plural and singular
/// count as the same, except for halves.
#[test]
fn a_wording_that_two_values_share_is_refused_and_no_other_is_misread() {
    let mut wordings: BTreeMap<String, BTreeSet<(u64, u64)>> = BTreeMap::new();
    let mut say = |text: String, num: u64, den: u64| {
        let text = if den == 2 { text } else { text.trim_end_matches('s').into() };
        wordings.entry(text).or_default().insert(if num % den == 0 { (num / den, 1) } else { (num, den) });
    };
    for den in [2, 3, 4, 8, 16, 32, 64] {
        for num in 1..=250 {
            say(fraction(num, den), num, den);
        }
        for (number, num) in (1..=220).flat_map(|number| (1..den).map(move |num| (number, num))) {
            say(format!("{} {}", whole(number), fraction(num, den)), number * den + num, den);
            say(format!("{} and {}", whole(number), fraction(num, den)), number * den + num, den);
        }
    }
    let mut shared = 0;
    for (text, values) in &wordings {
        let read = text.parse::<Length>();
        let values: BTreeSet<Length> = values.iter().map(|&(num, den)| inches(0, num, den)).collect();
        match read {
            Ok(length) => assert!(values.len() == 1 && values.contains(&length), "{text:?} {values:?}"),
            Err(error) => assert_eq!(error.kind(), Kind::SpokenReadings, "{text:?} {values:?}"),
        }
        shared += usize::from(values.len() > 1);
        // Wordings that this test does not spell: one denominator (`thirty third`), a plural for one half.
        let has_more = ["ty third", "ty eighth", " one halves"].iter().any(|end| text.ends_with(end)) || text.contains("hundred");
        assert!(values.len() > 1 || read.is_ok() || has_more, "{text:?}");
    }
    assert!(shared > 800, "only {shared} shared wordings");
}

#[test]
fn no_words_make_it_panic() {
    let words = [
        "two",
        "twenty",
        "16",
        "hundred",
        "thousandths",
        "eighth",
        "half",
        "and",
        "a",
        "of",
        "by",
        "point",
        "oh",
        "minus",
        "strong",
        "feet",
        "inch",
        "meter",
        "5/8",
        "-",
        ",",
        ".",
        "é",
        "&",
    ];
    let count = words.len();
    for number in 0..count.pow(4) {
        let word = |place: u32| words[number / count.pow(place) % count];
        let text = format!("{} {}-{} {}", word(0), word(1), word(2), word(3));
        if let Err(error) = text.parse::<Length>() {
            assert!(text.get(error.span()).is_some_and(|found| found.starts_with(error.found())), "{text:?}");
            assert!(!error.to_string().is_empty());
        }
    }
}

#[test]
fn long_lines_are_refused_like_short_ones() {
    let long = |piece: &str| piece.repeat(100_000).parse::<Length>().map_err(|error| (error.kind(), error.span()));
    assert_eq!(long("nine "), Err((Kind::TooManyWords, 240..244)));
    assert_eq!(long("and a half "), Err((Kind::TooManyWords, 176..179)));
    assert_eq!(long("nine,,"), Err((Kind::TooManyWords, 288..292)));
    assert_eq!(long("nine & "), Err((Kind::TooManyWords, 168..172)));
    assert_eq!(long("nonsense "), Err((Kind::NotANumber, 0..8)));
    assert_eq!(long("a9"), Err((Kind::TooManyWords, 48..49)));
    let mut commas = "nine".to_string() + &",".repeat(1_000_000);
    assert_eq!(commas.parse(), Ok(Length::new(9, IN)));
    commas += "\nten";
    assert!(commas.parse::<Length>().is_err());
}
