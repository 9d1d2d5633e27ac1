//! Calculations that are refused, one line each, with the kind, the exact bytes to blame and the whole
//! message. What is worked out is left to `calculating.rs`.

use core::ops::Range;

use scantling::{Comma, Length, LengthParser, ParseErrorKind as Kind, Quantity, Shorthand, Unit};

type Row = (&'static str, Kind, Range<usize>, &'static str);

/// Where a length is due, so that every refusal of a calculation shows, the one of its answer among them.
#[track_caller]
fn refuses(parser: LengthParser, rows: &[Row]) {
    for (text, kind, span, message) in rows {
        let error = parser.evaluate_length(text).expect_err(text);
        assert_eq!((error.kind(), error.span(), &*error.to_string()), (*kind, span.clone(), *message), "{text:?}");
        assert!(text[span.clone()].starts_with(error.found()), "{text:?}");
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn hyphens_that_join_or_subtract() {
    refuses(LengthParser::new(), &[
        ("72-3/4", Kind::HyphenReadings, 0..6, "a hyphen with two readings, joined or subtracted: found `72-3/4` at bytes 0..6, expected a hyphen that reads one way only; this is 72 3/4 joined, 71 1/4 subtracted: write 72 3/4 or 72 - 3/4"),
        ("85-1/2in", Kind::HyphenReadings, 0..6, "a hyphen with two readings, joined or subtracted: found `85-1/2` at bytes 0..6, expected a hyphen that reads one way only; this is 85 1/2 joined, 84 1/2 subtracted: write 85 1/2 or 85 - 1/2"),
        ("72-3/4 + 1", Kind::HyphenReadings, 0..6, "a hyphen with two readings, joined or subtracted: found `72-3/4` at bytes 0..6, expected a hyphen that reads one way only; this is 72 3/4 joined, 71 1/4 subtracted: write 72 3/4 or 72 - 3/4"),
        ("2 * 72-3/4", Kind::HyphenReadings, 4..10, "a hyphen with two readings, joined or subtracted: found `72-3/4` at bytes 4..10, expected a hyphen that reads one way only; this is 72 3/4 joined, 71 1/4 subtracted: write 72 3/4 or 72 - 3/4"),
        ("(72-3/4)", Kind::HyphenReadings, 1..7, "a hyphen with two readings, joined or subtracted: found `72-3/4` at bytes 1..7, expected a hyphen that reads one way only; this is 72 3/4 joined, 71 1/4 subtracted: write 72 3/4 or 72 - 3/4"),
        ("72 -3/4 + 1", Kind::HyphenReadings, 0..7, "a hyphen with two readings, joined or subtracted: found `72 -3/4` at bytes 0..7, expected a hyphen that reads one way only; this is 72 3/4 joined, 71 1/4 subtracted: write 72 3/4 or 72 - 3/4"),
        ("72- 3/4 + 1", Kind::HyphenReadings, 0..7, "a hyphen with two readings, joined or subtracted: found `72- 3/4` at bytes 0..7, expected a hyphen that reads one way only; this is 72 3/4 joined, 71 1/4 subtracted: write 72 3/4 or 72 - 3/4"),
        ("72-½ * 2", Kind::HyphenReadings, 0..5, "a hyphen with two readings, joined or subtracted: found `72-½` at bytes 0..5, expected a hyphen that reads one way only; this is 72 1/2 joined, 71 1/2 subtracted: write 72 1/2 or 72 - ½"),
        ("72–3/4 + 1", Kind::HyphenReadings, 0..8, "a hyphen with two readings, joined or subtracted: found `72–3/4` at bytes 0..8, expected a hyphen that reads one way only; this is 72 3/4 joined, 71 1/4 subtracted: write 72 3/4 or 72 - 3/4"),
        ("72-9/8 + 1", Kind::HyphenReadings, 0..6, "a hyphen with two readings, joined or subtracted: found `72-9/8` at bytes 0..6, expected a hyphen that reads one way only; this is 73 1/8 joined, 70 7/8 subtracted: write 73 1/8 or 72 - 9/8"),
        ("6' - 2\"", Kind::HyphenReadings, 0..7, "a hyphen with two readings, joined or subtracted: found `6' - 2\"` at bytes 0..7, expected a hyphen that reads one way only; this is 74 in joined, 70 in subtracted: write 74 in or 6' - (2\")"),
        ("6' -2\" + 1\"", Kind::HyphenReadings, 0..6, "a hyphen with two readings, joined or subtracted: found `6' -2\"` at bytes 0..6, expected a hyphen that reads one way only; this is 74 in joined, 70 in subtracted: write 74 in or 6' - (2\")"),
        ("6'- 2\" + 1\"", Kind::HyphenReadings, 0..6, "a hyphen with two readings, joined or subtracted: found `6'- 2\"` at bytes 0..6, expected a hyphen that reads one way only; this is 74 in joined, 70 in subtracted: write 74 in or 6' - (2\")"),
        ("6 ft - 2 1/2 in", Kind::HyphenReadings, 0..15, "a hyphen with two readings, joined or subtracted: found `6 ft - 2 1/2 in` at bytes 0..15, expected a hyphen that reads one way only; this is 74 1/2 in joined, 69 1/2 in subtracted: write 74 1/2 in or 6 ft - (2 1/2 in)"),
        ("6' – 2\"", Kind::HyphenReadings, 0..9, "a hyphen with two readings, joined or subtracted: found `6' – 2\"` at bytes 0..9, expected a hyphen that reads one way only; this is 74 in joined, 70 in subtracted: write 74 in or 6' - (2\")"),
        ("6' - 2", Kind::HyphenReadings, 0..6, "a hyphen with two readings, joined or subtracted: found `6' - 2` at bytes 0..6, expected a hyphen that reads one way only; this is 74 in joined, 70 in subtracted: write 74 in or 6' - (2\")"),
        ("8' - 3/4\"", Kind::HyphenReadings, 0..9, "a hyphen with two readings, joined or subtracted: found `8' - 3/4\"` at bytes 0..9, expected a hyphen that reads one way only; this is 96 3/4 in joined, 95 1/4 in subtracted: write 96 3/4 in or 8' - (3/4\")"),
        ("2 yd 1 ft - 3 in", Kind::HyphenReadings, 5..16, "a hyphen with two readings, joined or subtracted: found `1 ft - 3 in` at bytes 5..16, expected a hyphen that reads one way only; this is 15 in joined, 9 in subtracted: write 15 in or 1 ft - (3 in)"),
        ("6' - 2\" * 3", Kind::HyphenReadings, 0..7, "a hyphen with two readings, joined or subtracted: found `6' - 2\"` at bytes 0..7, expected a hyphen that reads one way only; this is 74 in joined, 70 in subtracted: write 74 in or 6' - (2\")"),
        ("-6' - 2\" * 3", Kind::HyphenReadings, 1..8, "a hyphen with two readings, joined or subtracted: found `6' - 2\"` at bytes 1..8, expected a hyphen that reads one way only; this is 74 in joined, 70 in subtracted: write 74 in or 6' - (2\")"),
        ("-(6' - 2\")", Kind::HyphenReadings, 2..9, "a hyphen with two readings, joined or subtracted: found `6' - 2\"` at bytes 2..9, expected a hyphen that reads one way only; this is 74 in joined, 70 in subtracted: write 74 in or 6' - (2\")"),
        ("2 * -6' - 2\"", Kind::HyphenReadings, 5..12, "a hyphen with two readings, joined or subtracted: found `6' - 2\"` at bytes 5..12, expected a hyphen that reads one way only; this is 74 in joined, 70 in subtracted: write 74 in or 6' - (2\")"),
        ("8'-2 * 3/4\"", Kind::HyphenReadings, 0..4, "a hyphen with two readings, joined or subtracted: found `8'-2` at bytes 0..4, expected a hyphen that reads one way only; this is 98 in joined, 94 in subtracted: write 98 in or 8' - (2\")"),
        ("12' 11-1/2\" + 1\"", Kind::HyphenReadings, 4..10, "a hyphen with two readings, joined or subtracted: found `11-1/2` at bytes 4..10, expected a hyphen that reads one way only; this is 11 1/2 joined, 10 1/2 subtracted: write 11 1/2 or 11 - 1/2"),
        ("85-1/2in + 3in", Kind::HyphenReadings, 0..6, "a hyphen with two readings, joined or subtracted: found `85-1/2` at bytes 0..6, expected a hyphen that reads one way only; this is 85 1/2 joined, 84 1/2 subtracted: write 85 1/2 or 85 - 1/2"),
        ("12 feet - 11 1/2 inches", Kind::HyphenReadings, 0..23, "a hyphen with two readings, joined or subtracted: found `12 feet - 11 1/2 inch…` at bytes 0..23, expected a hyphen that reads one way only; write a blank in its place to join, brackets round what it takes away to subtract"),
        ("25-0-14", Kind::FeetInchesSixteenths, 0..7, "three numbers joined by dashes: found `25-0-14` at bytes 0..7, expected one length; if this is feet-inches-sixteenths, ask for that mode; else write 25'-0 14/16\""),
        ("1+25-0-14", Kind::FeetInchesSixteenths, 2..9, "three numbers joined by dashes: found `25-0-14` at bytes 2..9, expected one length; if this is feet-inches-sixteenths, ask for that mode; else write 25'-0 14/16\""),
        ("25-0-14 + 31-1-11", Kind::FeetInchesSixteenths, 0..7, "three numbers joined by dashes: found `25-0-14` at bytes 0..7, expected one length; if this is feet-inches-sixteenths, ask for that mode; else write 25'-0 14/16\""),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn slashes_of_a_fraction_or_a_division() {
    refuses(LengthParser::new(), &[
        ("12 / 3/4", Kind::SlashReadings, 0..8, "a slash with two readings, a fraction's or a division's: found `12 / 3/4` at bytes 0..8, expected a slash that reads one way only; this is 16 if 3/4 is a fraction, 1 if both signs divide: write 12 / (3/4) or (12 / 3) / 4"),
        ("72/3/4", Kind::SlashReadings, 0..6, "a slash with two readings, a fraction's or a division's: found `72/3/4` at bytes 0..6, expected a slash that reads one way only; this is 96 if 3/4 is a fraction, 6 if both signs divide: write 72 / (3/4) or (72 / 3) / 4"),
        ("1/2/3", Kind::SlashReadings, 0..5, "a slash with two readings, a fraction's or a division's: found `1/2/3` at bytes 0..5, expected a slash that reads one way only; this is 1 1/2 if 2/3 is a fraction, 1/6 if both signs divide: write 1 / (2/3) or (1 / 2) / 3"),
        ("1 m / 3/4", Kind::SlashReadings, 0..9, "a slash with two readings, a fraction's or a division's: found `1 m / 3/4` at bytes 0..9, expected a slash that reads one way only; this is 1 1/3 m if 3/4 is a fraction, 1/12 m if both signs divide: write 1 m / (3/4) or (1 m / 3) / 4"),
        ("6' 2\" / 3/4", Kind::SlashReadings, 0..11, "a slash with two readings, a fraction's or a division's: found `6' 2\" / 3/4` at bytes 0..11, expected a slash that reads one way only; this is 98 2/3 in if 3/4 is a fraction, 6 1/6 in if both signs divide: write 6' 2\" / (3/4) or (6' 2\" / 3) / 4"),
        ("6' 2 / 3/4", Kind::SlashReadings, 0..10, "a slash with two readings, a fraction's or a division's: found `6' 2 / 3/4` at bytes 0..10, expected a slash that reads one way only; this is 98 2/3 in if 3/4 is a fraction, 6 1/6 in if both signs divide: write 6' 2 / (3/4) or (6' 2 / 3) / 4"),
        ("6' 2/3/4", Kind::SlashReadings, 0..8, "a slash with two readings, a fraction's or a division's: found `6' 2/3/4` at bytes 0..8, expected a slash that reads one way only; this is 98 2/3 in if 3/4 is a fraction, 6 1/6 in if both signs divide: write 6' 2 / (3/4) or (6' 2 / 3) / 4"),
        ("1⁄2⁄3", Kind::ChainedFraction, 0..5, "a fraction of a fraction: found `1⁄2` at bytes 0..5, expected one number over one number; write one fraction, as in 5/8"),
        ("12 ÷ 3/4", Kind::SlashReadings, 0..9, "a slash with two readings, a fraction's or a division's: found `12 ÷ 3/4` at bytes 0..9, expected a slash that reads one way only; this is 16 if 3/4 is a fraction, 1 if both signs divide: write 12 / (3/4) or (12 / 3) / 4"),
        ("12 divided by 3/4", Kind::SlashReadings, 0..17, "a slash with two readings, a fraction's or a division's: found `12 divided by 3/4` at bytes 0..17, expected a slash that reads one way only; this is 16 if 3/4 is a fraction, 1 if both signs divide: write 12 / (3/4) or (12 / 3) / 4"),
        ("12 / -3/4", Kind::SlashReadings, 0..9, "a slash with two readings, a fraction's or a division's: found `12 / -3/4` at bytes 0..9, expected a slash that reads one way only; write the fraction in brackets, as in (3/4), or put brackets round what is divided"),
        ("(2 m) / 3/4", Kind::SlashReadings, 6..11, "a slash with two readings, a fraction's or a division's: found `/ 3/4` at bytes 6..11, expected a slash that reads one way only; write / (3/4) to divide by the fraction, / 3 / 4 to divide twice"),
        ("2 * 12 / 3/4", Kind::SlashReadings, 4..12, "a slash with two readings, a fraction's or a division's: found `12 / 3/4` at bytes 4..12, expected a slash that reads one way only; this is 16 if 3/4 is a fraction, 1 if both signs divide: write 12 / (3/4) or (12 / 3) / 4"),
        ("12 / 3 /4", Kind::SlashReadings, 5..9, "a slash with two readings, a fraction's or a division's: found `3 /4` at bytes 5..9, expected a slash that reads one way only; write the fraction in brackets, as in (3/4), or put brackets round what is divided"),
        ("12 / 3/ 4", Kind::SlashReadings, 5..9, "a slash with two readings, a fraction's or a division's: found `3/ 4` at bytes 5..9, expected a slash that reads one way only; write the fraction in brackets, as in (3/4), or put brackets round what is divided"),
        ("12\" / 3 / 4\"", Kind::SlashReadings, 6..12, "a slash with two readings, a fraction's or a division's: found `3 / 4\"` at bytes 6..12, expected a slash that reads one way only; write the fraction in brackets, as in (3/4), or put brackets round what is divided"),
        ("2\" * 3 / 4\"", Kind::SlashReadings, 5..11, "a slash with two readings, a fraction's or a division's: found `3 / 4\"` at bytes 5..11, expected a slash that reads one way only; write the fraction in brackets, as in (3/4), or put brackets round what is divided"),
        ("6' 5 / 8", Kind::SlashReadings, 3..8, "a slash with two readings, a fraction's or a division's: found `5 / 8` at bytes 3..8, expected a slash that reads one way only; write the fraction in brackets, as in (3/4), or put brackets round what is divided"),
        ("10 ft, 3 / 4 in", Kind::SlashReadings, 7..15, "a slash with two readings, a fraction's or a division's: found `3 / 4 in` at bytes 7..15, expected a slash that reads one way only; write the fraction in brackets, as in (3/4), or put brackets round what is divided"),
        ("123456789012345678 / 3/4", Kind::SlashReadings, 0..24, "a slash with two readings, a fraction's or a division's: found `123456789012345678 / …` at bytes 0..24, expected a slash that reads one way only; write the fraction in brackets, as in (3/4), or put brackets round what is divided"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn signs_and_brackets() {
    refuses(LengthParser::new(), &[
        ("72 -", Kind::MissingOperand, 3..4, "a missing number: found `-` at bytes 3..4, expected a number or an opening bracket"),
        ("7-3-", Kind::MissingOperand, 3..4, "a missing number: found `-` at bytes 3..4, expected a number or an opening bracket"),
        ("72 +", Kind::MissingOperand, 3..4, "a missing number: found `+` at bytes 3..4, expected a number or an opening bracket"),
        ("-", Kind::MissingOperand, 0..1, "a missing number: found `-` at bytes 0..1, expected a number or an opening bracket"),
        ("7/16 minus", Kind::MissingOperand, 5..10, "a missing number: found `minus` at bytes 5..10, expected a number or an opening bracket"),
        ("*3", Kind::MissingOperand, 0..1, "a missing number: found `*` at bytes 0..1, expected a number or an opening bracket"),
        ("/ 3", Kind::MissingOperand, 0..1, "a missing number: found `/` at bytes 0..1, expected a number or an opening bracket"),
        ("2 * / 3", Kind::MissingOperand, 4..5, "a missing number: found `/` at bytes 4..5, expected a number or an opening bracket"),
        ("2 ** 3", Kind::MissingOperand, 3..4, "a missing number: found `*` at bytes 3..4, expected a number or an opening bracket"),
        ("()", Kind::MissingOperand, 1..2, "a missing number: found `)` at bytes 1..2, expected a number or an opening bracket"),
        ("2 * ()", Kind::MissingOperand, 5..6, "a missing number: found `)` at bytes 5..6, expected a number or an opening bracket"),
        ("(72 - )", Kind::MissingOperand, 6..7, "a missing number: found `)` at bytes 6..7, expected a number or an opening bracket"),
        ("2 (3)", Kind::MissingOperator, 2..3, "two things side by side and no sign between them: found `(` at bytes 2..3, expected +, -, *, / or the end; to multiply, write *; a unit goes behind its number, not behind a bracket"),
        ("2(3)", Kind::MissingOperator, 1..2, "two things side by side and no sign between them: found `(` at bytes 1..2, expected +, -, *, / or the end; to multiply, write *; a unit goes behind its number, not behind a bracket"),
        ("(2)(3)", Kind::MissingOperator, 3..4, "two things side by side and no sign between them: found `(` at bytes 3..4, expected +, -, *, / or the end; to multiply, write *; a unit goes behind its number, not behind a bracket"),
        ("(2) 3", Kind::MissingOperator, 4..5, "two things side by side and no sign between them: found `3` at bytes 4..5, expected +, -, *, / or the end; to multiply, write *; a unit goes behind its number, not behind a bracket"),
        ("(2) 3/4\"", Kind::MissingOperator, 4..7, "two things side by side and no sign between them: found `3/4` at bytes 4..7, expected +, -, *, / or the end; to multiply, write *; a unit goes behind its number, not behind a bracket"),
        ("(3 + 4) in", Kind::MissingOperator, 8..10, "two things side by side and no sign between them: found `in` at bytes 8..10, expected +, -, *, / or the end; to multiply, write *; a unit goes behind its number, not behind a bracket"),
        ("17 (", Kind::MissingOperator, 3..4, "two things side by side and no sign between them: found `(` at bytes 3..4, expected +, -, *, / or the end; to multiply, write *; a unit goes behind its number, not behind a bracket"),
        ("(", Kind::UnclosedBracket, 0..1, "a bracket that is never closed: found `(` at bytes 0..1, expected a closing bracket for it"),
        ("((72 - 3)", Kind::UnclosedBracket, 0..1, "a bracket that is never closed: found `(` at bytes 0..1, expected a closing bracket for it"),
        ("(72 - 3", Kind::UnclosedBracket, 0..1, "a bracket that is never closed: found `(` at bytes 0..1, expected a closing bracket for it"),
        ("72 - 3)", Kind::StrayBracket, 6..7, "a closing bracket that none opens: found `)` at bytes 6..7, expected an opening bracket before it"),
        (")", Kind::MissingOperand, 0..1, "a missing number: found `)` at bytes 0..1, expected a number or an opening bracket"),
        ("minus-3/4", Kind::NotANumber, 0..5, "no number: found `minus` at bytes 0..5, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("5 minus-3/4", Kind::Qualified, 2..7, "a length with a qualifier: found `minus` at bytes 2..7, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("72 - [3]", Kind::NotANumber, 5..6, "no number: found `[` at bytes 5..6, expected a number such as 17, 5/8, 3½ or 17.625"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn quantities_that_do_not_go_together() {
    refuses(LengthParser::new(), &[
        ("6\" + 2\" * 3\"", Kind::UnlikeSum, 5..12, "lengths, areas or volumes mixed in one sum: found `2\" * 3\"` at bytes 5..12, expected lengths alone, areas alone or volumes alone; a length times a length is an area; to take a length several times, multiply it by a bare number"),
        ("2\" * 3\" - 6\"", Kind::UnlikeSum, 0..7, "lengths, areas or volumes mixed in one sum: found `2\" * 3\"` at bytes 0..7, expected lengths alone, areas alone or volumes alone; a length times a length is an area; to take a length several times, multiply it by a bare number"),
        ("2\" * 3\" * 4\" + 2\" * 3\"", Kind::UnlikeSum, 0..12, "lengths, areas or volumes mixed in one sum: found `2\" * 3\" * 4\"` at bytes 0..12, expected lengths alone, areas alone or volumes alone; a length times a length is an area; to take a length several times, multiply it by a bare number"),
        ("2\" * 3\" * 4\" - 6\"", Kind::UnlikeSum, 0..12, "lengths, areas or volumes mixed in one sum: found `2\" * 3\" * 4\"` at bytes 0..12, expected lengths alone, areas alone or volumes alone; a length times a length is an area; to take a length several times, multiply it by a bare number"),
        ("72 + 3 mm", Kind::BareNumber, 0..2, "a bare number beside a length in another unit: found `72` at bytes 0..2, expected a number with its unit; say what it measures, as in 72 in or 72 mm"),
        ("3 mm - 72", Kind::BareNumber, 7..9, "a bare number beside a length in another unit: found `72` at bytes 7..9, expected a number with its unit; say what it measures, as in 72 in or 72 mm"),
        ("6' + 3", Kind::BareNumber, 5..6, "a bare number beside a length in another unit: found `3` at bytes 5..6, expected a number with its unit; say what it measures, as in 72 in or 72 mm"),
        ("1\" + 2 mm + 3", Kind::BareNumber, 12..13, "a bare number beside a length in another unit: found `3` at bytes 12..13, expected a number with its unit; say what it measures, as in 72 in or 72 mm"),
        ("2 * 3 + 4 cm", Kind::BareNumber, 0..5, "a bare number beside a length in another unit: found `2 * 3` at bytes 0..5, expected a number with its unit; say what it measures, as in 72 in or 72 mm"),
        ("8' / 2' + 3\"", Kind::NumberInSum, 0..7, "a plain number in a sum with a length, an area or a volume: found `8' / 2'` at bytes 0..7, expected a number with its unit; a number can multiply or divide a length, not be added to it"),
        ("3\" - 8' / 2'", Kind::NumberInSum, 5..12, "a plain number in a sum with a length, an area or a volume: found `8' / 2'` at bytes 5..12, expected a number with its unit; a number can multiply or divide a length, not be added to it"),
        ("2 + 3\" * 4\"", Kind::NumberInSum, 0..1, "a plain number in a sum with a length, an area or a volume: found `2` at bytes 0..1, expected a number with its unit; a number can multiply or divide a length, not be added to it"),
        ("3\" * 4\" * 5\" - 2", Kind::NumberInSum, 15..16, "a plain number in a sum with a length, an area or a volume: found `2` at bytes 15..16, expected a number with its unit; a number can multiply or divide a length, not be added to it"),
        ("2\" * 3\" * 4\" * 5\"", Kind::BeyondVolume, 0..17, "a product of more than three lengths: found `2\" * 3\" * 4\" * 5\"` at bytes 0..17, expected at most a volume"),
        ("(2\" * 3\") * (4\" * 5\")", Kind::BeyondVolume, 0..21, "a product of more than three lengths: found `(2\" * 3\") * (4\" * 5\")` at bytes 0..21, expected at most a volume"),
        ("72 / 3\"", Kind::InverseLength, 0..7, "a number divided by a length, or a length by an area: found `72 / 3\"` at bytes 0..7, expected a divisor of the same kind, or a plain number; to count how often it goes in, give both their unit, as in 72 in / 3 in; a fraction has no blanks, as in 3/4 in"),
        ("3 / (4\" * 2\")", Kind::InverseLength, 0..13, "a number divided by a length, or a length by an area: found `3 / (4\" * 2\")` at bytes 0..13, expected a divisor of the same kind, or a plain number; to count how often it goes in, give both their unit, as in 72 in / 3 in; a fraction has no blanks, as in 3/4 in"),
        ("6\" / (2\" * 3\")", Kind::InverseLength, 0..14, "a number divided by a length, or a length by an area: found `6\" / (2\" * 3\")` at bytes 0..14, expected a divisor of the same kind, or a plain number; to count how often it goes in, give both their unit, as in 72 in / 3 in; a fraction has no blanks, as in 3/4 in"),
        ("100/(4\")", Kind::InverseLength, 0..8, "a number divided by a length, or a length by an area: found `100/(4\")` at bytes 0..8, expected a divisor of the same kind, or a plain number; to count how often it goes in, give both their unit, as in 72 in / 3 in; a fraction has no blanks, as in 3/4 in"),
        ("1 / 1\"", Kind::InverseLength, 0..6, "a number divided by a length, or a length by an area: found `1 / 1\"` at bytes 0..6, expected a divisor of the same kind, or a plain number; to count how often it goes in, give both their unit, as in 72 in / 3 in; a fraction has no blanks, as in 3/4 in"),
        ("12 / 4 ft", Kind::InverseLength, 0..9, "a number divided by a length, or a length by an area: found `12 / 4 ft` at bytes 0..9, expected a divisor of the same kind, or a plain number; to count how often it goes in, give both their unit, as in 72 in / 3 in; a fraction has no blanks, as in 3/4 in"),
        ("72 / 0", Kind::DivisionByZero, 5..6, "a division by zero: found `0` at bytes 5..6, expected a divisor other than zero"),
        ("72\" / (3 - 3)", Kind::DivisionByZero, 6..13, "a division by zero: found `(3 - 3)` at bytes 6..13, expected a divisor other than zero"),
        ("72\" / 0\"", Kind::DivisionByZero, 6..8, "a division by zero: found `0\"` at bytes 6..8, expected a divisor other than zero"),
        ("5/0 + 1", Kind::ZeroDenominator, 0..3, "a fraction over zero: found `5/0` at bytes 0..3, expected a number above zero below the line; check the number below the line"),
        ("8' / 2'", Kind::NumberResult, 0..7, "a number where a length is due: found `8' / 2'` at bytes 0..7, expected a calculation that comes to a length; a length divided by a length is how often it goes in"),
        ("4' * 8'", Kind::AreaResult, 0..7, "an area where a length is due: found `4' * 8'` at bytes 0..7, expected a calculation that comes to a length; a length times a length is an area; to take a length several times, multiply it by a bare number"),
        ("4' * 8' * 1\"", Kind::VolumeResult, 0..12, "a volume where a length is due: found `4' * 8' * 1\"` at bytes 0..12, expected a calculation that comes to a length; three lengths multiplied are a volume; to take a length several times, multiply it by a bare number"),
        ("2in * 1in", Kind::AreaResult, 0..9, "an area where a length is due: found `2in * 1in` at bytes 0..9, expected a calculation that comes to a length; a length times a length is an area; to take a length several times, multiply it by a bare number"),
        ("3000000000000000000000000 * 3000000000000000000000000", Kind::ResultOutOfRange, 0..53, "an answer out of range: found `300000000000000000000…` at bytes 0..53, expected an answer that can be held exactly"),
        ("1/4294967296 * 1/8589934592", Kind::ResultOutOfRange, 0..27, "an answer out of range: found `1/4294967296 * 1/8589…` at bytes 0..27, expected an answer that can be held exactly"),
        ("3000000000000000000000000 ft + 1 in", Kind::TooLarge, 0..25, "a number too large to hold: found `300000000000000000000…` at bytes 0..25, expected fewer digits"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn operands_are_refused_as_they_are_alone() {
    refuses(LengthParser::new(), &[
        ("abc + 3", Kind::NotANumber, 0..3, "no number: found `abc` at bytes 0..3, expected a number such as 17, 5/8, 3½ or 17.625"),
        ("5 foo - 3", Kind::UnknownUnit, 2..5, "an unknown unit: found `foo` at bytes 2..5, expected in, ft, yd, mm, cm or m; write foot if that is meant"),
        ("17 9/8 + 1", Kind::ImproperFraction, 0..6, "a fraction part of one or more: found `17 9/8` at bytes 0..6, expected a fraction below one behind the whole number; write 18 1/8"),
        ("5 3 + 1", Kind::TwoNumbers, 0..3, "two numbers and nothing to tell them apart: found `5 3` at bytes 0..3, expected one number, or a unit behind the first; write 5' 3\" for feet and inches, 5 3/8 for a fraction"),
        ("1/1 2/3", Kind::TwoNumbers, 0..7, "two numbers and nothing to tell them apart: found `1/1 2/3` at bytes 0..7, expected one number, or a unit behind the first; give one length at a time, 1/1 or 2/3; to add them, calculate 1/1 + 2/3"),
        ("4 in 12 - 1", Kind::LooseTail, 5..7, "a number behind a finished length: found `12` at bytes 5..7, expected the end of the length, or a unit behind the number; put a fraction before its unit, as in 3 1/2 in; a slope is not a length"),
        ("2 yd 3 / 4 in", Kind::LooseTail, 5..6, "a number behind a finished length: found `3` at bytes 5..6, expected the end of the length, or a unit behind the number; put a fraction before its unit, as in 3 1/2 in; a slope is not a length"),
        ("3\" 4\" + 1\"", Kind::RepeatedUnit, 4..5, "the same unit twice: found `\"` at bytes 4..5, expected a smaller unit behind a larger one; if the first should be feet, mark it ' or ft"),
        ("1 m 3 in * 2", Kind::MixedSystems, 6..8, "metric and imperial in one length: found `in` at bytes 6..8, expected units of one system; to put the two together, calculate 1 m + 3 in"),
        ("2 km in", Kind::UnknownUnit, 2..4, "an unknown unit: found `km` at bytes 2..4, expected in, ft, yd, mm, cm or m"),
        ("1,250 + 3", Kind::CommaReadings, 0..5, "a comma with two readings: found `1,250` at bytes 0..5, expected digits without a comma; this is 1250 if the comma groups thousands, 1.250 if it is a decimal comma: write it so, or say which a comma is"),
        ("1'000 + 3", Kind::ApostropheReadings, 0..5, "a mark with two readings: found `1'000` at bytes 0..5, expected at most two digits behind a foot mark; this is 1000 if the mark groups thousands, 1' 000\" if it means feet: write it so"),
        ("5 ft.10 in - 3 in", Kind::PointReadings, 4..7, "a point with two readings: found `.10` at bytes 4..7, expected a blank behind an abbreviation's full stop; put a blank behind the full stop, or a zero before the decimal point"),
        ("24 ±1/32", Kind::ToleranceNotLength, 3..5, "a length with a tolerance: found `±` at bytes 3..5, expected a length alone; give the length without its tolerance"),
        ("24 +/- 1/32", Kind::ToleranceNotLength, 3..6, "a length with a tolerance: found `+/-` at bytes 3..6, expected a length alone; give the length without its tolerance"),
        ("17 5/8 strong - 1", Kind::Qualified, 7..13, "a length with a qualifier: found `strong` at bytes 7..13, expected a length alone; how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64"),
        ("4 x 6' 4\"", Kind::SizeOrProduct, 0..9, "a size or a product: found `4 x 6' 4\"` at bytes 0..9, expected a sign that only multiplies; to multiply, write 4 * 6' 4\"; a size such as 3/4 x 4' x 8' is not one length"),
        ("2x4", Kind::SizeOrProduct, 0..3, "a size or a product: found `2x4` at bytes 0..3, expected a sign that only multiplies; to multiply, write 2 * 4; a size such as 3/4 x 4' x 8' is not one length"),
        ("3 x 24 1/2", Kind::SizeOrProduct, 0..10, "a size or a product: found `3 x 24 1/2` at bytes 0..10, expected a sign that only multiplies; to multiply, write 3 * 24 1/2; a size such as 3/4 x 4' x 8' is not one length"),
        ("72 - 2 X 3/4\" + 1", Kind::SizeOrProduct, 5..13, "a size or a product: found `2 X 3/4\"` at bytes 5..13, expected a sign that only multiplies; to multiply, write 2 * 3/4\"; a size such as 3/4 x 4' x 8' is not one length"),
        ("3/4 x 12 by 36", Kind::SizeOrProduct, 0..14, "a size or a product: found `3/4 x 12 by 36` at bytes 0..14, expected a sign that only multiplies; to multiply, write 3/4 * 12 * 36; a size such as 3/4 x 4' x 8' is not one length"),
        ("13/4x12", Kind::SizeOrProduct, 0..7, "a size or a product: found `13/4x12` at bytes 0..7, expected a sign that only multiplies; to multiply, write 13/4 * 12; a size such as 3/4 x 4' x 8' is not one length"),
        ("1 x 2 x 3 x 4", Kind::SizeOrProduct, 0..13, "a size or a product: found `1 x 2 x 3 x 4` at bytes 0..13, expected a sign that only multiplies; to multiply, write *; a size such as 3/4 x 4' x 8' is not one length"),
        ("3 x (24 1/2)", Kind::SizeOrProduct, 2..3, "a size or a product: found `x` at bytes 2..3, expected a sign that only multiplies; to multiply, write *; a size such as 3/4 x 4' x 8' is not one length"),
        ("1 + 3 by -4", Kind::SizeOrProduct, 6..8, "a size or a product: found `by` at bytes 6..8, expected a sign that only multiplies; to multiply, write *; a size such as 3/4 x 4' x 8' is not one length"),
        ("2 x", Kind::SizeOrProduct, 2..3, "a size or a product: found `x` at bytes 2..3, expected a sign that only multiplies; to multiply, write *; a size such as 3/4 x 4' x 8' is not one length"),
        ("1/2 of 36", Kind::MissingOperator, 4..6, "two things side by side and no sign between them: found `of` at bytes 4..6, expected +, -, *, / or the end; to multiply, write *; a unit goes behind its number, not behind a bracket"),
        ("(3) x 24", Kind::MissingOperator, 4..5, "two things side by side and no sign between them: found `x` at bytes 4..5, expected +, -, *, / or the end; to multiply, write *; a unit goes behind its number, not behind a bracket"),
        ("17 strong 5", Kind::MissingOperator, 3..9, "two things side by side and no sign between them: found `strong` at bytes 3..9, expected +, -, *, / or the end; to multiply, write *; a unit goes behind its number, not behind a bracket"),
        ("341/2 + 1", Kind::LostBlank, 0..5, "a fraction with two readings: found `341/2` at bytes 0..5, expected a blank behind the whole number; write 170 1/2, or 34 1/2 if a blank was lost"),
        ("1e3 + 1", Kind::UnknownUnit, 1..2, "an unknown unit: found `e` at bytes 1..2, expected in, ft, yd, mm, cm or m"),
        ("99999999999999999999999999999999999999999 + 1", Kind::TooLarge, 0..41, "a number too large to hold: found `999999999999999999999…` at bytes 0..41, expected fewer digits"),
        ("2 + 1/2.5\"", Kind::InverseLength, 4..10, "a number divided by a length, or a length by an area: found `1/2.5\"` at bytes 4..10, expected a divisor of the same kind, or a plain number; to count how often it goes in, give both their unit, as in 72 in / 3 in; a fraction has no blanks, as in 3/4 in"),
    ]);
}

#[test]
#[rustfmt::skip] // one line a case
fn a_bare_number_beside_another_unit_than_the_default() {
    refuses(LengthParser::new().default_unit(Unit::Millimeter), &[
        ("72 + 3\"", Kind::BareNumber, 0..2, "a bare number beside a length in another unit: found `72` at bytes 0..2, expected a number with its unit; say what it measures, as in 72 in or 72 mm"),
        ("1 m + 20", Kind::BareNumber, 6..8, "a bare number beside a length in another unit: found `20` at bytes 6..8, expected a number with its unit; say what it measures, as in 72 in or 72 mm"),
        ("6' 2 + 20", Kind::BareNumber, 7..9, "a bare number beside a length in another unit: found `20` at bytes 7..9, expected a number with its unit; say what it measures, as in 72 in or 72 mm"),
        ("-3 - 1 ft", Kind::BareNumber, 0..2, "a bare number beside a length in another unit: found `-3` at bytes 0..2, expected a number with its unit; say what it measures, as in 72 in or 72 mm"),
        ("+3 - 1 ft", Kind::BareNumber, 0..2, "a bare number beside a length in another unit: found `+3` at bytes 0..2, expected a number with its unit; say what it measures, as in 72 in or 72 mm"),
    ]);
}

#[test]
fn nothing_is_no_calculation() {
    for text in ["", "   ", "\n", "\u{A0}"] {
        let error = LengthParser::new().evaluate(text).unwrap_err();
        assert_eq!((error.kind(), error.span()), (Kind::Empty, 0..0), "{text:?}");
    }
}

#[test]
fn a_calculation_stands_in_one_line() {
    let refused = |text: &str| LengthParser::new().evaluate(text).map_err(|error| (error.kind(), error.span()));
    assert_eq!(refused("1\n+ 2"), Err((Kind::Trailing, 1..2)));
    assert_eq!(refused("1 +\n2"), Err((Kind::NotANumber, 3..4)));
    assert_eq!(refused("(1)\n+ 2"), Err((Kind::MissingOperator, 3..4)));
    assert_eq!(refused("\n 1 + 2\r\n"), Ok(Quantity::Number(3.into())));
}

/// What a hint says to write is read, and comes to what the hint says it comes to.
#[test]
fn hints_can_be_followed() {
    let inches = |text: &str| LengthParser::new().evaluate_length(text);
    for (written, num, den) in [
        ("72 3/4", 291, 4),
        ("72 - 3/4", 285, 4),
        ("73 1/8", 585, 8),
        ("72 - 9/8", 567, 8),
        ("72 - ½", 143, 2),
        ("74 in", 74, 1),
        ("6' - (2\")", 70, 1),
        ("8' - (2\")", 94, 1),
        ("6 ft - (2 1/2 in)", 139, 2),
        ("11 - 1/2", 21, 2),
        ("12 / (3/4)", 16, 1),
        ("(12 / 3) / 4", 1, 1),
        ("1 / (2/3)", 3, 2),
        ("(1 / 2) / 3", 1, 6),
        ("6' 2\" / (3/4)", 296, 3),
        ("(6' 2\" / 3) / 4", 37, 6),
        ("12 / 3 / 4", 1, 1),
        ("3 * 24 1/2", 147, 2),
        ("4 * 6' 4\"", 304, 1),
    ] {
        assert_eq!(inches(written), Ok(Length::fraction(num, den, Unit::Inch)), "{written:?}");
    }
}

#[test]
fn brackets_go_64_deep() {
    let nested = |depth: usize| LengthParser::new().evaluate(&format!("{}1{}", "(".repeat(depth), ")".repeat(depth)));
    assert_eq!(nested(64), Ok(Quantity::Number(1.into())));
    let error = nested(65).unwrap_err();
    assert_eq!(error.span(), 64..65);
    assert_eq!(
        error.to_string(),
        "brackets too deep in brackets: found `(` at bytes 64..65, expected at most 64 open at once; work out the innermost ones first"
    );
    // One behind another is no deeper than one alone.
    assert_eq!(LengthParser::new().evaluate(&format!("0{}", " + (1)".repeat(1000))), Ok(Quantity::Number(1000.into())));
}

#[test]
fn no_length_of_text_and_no_byte_makes_it_panic() {
    let pieces = [
        "1", "½", "²", "/", " / ", "⁄", "-", " - ", "−", "'", "\"", " ", ".", ",", "ft", "m", "+", "*", "(", ")", "x", "\n", "é",
    ];
    for (length, comma) in [(4, Comma::Refuse), (3, Comma::Decimal), (3, Comma::Groups)] {
        for number in 0..pieces.len().pow(length) {
            let text = (0..length).map(|place| pieces[number / pieces.len().pow(place) % pieces.len()]).collect::<String>();
            if let Err(error) = LengthParser::new().comma(comma).evaluate(&text) {
                assert!(text.get(error.span()).is_some_and(|found| found.starts_with(error.found())), "{text:?}");
                assert!(!error.to_string().is_empty());
            }
        }
    }
}

/// Were any of this quadratic, or as deep in calls as the text is long, the test would not come back.
#[test]
fn long_texts_are_worked_out_or_refused_like_short_ones() {
    let long = |head: &str, piece: &str, tail: &str| {
        let text = format!("{head}{}{tail}", piece.repeat(100_000));
        LengthParser::new().evaluate(&text).map_err(|error| error.kind())
    };
    let number = |number: i128| Ok(Quantity::Number(number.into()));
    assert_eq!(long("1", "+1", ""), number(100_001));
    assert_eq!(long("1", " - 1", ""), number(-99_999));
    assert_eq!(long("1", "-1", ""), number(-99_999));
    assert_eq!(long("1", "*1", ""), number(1));
    assert_eq!(long("1", " / 1", ""), number(1));
    assert_eq!(long("", "-", "1"), number(1));
    assert_eq!(long("", "+", "1"), number(1));
    assert_eq!(long("", "- ", "1"), number(1));
    assert_eq!(long("0 * 1", "0", ""), Err(Kind::TooLarge));
    assert_eq!(long("1 + ", "0", "1"), number(2));
    assert_eq!(long("1 +", " ", "1"), number(2));
    assert_eq!(long("0", " + 1' - (1\")", ""), Err(Kind::BareNumber));
    assert_eq!(long("1\"", " - 6'-2\"", ""), Ok(Quantity::Length(Length::new(1 - 74 * 100_000, Unit::Inch))));
    assert_eq!(long("1\"", " - 6' - 2\"", ""), Ok(Quantity::Length(Length::new(1 - 74 * 100_000, Unit::Inch))));
    assert_eq!(long("1\"", " - 6' - 12'", ""), Ok(Quantity::Length(Length::new(1 - 216 * 100_000, Unit::Inch))));
    assert_eq!(long("", "6' - ", "1\""), Ok(Quantity::Length(Length::new(72 - 72 * 99_999 - 1, Unit::Inch))));
    assert_eq!(long("", "(", ""), Err(Kind::TooDeep));
    assert_eq!(long("", "()", ""), Err(Kind::MissingOperand));
    assert_eq!(long("", "(1)", ""), Err(Kind::MissingOperator));
    assert_eq!(long("1", ")", ""), Err(Kind::StrayBracket));
    assert_eq!(long("", "1/", "1"), Err(Kind::SlashReadings));
    assert_eq!(long("", "*", ""), Err(Kind::MissingOperand));
    assert_eq!(long("", "1 ", ""), Err(Kind::TwoNumbers));
    assert_eq!(long("", "1 in ", ""), Err(Kind::RepeatedUnit));
    assert_eq!(long("", "x", ""), Err(Kind::NotANumber));
    assert_eq!(long("", "½", ""), Err(Kind::TwoNumbers));
    assert_eq!(long("", "²", ""), Err(Kind::TooLarge));
    assert_eq!(long("1", "⁄2", ""), Err(Kind::ChainedFraction));
    assert_eq!(long("", "1,", ""), Err(Kind::CommaReadings));
    assert_eq!(long("", "in-", "1"), Err(Kind::NotANumber));
}

#[test]
fn a_shorthand_is_read_whole_and_never_half_subtracted() {
    let doors = LengthParser::new().shorthand(Shorthand::FeetInches);
    assert_eq!(doors.evaluate("2-6").map(Quantity::length), Ok(Some(Length::new(30, Unit::Inch))));
    let error = doors.evaluate("1 + 12-6").unwrap_err();
    assert_eq!((error.kind(), error.span()), (Kind::JoinedNumbers, 4..8));
    let error = doors.evaluate("1 + 12–6").unwrap_err();
    assert_eq!((error.kind(), error.span()), (Kind::JoinedNumbers, 4..10));
    assert!(doors.evaluate("2' 6\" - 1\"").is_ok());
    assert_eq!(doors.evaluate_length("-5' + 1\""), Ok(Length::new(-59, Unit::Inch)));
    assert_eq!(doors.evaluate_length("6' - -3'"), Ok(Length::new(9, Unit::Foot)));
    assert_eq!(doors.evaluate("5-").unwrap_err().kind(), Kind::MissingOperand);
    let trusses = LengthParser::new().shorthand(Shorthand::FeetInchesSixteenths);
    assert_eq!(trusses.evaluate("120408 + 1\"").map(Quantity::length), Ok(Some(Length::fraction(299, 2, Unit::Inch))));
}
