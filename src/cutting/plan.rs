//! A plan: its boards, what it costs, what none can cost less than, and how much of the wood becomes parts. How it is found is
//! left to `solve.rs`.

use alloc::vec;
use alloc::vec::Vec;

use super::board::CutBoard;
use super::cut::Cut;
use super::{Cutting, Part, PlanCost, Stock};
use crate::length::Length;

/// Which parts to cut from which boards, and how good that is.
///
/// ```
/// use scantling::{Cutting, Length, Part, Stock, Unit};
///
/// let feet = |count| Length::new(count, Unit::Foot);
/// let plan = Cutting::new()
///     .part(Part::new("post", feet(5), 3))
///     .part(Part::new("brace", feet(3), 2))
///     .stock(Stock::new("8 ft", feet(8)))
///     .plan()?;
/// assert!(plan.is_optimal());
/// assert_eq!((plan.board_count(), plan.bought(), plan.used(), plan.kept(), plan.waste()), (3, feet(24), feet(21), feet(3), feet(0)));
/// # Ok::<(), scantling::CuttingError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    parts: Vec<Part>,
    stocks: Vec<Stock>,
    boards: Vec<CutBoard>,
    cost: PlanCost,
    bound: PlanCost,
    bought: Length,
    used: Length,
    kept: Length,
    waste: Length,
}

impl Plan {
    /// `None` where a sum of lengths is out of range.
    pub(super) fn new(cutting: &Cutting, boards: Vec<CutBoard>, cost: PlanCost, bound: PlanCost) -> Option<Self> {
        let (parts, stocks) = (cutting.parts.clone(), cutting.stocks.clone());
        let sum = |of: &dyn Fn(&CutBoard) -> Option<Length>| {
            boards.iter().try_fold(Length::ZERO, |sum, board| {
                let all = of(board)?.checked_mul(i64::try_from(board.times).ok()?)?;
                sum.checked_add(all)
            })
        };
        let bought = sum(&|board| Some(stocks[board.stock].length))?;
        let used = sum(&|board| board.cuts.iter().try_fold(Length::ZERO, |sum, cut| sum.checked_add(cut.length())))?;
        let kept = sum(&|board| Some(if board.is_kept { board.offcut } else { Length::ZERO }))?;
        let waste = bought.checked_sub(used)?.checked_sub(kept)?;
        Some(Self { parts, stocks, boards, cost, bound, bought, used, kept, waste })
    }

    /// The boards in the order to cut them, those with the longest parts first.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 7)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// let cuts: Vec<_> = plan.boards().iter().map(|board| (board.times(), board.cuts().len())).collect();
    /// assert_eq!(cuts, [(2, 3), (1, 1)]);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub fn boards(&self) -> &[CutBoard] {
        &self.boards
    }

    /// How many boards are cut.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 7)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.board_count(), 3);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub fn board_count(&self) -> u64 {
        self.boards.iter().map(|board| board.times).sum()
    }

    /// What is taken of each of the boards, in their order, with how many of it; none is left out.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 7)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// let taken: Vec<_> = plan.taken().map(|(stock, count)| (stock.name.as_str(), count)).collect();
    /// assert_eq!(taken, [("yard", 3)]);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    pub fn taken(&self) -> impl Iterator<Item = (&Stock, u64)> {
        let mut counts = vec![0; self.stocks.len()];
        self.boards.iter().for_each(|board| counts[board.stock] += board.times);
        self.stocks.iter().zip(counts)
    }

    /// All parts, as they were asked for.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 1)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.parts(), [Part::new("cleat", Unit::Foot.length(), 1)]);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub fn parts(&self) -> &[Part] {
        &self.parts
    }

    /// The part that a cut is one of.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 1)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.part(&plan.boards()[0].cuts()[0]).name, "cleat");
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    ///
    /// # Panics
    ///
    /// When the cut is of another plan that has more parts.
    #[must_use]
    pub fn part(&self, cut: &Cut) -> &Part {
        &self.parts[cut.part()]
    }

    /// The boards that a board is one of.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 1)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.stock(&plan.boards()[0]).name, "yard");
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    ///
    /// # Panics
    ///
    /// When the board is of another plan that has more of them.
    #[must_use]
    pub fn stock(&self, board: &CutBoard) -> &Stock {
        &self.stocks[board.stock()]
    }

    /// What it costs, in what was aimed at.
    ///
    /// ```
    /// use scantling::{Cutting, Part, PlanCost, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 7)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.cost(), PlanCost::Boards(3));
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn cost(&self) -> PlanCost {
        self.cost
    }

    /// What no plan for the same pieces costs less than; proved in whole numbers.
    ///
    /// ```
    /// use scantling::{Cutting, Part, PlanCost, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 7)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.bound(), PlanCost::Boards(3)); // 7 ft is more than 6
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn bound(&self) -> PlanCost {
        self.bound
    }

    /// Whether it is proved that no plan for the same pieces costs less.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 7)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert!(plan.is_optimal());
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub fn is_optimal(&self) -> bool {
        self.cost == self.bound
    }

    /// The length of all boards that are cut.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 7)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.bought(), 9 * Unit::Foot.length());
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn bought(&self) -> Length {
        self.bought
    }

    /// The length of all parts.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 7)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.used(), 7 * Unit::Foot.length());
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn used(&self) -> Length {
        self.used
    }

    /// The length of all offcuts worth keeping.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 7)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.kept(), 2 * Unit::Foot.length());
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn kept(&self) -> Length {
        self.kept
    }

    /// What is neither part nor kept: kerfs, trimmed ends and short offcuts.
    ///
    /// ```
    /// use scantling::{Cutting, Length, Part, Stock, Unit};
    ///
    /// let (foot, kerf) = (Unit::Foot.length(), Length::fraction(1, 8, Unit::Inch));
    /// let plan = Cutting::new().kerf(kerf).part(Part::new("cleat", foot, 2)).stock(Stock::new("yard", 3 * foot)).plan()?;
    /// assert_eq!(plan.waste(), 2 * kerf);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn waste(&self) -> Length {
        self.waste
    }
}
