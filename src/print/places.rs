//! How many decimals are written, and how many a length needs. Their digits are left to `decimal.rs`.

use super::PrintError;
use crate::length::{Length, Unit};

/// How many decimals a decimal style writes. The styles that write fractions pay no heed to it.
///
/// ```
/// use scantling::{Length, LengthPrinter, Places, Style, Unit};
///
/// let stile = Length::fraction(141, 8, Unit::Inch);
/// let metric = LengthPrinter::new().style(Style::Millimeters);
/// assert_eq!(metric.show(stile)?.to_string(), "447.675 mm");
/// assert_eq!(metric.places(Places::Exactly(4)).show(stile)?.to_string(), "447.6750 mm");
/// assert!(metric.places(Places::Exactly(2)).show(stile).is_err());
/// # Ok::<(), scantling::PrintError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Places {
    /// As many as the exact value has, none for a whole number; a value that does not end within
    /// [`Places::MOST`] is an error.
    #[default]
    Shortest,
    /// This many, trailing zeros kept; a value that has more is an error, never rounded.
    Exactly(u8),
}

impl Places {
    /// The most decimals that are ever written: 24.
    ///
    /// ```
    /// assert_eq!(scantling::Places::MOST, 24);
    /// ```
    pub const MOST: u8 = 24;

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
pub(super) const fn scale(places: u8) -> u128 {
    10_u128.pow(places as u32)
}
