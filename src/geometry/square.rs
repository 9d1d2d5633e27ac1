//! How far two measured diagonals put a frame out of square, and what to do about it. What a diagonal should
//! be is left to `diagonal.rs`, laying out a corner to `corner.rs`.

use core::cmp::Ordering;

use super::error::{above_zero, not_below_zero};
use super::root::Root;
use super::{GeometryError, Rounded};
use crate::length::{Length, Rounding};

/// Two diagonals of a frame as they were measured, the longer one first.
///
/// Equal diagonals make square corners only where opposite sides are equal. A frame with one side out of
/// parallel, its top rail a little short, say, can have equal diagonals and no square corner at all: measure
/// opposite sides too.
///
/// ```
/// use scantling::{Length, Squareness, Unit, out_of_square};
///
/// // The back of a ware case, 30 in wide: the diagonals read 78 1/4 and 78 in.
/// let frame = out_of_square(Length::fraction(313, 4, Unit::Inch), Length::new(78, Unit::Inch))?;
/// assert_eq!(frame.difference(), Length::fraction(1, 4, Unit::Inch));
/// assert_eq!(frame.push(), Length::fraction(1, 8, Unit::Inch));
/// assert_eq!(frame.sideways(Length::new(30, Unit::Inch))?, Length::fraction(125, 384, Unit::Inch));
/// assert_eq!(frame.verdict(Length::fraction(1, 16, Unit::Inch))?, Squareness::PastLimit);
/// # Ok::<(), scantling::GeometryError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct OutOfSquare {
    long: Length,
    short: Length,
    difference: Length,
    push: Length,
}

/// What two diagonals say of a frame whose opposite sides are equal.
///
/// ```
/// use scantling::{Length, Squareness, Unit, out_of_square};
///
/// let (yard, sixteenth) = (Unit::Yard.length(), Length::fraction(1, 16, Unit::Inch));
/// let verdict = |off: Length| out_of_square(yard, yard + off).unwrap().verdict(sixteenth).unwrap();
/// assert_eq!(verdict(Length::ZERO), Squareness::Square);
/// assert_eq!(verdict(sixteenth), Squareness::WithinLimit);
/// assert_eq!(verdict(2 * sixteenth), Squareness::PastLimit);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Squareness {
    /// No difference at all.
    Square,
    /// A difference up to the limit, the limit itself among them.
    WithinLimit,
    /// A difference past the limit.
    PastLimit,
}

/// Takes the two diagonals of a frame, in either order.
///
/// ```
/// use scantling::{Length, Unit, out_of_square};
///
/// let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
/// assert_eq!(out_of_square(foot, yard)?, out_of_square(yard, foot)?);
/// # Ok::<(), scantling::GeometryError>(())
/// ```
///
/// # Errors
///
/// [`GeometryError::NotAboveZero`] for a diagonal, [`GeometryError::OutOfRange`] when half their difference
/// cannot be held.
pub fn out_of_square(first: Length, second: Length) -> Result<OutOfSquare, GeometryError> {
    let (first, second) = (above_zero("a diagonal", first)?, above_zero("a diagonal", second)?);
    let (long, short) = (first.max(second), first.min(second));
    let out_of_range = GeometryError::out_of_range(long);
    let difference = long.checked_sub(short).ok_or_else(&out_of_range)?;
    let push = difference.checked_div(2).ok_or_else(&out_of_range)?;
    Ok(OutOfSquare { long, short, difference, push })
}

impl OutOfSquare {
    /// The longer diagonal.
    ///
    /// ```
    /// # use scantling::{Unit, out_of_square};
    /// let frame = out_of_square(Unit::Foot.length(), Unit::Yard.length())?;
    /// assert_eq!(frame.long(), Unit::Yard.length());
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn long(&self) -> Length {
        self.long
    }

    /// The shorter diagonal.
    ///
    /// ```
    /// # use scantling::{Unit, out_of_square};
    /// let frame = out_of_square(Unit::Foot.length(), Unit::Yard.length())?;
    /// assert_eq!(frame.short(), Unit::Foot.length());
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn short(&self) -> Length {
        self.short
    }

    /// How much longer the longer diagonal is.
    ///
    /// ```
    /// # use scantling::{Unit, out_of_square};
    /// let frame = out_of_square(Unit::Foot.length(), Unit::Yard.length())?;
    /// assert_eq!(frame.difference(), 2 * Unit::Foot.length());
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn difference(&self) -> Length {
        self.difference
    }

    /// How far to push the ends of the longer diagonal toward each other: half the difference. The rule of
    /// the shop, a hair more than is needed; watch the tape for [`OutOfSquare::squared`].
    ///
    /// ```
    /// # use scantling::{Length, Unit, out_of_square};
    /// let frame = out_of_square(Unit::Foot.length(), Length::fraction(49, 4, Unit::Inch))?;
    /// assert_eq!(frame.push(), Length::fraction(1, 8, Unit::Inch));
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn push(&self) -> Length {
        self.push
    }

    /// What both diagonals read once the frame is square: the root of the mean of their squares, since the
    /// squares of the diagonals of a frame with equal opposite sides add up to those of its four sides.
    ///
    /// ```
    /// use scantling::{Length, Unit, out_of_square};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let frame = out_of_square(inches(17), inches(7))?;
    /// assert_eq!(frame.squared(inches(1))?.exact(), Some(inches(13))); // (289 + 49) / 2 is 169
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`GeometryError::NotAStep`] for a step that is not above zero, [`GeometryError::OutOfRange`] when the
    /// rounded diagonal cannot be held.
    pub fn squared(&self, rounding: impl Into<Rounding>) -> Result<Rounded, GeometryError> {
        Root::of_mean(self.long, self.short).round(rounding.into())
    }

    /// How far one side stands off sideways, measured along itself from where it is when the frame is square,
    /// with the side that faces it held still. Exact: the difference of the squared diagonals over four times
    /// the side. Read on a tape, it is off by what the tape rounds and nothing else.
    ///
    /// ```
    /// use scantling::{Length, Unit, out_of_square};
    ///
    /// // A frame 7 in wide, its top rail 12 in up and 2 in off: one diagonal runs 9 in over, the other 5 in.
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let frame = out_of_square(inches(15), inches(13))?;
    /// assert_eq!(frame.sideways(inches(7))?, inches(2));
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`GeometryError::NotAboveZero`] for the side, [`GeometryError::NoSuchFrame`] when no frame with equal
    /// opposite sides has these diagonals and this side, [`GeometryError::OutOfRange`] when the shift cannot
    /// be held.
    pub fn sideways(&self, side: Length) -> Result<Length, GeometryError> {
        let Self { long, short, difference, .. } = *self;
        let out_of_range = GeometryError::out_of_range(side);
        let twice = above_zero("a side", side)?.checked_mul(2).ok_or_else(&out_of_range)?;
        let sum = long.checked_add(short).ok_or_else(&out_of_range)?;
        // The halves of the diagonals and the side make a triangle.
        if difference >= twice || sum <= twice {
            return Err(GeometryError::NoSuchFrame { long, short, side });
        }
        let shift = sum.checked_ratio(side).and_then(|ratio| difference.checked_mul_ratio(ratio)?.checked_div(4));
        shift.ok_or_else(out_of_range)
    }

    /// Whether the difference is within a limit, which depends on the work and is yours to set: 1/16 in for a
    /// cabinet is common practice, without a source. Equal opposite sides are taken for granted, see above.
    ///
    /// ```
    /// use scantling::{Length, Squareness, Unit, out_of_square};
    ///
    /// let frame = out_of_square(Unit::Foot.length(), Length::fraction(49, 4, Unit::Inch))?;
    /// assert_eq!(frame.verdict(Length::fraction(1, 4, Unit::Inch))?, Squareness::WithinLimit);
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`GeometryError::BelowZero`] for the limit.
    pub fn verdict(&self, limit: Length) -> Result<Squareness, GeometryError> {
        let limit = not_below_zero("a limit", limit)?;
        Ok(match self.difference.cmp(&limit) {
            _ if self.long == self.short => Squareness::Square,
            Ordering::Greater => Squareness::PastLimit,
            _ => Squareness::WithinLimit,
        })
    }
}
