//! What the fuzz targets hold the crate to: the very properties that the ordinary tests hold it to, with choices from
//! elsewhere. The targets themselves only turn bytes into choices.

#[path = "../../support/bytes.rs"]
pub mod bytes;
#[path = "../../support/calculation.rs"]
pub mod calculation;
#[path = "../../support/printers.rs"]
pub mod printers;
#[path = "../../support/stored.rs"]
pub mod stored;
#[path = "../../support/texts.rs"]
pub mod texts;
