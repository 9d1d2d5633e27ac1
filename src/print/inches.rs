//! Inches with a fraction, feet and inches, yards: the styles that write fractions, and areas and volumes
//! in inches. Decimals are left to `decimal.rs`, settings to `shown.rs`.

use core::fmt::{self, Write};

use super::fraction::write_fraction;
use super::look::Look;
use super::pieces::{Pieces, split};
use super::written::Written;
use super::{Join, Style, Zeros, table};
use crate::length::{Length, Unit};

/// `17 5/8"`, `6'-3 1/2"` or `2 yd 0'-3 1/2"`, as the style of the printer has it.
#[derive(Clone, Copy)]
pub(super) struct Inches {
    pub(super) length: Length,
    pub(super) look: Look,
}

impl Written for Inches {
    #[inline]
    fn write(self, out: &mut impl Write) -> fmt::Result {
        let Look { style, sign, zeros, denominator, .. } = self.look;
        sign.write(self.length, out)?;
        match (SixtyFourths::of(self.length), style, zeros) {
            (Some(size), Style::Inches, _) if denominator.is_none() => self.write_inches(size, out),
            (Some(size), Style::FeetInches, Zeros::Kept) if denominator.is_none() => self.write_feet(size, out),
            _ => self.write_any(out),
        }
    }
}

impl Inches {
    #[inline]
    fn write_inches(self, SixtyFourths { whole, part }: SixtyFourths, out: &mut impl Write) -> fmt::Result {
        let Look { join, marks, .. } = self.look;
        let joined = table::joined_fractions(join, marks)[part];
        if whole == 0 && part > 0 {
            return out.write_str(&joined[join.text().len()..]);
        }
        table::write_number(whole, out)?;
        out.write_str(joined)
    }

    #[inline]
    fn write_feet(self, SixtyFourths { whole, part }: SixtyFourths, out: &mut impl Write) -> fmt::Result {
        let Look { join, marks, .. } = self.look;
        table::write_number(whole / 12, out)?;
        out.write_str(table::inches_behind_feet(marks)[whole % 12])?;
        out.write_str(table::joined_fractions(join, marks)[part])
    }

    #[inline(never)]
    fn write_any(self, out: &mut impl Write) -> fmt::Result {
        let Look { join, marks, .. } = self.look;
        let Pieces { yards, feet, inches, fraction } = Pieces::of(self.length, self.look);
        if let Some(yards) = yards {
            write!(out, "{yards}{}", marks.after(Unit::Yard))?;
        }
        if let Some(feet) = feet {
            write!(out, "{}{feet}{}", gap(yards, " "), marks.after(Unit::Foot))?;
        }
        if inches.is_none() && fraction.is_none() {
            return Ok(());
        }
        out.write_str(if feet.is_some() { marks.behind_feet() } else { gap(yards, " ") })?;
        write_mixed(inches, fraction, join, out)?;
        out.write_str(marks.after(Unit::Inch))
    }
}

/// What stands between a number and the next, if there was a number.
fn gap(before: Option<u128>, text: &'static str) -> &'static str {
    if before.is_some() { text } else { "" }
}

/// `3 1/2 sq in`: any reduced fraction of a unit that has a symbol alone.
#[derive(Clone, Copy)]
pub(crate) struct WithSymbol {
    pub(crate) parts: (i128, u128),
    pub(crate) symbol: &'static str,
}

impl Written for WithSymbol {
    fn write(self, out: &mut impl Write) -> fmt::Result {
        let (whole, part) = split(self.parts);
        let fraction = (part.0 > 0).then_some(part);
        out.write_str(if self.parts.0 < 0 { "-" } else { "" })?;
        write_mixed(Some(whole).filter(|whole| *whole > 0 || part.0 == 0), fraction, Join::Space, out)?;
        out.write_str(self.symbol)
    }
}

/// A whole number, a fraction, or both with what joins them.
fn write_mixed(whole: Option<u128>, fraction: Option<(u128, u128)>, join: Join, out: &mut impl Write) -> fmt::Result {
    if let Some(whole) = whole {
        write!(out, "{whole}")?;
    }
    match fraction {
        Some(fraction) => {
            out.write_str(gap(whole, join.text()))?;
            write_fraction(fraction, join, out)
        }
        None => Ok(()),
    }
}

/// The size of nearly every length: whole inches and some 64ths, for which no wide division is needed
/// and the fraction is in the table.
struct SixtyFourths {
    whole: usize,
    part: usize,
}

impl SixtyFourths {
    #[inline]
    fn of(length: Length) -> Option<Self> {
        let count = usize::try_from(length.sixty_fourths()?.unsigned_abs()).ok()?;
        Some(Self { whole: count / 64, part: count % 64 })
    }
}
