//! Texts that are no length, one line each, with the kind, the exact bytes to blame and the whole
//! message. What must be read is left to `reading.rs`, words to `spoken.rs`.

use core::ops::Range;

use crate::support::texts::of_four;
use scantling::{Comma, Length, LengthParser, ParseErrorKind as Kind};

type Row = (&'static str, Kind, Range<usize>, &'static str);

#[track_caller]
fn refuses(parser: LengthParser, rows: &[Row]) {
    for (text, kind, span, message) in rows {
        let error = parser.parse(text).expect_err(text);
        assert_eq!((error.kind(), error.span(), &*error.to_string()), (*kind, span.clone(), *message), "{text:?}");
        // An error longer than its excerpt shows only the beginning; all others show just what the span holds.
        assert!(text[span.clone()].starts_with(error.found()), "{text:?}");
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn nothing_and_no_number() {
    refuses(LengthParser::new(), &[
        ("", Kind::Empty, 0..0, "no length: found nothing at bytes 0..0, expected a length such as 17 5/8 or 6'-3\""),
        ("   ", Kind::Empty, 0..0, "no length: found nothing at bytes 0..0, expected a length such as 17 5/8 or 6'-3\""),
        ("/4", Kind::NotANumber, 0..2, "no number: found `/4` at bytes 0..2, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("abc", Kind::NotANumber, 0..3, "no number: found `abc` at bytes 0..3, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("--5", Kind::NotANumber, 1..3, "no number: found `-5` at bytes 1..3, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("%\"", Kind::NotANumber, 0..1, "no number: found `%` at bytes 0..1, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("²", Kind::NotANumber, 0..2, "no number: found `²` at bytes 0..2, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("- - 5", Kind::NotANumber, 2..3, "no number: found `-` at bytes 2..3, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("-", Kind::LoneSign, 0..1, "a sign without a number: found `-` at bytes 0..1, expected a number behind the sign"),
        ("+", Kind::LoneSign, 0..1, "a sign without a number: found `+` at bytes 0..1, expected a number behind the sign"),
        (" - \r\n", Kind::LoneSign, 1..3, "a sign without a number: found `- ` at bytes 1..3, expected a number behind the sign"),
        ("minus-3/4", Kind::NotANumber, 0..9, "no number: found `minus-3/4` at bytes 0..9, expected a number such as 17, 5/8, 3½ or 17.625"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn fractions() {
    refuses(LengthParser::new(), &[
        ("17 9/8", Kind::ImproperFraction, 0..6, "a fraction part of one or more: found `17 9/8` at bytes 0..6, expected a fraction below one behind the whole number; write 18 1/8"),
        ("17-8/8", Kind::ImproperFraction, 0..6, "a fraction part of one or more: found `17-8/8` at bytes 0..6, expected a fraction below one behind the whole number; write 18"),
        ("4 10/3", Kind::ImproperFraction, 0..6, "a fraction part of one or more: found `4 10/3` at bytes 0..6, expected a fraction below one behind the whole number; write 7 1/3"),
        ("2′61/2′′", Kind::ImproperFraction, 4..8, "a fraction part of one or more: found `61/2` at bytes 4..8, expected a fraction below one behind the whole number; write 2' 30 1/2\", or 2' 6 1/2\" if a blank was lost"),
        ("17 9⁄8", Kind::ImproperFraction, 0..8, "a fraction part of one or more: found `17 9⁄8` at bytes 0..8, expected a fraction below one behind the whole number; write 18 1/8"),
        ("17–9/8", Kind::ImproperFraction, 0..8, "a fraction part of one or more: found `17–9/8` at bytes 0..8, expected a fraction below one behind the whole number; write 18 1/8"),
        ("17 ⁹⁄₈", Kind::ImproperFraction, 0..12, "a fraction part of one or more: found `17 ⁹⁄₈` at bytes 0..12, expected a fraction below one behind the whole number; write 18 1/8"),
        ("17 9 / 8", Kind::ImproperFraction, 0..8, "a fraction part of one or more: found `17 9 / 8` at bytes 0..8, expected a fraction below one behind the whole number; write 18 1/8"),
        ("5' 9/8\"", Kind::ImproperFraction, 3..6, "a fraction part of one or more: found `9/8` at bytes 3..6, expected a fraction below one behind the whole number; write 5' 1 1/8\""),
        ("5'-17 9/8", Kind::ImproperFraction, 3..9, "a fraction part of one or more: found `17 9/8` at bytes 3..9, expected a fraction below one behind the whole number; write 5' 18 1/8\""),
        ("341/2′′", Kind::LostBlank, 0..5, "a fraction with two readings: found `341/2` at bytes 0..5, expected a blank behind the whole number; write 170 1/2, or 34 1/2 if a blank was lost"),
        // From the beginning of a long text alone nothing is worked out.
        ("1234567 12345678/1234567", Kind::ImproperFraction, 0..24, "a fraction part of one or more: found `1234567 12345678/1234…` at bytes 0..24, expected a fraction below one behind the whole number; carry the whole part of the fraction"),
        ("1/0", Kind::ZeroDenominator, 0..3, "a fraction over zero: found `1/0` at bytes 0..3, expected a number above zero below the line; check the number below the line"),
        ("17 1/0", Kind::ZeroDenominator, 0..6, "a fraction over zero: found `17 1/0` at bytes 0..6, expected a number above zero below the line; check the number below the line"),
        ("3/", Kind::MissingDenominator, 0..2, "half a fraction: found `3/` at bytes 0..2, expected a number below the line; write the fraction out, as in 3/8"),
        ("3/ x", Kind::MissingDenominator, 0..2, "half a fraction: found `3/` at bytes 0..2, expected a number below the line; write the fraction out, as in 3/8"),
        ("17.5/8", Kind::DecimalWithFraction, 0..6, "a decimal together with a fraction: found `17.5/8` at bytes 0..6, expected the one or the other; write 17 7/8 or 17.875, not both at once"),
        ("1/2/3", Kind::ChainedFraction, 0..5, "a fraction of a fraction: found `1/2/3` at bytes 0..5, expected one number over one number; write one fraction, as in 5/8"),
        ("½/2", Kind::ChainedFraction, 0..3, "a fraction of a fraction: found `½/` at bytes 0..3, expected one number over one number; write one fraction, as in 5/8"),
        ("6 / 2 / 3", Kind::ChainedFraction, 0..7, "a fraction of a fraction: found `6 / 2 /` at bytes 0..7, expected one number over one number; write one fraction, as in 5/8"),
        ("17.5 3/8", Kind::DecimalWithFraction, 0..8, "a decimal together with a fraction: found `17.5 3/8` at bytes 0..8, expected the one or the other; write 17 7/8 or 17.875, not both at once"),
        ("1/2.5", Kind::DecimalWithFraction, 0..5, "a decimal together with a fraction: found `1/2.5` at bytes 0..5, expected the one or the other; write 17 7/8 or 17.875, not both at once"),
        ("101/2", Kind::LostBlank, 0..5, "a fraction with two readings: found `101/2` at bytes 0..5, expected a blank behind the whole number; write 50 1/2, or 10 1/2 if a blank was lost"),
        ("5'-3 59/8:", Kind::ImproperFraction, 3..9, "a fraction part of one or more: found `3 59/8` at bytes 3..9, expected a fraction below one behind the whole number; write 5' 10 3/8\""),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn two_numbers_and_dashes() {
    refuses(LengthParser::new(), &[
        ("5 3", Kind::TwoNumbers, 0..3, "two numbers and nothing to tell them apart: found `5 3` at bytes 0..3, expected one number, or a unit behind the first; write 5' 3\" for feet and inches, 5 3/8 for a fraction"),
        ("5 3½", Kind::TwoNumbers, 0..5, "two numbers and nothing to tell them apart: found `5 3½` at bytes 0..5, expected one number, or a unit behind the first; write 5' 3½\" for feet and inches"),
        ("5 2", Kind::TwoNumbers, 0..3, "two numbers and nothing to tell them apart: found `5 2` at bytes 0..3, expected one number, or a unit behind the first; write 5' 2\" for feet and inches"),
        ("17 25", Kind::TwoNumbers, 0..5, "two numbers and nothing to tell them apart: found `17 25` at bytes 0..5, expected one number, or a unit behind the first; write 17 25/32 for a fraction, or put a unit behind 17"),
        ("5 14", Kind::TwoNumbers, 0..4, "two numbers and nothing to tell them apart: found `5 14` at bytes 0..4, expected one number, or a unit behind the first; put a unit behind 5, or give one length at a time"),
        ("29 000 mm", Kind::TwoNumbers, 0..6, "two numbers and nothing to tell them apart: found `29 000` at bytes 0..6, expected one number, or a unit behind the first; write 29000 if the blank groups thousands, or say that a comma does; else put a unit behind 29"),
        ("1234567 12345678901234", Kind::TwoNumbers, 0..22, "two numbers and nothing to tell them apart: found `1234567 1234567890123…` at bytes 0..22, expected one number, or a unit behind the first; put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8"),
        ("17.5 3", Kind::TwoNumbers, 0..6, "two numbers and nothing to tell them apart: found `17.5 3` at bytes 0..6, expected one number, or a unit behind the first; give one length at a time, 17.5 or 3; to add them, calculate 17.5 + 3"),
        ("1/2 1/2", Kind::TwoNumbers, 0..7, "two numbers and nothing to tell them apart: found `1/2 1/2` at bytes 0..7, expected one number, or a unit behind the first; give one length at a time, 1/2 or 1/2; to add them, calculate 1/2 + 1/2"),
        ("5 - 3/8", Kind::DashReadings, 0..7, "a dash with two readings, joined or subtracted: found `5 - 3/8` at bytes 0..7, expected a dash without blanks, or a calculation; this is 5 3/8 joined, 4 5/8 subtracted: write 5 3/8 or calculate 5 - 3/8"),
        ("5 -3/8", Kind::DashReadings, 0..6, "a dash with two readings, joined or subtracted: found `5 -3/8` at bytes 0..6, expected a dash without blanks, or a calculation; this is 5 3/8 joined, 4 5/8 subtracted: write 5 3/8 or calculate 5 - 3/8"),
        ("5- 3/8", Kind::DashReadings, 0..6, "a dash with two readings, joined or subtracted: found `5- 3/8` at bytes 0..6, expected a dash without blanks, or a calculation; this is 5 3/8 joined, 4 5/8 subtracted: write 5 3/8 or calculate 5 - 3/8"),
        ("2-3", Kind::JoinedNumbers, 0..3, "two whole numbers joined by a dash: found `2-3` at bytes 0..3, expected one length; write 2'-3\" for feet and inches; to subtract, calculate 2 - 3"),
        ("12-04-08", Kind::FeetInchesSixteenths, 0..8, "three numbers joined by dashes: found `12-04-08` at bytes 0..8, expected one length; if this is feet-inches-sixteenths, ask for that mode; else write 12'-4 8/16\""),
        ("25-0-14", Kind::FeetInchesSixteenths, 0..7, "three numbers joined by dashes: found `25-0-14` at bytes 0..7, expected one length; if this is feet-inches-sixteenths, ask for that mode; else write 25'-0 14/16\""),
        ("12-14-03", Kind::FeetInchesSixteenths, 0..8, "three numbers joined by dashes: found `12-14-03` at bytes 0..8, expected one length; these are no feet-inches-sixteenths, which end at 11 and 15: mark each number with its unit"),
        ("17−5/8", Kind::MinusJoins, 2..5, "a minus sign inside a number: found `−` at bytes 2..5, expected a hyphen to join, or a calculation; this is 17 5/8 joined, 16 3/8 subtracted: write 17 5/8 or calculate 17 - 5/8"),
        ("6'−3\"", Kind::MinusJoins, 2..5, "a minus sign inside a number: found `−` at bytes 2..5, expected a hyphen to join, or a calculation; this is 75 in joined, 69 in subtracted: write 75 in or calculate 6' - (3\")"),
        ("17 5/8−3/4", Kind::MinusJoins, 6..9, "a minus sign inside a number: found `−` at bytes 6..9, expected a hyphen to join, or a calculation; to subtract, calculate 17 5/8 - 3/4"),
        ("17.5−3 mm", Kind::MinusJoins, 4..7, "a minus sign inside a number: found `−` at bytes 4..7, expected a hyphen to join, or a calculation; to subtract, calculate 17.5 - 3 mm"),
        ("5−3", Kind::MinusJoins, 1..4, "a minus sign inside a number: found `−` at bytes 1..4, expected a hyphen to join, or a calculation; write 5'-3\" for feet and inches; to subtract, calculate 5 - 3"),
        ("1 m - 20 cm", Kind::DashBetween, 4..6, "a dash between units: found `- ` at bytes 4..6, expected a blank between units; a dash joins feet to inches and a whole to its fraction; to subtract, calculate"),
        ("5 cm - 3 mm", Kind::DashBetween, 5..7, "a dash between units: found `- ` at bytes 5..7, expected a blank between units; a dash joins feet to inches and a whole to its fraction; to subtract, calculate"),
        ("2 yd - 3 in", Kind::DashBetween, 5..7, "a dash between units: found `- ` at bytes 5..7, expected a blank between units; a dash joins feet to inches and a whole to its fraction; to subtract, calculate"),
        ("24−0", Kind::MinusJoins, 2..5, "a minus sign inside a number: found `−` at bytes 2..5, expected a hyphen to join, or a calculation; write 24'-0\" for feet and inches; to subtract, calculate 24 - 0"),
        ("17.5−3", Kind::MinusJoins, 4..7, "a minus sign inside a number: found `−` at bytes 4..7, expected a hyphen to join, or a calculation; to subtract, calculate 17.5 - 3"),
        ("768614336404564650-07-00", Kind::FeetInchesSixteenths, 0..24, "three numbers joined by dashes: found `768614336404564650-07…` at bytes 0..24, expected one length; if this is feet-inches-sixteenths, ask for that mode; else mark each number with its unit"),
        ("5 1/2'−3\"", Kind::MinusJoins, 6..9, "a minus sign inside a number: found `−` at bytes 6..9, expected a hyphen to join, or a calculation; to subtract, calculate 5 1/2' - 3\""),
        ("6'−3 mm", Kind::MinusJoins, 2..5, "a minus sign inside a number: found `−` at bytes 2..5, expected a hyphen to join, or a calculation; to subtract, calculate 6' - 3 mm"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn commas_apostrophes_and_points() {
    refuses(LengthParser::new(), &[
        ("1,250", Kind::CommaReadings, 0..5, "a comma with two readings: found `1,250` at bytes 0..5, expected digits without a comma; this is 1250 if the comma groups thousands, 1.250 if it is a decimal comma: write it so, or say which a comma is"),
        ("1,3 cm", Kind::CommaReadings, 0..3, "a comma with two readings: found `1,3` at bytes 0..3, expected digits without a comma; this is 1.3 if it is a decimal comma: write it so, or say which a comma is"),
        ("1,250,000", Kind::CommaReadings, 0..9, "a comma with two readings: found `1,250,000` at bytes 0..9, expected digits without a comma; this is 1250000 if the comma groups thousands: write it so, or say which a comma is"),
        ("1,250,000,000,000,000,000", Kind::CommaReadings, 0..25, "a comma with two readings: found `1,250,000,000,000,000…` at bytes 0..25, expected digits without a comma; write it without a comma, or say which a comma is"),
        ("1,25,0", Kind::CommaReadings, 0..6, "a comma with two readings: found `1,25,0` at bytes 0..6, expected digits without a comma; this is neither grouped thousands nor a decimal: write it so, or say which a comma is"),
        // A hint is one line, and so nothing but digits is taken into it.
        ("5\t,000th", Kind::CommaReadings, 0..8, "a comma with two readings: found `5\\t,000th` at bytes 0..8, expected digits without a comma; write it without a comma, or say which a comma is"),
        ("12,5\"", Kind::CommaReadings, 0..4, "a comma with two readings: found `12,5` at bytes 0..4, expected digits without a comma; this is 12.5 if it is a decimal comma: write it so, or say which a comma is"),
        ("1'000", Kind::ApostropheReadings, 0..5, "a mark with two readings: found `1'000` at bytes 0..5, expected at most two digits behind a foot mark; this is 1000 if the mark groups thousands, 1' 000\" if it means feet: write it so"),
        ("1'000\"", Kind::ApostropheReadings, 0..5, "a mark with two readings: found `1'000` at bytes 0..5, expected at most two digits behind a foot mark; this is 1000 if the mark groups thousands, 1' 000\" if it means feet: write it so"),
        ("1'000 mm", Kind::ApostropheReadings, 0..5, "a mark with two readings: found `1'000` at bytes 0..5, expected at most two digits behind a foot mark; this is 1000 if the mark groups thousands, 1' 000\" if it means feet: write it so"),
        ("1'2345", Kind::ApostropheReadings, 0..5, "a mark with two readings: found `1'234` at bytes 0..5, expected at most two digits behind a foot mark; this is 1234 if the mark groups thousands, 1' 234\" if it means feet: write it so"),
        ("5 ft.10 in", Kind::PointReadings, 4..7, "a point with two readings: found `.10` at bytes 4..7, expected a blank behind an abbreviation's full stop; this is 5 ft 10 in if the point ends ft, 5 ft 0.10 in if it is a decimal point: write it so"),
        ("1 m.20", Kind::PointReadings, 3..6, "a point with two readings: found `.20` at bytes 3..6, expected a blank behind an abbreviation's full stop; this is 1 m 20 if the point ends m, 1 m 0.20 if it is a decimal point: write it so"),
        ("1m5", Kind::MeterDecimals, 2..3, "digits glued to the meter: found `5` at bytes 2..3, expected two digits, as in 1m20; write 1.5 m, 1.05 m or 1 m 5 mm"),
        ("1m200", Kind::MeterDecimals, 2..5, "digits glued to the meter: found `200` at bytes 2..5, expected two digits, as in 1m20; write 1.200 m or 1 m 200 mm"),
        ("1m2.5", Kind::MeterDecimals, 2..5, "digits glued to the meter: found `2.5` at bytes 2..5, expected two digits, as in 1m20; write a unit behind each number, as in 1 m 2.5 cm or 1 m 2.5 mm"),
        ("3,5.", Kind::CommaReadings, 0..3, "a comma with two readings: found `3,5` at bytes 0..3, expected digits without a comma; this is 3.5 if it is a decimal comma: write it so, or say which a comma is"),
        ("1,234.", Kind::CommaReadings, 0..5, "a comma with two readings: found `1,234` at bytes 0..5, expected digits without a comma; this is 1234 if the comma groups thousands, 1.234 if it is a decimal comma: write it so, or say which a comma is"),
        ("24 hair mm.5", Kind::PointReadings, 10..12, "a point with two readings: found `.5` at bytes 10..12, expected a blank behind an abbreviation's full stop; put a blank behind the full stop, or a zero before the decimal point"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn other_things_than_one_length() {
    refuses(LengthParser::new(), &[
        ("2x4", Kind::NominalName, 0..3, "the name of a board, not a length: found `2x4` at bytes 0..3, expected one length; a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths"),
        ("2 x 4", Kind::NominalName, 0..5, "the name of a board, not a length: found `2 x 4` at bytes 0..5, expected one length; a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths"),
        ("5/4x6", Kind::NominalName, 0..5, "the name of a board, not a length: found `5/4x6` at bytes 0..5, expected one length; a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths"),
        ("2x4x8 ft", Kind::NominalName, 0..8, "the name of a board, not a length: found `2x4x8 ft` at bytes 0..8, expected one length; a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths"),
        ("16x20", Kind::SizeNotLength, 0..5, "a size, not a length: found `16x20` at bytes 0..5, expected one length; give one length of the size at a time"),
        ("3/4 x 4' x 8'", Kind::SizeNotLength, 0..13, "a size, not a length: found `3/4 x 4' x 8'` at bytes 0..13, expected one length; give one length of the size at a time"),
        ("3/4\" by 4'", Kind::SizeNotLength, 0..10, "a size, not a length: found `3/4\" by 4'` at bytes 0..10, expected one length; give one length of the size at a time"),
        ("13/4x12", Kind::SizeNotLength, 0..7, "a size, not a length: found `13/4x12` at bytes 0..7, expected one length; give one length of the size at a time"),
        ("13/4 x 31/2", Kind::SizeNotLength, 0..11, "a size, not a length: found `13/4 x 31/2` at bytes 0..11, expected one length; give one length of the size at a time"),
        ("24 ±1/32", Kind::ToleranceNotLength, 3..5, "a length with a tolerance: found `±` at bytes 3..5, expected a length alone; give the length without its tolerance"),
        ("24 +/- 1/32", Kind::ToleranceNotLength, 3..6, "a length with a tolerance: found `+/-` at bytes 3..6, expected a length alone; give the length without its tolerance"),
        ("24 plus or minus 1/32", Kind::ToleranceNotLength, 3..16, "a length with a tolerance: found `plus or minus` at bytes 3..16, expected a length alone; give the length without its tolerance"),
        ("24 + or - 1/32", Kind::ToleranceNotLength, 3..9, "a length with a tolerance: found `+ or -` at bytes 3..9, expected a length alone; give the length without its tolerance"),
        ("24 (±1/32)", Kind::ToleranceNotLength, 3..6, "a length with a tolerance: found `(±` at bytes 3..6, expected a length alone; give the length without its tolerance"),
        ("24 (+1/32, -0)", Kind::ToleranceNotLength, 3..5, "a length with a tolerance: found `(+` at bytes 3..5, expected a length alone; give the length without its tolerance"),
        ("17 5/8 strong", Kind::Qualified, 7..13, "a length with a qualifier: found `strong` at bytes 7..13, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("3/4+", Kind::Qualified, 3..4, "a length with a qualifier: found `+` at bytes 3..4, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("7/16 minus", Kind::Qualified, 5..10, "a length with a qualifier: found `minus` at bytes 5..10, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("barely 3/4", Kind::Qualified, 0..6, "a length with a qualifier: found `barely` at bytes 0..6, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("3/4 a hair strong", Kind::Qualified, 4..17, "a length with a qualifier: found `a hair strong` at bytes 4..17, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("big eighth", Kind::Qualified, 0..3, "a length with a qualifier: found `big` at bytes 0..3, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("a full inch", Kind::Qualified, 0..6, "a length with a qualifier: found `a full` at bytes 0..6, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("17 5/8 and a hair", Kind::Qualified, 7..17, "a length with a qualifier: found `and a hair` at bytes 7..17, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("less than 3/4", Kind::Qualified, 0..9, "a length with a qualifier: found `less than` at bytes 0..9, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("17 less 3/4", Kind::Arithmetic, 3..7, "a calculation, not a length: found `less` at bytes 3..7, expected one length; work it out first, or calculate it"),
        ("48 plus 1/2", Kind::Arithmetic, 3..7, "a calculation, not a length: found `plus` at bytes 3..7, expected one length; work it out first, or calculate it"),
        ("2 - 3", Kind::Arithmetic, 2..3, "a calculation, not a length: found `-` at bytes 2..3, expected one length; work it out first, or calculate it"),
        ("17 5/8 - 3/4", Kind::Arithmetic, 7..8, "a calculation, not a length: found `-` at bytes 7..8, expected one length; work it out first, or calculate it"),
        ("72 + 3", Kind::Arithmetic, 3..4, "a calculation, not a length: found `+` at bytes 3..4, expected one length; work it out first, or calculate it"),
        ("3 * 4", Kind::Arithmetic, 2..3, "a calculation, not a length: found `*` at bytes 2..3, expected one length; work it out first, or calculate it"),
        ("(72)", Kind::Arithmetic, 0..1, "a calculation, not a length: found `(` at bytes 0..1, expected one length; work it out first, or calculate it"),
        ("72 -3", Kind::Arithmetic, 3..4, "a calculation, not a length: found `-` at bytes 3..4, expected one length; work it out first, or calculate it"),
        ("1x18", Kind::SizeNotLength, 0..4, "a size, not a length: found `1x18` at bytes 0..4, expected one length; give one length of the size at a time"),
        ("2x4's", Kind::SizeNotLength, 0..5, "a size, not a length: found `2x4's` at bytes 0..5, expected one length; give one length of the size at a time"),
        ("0x4", Kind::SizeNotLength, 0..3, "a size, not a length: found `0x4` at bytes 0..3, expected one length; give one length of the size at a time"),
        ("2×4", Kind::NominalName, 0..4, "the name of a board, not a length: found `2×4` at bytes 0..4, expected one length; a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths"),
        ("24\" [±1/32]", Kind::ToleranceNotLength, 4..7, "a length with a tolerance: found `[±` at bytes 4..7, expected a length alone; give the length without its tolerance"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn units_in_no_order() {
    refuses(LengthParser::new(), &[
        ("3\" 4\"", Kind::RepeatedUnit, 4..5, "the same unit twice: found `\"` at bytes 4..5, expected a smaller unit behind a larger one; if the first should be feet, mark it ' or ft"),
        ("6' 3'", Kind::RepeatedUnit, 4..5, "the same unit twice: found `'` at bytes 4..5, expected a smaller unit behind a larger one; if the first should be feet, mark it ' or ft"),
        ("2\"-4 1/2\"", Kind::RepeatedUnit, 8..9, "the same unit twice: found `\"` at bytes 8..9, expected a smaller unit behind a larger one; if the first should be feet, mark it ' or ft"),
        ("120′ 4” 1⁄2″", Kind::RepeatedUnit, 17..20, "the same unit twice: found `″` at bytes 17..20, expected a smaller unit behind a larger one; if the first should be feet, mark it ' or ft"),
        ("6' - 3'", Kind::RepeatedUnit, 6..7, "the same unit twice: found `'` at bytes 6..7, expected a smaller unit behind a larger one; if the first should be feet, mark it ' or ft"),
        ("3 in 4 ft", Kind::RisingUnit, 7..9, "a larger unit behind a smaller one: found `ft` at bytes 7..9, expected a smaller unit behind a larger one; put the feet first"),
        ("1 m 3 in", Kind::MixedSystems, 6..8, "metric and imperial in one length: found `in` at bytes 6..8, expected units of one system; to put the two together, calculate 1 m + 3 in"),
        ("3 in 1 m", Kind::MixedSystems, 7..8, "metric and imperial in one length: found `m` at bytes 7..8, expected units of one system; to put the two together, calculate 1 m + 3 in"),
        ("404 a", Kind::UnknownUnit, 4..5, "an unknown unit: found `a` at bytes 4..5, expected in, ft, yd, mm, cm or m"),
        ("12 furlongs", Kind::UnknownUnit, 3..11, "an unknown unit: found `furlongs` at bytes 3..11, expected in, ft, yd, mm, cm or m"),
        ("17 month", Kind::UnknownUnit, 3..8, "an unknown unit: found `month` at bytes 3..8, expected in, ft, yd, mm, cm or m"),
        ("1e3", Kind::UnknownUnit, 1..2, "an unknown unit: found `e` at bytes 1..2, expected in, ft, yd, mm, cm or m"),
        ("17 5/8 of", Kind::UnknownUnit, 7..9, "an unknown unit: found `of` at bytes 7..9, expected in, ft, yd, mm, cm or m"),
        ("5 of an inch", Kind::UnknownUnit, 2..4, "an unknown unit: found `of` at bytes 2..4, expected in, ft, yd, mm, cm or m"),
        ("5 1/2' 3\"", Kind::FractionNotLast, 0..5, "a part of a unit before the last number: found `5 1/2` at bytes 0..5, expected a whole number of every unit but the last; write 5'-9\" if 5 1/2' and 3\" add up"),
        ("5.5' 3\"", Kind::FractionNotLast, 0..3, "a part of a unit before the last number: found `5.5` at bytes 0..3, expected a whole number of every unit but the last; write 5'-9\" if 5.5' and 3\" add up"),
        ("5 1/2' 4", Kind::FractionNotLast, 0..5, "a part of a unit before the last number: found `5 1/2` at bytes 0..5, expected a whole number of every unit but the last; write 5'-10\" if 5 1/2' and 4\" add up"),
        ("17\u{1000bd}", Kind::Trailing, 2..6, "something behind the length: found `\\u{1000bd}` at bytes 2..6, expected the end of the length"),
        (",5", Kind::NotANumber, 0..2, "no number: found `,5` at bytes 0..2, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("20x4", Kind::SizeNotLength, 0..4, "a size, not a length: found `20x4` at bytes 0..4, expected one length; give one length of the size at a time"),
        ("3/4x6", Kind::SizeNotLength, 0..5, "a size, not a length: found `3/4x6` at bytes 0..5, expected one length; give one length of the size at a time"),
        ("1.5 m 20 cm", Kind::FractionNotLast, 0..3, "a part of a unit before the last number: found `1.5` at bytes 0..3, expected a whole number of every unit but the last; write 1 m 70 cm if 1.5 m and 20 cm add up"),
        ("2 1/2 yd 1 ft", Kind::FractionNotLast, 0..5, "a part of a unit before the last number: found `2 1/2` at bytes 0..5, expected a whole number of every unit but the last; write 2 yd 2 1/2 ft if 2 1/2 yd and 1' add up"),
        ("5 1/2 yd 1 ft 3 in", Kind::FractionNotLast, 0..5, "a part of a unit before the last number: found `5 1/2` at bytes 0..5, expected a whole number of every unit but the last; give the part with the last unit alone, as in 5'-9\""),
        ("1 m 20", Kind::LooseTail, 4..6, "a number behind a finished length: found `20` at bytes 4..6, expected the end of the length, or a unit behind the number; put a fraction before its unit, as in 3 1/2 in; a slope is not a length"),
        ("4 in 12", Kind::LooseTail, 5..7, "a number behind a finished length: found `12` at bytes 5..7, expected the end of the length, or a unit behind the number; put a fraction before its unit, as in 3 1/2 in; a slope is not a length"),
        ("3 in 1/2", Kind::LooseTail, 5..8, "a number behind a finished length: found `1/2` at bytes 5..8, expected the end of the length, or a unit behind the number; put a fraction before its unit, as in 3 1/2 in; a slope is not a length"),
        ("3' 4\" 5", Kind::LooseTail, 6..7, "a number behind a finished length: found `5` at bytes 6..7, expected the end of the length, or a unit behind the number; put a fraction before its unit, as in 3 1/2 in; a slope is not a length"),
        ("2 yd 3", Kind::LooseTail, 5..6, "a number behind a finished length: found `3` at bytes 5..6, expected the end of the length, or a unit behind the number; put a fraction before its unit, as in 3 1/2 in; a slope is not a length"),
        ("3 ft 1/2 in 3", Kind::LooseTail, 12..13, "a number behind a finished length: found `3` at bytes 12..13, expected the end of the length, or a unit behind the number; put a fraction before its unit, as in 3 1/2 in; a slope is not a length"),
        ("1.10 ft 3 in", Kind::FractionNotLast, 0..4, "a part of a unit before the last number: found `1.10` at bytes 0..4, expected a whole number of every unit but the last; write 1'-4 1/5\" if 1.10' and 3\" add up"),
        ("1 1/2' 6 1/2\"", Kind::FractionNotLast, 0..5, "a part of a unit before the last number: found `1 1/2` at bytes 0..5, expected a whole number of every unit but the last; write 2'-1/2\" if 1 1/2' and 6 1/2\" add up"),
        ("16ths in", Kind::UnknownUnit, 2..5, "an unknown unit: found `ths` at bytes 2..5, expected in, ft, yd, mm, cm or m"),
        ("17 inchs", Kind::UnknownUnit, 3..8, "an unknown unit: found `inchs` at bytes 3..8, expected in, ft, yd, mm, cm or m; write inches if that is meant"),
        ("12 milimeters", Kind::UnknownUnit, 3..13, "an unknown unit: found `milimeters` at bytes 3..13, expected in, ft, yd, mm, cm or m; write millimeters if that is meant"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn numbers_that_do_not_fit() {
    refuses(LengthParser::new(), &[
        ("1000000000000000000000000000000000000000000", Kind::TooLarge, 0..43, "a number too large to hold: found `100000000000000000000…` at bytes 0..43, expected fewer digits"),
        ("9000000000000000000000000000000", Kind::TooLarge, 0..31, "a number too large to hold: found `900000000000000000000…` at bytes 0..31, expected fewer digits"),
        ("99999999999999999999999999999999999999999 in", Kind::TooLarge, 0..41, "a number too large to hold: found `999999999999999999999…` at bytes 0..41, expected fewer digits"),
        ("0.00000000000000000000000000000001", Kind::TooFine, 0..34, "a number too fine to hold exactly: found `0.0000000000000000000…` at bytes 0..34, expected fewer decimals or a smaller denominator"),
        ("1/99999999999999999999999999999999", Kind::TooFine, 0..34, "a number too fine to hold exactly: found `1/9999999999999999999…` at bytes 0..34, expected fewer decimals or a smaller denominator"),
        ("0.3000000000000000430000000000000004", Kind::TooLarge, 0..36, "a number too large to hold: found `0.3000000000000000430…` at bytes 0..36, expected fewer digits"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn anything_left_over() {
    refuses(LengthParser::new(), &[
        ("15У4\"", Kind::Trailing, 2..4, "something behind the length: found `У` at bytes 2..4, expected the end of the length"),
        ("3Ш\"", Kind::Trailing, 1..3, "something behind the length: found `Ш` at bytes 1..3, expected the end of the length"),
        ("5²", Kind::Trailing, 1..3, "something behind the length: found `²` at bytes 1..3, expected the end of the length"),
        ("17 5/8\" and more", Kind::Trailing, 8..11, "something behind the length: found `and` at bytes 8..11, expected the end of the length"),
        ("17 5/8\"\"", Kind::Trailing, 7..8, "something behind the length: found `\"` at bytes 7..8, expected the end of the length"),
        ("6',3\"", Kind::Trailing, 2..4, "something behind the length: found `,3` at bytes 2..4, expected the end of the length"),
        ("1.2.3", Kind::Trailing, 3..5, "something behind the length: found `.3` at bytes 3..5, expected the end of the length"),
        ("5\x003", Kind::Trailing, 1..2, "something behind the length: found `\\0` at bytes 1..2, expected the end of the length"),
        ("17 5/8 in in", Kind::Trailing, 10..12, "something behind the length: found `in` at bytes 10..12, expected the end of the length"),
        ("6'-", Kind::Trailing, 2..3, "something behind the length: found `-` at bytes 2..3, expected the end of the length"),
        ("6' -", Kind::Trailing, 3..4, "something behind the length: found `-` at bytes 3..4, expected the end of the length"),
        ("1\n2", Kind::Trailing, 1..2, "something behind the length: found `\\n` at bytes 1..2, expected the end of the length"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn commas_that_do_not_group() {
    refuses(LengthParser::new().comma(Comma::Groups), &[
        ("12,50", Kind::BadGroup, 0..5, "a comma that does not group: found `12,50` at bytes 0..5, expected three digits behind each comma; use a point for decimals"),
        ("1234,567", Kind::BadGroup, 0..8, "a comma that does not group: found `1234,567` at bytes 0..8, expected three digits behind each comma; use a point for decimals"),
        ("1,25 mm", Kind::BadGroup, 0..4, "a comma that does not group: found `1,25` at bytes 0..4, expected three digits behind each comma; use a point for decimals"),
    ]);
    refuses(LengthParser::new().comma(Comma::Decimal), &[
        ("1.25,5", Kind::CommaReadings, 0..6, "a comma with two readings: found `1.25,5` at bytes 0..6, expected digits without a comma; this is neither grouped thousands nor a decimal: write it so, or say which a comma is"),
        ("1.250", Kind::PointGroup, 0..5, "a point that may group thousands: found `1.250` at bytes 0..5, expected a comma for decimals, or no point; write 1250 for the thousands, 1,250 for the decimals"),
        ("2.500", Kind::PointGroup, 0..5, "a point that may group thousands: found `2.500` at bytes 0..5, expected a comma for decimals, or no point; write 2500 for the thousands, 2,500 for the decimals"),
        ("0.125,5", Kind::CommaReadings, 0..7, "a comma with two readings: found `0.125,5` at bytes 0..7, expected digits without a comma; this is neither grouped thousands nor a decimal: write it so, or say which a comma is"),
    ]);
}

#[test]
fn no_length_of_text_and_no_byte_makes_it_panic() {
    let pieces = [
        "1", "½", "²", "₃", "/", "⁄", "-", "−", "–", "'", "\"", "″", " ", "\u{A0}", ".", ",", "x", "ft", "in", "m", "\0", "é",
        "+", "#",
    ];
    for text in of_four(&pieces) {
        for comma in [Comma::Refuse, Comma::Groups, Comma::Decimal] {
            if let Err(error) = LengthParser::new().comma(comma).parse(&text) {
                assert!(text.get(error.span()).is_some_and(|found| found.starts_with(error.found())), "{text:?}");
                assert!(!error.to_string().is_empty());
            }
        }
    }
}

#[test]
fn long_texts_are_refused_like_short_ones() {
    let long = |piece: &str| piece.repeat(1_000_000).parse::<Length>().map_err(|error| error.kind());
    assert_eq!(long("9"), Err(Kind::TooLarge));
    assert_eq!(long("0"), Ok(Length::ZERO));
    assert_eq!(long(" "), Err(Kind::Empty));
    assert_eq!(long("-"), Err(Kind::NotANumber));
    assert_eq!(long("1 "), Err(Kind::TwoNumbers));
    assert_eq!(long("1' "), Err(Kind::RepeatedUnit));
    assert_eq!(long("x"), Err(Kind::NotANumber));
    assert_eq!(long("½"), Err(Kind::TwoNumbers));
    assert_eq!(long("1/"), Err(Kind::ChainedFraction));
    assert_eq!(long("(("), Err(Kind::Arithmetic));
    assert_eq!(long("."), Err(Kind::NotANumber));
}
