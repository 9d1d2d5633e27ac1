//! Why a run cannot be divided as asked. Every refusal carries the lengths that a person at the bench
//! would check next.

use core::fmt;

use thiserror::Error;

use crate::length::Length;

/// Why a spacing does not go over a run.
///
/// ```
/// use scantling::{Length, Spacing, SpacingError, Unit};
///
/// let shelf = Length::fraction(3, 4, Unit::Inch);
/// let run = Length::new(3, Unit::Inch);
/// let refused = Spacing::equal_openings(5, shelf).over(run).unwrap_err();
/// assert_eq!(refused, SpacingError::DoesNotFit { members: 5, need: 5 * shelf, run, short: 5 * shelf - run });
/// ```
#[derive(Clone, Copy, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum SpacingError {
    /// A run below zero.
    #[error("a run cannot be {run} long: it must not be below zero")]
    NegativeRun {
        /// The run that was given.
        run: Length,
    },
    /// A member thinner than nothing.
    #[error("a member cannot be {thickness} thick: it must not be below zero")]
    NegativeThickness {
        /// The thickness that was given.
        thickness: Length,
    },
    /// An end margin below zero, that is a member past the end of the run.
    #[error("a margin cannot be {margin}: the member would lie past the end of the run")]
    NegativeMargin {
        /// The margin that was given.
        margin: Length,
    },
    /// A run divided into no parts at all.
    #[error("a run cannot be divided into zero parts")]
    ZeroParts,
    /// Members and margins alone are longer than the run.
    #[error("{} {need}; the run is {run}: {short} short", Needs(*.members))]
    DoesNotFit {
        /// How many members there are.
        members: usize,
        /// What the members and every gap of fixed size take up.
        need: Length,
        /// The run they have to fit in.
        run: Length,
        /// How much longer the run would have to be.
        short: Length,
    },
    /// The run is not filled, and every gap is of fixed size: flush at both ends with no second
    /// member, or a margin at both ends of one.
    #[error("{} {need}; the run is {run}, and no gap is free to take the {left} left over", Needs(*.members))]
    NothingToShare {
        /// How many members there are.
        members: usize,
        /// What the members and every gap of fixed size take up.
        need: Length,
        /// The run they should fill.
        run: Length,
        /// What they leave over.
        left: Length,
    },
    /// A gap that grows or shrinks along the run has come out below zero.
    #[error("a gap comes out at {gap} in a run of {run}: it must not be below zero")]
    NegativeGap {
        /// The gap.
        gap: Length,
        /// The run.
        run: Length,
    },
    /// The exact positions are too long, or too finely divided, to be held, or the members too many to be counted.
    #[error("the exact layout of a run of {run} is out of range: longer, or more finely divided, than a length can hold")]
    OutOfRange {
        /// The run.
        run: Length,
    },
    /// A slice with fewer places than there are marks.
    #[error("{members} marks do not fit in {places} places")]
    TooFewPlaces {
        /// How many marks there are.
        members: usize,
        /// How many places the slice has.
        places: usize,
    },
}

/// The subject of a refusal: what needs the room.
struct Needs(usize);

impl fmt::Display for Needs {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.0 {
            1 => out.write_str("1 member, with any fixed gaps, needs"),
            members => write!(out, "{members} members, with any fixed gaps, need"),
        }
    }
}
