//! What a case comes to: its parts, its levels, the sums that close, its poles and its fastenings, worked out together so
//! that they agree. Each is left to a file of its own.

use alloc::vec::Vec;

use super::case::Case;
use super::closing::Closing;
use super::error::CaseworkError;
use super::fastening::NailLine;
use super::levels::Levels;
use super::part::CasePart;
use crate::pole::StoryPole;

/// A case worked out. Everything in it is exact; a tape comes in only where a mark is made.
///
/// ```
/// use scantling::{Case, Length, Shelves, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).shelves(Shelves::Equal(4)).plan()?;
/// assert!(plan.closings().iter().all(|closing| closing.is_closed()));
/// assert_eq!(plan.poles()[0].name(), "side");
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CasePlan {
    pub(super) case: Case,
    parts: Vec<CasePart>,
    levels: Levels,
    closings: Vec<Closing>,
    poles: Vec<StoryPole>,
    nail_lines: Vec<NailLine>,
}

impl Case {
    /// Works the case out.
    ///
    /// # Errors
    ///
    /// When a part has no room, shelves or holes do not fit, a measure is below zero, or the overall sizes are over what is
    /// not there.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let refused = Case::new(inches(1), inches(72), inches(12)).plan().unwrap_err();
    /// assert_eq!(refused.to_string(), "the clear width of a bay would come out -1/2\": the overall sizes leave no room for it");
    /// ```
    pub fn plan(&self) -> Result<CasePlan, CaseworkError> {
        self.is_sound()?;
        let parts = self.cut_list()?;
        let levels = self.find_levels()?;
        let closings = self.close(&levels, &parts)?;
        let poles = self.draw_poles(&levels)?;
        let nail_lines = self.find_nail_lines(&levels)?;
        Ok(CasePlan { case: self.clone(), parts, levels, closings, poles, nail_lines })
    }
}

impl CasePlan {
    /// The case that was worked out.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.case().depth, foot);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn case(&self) -> &Case {
        &self.case
    }

    /// The cut list.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.parts()[2].name(), "top");
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn parts(&self) -> &[CasePart] {
        &self.parts
    }

    /// The heights of bottom, shelves and top, from the lower end of the sides.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.levels().top.upper, 6 * foot);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn levels(&self) -> &Levels {
        &self.levels
    }

    /// The chains of sizes that add up to the overall width, height and depth, in this order; then those across the parts
    /// as they are cut.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.closings().len(), 5);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn closings(&self) -> &[Closing] {
        &self.closings
    }

    /// The story poles that place everything: the left and the right side first, then what else the case has.
    ///
    /// ```
    /// use scantling::{Case, Hand, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// let plan = Case::new(3 * foot, 6 * foot, foot).plan()?;
    /// assert_eq!((plan.poles()[0].hand(), plan.poles()[1].hand()), (Some(Hand::Left), Some(Hand::Right)));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn poles(&self) -> &[StoryPole] {
        &self.poles
    }

    /// The lines that nails go along.
    ///
    /// ```
    /// use scantling::{Case, Length, Shelves, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// let plan = Case::new(3 * foot, 6 * foot, foot).shelves(Shelves::Equal(1)).plan()?;
    /// assert_eq!(plan.nail_lines()[1].at, 3 * foot); // the center of the shelf
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn nail_lines(&self) -> &[NailLine] {
        &self.nail_lines
    }
}
