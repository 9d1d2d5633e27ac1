//! Lengths inside longer text, shorthands, and how a length was written. One line a case, exact values by hand.

use core::ops::Range;

use crate::support::texts::of_four;
use scantling::{Length, LengthParser, ParseErrorKind as Kind, Precision, Shorthand, Unit, UnitMark, Warning};

const IN: Unit = Unit::Inch;
const FT: Unit = Unit::Foot;
const MM: Unit = Unit::Millimeter;

fn length(num: i64, den: u64, unit: Unit) -> Length {
    Length::fraction(num, den, unit)
}

#[test]
fn one_length_at_the_start() {
    let read = |text: &str| LengthParser::new().parse_prefix(text);
    for (text, expected, end) in [
        ("17 5/8 from the left", length(141, 8, IN), 6),
        ("6'-3 1/2\" from the floor", length(151, 2, IN), 9),
        ("17 5/8", length(141, 8, IN), 6),
        ("24\" x 36\"", length(24, 1, IN), 3),
        ("24 ±1/32", length(24, 1, IN), 2),
        ("17 5/8 strong", length(141, 8, IN), 6),
        ("17 5/8\", 36\", 40\"", length(141, 8, IN), 7),
        ("6 ft, 3 in, and so on", length(75, 1, IN), 10),
        ("-1/2)", length(-1, 2, IN), 4),
        ("365 mm.", length(365, 1, MM), 7),
        ("½ × ⅝", length(1, 2, IN), 2),
        ("6'board", length(6, 1, FT), 2),
        ("34 1/2 16 1/4", length(69, 2, IN), 6),
        ("16\" o.c.", length(16, 1, IN), 3),
        ("17½\"\"", length(35, 2, IN), 5),
        ("19\n in", length(19, 1, IN), 2),
    ] {
        assert_eq!(read(text), Ok((expected, end)), "{text:?}");
    }
    for (text, kind, span) in [
        ("", Kind::Empty, 0..0),
        ("from 17", Kind::NotANumber, 0..4),
        ("17 9/8 from", Kind::ImproperFraction, 0..6),
        ("5 3 from", Kind::TwoNumbers, 0..3),
        ("5 - 3/8 from", Kind::DashReadings, 0..7),
        ("1,250 mm", Kind::CommaReadings, 0..5),
        ("17abc", Kind::UnknownUnit, 2..5),
        ("17 and 5/8 from", Kind::UnknownUnit, 3..6),
        ("5 eighths from", Kind::UnknownUnit, 2..9),
        ("3″-a", Kind::Trailing, 4..6),
        ("½X", Kind::UnknownUnit, 2..3),
        ("6 foot two from", Kind::Trailing, 7..10),
        ("3 km of fence", Kind::UnknownUnit, 2..4),
        ("24\" 36\"", Kind::RepeatedUnit, 6..7),
        ("12-04-08 x", Kind::FeetInchesSixteenths, 0..8),
        ("36-twelve", Kind::Trailing, 2..9),
        ("17 & 5/8 from", Kind::Trailing, 3..4),
        ("1/2 an inch", Kind::UnknownUnit, 4..6),
        ("1/2 an, foot", Kind::UnknownUnit, 4..6),
        ("1/2 of an, foot", Kind::UnknownUnit, 4..6),
    ] {
        let error = read(text).expect_err(text);
        assert_eq!((error.kind(), error.span()), (kind, span), "{text:?}");
    }
}

#[test]
fn all_lengths_in_a_running_text() {
    // An invented message from the pottery studio's ware room.
    let note = "Hi! 6 shelves at 34 9/16, ripped to 11-1/32\" (the 2x4s are 8 ft.), 3 bays. Gap ½\" at the back; \
                back is 34¾ × 5'-7 15/16\", drawn 3/4/26 as 1,250 mm. Pins 32 mm apart from -1/2 in, see p. 3-5. 17 9/8 is wrong.";
    let found: Vec<_> = LengthParser::new().find_iter(note).collect();
    let lengths: Vec<_> = found.iter().flatten().map(|found| (found.length(), &note[found.span()])).collect();
    assert_eq!(
        lengths,
        [
            (length(553, 16, IN), "34 9/16"),
            (length(353, 32, IN), "11-1/32\""),
            (length(8, 1, FT), "8 ft."),
            (length(1, 2, IN), "½\""),
            (length(139, 4, IN), "34¾"),
            (length(1087, 16, IN), "5'-7 15/16\""),
            (length(32, 1, MM), "32 mm"),
            (length(-1, 2, IN), "-1/2 in"),
        ]
    );
    let errors: Vec<_> =
        found.iter().filter_map(|found| found.as_ref().err()).map(|error| (error.kind(), &note[error.span()])).collect();
    assert_eq!(errors, [(Kind::CommaReadings, "1,250"), (Kind::ImproperFraction, "17 9/8")]);
}

#[test]
fn lengths_next_to_other_things() {
    let found = |text: &'static str| -> Vec<&'static str> {
        LengthParser::new().find_iter(text).filter_map(Result::ok).map(|found| &text[found.span()]).collect()
    };
    for (text, lengths) in [
        ("about 5'6 or 6'-2", &["5'6", "6'-2"][..]),
        ("Side 34 1/2 16 1/4", &["34 1/2", "16 1/4"]),
        ("34 1/2\t16 1/4\t3/4", &["34 1/2", "16 1/4", "3/4"]),
        ("Shelf 34 1/2 2 pcs", &["34 1/2"]),
        ("24\"x36\" door; 1/2\" overlay", &["24\"", "36\"", "1/2\""]),
        ("3/4\"T x 11 1/4\"W", &["3/4\"", "11 1/4\""]),
        ("16\"o.c.", &["16\""]),
        ("12mm/18mm ply", &["12mm", "18mm"]),
        ("2x4-92 5/8\" studs", &[]),
        ("strip w/2in lap", &[]),
        ("rail-3/4\" lap", &[]),
        ("A24\" shelf", &[]),
        ("two  3/4\" shelves", &["3/4\""]),
        ("12 / -3/4", &["-3/4"]),
        ("board_foot_table_2in.csv", &[]),
        ("9 1/x3 in", &[]),
        ("34 1/2/16 1/4", &[]),
        ("cut at 48 and 7/16, twice", &["48 and 7/16"]),
        ("17 and 5 eighths from the left", &["17 and 5 eighths"]),
        ("Panel 600x300x18mm and rail 24 1/2", &["18mm", "24 1/2"]),
        ("1m20 high", &["1m20"]),
        ("5 16ths from the end", &["5 16ths"]),
        ("9 & a half inches", &["9 & a half inches"]),
        ("called \"17½\"\" twice", &["17½\""]),
        ("8 ft above the floor, 16\" over the sink", &["8 ft", "16\""]),
    ] {
        assert_eq!(found(text), lengths, "{text:?}");
    }
}

#[test]
fn running_text_without_lengths() {
    for text in
        ["", "no lengths here", "6 shelves, 3 bays, 2.5 times", "on 3/4/26", "pages 3-5", "a 2x4", "42", "v1.2.3", "½x", "é½é"]
    {
        let found: Vec<_> = LengthParser::new().find_iter(text).collect();
        assert!(found.len() <= usize::from(text.contains('½')), "{text:?}: {found:?}");
    }
}

#[test]
fn shorthands() {
    use Shorthand::{FeetInches, FeetInchesSixteenths, InchesSixteenths};
    for (mode, text, expected) in [
        (FeetInchesSixteenths, "12-04-08", length(297, 2, IN)),
        (FeetInchesSixteenths, "120408", length(297, 2, IN)),
        (FeetInchesSixteenths, "120408.", length(297, 2, IN)),
        (FeetInchesSixteenths, "60408", length(153, 2, IN)),
        (FeetInchesSixteenths, "1000101", length(19217, 16, IN)),
        (FeetInchesSixteenths, "-12-04-08 .", length(-297, 2, IN)),
        (FeetInchesSixteenths, "121103", length(2483, 16, IN)),
        (FeetInchesSixteenths, "-121103", length(-2483, 16, IN)),
        (FeetInchesSixteenths, "-12-11-03", length(-2483, 16, IN)),
        (FeetInchesSixteenths, "+12-11-03", length(2483, 16, IN)),
        (FeetInchesSixteenths, "9223372036854775808-00-00", length(i64::MAX, 1, FT) + length(1, 1, FT)),
        (FeetInchesSixteenths, "25-0-14", length(2407, 8, IN)),
        (FeetInchesSixteenths, "25–0–14", length(2407, 8, IN)),
        (FeetInchesSixteenths, "25\u{2010}0\u{2011}14", length(2407, 8, IN)),
        (FeetInchesSixteenths, "minus 25-0-14", length(-2407, 8, IN)),
        (FeetInchesSixteenths, "minus 120408", length(-297, 2, IN)),
        (FeetInchesSixteenths, "31-1-11", length(5979, 16, IN)),
        (FeetInchesSixteenths, " 00001 ", length(1, 16, IN)),
        (FeetInchesSixteenths, "6'-3 1/2\"", length(151, 2, IN)),
        (FeetInchesSixteenths, "72\"", length(72, 1, IN)),
        (FeetInches, "3-0", length(36, 1, IN)),
        (FeetInches, "2-6", length(30, 1, IN)),
        (FeetInches, "17-5/8", length(141, 8, IN)),
        (InchesSixteenths, "36-12", length(147, 4, IN)),
        (InchesSixteenths, "36-12 ", length(147, 4, IN)),
        (InchesSixteenths, "36", length(36, 1, IN)),
        (FeetInches, "three-oh", length(36, 1, IN)),
        (FeetInches, "Two six.", length(30, 1, IN)),
        (InchesSixteenths, "36-twelve", length(147, 4, IN)),
        (InchesSixteenths, "36-fifteen", length(591, 16, IN)),
        (FeetInches, "two-eleven", length(35, 1, IN)),
        (InchesSixteenths, "36-twelve and a half", length(1177, 32, IN)),
        (InchesSixteenths, "thirty-six eleven", length(587, 16, IN)),
    ] {
        assert_eq!(LengthParser::new().shorthand(mode).parse(text), Ok(expected), "{text:?}");
    }
    for (mode, text, kind, span) in [
        (FeetInchesSixteenths, "12-04-16", Kind::FieldTooLarge, 6..8),
        (FeetInchesSixteenths, "12-12-08", Kind::FieldTooLarge, 3..5),
        (FeetInchesSixteenths, "121203", Kind::FieldTooLarge, 2..4),
        (FeetInchesSixteenths, "72", Kind::PackedTooShort, 0..2),
        (FeetInchesSixteenths, "1198", Kind::PackedTooShort, 0..4),
        (FeetInchesSixteenths, "12-04", Kind::JoinedNumbers, 0..5),
        (FeetInches, "2-12", Kind::FieldTooLarge, 2..4),
        (FeetInches, "999999999999999999999999-0", Kind::TooLarge, 0..24),
        (FeetInches, "9999999999999999999999999999999999999999-0", Kind::TooLarge, 0..40),
        (InchesSixteenths, "36-16", Kind::FieldTooLarge, 3..5),
        (InchesSixteenths, "36-sixteen", Kind::FieldTooLarge, 0..10),
        (FeetInches, "two-twelve", Kind::FieldTooLarge, 0..10),
        (FeetInches, "2–12", Kind::FieldTooLarge, 4..6),
        (FeetInches, "plus.", Kind::NotANumber, 0..5),
        (FeetInches, "minus-two-six", Kind::CrewCode, 6..13),
        (FeetInchesSixteenths, "minus-25-0-14", Kind::NotANumber, 0..13),
        (FeetInchesSixteenths, "72.", Kind::PackedTooShort, 0..2),
    ] {
        let error = LengthParser::new().shorthand(mode).parse(text).expect_err(text);
        assert_eq!((error.kind(), error.span()), (kind, span), "{text:?}");
    }
}

#[test]
fn a_crew_that_calls_sixteenths_calls_them_strong_and_shy() {
    // Field notes of one crew: a half is 1/32, strong and shy are 1/64. Common practice, no source.
    let crew = LengthParser::new().shorthand(Shorthand::InchesSixteenths);
    let called = |text: &str| crew.parse_called(text).unwrap().checked_length(length(1, 64, IN));
    assert_eq!(called("36-twelve strong"), Some(length(2353, 64, IN)));
    assert_eq!(called("36-thirteen shy"), Some(length(2355, 64, IN)));
}

#[test]
fn how_a_length_was_written() {
    for (text, first, last, mark, precision) in [
        ("6'-3 1/2\"", Some(FT), Some(IN), UnitMark::Quote, Precision::Fraction(2)),
        ("6′ 3″", Some(FT), Some(IN), UnitMark::Prime, Precision::Whole),
        ("6 ft 3", Some(FT), None, UnitMark::Word, Precision::Whole),
        ("17 6/16", None, None, UnitMark::None, Precision::Fraction(16)),
        ("17½", None, None, UnitMark::None, Precision::Fraction(2)),
        ("17.50 in", Some(IN), Some(IN), UnitMark::Word, Precision::Decimals(2)),
        ("five eighths", None, None, UnitMark::None, Precision::Spoken),
        ("2 fifths", None, None, UnitMark::None, Precision::Spoken),
        ("2fifths", None, None, UnitMark::None, Precision::Spoken),
        ("365mm", Some(MM), Some(MM), UnitMark::Word, Precision::Whole),
    ] {
        let (_, written) = LengthParser::new().parse_written(text).unwrap();
        assert_eq!(
            (written.first_unit(), written.last_unit(), written.mark(), written.precision()),
            (first, last, mark, precision),
            "{text:?}"
        );
    }
}

/// Figures in front of words are no reading of the whole, even where they come to the same length.
#[test]
fn figures_before_words_do_not_say_how_it_was_written() {
    let (length, written) = LengthParser::new().default_unit(FT).parse_written("½ a foot").unwrap();
    assert_eq!((length, written.precision()), (Length::new(6, IN), Precision::Spoken));
}

#[test]
fn how_a_shorthand_was_written() {
    use Shorthand::{FeetInches, FeetInchesSixteenths, InchesSixteenths};
    for (mode, text, unit, precision) in [
        (FeetInchesSixteenths, "12-04-08", FT, Precision::Fraction(16)),
        (FeetInchesSixteenths, "120408", FT, Precision::Fraction(16)),
        (FeetInches, "2-6", FT, Precision::Whole),
        (InchesSixteenths, "36-12", IN, Precision::Fraction(16)),
        (FeetInches, "two-six", FT, Precision::Spoken),
        (FeetInches, "minus 2-6", FT, Precision::Spoken),
        (FeetInches, "17-5/8", IN, Precision::Fraction(8)),
    ] {
        let (_, written) = LengthParser::new().shorthand(mode).parse_written(text).unwrap();
        let found = (written.unit(), written.first_unit(), written.precision(), written.warning());
        assert_eq!(found, (Some(unit), None, precision, None), "{text:?}");
    }
}

/// Each warning: texts that raise it, and near ones that do not.
#[test]
fn suspicious_texts() {
    let warning =
        |text: &str| LengthParser::new().parse_written(text).unwrap_or_else(|error| panic!("{text:?}: {error}")).1.warning();
    for (expected, raising, quiet) in [
        (Warning::LostBlank, ["13/4", "31⁄2", "17/16 in"], ["1 3/4", "¹³⁄₄", "83/128"]),
        (Warning::LostBar, ["34 \"", "1516 ″", "16413"], ["34\"", "6' 00003", "16413 in"]),
        (Warning::DecimalFeet, ["5.6'", "5.11 ft", "10.8 ft"], ["5.25'", "5.6 in", "5' 6\""]),
        (Warning::FootOfInches, ["6'13", "5'-72", "2 ft 36 1/2 in"], ["6'11 63/64", "72", "13 ft 6 in"]),
    ] {
        for text in raising {
            assert_eq!(warning(text), Some(expected), "{text:?}");
        }
        for text in quiet {
            assert_eq!(warning(text), None, "{text:?}");
        }
    }
    let millimeters = LengthParser::new().default_unit(MM);
    assert_eq!(millimeters.parse_written("12000").unwrap().1.warning(), None);
}

#[test]
fn spans_stay_inside_the_text() {
    let pieces = ["1", "½", "/", "-", " ", "'", "\"", ",", ".", "x", "ft", "mm", "é", "−", "(", "a"];
    for text in of_four(&pieces) {
        let mut end = 0;
        for found in LengthParser::new().find_iter(&text) {
            let span: Range<usize> = found.map_or_else(|error| error.span(), |found| found.span());
            assert!(text.get(span.clone()).is_some() && span.start >= end, "{text:?}");
            end = span.end;
        }
        if let Ok((_, end)) = LengthParser::new().parse_prefix(&text) {
            assert!(text.is_char_boundary(end), "{text:?}");
        }
    }
}
