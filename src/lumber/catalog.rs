//! The tables together, and how a caller brings others. What stands in a table is left to its own file, looking a name
//! up to `look_up.rs`.

use super::hardwood::{HARDWOOD, HardwoodRow};
use super::panel::{PANELS, PanelRow, SHEETS, SheetRow};
use super::softwood::{
    BOARD_THICKNESSES, BOARD_WIDTHS, DIMENSION_THICKNESSES, DIMENSION_WIDTHS, SoftwoodRow, TIMBERS, TimberRow,
};
use super::table::Table;

/// What the names of stock come to.
///
/// The tables of [`Catalog::new`] are the American Softwood Lumber Standard (PS 20), hardwood sizes, the categories of
/// PS 1 and common sheets, each with its [`Source`](crate::Source). Sellers differ: put another [`Table`] in the place of one.
///
/// ```
/// use scantling::{Catalog, Length, Nominal, Unit};
///
/// let ware_case_side: Nominal = "1x12".parse()?;
/// assert_eq!(Catalog::new().actual(&ware_case_side)?.width(), Some(Length::fraction(45, 4, Unit::Inch)));
/// # Ok::<(), scantling::LumberError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Catalog<'a> {
    board_thicknesses: Table<'a, SoftwoodRow>,
    board_widths: Table<'a, SoftwoodRow>,
    dimension_thicknesses: Table<'a, SoftwoodRow>,
    dimension_widths: Table<'a, SoftwoodRow>,
    timbers: Table<'a, TimberRow>,
    hardwood: Table<'a, HardwoodRow>,
    panels: Table<'a, PanelRow>,
    sheets: Table<'a, SheetRow>,
}

impl<'a> Catalog<'a> {
    /// The tables of this crate.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Nominal, Unit};
    ///
    /// let stud: Nominal = "2x4".parse()?;
    /// assert_eq!(Catalog::new().actual(&stud)?.width(), Some(Length::fraction(7, 2, Unit::Inch)));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub const fn new() -> Self {
        Self {
            board_thicknesses: BOARD_THICKNESSES,
            board_widths: BOARD_WIDTHS,
            dimension_thicknesses: DIMENSION_THICKNESSES,
            dimension_widths: DIMENSION_WIDTHS,
            timbers: TIMBERS,
            hardwood: HARDWOOD,
            panels: PANELS,
            sheets: SHEETS,
        }
    }

    /// The thicknesses of boards, under 2 in by name.
    ///
    /// ```
    /// assert_eq!(scantling::Catalog::new().board_thicknesses().rows().len(), 7);
    /// ```
    #[must_use]
    pub const fn board_thicknesses(&self) -> Table<'a, SoftwoodRow> {
        self.board_thicknesses
    }

    /// The same with other thicknesses of boards, under 2 in by name.
    ///
    /// ```
    /// use scantling::{Catalog, Seen, Source, Table};
    ///
    /// let none = Table::new(&[], Source::new("an empty list", Seen::Stated));
    /// assert!(Catalog::new().with_board_thicknesses(none).board_thicknesses().rows().is_empty());
    /// ```
    #[must_use]
    pub const fn with_board_thicknesses(self, board_thicknesses: Table<'a, SoftwoodRow>) -> Self {
        Self { board_thicknesses, ..self }
    }

    /// The widths of boards.
    ///
    /// ```
    /// assert_eq!(scantling::Catalog::new().board_widths().rows().len(), 13);
    /// ```
    #[must_use]
    pub const fn board_widths(&self) -> Table<'a, SoftwoodRow> {
        self.board_widths
    }

    /// The same with other widths of boards.
    ///
    /// ```
    /// use scantling::{Catalog, Seen, Source, Table};
    ///
    /// let none = Table::new(&[], Source::new("an empty list", Seen::Stated));
    /// assert!(Catalog::new().with_board_widths(none).board_widths().rows().is_empty());
    /// ```
    #[must_use]
    pub const fn with_board_widths(self, board_widths: Table<'a, SoftwoodRow>) -> Self {
        Self { board_widths, ..self }
    }

    /// The thicknesses of dimension lumber, from 2 in to less than 5 in by name.
    ///
    /// ```
    /// assert_eq!(scantling::Catalog::new().dimension_thicknesses().rows().len(), 6);
    /// ```
    #[must_use]
    pub const fn dimension_thicknesses(&self) -> Table<'a, SoftwoodRow> {
        self.dimension_thicknesses
    }

    /// The same with other thicknesses of dimension lumber, from 2 in to less than 5 in by name.
    ///
    /// ```
    /// use scantling::{Catalog, Seen, Source, Table};
    ///
    /// let none = Table::new(&[], Source::new("an empty list", Seen::Stated));
    /// assert!(Catalog::new().with_dimension_thicknesses(none).dimension_thicknesses().rows().is_empty());
    /// ```
    #[must_use]
    pub const fn with_dimension_thicknesses(self, dimension_thicknesses: Table<'a, SoftwoodRow>) -> Self {
        Self { dimension_thicknesses, ..self }
    }

    /// The widths of dimension lumber.
    ///
    /// ```
    /// assert_eq!(scantling::Catalog::new().dimension_widths().rows().len(), 13);
    /// ```
    #[must_use]
    pub const fn dimension_widths(&self) -> Table<'a, SoftwoodRow> {
        self.dimension_widths
    }

    /// The same with other widths of dimension lumber.
    ///
    /// ```
    /// use scantling::{Catalog, Seen, Source, Table};
    ///
    /// let none = Table::new(&[], Source::new("an empty list", Seen::Stated));
    /// assert!(Catalog::new().with_dimension_widths(none).dimension_widths().rows().is_empty());
    /// ```
    #[must_use]
    pub const fn with_dimension_widths(self, dimension_widths: Table<'a, SoftwoodRow>) -> Self {
        Self { dimension_widths, ..self }
    }

    /// The both sides of timbers, 5 in and over by name.
    ///
    /// ```
    /// assert_eq!(scantling::Catalog::new().timbers().rows().len(), 3);
    /// ```
    #[must_use]
    pub const fn timbers(&self) -> Table<'a, TimberRow> {
        self.timbers
    }

    /// The same with other both sides of timbers, 5 in and over by name.
    ///
    /// ```
    /// use scantling::{Catalog, Seen, Source, Table};
    ///
    /// let none = Table::new(&[], Source::new("an empty list", Seen::Stated));
    /// assert!(Catalog::new().with_timbers(none).timbers().rows().is_empty());
    /// ```
    #[must_use]
    pub const fn with_timbers(self, timbers: Table<'a, TimberRow>) -> Self {
        Self { timbers, ..self }
    }

    /// The thicknesses of hardwood.
    ///
    /// ```
    /// assert_eq!(scantling::Catalog::new().hardwood().rows().len(), 12);
    /// ```
    #[must_use]
    pub const fn hardwood(&self) -> Table<'a, HardwoodRow> {
        self.hardwood
    }

    /// The same with other thicknesses of hardwood.
    ///
    /// ```
    /// use scantling::{Catalog, Seen, Source, Table};
    ///
    /// let none = Table::new(&[], Source::new("an empty list", Seen::Stated));
    /// assert!(Catalog::new().with_hardwood(none).hardwood().rows().is_empty());
    /// ```
    #[must_use]
    pub const fn with_hardwood(self, hardwood: Table<'a, HardwoodRow>) -> Self {
        Self { hardwood, ..self }
    }

    /// The performance categories of panels.
    ///
    /// ```
    /// assert_eq!(scantling::Catalog::new().panels().rows().len(), 15);
    /// ```
    #[must_use]
    pub const fn panels(&self) -> Table<'a, PanelRow> {
        self.panels
    }

    /// The same with other performance categories of panels.
    ///
    /// ```
    /// use scantling::{Catalog, Seen, Source, Table};
    ///
    /// let none = Table::new(&[], Source::new("an empty list", Seen::Stated));
    /// assert!(Catalog::new().with_panels(none).panels().rows().is_empty());
    /// ```
    #[must_use]
    pub const fn with_panels(self, panels: Table<'a, PanelRow>) -> Self {
        Self { panels, ..self }
    }

    /// The sizes that sheets are sold in.
    ///
    /// ```
    /// assert_eq!(scantling::Catalog::new().sheets().rows().len(), 4);
    /// ```
    #[must_use]
    pub const fn sheets(&self) -> Table<'a, SheetRow> {
        self.sheets
    }

    /// The same with other sizes that sheets are sold in.
    ///
    /// ```
    /// use scantling::{Catalog, Seen, Source, Table};
    ///
    /// let none = Table::new(&[], Source::new("an empty list", Seen::Stated));
    /// assert!(Catalog::new().with_sheets(none).sheets().rows().is_empty());
    /// ```
    #[must_use]
    pub const fn with_sheets(self, sheets: Table<'a, SheetRow>) -> Self {
        Self { sheets, ..self }
    }
}

impl Default for Catalog<'_> {
    fn default() -> Self {
        Self::new()
    }
}
