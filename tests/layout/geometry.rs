//! Geometry against figures printed elsewhere or worked by hand; refusals are in
//! `geometry_refusals.rs`, what holds for every length in `geometry_properties.rs`. Each row names its source:
//!
//! - OSX: Prealgebra, a textbook, by module;
//! - field note: a problem as it was asked, or told, in a shop;
//! - common practice, no source; from memory; worked by hand.

use scantling::{
    Angle, Corner, FrameSize, GeometryError, Hook, Lean, Length, Miters, Molding, Polygon, Rounding, RoundingMode, SpacingError,
    Squareness, Tape, Triple, Unit, burned_inch, center_from_ends, check_miters, diagonal, exact_diagonal, hinges, midpoint,
    out_of_square, slanted_reading, slanted_rule, squared_diagonal,
};

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn whole(count: i64) -> Length {
    Length::new(count, Unit::Inch)
}

const fn millimeters(count: i64) -> Length {
    Length::new(count, Unit::Millimeter)
}

const MODES: [RoundingMode; 6] = [
    RoundingMode::TiesUp,
    RoundingMode::TiesEven,
    RoundingMode::TiesAway,
    RoundingMode::Down,
    RoundingMode::Up,
    RoundingMode::TowardZero,
];

/// Source, sides, step, mark, lean.
#[test]
#[rustfmt::skip]
fn diagonals() {
    let rows = [
        ("field note: a panel", whole(24), whole(36), inches(1, 64), inches(2769, 64), Lean::Strong),
        ("field note: its width 1/8 short", inches(191, 8), whole(36), inches(1, 64), inches(2765, 64), Lean::Shy),
        ("field note: its height 1/8 short", whole(24), inches(287, 8), inches(1, 64), inches(1381, 32), Lean::Strong),
        ("field note: 3-4-5 in feet", whole(36), whole(48), inches(1, 16), whole(60), Lean::DeadOn),
        ("from memory: root 2 is 1.41421", whole(100_000), whole(100_000), whole(1), whole(141_421), Lean::Strong),
        ("from memory: root 5 is 2.23607", whole(100_000), whole(200_000), whole(1), whole(223_607), Lean::Shy),
        ("worked by hand: 1600² + 1200²", millimeters(1600), millimeters(1200), millimeters(1), millimeters(2000), Lean::DeadOn),
        // 25.4² × 2 is 1290.32, and 36² is 1296, 35.5² is 1260.25.
        ("worked by hand: an inch in millimeters", whole(1), whole(1), millimeters(1), millimeters(36), Lean::Shy),
        // 2 × 7² is 98 and 10² is 100, 9.5² is 90.25.
        ("worked by hand: thirds of an inch", inches(7, 3), inches(7, 3), inches(1, 3), inches(10, 3), Lean::Shy),
        ("worked by hand: a step past the length", whole(3), whole(4), whole(11), whole(0), Lean::Strong),
    ];
    for (source, width, height, step, mark, lean) in rows {
        let across = diagonal(width, height, step).unwrap();
        assert_eq!((across.mark(), across.lean()), (mark, lean), "{source}");
        assert_eq!(across, diagonal(height, width, step).unwrap(), "{source}");
    }
}

/// The diagonal of 3/32 by 4/32 in lies midway between sixteenths, at 2 1/2 of them: worked by hand. In
/// the order of `MODES`.
#[test]
fn a_diagonal_midway_follows_the_mode() {
    let (up, down) = ((3, Lean::Shy), (2, Lean::Strong));
    for (mode, (sixteenths, lean)) in MODES.into_iter().zip([up, down, up, down, up, down]) {
        let across = diagonal(inches(3, 32), inches(4, 32), Rounding::to(inches(1, 16)).mode(mode)).unwrap();
        assert_eq!((across.mark(), across.lean(), across.exact()), (inches(sixteenths, 16), lean, None), "{mode:?}");
        // 9/32 by 12/32 in: 7 1/2 of them, where the even neighbor is the upper one.
        let next = diagonal(inches(9, 32), inches(12, 32), Rounding::to(inches(1, 16)).mode(mode)).unwrap();
        let upper = [true, true, true, false, true, false][MODES.iter().position(|other| *other == mode).unwrap()];
        assert_eq!(next.mark(), inches(if upper { 8 } else { 7 }, 16), "{mode:?}");
    }
}

/// Worked by hand.
#[test]
fn diagonals_that_have_a_fraction() {
    let rows = [
        (whole(3), whole(4), Some(whole(5))),
        (inches(1, 3), inches(1, 4), Some(inches(5, 12))),
        (inches(20, 7), inches(21, 7), Some(inches(29, 7))),
        (millimeters(33), millimeters(56), Some(millimeters(65))),
        (whole(24), whole(36), None),
        (whole(1), millimeters(1), None),
    ];
    for (width, height, expected) in rows {
        assert_eq!(exact_diagonal(width, height), Ok(expected), "{width} by {height}");
    }
}

/// Field note: one fault of 1/8 in shows more in the diagonal on the longer side.
#[test]
fn squared_diagonals_compare_without_a_root() {
    let squared = |width, height| squared_diagonal(width, height).unwrap();
    assert_eq!(squared(whole(24), whole(36)).checked_in_square(Unit::Inch), Some(1872.into()));
    assert!(squared(whole(24), inches(287, 8)) < squared(inches(191, 8), whole(36)));
}

/// Source, diagonals, side, half the difference, shift. The frames are made of two right triangles with one height.
#[test]
#[rustfmt::skip]
fn frames_out_of_square() {
    let rows = [
        ("worked by hand: 5, 9 and 12", whole(15), whole(13), whole(7), whole(1), whole(2)),
        ("worked by hand: 9, 16 and 12", whole(20), whole(15), inches(25, 2), inches(5, 2), inches(7, 2)),
        ("worked by hand: 5, 16 and 12", whole(20), whole(13), inches(21, 2), inches(7, 2), inches(11, 2)),
        ("worked by hand: square", whole(25), whole(25), whole(7), whole(0), whole(0)),
        ("worked by hand: metric", millimeters(1502), millimeters(1498), millimeters(900), millimeters(2), Length::fraction(10, 3, Unit::Millimeter)),
    ];
    for (source, long, short, side, push, shift) in rows {
        for frame in [out_of_square(long, short).unwrap(), out_of_square(short, long).unwrap()] {
            assert_eq!((frame.long(), frame.short()), (long, short), "{source}");
            assert_eq!((frame.difference(), frame.push()), (2 * push, push), "{source}");
            assert_eq!(frame.sideways(side), Ok(shift), "{source}");
        }
    }
    // Worked by hand: (15² + 13²) / 2 is 197, whose root is 14.036; half the difference is a hair too much.
    let square = out_of_square(whole(15), whole(13)).unwrap().squared(inches(1, 16)).unwrap();
    assert_eq!((square.mark(), square.lean()), (inches(225, 16), Lean::Shy));
}

#[test]
fn a_limit_is_a_parameter() {
    let frame = out_of_square(inches(313, 4), whole(78)).unwrap();
    let verdict = |limit| frame.verdict(limit).unwrap();
    assert_eq!(verdict(inches(1, 4)), Squareness::WithinLimit);
    assert_eq!(verdict(inches(15, 64)), Squareness::PastLimit);
    assert_eq!(verdict(whole(0)), Squareness::PastLimit);
    assert_eq!(out_of_square(whole(9), whole(9)).unwrap().verdict(whole(0)), Ok(Squareness::Square));
    assert_eq!(frame.verdict(whole(-1)), Err(GeometryError::BelowZero { what: "a limit", given: whole(-1) }));
}

/// Worked by hand: a frame 28 in wide below, 20 in above, 7 in high and even to both sides. Either diagonal
/// runs 24 in over and 7 in up, which is 25 in, and no corner is square. Diagonals alone cannot tell.
#[test]
fn equal_diagonals_do_not_show_a_side_out_of_parallel() {
    let across = exact_diagonal(whole(28) - whole(4), whole(7)).unwrap().unwrap();
    assert_eq!(out_of_square(across, across).unwrap().verdict(whole(0)), Ok(Squareness::Square));
}

/// Source, triple, reach, unit, how many times, legs, across.
#[test]
#[rustfmt::skip]
fn corners_within_reach() {
    const THREE: Triple = Triple::THREE_FOUR_FIVE;
    let foot = whole(12);
    let rows = [
        ("field note: 36, 48 and 60", THREE, (whole(48), whole(48)), foot, 1, whole(36), whole(48), whole(60)),
        ("worked by hand", THREE, (whole(100), whole(100)), whole(1), 25, whole(75), whole(100), whole(125)),
        ("worked by hand: turned", THREE, (whole(100), whole(75)), whole(1), 25, whole(100), whole(75), whole(125)),
        ("worked by hand: either way round", THREE, (whole(8), whole(8)), whole(1), 2, whole(6), whole(8), whole(10)),
        ("worked by hand: short of it", THREE, (inches(143, 2), inches(119, 2)), whole(1), 17, whole(68), whole(51), whole(85)),
        ("worked by hand: half inches", THREE, (whole(5), whole(9)), inches(1, 2), 3, inches(9, 2), whole(6), inches(15, 2)),
        ("worked by hand: metric", THREE, (millimeters(2700), millimeters(3500)), millimeters(100), 8, millimeters(2400), millimeters(3200), millimeters(4000)),
        ("worked by hand", Triple::FIVE_TWELVE_THIRTEEN, (whole(10), whole(36)), whole(1), 2, whole(10), whole(24), whole(26)),
        ("worked by hand", Triple::EIGHT_FIFTEEN_SEVENTEEN, (whole(30), whole(16)), whole(1), 2, whole(30), whole(16), whole(34)),
        ("worked by hand", Triple::TWENTY_TWENTY_ONE_TWENTY_NINE, (whole(41), whole(41)), whole(1), 1, whole(20), whole(21), whole(29)),
        ("worked by hand", Triple::new(24, 7, 25).unwrap(), (whole(7), whole(24)), whole(1), 1, whole(7), whole(24), whole(25)),
    ];
    let shown = |corner: Corner| (corner.times(), corner.first(), corner.second(), corner.across());
    for (source, triple, (first, second), unit, times, one, other, across) in rows {
        assert_eq!(triple.within(first, second, unit).map(shown), Ok((times, one, other, across)), "{source}");
        assert_eq!(exact_diagonal(one, other), Ok(Some(across)), "{source}");
    }
}

/// Source, stock, size, long point, short point.
#[test]
#[rustfmt::skip]
fn pieces_of_a_frame() {
    use FrameSize::{Opening, Outside, Picture};
    let stock = Molding::new(whole(2));
    let rows = [
        ("field note: picture 8, rabbet 1/8", stock.rabbet(inches(1, 8)), Picture(whole(8)), inches(47, 4), inches(31, 4)),
        ("field note: long less short is 4", stock, Outside(whole(24)), whole(24), whole(20)),
        ("OSX m81290, picture 8 in 2 5/8", Molding::new(inches(21, 8)), Picture(whole(8)), inches(53, 4), whole(8)),
        ("worked by hand: opening", stock, Opening(whole(20)), whole(24), whole(20)),
        ("worked by hand: rabbet and room have no say", stock.rabbet(inches(1, 4)).allowance(inches(1, 8)), Opening(whole(20)), whole(24), whole(20)),
        ("worked by hand: rabbet and room", stock.rabbet(inches(1, 4)).allowance(inches(1, 8)), Picture(whole(20)), inches(189, 8), inches(157, 8)),
        ("worked by hand: nothing seen", stock, Outside(whole(4)), whole(4), whole(0)),
        ("worked by hand: metric", Molding::new(millimeters(30)).rabbet(millimeters(6)).allowance(millimeters(3)), Picture(millimeters(400)), millimeters(451), millimeters(391)),
    ];
    for (source, stock, size, long, short) in rows {
        let piece = stock.piece(size).unwrap();
        assert_eq!((piece.long_point(), piece.short_point()), (long, short), "{source}");
        assert_eq!(check_miters(stock.width(), long, short, Length::ZERO), Ok(Miters::Converge), "{source}");
        let marks = stock.piece_at(size, Angle::degrees(45), inches(1, 1000)).unwrap();
        let exact = |length: Length| length.round(inches(1, 1000)).unwrap();
        assert_eq!((marks.long_point().mark(), marks.short_point().mark()), (exact(long), exact(short)), "{source}");
    }
}

/// Tangents from memory to six decimals: 0.577350 at 30 degrees, 0.414214 at 22 1/2, 1.732051 at 60, 0.481575
/// at 25 5/7. Source, stock, size, setting, both points in sixteenths.
#[test]
#[rustfmt::skip]
fn pieces_at_other_angles() {
    use FrameSize::{Opening, Outside, Picture};
    let stock = Molding::new(whole(2));
    let setting = |sides| Polygon::new(sides).unwrap().setting();
    let rows = [
        ("worked by hand: 12 less 1.6569", stock, Outside(whole(12)), setting(8), (192, Lean::DeadOn), (165, Lean::Strong)),
        ("worked by hand: 8 and 2.3094", stock, Opening(whole(8)), setting(6), (165, Lean::Shy), (128, Lean::DeadOn)),
        ("worked by hand: 8 and 6.9282", stock, Opening(whole(8)), setting(3), (239, Lean::Shy), (128, Lean::DeadOn)),
        ("worked by hand: 12 less 1.9263", stock, Outside(whole(12)), setting(7), (192, Lean::DeadOn), (161, Lean::Strong)),
        ("worked by hand: 8 and 2.0207, 8 less 0.2887", stock.rabbet(inches(1, 4)), Picture(whole(8)), setting(6), (160, Lean::Strong), (123, Lean::Strong)),
        ("worked by hand: a square cut", stock, Outside(whole(12)), Angle::degrees(0), (192, Lean::DeadOn), (192, Lean::DeadOn)),
    ];
    for (source, stock, size, setting, long, short) in rows {
        let piece = stock.piece_at(size, setting, inches(1, 16)).unwrap();
        for (point, (sixteenths, lean)) in [(piece.long_point(), long), (piece.short_point(), short)] {
            assert_eq!((point.mark(), point.lean()), (inches(sixteenths, 16), lean), "{source}");
        }
    }
}

/// Field note: a whole frame was cut with parallel miters.
#[test]
fn parallel_miters_are_named() {
    let check = |outer, inner, limit| check_miters(whole(2), outer, inner, limit).unwrap();
    assert_eq!(check(whole(24), whole(20), whole(0)), Miters::Converge);
    assert_eq!(check(whole(24), whole(24), whole(0)), Miters::Parallel);
    assert_eq!(check(whole(24), inches(383, 16), inches(1, 16)), Miters::Parallel);
    assert_eq!(check(whole(24), inches(321, 16), inches(1, 16)), Miters::Converge);
    assert_eq!(check(whole(24), whole(22), inches(1, 16)), Miters::Off { by: whole(-2) }); // one end square
    assert_eq!(check(whole(24), whole(19), inches(1, 16)), Miters::Off { by: whole(1) });
    assert_eq!(check(whole(20), whole(24), inches(1, 16)), Miters::Off { by: whole(-8) });
}

/// Common practice, no source: sides, setting, turn and corner as fractions of a degree.
#[test]
fn angles_of_polygons() {
    let rows = [
        (3, (60, 1), (120, 1), (60, 1)),
        (4, (45, 1), (90, 1), (90, 1)),
        (5, (36, 1), (72, 1), (108, 1)),
        (6, (30, 1), (60, 1), (120, 1)),
        (7, (180, 7), (360, 7), (900, 7)),
        (8, (45, 2), (45, 1), (135, 1)),
        (12, (15, 1), (30, 1), (150, 1)),
        (16, (45, 4), (45, 2), (315, 2)),
    ];
    for (sides, setting, turn, corner) in rows {
        let polygon = Polygon::new(sides).unwrap();
        let angles = [polygon.setting(), polygon.turn(), polygon.corner()].map(|angle| angle.in_degrees().into());
        assert_eq!((polygon.sides(), angles), (sides, [setting, turn, corner]));
    }
    assert!(Polygon::new(u32::MAX).unwrap().corner() < Angle::degrees(180));
    let written = [(45, 1), (45, 2), (180, 7), (-1, 2)].map(|(num, den)| Angle::fraction(num, den).to_string());
    assert_eq!(written, ["45°", "22 1/2°", "25 5/7°", "-1/2°"]);
}

#[test]
fn centers() {
    // Field note: the center of a 47 ft room.
    assert_eq!(center_from_ends(whole(288), whole(12)), Ok(whole(282)));
    // Worked by hand: the measures miss each other by 3/4 in; then they just meet.
    assert_eq!(center_from_ends(whole(40), inches(-3, 4)), Ok(inches(323, 8)));
    assert_eq!(center_from_ends(whole(40), whole(0)), Ok(whole(40)));
    assert_eq!(center_from_ends(whole(40), whole(40)), Ok(whole(20)));
    assert_eq!(midpoint(inches(5, 16), inches(1, 3)), Ok(inches(31, 96)));
    assert_eq!(midpoint(whole(-3), whole(1)), Ok(whole(-1)));
}

#[test]
fn hinges_along_a_door() {
    // Field note: 2 1/2 in from either end of a 30 in door, the third one centered.
    let centers = |count, leaf, top, bottom, height| {
        let layout = hinges(count, leaf, top, bottom).over(height).unwrap();
        layout.marks().map(|mark| mark.center()).collect::<Vec<_>>()
    };
    let held = inches(5, 2);
    assert_eq!(centers(3, whole(0), held, held, whole(30)), [held, whole(15), inches(55, 2)]);
    // Worked by hand: leaves of 3 1/2 in, 7 in from the top, 11 in from the bottom of an 80 in door.
    assert_eq!(centers(3, inches(7, 2), whole(7), whole(11), whole(80)), [inches(35, 4), whole(38), inches(269, 4)]);
    assert_eq!(centers(2, inches(7, 2), whole(7), whole(11), whole(80)), [inches(35, 4), inches(269, 4)]);
    let refused = hinges(3, inches(7, 2), whole(7), whole(11)).over(whole(28));
    assert!(matches!(refused, Err(SpacingError::DoesNotFit { members: 3, .. })));
}

/// Source, width, strips, reading, marks, strip.
#[test]
#[rustfmt::skip]
fn rules_on_the_slant() {
    let rows = [
        ("field note: 2 3/4 into three", inches(11, 4), 3, whole(3), vec![whole(1), whole(2)], inches(11, 12)),
        ("field note: 7 3/4 into four", inches(31, 4), 4, whole(12), vec![whole(3), whole(6), whole(9)], inches(31, 16)),
        ("worked by hand: straight across", whole(6), 2, whole(6), vec![whole(3)], whole(3)),
        ("worked by hand: one strip", whole(6), 1, whole(7), vec![], whole(6)),
        ("worked by hand: a mark off the inch", whole(6), 3, whole(7), vec![inches(7, 3), inches(14, 3)], whole(2)),
    ];
    for (source, width, parts, reading, marks, strip) in rows {
        let slant = slanted_rule(width, parts, reading).unwrap();
        assert_eq!((slant.reading(), slant.strip()), (reading, strip), "{source}");
        assert_eq!(slant.marks().collect::<Vec<_>>(), marks, "{source}");
    }
    // Worked by hand: the root of 12² less 7.75² is 9.1617.
    let along = slanted_rule(inches(31, 4), 4, whole(12)).unwrap().along(inches(1, 16)).unwrap();
    assert_eq!((along.mark(), along.lean()), (inches(147, 16), Lean::Shy));
}

/// Worked by hand: width, strips, unit, rule, the least reading.
#[test]
fn the_least_reading_that_divides() {
    let rows = [
        (inches(11, 4), 3, whole(1), whole(6), whole(3)),
        (inches(31, 4), 4, whole(1), whole(12), whole(8)),
        (inches(31, 4), 5, whole(1), whole(12), whole(10)),
        (inches(31, 4), 5, inches(1, 2), whole(12), whole(10)),
        (inches(29, 4), 5, inches(1, 2), whole(12), inches(15, 2)),
        (whole(8), 4, whole(1), whole(12), whole(8)),
        (millimeters(197), 4, millimeters(10), millimeters(300), millimeters(200)),
    ];
    for (width, parts, unit, rule, reading) in rows {
        assert_eq!(slanted_reading(width, parts, unit, rule).map(|slant| slant.reading()), Ok(reading), "{width} in {parts}");
    }
}

#[test]
fn tapes_that_start_elsewhere() {
    // Field note: read from the 1 in line; forgotten, two boards were cut an inch short. To mark out, 24 + 1.
    assert_eq!(burned_inch(whole(25), whole(1)), Ok(whole(24)));
    assert_eq!(Tape::sixteenths().offset(whole(1)).read(whole(24)).unwrap().shown(), whole(25));
    // Field note: the 10 in mark held at two clamped drawer sides of 23/32 in leaves the drawer back.
    assert_eq!(burned_inch(whole(10), 2 * inches(23, 32)), Ok(inches(137, 16)));

    // Field note: both readings agree only while the hook slides by its thickness.
    let good = Hook::new(inches(1, 16));
    assert_eq!((good.outside(whole(30)), good.inside(whole(30))), (Ok(whole(30)), Ok(whole(30))));
    // Worked by hand, with a wall at the outer face of the hook: worn rivets, a thin hook, a hook bent outward.
    let worn = good.slide(inches(3, 32));
    assert_eq!((worn.outside(whole(30)), worn.inside(whole(30))), (Ok(whole(30)), Ok(inches(959, 32))));
    let filed = Hook::new(inches(1, 32)).slide(inches(1, 16));
    assert_eq!((filed.outside(whole(30)), filed.inside(whole(30))), (Ok(whole(30)), Ok(inches(959, 32))));
    let bent = good.bent(inches(-1, 16));
    assert_eq!((bent.outside(whole(30)), bent.inside(whole(30))), (Ok(inches(481, 16)), Ok(inches(481, 16))));
    let both = worn.bent(inches(-1, 16));
    assert_eq!((both.outside_error(), both.inside_error()), (inches(-1, 16), Ok(inches(-1, 32))));
}

/// Every mark a rounded figure has is on the step, within its bound, and written with its lean.
#[test]
fn rounded_figures_in_words() {
    let written = |width, height| diagonal(width, height, inches(1, 16)).unwrap().to_string();
    assert_eq!(written(whole(24), whole(36)), r#"43-1/4" strong"#);
    assert_eq!(written(whole(36), whole(48)), r#"60""#);
    assert_eq!(written(whole(1), whole(1)), r#"1-7/16" shy"#);
    let across = diagonal(whole(36), whole(48), inches(1, 16)).unwrap();
    assert_eq!(format!("[{across:>6}]"), r#"[   60"]"#);
}
