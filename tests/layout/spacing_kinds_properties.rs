//! What holds for every kind of spacing, whatever the numbers: the one solver against plain big rationals, rows on center
//! against standing members up one by one, counts against trying all of them, and the sums.

use num_rational::{BigRational, Ratio};
use quickcheck::{Arbitrary, Gen, TestResult};
use scantling::{
    Chain, ChainLink, Edge, End, First, Growth, Layout, Length, Narrowest, Remainder, RoundingMode, Spacing, SpacingError, Tape,
    Unit, Widest,
};

use crate::support::Any;
use crate::support::chance::random;

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

fn big(length: Length) -> BigRational {
    let inches = length.in_unit(Unit::Inch);
    BigRational::new((*inches.numer()).into(), (*inches.denom()).into())
}

fn whole(number: i64) -> BigRational {
    BigRational::from_integer(number.into())
}

fn pick<T: Copy>(choices: &[T], g: &mut Gen) -> T {
    choices[usize::arbitrary(g) % choices.len()]
}

/// A length from nothing to some inches: a shop fraction, a tenth of a millimeter, or one that no rule has.
fn some_length(g: &mut Gen, most: u16) -> Length {
    let count = i64::from(u16::arbitrary(g) % (most * 64));
    match u8::arbitrary(g) % 8 {
        0 => Length::ZERO,
        1 => Length::fraction(count, 10, Unit::Millimeter),
        2 => inches(count, 64 + u64::from(u8::arbitrary(g))),
        _ => inches(count, 64),
    }
}

fn some_end(g: &mut Gen) -> End {
    let margin = some_length(g, 9);
    pick(&[End::Gap, End::Gap, End::HalfGap, End::Flush, End::Margin(margin)], g)
}

/// A gap by its definition, `weight × x + fixed`.
#[derive(Clone, Debug)]
struct ModelGap {
    weight: BigRational,
    fixed: BigRational,
}

impl ModelGap {
    fn new(weight: i64, fixed: BigRational) -> Self {
        Self { weight: whole(weight), fixed }
    }

    fn of(end: End) -> Self {
        match end {
            End::HalfGap => Self { weight: BigRational::new(1.into(), 2.into()), fixed: whole(0) },
            End::Flush => Self::new(0, whole(0)),
            End::Margin(margin) => Self::new(0, big(margin)),
            _ => Self::new(1, whole(0)),
        }
    }
}

/// A spacing, and what it means: every gap, and every width between two of them.
#[derive(Clone, Debug)]
struct Case {
    spacing: Spacing,
    gaps: Vec<ModelGap>,
    widths: Vec<Length>,
    run: Length,
}

impl Arbitrary for Case {
    fn arbitrary(g: &mut Gen) -> Self {
        let ends = [some_end(g), some_end(g)];
        let (spacing, gaps, widths) = match u8::arbitrary(g) % 4 {
            0 => equal(g, ends),
            1 => unequal(g, ends),
            2 => proportional(g, ends),
            _ => drawers(g, ends),
        };
        let case = Self { spacing: spacing.near_end(ends[0]).far_end(ends[1]), gaps, widths, run: some_length(g, 900) };
        case.held(g)
    }
}

type Meaning = (Spacing, Vec<ModelGap>, Vec<Length>);

fn equal(g: &mut Gen, ends: [End; 2]) -> Meaning {
    let (members, thickness) = (1 + usize::from(u8::arbitrary(g) % 20), some_length(g, 9));
    (Spacing::equal_openings(members, thickness), between(members, ends), vec![thickness; members])
}

fn unequal(g: &mut Gen, ends: [End; 2]) -> Meaning {
    let widths: Vec<_> = (0..=u8::arbitrary(g) % 20).map(|_| some_length(g, 9)).collect();
    (Spacing::unequal_members(widths.iter().copied()), between(widths.len(), ends), widths)
}

fn between(members: usize, [near, far]: [End; 2]) -> Vec<ModelGap> {
    let inner = vec![ModelGap::new(1, whole(0)); members - 1];
    [vec![ModelGap::of(near)], inner, vec![ModelGap::of(far)]].concat()
}

fn proportional(g: &mut Gen, ends: [End; 2]) -> Meaning {
    let shares: Vec<_> = (0..=u8::arbitrary(g) % 9).map(|_| u64::from(u8::arbitrary(g) % 7)).collect();
    let divider = some_length(g, 2);
    let gaps = shares.iter().map(|share| ModelGap::new(i64::try_from(*share).unwrap(), whole(0))).collect();
    closed(Spacing::proportional(shares, divider), gaps, divider, ends)
}

fn drawers(g: &mut Gen, ends: [End; 2]) -> Meaning {
    let (count, divider, size) = (1 + usize::from(u8::arbitrary(g) % 7), some_length(g, 2), some_length(g, 9));
    let ratio = Ratio::new(1 + i128::from(u8::arbitrary(g) % 9), 1 + i128::from(u8::arbitrary(g) % 9));
    let growths = [Growth::Step(size), Growth::Step(-size), Growth::Ratio(ratio), Growth::Top(size), Growth::Bottom(size)];
    let growth = pick(&growths, g);
    let steps = |number: usize| i64::try_from(number).unwrap();
    let gap = |above: usize| match growth {
        Growth::Step(step) => ModelGap::new(1, big(step) * whole(steps(above))),
        Growth::Ratio(ratio) => {
            let ratio = BigRational::new((*ratio.numer()).into(), (*ratio.denom()).into());
            ModelGap { weight: ratio.pow(i32::try_from(above).unwrap()), fixed: whole(0) }
        }
        Growth::Top(top) => ModelGap::new(steps(above), big(top)),
        Growth::Bottom(bottom) => ModelGap::new(steps(count - 1 - above), big(bottom)),
        _ => unreachable!("no other growth was picked"),
    };
    let mut gaps: Vec<_> = (0..count).map(gap).collect();
    if bool::arbitrary(g) {
        return closed(Spacing::drawers_from_top(count, divider, growth), gaps, divider, ends);
    }
    gaps.reverse();
    closed(Spacing::drawers_from_bottom(count, divider, growth), gaps, divider, ends)
}

/// An end that is not open has one divider more.
fn closed(spacing: Spacing, mut gaps: Vec<ModelGap>, divider: Length, [near, far]: [End; 2]) -> Meaning {
    if near != End::Gap {
        gaps.insert(0, ModelGap::of(near));
    }
    if far != End::Gap {
        gaps.push(ModelGap::of(far));
    }
    let widths = vec![divider; gaps.len() - 1];
    (spacing, gaps, widths)
}

impl Case {
    /// The same with some openings held to a size.
    fn held(mut self, g: &mut Gen) -> Self {
        for _ in 0..u8::arbitrary(g) % 3 {
            let (after, opening) = (usize::arbitrary(g) % self.gaps.len(), some_length(g, 9));
            self.spacing = self.spacing.hold(after, opening);
            self.gaps[after] = ModelGap::new(0, big(opening));
        }
        self
    }

    /// Every gap, from the definition, in big rationals; `None` where the run cannot be divided so.
    fn solved(&self) -> Option<Vec<BigRational>> {
        let weight: BigRational = self.gaps.iter().map(|gap| gap.weight.clone()).sum();
        let fixed: BigRational = self.gaps.iter().map(|gap| gap.fixed.clone()).sum();
        let spare = big(self.run) - fixed - self.widths.iter().map(|width| big(*width)).sum::<BigRational>();
        let x = match weight == whole(0) {
            true if spare == whole(0) => whole(0),
            true => return None,
            false => spare / weight,
        };
        let gaps: Vec<_> = self.gaps.iter().map(|gap| &gap.weight * &x + &gap.fixed).collect();
        gaps.iter().all(|gap| *gap >= whole(0)).then_some(gaps)
    }
}

fn is_as_solved(case: &Case) -> bool {
    match (case.spacing.over(case.run), case.solved()) {
        (Ok(layout), Some(gaps)) => stands(&layout, &gaps, &case.widths),
        (Err(SpacingError::OutOfRange { .. }), _) => true,
        (Err(error), None) => !matches!(error, SpacingError::GapTooWide { .. } | SpacingError::GapTooNarrow { .. }),
        _ => false,
    }
}

/// Whether every member is where these gaps and widths put it.
fn stands(layout: &Layout, gaps: &[BigRational], widths: &[Length]) -> bool {
    let mut face = whole(0);
    let edges = gaps.iter().zip(widths).map(|(gap, width)| {
        let near = &face + gap;
        face = &near + big(*width);
        (near, face.clone())
    });
    let edges: Vec<_> = edges.collect();
    layout.marks().map(|mark| (big(mark.near()), big(mark.far()))).eq(edges)
        && layout.gaps().map(big).eq(gaps.iter().cloned())
        && layout.members() == widths.len()
}

properties! {
    fn the_solver_agrees_with_big_rationals(case: Case) -> bool {
        is_as_solved(&case)
    }

    fn members_and_gaps_are_the_run(case: Case) -> TestResult {
        let Ok(layout) = case.spacing.over(case.run) else { return TestResult::discard() };
        let sum = layout.gaps().sum::<Length>() + case.widths.iter().copied().sum::<Length>();
        TestResult::from_bool(sum == case.run && layout.gaps().all(|gap| !gap.is_negative()))
    }

    fn a_reversed_layout_is_a_mirror_image(case: Case) -> TestResult {
        let Ok(layout) = case.spacing.over(case.run) else { return TestResult::discard() };
        let reversed = layout.reversed();
        let mirrored = layout.marks().rev().map(|mark| (case.run - mark.far(), case.run - mark.near()));
        let is_mirrored = reversed.marks().map(|mark| (mark.near(), mark.far())).eq(mirrored);
        TestResult::from_bool(is_mirrored && reversed.gaps().eq(layout.gaps().rev()) && reversed.reversed() == layout)
    }

    fn every_mark_and_gap_as_cut_is_near(case: Case, edge: usize, fine: bool) -> TestResult {
        let Ok(layout) = case.spacing.over(case.run) else { return TestResult::discard() };
        let tape = if fine { Tape::half_millimeters() } else { Tape::sixteenths() };
        let edge = [Edge::Near, Edge::Center, Edge::Far][edge % 3];
        let Ok(marked) = layout.on_edge(&tape, edge) else { return TestResult::discard() };
        let near = marked.marks().all(|mark| 2 * mark.reading().leftover().abs() <= tape.step());
        let cut = marked.gaps().zip(layout.gaps()).all(|(cut, gap)| (cut - gap).abs() <= tape.step());
        let one_by_one = (0..=layout.members()).map(|after| marked.gap(after).unwrap()).eq(marked.gaps());
        TestResult::from_bool(near && cut && one_by_one && marked.gap(layout.members() + 1).is_none())
    }
}

/// A row on center, with a run that holds some of them.
#[derive(Clone, Debug)]
struct RowCase {
    pitch: Length,
    thickness: Length,
    first: First,
    ends: [End; 2],
    run: Length,
}

impl Arbitrary for RowCase {
    fn arbitrary(g: &mut Gen) -> Self {
        let thickness = some_length(g, 3);
        let pitch = thickness + some_length(g, 20) + inches(1, 8);
        let (at, off) = (some_length(g, 30), First::OffCenterLine);
        let first = pick(&[First::CenterAt(at), First::FaceAt(at), off(at), off(Length::ZERO), First::Shared], g);
        let ends = [some_end(g), some_end(g)].map(|end| if end == End::HalfGap { End::Flush } else { end });
        Self { pitch, thickness, first, ends, run: some_length(g, 200) }
    }
}

/// The room in which a row stands, in big rationals, and what closes it.
struct Site {
    pitch: BigRational,
    half: BigRational,
    near: Option<BigRational>,
    far: Option<BigRational>,
    from: BigRational,
    to: BigRational,
    middle: BigRational,
}

impl RowCase {
    fn layout(&self) -> Result<Layout, SpacingError> {
        let row = Spacing::on_center(self.pitch, self.thickness, self.first);
        row.near_end(self.ends[0]).far_end(self.ends[1]).over(self.run)
    }

    fn site(&self) -> Site {
        let (thick, run) = (big(self.thickness), big(self.run));
        let margin = |end: End| match end {
            End::Gap => None,
            End::Margin(margin) => Some(big(margin)),
            _ => Some(whole(0)),
        };
        let near = margin(self.ends[0]);
        let far = margin(self.ends[1]).map(|margin| &run - margin - &thick);
        let (from, to) = (near.clone().map_or(whole(0), |near| near + &thick), far.clone().unwrap_or(run.clone()));
        Site { pitch: big(self.pitch), half: thick / whole(2), near, far, from, to, middle: run / whole(2) }
    }

    /// The near edges, by standing members up one by one; `None` where two of them run into each other, or into an end.
    fn stood_up(&self) -> Option<Vec<BigRational>> {
        let site = self.site();
        let mut edges: Vec<_> = site.near.iter().cloned().collect();
        edges.extend(site.regular(self.first).into_iter().map(|center| center - &site.half));
        edges.extend(site.far.clone());
        let thick = &site.half * whole(2);
        let begins_well = edges.first().is_none_or(|first| *first >= whole(0));
        let ends_well = edges.last().is_none_or(|last| last + &thick <= big(self.run));
        let are_apart = edges.windows(2).all(|pair| &pair[1] - &pair[0] >= thick);
        (begins_well && ends_well && are_apart).then_some(edges)
    }
}

impl Site {
    /// The centers of the members between those that close the run.
    fn regular(&self, first: First) -> Vec<BigRational> {
        match first {
            First::CenterAt(at) => self.outward(big(at), self.to.clone(), self.far.is_some()),
            First::FaceAt(at) => self.outward(big(at) + &self.half, self.to.clone(), self.far.is_some()),
            First::OffCenterLine(off) => {
                let beyond = if off == Length::ZERO { self.pitch.clone() } else { big(off) };
                let left = self.outward(big(off), &self.middle - &self.from, self.near.is_some());
                let right = self.outward(beyond, &self.to - &self.middle, self.far.is_some());
                let left = left.iter().rev().map(|center| &self.middle - center);
                left.chain(right.iter().map(|center| &self.middle + center)).collect()
            }
            _ => {
                let centers = self.outward(self.half.clone(), &self.to - &self.from, false);
                let rest = centers.last().map_or(whole(0), |last| (&self.to - &self.from - last - &self.half) / whole(2));
                centers.into_iter().map(|center| &self.from + &rest + center).collect()
            }
        }
    }

    /// Centers by their distance from where the row begins: those that stand clear of the limit, and one set back against
    /// what closes the run there, if it is due before that one.
    fn outward(&self, first: BigRational, limit: BigRational, is_closed: bool) -> Vec<BigRational> {
        let mut due = first;
        let mut centers = Vec::new();
        while &due + &self.half <= limit {
            centers.push(due.clone());
            due += &self.pitch;
        }
        if is_closed && due < &limit + &self.half {
            centers.push(limit - &self.half);
        }
        centers
    }
}

fn is_as_stood_up(case: &RowCase) -> bool {
    match (case.layout(), case.stood_up()) {
        (Ok(layout), Some(edges)) => layout.marks().map(|mark| big(mark.near())).eq(edges),
        (Err(SpacingError::NegativeGap { .. } | SpacingError::DoesNotFit { .. }), None) => true,
        _ => false,
    }
}

properties! {
    fn rows_on_center_stand_where_they_are_stood_up(case: RowCase) -> bool {
        is_as_stood_up(&case)
    }

    fn no_bay_is_longer_than_the_pitch(case: RowCase) -> TestResult {
        let (Ok(layout), First::FaceAt(Length::ZERO) | First::OffCenterLine(Length::ZERO)) = (case.layout(), case.first) else {
            return TestResult::discard();
        };
        let centers: Vec<_> = layout.marks().map(|mark| mark.center()).collect();
        TestResult::from_bool(centers.windows(2).all(|pair| pair[1] - pair[0] <= case.pitch))
    }
}

/// A run to be filled with as few, as many or as near as can be.
#[derive(Clone, Debug)]
struct CountCase {
    thickness: Length,
    limit: Length,
    met: bool,
    other: Option<Length>,
    ends: [End; 2],
    cut: Option<(Tape, Edge)>,
    run: Length,
}

/// Runs are under 60 in and limits an eighth at least: no more than this many are ever asked for.
const ENOUGH: usize = 1000;

impl Arbitrary for CountCase {
    fn arbitrary(g: &mut Gen) -> Self {
        let modes = [RoundingMode::TiesUp, RoundingMode::TiesEven, RoundingMode::Down, RoundingMode::Up];
        let edge = pick(&[Edge::Near, Edge::Center, Edge::Far], g);
        let step = pick(&[inches(1, 16), inches(1, 4), inches(2, 3)], g);
        let tape = Tape::with_step(step).unwrap().mode(pick(&modes, g));
        let limits = [inches(i64::from(u8::arbitrary(g) % 64), 16), some_length(g, 6)];
        Self {
            thickness: some_length(g, 2),
            limit: pick(&limits, g) + inches(1, 8),
            met: bool::arbitrary(g),
            other: bool::arbitrary(g).then(|| some_length(g, 6)),
            ends: [some_end(g), some_end(g)],
            cut: bool::arbitrary(g).then_some((tape, edge)),
            run: some_length(g, 60) + inches(1, 64),
        }
    }
}

impl CountCase {
    fn with(&self, spacing: Spacing) -> Spacing {
        let spacing = spacing.near_end(self.ends[0]).far_end(self.ends[1]);
        if let Some((tape, edge)) = &self.cut { spacing.as_cut_at(tape, *edge) } else { spacing }
    }

    fn layout(&self, members: usize) -> Result<Layout, SpacingError> {
        Spacing::equal_openings(members, self.thickness).near_end(self.ends[0]).far_end(self.ends[1]).over(self.run)
    }

    /// Whether this many do, by the definition.
    fn does(&self, members: usize, widest: Option<Widest>, narrowest: Option<Narrowest>) -> bool {
        let Ok(layout) = self.layout(members) else { return false };
        let is_apart = |after| after == 0 && self.ends[0] != End::Gap || after == members && self.ends[1] != End::Gap;
        let is_good = |(after, gap): (usize, Length)| {
            widest.is_none_or(|widest| widest.allows(gap)) && narrowest.is_none_or(|least| is_apart(after) || least.allows(gap))
        };
        match &self.cut {
            Some((tape, edge)) => layout.on_edge(tape, *edge).unwrap().gaps().enumerate().all(is_good),
            None => layout.gaps().enumerate().all(is_good),
        }
    }

    /// Whether the count is the one that trying finds, or the tape too coarse to try, or so nearly too coarse that thousands
    /// of counts would have to be judged.
    fn is_found(&self, spacing: &Spacing, tried: impl Fn() -> Option<usize>) -> bool {
        let found = spacing.over(self.run).map(|layout| layout.members());
        let limits = [Some(self.limit), self.other];
        let is_too_fine = |(tape, _): &(Tape, Edge)| limits.iter().flatten().any(|limit| *limit <= tape.step());
        if self.cut.as_ref().is_some_and(is_too_fine) {
            return matches!(found, Err(SpacingError::BelowGraduation { .. }));
        }
        if let (Err(SpacingError::TooManyToJudge { .. }), Some((tape, _))) = (&found, &self.cut) {
            let nearest = limits.iter().flatten().map(|limit| *limit - tape.step()).min();
            return nearest.is_some_and(|left| left * 3000 < self.run);
        }
        found.ok() == tried()
    }
}

fn fewest_is_right(case: &CountCase) -> bool {
    let widest = if case.met { Widest::AtMost(case.limit) } else { Widest::Under(case.limit) };
    let narrowest = case.other.map(Narrowest::AtLeast);
    let spacing = case.with(Spacing::fewest_members(case.thickness, widest));
    let spacing = narrowest.iter().fold(spacing, |spacing, narrowest| spacing.narrowest(*narrowest));
    case.is_found(&spacing, || (0..ENOUGH).find(|members| case.does(*members, Some(widest), narrowest)))
}

fn most_is_right(case: &CountCase) -> bool {
    let narrowest = if case.met { Narrowest::AtLeast(case.limit) } else { Narrowest::Over(case.limit) };
    let widest = case.other.map(Widest::AtMost);
    let spacing = case.with(Spacing::most_members(case.thickness, narrowest));
    let spacing = widest.iter().fold(spacing, |spacing, widest| spacing.widest(*widest));
    case.is_found(&spacing, || (0..ENOUGH).rev().find(|members| case.does(*members, widest, Some(narrowest))))
}

/// The nearest opening by trying all, the narrower of two that are as near.
fn nearest_is_right(case: &CountCase) -> bool {
    let spacing = Spacing::nearest_openings(case.thickness, case.limit).near_end(case.ends[0]).far_end(case.ends[1]);
    let openings = (0..ENOUGH).filter_map(|members| Some(case.layout(members).ok()?.opening()));
    let tried = openings.min_by_key(|opening| ((*opening - case.limit).abs(), *opening));
    spacing.over(case.run).ok().map(|layout| layout.opening()) == tried
}

properties! {
    fn the_fewest_are_what_trying_finds(case: CountCase) -> bool {
        fewest_is_right(&case)
    }

    fn the_most_are_what_trying_finds(case: CountCase) -> bool {
        most_is_right(&case)
    }

    fn the_nearest_are_what_trying_finds(case: CountCase) -> TestResult {
        // Beside a single member, half a gap and no other stands for a full one that is not there.
        let halves = case.ends.iter().filter(|end| **end == End::HalfGap).count();
        if halves == 1 && !case.ends.contains(&End::Gap) {
            return TestResult::discard();
        }
        TestResult::from_bool(nearest_is_right(&case))
    }

    fn a_spacer_block_fits(case: Case, remainder: usize) -> TestResult {
        let remainder = [Remainder::Last, Remainder::First, Remainder::Split][remainder % 3];
        let Ok(block) = case.spacing.spacer_block(case.run, &Tape::sixteenths(), remainder) else { return TestResult::discard() };
        let exact = case.spacing.over(case.run).unwrap();
        let pairs: Vec<_> = block.layout().gaps().zip(exact.gaps()).collect();
        let moved = pairs.iter().filter(|(set, gap)| set != gap);
        TestResult::from_bool(
            block.block().round(inches(1, 16)) == Ok(block.block())
                && block.left() >= block.block()
                && pairs.iter().any(|(_, gap)| *gap >= block.block() && *gap - block.block() < inches(1, 16))
                && pairs.iter().filter(|(set, _)| *set == block.block()).count() >= block.times()
                && moved.into_iter().all(|(set, _)| *set == block.block() || *set == block.left())
                && block.layout().gaps().sum::<Length>() == exact.gaps().sum::<Length>(),
        )
    }

    fn chains_add_up_as_printed(lengths: Vec<u16>, start: u16, fine: bool) -> bool {
        let links: Vec<_> = lengths.iter().map(|count| inches((*count).into(), 97)).collect();
        let start = inches(start.into(), 31);
        let tape = if fine { Tape::sixty_fourths() } else { Tape::eighths() };
        let chain = Chain::new(&links).starting_at(start);
        let printed: Vec<_> = chain.on(&tape).map(Result::unwrap).collect();
        let near = tape.read(start).unwrap().mark();
        let end = tape.read(chain.checked_end().unwrap()).unwrap().mark();
        let totals: Vec<_> = printed.iter().map(|link| link.total().mark()).collect();
        let shown: Vec<_> = printed.iter().map(ChainLink::printed).collect();
        near + shown.iter().copied().sum::<Length>() == end
            && printed.iter().all(|link| (link.printed() - link.exact()).abs() <= tape.step())
            && Chain::new(&shown).starting_at(near).slips(&totals).unwrap().is_empty()
    }

    fn every_slip_is_found(lengths: Vec<u16>, slips: Vec<(u8, i8)>) -> bool {
        let links: Vec<_> = lengths.iter().map(|count| inches((*count).into(), 16)).collect();
        let totals: Vec<_> = (1..=links.len()).map(|count| links[..count].iter().copied().sum::<Length>()).collect();
        let mut printed = links.clone();
        for (place, off) in slips.iter().filter(|_| !links.is_empty()) {
            printed[usize::from(*place) % links.len()] += inches((*off).into(), 16);
        }
        let expected = links.iter().zip(&printed).enumerate().filter(|(_, (link, printed))| link != printed);
        let expected = expected.map(|(index, (link, printed))| (index + 1, *printed, *link, *printed - *link));
        let found = Chain::new(&printed).slips(&totals).unwrap();
        found.iter().map(|slip| (slip.number(), slip.printed(), slip.between(), slip.off())).eq(expected)
    }
}

/// Every kind with these lengths, of whatever sign and size.
fn every_kind(lengths: &[Length; 4], count: usize, end: usize) -> Vec<Spacing> {
    let [size, other, third, ratio] = *lengths;
    let ends = [End::Gap, End::HalfGap, End::Flush, End::Margin(other)];
    let ratio = ratio.in_unit(Unit::Inch);
    let few = count % 40;
    let growths = [Growth::Step(other), Growth::Ratio(ratio), Growth::Top(other), Growth::Bottom(third)];
    let firsts = [First::CenterAt(third), First::FaceAt(third), First::OffCenterLine(third), First::Shared];
    let mut kinds = vec![
        Spacing::equal_openings(count, size),
        Spacing::fewest_members(size, Widest::Under(other)),
        Spacing::most_members(size, Narrowest::AtLeast(other)),
        Spacing::nearest_openings(size, other),
        Spacing::unequal_members(lengths.iter().copied().cycle().take(few)),
        Spacing::proportional((0..few).map(|share| share.wrapping_mul(count) as u64), size),
    ];
    kinds.extend(growths.map(|growth| Spacing::drawers_from_bottom(few, size, growth)));
    kinds.extend(firsts.map(|first| Spacing::on_center(other, size, first)));
    let ended = |kind: Spacing| kind.near_end(ends[end % 4]).far_end(ends[end / 4 % 4]);
    let held = |kind: Spacing| if end % 3 == 0 { kind.hold(count % 7, third) } else { kind };
    kinds.into_iter().map(ended).map(held).collect()
}

/// Any numbers at all: an answer that holds or an error, never a panic, and never a long wait.
fn answers_or_refuses(lengths: (Any, Any, Any, Any), run: Any, step: Any, choice: (usize, usize, bool, bool)) -> bool {
    let (count, end, is_sane, is_cut) = choice;
    let sane = |length: Any| if is_sane { length.0.abs() } else { length.0 };
    let lengths = [lengths.0, lengths.1, lengths.2, lengths.3].map(sane);
    let (run, Ok(tape)) = (sane(run), Tape::with_step(sane(step))) else { return true };
    every_kind(&lengths, count >> (end % 64), end).into_iter().all(|kind| {
        let kind = if is_cut { kind.widest(Widest::AtMost(lengths[2])).as_cut(&tape) } else { kind };
        kind.over(run).iter().all(|layout| can_be_built(layout) && can_be_marked(layout, &tape))
            && kind.spacer_block(run, &tape, Remainder::Split).iter().all(|block| block.left() >= block.block())
            && friendly_sizes_are_in_order(&kind, run, &tape, lengths[3])
    })
}

/// The gaps at either end: none is below zero, and all are the same from the far end.
fn can_be_built(layout: &Layout) -> bool {
    let (reversed, first) = (layout.reversed(), || layout.gaps().take(3));
    first().chain(layout.gaps().rev().take(3)).all(|gap| !gap.is_negative()) && first().eq(reversed.gaps().rev().take(3))
}

/// The last mark is within half a graduation, where a tape can mark the layout at all.
fn can_be_marked(layout: &Layout, tape: &Tape) -> bool {
    let (Ok(marked), Some(half)) = (layout.on(tape), tape.step().checked_div(2)) else { return true };
    marked.mark(layout.members()).is_none_or(|last| last.reading().leftover().abs() <= half)
}

fn friendly_sizes_are_in_order(kind: &Spacing, run: Length, tape: &Tape, limit: Length) -> bool {
    let Ok(sizes) = kind.friendly_sizes(run, tape, limit) else { return true };
    let first: Vec<_> = sizes.take(5).collect();
    first.iter().all(|size| size.change().abs() <= limit && !size.size().is_negative())
        && first.windows(2).all(|pair| pair[0].change().abs() <= pair[1].change().abs())
}

#[test]
fn nothing_panics() {
    type Lengths = (Any, Any, Any, Any);
    random().tests(2000).quickcheck(answers_or_refuses as fn(Lengths, Any, Any, (usize, usize, bool, bool)) -> bool);
}
