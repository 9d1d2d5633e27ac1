//! Friendly sizes against trying every change there is, and against figures worked by hand.

use std::collections::BTreeSet;

use quickcheck::{Arbitrary, Gen};
use scantling::{Change, End, First, FriendlySize, Growth, Length, Narrowest, Spacing, SpacingError, Tape, Unit, Widest};

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn whole(count: i64) -> Length {
    Length::new(count, Unit::Inch)
}

fn sizes(spacing: &Spacing, run: Length, tape: &Tape, limit: Length) -> Vec<FriendlySize> {
    spacing.friendly_sizes(run, tape, limit).unwrap().collect()
}

fn flat(sizes: &[FriendlySize]) -> Vec<(Change, Length, Length)> {
    sizes.iter().map(|size| (size.what(), size.change(), size.opening())).collect()
}

/// Worked by hand: spacing, run, tape, limit, and every size in order: what changes, by how much, the opening then.
#[test]
#[rustfmt::skip]
fn sizes_in_order() {
    use Change::{Run, Thickness};
    let (opening, half) = (|after| Change::Opening { after }, End::HalfGap);
    let (sixteenths, eighths) = (Tape::sixteenths(), Tape::eighths());
    let (gaps, line) = (Spacing::equal_openings, whole(0));
    let margin = |num, den| End::Margin(inches(num, den));
    let rows = [
        // Five parts go up by five graduations at a time.
        (Spacing::equal_parts(5), whole(72), sixteenths, inches(7, 16), vec![(Run, inches(-1, 8), inches(115, 8)), (Run, inches(3, 16), inches(231, 16)), (Run, inches(-7, 16), inches(229, 16))]),
        // A change of the run shows once, one of three shelves three times.
        (gaps(3, inches(23, 32)), whole(60), eighths, inches(1, 6), vec![(Thickness, inches(-5, 96), inches(29, 2)), (Thickness, inches(11, 96), inches(115, 8)), (Run, inches(5, 32), inches(29, 2))]),
        // A change of nothing comes first where the openings are whole as they are.
        (gaps(2, inches(3, 4)), whole(12), eighths, inches(3, 16), vec![(Run, line, inches(7, 2)), (Thickness, line, inches(7, 2)), (Thickness, inches(-3, 16), inches(29, 8)), (Thickness, inches(3, 16), inches(27, 8))]),
        // Of equal changes the run comes first, and the shorter of each.
        (gaps(1, inches(3, 4)), whole(12), eighths, inches(1, 4), vec![(Run, line, inches(45, 8)), (Thickness, line, inches(45, 8)), (Run, inches(-1, 4), inches(11, 2)), (Run, inches(1, 4), inches(23, 4)), (Thickness, inches(-1, 4), inches(23, 4)), (Thickness, inches(1, 4), inches(11, 2))]),
        // Half gaps must be whole too, so full ones go by two graduations.
        (gaps(2, line).near_end(half).far_end(half), whole(12), eighths, inches(1, 2), vec![(Run, line, whole(6)), (Run, inches(-1, 2), inches(23, 4)), (Run, inches(1, 2), inches(25, 4))]),
        // A run off the graduations cannot be mended by a held opening.
        (gaps(1, line).hold(0, whole(4)), inches(193, 16), eighths, inches(1, 16), vec![(Run, inches(-1, 16), whole(8)), (Run, inches(1, 16), inches(65, 8))]),
        (gaps(2, line).hold(0, whole(4)), inches(97, 8), eighths, inches(1, 8), vec![(Run, inches(-1, 8), whole(4)), (Run, inches(1, 8), inches(33, 8)), (opening(0), inches(-1, 8), inches(33, 8)), (opening(0), inches(1, 8), whole(4))]),
        // A margin off the graduations is the only size that may change.
        (gaps(2, line).near_end(margin(65, 16)), whole(12), eighths, inches(1, 8), vec![(opening(0), inches(-1, 16), whole(4))]),
        (gaps(2, line).near_end(margin(65, 16)).far_end(margin(65, 16)), whole(12), eighths, whole(9), vec![]),
        // Drawers that grow by a whole step.
        (Spacing::drawers_from_top(3, whole(1), Growth::Step(inches(1, 2))), inches(321, 16), eighths, inches(1, 4), vec![(Thickness, inches(1, 32), inches(11, 2)), (Run, inches(-1, 16), inches(11, 2)), (Thickness, inches(-5, 32), inches(45, 8)), (Thickness, inches(7, 32), inches(43, 8))]),
        // A step that is no whole graduation never comes out whole.
        (Spacing::drawers_from_top(3, whole(1), Growth::Step(inches(1, 3))), whole(20), eighths, whole(9), vec![]),
        // Where the drawer without the step is held, the other one is whole with a third in its opening.
        (Spacing::drawers_from_top(2, whole(1), Growth::Step(inches(1, 3))).hold(0, whole(3)), whole(10), eighths, inches(1, 16), vec![(Run, line, inches(17, 3)), (Thickness, line, inches(17, 3)), (opening(0), line, inches(17, 3))]),
        // What would break a limit is left out: the opening of 4 in as it is, and every wider one.
        (gaps(2, line).widest(Widest::GUARD), whole(12), eighths, inches(1, 2), vec![(Run, inches(-3, 8), inches(31, 8))]),
        // And so is what would be too narrow, though the other drawer is 2 in taller.
        (Spacing::drawers_from_top(2, inches(3, 4), Growth::Step(whole(2))).narrowest(Narrowest::AtLeast(whole(1))), inches(19, 4), eighths, inches(1, 4), vec![(Run, line, whole(1)), (Thickness, line, whole(1)), (Run, inches(1, 4), inches(9, 8)), (Thickness, inches(-1, 4), inches(9, 8))]),
        // As cut, the half graduation of the thickness makes 4 1/32 in of the second opening of 4 in; without it 4 in will do.
        (gaps(2, inches(23, 32)).widest(Widest::AtMost(whole(4))).as_cut(&sixteenths), inches(215, 16), eighths, inches(3, 8), vec![(Thickness, inches(3, 16), inches(31, 8)), (Run, inches(-3, 8), inches(31, 8)), (Thickness, inches(3, 8), inches(15, 4))]),
        (gaps(2, inches(3, 4)).widest(Widest::AtMost(whole(4))).as_cut(&sixteenths), inches(27, 2), eighths, inches(3, 8), vec![(Run, line, whole(4)), (Thickness, line, whole(4)), (Thickness, inches(3, 16), inches(31, 8)), (Run, inches(-3, 8), inches(31, 8)), (Thickness, inches(3, 8), inches(15, 4))]),
        // Members stay as many as they are: fourteen slats.
        (Spacing::fewest_members(inches(3, 2), Widest::GUARD), inches(161, 2), sixteenths, inches(1, 8), vec![(Thickness, inches(1, 32), inches(63, 16)), (Thickness, inches(11, 112), inches(31, 8))]),
        // Seventeen boards share what the openings leave, in parts finer than any a length has room for by itself.
        (gaps(17, whole(1)).near_end(End::Flush).far_end(End::Flush), inches(69, 2), sixteenths, inches(1, 32), vec![(Thickness, inches(-1, 34), inches(9, 8)), (Thickness, inches(1, 34), inches(17, 16))]),
        // What does not fit may be made to.
        (gaps(5, inches(3, 4)), whole(3), eighths, whole(1), vec![(Thickness, inches(-3, 20), line), (Thickness, inches(-3, 10), inches(1, 8)), (Thickness, inches(-9, 20), inches(1, 4)), (Thickness, inches(-3, 5), inches(3, 8)), (Run, inches(3, 4), line), (Thickness, inches(-3, 4), inches(1, 2))]),
        // No gap is free: each size alone may take what is over.
        (gaps(1, whole(4)).near_end(margin(3, 1)).far_end(margin(3, 1)), inches(41, 4), eighths, inches(1, 2), vec![(Run, inches(-1, 4), line), (Thickness, inches(1, 4), line), (opening(0), inches(1, 4), line), (opening(1), inches(1, 4), line)]),
        // Nothing is within less than nothing.
        (gaps(1, whole(4)), whole(10), eighths, whole(-1), vec![]),
    ];
    for (spacing, run, tape, limit, expected) in rows {
        assert_eq!(flat(&sizes(&spacing, run, &tape, limit)), expected, "{spacing:?}");
    }
}

#[test]
fn refusals() {
    let tape = Tape::sixteenths();
    let refused = |spacing: Spacing, run| spacing.friendly_sizes(run, &tape, whole(1)).err();
    let studs = Spacing::on_center(whole(16), inches(3, 2), First::Shared);
    assert_eq!(refused(studs, whole(96)), Some(SpacingError::PitchIsGiven));
    assert_eq!(
        SpacingError::PitchIsGiven.to_string(),
        "members on center keep their pitch: no change of a size makes their openings come out whole"
    );
    assert_eq!(refused(Spacing::equal_parts(0), whole(96)), Some(SpacingError::ZeroParts));
    assert_eq!(refused(Spacing::equal_parts(2), whole(-1)), Some(SpacingError::NegativeRun { run: whole(-1) }));
    // So finely divided that thickness and opening have no common measure.
    let fine = Spacing::equal_openings(2, inches(1, u64::MAX - 58)).hold(0, inches(1, u64::MAX - 82));
    assert_eq!(refused(fine, whole(96)), Some(SpacingError::OutOfRange { run: whole(96) }));
}

/// Worked by hand: a limit that lets in ten thousand million sizes costs nothing until they are asked for.
#[test]
fn as_many_as_are_asked_for() {
    let miles = 1000 * Length::new(63_360, Unit::Inch);
    let sizes = Spacing::equal_parts(2).friendly_sizes(miles, &Tape::sixteenths(), miles).unwrap();
    let eighths = [0, -1, 1, -2, 2].map(|eighths| inches(eighths, 8));
    assert!(sizes.take(5).map(|size| size.change()).eq(eighths));
}

/// Worked by hand: limits that no change, or none of a million nearer ones, keeps to are known without trying them.
#[test]
fn what_no_change_mends_is_known_at_once() {
    let (tape, miles) = (Tape::sixteenths(), 1000 * Length::new(63_360, Unit::Inch));
    let run = miles + whole(1);
    // The held opening is too wide by itself, and so is every other one until the run is 999 miles shorter.
    let held = Spacing::equal_parts(2).hold(0, whole(4)).widest(Widest::GUARD);
    assert_eq!(flat(&sizes(&held, run, &tape, miles)), []);
    let parts = Spacing::equal_parts(2).widest(Widest::GUARD);
    let first = parts.friendly_sizes(run, &tape, miles).unwrap().next().unwrap();
    assert_eq!((first.change(), first.opening()), (inches(63, 8) - run, inches(63, 16)));
    // Judged with a tape that shows yards, every size within a yard of the limit would have to be laid out: 1152 of them, 2000 members each.
    let coarse = Tape::with_step(Unit::Yard.length()).unwrap();
    let judged = Spacing::equal_openings(2000, Length::ZERO).widest(Widest::AtMost(2 * Unit::Yard.length())).as_cut(&coarse);
    let refused = judged.friendly_sizes(miles, &tape, miles).err();
    assert_eq!(refused, Some(SpacingError::TooManyToJudge { members: 2000, most: 4_000_000 }));
}

/// Worked by hand: sizes that lie within a graduation of the tape on either side of a limit must be judged. With 16 members that
/// costs 2 × (16 + 64) gaps each, so 25,000 of them, a thousandth of an inch apart, are as many as may be.
#[test]
fn as_many_as_may_be_judged() {
    let thousandths = Tape::with_step(inches(1, 1000)).unwrap();
    let parts = Spacing::equal_parts(17).widest(Widest::AtMost(whole(20)));
    let boards = Spacing::unequal_members((0..16).map(|board| whole(if board == 0 { 2 } else { 1 })));
    let boards = boards.narrowest(Narrowest::AtLeast(whole(12)));
    let too_many = Some(SpacingError::TooManyToJudge { members: 16, most: 4_000_000 });
    let rows = [
        (&parts, whole(340), inches(25, 2), None),            // over 7.5 in, and up to 32.5 in
        (&parts, whole(340), inches(25_001, 2000), too_many), // over 7.4995 in
        (&boards, whole(357), whole(13), None),               // from 0, not from -1 in, and under 25 in
        (&boards, whole(357), inches(13_001, 1000), too_many),
    ];
    for (spacing, run, step, refused) in rows {
        let judged = spacing.clone().as_cut(&Tape::with_step(step).unwrap());
        assert_eq!(judged.friendly_sizes(run, &thousandths, run).err(), refused, "{step:?}");
    }
}

/// Worked by hand: five million parts of 1/16 in keep well under an inch however they are cut, and are not judged one by one.
#[test]
fn what_is_sure_is_not_judged() {
    let (tape, parts) = (Tape::sixteenths(), Spacing::equal_parts(5_000_000).widest(Widest::AtMost(whole(1))));
    let found = sizes(&parts.as_cut(&tape), whole(312_500), &tape, whole(1));
    assert_eq!(flat(&found), [(Change::Run, Length::ZERO, inches(1, 16))]);
}

/// A spacing of which something may be changed, and how far. Sizes are 48ths of an inch, and so are all changes but those of
/// members, which are a part of that.
#[derive(Clone, Debug)]
struct Case {
    members: usize,
    thickness: Length,
    ends: [End; 2],
    held: Option<(usize, Length)>,
    shares: Option<Vec<u64>>,
    widest: Option<Widest>,
    step: Length,
    limit: Length,
    run: Length,
}

const PART: Length = inches(1, 48);

fn pick<T: Copy>(choices: &[T], g: &mut Gen) -> T {
    choices[usize::arbitrary(g) % choices.len()]
}

fn some_size(g: &mut Gen, most: i64) -> Length {
    i64::from(u16::arbitrary(g)) % (48 * most) * PART
}

impl Arbitrary for Case {
    fn arbitrary(g: &mut Gen) -> Self {
        let members = 1 + usize::from(u8::arbitrary(g) % 5);
        let thicknesses = [inches(3, 4), inches(1, 2), PART, Length::ZERO, some_size(g, 2)];
        let margins = [whole(2), inches(9, 8), some_size(g, 3)];
        let mut end = || pick(&[End::Gap, End::HalfGap, End::Flush, End::Margin(pick(&margins, g))], g);
        let ends = [end(), end()];
        let openings = [whole(3), inches(25, 8), some_size(g, 4)];
        Self {
            members,
            thickness: pick(&thicknesses, g),
            ends,
            held: bool::arbitrary(g).then(|| (usize::arbitrary(g) % (members + 1), pick(&openings, g))),
            shares: bool::arbitrary(g).then(|| (0..=u8::arbitrary(g) % 4).map(|_| u64::from(u8::arbitrary(g) % 4)).collect()),
            widest: bool::arbitrary(g).then(|| Widest::AtMost(some_size(g, 12))),
            step: pick(&[inches(1, 8), inches(1, 4), inches(1, 6)], g),
            limit: some_size(g, 2),
            run: some_size(g, 40) + whole(5),
        }
    }
}

type Found = (i64, Length, Length);

impl Case {
    fn spacing(&self, thickness: Length, changed: Option<(usize, Length)>) -> Spacing {
        let spacing = match &self.shares {
            Some(shares) => Spacing::proportional(shares.iter().copied(), thickness),
            None => Spacing::equal_openings(self.members, thickness),
        };
        let spacing = spacing.near_end(self.ends[0]).far_end(self.ends[1]);
        let held = self.held.into_iter().chain(changed);
        let spacing = held.fold(spacing, |spacing, (after, opening)| spacing.hold(after, opening));
        self.widest.iter().fold(spacing, |spacing, widest| spacing.widest(*widest))
    }

    /// The opening of a layout, if every one of it is whole.
    fn whole(&self, spacing: &Spacing, run: Length) -> Option<Length> {
        let layout = spacing.over(run).ok()?;
        layout.gaps().all(|gap| gap.round(self.step) == Ok(gap)).then_some(layout.opening())
    }

    /// Every change within the limit, tried.
    fn tried(&self) -> BTreeSet<Found> {
        let members = self.members();
        let mut found = BTreeSet::new();
        for change in self.multiples(PART) {
            let run = self.run + change;
            found.extend(self.whole(&self.spacing(self.thickness, None), run).map(|opening| (-2, change, opening)));
            for (after, old) in self.given(members) {
                let spacing = self.spacing(self.thickness, Some((after, old + change)));
                let kind = i64::try_from(after).unwrap();
                found.extend(self.whole(&spacing, self.run).map(|opening| (kind, change, opening)));
            }
        }
        let has_members = members > 0 && !self.thickness.is_zero();
        for change in self.multiples(PART / i64::try_from(members.max(1)).unwrap()).filter(|_| has_members) {
            let spacing = self.spacing(self.thickness + change, None);
            found.extend(self.whole(&spacing, self.run).map(|opening| (-1, change, opening)));
        }
        found
    }

    fn multiples(&self, part: Length) -> impl Iterator<Item = Length> + use<> {
        let most = i64::try_from((self.limit / part).to_integer()).unwrap();
        (-most..=most).map(move |count| count * part)
    }

    fn members(&self) -> usize {
        let closed = self.ends.iter().filter(|end| **end != End::Gap).count();
        self.shares.as_ref().map_or(self.members, |shares| shares.len() - 1 + closed)
    }

    /// The openings that have a given size.
    fn given(&self, members: usize) -> Vec<(usize, Length)> {
        let margin = |end: End, after| if let End::Margin(margin) = end { Some((after, margin)) } else { None };
        let margins = [margin(self.ends[0], 0), margin(self.ends[1], members)].into_iter().flatten();
        let margins = margins.filter(|(after, _)| self.held.is_none_or(|(held, _)| held != *after));
        margins.chain(self.held).collect()
    }

    fn found(&self) -> Option<Vec<Found>> {
        let tape = Tape::with_step(self.step).unwrap();
        let sizes = self.spacing(self.thickness, None).friendly_sizes(self.run, &tape, self.limit).ok()?;
        let kind = |what| match what {
            Change::Run => -2,
            Change::Thickness => -1,
            Change::Opening { after } => i64::try_from(after).unwrap(),
            _ => unreachable!("nothing else changes"),
        };
        Some(sizes.map(|size| (kind(size.what()), size.change(), size.opening())).collect())
    }
}

fn is_what_trying_finds(case: &Case) -> bool {
    // Held where there is no such opening, there is nothing to try either.
    let found = case.found().unwrap_or_default();
    let in_order = found.windows(2).all(|pair| pair[0].1.abs() <= pair[1].1.abs());
    let set: BTreeSet<_> = found.iter().copied().collect();
    in_order && set.len() == found.len() && set == case.tried()
}

properties! {
    fn every_size_is_found_that_trying_finds(case: Case) -> bool {
        is_what_trying_finds(&case)
    }
}
