//! Lumber as it is sold: what a name such as `2x4` or `8/4` stands for, what the piece measures, how much it
//! is by the rules of the trade, what it costs. Cutting it is left to `cutting/`, making something of it to `casework/`.
//!
//! Every table says where its figures come from, and a caller whose seller differs brings other rows.

mod actual;
mod as_sold;
mod board_foot;
mod catalog;
mod error;
mod hardwood;
mod kind;
mod look_up;
mod money;
mod name;
mod nominal;
mod panel;
mod price;
mod softwood;
mod source;
mod table;
mod tally;

pub use actual::Actual;
pub use catalog::Catalog;
pub use error::LumberError;
pub use hardwood::HardwoodRow;
pub use kind::{LumberKind, Seasoning, Surface};
pub use money::Money;
pub use name::{NominalError, NominalErrorKind};
#[cfg(feature = "serde")]
pub(crate) use nominal::Family;
pub use nominal::Nominal;
pub use panel::{PanelRow, SheetRow};
pub use price::{Price, PricedBy};
pub use softwood::{SoftwoodRow, TimberRow};
pub use source::{Seen, Source};
pub use table::Table;
pub use tally::{Tallied, Tally, TallyRule};
