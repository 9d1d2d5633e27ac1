//! One part as it is cut from a board: what it is, and where it lies.

use super::pieces::Piece;
use crate::length::Length;

/// A part, or a piece of one, where it lies on a board.
///
/// There are two ways to mark it. Hook the tape at the near end of the board, leave it there, and mark every part at
/// [`far`](Self::far); each kerf is then cut behind its mark, away from the near end. Or cut, hook the tape at the fresh end, and
/// mark the next part at its [`length`](Self::length).
///
/// ```
/// use scantling::{Cutting, Length, Part, Stock, Unit};
///
/// let foot = Unit::Foot.length();
/// let kerf = Length::fraction(1, 8, Unit::Inch);
/// let plan = Cutting::new().kerf(kerf).part(Part::new("cleat", foot, 2)).stock(Stock::new("yard", 3 * foot)).plan()?;
/// let second = &plan.boards()[0].cuts()[1];
/// assert_eq!((second.near(), second.far(), second.length()), (foot + kerf, 2 * foot + kerf, foot));
/// # Ok::<(), scantling::CuttingError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Cut {
    part: usize,
    piece: Option<(u64, u64)>,
    length: Length,
    near: Length,
    far: Length,
}

impl Cut {
    /// `None` where the far end is out of range.
    pub(super) fn new(piece: &Piece, near: Length) -> Option<Self> {
        let far = near.checked_add(piece.length)?;
        Some(Self { part: piece.part, piece: piece.of, length: piece.length, near, far })
    }

    /// Which part of the cutting it is, counted from zero. [`Plan::part`](crate::Plan::part) has the part itself.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 1)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.boards()[0].cuts()[0].part(), 0);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn part(&self) -> usize {
        self.part
    }

    /// Which piece of how many, for a part that is joined; counted from one.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 1)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.boards()[0].cuts()[0].piece(), None);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn piece(&self) -> Option<(u64, u64)> {
        self.piece
    }

    /// How long it is: the mark from a fresh end.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 1)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.boards()[0].cuts()[0].length(), Unit::Foot.length());
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn length(&self) -> Length {
        self.length
    }

    /// Where it begins, from the near end of the board.
    ///
    /// ```
    /// use scantling::{Cutting, Length, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 1)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.boards()[0].cuts()[0].near(), Length::ZERO);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn near(&self) -> Length {
        self.near
    }

    /// Where it ends, from the near end of the board: the mark with the tape left where it is.
    ///
    /// ```
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let plan = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 1)).stock(Stock::new("yard", Unit::Yard.length())).plan()?;
    /// assert_eq!(plan.boards()[0].cuts()[0].far(), Unit::Foot.length());
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    #[must_use]
    pub const fn far(&self) -> Length {
        self.far
    }
}
