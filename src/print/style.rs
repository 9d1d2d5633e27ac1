//! The style of a printer: which units a length is written in, and whether its parts are fractions or
//! decimals. The other settings have a file each; what they come to is left to `shown.rs`.

use crate::length::Unit;

/// The units a length is written in, and whether its parts are fractions or decimals.
///
/// ```
/// use scantling::{Length, LengthPrinter, Style, Unit};
///
/// let stile = Length::fraction(141, 8, Unit::Inch);
/// let metric = LengthPrinter::new().style(Style::Millimeters);
/// assert_eq!(metric.show(stile)?.to_string(), "447.675 mm");
/// # Ok::<(), scantling::PrintError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Style {
    /// Inches and a fraction: `17 5/8"`, `1/2"`, `0"`.
    #[default]
    Inches,
    /// Feet, inches and a fraction: `6'-3 1/2"`, `5'-0 3/4"`, `0'-6"`.
    FeetInches,
    /// Feet, inches and sixteenths in two digits each, as truss sheets have them: `6-03-08`. A length
    /// that is no whole count of sixteenths is an error. Joins, marks, zeros and denominators pass it by.
    FeetInchesSixteenths,
    /// Yards, feet, inches and a fraction: `2 yd 0'-3 1/2"`.
    Yards,
    /// Inches as a decimal: `17.625"`.
    DecimalInches,
    /// Feet as a decimal: `5.25'`.
    DecimalFeet,
    /// Millimeters as a decimal: `447.675 mm`.
    Millimeters,
    /// Centimeters as a decimal: `44.7675 cm`.
    Centimeters,
    /// Meters as a decimal: `0.447675 m`.
    Meters,
}

impl Style {
    /// The unit of a decimal style; `None` for the styles that write fractions.
    pub(super) const fn decimal_unit(self) -> Option<Unit> {
        match self {
            Self::Inches | Self::FeetInches | Self::FeetInchesSixteenths | Self::Yards => None,
            Self::DecimalInches => Some(Unit::Inch),
            Self::DecimalFeet => Some(Unit::Foot),
            Self::Millimeters => Some(Unit::Millimeter),
            Self::Centimeters => Some(Unit::Centimeter),
            Self::Meters => Some(Unit::Meter),
        }
    }
}
