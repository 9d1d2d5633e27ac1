//! One operand: how far it reaches, and what it is worth. Everything about numbers and units is read by the
//! very functions that read plain lengths, so that both know the same spellings and refuse the same slips.

use super::Calculation;
use super::figure::{Figure, figure, raised};
use super::operator::operator;
use super::quantity::Quantity;
use super::readings::{Place, Shape, Sign, Stand};
use super::value::{Units, Value};
use crate::length::Unit;
use crate::parse::compound::Compound;
use crate::parse::error::ParseErrorKind as Kind;
use crate::parse::glyph::split_char;
use crate::parse::number::Form;
use crate::parse::refuse::fault;
use crate::parse::scan::{Bytes, Fault, blanks, dash, slash, word};
use crate::parse::written::warning;

impl Calculation {
    /// A number or a length. Something that is neither is refused as it is when it stands alone.
    pub(super) fn operand(self, start: Bytes<'_>, place: Place) -> Result<Value<'_>, Fault> {
        let end = self.end_of_operand(start, place)?;
        let text = &start[..start.len() - end.len()];
        let moved = |fault: Fault| Fault {
            kind: under_way(fault.kind, &text[text.len() - fault.from..text.len() - fault.until]),
            from: fault.from + end.len(),
            until: fault.until + end.len(),
        };
        let found = self.parser.read(text).map_err(moved)?;
        let bare = found.is_bare(text);
        if let Some(read) = self.parser.shorthand.packed_operand(text) {
            let length = read.map_err(|kind| fault(kind, start, end))?;
            return Ok(Value { end, ..Value::whole(length, start) });
        }
        let (quantity, units) = match found.unit {
            unit if bare => (Quantity::Number(found.length.in_unit(unit)), Units::None),
            unit if unit == self.parser.default_unit => (Quantity::Length(found.length), Units::Default),
            _ => (Quantity::Length(found.length), Units::Other),
        };
        // A slash divides here as well, and a bare number may count anything.
        let warning = if bare { None } else { warning(text, &found) };
        Ok(Value { quantity, units, shape: shape(text, &found, bare), warning, start, end })
    }

    /// The text behind the operand: everything up to a sign or a bracket that is not part of it.
    fn end_of_operand(self, start: Bytes<'_>, place: Place) -> Result<Bytes<'_>, Fault> {
        let mut taken = (start, None);
        while let Some(more) = self.piece(taken, place)? {
            taken = more;
        }
        Ok(taken.0)
    }

    /// One more piece of an operand, behind what is taken of it. What cannot be part of any is taken along, for
    /// the reading to refuse.
    fn piece(self, (end, last): Taken<'_>, place: Place) -> Result<Option<Taken<'_>>, Fault> {
        let at = blanks(end);
        match figure(at, self.parser.comma) {
            Ok((_, next)) => return Ok(Some(with(next, last))),
            Err(nom::Err::Failure(fault)) => return Err(fault),
            Err(_) => {}
        }
        if let Some((figure, stand)) = last {
            if let Some(sign) = Sign::find(end, dash) {
                return Ok(self.joined(&figure, &sign, place)?.map(|next| with(next, last)));
            }
            if let Some(sign) = Sign::find(end, slash) {
                if let Some(fraction) = self.loose_fraction(&figure, stand, &sign, place)? {
                    return Ok(Some((fraction.end, Some((fraction, stand)))));
                }
            }
        }
        match at {
            [] | [b'(' | b')', ..] => Ok(None),
            _ if operator(at).is_some() => Ok(None),
            [b',', rest @ ..] => Ok(Some((rest, last))),
            [b'\n' | b'\r' | b'\x0C', rest @ ..] => {
                let kind = if last.is_none() { Kind::NotANumber } else { Kind::Trailing };
                Err(fault(kind, at, rest)) // a calculation stands in one line
            }
            _ => Ok(Some((past(at), None))),
        }
    }
}

/// The text behind what is taken of an operand, and the figure at its end, if one is.
type Taken<'a> = (Bytes<'a>, Option<(Figure<'a>, Stand)>);

fn with<'a>(next: Figure<'a>, last: Option<(Figure<'a>, Stand)>) -> Taken<'a> {
    let stand = match last {
        None => Stand::First,
        Some((last, _)) if last.unit == Some(Unit::Foot) => Stand::BehindFeet,
        Some(_) => Stand::Elsewhere,
    };
    (next.end, Some((next, stand)))
}

/// The end of a word, of a run of raised digits, of the sign of a tolerance, or of one other character. Digit by digit, a
/// long run would be looked through anew from each.
fn past(at: Bytes<'_>) -> Bytes<'_> {
    match (at, word(at)) {
        ([b'+', ..], _) => &at[3..], // any other plus is a sign of the calculation
        (_, ([], _)) => {
            let rest = raised(at);
            if rest.len() < at.len() { rest } else { split_char(at).1 }
        }
        (_, (_, rest)) => rest,
    }
}

fn shape(text: Bytes<'_>, found: &Compound<'_>, bare: bool) -> Shape {
    // Neither a glyph, nor the fraction slash, nor `7/16ths` can be anything but a fraction.
    let plain = matches!(text, [b'0'..=b'9'] | [b'0'..=b'9', .., b'0'..=b'9']);
    match found.last.number.form {
        Form::Whole if bare => Shape::Whole,
        Form::Fraction if found.last.unit.is_none() && plain && text.contains(&b'/') => Shape::Fraction,
        _ => Shape::Other,
    }
}

/// What a plain length is told to calculate means something else where a calculation is under way.
const fn under_way(kind: Kind, found: Bytes<'_>) -> Kind {
    match kind {
        Kind::NominalName | Kind::SizeNotLength => Kind::SizeOrProduct,
        // Before a bracket or a sign: `3 x (2 + 1)`.
        Kind::UnknownUnit if matches!(found, b"x" | b"X" | b"by") => Kind::SizeOrProduct,
        // `1/2 of 36`
        Kind::UnknownUnit if matches!(found, b"of") => Kind::MissingOperator,
        Kind::Arithmetic => Kind::MissingOperator,
        kind => kind,
    }
}
