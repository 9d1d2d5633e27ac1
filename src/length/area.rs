//! A length times a length. Kept as reduced square inches. How an area is written is left to `print/`.

use num_rational::Ratio;

use super::fraction::{Fraction, inverse, product};
use super::ops::{operator, quantity};
use super::{Length, Unit, ratio};

/// An exact area.
///
/// ```
/// use scantling::{Area, Length, Unit};
///
/// let shelf = Length::new(4, Unit::Foot) * Length::new(9, Unit::Inch);
/// assert_eq!(shelf.checked_in_square(Unit::Foot), Some(3.into()));
/// assert_eq!(shelf / Length::new(9, Unit::Inch), Length::new(4, Unit::Foot));
/// ```
///
/// An area and a length don't add up, and so this does not compile:
///
/// ```compile_fail
/// use scantling::{Area, Length, Unit};
///
/// let shelf = Length::new(4, Unit::Foot) * Length::new(9, Unit::Inch);
/// let nonsense = Length::new(9, Unit::Inch) + shelf;
/// ```
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct Area {
    square_inches: Fraction,
}

quantity!(Area, square_inches, "Unit::Inch.length() * Unit::Foot.length()");

impl Area {
    /// This area in square units, exactly; `None` when the ratio cannot be held.
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::{Length, Unit};
    ///
    /// let inch = Length::new(1, Unit::Inch);
    /// assert_eq!((inch * inch).checked_in_square(Unit::Millimeter), Some(Ratio::new(16_129, 25)));
    /// ```
    #[must_use]
    pub const fn checked_in_square(self, unit: Unit) -> Option<Ratio<i128>> {
        let per_unit = inverse(unit.length().in_unit_parts(Unit::Inch));
        match product(self.parts(), per_unit) {
            Some(once) => ratio(product(once, per_unit)),
            None => None,
        }
    }

    /// The length that this area has at a given width; `None` when the width is zero or the length
    /// cannot be held.
    ///
    /// ```
    /// use scantling::{Length, Unit};
    ///
    /// let sheet = Length::new(8, Unit::Foot) * Length::new(4, Unit::Foot);
    /// assert_eq!(sheet.checked_div_length(Length::new(2, Unit::Foot)), Some(Length::new(16, Unit::Foot)));
    /// assert_eq!(sheet.checked_div_length(Length::ZERO), None);
    /// ```
    #[must_use]
    pub const fn checked_div_length(self, width: Length) -> Option<Length> {
        Length::from_inches(product(self.parts(), inverse(width.in_unit_parts(Unit::Inch))))
    }

    pub(crate) const fn parts(self) -> (i128, u128) {
        (self.square_inches.num(), self.square_inches.den() as u128)
    }

    /// `None` for none, so that a product can be handed on as it comes.
    pub(crate) const fn from_parts(parts: Option<(i128, u128)>) -> Option<Self> {
        match parts {
            Some((num, den)) => Self::wrap(Fraction::reduced(num, den)),
            None => None,
        }
    }
}

impl Length {
    /// The area of a rectangle this long and `width` wide; `None` when it cannot be held.
    ///
    /// ```
    /// use scantling::{Area, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(foot.checked_area(Length::ZERO), Some(Area::ZERO));
    /// assert_eq!(Length::MAX.checked_area(Length::MAX), None);
    /// ```
    #[must_use]
    pub const fn checked_area(self, width: Self) -> Option<Area> {
        Area::from_parts(product(self.in_unit_parts(Unit::Inch), width.in_unit_parts(Unit::Inch)))
    }

    /// The length of a quotient in inches. A quotient too wide for `product` could not be held in ticks
    /// either: they never shorten its numerator, and take no more than 46 bits off its denominator.
    pub(super) const fn from_inches(quotient: Option<(i128, u128)>) -> Option<Self> {
        let Some((num, den)) = quotient else { return None };
        match Self::from_parts(num, den, Unit::Inch) {
            Ok(length) => Some(length),
            Err(_) => None,
        }
    }
}

operator!(Mul mul, Length, Length => Area, checked_area, "area out of range");
operator!(Div div, Area, Length => Length, checked_div_length, "quotient out of range, or division by zero");

impl core::fmt::Debug for Area {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(out, "Area({} in²)", Ratio::new_raw(self.square_inches.num(), i128::from(self.square_inches.den())))
    }
}
