//! Calculations: numbers and lengths with `+ - * / ( )`, in the usual order, with dimensions checked at
//! every step. This file walks through signs and brackets; operands are left to `operand.rs`, hyphens and
//! slashes with two readings to `readings.rs`, dimensions to `value.rs`.

mod both;
mod evaluate;
mod figure;
mod operand;
mod operator;
mod quantity;
mod readings;
mod value;

pub(super) use both::{either_hyphen, either_slash};
pub use evaluate::evaluate;
pub use quantity::Quantity;

use operator::{Operator, operator};
use readings::{Front, Place, Shape, Sign, is_open};
use value::Value;

use super::compound::any_sign;
use super::error::ParseErrorKind as Kind;
use super::parser::LengthParser;
use super::refuse::{behind_piece, fault};
use super::scan::{Bytes, Fault, blanks, outer_blanks};

/// How many brackets may stand open at once: more than any shop needs, and few enough for any stack.
const DEEPEST: usize = 64;

type Read<'a> = Result<(Bytes<'a>, Value<'a>), Fault>;

/// One text under calculation.
#[derive(Clone, Copy)]
struct Calculation {
    parser: LengthParser,
    /// The whole text reads as a plain length,
    alone: bool,
    /// of more than one number with a unit, in which a hyphen hardly subtracts.
    compound: bool,
}

impl Calculation {
    fn whole(text: Bytes<'_>, parser: LengthParser) -> Result<Value<'_>, Fault> {
        let start = outer_blanks(text);
        if start.is_empty() {
            return Err(fault(Kind::Empty, text, text));
        }
        let plain = parser.read(text).ok();
        let compound = plain.is_some_and(|found| found.last.start.len() < any_sign(start).0.len());
        let calculation = Self { parser, alone: plain.is_some(), compound };
        let (rest, value) = calculation.sum(start, 0)?;
        match blanks(rest) {
            [] => Ok(value),
            at @ [b')', rest @ ..] => Err(fault(Kind::StrayBracket, at, rest)),
            at => Err(fault(Kind::MissingOperator, at, behind_piece(at))),
        }
    }

    fn sum(self, start: Bytes<'_>, depth: usize) -> Read<'_> {
        let place = Place { front: Front::Added, chained: false };
        let (mut rest, mut total) = self.product((start, start), place, depth)?;
        while let Some((sign, tail)) = operator(blanks(rest)) {
            let front = if sign == Operator::Minus { Front::TakenAway } else { Front::Added };
            let chained = front == Front::TakenAway && Sign::find(rest, |_| Some(tail)).is_some_and(|sign| sign.glued());
            let place = Place { front, chained };
            let (behind, next) = self.product((blanks(rest), tail), place, depth)?;
            total = total.combine(sign, next, self.parser.default_unit)?;
            rest = behind;
        }
        Ok((rest, total))
    }

    fn product<'a>(self, after: (Bytes<'a>, Bytes<'a>), place: Place, depth: usize) -> Read<'a> {
        let (mut rest, mut total) = self.factor(after, place, depth)?;
        let (mut last, mut divides) = (total, false);
        while let Some((sign, tail)) = operator(blanks(rest)).filter(|(sign, _)| sign.scales()) {
            let start = blanks(rest);
            let (behind, next) = self.factor((start, tail), Place { front: Front::Scaled, chained: false }, depth)?;
            let written = Sign::find(rest, |_| Some(tail)).filter(|_| sign == Operator::Over);
            if written.is_some_and(|written| is_open(last.shape, divides, &written, next.shape)) {
                let from = if last.shape == Shape::Bracket { start } else { last.start };
                return Err(fault(Kind::SlashReadings, from, next.end));
            }
            total = total.combine(sign, next, self.parser.default_unit)?;
            (rest, last, divides) = (behind, next, sign == Operator::Over);
        }
        Ok((rest, total))
    }

    /// Signs, then a bracket or an operand. `after` is the sign in front that needs it, and the text behind that.
    fn factor<'a>(self, after: (Bytes<'a>, Bytes<'a>), place: Place, depth: usize) -> Read<'a> {
        let (mut sign, mut behind) = after;
        let (start, mut negative) = (blanks(behind), false);
        let at = loop {
            let at = blanks(behind);
            match operator(at) {
                Some((Operator::Plus, rest)) => (sign, behind) = (at, rest),
                Some((Operator::Minus, rest)) => (sign, behind, negative) = (at, rest, !negative),
                Some((_, rest)) => return Err(fault(Kind::MissingOperand, at, rest)),
                None => break at,
            }
        };
        let (rest, value) = match at {
            [] => return Err(fault(Kind::MissingOperand, sign, behind)),
            [b')', rest @ ..] => return Err(fault(Kind::MissingOperand, at, rest)),
            [b'(', inside @ ..] => self.bracket(at, inside, depth)?,
            _ => {
                let front = if negative { place.front.turned() } else { place.front };
                let value = self.operand(at, Place { front, ..place })?;
                (value.end, value)
            }
        };
        Ok((rest, if negative { value.negated(start)? } else { Value { start, ..value } }))
    }

    fn bracket<'a>(self, open: Bytes<'a>, inside: Bytes<'a>, depth: usize) -> Read<'a> {
        if depth == DEEPEST {
            return Err(fault(Kind::TooDeep, open, inside));
        }
        if blanks(inside).is_empty() {
            return Err(fault(Kind::UnclosedBracket, open, inside));
        }
        let (rest, value) = self.sum(inside, depth + 1)?;
        match blanks(rest) {
            [] => Err(fault(Kind::UnclosedBracket, open, inside)),
            [b')', end @ ..] => Ok((end, Value { shape: Shape::Bracket, end, ..value })),
            at => Err(fault(Kind::MissingOperator, at, behind_piece(at))),
        }
    }
}
