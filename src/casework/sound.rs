//! What must hold of a case before its parts are worked out: it has what its sizes are measured over, nothing is below
//! zero, no joint goes through a panel, and something is left clear inside. That each part has room is left to `parts.rs`.

use alloc::vec::Vec;

use super::back::Back;
use super::base::Base;
use super::case::{Case, Overall, TopAt};
use super::error::CaseworkError;
use super::shelving::PinHoles;
use crate::geometry::not_below_zero;
use crate::length::Length;

impl Case {
    pub(super) fn is_sound(&self) -> Result<(), CaseworkError> {
        self.has_what_it_names()?;
        self.is_not_below_zero()?;
        self.has_wood_behind_its_joints()?;
        self.has_dadoes_to_stop()?;
        self.has_feet()?;
        self.is_clear_inside()?;
        self.is_clear_in_the_frame()
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
        let [left, right] = self.frame.map_or([Length::ZERO; 2], |frame| frame.past);
        let measures = [
            ("the depth of a joint", self.joint.depth()),
            ("the depth of the back's joint", self.back.let_in()),
            ("the thickness of the back", self.back.thickness()),
            ("the height of the base", self.base.height()),
            ("an overhang of the frame", left),
            ("an overhang of the frame", right),
            ("the set-back of the shelves", self.set_back),
            ("the length by which a dado is stopped", self.stopped),
            ("an edging", self.edging),
            ("a molding", self.molding),
            ("the play of the back", self.allowances.back),
            ("the play of a shelf", self.allowances.adjustable_shelf),
            ("the room for glue", self.allowances.glue),
        ];
        for (what, given) in measures.into_iter().chain(self.measures_of_kinds()) {
            not_below_zero(what, given)?;
        }
        Ok(())
    }

    /// What only some kinds of top, base, back and shelves have.
    fn measures_of_kinds(&self) -> Vec<(&'static str, Length)> {
        let mut measures = Vec::new();
        if let TopAt::OverSides { past_sides, past_front } = self.top_at {
            measures.extend([("an overhang of the top", past_sides), ("an overhang of the top", past_front)]);
        }
        match self.base {
            Base::None => {}
            Base::SidesToFloor { recess, .. } => measures.push(("the recess of the base", recess)),
            Base::Separate { from_front, from_sides, .. } => {
                measures.extend([("the recess of the base", from_front), ("the set-back of the base", from_sides)]);
            }
        }
        if let Back::Groove { set_in, .. } = self.back {
            measures.push(("the set-in of the groove", set_in));
        }
        if let Some(PinHoles { first, from_edges, deep, .. }) = self.shelves.pins() {
            measures.extend([("the height of the first hole", first), ("the set-back of the holes", from_edges)]);
            measures.push(("the depth of the holes", deep));
        }
        measures
    }

    fn has_wood_behind_its_joints(&self) -> Result<(), CaseworkError> {
        let through = |(_, thickness, depth): &(&str, Length, Length)| depth >= thickness && *depth > Length::ZERO;
        match self.joints_into_panels().into_iter().find(through) {
            Some((panel, thickness, depth)) => Err(CaseworkError::Through { depth, panel, thickness }),
            None => Ok(()),
        }
    }

    /// A dado that stops has some length left.
    fn has_dadoes_to_stop(&self) -> Result<(), CaseworkError> {
        if self.stopped == Length::ZERO {
            return Ok(());
        }
        if !self.has_dadoes() {
            return Err(CaseworkError::NothingToStop);
        }
        let size = self.shelf_depth().less(1, "stop", self.stopped).total()?;
        let none = CaseworkError::NothingClear { what: "length of a stopped dado", size };
        if size > Length::ZERO { Ok(()) } else { Err(none) }
    }

    /// Something of the sides is left to stand on behind a toe space.
    fn has_feet(&self) -> Result<(), CaseworkError> {
        let Base::SidesToFloor { recess, .. } = self.base else { return Ok(()) };
        let size = self.side_depth().plus(1, "face frame", self.frame_stock()).less(1, "recess", recess).total()?;
        let none = CaseworkError::NothingClear { what: "depth behind the toe space", size };
        if size > Length::ZERO { Ok(()) } else { Err(none) }
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
            ("depth before the back", self.shelf_depth().total()?),
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

    /// Stiles and mullions do not meet.
    fn is_clear_in_the_frame(&self) -> Result<(), CaseworkError> {
        if self.frame.is_none() {
            return Ok(());
        }
        let what = if self.bays == 1 { "width between the stiles" } else { "width between stiles and mullions" };
        for opening in self.front_openings()? {
            let size = opening.width()?;
            if size <= Length::ZERO {
                return Err(CaseworkError::NothingClear { what, size });
            }
        }
        Ok(())
    }
}
