//! Cutting parts from stock lengths: what just fits and what just does not; what is refused, word by word. All is worked by hand.
//! Properties that hold whatever the numbers are in `cutting_properties.rs`, printed problems in `tests/outside/kerf.rs`.

use crate::support::saw::{Saw, check};
use num_rational::Ratio;
use scantling::{Aim, CutBoard, Cutting, CuttingError, KerfRule, Length, Part, PlanCost, Stock, Unit};

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn feet(count: i64) -> Length {
    Length::new(count, Unit::Foot)
}

#[test]
fn what_just_fits_and_what_does_not() {
    // Three parts and two kerfs of 1/8 in fill 96 in: 31 11/12 in each.
    let (kerf, third) = (inches(1, 8), inches(383, 12));
    let hair = inches(1, 1_000_000);
    let cutting = |part, stock| {
        let cutting = Cutting::new().kerf(kerf).part(Part::new("part", part, 3));
        cutting.stock(Stock::new("board", stock)).plan().unwrap().board_count()
    };
    assert_eq!(cutting(third, inches(96, 1)), 1);
    assert_eq!(cutting(third + hair, inches(96, 1)), 2);
    assert_eq!(cutting(third, inches(96, 1) - hair), 2);
    // Metric parts from a board in inches, exactly: 2438 2/5 mm.
    let half = Length::fraction(24_384, 20, Unit::Millimeter);
    let halves = |part| {
        let cutting = Cutting::new().part(Part::new("half", part, 2)).stock(Stock::new("8 ft", feet(8)));
        cutting.plan().unwrap().board_count()
    };
    assert_eq!((halves(half), halves(half + Length::fraction(1, 1000, Unit::Millimeter))), (1, 2));
}

#[test]
fn a_kerf_that_runs_out_over_the_end_leaves_nothing() {
    let offcut = |stock| {
        let cutting = Cutting::new().kerf(inches(1, 8)).part(Part::new("part", inches(10, 1), 1));
        cutting.stock(Stock::new("board", stock)).plan().unwrap().boards()[0].offcut()
    };
    assert_eq!([inches(10, 1), inches(161, 16), inches(81, 8)].map(offcut), [Length::ZERO; 3]);
    assert_eq!(offcut(inches(163, 16)), inches(1, 16));
}

#[test]
fn parts_of_one_length_keep_their_names() {
    let cutting = Cutting::new().part(Part::new("left", feet(2), 2)).part(Part::new("right", feet(2), 2));
    let plan = cutting.stock(Stock::new("8 ft", feet(8))).plan().unwrap();
    let names: Vec<_> = plan.boards()[0].cuts().iter().map(|cut| plan.part(cut).name.as_str()).collect();
    assert_eq!(names, ["left", "left", "right", "right"]);
    check(&plan, &Saw::default());
}

#[test]
fn joined_parts() {
    let pieces = |length: Length, stocks: &[Stock], least: Length| {
        let cutting = Cutting::new().part(Part::new("base", length, 2).joined()).shortest_piece(least);
        let plan = stocks.iter().cloned().fold(cutting, Cutting::stock).plan()?;
        check(&plan, &Saw::default());
        let mut cuts: Vec<_> = plan.boards().iter().flat_map(CutBoard::cuts).map(|cut| (cut.piece(), cut.length())).collect();
        cuts.sort_by_key(|(piece, _)| *piece);
        cuts.dedup();
        Ok::<_, CuttingError>(cuts)
    };
    let twelve = [Stock::new("12 ft", feet(12))];
    let long = [Stock::new("12 ft", feet(12)), Stock::new("16 ft", feet(16)).limit(1)];
    let zero = Length::ZERO;
    assert_eq!(pieces(feet(12), &twelve, zero), Ok(vec![(None, feet(12))]));
    assert_eq!(pieces(feet(24), &twelve, zero), Ok(vec![(Some((1, 2)), feet(12)), (Some((2, 2)), feet(12))]));
    assert_eq!(
        pieces(feet(25), &twelve, feet(2)),
        Ok(vec![(Some((1, 3)), feet(12)), (Some((2, 3)), feet(11)), (Some((3, 3)), feet(2))])
    );
    // There is one board of 16 ft and there are two parts.
    assert_eq!(pieces(feet(20), &long, zero), Ok(vec![(Some((1, 2)), feet(12)), (Some((2, 2)), feet(8))]));
    // 12 ft and 4 ft, the second made 8 ft: so the first is 8 ft too, and just long enough.
    assert_eq!(pieces(feet(16), &twelve, feet(8)), Ok(vec![(Some((1, 2)), feet(8)), (Some((2, 2)), feet(8))]));
    let refused = CuttingError::PieceTooShort { name: "base".into(), least: feet(8), gives: feet(12) };
    assert_eq!(pieces(feet(14), &twelve, feet(8)), Err(refused));
}

/// The boards of which there are enough give nothing beside a kerf: the pieces come from the two that do.
#[test]
fn joined_parts_where_short_boards_give_nothing() {
    let cutting = Cutting::new().kerf(feet(1)).kerf_rule(KerfRule::EachPart).part(Part::new("base", feet(20), 1).joined());
    let plan = cutting.stock(Stock::new("12 ft", feet(12)).limit(2)).stock(Stock::new("1 ft", feet(1))).plan().unwrap();
    let pieces: Vec<_> = plan.boards().iter().flat_map(CutBoard::cuts).map(scantling::Cut::length).collect();
    assert_eq!(pieces, [feet(11), feet(9)]);
}

/// Sizes with a large denominator in common are counted in it, however many there are.
#[test]
fn parts_of_a_billionth() {
    let billionths = |count| inches(count, 1_000_000_007);
    let cutting =
        [1, 2, 3].into_iter().fold(Cutting::new(), |cutting, size| cutting.part(Part::new("part", billionths(size), 2)));
    let boards = |stock| cutting.clone().stock(Stock::new("board", billionths(stock))).plan().unwrap().board_count();
    assert_eq!((boards(12), boards(11)), (1, 2));
}

#[test]
fn the_longest_parts_come_first() {
    let cutting = Cutting::new().part(Part::new("short", feet(1), 3)).part(Part::new("long", feet(5), 2));
    let plan = cutting.stock(Stock::new("8 ft", feet(8))).plan().unwrap();
    let first: Vec<_> = plan.boards().iter().map(|board| board.cuts()[0].length()).collect();
    assert_eq!(first, [feet(5), feet(5)]);
}

#[test]
fn free_boards_are_used_before_any_are_bought() {
    let price = |count| Ratio::from_integer(count);
    let cutting = Cutting::new()
        .part(Part::new("shelf", feet(3), 4))
        .stock(Stock::new("new", feet(12)).price(price(30)))
        .stock(Stock::new("left over", feet(4)).limit(2).price(price(0)));
    let plan = cutting.plan().unwrap();
    let taken: Vec<_> = plan.taken().map(|(_, count)| count).collect();
    // One new board holds all four: that two are free saves nothing, and no plan is cheaper.
    assert_eq!((plan.cost(), plan.is_optimal()), (PlanCost::Price(price(30)), true));
    assert_eq!(taken[0], 1);
    check(&plan, &Saw::default());
    // Two are there already, and nothing is cheaper than nothing.
    let free =
        Cutting::new().part(Part::new("shelf", feet(3), 2)).stock(Stock::new("left over", feet(4)).limit(2).price(price(0)));
    let plan = free.plan().unwrap();
    assert_eq!((plan.cost(), plan.is_optimal(), plan.board_count()), (PlanCost::Price(price(0)), true, 2));
}

#[test]
fn a_price_that_is_not_whole() {
    let stock = Stock::new("8 ft", feet(8)).price(Ratio::new(1249, 100));
    let plan = Cutting::new().part(Part::new("post", feet(5), 3)).stock(stock).plan().unwrap();
    assert_eq!((plan.cost(), plan.bound()), (PlanCost::Price(Ratio::new(3747, 100)), PlanCost::Price(Ratio::new(3747, 100))));
}

#[test]
#[rustfmt::skip]
fn refusals() {
    let part = |length, count| Part::new("rail", length, count);
    let stock = || Stock::new("8 ft", feet(8));
    let rail = || Cutting::new().part(part(feet(2), 5));
    let job = || rail().stock(stock());
    let inch = inches(1, 1);
    for (cutting, message) in [
        (Cutting::new(), "there are no parts to cut"),
        (rail(), "there are no boards to cut from"),
        (job().part(part(Length::ZERO, 1)), "rail cannot be 0\" long: a part is longer than nothing"),
        (job().part(part(-inch, 1)), "rail cannot be -1\" long: a part is longer than nothing"),
        (job().part(part(inch, 0)), "none of rail are wanted: leave it out, or say how many"),
        (job().stock(stock().limit(0)), "there are none of 8 ft: leave it out, or say how many"),
        (job().kerf(-inch), "a kerf cannot be -1\": it must not be below zero"),
        (job().trim(-inch, inch), "an end cannot be trimmed by -1\": it must not be below zero"),
        (job().trim(inch, -inch), "an end cannot be trimmed by -1\": it must not be below zero"),
        (job().keep_offcuts_from(-inch), "an offcut or a piece cannot be -1\" at the least: it must not be below zero"),
        (job().shortest_piece(-inch), "an offcut or a piece cannot be -1\" at the least: it must not be below zero"),
        (job().trim(feet(4), feet(4)), "nothing is left of 8 ft, 96\" long, when 96\" is trimmed off"),
        (job().part(part(feet(8) + inches(1, 64), 1)), "rail, 96 1/64\" long, is 1/64\" longer than the longest part that a board gives: 8 ft gives 96\""),
        // Of boards that give as much, the first.
        (job().stock(Stock::new("other", feet(8))).part(part(feet(9), 1)), "rail, 108\" long, is 12\" longer than the longest part that a board gives: 8 ft gives 96\""),
        (job().kerf(inches(1, 8)).kerf_rule(KerfRule::EachPart).part(part(feet(8), 1)), "rail, 96\" long, is 1/8\" longer than the longest part that a board gives: 8 ft gives 95 7/8\""),
        (job().shortest_piece(feet(6)).part(part(feet(10), 1).joined()), "rail cannot be joined of pieces between 72\" and 96\": ask for a shorter piece"),
        (rail().stock(stock().limit(1)), "the boards are too few, or too short, however they are cut: the parts take 120\" with their kerfs and the boards give 96\""),
        (Cutting::new().part(part(feet(5), 3)).stock(stock().limit(2)), "the boards are too few, or too short, however they are cut: the parts take 180\" with their kerfs and the boards give 192\""),
        // All boards that there are, not only as many as there are parts; trimmed, and without a kerf that none of them has.
        (Cutting::new().kerf(inches(1, 8)).trim(inch, inch).part(part(feet(7), 3)).stock(stock().limit(1)).stock(Stock::new("short", feet(4)).limit(100)), "the boards are too few, or too short, however they are cut: the parts take 252 3/8\" with their kerfs and the boards give 4694\""),
        (Cutting::new().part(part(feet(7), 3)).stock(stock().limit(1)).stock(Stock::new("short", feet(4))), "the boards are too few, or too short, however they are cut: the parts take 252\" with their kerfs, and of the boards that are long enough there are only so many"),
        (job().aim(Aim::LowestPrice), "the boards have no prices, so no plan can be the cheapest: give what each costs"),
        (job().stock(Stock::new("old", feet(4)).price(Ratio::from_integer(1))), "old has a price and 8 ft has none: give a price for each, 0 for what is there already"),
        (rail().stock(stock().price(Ratio::from_integer(-1))), "the price of 8 ft must be a number, and not below zero"),
        (rail().stock(stock().price(Ratio::new_raw(1, 0))), "the price of 8 ft must be a number, and not below zero"),
        (rail().stock(stock().price(Ratio::from_integer(0))), "there cannot be as many of 8 ft as it takes for nothing: say how many there are, or what one costs"),
        (job().part(part(inch, 2_000_000)), "2000005 parts are too many for one plan: at most 1048576"),
        // As many as a plan is made for.
        (Cutting::new().part(part(feet(8), 1_048_576)).stock(stock().limit(1)), "the boards are too few, or too short, however they are cut: the parts take 100663296\" with their kerfs and the boards give 96\""),
        (job().part(part(inch, u64::MAX)), "18446744073709551615 parts are too many for one plan: at most 1048576"),
        (job().part(part(1000 * feet(1_000_000_000), 1).joined()), "1048577 parts are too many for one plan: at most 1048576"),
        (job().part(part(inches(1, u64::MAX), 1)), "the lengths are too large, or too finely divided beside each other, to be counted in one measure"),
        (job().kerf(Length::MAX), "the lengths are too large, or too finely divided beside each other, to be counted in one measure"),
        (job().trim(Length::MAX, Length::MAX), "the lengths are too large, or too finely divided beside each other, to be counted in one measure"),
        (rail().stock(stock().price(Ratio::new(1, 3))).stock(stock().price(Ratio::from_integer(i128::MAX))), "the prices are too large, or too finely divided beside each other, to be counted in one measure"),
    ] {
        assert_eq!(cutting.plan().unwrap_err().to_string(), message);
    }
}

#[test]
fn a_hard_job_without_patience_says_so() {
    // The quick way puts 6 with 2; there are boards for nothing but 6 and 4, 5 and 5.
    let cutting =
        [6, 5, 4, 5].into_iter().fold(Cutting::new(), |cutting, length| cutting.part(Part::new("part", feet(length), 1)));
    let cutting = cutting.part(Part::new("part", feet(2), 5)).stock(Stock::new("10 ft", feet(10)).limit(3));
    assert!(cutting.plan().unwrap().is_optimal());
    let tight = Cutting::new()
        .part(Part::new("a", feet(4), 2))
        .part(Part::new("b", feet(3), 4))
        .stock(Stock::new("10 ft", feet(10)).limit(2));
    let refused = CuttingError::NoPlanYet { need: feet(20), give: Some(feet(20)) };
    assert_eq!(tight.clone().patience(0).plan(), Err(refused));
    // 4 + 3 + 3 twice.
    assert!(tight.plan().unwrap().is_optimal());
}

#[test]
fn aims_are_named_in_the_cost() {
    let cutting = Cutting::new()
        .part(Part::new("rail", feet(3), 4))
        .stock(Stock::new("8 ft", feet(8)))
        .stock(Stock::new("12 ft", feet(12)));
    let cost = |aim| cutting.clone().aim(aim).plan().unwrap().cost().to_string();
    assert_eq!(cost(Aim::FewestBoards), "1 board");
    assert_eq!(cost(Aim::LeastLength), "144\" of boards");
    assert_eq!(cutting.plan().unwrap().cost(), PlanCost::Length(feet(12)));
}
