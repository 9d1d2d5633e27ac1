//! What a piece measures, as the tables have it. Looking it up is left to `catalog.rs`.

use super::kind::{Seasoning, Surface};
use super::panel::PanelRow;
use super::source::Source;
use crate::length::Length;

/// What a piece measures, and which tables say so.
///
/// ```
/// use scantling::{Catalog, Length, Nominal, Unit};
///
/// let stud: Nominal = "2x4x8".parse()?;
/// let actual = Catalog::new().actual(&stud)?;
/// assert_eq!(actual.thickness(), Some(Length::fraction(3, 2, Unit::Inch)));
/// assert_eq!(actual.width(), Some(Length::fraction(7, 2, Unit::Inch)));
/// assert_eq!(actual.length(), Some(Length::new(96, Unit::Inch)));
/// # Ok::<(), scantling::LumberError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Actual<'a> {
    pub(super) thickness: Option<Length>,
    pub(super) panel: Option<PanelRow>,
    pub(super) width: Option<Length>,
    pub(super) length: Option<Length>,
    pub(super) finish: Option<(Surface, Seasoning)>,
    pub(super) source: Source<'a>,
    pub(super) width_source: Option<Source<'a>>,
}

impl<'a> Actual<'a> {
    /// The thickness. `None` for a panel, which may have any within the limits of its category.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Nominal, Unit};
    ///
    /// let board: Nominal = "1x6".parse()?;
    /// assert_eq!(Catalog::new().actual(&board)?.thickness(), Some(Length::fraction(3, 4, Unit::Inch)));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub const fn thickness(&self) -> Option<Length> {
        self.thickness
    }

    /// The limits and the label of a panel of a known category.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Nominal, Unit};
    ///
    /// let ply: Nominal = "3/4 ply".parse()?;
    /// let limits = Catalog::new().actual(&ply)?.panel().unwrap();
    /// assert_eq!(limits.maximum(), Length::fraction(25, 32, Unit::Inch));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub const fn panel(&self) -> Option<PanelRow> {
        self.panel
    }

    /// The width: by the table for softwood, as it was given for hardwood, as sold for a sheet.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Nominal, Unit};
    ///
    /// let deck: Nominal = "5/4x6".parse()?;
    /// assert_eq!(Catalog::new().actual(&deck)?.width(), Some(Length::fraction(11, 2, Unit::Inch)));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub const fn width(&self) -> Option<Length> {
        self.width
    }

    /// The length, as it was given.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Nominal, Unit};
    ///
    /// let sheet: Nominal = "4x8 sheet".parse()?;
    /// assert_eq!(Catalog::new().actual(&sheet)?.length(), Some(Length::new(8, Unit::Foot)));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub const fn length(&self) -> Option<Length> {
        self.length
    }

    /// How the piece is planed, if that is part of what the figures say.
    ///
    /// ```
    /// use scantling::{Catalog, Nominal, Surface};
    ///
    /// let plank: Nominal = "8/4".parse()?;
    /// assert_eq!(Catalog::new().actual(&plank)?.surface(), Some(Surface::Rough));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub fn surface(&self) -> Option<Surface> {
        self.finish.map(|(surface, _)| surface)
    }

    /// How the piece is seasoned, if that is part of what the figures say: softwood is dry where nothing else was said.
    ///
    /// ```
    /// use scantling::{Catalog, Nominal, Seasoning};
    ///
    /// let stud: Nominal = "2x4".parse()?;
    /// assert_eq!(Catalog::new().actual(&stud)?.seasoning(), Some(Seasoning::Dry));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub fn seasoning(&self) -> Option<Seasoning> {
        self.finish.map(|(_, seasoning)| seasoning)
    }

    /// Where the figures come from: that of the thickness first, then that of the width if it is another.
    ///
    /// ```
    /// use scantling::{Catalog, Nominal};
    ///
    /// let ply: Nominal = "3/4 ply 4x8".parse()?;
    /// assert_eq!(Catalog::new().actual(&ply)?.sources().count(), 2);
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    pub fn sources(&self) -> impl Iterator<Item = Source<'a>> {
        let first = self.source;
        core::iter::once(first).chain(self.width_source.filter(|other| *other != first))
    }
}
