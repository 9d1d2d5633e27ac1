//! Feet, inches and sixteenths as truss sheets have them: three numbers and two dashes.

use core::fmt::{self, Write};

use super::Zeros;
use super::look::Look;
use super::pieces::Pieces;
use super::written::Written;
use crate::length::Length;

/// `12-04-08`, of a length found to be a whole count of sixteenths.
#[derive(Clone, Copy)]
pub(super) struct Sixteenths {
    pub(super) length: Length,
    pub(super) look: Look,
}

impl Written for Sixteenths {
    #[inline(never)]
    fn write(self, out: &mut impl Write) -> fmt::Result {
        let pieces = Pieces::of(self.length, Look { zeros: Zeros::Kept, ..self.look });
        let (feet, inches) = (pieces.feet.unwrap_or(0), pieces.inches.unwrap_or(0));
        let sixteenths = pieces.fraction.map_or(0, |(num, _)| num);
        self.look.sign.write(self.length, out)?;
        write!(out, "{feet}-{inches:02}-{sixteenths:02}")
    }
}
