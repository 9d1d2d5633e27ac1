//! Arithmetic that length, area and volume share: the checked forms, and the operators on top of them.
//! Operators are the checked form plus a message, so debug and release builds agree.
//! Products and quotients that change the kind of quantity are left to `area.rs` and `volume.rs`.

/// Gives a wrapper round a `Fraction` in its field `$field` the arithmetic of a quantity.
macro_rules! quantity {
    ($name:ident, $field:ident, $one:literal) => {
        impl $name {
            /// None of it.
            pub const ZERO: Self = Self { $field: Fraction::ZERO };

            #[doc = concat!("The sum, or `None` when it cannot be held.\n\n```\nuse scantling::*;\n\nlet one = ", $one,
                ";\nassert_eq!(one.checked_add(one), Some(2 * one));\n```")]
            #[inline]
            #[must_use]
            pub const fn checked_add(self, other: Self) -> Option<Self> {
                Self::wrap(self.$field.checked_add(other.$field))
            }

            #[doc = concat!("The difference, or `None` when it cannot be held.\n\n```\nuse scantling::*;\n\nlet one = ", $one,
                ";\nassert_eq!(one.checked_sub(3 * one), Some(-2 * one));\n```")]
            #[inline]
            #[must_use]
            pub const fn checked_sub(self, other: Self) -> Option<Self> {
                Self::wrap(self.$field.checked_sub(other.$field))
            }

            #[doc = concat!("This many times over, or `None` when that cannot be held.\n\n```\nuse scantling::*;\n\nlet one = ", $one,
                ";\nassert_eq!(one.checked_mul(4), Some(one + one + one + one));\n```")]
            #[inline]
            #[must_use]
            pub const fn checked_mul(self, factor: i64) -> Option<Self> {
                Self::wrap(self.$field.checked_mul_int(factor as i128))
            }

            #[doc = concat!("One of `divisor` equal parts, or `None` when the divisor is zero or the part cannot be held.\n\n",
                "```\nuse scantling::*;\n\nlet one = ", $one,
                ";\nassert_eq!(one.checked_div(3).map(|third| third * 3), Some(one));\nassert_eq!(one.checked_div(0), None);\n```")]
            #[inline]
            #[must_use]
            pub const fn checked_div(self, divisor: i64) -> Option<Self> {
                Self::wrap(self.$field.checked_div_int(divisor as i128))
            }

            #[doc = concat!("Scaled by an exact ratio, or `None` when that cannot be held.\n\n",
                "```\nuse num_rational::Ratio;\nuse scantling::*;\n\nlet one = ", $one,
                ";\nassert_eq!(one.checked_mul_ratio(Ratio::new(3, 2)), (3 * one).checked_div(2));\n```")]
            #[must_use]
            pub const fn checked_mul_ratio(self, factor: Ratio<i128>) -> Option<Self> {
                let (num, den) = (*factor.numer(), *factor.denom());
                // A sign below the line goes to this side, where it can always turn.
                let own = if den < 0 { self.$field.negated() } else { self.$field };
                Self::wrap(own.checked_scale(num, den.unsigned_abs()))
            }

            #[doc = concat!("Divided by an exact ratio, or `None` when that is zero, has no value, or the answer cannot be held.\n\n",
                "```\nuse num_rational::Ratio;\nuse scantling::*;\n\nlet one = ", $one,
                ";\nassert_eq!(one.checked_div_ratio(Ratio::new(1, 2)), Some(2 * one));\n```")]
            #[must_use]
            pub const fn checked_div_ratio(self, divisor: Ratio<i128>) -> Option<Self> {
                let (num, den) = (*divisor.numer(), *divisor.denom());
                // A ratio without a value, turned over, would pass for zero.
                if den == 0 { None } else { self.checked_mul_ratio(Ratio::new_raw(den, num)) }
            }

            #[doc = concat!("How many times `other` goes into this, exactly; `None` when `other` is zero or the ratio cannot be held.\n\n",
                "```\nuse num_rational::Ratio;\nuse scantling::*;\n\nlet one = ", $one,
                ";\nassert_eq!(one.checked_ratio(4 * one), Some(Ratio::new(1, 4)));\n```")]
            #[must_use]
            pub const fn checked_ratio(self, other: Self) -> Option<Ratio<i128>> {
                let (own, other) = (self.$field, other.$field);
                ratio(product((own.num(), own.den() as u128), inverse((other.num(), other.den() as u128))))
            }

            #[doc = concat!("The same without its sign.\n\n```\nuse scantling::*;\n\nlet one = ", $one,
                ";\nassert_eq!((-one).abs(), one);\n```")]
            #[inline]
            #[must_use]
            pub const fn abs(self) -> Self {
                Self { $field: self.$field.magnitude() }
            }

            #[doc = concat!("Whether it is none at all.\n\n```\nuse scantling::*;\n\nlet one = ", $one,
                ";\nassert!((one - one).is_zero());\n```")]
            #[inline]
            #[must_use]
            pub const fn is_zero(self) -> bool {
                self.$field.num() == 0
            }

            #[doc = concat!("Whether it is below zero.\n\n```\nuse scantling::*;\n\nlet one = ", $one,
                ";\nassert!((-one).is_negative() && !one.is_negative());\n```")]
            #[inline]
            #[must_use]
            pub const fn is_negative(self) -> bool {
                self.$field.num() < 0
            }

            #[inline]
            const fn wrap(value: Option<Fraction>) -> Option<Self> {
                match value {
                    Some($field) => Some(Self { $field }),
                    None => None,
                }
            }
        }

        impl Default for $name {
            fn default() -> Self {
                Self::ZERO
            }
        }

        impl Ord for $name {
            #[inline]
            fn cmp(&self, other: &Self) -> core::cmp::Ordering {
                self.$field.compare(other.$field)
            }
        }

        impl PartialOrd for $name {
            #[inline]
            fn partial_cmp(&self, other: &Self) -> Option<core::cmp::Ordering> {
                Some(self.cmp(other))
            }
        }

        impl core::ops::Neg for $name {
            type Output = Self;

            #[inline]
            fn neg(self) -> Self {
                Self { $field: self.$field.negated() }
            }
        }

        operator!(Add add, $name, $name => $name, checked_add, "sum out of range");
        operator!(Sub sub, $name, $name => $name, checked_sub, "difference out of range");
        operator!(Mul mul, $name, i64 => $name, checked_mul, "product out of range");
        operator!(Div div, $name, i64 => $name, checked_div, "quotient out of range, or division by zero");
        operator!(Mul mul, $name, Ratio<i128> => $name, checked_mul_ratio, "product out of range, or a zero denominator");
        operator!(Div div, $name, Ratio<i128> => $name, checked_div_ratio, "quotient out of range, or division by zero");
        operator!(Div div, $name, $name => Ratio<i128>, checked_ratio, "ratio out of range, or division by zero");

        impl core::ops::Mul<$name> for i64 {
            type Output = $name;

            #[inline]
            #[track_caller]
            fn mul(self, other: $name) -> $name {
                other * self
            }
        }

        impl core::ops::AddAssign for $name {
            #[inline]
            #[track_caller]
            fn add_assign(&mut self, other: Self) {
                *self = *self + other;
            }
        }

        impl core::ops::SubAssign for $name {
            #[inline]
            #[track_caller]
            fn sub_assign(&mut self, other: Self) {
                *self = *self - other;
            }
        }

        impl core::ops::MulAssign<i64> for $name {
            #[inline]
            #[track_caller]
            fn mul_assign(&mut self, factor: i64) {
                *self = *self * factor;
            }
        }

        impl core::ops::DivAssign<i64> for $name {
            #[inline]
            #[track_caller]
            fn div_assign(&mut self, divisor: i64) {
                *self = *self / divisor;
            }
        }

        impl core::iter::Sum for $name {
            #[track_caller]
            fn sum<I: Iterator<Item = Self>>(items: I) -> Self {
                items.fold(Self::ZERO, |total, item| total + item)
            }
        }

        impl<'a> core::iter::Sum<&'a Self> for $name {
            #[track_caller]
            fn sum<I: Iterator<Item = &'a Self>>(items: I) -> Self {
                items.fold(Self::ZERO, |total, item| total + *item)
            }
        }
    };
}

/// One operator as its checked form plus a message.
macro_rules! operator {
    ($trait:ident $method:ident, $left:ty, $right:ty => $output:ty, $checked:ident, $message:literal) => {
        impl core::ops::$trait<$right> for $left {
            type Output = $output;

            /// # Panics
            ///
            #[doc = concat!("With “", $message, "”, in debug and in release builds.")]
            #[inline]
            #[track_caller]
            fn $method(self, other: $right) -> $output {
                self.$checked(other).expect($message)
            }
        }
    };
}

pub(super) use {operator, quantity};
