//! Every kind of spacing beyond equal openings, against figures worked by hand or noted in a shop. Properties that hold
//! whatever the numbers are in `spacing_kinds_properties.rs`, problems from books in `outside/spacing_published.rs`. Each row
//! names its source:
//!
//! - field note: a problem as it was asked, or told, in a shop;
//! - common practice, no source; worked by hand.

use num_rational::Ratio;
use scantling::{
    Edge, End, First, Growth, Layout, Length, Narrowest, OnTape, Spacing, SpacingError, Tape, TapeError, Unit, Widest,
};

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn whole(count: i64) -> Length {
    Length::new(count, Unit::Inch)
}

const STUD: Length = inches(3, 2);

fn gaps(members: usize, thickness: Length) -> Spacing {
    Spacing::equal_openings(members, thickness)
}

fn ends(spacing: Spacing, end: End) -> Spacing {
    spacing.near_end(end).far_end(end)
}

fn flush(spacing: Spacing) -> Spacing {
    ends(spacing, End::Flush)
}

fn near(layout: &Layout) -> Vec<Length> {
    layout.marks().map(|mark| mark.near()).collect()
}

fn all_gaps(layout: &Layout) -> Vec<Length> {
    layout.gaps().collect()
}

fn marks(marked: &OnTape) -> Vec<Length> {
    marked.marks().map(|mark| mark.reading().mark()).collect()
}

fn lengths<const N: usize>(counts: [i64; N], den: u64) -> Vec<Length> {
    counts.map(|count| inches(count, den)).to_vec()
}

/// Worked by hand: an opening 36 in high, five drawers, four dividers of 3/4 in, each lower drawer 3/4 in taller.
#[test]
fn a_drawer_bank() {
    let (divider, run) = (inches(3, 4), whole(36));
    let from_top = Spacing::drawers_from_top(5, divider, Growth::Step(divider)).over(run).unwrap();
    assert_eq!(all_gaps(&from_top), lengths([102, 117, 132, 147, 162], 20)); // 5 1/10, 5 17/20, 6 3/5, 7 7/20, 8 1/10 in

    let layout = Spacing::drawers_from_bottom(5, divider, Growth::Step(divider)).over(run).unwrap();
    assert_eq!(all_gaps(&layout), lengths([162, 147, 132, 117, 102], 20));
    let marked = layout.on(&Tape::sixteenths()).unwrap();
    assert_eq!(marks(&marked), lengths([130, 259, 377, 482], 16)); // 8 1/8, 16 3/16, 23 9/16, 30 1/8 in
    let cut: Vec<_> = marked.gaps().collect();
    assert_eq!(cut, lengths([130, 117, 106, 93, 82], 16)); // 8 1/8, 7 5/16, 6 5/8, 5 13/16, 5 1/8 in
    assert!((0..=4).all(|after| marked.gap(after) == Some(cut[after])) && marked.gap(5).is_none());

    // Either order is the other one, seen from the far end.
    assert_eq!(near(&from_top.reversed()), near(&layout));
    assert_eq!(near(&layout.reversed()), near(&from_top));
}

/// Source, growth, drawers, divider, ends, run, the drawers from the top in so many parts of an inch.
#[test]
fn drawers_that_grow() {
    let three_quarters = inches(3, 4);
    let ratio = |num, den| Growth::Ratio(Ratio::new(num, den));
    let rows = [
        ("field note: 1 in step", Growth::Step(whole(1)), three_quarters, End::Flush, whole(48), 8, vec![37, 45, 53, 61, 69, 77]),
        ("field note: on average", Growth::Step(whole(0)), three_quarters, End::Flush, whole(48), 8, vec![57; 6]),
        (
            "worked by hand: to a given top",
            Growth::Top(whole(4)),
            three_quarters,
            End::Flush,
            whole(48),
            4,
            vec![16, 21, 26, 31, 36, 41],
        ),
        (
            "worked by hand: to a given bottom",
            Growth::Bottom(inches(41, 4)),
            three_quarters,
            End::Flush,
            whole(48),
            4,
            vec![16, 21, 26, 31, 36, 41],
        ),
        ("worked by hand: a top too tall", Growth::Top(whole(9)), whole(1), End::Gap, whole(23), 1, vec![9, 7, 5]),
        ("worked by hand: by six fifths", ratio(6, 5), Length::ZERO, End::Gap, whole(91), 1, vec![25, 30, 36]),
        ("worked by hand: by a half", ratio(1, 2), whole(1), End::Gap, whole(17), 7, vec![60, 30, 15]),
        ("worked by hand: upward", Growth::Step(whole(-2)), whole(1), End::Gap, whole(23), 1, vec![9, 7, 5]),
        ("worked by hand: margins", Growth::Step(whole(2)), whole(1), End::Margin(whole(3)), whole(31), 1, vec![5, 7, 9]),
        ("worked by hand: one", Growth::Step(whole(2)), whole(1), End::Gap, whole(31), 1, vec![31]),
        ("worked by hand: one of a given height", Growth::Top(whole(31)), whole(1), End::Gap, whole(31), 1, vec![31]),
    ];
    for (source, growth, divider, end, run, den, expected) in rows {
        let (count, expected): (usize, Vec<_>) = (expected.len(), expected.into_iter().map(|part| inches(part, den)).collect());
        let down = ends(Spacing::drawers_from_top(count, divider, growth), end).over(run).unwrap();
        let up = ends(Spacing::drawers_from_bottom(count, divider, growth), end).over(run).unwrap();
        let closed = usize::from(end != End::Gap);
        let drawers = |layout: &Layout| layout.gaps().skip(closed).take(count).collect::<Vec<_>>();
        assert_eq!(drawers(&down), expected, "{source}");
        assert_eq!(drawers(&up), expected.into_iter().rev().collect::<Vec<_>>(), "{source}");
        assert_eq!((down.members(), up.members()), (count - 1 + 2 * closed, count - 1 + 2 * closed), "{source}");
        assert_eq!(down.reversed().marks().collect::<Vec<_>>(), up.marks().collect::<Vec<_>>(), "{source}");
    }
}

/// Worked by hand: 80 1/2 in between posts, slats of 1 1/2 in, every gap under 4 in. Fourteen slats leave 3 29/30 in exactly,
/// but some gaps would be cut at 4 in; fifteen leave 3 5/8 in.
#[test]
fn a_guard_rail() {
    let (slat, rail) = (STUD, inches(161, 2));
    let guard = Spacing::fewest_members(slat, Widest::GUARD);
    let exact = guard.over(rail).unwrap();
    assert_eq!((exact.members(), exact.opening()), (14, inches(119, 30)));
    assert!(exact.on(&Tape::sixteenths()).unwrap().gaps().any(|gap| gap == whole(4)));

    let layout = guard.clone().as_cut(&Tape::sixteenths()).over(rail).unwrap();
    assert_eq!(layout.members(), 15);
    assert!(layout.gaps().all(|gap| gap == inches(29, 8)));
    let marked = layout.on(&Tape::sixteenths()).unwrap();
    assert!(marks(&marked).into_iter().eq((0..15).map(|slat| inches(29, 8) + slat * inches(41, 8))));
    assert_eq!(marks(&marked)[14], inches(603, 8)); // 75 3/8 in
    assert!(marked.gaps().all(|gap| gap == inches(29, 8)));

    // A bound that may be met: fourteen will do, on a finer tape they also do for the guard.
    let met = Spacing::fewest_members(slat, Widest::AtMost(whole(4)));
    assert_eq!(met.as_cut(&Tape::sixteenths()).over(rail).unwrap().members(), 14);
    assert_eq!(guard.as_cut(&Tape::sixty_fourths()).over(rail).unwrap().members(), 14);
}

/// Source, spacing, run, members, opening.
#[test]
#[rustfmt::skip]
fn how_many_members() {
    let fewest = |thickness, widest| Spacing::fewest_members(thickness, widest);
    let most = |thickness, narrowest| Spacing::most_members(thickness, narrowest);
    let near = Spacing::nearest_openings;
    let (at_most, under) = (|count| Widest::AtMost(whole(count)), |count| Widest::Under(whole(count)));
    let (at_least, over) = (|count| Narrowest::AtLeast(whole(count)), |count| Narrowest::Over(whole(count)));
    let deck = |spacing: Spacing| flush(spacing).narrowest(Narrowest::AtLeast(inches(1, 8))).widest(Widest::AtMost(inches(1, 4)));
    let rows = vec![
        ("field note: 13 balusters", fewest(STUD, at_most(4)), whole(72), 13, inches(15, 4)),
        ("field note: 9 do where a recipe says 10", fewest(STUD, at_most(4)), whole(52), 9, inches(77, 20)),
        ("field note: deck of whole boards", deck(fewest(inches(11, 2), Widest::AtMost(inches(1, 4)))), whole(120), 21, inches(9, 40)),
        ("field note: deck of whole boards", deck(most(inches(11, 2), Narrowest::AtLeast(inches(1, 8)))), whole(120), 21, inches(9, 40)),
        ("field note: stairs", Spacing::nearest_parts(inches(15, 2)), inches(427, 4), 13, inches(61, 8)),
        ("worked by hand: courses of siding", Spacing::nearest_parts(whole(8)), inches(205, 2), 12, inches(205, 26)),
        ("worked by hand: met", fewest(whole(2), at_most(4)), whole(22), 3, whole(4)),
        ("worked by hand: not met", fewest(whole(2), under(4)), whole(22), 4, inches(14, 5)),
        ("worked by hand: met", most(whole(2), at_least(4)), whole(22), 3, whole(4)),
        ("worked by hand: not met", most(whole(2), over(4)), whole(22), 2, whole(6)),
        ("worked by hand: flush", flush(fewest(whole(2), at_most(4))), whole(20), 4, whole(4)),
        ("worked by hand: flush", flush(fewest(whole(2), under(4))), whole(20), 5, inches(5, 2)),
        ("worked by hand: flush", flush(most(whole(2), over(4))), whole(20), 3, whole(7)),
        ("worked by hand: half gaps", ends(fewest(whole(2), at_most(4)), End::HalfGap), whole(18), 3, whole(4)),
        ("worked by hand: half gaps are not too narrow", ends(most(whole(2), at_least(4)), End::HalfGap), whole(18), 3, whole(4)),
        ("worked by hand: margins", ends(fewest(whole(2), at_most(4)), End::Margin(whole(3))), whole(26), 4, whole(4)),
        ("worked by hand: margins are not too narrow", ends(most(whole(2), at_least(4)), End::Margin(whole(3))), whole(26), 4, whole(4)),
        ("worked by hand: one held", fewest(whole(2), at_most(4)).hold(1, whole(3)), whole(25), 4, inches(7, 2)),
        ("worked by hand: none needed", fewest(whole(2), at_most(40)), whole(40), 0, whole(40)),
        ("worked by hand: no room for one", most(whole(2), at_least(4)), whole(9), 0, whole(9)),
        ("worked by hand: touching", fewest(whole(2), at_most(0)), whole(12), 6, whole(0)),
        ("worked by hand: hooks", fewest(whole(0), at_most(8)), whole(92), 11, inches(23, 3)),
        ("worked by hand: nearest", near(whole(2), whole(4)), whole(23), 3, inches(17, 4)),
        ("worked by hand: as near, the more", near(whole(0), inches(5, 1)), whole(12), 2, whole(4)),
        ("worked by hand: as near, the more", near(whole(0), inches(9, 2)), whole(18), 3, inches(9, 2)),
        ("worked by hand: nearest, flush", flush(near(whole(2), whole(4))), whole(20), 4, whole(4)),
        ("worked by hand: nearest, flush, no less than two", flush(near(whole(2), whole(90))), whole(20), 2, whole(16)),
        ("worked by hand: nearest, nothing smaller", near(whole(7), whole(0)), whole(20), 2, whole(2)),
        ("worked by hand: nearest, none", near(whole(7), whole(90)), whole(20), 0, whole(20)),
    ];
    for (source, spacing, run, members, opening) in rows {
        let layout = spacing.over(run).unwrap_or_else(|error| panic!("{source}: {error}"));
        assert_eq!((layout.members(), layout.opening()), (members, opening), "{source}");
    }
}

/// Worked by hand: a count that only the tape decides. Pegs of no width, 10 in, sixteenths: two leave 3 1/3 in, cut at 3 5/16,
/// 3 3/8 and 3 5/16 in.
#[test]
fn counts_as_cut() {
    let tape = Tape::sixteenths();
    let fewest =
        |widest| Spacing::fewest_members(Length::ZERO, widest).as_cut(&tape).over(whole(10)).map(|layout| layout.members());
    assert_eq!(fewest(Widest::AtMost(inches(54, 16))), Ok(2));
    assert_eq!(fewest(Widest::AtMost(inches(53, 16))), Ok(3)); // though 3 1/3 in is more by 1/48 in alone
    assert_eq!(fewest(Widest::Under(inches(54, 16))), Ok(3));
    let most =
        |narrowest| Spacing::most_members(Length::ZERO, narrowest).as_cut(&tape).over(whole(10)).map(|layout| layout.members());
    assert_eq!(most(Narrowest::AtLeast(inches(53, 16))), Ok(2));
    assert_eq!(most(Narrowest::Over(inches(53, 16))), Ok(1));

    // Half gaps at the ends of 6 25/32 in: two lines are 3 25/64 in apart, but cut 3 3/8 in apart.
    let lines = ends(Spacing::fewest_members(Length::ZERO, Widest::AtMost(inches(54, 16))), End::HalfGap);
    assert_eq!(lines.over(inches(217, 32)).unwrap().members(), 3);
    assert_eq!(lines.as_cut(&tape).over(inches(217, 32)).unwrap().members(), 2);

    // Flush at the datum: with no member the one gap is all of 4 1/32 in, with one too; two leave half of it.
    let flush = Spacing::fewest_members(Length::ZERO, Widest::AtMost(whole(4))).near_end(End::Flush).as_cut(&tape);
    assert_eq!(flush.over(inches(129, 32)).unwrap().members(), 2);
}

/// Worked by hand: where no gap has a limit there is nothing to judge, whatever tape it would be judged with.
#[test]
fn no_limit_is_not_judged_as_cut() {
    let short = Tape::sixteenths().length(whole(48));
    for spacing in [gaps(5, inches(3, 4)), gaps(4_000_001, whole(0))] {
        assert_eq!(spacing.clone().as_cut(&short).over(whole(72)), spacing.over(whole(72)));
    }
}

/// Source, first, ends, pitch, thickness, run, near edges in sixteenths.
#[test]
#[rustfmt::skip]
fn members_on_center() {
    let (sixteen, offset) = (whole(16), inches(1, 2));
    let from = |count| First::CenterAt(whole(count));
    let off = |count| First::OffCenterLine(whole(count));
    let (open, flush) = (End::Gap, End::Flush);
    let rows = [
        ("common practice, no source: studs, first mark 15 1/4", from(16), flush, flush, sixteen, STUD, whole(96), vec![0, 244, 500, 756, 1012, 1268, 1512]),
        ("common practice, no source: the last one left out", from(16), flush, open, sixteen, STUD, whole(96), vec![0, 244, 500, 756, 1012, 1268]),
        ("field note: board of 1/2 in on the first wall", First::CenterAt(sixteen + offset), open, open, sixteen, STUD, whole(60), vec![252, 508, 764]),
        ("common practice, no source: from a face", First::FaceAt(whole(0)), open, open, sixteen, STUD, whole(60), vec![0, 256, 512, 768]),
        ("worked by hand: from a face, an offset", First::FaceAt(offset), open, open, sixteen, STUD, whole(60), vec![8, 264, 520, 776]),
        ("worked by hand: from a face, one closes", First::FaceAt(whole(0)), open, flush, sixteen, STUD, whole(60), vec![0, 256, 512, 768, 936]),
        ("worked by hand: two faces meet at the end", First::FaceAt(whole(0)), open, flush, sixteen, STUD, whole(51), vec![0, 256, 512, 768, 792]),
        ("worked by hand: set back against the last", First::FaceAt(whole(0)), open, flush, sixteen, STUD, whole(50), vec![0, 256, 512, 752, 776]),
        ("worked by hand: the regular one is the last", First::FaceAt(whole(0)), open, flush, sixteen, STUD, inches(99, 2), vec![0, 256, 512, 768]),
        ("worked by hand: one on the center line", off(0), open, open, sixteen, STUD, whole(60), vec![212, 468, 724]),
        ("worked by hand: a bay on the center line", off(8), open, open, sixteen, STUD, whole(60), vec![84, 340, 596, 852]),
        ("worked by hand: off it by other than half", off(2), open, open, sixteen, STUD, whole(60), vec![180, 436, 500, 756]),
        ("worked by hand: closed on both sides", off(0), flush, flush, sixteen, STUD, whole(60), vec![0, 212, 468, 724, 936]),
        ("worked by hand: set back on both sides", off(0), flush, flush, sixteen, STUD, whole(34), vec![0, 24, 260, 496, 520]),
        ("worked by hand: closed on one side", off(0), flush, open, sixteen, STUD, whole(34), vec![0, 24, 260, 516]),
        ("worked by hand: margins", from(16), End::Margin(whole(2)), End::Margin(whole(3)), sixteen, STUD, whole(60), vec![32, 244, 500, 756, 888]),
        ("worked by hand: shared", First::Shared, open, open, sixteen, STUD, whole(60), vec![84, 340, 596, 852]),
        ("worked by hand: shared, odd", First::Shared, open, open, sixteen, STUD, whole(40), vec![52, 308, 564]),
        ("worked by hand: shared between closing ones", First::Shared, flush, flush, sixteen, STUD, whole(60), vec![0, 84, 340, 596, 852, 936]),
        ("worked by hand: one fills the run", First::Shared, open, open, sixteen, STUD, STUD, vec![0]),
        ("worked by hand: no room", First::Shared, open, open, sixteen, STUD, whole(1), vec![]),
        ("worked by hand: no room", off(0), open, open, sixteen, STUD, whole(1), vec![]),
        ("worked by hand: none due yet", from(16), open, open, sixteen, STUD, whole(16), vec![]),
        ("worked by hand: none due yet, closed", from(16), flush, flush, sixteen, STUD, whole(16), vec![0, 232]),
        ("worked by hand: just due", from(16), open, open, sixteen, STUD, inches(67, 4), vec![244]),
        ("worked by hand: members touch", First::FaceAt(whole(0)), open, open, whole(2), whole(2), whole(7), vec![0, 32, 64]),
        ("worked by hand: lines", from(3), open, open, whole(3), whole(0), whole(10), vec![48, 96, 144]),
    ];
    for (source, first, near_end, far_end, pitch, thickness, run, expected) in rows {
        let spacing = Spacing::on_center(pitch, thickness, first).near_end(near_end).far_end(far_end);
        let layout = spacing.over(run).unwrap_or_else(|error| panic!("{source}: {error}"));
        let expected: Vec<_> = expected.into_iter().map(|count| inches(count, 16)).collect();
        assert_eq!(near(&layout), expected, "{source}");
        // No two centers are farther apart than the pitch, but where the first one was asked for.
        let steps = layout.marks().map(|mark| mark.center()).collect::<Vec<_>>();
        let asked = !matches!(first, First::CenterAt(_)) || near_end == End::Gap;
        assert!(!asked || steps.windows(2).all(|pair| pair[1] - pair[0] <= pitch), "{source}");
    }
}

/// Worked by hand: studs have their marks on the tape, and the remainder is what the layout calls its opening.
#[test]
fn on_center_on_a_tape() {
    let studs = Spacing::on_center(inches(96, 5), STUD, First::CenterAt(inches(96, 5))).near_end(End::Flush); // 19.2 in
    let layout = studs.over(whole(96)).unwrap();
    let marked = layout.on_edge(&Tape::sixteenths(), Edge::Center).unwrap();
    assert_eq!(marks(&marked)[1..], lengths([307, 614, 922, 1229], 16));
    assert_eq!(layout.opening(), whole(96) - inches(384, 5) - STUD / 2);
}

/// Source, spacing, run, every gap from the datum on, in so many parts of an inch.
#[test]
#[rustfmt::skip]
fn unequal_runs() {
    let parts = |shares: &[u64], divider| Spacing::proportional(shares.iter().copied(), divider);
    let frames = |widths: &[i64]| Spacing::unequal_members(widths.iter().map(|width| whole(*width)));
    let rows = [
        ("worked by hand: 3 : 2 : 2", parts(&[3, 2, 2], inches(3, 4)), whole(36), 14, vec![207, 138, 138]),
        ("worked by hand: with both sides of the case", flush(parts(&[3, 2, 2], inches(3, 4))), whole(36), 7, vec![0, 99, 66, 66, 0]),
        ("worked by hand: a share of nothing", parts(&[1, 0, 1], whole(2)), whole(24), 1, vec![10, 0, 10]),
        ("worked by hand: one share", parts(&[7], whole(2)), whole(24), 1, vec![24]),
        ("worked by hand: behind a margin", parts(&[1, 3], whole(1)).near_end(End::Margin(whole(2))), whole(24), 1, vec![2, 5, 15]),
        ("worked by hand: half a share", parts(&[1, 3], whole(1)).far_end(End::HalfGap), whole(20), 1, vec![4, 12, 2]),
        ("field note: two frames", frames(&[13, 13]), whole(47), 1, vec![7, 7, 7]),
        ("worked by hand: three frames", frames(&[2, 3, 5]), whole(30), 1, vec![5, 5, 5, 5]),
        ("worked by hand: flush", flush(frames(&[2, 3, 5])), whole(30), 1, vec![0, 10, 10, 0]),
        ("worked by hand: half gaps", ends(frames(&[2, 3, 5]), End::HalfGap), whole(28), 1, vec![3, 6, 6, 3]),
        ("worked by hand: margins", ends(frames(&[2, 3, 5]), End::Margin(whole(4))), whole(28), 1, vec![4, 5, 5, 4]),
        ("worked by hand: no frame", frames(&[]), whole(28), 1, vec![28]),
        ("worked by hand: one held", frames(&[2, 3, 5]).hold(1, whole(8)), whole(30), 1, vec![4, 8, 4, 4]),
        ("worked by hand: two held", gaps(4, whole(1)).hold(1, whole(8)).hold(4, whole(2)), whole(20), 1, vec![2, 8, 2, 2, 2]),
        ("worked by hand: held twice", gaps(4, whole(1)).hold(1, whole(80)).hold(1, whole(8)), whole(24), 1, vec![3, 8, 3, 3, 3]),
        ("worked by hand: held at the ends", gaps(2, whole(1)).hold(0, whole(3)).hold(2, whole(4)), whole(12), 1, vec![3, 3, 4]),
        ("worked by hand: held, not flush", flush(gaps(2, whole(1))).hold(0, whole(3)), whole(12), 1, vec![3, 7, 0]),
        ("worked by hand: all held, and all taken", gaps(1, whole(1)).hold(0, whole(3)).hold(1, whole(4)), whole(8), 1, vec![3, 4]),
        ("worked by hand: parts held", Spacing::equal_parts(3).hold(0, whole(3)), whole(9), 1, vec![3, 3, 3]),
        ("worked by hand: a drawer held", Spacing::drawers_from_top(3, whole(1), Growth::Step(whole(1))).hold(0, whole(3)), whole(14), 2, vec![6, 8, 10]),
    ];
    for (source, spacing, run, den, expected) in rows {
        let layout = spacing.over(run).unwrap_or_else(|error| panic!("{source}: {error}"));
        assert_eq!(all_gaps(&layout), expected.into_iter().map(|part| inches(part, den)).collect::<Vec<_>>(), "{source}");
    }
}

#[test]
fn a_layout_from_its_far_end() {
    let layout = Spacing::unequal_members([2, 3, 5].map(whole)).near_end(End::Flush).far_end(End::Margin(whole(4)));
    let layout = layout.hold(2, whole(1)).over(whole(30)).unwrap();
    assert_eq!(near(&layout), lengths([0, 17, 21], 1));
    assert_eq!(near(&layout.reversed()), lengths([4, 10, 28], 1));
    assert_eq!(all_gaps(&layout.reversed()), lengths([4, 1, 15, 0], 1));
    assert_eq!(layout.reversed().reversed(), layout);

    // Worked by hand: places midway between graduations go up from either end, so the marks are not mirror images.
    let layout = Spacing::equal_parts(2).over(inches(17, 16)).unwrap();
    let tape = Tape::sixteenths();
    assert_eq!(marks(&layout.on(&tape).unwrap()), [inches(9, 16)]);
    assert_eq!(marks(&layout.reversed().on(&tape).unwrap()), [inches(9, 16)]);
}

/// Worked by hand: a run of 30 1/32 in with three members of 23/32 in. Ties up, the openings as cut differ by a sixteenth and
/// a half at most; ties to the even graduation, by two.
#[test]
fn why_ties_go_up() {
    let layout = gaps(3, inches(23, 32)).over(inches(961, 32)).unwrap();
    assert_eq!(layout.opening(), inches(223, 32));
    let spread = |mode| layout.on(&Tape::sixteenths().mode(mode)).unwrap().spread();
    assert!(spread(scantling::RoundingMode::TiesUp) <= inches(3, 32));
    assert_eq!(spread(scantling::RoundingMode::TiesEven), inches(1, 8));
}

fn refusal(spacing: &Spacing, run: Length) -> SpacingError {
    spacing.over(run).expect_err("refused")
}

/// Worked by hand: what cannot be built, and what is said of it.
#[test]
#[rustfmt::skip]
fn refusals() {
    let growth = |num, den| Growth::Ratio(Ratio::new_raw(num, den));
    let drawers = |count, growth| Spacing::drawers_from_top(count, inches(3, 4), growth);
    let on_center = |pitch, first| Spacing::on_center(pitch, STUD, first);
    let shelves = gaps(5, inches(3, 4));
    let fewest = |count| Spacing::fewest_members(STUD, Widest::AtMost(whole(count)));
    let most = |count| Spacing::most_members(STUD, Narrowest::AtLeast(whole(count)));
    let lines = Spacing::fewest_members(Length::ZERO, Widest::AtMost(whole(4)));
    let (tape, at_16) = (Tape::sixteenths(), First::CenterAt(whole(16)));
    let rows = vec![
        (drawers(0, Growth::Step(whole(1))), "a run cannot be divided into zero parts"),
        (drawers(3, growth(0, 1)), "drawers cannot grow by a ratio of 0: it must be above zero"),
        (drawers(3, growth(1, 0)), "drawers cannot grow by a ratio of 1/0: it must be above zero"),
        (drawers(3, growth(-6, 5)), "drawers cannot grow by a ratio of -6/5: it must be above zero"),
        (drawers(3, Growth::Top(whole(-1))), "an opening cannot be -1\": it must not be below zero"),
        (drawers(3, Growth::Bottom(whole(-1))), "an opening cannot be -1\": it must not be below zero"),
        (drawers(3, Growth::Step(whole(60))), "a gap comes out at -36 1/2\" in a run of 72\": it must not be below zero"),
        (drawers(3, Growth::Bottom(whole(80))), "2 members, with any fixed gaps, need 81 1/2\"; the run is 72\": 9 1/2\" short"),
        (drawers(1, Growth::Top(whole(70))), "0 members, with any fixed gaps, need 70\"; the run is 72\", and no gap is free to take the 2\" left over"),
        (drawers(999, growth(6, 5)), "the exact layout of a run of 72\" is out of range: longer, or more finely divided, than a length can hold"),
        (Spacing::proportional([], whole(1)), "a run cannot be divided into zero parts"),
        (Spacing::proportional([0, 0], whole(1)), "1 member, with any fixed gaps, needs 1\"; the run is 72\", and no gap is free to take the 71\" left over"),
        (Spacing::proportional([1, 2], whole(-1)), "a member cannot be -1\" thick: it must not be below zero"),
        (Spacing::proportional([1, 2], whole(80)), "1 member, with any fixed gaps, needs 80\"; the run is 72\": 8\" short"),
        (Spacing::unequal_members([2, -3].map(whole)), "a member cannot be -3\" thick: it must not be below zero"),
        (Spacing::unequal_members([2, 3].map(whole)).far_end(End::Margin(whole(-3))), "a margin cannot be -3\": the member would lie past the end of the run"),
        (Spacing::unequal_members([50, 30].map(whole)), "2 members, with any fixed gaps, need 80\"; the run is 72\": 8\" short"),
        (shelves.clone().hold(6, whole(9)), "no opening comes after member 6: there are 5 members"),
        (gaps(1, whole(1)).hold(2, whole(9)), "no opening comes after member 2: there is 1 member"),
        (shelves.clone().hold(0, whole(-9)), "an opening cannot be -9\": it must not be below zero"),
        (shelves.clone().hold(0, whole(69)), "5 members, with any fixed gaps, need 72 3/4\"; the run is 72\": 3/4\" short"),
        (shelves.clone().widest(Widest::AtMost(whole(-1))), "an opening cannot be -1\": it must not be below zero"),
        (shelves.clone().narrowest(Narrowest::Over(whole(-1))), "an opening cannot be -1\": it must not be below zero"),
        (shelves.clone().widest(Widest::AtMost(whole(11))), "with 5 members the gap at the near end comes out at 11 3/8\": it must be at most 11\""),
        (shelves.clone().narrowest(Narrowest::AtLeast(whole(12))), "with 5 members the gap at the near end comes out at 11 3/8\": it must be at least 12\""),
        (shelves.clone().hold(2, whole(4)).narrowest(Narrowest::Over(whole(4))), "with 5 members the gap after member 2 comes out at 4\": it must be over 4\""),
        (gaps(1, whole(2)).widest(Widest::Under(whole(35))), "with 1 member the gap at the near end comes out at 35\": it must be under 35\""),
        (flush(shelves.clone()).narrowest(Narrowest::AtLeast(whole(18))), "with 5 members the gap after member 1 comes out at 17 1/16\": it must be at least 18\""),
        (shelves.clone().far_end(End::Margin(whole(40))).widest(Widest::AtMost(whole(30))), "with 5 members the gap after member 5 comes out at 40\": it must be at most 30\""),
        (Spacing::equal_parts(5).widest(Widest::Under(inches(231, 16))).as_cut(&tape), "with 4 members the gap after member 1 would be cut at 14 7/16\": it must be under 14 7/16\""),
        (Spacing::equal_parts(5).narrowest(Narrowest::Over(inches(230, 16))).as_cut(&tape), "with 4 members the gap after member 4 would be cut at 14 3/8\": it must be over 14 3/8\""),
        (fewest(-4), "an opening cannot be -4\": it must not be below zero"),
        (fewest(4).narrowest(Narrowest::AtLeast(inches(31, 8))), "with 13 members the gap at the near end comes out at 3 3/4\": it must be at least 3 7/8\""),
        (fewest(4).widest(Widest::Under(whole(4))).near_end(End::Margin(whole(4))), "with 45 members the gap at the near end comes out at 4\": it must be under 4\""),
        (fewest(4).near_end(End::Margin(whole(5))), "with 44 members the gap at the near end comes out at 5\": it must be at most 4\""),
        (fewest(0).near_end(End::Margin(whole(1))), "with 47 members the gap at the near end comes out at 1\": it must be at most 0\""),
        (lines.clone().near_end(End::Margin(whole(5))), "with 9223372036854775807 members the gap at the near end comes out at 5\": it must be at most 4\""),
        (most(80), "with 0 members the gap at the near end comes out at 72\": it must be at least 80\""),
        (flush(most(80)), "with 2 members the gap after member 1 comes out at 69\": it must be at least 80\""),
        (Spacing::most_members(whole(0), Narrowest::AtLeast(whole(0))), "the exact layout of a run of 72\" is out of range: longer, or more finely divided, than a length can hold"),
        (Spacing::nearest_parts(whole(-7)), "an opening cannot be -7\": it must not be below zero"),
        (flush(Spacing::nearest_openings(whole(80), whole(7))), "1 member, with any fixed gaps, needs 80\"; the run is 72\": 8\" short"),
        (fewest(1).widest(Widest::Under(inches(1, 16))).as_cut(&tape), "a gap of 1/16\" cannot be judged as cut on a tape with a graduation every 1/16\": take a finer one"),
        (most(1).narrowest(Narrowest::Over(inches(1, 32))).as_cut(&tape), "a gap of 1/32\" cannot be judged as cut on a tape with a graduation every 1/16\": take a finer one"),
        (gaps(4_000_001, whole(0)).widest(Widest::Under(whole(1))).as_cut(&tape), "the gaps between 4000001 members are too many to judge as cut: at most 4000000 gaps for one answer"),
        // As many as may be judged, and the last gap of no width is judged first.
        (gaps(4_000_000, whole(0)).narrowest(Narrowest::AtLeast(inches(1, 8))).as_cut(&tape), "with 4000000 members the gap after member 4000000 would be cut at 0\": it must be at least 1/8\""),
        // No sixteenth lies between the limits, so 571 lines, 0.126 in apart, fail as cut, and so do 3991 more counts, each at the cost of 1002 gaps.
        (Spacing::fewest_members(whole(0), Widest::AtMost(inches(127, 2000))).narrowest(Narrowest::AtLeast(inches(129, 2000))).as_cut(&tape), "the gaps between 4563 members are too many to judge as cut: at most 4000000 gaps for one answer"),
        // Twenty lines are the first with gaps of under 3 9/16, but the margin is cut at 3 1/2 with any number of them.
        (Spacing::fewest_members(whole(0), Widest::Under(inches(7, 2))).far_end(End::Margin(inches(223, 64))).as_cut(&tape), "with 20 members the gap after member 20 would be cut at 3 1/2\": it must be under 3 1/2\""),
        (shelves.clone().widest(Widest::Under(whole(12))).as_cut(&tape.length(whole(48))), "the mark would read 59 7/8\", past the end of the tape at 48\""),
        (on_center(whole(0), at_16), "members 1 1/2\" thick cannot stand 0\" on center: a pitch is above zero, and no less than the thickness"),
        (on_center(whole(1), at_16), "members 1 1/2\" thick cannot stand 1\" on center: a pitch is above zero, and no less than the thickness"),
        (on_center(whole(16), at_16).near_end(End::HalfGap), "members on center have no equal gap to halve at an end: give a margin there, or leave it open"),
        (on_center(whole(16), at_16).far_end(End::HalfGap), "members on center have no equal gap to halve at an end: give a margin there, or leave it open"),
        (on_center(whole(16), at_16).far_end(End::Margin(whole(-1))), "a margin cannot be -1\": the member would lie past the end of the run"),
        (on_center(whole(16), First::CenterAt(whole(0))), "a gap comes out at -3/4\" in a run of 72\": it must not be below zero"),
        (on_center(whole(16), First::FaceAt(whole(1))).near_end(End::Flush), "a gap comes out at -1/2\" in a run of 72\": it must not be below zero"),
        (on_center(whole(16), First::OffCenterLine(inches(1, 2))), "a gap comes out at -1/2\" in a run of 72\": it must not be below zero"),
        (on_center(whole(16), First::Shared).near_end(End::Margin(whole(71))), "1 member, with any fixed gaps, needs 72 1/2\"; the run is 72\": 1/2\" short"),
        (Spacing::on_center(whole(16), whole(-1), at_16), "a member cannot be -1\" thick: it must not be below zero"),
    ];
    for (spacing, text) in rows {
        assert_eq!(refusal(&spacing, whole(72)).to_string(), text, "{spacing:?}");
    }
    for spacing in [fewest(4), most(4), on_center(whole(16), at_16), drawers(3, Growth::Step(whole(1)))] {
        assert_eq!(refusal(&spacing, whole(-1)), SpacingError::NegativeRun { run: whole(-1) });
    }
}

/// Everything that a program would look at is in the error.
#[test]
fn refusals_carry_their_numbers() {
    let (members, widest, narrowest) = (14, Widest::GUARD, Narrowest::Over(whole(4)));
    let slats = gaps(14, STUD).widest(widest).as_cut(&Tape::sixteenths());
    let cut = SpacingError::GapTooWide { members, after: 1, gap: whole(4), widest, as_cut: true };
    assert_eq!(slats.over(inches(161, 2)), Err(cut));
    let narrow = gaps(14, STUD).narrowest(narrowest);
    let exact = SpacingError::GapTooNarrow { members, after: 0, gap: inches(119, 30), narrowest, as_cut: false };
    assert_eq!(narrow.over(inches(161, 2)), Err(exact));
    let past = SpacingError::Tape(TapeError::PastEnd { shown: inches(145, 2), length: whole(48) });
    let far = flush(gaps(2, whole(2))).widest(Widest::AtMost(whole(90))).as_cut(&Tape::eighths().length(whole(48)));
    assert_eq!(far.over(inches(149, 2)), Err(past));
}

/// A million members of every kind, which takes seconds in debug builds, counted, judged as cut, reversed.
#[test]
fn a_million_members() {
    const MILLION: usize = 1_000_000;
    let run = Length::new(100, Unit::Meter) * 1000;
    let tape = Tape::sixteenths();
    let lath = inches(1, 4);
    let rows = [
        Spacing::unequal_members((0..MILLION).map(|number| inches(i64::try_from(number % 3).unwrap(), 4))),
        Spacing::proportional((0..=MILLION).map(|number| u64::try_from(number % 5).unwrap()), lath),
        Spacing::drawers_from_bottom(MILLION + 1, lath, Growth::Step(inches(1, 1_000_000))),
        Spacing::on_center(run / 1_000_000, lath, First::FaceAt(Length::ZERO)),
        Spacing::fewest_members(lath, Widest::AtMost(run / 1_000_000 - lath)).near_end(End::Flush).far_end(End::Gap),
        (0..1000).fold(gaps(MILLION, lath), |held, after| held.hold(after * 999, whole(1))),
    ];
    for spacing in rows {
        let layout = spacing.over(run).unwrap();
        assert!((MILLION - 1..=MILLION).contains(&layout.members()), "{}", layout.members());
        let marked = layout.on(&tape).unwrap();
        let mut last = Length::ZERO;
        marked.marks().for_each(|mark| last = mark.reading().mark());
        assert_eq!(Some(last), marked.marks().last().map(|mark| mark.reading().mark()));
        assert_eq!(layout.reversed().mark(1).map(|mark| run - mark.far()), layout.marks().next_back().map(|mark| mark.near()));
    }
    // Judged as cut: ninety thousand are counted, and a count past all sense is refused, at once.
    let slats = |run| Spacing::fewest_members(lath, Widest::Under(whole(4))).as_cut(&tape).over(run);
    assert!(slats(run / 10).unwrap().opening() < whole(4));
    assert!(matches!(slats(run), Err(SpacingError::TooManyToJudge { .. })));
    let hair = Spacing::most_members(Length::ZERO, Narrowest::AtLeast(inches(1, 1_000_000))).over(run).unwrap();
    assert!(hair.members() > 1_000_000_000_000 && hair.opening() >= inches(1, 1_000_000));
}
