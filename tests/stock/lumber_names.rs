//! Names of stock as the trade writes them, and what is refused with its bytes and its message: common practice, no source,
//! but for the rows marked with theirs. Every value was worked by hand.

use crate::support::texts::{PIECES, named};
use crate::support::{Any, Choices, Shop};
use scantling::{
    Catalog, Length, LumberKind as K, Nominal, NominalErrorKind as E, ParseErrorKind, Seasoning, Size, Surface, Unit,
};

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

/// A number of sixteenths, and what stands for no size at all.
const fn sixteenths(count: i64) -> Option<Length> {
    if count == 0 { None } else { Some(inches(count, 16)) }
}

/// What a name says: the kind, and thickness, width and length in sixteenths of an inch, zero for none.
#[track_caller]
fn says(text: &str, kind: K, sizes: [i64; 3]) -> Nominal {
    let nominal: Nominal = text.parse().unwrap_or_else(|error| panic!("{text:?}: {error}"));
    let found = [nominal.thickness(), nominal.width(), nominal.length()];
    assert_eq!((nominal.kind(), found), (kind, sizes.map(sixteenths)), "{text:?}");
    nominal
}

#[test]
#[rustfmt::skip] // one line a case
fn softwood() {
    for text in ["2x4", "2 x 4", "2X4", "2×4", "2 × 4", "2*4", "2 by 4", "2 BY 4", "two by four", "Two-by-four", "2\" x 4\"", "2 in. x 4 in.", "2-in. x 4-in.", " 2x4 ", "\u{A0}2\u{A0}x\u{A0}4", "2x4 lumber", "2x4 stud", "2x4.", "2″ × 4″", "2x4 pine", "2x4s", "2x4's", "2x4’s", "2x4 (nominal)", "2x4 pressure treated", "2x4 PT", "2x4 Douglas fir", "2x4, white pine"] {
        says(text, K::Dimension, [32, 64, 0]);
    }
    for text in ["2x4x8", "2x4x8 ft", "2 x 4 x 8'", "2x4x8 lumber", "2x4 - 8'", "2x4-8'", "2x4 8'", "2x4-8", "2x4 8 ft", "2x4, 8 ft", "2x4 @ 8'", "2x4 x 8 feet", "2x4 studs - 8'", "2x4x96\"", "2x4x96 in", "2x4 96\"", "2×4×8′", "two by four by eight", "2 x 4 x 8'-0\"", "2x4x8 ft long"] {
        says(text, K::Dimension, [32, 64, 96 * 16]);
    }
    for (text, kind, sizes) in [
        ("1x6", K::Board, [16, 96, 0]),
        ("1 x 12 x 6'", K::Board, [16, 192, 1152]),
        ("2x4 - 12'", K::Dimension, [32, 64, 2304]),
        ("2x4x92-5/8\"", K::Dimension, [32, 64, 1482]),
        ("2x4x92 5/8 in", K::Dimension, [32, 64, 1482]),
        ("2x4 - 92-5/8\"", K::Dimension, [32, 64, 1482]),
        ("2x4 92-5/8\"", K::Dimension, [32, 64, 1482]),
        ("2x4x10'-6\"", K::Dimension, [32, 64, 2016]),
        ("2x4 10' 6", K::Dimension, [32, 64, 2016]),
        ("2x6-16", K::Dimension, [32, 96, 3072]),
        ("4x4 post 10'", K::Dimension, [64, 64, 1920]),
        ("2\"x4\"x8'", K::Dimension, [32, 64, 1536]),
        ("2x4's - 8'", K::Dimension, [32, 64, 1536]),
        ("2x4's, 8'", K::Dimension, [32, 64, 1536]),
        ("5-1/2 x 6 timber", K::Timber, [88, 96, 0]),
        ("24x24 timber", K::Timber, [384, 384, 0]),
        ("4x8", K::Dimension, [64, 128, 0]),
        ("6x6", K::Timber, [96, 96, 0]),
        ("6x8", K::Timber, [96, 128, 0]),
        ("6 x 8 x 16", K::Timber, [96, 128, 3072]),
        ("8x24", K::Timber, [128, 384, 0]),
        ("1x7x33", K::Board, [16, 112, 6336]),
        ("3/4 x 6 board", K::Board, [12, 96, 0]),
        ("board 3/4x6", K::Board, [12, 96, 0]),
        ("1 1/4 x 6 board", K::Board, [20, 96, 0]),
        ("1-1/2 x 8 board - 10'", K::Board, [24, 128, 1920]),
        ("2 1/2 x 4 1/2 nominal", K::Dimension, [40, 72, 0]),
        ("3½ x 6 dimension lumber", K::Dimension, [56, 96, 0]),
        ("5/4x6 pine", K::Board, [20, 96, 0]),
        ("6/4 x 8 cedar", K::Board, [24, 128, 0]),
        ("1x6 cedar board", K::Board, [16, 96, 0]),
    ] {
        says(text, kind, sizes);
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn decking_and_hardwood() {
    for text in ["5/4x6", "5/4 x 6", "5/4×6", "5/4x6 decking", "5/4x6 deck boards", "5/4 by 6", "five quarter by six", "5⁄4 x 6", "nominal 5/4x6", "cedar decking 5/4x6"] {
        says(text, K::Decking, [20, 96, 0]);
    }
    for (text, kind, sizes) in [
        ("5/4 decking", K::Decking, [20, 0, 0]),
        ("5/4x6x12", K::Decking, [20, 96, 2304]),
        ("5/4x6 - 12'", K::Decking, [20, 96, 2304]),
        ("5/4 decking 12'", K::Decking, [20, 0, 2304]),
        ("2x6 decking", K::Decking, [32, 96, 0]),
        ("4/4", K::Hardwood, [16, 0, 0]),
        ("8/4", K::Hardwood, [32, 0, 0]),
        ("8/4 walnut", K::Hardwood, [32, 0, 0]),
        ("walnut, 8/4", K::Hardwood, [32, 0, 0]),
        ("5/4 hardwood", K::Hardwood, [20, 0, 0]),
        ("5/4 Oak", K::Hardwood, [20, 0, 0]),
        ("5/4x6 hardwood", K::Hardwood, [20, 96, 0]),
        ("eight quarters hardwood", K::Hardwood, [32, 0, 0]),
        ("8/4 - 10'", K::Hardwood, [32, 0, 1920]),
        ("8/4 x 10'", K::Hardwood, [32, 0, 1920]),
        ("8/4 x 6", K::Hardwood, [32, 96, 0]),
        ("8/4 x 6 1/4 x 8", K::Hardwood, [32, 100, 1536]),
        ("8/4 x 6-1/4\" x 8'", K::Hardwood, [32, 100, 1536]),
        ("3/4 hardwood", K::Hardwood, [12, 0, 0]),
        ("5/8 hardwood board", K::Hardwood, [10, 0, 0]),
        ("2 in hardwood", K::Hardwood, [32, 0, 0]),
        ("16/4 maple plank", K::Hardwood, [64, 0, 0]),
        ("4/4 rough walnut 8\" x 10'", K::Hardwood, [16, 128, 1920]),
        ("8/4 walnut 8\" wide", K::Hardwood, [32, 128, 0]),
        ("8/4 x 30 wide", K::Hardwood, [32, 480, 0]),
        ("8/4 walnut 8\" wide x 10'", K::Hardwood, [32, 128, 1920]),
        ("8/4 walnut 6 x 8", K::Hardwood, [32, 96, 1536]),
        ("8/4 - 10' long", K::Hardwood, [32, 0, 1920]),
        ("4/4 walnut 8\" long", K::Hardwood, [16, 0, 128]),
        ("4/4 walnut 8 long", K::Hardwood, [16, 0, 1536]),
        ("3/4 walnut 6 x 8", K::Hardwood, [12, 96, 1536]),
        ("3/4 birch 4\" x 8'", K::Hardwood, [12, 64, 1536]),
        ("8/4 red oak", K::Hardwood, [32, 0, 0]),
        ("5/4x6x16 PT decking", K::Decking, [20, 96, 3072]),
    ] {
        says(text, kind, sizes);
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn panels_and_sheets() {
    for text in ["3/4 ply 4x8", "3/4 plywood, 4 x 8", "3/4\" x 4' x 8'", "3/4\" X 4' X 8' sheet", "3/4 4×8", "3/4 4x8 sheet", "3/4x4x8 ply", "3/4 x 48 x 96", "3/4x48x96 in", "3/4 ply 4' x 8'", "3/4-inch plywood 4x8", "3/4 in. fir plywood 4 ft x 8 ft", "¾ ply 4x8"] {
        says(text, K::Panel, [12, 768, 1536]);
    }
    for text in ["4x8 sheet", "48x96", "48 x 96 in.", "4' x 8'", "4 ft by 8 ft", "48\" × 96\"", "4x8 ply", "sheet 4x8"] {
        says(text, K::Sheet, [0, 768, 1536]);
    }
    for (text, kind, sizes) in [
        ("3/4 ply", K::Panel, [12, 0, 0]),
        ("3/4 PLYWOOD", K::Panel, [12, 0, 0]),
        ("3/4\" ply", K::Panel, [12, 0, 0]),
        ("1/4 birch plywood", K::Panel, [4, 0, 0]),
        ("3/4 baltic birch", K::Panel, [12, 0, 0]),
        ("1 1/8 sheathing", K::Panel, [18, 0, 0]),
        ("1/2 CDX", K::Panel, [8, 0, 0]),
        ("1 in ply", K::Panel, [16, 0, 0]),
        ("7/16", K::Panel, [7, 0, 0]),
        ("7/16 osb 4x8", K::Panel, [7, 768, 1536]),
        ("49x97", K::Sheet, [0, 784, 1552]),
        ("49-in. x 97-in.", K::Sheet, [0, 784, 1552]),
        ("5x5 sheet", K::Sheet, [0, 960, 960]),
        ("60 x 60", K::Sheet, [0, 960, 960]),
        ("2' x 4'", K::Sheet, [0, 384, 768]),
    ] {
        says(text, kind, sizes);
    }
    let in_32nds = |text: &str| text.parse::<Nominal>().unwrap();
    for (text, num) in [("23/32", 23), ("15/32", 15), ("19/32\"", 19), ("23/32 ply", 23), ("11/32 in", 11)] {
        assert_eq!(in_32nds(text), Nominal::panel(inches(num, 32)), "{text}");
    }
    assert_eq!(in_32nds("23/32x4x8"), Nominal::panel(inches(23, 32)).wide(inches(48, 1)).long(inches(96, 1)));
    let mm = |count| Length::new(count, Unit::Millimeter);
    for text in ["1220x2440 mm", "1220 × 2440 mm", "1220mmx2440mm", "1220mm x 2440mm sheet", "122 x 244 cm", "1.22 x 2.44 m sheet", "1220x2440"] {
        assert_eq!(text.parse(), Ok(Nominal::sheet(mm(1220), mm(2440))), "{text}");
    }
    assert_eq!("18 x 1220 x 2440 mm".parse(), Ok(Nominal::panel(mm(18)).wide(mm(1220)).long(mm(2440))));
    // Lying or standing, it is the same sheet.
    for (text, listed) in [("2440 x 1220 mm", true), ("96x48", true), ("8x4 sheet", true), ("97 x 49", true), ("48x97", false), ("4x10 sheet", false)] {
        assert_eq!(Catalog::new().actual(&text.parse().unwrap()).is_ok(), listed, "{text}");
    }
    // A length in millimeters behind a name in inches, where no x makes them sizes of one kind.
    let stud = Nominal::softwood(inches(2, 1), inches(4, 1)).long(mm(2400));
    for text in ["2x4 2400mm", "2x4 - 2400 mm", "2x4, 240 cm", "2x4x2.4m"] {
        assert_eq!(text.parse(), Ok(stud), "{text}");
    }
    assert_eq!("18mm ply".parse(), Ok(Nominal::panel(mm(18))));
}

#[test]
#[rustfmt::skip] // one line a case
fn how_it_was_seasoned_and_planed() {
    use Seasoning::{Dry, Green};
    use Surface::{FourSides, OneSide, Rough, TwoSides};
    for (text, seasoning, surface) in [
        ("2x4", None, None),
        ("2x4 green", Some(Green), None),
        ("green 2x4", Some(Green), None),
        ("2x4 kiln-dried", Some(Dry), None),
        ("2x4 kiln dried", Some(Dry), None),
        ("2x4 KD", Some(Dry), None),
        ("2x4 S-DRY", Some(Dry), None),
        ("2x4 S4S dry", Some(Dry), Some(FourSides)),
        ("rough-sawn 2x4 green", Some(Green), Some(Rough)),
        ("2x4 rough sawn", None, Some(Rough)),
        ("8/4 S2S", None, Some(TwoSides)),
        ("8/4 walnut s1s", None, Some(OneSide)),
        ("8/4 rough KD maple", Some(Dry), Some(Rough)),
    ] {
        let nominal: Nominal = text.parse().unwrap_or_else(|error| panic!("{text}: {error}"));
        assert_eq!((nominal.seasoning(), nominal.surface()), (seasoning, surface), "{text}");
    }
}

/// Field notes: what people typed, and what it measures.
#[test]
#[rustfmt::skip] // one line a case
fn field_notes() {
    let actual = |text: &str| Catalog::new().actual(&text.parse().unwrap_or_else(|error| panic!("{text}: {error}"))).unwrap();
    let sides = |text: &str| { let actual = actual(text); (actual.thickness(), actual.width(), actual.length()) };
    // Two numbers in inches by name, the third in feet.
    assert_eq!(sides("2x4x8 lumber"), (sixteenths(24), sixteenths(56), sixteenths(96 * 16)));
    // A name, not a division: five quarters rough, 5 1/2 in wide.
    let deck: Nominal = "nominal 5/4x6".parse().unwrap();
    assert_eq!((deck.thickness(), actual("nominal 5/4x6").width()), (sixteenths(20), sixteenths(88)));
    // Rough 1 in and 2 in; planed on two sides 13/16 in, and on one 1 13/16 in.
    for (text, rough) in [("4/4", 16), ("8/4", 32), ("4/4 hardwood", 16), ("8/4 hardwood", 32)] {
        assert_eq!(actual(text).thickness(), sixteenths(rough));
    }
    assert_eq!((actual("4/4 S2S").thickness(), actual("8/4 S1S").thickness()), (sixteenths(13), sixteenths(29)));
    // A hyphen before a unit is no minus; such sheets are oversize.
    assert_eq!(sides("49-in. x 97-in. sheet"), (None, sixteenths(784), sixteenths(1552)));
    assert_eq!(sides("4x8 sheet"), (None, sixteenths(768), sixteenths(1536)));
    // Inches and feet in one name; the bare form only where sheets are meant.
    for text in ["3/4\" X 4' X 8'", "3/4 4×8"] {
        assert_eq!((text.parse::<Nominal>().unwrap().thickness(), sides(text)), (sixteenths(12), (None, sixteenths(768), sixteenths(1536))));
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn refused() {
    for (text, kind, span, message) in [
        ("", E::Empty, 0..0, "no name: found nothing at bytes 0..0, expected a name such as 2x4x8, 5/4x6, 8/4 hardwood or 3/4 ply"),
        ("   ", E::Empty, 3..3, "no name: found nothing at bytes 3..3, expected a name such as 2x4x8, 5/4x6, 8/4 hardwood or 3/4 ply"),
        ("walnut", E::NoSize, 0..6, "a name without a size: found `walnut` at bytes 0..6, expected a name such as 2x4x8, 5/4x6, 8/4 hardwood or 3/4 ply"),
        ("5/4", E::TwoReadings, 0..3, "a name with two readings: found `5/4` at bytes 0..3, expected a name with one reading; write 5/4 decking or 5/4 hardwood"),
        ("5/4 - 12'", E::TwoReadings, 0..9, "a name with two readings: found `5/4 - 12'` at bytes 0..9, expected a name with one reading; write 5/4 - 12' decking or 5/4 - 12' hardwood"),
        ("3/4", E::TwoReadings, 0..3, "a name with two readings: found `3/4` at bytes 0..3, expected a name with one reading; write 3/4 ply or 3/4 hardwood"),
        ("1/2", E::TwoReadings, 0..3, "a name with two readings: found `1/2` at bytes 0..3, expected a name with one reading; write 1/2 ply or 1/2 hardwood"),
        ("3/4x4x8", E::TwoReadings, 0..7, "a name with two readings: found `3/4x4x8` at bytes 0..7, expected a name with one reading; write 3/4x4x8 board or 3/4x4x8 ply"),
        ("1x6 oak", E::TwoReadings, 0..3, "a name with two readings: found `1x6` at bytes 0..3, expected a name with one reading; write 4/4 for rough hardwood; dressed by a softwood name it is 1x6 without the word hardwood"),
        ("3/4x6", E::MeasuredSize, 0..5, "a measured size, or a name that looks like one: found `3/4x6` at bytes 0..5, expected a name in whole inches or quarters, such as 1x6 or 5/4x6; write 3/4 x 6 board if this is the name; what it measures is no name"),
        ("1 1/2 x 3 1/2", E::MeasuredSize, 0..13, "a measured size, or a name that looks like one: found `1 1/2 x 3 1/2` at bytes 0..13, expected a name in whole inches or quarters, such as 1x6 or 5/4x6; write 1 1/2 x 3 1/2 board if this is the name; what it measures is no name"),
        ("38x89 mm", E::MeasuredSize, 3..8, "a measured size, or a name that looks like one: found `89 mm` at bytes 3..8, expected a name in whole inches or quarters, such as 1x6 or 5/4x6"),
        ("8/4 x 96\"", E::TwoReadings, 6..9, "a name with two readings: found `96\"` at bytes 6..9, expected a name with one reading; write 96\" wide, or - 96\" long"),
        ("8/4 x 20\" long", E::TwoReadings, 6..9, "a name with two readings: found `20\"` at bytes 6..9, expected a name with one reading; write 20\" wide, or - 20\" long"),
        ("4/4 walnut 8", E::TwoReadings, 11..12, "a name with two readings: found `8` at bytes 11..12, expected a name with one reading; write 8\" wide, or 8' long"),
        ("5/4 decking - 6\"", E::TwoReadings, 14..16, "a name with two readings: found `6\"` at bytes 14..16, expected a name with one reading; write 6\" wide, or 6\" long"),
        ("3/4 birch 4x8", E::TwoReadings, 0..13, "a name with two readings: found `3/4 birch 4x8` at bytes 0..13, expected a name with one reading; write 4\" x 8' for a board, or 3/4 ply 4x8 for a panel"),
        ("3/4\" birch 4' x 8'", E::TwoReadings, 0..18, "a name with two readings: found `3/4\" birch 4' x 8'` at bytes 0..18, expected a name with one reading; write 3/4\" ply 4' x 8' for a panel; the width of a board is in inches"),
        ("1/2 x 5 x 5 hardwood", E::TwoReadings, 0..11, "a name with two readings: found `1/2 x 5 x 5` at bytes 0..11, expected a name with one reading; write 5\" x 5' for a board, or 1/2 ply 5x5 for a panel"),
        ("8/4 pine x 6 - 8'", E::TwoReadings, 0..17, "a name with two readings: found `8/4 pine x 6 - 8'` at bytes 0..17, expected a name with one reading; write 2 for 8/4 if it is dressed by that name; no table has rough softwood by quarters"),
        ("4/4 cedar", E::TwoReadings, 0..3, ""),
        ("10/4 x 6 pine", E::TwoReadings, 0..8, ""),
        ("18 x 90 x 2400 mm", E::MeasuredSize, 0..17, "a measured size, or a name that looks like one: found `18 x 90 x 2400 mm` at bytes 0..17, expected a name in whole inches or quarters, such as 1x6 or 5/4x6; write 18 x 90 - 2400 mm if 18 x 90 is the name"),
        ("5/4 x 6 x 360 cm", E::MeasuredSize, 0..16, ""),
        ("8/4 walnut x 6 x 360 cm", E::MeasuredSize, 0..23, ""),
        ("4x8x3/4", E::LengthUnit, 4..7, "a length without its unit: found `3/4` at bytes 4..7, expected whole feet to 40, or a unit behind the number; write 3/4' for feet or 3/4\" for inches, or 3/4 ply 4x8 for a panel"),
        ("2x4 8 - 10'", E::Number(ParseErrorKind::TwoNumbers), 2..5, "two numbers and nothing to tell them apart: found `4 8` at bytes 2..5, expected one size, or a size and a length; join sizes by x, and mark the length, as in 2x4 - 8'"),
        ("2x4-8-10", E::Number(ParseErrorKind::FeetInchesSixteenths), 2..8, "three numbers joined by dashes: found `4-8-10` at bytes 2..8, expected one size, or a size and a length; join sizes by x, and mark the length, as in 2x4 - 8'"),
        ("2x4 wide", E::Disagree, 4..8, "words that do not go together: found `wide` at bytes 4..8, expected words that say one thing"),
        ("4x2", E::ThicknessFirst, 0..3, "the width before the thickness: found `4x2` at bytes 0..3, expected the thickness, then the width; write 2x4"),
        ("6 x 1 - 8'", E::ThicknessFirst, 0..10, "the width before the thickness: found `6 x 1 - 8'` at bytes 0..10, expected the thickness, then the width; write 1x6"),
        ("2x4x96", E::LengthUnit, 4..6, "a length without its unit: found `96` at bytes 4..6, expected whole feet to 40, or a unit behind the number; write 96' for feet or 96\" for inches"),
        ("2x4x92-5/8", E::LengthUnit, 4..10, "a length without its unit: found `92-5/8` at bytes 4..10, expected whole feet to 40, or a unit behind the number; write 92-5/8' for feet or 92-5/8\" for inches"),
        ("2x4 8 1/2", E::LengthUnit, 4..9, "a length without its unit: found `8 1/2` at bytes 4..9, expected whole feet to 40, or a unit behind the number; write 8 1/2' for feet or 8 1/2\" for inches"),
        ("2", E::NoWidth, 0..1, "a thickness without a width: found `2` at bytes 0..1, expected a thickness and a width, joined by x"),
        ("2 4", E::NoWidth, 0..1, "a thickness without a width: found `2` at bytes 0..1, expected a thickness and a width, joined by x"),
        ("2x", E::LooseTimes, 1..2, "an x without two sizes round it: found `x` at bytes 1..2, expected a size before the x and one behind it"),
        ("x4", E::LooseTimes, 0..1, "an x without two sizes round it: found `x` at bytes 0..1, expected a size before the x and one behind it"),
        ("2xx4", E::UnknownWord, 1..4, ""),
        ("2x x4", E::LooseTimes, 3..4, "an x without two sizes round it: found `x` at bytes 3..4, expected a size before the x and one behind it"),
        ("2x4x8x10", E::TooManyNumbers, 6..8, "too many numbers: found `10` at bytes 6..8, expected at most a thickness, a width and a length"),
        ("2x4 8' 10 1", E::Number(ParseErrorKind::TwoNumbers), 2..5, ""),
        ("4x8 3/4 ply", E::NotAPanel, 2..7, "no size of a panel: found `8 3/4` at bytes 2..7, expected a thickness under 2 in, the two sides of the sheet, or all three; put the thickness in front, as in 3/4 ply 4x8"),
        ("2x4 balsa", E::UnknownWord, 4..9, "an unknown word: found `balsa` at bytes 4..9, expected sizes, and words such as board, decking, hardwood, ply, sheet, green, rough or S2S"),
        ("2x4 #2", E::UnknownWord, 4..5, "an unknown word: found `#` at bytes 4..5, expected sizes, and words such as board, decking, hardwood, ply, sheet, green, rough or S2S"),
        ("0x4", E::NotAboveZero, 0..1, "a size that is not above zero: found `0` at bytes 0..1, expected a size above zero"),
        ("-2x4", E::NotAboveZero, 0..2, "a size that is not above zero: found `-2` at bytes 0..2, expected a size above zero"),
        ("2x-4", E::NotAboveZero, 2..4, "a size that is not above zero: found `-4` at bytes 2..4, expected a size above zero"),
        ("1,220 x 2,440 mm", E::Number(ParseErrorKind::CommaReadings), 0..5, "a comma with two readings: found `1,220` at bytes 0..5, expected a number such as 2, 5/4 or 92-5/8\"; this is 1220 if the comma groups thousands, 1.220 if it is a decimal comma: write it so, or say which a comma is"),
        ("2/0x4", E::Number(ParseErrorKind::ZeroDenominator), 0..3, "a fraction over zero: found `2/0` at bytes 0..3, expected a number such as 2, 5/4 or 92-5/8\"; check the number below the line"),
        ("walnut pine 8/4", E::Disagree, 0..6, "words that do not go together: found `walnut` at bytes 0..6, expected words that say one thing"),
        ("3/4 ply green", E::Disagree, 8..13, "words that do not go together: found `green` at bytes 8..13, expected words that say one thing"),
        ("2x4 green dry", E::Disagree, 10..13, "words that do not go together: found `dry` at bytes 10..13, expected words that say one thing"),
        ("8/4 rough S2S", E::Disagree, 10..13, "words that do not go together: found `S2S` at bytes 10..13, expected words that say one thing"),
        ("5/4x6 decking ply", E::Disagree, 6..13, "words that do not go together: found `decking` at bytes 6..13, expected words that say one thing"),
        ("3/4 ply 8'", E::NotAPanel, 0..10, "no size of a panel: found `3/4 ply 8'` at bytes 0..10, expected a thickness under 2 in, the two sides of the sheet, or all three"),
        ("3/4 x 1/2 ply", E::NotAPanel, 0..9, "no size of a panel: found `3/4 x 1/2` at bytes 0..9, expected a thickness under 2 in, the two sides of the sheet, or all three"),
        ("18x1220x2440", E::NotAPanel, 0..12, ""),
    ] {
        let error = text.parse::<Nominal>().expect_err(text);
        assert_eq!((error.kind(), error.span()), (kind, span), "{text:?}: {error}");
        if !message.is_empty() {
            assert_eq!(error.to_string(), message, "{text:?}");
        }
    }
}

/// What a length or a size is refused for as the name of a board is read as one.
#[test]
fn what_is_refused_as_a_length_is_read_here() {
    for text in
        ["2x4", "2 x 4", "2x4x8", "2x4x8 ft", "5/4x6", "1x12", "4 x 4", "2x4x92-5/8\"", "two by four", "6x8", "2X10", "3x7"]
    {
        let as_length = text.parse::<Length>().unwrap_err().kind();
        let as_size = text.parse::<Size>().unwrap_err().kind();
        assert_eq!([as_length, as_size], [ParseErrorKind::NominalName; 2], "{text}");
        assert!(text.parse::<Nominal>().is_ok(), "{text}");
    }
}

/// A name from a few choices: of any kind, with or without its sizes, and finished in any way it may be.
fn name(choices: Choices) -> Nominal {
    let mut next = choices.take();
    let mut size = |least: i64| {
        let whole = least + i64::try_from(next(12)).unwrap();
        inches(4 * whole + i64::try_from(next(4) * next(2)).unwrap(), 4)
    };
    let (small, large, long) = (size(1), size(13), size(24) * 5);
    let kind = next(5);
    let nominal = match kind {
        0 => Nominal::softwood(small, large),
        1 => Nominal::decking(small),
        2 => Nominal::hardwood(small),
        3 => Nominal::panel(small / 8),
        _ => return Nominal::sheet(large * 4, long * 4),
    };
    let nominal = match (kind, next(3)) {
        (1 | 2, 1) => nominal.wide(large),
        (3, 1 | 2) => return nominal.wide(large * 4).long(long * 4),
        (3, _) => return nominal,
        _ => nominal,
    };
    let nominal = match next(3) {
        0 => nominal,
        1 => nominal.long(long),
        _ => nominal.long(small),
    };
    let nominal = match next(3) {
        0 => nominal,
        1 => nominal.seasoned(Seasoning::Dry),
        _ => nominal.seasoned(Seasoning::Green),
    };
    match next(5) {
        0 => nominal,
        1 => nominal.surfaced(Surface::Rough),
        2 => nominal.surfaced(Surface::OneSide),
        3 => nominal.surfaced(Surface::TwoSides),
        _ => nominal.surfaced(Surface::FourSides),
    }
}

/// What names are made of.
#[rustfmt::skip] // read in rows
const NAMES: [&str; 36] = [
    "2", "4", "5/4", "3/4", "8", "1 1/2", "96\"", "12'", " ", " ", "x", "×", " by ", "-", " - ", ",", "@", "ply", " sheet", " walnut",
    " green", "S2S", "decking", "mm", "in", "½", "′", "\u{301}", "é", "two", "quarter", "/", ".", "\n", " wide", " board",
];

properties! {
    fn what_is_written_is_read_back(choices: Choices) -> bool {
        let nominal = name(choices);
        assert_eq!(nominal.to_string().parse(), Ok(nominal), "{nominal}");
        true
    }

    fn any_size_can_be_written(thickness: Any, width: Any, shop: Shop) -> bool {
        let all = [Nominal::softwood(thickness.0, width.0), Nominal::hardwood(thickness.0), Nominal::panel(shop.0), Nominal::sheet(shop.0, width.0)];
        all.iter().all(|nominal| !nominal.long(shop.0).to_string().is_empty())
    }

    fn any_text_is_read_or_refused_in_place(choices: Choices) -> bool {
        let mut next = choices.take();
        let pieces = |from: &[&'static str], place: u64| from[usize::try_from(place).unwrap() % from.len()];
        let text: String = (0..next(12)).map(|_| match next(4) {
            0 => pieces(&PIECES, next(128)),
            _ => pieces(&NAMES, next(36)),
        }).collect();
        named(&text);
        true
    }
}

#[test]
fn long_texts_are_refused_soon() {
    for piece in ["2 ", "2x", "x", "-", " -", "two ", "green ", "é", "5/4-", ",", "a"] {
        let text = piece.repeat(50_000);
        assert!(text.parse::<Nominal>().is_err(), "{piece:?}");
    }
}
