//! A piece of stock by name: what it is called, not what it measures. Reading names is left to `name/`, the
//! sizes behind them to `catalog.rs`.

use core::fmt;

use super::as_sold::AsSold;
use super::kind::{LumberKind, Seasoning, Surface};
use super::name::WIDEST;
use crate::length::{Length, Unit};
use crate::print::{Written, padded};

/// A piece of stock by its name: `2x4x8`, `5/4x6`, `8/4`, `23/32 ply 4x8`.
///
/// The sizes in it are those of the name. [`Catalog::actual`](crate::Catalog::actual) says what the piece measures.
///
/// ```
/// use scantling::{Length, Nominal, Unit};
///
/// let stud: Nominal = "2x4x8".parse()?;
/// assert_eq!(stud, Nominal::softwood(Length::new(2, Unit::Inch), Length::new(4, Unit::Inch)).long(Length::new(8, Unit::Foot)));
/// assert_eq!(stud.to_string(), "2x4 - 8'");
/// # Ok::<(), scantling::NominalError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Nominal {
    family: Family,
    thickness: Option<Length>,
    width: Option<Length>,
    length: Option<Length>,
    seasoning: Option<Seasoning>,
    surface: Option<Surface>,
}

/// What decides which tables a name is looked up in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(crate) enum Family {
    Softwood,
    Decking,
    Hardwood,
    Panel,
}

impl Nominal {
    /// Softwood: a board, dimension lumber or a timber, as its thickness has it.
    ///
    /// ```
    /// use scantling::{Length, LumberKind, Nominal, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// assert_eq!(Nominal::softwood(inches(4), inches(8)).kind(), LumberKind::Dimension);
    /// assert_eq!(Nominal::softwood(inches(6), inches(8)).kind(), LumberKind::Timber);
    /// ```
    #[must_use]
    pub const fn softwood(thickness: Length, width: Length) -> Self {
        Self { width: Some(width), ..Self::of(Family::Softwood, Some(thickness)) }
    }

    /// Decking of a thickness by name.
    ///
    /// ```
    /// use scantling::{Length, Nominal, Unit};
    ///
    /// let deck = Nominal::decking(Length::fraction(5, 4, Unit::Inch)).wide(Length::new(6, Unit::Inch));
    /// assert_eq!("5/4x6".parse(), Ok(deck));
    /// ```
    #[must_use]
    pub const fn decking(thickness: Length) -> Self {
        Self::of(Family::Decking, Some(thickness))
    }

    /// Hardwood of a thickness in the rough.
    ///
    /// ```
    /// use scantling::{Length, Nominal, Unit};
    ///
    /// assert_eq!("8/4".parse(), Ok(Nominal::hardwood(Length::new(2, Unit::Inch))));
    /// ```
    #[must_use]
    pub const fn hardwood(thickness: Length) -> Self {
        Self::of(Family::Hardwood, Some(thickness))
    }

    /// A panel of a performance category.
    ///
    /// ```
    /// use scantling::{Length, Nominal, Unit};
    ///
    /// assert_eq!("3/4 ply".parse(), Ok(Nominal::panel(Length::fraction(3, 4, Unit::Inch))));
    /// ```
    #[must_use]
    pub const fn panel(category: Length) -> Self {
        Self::of(Family::Panel, Some(category))
    }

    /// A sheet of any thickness.
    ///
    /// ```
    /// use scantling::{Length, Nominal, Unit};
    ///
    /// let feet = |count| Length::new(count, Unit::Foot);
    /// assert_eq!("4x8 sheet".parse(), Ok(Nominal::sheet(feet(4), feet(8))));
    /// ```
    #[must_use]
    pub const fn sheet(width: Length, length: Length) -> Self {
        Self { width: Some(width), length: Some(length), ..Self::of(Family::Panel, None) }
    }

    const fn of(family: Family, thickness: Option<Length>) -> Self {
        Self { family, thickness, width: None, length: None, seasoning: None, surface: None }
    }

    /// A piece put together from what it was taken apart into; `None` where no name has such parts.
    #[cfg(feature = "serde")]
    pub(crate) fn checked_of(family: Family, sizes: [Option<Length>; 3]) -> Option<Self> {
        let [thickness, width, length] = sizes;
        let is_sheet = width.is_some() && length.is_some();
        let known = match family {
            Family::Softwood => thickness.is_some() && width.is_some(),
            Family::Decking | Family::Hardwood => thickness.is_some(),
            Family::Panel => thickness.is_some() || is_sheet,
        };
        known.then_some(Self { width, length, ..Self::of(family, thickness) })
    }

    #[cfg(feature = "serde")]
    pub(crate) const fn family(&self) -> Family {
        self.family
    }

    /// The same in a width: by name for softwood and decking, as measured for hardwood and panels.
    ///
    /// ```
    /// use scantling::{Length, Nominal, Unit};
    ///
    /// let plank: Nominal = "8/4".parse()?;
    /// let width = Length::fraction(25, 4, Unit::Inch);
    /// assert_eq!(plank.wide(width).width(), Some(width));
    /// # Ok::<(), scantling::NominalError>(())
    /// ```
    #[must_use]
    pub const fn wide(self, width: Length) -> Self {
        Self { width: Some(width), ..self }
    }

    /// The same in a length.
    ///
    /// ```
    /// use scantling::{Length, Nominal, Unit};
    ///
    /// let stud: Nominal = "2x4".parse()?;
    /// assert_eq!("2x4 - 12'".parse(), Ok(stud.long(Length::new(12, Unit::Foot))));
    /// # Ok::<(), scantling::NominalError>(())
    /// ```
    #[must_use]
    pub const fn long(self, length: Length) -> Self {
        Self { length: Some(length), ..self }
    }

    /// The same, dry or green.
    ///
    /// ```
    /// use scantling::{Nominal, Seasoning};
    ///
    /// let stud: Nominal = "2x4".parse()?;
    /// assert_eq!("2x4 green".parse(), Ok(stud.seasoned(Seasoning::Green)));
    /// # Ok::<(), scantling::NominalError>(())
    /// ```
    #[must_use]
    pub const fn seasoned(self, seasoning: Seasoning) -> Self {
        Self { seasoning: Some(seasoning), ..self }
    }

    /// The same, rough or planed.
    ///
    /// ```
    /// use scantling::{Nominal, Surface};
    ///
    /// let plank: Nominal = "8/4".parse()?;
    /// assert_eq!("8/4 S2S".parse(), Ok(plank.surfaced(Surface::TwoSides)));
    /// # Ok::<(), scantling::NominalError>(())
    /// ```
    #[must_use]
    pub const fn surfaced(self, surface: Surface) -> Self {
        Self { surface: Some(surface), ..self }
    }

    /// What it is.
    ///
    /// ```
    /// use scantling::{LumberKind, Nominal};
    ///
    /// assert_eq!("1x6".parse::<Nominal>()?.kind(), LumberKind::Board);
    /// # Ok::<(), scantling::NominalError>(())
    /// ```
    #[must_use]
    pub fn kind(&self) -> LumberKind {
        let under = |inches| self.thickness.is_some_and(|thickness| thickness < Length::new(inches, Unit::Inch));
        match self.family {
            Family::Softwood if under(2) => LumberKind::Board,
            Family::Softwood if under(5) => LumberKind::Dimension,
            Family::Softwood => LumberKind::Timber,
            Family::Decking => LumberKind::Decking,
            Family::Hardwood => LumberKind::Hardwood,
            Family::Panel if self.thickness.is_some() => LumberKind::Panel,
            Family::Panel => LumberKind::Sheet,
        }
    }

    /// The thickness by name: nominal for softwood, rough for hardwood, the performance category of a panel. `None`
    /// for a sheet of any thickness.
    ///
    /// ```
    /// use scantling::{Length, Nominal, Unit};
    ///
    /// assert_eq!("5/4x6".parse::<Nominal>()?.thickness(), Some(Length::fraction(5, 4, Unit::Inch)));
    /// # Ok::<(), scantling::NominalError>(())
    /// ```
    #[must_use]
    pub const fn thickness(&self) -> Option<Length> {
        self.thickness
    }

    /// The width, if it was said.
    ///
    /// ```
    /// use scantling::{Length, Nominal, Unit};
    ///
    /// assert_eq!("2x4".parse::<Nominal>()?.width(), Some(Length::new(4, Unit::Inch)));
    /// # Ok::<(), scantling::NominalError>(())
    /// ```
    #[must_use]
    pub const fn width(&self) -> Option<Length> {
        self.width
    }

    /// The length, if it was said.
    ///
    /// ```
    /// use scantling::{Length, Nominal, Unit};
    ///
    /// assert_eq!("2x4x92-5/8\"".parse::<Nominal>()?.length(), Some(Length::fraction(741, 8, Unit::Inch)));
    /// # Ok::<(), scantling::NominalError>(())
    /// ```
    #[must_use]
    pub const fn length(&self) -> Option<Length> {
        self.length
    }

    /// Dry or green, if it was said.
    ///
    /// ```
    /// use scantling::{Nominal, Seasoning};
    ///
    /// assert_eq!("2x4 kiln-dried".parse::<Nominal>()?.seasoning(), Some(Seasoning::Dry));
    /// # Ok::<(), scantling::NominalError>(())
    /// ```
    #[must_use]
    pub const fn seasoning(&self) -> Option<Seasoning> {
        self.seasoning
    }

    /// Rough or planed, if it was said.
    ///
    /// ```
    /// use scantling::{Nominal, Surface};
    ///
    /// assert_eq!("rough-sawn 2x6".parse::<Nominal>()?.surface(), Some(Surface::Rough));
    /// # Ok::<(), scantling::NominalError>(())
    /// ```
    #[must_use]
    pub const fn surface(&self) -> Option<Surface> {
        self.surface
    }

    fn write_lumber(&self, out: &mut impl fmt::Write) -> fmt::Result {
        let whole = |length: Length| length.in_unit(Unit::Inch).is_integer();
        let quartered = match self.family {
            Family::Decking => !self.thickness.is_some_and(whole),
            family => family == Family::Hardwood,
        };
        self.thickness.map_or(Ok(()), |thickness| write_number(thickness, quartered, out))?;
        if let Some(width) = self.width {
            let tight = whole(width) && (quartered || self.thickness.is_some_and(whole));
            out.write_str(if tight { "x" } else { " x " })?;
            write_number(width, false, out)?;
            let odd = self.family != Family::Softwood && self.length.is_none() && width > WIDEST;
            out.write_str(if odd { " wide" } else { "" })?;
        }
        let plain = [self.thickness, self.width].into_iter().flatten().all(whole);
        match self.family {
            Family::Decking => out.write_str(" decking")?,
            Family::Hardwood => out.write_str(" hardwood")?,
            // Two sizes past it would be those of a sheet.
            _ if !plain || self.thickness >= Some(WIDEST) => out.write_str(" board")?,
            _ => {}
        }
        self.length.map_or(Ok(()), |length| {
            let feet = length.in_unit(Unit::Foot);
            // Behind a thickness alone it could be a width.
            let long = if self.width.is_none() && length <= WIDEST { " long" } else { "" };
            if feet.is_integer() { write!(out, " - {feet}'") } else { write!(out, " - {length}{long}") }
        })
    }

    fn write_panel(&self, out: &mut impl fmt::Write) -> fmt::Result {
        let thickness = self.thickness.map(AsSold);
        thickness.map_or(Ok(()), |thickness| write!(out, "{thickness} ply"))?;
        let gap = if thickness.is_some() { " " } else { "" };
        let mut sides = [self.width, self.length].into_iter().flatten().map(AsSold);
        sides.next().map_or(Ok(()), |side| write!(out, "{gap}{side}"))?;
        sides.try_for_each(|side| write!(out, " x {side}"))?;
        out.write_str(if self.thickness.is_some() { "" } else { " sheet" })
    }
}

/// Inches without a mark; in quarters where the trade counts them.
fn write_number(length: Length, quartered: bool, out: &mut impl fmt::Write) -> fmt::Result {
    // Three digits over one are more likely a blank that was lost.
    let quarters = length.checked_mul(4).map(|fourfold| fourfold.in_unit(Unit::Inch));
    if let Some(quarters) = quarters.filter(|quarters| quartered && quarters.is_integer() && (4..100).contains(quarters.numer()))
    {
        return write!(out, "{quarters}/4");
    }
    let inches = length.in_unit(Unit::Inch);
    match (inches.to_integer(), inches.fract()) {
        (whole, part) if *part.numer() == 0 => write!(out, "{whole}"),
        (0, part) => write!(out, "{part}"),
        (whole, part) => write!(out, "{whole} {part}"),
    }
}

/// The name, readable back: `2x4 - 8'`, `5/4x6 decking`, `8/4 hardwood S2S`, `23/32" ply 48" x 96"`.
///
/// ```
/// let name: scantling::Nominal = "3/4 ply 4x8".parse()?;
/// assert_eq!(name.to_string(), r#"3/4" ply 48" x 96""#);
/// # Ok::<(), scantling::NominalError>(())
/// ```
impl fmt::Display for Nominal {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(self, out)
    }
}

impl Written for &Nominal {
    fn write(self, out: &mut impl fmt::Write) -> fmt::Result {
        match self.family {
            Family::Panel => self.write_panel(out)?,
            _ => self.write_lumber(out)?,
        }
        self.seasoning.map_or(Ok(()), |seasoning| write!(out, " {seasoning}"))?;
        self.surface.map_or(Ok(()), |surface| write!(out, " {surface}"))
    }
}
