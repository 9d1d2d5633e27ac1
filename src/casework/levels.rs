//! The heights of a case, from the lower end of its sides: bottom, shelves or rows of holes, top. Dividing is left to
//! `spacing/`, rounding to the tape.

use alloc::vec::Vec;

use super::case::Case;
use super::error::CaseworkError;
use super::shelving::PinHoles;
use crate::geometry::above_zero;
use crate::length::Length;
use crate::tape::{Tape, TapeError};

/// A panel that lies flat: its two faces, measured from the lower end of the sides.
///
/// ```
/// use scantling::{Case, Length, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).plan()?;
/// assert_eq!((plan.levels().bottom.lower, plan.levels().bottom.upper), (Length::ZERO, inches(3, 4)));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct Level {
    /// Its lower face.
    pub lower: Length,
    /// Its upper face.
    pub upper: Length,
}

/// The heights of a case, measured from the lower end of its sides.
///
/// ```
/// use scantling::{Case, Length, Shelves, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).shelves(Shelves::Equal(4)).plan()?;
/// assert_eq!(plan.levels().shelves[0].lower, inches(57, 4)); // 3/4 and an opening of 13 1/2
/// assert_eq!(plan.levels().top.lower, inches(285, 4));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct Levels {
    /// The bottom.
    pub bottom: Level,
    /// The fixed shelves, from the lowest.
    pub shelves: Vec<Level>,
    /// The centers of the holes for shelf pins, from the lowest.
    pub holes: Vec<Length>,
    /// The top.
    pub top: Level,
}

impl Levels {
    /// The clear openings, from the lowest.
    ///
    /// # Panics
    ///
    /// Never: every level of a plan can be held, and so can what lies between two.
    ///
    /// ```
    /// use scantling::{Case, Length, Shelves, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).shelves(Shelves::Equal(4)).plan()?;
    /// assert_eq!(plan.levels().openings().collect::<Vec<_>>(), [inches(27, 2); 5]);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn openings(&self) -> impl Iterator<Item = Length> + '_ {
        let below = core::iter::once(self.bottom).chain(self.shelves.iter().copied());
        let above = self.shelves.iter().copied().chain(core::iter::once(self.top));
        below.zip(above).map(|(below, above)| above.lower - below.upper)
    }
}

impl Levels {
    /// The clear openings as they will be, from the lowest, when the lower face of each shelf is marked with this tape. Bottom
    /// and top lie where their edges are flush, or level with a rail, and need no mark.
    ///
    /// # Errors
    ///
    /// When the tape cannot show a mark, or an opening cannot be held.
    ///
    /// ```
    /// use scantling::{Case, Length, Shelves, Tape, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let case = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).sheet(inches(23, 32)).shelves(Shelves::Equal(2));
    /// let as_cut = case.plan()?.levels().openings_on(&Tape::sixteenths())?; // exactly 23 1/24 in each
    /// assert_eq!(as_cut, [inches(737, 32), inches(737, 32), inches(369, 16)]);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn openings_on(&self, tape: &Tape) -> Result<Vec<Length>, TapeError> {
        let (mut below, mut openings) = (self.bottom.upper, Vec::new());
        for shelf in &self.shelves {
            let mark = tape.read(shelf.lower)?.mark();
            openings.push(mark.checked_sub(below).ok_or(TapeError::OutOfRange { position: below })?);
            below = shelf
                .upper
                .checked_sub(shelf.lower)
                .and_then(|thick| mark.checked_add(thick))
                .ok_or(TapeError::OutOfRange { position: below })?;
        }
        openings.push(self.top.lower.checked_sub(below).ok_or(TapeError::OutOfRange { position: below })?);
        Ok(openings)
    }
}

/// More holes than any side has.
const MOST_HOLES: i128 = 10_000;

impl Case {
    pub(super) fn find_levels(&self) -> Result<Levels, CaseworkError> {
        let (bottom, top) = (self.bottom_level().total()?, self.top_level().total()?);
        let level = |lower: Option<Length>, thickness: Length| {
            let lower = lower.ok_or(CaseworkError::TooLarge)?;
            Ok::<_, CaseworkError>(Level { lower, upper: lower.checked_add(thickness).ok_or(CaseworkError::TooLarge)? })
        };
        let mut shelves = Vec::new();
        if let Some(spacing) = self.shelves.spacing(self.shelf) {
            for mark in spacing.over(self.inside_height()?)?.marks() {
                shelves.push(level(mark.near().checked_add(bottom), self.shelf)?);
            }
        }
        let holes = self.shelves.pins().map_or(Ok(Vec::new()), |pins| self.hole_levels(pins))?;
        Ok(Levels {
            bottom: level(bottom.checked_sub(self.bottom), self.bottom)?,
            shelves,
            holes,
            top: level(Some(top), self.top)?,
        })
    }

    /// As many holes as leave at least the first's height free above the last.
    fn hole_levels(&self, pins: PinHoles) -> Result<Vec<Length>, CaseworkError> {
        let first = self.bottom_level().plus(1, "first hole", pins.first).total()?;
        let last = self.top_level().less(1, "first hole", pins.first).total()?;
        let pitch = above_zero("the pitch of the holes", pins.pitch)?;
        let room = last.checked_sub(first).and_then(|room| room.checked_ratio(pitch)).ok_or(CaseworkError::TooLarge)?;
        let steps = room.floor().to_integer();
        if !(0..MOST_HOLES).contains(&steps) {
            return Err(CaseworkError::NoHoles { pitch: pins.pitch, first: pins.first });
        }
        (0..=steps).map(|step| hole(first, pins.pitch, step).ok_or(CaseworkError::TooLarge)).collect()
    }
}

fn hole(first: Length, pitch: Length, step: i128) -> Option<Length> {
    first.checked_add(pitch.checked_mul(i64::try_from(step).ok()?)?)
}
