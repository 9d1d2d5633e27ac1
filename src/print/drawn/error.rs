//! What can go wrong when a tape is to be drawn: a reading that is none of its own, lines past all reckoning.

#[cfg(feature = "svg")]
use num_rational::Ratio;
use thiserror::Error;

use crate::length::Length;

/// Why a stretch of tape cannot be drawn.
///
/// ```
/// use scantling::{DrawingError, Length, Tape, TapeDrawing, Unit};
///
/// let reading = Tape::thirty_seconds().read(Length::fraction(1, 32, Unit::Inch))?;
/// let error = TapeDrawing::new(&Tape::sixteenths(), &reading).unwrap_err();
/// assert_eq!(error.to_string(), r#"1/32" lies on no line of a tape with a line every 1/16""#);
/// # Ok::<(), scantling::TapeError>(())
/// ```
#[derive(Clone, Copy, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum DrawingError {
    /// The reading was taken on another tape: it lies between two graduations of this one.
    #[error("{shown} lies on no line of a tape with a line every {step}")]
    BetweenLines {
        /// What the reading shows.
        shown: Length,
        /// The graduation of the tape.
        step: Length,
    },
    /// The reading was taken on another tape: this one does not reach so far.
    #[error("{shown} is not on a tape that goes from 0\" to {length}")]
    OffTape {
        /// What the reading shows.
        shown: Length,
        /// The longest reading of the tape.
        length: Length,
    },
    /// The lines around the reading are too many or too far out to be counted.
    #[error("the tape around {shown}, with a line every {step}, cannot be drawn: its lines are out of range")]
    OutOfRange {
        /// What the reading shows.
        shown: Length,
        /// The graduation of the tape.
        step: Length,
    },
    /// A scale that is zero, negative or has no value.
    #[cfg(feature = "svg")]
    #[error("cannot draw a tape at a scale of {scale}: it must be above zero")]
    NotAScale {
        /// The scale that was asked for.
        scale: Ratio<i128>,
    },
}
