//! Lengths one a line: which lines are read, what is said of one that is not, and where it stands. Lengths by hand.
use scantling::{Comma, Length, LengthParser, LineError, ParseErrorKind, Unit};

const EIGHTH: Length = Length::fraction(1, 8, Unit::Inch);

fn inches(count: i64) -> Length {
    Length::new(count, Unit::Inch)
}

#[test]
fn every_line_with_something_on_it_is_a_length() {
    let cases: [(&str, &[Length]); 9] = [
        ("", &[]),
        ("\n\r\n \t\n", &[]),
        ("17", &[inches(17)]),
        ("17\n", &[inches(17)]),
        ("17\r\n6'-3\"\r\n", &[inches(17), inches(75)]),
        ("17\n\n1/8\n", &[inches(17), EIGHTH]),
        ("  1/8  \n\t34\n", &[EIGHTH, inches(34)]),
        ("1⅛\n1 ft 2 in", &[inches(1) + EIGHTH, inches(14)]),
        ("six foot two\n365 mm\n", &[inches(74), Length::new(365, Unit::Millimeter)]),
    ];
    for (text, lengths) in cases {
        let read: Result<Vec<Length>, LineError> = LengthParser::new().parse_lines(text).collect();
        assert_eq!(read.as_deref(), Ok(lengths), "{text:?}");
        let mut list = vec![EIGHTH];
        assert_eq!(LengthParser::new().parse_lines_into(text, &mut list), Ok(()));
        assert_eq!(&list[1..], lengths, "{text:?}");
    }
}

#[test]
fn a_line_that_is_not_read_is_placed_in_the_whole_text() {
    let cases = [
        ("17 9/8", 1, 0..6, ParseErrorKind::ImproperFraction, "17 9/8"),
        ("17\r\n\r\n⅝\n5 1/0\r\n34", 4, 10..15, ParseErrorKind::ZeroDenominator, "5 1/0"),
        ("1/2\n\n\n12 furlongs\n", 4, 9..17, ParseErrorKind::UnknownUnit, "furlongs"),
        ("1/2\n3/", 2, 4..6, ParseErrorKind::MissingDenominator, "3/"),
    ];
    for (text, line, span, kind, found) in cases {
        let errors: Vec<LineError> = LengthParser::new().parse_lines(text).filter_map(Result::err).collect();
        let [error] = errors[..] else { panic!("{text:?}: {errors:?}") };
        assert_eq!((error.line(), error.span(), error.error().kind()), (line, span.clone(), kind), "{text:?}");
        assert_eq!((&text[span], error.to_string()), (found, format!("line {line}: {}", error.error())));
    }
}

#[test]
fn an_error_ends_nothing_but_leaves_a_list_as_it_was() {
    let text = "1/8\n1/0\n3\n#\n4";
    let lines: Vec<_> = LengthParser::new().parse_lines(text).map(|line| line.map_err(|error| error.line())).collect();
    assert_eq!(lines, [Ok(EIGHTH), Err(2), Ok(inches(3)), Err(4), Ok(inches(4))]);
    let mut list = vec![inches(7)];
    assert_eq!(LengthParser::new().parse_lines_into(text, &mut list).map_err(|error| error.line()), Err(2));
    assert_eq!(list, [inches(7)]);
}

#[test]
fn a_line_is_read_as_the_parser_was_told_to() {
    let catalog = LengthParser::new().default_unit(Unit::Millimeter).comma(Comma::Decimal);
    let read: Vec<_> = catalog.parse_lines("12,5\n1.250,5\n").filter_map(Result::ok).collect();
    assert_eq!(read, [Length::fraction(25, 2, Unit::Millimeter), Length::fraction(2501, 2, Unit::Millimeter)]);
}
