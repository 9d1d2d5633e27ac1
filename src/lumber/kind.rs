//! What a piece of stock is, how it was seasoned and how it was surfaced: the three things beside its size that
//! decide what it measures. What they come to is left to the tables.

use core::fmt;

/// What a name stands for. The American Softwood Lumber Standard (PS 20) sorts softwood by its thickness.
///
/// ```
/// use scantling::{LumberKind, Nominal};
///
/// let kind = |name: &str| name.parse::<Nominal>().map(|nominal| nominal.kind());
/// assert_eq!(kind("1x6"), Ok(LumberKind::Board));
/// assert_eq!(kind("2x4"), Ok(LumberKind::Dimension));
/// assert_eq!(kind("6x8"), Ok(LumberKind::Timber));
/// assert_eq!(kind("5/4x6"), Ok(LumberKind::Decking));
/// assert_eq!(kind("8/4"), Ok(LumberKind::Hardwood));
/// assert_eq!(kind("23/32"), Ok(LumberKind::Panel));
/// assert_eq!(kind("49 x 97"), Ok(LumberKind::Sheet));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum LumberKind {
    /// Softwood less than 2 in thick by name.
    Board,
    /// Softwood of 2 in and over, less than 5 in thick by name.
    Dimension,
    /// Softwood of 5 in and over both ways by name.
    Timber,
    /// Deck boards, named in quarters of an inch: five quarters by 6.
    Decking,
    /// Hardwood, sold rough in quarters of an inch, in any width.
    Hardwood,
    /// Plywood and other structural panels, by performance category.
    Panel,
    /// A sheet whose thickness was not said.
    Sheet,
}

impl LumberKind {
    /// Every kind, in the order of the definition.
    pub const ALL: [Self; 7] =
        [Self::Board, Self::Dimension, Self::Timber, Self::Decking, Self::Hardwood, Self::Panel, Self::Sheet];
}

/// In a few words: `dimension lumber`.
///
/// ```
/// assert_eq!(scantling::LumberKind::Dimension.to_string(), "dimension lumber");
/// ```
impl fmt::Display for LumberKind {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.pad(match self {
            Self::Board => "softwood board",
            Self::Dimension => "dimension lumber",
            Self::Timber => "timber",
            Self::Decking => "decking",
            Self::Hardwood => "hardwood",
            Self::Panel => "panel",
            Self::Sheet => "sheet",
        })
    }
}

/// How dry the wood was when it was cut to size.
///
/// ```
/// use scantling::{Catalog, Length, Nominal, Seasoning, Unit};
///
/// let joist: Nominal = "2x8".parse()?;
/// let green = Catalog::new().actual(&joist.seasoned(Seasoning::Green))?;
/// assert_eq!(green.width(), Some(Length::fraction(15, 2, Unit::Inch)));
/// # Ok::<(), scantling::LumberError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(clippy::exhaustive_enums)] // there are no others
pub enum Seasoning {
    /// Dry: a moisture content of 19 % or less, as PS 20 has it (from memory).
    Dry,
    /// Green: cut to a larger size, for it will shrink.
    Green,
}

/// `dry` or `green`.
///
/// ```
/// assert_eq!(scantling::Seasoning::Green.to_string(), "green");
/// ```
impl fmt::Display for Seasoning {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.pad(match self {
            Self::Dry => "dry",
            Self::Green => "green",
        })
    }
}

/// Which faces were planed.
///
/// ```
/// use scantling::{Catalog, Length, Nominal, Surface, Unit};
///
/// let plank: Nominal = "8/4 hardwood".parse()?;
/// let planed = Catalog::new().actual(&plank.surfaced(Surface::TwoSides))?;
/// assert_eq!(planed.thickness(), Some(Length::fraction(7, 4, Unit::Inch)));
/// # Ok::<(), scantling::LumberError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Surface {
    /// None: as it comes from the saw.
    Rough,
    /// One side, S1S.
    OneSide,
    /// Two sides, S2S.
    TwoSides,
    /// Four sides, S4S: softwood as it is sold.
    FourSides,
}

/// As the trade writes it: `rough`, `S1S`, `S2S`, `S4S`.
///
/// ```
/// assert_eq!(scantling::Surface::TwoSides.to_string(), "S2S");
/// ```
impl fmt::Display for Surface {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.pad(match self {
            Self::Rough => "rough",
            Self::OneSide => "S1S",
            Self::TwoSides => "S2S",
            Self::FourSides => "S4S",
        })
    }
}
