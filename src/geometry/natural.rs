//! Whole numbers of any size, for the squares and products that tell on which side of a graduation a length
//! lies. Schoolbook methods on purpose: the numbers are a few words long. What is compared, and why the
//! answer is proof, is left to `root.rs` and `tangent.rs`.

use alloc::vec;
use alloc::vec::Vec;
use core::cmp::Ordering;

/// A whole number, zero or above, in words of 64 bits.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Natural {
    /// The least first; the last is not zero.
    words: Vec<u64>,
}

impl Natural {
    pub(super) const ZERO: Self = Self { words: Vec::new() };

    /// From words, the least first.
    pub(super) fn of_words(mut words: Vec<u64>) -> Self {
        words.truncate(words.iter().rposition(|word| *word != 0).map_or(0, |last| last + 1));
        Self { words }
    }

    pub(super) fn is_zero(&self) -> bool {
        self.words.is_empty()
    }

    pub(super) fn plus(&self, other: &Self) -> Self {
        let mut carry = false;
        let places = 0..=self.words.len().max(other.words.len());
        let sums = places.map(|place| {
            let (sum, first) = self.word(place).overflowing_add(other.word(place));
            let (sum, second) = sum.overflowing_add(carry.into());
            carry = first || second;
            sum
        });
        Self::of_words(sums.collect())
    }

    /// How far two numbers are apart: the greater less the smaller.
    pub(super) fn apart(&self, other: &Self) -> Self {
        let (greater, smaller) = if self > other { (self, other) } else { (other, self) };
        let mut borrow = false;
        let differences = (0..greater.words.len()).map(|place| {
            let (rest, first) = greater.word(place).overflowing_sub(smaller.word(place));
            let (rest, second) = rest.overflowing_sub(borrow.into());
            borrow = first || second;
            rest
        });
        Self::of_words(differences.collect())
    }

    pub(super) fn times(&self, other: &Self) -> Self {
        let mut words = vec![0; self.words.len() + other.words.len()];
        for (start, own) in self.words.iter().enumerate() {
            let mut carry = 0;
            for (place, word) in words[start..].iter_mut().enumerate() {
                // At most (2^64 - 1)^2 + 2 × (2^64 - 1), which is 2^128 - 1.
                let sum = u128::from(*own) * u128::from(other.word(place)) + u128::from(*word) + carry;
                *word = low(sum);
                carry = sum >> 64;
            }
        }
        Self::of_words(words)
    }

    pub(super) fn squared(&self) -> Self {
        self.times(self)
    }

    /// The whole part of a quotient. The divisor is not zero.
    pub(super) fn over(&self, divisor: u64) -> Self {
        let mut words = self.words.clone();
        let mut rest: u128 = 0;
        for word in words.iter_mut().rev() {
            let dividend = rest << 64 | u128::from(*word);
            *word = low(dividend / u128::from(divisor));
            rest = dividend % u128::from(divisor);
        }
        Self::of_words(words)
    }

    /// The whole part of this number over 2 to the power of 64 for each of so many words.
    pub(super) fn without(&self, words: usize) -> Self {
        Self { words: self.words.get(words..).unwrap_or_default().to_vec() }
    }

    fn word(&self, place: usize) -> u64 {
        self.words.get(place).copied().unwrap_or(0)
    }
}

#[allow(clippy::cast_possible_truncation)] // the point of it
const fn low(number: u128) -> u64 {
    number as u64
}

impl From<u128> for Natural {
    fn from(number: u128) -> Self {
        Self::of_words(vec![low(number), low(number >> 64)])
    }
}

impl From<u64> for Natural {
    fn from(number: u64) -> Self {
        Self::of_words(vec![number])
    }
}

impl Ord for Natural {
    fn cmp(&self, other: &Self) -> Ordering {
        let by_size = self.words.len().cmp(&other.words.len());
        by_size.then_with(|| self.words.iter().rev().cmp(other.words.iter().rev()))
    }
}

impl PartialOrd for Natural {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

#[cfg(test)]
mod tests {
    use std::vec::Vec;

    use num_bigint::BigUint;
    use quickcheck::quickcheck;

    use super::Natural;

    /// Words of which every other one is at an end of its range, where carries start.
    fn natural(words: &[u64]) -> Natural {
        let ends = [0, 1, u64::MAX];
        let word = |(place, word): (usize, &u64)| if place % 2 == 0 { ends[(*word % 3) as usize] } else { *word };
        Natural::of_words(words.iter().enumerate().map(word).collect())
    }

    impl Natural {
        /// The same number as the oracles have it.
        pub(in super::super) fn big(&self) -> BigUint {
            assert_ne!(self.words.last(), Some(&0));
            self.words.iter().rev().fold(BigUint::ZERO, |number, word| (number << 64) + *word)
        }
    }

    quickcheck! {
        fn agrees_with_big_integers(a: Vec<u64>, b: Vec<u64>, divisor: u64, words: u8) -> bool {
            let (a, b) = (natural(&a), natural(&b));
            let (x, y) = (a.big(), b.big());
            let apart = if x > y { &x - &y } else { &y - &x };
            let divisor = divisor.max(1);
            let words = usize::from(words % 5);
            a.plus(&b).big() == &x + &y
                && a.apart(&b).big() == apart
                && a.times(&b).big() == &x * &y
                && a.squared().big() == &x * &x
                && a.over(divisor).big() == &x / divisor
                && a.without(words).big() == &x >> (64 * words)
                && a.cmp(&b) == x.cmp(&y)
                && a.is_zero() == (x == BigUint::ZERO)
        }

        fn small_numbers_are_taken_as_they_are(a: u128, b: u64) -> bool {
            Natural::from(a).big() == BigUint::from(a) && Natural::from(b).big() == BigUint::from(b)
        }
    }

    #[test]
    fn zero_is_one_number() {
        assert_eq!(Natural::from(0_u128), Natural::ZERO);
        assert_eq!(Natural::from(7_u64).apart(&Natural::from(7_u128)), Natural::ZERO);
        assert_eq!(Natural::ZERO.times(&Natural::from(u128::MAX)), Natural::ZERO);
        assert_eq!(Natural::ZERO.plus(&Natural::ZERO), Natural::ZERO);
    }
}
