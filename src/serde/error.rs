//! Why a value was not taken in, or a number not written, where it is neither the text nor the format that is
//! to blame. It reaches the caller as the message of the format's own error.

use thiserror::Error;

use crate::length::Length;
use crate::tape::Lean;

#[derive(Clone, Copy, Debug, Error)]
pub(super) enum Refusal {
    #[error("{num}/0 {unit} has a zero denominator, and so no value")]
    ZeroDenominator { num: i128, unit: &'static str },
    #[error("{num}/{den} {unit} is not in lowest terms")]
    NotReduced { num: i128, den: u128, unit: &'static str },
    #[error("{num}/{den} {unit} is out of range: more, or more finely divided, than can be held")]
    OutOfRange { num: i128, den: u128, unit: &'static str },
    #[error("a reading has a mark at {mark} and a leftover of {leftover}, which do not make its true position of {position}")]
    Apart { mark: Length, leftover: Length, position: Length },
    #[error("a reading that shows {shown} at {mark} is of a tape with an offset that cannot be held")]
    Offset { mark: Length, shown: Length },
    #[error("a reading with a leftover of {leftover} is {is}, not {lean}")]
    Lean { leftover: Length, is: Lean, lean: Lean },
    #[error("a size has two lengths along its {axis}")]
    AxisTwice { axis: &'static str },
    #[error("a nominal length of {nominal} does not lie within its limits, {least} and {most}")]
    Limits { nominal: Length, least: Length, most: Length },
    #[error("a called length has steps or a length that was said, not both or neither")]
    Amount,
    #[error("a length called on its mark has no step, and no length that was said")]
    OnTheMark,
    #[error("a length called {side} its mark has a step or more, or a length that is not below zero")]
    OffTheMark { side: &'static str },
    #[error("a piece of {stock} lacks a size that its name has")]
    Nominal { stock: &'static str },
    #[error("{what}: `{kind}` has measures of its own: one of them is missing, or there is one that it does not have")]
    Kind { what: &'static str, kind: &'static str },
    #[error("an end with a margin has a length, and no other end has one")]
    Margin,
    #[error("{length} does not come out even in {unit}: a plain number never rounds, so round it first, or store it as text")]
    Uneven { length: Length, unit: &'static str },
    #[error("{length} has more digits in {unit} than a plain number keeps, which is 15: round it first, or store it as text")]
    ManyDigits { length: Length, unit: &'static str },
    #[error("no length holds this number of {unit}: it is longer, or more finely divided")]
    NumberOutOfRange { unit: &'static str },
}
