//! Stopped dadoes, shelves that are set back, joints that go through, rows of holes and nail lines. Worked by hand, apart from
//! the crate; that a dado is stopped so that it does not show, and that what goes in is notched or narrower, is common practice,
//! no source.

use scantling::{Allowances, Back, Case, FaceFrame, FrameJoint, Joint, Length, PinHoles, Shelves, Tape, TopAt, Unit};

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

fn case() -> Case {
    Case::new(inches(36, 1), inches(72, 1), inches(12, 1))
}

/// Dadoes of 1/4 with 1/16 for glue, a back of 1/4, an edging of 1/8, two bays of 16 7/8; stopped 1/2 short.
#[test]
fn notches_and_runs() {
    let plan = case()
        .joined(Joint::Dado(inches(1, 4)))
        .stopped(inches(1, 2))
        .allowing(Allowances::new(inches(1, 16), Length::ZERO, inches(1, 16)))
        .back(Back::Rabbet { thickness: inches(1, 4), depth: inches(3, 8) })
        .edging(inches(1, 8))
        .bays(2, inches(3, 4))
        .shelves(Shelves::Equal(4))
        .plan()
        .unwrap();
    let notched: Vec<_> = plan
        .parts()
        .iter()
        .filter_map(|part| part.notch().map(|notch| (part.name(), part.length().total().unwrap(), notch.deep, notch.back)))
        .collect();
    assert_eq!(
        notched,
        [
            // 34 1/2 + 1/2 - 1/16: 7/32 at each end is more than what is clear.
            ("bottom", inches(559, 16), inches(7, 32), inches(1, 2)),
            // 70 1/2 + 1/2 - 1/16
            ("partition", inches(1135, 16), inches(7, 32), inches(1, 2)),
            // 16 7/8 + 1/2 - 1/16; the edging passes the first 1/8.
            ("shelf", inches(277, 16), inches(7, 32), inches(3, 8)),
        ]
    );
    let runs: Vec<_> = plan.stopped_dadoes().iter().map(|dado| (dado.panel, dado.short, dado.long)).collect();
    let half = inches(1, 2);
    // 12 - 1/2; 12 - 1/4 - 1/2
    assert_eq!(
        runs,
        [
            ("sides", half, inches(23, 2)),
            ("partitions", half, inches(45, 4)),
            ("bottom", half, inches(45, 4)),
            ("top", half, inches(45, 4)),
        ]
    );
    let steps = plan.order_of_work().join("\n");
    for said in [
        "stop them 1/2\" short of the front edge, at the line of the pole \"depth\", and square their ends: from the rear edge they run 11 1/2\" on the sides, 11 1/4\" on \
         the partitions, 11 1/4\" on the bottom, 11 1/4\" on the top.",
        "bottom 7/32\" off each end and 1/2\" back; partition 7/32\" off each end and 1/2\" back; shelf 7/32\" off each end and 3/8\" back.",
    ] {
        assert!(steps.contains(said), "{steps}");
    }
}

/// From the front edge, on a pole as long as the side is deep.
#[test]
fn the_pole_of_the_ends() {
    let marks = |set_back, stopped| {
        let case = case().joined(Joint::Dado(inches(1, 4))).shelves(Shelves::Equal(2)).set_back(set_back).stopped(stopped);
        let plan = case.plan().unwrap();
        let pole = plan.poles().iter().find(|pole| pole.name() == "depth").cloned();
        pole.map(|pole| {
            assert_eq!((pole.length(), pole.check(&Tape::sixteenths())), (inches(12, 1), vec![]));
            pole.rows()[0].marks().iter().map(|mark| (mark.position, mark.name.clone())).collect::<Vec<_>>()
        })
    };
    let (half, one) = (inches(1, 2), inches(1, 1));
    let (end, front) = ("end of the dadoes".to_owned(), "front of the shelves".to_owned());
    assert_eq!(marks(Length::ZERO, Length::ZERO), None);
    assert_eq!(marks(Length::ZERO, half), Some(vec![(half, end.clone())]));
    assert_eq!(marks(half, one), Some(vec![(half, front.clone()), (one, end.clone())]));
    assert_eq!(marks(half, half), Some(vec![(half, format!("{end}, {front}"))]));
}

/// A shelf as far back as the dado stops needs no notch: it is narrower.
#[test]
fn narrower_shelves() {
    let with = |set_back, stopped| {
        let case = case().joined(Joint::Dado(inches(1, 4))).shelves(Shelves::Equal(2)).set_back(set_back).stopped(stopped);
        let plan = case.plan().unwrap();
        let shelf = plan.parts().iter().find(|part| part.name() == "shelf").unwrap();
        let advice = plan.advice(&Tape::sixteenths()).first().map(ToString::to_string);
        assert!(plan.closings().iter().all(scantling::Closing::is_closed));
        (shelf.width().total().unwrap(), shelf.notch().map(|notch| notch.back), advice)
    };
    let (half, three_quarters) = (inches(1, 2), inches(3, 4));
    let shows =
        |by: &str| Some(format!("the shelves are set back, and {by}\" of each dado shows before them: stop the dadoes there"));
    assert_eq!(with(half, half), (inches(23, 2), None, None));
    assert_eq!(with(half, three_quarters), (inches(23, 2), Some(inches(1, 4)), None));
    assert_eq!(with(three_quarters, half), (inches(45, 4), None, shows("1/4")));
    assert_eq!(with(half, Length::ZERO), (inches(23, 2), None, shows("1/2")));
    assert_eq!(with(Length::ZERO, Length::ZERO), (inches(12, 1), None, None));
}

#[test]
fn dadoes_that_run_through_say_so() {
    let steps = case().joined(Joint::Dado(inches(1, 4))).plan().unwrap().order_of_work().join("\n");
    assert!(steps.contains("run them through: their ends show at the front"), "{steps}");
    // A top of 13 whose front edge is 1 before the box: 12 - 1/2 from its rear edge.
    let over = TopAt::OverSides { past_sides: Length::ZERO, past_front: inches(1, 1) };
    let parted = case().joined(Joint::Dado(inches(1, 4))).stopped(inches(1, 2)).bays(2, inches(3, 4)).top_at(over);
    let steps = parted.plan().unwrap().order_of_work().join("\n");
    assert!(steps.contains("11 1/2\" on the top; the top's own front edge lies 1\" before that of the case."), "{steps}");
    // A dado for the top alone is stopped, and the top notched, too: 34 1/2 + 1/2.
    let top = case().top_at(TopAt::BetweenSides(Joint::Dado(inches(1, 4)))).stopped(inches(1, 2)).plan().unwrap();
    let notched: Vec<_> = top.parts().iter().filter(|part| part.notch().is_some()).map(scantling::CasePart::name).collect();
    assert_eq!(notched, ["top"]);
}

#[test]
fn what_cannot_be() {
    let dado = |depth| case().joined(Joint::Dado(depth));
    let quarter = inches(1, 4);
    let groove = Back::Groove { thickness: quarter, depth: inches(1, 2), set_in: quarter };
    for (case, said) in [
        (case().stopped(quarter), "only a dado can be stopped short of the front edge, and the case has none"),
        (
            dado(quarter).stopped(inches(12, 1)),
            "the clear length of a stopped dado would come out 0\": the overall sizes leave no room for it",
        ),
        (dado(quarter).stopped(-quarter), "the length by which a dado is stopped cannot be -1/4\": it must not be below zero"),
        (case().set_back(-quarter), "the set-back of the shelves cannot be -1/4\": it must not be below zero"),
        (dado(quarter).bays(2, inches(3, 4)).bottom_of(quarter), "a joint 1/4\" deep goes through the 1/4\" bottom"),
        (dado(quarter).bays(2, inches(3, 4)).top_of(quarter), "a joint 1/4\" deep goes through the 1/4\" top"),
        (dado(quarter).bays(2, quarter).shelves(Shelves::Equal(1)), "a joint 1/4\" deep goes through the 1/4\" partition"),
        (case().back(groove).top_of(inches(3, 8)), "a joint 1/2\" deep goes through the 3/8\" top"),
        (case().back(groove).bottom_of(inches(1, 2)), "a joint 1/2\" deep goes through the 1/2\" bottom"),
    ] {
        assert_eq!(case.plan().unwrap_err().to_string(), said);
    }
    // Nothing is cut into a bottom without partitions, nor into a partition that holds no shelf.
    assert!(dado(quarter).bottom_of(quarter).plan().is_ok());
    assert!(dado(quarter).bays(2, quarter).plan().is_ok());
    let said = dado(inches(5, 16)).sides_of(inches(1, 1)).bays(2, inches(3, 4)).plan().unwrap().advice(&Tape::sixteenths());
    assert_eq!(said[0].to_string(), "a dado of 5/16\" is deeper than a third of the 3/4\" bottom: it weakens it");
}

#[test]
fn rows_of_pin_holes() {
    let pins = |edges| Shelves::Adjustable(2, PinHoles::new(inches(1, 1), inches(4, 1), edges, inches(3, 8)));
    for (edges, set_back, expected) in [
        (inches(23, 4), Length::ZERO, None),
        (
            inches(6, 1),
            Length::ZERO,
            Some("pin rows 6\" from the edges of a shelf 12\" deep lie on one line, or cross: bring them nearer to the edges"),
        ),
        (
            inches(12, 1),
            Length::ZERO,
            Some("pin rows 12\" from the edges fall off a side that is 12\" deep to the rear edge of the shelf"),
        ),
        (Length::ZERO, Length::ZERO, Some("pin rows right on the edges: no hole holds there")),
        (inches(5, 4), inches(1, 1), None),
        (
            inches(1, 1),
            inches(1, 1),
            Some("the front pin row is 1\" from the front edge, and the shelves begin 1\" from it: no pin bears there"),
        ),
    ] {
        let said = case().shelves(pins(edges)).set_back(set_back).plan().unwrap().advice(&Tape::sixteenths());
        assert_eq!(said.first().map(ToString::to_string).as_deref(), expected);
    }
}

/// The centers of the edges of bottom, shelf and top, on the outside of the sides. Common practice, no source.
#[test]
fn nail_lines() {
    let lines = |case: Case| -> Vec<String> { case.plan().unwrap().nail_lines().iter().map(ToString::to_string).collect() };
    let side = "from the lower end of each side, on its outside, into the middle of";
    assert_eq!(
        lines(case().shelves(Shelves::Equal(1))),
        [format!("3/8\" {side} the bottom"), format!("36\" {side} shelf 1"), format!("71 5/8\" {side} the top")]
    );
    let over = TopAt::OverSides { past_sides: inches(1, 1), past_front: Length::ZERO };
    assert_eq!(
        lines(case().top_at(over))[1],
        "1 3/8\" from each end of the top, on its upper face, into the middle of the side's upper end"
    );
    // Three bays of 11: the partitions begin at 11 3/4 and 23 1/2.
    assert_eq!(
        lines(case().bays(3, inches(3, 4)))[2..],
        [("12 1/8", 1), ("23 7/8", 2)].map(|(at, number)| {
            format!(
                "{at}\" from the outside of the left side, on the bottom and on the top, into the middle of partition {number}"
            )
        })
    );
}

/// What stands on the pole of the sides, and nothing else.
#[test]
fn what_is_marked_on_the_sides() {
    let over = TopAt::OverSides { past_sides: Length::ZERO, past_front: Length::ZERO };
    let pins = Shelves::Adjustable(1, PinHoles::new(inches(1, 1), inches(4, 1), inches(1, 1), inches(3, 8)));
    for (case, marked) in [
        (case(), "bottom and top"),
        (case().top_at(over), "bottom"),
        (case().shelves(Shelves::Equal(2)), "bottom, shelves and top"),
        (case().shelves(pins), "bottom, top and the rows of holes"),
        (case().shelves(Shelves::Equal(2)).top_at(over), "bottom and shelves"),
    ] {
        let step = &case.plan().unwrap().order_of_work()[3];
        assert!(step.contains(&format!("and mark {marked} from the pole \"side\" on both at once")), "{step}");
    }
}

/// Mullions of 2 before the middle of 36; the frame as wide as the box, and 1/4 past it at both sides.
#[test]
fn mullions_on_the_rails() {
    let (left, wide) = (Length::ZERO, inches(2, 1));
    let (rails, stiles) = (FrameJoint::RailsBetween, FrameJoint::StilesBetween);
    for (past, joint, length, at) in [
        (left, rails, inches(32, 1), inches(15, 1)),
        (left, stiles, inches(36, 1), inches(17, 1)),
        (inches(1, 4), rails, inches(65, 2), inches(61, 4)),
        (inches(1, 4), stiles, inches(73, 2), inches(69, 4)),
    ] {
        let frame = FaceFrame::new(inches(3, 4), wide).past_sides(past, past).joined(joint);
        let plan = case().frame(frame).bays(2, inches(3, 4)).plan().unwrap();
        let pole = plan.poles().iter().find(|pole| pole.name() == "rails").unwrap();
        let marks: Vec<_> = pole.rows()[0].marks().iter().map(|mark| (mark.position, mark.name.as_str())).collect();
        assert_eq!((pole.length(), marks), (length, vec![(at, "mullion 1")]));
        let rail = plan.parts().iter().find(|part| part.name() == "rail").unwrap();
        assert_eq!(rail.length().total(), Ok(length));
        assert!(plan.order_of_work().iter().any(|step| step.contains("the mullions on the rails from the pole \"rails\"")));
    }
    // 36 less three stiles of 12, less two of 19.
    let refused = |stile, joint, bays| {
        let frame = FaceFrame::new(inches(3, 4), stile).rails(wide, wide).joined(joint);
        case().frame(frame).bays(bays, inches(3, 4)).plan().unwrap_err().to_string()
    };
    for (stile, joint, bays, said) in [
        (inches(12, 1), rails, 2, "the clear width between stiles and mullions would come out 0\""),
        (inches(19, 1), stiles, 1, "the clear width between the stiles would come out -2\""),
    ] {
        assert_eq!(refused(stile, joint, bays), format!("{said}: the overall sizes leave no room for it"));
    }
    let one = case().frame(FaceFrame::new(inches(3, 4), wide)).plan().unwrap();
    assert!(one.poles().iter().all(|pole| pole.name() != "rails"));
}
