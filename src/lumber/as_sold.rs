//! A size written in the units it is sold in: inches, or millimeters where those are whole and the inches are not exact
//! enough to be grasped.

use core::fmt;

use crate::length::{Length, Unit};

#[derive(Clone, Copy)]
pub(super) struct AsSold(pub(super) Length);

impl fmt::Display for AsSold {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let millimeters = self.0.in_unit(Unit::Millimeter);
        // Five inches are just 127 mm, so a size in millimeters has a multiple of 127 below the line of its inches.
        let metric = self.0.in_unit(Unit::Inch).denom() % 127 == 0 && millimeters.is_integer();
        if metric { write!(out, "{millimeters} mm") } else { write!(out, "{}", self.0) }
    }
}
