//! The sizes that parts are worked out from: the box inside the overall sizes, what is clear inside it, and the heights
//! of bottom and top. Each is a sum that says where it comes from.

use super::back::Back;
use super::case::{Case, Overall, TopAt};
use super::error::CaseworkError;
use super::sum::Sum;
use crate::length::Length;

impl Case {
    /// How far what the width is measured over stands past the box, on the left and on the right.
    pub(super) fn past_box(&self) -> [(&'static str, Length); 2] {
        match (self.over, self.frame, self.top_at) {
            (Overall::Frame, Some(frame), _) => [("left overhang", frame.past[0]), ("right overhang", frame.past[1])],
            (Overall::Top, _, TopAt::OverSides { past_sides, .. }) => {
                [("left overhang", past_sides), ("right overhang", past_sides)]
            }
            (Overall::Molding, ..) => [("left molding", self.molding), ("right molding", self.molding)],
            _ => [("", Length::ZERO); 2],
        }
    }

    pub(super) fn frame_stock(&self) -> Length {
        self.frame.map_or(Length::ZERO, |frame| frame.stock)
    }

    /// Over the outsides of the sides.
    pub(super) fn box_width(&self) -> Sum {
        let [left, right] = self.past_box();
        let sum = Sum::of("overall width", self.width);
        if left.1 == right.1 {
            sum.less(2, left.0.strip_prefix("left ").unwrap_or_default(), left.1)
        } else {
            sum.less(1, left.0, left.1).less(1, right.0, right.1)
        }
    }

    /// From the rear of the back to the front edges of the sides.
    pub(super) fn box_depth(&self) -> Sum {
        let sum = Sum::of("overall depth", self.depth);
        match (self.over, self.top_at) {
            (Overall::Box, _) => sum,
            (Overall::Frame, _) | (Overall::Top, TopAt::BetweenSides(_)) => sum.less(1, "face frame", self.frame_stock()),
            (Overall::Top, TopAt::OverSides { past_front, .. }) => {
                sum.less(1, "face frame", self.frame_stock()).less(1, "front overhang", past_front)
            }
            (Overall::Molding, _) => sum.less(1, "face frame", self.frame_stock()).less(1, "front molding", self.molding),
        }
    }

    pub(super) fn side_depth(&self) -> Sum {
        match self.back {
            Back::Applied { thickness } => self.box_depth().less(1, "back", thickness),
            _ => self.box_depth(),
        }
    }

    pub(super) fn side_height(&self) -> Sum {
        let sum = Sum::of("overall height", self.height).less(1, "base", self.base.under_sides());
        match self.top_at {
            TopAt::OverSides { .. } => sum.less(1, "top", self.top),
            TopAt::BetweenSides(_) => sum,
        }
    }

    /// Between the insides of the sides.
    pub(super) fn inside_width(&self) -> Sum {
        self.box_width().less(2, "side", self.side)
    }

    /// Clear between the sides, or a side and a partition, of one bay.
    pub(super) fn bay(&self) -> Result<Length, CaseworkError> {
        let partitions = self.inside_width().less(self.partitions(), "partition", self.partition).total()?;
        partitions.checked_div(self.bays.into()).ok_or(CaseworkError::NoBays)
    }

    pub(super) const fn partitions(&self) -> u32 {
        self.bays.saturating_sub(1)
    }

    /// The clear width of a bay, with its name.
    pub(super) fn bay_width(&self) -> Result<Sum, CaseworkError> {
        if self.bays == 1 { Ok(self.inside_width()) } else { Ok(Sum::of("clear width of a bay", self.bay()?)) }
    }

    /// From front to rear, of a shelf with its edging.
    pub(super) fn board_depth(&self) -> Sum {
        self.shelf_depth().less(1, "set-back", self.set_back)
    }

    /// From front to rear, of what lies before the back.
    pub(super) fn shelf_depth(&self) -> Sum {
        match self.back {
            Back::Rabbet { thickness, .. } => self.side_depth().less(1, "back", thickness),
            Back::Groove { thickness, set_in, .. } => {
                self.side_depth().less(1, "back", thickness).less(1, "set-in of the groove", set_in)
            }
            Back::None | Back::Applied { .. } => self.side_depth(),
        }
    }

    /// From front to rear, of bottom and top: a groove runs in them, too.
    pub(super) fn bottom_depth(&self) -> Sum {
        if matches!(self.back, Back::Groove { .. }) { self.side_depth() } else { self.shelf_depth() }
    }

    /// From the lower end of the sides to the upper face of the bottom.
    pub(super) fn bottom_level(&self) -> Sum {
        let toe = Sum::of("toe space", self.base.within_sides());
        match self.frame {
            Some(frame) if self.level_with_rail => toe.plus(1, "bottom rail", frame.bottom_rail),
            _ => toe.plus(1, "bottom", self.bottom),
        }
    }

    /// From the lower end of the sides to the underside of the top.
    pub(super) fn top_level(&self) -> Sum {
        match self.top_at {
            TopAt::BetweenSides(_) => self.side_height().less(1, "top", self.top),
            TopAt::OverSides { .. } => self.side_height(),
        }
    }

    /// Clear between bottom and top.
    pub(super) fn inside_height(&self) -> Result<Length, CaseworkError> {
        self.top_level().total()?.checked_sub(self.bottom_level().total()?).ok_or(CaseworkError::TooLarge)
    }

    /// The height of the frame, from the toe space to the upper ends of the sides.
    pub(super) fn front_height(&self) -> Sum {
        self.side_height().less(1, "toe space", self.base.within_sides())
    }

    /// From side to side over the frame.
    pub(super) fn frame_width(&self) -> Sum {
        match self.frame {
            Some(frame) if self.over == Overall::Frame && frame.past != [Length::ZERO; 2] => Sum::of("overall width", self.width),
            Some(frame) => self.box_width().plus(1, "left overhang", frame.past[0]).plus(1, "right overhang", frame.past[1]),
            None => self.box_width(),
        }
    }

    /// From side to side over whatever stands out farthest.
    pub(super) fn full_width(&self) -> Sum {
        let top = if let TopAt::OverSides { past_sides, .. } = self.top_at { past_sides } else { Length::ZERO };
        let out = top.max(self.molding);
        let [left, right] = self.frame.map_or([Length::ZERO; 2], |frame| frame.past);
        self.box_width().plus(1, "left", left.max(out)).plus(1, "right", right.max(out))
    }

    /// From the rear of the back to what stands out farthest at the front.
    pub(super) fn full_depth(&self) -> Result<Length, CaseworkError> {
        let past_front = if let TopAt::OverSides { past_front, .. } = self.top_at { past_front } else { Length::ZERO };
        self.front_depth().plus(1, "overhang or molding", past_front.max(self.molding)).total()
    }

    /// From the rear of the back to the face of the frame.
    pub(super) fn front_depth(&self) -> Sum {
        match self.over {
            Overall::Frame => Sum::of("overall depth", self.depth),
            _ => self.box_depth().plus(1, "face frame", self.frame_stock()),
        }
    }
}
