//! Doors and drawer fronts before an opening: inset or overlay, side by side and one above the other, with equal gaps. How
//! heights are graded is left to `spacing/`.

use alloc::vec::Vec;

use super::error::CaseworkError;
use super::fronted::DRAWER;
use super::sum::Sum;
use crate::geometry::{above_zero, not_below_zero};
use crate::length::Length;
use crate::spacing::{Growth, Spacing, SpacingError};

/// How fronts lie to the opening.
///
/// ```
/// use scantling::{Length, Mount, Unit};
///
/// let gap = Length::fraction(3, 32, Unit::Inch);
/// assert_ne!(Mount::Inset { gap }, Mount::Overlay { past: gap, gap });
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Mount {
    /// Inside the opening, with the same gap all round and between them.
    Inset {
        /// The gap.
        gap: Length,
    },
    /// Over the edges of the opening, so far past each, with a gap between them.
    Overlay {
        /// How far past each edge.
        past: Length,
        /// The gap between two.
        gap: Length,
    },
}

impl Mount {
    /// How far past each edge of the opening: below zero where they lie inside.
    pub(super) fn past(self) -> Length {
        match self {
            Self::Inset { gap } => -gap,
            Self::Overlay { past, .. } => past,
        }
    }

    /// Between two.
    pub(super) const fn gap(self) -> Length {
        match self {
            Self::Inset { gap } | Self::Overlay { gap, .. } => gap,
        }
    }
}

/// Fronts before one opening: so many across, all of one width, and rows of these heights.
///
/// ```
/// use scantling::{Fronts, Growth, Length, Mount, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// // A pair of inset doors.
/// let doors = Fronts::before(inches(33, 1), inches(26, 1), Mount::Inset { gap: inches(1, 8) }, 2)?;
/// assert_eq!((doors.width.total()?, doors.heights[0]), (inches(261, 16), inches(103, 4)));
///
/// // Three drawers over the frame, each lower one an inch taller.
/// let drawers = Fronts::before(inches(15, 1), inches(24, 1), Mount::Overlay { past: inches(1, 2), gap: inches(1, 8) }, 1)?;
/// let drawers = drawers.graded(3, Growth::Step(inches(1, 1)))?;
/// assert_eq!(drawers.width.to_string(), "opening 15\", plus two overlays of 1/2\"");
/// assert_eq!(drawers.heights, [inches(37, 4), inches(33, 4), inches(29, 4)]); // from below
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Fronts {
    /// How many lie side by side.
    pub across: u32,
    /// How wide each is.
    pub width: Sum,
    /// How high each row is, from below.
    pub heights: Vec<Length>,
    /// How high all rows are, with the gaps between them.
    pub run: Length,
    /// The gap between two.
    pub gap: Length,
}

impl Fronts {
    /// One row of fronts before an opening of this width and height.
    ///
    /// # Errors
    ///
    /// When there is not one front, the opening is not above zero, a gap or an overlay is below zero, or nothing is left for a front.
    ///
    /// ```
    /// use scantling::{Fronts, Length, Mount, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let refused = Fronts::before(inches(1, 1), inches(20, 1), Mount::Inset { gap: inches(1, 2) }, 1).unwrap_err();
    /// assert_eq!(refused.to_string(), "the front would come out 0\" wide: the overall sizes leave no room for it");
    /// ```
    pub fn before(width: Length, height: Length, mount: Mount, across: u32) -> Result<Self, CaseworkError> {
        above_zero("an opening", width)?;
        above_zero("an opening", height)?;
        let gap = not_below_zero("a gap", mount.gap())?;
        if let Mount::Overlay { past, .. } = mount {
            not_below_zero("an overlay", past)?;
        }
        if across == 0 {
            return Err(CaseworkError::NoFront);
        }
        let width = shared(mount, width, across);
        let run = mount.past().checked_mul(2).and_then(|past| past.checked_add(height)).ok_or(CaseworkError::TooLarge)?;
        if let Some((dimension, size)) =
            [("wide", width.total()?), ("high", run)].into_iter().find(|(_, size)| *size <= Length::ZERO)
        {
            return Err(CaseworkError::NoRoom { part: "front", dimension, size });
        }
        Ok(Self { across, width, heights: Vec::from([run]), run, gap })
    }

    /// The same height shared by so many rows, each lower one taller as this says; a step of nothing makes them equal.
    ///
    /// # Errors
    ///
    /// When there is not one row, the rows do not fit, or the heights that are given leave some of the run over.
    ///
    /// ```
    /// use scantling::{Fronts, Growth, Length, Mount, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let opening = Fronts::before(inches(15, 1), inches(24, 1), Mount::Inset { gap: inches(1, 8) }, 1)?;
    /// assert_eq!(opening.graded(4, Growth::Step(Length::ZERO))?.heights, [inches(187, 32); 4]);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn graded(self, rows: usize, growth: Growth) -> Result<Self, CaseworkError> {
        let layout = Spacing::drawers_from_bottom(rows, self.gap, growth).over(self.run).map_err(of_fronts)?;
        Ok(Self { heights: layout.gaps().collect(), ..self })
    }
}

/// What does not fit, told of fronts: the openings of a spacing, and its members the gaps between these.
fn of_fronts(error: SpacingError) -> CaseworkError {
    match error {
        SpacingError::NegativeGap { gap: size, .. } | SpacingError::NegativeOpening { opening: size } => {
            CaseworkError::NoRoom { part: DRAWER, dimension: "high", size }
        }
        SpacingError::DoesNotFit { need, run, .. } | SpacingError::NothingToShare { need, run, .. } => {
            CaseworkError::FrontsOfOtherRun { need, run }
        }
        other => other.into(),
    }
}

/// The size of each of so many equal fronts before an opening.
pub(super) fn shared(mount: Mount, opening: Length, count: u32) -> Sum {
    let all = Sum::of("opening", opening);
    let all = match mount {
        Mount::Inset { gap } => all.less(count.saturating_add(1), "gap", gap),
        Mount::Overlay { past, gap } => all.plus(2, "overlay", past).less(count.saturating_sub(1), "gap", gap),
    };
    all.shared_by(count)
}
