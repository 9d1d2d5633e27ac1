//! Dividing the width of a board with a rule laid across it on the slant, without arithmetic at the bench.
//! Dividing by positions is left to the spacing layer.

use super::error::above_zero;
use super::root::Root;
use super::{GeometryError, Rounded};
use crate::length::{Length, Rounding, RoundingMode};

/// A rule laid across a board from edge to edge, so slanted that its reading divides evenly.
///
/// The zero lies on one edge and [`SlantedRule::reading`] on the other; a tick at each mark, and lines through
/// the ticks along the board. The strips are true between the lines: the saw still takes its kerf out of
/// them, so settle which side of each line is waste.
///
/// ```
/// use scantling::{Length, Unit, slanted_rule};
///
/// // A board 7 3/4 in wide into four: lay 12 in across it.
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let slant = slanted_rule(inches(31, 4), 4, inches(12, 1))?;
/// assert!(slant.marks().eq([3, 6, 9].map(|count| inches(count, 1))));
/// assert_eq!(slant.strip(), inches(31, 16)); // 1 15/16 in
/// # Ok::<(), scantling::GeometryError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct SlantedRule {
    width: Length,
    parts: u32,
    reading: Length,
    part: Length,
    strip: Length,
}

/// A rule laid across a board so that it reads `reading` from edge to edge, for so many equal strips.
///
/// ```
/// use scantling::{Length, Unit, slanted_rule};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let slant = slanted_rule(inches(11, 4), 3, inches(3, 1))?;
/// assert!(slant.marks().eq([inches(1, 1), inches(2, 1)]));
/// assert_eq!(slant.strip(), inches(11, 12));
/// # Ok::<(), scantling::GeometryError>(())
/// ```
///
/// # Errors
///
/// - [`GeometryError::NotAboveZero`] for the width, [`GeometryError::ZeroStrips`] for no strips.
/// - [`GeometryError::RuleTooShort`] when the reading is less than the board is wide.
/// - [`GeometryError::OutOfRange`] when the marks or the strips cannot be held.
pub fn slanted_rule(width: Length, parts: u32, reading: Length) -> Result<SlantedRule, GeometryError> {
    reaches_across(width, parts, reading)?;
    let part = reading.checked_div(parts.into()).ok_or(GeometryError::OutOfRange { length: reading })?;
    let strip = width.checked_div(parts.into()).ok_or(GeometryError::OutOfRange { length: width })?;
    // Every mark is a whole number of parts below this many, and so none can be out of range.
    let last = part.ticks().num().checked_mul(parts.into()).ok_or(GeometryError::OutOfRange { length: reading });
    last.map(|_| SlantedRule { width, parts, reading, part, strip })
}

fn reaches_across(width: Length, parts: u32, reading: Length) -> Result<(), GeometryError> {
    above_zero("the width of a board", width)?;
    match () {
        () if parts == 0 => Err(GeometryError::ZeroStrips),
        () if reading < width => Err(GeometryError::RuleTooShort { reading, width }),
        () => Ok(()),
    }
}

/// The rule laid across with the least reading that puts every mark on a whole number of `unit`: whole inches,
/// say, or centimeters. `rule` is how long the rule is.
///
/// ```
/// use scantling::{Length, Unit, slanted_reading};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let slant = slanted_reading(inches(31, 4), 5, inches(1, 1), inches(12, 1))?;
/// assert_eq!(slant.reading(), inches(10, 1));
/// assert!(slant.marks().eq([2, 4, 6, 8].map(|count| inches(count, 1))));
/// # Ok::<(), scantling::GeometryError>(())
/// ```
///
/// # Errors
///
/// Those of [`slanted_rule`], and [`GeometryError::NotAboveZero`] for the unit; [`GeometryError::RuleTooShort`]
/// when the rule is shorter than the board is wide, [`GeometryError::NoReading`] when it is longer, but not
/// as long as the least reading that divides as asked.
pub fn slanted_reading(width: Length, parts: u32, unit: Length, rule: Length) -> Result<SlantedRule, GeometryError> {
    reaches_across(width, parts, rule)?;
    let every = above_zero("a unit", unit)?.checked_mul(parts.into());
    let reading = every.and_then(|every| width.round(Rounding::to(every).mode(RoundingMode::Up)).ok());
    match reading.ok_or(GeometryError::OutOfRange { length: unit })? {
        reading if reading > rule => Err(GeometryError::NoReading { reading, rule, width }),
        reading => slanted_rule(width, parts, reading),
    }
}

impl SlantedRule {
    /// What the rule reads on the far edge of the board.
    ///
    /// ```
    /// # use scantling::{Unit, slanted_rule};
    /// let slant = slanted_rule(7 * Unit::Inch.length(), 3, Unit::Foot.length())?;
    /// assert_eq!(slant.reading(), Unit::Foot.length());
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn reading(&self) -> Length {
        self.reading
    }

    /// The readings to mark at, one fewer than there are strips.
    ///
    /// ```
    /// # use scantling::{Unit, slanted_rule};
    /// let inch = Unit::Inch.length();
    /// let slant = slanted_rule(7 * inch, 3, 12 * inch)?;
    /// assert!(slant.marks().eq([4 * inch, 8 * inch]));
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub fn marks(&self) -> impl DoubleEndedIterator<Item = Length> + Clone {
        let part = self.part;
        (1..self.parts).map(move |number| part * i64::from(number))
    }

    /// How wide each strip is, straight across the board, exactly.
    ///
    /// ```
    /// # use scantling::{Length, Unit, slanted_rule};
    /// let slant = slanted_rule(7 * Unit::Inch.length(), 3, Unit::Foot.length())?;
    /// assert_eq!(slant.strip(), Length::fraction(7, 3, Unit::Inch));
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn strip(&self) -> Length {
        self.strip
    }

    /// How much of the length of the board the rule takes up on the slant, so that its two ends can be set.
    ///
    /// ```
    /// # use scantling::{Unit, slanted_rule};
    /// let inch = Unit::Inch.length();
    /// assert_eq!(slanted_rule(3 * inch, 5, 5 * inch)?.along(inch)?.exact(), Some(4 * inch));
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`GeometryError::NotAStep`] for a step that is not above zero, [`GeometryError::OutOfRange`] when the
    /// rounded length cannot be held.
    pub fn along(&self, rounding: impl Into<Rounding>) -> Result<Rounded, GeometryError> {
        Root::of_difference(self.reading, self.width).round(rounding.into())
    }
}
