//! A place between walls, as it is measured before a case is built for it: walls lean, floors slope.

use super::error::CaseworkError;
use crate::geometry::above_zero;
use crate::length::Length;

/// A place that a case is built for: its width low, in the middle and high, and how the floor lies.
///
/// ```
/// use scantling::{Length, Site, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let niche = Site::new([inches(481, 8), inches(60, 1), inches(963, 16)]).scribing(inches(1, 2), inches(3, 4));
/// assert_eq!(niche.narrowest(), inches(60, 1));
/// assert_eq!(niche.box_width()?, inches(235, 4));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Site {
    widths: [Length; 3],
    scribes: [Length; 2],
    floor: [Length; 2],
}

impl Site {
    /// A place of these widths: low, in the middle, high.
    ///
    /// ```
    /// use scantling::{Length, Site, Unit};
    ///
    /// let yard = Length::new(1, Unit::Yard);
    /// assert_eq!(Site::new([yard; 3]).narrowest(), yard);
    /// ```
    #[must_use]
    pub const fn new(widths: [Length; 3]) -> Self {
        Self { widths, scribes: [Length::ZERO; 2], floor: [Length::ZERO; 2] }
    }

    /// With room at the left and at the right for a strip that is scribed to the wall.
    ///
    /// ```
    /// use scantling::{Length, Site, Unit};
    ///
    /// let inch = Length::new(1, Unit::Inch);
    /// assert_eq!(Site::new([36 * inch; 3]).scribing(inch, inch).box_width()?, 34 * inch);
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

    /// The width that governs: the smallest.
    ///
    /// ```
    /// use scantling::{Length, Site, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// assert_eq!(Site::new([36, 35, 37].map(inches)).narrowest(), inches(35));
    /// ```
    #[must_use]
    pub fn narrowest(&self) -> Length {
        let [low, middle, high] = self.widths;
        low.min(middle).min(high)
    }

    /// How wide the case may be: the smallest width, less the room for scribing.
    ///
    /// # Errors
    ///
    /// When nothing is left, or it cannot be held.
    ///
    /// ```
    /// use scantling::{Length, Site, Unit};
    ///
    /// let inch = Length::new(1, Unit::Inch);
    /// let refused = Site::new([inch; 3]).scribing(inch, inch).box_width().unwrap_err();
    /// assert_eq!(refused.to_string(), "a width between the walls cannot be -1\": it must be above zero");
    /// ```
    pub fn box_width(&self) -> Result<Length, CaseworkError> {
        let [left, right] = self.scribes;
        let width =
            self.narrowest().checked_sub(left).and_then(|width| width.checked_sub(right)).ok_or(CaseworkError::TooLarge)?;
        Ok(above_zero("a width between the walls", width)?)
    }

    /// How wide each strip must be before it is scribed: the room left for it, and as much as the walls run out.
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
        let [low, middle, high] = self.widths;
        let runs_out = low.max(middle).max(high).checked_sub(self.narrowest())?;
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
