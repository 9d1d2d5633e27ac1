//! Texts that are no size, no length with a tolerance and no called length, one line each, with the kind, the exact
//! bytes to blame and the whole message. What must be read is left to `several.rs`.

use core::fmt::Debug;
use core::ops::Range;

use scantling::{LengthParser, ParseError, ParseErrorKind as Kind, Unit};

type Row = (&'static str, Kind, Range<usize>, &'static str);

#[track_caller]
fn refuses<T: Debug>(read: fn(&LengthParser, &str) -> Result<T, ParseError>, rows: &[Row]) {
    for (text, kind, span, message) in rows {
        let error = read(&LengthParser::new(), text).expect_err(text);
        assert_eq!((error.kind(), error.span(), &*error.to_string()), (*kind, span.clone(), *message), "{text:?}");
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn no_size() {
    refuses(LengthParser::parse_size, &[
        ("24", Kind::NotASize, 0..2, "one length, not a size: found `24` at bytes 0..2, expected two or three lengths; join the lengths of a size by x, as in 3/4\" x 4' x 8'"),
        ("", Kind::NotASize, 0..0, "one length, not a size: found nothing at bytes 0..0, expected two or three lengths; join the lengths of a size by x, as in 3/4\" x 4' x 8'"),
        ("1 x 2 x 3 x 4", Kind::TooManyLengths, 12..13, "too many lengths for a size: found `4` at bytes 12..13, expected two or three lengths"),
        ("6' x 8", Kind::SizeUnits, 5..6, "a size with units on some lengths only: found `8` at bytes 5..6, expected a unit on every length, on none, or on the last for all; write 8 in or 8 ft"),
        ("3/4 x 4' x 8'", Kind::SizeUnits, 0..3, "a size with units on some lengths only: found `3/4` at bytes 0..3, expected a unit on every length, on none, or on the last for all; write 3/4 in or 3/4 ft"),
        ("2x4", Kind::NominalName, 0..3, "the name of a board, not a length: found `2x4` at bytes 0..3, expected one length; a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths"),
        ("2x4x8 ft", Kind::NominalName, 0..8, "the name of a board, not a length: found `2x4x8 ft` at bytes 0..8, expected one length; a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths"),
        ("2x4x8", Kind::NominalName, 0..5, "the name of a board, not a length: found `2x4x8` at bytes 0..5, expected one length; a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths"),
        ("12/4x6", Kind::NominalName, 0..6, "the name of a board, not a length: found `12/4x6` at bytes 0..6, expected one length; a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths"),
        ("5/4x6", Kind::NominalName, 0..5, "the name of a board, not a length: found `5/4x6` at bytes 0..5, expected one length; a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths"),
        ("3/4 x 11 1/4 x 6'", Kind::SizeUnits, 0..3, "a size with units on some lengths only: found `3/4` at bytes 0..3, expected a unit on every length, on none, or on the last for all; write 3/4 in or 3/4 ft"),
        ("10 x 12'6\"", Kind::SizeUnits, 0..2, "a size with units on some lengths only: found `10` at bytes 0..2, expected a unit on every length, on none, or on the last for all; write 10 in"),
        ("five and a half by twelve feet", Kind::SizeUnits, 0..15, "a size with units on some lengths only: found `five and a half` at bytes 0..15, expected a unit on every length, on none, or on the last for all; mark each length, as in 6' x 8'"),
        ("2x4x92-5/8\"", Kind::NominalName, 0..11, "the name of a board, not a length: found `2x4x92-5/8\"` at bytes 0..11, expected one length; a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths"),
        ("two by four", Kind::NominalName, 0..11, "the name of a board, not a length: found `two by four` at bytes 0..11, expected one length; a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths"),
        ("24 W x 36 W", Kind::AxisTwice, 7..11, "an axis named twice: found `36 W` at bytes 7..11, expected each of T, W, L, H, D once"),
        ("H x Q: 24 x 36", Kind::UnknownAxis, 4..5, "no axis: found `Q` at bytes 4..5, expected T, W, L, H or D, or its name"),
        ("24 x 36 in (610 x 1914 mm)", Kind::RestatedOtherwise, 12..25, "a size restated as another size: found `610 x 1914 mm` at bytes 12..25, expected the same size within 1/16 in; one of the two is a misprint: check which"),
        ("24\" (600 mm) x 36\" (914 mm)", Kind::RestatedOtherwise, 5..11, "a size restated as another size: found `600 mm` at bytes 5..11, expected the same size within 1/16 in; one of the two is a misprint: check which"),
        ("24 W x 36 H (24 H x 36 W)", Kind::RestatedOtherwise, 13..24, "a size restated as another size: found `24 H x 36 W` at bytes 13..24, expected the same size within 1/16 in; one of the two is a misprint: check which"),
        ("H x W x D: 24 x 36", Kind::LegendMismatch, 0..9, "a legend that does not fit its size: found `H x W x D` at bytes 0..9, expected as many names as there are lengths"),
        ("H x W: 24 W x 36 H", Kind::AxisTwice, 7..11, "an axis named twice: found `24 W` at bytes 7..11, expected each of T, W, L, H, D once"),
        ("24 W 36", Kind::NotASize, 0..7, "one length, not a size: found `24 W 36` at bytes 0..7, expected two or three lengths; join the lengths of a size by x, as in 3/4\" x 4' x 8'"),
        ("28\" (H) x 15 (W) in", Kind::SizeUnits, 0..3, "a size with units on some lengths only: found `28\"` at bytes 0..3, expected a unit on every length, on none, or on the last for all; mark each length, as in 6' x 8'"),
        ("3/4 (T) x 6 (L) ft", Kind::SizeUnits, 0..3, "a size with units on some lengths only: found `3/4` at bytes 0..3, expected a unit on every length, on none, or on the last for all; mark each length, as in 6' x 8'"),
        ("24 x 17 9/8", Kind::ImproperFraction, 5..11, "a fraction part of one or more: found `17 9/8` at bytes 5..11, expected a fraction below one behind the whole number; write 18 1/8"),
        ("24 x", Kind::Empty, 4..4, "no length: found nothing at bytes 4..4, expected a length such as 17 5/8 or 6'-3\""),
        ("x 24", Kind::Empty, 0..0, "no length: found nothing at bytes 0..0, expected a length such as 17 5/8 or 6'-3\""),
        ("3/4 4×8", Kind::TwoNumbers, 0..5, "two numbers and nothing to tell them apart: found `3/4 4` at bytes 0..5, expected one number, or a unit behind the first; give one length at a time, 3/4 or 4; to add them, calculate 3/4 + 4"),
        ("24 x 36 fast", Kind::UnknownUnit, 8..12, "an unknown unit: found `fast` at bytes 8..12, expected in, ft, yd, mm, cm or m"),
        ("1\" x 4 x 8'", Kind::SizeUnits, 5..6, "a size with units on some lengths only: found `4` at bytes 5..6, expected a unit on every length, on none, or on the last for all; write 4 in"),
        ("1,250 x 600 mm", Kind::CommaReadings, 0..5, "a comma with two readings: found `1,250` at bytes 0..5, expected digits without a comma; this is 1250 if the comma groups thousands, 1.250 if it is a decimal comma: write it so, or say which a comma is"),
        ("½ x ⅝ x #", Kind::NotANumber, 11..12, "no number: found `#` at bytes 11..12, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("W mm", Kind::NotASize, 0..4, "one length, not a size: found `W mm` at bytes 0..4, expected two or three lengths; join the lengths of a size by x, as in 3/4\" x 4' x 8'"),
        ("3 x (8' / 2')", Kind::Arithmetic, 4..5, "a calculation, not a length: found `(` at bytes 4..5, expected one length; work it out first, or calculate it"),
        ("2 * / 3", Kind::NotANumber, 4..5, "no number: found `/` at bytes 4..5, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("#t1l", Kind::NotASize, 0..4, "one length, not a size: found `#t1l` at bytes 0..4, expected two or three lengths; join the lengths of a size by x, as in 3/4\" x 4' x 8'"),
        ("24 x 36 / 610 x 914 mm (61 x 91 cm)", Kind::RestatedOtherwise, 24..34, "a size restated as another size: found `61 x 91 cm` at bytes 24..34, expected the same size within 1/16 in; one of the two is a misprint: check which"),
        ("24 x 36 (H x W) (W x H)", Kind::LegendMismatch, 17..22, "a legend that does not fit its size: found `W x H` at bytes 17..22, expected as many names as there are lengths"),
        ("24 x 36 WxH HxW", Kind::UnknownUnit, 8..11, "an unknown unit: found `WxH` at bytes 8..11, expected in, ft, yd, mm, cm or m"),
        ("24 x 36 in (610 x 914 x 18 mm)", Kind::RestatedOtherwise, 12..29, "a size restated as another size: found `610 x 914 x 18 mm` at bytes 12..29, expected the same size within 1/16 in; one of the two is a misprint: check which"),
        ("24 W x 36 in (610 x 914 W mm)", Kind::AxisTwice, 14..28, "an axis named twice: found `610 x 914 W mm` at bytes 14..28, expected each of T, W, L, H, D once"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn no_tolerance() {
    refuses(LengthParser::parse_toleranced, &[
        ("24 +1/32 +1/64", Kind::ToleranceOneSign, 3..14, "two sides of a tolerance with the same sign: found `+1/32 +1/64` at bytes 3..14, expected one side behind +, the other behind -; write +1/32 -1/64, or where both limits lie on one side, give a length between them"),
        ("24 -1/32 -1/64", Kind::ToleranceOneSign, 3..14, "two sides of a tolerance with the same sign: found `-1/32 -1/64` at bytes 3..14, expected one side behind +, the other behind -; write +1/32 -1/64, or where both limits lie on one side, give a length between them"),
        ("24 (+1/32, +1/64)", Kind::ToleranceOneSign, 4..16, "two sides of a tolerance with the same sign: found `+1/32, +1/64` at bytes 4..16, expected one side behind +, the other behind -; write +1/32 -1/64, or where both limits lie on one side, give a length between them"),
        ("8' -5/8\" +1/32", Kind::ToleranceReadings, 0..14, "a hyphen before a tolerance with two readings, joined or the side under: found `8' -5/8\" +1/32` at bytes 0..14, expected the side over first, or no blank before a hyphen that joins; write 8'-5/8\" +1/32\" if the hyphen joins, 8' +1/32\" -5/8\" if it is the side under"),
        ("24 -1/32", Kind::NoTolerance, 0..8, "a length without a tolerance: found `24 -1/32` at bytes 0..8, expected ±, or + and - with a length each; write 24 +0 -1/32 if it may only be under, 24-1/32 and its tolerance if the hyphen joins"),
        ("8' (-5/8\")", Kind::NoTolerance, 0..10, "a length without a tolerance: found `8' (-5/8\")` at bytes 0..10, expected ±, or + and - with a length each; write 8' +0 -5/8\" if it may only be under, 8'-5/8\" and its tolerance if the hyphen joins"),
        ("24 -0.2", Kind::NoTolerance, 0..7, "a length without a tolerance: found `24 -0.2` at bytes 0..7, expected ±, or + and - with a length each; write 24 +0 -0.2 if it may only be under"),
        ("24 (1/32)", Kind::NoTolerance, 0..9, "a length without a tolerance: found `24 (1/32)` at bytes 0..9, expected ±, or + and - with a length each; write 24 ±1/32 or 24 +1/32 -0"),
        ("24 (+1/32", Kind::Arithmetic, 3..4, "a calculation, not a length: found `(` at bytes 3..4, expected one length; work it out first, or calculate it"),
        ("24 (±1/32]", Kind::Arithmetic, 3..4, "a calculation, not a length: found `(` at bytes 3..4, expected one length; work it out first, or calculate it"),
        ("(25 mm ± 0.2) mm", Kind::ToleranceUnit, 1..6, "a length and a tolerance whose units do not fit together: found `25 mm` at bytes 1..6, expected a unit behind each number, or behind the last for all, or inches; write the unit behind each number, or once at the end for all of them"),
        ("24 ±1/32 ±1/64", Kind::ToleranceNotLength, 10..12, "a length with a tolerance: found `±` at bytes 10..12, expected a length alone; give the length without its tolerance"),
        ("24", Kind::NoTolerance, 0..2, "a length without a tolerance: found `24` at bytes 0..2, expected ±, or + and - with a length each; write 24 ±1/32 or 24 +1/32 -0"),
        ("25 +0.1 mm / -0.2", Kind::ToleranceUnit, 4..10, "a length and a tolerance whose units do not fit together: found `0.1 mm` at bytes 4..10, expected a unit behind each number, or behind the last for all, or inches; write the unit behind each number, or once at the end for all of them"),
        ("25 +0.1\" -0.2 mm", Kind::ToleranceUnit, 10..16, "a length and a tolerance whose units do not fit together: found `0.2 mm` at bytes 10..16, expected a unit behind each number, or behind the last for all, or inches; write the unit behind each number, or once at the end for all of them"),
        ("two feet ±1/8", Kind::ToleranceUnit, 11..14, "a length and a tolerance whose units do not fit together: found `1/8` at bytes 11..14, expected a unit behind each number, or behind the last for all, or inches; write the unit behind each number, or once at the end for all of them"),
        ("2 ft ±1/8", Kind::ToleranceUnit, 7..10, "a length and a tolerance whose units do not fit together: found `1/8` at bytes 7..10, expected a unit behind each number, or behind the last for all, or inches; write 1/8 in or 1/8 ft"),
        ("25 mm ±0.2", Kind::ToleranceUnit, 8..11, "a length and a tolerance whose units do not fit together: found `0.2` at bytes 8..11, expected a unit behind each number, or behind the last for all, or inches; write 0.2 in or 0.2 mm"),
        ("24 +1/32 +0", Kind::ToleranceOneSign, 3..11, "two sides of a tolerance with the same sign: found `+1/32 +0` at bytes 3..11, expected one side behind +, the other behind -; write +1/32 -0, or where both limits lie on one side, give a length between them"),
        ("24 ±-1/32", Kind::ToleranceSigns, 0..10, "a tolerance below zero: found `24 ±-1/32` at bytes 0..10, expected amounts of zero or more behind their signs"),
        ("24 ±", Kind::Empty, 5..5, "no length: found nothing at bytes 5..5, expected a length such as 17 5/8 or 6'-3\""),
        ("(24)+1/32", Kind::Arithmetic, 0..1, "a calculation, not a length: found `(` at bytes 0..1, expected one length; work it out first, or calculate it"),
        ("24 (±1/32))", Kind::Arithmetic, 3..4, "a calculation, not a length: found `(` at bytes 3..4, expected one length; work it out first, or calculate it"),
        ("19plus", Kind::NoTolerance, 0..6, "a length without a tolerance: found `19plus` at bytes 0..6, expected ±, or + and - with a length each; write 24 ±1/32 or 24 +1/32 -0"),
        ("47.5 in. plus- 47 3/4 in.", Kind::ToleranceSigns, 0..25, "a tolerance below zero: found `47.5 in. plus- 47 3/4…` at bytes 0..25, expected amounts of zero or more behind their signs"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn no_called_length() {
    refuses(LengthParser::parse_called, &[
        ("barely 3/4", Kind::QualifierSide, 0..6, "a qualifier that says no side: found `barely` at bytes 0..6, expected strong, over and the like, or shy, under and the like; say on which side of the mark it is, as in 3/4 strong or 3/4 shy"),
        ("just 3/4", Kind::QualifierSide, 0..4, "a qualifier that says no side: found `just` at bytes 0..4, expected strong, over and the like, or shy, under and the like; say on which side of the mark it is, as in 3/4 strong or 3/4 shy"),
        ("3/4 or so", Kind::UnknownUnit, 4..6, "an unknown unit: found `or` at bytes 4..6, expected in, ft, yd, mm, cm or m"),
        ("about 3/4", Kind::QualifierSide, 0..5, "a qualifier that says no side: found `about` at bytes 0..5, expected strong, over and the like, or shy, under and the like; say on which side of the mark it is, as in 3/4 strong or 3/4 shy"),
        ("17 5/8 strong and shy", Kind::Qualified, 7..13, "a length with a qualifier: found `strong` at bytes 7..13, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("a strong 5/8 minus", Kind::QualifiersDisagree, 0..18, "strong and shy at once: found `a strong 5/8 minus` at bytes 0..18, expected qualifiers that lie on one side of the mark"),
        ("1/16 shy of 2 ft", Kind::ToleranceUnit, 0..4, "a length and a tolerance whose units do not fit together: found `1/16` at bytes 0..4, expected a unit behind each number, or behind the last for all, or inches; write 1/16 in or 1/16 ft"),
        ("1 over 4", Kind::Arithmetic, 2..6, "a calculation, not a length: found `over` at bytes 2..6, expected one length; work it out first, or calculate it"),
        ("48 plus 1/2", Kind::Arithmetic, 3..7, "a calculation, not a length: found `plus` at bytes 3..7, expected one length; work it out first, or calculate it"),
        ("17 3/8 strong by -1/40", Kind::QualifiersDisagree, 0..22, "strong and shy at once: found `17 3/8 strong by -1/4…` at bytes 0..22, expected qualifiers that lie on one side of the mark"),
        ("17 5/8 strong minus", Kind::QualifiersDisagree, 0..19, "strong and shy at once: found `17 5/8 strong minus` at bytes 0..19, expected qualifiers that lie on one side of the mark"),
        ("strong", Kind::NotANumber, 0..6, "no number: found `strong` at bytes 0..6, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("+", Kind::LoneSign, 0..1, "a sign without a number: found `+` at bytes 0..1, expected a number behind the sign"),
        ("17 9/8 strong", Kind::ImproperFraction, 0..6, "a fraction part of one or more: found `17 9/8` at bytes 0..6, expected a fraction below one behind the whole number; write 18 1/8"),
        ("\"", Kind::NotANumber, 0..1, "no number: found `\"` at bytes 0..1, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("1/16 shy 2", Kind::Arithmetic, 5..8, "a calculation, not a length: found `shy` at bytes 5..8, expected one length; work it out first, or calculate it"),
        ("one and five eighths over six feet", Kind::ToleranceUnit, 0..20, "a length and a tolerance whose units do not fit together: found `one and five eighths` at bytes 0..20, expected a unit behind each number, or behind the last for all, or inches; write the unit behind each number, or once at the end for all of them"),
        ("zero inches over 5/8", Kind::Qualified, 12..16, "a length with a qualifier: found `over` at bytes 12..16, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("3/4 shy of 3/4", Kind::Qualified, 4..10, "a length with a qualifier: found `shy of` at bytes 4..10, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
    ]);
}

/// Where a bare number has the caller's unit, it takes none that is written beside it.
#[test]
fn a_bare_number_keeps_the_unit_that_was_asked_for() {
    let metric = LengthParser::new().default_unit(Unit::Millimeter);
    let error = metric.parse_size("24 x 36 cm").unwrap_err();
    assert_eq!((error.kind(), error.span()), (Kind::SizeUnits, 0..2));
    for (text, span) in [("24 ± 1 cm", 6..10), ("(24 ± 1) cm", 1..3)] {
        let error = metric.parse_toleranced(text).expect_err(text);
        assert_eq!((error.kind(), error.span()), (Kind::ToleranceUnit, span), "{text:?}");
    }
}
