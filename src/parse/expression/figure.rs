//! How far a number reaches in a calculation, by its look alone: there a slash with blanks round it divides,
//! a second slash begins another step, and a hyphen is nobody's yet. What the number is worth is left to
//! the reading of plain lengths.

use crate::length::Unit;
use crate::parse::glyph::{Glyph, glyph};
use crate::parse::group::{groups, run};
use crate::parse::number::{Form, Number};
use crate::parse::parser::Comma;
use crate::parse::scan::{Bytes, Step, absent, blanks, digits, slash, starts_digit, starts_number};
use crate::parse::unit::unit;

/// A number and the unit behind it, as they stand in the text.
#[derive(Clone, Copy)]
pub(super) struct Figure<'a> {
    pub(super) form: Form,
    pub(super) unit: Option<Unit>,
    pub(super) start: Bytes<'a>,
    /// The text behind the number.
    pub(super) behind: Bytes<'a>,
    /// The text behind the unit.
    pub(super) end: Bytes<'a>,
}

/// Whether a number could begin here.
fn starts_figure(input: Bytes<'_>, comma: Comma) -> bool {
    starts_number(input) || comma == Comma::Decimal && matches!(input, [b',', b'0'..=b'9', ..])
}

/// The number that begins here, with its unit. "Not here" when none does.
pub(super) fn figure(start: Bytes<'_>, comma: Comma) -> Step<'_, Figure<'_>> {
    let (behind, form) = reach(start, comma)?;
    // What a unit looks like depends on the form alone: only a fraction can be so many `ths of an inch`.
    let (end, unit) = unit(start, behind, &Number { whole: 0, num: 0, den: 1, form })?;
    Ok((end, Figure { form, unit, start, behind, end }))
}

fn reach(start: Bytes<'_>, comma: Comma) -> Step<'_, Form> {
    let (rest, form) = numeral(start, comma)?;
    if form != Form::Whole {
        return Ok((rest, form));
    }
    if let Some(rest) = slash(rest).and_then(denominator) {
        return Ok((rest, Form::Fraction));
    }
    let top = blanks(rest);
    let mixed = match numeral(top, comma) {
        Ok((rest, Form::Fraction)) => Some(rest),
        // Two numbers side by side are nothing else: here a slash may have blanks round it.
        Ok((below, Form::Whole)) => slash(blanks(below)).and_then(|below| denominator(blanks(below))),
        _ => None,
    };
    Ok(mixed.map_or((rest, Form::Whole), |rest| (rest, Form::Mixed)))
}

/// Digits with what groups or points them, a fraction in one glyph, or one in raised and lowered digits.
fn numeral(input: Bytes<'_>, comma: Comma) -> Step<'_, Form> {
    match input {
        [b'0'..=b'9', ..] => {
            let (rest, whole) = digits(input)?;
            let (rest, _) = if comma == Comma::Refuse { (rest, whole) } else { groups(input, rest, whole, comma)? };
            match rest {
                [b'.' | b',', b'0'..=b'9', ..] => Ok((run(rest), Form::Decimal)),
                _ => Ok((rest, Form::Whole)),
            }
        }
        _ if starts_figure(input, comma) => match glyph(input) {
            None => Ok((run(input), Form::Decimal)),
            Some(found) => glyph_fraction(found).map_or_else(|| absent(input), |rest| Ok((rest, Form::Fraction))),
        },
        _ => absent(input),
    }
}

fn glyph_fraction((first, rest): (Glyph, Bytes<'_>)) -> Option<Bytes<'_>> {
    match first {
        Glyph::Vulgar(..) => Some(rest),
        Glyph::OneOver => denominator(rest),
        _ => denominator(slash(raised(rest))?),
    }
}

/// What stands below a fraction's line: plain or lowered digits, and no decimal.
fn denominator(input: Bytes<'_>) -> Option<Bytes<'_>> {
    if !starts_digit(input) {
        let rest = run_of(input, |glyph| matches!(glyph, Glyph::Lowered(_)));
        return (rest.len() < input.len()).then_some(rest);
    }
    let rest = &input[input.iter().take_while(|byte| byte.is_ascii_digit()).count()..];
    (!matches!(rest, [b'.', b'0'..=b'9', ..])).then_some(rest)
}

/// The end of a run of raised digits.
pub(super) fn raised(input: Bytes<'_>) -> Bytes<'_> {
    run_of(input, |glyph| matches!(glyph, Glyph::Raised(_)))
}

fn run_of(input: Bytes<'_>, belongs: impl Fn(Glyph) -> bool) -> Bytes<'_> {
    let mut rest = input;
    while let Some((_, tail)) = glyph(rest).filter(|(found, _)| belongs(*found)) {
        rest = tail;
    }
    rest
}
