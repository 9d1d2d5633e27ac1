//! Doors and drawers before a case, each to the exact fraction, and what is unwise about them. Worked by hand, apart from the
//! crate.

use num_rational::Ratio;
use scantling::{
    Back, Case, CasePlan, FaceFrame, FrontSet, Growth, Length, Mount, Movement, Overall, Pieces, PinHoles, Shelves, Tape, TopAt,
    Unit,
};

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

/// Pieces, across the grain, with it, and where both come from.
fn fronts(plan: &CasePlan) -> Vec<(Pieces, Length, Length, String, String)> {
    let is_front = |part: &&scantling::CasePart| ["door", "drawer front"].contains(&part.name());
    let line = |part: &scantling::CasePart| {
        let [width, length] = [part.width(), part.length()];
        (part.pieces(), width.total().unwrap(), length.total().unwrap(), width.to_string(), length.to_string())
    };
    plan.parts().iter().filter(is_front).map(line).collect()
}

fn closes(plan: &CasePlan) {
    assert!(plan.closings().iter().filter(|closing| closing.what().ends_with("the fronts")).count() >= 2);
    for closing in plan.closings() {
        assert!(closing.is_closed(), "{closing}");
    }
}

/// A frame of 36 × 68 with stiles of 1 3/4 and rails of 2 1/4 and 1 1/2: an opening of 32 1/2 × 64 1/4.
#[test]
fn a_pair_of_inset_doors() {
    let frame =
        FaceFrame::new(inches(3, 4), inches(7, 4)).rails(inches(9, 4), inches(3, 2)).past_sides(inches(1, 4), inches(1, 4));
    let doors = FrontSet::doors(2, Mount::Inset { gap: inches(3, 32) }, inches(3, 4));
    let case = Case::new(inches(36, 1), inches(68, 1), inches(12, 1)).measured_over(Overall::Frame).frame(frame).fronts(doors);
    let plan = case.plan().unwrap();
    let from = "opening 32 1/2\", less three gaps of 3/32\", shared by two";
    // (32 1/2 - 9/32) / 2, 64 1/4 - 3/16
    assert_eq!(
        fronts(&plan),
        [(Pieces::Alike(2), inches(1031, 64), inches(1025, 16), from.into(), "opening 64 1/4\", less two gaps of 3/32\"".into())]
    );
    closes(&plan);
    let closings: Vec<String> = plan.closings().iter().map(ToString::to_string).collect();
    assert!(
        closings.contains(
            &"width across the fronts 32 1/2\": gap 3/32\" + door 16 7/64\" + gap 3/32\" + door 16 7/64\" + gap 3/32\"".into()
        ),
        "{closings:?}"
    );
    let steps = plan.order_of_work().join("\n");
    assert!(steps.contains("cut the doors to them, and hang them with a gap of 3/32\" all round"), "{steps}");
}

/// Bays of 23 behind mullions of 1 1/2: the outer openings are 21 7/8 wide, the middle one 22 1/4.
#[test]
fn bays_behind_a_frame_have_doors_of_their_own_width() {
    let mount = Mount::Overlay { past: inches(3, 8), gap: inches(1, 8) };
    let case = Case::new(inches(72, 1), inches(36, 1), inches(16, 1))
        .frame(FaceFrame::new(inches(3, 4), inches(3, 2)))
        .bays(3, inches(3, 4))
        .fronts(FrontSet::doors(1, mount, inches(3, 4)));
    let plan = case.plan().unwrap();
    let high = || "opening 33\", plus two overlays of 3/8\"".to_owned();
    assert_eq!(
        fronts(&plan),
        [
            (Pieces::Alike(2), inches(181, 8), inches(135, 4), "opening 21 7/8\", plus two overlays of 3/8\"".into(), high()),
            (Pieces::Alike(1), inches(23, 1), inches(135, 4), "opening 22 1/4\", plus two overlays of 3/8\"".into(), high()),
        ]
    );
    // 1 1/2 and 23 3/8, 24 7/8 and 47 1/8, 48 5/8 and 70 1/2, each with 3/8 more.
    let places: Vec<_> = plan.front_places().unwrap().iter().map(|place| (place.left, place.right)).collect();
    assert_eq!(places, [(inches(9, 8), inches(95, 4)), (inches(49, 2), inches(95, 2)), (inches(193, 4), inches(567, 8))]);
    assert!(plan.front_places().unwrap().iter().all(|place| (place.lower, place.upper) == (inches(9, 8), inches(279, 8))));
    closes(&plan);
}

/// Between sides and bottom and top of 3/4: 16 1/2 × 28 1/2, of which five gaps of 1/8 leave 27 7/8 for four.
#[test]
fn graduated_drawers() {
    let of = |growth| {
        let drawers = FrontSet::drawers(4, growth, Mount::Inset { gap: inches(1, 8) }, inches(3, 4));
        let plan = Case::new(inches(18, 1), inches(30, 1), inches(20, 1)).fronts(drawers).plan().unwrap();
        closes(&plan);
        fronts(&plan)
    };
    for (growth, from_below) in [
        // 4 top + 6 = 27 7/8
        (Growth::Step(inches(1, 1)), [inches(271, 32), inches(239, 32), inches(207, 32), inches(175, 32)]),
        // 20 + 6 steps = 27 7/8: a step of 1 5/16
        (Growth::Top(inches(5, 1)), [inches(143, 16), inches(61, 8), inches(101, 16), inches(5, 1)]),
    ] {
        let fronts = of(growth);
        assert_eq!(fronts.iter().map(|front| front.1).collect::<Vec<_>>(), from_below);
        assert!(fronts.iter().all(|front| (front.0, front.2) == (Pieces::Alike(1), inches(65, 4))), "{fronts:?}");
    }
    // The pole of the first: 1/8 up, then 8 15/32 and 1/8 more, and so on.
    let drawers = FrontSet::drawers(4, Growth::Step(inches(1, 1)), Mount::Inset { gap: inches(1, 8) }, inches(3, 4));
    let plan = Case::new(inches(18, 1), inches(30, 1), inches(20, 1)).fronts(drawers).plan().unwrap();
    let pole = plan.poles().iter().find(|pole| pole.name() == "drawer fronts").unwrap();
    let at: Vec<Length> = pole.rows()[0].marks().iter().map(|mark| mark.position).collect();
    assert_eq!((pole.length(), at), (inches(57, 2), vec![inches(1, 8), inches(279, 32), inches(261, 16), inches(733, 32)]));
    let equal = of(Growth::Step(Length::ZERO));
    let from = "opening 28 1/2\", less five gaps of 1/8\", shared by four".to_owned();
    assert_eq!((equal.len(), equal[0].0, equal[0].1, &equal[0].3), (1, Pieces::Alike(4), inches(223, 32), &from));
}

#[test]
fn what_is_unwise() {
    let case = || Case::new(inches(36, 1), inches(30, 1), inches(12, 1)).shelves(Shelves::Equal(1));
    let frame = FaceFrame::new(inches(3, 4), inches(3, 2)).rails(inches(3, 2), inches(3, 4));
    let (inset, overlay) = (|gap| Mount::Inset { gap }, |past, gap| Mount::Overlay { past, gap });
    let doors = |mount| FrontSet::doors(2, mount, inches(3, 4));
    let (eighth, sixteenth) = (inches(1, 8), inches(1, 16));
    let top = |past_front| TopAt::OverSides { past_sides: Length::ZERO, past_front };
    let over = doors(overlay(inches(1, 2), eighth));
    for (case, expected) in vec![
        (case().frame(frame).fronts(doors(inset(eighth))), None),
        (case().set_back(inches(3, 4)).fronts(doors(inset(eighth))), None),
        (
            case().fronts(doors(inset(eighth))),
            Some("inset fronts reach 3/4\" behind the front edges and strike the shelves: set these back by more"),
        ),
        (
            case().set_back(inches(1, 2)).fronts(doors(inset(eighth))),
            Some("inset fronts reach 3/4\" behind the front edges and strike the shelves, which are set back 1/2\""),
        ),
        (case().frame(frame).fronts(doors(overlay(inches(3, 4), eighth))), None),
        (
            case().frame(frame).fronts(doors(overlay(inches(7, 8), eighth))),
            Some("fronts that lie 7/8\" past the opening reach over the bottom rail, which is 3/4\" wide"),
        ),
        (
            case().fronts(doors(overlay(inches(1, 1), eighth))),
            Some("fronts that lie 1\" past the opening reach over the side, which is 3/4\" wide"),
        ),
        (
            case().frame(frame).fronts(FrontSet::drawers(2, Growth::Step(Length::ZERO), inset(eighth), inches(3, 4))),
            Some("shelves lie behind the drawer fronts: a drawer runs only between two of them"),
        ),
        (case().top_at(top(Length::ZERO)).fronts(over), None),
        (case().top_at(top(eighth)).frame(frame).fronts(over), None),
        (case().top_at(top(eighth)).fronts(doors(overlay(Length::ZERO, eighth))), None),
        (
            case().top_at(top(eighth)).fronts(over),
            Some(
                "fronts that lie 1/2\" past the opening strike the top, which stands 1/8\" past the front: make them inset, or give the \
                 case a frame",
            ),
        ),
        // 5/16 + 5/16 + 1/8 is 3/4, 3/8 + 3/8 + 1/16 is more.
        (case().bays(2, inches(3, 4)).fronts(doors(overlay(inches(5, 16), eighth))), None),
        (
            case().bays(2, inches(3, 4)).fronts(doors(overlay(inches(3, 8), sixteenth))),
            Some("fronts of two openings meet: two overlays and a gap take 13/16\", and the partition is 3/4\" wide"),
        ),
        (
            case().fronts(doors(overlay(inches(1, 2), Length::ZERO))),
            Some("fronts without a gap bind against each other or against the opening"),
        ),
    ] {
        let advice = case.plan().unwrap().advice(&Tape::sixteenths());
        assert_eq!(advice.first().map(ToString::to_string).as_deref(), expected, "{advice:?}");
    }
}

#[test]
fn what_is_refused() {
    let case = || Case::new(inches(36, 1), inches(30, 1), inches(12, 1));
    let mount = Mount::Inset { gap: inches(1, 8) };
    let equal = Growth::Step(Length::ZERO);
    for (set, said) in [
        (FrontSet::doors(0, mount, inches(3, 4)), "there is at least one front across an opening"),
        (FrontSet::drawers(0, equal, mount, inches(3, 4)), "there is at least one front across an opening"),
        // 28 1/2 - 5/8 - 120 is four of -23 1/32, the next 20 more.
        (
            FrontSet::drawers(4, Growth::Step(inches(20, 1)), mount, inches(3, 4)),
            "the drawer front would come out -3 1/32\" high: the overall sizes leave no room for it",
        ),
        (
            FrontSet::drawers(2, Growth::Bottom(inches(-5, 1)), mount, inches(3, 4)),
            "the drawer front would come out -5\" high: the overall sizes leave no room for it",
        ),
        // 40 and a gap of 1/8, in 28 1/2 less two gaps.
        (
            FrontSet::drawers(2, Growth::Top(inches(40, 1)), mount, inches(3, 4)),
            "drawer fronts and gaps of given sizes come to 40 1/8\", and 28 1/4\" is to be filled: give other heights",
        ),
        (
            FrontSet::drawers(1, Growth::Top(inches(5, 1)), mount, inches(3, 4)),
            "drawer fronts and gaps of given sizes come to 5\", and 28 1/4\" is to be filled: give other heights",
        ),
        (FrontSet::doors(u32::MAX, mount, inches(3, 4)), "the figures are too large or too fine to be worked out exactly"),
        (FrontSet::doors(1, mount, Length::ZERO), "the door would come out 0\" thick: the overall sizes leave no room for it"),
        (
            FrontSet::doors(1, Mount::Inset { gap: inches(-1, 8) }, inches(3, 4)),
            "a gap cannot be -1/8\": it must not be below zero",
        ),
        // Of 34 1/2, 276 gaps of 1/8 leave nothing.
        (FrontSet::doors(275, mount, inches(3, 4)), "the front would come out 0\" wide: the overall sizes leave no room for it"),
    ] {
        assert_eq!(case().fronts(set).plan().unwrap_err().to_string(), said);
    }
}

/// Inset fronts are cut when the openings can be measured, all others with the rest. Common practice, no source.
#[test]
fn when_fronts_are_cut() {
    let gap = inches(1, 8);
    let (inset, overlay) = (Mount::Inset { gap }, Mount::Overlay { past: inches(1, 2), gap });
    let drawers = |count, mount| FrontSet::drawers(count, Growth::Step(Length::ZERO), mount, inches(3, 4));
    let but = |fronts: &str| format!("Cut the parts of the cut list{fronts}; mark the face");
    let measured = "Measure the openings as they are, cut the drawer fronts to them,";
    for (set, cut, hung) in [
        (
            FrontSet::doors(1, inset, inches(3, 4)),
            " but the doors",
            "Measure the openings as they are, cut the doors to them, and hang them with a gap of 1/8\" all round.".to_owned(),
        ),
        (
            FrontSet::doors(1, overlay, inches(3, 4)),
            "",
            "Hang the doors 1/2\" past each edge of the opening, with a gap of 1/8\" between two.".into(),
        ),
        (drawers(1, inset), " but the drawer fronts", format!("{measured} and fasten them with a gap of 1/8\" all round.")),
        (
            drawers(2, inset),
            " but the drawer fronts",
            format!(
                "{measured} mark their places from the pole \"drawer fronts\", and fasten them with a gap of 1/8\" all round."
            ),
        ),
        (
            drawers(1, overlay),
            "",
            "Fasten the drawer fronts 1/2\" past each edge of the opening, with a gap of 1/8\" between two.".into(),
        ),
        (
            drawers(2, overlay),
            "",
            "Mark the places of the drawer fronts from the pole \"drawer fronts\", and fasten them 1/2\" past each edge".into(),
        ),
    ] {
        let steps = Case::new(inches(18, 1), inches(30, 1), inches(20, 1)).fronts(set).plan().unwrap().order_of_work();
        assert!(steps[2].starts_with(&but(cut)), "{}", steps[2]);
        assert!(steps[steps.len() - 2].starts_with(&hung), "{}", steps[steps.len() - 2]);
    }
}

/// A shelf 12 deep moves by 3/25, one 6 deep by 3/50, under a sixteenth.
#[test]
fn what_is_held_across_its_grain() {
    let case = |depth| Case::new(inches(36, 1), inches(30, 1), inches(depth, 1)).shelves(Shelves::Equal(1));
    let said = |case: Case, solid: &'static [&'static str]| -> Vec<String> {
        let is_solid = |part: &scantling::CasePart| solid.contains(&part.name());
        let moving = case.plan().unwrap().moving(Movement::new(250), Ratio::from(10), Ratio::from(6), is_solid).unwrap();
        moving.iter().filter_map(|part| part.advice.as_ref().map(ToString::to_string)).collect()
    };
    let held = |part: &str, by: &str| {
        let alone = "glue or nail them together near the front edge alone";
        [format!("the {part} moves 3/25\" across the grain, and the {by} does not: {alone}")]
    };
    assert_eq!(said(case(12), &["shelf"]), held("shelf", "side"));
    assert_eq!(said(case(12), &["side"]), held("side", "shelf"));
    assert_eq!(said(case(12), &["side", "shelf"]), [""; 0]);
    assert_eq!(said(case(6), &["shelf"]), [""; 0]);
    let pins = PinHoles::new(inches(1, 1), inches(4, 1), inches(1, 1), inches(3, 8));
    assert_eq!(said(case(12).shelves(Shelves::Adjustable(1, pins)), &["shelf"]), [""; 0]);
}

/// Hand over hand: a pair meets in the middle, one door at its lock side, a back in its groove on both.
#[test]
fn what_swells_shut() {
    let case = || Case::new(inches(36, 1), inches(30, 1), inches(12, 1));
    let percent = Ratio::from;
    let moving = |case: Case, name: &'static str| {
        let plan = case.plan().unwrap();
        let moving = plan.moving(Movement::new(250), percent(6), percent(10), |part| part.name() == name).unwrap();
        (moving[0].change, moving[0].advice.as_ref().map(ToString::to_string))
    };
    let doors = |count, gap| FrontSet::doors(count, Mount::Inset { gap }, inches(3, 4));
    // (34 1/2 - 3/8) / 2 = 17 1/16, times 0.01: 273/1600; twice that is 273/800, over 1/8.
    let said = |part: &str, swells: &str, room: &str| {
        Some(format!("the {part} swells {swells}\" and has {room}\" of room: it will bind"))
    };
    assert_eq!(moving(case().fronts(doors(2, inches(1, 8))), "door"), (inches(273, 1600), said("door", "273/800", "1/8")));
    // (34 1/2 - 3/2) / 2 = 16 1/2, twice 33/200 is 33/100, under 1/2.
    assert_eq!(moving(case().fronts(doors(2, inches(1, 2))), "door"), (inches(33, 200), None));
    // 34 1/2 - 1 = 33 1/2: 67/200, under 1/2.
    assert_eq!(moving(case().fronts(doors(1, inches(1, 2))), "door"), (inches(67, 200), None));
    // 34 1/2 + 1/2 - 1/16 = 34 15/16: 559/1600, over the play of 1/16.
    let back = Back::Groove { thickness: inches(1, 4), depth: inches(1, 4), set_in: inches(1, 2) };
    assert_eq!(moving(case().back(back), "back"), (inches(559, 1600), said("back", "559/1600", "1/16")));
    // It shrinks the other way round, and nothing binds.
    let plan = case().back(back).plan().unwrap();
    let drying = plan.moving(Movement::new(250), percent(10), percent(6), |part| part.name() == "back").unwrap();
    assert_eq!((drying[0].change, &drying[0].advice), (-inches(559, 1600), &None));
}
