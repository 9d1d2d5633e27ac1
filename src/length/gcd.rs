//! The greatest common divisor, by shifts and subtractions, behind one division where the numbers are far apart; 64
//! bits wide wherever that is enough.
//! What is done with it, lowest terms, is left to `fraction.rs`.

/// The greatest common divisor; `gcd(0, n)` is `n`.
pub(crate) const fn gcd(mut a: u128, mut b: u128) -> u128 {
    while a > u64::MAX as u128 || b > u64::MAX as u128 {
        if b == 0 {
            return a;
        }
        (a, b) = (b, a % b);
    }
    #[allow(clippy::cast_possible_truncation)] // the loop ends when both fit
    let (a, b) = (a as u64, b as u64);
    gcd_u64(a, b) as u128
}

/// The greatest common divisor of two 64-bit numbers; `gcd_u64(0, n)` is `n`.
pub(crate) const fn gcd_u64(mut a: u64, mut b: u64) -> u64 {
    if a == 0 || b == 0 {
        return a | b;
    }
    // Shifts and subtractions take a step for each bit that one number is longer; one division takes them all at once.
    if a.leading_zeros().abs_diff(b.leading_zeros()) > 8 {
        (a, b) = if a > b { (b, a % b) } else { (a, b % a) };
        if b == 0 {
            return a;
        }
    }
    let twos = (a | b).trailing_zeros();
    a >>= a.trailing_zeros();
    while b != 0 {
        b >>= b.trailing_zeros();
        if a > b {
            (a, b) = (b, a);
        }
        b -= a;
    }
    a << twos
}

#[cfg(test)]
mod tests {
    use super::{gcd, gcd_u64};

    /// Euclid's own rule, one subtraction at a time.
    fn slow(a: u64, b: u64) -> u64 {
        match (a, b) {
            (0, n) | (n, 0) => n,
            (a, b) if a >= b => slow(a - b, b),
            (a, b) => slow(a, b - a),
        }
    }

    #[test]
    fn agrees_with_subtraction_on_every_small_pair() {
        for a in 0..=130 {
            for b in 0..=130 {
                assert_eq!(gcd_u64(a, b), slow(a, b), "gcd({a}, {b})");
                assert_eq!(gcd(a.into(), b.into()), slow(a, b).into(), "wide gcd({a}, {b})");
            }
        }
    }

    #[test]
    fn agrees_with_subtraction_where_one_number_is_much_the_longer() {
        for short in 1..=130 {
            for long in (1 << 40) - 70..(1 << 40) + 70 {
                let expected = slow(short, long % short);
                assert_eq!((gcd_u64(short, long), gcd_u64(long, short)), (expected, expected), "gcd({short}, {long})");
            }
        }
        assert_eq!((gcd_u64(6, u64::MAX), gcd_u64(u64::MAX, 1)), (3, 1));
    }

    #[test]
    fn is_right_past_64_bits() {
        let prime = (1_u128 << 61) - 1;
        assert_eq!(gcd(prime * 48, prime * 36), prime * 12);
        assert_eq!(gcd(u128::MAX, 0), u128::MAX);
        assert_eq!(gcd(0, u128::MAX), u128::MAX);
        assert_eq!(gcd(1 << 127, u128::MAX), 1);
    }
}
