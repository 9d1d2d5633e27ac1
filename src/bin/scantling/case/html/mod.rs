//! The job sheet.

use super::Report;
use crate::Outcome;

impl Report<'_> {
    pub(super) fn html(&self) -> Outcome {
        Ok(String::new())
    }
}
