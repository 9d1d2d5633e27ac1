//! How feet and inches are marked. The names of units in words are left to `words.rs`.

use crate::length::Unit;

/// How feet and inches are marked. Yards and metric lengths always have their symbol.
///
/// ```
/// use scantling::{Length, LengthPrinter, Marks, Style, Unit};
///
/// let post = Length::fraction(151, 2, Unit::Inch);
/// let feet = LengthPrinter::new().style(Style::FeetInches);
/// assert_eq!(feet.marks(Marks::Words).show(post)?.to_string(), "6 ft 3 1/2 in");
/// assert_eq!(feet.marks(Marks::Primes).show(post)?.to_string(), "6′-3 1/2″");
/// # Ok::<(), scantling::PrintError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Marks {
    /// Straight quotes: `17 5/8"`, `6'-3 1/2"`, `5.25'`.
    #[default]
    Quotes,
    /// Primes (U+2032, U+2033), as a printed page has them: `17 5/8″`, `6′-3 1/2″`, `5.25′`.
    Primes,
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
            (Self::Primes, Unit::Inch) => "″",
            (Self::Primes, Unit::Foot) => "′",
            (Self::Words, Unit::Inch) => " in",
            (Self::Words, Unit::Foot) => " ft",
            (_, Unit::Yard) => " yd",
            (_, Unit::Millimeter) => " mm",
            (_, Unit::Centimeter) => " cm",
            (_, Unit::Meter) => " m",
        }
    }

    /// What stands between feet and inches.
    pub(super) const fn behind_feet(self) -> &'static str {
        match self {
            Self::Quotes | Self::Primes => "-",
            Self::Words => " ",
        }
    }
}
