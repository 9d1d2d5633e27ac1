//! The cutting layer: which parts to cut from which boards, in what order and where, and how good a plan that is. What a board's
//! nominal name stands for is left to `lumber/`. From `job.rs` on everything is counted in whole numbers.

use alloc::vec::Vec;

use crate::length::Length;

mod board;
mod check;
mod coarse;
mod columns;
mod cut;
mod dive;
mod error;
mod filling;
mod fine;
mod grain;
mod job;
mod node;
mod packing;
mod part;
mod patience;
mod pieces;
mod plan;
mod rule;
mod search;
mod setup;
mod sheets;
mod simplex;
mod solve;
mod stock;
mod worth;

pub use board::CutBoard;
pub use cut::Cut;
pub use error::CuttingError;
pub use part::Part;
pub use plan::Plan;
pub use rule::{Aim, KerfRule, PlanCost};
pub use sheets::{CutSheet, Panel, PanelPlace, PlacedPanel, Sheet, SheetCut, SheetCutting, SheetError, SheetPlan, Way};
pub use stock::Stock;

/// Parts to be cut from boards, and how the shop cuts.
///
/// **Caution.** A plan says where to cut and nothing about how. Follow the manual of the saw, keep its guards on, do not cut pieces
/// too short to hold safely, wear what the manual asks for, and collect the dust. The kerf is that of the blade in the saw: cut one
/// piece and measure.
///
/// ```
/// use scantling::{Cutting, Length, Part, PlanCost, Stock, Unit};
///
/// // The drying rack of a pottery studio: its rails and stiles from boards of 8 ft.
/// let inches = |count| Length::new(count, Unit::Inch);
/// let plan = Cutting::new()
///     .kerf(Length::fraction(1, 8, Unit::Inch))
///     .part(Part::new("stile", inches(60), 4))
///     .part(Part::new("rail", inches(35), 4))
///     .part(Part::new("cleat", inches(18), 8))
///     .stock(Stock::new("8 ft", inches(96)))
///     .plan()?;
/// assert_eq!((plan.cost(), plan.is_optimal()), (PlanCost::Boards(6), true));
///
/// // The first board: a stile, then a rail. Hook the tape at the near end for both marks.
/// let first = &plan.boards()[0];
/// let marks: Vec<_> = first.cuts().iter().map(|cut| (plan.part(cut).name.as_str(), cut.far())).collect();
/// assert_eq!(marks, [("stile", inches(60)), ("rail", inches(95) + Length::fraction(1, 8, Unit::Inch))]);
/// # Ok::<(), scantling::CuttingError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cutting {
    parts: Vec<Part>,
    stocks: Vec<Stock>,
    kerf: Length,
    kerf_rule: KerfRule,
    near_trim: Length,
    far_trim: Length,
    least_offcut: Length,
    shortest_piece: Length,
    aim: Option<Aim>,
    patience: u64,
}

impl Default for Cutting {
    fn default() -> Self {
        Self::new()
    }
}

impl Cutting {
    /// The steps that are spent on a plan unless told otherwise: some seconds on an everyday machine, for a job so hard that it needs them.
    ///
    /// ```
    /// use scantling::Cutting;
    ///
    /// assert!(Cutting::PATIENCE > 1_000_000);
    /// ```
    pub const PATIENCE: u64 = 250_000_000;

    /// Nothing to cut yet, no kerf and no trim.
    ///
    /// ```
    /// use scantling::{Cutting, CuttingError};
    ///
    /// assert_eq!(Cutting::new().plan(), Err(CuttingError::NoParts));
    /// ```
    #[must_use]
    pub const fn new() -> Self {
        Self {
            parts: Vec::new(),
            stocks: Vec::new(),
            kerf: Length::ZERO,
            kerf_rule: KerfRule::Between,
            near_trim: Length::ZERO,
            far_trim: Length::ZERO,
            least_offcut: Length::ZERO,
            shortest_piece: Length::ZERO,
            aim: None,
            patience: Self::PATIENCE,
        }
    }

    /// The same with more parts.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let cutting = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 7)).stock(Stock::new("yard", Unit::Yard.length()));
    /// assert_eq!(cutting.plan()?.board_count(), 3);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub fn part(mut self, part: Part) -> Self {
        self.parts.push(part);
        self
    }

    /// The same with more boards to cut from.
    ///
    /// ```
    /// use scantling::{Cutting, CuttingError, Part, Stock, Unit};
    ///
    /// let cutting = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 7));
    /// assert_eq!(cutting.plan(), Err(CuttingError::NoStock));
    /// assert!(cutting.stock(Stock::new("yard", Unit::Yard.length())).plan().is_ok());
    /// ```
    #[must_use]
    pub fn stock(mut self, stock: Stock) -> Self {
        self.stocks.push(stock);
        self
    }

    /// The width of the saw's cut.
    ///
    /// ```
    /// use scantling::{Cutting, Length, Part, Stock, Unit};
    ///
    /// let halves = Cutting::new().part(Part::new("half", Length::new(4, Unit::Foot), 2)).stock(Stock::new("8 ft", Length::new(8, Unit::Foot)));
    /// assert_eq!(halves.plan()?.board_count(), 1);
    /// assert_eq!(halves.kerf(Length::fraction(1, 8, Unit::Inch)).plan()?.board_count(), 2);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub fn kerf(self, kerf: Length) -> Self {
        Self { kerf, ..self }
    }

    /// Which parts take a kerf.
    ///
    /// ```
    /// use scantling::{Cutting, KerfRule};
    ///
    /// assert_eq!(Cutting::new().kerf_rule(KerfRule::Between), Cutting::new());
    /// ```
    #[must_use]
    pub fn kerf_rule(self, kerf_rule: KerfRule) -> Self {
        Self { kerf_rule, ..self }
    }

    /// What is cut off the near and the far end of every board before it is used, that saw cut included.
    ///
    /// ```
    /// use scantling::{Cutting, Length, Part, Stock, Unit};
    ///
    /// let inch = Unit::Inch.length();
    /// let shelf = Part::new("shelf", Length::new(94, Unit::Inch), 1);
    /// let plan = Cutting::new().part(shelf).stock(Stock::new("8 ft", Length::new(8, Unit::Foot))).trim(inch, inch).plan()?;
    /// let cut = &plan.boards()[0].cuts()[0];
    /// assert_eq!((cut.near(), cut.far()), (inch, Length::new(95, Unit::Inch)));
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub fn trim(self, near: Length, far: Length) -> Self {
        Self { near_trim: near, far_trim: far, ..self }
    }

    /// The shortest offcut that is worth keeping; shorter ones are waste.
    ///
    /// ```
    /// use scantling::{Cutting, Length, Part, Stock, Unit};
    ///
    /// let feet = |count| Length::new(count, Unit::Foot);
    /// let cutting = Cutting::new().part(Part::new("shelf", feet(5), 1)).stock(Stock::new("8 ft", feet(8)));
    /// assert_eq!(cutting.clone().keep_offcuts_from(feet(3)).plan()?.waste(), feet(0));
    /// assert_eq!(cutting.keep_offcuts_from(feet(4)).plan()?.waste(), feet(3));
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub fn keep_offcuts_from(self, least: Length) -> Self {
        Self { least_offcut: least, ..self }
    }

    /// The shortest piece that a joined part may be made of.
    ///
    /// ```
    /// use scantling::{Cutting, Length, Part, Stock, Unit};
    ///
    /// let feet = |count| Length::new(count, Unit::Foot);
    /// let base = Part::new("baseboard", feet(25), 1).joined();
    /// let plan = Cutting::new().part(base).stock(Stock::new("12 ft", feet(12))).shortest_piece(feet(2)).plan()?;
    /// let mut lengths: Vec<_> = plan.boards().iter().flat_map(|board| board.cuts()).map(|cut| cut.length()).collect();
    /// lengths.sort();
    /// assert_eq!(lengths, [feet(2), feet(11), feet(12)]); // not 12, 12 and 1
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub fn shortest_piece(self, least: Length) -> Self {
        Self { shortest_piece: least, ..self }
    }

    /// What makes one plan better than another. Without it, [`Aim`] says which it is.
    ///
    /// ```
    /// use scantling::{Aim, Cutting};
    ///
    /// assert_ne!(Cutting::new().aim(Aim::FewestBoards), Cutting::new());
    /// ```
    #[must_use]
    pub fn aim(self, aim: Aim) -> Self {
        Self { aim: Some(aim), ..self }
    }

    /// How many steps may be spent on a plan before the best one so far is given. The same count gives the same plan on every
    /// machine.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// // Without patience there is still a plan, and a bound.
    /// let cutting = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 7)).stock(Stock::new("yard", Unit::Yard.length()));
    /// assert_eq!(cutting.patience(0).plan()?.board_count(), 3);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub fn patience(self, steps: u64) -> Self {
        Self { patience: steps, ..self }
    }

    /// The parts.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Unit};
    ///
    /// let rail = Part::new("rail", Unit::Foot.length(), 2);
    /// assert_eq!(Cutting::new().part(rail.clone()).parts(), [rail]);
    /// ```
    #[must_use]
    pub fn parts(&self) -> &[Part] {
        &self.parts
    }

    /// The boards to cut from.
    ///
    /// ```
    /// assert!(scantling::Cutting::new().stocks().is_empty());
    /// ```
    #[must_use]
    pub fn stocks(&self) -> &[Stock] {
        &self.stocks
    }
}
