//! The one rounding kernel: any length to any step, in six modes. Every rounded figure in the crate
//! comes through here once. Which step a tape has is left to `tape/`.

use core::cmp::Ordering;
use core::ops::Sub;

use super::fraction::Fraction;
use super::wide::Wide;
use super::{Length, LengthError};

/// Which multiple of the step is taken for a value that lies between two.
///
/// The three `Ties…` modes take the nearest multiple and differ only for a value exactly midway.
///
/// ```
/// use scantling::{Length, Rounding, RoundingMode, Unit};
///
/// let midway = Length::fraction(-1, 32, Unit::Inch);
/// let sixteenth = Length::fraction(1, 16, Unit::Inch);
/// let at = |mode| midway.round(Rounding::to(sixteenth).mode(mode)).unwrap();
///
/// assert_eq!(at(RoundingMode::TiesUp), Length::ZERO);
/// assert_eq!(at(RoundingMode::TiesEven), Length::ZERO);
/// assert_eq!(at(RoundingMode::TiesAway), -sixteenth);
/// assert_eq!(at(RoundingMode::Down), -sixteenth);
/// assert_eq!(at(RoundingMode::Up), Length::ZERO);
/// assert_eq!(at(RoundingMode::TowardZero), Length::ZERO);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum RoundingMode {
    /// Nearest; a tie goes up, toward the far end of the run. The same everywhere along a run, so
    /// equally spaced marks stay equally spaced: the default.
    #[default]
    TiesUp,
    /// Nearest; a tie goes to the even multiple, as NIST Handbook 44, section 10.3, reads a scale.
    TiesEven,
    /// Nearest; a tie goes away from zero.
    TiesAway,
    /// The multiple at or below: for a part that must fit inside something.
    Down,
    /// The multiple at or above.
    Up,
    /// The multiple at or nearer to zero.
    TowardZero,
}

/// A step to round to, and how: the argument of [`Length::round`].
///
/// A bare [`Length`] turns into a rounding to that step with the default mode.
///
/// ```
/// use scantling::{Length, Rounding, RoundingMode, Unit};
///
/// let true_position = Length::fraction(144, 10, Unit::Inch);
/// let sixteenth = Length::fraction(1, 16, Unit::Inch);
/// assert_eq!(true_position.round(sixteenth)?, Length::fraction(115, 8, Unit::Inch));
///
/// let down = Rounding::to(sixteenth).mode(RoundingMode::Down);
/// assert_eq!(true_position.round(down)?, Length::fraction(115, 8, Unit::Inch));
/// # Ok::<(), scantling::LengthError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Rounding {
    step: Length,
    mode: RoundingMode,
}

impl Rounding {
    /// Rounding to whole multiples of `step`, with ties up.
    ///
    /// ```
    /// use scantling::{Rounding, Unit};
    ///
    /// assert_eq!(Rounding::to(Unit::Millimeter.length()).step(), Unit::Millimeter.length());
    /// ```
    #[must_use]
    pub const fn to(step: Length) -> Self {
        Self { step, mode: RoundingMode::TiesUp }
    }

    /// The same step in another mode.
    ///
    /// ```
    /// use scantling::{Rounding, RoundingMode, Unit};
    ///
    /// let up = Rounding::to(Unit::Inch.length()).mode(RoundingMode::Up);
    /// assert_eq!(up.rounding_mode(), RoundingMode::Up);
    /// ```
    #[must_use]
    pub const fn mode(self, mode: RoundingMode) -> Self {
        Self { mode, ..self }
    }

    /// The step.
    ///
    /// ```
    /// # use scantling::{Rounding, Unit};
    /// assert_eq!(Rounding::to(Unit::Inch.length()).step(), Unit::Inch.length());
    /// ```
    #[must_use]
    pub const fn step(self) -> Length {
        self.step
    }

    /// The mode.
    ///
    /// ```
    /// # use scantling::{Rounding, RoundingMode, Unit};
    /// assert_eq!(Rounding::to(Unit::Inch.length()).rounding_mode(), RoundingMode::TiesUp);
    /// ```
    #[must_use]
    pub const fn rounding_mode(self) -> RoundingMode {
        self.mode
    }
}

impl From<Length> for Rounding {
    fn from(step: Length) -> Self {
        Self::to(step)
    }
}

impl Length {
    /// This length rounded to a whole multiple of a step.
    ///
    /// ```
    /// use scantling::{Length, Unit};
    ///
    /// let meter = Length::new(1, Unit::Meter);
    /// let thirty_second = Length::fraction(1, 32, Unit::Inch);
    /// assert_eq!(meter.round(thirty_second)?, Length::fraction(315, 8, Unit::Inch)); // 39 3/8 in
    /// # Ok::<(), scantling::LengthError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`LengthError::NotAStep`] when the step is not above zero, [`LengthError::OutOfRange`] when
    /// the rounded length, or the count of steps in it, cannot be held.
    #[inline]
    pub fn round(self, rounding: impl Into<Rounding>) -> Result<Self, LengthError> {
        let rounding = rounding.into();
        let count = self.steps(rounding)?;
        let rounded = rounding.step.ticks().checked_mul_int(count).ok_or(LengthError::OutOfRange)?;
        Ok(Self::from_ticks(rounded))
    }

    /// How many steps the rounded length is.
    #[inline]
    pub(crate) fn steps(self, rounding: Rounding) -> Result<i128, LengthError> {
        if rounding.step <= Self::ZERO {
            return Err(LengthError::NotAStep { step: rounding.step });
        }
        let (value, step) = (self.ticks(), rounding.step.ticks());
        let near = Floor::of_near(value, step);
        let floor = near.or_else(|| Floor::of(value, step)).ok_or(LengthError::OutOfRange)?;
        floor.count(rounding.mode, value.num() < 0).ok_or(LengthError::OutOfRange)
    }
}

/// A value in steps: the whole number at or below it, and how the rest compares with half a step.
pub(crate) struct Floor {
    whole: i128,
    exact: bool,
    half: Ordering,
}

impl Floor {
    /// Of a value `rest` above a whole number of steps, `0 <= rest < step`, both in any one unit.
    #[inline]
    pub(crate) fn new<T: Copy + Default + Ord + Sub<Output = T>>(whole: i128, rest: T, step: T) -> Self {
        Self { whole, exact: rest == T::default(), half: rest.cmp(&(step - rest)) }
    }

    /// The common case, both in whole ticks within 64 bits.
    #[inline]
    fn of_near(value: Fraction, step: Fraction) -> Option<Self> {
        if value.den() != 1 || step.den() != 1 {
            return None;
        }
        let (near, step) = (i64::try_from(value.num()).ok()?, u64::try_from(step.num()).ok()?);
        let (whole, rest) = (near.unsigned_abs() / step, near.unsigned_abs() % step);
        Self::signed(whole.into(), rest == 0, rest.cmp(&(step - rest)), near < 0)
    }

    /// Any value in any step above zero.
    #[cold]
    #[inline(never)]
    fn of(value: Fraction, step: Fraction) -> Option<Self> {
        let top = Wide::product(value.num().unsigned_abs(), step.den().into());
        let bottom = Wide::product(step.num().unsigned_abs(), value.den().into());
        let (quotient, rest) = top.divide(bottom)?;
        let half = rest.doubled()?.cmp(&bottom);
        Self::signed(i128::try_from(quotient).ok()?, rest == Wide::product(0, 0), half, value.num() < 0)
    }

    /// From the floor of the value without its sign.
    #[inline]
    fn signed(whole: i128, exact: bool, half: Ordering, negative: bool) -> Option<Self> {
        Some(match negative {
            false => Self { whole, exact, half },
            true if exact => Self { whole: -whole, exact, half },
            // The floor of a negative value lies one lower, and the rest is measured from there.
            true => Self { whole: (-whole).checked_sub(1)?, exact, half: half.reverse() },
        })
    }

    #[inline]
    fn count(&self, mode: RoundingMode, negative: bool) -> Option<i128> {
        // A count, like a numerator, ends at the same place on both sides.
        self.whole.checked_add(i128::from(self.rises(mode, negative))).filter(|count| *count != i128::MIN)
    }

    /// Whether the next whole number is taken, and not this one.
    #[inline]
    pub(crate) fn rises(&self, mode: RoundingMode, negative: bool) -> bool {
        match mode {
            RoundingMode::TiesUp => self.half.is_ge(),
            RoundingMode::TiesEven => self.half.is_gt() || (self.half.is_eq() && self.whole % 2 != 0),
            RoundingMode::TiesAway => self.half.is_gt() || (self.half.is_eq() && !negative),
            RoundingMode::Down => false,
            RoundingMode::Up => !self.exact,
            RoundingMode::TowardZero => !self.exact && negative,
        }
    }
}

#[cfg(test)]
mod tests;
