//! How one panel meets another, and into which panels joints are cut. What that does to lengths is left to `parts.rs`.

use alloc::vec::Vec;

use super::back::Back;
use super::case::{Case, TopAt};
use crate::length::Length;

/// How the end of a panel meets the face of another.
///
/// ```
/// use scantling::{Joint, Length, Unit};
///
/// let quarter = Length::fraction(1, 4, Unit::Inch);
/// assert_eq!((Joint::Butt.depth(), Joint::Dado(quarter).depth()), (Length::ZERO, quarter));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Joint {
    /// End against face: nothing is let in.
    Butt,
    /// Let into a dado of this depth, in from the ends of the other panel.
    Dado(Length),
    /// Let into a rabbet of this depth, along an end of the other panel.
    Rabbet(Length),
}

impl Joint {
    /// How deep the panel is let in.
    ///
    /// ```
    /// use scantling::{Joint, Length, Unit};
    ///
    /// let eighth = Length::fraction(1, 8, Unit::Inch);
    /// assert_eq!(Joint::Rabbet(eighth).depth(), eighth);
    /// ```
    #[must_use]
    pub const fn depth(self) -> Length {
        match self {
            Self::Butt => Length::ZERO,
            Self::Dado(depth) | Self::Rabbet(depth) => depth,
        }
    }

    /// What it is called in a sum.
    pub(super) const fn name(self) -> &'static str {
        match self {
            Self::Butt => "butt joint",
            Self::Dado(_) => "dado",
            Self::Rabbet(_) => "rabbet",
        }
    }
}

impl Case {
    /// Every panel that a joint is cut into from one face: its name, how thick it is, how deep the joint goes.
    pub(super) fn joints_into_panels(&self) -> Vec<(&'static str, Length, Length)> {
        let depth = self.joint.depth();
        let mut joints = Vec::from([("side", self.side, depth)]);
        if let TopAt::BetweenSides(joint) = self.top_at {
            joints.push(("side", self.side, joint.depth()));
        }
        joints.push(("side", self.side, self.back.let_in()));
        if let Back::Groove { depth, .. } = self.back {
            joints.extend([("bottom", self.bottom, depth), ("top", self.top, depth)]);
        }
        if self.bays > 1 {
            joints.extend([("bottom", self.bottom, depth), ("top", self.top, depth)]);
            let has_fixed = self.shelves.count() > 0 && self.shelves.pins().is_none();
            joints.extend(has_fixed.then_some(("partition", self.partition, depth)));
        }
        joints
    }
}
