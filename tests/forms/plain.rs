//! Lengths as plain numbers of a stated unit: exact on both ways, or refused. The rule stands in the
//! documentation of `scantling::serde`.
use crate::support::Any;
use scantling::serde::{centimeters, feet, inches, meters, millimeters, yards};
use scantling::{Length, Unit};
use serde::{Deserialize, Serialize};
use serde_json::value::Serializer as Tree;
use serde_json::{Value, json};

type Json<T> = Result<T, serde_json::Error>;

fn written(length: Length, unit: Unit) -> Json<Value> {
    match unit {
        Unit::Inch => inches::serialize(&length, Tree),
        Unit::Foot => feet::serialize(&length, Tree),
        Unit::Yard => yards::serialize(&length, Tree),
        Unit::Millimeter => millimeters::serialize(&length, Tree),
        Unit::Centimeter => centimeters::serialize(&length, Tree),
        Unit::Meter => meters::serialize(&length, Tree),
    }
}

fn read(json: &str, unit: Unit) -> Json<Length> {
    let mut reader = serde_json::Deserializer::from_str(json);
    match unit {
        Unit::Inch => inches::deserialize(&mut reader),
        Unit::Foot => feet::deserialize(&mut reader),
        Unit::Yard => yards::deserialize(&mut reader),
        Unit::Millimeter => millimeters::deserialize(&mut reader),
        Unit::Centimeter => centimeters::deserialize(&mut reader),
        Unit::Meter => meters::deserialize(&mut reader),
    }
}

const IN: Unit = Unit::Inch;
const FT: Unit = Unit::Foot;
const YD: Unit = Unit::Yard;
const MM: Unit = Unit::Millimeter;
const CM: Unit = Unit::Centimeter;
const M: Unit = Unit::Meter;

#[test]
fn exact_on_both_ways() {
    // Worked by hand.
    for (length, unit, json) in [
        (Length::new(365, MM), MM, "365"),
        (Length::new(365, MM), CM, "36.5"),
        (Length::new(365, MM), M, "0.365"),
        (Length::fraction(181, 10, MM), MM, "18.1"),
        (Length::fraction(3, 10, MM), MM, "0.3"),
        (Length::fraction(141, 8, IN), IN, "17.625"),
        (Length::fraction(-141, 8, IN), IN, "-17.625"),
        (Length::fraction(1, 64, IN), IN, "0.015625"),
        (Length::fraction(1, 64, IN), MM, "0.396875"),
        (Length::fraction(1, 1 << 21, IN), IN, "4.76837158203125e-7"),
        (Length::new(63, IN), FT, "5.25"),
        (Length::new(54, IN), YD, "1.5"),
        (Length::new(72, IN), MM, "1828.8"),
        (Length::ZERO, MM, "0"),
        (Length::new(-12, IN), FT, "-1"),
        (Length::fraction(123_456_789_012_345, 1_000_000, MM), MM, "123456789.012345"),
        (Length::fraction(999_999_999_999_999, 10, MM), MM, "99999999999999.9"),
        (Length::fraction(1, 1_000_000_000_000_000_000, MM), MM, "1e-18"),
        (Length::new(i64::MAX, MM), MM, "9223372036854775807"),
        (Length::new(i64::MIN, MM), MM, "-9223372036854775808"),
        (Length::new(1_000_000_000_000_000_000, M), MM, "1e21"),
    ] {
        assert_eq!(written(length, unit).unwrap(), serde_json::from_str::<Value>(json).unwrap());
        assert_eq!(read(json, unit).unwrap(), length, "{json}");
    }
}

#[test]
fn read_though_never_written_so() {
    for (json, unit, length) in [
        ("365.0", MM, Length::new(365, MM)),
        ("3.65e2", MM, Length::new(365, MM)),
        ("-0.0", MM, Length::ZERO),
        ("-0", MM, Length::ZERO),
        ("0.10", IN, Length::fraction(1, 10, IN)),
        ("18446744073709551615", MM, Length::new(i64::MAX, MM) * 2 + Length::new(1, MM)),
        ("1E2", IN, Length::new(100, IN)),
    ] {
        assert_eq!(read(json, unit).unwrap(), length, "{json}");
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn refused_on_the_way_out() {
    for (length, unit, message) in [
        (Length::fraction(1, 3, IN), IN, "1/3\" does not come out even in inches: a plain number never rounds, so round it first, or store it as text"),
        (Length::new(1, MM), IN, "5/127\" does not come out even in inches: a plain number never rounds, so round it first, or store it as text"),
        (Length::new(1, IN), YD, "1\" does not come out even in yards: a plain number never rounds, so round it first, or store it as text"),
        (Length::fraction(1_234_567_890_123_456, 10, MM), MM, "4860503504423 7/127\" has more digits in millimeters than a plain number keeps, which is 15: round it first, or store it as text"),
        (Length::fraction(1, 1 << 22, IN), IN, "1/4194304\" has more digits in inches than a plain number keeps, which is 15: round it first, or store it as text"),
        (Length::fraction(1, 1 << 63, IN), IN, "1/9223372036854775808\" has more digits in inches than a plain number keeps, which is 15: round it first, or store it as text"),
        (Length::new(i64::MAX, MM) + Length::new(2, MM), MM, "363124883340739205 10/127\" has more digits in millimeters than a plain number keeps, which is 15: round it first, or store it as text"),
    ] {
        assert_eq!(written(length, unit).unwrap_err().to_string(), message);
    }
    assert!(written(Length::MAX, IN).is_err());
}

#[test]
#[rustfmt::skip] // one line a case
fn refused_on_the_way_in() {
    for (json, message) in [
        ("0.30000000000000004", "invalid value: floating point `0.30000000000000004`, expected a number of millimeters with at most 15 digits"),
        ("17.299999237060547", "invalid value: floating point `17.299999237060547`, expected a number of millimeters with at most 15 digits"),
        ("1234567890.123456", "invalid value: floating point `1234567890.123456`, expected a number of millimeters with at most 15 digits"),
        ("\"365\"", "invalid type: string \"365\", expected a number of millimeters with at most 15 digits"),
        ("\"365 mm\"", "invalid type: string \"365 mm\", expected a number of millimeters with at most 15 digits"),
        ("null", "invalid type: null, expected a number of millimeters with at most 15 digits"),
        ("true", "invalid type: boolean `true`, expected a number of millimeters with at most 15 digits"),
        ("[365]", "invalid type: sequence, expected a number of millimeters with at most 15 digits"),
        ("{}", "invalid type: map, expected a number of millimeters with at most 15 digits"),
        ("1e30", "no length holds this number of millimeters: it is longer, or more finely divided"),
        ("-1e300", "no length holds this number of millimeters: it is longer, or more finely divided"),
        ("1e400", "number out of range"),
    ] {
        let error = read(json, MM).unwrap_err().to_string();
        // Which place in the JSON is blamed is the format's own affair.
        assert_eq!(error.split(" at line ").next(), Some(message), "{json}");
    }
}

#[test]
fn floats_that_are_no_length_in_compact_formats() {
    for float in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, f64::MAX, f64::MIN_POSITIVE, 5e-324, 1e-30, 0.1 + 0.2] {
        let bytes = postcard::to_allocvec(&float).unwrap();
        let mut reader = postcard::Deserializer::from_bytes(&bytes);
        assert_eq!(millimeters::deserialize(&mut reader).unwrap_err(), postcard::Error::SerdeDeCustom, "{float}");
    }
}

#[test]
fn the_neighbor_of_a_decimal_is_refused() {
    for (digits, places) in [(181, 1), (999_999_999_999_999, 3), (1, 18), (100_000_000_000_001, 0), (3, 1)] {
        let float: f64 = format!("{digits}e-{places}").parse().unwrap();
        assert_eq!(read_float(float).unwrap(), Length::fraction(digits, 10_u64.pow(places), MM));
        for neighbor in [float.to_bits() + 1, float.to_bits() - 1].map(f64::from_bits) {
            assert!(read_float(neighbor).is_err(), "{neighbor}");
        }
    }
}

fn read_float(float: f64) -> Result<Length, serde::de::value::Error> {
    millimeters::deserialize(serde::de::IntoDeserializer::into_deserializer(float))
}

#[derive(Debug, PartialEq, Serialize, Deserialize)]
struct Part {
    #[serde(with = "scantling::serde::millimeters")]
    width: Length,
    #[serde(with = "scantling::serde::inches::option")]
    reveal: Option<Length>,
    #[serde(default, skip_serializing_if = "Option::is_none", with = "scantling::serde::feet::option")]
    run: Option<Length>,
    dado: Length,
}

#[test]
fn fields_of_a_record() {
    let mut part = Part { width: Length::new(365, MM), reveal: None, run: None, dado: Length::fraction(3, 8, IN) };
    let json = r#"{"width":365,"reveal":null,"dado":"3/8 in"}"#;
    assert_eq!(serde_json::to_string(&part).unwrap(), json);
    assert_eq!(serde_json::from_str::<Part>(json).unwrap(), part);

    (part.reveal, part.run) = (Some(Length::fraction(1, 8, IN)), Some(Length::new(63, IN)));
    let json = r#"{"width":365,"reveal":0.125,"run":5.25,"dado":"3/8 in"}"#;
    assert_eq!(serde_json::to_string(&part).unwrap(), json);
    assert_eq!(serde_json::from_str::<Part>(json).unwrap(), part);
    let error = serde_json::from_str::<Part>(r#"{"width":365,"dado":"3/8 in"}"#).unwrap_err();
    assert!(error.to_string().starts_with("missing field `reveal`"), "{error}");
    let error = serde_json::from_str::<Part>(r#"{"width":365,"reveal":"1/8 in"}"#).unwrap_err();
    let message = "invalid type: string \"1/8 in\", expected a number of inches with at most 15 digits";
    assert!(error.to_string().starts_with(message), "{error}");
}

#[test]
fn a_float_in_compact_formats() {
    #[derive(Debug, PartialEq, Serialize, Deserialize)]
    struct Width(#[serde(with = "scantling::serde::millimeters")] Length);

    for (length, float) in [(Length::new(365, MM), 365.0), (Length::fraction(181, 10, MM), 18.1)] {
        let bytes = postcard::to_allocvec(&Width(length)).unwrap();
        assert_eq!(bytes, f64::to_le_bytes(float));
        assert_eq!(postcard::from_bytes::<Width>(&bytes).unwrap(), Width(length));
        let mut named = Vec::new();
        ciborium::into_writer(&Width(length), &mut named).unwrap();
        assert_eq!(ciborium::from_reader::<Width, _>(&*named).unwrap(), Width(length));
    }
    let error = postcard::to_allocvec(&Width(Length::new(i64::MAX, MM))).unwrap_err();
    assert_eq!(error, postcard::Error::SerdeSerCustom);
}

#[test]
fn through_a_tree_and_a_flattened_record() {
    #[derive(Debug, PartialEq, Serialize, Deserialize)]
    struct Shelf {
        name: String,
        #[serde(flatten)]
        part: Part,
    }

    let part = Part { width: Length::fraction(181, 10, MM), reveal: Some(Length::new(1, IN)), run: None, dado: Length::ZERO };
    let shelf = Shelf { name: "glaze".to_owned(), part };
    let tree = json!({"name": "glaze", "width": 18.1, "reveal": 1, "dado": "0 in"});
    assert_eq!(serde_json::to_value(&shelf).unwrap(), tree);
    assert_eq!(serde_json::from_value::<Shelf>(tree).unwrap(), shelf);
}

properties! {
    fn what_is_written_is_read_back(any: Any) -> bool {
        Unit::ALL.into_iter().all(|unit| match written(any.0, unit) {
            Ok(number) => read(&number.to_string(), unit).unwrap() == any.0,
            Err(_) => true,
        })
    }

    fn every_decimal_of_fifteen_digits_is_exact(digits: i64, places: u32) -> bool {
        let (digits, places) = (digits % 1_000_000_000_000_000, places % 16);
        let length = Length::fraction(digits, 10_u64.pow(places), MM);
        let json = format!("{digits}e-{places}");
        let number = written(length, MM).unwrap();
        read(&json, MM).unwrap() == length && read(&number.to_string(), MM).unwrap() == length
    }
}
