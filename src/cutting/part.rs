//! What is wanted: parts of one length, with a name.

use alloc::string::String;

use crate::length::Length;

/// Parts of one length to be cut.
///
/// ```
/// use scantling::{Length, Part, Unit};
///
/// let rail = Part::new("rail", Length::fraction(75, 2, Unit::Inch), 4);
/// assert_eq!((rail.name.as_str(), rail.count, rail.may_be_joined), ("rail", 4, false));
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct Part {
    /// What it is called; need not be unique.
    pub name: String,
    /// How long it is.
    pub length: Length,
    /// How many are wanted.
    pub count: u64,
    /// Whether it may be made of several pieces, end to end, where no board is long enough.
    pub may_be_joined: bool,
}

impl Part {
    /// So many parts, each in one piece.
    ///
    /// ```
    /// use scantling::{Part, Unit};
    ///
    /// assert!(!Part::new("stile", Unit::Yard.length(), 2).may_be_joined);
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, length: Length, count: u64) -> Self {
        Self { name: name.into(), length, count, may_be_joined: false }
    }

    /// The same, of several pieces where no board is long enough: molding along a wall, a long cleat.
    ///
    /// What fits on a board is never joined. What does not is made of as few pieces as go, all as long as the longest board
    /// gives but the last.
    ///
    /// ```
    /// use scantling::{Cutting, Length, Part, Stock, Unit};
    ///
    /// let base = Part::new("baseboard", Length::new(20, Unit::Foot), 1).joined();
    /// let plan = Cutting::new().part(base).stock(Stock::new("12 ft", Length::new(12, Unit::Foot))).plan()?;
    /// let pieces: Vec<_> = plan.boards().iter().flat_map(|board| board.cuts()).map(|cut| (cut.piece(), cut.length())).collect();
    /// assert_eq!(pieces, [(Some((1, 2)), Length::new(12, Unit::Foot)), (Some((2, 2)), Length::new(8, Unit::Foot))]);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub fn joined(self) -> Self {
        Self { may_be_joined: true, ..self }
    }
}
