//! What can go wrong with a tape: a graduation that is none, a mark that is not on it.

use thiserror::Error;

use crate::length::Length;

/// Why a tape could not be made, or a position not be read on it.
///
/// ```
/// use scantling::{Length, Tape, TapeError, Unit};
///
/// let length = Length::new(16, Unit::Foot);
/// let shown = Length::new(200, Unit::Inch);
/// assert_eq!(Tape::sixteenths().length(length).read(shown), Err(TapeError::PastEnd { shown, length }));
/// ```
#[derive(Clone, Copy, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum TapeError {
    /// A graduation that is zero or negative.
    #[error("a tape cannot have a graduation every {step}: it must be above zero")]
    NotAStep {
        /// The step that was given.
        step: Length,
    },
    /// The graduation lies past the end of the tape.
    #[error("the mark would read {shown}, past the end of the tape at {length}")]
    PastEnd {
        /// What the tape would have to show.
        shown: Length,
        /// The longest reading it has.
        length: Length,
    },
    /// The graduation lies below the zero of the tape.
    #[error("the mark would read {shown}, below the zero of the tape")]
    BelowZero {
        /// What the tape would have to show.
        shown: Length,
    },
    /// The reading is too long, or too finely divided, to be held.
    #[error("the reading of {position} is out of range: longer, or more finely divided, than a length can hold")]
    OutOfRange {
        /// The position that was to be read, from the datum.
        position: Length,
    },
}
