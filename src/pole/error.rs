//! Why a pole cannot be made, changed or drawn. What is merely odd about one is left to `finding.rs`.

use alloc::string::String;

use thiserror::Error;

use super::label::name;
use super::{Datum, Hand};
use crate::length::Length;
use crate::tape::TapeError;

/// Why a story pole cannot be made, changed or drawn.
///
/// Names in it are as they can be shown: on one line, and shortened.
///
/// ```
/// use scantling::{Length, Mark, PartSide, StoryPole, Unit};
///
/// let pole = StoryPole::new("ware case", Length::new(72, Unit::Inch));
/// let shelf = Mark::new(Length::new(14, Unit::Inch), "shelf", PartSide::Past).thick(Length::fraction(-3, 4, Unit::Inch));
/// let refused = pole.row("front", [shelf]).unwrap_err();
/// assert_eq!(refused.to_string(), r#"shelf cannot be -3/4" thick: it must not be below zero"#);
/// ```
#[derive(Clone, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum PoleError {
    /// A pole of no length, or of less.
    #[error("a pole cannot be {length} long: it must be above zero")]
    NoLength {
        /// The length that was given.
        length: Length,
    },
    /// A part thinner than nothing.
    #[error("{mark} cannot be {thickness} thick: it must not be below zero")]
    NegativeThickness {
        /// The mark of the part.
        mark: String,
        /// The thickness that was given.
        thickness: Length,
    },
    /// A line without a part that yet has a thickness.
    #[error("{mark} is a line alone, and cannot be {thickness} thick: say on which side of it the part lies")]
    ThickLine {
        /// The mark.
        mark: String,
        /// The thickness that was given.
        thickness: Length,
    },
    /// Two rows of one name.
    #[error("the pole has a row {row} already: each row has a name of its own")]
    RowTwice {
        /// The name.
        row: String,
    },
    /// A row that is asked for and is not there.
    #[error("the pole has no row {row}")]
    NoSuchRow {
        /// The name.
        row: String,
    },
    /// A row that is to close before it begins.
    #[error("row {row} cannot close from {from} to {to}: it must end past where it begins")]
    ClosesBackward {
        /// The row.
        row: String,
        /// Where it is to begin.
        from: Length,
        /// Where it is to end.
        to: Length,
    },
    /// Poles measured from different ends, which cannot be laid on each other.
    #[error("one pole is measured from the {one}, the other from the {other}: flip one of them first")]
    DatumsDiffer {
        /// The datum of the first.
        one: Datum,
        /// The datum of the other.
        other: Datum,
    },
    /// Poles of different hands, which are mirror images.
    #[error("one pole is for the {one} hand, the other for the {other}: mirror one of them first")]
    HandsDiffer {
        /// The hand of the first.
        one: Hand,
        /// The hand of the other.
        other: Hand,
    },
    /// No pole to make one of.
    #[error("there is no pole to merge")]
    NothingToMerge,
    /// Sticks that would not get on, or that would not overlap.
    #[error("sticks of {stick} cannot overlap by {overlap}: the overlap must be above zero and shorter than the stick")]
    NoAdvance {
        /// How long the sticks are.
        stick: Length,
        /// By how much they were to overlap.
        overlap: Length,
    },
    /// More sticks, marks or pages than anybody handles.
    #[error("that makes {count} {what}: at most {most}")]
    TooMany {
        /// How many there would be.
        count: u128,
        /// What is counted.
        what: &'static str,
        /// How many there may be.
        most: u128,
    },
    /// A mark that cannot be held, as seen from one end of the stick or the other.
    #[error("{mark} is out of range: farther, or more finely divided, than a length can hold")]
    OutOfRange {
        /// The mark, or the pole.
        mark: String,
    },
    /// The tape cannot mark the pole.
    #[error(transparent)]
    Tape(#[from] TapeError),
    /// A pole too long to be drawn in true size.
    #[error("a pole {length} long is too long to draw in true size: at most {most}")]
    TooLongToDraw {
        /// The pole.
        length: Length,
        /// The longest that is drawn.
        most: Length,
    },
    /// A roll with no room for one row, or one that no printer takes.
    #[error("a roll {width} wide cannot take the pole: {least} at least, {most} at most")]
    RollWidth {
        /// The width that was given.
        width: Length,
        /// The narrowest roll that takes one row and the scale check.
        least: Length,
        /// The widest.
        most: Length,
    },
}

impl PoleError {
    pub(super) fn out_of_range(mark: &str) -> Self {
        Self::OutOfRange { mark: name(mark) }
    }
}
