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
pub use parse::{
    Axis, Called, Comma, Dimension, FindIter, Found, Hint, LengthParser, ParseError, ParseErrorKind, Precision, Shorthand, Side,
    Size, Toleranced, UnitMark, Warning, Written,
};
pub use print::{Join, LengthPrinter, Marks, Places, PrintError, Shown, Style};
pub use spacing::{Edge, End, Layout, Mark, OnTape, Spacing, SpacingError, TapeMark};
pub use tape::{Lean, Reading, Tape, TapeError};
