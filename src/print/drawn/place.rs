//! Where a line lies to those around it that are easily found: on a number, on a longer line between two
//! numbers, or so many lines from one of these. Saying it is left to `words.rs`.

use super::rule::{Kind, Rule};

/// The way to a line, as it is walked away from the zero of the tape, on either side of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Place {
    /// It has a number.
    Numbered,
    /// It is longer than most.
    Landmark(Landmark),
    /// So many lines behind a landmark, or in front of it. `alone` where no two landmarks have more
    /// than one line between them.
    Counted { from: Landmark, lines: i128, past: bool, alone: bool },
}

/// A part of the way from the number below to the number above, these two among them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Landmark {
    pub(super) part: i128,
    pub(super) parts: i128,
}

/// Three lines lie between two landmarks in sixteenths, four in millimeters: up to here they are
/// counted from the near landmark, however close the far one is.
const COUNTED_FORWARD: i128 = 4;

/// More than these are not counted by eye.
const MOST_COUNTED: i128 = 9;

impl Rule {
    /// How many graduations apart the landmarks lie: quarters of an inch, 5 mm, or the numbers themselves.
    fn per_landmark(&self) -> i128 {
        let sizes = match self.kind {
            Kind::Inches => 3,
            Kind::Millimeters => 2,
            Kind::Plain => 1,
        };
        self.interval(self.sizes().min(sizes) - 1)
    }

    pub(super) fn place(&self, line: i128) -> Place {
        let (whole, apart) = (self.interval(0), self.per_landmark());
        let rest = line.abs() % whole;
        let landmark = |part| Landmark { part, parts: whole / apart };
        match (rest / apart, rest % apart) {
            (0, 0) => Place::Numbered,
            (part, 0) => Place::Landmark(landmark(part)),
            (part, lines) => {
                let (ahead, alone) = (lines <= COUNTED_FORWARD.max(apart / 2), apart == 2);
                let (from, lines) = if ahead { (part, lines) } else { (part + 1, apart - lines) };
                Place::Counted { from: landmark(from), lines, past: ahead, alone }
            }
        }
    }

    /// The lines that are counted on the way to a line, that one left out, each with its count.
    pub(super) fn counted(&self, line: i128) -> impl Iterator<Item = (i128, i128)> {
        let (lines, back) = match self.place(line) {
            Place::Counted { lines, past, .. } if lines <= MOST_COUNTED => (lines, past == (line > 0)),
            _ => (0, false),
        };
        let landmark = if back { line - lines } else { line + lines };
        (1..lines).map(move |count| (if back { landmark + count } else { landmark - count }, count))
    }
}
