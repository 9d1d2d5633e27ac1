//! The marks of equal parts, each rounded from its own exact place, beside floats multiplied and rounded, which are wrong now and
//! then, and beside machine ratios. How often they are wrong is counted here, too.

use num_rational::Ratio;
use scantling::{Layout, Length, Spacing, Tape, Unit};

use crate::support::pair::{Case, Subject};
use crate::support::{Random, SEED};

const RUN: Length = Length::fraction(37_557, 16, Unit::Inch);

/// So many marks at least in one pass, or the clock would be timed.
const MARKS: usize = 20_000;

/// The marks of so many equal parts, over and over.
pub fn marks(parts: usize) -> Case {
    let tape = Tape::sixteenths();
    let layout: &Layout = Box::leak(Box::new(Spacing::equal_parts(parts).over(RUN).expect("it fits")));
    let marked = layout.on(&tape).expect("it can be read");
    for mark in marked.marks().take(1_000) {
        assert_eq!(Ok(mark.reading()), tape.read(mark.reading().true_position()));
    }
    #[allow(clippy::cast_precision_loss)] // what floats do
    let step = RUN.to_f64_lossy(Unit::Inch) / parts as f64;
    let inches = RUN.in_unit(Unit::Inch) / parts as i128;
    let ratio = inches * 16;
    let times = MARKS.div_ceil(parts);
    let mut subjects = vec![
        Subject::new("length", move || {
            let mut last = Length::ZERO;
            (0..times).for_each(|_| marked.marks().for_each(|mark| last = mark.reading().mark()));
            last
        }),
        #[allow(clippy::cast_precision_loss, clippy::cast_possible_truncation)]
        Subject::new("float", move || {
            let mark = move |part| (part as f64 * step * 16.0).round() as i64;
            (0..times).filter_map(|_| (1..parts).map(mark).max()).max()
        }),
    ];
    // Ratios of a million places would take all day. The first is how it is written down, a mark in inches; the second
    // counts sixteenths as the floats do, and spares itself two operations.
    if parts < 2_000 {
        let in_inches = move |part| (inches * Ratio::from(part as i128) * 16).round() / 16;
        let in_sixteenths = move |part| (ratio * Ratio::from(part as i128)).round();
        subjects.push(Subject::new("ratio of inches", move || (0..times).filter_map(|_| (1..parts).map(in_inches).max()).max()));
        subjects.push(Subject::new("ratio", move || (0..times).filter_map(|_| (1..parts).map(in_sixteenths).max()).max()));
    }
    Case::new("marks", (parts - 1).to_string(), (parts - 1) * times, subjects)
}

/// Of all marks of some layouts, how many ours are wrong, and how many of floats: against whole numbers, twice the place in
/// sixteenths and half a step up, rounded down.
pub struct Wrong {
    pub marks: usize,
    pub ours: usize,
    pub floats: usize,
}

/// Layouts of 2 to 61 parts over runs in sixteenths up to 200 in.
#[allow(clippy::cast_possible_truncation, clippy::cast_possible_wrap, clippy::cast_precision_loss, clippy::cast_sign_loss)] // small
pub fn wrong_marks(layouts: usize) -> Wrong {
    let (tape, mut random) = (Tape::sixteenths(), Random::new(SEED));
    let mut wrong = Wrong { marks: 0, ours: 0, floats: 0 };
    for _ in 0..layouts {
        let (sixteenths, parts) = (1 + random.below(3_200) as i64, 2 + random.below(60) as i64);
        let run = Length::fraction(sixteenths, 16, Unit::Inch);
        let layout = Spacing::equal_parts(parts as usize).over(run).expect("it fits");
        let marked = layout.on(&tape).expect("it can be read");
        let step = sixteenths as f64 / 16.0 / parts as f64;
        for (part, mark) in (1..parts).zip(marked.marks()) {
            let exact = (2 * part * sixteenths + parts).div_euclid(2 * parts);
            wrong.marks += 1;
            wrong.ours += usize::from(mark.reading().mark() != Length::fraction(exact, 16, Unit::Inch));
            wrong.floats += usize::from((part as f64 * step * 16.0).round() as i64 != exact);
        }
    }
    wrong
}
