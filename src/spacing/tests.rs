//! The inner form: every rule that is one of `weight × x + fixed`, not only the equal ones, and how
//! little of it is kept.

use std::vec;
use std::vec::Vec;

use num_rational::Ratio;

use super::pattern::{Gap, Pattern, Segment};
use super::{Edge, Layout, Spacing, SpacingError};
use crate::length::{Length, Unit};
use crate::tape::Tape;

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn gap(weight: (i128, i128), fixed: Length) -> Gap {
    Gap { weight: Ratio::new_raw(weight.0, weight.1), fixed }
}

const fn fixed(fixed: Length) -> Gap {
    gap((0, 1), fixed)
}

/// Members of these widths, each with the gap before it, and the last gap.
fn pattern(members: &[(usize, Gap, Length)], last: Gap) -> Pattern {
    let segments = members.iter().map(|(count, gap, width)| Segment { count: *count, gap: *gap, width: *width }).collect();
    Pattern { segments, last }
}

fn gaps(layout: &Layout) -> Vec<Length> {
    layout.gaps().collect()
}

/// Field note: six drawers between seven members of 3/4 in, each an inch higher than the one above it.
#[test]
fn drawers_that_grow() {
    let rail = inches(3, 4);
    let mut members = vec![(1, Gap::NONE, rail)];
    members.extend((0..6).map(|step| (1, gap((1, 1), inches(step, 1)), rail)));
    let layout = pattern(&members, Gap::NONE).over(inches(48, 1)).unwrap();
    let drawers = [37, 45, 53, 61, 69, 77].map(|eighths| inches(eighths, 8));
    assert_eq!(gaps(&layout)[1..7], drawers);
    assert_eq!(layout.opening(), inches(37, 8));
    // No two drawers are meant to be equal, so nothing is spread; both flush ends are.
    assert_eq!(layout.on(&Tape::sixteenths()).unwrap().spread(), Length::ZERO);
}

/// Worked by hand: 34 1/2 in shared 3 : 2 : 2 between two partitions of 3/4 in.
#[test]
fn shares() {
    let (three, two) = (gap((3, 1), Length::ZERO), gap((2, 1), Length::ZERO));
    let layout = pattern(&[(1, three, inches(3, 4)), (1, two, inches(3, 4))], two).over(inches(36, 1)).unwrap();
    assert_eq!(gaps(&layout), [inches(207, 14), inches(138, 14), inches(138, 14)]);
}

/// Worked by hand: 25, 30 and 36 in, each six fifths of the one before.
#[test]
fn a_progression() {
    let share = |num, den| gap((num, den), Length::ZERO);
    let layout = pattern(&[(1, share(1, 1), Length::ZERO), (1, share(6, 5), Length::ZERO)], share(36, 25));
    assert_eq!(gaps(&layout.over(inches(91, 1)).unwrap()), [25, 30, 36].map(|size| inches(size, 1)));
}

/// Worked by hand: members of 2, 3 and 5 in, four equal openings in 30 in; then one opening held to 8 in.
#[test]
fn unequal_members_and_a_fixed_opening() {
    let members = |held| [(1, Gap::OPEN, inches(2, 1)), (1, held, inches(3, 1)), (1, Gap::OPEN, inches(5, 1))];
    let layout = pattern(&members(Gap::OPEN), Gap::OPEN).over(inches(30, 1)).unwrap();
    assert_eq!(gaps(&layout), [inches(5, 1); 4]);
    assert!(layout.marks().map(|mark| mark.center()).eq([6, 27, 45].map(|place| if place == 6 {
        inches(6, 1)
    } else {
        inches(place, 2)
    })));

    let layout = pattern(&members(fixed(inches(8, 1))), Gap::OPEN).over(inches(30, 1)).unwrap();
    assert_eq!(gaps(&layout), [inches(4, 1), inches(8, 1), inches(4, 1), inches(4, 1)]);
}

/// Common practice, no source: studs of 1 1/2 in at 16 in on center from a flush one, the last bay what is left.
#[test]
fn on_center_with_a_rest() {
    let stud = inches(3, 2);
    let layout = pattern(&[(1, Gap::NONE, stud), (6, fixed(inches(29, 2)), stud)], Gap::OPEN).over(inches(102, 1)).unwrap();
    let centers: Vec<_> = layout.marks().map(|mark| mark.center() - stud / 2).collect();
    assert_eq!(centers, [0, 16, 32, 48, 64, 80, 96].map(|place| inches(place, 1)));
    assert_eq!(layout.opening(), inches(9, 2));
    assert!(layout.on_edge(&Tape::sixteenths(), Edge::Center).unwrap().worst().is_zero());
}

/// Worked by hand: gaps of x, x - 10 and x in a run of 5 in make x 5 in and the middle one 5 in too little.
#[test]
fn a_gap_below_zero() {
    let less = gap((1, 1), inches(-10, 1));
    let shrinking = pattern(&[(1, Gap::OPEN, Length::ZERO), (1, less, Length::ZERO)], Gap::OPEN);
    let run = inches(5, 1);
    assert_eq!(shrinking.over(run), Err(SpacingError::NegativeGap { gap: inches(-5, 1), run }));
    assert_eq!(gaps(&shrinking.over(inches(20, 1)).unwrap()), [10, 0, 10].map(|size| inches(size, 1)));
}

/// Worked by hand: x itself may be below zero where every gap adds to it; only gaps may not.
#[test]
fn an_x_below_zero() {
    let more = gap((1, 1), inches(10, 1));
    let layout = pattern(&[(1, more, Length::ZERO)], more).over(inches(8, 1)).unwrap();
    assert_eq!((gaps(&layout), layout.opening()), (vec![inches(4, 1); 2], inches(-6, 1)));
}

#[test]
fn few_stretches_for_many_members() {
    for members in [1, 10, 1_000_000, usize::MAX - 1] {
        let layout = Spacing::equal_openings(members, Length::ZERO).over(inches(72, 1)).unwrap();
        assert!(layout.stretches.len() <= 2 && layout.stretches.capacity() <= 2);
        assert_eq!((layout.kinds, layout.members()), (1, members));
    }
    // However the members were given: like ones are put together before room is made for them.
    let frames = Spacing::unequal_members([inches(1, 32); 40]).over(inches(72, 1)).unwrap();
    assert_eq!((frames.stretches.len(), frames.stretches.capacity()), (1, 1));
}
