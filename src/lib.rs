//! Exact shop measurement: from typed sizes to marks on a tape.
#![no_std]

extern crate alloc;
#[cfg(test)]
extern crate std;

// The folders in the order of the data: text → exact length → layout → tape marks → text.
mod length;

mod parse;

mod tape;

mod print;

mod spacing;

pub use length::{Area, Length, LengthError, Rounding, RoundingMode, Unit, Volume};
pub use parse::{Comma, Hint, LengthParser, ParseError, ParseErrorKind, Quantity, evaluate};
