//! A checker of cut plans: how a board is sawn, from its near end to its far end, and nothing of how plans are found.

use std::collections::BTreeMap;

use num_rational::Ratio;
use scantling::{Cutting, KerfRule, Length, Plan, PlanCost};

/// How a shop cuts.
#[derive(Clone, Copy)]
pub struct Saw {
    pub kerf: Length,
    pub rule: KerfRule,
    pub near: Length,
    pub far: Length,
    pub keep: Length,
}

impl Default for Saw {
    fn default() -> Self {
        let zero = Length::ZERO;
        Self { kerf: zero, rule: KerfRule::Between, near: zero, far: zero, keep: zero }
    }
}

impl Saw {
    pub fn cutting(&self) -> Cutting {
        Cutting::new().kerf(self.kerf).kerf_rule(self.rule).trim(self.near, self.far).keep_offcuts_from(self.keep)
    }
}

/// Saws every board of a plan, and adds up what came of it.
#[track_caller]
pub fn check(plan: &Plan, saw: &Saw) {
    let mut cut: BTreeMap<(usize, u64), (u64, u64, Length)> = BTreeMap::new();
    let (mut bought, mut used, mut kept) = (Length::ZERO, Length::ZERO, Length::ZERO);
    for board in plan.boards() {
        let (times, stock) = (i64::try_from(board.times()).unwrap(), plan.stock(board));
        let mut blade = saw.near;
        for piece in board.cuts() {
            assert_eq!((piece.near(), piece.far() - piece.near()), (blade, piece.length()));
            blade = piece.far() + saw.kerf;
            let (number, of) = piece.piece().unwrap_or((1, 1));
            let entry = cut.entry((piece.part(), number)).or_insert((0, of, piece.length()));
            assert_eq!((entry.1, entry.2), (of, piece.length()));
            entry.0 += board.times();
            used += times * piece.length();
        }
        let (end, last) = (stock.length - saw.far, board.cuts().last().unwrap().far());
        assert!(last <= end && (saw.rule == KerfRule::Between || blade <= end), "{last} on {end}");
        assert_eq!(board.offcut(), (end - blade).max(Length::ZERO));
        assert_eq!(board.is_kept(), board.offcut() > Length::ZERO && board.offcut() >= saw.keep);
        bought += times * stock.length;
        kept += if board.is_kept() { times * board.offcut() } else { Length::ZERO };
    }
    assert_eq!((plan.bought(), plan.used(), plan.kept(), plan.waste()), (bought, used, kept, bought - used - kept));
    wanted(plan, &cut);
    paid(plan);
}

/// Every part as often as it was asked for, each of its pieces as often, and the pieces as long together as the part.
#[track_caller]
fn wanted(plan: &Plan, cut: &BTreeMap<(usize, u64), (u64, u64, Length)>) {
    for (index, part) in plan.parts().iter().enumerate() {
        let pieces: Vec<_> = cut.range((index, 0)..=(index, u64::MAX)).map(|(_, piece)| *piece).collect();
        assert_eq!(pieces.iter().map(|(.., length)| *length).sum::<Length>(), part.length, "{}", part.name);
        assert!(pieces.iter().all(|(count, of, _)| *count == part.count && *of == pieces.len() as u64), "{}", part.name);
        assert!(pieces.len() == 1 || part.may_be_joined, "{}", part.name);
    }
    assert!(cut.keys().all(|(part, _)| *part < plan.parts().len()));
}

/// No more boards than there are, their cost as it is said to be, and the bound not above it.
#[track_caller]
fn paid(plan: &Plan) {
    let (mut count, mut length, mut price) = (0, Length::ZERO, Ratio::from_integer(0));
    for (stock, taken) in plan.taken() {
        assert!(stock.limit.is_none_or(|limit| taken <= limit), "{taken} of {}", stock.name);
        count += taken;
        length += i64::try_from(taken).unwrap() * stock.length;
        price += stock.price.unwrap_or_default() * Ratio::from_integer(taken.into());
    }
    assert_eq!(plan.board_count(), count);
    match (plan.cost(), plan.bound()) {
        (PlanCost::Boards(cost), PlanCost::Boards(bound)) => assert!(cost == count && bound <= cost),
        (PlanCost::Length(cost), PlanCost::Length(bound)) => assert!(cost == length && bound <= cost),
        (PlanCost::Price(cost), PlanCost::Price(bound)) => assert!(cost == price && bound <= cost),
        (cost, bound) => panic!("{cost} and {bound} are of different kinds"),
    }
}
