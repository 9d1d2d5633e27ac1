//! An area times a length. Kept as reduced cubic inches. Board feet are left to the lumber layer.

use num_rational::Ratio;

use super::fraction::{Fraction, inverse, product};
use super::ops::{operator, quantity};
use super::{Area, Length, Unit, ratio};

/// An exact volume.
///
/// ```
/// use scantling::{Length, Unit};
///
/// let foot = Length::new(1, Unit::Foot);
/// let board_foot = foot * foot * Length::new(1, Unit::Inch);
/// assert_eq!(board_foot.checked_in_cubic(Unit::Inch), Some(144.into()));
/// assert_eq!(board_foot / foot, foot * Length::new(1, Unit::Inch));
/// ```
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct Volume {
    cubic_inches: Fraction,
}

quantity!(Volume, cubic_inches, "Unit::Inch.length() * Unit::Foot.length() * Unit::Yard.length()");

impl Volume {
    /// This volume in cubic units, exactly; `None` when the ratio cannot be held.
    ///
    /// ```
    /// use scantling::{Length, Unit};
    ///
    /// let yard = Length::new(1, Unit::Yard);
    /// assert_eq!((yard * yard * yard).checked_in_cubic(Unit::Foot), Some(27.into()));
    /// ```
    #[must_use]
    pub const fn checked_in_cubic(self, unit: Unit) -> Option<Ratio<i128>> {
        let per_unit = inverse(unit.length().in_unit_parts(Unit::Inch));
        let Some(once) = product(self.parts(), per_unit) else { return None };
        let Some(twice) = product(once, per_unit) else { return None };
        ratio(product(twice, per_unit))
    }

    /// The area that this volume has at a given thickness; `None` when the thickness is zero or the
    /// area cannot be held.
    ///
    /// ```
    /// use scantling::{Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!((foot * foot * foot).checked_div_length(foot), Some(foot * foot));
    /// assert_eq!((foot * foot * foot).checked_div_length(Length::ZERO), None);
    /// ```
    #[must_use]
    pub const fn checked_div_length(self, thickness: Length) -> Option<Area> {
        Area::from_parts(product(self.parts(), inverse(thickness.in_unit_parts(Unit::Inch))))
    }

    /// The length that this volume has at a given cross section; `None` when the section is zero or
    /// the length cannot be held.
    ///
    /// ```
    /// use scantling::{Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!((foot * foot * foot).checked_div_area(foot * foot), Some(foot));
    /// ```
    #[must_use]
    pub const fn checked_div_area(self, section: Area) -> Option<Length> {
        Length::from_inches(product(self.parts(), inverse(section.parts())))
    }

    pub(crate) const fn parts(self) -> (i128, u128) {
        (self.cubic_inches.num(), self.cubic_inches.den() as u128)
    }

    /// `None` for none, so that a product can be handed on as it comes.
    pub(crate) const fn from_parts(parts: Option<(i128, u128)>) -> Option<Self> {
        match parts {
            Some((num, den)) => Self::wrap(Fraction::reduced(num, den)),
            None => None,
        }
    }
}

impl Area {
    /// The volume of this area at a given thickness; `None` when it cannot be held.
    ///
    /// ```
    /// use scantling::{Length, Unit, Volume};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!((foot * foot).checked_volume(Length::ZERO), Some(Volume::ZERO));
    /// ```
    #[must_use]
    pub const fn checked_volume(self, thickness: Length) -> Option<Volume> {
        Volume::from_parts(product(self.parts(), thickness.in_unit_parts(Unit::Inch)))
    }
}

impl Length {
    /// [`Area::checked_volume`] with the factors the other way round, for the operator alone.
    const fn checked_volume(self, section: Area) -> Option<Volume> {
        section.checked_volume(self)
    }
}

operator!(Mul mul, Area, Length => Volume, checked_volume, "volume out of range");
operator!(Mul mul, Length, Area => Volume, checked_volume, "volume out of range");
operator!(Div div, Volume, Length => Area, checked_div_length, "quotient out of range, or division by zero");
operator!(Div div, Volume, Area => Length, checked_div_area, "quotient out of range, or division by zero");

impl core::fmt::Debug for Volume {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(out, "Volume({} in³)", Ratio::new_raw(self.cubic_inches.num(), i128::from(self.cubic_inches.den())))
    }
}
