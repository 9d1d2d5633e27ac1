//! Collects every reading of one spoken number and says whether they agree. Which groupings there are is
//! left to `grammar.rs`, what a refusal says to `hint.rs`.

use crate::length::Unit;
use crate::parse::number::{Form, Number};
use crate::parse::value::ticks;

/// How far a reading can be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Standing {
    Sound,
    /// Half a reading: the `sixty-fourths` of which the count was not heard. It is none by itself, but
    /// spoils another that nobody would say, such as 60/4.
    Doubtful,
    /// One that hardly anybody means, such as one of five hundred. It is none by itself, but spoils another that is as long.
    Rare,
}

/// What the longest reading of some words comes to, and how many words it takes.
#[derive(Clone, Copy, Debug)]
pub(super) enum Outcome {
    Nothing,
    One(usize, Number),
    /// Two readings of different value.
    Two(usize, Number, Number),
    /// A fraction part of one or more, and no other reading.
    Improper(usize, Number),
}

impl Outcome {
    pub(super) const fn length(&self) -> Option<usize> {
        match self {
            Self::Nothing => None,
            Self::One(length, _) | Self::Two(length, ..) | Self::Improper(length, _) => Some(*length),
        }
    }
}

/// The readings so far: only the longest matter, for a shorter one leaves words over.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Readings {
    length: usize,
    first: Option<Number>,
    second: Option<Number>,
    improper: Option<Number>,
    doubtful: Option<(usize, Number)>,
    rare: Option<(usize, Number)>,
}

impl Readings {
    pub(super) fn add(&mut self, length: usize, number: Number, standing: Standing) {
        match standing {
            Standing::Doubtful => self.doubtful = Some((length, number)),
            Standing::Rare => self.rare = Some((length, number)),
            Standing::Sound if length > self.length => {
                *self = Self { length, doubtful: self.doubtful, rare: self.rare, ..Self::default() };
                self.add_sound(number);
            }
            Standing::Sound if length == self.length => self.add_sound(number),
            Standing::Sound => {}
        }
    }

    fn add_sound(&mut self, number: Number) {
        match self.first {
            _ if number.form == Form::Mixed && number.num >= number.den => self.improper = Some(number),
            None => self.first = Some(number),
            Some(first) if self.second.is_none() && differ(&first, &number) => self.second = Some(number),
            Some(_) => {}
        }
    }

    pub(super) fn outcome(self) -> Outcome {
        let as_long = |reading: Option<(usize, Number)>| reading.filter(|(length, _)| *length == self.length).map(|(_, it)| it);
        let doubtful = |first: Number| as_long(self.doubtful).filter(|_| first.num >= first.den);
        let spoiled = |first: Number| doubtful(first).or(as_long(self.rare)).filter(|other| differ(&first, other));
        match (self.first, self.improper) {
            (Some(first), _) => match self.second.or(spoiled(first)) {
                Some(second) => Outcome::Two(self.length, first, second),
                None => Outcome::One(self.length, first),
            },
            (None, Some(improper)) => Outcome::Improper(self.length, improper),
            (None, None) => Outcome::Nothing,
        }
    }
}

/// Whether two numbers of one unit are different lengths.
fn differ(one: &Number, other: &Number) -> bool {
    ticks(one, Unit::Inch) != ticks(other, Unit::Inch)
}
