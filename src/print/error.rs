//! What can go wrong when a length is to be written: a decimal or a fraction that does not come out even.

use thiserror::Error;

use super::Places;
use super::words::plural;
use crate::length::{Length, LengthError, Unit};

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
    /// The length is no whole count of the parts its fraction was to be written in.
    #[error("{length} is no whole count of 1/{denominator} in: printing never rounds, so round it first")]
    NoWholeCount {
        /// The length that was to be written.
        length: Length,
        /// The parts of an inch that were asked for.
        denominator: u32,
    },
    /// A fraction was to be written with zero below the line.
    #[error("cannot write {length} with a zero below the line")]
    ZeroDenominator {
        /// The length that was to be written.
        length: Length,
    },
    /// What was to be rounded, the second of two dimensions or a leftover, could not be.
    #[error("cannot round {length} before it is written: {reason}")]
    NotRounded {
        /// The length that was to be written.
        length: Length,
        /// Why it could not be rounded.
        reason: LengthError,
    },
}
