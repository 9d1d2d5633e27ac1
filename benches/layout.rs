//! What laying out costs: the marks of equal parts, each rounded from its own exact place, beside floats multiplied
//! and rounded, which are wrong now and then, and beside machine ratios.

mod support;

use criterion::{Criterion, criterion_group, criterion_main};
use num_rational::Ratio;
use scantling::{Length, Spacing, Tape, Unit};

use support::{Subject, side_by_side};

const RUN: Length = Length::fraction(37_557, 16, Unit::Inch);

criterion_group!(benches, marks);
criterion_main!(benches);

fn marks(criterion: &mut Criterion) {
    for (case, parts) in [("10", 11), ("1000", 1_001), ("1000000", 1_000_001)] {
        let tape = Tape::sixteenths();
        let layout = Spacing::equal_parts(parts).over(RUN).expect("it fits");
        let marked = layout.on(&tape).expect("it can be read");
        for mark in marked.marks().take(1_000) {
            assert_eq!(Ok(mark.reading()), tape.read(mark.reading().true_position()));
        }
        #[allow(clippy::cast_precision_loss)] // what floats do
        let step = RUN.to_f64_lossy(Unit::Inch) / parts as f64;
        let inches = RUN.in_unit(Unit::Inch) / parts as i128;
        let ratio = inches * 16;
        let mut subjects = vec![
            Subject::new("length", || {
                let mut last = Length::ZERO;
                marked.marks().for_each(|mark| last = mark.reading().mark());
                last
            }),
            #[allow(clippy::cast_precision_loss, clippy::cast_possible_truncation)]
            Subject::new("float", || (1..parts).map(|part| (part as f64 * step * 16.0).round() as i64).max()),
        ];
        // Ratios of a million places would take all day. The first is how it is written down, a mark in inches; the second
        // counts sixteenths as the floats do, and spares itself two operations.
        if parts < 2_000 {
            subjects.push(Subject::new("ratio of inches", || {
                (1..parts).map(|part| (inches * Ratio::from(part as i128) * 16).round() / 16).max()
            }));
            subjects.push(Subject::new("ratio", || (1..parts).map(|part| (ratio * Ratio::from(part as i128)).round()).max()));
        }
        side_by_side(criterion, "marks", case, parts - 1, subjects);
    }
}
