//! The value layer: exact lengths, areas and volumes, their arithmetic, and the one rounding kernel.
//! Reading and writing text is left to `parse/` and `print/`; nothing here knows how a length looks.

use core::fmt;

use num_rational::Ratio;

mod area;
mod error;
mod float;
mod fraction;
mod gcd;
mod ops;
mod round;
mod unit;
mod volume;
mod wide;

pub use area::Area;
pub use error::LengthError;
pub use round::{Rounding, RoundingMode};
pub use unit::Unit;
pub use volume::Volume;

use fraction::inverse;
pub(crate) use fraction::{Fraction, product};
pub(crate) use gcd::gcd;
pub(crate) use round::Floor;

use ops::{operator, quantity};

/// An exact length, positive, zero or negative.
///
/// It is stored as a fraction of *ticks*, a part of an inch so small that 64ths, thousandths,
/// micrometers and division by every number to 16 come out whole. No operation rounds but
/// [`Length::round`], which says so. Operators panic when the exact answer cannot be held, in release
/// builds too; each has a `checked_` twin that gives `None` instead.
///
/// The longest length is about 3 × 10^24 inches, far past any shop; the finest divisions need a
/// denominator under 2^64 ticks.
///
/// ```
/// use num_rational::Ratio;
/// use scantling::{Length, Unit};
///
/// const CASE: Length = Length::new(72, Unit::Inch);
/// const SHELF: Length = Length::fraction(3, 4, Unit::Inch);
///
/// let opening = (CASE - 6 * SHELF) / 5;
/// assert_eq!(opening, Length::fraction(27, 2, Unit::Inch));
/// assert_eq!(5 * opening + 6 * SHELF, CASE);
/// assert_eq!(CASE / opening, Ratio::new(16, 3));
/// assert_eq!(Length::new(1, Unit::Inch).in_unit(Unit::Millimeter), Ratio::new(127, 5));
/// ```
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct Length {
    ticks: Fraction,
}

quantity!(Length, ticks, "Length::new(1, Unit::Inch)");

impl Length {
    /// The longest length that can be held.
    pub const MAX: Self = Self { ticks: Fraction::MAX };
    /// The most negative length that can be held: [`Length::MAX`] with its sign turned.
    pub const MIN: Self = Self { ticks: Fraction::MAX.negated() };

    /// A whole number of a unit.
    ///
    /// ```
    /// use scantling::{Length, Unit};
    ///
    /// const POST: Length = Length::new(8, Unit::Foot);
    /// assert_eq!(POST, Length::new(96, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn new(count: i64, unit: Unit) -> Self {
        match Fraction::whole(count as i128 * unit.ticks()) {
            Some(ticks) => Self { ticks },
            None => unreachable!(), // 2^63 of the largest unit stay under 2^115 ticks
        }
    }

    /// A fraction of a unit.
    ///
    /// ```
    /// use scantling::{Length, Unit};
    ///
    /// const SHEET: Length = Length::fraction(23, 32, Unit::Inch);
    /// assert_eq!(SHEET * 32, Length::new(23, Unit::Inch));
    /// ```
    ///
    /// # Panics
    ///
    /// When the denominator is zero: at compile time in a constant.
    #[must_use]
    #[track_caller]
    pub const fn fraction(num: i64, den: u64, unit: Unit) -> Self {
        assert!(den != 0, "a fraction with a zero denominator has no value");
        match Fraction::reduced(num as i128 * unit.ticks(), den as u128) {
            Some(ticks) => Self { ticks },
            None => unreachable!(), // under 2^115 ticks over less than 2^64
        }
    }

    /// An exact ratio of a unit. The ratio is not trusted to be in lowest terms or to have a
    /// positive denominator.
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::{Length, Unit};
    ///
    /// let length = Length::try_from_ratio(Ratio::new(88, 5), Unit::Inch)?;
    /// assert_eq!(length, Length::fraction(176, 10, Unit::Inch));
    /// # Ok::<(), scantling::LengthError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`LengthError::ZeroDenominator`], or [`LengthError::OutOfRange`] when the length cannot be held.
    pub const fn try_from_ratio(ratio: Ratio<i128>, unit: Unit) -> Result<Self, LengthError> {
        let (num, den) = (*ratio.numer(), *ratio.denom());
        match Self::from_parts(num, den.unsigned_abs(), unit) {
            // A sign below the line is turned last, where it always can be.
            Ok(Self { ticks }) if den < 0 => Ok(Self { ticks: ticks.negated() }),
            length => length,
        }
    }

    /// `num / den` of a unit, for a reader that has both parts in hand.
    pub(crate) const fn from_parts(num: i128, den: u128, unit: Unit) -> Result<Self, LengthError> {
        if den == 0 {
            return Err(LengthError::ZeroDenominator);
        }
        let Some((num, den)) = product((num, den), (unit.ticks(), 1)) else { return Err(LengthError::OutOfRange) };
        match Fraction::reduced(num, den) {
            Some(ticks) => Ok(Self { ticks }),
            None => Err(LengthError::OutOfRange),
        }
    }

    /// How many of a unit this is, exactly, in lowest terms.
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::{Length, Unit};
    ///
    /// assert_eq!(Length::new(1, Unit::Meter).in_unit(Unit::Inch), Ratio::new(5000, 127));
    /// ```
    #[must_use]
    #[allow(clippy::cast_possible_wrap)] // under 2^115, see `in_unit_parts`
    pub const fn in_unit(self, unit: Unit) -> Ratio<i128> {
        let (num, den) = self.in_unit_parts(unit);
        Ratio::new_raw(num, den as i128)
    }

    /// The same as plain numbers. Cannot fail: the unit only ever divides, and 2^64 times the ticks of
    /// the largest unit stays under 2^115.
    pub(crate) const fn in_unit_parts(self, unit: Unit) -> (i128, u128) {
        let per_unit = unit.ticks().unsigned_abs();
        let shared = gcd(self.ticks.num().unsigned_abs(), per_unit);
        #[allow(clippy::cast_possible_wrap)] // at most the ticks of a unit
        let num = self.ticks.num() / shared as i128;
        (num, self.ticks.den() as u128 * (per_unit / shared))
    }

    /// The whole count of 1/64 in by one 64-bit division: `None` when it is not whole, and also past 64
    /// bits of ticks, which is some 167,945 inches.
    #[inline]
    #[allow(clippy::cast_possible_truncation)] // the round trip is the check
    pub(crate) const fn sixty_fourths(self) -> Option<i64> {
        const STEP: i64 = (Unit::Inch.ticks() / 64) as i64;
        let near = self.ticks.num() as i64;
        let whole = self.ticks.den() == 1 && near as i128 == self.ticks.num() && near % STEP == 0;
        if whole { Some(near / STEP) } else { None }
    }

    #[inline]
    pub(crate) const fn ticks(self) -> Fraction {
        self.ticks
    }

    #[inline]
    pub(crate) const fn from_ticks(ticks: Fraction) -> Self {
        Self { ticks }
    }
}

/// Shows the exact fraction of an inch: `Length(141/8 in)`.
impl fmt::Debug for Length {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (num, den) = self.in_unit_parts(Unit::Inch);
        if den == 1 { write!(out, "Length({num} in)") } else { write!(out, "Length({num}/{den} in)") }
    }
}

/// Parts in lowest terms as a ratio, the currency at the border.
const fn ratio(parts: Option<(i128, u128)>) -> Option<Ratio<i128>> {
    match parts {
        Some((num, den)) if den <= i128::MAX as u128 => {
            #[allow(clippy::cast_possible_wrap)] // checked on the line above
            let den = den as i128;
            Some(Ratio::new_raw(num, den))
        }
        _ => None,
    }
}
