//! The chains of a case: sizes laid end to end that must add up to an overall size. The sizes are those of the parts and
//! levels, and not what is left over, so that a chain that closes is a check.

use alloc::vec::Vec;
use core::fmt;

use super::back::Back;
use super::case::{Case, Overall, TopAt};
use super::error::CaseworkError;
use super::levels::Levels;
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
    fn new(what: &'static str, whole: Length, links: Vec<(&'static str, Length)>) -> Result<Self, CaseworkError> {
        let links: Vec<_> = links.into_iter().filter(|(_, size)| *size != Length::ZERO).collect();
        let sum = links.iter().try_fold(Length::ZERO, |sum, (_, size)| sum.checked_add(*size));
        Ok(Self { what, whole, links, sum: sum.ok_or(CaseworkError::TooLarge)? })
    }

    /// What it adds up: `width`, `height` or `depth`.
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
    pub(super) fn close(&self, levels: &Levels) -> Result<Vec<Closing>, CaseworkError> {
        Ok(Vec::from([self.close_width()?, self.close_height(levels)?, self.close_depth()?]))
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

    fn close_depth(&self) -> Result<Closing, CaseworkError> {
        let set_in = if let Back::Groove { set_in, .. } = self.back { set_in } else { Length::ZERO };
        let overhang = match (self.over, self.top_at) {
            (Overall::Top, TopAt::OverSides { past_front, .. }) => ("front overhang", past_front),
            (Overall::Molding, _) => ("molding", self.molding),
            _ => ("", Length::ZERO),
        };
        let frame = if self.over == Overall::Box { Length::ZERO } else { self.frame_stock() };
        let before_back = self.shelf_depth().total()?;
        let links = [
            ("behind the back", set_in),
            ("back", self.back.thickness()),
            ("shelf", before_back),
            ("face frame", frame),
            overhang,
        ];
        Closing::new("depth", self.depth, Vec::from(links))
    }
}
