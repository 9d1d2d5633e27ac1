//! What a text could mean, small enough to travel inside an error: up to two numbers that its hint shows.
//! How they came about is left to the reader that refuses, what is said about them to `hint.rs`.

use core::fmt;
use core::num::NonZeroU64;

use super::error::ParseErrorKind as Kind;
use super::number::Number;
use super::scan::{Bytes, Fault};
use crate::length::Unit;

/// `whole + num / den`, of a unit if it has one, packed in 64 bits so that an error stays small. Everything
/// below a million fits, which is all that can be said in words.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(super) struct Reading(NonZeroU64);

/// Bits for the whole number, and for each part of the fraction. The three above them say which unit.
const WHOLE: u32 = 21;
const PART: u32 = 20;

impl Reading {
    /// `None` when the number is too long to be shown.
    pub(super) fn new(number: &Number, unit: Option<Unit>) -> Option<Self> {
        let fits = |value: u128, bits: u32| u64::try_from(value).ok().filter(|value| value >> bits == 0);
        let (whole, num, den) = (fits(number.whole, WHOLE)?, fits(number.num, PART)?, fits(number.den, PART)?);
        let unit = Unit::ALL.iter().zip(1..).find(|(known, _)| unit == Some(**known)).map_or(0, |(_, place)| place);
        NonZeroU64::new(((unit << WHOLE | whole) << PART | num) << PART | den).map(Self)
    }

    /// The whole number and the parts of the fraction.
    pub(super) fn parts(self) -> (u64, u64, u64) {
        let low = |value: u64, bits: u32| value & ((1 << bits) - 1);
        let packed = self.0.get();
        (low(packed >> (2 * PART), WHOLE), low(packed >> PART, PART), low(packed, PART))
    }

    pub(super) fn unit(self) -> Option<Unit> {
        let place = usize::try_from(self.0.get() >> (2 * PART + WHOLE)).ok()?;
        Unit::ALL.get(place.checked_sub(1)?).copied()
    }
}

/// As it would be typed, without its unit.
impl fmt::Display for Reading {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.parts() {
            (whole, 0, _) => write!(out, "{whole}"),
            (0, num, den) => write!(out, "{num}/{den}"),
            (whole, num, den) => write!(out, "{whole} {num}/{den}"),
        }
    }
}

/// A refusal, with what the text could have meant.
#[derive(Clone, Copy)]
pub(super) struct Refusal {
    pub(super) fault: Fault,
    pub(super) readings: [Option<Reading>; 2],
}

impl Refusal {
    pub(super) fn new(kind: Kind, from: Bytes<'_>, until: Bytes<'_>) -> Self {
        Self { fault: Fault { kind, from: from.len(), until: until.len() }, readings: [None; 2] }
    }

    pub(super) const fn with(self, readings: [Option<Reading>; 2]) -> Self {
        Self { readings, ..self }
    }
}

impl From<Fault> for Refusal {
    fn from(fault: Fault) -> Self {
        Self { fault, readings: [None; 2] }
    }
}

impl From<nom::Err<Fault>> for Refusal {
    fn from(error: nom::Err<Fault>) -> Self {
        match error {
            nom::Err::Error(fault) | nom::Err::Failure(fault) => fault.into(),
            // No reader here is a streaming one.
            nom::Err::Incomplete(_) => Fault { kind: Kind::Empty, from: 0, until: 0 }.into(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Reading, Unit};
    use crate::parse::number::{Form, Number};

    #[test]
    fn what_is_packed_comes_out_again() {
        for unit in Unit::ALL.map(Some).into_iter().chain([None]) {
            for (whole, num, den) in [(0, 0, 1), (20, 5, 8), (2_097_151, 999_999, 1_000_000), (7, 0, 1), (0, 1, 1_048_575)] {
                let number = Number { whole, num, den, form: Form::Mixed };
                let reading = Reading::new(&number, unit).unwrap();
                let (w, n, d) = reading.parts();
                assert_eq!((w.into(), n.into(), d.into(), reading.unit()), (whole, num, den, unit));
            }
        }
    }

    #[test]
    fn what_does_not_fit_is_not_shown() {
        let reading = |whole, num, den| Reading::new(&Number { whole, num, den, form: Form::Mixed }, None);
        assert!(reading(2_097_152, 0, 1).is_none());
        assert!(reading(0, 1_048_576, 1).is_none());
        assert!(reading(0, 1, u128::MAX).is_none());
    }
}
