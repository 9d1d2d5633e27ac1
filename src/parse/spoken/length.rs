//! A spoken length: numbers with their units in falling order, joined by nothing or by `and`. The order of
//! units is that of the plain grammar; what is wrong with words left over is left to `leftover.rs`.

use super::ambiguity::Outcome;
use super::grammar::{fraction, number};
use super::leftover::{leaning_in_front, leftover};
use super::tokens::{Token, Tokens};
use super::words::{Ending, Numeral, Word};
use crate::length::{Fraction, Length, Unit, gcd};
use crate::parse::compound::{Joint, Term, in_ticks, next_unit};
use crate::parse::error::ParseErrorKind as Kind;
use crate::parse::number::{Form, Number};
use crate::parse::reading::{Reading, Refusal};
use crate::parse::scan::Bytes;

/// What was read so far.
#[derive(Clone, Copy)]
pub(super) struct Spoken<'a> {
    total: Fraction,
    pub(super) last: Term<'a>,
    last_unit: Unit,
    /// Whether the last term is the only one.
    pub(super) alone: bool,
}

/// The length, without its sign, that all these words are; `None` when no number begins them.
pub(super) fn length<'a>(text: Bytes<'a>, words: &Tokens<'a>, from: usize, bare: Unit) -> Result<Option<Length>, Refusal> {
    let mut tokens = &words.all()[from..];
    let Some((used, first)) = opening(tokens)? else {
        return leaning_in_front(tokens).map_or(Ok(None), Err);
    };
    let unit = first.unit.unwrap_or(bare);
    let mut spoken = Spoken { total: in_ticks(&first, unit)?, last: first, last_unit: unit, alone: true };
    tokens = &tokens[used..];
    while spoken.last.unit.is_some() {
        let joined = matches!(tokens, [Token { word: Word::And, .. }, ..]);
        let behind = &tokens[usize::from(joined)..];
        let Some((used, next)) = term(behind, joined.then_some(spoken.last_unit))? else { break };
        spoken = spoken.and(next, joined)?;
        tokens = &behind[used..];
    }
    let length = Length::from_ticks(spoken.total);
    if tokens.is_empty() && words.rest.is_empty() { Ok(Some(length)) } else { Err(leftover(text, tokens, words, &spoken)) }
}

impl<'a> Spoken<'a> {
    fn and(self, next: Term<'a>, joined: bool) -> Result<Self, Refusal> {
        let unit = unit_behind(&self.last, self.last_unit, &next, joined)?;
        let total = self.total.checked_add(in_ticks(&next, unit)?);
        let total = total.ok_or_else(|| Refusal::new(Kind::TooLarge, self.last.start, next.end))?;
        Ok(Self { total, last: next, last_unit: unit, alone: false })
    }
}

/// The first term. `inch and a half` begins with the one inch that nobody counts.
fn opening<'a>(tokens: &[Token<'a>]) -> Result<Option<(usize, Term<'a>)>, Refusal> {
    let [Token { word: Word::Unit(unit), at, end }, Token { word: Word::And, .. }, behind @ ..] = tokens else {
        return term(tokens, None);
    };
    let one = Term { number: Number::whole(1), unit: Some(*unit), start: at, behind_number: at, end };
    Ok(number(behind).length().map(|_| (1, one)))
}

/// A number with its unit, if one follows, and how many words they take. `joined` is the unit before an
/// `and` in front of them.
fn term<'a>(tokens: &[Token<'a>], joined: Option<Unit>) -> Result<Option<(usize, Term<'a>)>, Refusal> {
    let outcome = number(tokens);
    let Some(length) = outcome.length() else { return Ok(None) };
    let (start, last) = (tokens[0].at, &tokens[length - 1]); // an outcome that is something has a word
    let refused = |kind, readings| Err(Refusal::new(kind, start, last.end).with(readings));
    let number = match outcome {
        Outcome::Nothing => return Ok(None),
        Outcome::One(_, number) => number,
        Outcome::Two(_, number, _) if is_part_only(tokens, length, &number, joined) => number,
        Outcome::Two(_, one, other) => {
            return refused(Kind::SpokenReadings, [Reading::new(&one, None), Reading::new(&other, None)]);
        }
        Outcome::Improper(_, number) => return refused(Kind::ImproperFraction, [Reading::new(&number, None), None]),
    };
    let (used, unit, end) = match unit(&tokens[length..], &number) {
        Some((used, unit)) => (length + used, Some(unit), tokens[length + used - 1].end),
        None => (length, None, last.end),
    };
    Ok(Some((used, Term { number, unit, start, behind_number: last.end, end })))
}

/// Whether of several readings only a fraction can stand here: `two inches and twenty-one sixty-fourths`
/// are no two inches and 20 1/64.
fn is_part_only(tokens: &[Token<'_>], length: usize, number: &Number, joined: Option<Unit>) -> bool {
    let follows = unit(&tokens[length..], number).map(|(_, unit)| unit);
    let fits = joined.is_some_and(|unit| follows.map_or(unit != Unit::Foot, |follows| follows == unit));
    fits && matches!(fraction(tokens), Outcome::One(only, part) if only == length && part == *number)
}

/// The unit behind a number, and how many words it takes: `feet`, `of an inch` behind a fraction, `an
/// inch` behind a half.
fn unit(behind: &[Token<'_>], number: &Number) -> Option<(usize, Unit)> {
    let is_half = matches!(number, Number { num: 1, den: 2, form: Form::Fraction, .. });
    match behind {
        [Token { word: Word::Unit(unit), .. }, ..] => Some((1, *unit)),
        [Token { word: Word::Article, .. }, Token { word: Word::Unit(unit), .. }, ..] if is_half => Some((2, *unit)),
        [Token { word: Word::Of, .. }, of @ ..] if number.has_fraction() => match of {
            [Token { word: Word::Unit(unit), .. }, ..] => Some((2, *unit)),
            [one, Token { word: Word::Unit(unit), .. }, ..] if is_one(one) => Some((3, *unit)),
            _ => None,
        },
        _ => None,
    }
}

fn is_one(token: &Token<'_>) -> bool {
    matches!(token.word, Word::Article | Word::Numeral(Numeral::Small(1) | Numeral::Digits(1), Ending::Cardinal))
}

/// The unit of a term behind another. Where speech leaves it out, it is inches behind feet, as in writing,
/// and `and a half` is half of the unit just named; where that makes two values, neither. `two inches and
/// half an inch` names the unit twice on purpose.
fn unit_behind(last: &Term<'_>, last_unit: Unit, next: &Term<'_>, joined: bool) -> Result<Unit, Refusal> {
    let glued = last.end.len() == next.start.len();
    match (next.unit, next.number.form) {
        (None, Form::Fraction | Form::Decimal) if joined && next.number.whole == 0 => part_of(last, last_unit, next),
        (Some(unit), Form::Fraction) if joined && unit == last_unit => part_of(last, last_unit, next),
        (None, Form::Whole) if last_unit == Unit::Meter && !glued && next.number.whole > 0 => Err(behind_meters(last, next)),
        _ => next_unit(last, last_unit, next, Joint::Blank).map_err(|error| Refusal::from(error).with(improper(next))),
    }
}

/// What a fraction of one or more should have been said as.
fn improper(next: &Term<'_>) -> [Option<Reading>; 2] {
    [Reading::new(&next.number, None), None]
}

/// `an inch and a half` is half an inch more, however it is meant. `two feet and a half` is half a foot to
/// one and half an inch to another.
fn part_of(last: &Term<'_>, last_unit: Unit, next: &Term<'_>) -> Result<Unit, Refusal> {
    let Number { num, den, .. } = next.number;
    if last.number.form != Form::Whole {
        return Err(Refusal::new(Kind::FractionNotLast, last.start, last.behind_number));
    }
    if num >= den {
        // One unit for both, but behind feet the fraction may be of an inch.
        let (start, whole) = if last_unit == Unit::Foot { (next.start, 0) } else { (last.start, last.number.whole) };
        let said = Reading::new(&Number { whole, ..next.number }, Some(last_unit).filter(|_| whole > 0));
        return Err(Refusal::new(Kind::ImproperFraction, start, next.behind_number).with([said, None]));
    }
    if last_unit == Unit::Foot && next.unit.is_none() && num > 0 {
        let inches = |num: Option<u128>| shown(last.number.whole.checked_mul(12)?, num?, den, Unit::Inch);
        let readings = [inches(num.checked_mul(12)), inches(Some(num))];
        return Err(Refusal::new(Kind::SpokenReadings, last.start, next.end).with(readings));
    }
    Ok(last_unit)
}

/// `one meter twenty` is 1.20 m to most and 1.020 m where everything is in millimeters.
fn behind_meters(last: &Term<'_>, next: &Term<'_>) -> Refusal {
    let millimeters = |each: u128| {
        let sum = last.number.whole.checked_mul(1000)?.checked_add(next.number.whole.checked_mul(each)?);
        shown(sum?, last.number.num.checked_mul(1000)?, last.number.den, Unit::Millimeter)
    };
    Refusal::new(Kind::SpokenReadings, last.start, next.end).with([millimeters(10), millimeters(1)])
}

/// `whole + num / den` of a unit, with the fraction below one and in lowest terms.
fn shown(whole: u128, num: u128, den: u128, unit: Unit) -> Option<Reading> {
    let (whole, num) = (whole.checked_add(num / den)?, num % den);
    let shared = gcd(num, den);
    Reading::new(&Number { whole, num: num / shared, den: den / shared, form: Form::Mixed }, Some(unit))
}
