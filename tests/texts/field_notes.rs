//! Inputs that people really typed, and where other readers went wrong on them: common practice, no source.
//! One line a case; every value was worked by hand.

use num_rational::Ratio;
use scantling::{
    Called, Comma, Length, LengthParser, ParseErrorKind as Kind, Rounding, RoundingMode, Shorthand, Side, Size, Toleranced, Unit,
    Warning,
};

const IN: Unit = Unit::Inch;
const FT: Unit = Unit::Foot;
const YD: Unit = Unit::Yard;
const MM: Unit = Unit::Millimeter;
const M: Unit = Unit::Meter;

const PLAIN: LengthParser = LengthParser::new();

fn length(num: i64, den: u64, unit: Unit) -> Length {
    Length::fraction(num, den, unit)
}

#[test]
#[rustfmt::skip] // one line a case, with what went wrong elsewhere
fn read() {
    for (text, num, den, unit, elsewhere) in [
        ("3/16\"", 3, 16, IN, "a fraction without a whole part was missed"),
        ("12'-11\"", 155, 1, IN, "the dash after the foot mark was taken for a minus"),
        ("12' 11-1/2\"", 311, 2, IN, "one of two dashes was"),
        ("-11'11\"", -143, 1, IN, "the sign covered the feet alone"),
        ("5' 3/4\"", 243, 4, IN, "the feet were dropped"),
        ("6 1/2 ft", 13, 2, FT, "the whole part was dropped"),
        ("2 1/2 in", 5, 2, IN, "the blank multiplied"),
        ("6'1", 73, 1, IN, "the closing mark was missing"),
        ("5'9", 69, 1, IN, "the closing mark was missing"),
        ("10in", 10, 1, IN, "the i was taken for an imaginary unit"),
        ("-10inch", -10, 1, IN, "the i was taken for an imaginary unit"),
        ("100inches", 100, 1, IN, "the i was taken for an imaginary unit"),
        ("5 foot 2 in", 15_748, 10, MM, "five feet were multiplied by two"),
        ("3'2\"", 38, 1, IN, "the pair was an unknown unit"),
        ("1′ 1″", 13, 1, IN, "primes were not quotes"),
        ("2½", 5, 2, IN, "became 21/2"),
        ("4⅑ m", 37, 9, M, "multiplied"),
        ("¹⁄₂", 1, 2, IN, "raised and lowered digits were not read"),
        ("⅟₂", 1, 2, IN, "raised and lowered digits were not read"),
        ("4²⁹/₃₂″", 157, 32, IN, "became 429/32"),
        ("5¹/₃₂″", 161, 32, IN, "became 51/32"),
        ("5⅛″", 41, 8, IN, "became 51/8"),
        ("-8 3/4", -35, 4, IN, "a syntax error"),
        ("-1 2/3", -5, 3, IN, "the sign covered the whole number alone"),
        ("1-1/2", 3, 2, IN, "the dash subtracted"),
        ("85-1/2in", 171, 2, IN, "not read at all"),
        (".5", 1, 2, IN, "read as 5"),
        ("−0.5341", -5341, 10_000, IN, "the true minus sign was unknown"),
        ("- 1′ 1″", -13, 1, IN, "the blank behind the sign"),
        ("-0 ft 1 in", -1, 1, IN, "minus zero lost its sign"),
        ("24\"", 24, 1, IN, "seconds of arc"),
        ("10 3/8 IN.", 83, 8, IN, "the fraction was dropped"),
        ("5 ft. 10 in", 70, 1, IN, "the full stop ended the length"),
        ("5′10″", 70, 1, IN, "the glued prime"),
        ("432'1\"", 5185, 1, IN, "read as 432 meters"),
        ("one and one half", 3, 2, IN, "gave 2"),
        ("two hundred and twelve and one twentieth", 4241, 20, IN, "the last part multiplied"),
        ("5.6'", 336, 5, IN, "five feet six"),
        ("3/4", 3, 4, IN, "the fourth of March"),
        ("4'-7 1/4", 221, 4, IN, "40 3/4"),
        ("8' -5/8\"", 773, 8, IN, "95 3/8"),
        ("3ft5-15/32in", 1327, 32, IN, "not read at all"),
        ("1ft3-5/8in", 125, 8, IN, "not read at all"),
        ("1/3 yard", 12, 1, IN, "no tape shows thirds"),
        ("2/3 yard", 24, 1, IN, "no tape shows thirds"),
        ("two thirds of a yard", 24, 1, IN, "no tape shows thirds"),
        ("25/6 ft", 50, 1, IN, "refused"),
        ("83/128", 83, 128, IN, "denominators past 64"),
        ("49-in.", 49, 1, IN, "minus"),
        ("11'3", 135, 1, IN, "read as 113"),
        ("1 2/5", 7, 5, IN, "an example of its own documentation did not parse"),
        ("3.9999 ft", 39_999, 10_000, FT, "four feet"),
        ("-1.25 ft", -15, 1, IN, "each part was signed"),
        ("100mm", 100, 1, MM, "a blank was demanded"),
        ("100 millimeters", 100, 1, MM, "only the symbol was known"),
        ("1 millimeter", 1, 1, MM, "only the plural was known"),
        ("2 yards", 2, 1, YD, "only the symbol was known"),
        ("230 cm", 2300, 1, MM, "7.545932 feet"),
        ("12 ft 1/4 in", 577, 4, IN, "read as a product"),
    ] {
        assert_eq!(PLAIN.parse(text), Ok(length(num, den, unit)), "{text:?}, elsewhere {elsewhere}");
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn refused() {
    for (text, kind, blamed) in [
        ("120′ 4” 1⁄2″", Kind::RepeatedUnit, "″"),
        ("2′61/2′′", Kind::ImproperFraction, "61/2"),
        ("341/2′′", Kind::LostBlank, "341/2"),
        ("15У4\"", Kind::Trailing, "У"),
        ("3Ш\"", Kind::Trailing, "Ш"),
        ("%\"", Kind::NotANumber, "%"),
        ("1/1 2/3", Kind::TwoNumbers, "1/1 2/3"),
        ("4 10/3", Kind::ImproperFraction, "4 10/3"),
        ("25-0-14", Kind::FeetInchesSixteenths, "25-0-14"),
        ("29 000 mm", Kind::TwoNumbers, "29 000"),
        ("1,3 cm", Kind::CommaReadings, "1,3"),
        ("1,500", Kind::CommaReadings, "1,500"),
        ("387,737,263,297.2403 feet", Kind::CommaReadings, "387,737,263,297.2403"),
        ("4,500.5", Kind::CommaReadings, "4,500.5"),
        ("404 a", Kind::UnknownUnit, "a"),
        ("2x4x8", Kind::NominalName, "2x4x8"),
        ("5/4x6", Kind::NominalName, "5/4x6"),
        ("2\"-4 1/2\"", Kind::RepeatedUnit, "\""),
        ("+", Kind::LoneSign, "+"),
        ("1’234 ft 5 in", Kind::ApostropheReadings, "1’234"),
        ("", Kind::Empty, ""),
    ] {
        let error = PLAIN.parse(text).expect_err(text);
        assert_eq!((error.kind(), &text[error.span()]), (kind, blamed), "{text:?}");
    }
}

#[test]
fn what_is_read_only_when_asked_for() {
    let groups = PLAIN.comma(Comma::Groups);
    let decimal = PLAIN.comma(Comma::Decimal);
    let packed = PLAIN.shorthand(Shorthand::FeetInchesSixteenths);
    let doors = PLAIN.shorthand(Shorthand::FeetInches);
    for (parser, text, expected) in [
        (groups, "29\u{202F}000 mm", length(29, 1, M)),
        (groups, "387,737,263,297.2403 feet", length(3_877_372_632_972_403, 10_000, FT)),
        (groups, "1,500 mm", length(1500, 1, MM)),
        (groups, "4,500.5", length(9001, 2, IN)),
        (groups, "1’234 ft 5 in", length(14_813, 1, IN)),
        (decimal, "1,3 cm", length(13, 1, MM)),
        (decimal, "1.3cm", length(13, 1, MM)),
        (decimal, "1,30 cm", length(13, 1, MM)),
        (decimal, "1,500", length(3, 2, IN)),
        (packed, "121103", length(2483, 16, IN)),
        (packed, "-121103", length(-2483, 16, IN)),
        (packed, "25-0-14", length(2407, 8, IN)),
        (packed, "31-1-11", length(5979, 16, IN)),
        (doors, "3-0", length(36, 1, IN)),
        (doors, "2-6", length(30, 1, IN)),
    ] {
        assert_eq!(parser.parse(text), Ok(expected), "{text:?}");
    }
    assert_eq!(PLAIN.parse("121103"), Ok(length(121_103, 1, IN)));
}

#[test]
fn sizes_tolerances_and_called_lengths() {
    let size = |text: &str| -> Vec<Length> {
        let size: Size = text.parse().unwrap_or_else(|error| panic!("{text:?}: {error}"));
        size.lengths().iter().map(scantling::Dimension::length).collect()
    };
    let inches = |sizes: &[i64]| -> Vec<Length> { sizes.iter().map(|size| length(*size, 1, IN)).collect() };
    let millimeters = |sizes: &[i64]| -> Vec<Length> { sizes.iter().map(|size| length(*size, 1, MM)).collect() };
    assert_eq!(size("122 x 147 x 122mm"), millimeters(&[122, 147, 122]));
    assert_eq!(size("23x 8x 15"), inches(&[23, 8, 15]));
    assert_eq!(size("123 x 120x 45"), inches(&[123, 120, 45]));
    assert_eq!(size("49-in. x 97-in."), inches(&[49, 97]));
    assert_eq!(size("H x W x D: 97 x 50.5 x 58 cm (38 3/16 x 19 7/8 x 22 13/16 in.)"), millimeters(&[970, 505, 580]));
    assert_eq!(size("28.875 (H) , 15.375 (W) , 14.25 (D)"), [length(231, 8, IN), length(123, 8, IN), length(57, 4, IN)]);
    assert_eq!(size("3/4\" X 4' X 8'"), [length(3, 4, IN), length(48, 1, IN), length(96, 1, IN)]);
    assert_eq!(size("13/4 x 31/2"), [length(13, 4, IN), length(31, 2, IN)]);
    assert!("3/4 4×8".parse::<Size>().is_err());

    let pin: Toleranced = "25 ± 0.2 mm".parse().unwrap();
    assert_eq!((pin.least(), pin.most()), (length(248, 10, MM), length(252, 10, MM)));

    let called = |text: &str, step: (i64, u64)| text.parse::<Called>().unwrap().checked_length(length(step.0, step.1, IN));
    assert_eq!(called("48 and 7/16ths plus", (1, 64)), Some(length(3101, 64, IN)));
    assert_eq!(called("48 and 7/16 plus plus", (1, 64)), Some(length(1551, 32, IN)));
    assert_eq!(called("48 and 7/16 minus", (1, 64)), Some(length(3099, 64, IN)));
    assert_eq!(called("1/8+", (1, 16)), Some(length(3, 16, IN)));
    for (text, mark, side) in
        [("just shy of 3/4", length(3, 4, IN), Side::Under), ("a hair over 11-1/4", length(45, 4, IN), Side::Over)]
    {
        let called: Called = text.parse().unwrap();
        assert_eq!((called.mark(), called.side(), called.said()), (mark, side, None), "{text:?}");
    }
}

#[test]
fn suspicious_but_read() {
    for (text, warning) in [
        ("34 \"", Warning::LostBar),
        ("14 \"", Warning::LostBar),
        ("164132", Warning::LostBar),
        ("13/4", Warning::LostBlank),
        ("31/2", Warning::LostBlank),
        ("5.6'", Warning::DecimalFeet),
    ] {
        assert_eq!(PLAIN.parse_written(text).map(|(_, written)| written.warning()), Ok(Some(warning)), "{text:?}");
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn converted_and_rounded() {
    let round = |num, den, unit, step: (i64, u64, Unit), mode| {
        length(num, den, unit).round(Rounding::to(length(step.0, step.1, step.2)).mode(mode)).unwrap()
    };
    let nearest = |num, den, unit, part| round(num, den, unit, (1, part, IN), RoundingMode::TiesUp);
    assert_eq!(nearest(39_999, 10_000, FT, 1), length(4, 1, FT));
    assert_eq!(nearest(730_185, 10_000, IN, 32), length(2337, 32, IN));
    assert_eq!(nearest(71_999, 1000, IN, 32), length(6, 1, FT));
    assert_eq!(nearest(140, 1, MM, 16), length(11, 2, IN));
    assert_eq!(nearest(11, 1, MM, 16), length(7, 16, IN));
    assert_eq!(nearest(333_333, 1_000_000, IN, 8), length(3, 8, IN));
    assert_eq!(nearest(1_100_142_857, 1_000_000, IN, 16), length(8801, 8, IN));
    assert_eq!(nearest(207, 10, FT, 16), length(1987, 8, IN));
    assert_eq!(nearest(53, 10, FT, 16), length(509, 8, IN));
    assert_eq!(nearest(2300, 1, MM, 16), length(1449, 16, IN));
    assert_eq!(nearest(1500, 1, MM, 16), length(945, 16, IN));
    assert_eq!(nearest(1, 1, M, 32), length(315, 8, IN));
    assert_eq!(nearest(1000, 1, MM, 16), length(315, 8, IN));
    assert_eq!(nearest(108, 10, FT, 16), length(1037, 8, IN));
    assert_eq!(nearest(22_345, 1000, IN, 64), length(715, 32, IN));
    assert_eq!(nearest(22_995, 1000, IN, 64), length(23, 1, IN));
    assert_eq!(nearest(9, 10, IN, 16), length(7, 8, IN));
    assert_eq!(nearest(1, 10, IN, 16), length(1, 8, IN));
    assert_eq!(nearest(31, 10, IN, 2), length(3, 1, IN));
    assert_eq!(nearest(96, 5, IN, 16), length(307, 16, IN));
    assert_eq!(nearest(83, 128, IN, 32), length(21, 32, IN));
    assert_eq!(round(83, 128, IN, (1, 32, IN), RoundingMode::Down), length(5, 8, IN));
    assert_eq!(round(83, 128, IN, (1, 16, IN), RoundingMode::Up), length(11, 16, IN));
    assert_eq!(round(9, 10, IN, (1, 8, IN), RoundingMode::Down), length(7, 8, IN));
    assert_eq!(round(99, 4, IN, (1, 1, MM), RoundingMode::TiesUp), length(629, 1, MM));
    assert_eq!(round(1, 32, IN, (1, 16, IN), RoundingMode::TiesAway), length(1, 16, IN));
    assert_eq!(round(-1, 2, IN, (1, 1, IN), RoundingMode::Down), length(-1, 1, IN));
    assert_eq!(round(-1, 2, IN, (1, 1, IN), RoundingMode::Up), Length::ZERO);
    assert_eq!(round(-5, 4, IN, (1, 1, IN), RoundingMode::TiesUp), length(-1, 1, IN));

    // Exact conversions that floats blur.
    assert_eq!(length(127, 10, IN), length(32_258, 100, MM));
    assert_eq!(length(1397, 10, MM), length(11, 2, IN));
    assert_eq!(length(139_700, 1, MM), length(5500, 1, IN));
    assert_eq!(length(63_360, 1, IN), length(1_609_344, 1, MM));
    assert_eq!(length(627, 16, IN), length(9_953_625, 10_000, MM));
    assert_eq!(length(100, 1, M).in_unit(IN), Ratio::new(500_000, 127));
    assert_eq!(length(100, 1, M) - length(109, 1, YD) - length(1, 1, FT), length(128, 127, IN));
    assert_eq!(length(1, 10, FT) + length(2, 10, FT), length(3, 10, FT));
    assert_eq!(length(577, 4, IN) * 2, length(577, 2, IN));
}

#[test]
fn numbers_inside() {
    // An operation refuses only when its answer does not fit.
    let ninth = Length::fraction(922_337_203_685_477_587, 4, IN) + Length::fraction(922_337_203_685_477_587, 6, IN);
    assert_eq!(ninth, Length::fraction(4_611_686_018_427_387_935, 12, IN));
    assert_eq!(length(1, 128, IN) + length(1, 128, IN), length(1, 64, IN));
    // 1.2 from text is 6/5; from a float it is what the float holds, and the two ways have two names.
    assert_eq!(PLAIN.parse("1.2"), Ok(length(6, 5, IN)));
    assert_ne!(Length::try_from_f64_exact(1.2, IN), Ok(length(6, 5, IN)));
}
