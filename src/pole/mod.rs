//! Story poles: the whole layout of a job on one stick, every mark from one datum, so that both sides of a case, its
//! frame, its doors and its back agree without being measured twice.
//!
//! | file | what it holds |
//! | --- | --- |
//! | `mark.rs`, `side.rs`, `row.rs` | a mark, the side of the line its part lies on, a face of the stick |
//! | `datum.rs`, `hand.rs` | the end that is measured from; which of two mirror images |
//! | `change.rs`, `merge.rs`, `stick.rs` | other poles made of a pole |
//! | `check.rs`, `finding.rs` | what is odd about a pole, found before wood is cut |
//! | `list.rs`, `drawing.rs`, `figure.rs`, `label.rs` | a pole as text and in characters |
//! | `picture/`, `svg.rs`, `pdf/` | a pole in true size |
//!
//! Positions are exact here; the tape comes in where a pole is shown or checked.

use alloc::string::String;
use alloc::vec::Vec;

use crate::length::Length;

mod change;
mod check;
mod datum;
mod drawing;
mod error;
pub(crate) mod figure;
mod finding;
mod hand;
pub(crate) mod label;
mod list;
mod mark;
mod merge;
#[cfg(feature = "pdf")]
mod pdf;
#[cfg(any(feature = "svg", feature = "pdf"))]
mod picture;
mod row;
mod side;
mod stick;
#[cfg(feature = "svg")]
mod svg;

pub use datum::Datum;
pub use drawing::PoleDrawing;
pub use error::PoleError;
pub use finding::Finding;
pub use hand::Hand;
pub use list::PoleList;
pub use mark::Mark;
#[cfg(feature = "pdf")]
pub use picture::page::Paper;
pub use row::Row;
pub use side::PartSide;

/// A stick with every mark of a job on it, from one datum.
///
/// | to | write |
/// | --- | --- |
/// | make one by hand | [`new`](Self::new), [`row`](Self::row), [`Mark`] |
/// | take a row from a layout, or from sizes on a drawing | [`with`](Self::with), [`Row::try_from_layout`], [`Row::try_from_parts`] |
/// | read one off a real stick | [`Mark::try_from_reading`] |
/// | say which end is the datum, and which hand it is for | [`measured_from`](Self::measured_from), [`for_hand`](Self::for_hand) |
/// | read it from the other end | [`flipped`](Self::flipped) |
/// | make its mirror image, or both | [`mirrored`](Self::mirrored), [`pair`](Self::pair) |
/// | add a base below, or take one away | [`try_shifted`](Self::try_shifted) |
/// | keep some rows | [`only`](Self::only) |
/// | lay several on one stick | [`merged`](Self::merged) |
/// | cut it to sticks that slide on each other | [`sticks`](Self::sticks) |
/// | find mistakes before wood is cut | [`check`](Self::check), [`Finding`] |
/// | show it | [`listed`](Self::listed), [`drawing`](Self::drawing), and with features `svg` and `pdf` pictures in true size |
///
/// ```
/// use scantling::{Length, Mark, PartSide, StoryPole, Tape, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let shelf = |place, name| Mark::new(place, name, PartSide::Past).thick(inches(3, 4));
/// let pole = StoryPole::new("ware case", inches(72, 1))
///     .row("side", [shelf(inches(16, 1), "lower shelf"), shelf(inches(72, 5), "crock shelf")])?;
///
/// // Two shelves cannot be where these two are.
/// let findings = pole.check(&Tape::sixteenths());
/// assert_eq!(findings.len(), 0);
/// assert_eq!(pole.flipped().rows()[0].marks()[0].position, inches(56, 1));
/// # Ok::<(), scantling::PoleError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct StoryPole {
    name: String,
    length: Length,
    datum: Datum,
    hand: Option<Hand>,
    rows: Vec<Row>,
}

impl StoryPole {
    /// A pole without a mark, measured up from its bottom.
    ///
    /// The length must be above zero: [`row`](Self::row) refuses what is not.
    ///
    /// ```
    /// use scantling::{Datum, Length, StoryPole, Unit};
    ///
    /// let pole = StoryPole::new("ware case", Length::new(72, Unit::Inch));
    /// assert_eq!((pole.name(), pole.datum(), pole.hand()), ("ware case", Datum::Bottom, None));
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, length: Length) -> Self {
        Self { name: name.into(), length, datum: Datum::Bottom, hand: None, rows: Vec::new() }
    }

    /// The same pole with its datum at this end. The numbers stay: to read them from the other end, use
    /// [`flipped`](Self::flipped).
    ///
    /// ```
    /// use scantling::{Datum, StoryPole, Unit};
    ///
    /// let wall = StoryPole::new("north wall", Unit::Yard.length()).measured_from(Datum::Left);
    /// assert_eq!(wall.datum(), Datum::Left);
    /// ```
    #[must_use]
    pub fn measured_from(self, datum: Datum) -> Self {
        Self { datum, ..self }
    }

    /// The same pole under another name.
    ///
    /// ```
    /// use scantling::{StoryPole, Unit};
    ///
    /// assert_eq!(StoryPole::new("wall", Unit::Yard.length()).named("north wall").name(), "north wall");
    /// ```
    #[must_use]
    pub fn named(self, name: impl Into<String>) -> Self {
        Self { name: name.into(), ..self }
    }

    /// The same pole for parts of one hand.
    ///
    /// ```
    /// use scantling::{Hand, StoryPole, Unit};
    ///
    /// assert_eq!(StoryPole::new("side", Unit::Yard.length()).for_hand(Hand::Left).hand(), Some(Hand::Left));
    /// ```
    #[must_use]
    pub fn for_hand(self, hand: Hand) -> Self {
        Self { hand: Some(hand), ..self }
    }

    /// The same pole with another row of marks, in any order.
    ///
    /// ```
    /// use scantling::{Length, Mark, PartSide, StoryPole, Unit};
    ///
    /// let sill = Mark::new(Length::new(36, Unit::Inch), "window sill", PartSide::Past);
    /// let pole = StoryPole::new("north wall", Length::new(96, Unit::Inch)).row("openings", [sill])?;
    /// assert_eq!(pole.rows().len(), 1);
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`PoleError::RowTwice`], [`PoleError::NoLength`], [`PoleError::NegativeThickness`], [`PoleError::ThickLine`],
    /// [`PoleError::ClosesBackward`], and [`PoleError::OutOfRange`] for an edge that cannot be held as seen from either
    /// end.
    pub fn row(self, name: impl Into<String>, marks: impl IntoIterator<Item = Mark>) -> Result<Self, PoleError> {
        self.with(Row::new(name, marks))
    }

    /// The same pole with another row.
    ///
    /// ```
    /// use scantling::{Edge, Length, Row, Spacing, StoryPole, Unit};
    ///
    /// let height = Length::new(72, Unit::Inch);
    /// let shelves = Spacing::equal_openings(4, Length::fraction(3, 4, Unit::Inch)).over(height)?;
    /// let pole = StoryPole::new("ware case", height).with(Row::try_from_layout("side", "shelf", &shelves, Edge::Near)?)?;
    /// assert_eq!(pole.rows()[0].marks().len(), 4);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Those of [`row`](Self::row).
    pub fn with(mut self, row: Row) -> Result<Self, PoleError> {
        self.has_length()?;
        row.held(self.length)?;
        if self.rows.iter().any(|other| other.name == row.name) {
            return Err(PoleError::RowTwice { row: label::name(&row.name) });
        }
        self.rows.push(row);
        Ok(self)
    }

    /// What the pole is for.
    ///
    /// ```
    /// # use scantling::{StoryPole, Unit};
    /// assert_eq!(StoryPole::new("north wall", Unit::Yard.length()).name(), "north wall");
    /// ```
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// How long the stick is.
    ///
    /// ```
    /// # use scantling::{StoryPole, Unit};
    /// assert_eq!(StoryPole::new("north wall", Unit::Yard.length()).length(), Unit::Yard.length());
    /// ```
    #[must_use]
    pub const fn length(&self) -> Length {
        self.length
    }

    /// The end that is measured from.
    ///
    /// ```
    /// # use scantling::{Datum, StoryPole, Unit};
    /// assert_eq!(StoryPole::new("north wall", Unit::Yard.length()).datum(), Datum::Bottom);
    /// ```
    #[must_use]
    pub const fn datum(&self) -> Datum {
        self.datum
    }

    /// Which of two mirror images it is for, if there are two.
    ///
    /// ```
    /// # use scantling::{StoryPole, Unit};
    /// assert_eq!(StoryPole::new("north wall", Unit::Yard.length()).hand(), None);
    /// ```
    #[must_use]
    pub const fn hand(&self) -> Option<Hand> {
        self.hand
    }

    /// Its rows, in the order they were added.
    ///
    /// ```
    /// # use scantling::{StoryPole, Unit};
    /// assert!(StoryPole::new("north wall", Unit::Yard.length()).rows().is_empty());
    /// ```
    #[must_use]
    pub fn rows(&self) -> &[Row] {
        &self.rows
    }

    fn has_length(&self) -> Result<(), PoleError> {
        let length = self.length;
        if length.is_zero() || length.is_negative() { Err(PoleError::NoLength { length }) } else { Ok(()) }
    }

    /// The same without its rows.
    fn bare(&self) -> Self {
        Self { name: self.name.clone(), rows: Vec::new(), ..*self }
    }
}
