//! The one way out to floats, which loses, and the one way in, which takes a float at its word.
//! Nothing else in the crate computes with floats.

use super::{Length, LengthError, Unit};

impl Length {
    /// This length as a float, within three units in the last place: for plotting, not for cutting.
    ///
    /// ```
    /// use scantling::{Length, Unit};
    ///
    /// let lossy = Length::fraction(141, 8, Unit::Inch).to_f64_lossy(Unit::Inch);
    /// assert!((lossy - 17.625).abs() < 1e-12);
    /// ```
    #[must_use]
    #[allow(clippy::cast_precision_loss)] // the name says so
    pub fn to_f64_lossy(self, unit: Unit) -> f64 {
        let (num, den) = self.in_unit_parts(unit);
        // Up to one unit from rounding each part, and half a unit from the division.
        num as f64 / den as f64
    }

    /// The exact value a float holds, which is seldom the decimal it was written as.
    ///
    /// ```
    /// use scantling::{Length, Unit};
    ///
    /// assert_eq!(Length::try_from_f64_exact(17.625, Unit::Inch)?, Length::fraction(141, 8, Unit::Inch));
    /// // 1.2 has no exact float: what arrives is a hair below 6/5.
    /// assert!(Length::try_from_f64_exact(1.2, Unit::Inch)? < Length::fraction(6, 5, Unit::Inch));
    /// # Ok::<(), scantling::LengthError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`LengthError::NotFinite`] for an infinity or a NaN, [`LengthError::OutOfRange`] when the exact
    /// value cannot be held.
    #[allow(clippy::cast_possible_wrap)] // 11 bits
    pub const fn try_from_f64_exact(value: f64, unit: Unit) -> Result<Self, LengthError> {
        if !value.is_finite() {
            let value = if value.is_nan() {
                "NaN"
            } else if value > 0.0 {
                "inf"
            } else {
                "-inf"
            };
            return Err(LengthError::NotFinite { value });
        }
        let bits = value.to_bits();
        let raised = (bits >> 52) & 0x7ff;
        let stored = (bits & ((1 << 52) - 1)) as i128;
        // Subnormal numbers have no leading one and share the lowest exponent.
        let (significand, exponent) = if raised == 0 { (stored, -1074) } else { (stored | 1 << 52, raised as i32 - 1075) };
        let signed = if value.is_sign_negative() { -significand } else { significand };
        Self::scaled_by_two(signed, exponent, unit)
    }

    #[allow(clippy::cast_possible_wrap)] // at most 127 trailing zeros
    const fn scaled_by_two(significand: i128, exponent: i32, unit: Unit) -> Result<Self, LengthError> {
        if significand == 0 {
            return Ok(Self::ZERO);
        }
        let twos = significand.trailing_zeros();
        let (odd, exponent) = (significand >> twos, exponent + twos as i32);
        match exponent {
            -127..=0 => Self::from_parts(odd, 1 << -exponent, unit),
            1..=126 => match odd.checked_mul(1 << exponent) {
                Some(whole) => Self::from_parts(whole, 1, unit),
                None => Err(LengthError::OutOfRange),
            },
            _ => Err(LengthError::OutOfRange),
        }
    }
}

#[cfg(test)]
mod tests {
    use num_rational::BigRational;
    use quickcheck::quickcheck;

    use super::{Length, LengthError, Unit};

    /// The exact value in ticks, if a length can hold it.
    fn held(inches: &BigRational, unit: Unit) -> Option<BigRational> {
        let ticks = inches * BigRational::from_integer(unit.ticks().into());
        let num = i128::try_from(ticks.numer()).is_ok_and(|num| num != i128::MIN);
        (num && u64::try_from(ticks.denom()).is_ok()).then_some(ticks)
    }

    fn ticks(length: Length) -> BigRational {
        BigRational::new(length.ticks().num().into(), length.ticks().den().into())
    }

    /// Taken exactly if it can be held, refused if not.
    fn is_taken_or_refused(value: f64) -> bool {
        let exact = BigRational::from_float(value).expect("a finite float");
        Unit::ALL.into_iter().all(|unit| Length::try_from_f64_exact(value, unit).ok().map(ticks) == held(&exact, unit))
    }

    #[test]
    fn every_power_of_two_is_taken_or_refused() {
        for raised in 0..0x7ff_u64 {
            for significand in [0, 1, 1 << 51, (1 << 52) - 1] {
                let value = f64::from_bits(raised << 52 | significand);
                assert!(is_taken_or_refused(value) && is_taken_or_refused(-value), "{value:e}");
            }
        }
    }

    quickcheck! {
        fn any_float_is_taken_or_refused(near_one: i8, significand: u64) -> bool {
            let raised = 0x3ff_u64.wrapping_add_signed(near_one.into());
            is_taken_or_refused(f64::from_bits(raised << 52 | significand >> 12))
        }

        fn out_is_within_three_units_in_the_last_place(num: i64, den: u64) -> bool {
            is_near(Length::fraction(num, den.max(1), Unit::Inch))
        }
    }

    fn is_near(length: Length) -> bool {
        let whole = |number: i128| BigRational::from_integer(number.into());
        Unit::ALL.into_iter().all(|unit| {
            let out = length.to_f64_lossy(unit);
            let exact = |value| BigRational::from_float(value).unwrap();
            let next = exact(f64::from_bits(out.to_bits() + 1)); // away from zero
            let (off, last) = (ticks(length) / whole(unit.ticks()) - exact(out), next - exact(out));
            length.is_zero() && out == 0.0 || &off * &off <= &last * &last * whole(9)
        })
    }

    #[test]
    fn two_units_in_the_last_place_would_not_be_enough() {
        // 2.19 of them in centimeters, found by chance and worked out in another language.
        assert!(is_near(Length::fraction(951_227_320_626_500_593, 10_106_943_309_995_237_563, Unit::Inch)));
        assert!(is_near(Length::ZERO) && is_near(Length::MAX) && is_near(Length::MIN));
    }

    #[test]
    fn a_float_is_taken_at_its_word() {
        // From the standard: a binary64 is significand × 2^exponent (IEEE 754-2019, 3.3). The long tail of
        // 1.2 is field case P008.
        let tail = Length::try_from_f64_exact(1.2, Unit::Inch).unwrap().in_unit(Unit::Inch);
        assert_eq!((*tail.numer(), *tail.denom()), (5_404_319_552_844_595, 4_503_599_627_370_496));
        let exact = |value, num, den| {
            assert_eq!(Length::try_from_f64_exact(value, Unit::Inch), Ok(Length::fraction(num, den, Unit::Inch)), "{value}");
        };
        exact(0.0, 0, 1);
        exact(-0.0, 0, 1);
        exact(-0.5, -1, 2);
        exact(17.625, 141, 8);
        exact(1e15, 1_000_000_000_000_000, 1);
        exact(9_007_199_254_740_992.0, 9_007_199_254_740_992, 1);
    }

    #[test]
    fn floats_that_are_no_length_are_refused() {
        let refused = |value| Length::try_from_f64_exact(value, Unit::Meter).unwrap_err();
        assert_eq!(refused(f64::NAN), LengthError::NotFinite { value: "NaN" });
        assert_eq!(refused(f64::INFINITY), LengthError::NotFinite { value: "inf" });
        assert_eq!(refused(f64::NEG_INFINITY), LengthError::NotFinite { value: "-inf" });
        assert_eq!(refused(f64::MAX), LengthError::OutOfRange);
        assert_eq!(refused(f64::MIN_POSITIVE), LengthError::OutOfRange);
        assert_eq!(refused(5e-324), LengthError::OutOfRange);
    }

    #[test]
    fn out_and_back_is_the_same_float() {
        for sixty_fourths in -9_216..=9_216_i64 {
            let length = Length::fraction(sixty_fourths, 64, Unit::Inch);
            let back = Length::try_from_f64_exact(length.to_f64_lossy(Unit::Inch), Unit::Inch);
            assert_eq!(back, Ok(length));
        }
    }
}
