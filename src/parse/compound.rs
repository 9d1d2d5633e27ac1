//! A whole length: a sign, then numbers with their units in falling order. What is wrong with text that
//! is not one is left to `refuse.rs`.

use super::error::ParseErrorKind as Kind;
use super::glyph::{Glyph, glyph};
use super::number::{Form, Number, number};
use super::parser::LengthParser;
use super::refuse::disorder;
use super::scan::{Bytes, Flow, Step, blanks, dash, outer_blanks, refuse, starts_number};
use super::unit::unit;
use super::value::ticks;
use crate::length::{Fraction, Length, Unit};

/// One number with its unit, and the places round it that a refusal points at.
#[derive(Clone, Copy)]
pub(super) struct Term<'a> {
    pub(super) number: Number,
    /// The unit that was written, if one was.
    pub(super) unit: Option<Unit>,
    /// The text from the number on.
    pub(super) start: Bytes<'a>,
    /// The text behind the number.
    pub(super) behind_number: Bytes<'a>,
    /// The text behind the unit.
    pub(super) end: Bytes<'a>,
}

/// What was read: the length, and its last term for the sake of what may follow it.
#[derive(Clone, Copy)]
pub(super) struct Compound<'a> {
    pub(super) length: Length,
    pub(super) last: Term<'a>,
    /// The unit of the last term, written or not.
    pub(super) unit: Unit,
}

impl Compound<'_> {
    /// Whether it is one number without a unit. `text` is what it was read from.
    pub(super) fn is_bare(&self, text: Bytes<'_>) -> bool {
        self.last.unit.is_none() && self.last.start.len() == any_sign(outer_blanks(text)).0.len()
    }
}

/// A length, from its sign to its last unit. "Not here" when no number begins the text.
#[inline]
pub(super) fn compound<'a>(input: Bytes<'a>, parser: LengthParser) -> Step<'a, Compound<'a>> {
    let (start, negative) = sign(input);
    let mut total = Fraction::ZERO;
    let mut before: Option<(Term<'a>, Unit)> = None;
    let (mut at, mut dashed) = (start, None);
    loop {
        let last = term(at, parser)?;
        let unit = match &before {
            None => last.unit.unwrap_or(parser.default_unit),
            Some((before, unit)) => next_unit(before, *unit, &last, dashed)?,
        };
        let sum = total.checked_add(in_ticks(&last, unit)?);
        total = sum.ok_or_else(|| refuse(Kind::TooLarge, start, last.end))?;
        let Some(next) = next_start(&last) else {
            let length = Length::from_ticks(if negative { total.negated() } else { total });
            return Ok((last.end, Compound { length, last, unit }));
        };
        (at, dashed) = next;
        before = Some((last, unit));
    }
}

#[inline]
fn in_ticks(term: &Term<'_>, unit: Unit) -> Flow<Fraction> {
    ticks(&term.number, unit).map_err(|kind| refuse(kind, term.start, term.behind_number))
}

#[inline]
fn term(start: Bytes<'_>, parser: LengthParser) -> Flow<Term<'_>> {
    let (behind_number, number) = number(start, parser.comma)?;
    let (end, unit) = unit(start, behind_number, &number)?;
    Ok(Term { number, unit, start, behind_number, end })
}

/// The sign in front of the whole value, and the blanks round it.
#[inline]
fn sign(input: Bytes<'_>) -> (Bytes<'_>, bool) {
    match input {
        [b'0'..=b'9', ..] => (input, false),
        _ => any_sign(outer_blanks(input)),
    }
}

/// A plus, a minus, or whatever dash a keyboard made of it.
#[cold]
pub(super) fn any_sign(input: Bytes<'_>) -> (Bytes<'_>, bool) {
    if let [b'+', rest @ ..] = input {
        return (blanks(rest), false);
    }
    dash(input).or_else(|| minus(input)).map_or((input, false), |rest| (blanks(rest), true))
}

/// The true minus sign.
pub(super) fn minus(input: Bytes<'_>) -> Option<Bytes<'_>> {
    match glyph(input) {
        Some((Glyph::Minus, rest)) => Some(rest),
        _ => None,
    }
}

/// Where the next term's number begins, if one follows, and the dash before it, if there is one.
#[inline]
fn next_start<'a>(last: &Term<'a>) -> Option<(Bytes<'a>, Option<Bytes<'a>>)> {
    last.unit?;
    match last.end {
        [] => None,
        [b'0'..=b'9', ..] => Some((last.end, None)),
        end => separated(end),
    }
}

/// Blanks, a comma with a blank behind it, or a dash may stand between two terms.
#[inline]
fn separated(end: Bytes<'_>) -> Option<(Bytes<'_>, Option<Bytes<'_>>)> {
    let at = blanks(end);
    let (next, dashed) = match (at, dash(at)) {
        ([b',', b' ', rest @ ..], _) => (blanks(rest), None),
        (_, Some(rest)) => (blanks(rest), Some(at)),
        _ => (at, None),
    };
    starts_number(next).then_some((next, dashed))
}

/// The unit of a term behind another: smaller, of the same system, and behind a whole number. A dash
/// joins feet to inches and nothing else.
#[inline]
fn next_unit<'a>(last: &Term<'a>, last_unit: Unit, next: &Term<'a>, dashed: Option<Bytes<'a>>) -> Flow<Unit> {
    let unit = match (last_unit, next.unit) {
        (Unit::Foot, Some(Unit::Inch) | None) => Unit::Inch,
        (Unit::Yard, Some(unit @ (Unit::Foot | Unit::Inch))) if dashed.is_none() => unit,
        (Unit::Meter, Some(unit @ (Unit::Centimeter | Unit::Millimeter))) if dashed.is_none() => unit,
        (Unit::Centimeter, Some(Unit::Millimeter)) if dashed.is_none() => Unit::Millimeter,
        (Unit::Meter, None) if glued_centimeters(last, next) => Unit::Centimeter,
        _ => return Err(disorder(last, last_unit, next, dashed)),
    };
    if last.number.form != Form::Whole {
        return Err(refuse(Kind::FractionNotLast, last.start, last.behind_number));
    }
    // Behind feet as behind inches: a fraction part is below one.
    if next.number.form == Form::Fraction && next.number.num >= next.number.den {
        return Err(refuse(Kind::ImproperFraction, next.start, next.behind_number));
    }
    Ok(unit)
}

/// `1m20` is 1.20 m: two digits, glued to the letter, and nothing more.
fn glued_centimeters(last: &Term<'_>, next: &Term<'_>) -> bool {
    let glued = last.end.len() == next.start.len();
    glued && next.number.form == Form::Whole && next.start.len() - next.end.len() == 2
}
