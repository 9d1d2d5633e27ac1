//! Areas and volumes as text: what is read, what is refused, and that whatever is written is read back. One
//! line a case, exact values worked by hand.

use std::ops::Range;

use crate::support::{below_the_line, wide};
use num_rational::Ratio;
use scantling::{Area, Length, ParseError, ParseErrorKind as Kind, Unit, Volume};

fn square_inches(num: i64, den: u64) -> Area {
    Length::fraction(num, den, Unit::Inch) * Unit::Inch.length()
}

fn cubic_inches(num: i64, den: u64) -> Volume {
    square_inches(num, den) * Unit::Inch.length()
}

#[test]
fn areas_that_are_read() {
    for (text, area) in [
        ("1872 sq in", square_inches(1872, 1)),
        ("3 1/2 sq in", square_inches(7, 2)),
        ("-3-1/2 sq in", square_inches(-7, 2)),
        ("−½ sq. in.", square_inches(-1, 2)),
        ("0 sq in", Area::ZERO),
        ("0.5sq in", square_inches(1, 2)),
        (" 13 sq ft ", square_inches(1872, 1)),
        ("13 Square Feet", square_inches(1872, 1)),
        ("1 sq yd", square_inches(1296, 1)),
        ("645.16 sq mm", square_inches(1, 1)),
        ("6.4516 square centimeters", square_inches(1, 1)),
        ("0.00064516 sq m", square_inches(1, 1)),
    ] {
        assert_eq!(text.parse(), Ok(area), "{text:?}");
    }
}

#[test]
fn volumes_that_are_read() {
    for (text, volume) in [
        ("144 cu in", cubic_inches(144, 1)),
        ("-1/8 cu. in.", cubic_inches(-1, 8)),
        ("1 cu ft", cubic_inches(1728, 1)),
        ("1 cubic yard", cubic_inches(46_656, 1)),
        ("16387.064 cu mm", cubic_inches(1, 1)),
        ("16.387064 cu cm", cubic_inches(1, 1)),
        ("0.000016387064 cubic meters", cubic_inches(1, 1)),
    ] {
        assert_eq!(text.parse(), Ok(volume), "{text:?}");
    }
}

#[track_caller]
fn refused<T: std::fmt::Debug>(text: &str, read: Result<T, ParseError>, kind: Kind, span: Range<usize>) {
    let error = read.expect_err(text);
    assert_eq!((error.kind(), error.span()), (kind, span), "{text:?}");
}

#[test]
fn what_is_no_area() {
    for (text, kind, span) in [
        ("", Kind::Empty, 0..0),
        ("sq in", Kind::NotANumber, 0..2),
        ("-", Kind::LoneSign, 0..1),
        ("1872", Kind::AreaUnit, 4..4),
        ("1872 ", Kind::AreaUnit, 5..5),
        ("1872 in", Kind::AreaUnit, 5..7),
        ("1872 sq", Kind::AreaUnit, 5..7),
        ("1872 sq furlongs", Kind::AreaUnit, 5..16),
        ("1872 sq in x", Kind::AreaUnit, 5..12),
        ("144 cu in", Kind::AreaUnit, 4..9),
        ("5 3 sq in", Kind::AreaUnit, 2..9),
        ("17 9/8 sq in", Kind::ImproperFraction, 0..6),
        ("1/0 sq in", Kind::ZeroDenominator, 0..3),
        ("1,250 sq in", Kind::CommaReadings, 0..5),
        ("999999999999999999999999999999999999999 sq in", Kind::TooLarge, 0..39),
        ("100000000000000000000000000000000000000 sq yd", Kind::TooLarge, 0..39),
        ("-1/18446744073709551616 sq in", Kind::TooFine, 1..23),
    ] {
        refused(text, text.parse::<Area>(), kind, span);
    }
    refused("144 sq in", "144 sq in".parse::<Volume>(), Kind::VolumeUnit, 4..9);
    refused("144", "144".parse::<Volume>(), Kind::VolumeUnit, 3..3);
    let message =
        "no unit of area: found `in` at bytes 5..7, expected sq in, sq ft, sq yd, sq mm, sq cm or sq m behind the number";
    assert_eq!("1872 in".parse::<Area>().unwrap_err().to_string(), message);
    let message =
        "no unit of volume: found nothing at bytes 3..3, expected cu in, cu ft, cu yd, cu mm, cu cm or cu m behind the number";
    assert_eq!("144".parse::<Volume>().unwrap_err().to_string(), message);
}

#[test]
fn lengths_that_must_have_a_unit() {
    let read = |text: &str| scantling::LengthParser::new().default_unit(Unit::Foot).parse_with_unit(text);
    for (text, length) in [
        ("17 5/8 in", Length::fraction(141, 8, Unit::Inch)),
        ("6'3", Length::new(75, Unit::Inch)),
        ("0 mm", Length::ZERO),
        ("two feet", Length::new(2, Unit::Foot)),
        ("½ a foot", Length::new(6, Unit::Inch)),
        ("2 halves yd", Length::new(1, Unit::Yard)),
    ] {
        assert_eq!(read(text), Ok(length), "{text:?}");
    }
    // A shorthand says its units.
    let packed = scantling::LengthParser::new().shorthand(scantling::Shorthand::FeetInchesSixteenths);
    assert_eq!(packed.parse_with_unit("120408"), Ok(Length::fraction(297, 2, Unit::Inch)));
    for (text, kind, span) in [
        ("17", Kind::NoUnit, 0..2),
        (" -1/2 ", Kind::NoUnit, 1..5),
        ("0", Kind::NoUnit, 0..1),
        ("seventeen", Kind::NoUnit, 0..9),
        ("17 9/8", Kind::ImproperFraction, 0..6),
    ] {
        refused(text, read(text), kind, span);
    }
    let message =
        "a number without a unit: found `17` at bytes 0..2, expected a unit behind the number; write the unit, as in 17 5/8 in";
    assert_eq!(read("17").unwrap_err().to_string(), message);
}

#[derive(Clone, Debug)]
struct Factor(Ratio<i128>);

impl quickcheck::Arbitrary for Factor {
    fn arbitrary(random: &mut quickcheck::Gen) -> Self {
        Self(Ratio::new(wide(random), below_the_line(random).into()))
    }
}

properties! {
    fn any_area_and_volume(factor: Factor) -> bool {
        let area = square_inches(1, 1).checked_mul_ratio(factor.0);
        let volume = cubic_inches(1, 1).checked_mul_ratio(factor.0);
        let area_back = area.map(|area| area.to_string().parse());
        let volume_back = volume.map(|volume| volume.to_string().parse());
        area_back == area.map(Ok) && volume_back == volume.map(Ok)
    }
}
