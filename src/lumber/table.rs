//! A table: rows and their source. Which rows there are is left to the files of each kind of stock. Nothing is ever
//! read between two rows.

use alloc::boxed::Box;

use super::source::Source;
use crate::length::Length;

/// Rows of sizes, and where they come from.
///
/// ```
/// use scantling::{Catalog, HardwoodRow, Length, Nominal, Seen, Source, Surface, Table, Unit};
///
/// // This yard planes its 4/4 down to 3/4 in.
/// let rows = [HardwoodRow::new(Length::new(1, Unit::Inch)).s2s(Length::fraction(3, 4, Unit::Inch))];
/// let yard = Catalog::new().with_hardwood(Table::new(&rows, Source::new("the yard's list", Seen::Stated)));
///
/// let plank: Nominal = "4/4 S2S".parse()?;
/// assert_eq!(yard.actual(&plank)?.thickness(), Some(Length::fraction(3, 4, Unit::Inch)));
/// # Ok::<(), scantling::LumberError>(())
/// ```
#[derive(Debug, PartialEq, Eq, Hash)]
pub struct Table<'a, Row> {
    rows: &'a [Row],
    source: Source<'a>,
}

// Not derived: a table can be copied whatever its rows are.
impl<Row> Clone for Table<'_, Row> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<Row> Copy for Table<'_, Row> {}

impl<'a, Row> Table<'a, Row> {
    /// Rows and where they come from. Of two rows for the same name the first counts.
    ///
    /// ```
    /// use scantling::{Length, Seen, SheetRow, Source, Table, Unit};
    ///
    /// let rows = [SheetRow::new(Length::new(4, Unit::Foot), Length::new(10, Unit::Foot))];
    /// assert_eq!(Table::new(&rows, Source::new("the yard's list", Seen::Stated)).rows(), rows);
    /// ```
    #[must_use]
    pub const fn new(rows: &'a [Row], source: Source<'a>) -> Self {
        Self { rows, source }
    }

    /// The rows.
    ///
    /// ```
    /// assert_eq!(scantling::Catalog::new().panels().rows().len(), 15);
    /// ```
    #[must_use]
    pub const fn rows(&self) -> &'a [Row] {
        self.rows
    }

    /// Where they come from.
    ///
    /// ```
    /// assert!(scantling::Catalog::new().panels().source().document().contains("PS 1"));
    /// ```
    #[must_use]
    pub const fn source(&self) -> Source<'a> {
        self.source
    }

    /// What `of` makes of the row of this name, or the names below and above it of rows that have such a size.
    pub(super) fn find<T>(&self, name: Length, of: impl Fn(&Row) -> (Length, Option<T>)) -> Result<T, Box<[Length]>> {
        let sized = || self.rows.iter().map(&of).filter_map(|(name, size)| Some((name, size?)));
        match sized().find(|(known, _)| *known == name) {
            Some((_, size)) => Ok(size),
            None => Err(on_both_sides(name, || sized().map(|(name, _)| name))),
        }
    }
}

/// The greatest name below and the least above one that is not among them.
pub(super) fn on_both_sides<Names: Iterator<Item = Length>>(name: Length, names: impl Fn() -> Names) -> Box<[Length]> {
    let below = names().filter(|known| *known < name).max();
    let above = names().filter(|known| *known > name).min();
    below.into_iter().chain(above).collect()
}
