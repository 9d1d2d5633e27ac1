//! Decimals, exact. How many there are is left to `places.rs`, how they are said to `spoken.rs`.

use core::fmt::{self, Write};

use super::places::scale;
use super::written::Written;
use crate::length::{Length, Unit};

/// `17.625`, without its sign and its mark.
#[derive(Clone, Copy)]
pub(super) struct Decimal {
    pub(super) whole: u128,
    /// All the digits behind the point as one number, under 10^24.
    pub(super) decimals: u128,
    /// As found by `Places::needed`.
    pub(super) places: u8,
}

impl Decimal {
    pub(super) fn of(length: Length, unit: Unit, places: u8) -> Self {
        let (num, den) = length.in_unit_parts(unit);
        let size = num.unsigned_abs();
        // The places are enough, so the denominator divides the scale.
        Self { whole: size / den, decimals: size % den * (scale(places) / den), places }
    }

    /// Writes the digits behind the point, of which there is at least one, with their leading zeros.
    pub(super) fn write_decimals(&self, out: &mut impl Write) -> fmt::Result {
        let places = usize::from(self.places);
        write!(out, "{:0>places$}", self.decimals)
    }
}

impl Written for Decimal {
    fn write(self, out: &mut impl Write) -> fmt::Result {
        write!(out, "{}", self.whole)?;
        if self.places == 0 {
            return Ok(());
        }
        out.write_str(".")?;
        self.write_decimals(out)
    }
}
