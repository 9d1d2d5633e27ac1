//! Figures for the case as a whole: what to check it for square by, whether it can be tipped up under a ceiling, how much
//! there is to finish. Roots are left to `geometry/`.

use super::error::CaseworkError;
use super::plan::CasePlan;
use crate::geometry::{Rounded, diagonal};
use crate::length::{Area, Length, Rounding, RoundingMode};

impl CasePlan {
    /// The diagonal of the box, seen from the front: measure both ways, and push until they agree.
    ///
    /// # Errors
    ///
    /// When the step is not above zero, or the figures cannot be held.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// let plan = Case::new(3 * foot, 4 * foot, foot).plan()?;
    /// assert_eq!(plan.square(Length::fraction(1, 16, Unit::Inch))?.exact(), Some(5 * foot));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn square(&self, step: Length) -> Result<Rounded, CaseworkError> {
        let (width, height) = (self.case.box_width().total()?, self.case.side_height().total()?);
        Ok(diagonal(width, height, step)?)
    }

    /// The height that a ceiling must have for the case to be tipped up under it, built lying on its back: the
    /// diagonal of its height and its depth with all that stands out at the front, rounded up.
    ///
    /// # Errors
    ///
    /// When the step is not above zero, or the figures cannot be held.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let plan = Case::new(inches(36, 1), inches(84, 1), inches(24, 1)).plan()?;
    /// assert_eq!(plan.tip_up(inches(1, 16))?.mark(), inches(699, 8)); // 87.36 in
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn tip_up(&self, step: Length) -> Result<Rounded, CaseworkError> {
        Ok(diagonal(self.case.height, self.case.full_depth()?, Rounding::to(step).mode(RoundingMode::Up))?)
    }

    /// How wide the case is over all that stands out from it: its frame, its top, its molding.
    ///
    /// # Errors
    ///
    /// When it cannot be held.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).molding(inches(3, 4)).plan()?;
    /// assert_eq!(plan.full_width()?, inches(75, 2));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn full_width(&self) -> Result<Length, CaseworkError> {
        self.case.full_width().total()
    }

    /// Both faces of every part, all in all: what finish is bought for. Edges are not counted.
    ///
    /// # Errors
    ///
    /// When it cannot be held.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let plan = Case::new(inches(27, 2), inches(12, 1), inches(12, 1)).plan()?;
    /// // Two sides of a square foot, bottom and top of another each.
    /// assert_eq!(plan.finished_area()?, 8 * (inches(12, 1) * inches(12, 1)));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn finished_area(&self) -> Result<Area, CaseworkError> {
        self.parts().iter().try_fold(Area::ZERO, |sum, part| {
            let face = part.width().total()?.checked_area(part.length().total()?);
            let faces = i64::try_from(part.pieces().count()).ok().and_then(|count| face?.checked_mul(count.checked_mul(2)?));
            faces.and_then(|faces| sum.checked_add(faces)).ok_or(CaseworkError::TooLarge)
        })
    }
}
