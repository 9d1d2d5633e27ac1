//! Text in: what a person typed, read as an exact length or refused.

mod compound;
mod error;
mod expression;
mod glyph;
mod group;
mod hint;
mod number;
mod parser;
mod quick;
mod refuse;
mod scan;
mod unit;
mod value;
mod wording;

pub use error::{ParseError, ParseErrorKind};
pub use expression::{Quantity, evaluate};
pub use hint::Hint;
pub use parser::{Comma, LengthParser};
