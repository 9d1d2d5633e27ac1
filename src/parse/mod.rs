//! Text in: what a person typed, read as an exact length or refused.

mod axis;
mod called;
mod compound;
mod error;
mod glyph;
mod group;
mod hint;
mod number;
mod parser;
mod piece;
mod quick;
mod refuse;
mod scan;
mod size;
mod toleranced;
mod unit;
mod value;
mod wording;

pub use axis::Axis;
pub use called::{Called, Side};
pub use error::{ParseError, ParseErrorKind};
pub use hint::Hint;
pub use parser::{Comma, LengthParser};
pub use size::{Dimension, Size};
pub use toleranced::Toleranced;
