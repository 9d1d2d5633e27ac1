//! Panels by performance category, and sheets by the sizes they are sold in. A category names a range, not a
//! thickness: measure the panel before anything is cut to take it.

use super::source::{Seen, Source};
use super::table::Table;
use crate::length::{Length, Unit};

/// A performance category, the limits of a panel in it that is unsanded, touch-sanded or overlaid, and what the stamp says.
/// Hardwood plywood is made to another standard, which is not in the table, and is often thinner.
///
/// ```
/// use scantling::{Catalog, Length, Unit};
///
/// let categories = Catalog::new().panels();
/// let row = categories.rows().iter().find(|row| row.category() == Length::fraction(3, 4, Unit::Inch)).unwrap();
/// assert_eq!(row.minimum(), Length::fraction(23, 32, Unit::Inch));
/// assert_eq!(row.maximum(), Length::fraction(25, 32, Unit::Inch));
/// assert_eq!(row.label(), Length::fraction(734, 1000, Unit::Inch));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct PanelRow {
    category: Length,
    minimum: Length,
    maximum: Length,
    label: Length,
}

impl PanelRow {
    /// A category, the least and the most that a panel in it measures, and the thickness on its label.
    ///
    /// ```
    /// use scantling::{Length, PanelRow, Unit};
    ///
    /// let [category, least, most, label] = [750, 719, 781, 734].map(|thousandths| Length::fraction(thousandths, 1000, Unit::Inch));
    /// assert_eq!(PanelRow::new(category, least, most, label).category(), Length::fraction(3, 4, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn new(category: Length, minimum: Length, maximum: Length, label: Length) -> Self {
        Self { category, minimum, maximum, label }
    }

    /// The category, as the panel is called.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Unit};
    ///
    /// assert_eq!(Catalog::new().panels().rows()[0].category(), Length::fraction(1, 4, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn category(&self) -> Length {
        self.category
    }

    /// The least that a panel of this category measures.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Unit};
    ///
    /// assert_eq!(Catalog::new().panels().rows()[0].minimum(), Length::fraction(7, 32, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn minimum(&self) -> Length {
        self.minimum
    }

    /// The most that a panel of this category measures.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Unit};
    ///
    /// assert_eq!(Catalog::new().panels().rows()[0].maximum(), Length::fraction(9, 32, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn maximum(&self) -> Length {
        self.maximum
    }

    /// The thickness on its label, to a thousandth of an inch as printed there.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Unit};
    ///
    /// assert_eq!(Catalog::new().panels().rows()[0].label(), Length::fraction(225, 1000, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn label(&self) -> Length {
        self.label
    }
}

/// A size of sheets as sold, width first: the grain of the face runs along the length.
///
/// ```
/// use scantling::{Length, SheetRow, Unit};
///
/// let long = SheetRow::new(Length::new(4, Unit::Foot), Length::new(10, Unit::Foot));
/// assert_eq!((long.width(), long.length()), (Length::new(48, Unit::Inch), Length::new(120, Unit::Inch)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct SheetRow {
    width: Length,
    length: Length,
}

impl SheetRow {
    /// A width and a length.
    ///
    /// ```
    /// use scantling::{Catalog, SheetRow, Unit};
    ///
    /// let square = SheetRow::new(5 * Unit::Foot.length(), 5 * Unit::Foot.length());
    /// assert!(Catalog::new().sheets().rows().contains(&square));
    /// ```
    #[must_use]
    pub const fn new(width: Length, length: Length) -> Self {
        Self { width, length }
    }

    /// The width.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Unit};
    ///
    /// assert_eq!(Catalog::new().sheets().rows()[0].width(), Length::new(48, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn width(&self) -> Length {
        self.width
    }

    /// The length.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Unit};
    ///
    /// assert_eq!(Catalog::new().sheets().rows()[0].length(), Length::new(96, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn length(&self) -> Length {
        self.length
    }
}

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const PANEL_SOURCE: Source<'static> = Source::new("APA Europe, Performance Category and Thickness, after PS 1", Seen::Read);

const PANEL_ROWS: [PanelRow; 15] = [
    PanelRow::new(inches(1, 4), inches(7, 32), inches(9, 32), inches(225, 1000)),
    PanelRow::new(inches(11, 32), inches(5, 16), inches(3, 8), inches(322, 1000)),
    PanelRow::new(inches(3, 8), inches(11, 32), inches(13, 32), inches(354, 1000)),
    PanelRow::new(inches(7, 16), inches(13, 32), inches(15, 32), inches(418, 1000)),
    PanelRow::new(inches(15, 32), inches(7, 16), inches(1, 2), inches(451, 1000)),
    PanelRow::new(inches(1, 2), inches(15, 32), inches(17, 32), inches(483, 1000)),
    PanelRow::new(inches(19, 32), inches(9, 16), inches(5, 8), inches(578, 1000)),
    PanelRow::new(inches(5, 8), inches(19, 32), inches(21, 32), inches(609, 1000)),
    PanelRow::new(inches(23, 32), inches(11, 16), inches(3, 4), inches(703, 1000)),
    PanelRow::new(inches(3, 4), inches(23, 32), inches(25, 32), inches(734, 1000)),
    PanelRow::new(inches(13, 16), inches(25, 32), inches(27, 32), inches(788, 1000)),
    PanelRow::new(inches(7, 8), inches(133, 160), inches(147, 160), inches(849, 1000)),
    PanelRow::new(inches(1, 1), inches(19, 20), inches(21, 20), inches(970, 1000)),
    PanelRow::new(inches(9, 8), inches(171, 160), inches(189, 160), inches(1091, 1000)),
    PanelRow::new(inches(5, 4), inches(19, 16), inches(21, 16), inches(1213, 1000)),
];

pub(super) const PANELS: Table<'static, PanelRow> = Table::new(&PANEL_ROWS, PANEL_SOURCE);

const SHEET_SOURCE: Source<'static> = Source::new("sheet sizes as sold, common practice", Seen::FromMemory);

const SHEET_ROWS: [SheetRow; 4] = [
    SheetRow::new(inches(48, 1), inches(96, 1)),
    SheetRow::new(inches(49, 1), inches(97, 1)),
    SheetRow::new(inches(60, 1), inches(60, 1)),
    SheetRow::new(Length::new(1220, Unit::Millimeter), Length::new(2440, Unit::Millimeter)),
];

pub(super) const SHEETS: Table<'static, SheetRow> = Table::new(&SHEET_ROWS, SHEET_SOURCE);
