//! One board of a plan: the parts cut from it, in order, and what is left.

use alloc::vec::Vec;

use super::cut::Cut;
use crate::length::Length;

/// A board, or several that are cut alike.
///
/// ```
/// use scantling::{Cutting, Length, Part, Stock, Unit};
///
/// let feet = |count| Length::new(count, Unit::Foot);
/// let plan = Cutting::new().part(Part::new("post", feet(5), 3)).stock(Stock::new("8 ft", feet(8))).plan()?;
/// let [board] = plan.boards() else { panic!("all three are cut alike") };
/// assert_eq!((board.times(), board.cuts().len(), board.offcut(), board.is_kept()), (3, 1, feet(3), true));
/// # Ok::<(), scantling::CuttingError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct CutBoard {
    pub(super) stock: usize,
    pub(super) times: u64,
    pub(super) cuts: Vec<Cut>,
    pub(super) offcut: Length,
    pub(super) is_kept: bool,
}

impl CutBoard {
    /// Which boards of the cutting it is taken from, counted from zero. [`Plan::stock`](crate::Plan::stock) has them.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 1)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.boards()[0].stock(), 0);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn stock(&self) -> usize {
        self.stock
    }

    /// How many boards are cut like this.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 6)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.boards()[0].times(), 2);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn times(&self) -> u64 {
        self.times
    }

    /// The parts in the order they are cut, from the near end.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 6)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.boards()[0].cuts().len(), 3);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub fn cuts(&self) -> &[Cut] {
        &self.cuts
    }

    /// What is left behind the last cut, up to where the far end is trimmed; zero when the last kerf takes it.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let (foot, kerf) = (Unit::Foot.length(), Unit::Inch.length());
    /// let plan = Cutting::new().kerf(kerf).part(Part::new("cleat", foot, 2)).stock(Stock::new("yard", 3 * foot)).plan()?;
    /// assert_eq!(plan.boards()[0].offcut(), foot - 2 * kerf);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn offcut(&self) -> Length {
        self.offcut
    }

    /// Whether that is worth keeping.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let foot = Unit::Foot.length();
    /// let cutting = Cutting::new().part(Part::new("cleat", foot, 2)).stock(Stock::new("yard", 3 * foot)).keep_offcuts_from(2 * foot);
    /// assert!(!cutting.plan()?.boards()[0].is_kept());
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn is_kept(&self) -> bool {
        self.is_kept
    }

    pub(super) fn is_cut_like(&self, other: &Self) -> bool {
        self.stock == other.stock && self.cuts == other.cuts
    }
}
