//! Text in: what a person typed or called out, read as an exact length or refused.

mod compound;
mod error;
mod glyph;
mod group;
mod hint;
mod number;
mod parser;
mod quick;
mod reading;
mod refuse;
mod scan;
mod spoken;
mod unit;
mod value;
mod wording;

pub use error::{ParseError, ParseErrorKind};
pub use hint::Hint;
pub use parser::{Comma, LengthParser};
