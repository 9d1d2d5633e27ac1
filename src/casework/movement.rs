//! How far a board, and each solid part of a case, grows and shrinks across the grain as its moisture changes. Which wood
//! moves how much is left to `species.rs`.

use alloc::vec::Vec;

use num_rational::Ratio;

use super::advice::Advice;
use super::back::Back;
use super::error::CaseworkError;
use super::front_set::FrontKind;
use super::fronted::{DOOR, DRAWER};
use super::fronts::Mount;
use super::part::CasePart;
use super::plan::CasePlan;
use crate::geometry::above_zero;
use crate::length::{Length, Unit};

/// How much a wood moves: the part of its width by which each percent of moisture changes it, in hundred thousandths.
///
/// `change = width × coefficient × change in moisture`, good between 6 and 14 percent. Source: Wood Handbook, chapter
/// 13, equation 13-2; the limits are from memory. Along the grain wood hardly moves; panels have figures of their own.
///
/// ```
/// use num_rational::Ratio;
/// use scantling::{Length, Movement, Unit};
///
/// // Red alder, 8 in, six percent more: 0.1248 in, about an eighth.
/// let change = Movement::new(260).change(Length::new(8, Unit::Inch), Ratio::from(6), Ratio::from(12))?;
/// assert_eq!(change, Length::fraction(1248, 10_000, Unit::Inch));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Movement {
    hundred_thousandths: u32,
}

impl Movement {
    /// A wood that moves so many hundred thousandths of its width with each percent: 190 for 0.00190.
    ///
    /// ```
    /// use scantling::{Movement, species};
    ///
    /// assert_eq!(species("American beech")?.radial(), Some(Movement::new(190)));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn new(hundred_thousandths: u32) -> Self {
        Self { hundred_thousandths }
    }

    /// The part of the width for each percent.
    ///
    /// ```
    /// use num_rational::Ratio;
    ///
    /// assert_eq!(scantling::Movement::new(250).coefficient(), Ratio::new(1, 400));
    /// ```
    #[must_use]
    pub fn coefficient(self) -> Ratio<i128> {
        Ratio::new(self.hundred_thousandths.into(), 100_000)
    }

    /// By how much a board of one width changes from one percentage of moisture to another: below zero where it shrinks.
    ///
    /// # Errors
    ///
    /// When the width is not above zero, or the figures are too large or too fine.
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::{Length, Movement, Unit};
    ///
    /// let (summer, winter) = (Ratio::from(11), Ratio::from(8));
    /// let change = Movement::new(245).change(Length::new(232, Unit::Millimeter), summer, winter)?;
    /// assert_eq!(change, -Length::fraction(17_052, 10_000, Unit::Millimeter));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn change(self, width: Length, from: Ratio<i128>, to: Ratio<i128>) -> Result<Length, CaseworkError> {
        above_zero("a width", width)?;
        let at = |percent| width.checked_mul_ratio(self.coefficient())?.checked_mul_ratio(percent);
        at(to).zip(at(from)).and_then(|(to, from)| to.checked_sub(from)).ok_or(CaseworkError::TooLarge)
    }
}

/// How one part of a case moves.
///
/// ```
/// use num_rational::Ratio;
/// use scantling::{Case, FaceFrame, Length, Movement, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let frame = FaceFrame::new(inches(3, 4), inches(2, 1));
/// let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).frame(frame).plan()?;
/// let moving = plan.moving(Movement::new(250), Ratio::from(6), Ratio::from(10), |part| !part.is_panel())?;
/// // 2 in × 0.0025 × 4 percent
/// assert_eq!((moving[0].part, moving[0].change), ("stile", inches(1, 50)));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct MovingPart {
    /// The part.
    pub part: &'static str,
    /// How wide it is, across the grain.
    pub width: Length,
    /// By how much it changes: below zero where it shrinks.
    pub change: Length,
    /// That it swells by more than it has room for, or is held where it would move.
    pub advice: Option<Advice>,
}

impl CasePlan {
    /// How each part of solid wood moves across the grain, from one percentage of moisture to another. A molding is as wide as
    /// it is bought, and left out.
    ///
    /// # Errors
    ///
    /// When the figures are too large or too fine.
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::{Case, FrontSet, Length, Mount, Movement, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let doors = FrontSet::doors(1, Mount::Inset { gap: inches(1, 16) }, inches(3, 4));
    /// let plan = Case::new(inches(18, 1), inches(30, 1), inches(12, 1)).fronts(doors).plan()?;
    /// let moving = plan.moving(Movement::new(200), Ratio::from(6), Ratio::from(10), |part| part.name() == "door")?;
    /// let said = moving[0].advice.as_ref().unwrap().to_string();
    /// // 16 3/8 in × 0.002 × 4 percent: 0.131 in
    /// assert_eq!(said, "the door swells 131/1000\" and has 1/16\" of room: it will bind");
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn moving(
        &self,
        movement: Movement,
        from: Ratio<i128>,
        to: Ratio<i128>,
        is_solid: impl Fn(&CasePart) -> bool,
    ) -> Result<Vec<MovingPart>, CaseworkError> {
        let is_of_wood = |name| self.parts().iter().any(|part| part.name() == name && is_solid(part));
        let is_held = is_of_wood("shelf") != is_of_wood("side");
        let mut moving: Vec<MovingPart> = Vec::new();
        for part in self.parts().iter().filter(|part| is_solid(part)) {
            let (name, width) = (part.name(), part.width().total()?);
            if width == Length::ZERO || moving.iter().any(|other| (other.part, other.width) == (name, width)) {
                continue;
            }
            let change = movement.change(width, from, to)?;
            let held = || self.held_across(name, change).filter(|_| is_held);
            moving.push(MovingPart { part: name, width, change, advice: self.binds(name, change).or_else(held) });
        }
        Ok(moving)
    }

    /// Fixed shelves and sides move together, or where one of them is a sheet, not. A sixteenth is more than a joint gives:
    /// common practice, no source.
    fn held_across(&self, part: &'static str, change: Length) -> Option<Advice> {
        let by = match part {
            "shelf" => "side",
            "side" => "shelf",
            _ => return None,
        };
        let moves = change.abs();
        let is_fixed = self.case.shelves.count() > 0 && self.case.shelves.pins().is_none();
        (is_fixed && moves > SIXTEENTH).then_some(Advice::HeldAcross { part, by, moves })
    }

    /// Doors are held at their hinges, so that two of a pair swell toward each other; a drawer front is held at its middle. Common
    /// practice, no source.
    fn binds(&self, part: &'static str, change: Length) -> Option<Advice> {
        let (times, room) = match (part, self.case.fronts.map(|set| (set.kind, set.mount)), self.case.back) {
            (DOOR, Some((FrontKind::Doors(across), Mount::Inset { gap })), _) => (i64::from(across.min(2)), gap),
            (DOOR, Some((FrontKind::Doors(2..), Mount::Overlay { gap, .. })), _) => (2, gap),
            (DRAWER, Some((_, Mount::Inset { gap }) | (FrontKind::Drawers(2.., _), Mount::Overlay { gap, .. })), _) => (1, gap),
            ("back", _, Back::Rabbet { .. } | Back::Groove { .. }) => (1, self.case.allowances.back),
            _ => return None,
        };
        let swells = change.checked_mul(times)?;
        (swells > Length::ZERO && swells >= room).then_some(Advice::Binds { part, swells, room })
    }
}

const SIXTEENTH: Length = Length::fraction(1, 16, Unit::Inch);
