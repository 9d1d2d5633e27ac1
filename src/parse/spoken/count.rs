//! Whole numbers in words: every number that a run of words can begin with, shortest first. Which of them
//! is meant is left to `grammar.rs`, which tries them all.

use super::tokens::Token;
use super::words::{Ending, Numeral, Word};

/// A whole number at the start of some words.
#[derive(Clone, Copy, Debug)]
pub(super) struct Count {
    /// How many words it takes.
    pub(super) length: usize,
    pub(super) value: u128,
    /// The ending of its last word: `twenty-fourths` ends as `fourths` does.
    pub(super) ending: Ending,
    /// Whether it begins with `hundred` or `thousand` and nothing to say how many.
    pub(super) bare: bool,
}

/// Every whole number that these words begin with: for `two hundred and five` 2, 200 and 205. A number
/// that ends as an ordinal is the last.
pub(super) fn counts(tokens: &[Token<'_>]) -> impl Iterator<Item = Count> {
    let (mut length, mut tally) = opening(tokens);
    let mut ended = false;
    core::iter::from_fn(move || {
        let (at, numeral, ending) = tally.next_numeral(tokens, length).filter(|_| !ended)?;
        tally.push(numeral)?;
        (length, ended) = (at + 1, ending != Ending::Cardinal);
        Some(Count { length, value: tally.thousands + tally.group, ending, bare: tally.bare })
    })
}

/// The whole numbers among them, without those that end as an ordinal.
pub(super) fn cardinals(tokens: &[Token<'_>]) -> impl Iterator<Item = Count> {
    counts(tokens).filter(|count| count.ending == Ending::Cardinal)
}

/// A number being added up: thousands that are done, and the group of up to three digits behind them.
struct Tally {
    thousands: u128,
    group: u128,
    /// What is added next must stay below this.
    limit: u128,
    bare: bool,
}

/// Nothing has been said yet.
const ANYTHING: u128 = u128::MAX;

/// `a hundred` and `a thousand` begin with one.
fn opening(tokens: &[Token<'_>]) -> (usize, Tally) {
    let tally = Tally { thousands: 0, group: 0, limit: ANYTHING, bare: false };
    let word = |place: usize| tokens.get(place).map(|token| token.word);
    match (word(0), word(1)) {
        (Some(Word::Article), Some(Word::Numeral(Numeral::Hundred | Numeral::Thousand, Ending::Cardinal))) => {
            (1, Tally { group: 1, limit: 1, ..tally })
        }
        _ => (0, tally),
    }
}

impl Tally {
    /// The next numeral and its place. An `and` may stand behind a hundred or a thousand, before what
    /// is added to it.
    fn next_numeral(&self, tokens: &[Token<'_>], at: usize) -> Option<(usize, Numeral, Ending)> {
        let may_join = self.limit == 100 || self.limit == 1000;
        match tokens.get(at)?.word {
            Word::Numeral(numeral, ending) => Some((at, numeral, ending)),
            Word::And if may_join => match tokens.get(at + 1)?.word {
                Word::Numeral(Numeral::Hundred | Numeral::Thousand, _) => None,
                Word::Numeral(numeral, ending) => Some((at + 1, numeral, ending)),
                _ => None,
            },
            _ => None,
        }
    }

    /// Adds a numeral, or says that the number has ended before it. A number in figures is whole as it
    /// stands: nothing smaller is added to it, only hundreds and thousands are made of it.
    fn push(&mut self, numeral: Numeral) -> Option<()> {
        let first = self.limit == ANYTHING;
        match numeral {
            Numeral::Small(worth) if worth < self.limit && (worth > 0 || first) => self.add(worth, 1),
            Numeral::Tens(worth) if worth < self.limit => self.add(worth, 10),
            Numeral::Digits(worth) if worth < self.limit && self.limit >= 100 => self.add(worth, 1),
            Numeral::Hundred if first => self.begin_bare(0, 100),
            Numeral::Thousand if first => self.begin_bare(1000, 0),
            Numeral::Hundred if (1..=self.most_hundreds()).contains(&self.group) => {
                (self.group, self.limit) = (self.group * 100, 100);
            }
            Numeral::Thousand if self.thousands == 0 && (1..1000).contains(&self.group) => {
                (self.thousands, self.group, self.limit) = (self.group * 1000, 0, 1000);
            }
            _ => return None,
        }
        Some(())
    }

    fn add(&mut self, worth: u128, limit: u128) {
        self.group += worth;
        self.limit = limit;
    }

    fn begin_bare(&mut self, thousands: u128, group: u128) {
        *self = Self { thousands, group, limit: thousands + group, bare: true };
    }

    /// `twenty-four hundred`, but not behind a thousand.
    const fn most_hundreds(&self) -> u128 {
        if self.thousands == 0 { 99 } else { 9 }
    }
}

#[cfg(test)]
mod tests {
    use std::vec::Vec;

    use super::{cardinals, counts};
    use crate::parse::parser::Comma;
    use crate::parse::spoken::tokens::Tokens;

    #[test]
    fn every_number_that_words_begin_with() {
        let values = |text: &'static str| -> Vec<u128> {
            let tokens = Tokens::read(text.as_bytes(), Comma::Refuse).unwrap();
            counts(tokens.all()).map(|count| count.value).collect()
        };
        assert_eq!(values("two hundred and five"), [2, 200, 205]);
        assert_eq!(values("twenty five hundred"), [20, 25, 2500]);
        assert_eq!(values("two thousand four hundred and forty"), [2, 2000, 2004, 2400, 2440]);
        assert_eq!(values("a hundred and two"), [100, 102]);
        assert_eq!(values("2 hundred 20 5"), [2, 200, 220]);
        assert_eq!(values("hundred twenty eighths five"), [100, 120, 128]);
        for ended in ["twenty twelve", "twenty and five", "twenty zero", "20 five", "20 5", "twenty twenty"] {
            assert_eq!(values(ended), [20], "{ended:?}");
        }
        assert_eq!(values("zero hundred"), [0]);
        assert_eq!(values("a five"), []);
    }

    #[test]
    fn a_number_that_ends_as_an_ordinal_is_no_cardinal() {
        let tokens = Tokens::read(b"sixty-fourths", Comma::Refuse).unwrap();
        assert_eq!(cardinals(tokens.all()).map(|count| count.value).last(), Some(60));
    }
}
