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

/// What was read: the length, how its first term was marked, and its last for what may follow it.
#[derive(Clone, Copy)]
pub(super) struct Compound<'a> {
    pub(super) length: Length,
    pub(super) first_unit: Option<Unit>,
    pub(super) last: Term<'a>,
    /// The unit of the last term, written or not.
    pub(super) unit: Unit,
}

impl Compound<'_> {
    /// Whether it is one number without a unit. `text` is what it was read from.
    pub(super) fn is_bare(&self, text: Bytes<'_>) -> bool {
        self.last.unit.is_none() && self.is_single(text)
    }

    /// Whether it is one number, with a unit or without. `text` is what it was read from.
    pub(super) fn is_single(&self, text: Bytes<'_>) -> bool {
        self.last.start.len() == any_sign(outer_blanks(text)).0.len()
    }
}

/// What stands between two terms.
#[derive(Clone, Copy)]
pub(super) enum Joint<'a> {
    Blank,
    Comma,
    /// With the text from the dash on.
    Dash(Bytes<'a>),
}

/// A length, from its sign to its last unit. "Not here" when no number begins the text.
#[inline]
pub(super) fn compound(input: Bytes<'_>, parser: LengthParser) -> Step<'_, Compound<'_>> {
    let (start, negative) = sign(input);
    let mut last = term(start, parser)?;
    let first_unit = last.unit;
    let mut unit = first_unit.unwrap_or(parser.default_unit);
    let mut total = in_ticks(&last, unit)?;
    while let Some((at, joint)) = next_start(&last) {
        let next = match term(at, parser) {
            // A raised digit that is no numerator begins nothing.
            Err(nom::Err::Error(_)) => break,
            next => next?,
        };
        unit = match (next_unit(&last, unit, &next, joint), joint) {
            (Ok(unit), _) => unit,
            // Behind a comma it may be another length, which is the caller's to judge.
            (Err(_), Joint::Comma) => break,
            (Err(fault), _) => return Err(fault),
        };
        let sum = total.checked_add(in_ticks(&next, unit)?);
        total = sum.ok_or_else(|| refuse(Kind::TooLarge, start, next.end))?;
        last = next;
    }
    let length = Length::from_ticks(if negative { total.negated() } else { total });
    Ok((last.end, Compound { length, first_unit, last, unit }))
}

#[inline]
pub(super) fn in_ticks(term: &Term<'_>, unit: Unit) -> Flow<Fraction> {
    ticks(&term.number, unit).map_err(|kind| refuse(kind, term.start, term.behind_number))
}

#[inline]
pub(super) fn term(start: Bytes<'_>, parser: LengthParser) -> Flow<Term<'_>> {
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

/// Where the next term's number begins, if one follows, and what stands before it.
#[inline]
fn next_start<'a>(last: &Term<'a>) -> Option<(Bytes<'a>, Joint<'a>)> {
    last.unit?;
    match last.end {
        [] => None,
        [b'0'..=b'9', ..] => Some((last.end, Joint::Blank)),
        end => separated(end),
    }
}

/// Blanks, a comma with a blank behind it, or a dash may stand between two terms.
#[inline]
fn separated(end: Bytes<'_>) -> Option<(Bytes<'_>, Joint<'_>)> {
    let at = blanks(end);
    let (next, joint) = match (at, dash(at)) {
        ([b',', b' ', rest @ ..], _) => (blanks(rest), Joint::Comma),
        (_, Some(rest)) => (blanks(rest), Joint::Dash(at)),
        _ => (at, Joint::Blank),
    };
    starts_number(next).then_some((next, joint))
}

/// The unit of a term behind another: smaller, of the same system, and behind a whole number. A dash
/// joins feet to inches and nothing else.
#[inline]
pub(super) fn next_unit<'a>(last: &Term<'a>, last_unit: Unit, next: &Term<'a>, joint: Joint<'a>) -> Flow<Unit> {
    let dashed = matches!(joint, Joint::Dash(_));
    let unit = match (last_unit, next.unit) {
        (Unit::Foot, Some(Unit::Inch) | None) => Unit::Inch,
        (Unit::Yard, Some(unit @ (Unit::Foot | Unit::Inch))) if !dashed => unit,
        (Unit::Meter, Some(unit @ (Unit::Centimeter | Unit::Millimeter))) if !dashed => unit,
        (Unit::Centimeter, Some(Unit::Millimeter)) if !dashed => Unit::Millimeter,
        (Unit::Meter, None) if glued_centimeters(last, next) => Unit::Centimeter,
        _ => return Err(disorder(last, last_unit, next, joint)),
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
