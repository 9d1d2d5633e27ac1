//! A length without its sign, cut into the numbers that are written or said one behind another: yards,
//! feet, inches, a fraction. Which of them are worth a word is decided here, how they look elsewhere.

use core::num::NonZeroU32;

use super::look::Look;
use super::{Style, Zeros};
use crate::length::{Length, Unit};

/// The numbers of a length; `None` for those that are left out.
pub(super) struct Pieces {
    pub(super) yards: Option<u128>,
    pub(super) feet: Option<u128>,
    /// Whole inches. Left out where a fraction stands alone.
    pub(super) inches: Option<u128>,
    /// What is above and below the line of the fraction.
    pub(super) fraction: Option<(u128, u128)>,
}

impl Pieces {
    pub(super) fn of(length: Length, look: Look) -> Self {
        let kept = |count: &u128| *count > 0 || look.zeros == Zeros::Kept;
        let (whole, part) = split(length.in_unit_parts(Unit::Inch));
        let (yards, rest) = if look.style == Style::Yards { (Some(whole / 36), whole % 36) } else { (None, whole) };
        let (feet, rest) = if look.style == Style::Inches { (None, rest) } else { (Some(rest / 12), rest % 12) };
        let (yards, feet) = (yards.filter(kept), feet.filter(kept));

        let behind = yards.is_some() || feet.is_some();
        let fraction = (part.0 > 0).then(|| counted_in(look.denominator, part));
        let zero = if fraction.is_some() { behind } else { !behind || look.zeros == Zeros::Kept };
        Self { yards, feet, inches: (rest > 0 || zero).then_some(rest), fraction }
    }
}

/// The size of a fraction in lowest terms: the whole number, and the proper part.
pub(super) fn split((num, den): (i128, u128)) -> (u128, (u128, u128)) {
    let size = num.unsigned_abs();
    (size / den, (size % den, den))
}

/// A fraction in lowest terms over a fixed denominator, if there is one.
fn counted_in(fixed: Option<NonZeroU32>, (num, den): (u128, u128)) -> (u128, u128) {
    fixed.map_or((num, den), |fixed| (num * (u128::from(fixed.get()) / den), fixed.get().into()))
}
