//! Why a question of geometry has no answer. Every refusal carries the figures that a person at the bench
//! would check next.

use thiserror::Error;

use super::{Angle, Triple};
use crate::length::Length;

/// Why a figure could not be worked out.
///
/// ```
/// use scantling::{GeometryError, Length, Unit, slanted_rule};
///
/// let (width, reading) = (Length::fraction(31, 4, Unit::Inch), Length::new(6, Unit::Inch));
/// assert_eq!(slanted_rule(width, 4, reading), Err(GeometryError::RuleTooShort { reading, width }));
/// ```
#[derive(Clone, Copy, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum GeometryError {
    /// A measure that is zero or negative.
    #[error("{what} cannot be {given}: it must be above zero")]
    NotAboveZero {
        /// What was measured, with its article: `a side`, `a stock width`.
        what: &'static str,
        /// The length that was given.
        given: Length,
    },
    /// A measure that is negative.
    #[error("{what} cannot be {given}: it must not be below zero")]
    BelowZero {
        /// What was measured, with its article: `a rabbet`, `an allowance`.
        what: &'static str,
        /// The length that was given.
        given: Length,
    },
    /// Rounding to a step that is zero or negative.
    #[error("cannot round to a graduation of {step}: it must be above zero")]
    NotAStep {
        /// The step that was given.
        step: Length,
    },
    /// Two diagonals that no frame with such a side has.
    #[error("diagonals of {long} and {short} do not go with a side of {side}: measure again")]
    NoSuchFrame {
        /// The longer diagonal.
        long: Length,
        /// The shorter diagonal.
        short: Length,
        /// The side.
        side: Length,
    },
    /// Three numbers that do not make a square corner.
    #[error("{short}-{long}-{across} does not make a square corner: {short} squared and {long} squared are not {across} squared")]
    NotATriple {
        /// The first leg.
        short: u32,
        /// The second leg.
        long: u32,
        /// The side across.
        across: u32,
    },
    /// Not even the least corner fits in the room there is.
    #[error("{triple} in units of {unit} does not fit in {first} by {second}, either way round")]
    OutOfReach {
        /// The three numbers of the corner.
        triple: Triple,
        /// The unit they are taken of.
        unit: Length,
        /// The reach along the first side.
        first: Length,
        /// The reach along the second side.
        second: Length,
    },
    /// A polygon with fewer than three sides.
    #[error("a frame of {sides} sides does not close: it needs 3 at least")]
    TooFewSides {
        /// How many sides were asked for.
        sides: u32,
    },
    /// A miter setting below zero or not below 90 degrees.
    #[error("a miter cannot be set to {setting}: it goes from 0°, a square cut, to less than 90°")]
    NotAMiter {
        /// The setting, from a square cut.
        setting: Angle,
    },
    /// The rabbet is as wide as the stock, or wider.
    #[error("a rabbet of {rabbet} leaves nothing of stock {width} wide")]
    RabbetTooDeep {
        /// The rabbet.
        rabbet: Length,
        /// The stock width.
        width: Length,
    },
    /// The two miters of a piece meet before its inner edge.
    #[error("a side of {side} has no inner edge {depth} further in: mitered at {setting}, its ends meet before")]
    NothingLeft {
        /// The side that is known.
        side: Length,
        /// How far inside of it the inner edge would lie.
        depth: Length,
        /// The miter setting.
        setting: Angle,
    },
    /// The true length is nearer to the place where the rounding changes than its bound tells.
    #[error("what follows from {length} lies too near to the middle or the end of a graduation of {step} to say which is right")]
    TooCloseToCall {
        /// The length it was worked out from.
        length: Length,
        /// The step that was rounded to.
        step: Length,
    },
    /// A board divided into no strips at all.
    #[error("a board cannot be divided into zero strips")]
    ZeroStrips,
    /// The rule does not reach from edge to edge.
    #[error("a rule that reads {reading} does not reach across a board {width} wide")]
    RuleTooShort {
        /// The reading, or the length of the rule.
        reading: Length,
        /// The width of the board.
        width: Length,
    },
    /// The rule reaches across, but not as far as the next reading that divides into whole units.
    #[error("the least reading that divides as asked across {width} is {reading}, past the end of a rule {rule} long")]
    NoReading {
        /// The least reading that divides as asked.
        reading: Length,
        /// The length of the rule.
        rule: Length,
        /// The width of the board.
        width: Length,
    },
    /// A reading short of the line that is held at the start of the piece.
    #[error("the tape shows {shown}, short of the {line} that it is read from")]
    ShortOfTheLine {
        /// What the tape shows.
        shown: Length,
        /// What it shows where the piece starts.
        line: Length,
    },
    /// Two equal measures that overlap by more than either of them.
    #[error("measures of {measure} from both ends cannot overlap by {overlap}: each would start past the other end")]
    OverlapTooLong {
        /// What was measured from each end.
        measure: Length,
        /// How far the two overlap.
        overlap: Length,
    },
    /// The exact answer, or a figure on the way to it, cannot be held.
    #[error("what follows from {length} is out of range: longer, or more finely divided, than a length can hold")]
    OutOfRange {
        /// A length it was to be worked out from.
        length: Length,
    },
}

/// Refuses a measure that is zero or below.
pub(crate) fn above_zero(what: &'static str, given: Length) -> Result<Length, GeometryError> {
    if given > Length::ZERO { Ok(given) } else { Err(GeometryError::NotAboveZero { what, given }) }
}

/// Refuses a measure below zero.
pub(crate) fn not_below_zero(what: &'static str, given: Length) -> Result<Length, GeometryError> {
    if given.is_negative() { Err(GeometryError::BelowZero { what, given }) } else { Ok(given) }
}

impl GeometryError {
    /// For `ok_or_else` behind checked arithmetic.
    pub(super) const fn out_of_range(length: Length) -> impl Fn() -> Self {
        move || Self::OutOfRange { length }
    }
}
