//! The exact number under every quantity: an `i128` over a `u64`, in lowest terms.
//!
//! Why this and not `Ratio<i128>`: a shop's numbers nearly always come out whole in ticks, and then a
//! sum is one checked integer addition. The narrow denominator leaves room to work wide inside and
//! narrow once, so an operation refuses only when its *answer* does not fit, never because a step on
//! the way did not. What a unit is, and what a tick is, is left to `unit.rs` and `mod.rs`.
//!
//! Invariant, kept by every function here: `den > 0`, `gcd(|num|, den) = 1`, `num != i128::MIN`
//! (so that negation cannot fail). Equality and hashing can therefore look at the fields alone.

use core::cmp::Ordering;

use super::gcd::{gcd, gcd_u64};

#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub(crate) struct Fraction {
    num: i128,
    den: u64,
}

impl Fraction {
    pub(crate) const ZERO: Self = Self { num: 0, den: 1 };
    pub(crate) const MAX: Self = Self { num: i128::MAX, den: 1 };

    /// A whole number; `None` for `i128::MIN`, the one number whose negative does not exist.
    #[inline]
    pub(crate) const fn whole(num: i128) -> Option<Self> {
        if num == i128::MIN { None } else { Some(Self { num, den: 1 }) }
    }

    /// `num / den`, reduced; `None` when `den` is zero or the reduced number does not fit.
    pub(crate) const fn reduced(num: i128, den: u128) -> Option<Self> {
        if den == 0 {
            return None;
        }
        let (magnitude, reduced) = lowest(num.unsigned_abs(), den);
        Self::narrow(magnitude, num < 0, reduced)
    }

    /// Narrows a number that is already in lowest terms.
    const fn narrow(magnitude: u128, negative: bool, den: u128) -> Option<Self> {
        if magnitude > i128::MAX as u128 || den > u64::MAX as u128 {
            return None;
        }
        #[allow(clippy::cast_possible_truncation, clippy::cast_possible_wrap)] // both bounds were just checked
        let (magnitude, den) = (magnitude as i128, den as u64);
        Some(Self { num: if negative { -magnitude } else { magnitude }, den })
    }

    #[inline]
    pub(crate) const fn num(self) -> i128 {
        self.num
    }

    #[inline]
    pub(crate) const fn den(self) -> u64 {
        self.den
    }

    #[inline]
    pub(crate) const fn negated(self) -> Self {
        Self { num: -self.num, den: self.den }
    }

    #[inline]
    pub(crate) const fn magnitude(self) -> Self {
        Self { num: self.num.abs(), den: self.den }
    }

    #[inline]
    pub(crate) const fn checked_add(self, other: Self) -> Option<Self> {
        // No denominator is zero, and so this is one only if both are.
        if self.den | other.den == 1 {
            if let Some(num) = self.num.checked_add(other.num) {
                return Self::whole(num);
            }
        }
        self.add_parts(other)
    }

    /// Any sum. Kept out of line, so that where whole ticks are added there is an addition and little else.
    #[inline(never)]
    const fn add_parts(self, other: Self) -> Option<Self> {
        if other.den == 1 {
            // Adding a whole number keeps lowest terms: no common divisor to look for.
            if let Some(scaled) = other.num.checked_mul(self.den as i128) {
                if let Some(num) = self.num.checked_add(scaled) {
                    return if num == i128::MIN { None } else { Some(Self { num, den: self.den }) };
                }
            }
        }
        self.add_wide(other)
    }

    #[inline]
    pub(crate) const fn checked_sub(self, other: Self) -> Option<Self> {
        self.checked_add(other.negated())
    }

    /// Adds whole parts and proper parts apart, so that no step needs more than 128 bits.
    #[cold]
    #[inline(never)]
    const fn add_wide(self, other: Self) -> Option<Self> {
        let (whole_a, part_a) = self.split();
        let (whole_b, part_b) = other.split();
        let Some(whole) = whole_a.checked_add(whole_b) else { return None };

        let shared = gcd_u64(self.den, other.den) as u128;
        let (scale_a, scale_b) = (other.den as u128 / shared, self.den as u128 / shared);
        let common = self.den as u128 * scale_a;
        // Past this, `common / shared` cannot fit 64 bits, and the sum below stays under 2^128.
        if common > i128::MAX as u128 {
            return None;
        }
        let part = part_a as u128 * scale_a + part_b as u128 * scale_b;
        // Both operands are in lowest terms, so the sum can only share factors with `shared`.
        let divisor = gcd(part, shared);
        let (part, den) = (part / divisor, common / divisor);
        if den > u64::MAX as u128 {
            return None;
        }
        Self::join(whole, part, den)
    }

    /// The floor and what is left above it, in `self.den`ths.
    const fn split(self) -> (i128, u64) {
        let den = self.den as i128;
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // 0 <= remainder < den
        (self.num.div_euclid(den), self.num.rem_euclid(den) as u64)
    }

    /// `whole + part / den` for `part < 2 * den`, with `part / den` in lowest terms.
    #[allow(clippy::cast_possible_truncation, clippy::cast_possible_wrap, clippy::cast_sign_loss)] // part < 2 * den < 2^65
    const fn join(whole: i128, part: u128, den: u128) -> Option<Self> {
        let (mut part, den) = (part as i128, den as i128);
        // A negative whole is brought one nearer to zero, so that both terms point the same way
        // and the product overflows only if the answer does.
        let carry = if part >= den { 1 } else { 0 } + if whole < 0 { 1 } else { 0 };
        part -= carry * den;
        let Some(whole) = whole.checked_add(carry) else { return None };
        let Some(scaled) = whole.checked_mul(den) else { return None };
        match scaled.checked_add(part) {
            Some(num) if num != i128::MIN => Some(Self { num, den: den as u64 }),
            _ => None,
        }
    }

    #[inline]
    pub(crate) const fn checked_mul_int(self, factor: i128) -> Option<Self> {
        if self.den == 1 {
            if let Some((num, factor)) = near(self.num, factor) {
                return Some(Self { num: num as i128 * factor as i128, den: 1 });
            }
            return match self.num.checked_mul(factor) {
                Some(num) => Self::whole(num),
                None => None,
            };
        }
        self.checked_scale(factor, 1)
    }

    /// `self / divisor` for a divisor that is not zero.
    #[inline]
    pub(crate) const fn checked_div_int(self, divisor: i128) -> Option<Self> {
        if self.den == 1 && divisor > 0 {
            if let Some(quotient) = exact_quotient(self.num, divisor) {
                return Some(Self { num: quotient, den: 1 });
            }
        }
        let sign = if divisor < 0 { -1 } else { 1 };
        self.checked_scale(sign, divisor.unsigned_abs())
    }

    /// `self × num / den`, for any `den`; `None` when it is zero or the answer does not fit.
    pub(crate) const fn checked_scale(self, num: i128, den: u128) -> Option<Self> {
        match product((self.num, self.den as u128), (num, den)) {
            Some((num, den)) => Self::reduced(num, den),
            None => None,
        }
    }

    /// Never overflows: whole parts first, and only equal ones go on to the proper parts.
    #[inline]
    pub(crate) fn compare(self, other: Self) -> Ordering {
        if self.den == other.den {
            return self.num.cmp(&other.num);
        }
        let (whole_a, part_a) = self.split();
        let (whole_b, part_b) = other.split();
        whole_a.cmp(&whole_b).then_with(|| {
            let left = u128::from(part_a) * u128::from(other.den);
            left.cmp(&(u128::from(part_b) * u128::from(self.den)))
        })
    }
}

/// Both numbers in 64 bits, where they fit: their product then needs no check, and their quotient no
/// wide division.
#[inline]
#[allow(clippy::cast_possible_truncation)] // the round trip is the check
const fn near(a: i128, b: i128) -> Option<(i64, i64)> {
    if a as i64 as i128 == a && b as i64 as i128 == b { Some((a as i64, b as i64)) } else { None }
}

/// `num / divisor` when it comes out whole, for a divisor above zero.
#[inline]
const fn exact_quotient(num: i128, divisor: i128) -> Option<i128> {
    if let Some((num, divisor)) = near(num, divisor) {
        return if num % divisor == 0 { Some((num / divisor) as i128) } else { None };
    }
    if num % divisor == 0 { Some(num / divisor) } else { None }
}

/// Both without their common divisor. Most have none, and then there is no wide division either.
const fn lowest(num: u128, den: u128) -> (u128, u128) {
    match gcd(num, den) {
        1 => (num, den),
        divisor => (num / divisor, den / divisor),
    }
}

/// The product of two fractions in lowest terms, whatever they were before; `None` when a
/// denominator is zero or the product needs more than an `i128` over a `u128`.
pub(crate) const fn product(a: (i128, u128), b: (i128, u128)) -> Option<(i128, u128)> {
    if a.1 == 0 || b.1 == 0 {
        return None;
    }
    let (num_a, den_a) = lowest(a.0.unsigned_abs(), a.1);
    let (num_b, den_b) = lowest(b.0.unsigned_abs(), b.1);
    let ((num_a, den_b), (num_b, den_a)) = (lowest(num_a, den_b), lowest(num_b, den_a));
    let Some(num) = num_a.checked_mul(num_b) else { return None };
    let Some(den) = den_a.checked_mul(den_b) else { return None };
    if num > i128::MAX as u128 {
        return None;
    }
    #[allow(clippy::cast_possible_wrap)] // checked on the line above
    let num = num as i128;
    Some((if (a.0 < 0) == (b.0 < 0) { num } else { -num }, den))
}

/// One over a fraction, its sign above the line again; the inverse of zero has the denominator zero,
/// which `product` refuses.
#[allow(clippy::cast_possible_wrap)] // a denominator is at most 2^64 times the ticks of a unit
pub(crate) const fn inverse((num, den): (i128, u128)) -> (i128, u128) {
    (if num < 0 { -(den as i128) } else { den as i128 }, num.unsigned_abs())
}

#[cfg(test)]
mod tests;
