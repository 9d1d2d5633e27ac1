//! The words a length is spoken in, and what each one stands for. Where words begin and end is left to
//! `tokens.rs`, what a run of them adds up to to the files behind it.
//!
//! English numerals as in any dictionary; the words of the shop are common practice, no source.

use crate::length::Unit;
use crate::parse::number::Number;
use crate::parse::qualifier::lowercase_qualifier;
use crate::parse::scan::{Bytes, lowercase};

/// What one word, or one number in figures, stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Word {
    /// A piece of a whole number or, by its ending, of what stands below the line.
    Numeral(Numeral, Ending),
    /// A half or a quarter, by its denominator.
    Part(u128, Ending),
    /// A fraction, a mixed number or a decimal in figures.
    Figures(Number),
    /// Nothing, but only between digits: `point oh five`, `three-oh`.
    Oh,
    Article,
    And,
    Of,
    By,
    /// Between the two numbers of a fraction; a qualifier everywhere else: `a hair over`.
    Over,
    Point,
    Sign {
        negative: bool,
    },
    /// `strong`, `shy`, `just`, `hair`: the words of `qualifier.rs`.
    Qualifier,
    Unit(Unit),
}

/// A piece of a whole number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Numeral {
    /// Zero to nineteen.
    Small(u128),
    /// Twenty, thirty, to ninety.
    Tens(u128),
    Hundred,
    Thousand,
    /// A whole number in figures.
    Digits(u128),
}

/// `eight`, `eighth`, `eighths`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Ending {
    Cardinal,
    Singular,
    Plural,
}

impl Word {
    /// Whether the plain notations know nothing of it.
    pub(super) const fn is_speech(&self) -> bool {
        !matches!(
            self,
            Self::Numeral(Numeral::Digits(_), Ending::Cardinal) | Self::Figures(_) | Self::Of | Self::By | Self::Unit(_)
        )
    }
}

/// The longest known word has this many letters.
const LONGEST: usize = "approximately".len();

/// What a word stands for, in any capitals; `None` for a unit and for every other word.
pub(super) fn lookup(name: Bytes<'_>) -> Option<Word> {
    let mut room = [0; LONGEST];
    let lower = lowercase(name, &mut room)?;
    let ordinal = || match lower {
        [singular @ .., b's'] => ordinal(singular).map(|numeral| Word::Numeral(numeral, Ending::Plural)),
        _ => ordinal(lower).map(|numeral| Word::Numeral(numeral, Ending::Singular)),
    };
    let cardinal = cardinal(lower).map(|numeral| Word::Numeral(numeral, Ending::Cardinal));
    cardinal.or_else(ordinal).or_else(|| other(lower))
}

fn cardinal(name: Bytes<'_>) -> Option<Numeral> {
    Some(match name {
        b"zero" | b"nought" => Numeral::Small(0),
        b"one" => Numeral::Small(1),
        b"two" => Numeral::Small(2),
        b"three" => Numeral::Small(3),
        b"four" => Numeral::Small(4),
        b"five" => Numeral::Small(5),
        b"six" => Numeral::Small(6),
        b"seven" => Numeral::Small(7),
        b"eight" => Numeral::Small(8),
        b"nine" => Numeral::Small(9),
        b"ten" => Numeral::Small(10),
        b"eleven" => Numeral::Small(11),
        b"twelve" => Numeral::Small(12),
        b"thirteen" => Numeral::Small(13),
        b"fourteen" => Numeral::Small(14),
        b"fifteen" => Numeral::Small(15),
        b"sixteen" => Numeral::Small(16),
        b"seventeen" => Numeral::Small(17),
        b"eighteen" => Numeral::Small(18),
        b"nineteen" => Numeral::Small(19),
        b"twenty" => Numeral::Tens(20),
        b"thirty" => Numeral::Tens(30),
        b"forty" => Numeral::Tens(40),
        b"fifty" => Numeral::Tens(50),
        b"sixty" => Numeral::Tens(60),
        b"seventy" => Numeral::Tens(70),
        b"eighty" => Numeral::Tens(80),
        b"ninety" => Numeral::Tens(90),
        b"hundred" => Numeral::Hundred,
        b"thousand" => Numeral::Thousand,
        _ => return None,
    })
}

/// "Firsts" and "seconds" divide only behind tens, for 21sts, 32nds and the like.
fn ordinal(name: Bytes<'_>) -> Option<Numeral> {
    Some(match name {
        b"first" => Numeral::Small(1),
        b"second" => Numeral::Small(2),
        b"third" => Numeral::Small(3),
        b"fourth" => Numeral::Small(4),
        b"fifth" => Numeral::Small(5),
        b"sixth" => Numeral::Small(6),
        b"seventh" => Numeral::Small(7),
        b"eighth" => Numeral::Small(8),
        b"ninth" => Numeral::Small(9),
        b"tenth" => Numeral::Small(10),
        b"eleventh" => Numeral::Small(11),
        b"twelfth" => Numeral::Small(12),
        b"thirteenth" => Numeral::Small(13),
        b"fourteenth" => Numeral::Small(14),
        b"fifteenth" => Numeral::Small(15),
        b"sixteenth" => Numeral::Small(16),
        b"seventeenth" => Numeral::Small(17),
        b"eighteenth" => Numeral::Small(18),
        b"nineteenth" => Numeral::Small(19),
        b"twentieth" => Numeral::Tens(20),
        b"thirtieth" => Numeral::Tens(30),
        b"fortieth" => Numeral::Tens(40),
        b"fiftieth" => Numeral::Tens(50),
        b"sixtieth" => Numeral::Tens(60),
        b"seventieth" => Numeral::Tens(70),
        b"eightieth" => Numeral::Tens(80),
        b"ninetieth" => Numeral::Tens(90),
        b"hundredth" => Numeral::Hundred,
        b"thousandth" => Numeral::Thousand,
        _ => return None,
    })
}

fn other(name: Bytes<'_>) -> Option<Word> {
    Some(match name {
        b"half" => Word::Part(2, Ending::Singular),
        b"halves" | b"halfs" => Word::Part(2, Ending::Plural),
        b"quarter" => Word::Part(4, Ending::Singular),
        b"quarters" => Word::Part(4, Ending::Plural),
        b"oh" | b"o" => Word::Oh,
        b"a" | b"an" => Word::Article,
        b"and" => Word::And,
        b"of" => Word::Of,
        b"by" | b"x" => Word::By,
        b"over" => Word::Over,
        b"point" => Word::Point,
        b"minus" | b"negative" => Word::Sign { negative: true },
        b"plus" => Word::Sign { negative: false },
        _ => return lowercase_qualifier(name).map(|_| Word::Qualifier),
    })
}

#[cfg(test)]
mod tests {
    use super::{Ending, Numeral, Word, lookup};

    #[test]
    fn every_numeral_has_its_ordinals() {
        for (cardinal, ordinal, numeral) in [
            ("three", "third", Numeral::Small(3)),
            ("five", "fifth", Numeral::Small(5)),
            ("eight", "eighth", Numeral::Small(8)),
            ("nine", "ninth", Numeral::Small(9)),
            ("twelve", "twelfth", Numeral::Small(12)),
            ("sixteen", "sixteenth", Numeral::Small(16)),
            ("twenty", "twentieth", Numeral::Tens(20)),
            ("hundred", "hundredth", Numeral::Hundred),
            ("thousand", "thousandth", Numeral::Thousand),
        ] {
            let plural = std::format!("{ordinal}S");
            let endings = [(cardinal, Ending::Cardinal), (ordinal, Ending::Singular), (&*plural, Ending::Plural)];
            for (word, ending) in endings {
                assert_eq!(lookup(word.as_bytes()), Some(Word::Numeral(numeral, ending)), "{word:?}");
            }
        }
    }

    #[test]
    fn what_is_no_word_of_a_length_is_not_known() {
        for word in ["", "s", "once", "furlong", "twentyfive", "inches", "approximatelyy"] {
            assert_eq!(lookup(word.as_bytes()), None, "{word:?}");
        }
    }
}
