//! A plan for sheets: where every panel lies, the cuts in order, and what none can cost less than.

use alloc::vec;
use alloc::vec::Vec;

use super::{Panel, Sheet};
use crate::cutting::PlanCost;
use crate::length::{Area, Length};

/// A rectangle on a sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct PanelPlace {
    /// How far it lies from the near end of the sheet, along its length.
    pub along: Length,
    /// How far it lies from the near edge of the sheet, across its width.
    pub across: Length,
    /// How far it reaches along the length of the sheet.
    pub length: Length,
    /// How far it reaches across the width of the sheet.
    pub width: Length,
}

/// A panel where it lies on a sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct PlacedPanel {
    /// Which panel of the cutting, counted from zero.
    pub panel: usize,
    /// Where it lies.
    pub place: PanelPlace,
    /// Whether it lies across the grain.
    pub is_turned: bool,
}

/// Which way a cut goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Way {
    /// Along the length of the sheet, with the grain.
    Rip,
    /// Across the length of the sheet.
    Crosscut,
}

/// A cut from edge to edge of a piece. What is cut off first is kept whole; the kerf lies past the mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct SheetCut {
    /// The piece that is cut in two.
    pub piece: PanelPlace,
    /// Which way.
    pub way: Way,
    /// The mark: how far from the near edge of the piece for a rip, from its near end for a crosscut.
    pub at: Length,
}

/// A sheet, or several that are cut alike.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct CutSheet {
    /// Which sheet of the cutting, counted from zero.
    pub sheet: usize,
    /// How many are cut like this.
    pub times: u64,
    /// The panels that are cut from it.
    pub panels: Vec<PlacedPanel>,
    /// The cuts, in an order in which each piece is there when it is cut.
    pub cuts: Vec<SheetCut>,
    /// What is left.
    pub offcuts: Vec<PanelPlace>,
}

/// Which panels to cut from which sheets.
///
/// ```
/// use scantling::{Area, Length, Panel, Sheet, SheetCutting, Unit, Way};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// let plan = SheetCutting::new()
///     .panel(Panel::new("shelf", inches(36), inches(12), 2))
///     .sheet(Sheet::new("4 x 4 ft", inches(48), inches(48)))
///     .plan()?;
/// let sheet = &plan.sheets()[0];
/// assert_eq!(plan.panel(&sheet.panels[0]).name, "shelf");
/// assert!(sheet.cuts.iter().any(|cut| cut.way == Way::Rip && cut.at == inches(12)));
/// assert_eq!(plan.used(), inches(36) * inches(24));
/// # Ok::<(), scantling::SheetError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SheetPlan {
    pub(super) panels: Vec<Panel>,
    pub(super) stock: Vec<Sheet>,
    pub(super) sheets: Vec<CutSheet>,
    pub(super) cost: PlanCost,
    pub(super) bound: PlanCost,
    pub(super) bought: Area,
    pub(super) used: Area,
}

impl SheetPlan {
    /// The sheets in the order they are laid out.
    ///
    /// ```
    /// # use scantling::{Panel, Sheet, SheetCutting, Unit};
    /// # let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 6)).sheet(Sheet::new("square", yard, yard));
    /// assert_eq!(cutting.plan()?.sheets()[0].times, 2);
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub fn sheets(&self) -> &[CutSheet] {
        &self.sheets
    }

    /// How many sheets are cut.
    ///
    /// ```
    /// # use scantling::{Panel, Sheet, SheetCutting, Unit};
    /// # let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 6)).sheet(Sheet::new("square", yard, yard));
    /// assert_eq!(cutting.plan()?.sheet_count(), 2);
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub fn sheet_count(&self) -> u64 {
        self.sheets.iter().map(|sheet| sheet.times).sum()
    }

    /// What is taken of each of the sheets, in their order, with how many of it; none is left out.
    ///
    /// ```
    /// # use scantling::{Panel, Sheet, SheetCutting, Unit};
    /// # let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 6)).sheet(Sheet::new("square", yard, yard));
    /// assert_eq!(cutting.plan()?.taken().map(|(_, count)| count).collect::<Vec<_>>(), [2]);
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    pub fn taken(&self) -> impl Iterator<Item = (&Sheet, u64)> {
        let mut counts = vec![0; self.stock.len()];
        self.sheets.iter().for_each(|sheet| counts[sheet.sheet] += sheet.times);
        self.stock.iter().zip(counts)
    }

    /// All panels, as they were asked for.
    ///
    /// ```
    /// # use scantling::{Panel, Sheet, SheetCutting, Unit};
    /// # let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 6)).sheet(Sheet::new("square", yard, yard));
    /// assert_eq!(cutting.plan()?.panels().len(), 1);
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub fn panels(&self) -> &[Panel] {
        &self.panels
    }

    /// The panel that a placed one is one of.
    ///
    /// ```
    /// # use scantling::{Panel, Sheet, SheetCutting, Unit};
    /// # let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let plan = SheetCutting::new().panel(Panel::new("door", yard, foot, 6)).sheet(Sheet::new("square", yard, yard)).plan()?;
    /// assert_eq!(plan.panel(&plan.sheets()[0].panels[0]).name, "door");
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    ///
    /// # Panics
    ///
    /// When it is of another plan that has more panels.
    #[must_use]
    pub fn panel(&self, placed: &PlacedPanel) -> &Panel {
        &self.panels[placed.panel]
    }

    /// The sheet that a cut one is one of.
    ///
    /// ```
    /// # use scantling::{Panel, Sheet, SheetCutting, Unit};
    /// # let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let plan = SheetCutting::new().panel(Panel::new("door", yard, foot, 6)).sheet(Sheet::new("square", yard, yard)).plan()?;
    /// assert_eq!(plan.sheet(&plan.sheets()[0]).name, "square");
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    ///
    /// # Panics
    ///
    /// When it is of another plan that has more sheets.
    #[must_use]
    pub fn sheet(&self, cut: &CutSheet) -> &Sheet {
        &self.stock[cut.sheet]
    }

    /// What it costs: a price if all sheets have one, sheets if all are of one size, else their area.
    ///
    /// ```
    /// # use scantling::{Panel, PlanCost, Sheet, SheetCutting, Unit};
    /// # let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 6)).sheet(Sheet::new("square", yard, yard));
    /// assert_eq!(cutting.plan()?.cost(), PlanCost::Sheets(2));
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub const fn cost(&self) -> PlanCost {
        self.cost
    }

    /// What no layout costs less than. It goes by area and by panels too large to share a sheet, so it may be out of reach.
    ///
    /// ```
    /// # use scantling::{Panel, PlanCost, Sheet, SheetCutting, Unit};
    /// # let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 6)).sheet(Sheet::new("square", yard, yard));
    /// assert_eq!(cutting.plan()?.bound(), PlanCost::Sheets(2));
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub const fn bound(&self) -> PlanCost {
        self.bound
    }

    /// Whether it is proved that no layout costs less.
    ///
    /// ```
    /// # use scantling::{Panel, Sheet, SheetCutting, Unit};
    /// # let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 6)).sheet(Sheet::new("square", yard, yard));
    /// assert!(cutting.plan()?.is_optimal());
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub fn is_optimal(&self) -> bool {
        self.cost == self.bound
    }

    /// The area of all sheets that are cut.
    ///
    /// ```
    /// # use scantling::{Panel, Sheet, SheetCutting, Unit};
    /// # let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 2)).sheet(Sheet::new("square", yard, yard));
    /// assert_eq!(cutting.plan()?.bought(), yard * yard);
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub const fn bought(&self) -> Area {
        self.bought
    }

    /// The area of all panels. What is bought and not used is offcuts, trim and dust.
    ///
    /// ```
    /// # use scantling::{Panel, Sheet, SheetCutting, Unit};
    /// # let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 2)).sheet(Sheet::new("square", yard, yard));
    /// assert_eq!(cutting.plan()?.used(), yard * foot * 2);
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub const fn used(&self) -> Area {
        self.used
    }

    /// What is bought and does not become panels: offcuts, trimmed edges and dust.
    ///
    /// ```
    /// # use scantling::{Panel, Sheet, SheetCutting, Unit};
    /// # let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 2)).sheet(Sheet::new("square", yard, yard));
    /// assert_eq!(cutting.plan()?.waste(), yard * foot);
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub fn waste(&self) -> Area {
        // Both were summed up within range, and no panel is cut from nothing.
        self.bought - self.used
    }
}
