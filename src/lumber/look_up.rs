//! A name looked up in the tables of a catalog: what the piece measures, or what the nearest entries are.

use alloc::vec::Vec;

use super::actual::Actual;
use super::catalog::Catalog;
use super::error::LumberError;
use super::hardwood::HardwoodRow;
use super::kind::{LumberKind, Seasoning, Surface};
use super::nominal::Nominal;
use super::panel::{PanelRow, SheetRow};
use super::softwood::{SoftwoodRow, TimberRow};
use super::source::Source;
use super::table::{Table, on_both_sides};
use crate::length::{Length, Rounding, RoundingMode, Unit};

impl<'a> Catalog<'a> {
    /// What a piece measures. Softwood is surfaced on four sides and dry, and hardwood rough, where the name does not
    /// say otherwise. Nothing is worked out between two entries of a table.
    ///
    /// ```
    /// use scantling::{Catalog, Length, Nominal, Unit};
    ///
    /// let eighths = |num| Some(Length::fraction(num, 8, Unit::Inch));
    /// let sides = |name: &str| -> Result<_, scantling::LumberError> {
    ///     let nominal: Nominal = name.parse()?;
    ///     let actual = Catalog::new().actual(&nominal)?;
    ///     Ok((actual.thickness(), actual.width()))
    /// };
    /// assert_eq!(sides("2x8")?, (eighths(12), eighths(58)));
    /// assert_eq!(sides("2x8 rough")?, (eighths(13), eighths(59)));
    /// assert_eq!(sides("6x8")?, (eighths(44), eighths(58)));
    /// assert_eq!(sides("8/4 S1S")?.0, Some(Length::fraction(29, 16, Unit::Inch)));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`LumberError::NotInTable`] with the nearest entries, [`LumberError::NoSuchSizes`] where no entry has the finish asked
    /// for, [`LumberError::NoSuchSheet`] for a sheet.
    pub fn actual(&self, nominal: &Nominal) -> Result<Actual<'a>, LumberError> {
        let seasoning = nominal.seasoning().unwrap_or(Seasoning::Dry);
        let surface = nominal.surface().unwrap_or(Surface::FourSides);
        let finish = Finish { kind: nominal.kind(), seasoning, surface };
        match nominal.kind() {
            LumberKind::Hardwood => self.hardwood_of(nominal),
            LumberKind::Panel | LumberKind::Sheet => self.panel_of(nominal),
            LumberKind::Timber => self.timber_of(nominal, finish),
            LumberKind::Dimension => finish.softwood(nominal, self.dimension_thicknesses(), self.dimension_widths()),
            LumberKind::Decking if nominal.thickness() >= Some(Length::new(2, Unit::Inch)) => {
                finish.softwood(nominal, self.dimension_thicknesses(), self.dimension_widths())
            }
            LumberKind::Board | LumberKind::Decking => finish.softwood(nominal, self.board_thicknesses(), self.board_widths()),
        }
    }

    fn timber_of(&self, nominal: &Nominal, finish: Finish) -> Result<Actual<'a>, LumberError> {
        if finish.surface != Surface::FourSides {
            return Err(finish.no_such_sizes());
        }
        let size = |name| timber_size(self.timbers(), name, finish.seasoning);
        let table = self.timbers().source();
        let [thickness, width] = [nominal.thickness(), nominal.width()].map(|name| name.map(size).transpose());
        Ok(finish.actual(nominal, [thickness?, width?], [table; 2]))
    }

    fn hardwood_of(&self, nominal: &Nominal) -> Result<Actual<'a>, LumberError> {
        let surface = nominal.surface().unwrap_or(Surface::Rough);
        let seasoning = nominal.seasoning().unwrap_or(Seasoning::Dry);
        let finish = Finish { kind: LumberKind::Hardwood, seasoning, surface };
        let what = match surface {
            Surface::Rough => "thickness of hardwood",
            Surface::OneSide => "thickness of hardwood with an S1S size",
            Surface::TwoSides | Surface::FourSides => "thickness of hardwood with an S2S size",
        };
        let of = |row: &HardwoodRow| (row.rough(), row.size(surface));
        let size = |name| finish.find(self.hardwood(), name, what, of);
        let source = self.hardwood().source();
        let thickness = nominal.thickness().map(size).transpose()?;
        Ok(finish.actual(nominal, [thickness, nominal.width()], [source; 2]))
    }

    fn panel_of(&self, nominal: &Nominal) -> Result<Actual<'a>, LumberError> {
        let what = "performance category of panels";
        let find = |given| {
            let found = self.panels().find(given, |row: &PanelRow| (row.category(), Some(*row)));
            found.map_err(|nearest| LumberError::NotInTable { what, given, nearest })
        };
        let panel = nominal.thickness().map(find).transpose()?;
        let sheets = self.sheets();
        if let (Some(width), Some(length)) = (nominal.width(), nominal.length()) {
            // Lying or standing, it is the same sheet.
            let is_this = |row: &SheetRow| [(width, length), (length, width)].contains(&(row.width(), row.length()));
            let listed = sheets.rows().iter().any(is_this);
            if !listed {
                return Err(no_such_sheet(sheets, width, length));
            }
        }
        let sized = nominal.width().is_some();
        let (source, width_source) = match panel {
            Some(_) => (self.panels().source(), sized.then(|| sheets.source())),
            None => (sheets.source(), None),
        };
        let (width, length) = (nominal.width(), nominal.length());
        Ok(Actual { thickness: None, panel, width, length, finish: None, source, width_source })
    }
}

/// What decides the column of a table.
#[derive(Clone, Copy)]
struct Finish {
    kind: LumberKind,
    seasoning: Seasoning,
    surface: Surface,
}

impl Finish {
    fn softwood<'a>(
        self,
        nominal: &Nominal,
        thicknesses: Table<'a, SoftwoodRow>,
        widths: Table<'a, SoftwoodRow>,
    ) -> Result<Actual<'a>, LumberError> {
        let [thick, wide] = match self.kind {
            LumberKind::Dimension => ["thickness of dimension lumber", "width of dimension lumber"],
            LumberKind::Decking => ["thickness of decking", "width of decking"],
            _ => ["thickness of boards", "width of boards"],
        };
        let of = |row: &SoftwoodRow| (row.nominal(), row.size(self.seasoning, self.surface));
        let thickness = nominal.thickness().map(|name| self.find(thicknesses, name, thick, of)).transpose()?;
        let width = nominal.width().map(|name| self.find(widths, name, wide, of)).transpose()?;
        Ok(self.actual(nominal, [thickness, width], [thicknesses.source(), widths.source()]))
    }

    fn find<Row>(
        self,
        table: Table<'_, Row>,
        given: Length,
        what: &'static str,
        of: impl Fn(&Row) -> (Length, Option<Length>),
    ) -> Result<Length, LumberError> {
        table.find(given, of).map_err(|nearest| {
            let sizes = !nearest.is_empty();
            if sizes { LumberError::NotInTable { what, given, nearest } } else { self.no_such_sizes() }
        })
    }

    fn no_such_sizes(self) -> LumberError {
        LumberError::NoSuchSizes { kind: self.kind, surface: self.surface, seasoning: self.seasoning }
    }

    fn actual<'a>(self, nominal: &Nominal, sides: [Option<Length>; 2], sources: [Source<'a>; 2]) -> Actual<'a> {
        let [thickness, width] = sides;
        let finish = Some((self.surface, self.seasoning));
        let length = nominal.length();
        Actual { thickness, panel: None, width, length, finish, source: sources[0], width_source: width.map(|_| sources[1]) }
    }
}

fn timber_size(table: Table<'_, TimberRow>, given: Length, seasoning: Seasoning) -> Result<Length, LumberError> {
    let size = |name| table.rows().iter().find_map(|row| row.size(name, seasoning));
    size(given).ok_or_else(|| {
        // The whole inches on both sides, where they are in a row, and the ends of every row.
        let whole = |mode| given.round(Rounding::to(Unit::Inch.length()).mode(mode)).ok();
        let beside = [whole(RoundingMode::Down), whole(RoundingMode::Up)];
        let ends = || table.rows().iter().flat_map(|row| [Some(row.from()), row.to()]);
        let known = || beside.into_iter().chain(ends()).flatten().filter(|name| size(*name).is_some());
        let nearest = on_both_sides(given, known);
        LumberError::NotInTable { what: "side of a timber", given, nearest }
    })
}

/// The refusal of a sheet, with the two sizes that differ least from it, lying or standing.
fn no_such_sheet(table: Table<'_, SheetRow>, width: Length, length: Length) -> LumberError {
    let apart = |a: Length, b: Length| a.checked_sub(b).map_or(Length::MAX, Length::abs);
    let differs = |row: &&SheetRow| {
        let sum = |a, b| apart(row.width(), a).checked_add(apart(row.length(), b)).unwrap_or(Length::MAX);
        sum(width, length).min(sum(length, width))
    };
    let mut rows: Vec<_> = table.rows().iter().collect();
    rows.sort_by_key(differs);
    let nearest = rows.iter().take(2).map(|row| (row.width(), row.length())).collect();
    LumberError::NoSuchSheet { width, length, nearest }
}
