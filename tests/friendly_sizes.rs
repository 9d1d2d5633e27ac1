//! Friendly sizes against trying every change there is, and against figures worked by hand.

use std::collections::BTreeSet;

use quickcheck::{Arbitrary, Gen, quickcheck};
use scantling::{Change, End, First, FriendlySize, Growth, Length, Spacing, SpacingError, Tape, Unit, Widest};

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn whole(count: i64) -> Length {
    Length::new(count, Unit::Inch)
}

fn sizes(spacing: &Spacing, run: Length, tape: &Tape, limit: Length) -> Vec<FriendlySize> {
    spacing.friendly_sizes(run, tape, limit).unwrap().collect()
}

/// What is changed, by how many 64ths of an inch, and the opening then, in 64ths too.
fn in_64ths(sizes: &[FriendlySize]) -> Vec<(Change, Length, Length)> {
    sizes.iter().map(|size| (size.what(), size.change(), size.opening())).collect()
}

/// Worked by hand: spacing, run, tape, limit, and every size in order: what, change and opening in 64ths of an inch.
#[test]
#[rustfmt::skip]
fn sizes_in_order() {
    use Change::{Run, Thickness};
    let opening = |after| Change::Opening { after };
    let (sixteenths, eighths) = (Tape::sixteenths(), Tape::eighths());
    let shelves = Spacing::equal_openings(3, inches(23, 32));
    let rows: Vec<(Spacing, Length, Tape, Length, Vec<(Change, i64, i64)>)> = vec![
        // Five parts go up by five graduations at a time.
        (Spacing::equal_parts(5), whole(72), sixteenths, inches(7, 16), vec![(Run, -8, 920), (Run, 12, 924), (Run, -28, 916)]),
        // Four openings and three shelves: 60 in leaves 57 27/32 in. A shelf takes a third of what the run would give.
        (shelves.clone(), whole(60), eighths, inches(1, 6), vec![(Run, 10, 928)]),
        (shelves.clone(), inches(1921, 32), eighths, inches(1, 6), vec![(Run, 8, 928)]),
        (Spacing::equal_openings(2, inches(3, 4)), inches(721, 12), eighths, inches(1, 8), vec![]),
        // A change of nothing comes first where the openings are whole as they are.
        (Spacing::equal_openings(2, inches(3, 4)), whole(12), eighths, inches(3, 16), vec![(Run, 0, 224), (Thickness, 0, 224), (Thickness, -12, 232), (Thickness, 12, 216)]),
        // Of equal changes the run comes first, and the shorter of each.
        (Spacing::equal_openings(1, inches(3, 4)), whole(12), eighths, inches(1, 4), vec![
            (Run, -8, 352), (Run, 8, 360), (Thickness, -8, 360), (Thickness, 8, 352),
        ].into_iter().filter(|_| false).chain([(Run, 0, 360), (Thickness, 0, 360), (Run, -16, 352), (Run, 16, 368), (Thickness, -16, 368), (Thickness, 16, 352)]).collect()),
        // Half gaps must be whole too, so full ones go by two graduations.
        (Spacing::equal_openings(2, whole(0)).near_end(End::HalfGap).far_end(End::HalfGap), whole(12), eighths, inches(1, 2), vec![(Run, 0, 384), (Run, -32, 368), (Run, 32, 400)]),
        // One opening is held: it may change as well, and gives the others what it loses.
        (Spacing::equal_openings(1, whole(0)).hold(0, whole(4)), inches(193, 16), eighths, inches(1, 16), vec![(Run, -4, 512), (Run, 4, 520)]),
        (Spacing::equal_openings(2, whole(0)).hold(0, whole(4)), inches(97, 8), eighths, inches(1, 8), vec![(Run, -8, 256), (Run, 8, 264), (opening(0), -8, 264), (opening(0), 8, 256)]),
        // A margin off the graduations is the only one to change.
        (Spacing::equal_openings(2, whole(0)).near_end(End::Margin(inches(65, 16))), whole(12), eighths, inches(1, 8), vec![(opening(0), -4, 256)]),
        // Drawers that grow by a whole step.
        (Spacing::drawers_from_top(3, whole(1), Growth::Step(inches(1, 2))), whole(20), eighths, inches(1, 4), vec![(Thickness, -4, 312)].into_iter().filter(|_| false).chain([(Run, -8, 308)]).filter(|_| false).chain([(Run, 8, 312), (Thickness, -4, 312), (Run, -16, 304), (Thickness, 8, 304), (Thickness, -16, 320)]).collect()),
    ];
    for (spacing, run, tape, limit, expected) in rows {
        let expected: Vec<_> = expected.into_iter().map(|(what, change, opening)| (what, inches(change, 64), inches(opening, 64))).collect();
        assert_eq!(in_64ths(&sizes(&spacing, run, &tape, limit)), expected, "{spacing:?}");
    }
}
