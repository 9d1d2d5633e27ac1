//! The geometry round a layout: diagonals and square corners, miters, centers, a rule laid on the slant, a
//! tape that is read from the wrong place. Plain functions and small results, exact.
//!
//! Square roots and tangents have no exact fraction. They are never worked out to so many decimals and
//! rounded again: a [`Rounded`] is found by comparing whole numbers, in `root.rs` and `tangent.rs`, and is
//! right to the last graduation. Dividing a run is left to `spacing/`.

mod angle;
mod center;
mod corner;
mod diagonal;
mod error;
mod hinges;
mod hook;
mod miter;
mod miters;
mod natural;
mod polygon;
mod root;
mod rounded;
mod slant;
mod square;
mod tangent;

pub use angle::Angle;
pub use center::{center_from_ends, midpoint};
pub use corner::{Corner, Triple};
pub use diagonal::{diagonal, exact_diagonal, squared_diagonal};
pub use error::GeometryError;
pub(crate) use error::{above_zero, not_below_zero};
pub use hinges::hinges;
pub use hook::{Hook, burned_inch};
pub use miter::{FrameSize, Mitered, MiteredMarks, Molding};
pub use miters::{Miters, check_miters};
pub use polygon::Polygon;
pub use rounded::Rounded;
pub use slant::{SlantedRule, slanted_reading, slanted_rule};
pub use square::{OutOfSquare, Squareness, out_of_square};
