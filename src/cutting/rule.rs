//! The choices a shop makes before it cuts: which cuts take a kerf, and what makes one plan better than another.

use core::fmt;

use num_rational::Ratio;

use crate::length::{Area, Length};

/// Which parts the saw takes a kerf for.
///
/// ```
/// use scantling::{Cutting, CuttingError, KerfRule, Length, Part, Stock, Unit};
///
/// // Eight blocks of 11 7/8 in with a kerf of 1/8 in: 95 7/8 in with seven kerfs, 96 in with eight.
/// let blocks = |stock| {
///     Cutting::new()
///         .kerf(Length::fraction(1, 8, Unit::Inch))
///         .part(Part::new("block", Length::fraction(95, 8, Unit::Inch), 8))
///         .stock(Stock::new("board", stock))
/// };
/// let (short, long) = (Length::fraction(767, 8, Unit::Inch), Length::new(96, Unit::Inch));
/// assert_eq!(blocks(short).plan()?.board_count(), 1);
/// assert_eq!(blocks(short).kerf_rule(KerfRule::EachPart).plan()?.board_count(), 2);
/// assert_eq!(blocks(long).kerf_rule(KerfRule::EachPart).plan()?.board_count(), 1);
/// # Ok::<(), CuttingError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum KerfRule {
    /// Kerfs lie between parts, and behind the last one if anything is left there: a part that ends where the board ends needs
    /// no cut. What the saw really takes: the default.
    #[default]
    Between,
    /// Every part takes a kerf, the last one too, even where nothing is left to cut off.
    EachPart,
}

/// What makes one plan better than another.
///
/// ```
/// use num_rational::Ratio;
/// use scantling::{Aim, Cutting, CuttingError, Length, Part, PlanCost, Stock, Unit};
///
/// let feet = |count| Length::new(count, Unit::Foot);
/// let shelves = Cutting::new()
///     .part(Part::new("shelf", feet(4), 3))
///     .stock(Stock::new("8 ft", feet(8)).price(Ratio::from_integer(10)))
///     .stock(Stock::new("12 ft", feet(12)).price(Ratio::from_integer(21)));
/// assert_eq!(shelves.plan()?.cost(), PlanCost::Price(Ratio::from_integer(20))); // two boards, and 4 ft left
/// assert_eq!(shelves.clone().aim(Aim::FewestBoards).plan()?.cost(), PlanCost::Boards(1));
/// assert_eq!(shelves.aim(Aim::LeastLength).plan()?.cost(), PlanCost::Length(feet(12)));
/// # Ok::<(), CuttingError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Aim {
    /// The fewest boards, however long: the default where all boards are of one length and have no price.
    FewestBoards,
    /// The least length of boards in all: the default where boards of several lengths have no prices.
    LeastLength,
    /// The lowest price: the default where all boards have a price.
    LowestPrice,
}

/// What a plan costs, or what none can cost less than, in what was aimed at.
///
/// ```
/// use scantling::PlanCost;
///
/// assert_eq!(PlanCost::Boards(3).to_string(), "3 boards");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum PlanCost {
    /// So many boards.
    Boards(u64),
    /// So much length of boards.
    Length(Length),
    /// So many sheets.
    Sheets(u64),
    /// So much area of sheets.
    Area(Area),
    /// So much money.
    Price(Ratio<i128>),
}

/// `1 board`, `20 ft of boards` as inches, `25/2` for a price that is not whole.
impl fmt::Display for PlanCost {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Boards(1) => out.write_str("1 board"),
            Self::Boards(count) => write!(out, "{count} boards"),
            Self::Length(length) => write!(out, "{length} of boards"),
            Self::Sheets(1) => out.write_str("1 sheet"),
            Self::Sheets(count) => write!(out, "{count} sheets"),
            Self::Area(area) => write!(out, "{area} of sheets"),
            Self::Price(price) => write!(out, "{price}"),
        }
    }
}
