//! Softwood by the American Softwood Lumber Standard, PS 20: what a nominal size comes to, dry and green. Which table
//! a name belongs to is left to `catalog.rs`.

use super::kind::{Seasoning, Surface};
use super::source::{Seen, Source};
use super::table::Table;
use crate::length::{Length, Unit};

/// A nominal size of boards or dimension lumber, and what it is cut to.
///
/// ```
/// use scantling::{Length, Seasoning, SoftwoodRow, Surface, Unit};
///
/// let inches = |num| Length::fraction(num, 16, Unit::Inch);
/// let eight = SoftwoodRow::new(inches(128), inches(116), inches(120)).rough(inches(118), inches(124));
/// assert_eq!(eight.size(Seasoning::Dry, Surface::FourSides), Some(inches(116)));
/// assert_eq!(eight.size(Seasoning::Green, Surface::Rough), Some(inches(124)));
/// assert_eq!(eight.size(Seasoning::Dry, Surface::OneSide), None);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct SoftwoodRow {
    nominal: Length,
    dry: Length,
    green: Length,
    rough: Option<(Length, Length)>,
}

impl SoftwoodRow {
    /// A nominal size, and the size surfaced dry and surfaced green.
    ///
    /// ```
    /// use scantling::{Length, SoftwoodRow, Unit};
    ///
    /// let inches = |num| Length::fraction(num, 16, Unit::Inch);
    /// assert_eq!(SoftwoodRow::new(inches(32), inches(24), inches(25)).nominal(), inches(32));
    /// ```
    #[must_use]
    pub const fn new(nominal: Length, dry: Length, green: Length) -> Self {
        Self { nominal, dry, green, rough: None }
    }

    /// The same with its rough sizes, dry and green.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Seasoning, Surface, Unit};
    ///
    /// let two = Catalog::new().dimension_thicknesses().rows()[0];
    /// assert_eq!(two.size(Seasoning::Dry, Surface::Rough), Some(Length::fraction(13, 8, Unit::Inch)));
    /// ```
    #[must_use]
    pub const fn rough(self, dry: Length, green: Length) -> Self {
        Self { rough: Some((dry, green)), ..self }
    }

    /// The nominal size.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Unit};
    ///
    /// assert_eq!(Catalog::new().board_widths().rows()[0].nominal(), Length::new(2, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn nominal(&self) -> Length {
        self.nominal
    }

    /// The size it is cut to; `None` where the table has none.
    ///
    /// ```
    /// use scantling::{Catalog, Seasoning, Surface};
    ///
    /// let board = Catalog::new().board_widths().rows()[0];
    /// assert_eq!(board.size(Seasoning::Dry, Surface::Rough), None);
    /// ```
    #[must_use]
    pub fn size(&self, seasoning: Seasoning, surface: Surface) -> Option<Length> {
        match (surface, seasoning) {
            (Surface::FourSides, Seasoning::Dry) => Some(self.dry),
            (Surface::FourSides, Seasoning::Green) => Some(self.green),
            (Surface::Rough, Seasoning::Dry) => self.rough.map(|(dry, _)| dry),
            (Surface::Rough, Seasoning::Green) => self.rough.map(|(_, green)| green),
            (Surface::OneSide | Surface::TwoSides, _) => None,
        }
    }
}

/// Nominal sizes of timbers, in whole inches, and how much smaller they are cut.
///
/// ```
/// use scantling::{Length, Seasoning, TimberRow, Unit};
///
/// let inches = |num| Length::fraction(num, 4, Unit::Inch);
/// let middling = TimberRow::new(inches(28), Some(inches(60)), inches(3), inches(2));
/// assert_eq!(middling.size(inches(32), Seasoning::Dry), Some(inches(29)));
/// assert_eq!(middling.size(inches(24), Seasoning::Dry), None);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct TimberRow {
    from: Length,
    to: Option<Length>,
    dry_less: Length,
    green_less: Length,
}

impl TimberRow {
    /// The first and the last nominal size, if there is a last one, and what is taken off for dry and for green.
    ///
    /// ```
    /// use scantling::{Length, TimberRow, Unit};
    ///
    /// let inches = |num| Length::fraction(num, 2, Unit::Inch);
    /// assert_eq!(TimberRow::new(inches(32), None, inches(2), inches(1)).to(), None);
    /// ```
    #[must_use]
    pub const fn new(from: Length, to: Option<Length>, dry_less: Length, green_less: Length) -> Self {
        Self { from, to, dry_less, green_less }
    }

    /// The first nominal size.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Unit};
    ///
    /// assert_eq!(Catalog::new().timbers().rows()[1].from(), Length::new(7, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn from(&self) -> Length {
        self.from
    }

    /// The last nominal size; `None` where there is no end.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Unit};
    ///
    /// assert_eq!(Catalog::new().timbers().rows()[1].to(), Some(Length::new(15, Unit::Inch)));
    /// ```
    #[must_use]
    pub const fn to(&self) -> Option<Length> {
        self.to
    }

    /// The size that a nominal one is cut to; `None` for one that is not in this row, or is no whole number of inches.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Seasoning, Unit};
    ///
    /// let six = Length::new(6, Unit::Inch);
    /// let five_and_six = Catalog::new().timbers().rows()[0];
    /// assert_eq!(five_and_six.size(six, Seasoning::Green), Some(Length::fraction(11, 2, Unit::Inch)));
    /// ```
    #[must_use]
    pub fn size(&self, nominal: Length, seasoning: Seasoning) -> Option<Length> {
        let within = self.from <= nominal && self.to.is_none_or(|to| nominal <= to);
        let less = match seasoning {
            Seasoning::Dry => self.dry_less,
            Seasoning::Green => self.green_less,
        };
        (within && nominal.in_unit(Unit::Inch).is_integer()).then(|| nominal.checked_sub(less))?
    }
}

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn row(nominal: Length, dry: Length, green: Length) -> SoftwoodRow {
    SoftwoodRow::new(nominal, dry, green)
}

const BOARD_SOURCE: Source<'static> = Source::new("PS 20 softwood sizes, a secondary copy", Seen::Read);

const DIMENSION_SOURCE: Source<'static> = Source::new(
    "Tennessee Comp. R. & Regs. 0080-07-07-.06, which equals the American Softwood Lumber Standard, Table 4",
    Seen::Read,
);

#[rustfmt::skip] // one line a row
const BOARD_THICKNESSES_ROWS: [SoftwoodRow; 7] = [
    row(inches(3, 8), inches(5, 16), inches(11, 32)),
    row(inches(1, 2), inches(7, 16), inches(15, 32)),
    row(inches(5, 8), inches(9, 16), inches(19, 32)),
    row(inches(3, 4), inches(5, 8), inches(11, 16)),
    row(inches(1, 1), inches(3, 4), inches(25, 32)),
    row(inches(5, 4), inches(1, 1), inches(33, 32)),
    row(inches(3, 2), inches(5, 4), inches(41, 32)),
];

pub(super) const BOARD_THICKNESSES: Table<'static, SoftwoodRow> = Table::new(&BOARD_THICKNESSES_ROWS, BOARD_SOURCE);

#[rustfmt::skip] // one line a row
const BOARD_WIDTHS_ROWS: [SoftwoodRow; 13] = [
    row(inches(2, 1), inches(3, 2), inches(25, 16)),
    row(inches(3, 1), inches(5, 2), inches(41, 16)),
    row(inches(4, 1), inches(7, 2), inches(57, 16)),
    row(inches(5, 1), inches(9, 2), inches(37, 8)),
    row(inches(6, 1), inches(11, 2), inches(45, 8)),
    row(inches(7, 1), inches(13, 2), inches(53, 8)),
    row(inches(8, 1), inches(29, 4), inches(15, 2)),
    row(inches(9, 1), inches(33, 4), inches(17, 2)),
    row(inches(10, 1), inches(37, 4), inches(19, 2)),
    row(inches(11, 1), inches(41, 4), inches(21, 2)),
    row(inches(12, 1), inches(45, 4), inches(23, 2)),
    row(inches(14, 1), inches(53, 4), inches(27, 2)),
    row(inches(16, 1), inches(61, 4), inches(31, 2)),
];

pub(super) const BOARD_WIDTHS: Table<'static, SoftwoodRow> = Table::new(&BOARD_WIDTHS_ROWS, BOARD_SOURCE);

#[rustfmt::skip] // one line a row
const DIMENSION_THICKNESSES_ROWS: [SoftwoodRow; 6] = [
    row(inches(2, 1), inches(3, 2), inches(25, 16)).rough(inches(13, 8), inches(27, 16)),
    row(inches(5, 2), inches(2, 1), inches(33, 16)).rough(inches(17, 8), inches(9, 4)),
    row(inches(3, 1), inches(5, 2), inches(41, 16)).rough(inches(21, 8), inches(11, 4)),
    row(inches(7, 2), inches(3, 1), inches(49, 16)).rough(inches(25, 8), inches(13, 4)),
    row(inches(4, 1), inches(7, 2), inches(57, 16)).rough(inches(29, 8), inches(61, 16)),
    row(inches(9, 2), inches(4, 1), inches(65, 16)).rough(inches(33, 8), inches(69, 16)),
];

pub(super) const DIMENSION_THICKNESSES: Table<'static, SoftwoodRow> = Table::new(&DIMENSION_THICKNESSES_ROWS, DIMENSION_SOURCE);

#[rustfmt::skip] // one line a row
const DIMENSION_WIDTHS_ROWS: [SoftwoodRow; 13] = [
    row(inches(2, 1), inches(3, 2), inches(25, 16)).rough(inches(13, 8), inches(27, 16)),
    row(inches(5, 2), inches(2, 1), inches(33, 16)).rough(inches(17, 8), inches(9, 4)),
    row(inches(3, 1), inches(5, 2), inches(41, 16)).rough(inches(21, 8), inches(11, 4)),
    row(inches(7, 2), inches(3, 1), inches(49, 16)).rough(inches(25, 8), inches(13, 4)),
    row(inches(4, 1), inches(7, 2), inches(57, 16)).rough(inches(29, 8), inches(61, 16)),
    row(inches(9, 2), inches(4, 1), inches(65, 16)).rough(inches(33, 8), inches(69, 16)),
    row(inches(5, 1), inches(9, 2), inches(37, 8)).rough(inches(37, 8), inches(77, 16)),
    row(inches(6, 1), inches(11, 2), inches(45, 8)).rough(inches(45, 8), inches(47, 8)),
    row(inches(8, 1), inches(29, 4), inches(15, 2)).rough(inches(59, 8), inches(31, 4)),
    row(inches(10, 1), inches(37, 4), inches(19, 2)).rough(inches(75, 8), inches(39, 4)),
    row(inches(12, 1), inches(45, 4), inches(23, 2)).rough(inches(91, 8), inches(95, 8)),
    row(inches(14, 1), inches(53, 4), inches(27, 2)).rough(inches(107, 8), inches(223, 16)),
    row(inches(16, 1), inches(61, 4), inches(31, 2)).rough(inches(123, 8), inches(16, 1)),
];

pub(super) const DIMENSION_WIDTHS: Table<'static, SoftwoodRow> = Table::new(&DIMENSION_WIDTHS_ROWS, DIMENSION_SOURCE);

const TIMBER_ROWS: [TimberRow; 3] = [
    TimberRow::new(inches(5, 1), Some(inches(6, 1)), inches(1, 2), inches(1, 2)),
    TimberRow::new(inches(7, 1), Some(inches(15, 1)), inches(3, 4), inches(1, 2)),
    TimberRow::new(inches(16, 1), None, inches(1, 1), inches(1, 2)),
];

pub(super) const TIMBERS: Table<'static, TimberRow> = Table::new(&TIMBER_ROWS, BOARD_SOURCE);
