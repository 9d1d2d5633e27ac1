//! Panels cut from sheets with cuts from edge to edge, as a table saw or a track saw makes them: every cut goes through the whole piece
//! that it cuts. How panels are laid out is left to `layout.rs`.

use alloc::boxed::Box;
use alloc::vec::Vec;

use thiserror::Error;

use crate::length::Length;

mod bound;
mod layout;
mod panel;
mod plan;
mod setup;
mod sketch;
#[cfg(feature = "svg")]
mod svg;

pub use panel::{Panel, Sheet};
pub use plan::{CutSheet, PanelPlace, PlacedPanel, SheetCut, SheetPlan, Way};

/// Panels to be cut from sheets, and how the shop cuts.
///
/// Every cut goes from edge to edge of the piece it cuts. Kerfs lie between panels, and behind the last where something is left.
///
/// **Caution.** A plan says where to cut and nothing about how. Support the sheet and both sides of the cut, follow the manual of the
/// saw and its blade, keep the guards on, wear what the manual asks for, and collect the dust.
///
/// ```
/// use scantling::{Length, Panel, PlanCost, Sheet, SheetCutting, Unit};
///
/// // Two sides and three shelves of a ware case from 3/4 in plywood, the grain along each.
/// let inches = |count| Length::new(count, Unit::Inch);
/// let plan = SheetCutting::new()
///     .kerf(Length::fraction(1, 8, Unit::Inch))
///     .panel(Panel::new("side", inches(72), inches(15), 2))
///     .panel(Panel::new("shelf", inches(34), inches(14), 3))
///     .sheet(Sheet::new("4 x 8 ft", inches(96), inches(48)))
///     .plan()?;
/// assert_eq!((plan.sheet_count(), plan.bound()), (2, PlanCost::Sheets(1)));
/// # Ok::<(), scantling::SheetError>(())
/// ```
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct SheetCutting {
    panels: Vec<Panel>,
    sheets: Vec<Sheet>,
    kerf: Length,
    trim: Length,
    patience: Option<u64>,
}

impl SheetCutting {
    /// Nothing to cut yet, no kerf and no trim.
    ///
    /// ```
    /// use scantling::{SheetCutting, SheetError};
    ///
    /// assert_eq!(SheetCutting::new().plan(), Err(SheetError::NoPanels));
    /// ```
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// The same with more panels.
    ///
    /// ```
    /// use scantling::{Panel, SheetCutting, SheetError, Unit};
    ///
    /// let door = Panel::new("door", Unit::Yard.length(), Unit::Foot.length(), 2);
    /// assert_eq!(SheetCutting::new().panel(door).plan(), Err(SheetError::NoSheets));
    /// ```
    #[must_use]
    pub fn panel(mut self, panel: Panel) -> Self {
        self.panels.push(panel);
        self
    }

    /// The same with more sheets to cut from.
    ///
    /// ```
    /// use scantling::{Panel, Sheet, SheetCutting, Unit};
    ///
    /// let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 3)).sheet(Sheet::new("square", yard, yard));
    /// assert!(cutting.plan()?.is_optimal());
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub fn sheet(mut self, sheet: Sheet) -> Self {
        self.sheets.push(sheet);
        self
    }

    /// The width of the saw's cut.
    ///
    /// ```
    /// use scantling::{Panel, Sheet, SheetCutting, Unit};
    ///
    /// let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 3)).sheet(Sheet::new("square", yard, yard));
    /// assert_eq!(cutting.kerf(Unit::Millimeter.length()).plan()?.sheet_count(), 2);
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub fn kerf(self, kerf: Length) -> Self {
        Self { kerf, ..self }
    }

    /// What is cut off every edge of a sheet before it is used, that saw cut included.
    ///
    /// ```
    /// use scantling::{Length, Panel, Sheet, SheetCutting, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let cutting = SheetCutting::new().panel(Panel::new("top", inches(94), inches(46), 1)).trim(inches(1));
    /// let plan = cutting.sheet(Sheet::new("4 x 8 ft", inches(96), inches(48))).plan()?;
    /// assert_eq!(plan.sheets()[0].panels[0].place.along, inches(1));
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub fn trim(self, trim: Length) -> Self {
        Self { trim, ..self }
    }

    /// How many steps may be spent before the best plan so far is given.
    ///
    /// ```
    /// use scantling::{Panel, Sheet, SheetCutting, Unit};
    ///
    /// let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 3)).sheet(Sheet::new("square", yard, yard));
    /// assert_eq!(cutting.patience(0).plan()?.sheet_count(), 1);
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub fn patience(self, steps: u64) -> Self {
        Self { patience: Some(steps), ..self }
    }
}

/// Why there is no plan for sheets.
///
/// ```
/// use scantling::{Panel, Sheet, SheetCutting, Unit};
///
/// let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
/// // The grain must run along the panel, so it cannot be turned.
/// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 1)).sheet(Sheet::new("strip", foot, yard));
/// assert_eq!(cutting.plan().unwrap_err().to_string(), r#"door, 36" by 12" with the grain along it, is larger than every sheet gives"#);
/// ```
#[derive(Clone, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum SheetError {
    /// Nothing to cut.
    #[error("there are no panels to cut")]
    NoPanels,
    /// Nothing to cut from.
    #[error("there are no sheets to cut from")]
    NoSheets,
    /// A panel or a sheet that is no rectangle.
    #[error("{name} cannot be {length} by {width}: both must be longer than nothing")]
    NotARectangle {
        /// The panel or the sheet.
        name: Box<str>,
        /// Its length.
        length: Length,
        /// Its width.
        width: Length,
    },
    /// A panel of which none are wanted, or a sheet of which there are none.
    #[error("none of {name}: leave it out, or say how many")]
    NoneOf {
        /// The panel or the sheet.
        name: Box<str>,
    },
    /// A kerf or a trim below zero.
    #[error("a kerf or a trim cannot be {length}: it must not be below zero")]
    Negative {
        /// The length that was given.
        length: Length,
    },
    /// A sheet of which trimming leaves nothing.
    #[error("nothing is left of {name} when {trim} is trimmed off every edge")]
    NothingLeft {
        /// The sheet.
        name: Box<str>,
        /// What is trimmed off.
        trim: Length,
    },
    /// A panel that fits on no sheet.
    #[error("{name}, {length} by {width}{}, is larger than every sheet gives", if *.is_grain_fixed { " with the grain along it" } else { "" })]
    PanelTooLarge {
        /// The panel.
        name: Box<str>,
        /// Its length.
        length: Length,
        /// Its width.
        width: Length,
        /// Whether it may not be turned.
        is_grain_fixed: bool,
    },
    /// No layout was found on the sheets that there are. There may be one.
    #[error("no layout was found for all panels on the sheets there are: it may need more of them")]
    NoPlanFound,
    /// Some sheets have a price and some have none, or a price is no number or below zero.
    #[error("either every sheet has a price, not below zero, or none has: look at {name}")]
    BadPrice {
        /// The sheet.
        name: Box<str>,
    },
    /// As many sheets as it takes, for nothing.
    #[error("there cannot be as many of {name} as it takes for nothing: say how many there are, or what one costs")]
    FreeWithoutLimit {
        /// The sheets.
        name: Box<str>,
    },
    /// More panels than a plan is made for.
    #[error("{panels} panels are too many for one plan: at most {most}")]
    TooManyPanels {
        /// How many there are.
        panels: u64,
        /// How many there may be.
        most: u64,
    },
    /// Lengths or prices that no common measure can count.
    #[error("the lengths or prices are too large, or too finely divided beside each other, to be counted in one measure")]
    OutOfRange,
}
