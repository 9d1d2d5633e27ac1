//! Names of stock, as people write them, read into a [`Nominal`](super::Nominal). Numbers are read as any length is;
//! what the stock measures is left to the tables.
//!
//! | written | reads as |
//! | --- | --- |
//! | `1x6`, `2 x 4`, `2×4`, `2 by 4`, `two by four`, `2" x 4"` | softwood by name |
//! | `2x4x8`, `2x4x8 ft`, `2x4 - 12'`, `2x4-12`, `2x4x92-5/8"` | the same with a length: a bare whole number is feet |
//! | `5/4x6`, `5/4x6 decking`, `5/4 decking` | decking |
//! | `8/4`, `8/4 walnut`, `5/4 hardwood`, `8/4 x 6 - 10'`, `8/4 oak 7" wide` | hardwood, its thickness rough, its width as measured |
//! | `3/4 ply`, `23/32`, `3/4 ply 4x8`, `3/4" x 4' x 8'`, `3/4 4x8` | a panel by performance category |
//! | `4x8 sheet`, `48x96`, `49-in. x 97-in.`, `1220 x 2440 mm` | a sheet |
//! | `green`, `dry`, `kiln-dried`, `rough`, `S1S`, `S2S`, `S4S` | how it was seasoned and planed |
//!
//! What has two readings is refused: a bare `5/4` (decking or hardwood), a bare `3/4` (panel, hardwood or board), `3/4x6`
//! (a name or a measured size), `2x4x96` (feet or inches), `3/4 birch 4x8` (a board or a sheet), `8/4 pine x 6` (rough or
//! dressed), `4/4 walnut 8` (wide or long), `18 x 90 x 2400 mm` (named in inches, or measured in millimeters throughout). So is
//! a board with its width in front: `4x2`.

mod cut;
mod error;
mod number;
mod read;
mod sizes;
mod words;

pub(super) use sizes::WIDEST;

pub use error::{NominalError, NominalErrorKind};
