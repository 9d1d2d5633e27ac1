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

/// As one value in a list, whatever the number of lengths.
#[test]
fn a_size_debugs_as_its_lengths() {
    let size = LengthParser::new().parse_size("24 W x 36").unwrap();
    let [first, second] = size.lengths() else { panic!("{size:?}") };
    assert_eq!(format!("{size:?}"), format!("[{first:?}, {second:?}]"));
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
    size(plain, "24 x 36 x 12 HxWxD", &[(24, 1, IN, "H"), (36, 1, IN, "W"), (12, 1, IN, "D")]);
    size(plain, "24 x 36 (W 610 x H 914 mm)", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "24 W x 36 in (610 x 914 mm H)", &[(24, 1, IN, "W"), (36, 1, IN, "H")]);
    size(plain, "24 x 36 in HxW", &[(24, 1, IN, "H"), (36, 1, IN, "W")]);
    size(plain, "0x4", &[(0, 1, IN, ""), (4, 1, IN, "")]);
    size(plain, "20 x 0", &[(20, 1, IN, ""), (0, 1, IN, "")]);
    size(plain, "8' x 0", &[(96, 1, IN, ""), (0, 1, IN, "")]);
    size(plain, "0 x 20 mm", &[(0, 1, IN, ""), (20, 1, MM, "")]);
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
