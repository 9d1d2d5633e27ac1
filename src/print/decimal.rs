//! Decimals, exact: how many a length needs in a unit, and how they are written. Fractions are left to
//! `inches.rs`.

use core::fmt::{self, Write};

use super::written::{Written, write_sign};
use super::{Places, PrintError};
use crate::length::{Length, Unit};

/// `17.625"`
pub(super) struct Decimal {
    pub(super) length: Length,
    pub(super) unit: Unit,
    /// As found by [`Places::needed`].
    pub(super) places: u8,
    pub(super) mark: &'static str,
}

impl Written for Decimal {
    fn write(&self, out: &mut impl Write) -> fmt::Result {
        let (num, den) = self.length.in_unit_parts(self.unit);
        let size = num.unsigned_abs();
        write_sign(num < 0, out)?;
        write!(out, "{}", size / den)?;
        if self.places > 0 {
            // `places` are enough, so the denominator divides the scale: all the decimals, under 10^24.
            let decimals = size % den * (scale(self.places) / den);
            let places = usize::from(self.places);
            write!(out, ".{decimals:0>places$}")?;
        }
        out.write_str(self.mark)
    }
}

impl Places {
    /// How many decimals a length is written with in a unit.
    pub(super) fn needed(self, length: Length, unit: Unit) -> Result<u8, PrintError> {
        let (_, den) = length.in_unit_parts(unit);
        let (least, most) = match self {
            Self::Shortest => (0, Self::MOST),
            Self::Exactly(places) if places > Self::MOST => return Err(PrintError::TooManyPlaces { length, places }),
            Self::Exactly(places) => (places, places),
        };
        let enough = (least..=most).find(|&places| scale(places) % den == 0);
        enough.ok_or(PrintError::Uneven { length, unit, places: most })
    }
}

/// What one is in units of the last decimal: 10 to the power of at most 24.
const fn scale(places: u8) -> u128 {
    10_u128.pow(places as u32)
}
