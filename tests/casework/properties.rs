//! What holds for every case, whatever its numbers: chains close, no part is below zero, poles pass their own checks, the
//! left side mirrors the right one. And what is refused, or advised against.

use quickcheck::{Arbitrary, Gen};
use scantling::{
    Allowances, Back, Base, Case, CasePart, CasePlan, CaseworkError, FaceFrame, FrameJoint, FrontKind, FrontSet, Growth, Joint,
    Length, Mount, OnFront, Overall, PinHoles, Shelves, Tape, TopAt, Unit,
};

use crate::support::chance::{random, source};

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

/// Any case that a shop might build, and some that it could not.
#[derive(Clone, Debug)]
struct AnyCase(Case);

impl Arbitrary for AnyCase {
    fn arbitrary(random: &mut Gen) -> Self {
        let mut pick = |most: u32| u32::arbitrary(random) % most;
        let hole = [1, 2, 4, 12].map(|deep| inches(i64::from(pick(deep * 8)), 16));
        let mut length = |most: u32| inches(i64::from(pick(most * 32)), 32) + inches(i64::from(pick(3)), 5);
        let (width, height, depth) = (length(90) + inches(1, 1), length(90) + inches(1, 1), length(30) + inches(1, 1));
        let [sheet, back, deep, frame, stile, rail, past, base] = [2, 1, 1, 1, 3, 4, 1, 5].map(&mut length);
        let joint = [Joint::Butt, Joint::Dado(deep / 4), Joint::Rabbet(deep / 2)][pick(3) as usize];
        let backs = [
            Back::None,
            Back::Applied { thickness: back },
            Back::Rabbet { thickness: back, depth: deep },
            Back::Groove { thickness: back, depth: deep, set_in: past },
        ];
        let bases = [
            Base::None,
            Base::SidesToFloor { height: base, recess: past, stock: sheet },
            Base::Separate { height: base, stock: sheet, from_front: past, from_sides: past, ties: pick(3) },
        ];
        let tops = [TopAt::BetweenSides(joint), TopAt::OverSides { past_sides: past, past_front: past }];
        let count = pick(7) as usize;
        let spread = [
            Shelves::Equal(count),
            Shelves::Openings(vec![base; count]),
            Shelves::Proportional((1..=count as u64 + 1).collect()),
            Shelves::Adjustable(count, PinHoles::new(inches(1, 1), hole[3], hole[2], hole[1])),
        ];
        let mut frame = FaceFrame::new(frame, stile).rails(rail, stile).past_sides(past, past / 2);
        frame.joint = [FrameJoint::RailsBetween, FrameJoint::StilesBetween][pick(2) as usize];
        let mut case = Case::new(width, height, depth)
            .measured_over([Overall::Box, Overall::Frame, Overall::Top, Overall::Molding][pick(4) as usize])
            .sheet(sheet)
            .joined(joint)
            .top_at(tops[pick(2) as usize])
            .back(backs[pick(4) as usize])
            .base(bases[pick(3) as usize])
            .bays(pick(4), sheet)
            .shelves(spread[pick(4) as usize].clone())
            .molding(if pick(2) == 0 { Length::ZERO } else { past })
            .edging(if pick(3) == 0 { past / 8 } else { Length::ZERO })
            .allowing(
                [Allowances::USUAL, Allowances::NONE, Allowances::new(hole[0] / 4, hole[0] / 2, hole[0] / 8)][pick(3) as usize],
            );
        if pick(2) == 0 {
            case = case.frame(frame).level_with_rail(pick(2) == 0);
        }
        if case.joint == Joint::Dado(deep / 4) && pick(2) == 0 {
            case = case.stopped(past);
        }
        if pick(3) == 0 {
            case = case.set_back(past / 2);
        }
        let mounts = [Mount::Inset { gap: past / 8 }, Mount::Overlay { past: past / 2, gap: past / 8 }];
        let (mount, growth) = (mounts[pick(2) as usize], Growth::Step(past / 4));
        match pick(3) {
            0 => case = case.fronts(FrontSet::doors(pick(4), mount, sheet)),
            1 => case = case.fronts(FrontSet::drawers(pick(6), growth, mount, sheet)),
            _ => {}
        }
        Self(case)
    }
}

fn holds(AnyCase(case): AnyCase) -> bool {
    let Ok(plan) = case.plan() else { return true };
    for closing in plan.closings() {
        assert!(closing.is_closed(), "{closing} {case:?}");
    }
    for part in plan.parts() {
        let is_molding = part.name().starts_with("molding");
        let [width, length] = [part.sawn_width(), part.length()].map(|sum| sum.total().unwrap());
        let has_room = part.thickness() > Length::ZERO && (is_molding || width > Length::ZERO) && length > Length::ZERO;
        assert!(has_room, "{} {case:?}", part.name());
    }
    // On a tape so fine that nothing is rounded together.
    let fine = Tape::with_step(inches(1, 100_000)).unwrap();
    for pole in plan.poles() {
        assert_eq!(pole.check(&fine), [], "{} {case:?}", pole.name());
    }
    fronts_lie_apart(&plan);
    let openings: Vec<Length> = plan.levels().openings().collect();
    assert!(openings.iter().all(|opening| *opening >= Length::ZERO), "{case:?}");
    assert!(are_as_asked(&openings, &case.shelves), "{openings:?} {case:?}");
    let said = plan.advice(&Tape::sixteenths()).into_iter().map(|advice| advice.to_string()).chain(plan.order_of_work());
    for sentence in said {
        assert!(!sentence.contains(" -"), "{sentence} {case:?}");
    }
    assert!(plan.tip_up(inches(1, 16)).unwrap().mark() >= case.height, "{case:?}");
    plan.poles()[0].mirrored() == plan.poles()[1]
}

/// As many places as pieces, each with some size, none over another before the same opening, inset ones inside theirs.
fn fronts_lie_apart(plan: &CasePlan) {
    let (places, openings) = (plan.front_places().unwrap(), plan.front_openings().unwrap());
    let is_front = |part: &&CasePart| ["door", "drawer front"].contains(&part.name());
    let pieces: u64 = plan.parts().iter().filter(is_front).map(|part| part.pieces().count()).sum();
    assert_eq!(places.len() as u64, pieces, "{:?}", plan.case());
    for (opening, places) in openings.iter().zip(places.chunks((places.len() / openings.len()).max(1))) {
        for (number, place) in places.iter().enumerate() {
            assert!(place.left < place.right && place.lower < place.upper, "{:?}", plan.case());
            let is_apart = |other: &OnFront| other.right <= place.left || other.upper <= place.lower;
            assert!(places[..number].iter().all(is_apart), "{:?}", plan.case());
            let is_inside = place.left >= opening.left
                && place.right <= opening.right
                && place.lower >= opening.lower
                && place.upper <= opening.upper;
            let is_inset = matches!(plan.case().fronts, Some(FrontSet { mount: Mount::Inset { .. }, .. }));
            assert!(is_inside || !is_inset, "{:?}", plan.case());
        }
    }
}

/// The chain of heights closes wherever a shelf lies: that each opening is what it was to be is another question.
fn are_as_asked(openings: &[Length], shelves: &Shelves) -> bool {
    match shelves {
        Shelves::Openings(asked) => openings.starts_with(asked),
        Shelves::Proportional(shares) => {
            let shares = || shares.iter().map(|share| i64::try_from(*share).unwrap());
            openings.iter().zip(shares()).all(|(opening, share)| *opening * shares().next().unwrap() == openings[0] * share)
                && openings.len() == shares().count()
        }
        Shelves::Adjustable(..) => openings.len() == 1,
        _ => openings.len() == shelves.count() + 1 && openings.iter().all(|opening| *opening == openings[0]),
    }
}

#[test]
fn random_cases() {
    random().tests(5000).quickcheck(holds as fn(AnyCase) -> bool);
}

type Kind = (&'static str, fn(&Case) -> bool);

/// Enough of the random cases can be built for the property above to prove something.
#[test]
fn many_random_cases_can_be_built() {
    let mut random = source();
    let built: Vec<Case> = (0..5000).map(|_| AnyCase::arbitrary(&mut random).0).filter(|case| case.plan().is_ok()).collect();
    assert!(built.len() > 500, "{}", built.len());
    let is_of_kind: [Kind; 25] = [
        ("stopped", |case| case.stopped > Length::ZERO),
        ("set back", |case| case.set_back > Length::ZERO && case.shelves.count() > 0),
        ("doors", |case| case.fronts.is_some_and(|set| matches!(set.kind, FrontKind::Doors(2..)))),
        ("drawers", |case| case.fronts.is_some_and(|set| matches!(set.kind, FrontKind::Drawers(2.., _)))),
        ("fronts before bays", |case| case.fronts.is_some() && case.bays > 1 && case.frame.is_some()),
        ("box", |case| case.over == Overall::Box),
        ("over the frame", |case| case.over == Overall::Frame),
        ("over the top", |case| case.over == Overall::Top),
        ("over the molding", |case| case.over == Overall::Molding),
        ("butt", |case| case.joint == Joint::Butt),
        ("dado", |case| matches!(case.joint, Joint::Dado(_))),
        ("rabbet", |case| matches!(case.joint, Joint::Rabbet(_))),
        ("applied back", |case| matches!(case.back, Back::Applied { .. })),
        ("rabbeted back", |case| matches!(case.back, Back::Rabbet { .. })),
        ("back in a groove", |case| matches!(case.back, Back::Groove { .. })),
        ("sides to the floor", |case| matches!(case.base, Base::SidesToFloor { .. })),
        ("separate base", |case| matches!(case.base, Base::Separate { .. })),
        ("rails between", |case| case.frame.is_some_and(|frame| frame.joint == FrameJoint::RailsBetween)),
        ("stiles between", |case| case.frame.is_some_and(|frame| frame.joint == FrameJoint::StilesBetween)),
        ("bays", |case| case.bays > 1 && case.shelves.count() > 0),
        ("equal", |case| matches!(case.shelves, Shelves::Equal(2..))),
        ("openings", |case| matches!(&case.shelves, Shelves::Openings(openings) if openings.len() > 1)),
        ("proportional", |case| matches!(&case.shelves, Shelves::Proportional(shares) if shares.len() > 2)),
        ("adjustable", |case| matches!(case.shelves, Shelves::Adjustable(1.., _))),
        ("glue", |case| case.allowances.glue > Length::ZERO && case.joint != Joint::Butt),
    ];
    for (kind, is_of_kind) in is_of_kind {
        let count = built.iter().filter(|case| is_of_kind(case)).count();
        assert!(count >= 20, "{kind}: {count}");
    }
}

/// Cases that cannot be, and how the refusal begins.
fn impossible() -> Vec<(Case, &'static str)> {
    let case = || Case::new(inches(36, 1), inches(72, 1), inches(12, 1));
    let frame = FaceFrame::new(inches(3, 4), inches(19, 1));
    let whole = |count| inches(count, 1);
    let grooved = |set_in| Back::Groove { thickness: inches(1, 4), depth: inches(1, 4), set_in: whole(set_in) };
    let toe = |recess| Base::SidesToFloor { height: whole(4), recess: whole(recess), stock: inches(3, 4) };
    let separate = |front, sides| Base::Separate {
        height: whole(4),
        stock: inches(3, 4),
        from_front: whole(front),
        from_sides: whole(sides),
        ties: 0,
    };
    let pins = |first, edges, deep| Shelves::Adjustable(2, PinHoles::new(whole(1), whole(first), whole(edges), whole(deep)));
    vec![
        (case().back(grooved(-1)), "the set-in of the groove cannot be -1\": it must not be below zero"),
        (case().base(toe(-3)), "the recess of the base cannot be -3\": it must not be below zero"),
        (case().base(separate(-1, 1)), "the recess of the base cannot be -1\": it must not be below zero"),
        (case().base(separate(1, -1)), "the set-back of the base cannot be -1\": it must not be below zero"),
        (case().shelves(pins(-4, 1, 1)), "the height of the first hole cannot be -4\": it must not be below zero"),
        (case().shelves(pins(4, -1, 1)), "the set-back of the holes cannot be -1\": it must not be below zero"),
        (case().shelves(pins(4, 1, -1)), "the depth of the holes cannot be -1\": it must not be below zero"),
        (case().base(toe(12)), "the clear depth behind the toe space would come out 0\": the overall sizes leave no room for it"),
        (
            case().shelves(Shelves::Adjustable(0, PinHoles::new(whole(1), whole(4), whole(1), whole(0)))).back(grooved(12)),
            "the clear depth before the back would come out -1/4\": the overall sizes leave no room for it",
        ),
        (case().bays(0, inches(3, 4)), "a case has at least one bay"),
        (case().measured_over(Overall::Frame), "the case has no face frame to measure the overall sizes over"),
        (case().measured_over(Overall::Top), "the case has no top over its sides to measure the overall sizes over"),
        (case().measured_over(Overall::Molding), "the case has no molding to measure the overall sizes over"),
        (case().level_with_rail(true), "the case has no bottom rail to measure the bottom's height by"),
        (case().joined(Joint::Dado(inches(-1, 8))), "the depth of a joint cannot be -1/8\": it must not be below zero"),
        (case().frame(frame), "the clear width between the stiles would come out -2\": the overall sizes leave no room for it"),
        (
            case().bays(1, inches(3, 4)).edging(inches(13, 1)).shelves(Shelves::Equal(1)),
            "the shelf would come out -1\" wide: the overall sizes leave no room for it",
        ),
        (case().shelves(Shelves::Equal(95)), "95 members, with any fixed gaps, need 71 1/4\"; the run is 70 1/2\": 3/4\" short"),
        (
            case().shelves(Shelves::Adjustable(2, PinHoles::new(inches(1, 1), inches(40, 1), inches(1, 1), inches(3, 8)))),
            "no row of holes every 1\", the first 40\" up, fits between bottom and top",
        ),
        (
            case().shelves(Shelves::Adjustable(2, PinHoles::new(Length::ZERO, inches(4, 1), inches(1, 1), inches(3, 8)))),
            "the pitch of the holes cannot be 0\": it must be above zero",
        ),
        (case().joined(Joint::Dado(inches(3, 4))), "a joint 3/4\" deep goes through the 3/4\" side"),
        (
            case().bays(60, inches(3, 4)),
            "the clear width of a bay would come out -13/80\": the overall sizes leave no room for it",
        ),
        (
            case().frame(FaceFrame::new(inches(3, 4), inches(1, 1)).rails(inches(40, 1), inches(32, 1))),
            "the clear height between the rails would come out 0\": the overall sizes leave no room for it",
        ),
        (
            case().frame(FaceFrame::new(inches(3, 4), inches(1, 2))).level_with_rail(true),
            "a bottom of 3/4\" is thicker than the bottom rail is wide: it would lie below the sides",
        ),
        (Case::new(Length::MAX, Length::MIN, Length::MAX), "the figures are too large"),
    ]
}

#[test]
fn refusals() {
    for (case, said) in impossible() {
        let refused = case.plan().unwrap_err().to_string();
        assert!(refused.starts_with(said), "{refused}");
    }
    assert_eq!(
        Case::new(Length::MAX, Length::MAX, Length::MAX).top_at(TopAt::OVER_SIDES).top_of(Length::MIN).plan(),
        Err(CaseworkError::TooLarge)
    );
}

#[test]
fn advice() {
    let case = || Case::new(inches(36, 1), inches(72, 1), inches(12, 1));
    let said = |case: Case| -> Vec<String> {
        case.plan().unwrap().advice(&Tape::sixteenths()).iter().map(ToString::to_string).collect()
    };
    let frame = |stile, rail, past| FaceFrame::new(inches(3, 4), stile).rails(inches(2, 1), rail).past_sides(past, past);
    let pins = |deep| Shelves::Adjustable(2, PinHoles::new(inches(1, 1), inches(4, 1), inches(1, 1), deep));
    for (case, expected) in vec![
        (case().joined(Joint::Dado(inches(1, 4))), None),
        (
            case().joined(Joint::Dado(inches(5, 16))),
            Some("a dado of 5/16\" is deeper than a third of the 3/4\" side: it weakens it"),
        ),
        (
            case().joined(Joint::Dado(inches(17, 64))).sides_of(inches(1, 1)).bays(2, inches(3, 4)).shelves(Shelves::Equal(1)),
            Some("dadoes from both faces leave 7/32\" of the 3/4\" partition: leave a third, or stagger the shelves"),
        ),
        (case().joined(Joint::Dado(inches(1, 4))).bays(2, inches(3, 4)).shelves(Shelves::Equal(1)), None),
        (
            case().bays(2, inches(3, 4)).shelves(pins(inches(3, 8))),
            Some("holes from both faces leave 0\" between them: stagger the rows, or drill less deep"),
        ),
        (case().bays(2, inches(3, 4)).shelves(pins(inches(5, 16))), None),
        (
            case().bays(2, inches(3, 4)).shelves(pins(inches(1, 2))),
            Some("holes from both faces run 1/4\" into each other: stagger the rows, or drill less deep"),
        ),
        (case().shelves(pins(inches(11, 16))), None),
        (case().shelves(pins(inches(3, 4))), Some("pin holes 3/4\" deep go through the 3/4\" side: drill less deep")),
        (
            case().top_at(TopAt::BetweenSides(Joint::Dado(inches(3, 8)))),
            Some("a dado of 3/8\" is deeper than a third of the 3/4\" side: it weakens it"),
        ),
        (case().top_at(TopAt::BetweenSides(Joint::Rabbet(inches(3, 8)))), None),
        (
            case().joined(Joint::Rabbet(inches(3, 8))),
            Some("a rabbet of 3/8\" is deeper than a third of the 3/4\" side: it weakens it"),
        ),
        (
            case().joined(Joint::Dado(inches(1, 2))).sides_of(inches(3, 2)).bays(2, inches(3, 4)).shelves(Shelves::Equal(1)),
            Some("dadoes from both faces cut the 3/4\" partition in two: leave a third, or stagger the shelves"),
        ),
        (case().shelves(Shelves::Openings(vec![inches(2, 1)])), Some("an opening of 2\" is too low for a hand")),
        (
            case().frame(frame(inches(3, 4), inches(3, 4), inches(1, 4))),
            Some("a stile of 3/4\" leaves the edge of the side bare: overhang and side come to 1\""),
        ),
        (
            case().frame(frame(inches(3, 2), inches(1, 1), Length::ZERO)),
            Some("the bottom rail stands 1/4\" above the bottom: a lip to lift things over"),
        ),
        (
            // The shelf at 3/4 and 10 1/32: halfway between two sixteenths, from below and from above.
            case().shelves(Shelves::Openings(vec![inches(321, 32)])),
            Some(
                "shelf 1 is marked at 10 13/16\" from below, and at 10 3/4\" when it is measured from above: measure both sides from \
                 below",
            ),
        ),
    ] {
        let advice = said(case);
        assert_eq!(advice.first().map(String::as_str), expected, "{advice:?}");
    }
}

/// What is cut is told in the words of the joint, and measured from the edge that is there to measure from.
#[test]
fn order_of_work() {
    let case = || Case::new(inches(36, 1), inches(72, 1), inches(12, 1));
    let toe = |recess| Base::SidesToFloor { height: inches(4, 1), recess, stock: inches(3, 4) };
    let frame = FaceFrame::new(inches(3, 4), inches(3, 2));
    let pins = PinHoles::new(inches(1, 1), inches(4, 1), inches(2, 1), inches(3, 8));
    let steps = |case: Case| case.plan().unwrap().order_of_work().join("\n");
    for (case, step) in [
        (case().joined(Joint::Dado(inches(1, 4))), "Cut the dadoes 1/4\" deep"),
        (case().joined(Joint::Rabbet(inches(1, 4))), "Cut the rabbets 1/4\" deep"),
        (case().base(toe(inches(3, 1))), "for the toe space: 3\" back, 4\" up"),
        // The recess is behind the face of the frame, the notch behind the edge of the side: 3 less 3/4.
        (case().base(toe(inches(3, 1))).frame(frame), "for the toe space: 2 1/4\" back, 4\" up"),
        (
            case().shelves(Shelves::Adjustable(2, pins)),
            "Drill the pin holes 3/8\" deep, in two rows: 2\" from the front edge, and 2\" from the rear edge of the shelf.",
        ),
    ] {
        let said = steps(case);
        assert!(said.contains(step), "{said}");
    }
    assert!(!steps(case().base(toe(inches(3, 4))).frame(frame)).contains("Notch"));
    assert!(!steps(case()).contains("Drill"));
}

/// Tipped up, a case turns on its rear edge about all that stands out at the front, whatever its depth is measured over.
#[test]
fn tipping_up() {
    let case = || Case::new(inches(36, 1), inches(72, 1), inches(20, 1));
    let frame = FaceFrame::new(inches(1, 1), inches(2, 1));
    let over = TopAt::OverSides { past_sides: inches(1, 1), past_front: inches(1, 1) };
    for (case, depth) in [
        (case(), 20),
        (case().frame(frame), 21),
        (case().frame(frame).measured_over(Overall::Frame), 20),
        (case().frame(frame).top_at(over), 22),
        (case().frame(frame).top_at(over).measured_over(Overall::Top), 20),
        (case().frame(frame).molding(inches(2, 1)), 23),
        (case().molding(inches(2, 1)).measured_over(Overall::Molding), 20),
    ] {
        let tip_up = case.plan().unwrap().tip_up(inches(1, 1000)).unwrap().mark();
        let short = tip_up - inches(1, 1000);
        let square = |side: Length| side * side;
        let exact = square(inches(72, 1)) + square(inches(depth, 1));
        assert!(square(tip_up) >= exact && square(short) < exact, "{tip_up} {depth}");
    }
}
