//! The openings of a case as they are seen from the front, and where each door and drawer front lies before them. How large the
//! fronts are is left to `fronts.rs`.

use alloc::vec::Vec;

use super::case::Case;
use super::error::CaseworkError;
use super::front_set::MOST;
use super::plan::CasePlan;
use super::sum::Sum;
use crate::length::Length;

/// A rectangle on the front of a case, measured from the outside of the left side and from the lower end of the sides.
///
/// ```
/// use scantling::{Case, Length, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let plan = Case::new(inches(36, 1), inches(30, 1), inches(12, 1)).plan()?;
/// let opening = plan.front_openings()?[0];
/// assert_eq!((opening.left, opening.right), (inches(3, 4), inches(141, 4)));
/// assert_eq!((opening.lower, opening.upper), (inches(3, 4), inches(117, 4)));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct OnFront {
    /// Its left edge.
    pub left: Length,
    /// Its right edge.
    pub right: Length,
    /// Its lower edge.
    pub lower: Length,
    /// Its upper edge.
    pub upper: Length,
}

impl OnFront {
    pub(super) fn width(self) -> Result<Length, CaseworkError> {
        less(self.right, self.left)
    }

    pub(super) fn height(self) -> Result<Length, CaseworkError> {
        less(self.upper, self.lower)
    }
}

impl Case {
    /// Each opening from the left: between panels, or where a frame covers them, between its stiles, rails and mullions, each
    /// of these centered before its partition.
    pub(super) fn front_openings(&self) -> Result<Vec<OnFront>, CaseworkError> {
        if self.bays > MOST {
            return Err(CaseworkError::TooLarge);
        }
        let (lower, upper) = match self.frame {
            Some(frame) => {
                let above = Sum::of("toe space", self.base.within_sides()).plus(1, "bottom rail", frame.bottom_rail);
                (above.total()?, self.side_height().less(1, "top rail", frame.top_rail).total()?)
            }
            None => (self.bottom_level().total()?, self.top_level().total()?),
        };
        let (covers, [left, right]) = match self.frame {
            Some(frame) => (frame.stile, [0, 1].map(|hand| frame.stile.checked_sub(frame.past[hand]))),
            None => (self.partition, [Some(self.side); 2]),
        };
        let between = (1..self.bays).map(|number| self.covered(number, covers)).collect::<Option<Vec<_>>>();
        let between = between.ok_or(CaseworkError::TooLarge)?;
        let last = self.box_width().less(1, "stile", right.ok_or(CaseworkError::TooLarge)?).total()?;
        let lefts = core::iter::once(left.ok_or(CaseworkError::TooLarge)?).chain(between.iter().map(|edges| edges.1));
        let rights = between.iter().map(|edges| edges.0).chain(core::iter::once(last));
        Ok(lefts.zip(rights).map(|(left, right)| OnFront { left, right, lower, upper }).collect())
    }

    /// From where to where a partition, or the mullion before it, covers the front.
    pub(super) fn covered(&self, number: u32, covers: Length) -> Option<(Length, Length)> {
        let (center, half) = (self.partition_center(number)?, covers.checked_div(2)?);
        Some((center.checked_sub(half)?, center.checked_add(half)?))
    }

    /// From the outside of the left side to the middle of a partition, numbered from 1.
    pub(super) fn partition_center(&self, number: u32) -> Option<Length> {
        let pitch = self.bay().ok()?.checked_add(self.partition)?;
        pitch.checked_mul(number.into())?.checked_add(self.side)?.checked_sub(self.partition.checked_div(2)?)
    }
}

impl CasePlan {
    /// The openings that are seen from the front, from the left.
    ///
    /// # Errors
    ///
    /// When the figures cannot be held.
    ///
    /// ```
    /// use scantling::{Case, FaceFrame, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let frame = FaceFrame::new(inches(3, 4), inches(2, 1));
    /// let plan = Case::new(inches(36, 1), inches(30, 1), inches(12, 1)).frame(frame).bays(2, inches(3, 4)).plan()?;
    /// let openings = plan.front_openings()?;
    /// // A mullion of 2 in before the middle.
    /// assert_eq!((openings[0].left, openings[0].right), (inches(2, 1), inches(17, 1)));
    /// assert_eq!((openings[1].left, openings[1].right), (inches(19, 1), inches(34, 1)));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn front_openings(&self) -> Result<Vec<OnFront>, CaseworkError> {
        self.case.front_openings()
    }

    /// Where each door or drawer front lies: opening by opening from the left, in each from the left and from below.
    ///
    /// # Errors
    ///
    /// When the figures cannot be held.
    ///
    /// ```
    /// use scantling::{Case, FrontSet, Length, Mount, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let doors = FrontSet::doors(2, Mount::Overlay { past: inches(1, 2), gap: inches(1, 8) }, inches(3, 4));
    /// let places = Case::new(inches(36, 1), inches(30, 1), inches(12, 1)).fronts(doors).plan()?.front_places()?;
    /// // From 1/4 in to 35 3/4 in, with 1/8 in at the middle.
    /// assert_eq!((places[0].left, places[0].right), (inches(1, 4), inches(287, 16)));
    /// assert_eq!((places[1].left, places[1].right), (inches(289, 16), inches(143, 4)));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn front_places(&self) -> Result<Vec<OnFront>, CaseworkError> {
        let Some(set) = self.case.fronts else { return Ok(Vec::new()) };
        let (mut places, past) = (Vec::new(), set.mount.past());
        for opening in self.front_openings()? {
            let fronts = set.before(opening.width()?, opening.height()?)?;
            let (width, gap) = (fronts.width.total()?, fronts.gap);
            let mut lower = less(opening.lower, past)?;
            for height in fronts.heights {
                let upper = more(lower, height)?;
                let mut left = less(opening.left, past)?;
                for _ in 0..fronts.across {
                    let right = more(left, width)?;
                    places.push(OnFront { left, right, lower, upper });
                    left = more(right, gap)?;
                }
                lower = more(upper, gap)?;
            }
        }
        Ok(places)
    }
}

fn less(length: Length, by: Length) -> Result<Length, CaseworkError> {
    length.checked_sub(by).ok_or(CaseworkError::TooLarge)
}

fn more(length: Length, by: Length) -> Result<Length, CaseworkError> {
    length.checked_add(by).ok_or(CaseworkError::TooLarge)
}
