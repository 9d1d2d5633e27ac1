//! The six units and how many ticks each one is. How units are spelled in text is left to `parse/`,
//! how they are written to `print/`.

use super::Length;

/// A unit of length, smallest first within its system.
///
/// The inch is 25.4 mm exactly (international yard and pound agreement, 1959), and so every unit here
/// is an exact multiple of every other. The United States survey foot was retired at the end of 2022
/// (85 FR 62698) and is left out on purpose.
///
/// ```
/// use scantling::{Length, Unit};
///
/// assert_eq!(Length::new(1, Unit::Yard), Length::new(36, Unit::Inch));
/// assert_eq!(Length::new(254, Unit::Millimeter), Length::new(10, Unit::Inch));
/// assert_eq!(Unit::Foot.symbol(), "ft");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(clippy::exhaustive_enums)] // there are no others
pub enum Unit {
    /// 25.4 mm exactly.
    Inch,
    /// 12 in, 304.8 mm exactly.
    Foot,
    /// 3 ft, 914.4 mm exactly.
    Yard,
    /// A thousandth of a meter, 5/127 in.
    Millimeter,
    /// 10 mm.
    Centimeter,
    /// 1000 mm.
    Meter,
}

impl Unit {
    /// Every unit, in the order of the definition.
    pub const ALL: [Self; 6] = [Self::Inch, Self::Foot, Self::Yard, Self::Millimeter, Self::Centimeter, Self::Meter];

    /// One of this unit, in ticks.
    ///
    /// The inch is 2^10 × 3^3 × 5^6 × 7 × 11 × 13 × 127 ticks. The twos hold every graduation to
    /// 1/1024 in, the fives with the twos six decimals of an inch, 127 with them every nanometer,
    /// and the rest makes division by each number up to 16 come out whole.
    pub(crate) const fn ticks(self) -> i128 {
        const INCH: i128 = (1 << 10) * 27 * 15_625 * 7 * 11 * 13 * 127;
        const MILLIMETER: i128 = INCH / 127 * 5;
        match self {
            Self::Inch => INCH,
            Self::Foot => INCH * 12,
            Self::Yard => INCH * 36,
            Self::Millimeter => MILLIMETER,
            Self::Centimeter => MILLIMETER * 10,
            Self::Meter => MILLIMETER * 1000,
        }
    }

    /// The length of one of this unit.
    ///
    /// ```
    /// use scantling::{Length, Unit};
    ///
    /// assert_eq!(Unit::Foot.length(), Length::new(12, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn length(self) -> Length {
        Length::new(1, self)
    }

    /// The symbol, as it follows a number: `in`, `ft`, `yd`, `mm`, `cm`, `m`.
    ///
    /// ```
    /// assert_eq!(scantling::Unit::Millimeter.symbol(), "mm");
    /// ```
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Inch => "in",
            Self::Foot => "ft",
            Self::Yard => "yd",
            Self::Millimeter => "mm",
            Self::Centimeter => "cm",
            Self::Meter => "m",
        }
    }

    /// Whether this is a metric unit.
    ///
    /// ```
    /// use scantling::Unit;
    ///
    /// assert!(Unit::Centimeter.is_metric());
    /// assert!(!Unit::Yard.is_metric());
    /// ```
    #[must_use]
    pub const fn is_metric(self) -> bool {
        matches!(self, Self::Millimeter | Self::Centimeter | Self::Meter)
    }
}
