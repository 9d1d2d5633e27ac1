//! A length that was rounded to be written, and says so: alone in this layer, for what stands beside an
//! exact figure. How the figure itself is written is left to `shown.rs`.

use core::fmt;

use super::written::Written;
use super::{LengthPrinter, PrintError, Shown};
use crate::length::{Length, Rounding};

/// A length with `≈` (U+2248) before it where rounding changed it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(super) struct RoundedShown {
    pub(super) shown: Shown,
    pub(super) exact: bool,
}

impl RoundedShown {
    pub(super) fn of(length: Length, rounding: Rounding, printer: LengthPrinter) -> Result<Self, PrintError> {
        let rounded = length.round(rounding).map_err(|reason| PrintError::NotRounded { length, reason })?;
        Ok(Self { shown: printer.show(rounded)?, exact: rounded == length })
    }
}

impl Written for RoundedShown {
    fn write(self, out: &mut impl fmt::Write) -> fmt::Result {
        out.write_str(if self.exact { "" } else { "≈" })?;
        self.shown.write(out)
    }
}
