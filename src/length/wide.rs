//! Division of numbers past 128 bits, for the rare rounding whose quotient fits and whose dividend
//! does not. Slow and plain on purpose: one bit at a time, no table, nothing to get wrong.

/// A 256-bit number: `high × 2^128 + low`. The derived order compares `high` first.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Wide {
    high: u128,
    low: u128,
}

impl Wide {
    /// The whole product, by four half products.
    pub(crate) const fn product(a: u128, b: u128) -> Self {
        const HALF: u128 = u64::MAX as u128;
        let (a_high, a_low, b_high, b_low) = (a >> 64, a & HALF, b >> 64, b & HALF);
        let low = a_low * b_low;
        let (middle, carried) = (a_high * b_low).overflowing_add(a_low * b_high);
        let (low, carry) = low.overflowing_add(middle << 64);
        let high = a_high * b_high + (middle >> 64) + ((carried as u128) << 64) + carry as u128;
        Self { high, low }
    }

    /// Twice this number; `None` past 256 bits.
    pub(crate) fn doubled(self) -> Option<Self> {
        let high = self.high.checked_mul(2)? | (self.low >> 127);
        Some(Self { high, low: self.low << 1 })
    }

    fn minus(self, smaller: Self) -> Self {
        let (low, borrow) = self.low.overflowing_sub(smaller.low);
        Self { high: self.high - smaller.high - u128::from(borrow), low }
    }

    /// Quotient and remainder; `None` when the divisor is zero, or when the quotient needs more than
    /// 128 bits or a rest on the way to it more than 255.
    pub(crate) fn divide(self, divisor: Self) -> Option<(u128, Self)> {
        if divisor == (Self { high: 0, low: 0 }) {
            return None;
        }
        let mut quotient: u128 = 0;
        let mut rest = Self { high: 0, low: 0 };
        for place in (0..256).rev() {
            let half = if place >= 128 { self.high } else { self.low };
            rest = rest.doubled()?;
            rest.low |= (half >> (place % 128)) & 1;
            if quotient >> 127 == 1 {
                return None;
            }
            quotient <<= 1;
            if rest >= divisor {
                rest = rest.minus(divisor);
                quotient |= 1;
            }
        }
        Some((quotient, rest))
    }
}

#[cfg(test)]
mod tests {
    use num_bigint::BigUint;
    use quickcheck::quickcheck;

    use super::Wide;

    fn big(wide: Wide) -> BigUint {
        (BigUint::from(wide.high) << 128_u32) + BigUint::from(wide.low)
    }

    quickcheck! {
        fn products_agree_with_big_integers(a: u128, b: u128) -> bool {
            big(Wide::product(a, b)) == BigUint::from(a) * BigUint::from(b)
        }

        fn quotients_agree_with_big_integers(a: u128, b: u128, c: u128, d: u128) -> bool {
            let (top, bottom) = (Wide::product(a, b), Wide::product(c, d >> 1));
            if big(bottom) == BigUint::ZERO {
                return top.divide(bottom).is_none();
            }
            let expected = (big(top) / big(bottom), big(top) % big(bottom));
            match top.divide(bottom) {
                Some((quotient, rest)) => (BigUint::from(quotient), big(rest)) == expected,
                None => expected.0 > BigUint::from(u128::MAX),
            }
        }
    }
}
