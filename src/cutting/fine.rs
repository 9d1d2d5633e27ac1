//! A number in parts so fine that a linear program can be solved in them: whole numbers of parts, the same on every machine.
//! What is lost below a part makes a proposal weaker; what follows from a proposal is proved in `worth.rs`.

use core::ops::{Add, AddAssign, Neg, Sub, SubAssign};

/// How many bits stand behind the point.
const BITS: u32 = 42;

/// A number in 2⁻⁴² parts, up to some two million, twice the most parts of a job. Past that it stays at the end of its range: it is a proposal.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Fine(i64);

impl Fine {
    pub(super) const ZERO: Self = Self(0);
    pub(super) const ONE: Self = Self(1 << BITS);
    /// What counts as zero: far more than what rounding loses, far less than any share of a board.
    pub(super) const SMALL: Self = Self(1 << (BITS - 26));

    fn narrow(parts: i128) -> Self {
        Self(i64::try_from(parts).unwrap_or(if parts < 0 { i64::MIN } else { i64::MAX }))
    }

    /// To the nearest part: rounded down, a thousand products would lean to one side.
    fn rounded(product: i128) -> Self {
        Self::narrow(product.saturating_add(1 << (BITS - 1)) >> BITS)
    }

    pub(super) fn whole(count: u64) -> Self {
        Self::narrow(i128::from(count) << BITS)
    }

    /// A share of what is not zero.
    pub(super) fn share(num: u64, den: u64) -> Self {
        Self::narrow((i128::from(num) << BITS) / i128::from(den))
    }

    pub(super) fn times(self, other: Self) -> Self {
        Self::rounded(i128::from(self.0) * i128::from(other.0))
    }

    /// Over a pivot, which is no small number.
    pub(super) fn over(self, other: Self) -> Self {
        Self::narrow((i128::from(self.0) << BITS) / i128::from(other.0))
    }

    pub(super) fn size(self) -> u64 {
        self.0.unsigned_abs()
    }

    /// So many times a large number, rounded down.
    pub(super) fn of(self, large: i128) -> i128 {
        (i128::from(self.0) * large) >> BITS
    }

    /// The whole numbers in it, if it is above zero; what is a hair below one counts as one.
    pub(super) fn floor(self) -> u64 {
        u64::try_from((i128::from(self.0) + i128::from(Self::SMALL.0)) >> BITS).unwrap_or(0)
    }
}

/// The sum of the products, rounded once.
pub(super) fn dot(pairs: impl Iterator<Item = (Fine, Fine)>) -> Fine {
    Fine::rounded(pairs.fold(0_i128, |sum, (one, other)| sum.saturating_add(i128::from(one.0) * i128::from(other.0))))
}

impl Add for Fine {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }
}

impl Sub for Fine {
    type Output = Self;

    fn sub(self, other: Self) -> Self {
        Self(self.0.saturating_sub(other.0))
    }
}

impl Neg for Fine {
    type Output = Self;

    fn neg(self) -> Self {
        Self(self.0.saturating_neg())
    }
}

impl AddAssign for Fine {
    fn add_assign(&mut self, other: Self) {
        *self = *self + other;
    }
}

impl SubAssign for Fine {
    fn sub_assign(&mut self, other: Self) {
        *self = *self - other;
    }
}

#[cfg(test)]
mod tests {
    use super::{Fine, dot};

    #[test]
    fn parts_are_rounded_to_the_nearest() {
        let (third, three) = (Fine::share(1, 3), Fine::whole(3));
        // Worked by hand: a third is 1466015503701.33 parts, and three of them are one part short of one.
        assert_eq!((third.0, third.times(three).0), (1_466_015_503_701, (1 << 42) - 1));
        assert_eq!(Fine::ONE.over(three), third);
        assert_eq!(dot([(third, three), (-Fine::ONE, Fine::ONE)].into_iter()), Fine(-1));
        // A third of 2 parts is 0.67 parts, and that is nearer to one; of 1 part it is nearer to none.
        assert_eq!([2, 1, -1, -2].map(|parts| Fine(parts).times(third).0), [1, 0, 0, -1]);
    }

    #[test]
    fn whole_numbers_in_it() {
        for (number, whole) in [(Fine::whole(5), 5), (Fine::whole(5) - Fine(1), 5), (Fine::share(59, 10), 5), (-Fine::ONE, 0)] {
            assert_eq!(number.floor(), whole, "{number:?}");
        }
        assert_eq!((Fine::share(1, 4).of(100), Fine::share(1, 3).of(100)), (25, 33));
    }

    /// Past its range it stays at the end: a proposal, never a panic.
    #[test]
    fn it_ends_somewhere() {
        let most = Fine::whole(u64::MAX);
        assert_eq!((most, most.times(most), most + most, most.over(Fine(1))), (Fine(i64::MAX), most, most, most));
        assert_eq!((-most).times(most), Fine(i64::MIN));
        assert_eq!((-most - most, dot([(most, most); 9].into_iter())), (Fine(i64::MIN), most));
    }
}
