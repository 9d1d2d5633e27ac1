//! A value on the way through a calculation, and what two of them come to: dimensions are checked at every
//! step, and every refusal points at the operand to blame. The arithmetic itself is left to `quantity.rs`.

use super::operator::Operator;
use super::quantity::Quantity;
use super::readings::Shape;
use crate::length::{Length, Unit};
use crate::parse::error::ParseErrorKind as Kind;
use crate::parse::refuse::fault;
use crate::parse::scan::{Bytes, Fault};
use crate::parse::written::Warning;

/// Which units were written in a piece of text. The greater one wins when two pieces come together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Units {
    /// None: a bare number, which may still become a length.
    None,
    /// The default unit alone, which a bare number beside it then takes.
    Default,
    Other,
}

/// A quantity, and the piece of text that it comes from.
#[derive(Clone, Copy)]
pub(super) struct Value<'a> {
    pub(super) quantity: Quantity,
    pub(super) units: Units,
    pub(super) shape: Shape,
    /// What is suspicious about the first of its lengths that is.
    pub(super) warning: Option<Warning>,
    pub(super) start: Bytes<'a>,
    /// The text behind it.
    pub(super) end: Bytes<'a>,
}

impl<'a> Value<'a> {
    /// A length that all of a text was read as.
    pub(super) const fn whole(length: Length, text: Bytes<'a>) -> Self {
        let (_, end) = text.split_at(text.len());
        let quantity = Quantity::Length(length);
        Self { quantity, units: Units::Other, shape: Shape::Other, warning: None, start: text, end }
    }

    fn blame(&self, kind: Kind) -> Fault {
        fault(kind, self.start, self.end)
    }

    /// The same with its sign turned, from its sign on.
    pub(super) fn negated(self, start: Bytes<'a>) -> Result<Self, Fault> {
        match self.quantity.checked_neg() {
            Some(quantity) => Ok(Self { quantity, start, ..self }),
            None => Err(self.blame(Kind::ResultOutOfRange)),
        }
    }

    /// As a length, for which a bare number takes the default unit.
    pub(super) fn length(&self, default_unit: Unit) -> Result<Length, Fault> {
        match self.quantity {
            Quantity::Length(length) => Ok(length),
            Quantity::Number(number) if self.units == Units::None => {
                Length::try_from_ratio(number, default_unit).map_err(|_| self.blame(Kind::ResultOutOfRange))
            }
            Quantity::Number(_) => Err(self.blame(Kind::NumberResult)),
            Quantity::Area(_) => Err(self.blame(Kind::AreaResult)),
            Quantity::Volume(_) => Err(self.blame(Kind::VolumeResult)),
        }
    }

    /// This and another value, by one sign.
    pub(super) fn combine(self, operator: Operator, other: Self, default_unit: Unit) -> Result<Self, Fault> {
        let answer = match operator {
            Operator::Plus => self.alike(&other, default_unit).map(|(a, b)| a.checked_add(b)),
            Operator::Minus => self.alike(&other, default_unit).map(|(a, b)| a.checked_sub(b)),
            Operator::Times => self.product(&other),
            Operator::Over => self.quotient(&other),
        };
        match answer? {
            Some(quantity) => {
                let (units, warning) = (self.units.max(other.units), self.warning.or(other.warning));
                Ok(Self { quantity, units, shape: Shape::Other, warning, end: other.end, ..self })
            }
            None => Err(fault(Kind::ResultOutOfRange, self.start, other.end)),
        }
    }

    /// Both as quantities that can be added.
    fn alike(&self, other: &Self, default_unit: Unit) -> Result<(Quantity, Quantity), Fault> {
        match (self.quantity, other.quantity) {
            (Quantity::Number(_), Quantity::Length(_)) => Ok((self.beside(other, default_unit)?, other.quantity)),
            (Quantity::Length(_), Quantity::Number(_)) => Ok((self.quantity, other.beside(self, default_unit)?)),
            (a, b) if a.dimension() == b.dimension() => Ok((a, b)),
            (Quantity::Number(_), _) => Err(self.blame(Kind::NumberInSum)),
            (_, Quantity::Number(_)) => Err(other.blame(Kind::NumberInSum)),
            // In a shop's sum the lengths are what was meant.
            (a, b) if a.dimension() > b.dimension() => Err(self.blame(Kind::UnlikeSum)),
            _ => Err(other.blame(Kind::UnlikeSum)),
        }
    }

    /// A number as a length beside another length.
    fn beside(&self, length: &Self, default_unit: Unit) -> Result<Quantity, Fault> {
        match (self.units, length.units) {
            (Units::None, Units::Default) => self.length(default_unit).map(Quantity::Length),
            (Units::None, _) => Err(self.blame(Kind::BareNumber)),
            _ => Err(self.blame(Kind::NumberInSum)),
        }
    }

    fn product(&self, other: &Self) -> Result<Option<Quantity>, Fault> {
        if self.quantity.dimension() + other.quantity.dimension() > 3 {
            return Err(fault(Kind::BeyondVolume, self.start, other.end));
        }
        Ok(self.quantity.checked_mul(other.quantity))
    }

    fn quotient(&self, other: &Self) -> Result<Option<Quantity>, Fault> {
        if other.quantity.is_zero() {
            return Err(other.blame(Kind::DivisionByZero));
        }
        if self.quantity.dimension() < other.quantity.dimension() {
            return Err(fault(Kind::InverseLength, self.start, other.end));
        }
        Ok(self.quantity.checked_div(other.quantity))
    }
}
