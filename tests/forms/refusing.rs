//! What is not taken in, one line a case, with the whole message. What is stands in `stored.rs`.
use std::fmt::Debug;

use ciborium::Value;
use scantling::{
    Area, Called, Dimension, Edge, End, Length, Mark, Money, Nominal, ParseErrorKind, Price, Reading, RoundingMode, Row, Size,
    StoryPole, Tape, Toleranced, Unit, Volume,
};
use serde::de::DeserializeOwned;

#[track_caller]
fn refuses<T: DeserializeOwned + Debug>(rows: &[(&str, &str)]) {
    for (json, message) in rows {
        let error = serde_json::from_str::<T>(json).expect_err(json).to_string();
        // Which place in the JSON is blamed is the format's own affair.
        assert_eq!(error.split(" at line ").next(), Some(*message), "{json}");
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn lengths() {
    refuses::<Length>(&[
        ("17", "invalid type: integer `17`, expected a length with its unit, such as \"17 5/8 in\""),
        ("17.5", "invalid type: floating point `17.5`, expected a length with its unit, such as \"17 5/8 in\""),
        ("null", "invalid type: null, expected a length with its unit, such as \"17 5/8 in\""),
        ("true", "invalid type: boolean `true`, expected a length with its unit, such as \"17 5/8 in\""),
        ("[87,5]", "invalid type: sequence, expected a length with its unit, such as \"17 5/8 in\""),
        ("{\"in\":17}", "invalid type: map, expected a length with its unit, such as \"17 5/8 in\""),
        ("\"17\"", "a number without a unit: found `17` at bytes 0..2, expected a unit behind the number; write the unit, as in 17 5/8 in"),
        ("\"0\"", "a number without a unit: found `0` at bytes 0..1, expected a unit behind the number; write the unit, as in 17 5/8 in"),
        ("\"-5/8\"", "a number without a unit: found `-5/8` at bytes 0..4, expected a unit behind the number; write the unit, as in 17 5/8 in"),
        ("\" 17 5/8 \"", "a number without a unit: found `17 5/8` at bytes 1..7, expected a unit behind the number; write the unit, as in 17 5/8 in"),
        ("\"seventeen\"", "a number without a unit: found `seventeen` at bytes 0..9, expected a unit behind the number; write the unit, as in 17 5/8 in"),
        ("\"\"", "no length: found nothing at bytes 0..0, expected a length such as 17 5/8 or 6'-3\""),
        ("\"1/0 in\"", "a fraction over zero: found `1/0` at bytes 0..3, expected a number above zero below the line; check the number below the line"),
        ("\"0/0 in\"", "a fraction over zero: found `0/0` at bytes 0..3, expected a number above zero below the line; check the number below the line"),
        ("\"17 9/8 in\"", "a fraction part of one or more: found `17 9/8` at bytes 0..6, expected a fraction below one behind the whole number; write 18 1/8"),
        ("\"1/-2 in\"", "half a fraction: found `1/` at bytes 0..2, expected a number below the line; write the fraction out, as in 3/8"),
        ("\"17 furlongs\"", "an unknown unit: found `furlongs` at bytes 3..11, expected in, ft, yd, mm, cm or m"),
        ("\"17 in 3\"", "a number behind a finished length: found `3` at bytes 6..7, expected the end of the length, or a unit behind the number; put a fraction before its unit, as in 3 1/2 in; a slope is not a length"),
        ("\"5\\u0000 in\"", "something behind the length: found `\\0` at bytes 1..2, expected the end of the length"),
        ("\"1,250 mm\"", "a comma with two readings: found `1,250` at bytes 0..5, expected digits without a comma; this is 1250 if the comma groups thousands, 1.250 if it is a decimal comma: write it so, or say which a comma is"),
        ("\"99999999999999999999999999 in\"", "a number too large to hold: found `999999999999999999999…` at bytes 0..26, expected fewer digits"),
        ("\"1/340282366920938463463374607431768211455 in\"", "a number too fine to hold exactly: found `1/3402823669209384634…` at bytes 0..41, expected fewer decimals or a smaller denominator"),
    ]);
}

#[test]
fn the_message_of_the_parser_is_kept() {
    for text in ["17 9/8 in", "1/0", "2x4", "12-04-08", "17 5/8 strong", "5 - 3/8", "1 m 3 in"] {
        let parsed = text.parse::<Length>().unwrap_err();
        let tree = serde_json::Value::from(text);
        assert_eq!(serde_json::from_value::<Length>(tree).unwrap_err().to_string(), parsed.to_string());
    }
    assert_eq!(scantling::LengthParser::new().parse_with_unit("17").unwrap_err().kind(), ParseErrorKind::NoUnit);
}

#[test]
#[rustfmt::skip] // one line a case
fn areas_and_volumes() {
    refuses::<Area>(&[
        ("1872", "invalid type: integer `1872`, expected an area with its unit, such as \"1872 sq in\""),
        ("\"1872\"", "no unit of area: found nothing at bytes 4..4, expected sq in, sq ft, sq yd, sq mm, sq cm or sq m behind the number"),
        ("\"1872 in\"", "no unit of area: found `in` at bytes 5..7, expected sq in, sq ft, sq yd, sq mm, sq cm or sq m behind the number"),
        ("\"144 cu in\"", "no unit of area: found `cu in` at bytes 4..9, expected sq in, sq ft, sq yd, sq mm, sq cm or sq m behind the number"),
        ("\"1/0 sq in\"", "a fraction over zero: found `1/0` at bytes 0..3, expected a number above zero below the line; check the number below the line"),
    ]);
    refuses::<Volume>(&[
        ("144", "invalid type: integer `144`, expected a volume with its unit, such as \"144 cu in\""),
        ("\"144\"", "no unit of volume: found nothing at bytes 3..3, expected cu in, cu ft, cu yd, cu mm, cu cm or cu m behind the number"),
        ("\"144 sq in\"", "no unit of volume: found `sq in` at bytes 4..9, expected cu in, cu ft, cu yd, cu mm, cu cm or cu m behind the number"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn words() {
    refuses::<Unit>(&[
        ("\"inch\"", "unknown variant `inch`, expected one of `in`, `ft`, `yd`, `mm`, `cm`, `m`"),
        ("\"IN\"", "unknown variant `IN`, expected one of `in`, `ft`, `yd`, `mm`, `cm`, `m`"),
        ("0", "invalid type: integer `0`, expected a unit of length"),
        ("{\"in\":null}", "invalid type: map, expected a unit of length"),
    ]);
    refuses::<RoundingMode>(&[
        ("\"nearest\"", "unknown variant `nearest`, expected one of `ties up`, `ties even`, `ties away`, `down`, `up`, `toward zero`"),
        ("\"TiesUp\"", "unknown variant `TiesUp`, expected one of `ties up`, `ties even`, `ties away`, `down`, `up`, `toward zero`"),
        ("null", "invalid type: null, expected a rounding mode"),
    ]);
    refuses::<Edge>(&[("\"middle\"", "unknown variant `middle`, expected one of `near`, `center`, `far`")]);
}

#[test]
#[rustfmt::skip] // one line a case
fn ends() {
    refuses::<End>(&[
        ("\"margin\"", "an end with a margin has a length, and no other end has one"),
        ("\"half\"", "unknown variant `half`, expected one of `gap`, `half gap`, `flush`, `margin`"),
        ("\"2 in\"", "unknown variant `2 in`, expected one of `gap`, `half gap`, `flush`, `margin`"),
        ("2", "invalid type: integer `2`, expected an end of a run, such as \"half gap\" or {\"margin\":\"2 in\"}"),
        ("{}", "missing field `margin`"),
        ("{\"margin\":null}", "invalid type: null, expected a length with its unit, such as \"17 5/8 in\""),
        ("{\"margin\":2}", "invalid type: integer `2`, expected a length with its unit, such as \"17 5/8 in\""),
        ("{\"margin\":\"2\"}", "a number without a unit: found `2` at bytes 0..1, expected a unit behind the number; write the unit, as in 17 5/8 in"),
        ("{\"gap\":null}", "unknown field `gap`, expected `margin`"),
        ("{\"margin\":\"2 in\",\"flush\":null}", "unknown field `flush`, expected `margin`"),
        ("[3,\"2 in\"]", "invalid type: sequence, expected an end of a run, such as \"half gap\" or {\"margin\":\"2 in\"}"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn tapes() {
    refuses::<Tape>(&[
        (r#"{"step":"0 in","mode":"ties up","offset":"0 in","length":null}"#, "a tape cannot have a graduation every 0\": it must be above zero"),
        (r#"{"step":"-1/16 in","mode":"ties up","offset":"0 in","length":null}"#, "a tape cannot have a graduation every -1/16\": it must be above zero"),
        (r#"{"step":"1/0 in","mode":"ties up","offset":"0 in","length":null}"#, "a fraction over zero: found `1/0` at bytes 0..3, expected a number above zero below the line; check the number below the line"),
        (r#"{"step":"1/16","mode":"ties up","offset":"0 in","length":null}"#, "a number without a unit: found `1/16` at bytes 0..4, expected a unit behind the number; write the unit, as in 17 5/8 in"),
        (r#"{"step":null,"mode":"ties up","offset":"0 in","length":null}"#, "invalid type: null, expected a length with its unit, such as \"17 5/8 in\""),
        (r#"{"mode":"ties up","offset":"0 in","length":null}"#, "missing field `step`"),
        (r#"{"step":"1/16 in","offset":"0 in"}"#, "missing field `mode`"),
        (r#"{"step":"1/16 in","mode":"ties up"}"#, "missing field `offset`"),
        (r#"{"step":"1/16 in","mode":"ties up","offset":"0 in","end":null}"#, "unknown field `end`, expected one of `step`, `mode`, `offset`, `length`"),
        (r#"{"step":"1/16 in","mode":"ties up","offset":"0 in","step":"1/16 in"}"#, "duplicate field `step`"),
        (r#"["1/16 in","ties up","0 in",null]"#, "invalid type: sequence, expected a tape"),
        (r#""1/16 in""#, "invalid type: string \"1/16 in\", expected a tape"),
        ("null", "invalid type: null, expected a tape"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn readings() {
    refuses::<Reading>(&[
        (r#"{"mark":"14 3/8 in","shown":"14 3/8 in","leftover":"1/40 in","lean":"strong","true_position":"14 1/2 in"}"#, "a reading has a mark at 14 3/8\" and a leftover of 1/40\", which do not make its true position of 14 1/2\""),
        (r#"{"mark":"14 3/8 in","shown":"14 3/8 in","leftover":"1/40 in","lean":"shy","true_position":"14 2/5 in"}"#, "a reading with a leftover of 1/40\" is strong, not shy"),
        (r#"{"mark":"14 3/8 in","shown":"14 3/8 in","leftover":"-1/40 in","lean":"dead on","true_position":"14 7/20 in"}"#, "a reading with a leftover of -1/40\" is shy, not dead on"),
        (r#"{"mark":"12 in","shown":"12 in","leftover":"0 in","lean":"strong","true_position":"12 in"}"#, "a reading with a leftover of 0\" is dead on, not strong"),
        (r#"{"mark":"12 in","shown":"12 in","leftover":"0 in","lean":"dead on"}"#, "missing field `true_position`"),
        (r#"{"mark":"3000000000000000000000000 in","shown":"-3000000000000000000000000 in","leftover":"0 in","lean":"dead on","true_position":"3000000000000000000000000 in"}"#, "a reading that shows -3000000000000000000000000\" at 3000000000000000000000000\" is of a tape with an offset that cannot be held"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn sizes() {
    refuses::<Dimension>(&[
        (r#"{"length":"24 in","axis":"W"}"#, "unknown variant `W`, expected one of `thickness`, `width`, `length`, `height`, `depth`"),
        (r#"{"axis":"width"}"#, "missing field `length`"),
        (r#"{"length":"24 in","axis":null,"unit":"in"}"#, "unknown field `unit`, expected `length` or `axis`"),
    ]);
    refuses::<Size>(&[
        ("[]", "invalid length 0, expected a size of two or three dimensions"),
        (r#"[{"length":"24 in"}]"#, "invalid length 1, expected a size of two or three dimensions"),
        (r#"[{"length":"1 in"},{"length":"2 in"},{"length":"3 in"},{"length":"4 in"}]"#, "invalid length 4, expected a size of two or three dimensions"),
        (r#"[{"length":"24 in","axis":"width"},{"length":"36 in","axis":"width"}]"#, "a size has two lengths along its width"),
        (r#"["24 in","36 in"]"#, "invalid type: string \"24 in\", expected a dimension"),
        (r#""24 x 36 in""#, "invalid type: string \"24 x 36 in\", expected a size of two or three dimensions"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn stock_and_prices() {
    refuses::<Nominal>(&[
        (r#"{"stock":"softwood","thickness":"2 in"}"#, "a piece of softwood lacks a size that its name has"),
        (r#"{"stock":"softwood","width":"2 in"}"#, "a piece of softwood lacks a size that its name has"),
        (r#"{"stock":"hardwood","width":"6 in"}"#, "a piece of hardwood lacks a size that its name has"),
        (r#"{"stock":"decking"}"#, "a piece of decking lacks a size that its name has"),
        (r#"{"stock":"panel","width":"48 in"}"#, "a piece of panel lacks a size that its name has"),
        (r#"{"stock":"timber","thickness":"6 in","width":"6 in"}"#, "unknown variant `timber`, expected one of `softwood`, `decking`, `hardwood`, `panel`"),
        (r#"{"stock":"hardwood","thickness":"2 in","surface":"s2s"}"#, "unknown variant `s2s`, expected one of `rough`, `S1S`, `S2S`, `S4S`"),
        (r#"{"stock":"hardwood","thickness":"8/4"}"#, "a number without a unit: found `8/4` at bytes 0..3, expected a unit behind the number; write the unit, as in 17 5/8 in"),
        (r#"{"stock":"hardwood","thickness":"2 in","price":1}"#, "unknown field `price`, expected one of `stock`, `thickness`, `width`, `length`, `seasoning`, `surface`"),
        (r#""2x4""#, "invalid type: string \"2x4\", expected a piece of stock by name"),
    ]);
    refuses::<Money>(&[
        ("\"8,75\"", "`8,75` is no amount of money: write it as 8.75, with no comma"),
        ("\"\"", "`` is no amount of money: write it as 8.75, with no comma"),
        ("8.75", "invalid type: floating point `8.75`, expected an amount of money, such as \"8.75\""),
        ("\"1/0\"", "`1/0` is no amount of money: write it as 8.75, with no comma"),
        ("\"7 9/8\"", "`7 9/8` is no amount of money: write it as 8.75, with no comma"),
    ]);
    refuses::<Price>(&[
        (r#"{"money":"8.75","by":"bf"}"#, "unknown variant `bf`, expected one of `board foot`, `linear foot`, `square foot`, `piece`"),
        (r#"{"money":"8.75"}"#, "missing field `by`"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn tolerances_and_calls() {
    refuses::<Toleranced>(&[
        (r#"{"nominal":"24 in","least":"24 1/32 in","most":"24 1/16 in"}"#, "a nominal length of 24\" does not lie within its limits, 24 1/32\" and 24 1/16\""),
        (r#"{"nominal":"24 in","least":"23 in","most":"23 1/2 in"}"#, "a nominal length of 24\" does not lie within its limits, 23\" and 23 1/2\""),
        (r#"{"nominal":"24 in","least":"25 in","most":"23 in"}"#, "a nominal length of 24\" does not lie within its limits, 25\" and 23\""),
        (r#"{"nominal":"24 in","over":"1/32 in","under":"1/32 in"}"#, "unknown field `over`, expected one of `nominal`, `least`, `most`"),
    ]);
    refuses::<Called>(&[
        (r#"{"mark":"12 in","side":"over","steps":1,"said":"1/40 in"}"#, "a called length has steps or a length that was said, not both or neither"),
        (r#"{"mark":"12 in","side":"over"}"#, "a called length has steps or a length that was said, not both or neither"),
        (r#"{"mark":"12 in","side":"over","steps":0}"#, "a length called over its mark has a step or more, or a length that is not below zero"),
        (r#"{"mark":"12 in","side":"under","said":"-1/40 in"}"#, "a length called under its mark has a step or more, or a length that is not below zero"),
        (r#"{"mark":"12 in","side":"on","steps":1}"#, "a length called on its mark has no step, and no length that was said"),
        (r#"{"mark":"12 in","side":"on","said":"0 in"}"#, "a length called on its mark has no step, and no length that was said"),
        (r#"{"mark":"12 in","side":"over","steps":256}"#, "invalid value: integer `256`, expected u8"),
        (r#"{"mark":"12 in","side":"strong","steps":1}"#, "unknown variant `strong`, expected one of `over`, `on`, `under`"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn story_poles() {
    refuses::<Mark>(&[
        (r#"{"position":"3 in","name":"a"}"#, "missing field `side`"),
        (r#"{"position":"3 in","name":"a","side":"left"}"#, "unknown variant `left`, expected one of `past`, `before`, `centered`, `line`"),
        (r#"{"position":3,"name":"a","side":"past"}"#, "invalid type: integer `3`, expected a length with its unit, such as \"17 5/8 in\""),
        (r#"{"position":"3 in","name":"a","side":"past","edge":"near"}"#, "unknown field `edge`, expected one of `position`, `name`, `side`, `thickness`, `note`"),
        (r#"{"position":"3 in","position":"4 in","name":"a","side":"past"}"#, "duplicate field `position`"),
    ]);
    refuses::<Row>(&[
        (r#"{"name":"a"}"#, "missing field `marks`"),
        (r#"{"name":"a","marks":[{"position":"4 in","name":"a","side":"past"},{"position":"3 in","name":"b","side":"past"}]}"#, "the marks of a row stand in order from the datum: mark 2 of row a, at 3\", comes after one at 4\""),
        (r#"{"name":"a","marks":[],"closes":{"from":"0 in"}}"#, "missing field `to`"),
    ]);
    let pole = |rows: &str| format!(r#"{{"name":"p","length":"72 in","datum":"bottom","rows":[{rows}]}}"#);
    refuses::<StoryPole>(&[
        (r#"{"name":"p","length":"0 in","datum":"bottom","rows":[]}"#, "a pole cannot be 0\" long: it must be above zero"),
        (r#"{"name":"p","length":"72 in","rows":[]}"#, "missing field `datum`"),
        (&pole(r#"{"name":"a","marks":[]},{"name":"a","marks":[]}"#), "the pole has a row a already: each row has a name of its own"),
        (&pole(r#"{"name":"a","marks":[],"closes":{"from":"3 in","to":"3 in"}}"#), "row a cannot close from 3\" to 3\": it must end past where it begins"),
        (&pole(r#"{"name":"a","marks":[{"position":"3 in","name":"x","side":"past","thickness":"-1 in"}]}"#), "x cannot be -1\" thick: it must not be below zero"),
        (&pole(r#"{"name":"a","marks":[{"position":"3 in","name":"x","side":"line","thickness":"1 in"}]}"#), "x is a line alone, and cannot be 1\" thick: say on which side of it the part lies"),
    ]);
}

/// As a compact format with names would carry it.
#[track_caller]
fn compact<T: DeserializeOwned + Debug>(value: &Value) -> String {
    let mut bytes = Vec::new();
    ciborium::into_writer(value, &mut bytes).unwrap();
    match ciborium::from_reader::<T, _>(&*bytes).unwrap_err() {
        ciborium::de::Error::Semantic(_, message) => message,
        other => panic!("{other}"),
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn pairs() {
    let pair = |num: i64, den: i64| Value::from([num, den].map(Value::from).to_vec());
    for (value, message) in [
        (pair(1, 0), "1/0 in has a zero denominator, and so no value"),
        (pair(0, 0), "0/0 in has a zero denominator, and so no value"),
        (pair(1, -2), "unexpected negative integer"),
        (pair(-1, -2), "unexpected negative integer"),
        (pair(2, 4), "2/4 in is not in lowest terms"),
        (pair(0, 2), "0/2 in is not in lowest terms"),
        (Value::from(vec![Value::from(1)]), "invalid length 1, expected a numerator and a denominator of in"),
        (Value::from(vec![1, 2, 3].into_iter().map(Value::from).collect::<Vec<_>>()), "invalid length 3, expected a numerator and a denominator of in"),
        (Value::from("17 in"), "invalid type: string, expected array"),
        (Value::from(17), "invalid type: integer `17`, expected array"),
        (Value::from(vec![Value::from(i128::MAX), Value::from(1)]), "170141183460469231731687303715884105727/1 in is out of range: more, or more finely divided, than can be held"),
    ] {
        assert_eq!(compact::<Length>(&value), message);
    }
    assert_eq!(compact::<Area>(&pair(2, 4)), "2/4 sq in is not in lowest terms");
    assert_eq!(compact::<Area>(&pair(2, 0)), "2/0 sq in has a zero denominator, and so no value");
    assert_eq!(compact::<Volume>(&pair(2, 4)), "2/4 cu in is not in lowest terms");
    assert_eq!(compact::<Unit>(&Value::from(6)), "invalid value: integer `6`, expected the place of a unit of length, below 6");
    assert_eq!(compact::<Unit>(&Value::from("in")), "invalid type: string, expected integer");
    let field = |name: &str, value| (Value::from(name), value);
    let tape = vec![field("step", pair(0, 1)), field("mode", Value::from(0)), field("offset", pair(0, 1))];
    assert_eq!(compact::<Tape>(&Value::Map(tape)), "a tape cannot have a graduation every 0\": it must be above zero");
    assert_eq!(compact::<Tape>(&Value::Map(vec![field("step", pair(1, 16))])), "missing field `mode`");
}

#[test]
fn bytes() {
    // Worked by hand, as in `stored.rs`.
    let refused = |bytes: &[u8]| postcard::from_bytes::<Length>(bytes).is_err();
    for bytes in [&[1, 0][..], &[2, 0], &[4, 4], &[0, 2], &[], &[2], &[0xFF; 40]] {
        assert!(refused(bytes), "{bytes:?}");
    }
    assert!(postcard::from_bytes::<Tape>(&[0, 1, 0, 0, 1, 0]).is_err()); // a graduation of zero
    assert!(postcard::from_bytes::<Tape>(&[2, 16, 6, 0, 1, 0]).is_err()); // no such mode
    assert!(postcard::from_bytes::<End>(&[3, 0]).is_err()); // a margin without a length
    assert!(postcard::from_bytes::<End>(&[0, 1, 4, 1]).is_err()); // a gap with one
    assert!(postcard::from_bytes::<Size>(&[1, 48, 1, 0]).is_err()); // one length
}
