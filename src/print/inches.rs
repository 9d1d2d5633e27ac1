//! Inches with a fraction, feet and inches, and areas and volumes in inches. Decimals are left to
//! `decimal.rs`, settings to `shown.rs`.

use core::fmt::{self, Write};

use super::written::{Written, write_sign};
use super::{Join, Marks, table};
use crate::length::{Length, Unit};

/// `17 5/8"`
pub(super) struct Inches {
    pub(super) length: Length,
    pub(super) join: Join,
    pub(super) marks: Marks,
}

impl Written for Inches {
    #[inline]
    fn write(&self, out: &mut impl Write) -> fmt::Result {
        write_sign(self.length.is_negative(), out)?;
        let Some(SixtyFourths { whole, part }) = SixtyFourths::of(self.length) else { return self.write_any(out) };
        let joined = table::joined_fractions(self.join, self.marks)[part];
        if whole == 0 && part > 0 {
            return out.write_str(&joined[self.join.text().len()..]);
        }
        table::write_number(whole, out)?;
        out.write_str(joined)
    }
}

impl Inches {
    #[inline(never)]
    fn write_any(&self, out: &mut impl Write) -> fmt::Result {
        write_mixed(self.length.in_unit_parts(Unit::Inch), self.join.text(), self.marks.after(Unit::Inch), out)
    }
}

/// `6'-3 1/2"`, with feet and inches shown even where they are zero.
pub(super) struct FeetInches {
    pub(super) length: Length,
    pub(super) join: Join,
    pub(super) marks: Marks,
}

impl Written for FeetInches {
    #[inline]
    fn write(&self, out: &mut impl Write) -> fmt::Result {
        write_sign(self.length.is_negative(), out)?;
        let Some(SixtyFourths { whole, part }) = SixtyFourths::of(self.length) else { return self.write_any(out) };
        table::write_number(whole / 12, out)?;
        out.write_str(table::inches_behind_feet(self.marks)[whole % 12])?;
        out.write_str(table::joined_fractions(self.join, self.marks)[part])
    }
}

impl FeetInches {
    #[inline(never)]
    fn write_any(&self, out: &mut impl Write) -> fmt::Result {
        let (whole, part) = split(self.length.in_unit_parts(Unit::Inch));
        #[allow(clippy::cast_possible_truncation)] // under 12
        let rest = (whole % 12) as usize;
        write!(out, "{}{}", whole / 12, table::inches_behind_feet(self.marks)[rest])?;
        write_part(part, self.join.text(), self.marks.after(Unit::Inch), out)
    }
}

/// `3 1/2 sq in`: any reduced fraction of a unit that has a symbol alone.
pub(super) struct WithSymbol {
    pub(super) parts: (i128, u128),
    pub(super) symbol: &'static str,
}

impl Written for WithSymbol {
    fn write(&self, out: &mut impl Write) -> fmt::Result {
        write_sign(self.parts.0 < 0, out)?;
        write_mixed(self.parts, " ", self.symbol, out)
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

/// Any fraction in lowest terms without its sign: the whole number, unless it is zero and the proper
/// part can stand alone, the proper part, and a mark.
fn write_mixed(parts: (i128, u128), join: &str, mark: &str, out: &mut impl Write) -> fmt::Result {
    let (whole, part) = split(parts);
    if whole == 0 && part.0 > 0 {
        return write_part(part, "", mark, out);
    }
    write!(out, "{whole}")?;
    write_part(part, join, mark, out)
}

fn write_part((num, den): (u128, u128), join: &str, mark: &str, out: &mut impl Write) -> fmt::Result {
    if num == 0 { out.write_str(mark) } else { write!(out, "{join}{num}/{den}{mark}") }
}

fn split((num, den): (i128, u128)) -> (u128, (u128, u128)) {
    let size = num.unsigned_abs();
    (size / den, (size % den, den))
}
