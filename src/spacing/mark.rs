//! Where one member stands, exactly, and which of its edges is meant. Rounding to a tape is left to
//! `on_tape.rs`.

use core::fmt;

use crate::length::Length;
use crate::tape::Grain;

/// Which edge of a member is marked, seen from the datum.
///
/// ```
/// use scantling::{Edge, Length, Spacing, Unit};
///
/// let layout = Spacing::equal_openings(2, Length::new(13, Unit::Inch)).over(Length::new(47, Unit::Inch))?;
/// let nail = layout.mark(1).unwrap().at(Edge::Center);
/// assert_eq!(nail, Length::fraction(27, 2, Unit::Inch));
/// # Ok::<(), scantling::SpacingError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[allow(clippy::exhaustive_enums)] // there are no others
pub enum Edge {
    /// The edge nearer to the datum.
    #[default]
    Near,
    /// Midway between the edges.
    Center,
    /// The edge farther from the datum.
    Far,
}

/// The exact place of one member of a [`Layout`](crate::Layout), measured from the datum.
///
/// ```
/// use scantling::{Length, Spacing, Unit};
///
/// let layout = Spacing::equal_openings(5, Length::fraction(3, 4, Unit::Inch)).over(Length::new(72, Unit::Inch))?;
/// let second = layout.mark(2).unwrap();
/// assert_eq!(second.number(), 2);
/// assert_eq!(second.near(), Length::fraction(47, 2, Unit::Inch)); // 23 1/2 in
/// assert_eq!(second.far(), Length::fraction(97, 4, Unit::Inch)); // 24 1/4 in
/// # Ok::<(), scantling::SpacingError>(())
/// ```
#[derive(Clone, Copy)]
pub struct MemberMark {
    number: usize,
    near: i128,
    width: i128,
    grain: Grain,
}

impl MemberMark {
    /// From counts of grains; an even width, so that the center is a whole count too.
    #[inline]
    pub(super) const fn new(number: usize, near: i128, width: i128, grain: Grain) -> Self {
        Self { number, near, width, grain }
    }

    /// Which member this is, counted from 1 at the datum.
    ///
    /// ```
    /// # use scantling::{Spacing, Unit};
    /// let layout = Spacing::equal_parts(3).over(Unit::Foot.length())?;
    /// assert!(layout.marks().map(|mark| mark.number()).eq([1, 2]));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn number(&self) -> usize {
        self.number
    }

    /// The edge nearer to the datum.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Unit};
    /// let layout = Spacing::equal_parts(3).over(Unit::Foot.length())?;
    /// assert_eq!(layout.mark(1).unwrap().near(), Length::new(4, Unit::Inch));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn near(&self) -> Length {
        self.at(Edge::Near)
    }

    /// Midway between the edges.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Unit};
    /// let layout = Spacing::equal_openings(1, Length::new(3, Unit::Inch)).over(Unit::Foot.length())?;
    /// assert_eq!(layout.mark(1).unwrap().center(), Length::new(6, Unit::Inch));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn center(&self) -> Length {
        self.at(Edge::Center)
    }

    /// The edge farther from the datum.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Unit};
    /// let layout = Spacing::equal_openings(1, Length::new(2, Unit::Inch)).over(Unit::Foot.length())?;
    /// assert_eq!(layout.mark(1).unwrap().far(), Length::new(7, Unit::Inch));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn far(&self) -> Length {
        self.at(Edge::Far)
    }

    /// The edge asked for.
    ///
    /// ```
    /// # use scantling::{Edge, Spacing, Unit};
    /// let mark = Spacing::equal_parts(3).over(Unit::Foot.length())?.mark(1).unwrap();
    /// assert_eq!(mark.at(Edge::Far), mark.far());
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn at(&self, edge: Edge) -> Length {
        self.grain.length(self.near + edge.shift(self.width))
    }
}

impl Edge {
    /// How far this edge of a member lies from its near one.
    pub(super) const fn shift(self, width: i128) -> i128 {
        match self {
            Self::Near => 0,
            Self::Center => width / 2,
            Self::Far => width,
        }
    }
}

/// Marks are equal when they have the same number and the same edges.
impl PartialEq for MemberMark {
    fn eq(&self, other: &Self) -> bool {
        self.number == other.number && self.near() == other.near() && self.far() == other.far()
    }
}

impl Eq for MemberMark {}

impl fmt::Debug for MemberMark {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "MemberMark {{ number: {}, near: {:?}, far: {:?} }}", self.number, self.near(), self.far())
    }
}
