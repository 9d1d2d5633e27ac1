//! From a number and its unit to ticks, exactly. The common cases stay in 64-bit arithmetic; the rest,
//! which may fail to fit, goes the long way round.

use super::error::ParseErrorKind as Kind;
use super::number::Number;
use crate::length::{Fraction, Length, Unit};

/// `number × unit` in ticks.
#[inline]
pub(super) fn ticks(number: &Number, unit: Unit) -> Result<Fraction, Kind> {
    let narrow = |part: u128| u64::try_from(part).ok();
    let near = || near_ticks(narrow(number.whole)?, narrow(number.num)?, narrow(number.den)?, unit);
    match near() {
        Some(ticks) => Fraction::whole(ticks).ok_or(Kind::TooLarge),
        None => any_ticks(number, unit),
    }
}

/// `whole + num / den` of a unit, when that is a whole count of ticks.
#[inline(always)]
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // the largest unit is under 2^51 ticks
pub(super) fn near_ticks(whole: u64, num: u64, den: u64, unit: Unit) -> Option<i128> {
    let per_unit = unit.ticks() as u64;
    let ticks = i128::from(whole) * i128::from(per_unit);
    if num == 0 {
        return Some(ticks);
    }
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
pub(super) fn too_much(num: i128, den: u128) -> Kind {
    if den > 1 && num.unsigned_abs() >> 64 == 0 { Kind::TooFine } else { Kind::TooLarge }
}
