//! Texts of more than one length: sizes, tolerances, called lengths. One line each, exact values by hand.

use scantling::{Axis, Called, Comma, Length, LengthParser, ParseErrorKind as Kind, Shorthand, Side, Toleranced, Unit, Warning};

const IN: Unit = Unit::Inch;
const MM: Unit = Unit::Millimeter;

type Parts = (i64, u64, Unit);

fn length((num, den, unit): Parts) -> Length {
    Length::fraction(num, den, unit)
}

#[track_caller]
fn size(parser: LengthParser, text: &str, expected: &[(i64, u64, Unit, &str)]) {
    let size = parser.parse_size(text).unwrap_or_else(|error| panic!("{text:?}: {error}"));
    let found: Vec<_> = size.lengths().iter().map(|it| (it.length(), it.axis().map(Axis::letter).map(String::from))).collect();
    let expected: Vec<_> = expected
        .iter()
        .map(|(num, den, unit, axis)| (length((*num, *den, *unit)), Some((*axis).to_owned()).filter(|axis| !axis.is_empty())))
        .collect();
    assert_eq!(found, expected, "{text:?}");
}

// Notations below are common practice, no source, unless a line says otherwise.

#[test]
#[rustfmt::skip] // one line a case
fn sizes() {
    let plain = LengthParser::new();
    size(plain, "3/4 x 11 1/4 x 72", &[(3, 4, IN, ""), (45, 4, IN, ""), (72, 1, IN, "")]);
    size(plain, "3/4\" X 4' X 8'", &[(3, 4, IN, ""), (48, 1, IN, ""), (96, 1, IN, "")]);
    size(plain, "600x300x18mm", &[(600, 1, MM, ""), (300, 1, MM, ""), (18, 1, MM, "")]);
    size(plain, "600mmx300mmx18mm", &[(600, 1, MM, ""), (300, 1, MM, ""), (18, 1, MM, "")]);
    size(plain, "122 x 147 x 122mm", &[(122, 1, MM, ""), (147, 1, MM, ""), (122, 1, MM, "")]);
    size(plain, "23x 8x 15", &[(23, 1, IN, ""), (8, 1, IN, ""), (15, 1, IN, "")]);
    size(plain, "123 x 120x 45", &[(123, 1, IN, ""), (120, 1, IN, ""), (45, 1, IN, "")]);
    size(plain, "49-in. x 97-in.", &[(49, 1, IN, ""), (97, 1, IN, "")]);
    size(plain, "10 by 12 feet", &[(120, 1, IN, ""), (144, 1, IN, "")]);
    size(plain, "24 by 36", &[(24, 1, IN, ""), (36, 1, IN, "")]);
    size(plain, "24 × 36 in", &[(24, 1, IN, ""), (36, 1, IN, "")]);
    size(plain, "2 ft x 3 ft", &[(24, 1, IN, ""), (36, 1, IN, "")]);
    size(plain, "1m20 x 60 cm", &[(1200, 1, MM, ""), (600, 1, MM, "")]);
    size(plain, "2 x 4 L ft", &[(24, 1, IN, ""), (48, 1, IN, "L")]);
    size(plain, "2\" * 3 / 4\"", &[(2, 1, IN, ""), (3, 4, IN, "")]);
    size(plain, "0x4", &[(0, 1, IN, ""), (4, 1, IN, "")]);
    size(plain, "0 x 36 x 2", &[(0, 1, IN, ""), (36, 1, IN, ""), (2, 1, IN, "")]);
    size(plain, "28 7/8 H x 15 3/8 W", &[(231, 8, IN, "H"), (123, 8, IN, "W")]);
    size(plain, "28.875 (H) , 15.375 (W) , 14.25 (D)", &[(231, 8, IN, "H"), (123, 8, IN, "W"), (57, 4, IN, "D")]);
    size(plain, "W 24 x H 36", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "thickness 3/4 x width 24", &[(3, 4, IN, "T"), (24, 1, IN, "W")]);
    size(plain, "W: 24\" x H: 36\"", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "24\" wide x 36\" high x 12\" deep", &[(24, 1, IN, "W"), (36, 1, IN, "H"), (12, 1, IN, "D")]);
    size(plain, "24 in. wide by 36 in. tall", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "24\"W x 36\"H x 18\"D", &[(24, 1, IN, "W"), (36, 1, IN, "H"), (18, 1, IN, "D")]);
    size(plain, "2'6x3'0", &[(30, 1, IN, ""), (36, 1, IN, "")]);
    size(plain, "24in(W) x 36in(H)", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "H24xW36xD12", &[(24, 1, IN, "H"), (36, 1, IN, "W"), (12, 1, IN, "D")]);
    size(plain, "24Wx36Hx12D", &[(24, 1, IN, "W"), (36, 1, IN, "H"), (12, 1, IN, "D")]);
    size(plain, "3/4 thick by 5 1/2 wide by 96 long", &[(3, 4, IN, "T"), (11, 2, IN, "W"), (96, 1, IN, "L")]);
    size(plain, "H x W x D: 97 x 50.5 x 58 cm", &[(970, 1, MM, "H"), (505, 1, MM, "W"), (580, 1, MM, "D")]);
    size(plain, "H x W x D: 97 x 50.5 x 58 cm (38 3/16 x 19 7/8 x 22 13/16 in.)", &[(970, 1, MM, "H"), (505, 1, MM, "W"), (580, 1, MM, "D")]);
    size(plain, "28.875 (H), 15.375 (W), 14.25 (D) in", &[(231, 8, IN, "H"), (123, 8, IN, "W"), (57, 4, IN, "D")]);
    size(plain, "15-3/8\"(W) x 14-1/4\"(D) x 28-7/8\"(H)", &[(123, 8, IN, "W"), (57, 4, IN, "D"), (231, 8, IN, "H")]);
    size(plain, "600(W)x300(D)x18(H)mm", &[(600, 1, MM, "W"), (300, 1, MM, "D"), (18, 1, MM, "H")]);
    size(plain, "600 W x 300 D x 18 H mm", &[(600, 1, MM, "W"), (300, 1, MM, "D"), (18, 1, MM, "H")]);
    size(plain, "24 W x 36 H \"", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "(24 x 36) cm", &[(240, 1, MM, ""), (360, 1, MM, "")]);
    size(plain, "24\" wide and 36\" high", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "24 wide, 36 high, 12 deep", &[(24, 1, IN, "W"), (36, 1, IN, "H"), (12, 1, IN, "D")]);
    size(plain, "1/2\" thick, 24\" x 36\"", &[(1, 2, IN, "T"), (24, 1, IN, ""), (36, 1, IN, "")]);
    size(plain, "24W 36H 12D", &[(24, 1, IN, "W"), (36, 1, IN, "H"), (12, 1, IN, "D")]);
    size(plain, "H 28 7/8\" W 15 3/8\"", &[(231, 8, IN, "H"), (123, 8, IN, "W")]);
    size(plain, "W:24 H:36", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "1/2\" thick 24\" wide 36\" long", &[(1, 2, IN, "T"), (24, 1, IN, "W"), (36, 1, IN, "L")]);
    size(plain, "W=24, H=36", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "600*300*18mm", &[(600, 1, MM, ""), (300, 1, MM, ""), (18, 1, MM, "")]);
    size(plain, "24 ✕ 36", &[(24, 1, IN, ""), (36, 1, IN, "")]);
    size(plain, "24- x 36-inch", &[(24, 1, IN, ""), (36, 1, IN, "")]);
    size(plain, "HxWxD: 97 x 50.5 x 58 cm", &[(970, 1, MM, "H"), (505, 1, MM, "W"), (580, 1, MM, "D")]);
    size(plain, "(H x W x D) 97 x 50.5 x 58 cm", &[(970, 1, MM, "H"), (505, 1, MM, "W"), (580, 1, MM, "D")]);
    size(plain, "HxWxD 97 x 50.5 x 58 cm", &[(970, 1, MM, "H"), (505, 1, MM, "W"), (580, 1, MM, "D")]);
    size(plain, "L x W = 24 x 36", &[(24, 1, IN, "L"), (36, 1, IN, "W")]);
    size(plain, "24 x 36 x 12 in (WxHxD)", &[(24, 1, IN, "W"), (36, 1, IN, "H"), (12, 1, IN, "D")]);
    size(plain, "24 x 36 in (610 x 914 mm) (W by H)", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "24 x 36 in [610 x 914 mm]", &[(24, 1, IN, ""), (36, 1, IN, "")]);
    size(plain, "24 x 36 in / 610 x 914 mm", &[(24, 1, IN, ""), (36, 1, IN, "")]);
    size(plain, "24\" (610 mm) x 36\" (914 mm)", &[(24, 1, IN, ""), (36, 1, IN, "")]);
    size(plain, "24 W x 36 H (24 W x 36 H)", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "24\" W (610 mm) x 36\" [914 mm] H", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "(W)24 x (H)36", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "W(24) x H(36) mm", &[(24, 1, MM, "W"), (36, 1, MM, "H")]);
    size(plain, "24 × 36 × 12 (cm)", &[(240, 1, MM, ""), (360, 1, MM, ""), (120, 1, MM, "")]);
    size(plain, "twenty-four by thirty-six inches", &[(24, 1, IN, ""), (36, 1, IN, "")]);
    size(plain, "ten by twelve feet", &[(120, 1, IN, ""), (144, 1, IN, "")]);
    // The literal reading, though a size table that lost its blanks may have meant 1 3/4 by 3 1/2.
    size(plain, "13/4 x 31/2", &[(13, 4, IN, ""), (31, 2, IN, "")]);
    size(plain, "2\" x 4\"", &[(2, 1, IN, ""), (4, 1, IN, "")]);
    size(plain.comma(Comma::Groups), "2,440 × 1,220 mm", &[(2440, 1, MM, ""), (1220, 1, MM, "")]);
    size(plain.default_unit(MM), "600 x 300 x 18", &[(600, 1, MM, ""), (300, 1, MM, ""), (18, 1, MM, "")]);
    size(plain.default_unit(MM), "600 x 300 mm", &[(600, 1, MM, ""), (300, 1, MM, "")]);
}

#[test]
fn sizes_in_a_shorthand() {
    let doors = LengthParser::new().shorthand(Shorthand::FeetInches);
    size(doors, "2-6 x 6-8", &[(30, 1, IN, ""), (80, 1, IN, "")]);
    size(doors, "2-6x6-8", &[(30, 1, IN, ""), (80, 1, IN, "")]);
    size(doors, "two-six by six-eight", &[(30, 1, IN, ""), (80, 1, IN, "")]);
    size(doors, "3-0 W x 6-8 H", &[(36, 1, IN, "W"), (80, 1, IN, "H")]);
    size(doors, "2-6 x 6-8 x 1-3/8", &[(30, 1, IN, ""), (80, 1, IN, ""), (11, 8, IN, "")]);
    size(doors, "1 3/4 thick, 2-6 x 6-8", &[(7, 4, IN, "T"), (30, 1, IN, ""), (80, 1, IN, "")]);
    let truss = doors.shorthand(Shorthand::FeetInchesSixteenths);
    size(truss, "12-04-08 x 60000", &[(297, 2, IN, ""), (72, 1, IN, "")]);
    size(doors.shorthand(Shorthand::InchesSixteenths), "36-12 x 24-08", &[(147, 4, IN, ""), (49, 2, IN, "")]);
    for (text, kind, span) in [
        // Eighty inches, or eighty feet?
        ("2-6 x 80", Kind::SizeUnits, 6..8),
        ("2-6 x 6-14", Kind::FieldTooLarge, 8..10),
    ] {
        let error = doors.parse_size(text).expect_err(text);
        assert_eq!((error.kind(), error.span()), (kind, span), "{text:?}");
    }
}

/// What is suspicious in a size is read as it stands, with a warning; a size near to it has none.
#[test]
fn suspicious_sizes() {
    const BLANK: Option<Warning> = Some(Warning::LostBlank);
    for (text, first, warnings) in [
        ("13/4 x 31/2", (13, 4, IN), [BLANK, BLANK, None]),
        ("13/4x12", (13, 4, IN), [BLANK, None, None]),
        ("11/4 x 6 x 8", (11, 4, IN), [BLANK, None, None]),
        ("3/4 x 51/2 x 96", (3, 4, IN), [None, BLANK, None]),
        ("34 \" x 8\"", (34, 1, IN), [Some(Warning::LostBar), None, None]),
        ("2.5' x 5.6' x 8'", (30, 1, IN), [Some(Warning::DecimalFeet), Some(Warning::DecimalFeet), None]),
        ("1 3/4 x 3 1/2", (7, 4, IN), [None; 3]),
        ("3/4 x 5 1/2 x 96", (3, 4, IN), [None; 3]),
        ("34\" x 8\"", (34, 1, IN), [None; 3]),
        ("30000 x 12000 mm", (30_000, 1, MM), [None; 3]),
    ] {
        let (size, written) = LengthParser::new().parse_size_written(text).unwrap_or_else(|error| panic!("{text:?}: {error}"));
        assert_eq!((size.lengths()[0].length(), written.map(|written| written.warning())), (length(first), warnings), "{text:?}");
    }
}

#[track_caller]
fn toleranced(text: &str, nominal: Parts, least: Parts, most: Parts) {
    let found: Toleranced = text.parse().unwrap_or_else(|error| panic!("{text:?}: {error}"));
    assert_eq!((found.nominal(), found.least(), found.most()), (length(nominal), length(least), length(most)), "{text:?}");
}

#[test]
fn tolerances() {
    toleranced("24 ±1/32", (24, 1, IN), (767, 32, IN), (769, 32, IN));
    toleranced("24 +/- 1/32", (24, 1, IN), (767, 32, IN), (769, 32, IN));
    toleranced("24\" ±1/32", (24, 1, IN), (767, 32, IN), (769, 32, IN));
    toleranced("24\" ± 1/32\"", (24, 1, IN), (767, 32, IN), (769, 32, IN));
    toleranced("2' 3\" ±1/8", (27, 1, IN), (215, 8, IN), (217, 8, IN));
    toleranced("24 +1/32 -0", (24, 1, IN), (24, 1, IN), (769, 32, IN));
    toleranced("24 +1/32, -0", (24, 1, IN), (24, 1, IN), (769, 32, IN));
    toleranced("24 -0 +1/32", (24, 1, IN), (24, 1, IN), (769, 32, IN));
    toleranced("24 +1/32", (24, 1, IN), (24, 1, IN), (769, 32, IN));
    toleranced("25 +0/-0.2 mm", (25, 1, MM), (248, 10, MM), (25, 1, MM));
    toleranced("25mm +0/-0.2mm", (25, 1, MM), (248, 10, MM), (25, 1, MM));
    toleranced("25 mm +0/−0.2 mm", (25, 1, MM), (248, 10, MM), (25, 1, MM));
    toleranced("25 ± 0.2 mm", (25, 1, MM), (248, 10, MM), (252, 10, MM));
    toleranced("25mm ±0", (25, 1, MM), (25, 1, MM), (25, 1, MM));
    toleranced("2'3 ±1/8", (27, 1, IN), (215, 8, IN), (217, 8, IN));
    toleranced("24\" (+1/32, -0)", (24, 1, IN), (24, 1, IN), (769, 32, IN));
    toleranced("24 (±1/32)", (24, 1, IN), (767, 32, IN), (769, 32, IN));
    toleranced("24\" [±1/32]", (24, 1, IN), (767, 32, IN), (769, 32, IN));
    toleranced("(25 ± 0.2) mm", (25, 1, MM), (248, 10, MM), (252, 10, MM));
    toleranced("25 (+0/-0.2) mm", (25, 1, MM), (248, 10, MM), (25, 1, MM));
    toleranced("25 (−0.2 +0 mm)", (25, 1, MM), (248, 10, MM), (25, 1, MM));
    toleranced("24 plus or minus 1/32", (24, 1, IN), (767, 32, IN), (769, 32, IN));
    toleranced("24 + or - 1/32", (24, 1, IN), (767, 32, IN), (769, 32, IN));
    toleranced("24 plus/minus 1/32", (24, 1, IN), (767, 32, IN), (769, 32, IN));
    toleranced("24 +/– 1/32", (24, 1, IN), (767, 32, IN), (769, 32, IN));
    toleranced("two feet Plus or Minus 1/8 inch", (24, 1, IN), (191, 8, IN), (193, 8, IN));
    toleranced("24 give or take 1/16", (24, 1, IN), (383, 16, IN), (385, 16, IN));
    toleranced("24 within 1/16", (24, 1, IN), (383, 16, IN), (385, 16, IN));
    toleranced("24 +1/32 –1/64", (24, 1, IN), (1535, 64, IN), (769, 32, IN));
    toleranced("24 +1/32 −1/64", (24, 1, IN), (1535, 64, IN), (769, 32, IN));
    toleranced("24 −1/64 +1/32", (24, 1, IN), (1535, 64, IN), (769, 32, IN));
    toleranced("24 plus 1/32, minus 1/64", (24, 1, IN), (1535, 64, IN), (769, 32, IN));
    toleranced("24 +1/32 and -1/64", (24, 1, IN), (1535, 64, IN), (769, 32, IN));
    toleranced("24 +1/32-1/64", (24, 1, IN), (1535, 64, IN), (769, 32, IN));
    toleranced("24 -0+1/32", (24, 1, IN), (24, 1, IN), (769, 32, IN));
    toleranced("24\" +1/32/-0", (24, 1, IN), (24, 1, IN), (769, 32, IN));
    toleranced("-24 ±1/32", (-24, 1, IN), (-769, 32, IN), (-767, 32, IN));
    toleranced("2' - 3\" ±1/8", (27, 1, IN), (215, 8, IN), (217, 8, IN));
    toleranced("8' -5/8\", +1/32\"", (96, 1, IN), (763, 8, IN), (3073, 32, IN));
    toleranced("6' -3\" +1/8 -0", (75, 1, IN), (75, 1, IN), (601, 8, IN));
    toleranced("17 5/8 ± 1/64", (141, 8, IN), (1127, 64, IN), (1129, 64, IN));
}

#[test]
fn suspicious_tolerances() {
    const BLANK: Option<Warning> = Some(Warning::LostBlank);
    for (text, warnings) in [
        ("13/4 ±1/32", [BLANK, None, None]),
        ("24 +17/16 -0", [None, BLANK, None]),
        ("5.6' ±1/8 in", [Some(Warning::DecimalFeet), None, None]),
        ("1 3/4 ±1/32", [None; 3]),
        ("24 +9/8 -0", [None; 3]),
        ("5.25' ±1/8 in", [None; 3]),
    ] {
        let (_, written) = LengthParser::new().parse_toleranced_written(text).unwrap_or_else(|error| panic!("{text:?}: {error}"));
        assert_eq!(written.map(|written| written.warning()), warnings, "{text:?}");
    }
}

#[test]
fn limits_add_up_in_the_worst_case() {
    // Worked by hand: three boards of 5 1/2 within 1/16 either way, and one of 3 +1/8 -0.
    let board: Toleranced = "5 1/2 ±1/16".parse().unwrap();
    let strip: Toleranced = "3 +1/8 -0".parse().unwrap();
    let run = Toleranced::checked_worst_case([board, board, board, strip]).unwrap();
    assert_eq!(run.nominal(), length((39, 2, IN)));
    assert_eq!((run.least(), run.most()), (length((309, 16, IN)), length((317, 16, IN))));
}

#[track_caller]
fn called(text: &str, mark: Parts, side: Side, steps: Option<u8>, said: Option<Parts>) {
    let found: Called = text.parse().unwrap_or_else(|error| panic!("{text:?}: {error}"));
    assert_eq!(
        (found.mark(), found.side(), found.steps(), found.said()),
        (length(mark), side, steps, said.map(length)),
        "{text:?}"
    );
}

#[test]
fn called_lengths() {
    called("17 5/8 strong", (141, 8, IN), Side::Over, Some(1), None);
    called("17-5/8\" strong", (141, 8, IN), Side::Over, Some(1), None);
    called("5/8 shy", (5, 8, IN), Side::Under, Some(1), None);
    called("3/4+", (3, 4, IN), Side::Over, Some(1), None);
    called("3/4-", (3, 4, IN), Side::Under, Some(1), None);
    called("7/16 minus", (7, 16, IN), Side::Under, Some(1), None);
    called("7/16ths plus", (7, 16, IN), Side::Over, Some(1), None);
    called("48 7/16 plus plus", (775, 16, IN), Side::Over, Some(2), None);
    called("3/4++", (3, 4, IN), Side::Over, Some(2), None);
    called("3/4 Big", (3, 4, IN), Side::Over, Some(1), None);
    called("3/4 light", (3, 4, IN), Side::Under, Some(1), None);
    called("3/4 heavy", (3, 4, IN), Side::Over, Some(1), None);
    called("3/4 scant", (3, 4, IN), Side::Under, Some(1), None);
    called("strong,3/4", (3, 4, IN), Side::Over, Some(1), None);
    called("17 5/8", (141, 8, IN), Side::On, Some(0), None);
    called("17 3/8 strong by 1/40", (139, 8, IN), Side::Over, None, Some((1, 40, IN)));
    called("17-3/8\" shy by 0.5 mm", (139, 8, IN), Side::Under, None, Some((1, 2, MM)));
    called("just shy of 3/4", (3, 4, IN), Side::Under, Some(1), None);
    called("a hair over 11-1/4", (45, 4, IN), Side::Over, Some(1), None);
    called("a strong 5/8", (5, 8, IN), Side::Over, Some(1), None);
    called("A tad under 3/4", (3, 4, IN), Side::Under, Some(1), None);
    called("Less than 3/4", (3, 4, IN), Side::Under, Some(1), None);
    called("17 5/8, strong.", (141, 8, IN), Side::Over, Some(1), None);
    called("-1/2 strong", (-1, 2, IN), Side::Over, Some(1), None);
    called("3/4 a hair strong", (3, 4, IN), Side::Over, Some(1), None);
    called("3/4, just a hair under", (3, 4, IN), Side::Under, Some(1), None);
    called("17 5/8 strong by a hair", (141, 8, IN), Side::Over, Some(1), None);
    called("3/4 plus a hair", (3, 4, IN), Side::Over, Some(1), None);
    called("3/4 less a touch", (3, 4, IN), Side::Under, Some(1), None);
    called("17 5/8 and a hair", (141, 8, IN), Side::Over, Some(1), None);
    called("17 5/8 & a bit", (141, 8, IN), Side::Over, Some(1), None);
    called("big eighth", (1, 8, IN), Side::Over, Some(1), None);
    called("a full inch", (1, 1, IN), Side::Over, Some(1), None);
    called("A good 5/8.", (5, 8, IN), Side::Over, Some(1), None);
    called("a scant half inch", (1, 2, IN), Side::Under, Some(1), None);
    called("nearly a foot", (12, 1, IN), Side::Under, Some(1), None);
    called("barely under 3/4", (3, 4, IN), Side::Under, Some(1), None);
    called("5/8-strong", (5, 8, IN), Side::Over, Some(1), None);
    called("a strong 5/8 plus", (5, 8, IN), Side::Over, Some(2), None);
    called("1/16 shy of 3/4", (3, 4, IN), Side::Under, None, Some((1, 16, IN)));
    called("a sixteenth over 5/8", (5, 8, IN), Side::Over, None, Some((1, 16, IN)));
    called("1/2 mm more than 17 in", (17, 1, IN), Side::Over, None, Some((1, 2, MM)));
    called("minus 1/2", (-1, 2, IN), Side::On, Some(0), None);
    called("minus three quarters", (-3, 4, IN), Side::On, Some(0), None);
    called("Minus 1/2 minus", (-1, 2, IN), Side::Under, Some(1), None);
    called("minus a half strong", (-1, 2, IN), Side::Over, Some(1), None);
    called("plus five inches.", (5, 1, IN), Side::On, Some(0), None);
}

#[test]
fn three_crews_mean_three_steps() {
    // Field notes of three crews: common practice, no source.
    let value = |text: &str, step: Parts| text.parse::<Called>().unwrap().checked_length(length(step)).unwrap();
    assert_eq!(value("48 7/16ths plus", (1, 64, IN)), length((3101, 64, IN)));
    assert_eq!(value("48 7/16 plus plus", (1, 64, IN)), length((1551, 32, IN)));
    assert_eq!(value("48 7/16 minus", (1, 64, IN)), length((3099, 64, IN)));
    assert_eq!(value("1/8+", (1, 16, IN)), length((3, 16, IN)));
    assert_eq!(value("17 3/8 strong by 1/40", (1, 16, IN)), length((87, 5, IN)));
}

#[test]
#[rustfmt::skip] // one line a case
fn refused() {
    let parser = LengthParser::new();
    let rows: [(&str, Kind, core::ops::Range<usize>, &str); 37] = [
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
    ];
    for (text, kind, span, message) in rows {
        let error = parser.parse_size(text).expect_err(text);
        assert_eq!((error.kind(), error.span(), &*error.to_string()), (kind, span, message), "{text:?}");
    }
    let rows: [(&str, Kind, core::ops::Range<usize>, &str); 25] = [
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
    ];
    for (text, kind, span, message) in rows {
        let error = parser.parse_toleranced(text).expect_err(text);
        assert_eq!((error.kind(), error.span(), &*error.to_string()), (kind, span, message), "{text:?}");
    }
    let rows: [(&str, Kind, core::ops::Range<usize>, &str); 17] = [
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
    ];
    for (text, kind, span, message) in rows {
        let error = parser.parse_called(text).expect_err(text);
        assert_eq!((error.kind(), error.span(), &*error.to_string()), (kind, span, message), "{text:?}");
    }
}

/// Where a bare number has the caller's unit, it takes none that is written beside it.
#[test]
fn a_bare_number_keeps_the_unit_that_was_asked_for() {
    let metric = LengthParser::new().default_unit(MM);
    let error = metric.parse_size("24 x 36 cm").unwrap_err();
    assert_eq!((error.kind(), error.span()), (Kind::SizeUnits, 0..2));
    for (text, span) in [("24 ± 1 cm", 6..10), ("(24 ± 1) cm", 1..3)] {
        let error = metric.parse_toleranced(text).expect_err(text);
        assert_eq!((error.kind(), error.span()), (Kind::ToleranceUnit, span), "{text:?}");
    }
}
