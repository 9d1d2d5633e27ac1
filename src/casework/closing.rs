//! The chains of a case: sizes laid end to end that must add up to an overall size. Those through clear widths and openings
//! check that the levels hang together; those through parts take their lengths from the cut list, and so check what is cut.

use alloc::vec::Vec;
use core::fmt;

use super::back::Back;
use super::case::{Case, Overall, TopAt};
use super::error::CaseworkError;
use super::frame::FrameJoint;
use super::levels::Levels;
use super::part::CasePart;
use crate::length::Length;

/// Sizes that add up to an overall size, in order.
///
/// ```
/// use scantling::{Case, Length, Unit};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// let plan = Case::new(inches(36), inches(72), inches(12)).plan()?;
/// let width = &plan.closings()[0];
/// assert_eq!(width.to_string(), "width 36\": side 3/4\" + clear 34 1/2\" + side 3/4\"");
/// assert_eq!((width.sum(), width.is_closed()), (inches(36), true));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Closing {
    what: &'static str,
    whole: Length,
    links: Vec<(&'static str, Length)>,
    sum: Length,
}

impl Closing {
    pub(super) fn new(what: &'static str, whole: Length, links: Vec<(&'static str, Length)>) -> Result<Self, CaseworkError> {
        let links: Vec<_> = links.into_iter().filter(|(_, size)| *size != Length::ZERO).collect();
        let sum = links.iter().try_fold(Length::ZERO, |sum, (_, size)| sum.checked_add(*size));
        Ok(Self { what, whole, links, sum: sum.ok_or(CaseworkError::TooLarge)? })
    }

    /// What it adds up: `width`, `height`, `depth`, or one of them across certain parts.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.closings()[1].what(), "height");
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn what(&self) -> &'static str {
        self.what
    }

    /// The overall size.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.closings()[2].whole(), foot);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn whole(&self) -> Length {
        self.whole
    }

    /// The sizes in order, each with its name: from the left, from the floor, from the rear.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.closings()[0].links()[1].0, "clear");
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn links(&self) -> &[(&'static str, Length)] {
        &self.links
    }

    /// What the sizes come to.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, 6 * foot, foot).plan()?.closings()[1].sum(), 6 * foot);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn sum(&self) -> Length {
        self.sum
    }

    /// Whether they come to the overall size exactly.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert!(Case::new(3 * foot, 6 * foot, foot).plan()?.closings()[1].is_closed());
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn is_closed(&self) -> bool {
        self.sum == self.whole
    }
}

impl fmt::Display for Closing {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{} {}: ", self.what, self.whole)?;
        for (place, (name, size)) in self.links.iter().enumerate() {
            write!(out, "{}{name} {size}", if place > 0 { " + " } else { "" })?;
        }
        if self.is_closed() { Ok(()) } else { write!(out, " = {}, which is not the whole", self.sum) }
    }
}

impl Case {
    pub(super) fn close(&self, levels: &Levels, parts: &[CasePart]) -> Result<Vec<Closing>, CaseworkError> {
        let mut closings = Vec::from([self.close_width()?, self.close_height(levels)?, self.close_depth(parts)?]);
        closings.extend(self.close_bottom(parts)?);
        closings.extend(self.close_shelves(parts)?);
        closings.extend(self.close_sides(parts)?);
        closings.extend(self.close_frame(parts)?);
        closings.extend(self.close_fronts(parts)?);
        Ok(closings)
    }

    /// The bottom as it is cut, what is left for glue, and what it leaves of the sides.
    fn close_bottom(&self, parts: &[CasePart]) -> Result<Option<Closing>, CaseworkError> {
        let Some(bottom) = length(parts, "bottom")? else { return Ok(None) };
        let [left, right] = self.past_box();
        let side = self.side_behind(self.joint.depth())?;
        let links = [left, side, ("bottom", bottom), ("room for glue", self.glue()), side, right];
        Closing::new("width across the bottom", self.width, links.into()).map(Some)
    }

    /// A shelf of each bay as it is cut, its play, and what it leaves of sides and partitions.
    fn close_shelves(&self, parts: &[CasePart]) -> Result<Option<Closing>, CaseworkError> {
        let Some(board) = length(parts, "shelf")? else { return Ok(None) };
        let (depth, play) = match self.shelves.pins() {
            Some(_) => (Length::ZERO, ("play on the pins", self.allowances.adjustable_shelf)),
            None => (self.joint.depth(), ("room for glue", self.glue())),
        };
        let [left, right] = self.past_box();
        let side = self.side_behind(depth)?;
        let between = if depth == Length::ZERO { "partition" } else { "partition between the joints" };
        let web = (between, less(less(self.partition, depth)?, depth)?);
        let mut links = Vec::from([left, side]);
        for bay in 0..self.bays {
            links.extend((bay > 0).then_some(web));
            links.extend([("shelf", board), play]);
        }
        links.extend([side, right]);
        Closing::new("width across the shelves", self.width, links).map(Some)
    }

    fn close_sides(&self, parts: &[CasePart]) -> Result<Option<Closing>, CaseworkError> {
        let Some(side) = length(parts, "side")? else { return Ok(None) };
        let links = [("base", self.base.under_sides()), ("side", side), ("top", self.top_on_sides())];
        Closing::new("height over the sides", self.height, links.into()).map(Some)
    }

    /// The pieces that run through, or lie between those that do.
    fn close_frame(&self, parts: &[CasePart]) -> Result<Option<Closing>, CaseworkError> {
        let Some((frame, stile)) = self.frame.zip(length(parts, "stile")?) else { return Ok(None) };
        let closing = match frame.joint {
            FrameJoint::RailsBetween => {
                let rail = length(parts, "rail")?.or(length(parts, "top rail")?).unwrap_or_default();
                let width = frame.past[0].checked_add(self.box_width().total()?).and_then(|sum| sum.checked_add(frame.past[1]));
                let links = [("stile", frame.stile), ("rail", rail), ("stile", frame.stile)];
                Closing::new("width across the frame", width.ok_or(CaseworkError::TooLarge)?, links.into())
            }
            FrameJoint::StilesBetween => {
                let frame = [("bottom rail", frame.bottom_rail), ("stile", stile), ("top rail", frame.top_rail)];
                let below = [("base", self.base.under_sides()), ("toe space", self.base.within_sides())];
                let links = below.into_iter().chain(frame).chain([("top", self.top_on_sides())]).collect();
                Closing::new("height over the frame", self.height, links)
            }
        };
        closing.map(Some)
    }

    fn side_behind(&self, depth: Length) -> Result<(&'static str, Length), CaseworkError> {
        Ok((if depth == Length::ZERO { "side" } else { "side behind the joint" }, less(self.side, depth)?))
    }

    const fn top_on_sides(&self) -> Length {
        if matches!(self.top_at, TopAt::OverSides { .. }) { self.top } else { Length::ZERO }
    }

    fn glue(&self) -> Length {
        if self.joint.depth() == Length::ZERO { Length::ZERO } else { self.allowances.glue }
    }

    fn close_width(&self) -> Result<Closing, CaseworkError> {
        let [left, right] = self.past_box();
        let mut links = Vec::from([left, ("side", self.side)]);
        for bay in 0..self.bays {
            links.extend((bay > 0).then_some(("partition", self.partition)));
            links.push(("clear", self.bay()?));
        }
        links.extend([("side", self.side), right]);
        Closing::new("width", self.width, links)
    }

    fn close_height(&self, levels: &Levels) -> Result<Closing, CaseworkError> {
        let mut links =
            Vec::from([("base", self.base.under_sides()), ("below the bottom", levels.bottom.lower), ("bottom", self.bottom)]);
        let each = core::iter::repeat(("shelf", self.shelf)).map(Some);
        let openings = levels.openings().map(|opening| ("opening", opening));
        let shelves = each.take(levels.shelves.len()).chain(core::iter::once(None));
        openings.zip(shelves).for_each(|(opening, shelf)| links.extend(core::iter::once(opening).chain(shelf)));
        links.push(("top", self.top));
        Closing::new("height", self.height, links)
    }

    fn close_depth(&self, parts: &[CasePart]) -> Result<Closing, CaseworkError> {
        let set_in = if let Back::Groove { set_in, .. } = self.back { set_in } else { Length::ZERO };
        let overhang = match (self.over, self.top_at) {
            (Overall::Top, TopAt::OverSides { past_front, .. }) => ("front overhang", past_front),
            (Overall::Molding, _) => ("molding", self.molding),
            _ => ("", Length::ZERO),
        };
        let frame = if self.over == Overall::Box { Length::ZERO } else { self.frame_stock() };
        let boards = match parts.iter().find(|part| part.name() == "shelf") {
            Some(part) => [("shelf", part.sawn_width().total()?), ("edging", self.edging), ("set-back", self.set_back)],
            None => [("before the back", self.shelf_depth().total()?), ("", Length::ZERO), ("", Length::ZERO)],
        };
        let behind = [("behind the back", set_in), ("back", self.back.thickness())];
        let links = behind.into_iter().chain(boards).chain([("face frame", frame), overhang]);
        Closing::new("depth", self.depth, links.collect())
    }
}

/// How long a part is cut, where the case has it.
fn length(parts: &[CasePart], name: &str) -> Result<Option<Length>, CaseworkError> {
    parts.iter().find(|part| part.name() == name).map(|part| part.length().total()).transpose()
}

fn less(size: Length, off: Length) -> Result<Length, CaseworkError> {
    size.checked_sub(off).ok_or(CaseworkError::TooLarge)
}
