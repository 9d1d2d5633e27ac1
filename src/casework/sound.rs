//! What must hold of a case before its parts are worked out: it has what its sizes are measured over, nothing is below
//! zero, no joint goes through a panel, and something is left clear inside. That each part has room is left to `parts.rs`.

use super::case::{Case, Overall, TopAt};
use super::error::CaseworkError;
use crate::length::Length;

impl Case {
    pub(super) fn is_sound(&self) -> Result<(), CaseworkError> {
        self.has_what_it_names()?;
        self.is_not_below_zero()?;
        self.has_wood_behind_its_joints()?;
        self.is_clear_inside()
    }

    fn has_what_it_names(&self) -> Result<(), CaseworkError> {
        let over_sides = matches!(self.top_at, TopAt::OverSides { .. });
        let (is_there, what) = match self.over {
            Overall::Box => (true, ""),
            Overall::Frame => (self.frame.is_some(), "face frame"),
            Overall::Top => (over_sides, "top over its sides"),
            Overall::Molding => (self.molding > Length::ZERO, "molding"),
        };
        match (is_there, self.level_with_rail && self.frame.is_none()) {
            (false, _) => Err(CaseworkError::NothingThere { what, measure: "the overall sizes over" }),
            (true, true) => Err(CaseworkError::NothingThere { what: "bottom rail", measure: "the bottom's height by" }),
            (true, false) if self.bays == 0 => Err(CaseworkError::NoBays),
            (true, false) => Ok(()),
        }
    }

    fn is_not_below_zero(&self) -> Result<(), CaseworkError> {
        let TopAt::OverSides { past_sides, past_front } = self.top_at else {
            return self.are_not_below_zero(&[]);
        };
        self.are_not_below_zero(&[("an overhang of the top", past_sides), ("an overhang of the top", past_front)])
    }

    fn are_not_below_zero(&self, more: &[(&'static str, Length)]) -> Result<(), CaseworkError> {
        let [left, right] = self.frame.map_or([Length::ZERO; 2], |frame| frame.past);
        let measures = [
            ("the depth of a joint", self.joint.depth()),
            ("the depth of the back's joint", self.back.let_in()),
            ("the thickness of the back", self.back.thickness()),
            ("the height of the base", self.base.height()),
            ("an overhang of the frame", left),
            ("an overhang of the frame", right),
            ("an edging", self.edging),
            ("a molding", self.molding),
            ("the play of the back", self.allowances.back),
            ("the play of a shelf", self.allowances.adjustable_shelf),
            ("the room for glue", self.allowances.glue),
        ];
        match measures.iter().chain(more).find(|(_, given)| *given < Length::ZERO) {
            Some((what, given)) => Err(CaseworkError::BelowZero { what, given: *given }),
            None => Ok(()),
        }
    }

    fn has_wood_behind_its_joints(&self) -> Result<(), CaseworkError> {
        let top = if let TopAt::BetweenSides(joint) = self.top_at { joint.depth() } else { Length::ZERO };
        let through = |depth: &Length| *depth >= self.side && *depth > Length::ZERO;
        match [self.joint.depth(), top, self.back.let_in()].into_iter().find(through) {
            Some(depth) => Err(CaseworkError::ThroughSide { depth, side: self.side }),
            None => Ok(()),
        }
    }

    fn is_clear_inside(&self) -> Result<(), CaseworkError> {
        let frame = match self.frame {
            Some(frame) => {
                self.front_height().less(1, "top rail", frame.top_rail).less(1, "bottom rail", frame.bottom_rail).total()?
            }
            None => self.front_height().total()?,
        };
        let clear = [
            ("width of a bay", self.bay()?),
            ("height between bottom and top", self.inside_height()?),
            ("height between the rails", frame),
        ];
        if let Some((what, size)) = clear.into_iter().find(|(_, size)| *size <= Length::ZERO) {
            return Err(CaseworkError::NothingClear { what, size });
        }
        let lowest = self.bottom_level().less(1, "bottom", self.bottom).total()?;
        if lowest < self.base.within_sides() {
            return Err(CaseworkError::RailTooNarrow { bottom: self.bottom });
        }
        Ok(())
    }
}
