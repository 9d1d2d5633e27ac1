//! What can go wrong when a length is to be written: only a decimal that does not come out even.

use thiserror::Error;

use super::Places;
use crate::length::{Length, Unit};

/// Why a length cannot be written in the way that was asked for.
///
/// ```
/// use scantling::{Length, LengthPrinter, Style, Unit};
///
/// let third = Length::fraction(1, 3, Unit::Inch);
/// let error = LengthPrinter::new().style(Style::Millimeters).show(third).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     r#"1/3" does not come out even in millimeters within 24 decimals: printing never rounds, so round it first"#
/// );
/// ```
#[derive(Clone, Copy, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum PrintError {
    /// The exact value has more decimals than may be written, perhaps without end.
    #[error(
        "{length} does not come out even in {} within {places} decimals: printing never rounds, so round it first",
        plural(*.unit)
    )]
    Uneven {
        /// The length that was to be written.
        length: Length,
        /// The unit it was to be written in.
        unit: Unit,
        /// The decimals there were room for.
        places: u8,
    },
    /// More decimals were asked for than are ever written.
    #[error("cannot write {length} with {places} decimals: {} are the most", Places::MOST)]
    TooManyPlaces {
        /// The length that was to be written.
        length: Length,
        /// The decimals that were asked for.
        places: u8,
    },
}

const fn plural(unit: Unit) -> &'static str {
    match unit {
        Unit::Inch => "inches",
        Unit::Foot => "feet",
        Unit::Yard => "yards",
        Unit::Millimeter => "millimeters",
        Unit::Centimeter => "centimeters",
        Unit::Meter => "meters",
    }
}
