//! The settings of a printer, one small enum to an axis. What they do to a length is left to
//! `shown.rs`.

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
    /// Feet, inches and a fraction, parts that are zero shown: `6'-3 1/2"`, `5'-0 3/4"`, `0'-6"`.
    FeetInches,
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
            Self::Inches | Self::FeetInches => None,
            Self::DecimalInches => Some(Unit::Inch),
            Self::DecimalFeet => Some(Unit::Foot),
            Self::Millimeters => Some(Unit::Millimeter),
            Self::Centimeters => Some(Unit::Centimeter),
            Self::Meters => Some(Unit::Meter),
        }
    }
}

/// How a fraction is joined to its whole number.
///
/// ```
/// use scantling::{Join, Length, LengthPrinter, Unit};
///
/// let stile = Length::fraction(141, 8, Unit::Inch);
/// let cut_list = LengthPrinter::new().join(Join::Hyphen);
/// assert_eq!(cut_list.show(stile)?.to_string(), r#"17-5/8""#);
/// # Ok::<(), scantling::PrintError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Join {
    /// By a space: `17 5/8"`, `6'-3 1/2"`.
    #[default]
    Space,
    /// By a hyphen, for text read at arm's length, where `1 1/16` could be taken for 11/16:
    /// `17-5/8"`, `6'-3-1/2"`.
    Hyphen,
}

impl Join {
    /// What stands between a whole number and its fraction.
    #[inline]
    pub(super) const fn text(self) -> &'static str {
        match self {
            Self::Space => " ",
            Self::Hyphen => "-",
        }
    }
}

/// How feet and inches are marked. Metric lengths always have their symbol.
///
/// ```
/// use scantling::{Length, LengthPrinter, Marks, Style, Unit};
///
/// let post = Length::fraction(151, 2, Unit::Inch);
/// let plain = LengthPrinter::new().style(Style::FeetInches).marks(Marks::Words);
/// assert_eq!(plain.show(post)?.to_string(), "6 ft 3 1/2 in");
/// # Ok::<(), scantling::PrintError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Marks {
    /// Straight quotes: `17 5/8"`, `6'-3 1/2"`, `5.25'`.
    #[default]
    Quotes,
    /// The unit symbols, for places where quotes hurt, such as a shell or a table of comma-separated
    /// values: `17 5/8 in`, `6 ft 3 1/2 in`, `5.25 ft`.
    Words,
}

impl Marks {
    /// What follows a number of a unit.
    #[inline]
    pub(super) const fn after(self, unit: Unit) -> &'static str {
        match (self, unit) {
            (Self::Quotes, Unit::Inch) => "\"",
            (Self::Quotes, Unit::Foot) => "'",
            (Self::Words, Unit::Inch) => " in",
            (Self::Words, Unit::Foot) => " ft",
            (_, Unit::Yard) => " yd",
            (_, Unit::Millimeter) => " mm",
            (_, Unit::Centimeter) => " cm",
            (_, Unit::Meter) => " m",
        }
    }
}

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
}
