//! Lengths as plain numbers of a stated unit, exact or refused. The rule is stated in `mod.rs`: a float stands
//! for the shortest decimal that reads back as it, of at most 15 significant digits.

use alloc::format;
use core::fmt::{self, Formatter};

use serde::de::{Unexpected, Visitor};
use serde::ser::Error as _;
use serde::{Deserializer, Serialize, Serializer};

use super::error::Refusal;
use crate::length::{Length, Unit, gcd};

/// The first number with more than 15 digits, the most that a binary64 is sure to keep: `DBL_DIG` of the C
/// standard, 5.2.4.2.2.
const TOO_MANY_DIGITS: u128 = 1_000_000_000_000_000;

/// A unit, and how its numbers are called.
#[derive(Clone, Copy)]
pub(super) struct Plain {
    pub(super) unit: Unit,
    pub(super) name: &'static str,
}

impl Plain {
    pub(super) fn write<S: Serializer>(self, length: Length, serializer: S) -> Result<S::Ok, S::Error> {
        let Self { unit, name } = self;
        let (num, den) = length.in_unit_parts(unit);
        let whole = i64::try_from(num).ok().filter(|_| den == 1 && serializer.is_human_readable());
        if let Some(whole) = whole {
            return serializer.serialize_i64(whole);
        }
        if !comes_out_even(den) {
            return Err(S::Error::custom(Refusal::Uneven { length, unit: name }));
        }
        match Decimal::of(num, den).and_then(Decimal::float) {
            Some(float) => serializer.serialize_f64(float),
            None => Err(S::Error::custom(Refusal::ManyDigits { length, unit: name })),
        }
    }

    pub(super) fn read<'de, D: Deserializer<'de>>(self, deserializer: D) -> Result<Length, D::Error> {
        deserializer.deserialize_f64(self)
    }

    pub(super) fn write_option<S: Serializer>(self, length: Option<Length>, serializer: S) -> Result<S::Ok, S::Error> {
        match length {
            Some(length) => serializer.serialize_some(&Number { plain: self, length }),
            None => serializer.serialize_none(),
        }
    }

    pub(super) fn read_option<'de, D: Deserializer<'de>>(self, deserializer: D) -> Result<Option<Length>, D::Error> {
        deserializer.deserialize_option(Optional(self))
    }

    fn length<E: serde::de::Error>(self, num: i128, den: u128) -> Result<Length, E> {
        Length::from_parts(num, den, self.unit).map_err(|_| E::custom(Refusal::NumberOutOfRange { unit: self.name }))
    }
}

/// A length on its way out, behind the mark of an option.
struct Number {
    plain: Plain,
    length: Length,
}

impl Serialize for Number {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.plain.write(self.length, serializer)
    }
}

impl Visitor<'_> for Plain {
    type Value = Length;

    fn expecting(&self, out: &mut Formatter<'_>) -> fmt::Result {
        write!(out, "a number of {} with at most 15 digits", self.name)
    }

    fn visit_i64<E: serde::de::Error>(self, whole: i64) -> Result<Length, E> {
        self.length(whole.into(), 1)
    }

    fn visit_u64<E: serde::de::Error>(self, whole: u64) -> Result<Length, E> {
        self.length(whole.into(), 1)
    }

    fn visit_i128<E: serde::de::Error>(self, whole: i128) -> Result<Length, E> {
        self.length(whole, 1)
    }

    fn visit_u128<E: serde::de::Error>(self, whole: u128) -> Result<Length, E> {
        let whole = i128::try_from(whole).map_err(|_| E::custom(Refusal::NumberOutOfRange { unit: self.name }))?;
        self.length(whole, 1)
    }

    fn visit_f64<E: serde::de::Error>(self, float: f64) -> Result<Length, E> {
        let decimal = Decimal::meant(float).ok_or_else(|| E::invalid_value(Unexpected::Float(float), &self))?;
        let (num, den) = decimal.parts().ok_or_else(|| E::custom(Refusal::NumberOutOfRange { unit: self.name }))?;
        self.length(num, den)
    }
}

struct Optional(Plain);

impl<'de> Visitor<'de> for Optional {
    type Value = Option<Length>;

    fn expecting(&self, out: &mut Formatter<'_>) -> fmt::Result {
        self.0.expecting(out)?;
        out.write_str(", or null")
    }

    fn visit_none<E: serde::de::Error>(self) -> Result<Option<Length>, E> {
        Ok(None)
    }

    fn visit_unit<E: serde::de::Error>(self) -> Result<Option<Length>, E> {
        Ok(None)
    }

    fn visit_some<D: Deserializer<'de>>(self, deserializer: D) -> Result<Option<Length>, D::Error> {
        self.0.read(deserializer).map(Some)
    }
}

/// `digits × 10^exponent`.
#[derive(Clone, Copy)]
struct Decimal {
    digits: i128,
    exponent: i32,
}

impl Decimal {
    /// `num / den`, which comes out even; `None` when it has more digits than 128 bits hold.
    fn of(num: i128, den: u128) -> Option<Self> {
        let (mut digits, mut den, mut exponent) = (num, den, 0);
        while den > 1 {
            let shared = gcd(den, 10);
            digits = digits.checked_mul(if shared == 10 { 1 } else { 10 / i128::try_from(shared).ok()? })?;
            (den, exponent) = (den / shared, exponent - 1);
        }
        Some(Self { digits, exponent })
    }

    /// What a float is meant to be; `None` when it is no number, or one that nobody wrote.
    fn meant(float: f64) -> Option<Self> {
        if !float.is_finite() {
            return None;
        }
        // The standard library writes the fewest digits that read back as the same float: 18.1 as `1.81e1`.
        let text = format!("{float:e}");
        let (written, exponent) = text.split_once('e')?;
        let decimals = written.split_once('.').map_or(0, |(_, decimals)| decimals.len());
        let digits: i128 = written.replace('.', "").parse().ok()?;
        let exponent = exponent.parse::<i32>().ok()?.checked_sub(i32::try_from(decimals).ok()?)?;
        (digits.unsigned_abs() < TOO_MANY_DIGITS).then_some(Self { digits, exponent })
    }

    /// The float that stands for it, if it has few enough digits.
    fn float(self) -> Option<f64> {
        let Self { mut digits, mut exponent } = self;
        while digits != 0 && digits % 10 == 0 {
            (digits, exponent) = (digits / 10, exponent + 1);
        }
        let few = digits.unsigned_abs() < TOO_MANY_DIGITS;
        // The standard library reads the float that is nearest, however many digits there are.
        few.then(|| format!("{digits}e{exponent}").parse().ok())?
    }

    /// What stands above and below the line; `None` when it does not fit.
    fn parts(self) -> Option<(i128, u128)> {
        let size = self.exponent.unsigned_abs();
        match self.exponent {
            0.. => Some((self.digits.checked_mul(10_i128.checked_pow(size)?)?, 1)),
            _ => Some((self.digits, 10_u128.checked_pow(size)?)),
        }
    }
}

/// Whether a fraction in lowest terms with this denominator has an end as a decimal.
fn comes_out_even(den: u128) -> bool {
    let mut rest = den;
    while gcd(rest, 10) > 1 {
        rest /= gcd(rest, 10);
    }
    rest == 1
}
