//! Whether a case goes into the place that was measured for it, and its parts into the stock they are cut from. How each is
//! said is left to `advice.rs`.

use alloc::vec::Vec;

use super::advice::Advice;
use super::case::Case;
use super::error::CaseworkError;
use super::part::CasePart;
use super::plan::CasePlan;
use super::site::Site;
use crate::length::Length;

impl Case {
    /// As wide as its place has room for: over all that stands out from it. As it was where the place has no walls.
    ///
    /// # Errors
    ///
    /// When nothing is left between the walls, or the figures cannot be held.
    ///
    /// ```
    /// use scantling::{Case, FaceFrame, Length, Site, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let niche = Site::new([inches(36, 1); 3]).scribing(inches(1, 2), inches(1, 2));
    /// let frame = FaceFrame::new(inches(3, 4), inches(3, 2)).past_sides(inches(1, 4), inches(1, 4));
    /// let case = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).frame(frame).as_wide_as(&niche)?;
    /// assert_eq!(case.width, inches(69, 2)); // of the box: 36 - 1 - 1/2
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn as_wide_as(self, site: &Site) -> Result<Self, CaseworkError> {
        let Some(room) = site.box_width()? else { return Ok(self) };
        let at_room = Self { width: room, ..self };
        let spare = room.checked_sub(at_room.full_width().total()?).and_then(|spare| room.checked_add(spare));
        Ok(Self { width: spare.ok_or(CaseworkError::TooLarge)?, ..at_room })
    }
}

impl CasePlan {
    /// Whether the case goes into its place: between the walls, under the ceiling, and tipped up under it, the last rounded
    /// up to a whole number of such steps.
    ///
    /// # Errors
    ///
    /// When the place has no room at all, the step is not above zero, or the figures cannot be held.
    ///
    /// ```
    /// use scantling::{Case, Length, Site, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let plan = Case::new(inches(36, 1), inches(84, 1), inches(24, 1)).plan()?;
    /// let said = plan.advice_at(&Site::OPEN.under(inches(87, 1)), inches(1, 16))?;
    /// let said: Vec<String> = said.iter().map(ToString::to_string).collect();
    /// assert_eq!(said, ["tipped up, the case takes 87 3/8\", and the ceiling is 87\": build it standing, or in two"]);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn advice_at(&self, site: &Site, step: Length) -> Result<Vec<Advice>, CaseworkError> {
        let (width, height) = (self.full_width()?, self.case.height);
        let too_wide = site.box_width()?.filter(|room| width > *room).map(|room| Advice::TooWide { width, room });
        let needed = self.tip_up(step)?.mark();
        let too_high = site.ceiling.and_then(|ceiling| {
            let no_tip_up = (needed > ceiling).then_some(Advice::NoTipUp { needed, ceiling });
            if height > ceiling { Some(Advice::TooHigh { height, ceiling }) } else { no_tip_up }
        });
        Ok(too_wide.into_iter().chain(too_high).collect())
    }
}

impl CasePart {
    /// Whether it is cut from a sheet of this length and width turned, its grain running across: it is too wide for the sheet
    /// with the grain along it, and no one minds the grain of a back.
    ///
    /// ```
    /// use scantling::{Back, Case, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let case = Case::new(inches(60, 1), inches(40, 1), inches(12, 1)).back(Back::Applied { thickness: inches(1, 4) });
    /// let plan = case.plan()?;
    /// assert!(plan.parts().iter().all(|part| part.is_turned_on(inches(96, 1), inches(48, 1)) == (part.name() == "back")));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn is_turned_on(&self, length: Length, width: Length) -> bool {
        let (Ok(wide), Ok(long)) = (self.sawn_width().total(), self.length().total()) else { return false };
        let (fits, fits_turned) = (wide <= width && long <= length, wide <= length && long <= width);
        self.name() == "back" && !fits && fits_turned
    }

    /// What speaks against cutting it from a sheet of this length and width.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let plan = Case::new(inches(36, 1), inches(98, 1), inches(12, 1)).plan()?;
    /// let said = plan.parts()[0].advice_on_sheet(inches(96, 1), inches(48, 1));
    /// assert_eq!(said[0].to_string(), "the side is 98\" long: longer than a sheet of 96\"");
    /// assert_eq!(plan.parts()[0].advice_on_sheet(inches(120, 1), inches(48, 1)), []);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn advice_on_sheet(&self, length: Length, width: Length) -> Vec<Advice> {
        if self.is_turned_on(length, width) {
            return Vec::new();
        }
        let too_long = self.advice_on("sheet", length);
        let wide = self.sawn_width().total().ok().filter(|wide| *wide > width);
        too_long.into_iter().chain(wide.map(|wide| Advice::WidePart { part: self.name(), width: wide, sheet: width })).collect()
    }

    /// What speaks against cutting it from boards of which the longest is this long.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// let plan = Case::new(3 * foot, 6 * foot, foot).plan()?;
    /// let said = plan.parts()[0].advice_on_board(5 * foot).unwrap();
    /// assert_eq!(said.to_string(), "the side is 72\" long: longer than a board of 60\"");
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn advice_on_board(&self, longest: Length) -> Option<Advice> {
        self.advice_on("board", longest)
    }

    fn advice_on(&self, stock: &'static str, longest: Length) -> Option<Advice> {
        let length = self.length().total().ok()?;
        (length > longest).then_some(Advice::LongPart { part: self.name(), length, stock, longest })
    }
}
