//! One spoken number: whole, fraction, whole and fraction, decimal. Tries every grouping that the words
//! allow; whether the groupings agree is left to `ambiguity.rs`, the unit and what follows to `length.rs`.
//!
//! ```text
//! number   = whole | fraction | whole ["and"] fraction | [whole] "point" digits | figures | "a" (before a unit)
//! fraction = count part | count "over" count (before "of") | ("a" | "an") part | part | figures
//! part     = "half" | "quarter" | any whole number whose last word is an ordinal ("sixty-fourths")
//! ```
//!
//! An article, or a part alone, begins a fraction only where the number begins or behind `and`, and a part
//! alone is a half, a quarter, or has a unit (`eighth inch`). Plural and singular prove little, since a
//! spoken *s* is easily lost; only `half` is never mistaken for `halves`, so it is one half and no more.

use super::ambiguity::{Outcome, Readings, Standing};
use super::count::{Count, cardinals, counts};
use super::tokens::Token;
use super::words::{Ending, Numeral, Word};
use crate::parse::number::{Form, Number};

/// The fraction that these words begin with, where nothing else will do.
pub(super) fn fraction(tokens: &[Token<'_>]) -> Outcome {
    let mut readings = Readings::default();
    pure(tokens, &mut readings);
    readings.outcome()
}

/// The number that these words begin with.
pub(super) fn number(tokens: &[Token<'_>]) -> Outcome {
    let mut readings = Readings::default();
    pure(tokens, &mut readings);
    match tokens {
        [Token { word: Word::Figures(number), .. }, ..] => readings.add(1, *number, Standing::Sound),
        [Token { word: Word::Article, .. }, Token { word: Word::Unit(_), .. }, ..] => {
            readings.add(1, Number::whole(1), Standing::Sound);
        }
        [Token { word: Word::Oh, .. }, behind @ ..] => decimal(behind, 1, 0, &mut readings),
        _ => decimal(tokens, 0, 0, &mut readings),
    }
    for whole in cardinals(tokens) {
        readings.add(whole.length, Number::whole(whole.value), Standing::Sound);
        let behind = &tokens[whole.length..];
        decimal(behind, whole.length, whole.value, &mut readings);
        mixed(behind, whole.length, whole.value, &mut readings);
    }
    readings.outcome()
}

/// A fraction alone.
fn pure(tokens: &[Token<'_>], readings: &mut Readings) {
    fractions(tokens, Front::Nothing, |length, num, den, standing| {
        readings.add(length, Number { whole: 0, num, den, form: Form::Fraction }, standing);
    });
}

/// A fraction behind a whole number.
fn mixed(behind: &[Token<'_>], before: usize, whole: u128, readings: &mut Readings) {
    let (front, tokens) = match behind {
        [Token { word: Word::And, .. }, rest @ ..] => (Front::And, rest),
        _ => (Front::Whole, behind),
    };
    fractions(tokens, front, |length, num, den, standing| {
        let length = before + usize::from(front == Front::And) + length;
        readings.add(length, Number { whole, num, den, form: Form::Mixed }, standing);
    });
}

/// What stands right before a fraction in its number.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Front {
    Nothing,
    And,
    Whole,
}

/// Every fraction that these words begin with: how many words, over what, under what.
fn fractions(tokens: &[Token<'_>], front: Front, mut found: impl FnMut(usize, u128, u128, Standing)) {
    if let [Token { word: Word::Figures(Number { num, den, form: Form::Fraction, .. }), .. }, ..] = tokens {
        found(1, *num, *den, Standing::Sound);
    }
    for count in cardinals(tokens).filter(|count| front != Front::Whole || !count.bare) {
        for part in parts(&tokens[count.length..]).filter(|part| part.may_be(count.value)) {
            let standing = if part.usual { Standing::Sound } else { Standing::Rare };
            found(count.length + part.length, count.value, part.den, standing);
        }
        for (length, den) in divisors(&tokens[count.length..], front) {
            found(count.length + length, count.value, den, Standing::Sound);
        }
    }
    if front == Front::Whole {
        return;
    }
    for part in parts(tokens).filter(|part| part.usual) {
        let named = matches!(tokens[0].word, Word::Part(..));
        let has_unit = matches!(tokens.get(part.length), Some(Token { word: Word::Of | Word::Unit(_), .. }));
        let is_one = part.ending == Ending::Singular && (named || has_unit);
        found(part.length, 1, part.den, if is_one { Standing::Sound } else { Standing::Doubtful });
    }
    match tokens {
        [Token { word: Word::Article, .. }, Token { word: Word::Figures(number), .. }, ..] if number.form == Form::Fraction => {
            found(2, number.num, number.den, Standing::Sound);
        }
        [Token { word: Word::Article, .. }, rest @ ..] => {
            parts(rest).filter(|part| part.usual).for_each(|part| found(1 + part.length, 1, part.den, Standing::Sound));
        }
        _ => {}
    }
}

/// What stands below the line.
#[derive(Clone, Copy)]
struct Part {
    length: usize,
    den: u128,
    ending: Ending,
    usual: bool,
}

impl Part {
    /// Whether there can be so many of them.
    const fn may_be(&self, num: u128) -> bool {
        let plural = matches!(self.ending, Ending::Plural);
        (self.den != 2 || num == 1 || plural) && (self.usual || num == 1 && !plural)
    }
}

/// Every denominator that these words begin with. Nobody divides by five hundred or by twenty thousand, so
/// `twenty-five hundredths` is no matter of `five hundredths`; but `one five hundredth` may be one of five hundred.
fn parts(tokens: &[Token<'_>]) -> impl Iterator<Item = Part> {
    let named = match tokens {
        [Token { word: Word::Part(den, ending), .. }, ..] => Some(Part { length: 1, den: *den, ending: *ending, usual: true }),
        _ => None,
    };
    let ordinals = counts(tokens).filter(|count| count.ending != Ending::Cardinal && count.value > 2);
    let part = |count: Count| Part { length: count.length, den: count.value, ending: count.ending, usual: is_usual(&count) };
    named.into_iter().chain(ordinals.map(part))
}

const fn is_usual(count: &Count) -> bool {
    count.length == 1 || count.value < 200 || matches!(count.value, 1000 | 10_000 | 100_000)
}

/// The denominators behind an `over`: `one over one hundred twenty-eight of an inch`, `two and nine over ninety-six inches`.
/// Nothing else is one: four over twelve is a slope, and one over six feet may be 6'-1".
fn divisors(tokens: &[Token<'_>], front: Front) -> impl Iterator<Item = (usize, u128)> {
    let behind = match tokens {
        [Token { word: Word::Over, .. }, behind @ ..] => behind,
        _ => &[],
    };
    let is_told = move |length: usize| match behind.get(length).map(|token| token.word) {
        Some(Word::Of) => true,
        Some(Word::Unit(_)) => front == Front::And,
        _ => false,
    };
    let dens = cardinals(behind).filter(move |den| den.value > 0 && is_told(den.length));
    dens.map(|den| (1 + den.length, den.value))
}

/// The digits behind a `point`, if one stands here.
fn decimal(tokens: &[Token<'_>], before: usize, whole: u128, readings: &mut Readings) {
    let [Token { word: Word::Point, .. }, tail @ ..] = tokens else { return };
    if let Some((length, num, den)) = two_digits(tail).or_else(|| digits(tail)) {
        readings.add(before + 1 + length, Number { whole, num, den, form: Form::Decimal }, Standing::Sound);
    }
}

/// `point twenty-five`, `point fifteen`: one number of two digits.
fn two_digits(tail: &[Token<'_>]) -> Option<(usize, u128, u128)> {
    let in_words = !matches!(tail.first()?.word, Word::Numeral(Numeral::Digits(_), _));
    let last = cardinals(tail).last().filter(|count| in_words && (10..100).contains(&count.value))?;
    Some((last.length, last.value, 100))
}

/// `point oh six two five`, `point 625`: digit by digit.
fn digits(tail: &[Token<'_>]) -> Option<(usize, u128, u128)> {
    let (mut length, mut num, mut den) = (0, 0_u128, 1_u128);
    while let Some((digit, scale)) = tail.get(length).and_then(digit) {
        (num, den) = (num.checked_mul(scale)?.checked_add(digit)?, den.checked_mul(scale)?);
        length += 1;
    }
    (length > 0).then_some((length, num, den))
}

/// One digit, or a run of them in figures, and the power of ten that it moves the others by.
fn digit(token: &Token<'_>) -> Option<(u128, u128)> {
    match token.word {
        Word::Oh => Some((0, 10)),
        Word::Numeral(Numeral::Small(digit @ 0..=9), Ending::Cardinal) => Some((digit, 10)),
        Word::Numeral(Numeral::Digits(run), Ending::Cardinal) => {
            let places = &token.at[..token.at.len() - token.end.len()];
            let places = u32::try_from(places.len()).ok().filter(|_| places.iter().all(u8::is_ascii_digit))?;
            Some((run, 10_u128.checked_pow(places)?))
        }
        _ => None,
    }
}
