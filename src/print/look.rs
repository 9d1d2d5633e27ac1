//! The settings of a printer once a length was found fit to be written by them. Plain small numbers, which
//! the common path keeps in registers: with the printer itself in their place, writing took half as long
//! again. What the settings do is left to the writers.

use core::num::NonZeroU32;

use super::{Denominator, Join, LengthPrinter, Marks, PrintError, Sign, Style, Zeros};
use crate::length::{Length, Unit};

/// What the writers need to know.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(super) struct Look {
    pub(super) style: Style,
    pub(super) join: Join,
    pub(super) marks: Marks,
    pub(super) sign: Sign,
    pub(super) zeros: Zeros,
    /// The fixed denominator, if there is one; it divides into the length.
    pub(super) denominator: Option<NonZeroU32>,
    /// The decimals of a decimal style; they are enough.
    pub(super) places: u8,
}

impl Look {
    /// The settings of a printer, if they suit a length.
    #[inline]
    pub(super) fn of(length: Length, printer: LengthPrinter) -> Result<Self, PrintError> {
        let (denominator, places) = match (printer.style, printer.denominator) {
            (Style::Inches | Style::FeetInches | Style::Yards, Denominator::Lowest) => (None, 0),
            _ => fitted(length, printer)?,
        };
        Ok(Self { denominator, places, ..Self::plain(printer) })
    }

    /// The settings that suit any length.
    #[inline]
    pub(super) const fn plain(printer: LengthPrinter) -> Self {
        let LengthPrinter { style, join, marks, sign, zeros, .. } = printer;
        Self { style, join, marks, sign, zeros, denominator: None, places: 0 }
    }
}

/// The fixed denominator and the count of decimals, if they suit a length.
#[inline(never)]
fn fitted(length: Length, printer: LengthPrinter) -> Result<(Option<NonZeroU32>, u8), PrintError> {
    let denominator = match (printer.style.decimal_unit(), printer.style, printer.denominator) {
        (Some(unit), ..) => return Ok((None, printer.places.needed(length, unit)?)),
        (None, Style::FeetInchesSixteenths, _) => 16,
        (None, _, Denominator::Lowest) => return Ok((None, 0)),
        (None, _, Denominator::Fixed(denominator)) => denominator,
    };
    let fixed = NonZeroU32::new(denominator).ok_or(PrintError::ZeroDenominator { length })?;
    match u128::from(denominator) % length.in_unit_parts(Unit::Inch).1 {
        0 => Ok((Some(fixed), 0)),
        _ => Err(PrintError::NoWholeCount { length, denominator }),
    }
}
