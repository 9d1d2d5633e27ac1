//! Text in: what a person typed or called out, read as an exact length or refused.

mod axis;
mod called;
mod compound;
mod error;
mod expression;
mod find;
mod glyph;
mod group;
mod hint;
mod number;
mod parser;
mod piece;
mod quick;
mod reading;
mod refuse;
mod scan;
mod shorthand;
mod size;
mod spoken;
mod stored;
mod toleranced;
mod unit;
mod value;
mod wording;
mod written;

pub use axis::Axis;
pub use called::{Called, Side};
pub use error::{ParseError, ParseErrorKind};
pub use expression::{Quantity, evaluate};
pub use find::{FindIter, Found};
pub use hint::Hint;
pub use parser::{Comma, LengthParser};
pub use shorthand::Shorthand;
pub use size::{Dimension, Size};
pub use toleranced::Toleranced;
pub use written::{Precision, UnitMark, Warning, Written};
