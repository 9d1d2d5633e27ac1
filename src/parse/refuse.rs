//! What is wrong with a text that is not a length: finds the kind and the place for every refusal that
//! the reading itself does not already know. Runs only when something is wrong, so it may look twice.

use super::compound::{Joint, Term, any_sign, minus};
use super::error::ParseErrorKind as Kind;
use super::glyph::{Glyph, glyph, split_char};
use super::number::{Form, Number, lost_blank, number};
use super::parser::Comma;
use super::qualifier::{Qualifier, qualifier};
use super::scan::{Bytes, Fault, blanks, dash, outer_blanks, refuse, slash, starts_number, word};
use super::sides::both_sign;
use super::unit::unit;
use crate::length::Unit;

pub(super) fn fault(kind: Kind, from: Bytes<'_>, until: Bytes<'_>) -> Fault {
    Fault { kind, from: from.len(), until: until.len() }
}

/// Two terms that cannot stand behind each other.
#[cold]
pub(super) fn disorder<'a>(last: &Term<'a>, last_unit: Unit, next: &Term<'a>, joint: Joint<'a>) -> nom::Err<Fault> {
    let Some(unit) = next.unit else {
        let glued = last.end.len() == next.start.len();
        let kind = if last_unit == Unit::Meter && glued { Kind::MeterDecimals } else { Kind::LooseTail };
        return refuse(kind, next.start, next.end);
    };
    let mark = blanks(next.behind_number);
    if unit == last_unit {
        refuse(Kind::RepeatedUnit, mark, next.end)
    } else if unit.is_metric() != last_unit.is_metric() {
        refuse(Kind::MixedSystems, mark, next.end)
    } else if unit.ticks() > last_unit.ticks() {
        refuse(Kind::RisingUnit, mark, next.end)
    } else {
        let from = if let Joint::Dash(at) = joint { at } else { next.start };
        refuse(Kind::DashBetween, from, next.start)
    }
}

/// No number where one was due.
#[cold]
pub(super) fn no_number(text: Bytes<'_>) -> Fault {
    let start = outer_blanks(text);
    let (at, _) = any_sign(start);
    match at {
        [] if start.is_empty() => fault(Kind::Empty, text, text),
        _ if outer_blanks(at).is_empty() => fault(Kind::LoneSign, start, at),
        [b'(', rest @ ..] => fault(Kind::Arithmetic, at, rest),
        _ => fault(Kind::NotANumber, at, behind_piece(at)),
    }
}

/// Something behind a complete length, of which `last` is the last term.
#[cold]
pub(super) fn leftover(text: Bytes<'_>, rest: Bytes<'_>, last: &Term<'_>) -> Fault {
    let at = blanks(rest);
    if let Some(other) = times(at) {
        return size(text, last, other);
    }
    if starts_number(at) {
        return second_number(last, at);
    }
    if let Some(tail) = dash(at).filter(|tail| starts_number(blanks(tail))) {
        return dashed_number(rest, at, tail, last);
    }
    if let Some(tail) = minus(at) {
        let kind = if tail.len() + 3 == rest.len() { Kind::MinusJoins } else { Kind::Arithmetic };
        return fault(kind, at, tail);
    }
    sign_or_word(at, last)
}

/// A number behind a number, with only blanks between.
fn second_number(last: &Term<'_>, at: Bytes<'_>) -> Fault {
    match (last.number.form, number(at, Comma::Refuse)) {
        // A second point, or a raised digit that is no numerator.
        (Form::Decimal, Ok((end, _))) if at.starts_with(b".") => fault(Kind::Trailing, at, end),
        (_, Err(_)) => fault(Kind::Trailing, at, behind_piece(at)),
        (Form::Decimal, Ok((end, number))) if number.has_fraction() => fault(Kind::DecimalWithFraction, last.start, end),
        (_, Ok((end, _))) => fault(Kind::TwoNumbers, last.start, end),
    }
}

/// A number, a dash and another number, which the reading would not join.
fn dashed_number(rest: Bytes<'_>, at: Bytes<'_>, tail: Bytes<'_>, last: &Term<'_>) -> Fault {
    let glued = at.len() == rest.len() && starts_number(tail);
    let (end, second) = match number(blanks(tail), Comma::Refuse) {
        Ok((end, number)) => (end, number.form),
        Err(_) => return fault(Kind::Arithmetic, at, tail),
    };
    match (last.number.form, second) {
        (Form::Whole, Form::Whole) if glued && dash(end).is_some_and(starts_number) => {
            fault(Kind::FeetInchesSixteenths, last.start, behind_piece(end))
        }
        (Form::Whole, Form::Whole) if glued => fault(Kind::JoinedNumbers, last.start, end),
        (Form::Whole, Form::Fraction) => fault(Kind::DashReadings, last.start, end),
        _ => fault(Kind::Arithmetic, at, tail),
    }
}

/// `2x4`, `3/4 x 4' x 8'`: a name or a size, but no single length.
fn size(text: Bytes<'_>, last: &Term<'_>, other: Bytes<'_>) -> Fault {
    let is_name = last.unit.is_none() && names_thickness(&last.number) && names_width(other);
    let kind = if is_name { Kind::NominalName } else { Kind::SizeNotLength };
    fault(kind, outer_blanks(text), text.split_at(text.trim_ascii_end().len()).1)
}

/// Boards and timbers are named in whole inches or in quarters; `13/4` is no quarters, but 1 3/4 that lost its blank.
pub(super) fn names_thickness(number: &Number) -> bool {
    match number.form {
        Form::Whole => (1..=12).contains(&number.whole),
        Form::Fraction => number.den == 4 && number.num > 3 && lost_blank(number.num, number.den).is_none(),
        Form::Decimal | Form::Mixed => false,
    }
}

/// A bare whole number of inches, which is all the second half of a board's name can be.
fn names_width(other: Bytes<'_>) -> bool {
    let Ok((rest, second)) = number(other, Comma::Refuse) else { return false };
    let bare = unit(other, rest, &second).is_ok_and(|(_, unit)| unit.is_none());
    bare && second.form == Form::Whole && (1..=16).contains(&second.whole)
}

/// The number behind a `×`, `x` or `by`.
fn times(at: Bytes<'_>) -> Option<Bytes<'_>> {
    let rest = match at {
        [b'x' | b'X', rest @ ..] | [b'b' | b'B', b'y' | b'Y', rest @ ..] => rest,
        _ => match glyph(at) {
            Some((Glyph::Times, rest)) => rest,
            _ => return None,
        },
    };
    Some(blanks(rest)).filter(|rest| starts_number(rest))
}

fn sign_or_word(at: Bytes<'_>, last: &Term<'_>) -> Fault {
    if let Some(to) = both_sign(at) {
        return fault(Kind::ToleranceNotLength, at, &at[to..]);
    }
    match at {
        [b'+', rest @ ..] if outer_blanks(rest).is_empty() => fault(Kind::Qualified, at, rest),
        [b'+' | b'*' | b'(' | b')', rest @ ..] => fault(Kind::Arithmetic, at, rest),
        [b',', b'0'..=b'9', ..] if last.unit.is_none() => fault(Kind::CommaReadings, last.start, behind_piece(at)),
        [b'a'..=b'z' | b'A'..=b'Z', ..] => odd_word(at, last),
        _ if slash(at).is_some() && last.number.form == Form::Decimal => {
            fault(Kind::DecimalWithFraction, last.start, behind_piece(at))
        }
        _ if slash(at).is_some() => fault(Kind::ChainedFraction, last.start, behind_piece(at)),
        _ => fault(Kind::Trailing, at, behind_piece(at)),
    }
}

/// A word that is no unit, shown whole.
fn odd_word(at: Bytes<'_>, last: &Term<'_>) -> Fault {
    let (name, rest) = word(at);
    let kind = match (qualifier(name), last.unit) {
        (Some(Qualifier::Side(_)), _) if starts_number(blanks(rest)) => Kind::Arithmetic,
        (Some(Qualifier::Side(_) | Qualifier::Hedge), _) => Kind::Qualified,
        (_, None) => Kind::UnknownUnit,
        (_, Some(_)) => Kind::Trailing,
    };
    fault(kind, at, rest)
}

/// The end of a piece of text: a whole word or run of digits, or one other character.
pub(super) fn behind_piece(at: Bytes<'_>) -> Bytes<'_> {
    let is_part = |byte: &u8| byte.is_ascii_alphanumeric() || matches!(byte, b'/' | b'-' | b'.' | b',');
    match at.iter().take_while(|byte| is_part(byte)).count() {
        0 => split_char(at).1,
        length => &at[length..],
    }
}
