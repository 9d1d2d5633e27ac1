//! The story poles of a case: one for its sides, left and right a pair, one for the stiles of its frame, one for the rails where
//! mullions stand between them, one for its partitions,
//! one for its drawers (in `fronted.rs`), one for where dadoes end (in `stopped.rs`). What
//! a pole can do is left to `pole/`.

use alloc::format;
use alloc::vec::Vec;

use super::case::Case;
use super::error::CaseworkError;
use super::frame::FrameJoint;
use super::front_opening::OnFront;
use super::levels::{Level, Levels};
use crate::length::Length;
use crate::pole::{Datum, Hand, Mark, PartSide, Row, StoryPole};

impl Case {
    pub(super) fn draw_poles(&self, levels: &Levels) -> Result<Vec<StoryPole>, CaseworkError> {
        let height = self.side_height().total()?;
        let side = StoryPole::new("side", height).measured_from(Datum::Bottom).for_hand(Hand::Left);
        let mut poles = Vec::from(side.with(self.side_row(levels))?.pair());
        if !levels.holes.is_empty() {
            let holes = levels.holes.iter().enumerate().map(|(number, at)| hole(number + 1, *at));
            poles = poles.into_iter().map(|pole| pole.row("shelf pins", holes.clone())).collect::<Result<_, _>>()?;
        }
        poles.extend(self.frame_pole()?);
        poles.extend(self.rail_pole()?);
        poles.extend(self.partition_pole()?);
        poles.extend(self.front_pole()?);
        poles.extend(self.depth_pole()?);
        Ok(poles)
    }

    fn side_row(&self, levels: &Levels) -> Row {
        let shelves = levels.shelves.iter().enumerate();
        let mut marks: Vec<Mark> = shelves.map(|(number, level)| lying(*level, &format!("shelf {}", number + 1))).collect();
        let toe = self.base.within_sides();
        marks.extend((toe > Length::ZERO).then(|| Mark::new(toe, "top of the toe space", PartSide::Line)));
        marks.push(lying(levels.bottom, "bottom"));
        if levels.top.lower < levels.top.upper && self.top_is_between() {
            marks.push(lying(levels.top, "top"));
        }
        marks.sort();
        Row::new("side, inside", marks)
    }

    const fn top_is_between(&self) -> bool {
        matches!(self.top_at, super::case::TopAt::BetweenSides(_))
    }

    fn frame_pole(&self) -> Result<Option<StoryPole>, CaseworkError> {
        let Some(frame) = self.frame else { return Ok(None) };
        let height = self.front_height().total()?;
        let upper = height.checked_sub(frame.top_rail).ok_or(CaseworkError::TooLarge)?;
        let rails = [
            Mark::new(Length::ZERO, "bottom rail", PartSide::Past).thick(frame.bottom_rail),
            Mark::new(upper, "top rail", PartSide::Past).thick(frame.top_rail),
        ];
        let piece = if frame.joint == FrameJoint::RailsBetween { "stile, inner edge" } else { "frame, front" };
        Ok(Some(StoryPole::new("frame", height).measured_from(Datum::Bottom).row(piece, rails)?))
    }

    /// Where mullions stand on the rails.
    fn rail_pole(&self) -> Result<Option<StoryPole>, CaseworkError> {
        let Some(frame) = self.frame.filter(|_| self.bays > 1) else { return Ok(None) };
        let openings = self.front_openings()?;
        let (Some(first), Some((last, before))) = (openings.first(), openings.split_last()) else { return Ok(None) };
        let (start, end) = match frame.joint {
            FrameJoint::RailsBetween => (first.left, last.right),
            FrameJoint::StilesBetween => (-frame.past[0], last.right.checked_add(frame.stile).ok_or(CaseworkError::TooLarge)?),
        };
        let from_start = |at: Length| at.checked_sub(start).ok_or(CaseworkError::TooLarge);
        let mullion = |(number, opening): (usize, &OnFront)| {
            let name = format!("mullion {}", number + 1);
            Ok::<_, CaseworkError>(Mark::new(from_start(opening.right)?, name, PartSide::Past).thick(frame.stile))
        };
        let marks = before.iter().enumerate().map(mullion).collect::<Result<Vec<_>, _>>()?;
        let pole = StoryPole::new("rails", from_start(end)?).measured_from(Datum::Left);
        Ok(Some(pole.row("from the left end of the rails", marks)?))
    }

    fn partition_pole(&self) -> Result<Option<StoryPole>, CaseworkError> {
        if self.bays == 1 {
            return Ok(None);
        }
        let width = self.box_width().total()?;
        let mark = |number: u32| {
            let place = self.covered(number, self.partition).ok_or(CaseworkError::TooLarge)?.0;
            Ok::<_, CaseworkError>(Mark::new(place, format!("partition {number}"), PartSide::Past).thick(self.partition))
        };
        let marks = (1..self.bays).map(mark).collect::<Result<Vec<_>, _>>()?;
        let ends = [
            Mark::new(Length::ZERO, "left side", PartSide::Past).thick(self.side),
            Mark::new(width, "right side", PartSide::Before).thick(self.side),
        ];
        let mut marks: Vec<Mark> = marks.into_iter().chain(ends).collect();
        marks.sort();
        Ok(Some(
            StoryPole::new("bottom and top", width).measured_from(Datum::Left).row("from the outside of the left side", marks)?,
        ))
    }
}

/// A panel that lies on its lower line.
fn lying(level: Level, name: &str) -> Mark {
    Mark::new(level.lower, name, PartSide::Past).thick(level.upper - level.lower)
}

fn hole(number: usize, at: Length) -> Mark {
    Mark::new(at, format!("pin hole {number}"), PartSide::Line)
}
