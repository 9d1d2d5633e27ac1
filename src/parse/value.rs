//! From a number and its unit to ticks, exactly. The common cases stay in 64-bit arithmetic; the rest,
//! which may fail to fit, goes the long way round.

use super::error::ParseErrorKind as Kind;
use super::number::Number;
use crate::length::{Fraction, Length, Unit};

/// `number × unit` in ticks.
#[inline(always)]
pub(super) fn ticks(number: &Number, unit: Unit) -> Result<Fraction, Kind> {
    match near_ticks(number, unit) {
        Some(ticks) => Fraction::whole(ticks).ok_or(Kind::TooLarge),
        None => any_ticks(number, unit),
    }
}

/// The value when it is a whole count of ticks and every part fits 64 bits.
#[inline(always)]
fn near_ticks(number: &Number, unit: Unit) -> Option<i128> {
    let per_unit = u64::try_from(unit.ticks()).ok()?;
    let whole = u64::try_from(number.whole).ok()?;
    let ticks = i128::from(whole) * i128::from(per_unit);
    if number.den == 1 {
        return Some(ticks);
    }
    let (num, den) = (u64::try_from(number.num).ok()?, u64::try_from(number.den).ok()?);
    let each = exact_quotient(per_unit, den)?;
    Some(ticks + i128::from(num) * i128::from(each))
}

/// A division by a power of two, which nearly every denominator is, needs only a shift.
#[inline(always)]
fn exact_quotient(per_unit: u64, den: u64) -> Option<u64> {
    if den.is_power_of_two() {
        let places = den.trailing_zeros();
        return (per_unit.trailing_zeros() >= places).then(|| per_unit >> places);
    }
    (per_unit % den == 0).then(|| per_unit / den)
}

#[cold]
#[inline(never)]
fn any_ticks(number: &Number, unit: Unit) -> Result<Fraction, Kind> {
    let part = |num: u128, den| {
        let num = i128::try_from(num).map_err(|_| Kind::TooLarge)?;
        Length::from_parts(num, den, unit).map(Length::ticks).map_err(|_| too_much(num, den))
    };
    let (whole, rest) = (part(number.whole, 1)?, part(number.num, number.den)?);
    whole.checked_add(rest).ok_or_else(|| too_much(whole.num(), rest.den().into()))
}

/// Whether it was the size of a number or its fineness that did not fit.
fn too_much(num: i128, den: u128) -> Kind {
    if den > 1 && num.unsigned_abs() >> 64 == 0 { Kind::TooFine } else { Kind::TooLarge }
}
