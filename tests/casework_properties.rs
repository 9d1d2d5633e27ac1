//! What holds for every case, whatever its numbers: chains close, no part is below zero, poles pass their own checks, the
//! left side mirrors the right one. And what is refused, or advised against.

use quickcheck::{Arbitrary, Gen, QuickCheck};
use scantling::{
    Allowances, Back, Base, Case, CaseworkError, FaceFrame, FrameJoint, Joint, Length, Overall, PinHoles, Shelves, Tape, TopAt,
    Unit,
};

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

/// Any case that a shop might build, and some that it could not.
#[derive(Clone, Debug)]
struct AnyCase(Case);

impl Arbitrary for AnyCase {
    fn arbitrary(random: &mut Gen) -> Self {
        let mut pick = |most: u32| u32::arbitrary(random) % most;
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
            Shelves::Adjustable(count, PinHoles::ROWS_OF_32),
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
            .allowing(if pick(2) == 0 { Allowances::USUAL } else { Allowances::NONE });
        if pick(2) == 0 {
            case = case.frame(frame).level_with_rail(pick(2) == 0);
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
    assert!(plan.levels().openings().all(|opening| opening >= Length::ZERO), "{case:?}");
    let _ = (plan.advice(&Tape::sixteenths()), plan.cautions());
    plan.poles()[0].mirrored() == plan.poles()[1]
}

#[test]
fn random_cases() {
    QuickCheck::new().tests(5000).quickcheck(holds as fn(AnyCase) -> bool);
}

/// Enough of the random cases can be built for the property above to prove something.
#[test]
fn many_random_cases_can_be_built() {
    let mut random = Gen::new(100);
    let built = (0..2000).filter(|_| AnyCase::arbitrary(&mut random).0.plan().is_ok()).count();
    assert!(built > 200, "{built}");
}

/// Cases that cannot be, and how the refusal begins.
fn impossible() -> Vec<(Case, &'static str)> {
    let case = || Case::new(inches(36, 1), inches(72, 1), inches(12, 1));
    let frame = FaceFrame::new(inches(3, 4), inches(19, 1));
    vec![
        (case().bays(0, inches(3, 4)), "a case has at least one bay"),
        (case().measured_over(Overall::Frame), "the case has no face frame to measure the overall sizes over"),
        (case().measured_over(Overall::Top), "the case has no top over its sides to measure the overall sizes over"),
        (case().measured_over(Overall::Molding), "the case has no molding to measure the overall sizes over"),
        (case().level_with_rail(true), "the case has no bottom rail to measure the bottom's height by"),
        (case().joined(Joint::Dado(inches(-1, 8))), "the depth of a joint cannot be -1/8\": it must not be below zero"),
        (case().frame(frame), "the rail would come out -2\" long: the overall sizes leave no room for it"),
        (
            case().frame(frame).bays(1, inches(3, 4)).edging(inches(13, 1)).shelves(Shelves::Equal(1)),
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
    for (case, expected) in [
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
            Case::new(inches(120, 1), inches(30, 1), inches(12, 1)),
            Some("the bottom is 118 1/2\" long: longer than a sheet of 96\""),
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
