//! The cut list of a case: which parts there are, and the size of each. What the sizes come from is left to `measures.rs`.

use alloc::vec::Vec;

use super::back::Back;
use super::base::Base;
use super::case::{Case, TopAt};
use super::error::CaseworkError;
use super::frame::{FaceFrame, FrameJoint};
use super::part::{CasePart, Notch, Pieces};
use super::sum::Sum;
use crate::length::Length;

impl Case {
    /// Every part, in the order in which a case is usually cut: box, shelves, back, frame, base, trim.
    pub(super) fn cut_list(&self) -> Result<Vec<CasePart>, CaseworkError> {
        let mut parts = Vec::from([self.sides(), self.bottom_part()?, self.top_part()?]);
        parts.extend(self.partition_part()?);
        parts.extend(self.shelf_parts()?);
        let depth = self.side_depth().total()?;
        for part in parts.iter_mut().filter(|part| part.is_panel) {
            part.is_flush = part.width.total()? == depth;
        }
        parts.extend(self.back_part()?);
        parts.extend(self.frame_parts());
        parts.extend(self.base_parts());
        parts.extend(self.molding_parts());
        parts.extend(self.front_parts()?);
        parts.iter().try_for_each(has_room)?;
        Ok(parts)
    }

    fn sides(&self) -> CasePart {
        let side = CasePart::new("side", Pieces::Mirrored(1), self.side, self.side_depth(), self.side_height());
        side.panel().showing("outer face, front edge")
    }

    fn bottom_part(&self) -> Result<CasePart, CaseworkError> {
        let length = self.let_in(self.inside_width(), self.joint.name(), self.joint.depth());
        let notch = self.notch(self.joint, &length, self.inside_width().total()?, Length::ZERO)?;
        let bottom = CasePart::new("bottom", Pieces::Alike(1), self.bottom, self.bottom_depth(), length);
        Ok(bottom.panel().inside().notched(notch).showing("upper face, front edge"))
    }

    fn top_part(&self) -> Result<CasePart, CaseworkError> {
        let part = |width, length| CasePart::new("top", Pieces::Alike(1), self.top, width, length).panel();
        Ok(match self.top_at {
            TopAt::BetweenSides(joint) => {
                let length = self.let_in(self.inside_width(), joint.name(), joint.depth());
                let notch = self.notch(joint, &length, self.inside_width().total()?, Length::ZERO)?;
                part(self.bottom_depth(), length).inside().notched(notch).showing("lower face, front edge")
            }
            TopAt::OverSides { past_sides, past_front } => {
                let width = self.front_depth().plus(1, "front overhang", past_front);
                part(width, self.box_width().plus(2, "overhang", past_sides)).showing("upper face, front edge and both ends")
            }
        })
    }

    /// A panel let into others at both ends, less what is left for glue.
    fn let_in(&self, clear: Sum, joint: &'static str, depth: Length) -> Sum {
        let glue = if depth == Length::ZERO { Length::ZERO } else { self.allowances.glue };
        clear.plus(2, joint, depth).less(1, "room for glue", glue)
    }

    fn partition_part(&self) -> Result<Option<CasePart>, CaseworkError> {
        let height = self.inside_height()?;
        let clear = Sum::of("clear height between bottom and top", height);
        let length = self.let_in(clear, self.joint.name(), self.joint.depth());
        let notch = self.notch(self.joint, &length, height, Length::ZERO)?;
        let part = CasePart::new("partition", Pieces::Alike(self.partitions()), self.partition, self.shelf_depth(), length);
        Ok((self.bays > 1).then(|| part.panel().inside().notched(notch).showing("front edge")))
    }

    fn shelf_parts(&self) -> Result<Vec<CasePart>, CaseworkError> {
        let in_all = u32::try_from(self.shelves.count()).ok().and_then(|count| count.checked_mul(self.bays));
        let count = Pieces::Alike(in_all.ok_or(CaseworkError::TooLarge)?);
        if count.count() == 0 {
            return Ok(Vec::new());
        }
        let (length, notch) = self.shelf_length()?;
        let sawn = self.board_depth().less(1, "edging", self.edging);
        let mut board = CasePart::new("shelf", count, self.shelf, self.board_depth(), length).panel().inside();
        board = board.notched(notch).showing("upper face, front edge");
        if self.edging == Length::ZERO {
            return Ok(Vec::from([board]));
        }
        board.sawn_width = Some(sawn);
        let width = Sum::of("thickness of the shelf", self.shelf);
        let strip = CasePart::new("shelf edging", count, self.edging, width, self.bay_width()?);
        Ok(Vec::from([board, strip.inside().showing("face and both edges")]))
    }

    /// With the notches of one that goes into stopped dadoes.
    fn shelf_length(&self) -> Result<(Sum, Option<Notch>), CaseworkError> {
        if self.shelves.pins().is_some() {
            return Ok((self.bay_width()?.less(1, "play on the pins", self.allowances.adjustable_shelf), None));
        }
        let length = self.let_in(self.bay_width()?, self.joint.name(), self.joint.depth());
        let behind = self.set_back.checked_add(self.edging).ok_or(CaseworkError::TooLarge)?;
        let notch = self.notch(self.joint, &length, self.bay()?, behind)?;
        Ok((length, notch))
    }

    fn back_part(&self) -> Result<Option<CasePart>, CaseworkError> {
        let play = |sum: Sum| sum.less(1, "play of the back", self.allowances.back);
        let across = |name| self.inside_width().plus(2, name, self.back.let_in());
        let part = |width, length| {
            CasePart::new("back", Pieces::Alike(1), self.back.thickness(), width, length).panel().showing("front face")
        };
        Ok(match self.back {
            Back::None => None,
            Back::Applied { .. } => Some(part(self.box_width(), self.front_height())),
            Back::Rabbet { .. } => Some(part(play(across("rabbet")), play(self.front_height())).inside()),
            Back::Groove { depth, .. } => {
                let clear = Sum::of("clear height between bottom and top", self.inside_height()?);
                Some(part(play(across("groove")), play(clear.plus(2, "groove", depth))).inside())
            }
        })
    }

    fn frame_parts(&self) -> Vec<CasePart> {
        let Some(frame) = self.frame else { return Vec::new() };
        let FaceFrame { stock, stile, top_rail, bottom_rail, joint, .. } = frame;
        let between = || self.front_height().less(1, "top rail", top_rail).less(1, "bottom rail", bottom_rail);
        let (stiles, rails) = match joint {
            FrameJoint::RailsBetween => (self.front_height(), self.frame_width().less(2, "stile", stile)),
            FrameJoint::StilesBetween => (between(), self.frame_width()),
        };
        let part = |name, count, width, length| {
            CasePart::new(name, Pieces::Alike(count), stock, Sum::of("width", width), length).showing("face, inner edge")
        };
        let mut parts = Vec::from([part("stile", 2, stile, stiles)]);
        if top_rail == bottom_rail {
            parts.push(part("rail", 2, top_rail, rails));
        } else {
            parts.extend([part("top rail", 1, top_rail, rails.clone()), part("bottom rail", 1, bottom_rail, rails)]);
        }
        if self.bays > 1 {
            parts.push(part("mullion", self.partitions(), stile, between()).showing("face, both edges"));
        }
        parts
    }

    fn base_parts(&self) -> Vec<CasePart> {
        let part = |name, count, stock, height, length| {
            CasePart::new(name, Pieces::Alike(count), stock, Sum::of("height of the base", height), length)
        };
        match self.base {
            Base::None => Vec::new(),
            Base::SidesToFloor { height, stock, .. } => {
                Vec::from([part("toe board", 1, stock, height, self.inside_width()).inside().showing("face")])
            }
            Base::Separate { height, stock, from_front, from_sides, ties } => {
                let along = self.box_width().less(2, "set-back", from_sides);
                let across = self.front_depth().less(1, "recess at the front", from_front).less(2, "base piece", stock);
                let ties = ties.saturating_add(2);
                Vec::from([
                    part("base front and rear", 2, stock, height, along).showing("face of the front"),
                    part("base crosspiece", ties, stock, height, across).inside().showing("face of the two at the ends"),
                ])
            }
        }
    }

    fn molding_parts(&self) -> Vec<CasePart> {
        if self.molding == Length::ZERO {
            return Vec::new();
        }
        let width = || Sum::of("width as bought", Length::ZERO);
        let part = |name, pieces, length| CasePart::new(name, pieces, self.molding, width(), length).showing("molded face");
        Vec::from([
            part("molding, front", Pieces::Alike(1), self.box_width().plus(2, "molding", self.molding)),
            part("molding, return", Pieces::Mirrored(1), self.front_depth().plus(1, "molding", self.molding)),
        ])
    }
}

/// Whether every size of a part is above zero. A molding is as wide as it is bought.
fn has_room(part: &CasePart) -> Result<(), CaseworkError> {
    let is_molding = part.name.starts_with("molding");
    let sizes = [
        ("thick", part.thickness),
        ("wide", if is_molding { part.thickness } else { part.sawn_width().total()? }),
        ("long", part.length.total()?),
    ];
    match sizes.into_iter().find(|(_, size)| *size <= Length::ZERO) {
        Some((dimension, size)) => Err(CaseworkError::NoRoom { part: part.name, dimension, size }),
        None => Ok(()),
    }
}
