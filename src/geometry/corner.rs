//! Laying out a square corner by three whole numbers, 3-4-5 and its kin. Checking a frame that stands is
//! left to `square.rs`.

use core::fmt::{self, Write};

use num_rational::Ratio;

use super::GeometryError;
use super::error::above_zero;
use crate::length::{Length, Rounding, RoundingMode};
use crate::print::{Written, padded};

/// Three whole numbers that make a square corner: the squares of the legs add up to the square of the side
/// across. Only such triples avoid a square root.
///
/// ```
/// use scantling::{Length, Triple, Unit};
///
/// // A glaze room with 4 ft clear along one wall and 4 ft along the other.
/// let reach = Length::new(4, Unit::Foot);
/// let corner = Triple::THREE_FOUR_FIVE.within(reach, reach, Unit::Foot.length())?;
/// assert_eq!((corner.first(), corner.second()), (Length::new(36, Unit::Inch), Length::new(48, Unit::Inch)));
/// assert_eq!(corner.across(), Length::new(60, Unit::Inch));
/// # Ok::<(), scantling::GeometryError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Triple {
    short: u32,
    long: u32,
    across: u32,
}

/// A square corner laid out: a mark along each side of it, and the length between the two marks.
///
/// ```
/// use scantling::{Length, Triple, Unit};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// let corner = Triple::THREE_FOUR_FIVE.within(inches(20), inches(13), inches(1))?;
/// assert_eq!(corner.times(), 4);
/// assert_eq!((corner.first(), corner.second(), corner.across()), (inches(16), inches(12), inches(20)));
/// # Ok::<(), scantling::GeometryError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Corner {
    times: i64,
    first: Length,
    second: Length,
    across: Length,
}

impl Triple {
    /// 3, 4 and 5: the one everybody knows.
    pub const THREE_FOUR_FIVE: Self = Self { short: 3, long: 4, across: 5 };
    /// 5, 12 and 13: for a long and narrow place.
    pub const FIVE_TWELVE_THIRTEEN: Self = Self { short: 5, long: 12, across: 13 };
    /// 8, 15 and 17.
    pub const EIGHT_FIFTEEN_SEVENTEEN: Self = Self { short: 8, long: 15, across: 17 };
    /// 20, 21 and 29: for a place nearly as wide as it is long.
    pub const TWENTY_TWENTY_ONE_TWENTY_NINE: Self = Self { short: 20, long: 21, across: 29 };

    /// Another triple; the legs in either order.
    ///
    /// ```
    /// # use scantling::{GeometryError, Triple};
    /// assert_eq!(Triple::new(4, 3, 5)?, Triple::THREE_FOUR_FIVE);
    /// let refused = Triple::new(5, 6, 8).unwrap_err();
    /// assert_eq!(refused, GeometryError::NotATriple { short: 5, long: 6, across: 8 });
    /// # Ok::<(), GeometryError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`GeometryError::NotATriple`] when a leg is zero, or the squares do not add up.
    pub const fn new(first: u32, second: u32, across: u32) -> Result<Self, GeometryError> {
        let (short, long) = if first < second { (first, second) } else { (second, first) };
        let legs = short as u128 * short as u128 + long as u128 * long as u128;
        if short == 0 || legs != across as u128 * across as u128 {
            return Err(GeometryError::NotATriple { short, long, across });
        }
        Ok(Self { short, long, across })
    }

    /// The largest corner whose legs lie within reach along two sides and are whole multiples of a unit.
    /// The legs are laid whichever way round makes it larger, the short one along the first side if either
    /// will do. The larger the corner, the less an error in a mark turns it; see that the tape is long
    /// enough for [`Corner::across`].
    ///
    /// ```
    /// use scantling::{Length, Triple, Unit};
    ///
    /// let feet = |count| Length::new(count, Unit::Foot);
    /// let corner = Triple::FIVE_TWELVE_THIRTEEN.within(feet(30), feet(11), feet(1))?;
    /// assert_eq!((corner.first(), corner.second(), corner.across()), (feet(24), feet(10), feet(26)));
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`GeometryError::NotAboveZero`] for the reach or the unit, [`GeometryError::OutOfReach`] when not even
    /// once the triple fits, [`GeometryError::OutOfRange`] when the corner cannot be held.
    pub fn within(self, first: Length, second: Length, unit: Length) -> Result<Corner, GeometryError> {
        let (first, second) = (above_zero("the reach along a side", first)?, above_zero("the reach along a side", second)?);
        let unit = above_zero("a unit", unit)?;
        let out_of_range = GeometryError::out_of_range(unit);
        let [short, long, across] = [self.short, self.long, self.across].map(|count| unit.checked_mul(count.into()));
        let (short, long) = (short.ok_or_else(&out_of_range)?, long.ok_or_else(&out_of_range)?);
        let as_given = times(first, short)?.min(times(second, long)?);
        let turned = times(first, long)?.min(times(second, short)?);
        let (count, first_leg, second_leg) = if turned > as_given { (turned, long, short) } else { (as_given, short, long) };
        if count == 0 {
            return Err(GeometryError::OutOfReach { triple: self, unit, first, second });
        }
        let times = i64::try_from(count).map_err(|_| out_of_range())?;
        let many = |leg: Length| leg.checked_mul_ratio(Ratio::from_integer(count)).ok_or_else(&out_of_range);
        let across = many(across.ok_or_else(&out_of_range)?)?;
        Ok(Corner { times, first: many(first_leg)?, second: many(second_leg)?, across })
    }
}

/// The three numbers, the shorter leg first: `3-4-5`.
///
/// ```
/// assert_eq!(scantling::Triple::THREE_FOUR_FIVE.to_string(), "3-4-5");
/// ```
impl fmt::Display for Triple {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(*self, out)
    }
}

impl Written for Triple {
    fn write(self, out: &mut impl Write) -> fmt::Result {
        write!(out, "{}-{}-{}", self.short, self.long, self.across)
    }
}

/// How many times a leg goes into a reach.
fn times(reach: Length, leg: Length) -> Result<i128, GeometryError> {
    reach.steps(Rounding::to(leg).mode(RoundingMode::Down)).map_err(|_| GeometryError::OutOfRange { length: reach })
}

impl Corner {
    /// How many times the triple is taken.
    ///
    /// ```
    /// # use scantling::{Triple, Unit};
    /// let yard = Unit::Yard.length();
    /// assert_eq!(Triple::THREE_FOUR_FIVE.within(yard, yard, Unit::Inch.length())?.times(), 9);
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn times(&self) -> i64 {
        self.times
    }

    /// Where to mark along the first side, from the corner.
    ///
    /// ```
    /// # use scantling::{Triple, Unit};
    /// let yard = Unit::Yard.length();
    /// assert_eq!(Triple::THREE_FOUR_FIVE.within(yard, yard, Unit::Inch.length())?.first(), 27 * Unit::Inch.length());
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn first(&self) -> Length {
        self.first
    }

    /// Where to mark along the second side, from the corner.
    ///
    /// ```
    /// # use scantling::{Triple, Unit};
    /// let yard = Unit::Yard.length();
    /// assert_eq!(Triple::THREE_FOUR_FIVE.within(yard, yard, Unit::Inch.length())?.second(), yard);
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn second(&self) -> Length {
        self.second
    }

    /// What the two marks are apart when the corner is square.
    ///
    /// ```
    /// # use scantling::{Triple, Unit};
    /// let yard = Unit::Yard.length();
    /// assert_eq!(Triple::THREE_FOUR_FIVE.within(yard, yard, Unit::Inch.length())?.across(), 45 * Unit::Inch.length());
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn across(&self) -> Length {
        self.across
    }
}
