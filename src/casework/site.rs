//! The place that a case is built for, as it is measured before: walls lean, floors slope, a ceiling is where it is. Whether a
//! case goes in there is left to `placing.rs`.

use super::error::CaseworkError;
use crate::geometry::{above_zero, not_below_zero};
use crate::length::Length;

/// A place that a case is built for: its width low, in the middle and high if it has walls, how the floor lies, how high the
/// ceiling is.
///
/// ```
/// use scantling::{Length, Site, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let niche = Site::new([inches(481, 8), inches(60, 1), inches(963, 16)]).scribing(inches(1, 2), inches(3, 4));
/// assert_eq!(niche.narrowest(), Some(inches(60, 1)));
/// assert_eq!(niche.box_width()?, Some(inches(235, 4)));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct Site {
    /// From wall to wall: low, in the middle, high.
    pub widths: Option<[Length; 3]>,
    /// Room for a strip that is scribed to the wall, at the left and at the right.
    pub scribes: [Length; 2],
    /// How far the high point and the low point of the floor lie above any level line.
    pub floor: [Length; 2],
    /// From the high point of the floor to the ceiling.
    pub ceiling: Option<Length>,
}

impl Site {
    /// A place without walls at its sides, with a level floor and nothing above it.
    ///
    /// ```
    /// assert_eq!(scantling::Site::OPEN.narrowest(), None);
    /// ```
    pub const OPEN: Self = Self { widths: None, scribes: [Length::ZERO; 2], floor: [Length::ZERO; 2], ceiling: None };

    /// A place of these widths: low, in the middle, high.
    ///
    /// ```
    /// use scantling::{Length, Site, Unit};
    ///
    /// let yard = Length::new(1, Unit::Yard);
    /// assert_eq!(Site::new([yard; 3]).narrowest(), Some(yard));
    /// ```
    #[must_use]
    pub const fn new(widths: [Length; 3]) -> Self {
        Self { widths: Some(widths), ..Self::OPEN }
    }

    /// With room at the left and at the right for a strip that is scribed to the wall.
    ///
    /// ```
    /// use scantling::{Length, Site, Unit};
    ///
    /// let inch = Length::new(1, Unit::Inch);
    /// assert_eq!(Site::new([36 * inch; 3]).scribing(inch, inch).box_width()?, Some(34 * inch));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn scribing(mut self, left: Length, right: Length) -> Self {
        self.scribes = [left, right];
        self
    }

    /// With a floor whose high point and low point lie so far above any level line.
    ///
    /// ```
    /// use scantling::{Length, Site, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let place = Site::new([inches(36, 1); 3]).floor(inches(3, 8), inches(-1, 8));
    /// assert_eq!(place.shim(), Some(inches(1, 2)));
    /// ```
    #[must_use]
    pub const fn floor(mut self, high: Length, low: Length) -> Self {
        self.floor = [high, low];
        self
    }

    /// Under a ceiling so far above the high point of the floor.
    ///
    /// ```
    /// use scantling::{Length, Site, Unit};
    ///
    /// let feet = |count| Length::new(count, Unit::Foot);
    /// assert_eq!(Site::OPEN.under(feet(8)).ceiling, Some(feet(8)));
    /// ```
    #[must_use]
    pub const fn under(mut self, ceiling: Length) -> Self {
        self.ceiling = Some(ceiling);
        self
    }

    /// The width that governs: the smallest.
    ///
    /// ```
    /// use scantling::{Length, Site, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// assert_eq!(Site::new([36, 35, 37].map(inches)).narrowest(), Some(inches(35)));
    /// ```
    #[must_use]
    pub fn narrowest(&self) -> Option<Length> {
        self.widths.map(|[low, middle, high]| low.min(middle).min(high))
    }

    /// How wide the case may be, over all that stands out from it: the smallest width, less the room for scribing; `None`
    /// where there are no walls.
    ///
    /// # Errors
    ///
    /// When a room for scribing is below zero, a width or the ceiling is not above it, nothing is left, or it cannot be held.
    ///
    /// ```
    /// use scantling::{Length, Site, Unit};
    ///
    /// let inch = Length::new(1, Unit::Inch);
    /// let refused = Site::new([inch; 3]).scribing(inch, inch).box_width().unwrap_err();
    /// let said = "scribing takes 1\" and 1\" of 1\" between the walls: nothing is left for the case";
    /// assert_eq!(refused.to_string(), said);
    /// ```
    pub fn box_width(&self) -> Result<Option<Length>, CaseworkError> {
        for scribe in self.scribes {
            not_below_zero("a room for scribing", scribe)?;
        }
        self.ceiling.map_or(Ok(Length::ZERO), |ceiling| above_zero("a height of the ceiling", ceiling))?;
        let Some(narrowest) = self.narrowest() else { return Ok(None) };
        let [left, right] = self.scribes;
        above_zero("a width between the walls", narrowest)?;
        let width = narrowest.checked_sub(left).and_then(|width| width.checked_sub(right)).ok_or(CaseworkError::TooLarge)?;
        let nothing = CaseworkError::NothingBetweenWalls { left, right, narrowest };
        if width > Length::ZERO { Ok(Some(width)) } else { Err(nothing) }
    }

    /// How wide each strip must be before it is scribed: the room left for it, and as much as the walls run out. `None` where there
    /// are no walls, or when it cannot be held.
    ///
    /// ```
    /// use scantling::{Length, Site, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let niche = Site::new([inches(60, 1), inches(60, 1), inches(121, 2)]).scribing(inches(1, 2), inches(1, 2));
    /// assert_eq!(niche.strips(), Some([inches(1, 1); 2]));
    /// ```
    #[must_use]
    pub fn strips(&self) -> Option<[Length; 2]> {
        let [low, middle, high] = self.widths?;
        let runs_out = low.max(middle).max(high).checked_sub(self.narrowest()?)?;
        let [left, right] = self.scribes;
        Some([left.checked_add(runs_out)?, right.checked_add(runs_out)?])
    }

    /// How far the base is shimmed at the low point, when heights are measured from the high point; `None` when it cannot be held.
    ///
    /// ```
    /// use scantling::{Length, Site, Unit};
    ///
    /// assert_eq!(Site::new([Length::new(1, Unit::Yard); 3]).shim(), Some(Length::ZERO));
    /// ```
    #[must_use]
    pub fn shim(&self) -> Option<Length> {
        let [high, low] = self.floor;
        high.max(low).checked_sub(high.min(low))
    }
}
