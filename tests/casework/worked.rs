//! Whole cases, each part to the exact fraction. Worked by hand, apart from the crate.

use scantling::{
    Allowances, Back, Base, Case, CasePlan, Edge, FaceFrame, FrameJoint, Joint, Layout, Length, Overall, Pieces, PinHoles,
    Shelves, Spacing, Tape, TopAt, Unit,
};

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

fn whole(count: i64) -> Length {
    inches(count, 1)
}

/// A line of a cut list: name, pieces, thickness, width, length.
type Line = (&'static str, Pieces, Length, Length, Length);

fn lines(plan: &CasePlan) -> Vec<Line> {
    let line = |part: &scantling::CasePart| {
        let (width, length) = (part.width().total().unwrap(), part.length().total().unwrap());
        (part.name(), part.pieces(), part.thickness(), width, length)
    };
    plan.parts().iter().map(line).collect()
}

fn closes(plan: &CasePlan) {
    for closing in plan.closings() {
        assert!(closing.is_closed(), "{closing}");
    }
    for pole in plan.poles() {
        assert_eq!(pole.check(&Tape::with_step(inches(1, 1024)).unwrap()), [], "{}", pole.name());
    }
}

/// 36 wide, 72 high, 12 deep over the frame, on a base, with dadoes, a rabbeted back and four shelves.
fn ware_case() -> Case {
    let frame =
        FaceFrame::new(inches(3, 4), inches(7, 4)).rails(inches(9, 4), inches(3, 2)).past_sides(inches(1, 4), inches(1, 4));
    Case::new(whole(36), whole(72), whole(12))
        .measured_over(Overall::Frame)
        .sheet(inches(23, 32))
        .back(Back::Rabbet { thickness: inches(7, 32), depth: inches(3, 8) })
        .frame(frame)
        .level_with_rail(true)
        .joined(Joint::Dado(inches(1, 4)))
        .top_at(TopAt::BetweenSides(Joint::Rabbet(inches(1, 4))))
        .base(Base::Separate { height: whole(4), stock: inches(3, 4), from_front: whole(3), from_sides: inches(1, 2), ties: 1 })
        .shelves(Shelves::Equal(4))
}

#[test]
fn the_ware_case() {
    use Pieces::{Alike, Mirrored};
    let (sheet, stock) = (inches(23, 32), inches(3, 4));
    let plan = ware_case().plan().unwrap();
    assert_eq!(
        lines(&plan),
        [
            ("side", Mirrored(1), sheet, inches(45, 4), whole(68)),
            ("bottom", Alike(1), sheet, inches(353, 32), inches(553, 16)),
            ("top", Alike(1), sheet, inches(353, 32), inches(553, 16)),
            ("shelf", Alike(4), sheet, inches(353, 32), inches(553, 16)),
            ("back", Alike(1), inches(7, 32), inches(139, 4), inches(1087, 16)),
            ("stile", Alike(2), stock, inches(7, 4), whole(68)),
            ("top rail", Alike(1), stock, inches(9, 4), inches(65, 2)),
            ("bottom rail", Alike(1), stock, inches(3, 2), inches(65, 2)),
            ("base front and rear", Alike(2), stock, whole(4), inches(69, 2)),
            ("base crosspiece", Alike(3), stock, whole(4), inches(15, 2)),
        ]
    );
    closes(&plan);
}

#[test]
fn the_levels_of_the_ware_case() {
    let plan = ware_case().plan().unwrap();
    let levels = plan.levels();
    let lower: Vec<Length> = levels.shelves.iter().map(|shelf| shelf.lower).collect();
    let exact = [1_408_125, 2_738_125, 4_068_125, 5_398_125];
    assert_eq!(lower, exact.map(|count| inches(count, 100_000)));
    assert_eq!(levels.bottom.upper, inches(3, 2));
    assert!(levels.openings().all(|opening| opening == inches(1_258_125, 100_000)));

    let tape = Tape::sixteenths();
    let marks: Vec<Length> = lower.iter().map(|lower| tape.read(*lower).unwrap().mark()).collect();
    assert_eq!(marks, [inches(225, 16), inches(219, 8), inches(651, 16), whole(54)]);
    let run = levels.top.lower - levels.bottom.upper;
    let layout: Layout = Spacing::equal_openings(4, inches(23, 32)).over(run).unwrap();
    let from_side = tape.offset(levels.bottom.upper);
    let cut: Vec<Length> = layout.on_edge(&from_side, Edge::Near).unwrap().gaps().collect();
    let (outer, inner) = (inches(201, 16), inches(403, 32));
    assert_eq!(cut, [outer, inner, inner, inner, outer]);

    // Seen through the frame: from the top of the last shelf as cut to the lower edge of the top rail, at 68 - 2 1/4.
    assert_eq!(inches(263, 4) - (whole(54) + inches(23, 32)), inches(353, 32));
    let frame = plan.poles().iter().find(|pole| pole.name() == "frame").unwrap();
    assert_eq!(frame.rows()[0].marks()[1].position, inches(263, 4));
    assert_eq!(plan.nail_lines()[0].at, inches(39, 64));
    let side = &plan.poles()[0];
    let marked: Vec<Length> = side.rows()[0].marks().iter().map(|mark| mark.position).filter(|at| lower.contains(at)).collect();
    assert_eq!(marked, lower);
}

#[test]
fn every_figure_says_where_it_comes_from() {
    let plan = ware_case().plan().unwrap();
    let said = |name: &str| {
        let part = plan.parts().iter().find(|part| part.name() == name).unwrap();
        (part.width().to_string(), part.length().to_string())
    };
    for (name, width, length) in [
        ("side", "overall depth 12\", less the face frame, 3/4\"", "overall height 72\", less the base, 4\""),
        (
            "shelf",
            "overall depth 12\", less the face frame, 3/4\", less the back, 7/32\"",
            "overall width 36\", less two overhangs of 1/4\", less two sides of 23/32\", plus two dadoes of 1/4\"",
        ),
        (
            "back",
            "overall width 36\", less two overhangs of 1/4\", less two sides of 23/32\", plus two rabbets of 3/8\", less the play of the back, \
             1/16\"",
            "overall height 72\", less the base, 4\", less the play of the back, 1/16\"",
        ),
        ("top rail", "width 2 1/4\"", "overall width 36\", less two stiles of 1 3/4\""),
    ] {
        assert_eq!(said(name), (width.into(), length.into()), "{name}");
    }
    let closings: Vec<String> = plan.closings().iter().map(ToString::to_string).collect();
    assert_eq!(
        closings[0],
        "width 36\": left overhang 1/4\" + side 23/32\" + clear 34 1/16\" + side 23/32\" + right overhang 1/4\""
    );
    assert_eq!(closings[2], "depth 12\": back 7/32\" + shelf 11 1/32\" + face frame 3/4\"");
}

/// Five shelves, butt joints, nothing else: 30 × 60 × 10.
#[test]
fn a_plain_case() {
    use Pieces::{Alike, Mirrored};
    let t = inches(3, 4);
    let plan = Case::new(whole(30), whole(60), whole(10)).shelves(Shelves::Equal(5)).plan().unwrap();
    assert_eq!(
        lines(&plan),
        [
            ("side", Mirrored(1), t, whole(10), whole(60)),
            ("bottom", Alike(1), t, whole(10), inches(57, 2)),
            ("top", Alike(1), t, whole(10), inches(57, 2)),
            ("shelf", Alike(5), t, whole(10), inches(57, 2)),
        ]
    );
    // (60 - 7 × 3/4) / 6 = 9 1/8
    assert!(plan.levels().openings().all(|opening| opening == inches(73, 8)));
    closes(&plan);
}

/// Dadoes, a rabbeted back, the frame flush at the left against a wall and 3/8 past the right side; a toe space under it.
#[test]
fn a_case_against_a_wall() {
    use Pieces::{Alike, Mirrored};
    let frame = FaceFrame::new(inches(7, 8), whole(2)).rails(whole(3), whole(2)).past_sides(Length::ZERO, inches(3, 8));
    let case = Case::new(whole(40), whole(84), whole(14))
        .measured_over(Overall::Frame)
        .joined(Joint::Dado(inches(3, 16)))
        .top_at(TopAt::BetweenSides(Joint::Rabbet(inches(3, 8))))
        .back(Back::Rabbet { thickness: inches(1, 4), depth: inches(3, 8) })
        .frame(frame.joined(FrameJoint::StilesBetween))
        .base(Base::SidesToFloor { height: inches(7, 2), recess: whole(3), stock: inches(3, 4) })
        .allowing(Allowances::new(inches(1, 8), Length::ZERO, inches(1, 32)))
        .shelves(Shelves::Openings(vec![whole(16), whole(14), whole(12)]));
    let (t, plan) = (inches(3, 4), case.plan().unwrap());
    assert_eq!(
        lines(&plan),
        [
            // 14 - 7/8
            ("side", Mirrored(1), t, inches(105, 8), whole(84)),
            // 13 1/8 - 1/4; 40 - 3/8 - 1 1/2 + 3/8 - 1/32
            ("bottom", Alike(1), t, inches(103, 8), inches(1231, 32)),
            // 40 - 3/8 - 1 1/2 + 3/4 - 1/32
            ("top", Alike(1), t, inches(103, 8), inches(1243, 32)),
            ("shelf", Alike(3), t, inches(103, 8), inches(1231, 32)),
            // 38 1/8 + 3/4 - 1/8; 84 - 3 1/2 - 1/8
            ("back", Alike(1), inches(1, 4), inches(155, 4), inches(643, 8)),
            // 80 1/2 - 5
            ("stile", Alike(2), inches(7, 8), whole(2), inches(151, 2)),
            ("top rail", Alike(1), inches(7, 8), whole(3), whole(40)),
            ("bottom rail", Alike(1), inches(7, 8), whole(2), whole(40)),
            ("toe board", Alike(1), t, inches(7, 2), inches(305, 8)),
        ]
    );
    // From the floor: 3 1/2 + 3/4 + 16, and so on.
    let lower: Vec<Length> = plan.levels().shelves.iter().map(|shelf| shelf.lower).collect();
    assert_eq!(lower, [inches(81, 4), whole(35), inches(191, 4)]);
    assert_eq!((plan.nail_lines()[0].at, plan.nail_lines()[1].at), (inches(3, 8), inches(3, 4)));
    closes(&plan);
}

/// 900 × 2000 × 350 mm of 18 mm sheet, a 6 mm back in a groove 5 deep and 12 in, rows of holes at 32.
#[test]
fn a_case_in_millimeters() {
    use Pieces::{Alike, Mirrored};
    let mm = |count| Length::new(count, Unit::Millimeter);
    let case = Case::new(mm(900), mm(2000), mm(350))
        .sheet(mm(18))
        .back(Back::Groove { thickness: mm(6), depth: mm(5), set_in: mm(12) })
        .shelves(Shelves::Adjustable(4, PinHoles::ROWS_OF_32))
        .edging(mm(2))
        .allowing(Allowances::new(mm(1), mm(3), mm(0)));
    let plan = case.plan().unwrap();
    assert_eq!(
        lines(&plan),
        [
            ("side", Mirrored(1), mm(18), mm(350), mm(2000)),
            ("bottom", Alike(1), mm(18), mm(350), mm(864)),
            ("top", Alike(1), mm(18), mm(350), mm(864)),
            ("shelf", Alike(4), mm(18), mm(332), mm(861)),
            ("shelf edging", Alike(4), mm(2), mm(18), mm(864)),
            ("back", Alike(1), mm(6), mm(873), mm(1973)),
        ]
    );
    let sawn = plan.parts()[3].sawn_width().total().unwrap();
    assert_eq!(sawn, mm(330));
    // The first at 18 + 96; the last no higher than 1982 - 96 = 1886: 55 steps of 32 past 114 are 1874.
    let holes = &plan.levels().holes;
    assert_eq!((holes.len(), holes[0], holes[55]), (56, mm(114), mm(1874)));
    closes(&plan);
}

/// Three bays under a top that stands past the box, with a molding: 72 × 36 × 16 over the top.
#[test]
fn a_case_with_three_bays() {
    use Pieces::{Alike, Mirrored};
    let case = Case::new(whole(72), whole(36), whole(16))
        .measured_over(Overall::Top)
        .top_of(whole(1))
        .top_at(TopAt::OverSides { past_sides: whole(1), past_front: whole(1) })
        .joined(Joint::Dado(inches(1, 8)))
        .back(Back::Applied { thickness: inches(1, 4) })
        .frame(FaceFrame::new(inches(3, 4), inches(3, 2)))
        .bays(3, inches(3, 4))
        .molding(inches(5, 8))
        .shelves(Shelves::Proportional(vec![3, 2]));
    let (t, plan) = (inches(3, 4), case.plan().unwrap());
    assert_eq!(
        lines(&plan),
        [
            // 16 - 3/4 - 1 - 1/4; 36 - 1
            ("side", Mirrored(1), t, whole(14), whole(35)),
            // 72 - 2 - 1 1/2 + 1/4
            ("bottom", Alike(1), t, whole(14), inches(275, 4)),
            // 16 - 3/4 - 1 + 3/4 + 1
            ("top", Alike(1), whole(1), whole(16), whole(72)),
            // 35 - 3/4 + 1/4
            ("partition", Alike(2), t, whole(14), inches(69, 2)),
            // (68 1/2 - 1 1/2) / 3 + 1/4
            ("shelf", Alike(3), t, whole(14), inches(271, 12)),
            ("back", Alike(1), inches(1, 4), whole(70), whole(35)),
            ("stile", Alike(2), t, inches(3, 2), whole(35)),
            ("rail", Alike(2), t, inches(3, 2), whole(67)),
            ("mullion", Alike(2), t, inches(3, 2), whole(32)),
            ("molding, front", Alike(1), inches(5, 8), Length::ZERO, inches(285, 4)),
            // 14 1/4 + 3/4 + 5/8
            ("molding, return", Mirrored(1), inches(5, 8), Length::ZERO, inches(125, 8)),
        ]
    );
    // (34 1/4 - 3/4) × 3/5, above the bottom's 3/4
    assert_eq!(plan.levels().shelves[0].lower, inches(417, 20));
    let pole = plan.poles().last().unwrap();
    let at: Vec<Length> = pole.rows()[0].marks().iter().map(|mark| mark.position).collect();
    // 3/4 + 22 1/3, and 23 1/12 more
    assert_eq!(at, [Length::ZERO, inches(277, 12), inches(277, 6), whole(70)]);
    closes(&plan);
}
