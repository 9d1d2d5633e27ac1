//! What the fuzz targets hold the crate to: the very properties that the ordinary tests hold it to, with choices from
//! elsewhere. The targets themselves only turn bytes into choices.

use arbitrary::Unstructured;

#[path = "../../support/calculation.rs"]
pub mod calculation;
#[path = "../../support/printers.rs"]
pub mod printers;
#[path = "../../support/stored.rs"]
pub mod stored;
#[path = "../../support/texts.rs"]
pub mod texts;

/// Choices made by bytes. When the bytes are used up, the first of everything is chosen.
pub fn choices(bytes: &[u8]) -> impl FnMut(u64) -> u64 + '_ {
    let mut bytes = Unstructured::new(bytes);
    move |below| bytes.int_in_range(0..=below - 1).unwrap_or(0)
}
