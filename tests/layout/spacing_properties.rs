//! What holds for every spacing, whatever the numbers: the sum, the tape's promise, the solver against
//! plain big-integer arithmetic, and stepping against reading each position afresh.

use num_rational::{BigRational, Ratio};
use quickcheck::{Arbitrary, Gen};
use scantling::{Edge, End, Layout, Length, MemberMark, OnTape, RoundingMode, Spacing, Tape, Unit};

use crate::support::chance::random;

const MODES: [RoundingMode; 6] = [
    RoundingMode::TiesUp,
    RoundingMode::TiesEven,
    RoundingMode::TiesAway,
    RoundingMode::Down,
    RoundingMode::Up,
    RoundingMode::TowardZero,
];

const EDGES: [Edge; 3] = [Edge::Near, Edge::Center, Edge::Far];

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

/// A spacing with the run made to fit it, so that no case is thrown away.
#[derive(Clone, Debug)]
struct Case {
    members: usize,
    thickness: Length,
    near: End,
    far: End,
    run: Length,
}

/// A length from nothing to about a hundred inches: a shop fraction, a whole number of millimeters or
/// tenths of them, or something no rule has.
fn some_length(g: &mut Gen) -> Length {
    let count = i64::from(u16::arbitrary(g) % 6400);
    match u8::arbitrary(g) % 8 {
        0 => Length::ZERO,
        1 => Length::fraction(count, 10, Unit::Millimeter),
        2 => inches(count, 64 + u64::from(u16::arbitrary(g))),
        3 => inches(count, 1 + u64::from(u8::arbitrary(g))),
        _ => inches(count, 64),
    }
}

fn some_end(g: &mut Gen) -> End {
    match u8::arbitrary(g) % 5 {
        0 | 1 => End::Gap,
        2 => End::HalfGap,
        3 => End::Flush,
        _ => End::Margin(some_length(g)),
    }
}

impl Arbitrary for Case {
    fn arbitrary(g: &mut Gen) -> Self {
        let members = usize::from(u8::arbitrary(g) % 40);
        let (thickness, near, far) = (some_length(g), some_end(g), some_end(g));
        let case = Self { members, thickness, near, far, run: Length::ZERO };
        let spare = if case.weight() == Ratio::from_integer(0) { Length::ZERO } else { some_length(g) };
        Self { run: case.need() + spare, ..case }
    }
}

impl Case {
    fn layout(&self) -> Layout {
        let spacing = Spacing::equal_openings(self.members, self.thickness).near_end(self.near).far_end(self.far);
        spacing.over(self.run).unwrap_or_else(|error| panic!("{self:?}: {error}"))
    }

    /// What is not shared out. Ends have nothing to keep clear of when there is no member.
    fn need(&self) -> Length {
        let margin = |end| if let End::Margin(margin) = end { margin } else { Length::ZERO };
        if self.members == 0 {
            Length::ZERO
        } else {
            i64::try_from(self.members).unwrap() * self.thickness + margin(self.near) + margin(self.far)
        }
    }

    /// How many full gaps there are.
    fn weight(&self) -> Ratio<i128> {
        let weight = |end| match end {
            End::Gap => Ratio::from_integer(1),
            End::HalfGap => Ratio::new(1, 2),
            _ => Ratio::from_integer(0),
        };
        let ends = weight(self.near) + weight(self.far);
        match self.members {
            0 if ends > Ratio::from_integer(0) => Ratio::from_integer(1),
            0 => Ratio::from_integer(0),
            members => ends + Ratio::from_integer(members as i128 - 1),
        }
    }

    /// The end that the gap with so many members before it lies at; the inner ones are like `End::Gap`.
    fn end(&self, index: usize) -> End {
        let end = if index == 0 { self.near } else { self.far };
        if index == 0 || index == self.members { end } else { End::Gap }
    }
}

/// A tape of any graduation, offset and mode.
#[derive(Clone, Debug)]
struct AnyTape(Tape);

impl Arbitrary for AnyTape {
    fn arbitrary(g: &mut Gen) -> Self {
        let step = [inches(1, 16), inches(1, 32), Length::new(1, Unit::Millimeter), some_length(g)][usize::arbitrary(g) % 4];
        let tape = Tape::with_step(step).unwrap_or_default().mode(MODES[usize::arbitrary(g) % 6]);
        let offset = [Length::ZERO, inches(1, 1), some_length(g), -some_length(g)][usize::arbitrary(g) % 4];
        Self(tape.offset(offset))
    }
}

fn big(length: Length) -> BigRational {
    let inches = length.in_unit(Unit::Inch);
    BigRational::new((*inches.numer()).into(), (*inches.denom()).into())
}

fn count(number: usize) -> BigRational {
    BigRational::from_integer(number.into())
}

/// Where marks and gaps must be, from the definition, in big integers.
fn agrees_with_big_integers(case: &Case) -> bool {
    let layout = case.layout();
    let weight = BigRational::new((*case.weight().numer()).into(), (*case.weight().denom()).into());
    let opening = if weight == count(0) { count(0) } else { (big(case.run) - big(case.need())) / weight };
    let half = BigRational::new(1.into(), 2.into());
    let gap = |index| match case.end(index) {
        _ if case.members == 0 => big(case.run),
        End::HalfGap => &opening * &half,
        End::Flush => count(0),
        End::Margin(margin) => big(margin),
        _ => opening.clone(),
    };
    let near = |index: usize| gap(0) + (&opening + big(case.thickness)) * count(index);
    let is_right = |(index, mark): (usize, MemberMark)| {
        mark.number() == index + 1
            && big(mark.near()) == near(index)
            && big(mark.far()) == near(index) + big(case.thickness)
            && big(mark.center()) == near(index) + big(case.thickness) * &half
            && layout.mark(index + 1) == Some(mark)
    };
    big(layout.opening()) == opening
        && layout.members() == case.members
        && layout.marks().enumerate().all(is_right)
        && layout.gaps().enumerate().all(|(index, length)| big(length) == gap(index) && layout.gap(index) == Some(length))
}

/// Every way to a mark gives what the tape reads at the exact position.
fn steps_as_it_reads(case: &Case, tape: Tape, edge: Edge) -> bool {
    let layout = case.layout();
    let marked = layout.on_edge(&tape, edge).unwrap();
    let expected: Vec<_> = layout.marks().map(|mark| (mark.number(), tape.read(mark.at(edge)).unwrap())).collect();
    let mut folded = Vec::new();
    marked.marks().for_each(|mark| folded.push((mark.number(), mark.reading())));
    let mut begun = marked.marks();
    let mut half_folded: Vec<_> = begun.by_ref().take(case.members / 2).map(|mark| (mark.number(), mark.reading())).collect();
    begun.for_each(|mark| half_folded.push((mark.number(), mark.reading())));
    folded == expected
        && half_folded == expected
        && marked.marks().map(|mark| (mark.number(), mark.reading())).eq(expected.iter().copied())
        && expected.iter().all(|(number, reading)| marked.mark(*number).is_some_and(|mark| mark.reading() == *reading))
        && marked.marks().len() == case.members
        && figures_are_right(case, &layout, &marked)
}

/// Gaps, spread and worst error by the definition: from the mark of one member, with its true thickness, to the
/// mark of the next.
fn figures_are_right(case: &Case, layout: &Layout, marked: &OnTape) -> bool {
    let mut face = Length::ZERO;
    let mut gaps = Vec::new();
    let mut worst = Length::ZERO;
    for (mark, on_tape) in layout.marks().zip(marked.marks()) {
        let near = on_tape.reading().mark() - (mark.at(marked.edge()) - mark.near());
        gaps.push(near - face);
        face = near + case.thickness;
        worst = worst.max(on_tape.reading().leftover().abs());
    }
    gaps.push(layout.run() - face);
    marked.gaps().eq(gaps.iter().copied()) && marked.worst() == worst && marked.spread() == spread(case, &gaps)
}

fn spread(case: &Case, gaps: &[Length]) -> Length {
    let kind = |index| match case.end(index) {
        End::Margin(margin) if margin.is_zero() => End::Flush,
        end => end,
    };
    let pairs = (0..gaps.len()).flat_map(|a| (0..gaps.len()).map(move |b| (a, b)));
    pairs.filter(|(a, b)| kind(*a) == kind(*b)).map(|(a, b)| gaps[a] - gaps[b]).max().unwrap()
}

properties! {
    fn parts_add_up_to_the_run(case: Case) -> bool {
        let layout = case.layout();
        let members = i64::try_from(case.members).unwrap() * case.thickness;
        layout.gaps().sum::<Length>() + members == case.run && layout.gaps().all(|gap| !gap.is_negative())
    }

    fn the_solver_agrees_with_big_integers(case: Case) -> bool {
        agrees_with_big_integers(&case)
    }

    fn both_directions_meet(case: Case) -> bool {
        let layout = case.layout();
        let mut marks: Vec<_> = layout.marks().rev().collect();
        marks.reverse();
        let mut places = vec![Length::ZERO; case.members];
        layout.fill(&mut places).unwrap();
        layout.marks().eq(marks) && layout.marks().map(|mark| mark.near()).eq(places) && layout.marks().len() == case.members
    }

    fn stepping_agrees_with_reading(case: Case, tape: AnyTape, edge: usize) -> bool {
        steps_as_it_reads(&case, tape.0, EDGES[edge % 3])
    }

    fn every_mark_lies_within_half_a_graduation(case: Case, tape: AnyTape, edge: usize) -> bool {
        let layout = case.layout();
        let nearest = [RoundingMode::TiesUp, RoundingMode::TiesEven, RoundingMode::TiesAway].contains(&tape.0.rounding_mode());
        let marked = layout.on_edge(&tape.0, EDGES[edge % 3]).unwrap();
        let good = |off: Length| if nearest { 2 * off <= tape.0.step() } else { off < tape.0.step() };
        marked.marks().all(|mark| good(mark.reading().leftover().abs())) && good(marked.worst())
    }

    fn steps_of_equal_pitch_differ_by_one_graduation(case: Case, tape: AnyTape, edge: usize) -> bool {
        let layout = case.layout();
        let tape = tape.0.mode(RoundingMode::TiesUp);
        let marked = layout.on_edge(&tape, EDGES[edge % 3]).unwrap();
        let marks: Vec<_> = marked.marks().map(|mark| mark.reading().mark()).collect();
        let steps: Vec<_> = marks.windows(2).map(|pair| pair[1] - pair[0]).collect();
        steps.iter().all(|a| steps.iter().all(|b| *a - *b <= tape.step()))
    }

    fn equal_gaps_as_cut_differ_by_one_and_a_half(case: Case, tape: AnyTape, edge: usize) -> bool {
        let layout = case.layout();
        let tape = tape.0.mode(MODES[edge % 3]);
        let marked = layout.on_edge(&tape, EDGES[edge / 3 % 3]).unwrap();
        let bound = if tape.rounding_mode() == RoundingMode::TiesUp { 3 } else { 4 };
        2 * marked.spread() <= bound * tape.step()
    }
}

properties! {
    /// A run of a hundred miles, so that the counts need more than 64 bits.
    fn stepping_agrees_with_reading_past_64_bits(case: Case, tape: AnyTape, edge: usize) -> bool {
        let far = Case { run: case.run + Length::new(176_000, Unit::Yard), ..case };
        // Without a free gap the run cannot grow; and the very finest of graduations are refused over so long a one.
        let is_refused = far.weight() == Ratio::from_integer(0) || far.layout().on(&tape.0).is_err();
        is_refused || steps_as_it_reads(&far, tape.0, EDGES[edge % 3])
    }
}

/// Rests of nearly 63 bits: one fits in 64, two of them together do not.
#[test]
fn stepping_agrees_with_reading_at_the_brim() {
    let tick = inches(1, 54_918_864_000_000);
    let case = Case { members: 12_497, thickness: Length::ZERO, near: End::Margin(tick), far: End::Gap, run: inches(80_000, 1) };
    let layout = case.layout();
    let tape = Tape::with_step(inches(10, 1)).unwrap();
    let mut marks = layout.marks();
    layout.on(&tape).unwrap().marks().for_each(|mark| assert_eq!(Ok(mark.reading()), tape.read(marks.next().unwrap().near())));
    assert_eq!(marks.len(), 0);
}

#[test]
fn a_graduation_past_all_sense() {
    let layout = Spacing::equal_openings(5, inches(3, 4)).over(inches(144, 1)).unwrap();
    let coarse = Tape::with_step(inches(1_000_000_000, 1)).unwrap();
    assert!(layout.on(&coarse).unwrap().marks().all(|mark| mark.reading().mark().is_zero()));
}

/// Any length at all, from the smallest to the largest that can be held, and everyday ones among them.
#[derive(Clone, Copy, Debug)]
struct Wild(Length);

impl Arbitrary for Wild {
    fn arbitrary(g: &mut Gen) -> Self {
        if u8::arbitrary(g) % 2 == 0 {
            return Self(some_length(g));
        }
        let den = [1, 1 + i128::from(u8::arbitrary(g)), i128::from(u64::arbitrary(g)) + 1][usize::arbitrary(g) % 3];
        let num = i128::arbitrary(g) >> (u32::arbitrary(g) % 128);
        let longest = if num < 0 { Length::MIN } else { Length::MAX };
        Self(Length::try_from_ratio(Ratio::new_raw(num, den), Unit::Inch).unwrap_or(longest))
    }
}

/// A choice of ends, edge, mode and magnitude.
type Choice = (usize, usize, usize, bool);

/// Any numbers at all: an answer or an error, never a panic, and never a long wait.
fn answers_or_refuses(members: usize, lengths: (Wild, Wild, Wild), tape: (Wild, Wild, Wild), choice: Choice) -> bool {
    let (ends_of, edge, mode, is_sane) = choice;
    // Half of the cases are made to get past the first refusals.
    let length = |wild: Wild| if is_sane { wild.0.abs() } else { wild.0 };
    let members = members >> (ends_of / 16 % 64);
    let thickness = if is_sane { Length::ZERO } else { length(lengths.0) };
    let ends = [End::Gap, End::HalfGap, End::Flush, End::Margin(length(lengths.2))];
    let spacing = Spacing::equal_openings(members, thickness).near_end(ends[ends_of % 4]).far_end(ends[ends_of / 4 % 4]);
    let (Ok(layout), Ok(on)) = (spacing.over(length(lengths.1)), Tape::with_step(length(tape.0))) else { return true };
    let on = on.offset(tape.1.0).mode(MODES[mode % 6]);
    let on = if mode % 5 == 0 { on.length(tape.2.0) } else { on };
    let outer = || layout.marks().take(3).chain(layout.marks().rev().take(3)).chain(layout.mark(members / 2));
    let gaps = layout.gaps().take(3).chain(layout.gaps().rev().take(3)).chain(layout.gap(members / 2));
    let Ok(marked) = layout.on_edge(&on, EDGES[edge % 3]) else {
        return gaps.chain(outer().map(|mark| mark.center())).count() > 0;
    };
    let is_right = |mark: MemberMark| {
        let reading = marked.mark(mark.number()).unwrap().reading();
        reading.true_position() == mark.at(EDGES[edge % 3]) && reading.leftover().abs() < on.step()
    };
    let is_short = members <= 1000;
    // Toward zero, the marks on one side of the tape's zero are strong and those on the other side shy.
    let widest = if MODES[mode % 6] == RoundingMode::TowardZero { 3 } else { 2 };
    outer().all(is_right)
        && marked.gaps().take(3).count() > 0
        && (!is_short || marked.worst() < on.step() && on.step().checked_mul(widest).is_none_or(|most| marked.spread() <= most))
}

#[test]
fn toward_zero_across_zero_differs_by_up_to_three_graduations() {
    let layout = Spacing::equal_openings(2, Length::ZERO).over(inches(54, 1)).unwrap();
    // Worked by hand: 18 and 36 read -9 and 9 from 27, and toward zero by tens both are 0: cut at 27.
    let tape = Tape::with_step(inches(10, 1)).unwrap().offset(inches(-27, 1)).mode(RoundingMode::TowardZero);
    let marked = layout.on(&tape).unwrap();
    assert_eq!(marked.gaps().collect::<Vec<_>>(), [inches(27, 1), Length::ZERO, inches(27, 1)]);
    assert_eq!(marked.spread(), inches(27, 1));
}

#[test]
fn nothing_panics() {
    type Lengths = (Wild, Wild, Wild);
    random().tests(5000).quickcheck(answers_or_refuses as fn(usize, Lengths, Lengths, Choice) -> bool);
}

/// Twenty thousand runs of many members, by whole numbers of their own: `floor((2 × place + step) / (2 × step))`. Not one
/// mark is wrong; of floats that multiply and round, some are.
#[test]
fn no_mark_is_wrong() {
    let (mut marks, mut wrong, mut wrong_by_float) = (0, 0, 0);
    let mut state = 20_000_u64;
    let mut next = |below: u64| {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        i64::try_from((state >> 33) % below).unwrap()
    };
    for _ in 0..20_000 {
        let (run, parts) = (1 + next(64 * 240), 2 + next(61));
        let layout = Spacing::equal_parts(usize::try_from(parts).unwrap()).over(inches(run, 64)).unwrap();
        for mark in layout.on(&Tape::sixteenths()).unwrap().marks() {
            let part = i64::try_from(mark.number()).unwrap();
            // A place in sixteenths is part × run / (4 × parts).
            let sixteenths = (2 * part * run + 4 * parts).div_euclid(8 * parts);
            marks += 1;
            wrong += u32::from(mark.reading().mark() != inches(sixteenths, 16));
            wrong_by_float += u32::from(float_sixteenths(run, parts, part) != sixteenths);
        }
    }
    assert!(marks > 500_000 && wrong_by_float > 0, "{marks} marks, {wrong_by_float} wrong by floats");
    assert_eq!(wrong, 0);
}

#[allow(clippy::cast_precision_loss, clippy::cast_possible_truncation)] // what floats do
fn float_sixteenths(run: i64, parts: i64, part: i64) -> i64 {
    let step = run as f64 / 64.0 / parts as f64;
    (part as f64 * step * 16.0).round() as i64
}
