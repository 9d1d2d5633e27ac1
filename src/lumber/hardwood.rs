//! Hardwood by its rough thickness, in quarters of an inch: what is left when one or two sides are planed. Widths and
//! lengths are as they come, and not in any table.

use super::kind::Surface;
use super::source::{Seen, Source};
use super::table::Table;
use crate::length::{Length, Unit};

/// A rough thickness, and the least it measures planed.
///
/// ```
/// use scantling::{HardwoodRow, Length, Surface, Unit};
///
/// let inches = |num| Length::fraction(num, 16, Unit::Inch);
/// let four_quarters = HardwoodRow::new(inches(16)).s1s(inches(14)).s2s(inches(13));
/// assert_eq!(four_quarters.size(Surface::Rough), Some(inches(16)));
/// assert_eq!(four_quarters.size(Surface::TwoSides), Some(inches(13)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct HardwoodRow {
    rough: Length,
    s1s: Option<Length>,
    s2s: Option<Length>,
}

impl HardwoodRow {
    /// A rough thickness.
    ///
    /// ```
    /// use scantling::{HardwoodRow, Length, Unit};
    ///
    /// assert_eq!(HardwoodRow::new(Length::new(2, Unit::Inch)).rough(), Length::new(2, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn new(rough: Length) -> Self {
        Self { rough, s1s: None, s2s: None }
    }

    /// The same with its thickness when one side is planed.
    ///
    /// ```
    /// use scantling::{HardwoodRow, Length, Surface, Unit};
    ///
    /// let inches = |num| Length::fraction(num, 8, Unit::Inch);
    /// assert_eq!(HardwoodRow::new(inches(8)).s1s(inches(7)).size(Surface::OneSide), Some(inches(7)));
    /// ```
    #[must_use]
    pub const fn s1s(self, thickness: Length) -> Self {
        Self { s1s: Some(thickness), ..self }
    }

    /// The same with its thickness when two sides are planed.
    ///
    /// ```
    /// use scantling::{HardwoodRow, Length, Surface, Unit};
    ///
    /// let inches = |num| Length::fraction(num, 16, Unit::Inch);
    /// assert_eq!(HardwoodRow::new(inches(16)).s2s(inches(13)).size(Surface::TwoSides), Some(inches(13)));
    /// ```
    #[must_use]
    pub const fn s2s(self, thickness: Length) -> Self {
        Self { s2s: Some(thickness), ..self }
    }

    /// The rough thickness, by which it is named and measured.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Unit};
    ///
    /// assert_eq!(Catalog::new().hardwood().rows()[0].rough(), Length::fraction(3, 8, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn rough(&self) -> Length {
        self.rough
    }

    /// The thickness with so many sides planed; `None` where the table has none.
    ///
    /// ```
    /// use scantling::{HardwoodRow, Length, Surface, Unit};
    ///
    /// assert_eq!(HardwoodRow::new(Length::new(2, Unit::Inch)).size(Surface::FourSides), None);
    /// ```
    #[must_use]
    pub const fn size(&self, surface: Surface) -> Option<Length> {
        match surface {
            Surface::Rough => Some(self.rough),
            Surface::OneSide => self.s1s,
            Surface::TwoSides => self.s2s,
            Surface::FourSides => None,
        }
    }
}

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

/// Sellers differ: 4/4 is sold at 3/4 in and at 15/16 in.
const SOURCE: Source<'static> =
    Source::new("Hardwood lumber sizes, a secondary copy; planed, the least that grading allows", Seen::Read);

const ROWS: [HardwoodRow; 12] = [
    HardwoodRow::new(inches(3, 8)).s2s(inches(3, 16)),
    HardwoodRow::new(inches(1, 2)).s1s(inches(3, 8)).s2s(inches(5, 16)),
    HardwoodRow::new(inches(5, 8)).s1s(inches(1, 2)).s2s(inches(7, 16)),
    HardwoodRow::new(inches(3, 4)).s1s(inches(5, 8)).s2s(inches(9, 16)),
    HardwoodRow::new(inches(1, 1)).s1s(inches(7, 8)).s2s(inches(13, 16)),
    HardwoodRow::new(inches(5, 4)).s1s(inches(9, 8)).s2s(inches(17, 16)),
    HardwoodRow::new(inches(3, 2)).s1s(inches(11, 8)).s2s(inches(21, 16)),
    HardwoodRow::new(inches(7, 4)).s2s(inches(3, 2)),
    HardwoodRow::new(inches(2, 1)).s1s(inches(29, 16)).s2s(inches(7, 4)),
    HardwoodRow::new(inches(3, 1)).s1s(inches(45, 16)).s2s(inches(11, 4)),
    HardwoodRow::new(inches(7, 2)).s2s(inches(13, 4)),
    HardwoodRow::new(inches(4, 1)).s1s(inches(61, 16)).s2s(inches(15, 4)),
];

pub(super) const HARDWOOD: Table<'static, HardwoodRow> = Table::new(&ROWS, SOURCE);
