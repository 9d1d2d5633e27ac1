//! The marks of equal parts, each rounded from its own exact place, beside floats multiplied and rounded, which are wrong now and
//! then, and beside machine ratios. How often they are wrong is counted here, too.

use std::hint::black_box;

use num_rational::Ratio;
use scantling::{Layout, Length, OnTape, Spacing, Tape, Unit};

use crate::support::pair::{Case, Subject};
use crate::support::{Random, SEED};

/// In sixteenths.
const RUN: i64 = 37_557;

/// So many marks at least in one pass, or the clock would be timed.
const MARKS: usize = 20_000;

/// The marks of so many equal parts, over and over.
pub fn marks(parts: usize) -> Case {
    let exact: Vec<i64> = (1..parts).map(|part| exact(RUN, parts, part)).collect();
    let layout: &Layout = Box::leak(Box::new(Spacing::equal_parts(parts).over(sixteenths(RUN)).expect("it fits")));
    let marked: &OnTape = Box::leak(Box::new(layout.on(&Tape::sixteenths()).expect("it can be read")));
    let ours = || marked.marks().map(|mark| mark.reading().mark());
    assert!(ours().eq(exact.iter().map(|mark| sixteenths(*mark))));
    let by_floats = by_floats(RUN, parts);
    // Where a place lies between two marks, floats may take the other.
    let wrong = (1..parts).zip(&exact).filter(|(part, mark)| by_floats(*part) != **mark).count();
    assert!(wrong * 100 < parts, "{wrong} of {parts}");
    let mut subjects = vec![
        Subject::new("length", move || each_mark(parts, ours)),
        Subject::new("float", move || each_mark(parts, || (1..parts).map(by_floats))),
        Subject::new("length in a loop", move || each_in_a_loop(parts, ours)),
    ];
    // Ratios of a million places would take all day.
    if parts < 2_000 {
        subjects.extend(by_ratios(parts, &exact));
    }
    Case::new("marks", exact.len().to_string(), exact.len() * MARKS.div_ceil(parts), subjects)
}

/// The first is how it is written down, a mark in inches; the second counts sixteenths as the floats do, and spares itself two
/// operations.
fn by_ratios(parts: usize, exact: &[i64]) -> [Subject; 2] {
    let step = Ratio::new(i128::from(RUN), parts as i128);
    let inches = step / 16;
    let in_inches = move |part| (inches * part as i128 * 16).round() / 16;
    let in_sixteenths = move |part| (step * part as i128).round();
    for (part, mark) in (1..parts).zip(exact) {
        assert_eq!((in_inches(part) * 16, in_sixteenths(part)), (i128::from(*mark).into(), i128::from(*mark).into()));
    }
    [
        Subject::new("ratio of inches", move || each_mark(parts, || (1..parts).map(in_inches))),
        Subject::new("ratio", move || each_mark(parts, || (1..parts).map(in_sixteenths))),
    ]
}

/// Each is made in full: of what nobody looks at, a compiler makes no more than the next one needs. By `for_each`, as `marks` tells
/// those who have many.
fn each_mark<I: Iterator>(parts: usize, marks: impl Fn() -> I) {
    (0..MARKS.div_ceil(parts)).for_each(|_| marks().for_each(|mark| _ = black_box(mark)));
}

fn each_in_a_loop<I: Iterator>(parts: usize, marks: impl Fn() -> I) {
    for _ in 0..MARKS.div_ceil(parts) {
        for mark in marks() {
            black_box(mark);
        }
    }
}

const fn sixteenths(count: i64) -> Length {
    Length::fraction(count, 16, Unit::Inch)
}

/// The mark of a part in sixteenths, by whole numbers: twice the place and half a step up, rounded down.
#[allow(clippy::cast_possible_wrap)] // small
const fn exact(run: i64, parts: usize, part: usize) -> i64 {
    let (parts, part) = (parts as i64, part as i64);
    (2 * part * run + parts).div_euclid(2 * parts)
}

/// The same as one would write it with floats, the run in inches.
#[allow(clippy::cast_possible_truncation, clippy::cast_precision_loss)] // what floats do
fn by_floats(run: i64, parts: usize) -> impl Fn(usize) -> i64 + Copy {
    let step = run as f64 / 16.0 / parts as f64;
    move |part| (part as f64 * step * 16.0).round() as i64
}

/// Of all marks of some layouts, how many ours are wrong, and how many of floats, against whole numbers.
pub struct Wrong {
    pub marks: usize,
    pub ours: usize,
    pub floats: usize,
}

/// Layouts of 2 to 61 parts over runs in sixteenths up to 200 in.
pub fn wrong_marks(layouts: usize) -> Wrong {
    let (tape, mut random) = (Tape::sixteenths(), Random::new(SEED));
    let mut wrong = Wrong { marks: 0, ours: 0, floats: 0 };
    for _ in 0..layouts {
        #[allow(clippy::cast_possible_truncation, clippy::cast_possible_wrap)] // small
        let (run, parts) = (1 + random.below(3_200) as i64, 2 + random.below(60) as usize);
        let layout = Spacing::equal_parts(parts).over(sixteenths(run)).expect("it fits");
        let marked = layout.on(&tape).expect("it can be read");
        let (mut marks, by_floats) = (marked.marks(), by_floats(run, parts));
        for part in 1..parts {
            let exact = exact(run, parts, part);
            let ours = marks.next().expect("a mark of every part").reading().mark();
            wrong.marks += 1;
            wrong.ours += usize::from(ours != sixteenths(exact));
            wrong.floats += usize::from(by_floats(part) != exact);
        }
    }
    wrong
}
