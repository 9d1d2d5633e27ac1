//! What a tape with a certain graduation looks like: which of its lines are longer, which have a number,
//! where its feet or meters lie. A line is known by its count of graduations from the zero of the tape.
//! How long the lines are drawn is left to `characters.rs` and `svg/`.

use crate::length::{Length, Unit, gcd};

/// The lines of a tape.
///
/// Rules with inches halve them, down to a 64th; metric ones have a number every 10 mm, a longer line every
/// 5 mm, and lines every millimeter or half millimeter: common practice, no source. Any other graduation
/// is drawn plainly: a number at every whole inch or millimeter that falls on a line, all other lines alike.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Rule {
    pub(super) step: Length,
    pub(super) kind: Kind,
    /// What the numbers count: inches or millimeters.
    pub(super) unit: Unit,
    /// From one number to the next, and the same in graduations.
    number: i128,
    per_number: i128,
    /// How many graduations apart the shorter lines lie, each size in turn.
    finer: &'static [i128],
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kind {
    Inches,
    Millimeters,
    Plain,
}

const HALVES: &[i128] = &[32, 16, 8, 4, 2, 1];

impl Rule {
    /// For a step above zero.
    pub(super) fn of(step: Length) -> Self {
        let (inches, per_inch) = step.in_unit_parts(Unit::Inch);
        let (millimeters, per_millimeter) = step.in_unit_parts(Unit::Millimeter);
        // The simpler fraction tells in which unit a graduation was meant.
        let (unit, count, parts) = if per_millimeter < per_inch {
            (Unit::Millimeter, millimeters, per_millimeter)
        } else {
            (Unit::Inch, inches, per_inch)
        };
        let rule = |kind, number, per_number, finer| Self { step, kind, unit, number, per_number, finer };
        #[allow(clippy::cast_possible_wrap)] // under 2^115, see `in_unit_parts`
        match (unit, count, parts as i128) {
            (Unit::Inch, 1, parts @ 1..=64) if parts.count_ones() == 1 => {
                rule(Kind::Inches, 1, parts, &HALVES[HALVES.len() - parts.trailing_zeros() as usize..])
            }
            (Unit::Millimeter, 10, 1) => rule(Kind::Millimeters, 10, 1, &[]),
            (Unit::Millimeter, 5, 1) => rule(Kind::Millimeters, 10, 2, &[1]),
            (Unit::Millimeter, 1, 1) => rule(Kind::Millimeters, 10, 10, &[5, 1]),
            (Unit::Millimeter, 1, 2) => rule(Kind::Millimeters, 10, 20, &[10, 2, 1]),
            (_, count, 1) => rule(Kind::Plain, count, 1, &[]),
            (_, count, parts) => rule(Kind::Plain, count, parts, &[1]),
        }
    }

    /// How many sizes of lines there are.
    pub(super) fn sizes(&self) -> usize {
        self.finer.len() + 1
    }

    /// How many graduations apart the lines of one size and above lie. The numbered lines are of size zero.
    pub(super) fn interval(&self, size: usize) -> i128 {
        if size == 0 { self.per_number } else { self.finer[size - 1] }
    }

    /// The size of a line, zero for the longest.
    pub(super) fn size(&self, line: i128) -> usize {
        (0..self.sizes()).find(|size| line % self.interval(*size) == 0).unwrap_or(self.finer.len())
    }

    /// The number at a line, if it has one.
    pub(super) fn number(&self, line: i128) -> Option<i128> {
        // Lines past what a length can hold are not drawn far, and inches and millimeters are many ticks.
        (line % self.per_number == 0).then(|| line / self.per_number * self.number)
    }

    /// The unit that is flagged beside the numbers, and how many of their unit it has.
    pub(super) const fn flagged(&self) -> (Unit, i128) {
        match self.unit {
            Unit::Millimeter => (Unit::Meter, 1000),
            _ => (Unit::Foot, 12),
        }
    }

    /// The whole feet or meters at a line, if it lies on some.
    pub(super) fn flag(&self, line: i128) -> Option<i128> {
        let (_, many) = self.flagged();
        self.number(line).filter(|number| *number != 0 && number % many == 0).map(|number| number / many)
    }

    /// How many graduations apart whole feet or meters lie.
    pub(super) fn per_flag(&self) -> i128 {
        let (_, many) = self.flagged();
        #[allow(clippy::cast_possible_wrap)] // at most a thousand
        let shared = gcd(many.unsigned_abs(), self.number.unsigned_abs()) as i128;
        self.per_number * (many / shared)
    }
}
