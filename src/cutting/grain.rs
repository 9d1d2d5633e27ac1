//! The common grain: the largest measure that a set of lengths, or of prices, are all whole multiples of. Beyond it there are
//! whole numbers alone.

use alloc::vec::Vec;

use crate::length::{Fraction, Length, gcd};

/// A common measure as a fraction, and how many of it each quantity is. Quantities below zero have none.
pub(super) struct Counted {
    pub(super) grain: (u128, u128),
    pub(super) counts: Vec<u64>,
}

/// Counts quantities, given as numerators over denominators; `None` where one is below zero, or would count more than `most`.
pub(super) fn counted(quantities: &[(i128, u128)], most: u64) -> Option<Counted> {
    let mut common: u128 = 1;
    for (_, den) in quantities {
        common = common.checked_mul(den / gcd(common, *den).max(1))?;
    }
    let scaled = |(num, den): &(i128, u128)| u128::try_from(*num).ok()?.checked_mul(common.checked_div(*den)?);
    let scaled = quantities.iter().map(scaled).collect::<Option<Vec<u128>>>()?;
    let grain = scaled.iter().fold(0, |grain, count| gcd(grain, *count)).max(1);
    let count = |scaled: &u128| u64::try_from(scaled / grain).ok().filter(|count| *count <= most);
    let counts = scaled.iter().map(count).collect::<Option<Vec<u64>>>()?;
    Some(Counted { grain: (grain, common), counts })
}

/// The same for lengths.
pub(super) fn counted_lengths(lengths: &[Length], most: u64) -> Option<Counted> {
    let ticks = lengths.iter().map(|length| (length.ticks().num(), u128::from(length.ticks().den())));
    counted(&ticks.collect::<Vec<_>>(), most)
}

/// So many of a grain, as a length.
pub(super) fn length(grain: (u128, u128), count: u64) -> Option<Length> {
    let num = i128::try_from(grain.0.checked_mul(count.into())?).ok()?;
    Fraction::reduced(num, grain.1).map(Length::from_ticks)
}
