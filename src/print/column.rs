//! Lengths below each other in a table: whole numbers end, and fractions or decimals begin, at one place. What
//! a length looks like is left to `shown.rs`.

use core::fmt::{self, Write};

use super::decimal::Decimal;
use super::fraction::write_fraction;
use super::pieces::Pieces;
use super::written::{Written, padded, width};
use super::{Shown, Style};
use crate::length::Unit;

/// A column of lengths, as wide as the widest of those it was collected from.
///
/// All its cells are equally wide, and line up where their whole numbers end, as numbers are added up on
/// paper. They may be of different styles.
///
/// ```
/// use scantling::{Column, Join, Length, LengthPrinter, Unit};
///
/// let hyphens = LengthPrinter::new().join(Join::Hyphen);
/// let shown = [224, 1799, 1792, 12].map(|count| hyphens.show(Length::fraction(count, 16, Unit::Inch)).unwrap());
/// let column: Column = shown.into_iter().collect();
/// let lines: Vec<_> = shown.into_iter().map(|shown| format!("|{}|", column.cell(shown))).collect();
/// assert_eq!(
///     lines,
///     [
///         r#"| 14"     |"#,
///         r#"|112-7/16"|"#,
///         r#"|112"     |"#,
///         r#"|    3/4" |"#,
///     ]
/// );
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Column {
    /// How wide it is up to where whole numbers end, and from there.
    whole: usize,
    rest: usize,
}

impl Column {
    /// A length of this column with the blanks around it. One that is wider than the column stands out to the
    /// right.
    ///
    /// ```
    /// use scantling::{Column, Length, LengthPrinter, Style, Unit};
    ///
    /// let metric = LengthPrinter::new().style(Style::Millimeters);
    /// let shown = [180, 7314].map(|tenths| metric.show(Length::fraction(tenths, 10, Unit::Millimeter)).unwrap());
    /// let column: Column = shown.into_iter().collect();
    /// assert_eq!(column.cell(shown[0]).to_string(), " 18 mm  ");
    /// assert_eq!(column.cell(shown[1]).to_string(), "731.4 mm");
    /// ```
    #[must_use]
    pub const fn cell(self, shown: Shown) -> InColumn {
        InColumn { shown, column: self }
    }
}

impl FromIterator<Shown> for Column {
    fn from_iter<Lengths: IntoIterator<Item = Shown>>(lengths: Lengths) -> Self {
        lengths.into_iter().fold(Self::default(), |column, shown| {
            let (text, rest) = (width(shown), width(Rest(shown)));
            Self { whole: column.whole.max(text.saturating_sub(rest)), rest: column.rest.max(rest) }
        })
    }
}

/// A length in a column, made by [`Column::cell`].
///
/// Its `Display` cannot fail and honors width, fill and alignment, as that of [`Shown`] does.
///
/// ```
/// use scantling::{Column, Length, LengthPrinter, Unit};
///
/// let shown = [17, 8].map(|count| LengthPrinter::new().show(Length::fraction(count, 8, Unit::Inch)).unwrap());
/// let column: Column = shown.into_iter().collect();
/// assert_eq!(format!("[{}] [{:>8}]", column.cell(shown[0]), column.cell(shown[1])), r#"[2 1/8"] [  1"    ]"#);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct InColumn {
    shown: Shown,
    column: Column,
}

impl Written for InColumn {
    fn write(self, out: &mut impl Write) -> fmt::Result {
        let Self { shown, column } = self;
        let (text, rest) = (width(shown), width(Rest(shown)));
        (text..column.whole + rest).try_for_each(|_| out.write_char(' '))?;
        shown.write(out)?;
        (rest..column.rest).try_for_each(|_| out.write_char(' '))
    }
}

impl fmt::Display for InColumn {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(*self, out)
    }
}

/// What stands behind the whole number: the fraction with what joins it, even where there is nothing to join
/// it to, or the decimals with their point; and the mark of the unit.
#[derive(Clone, Copy)]
struct Rest(Shown);

impl Written for Rest {
    fn write(self, out: &mut impl Write) -> fmt::Result {
        let Shown { length, look } = self.0;
        if let Some(unit) = look.style.decimal_unit() {
            if look.places > 0 {
                out.write_str(".")?;
                Decimal::of(length, unit, look.places).write_decimals(out)?;
            }
            return out.write_str(look.marks.after(unit));
        }
        match Pieces::of(length, look) {
            // Two digits are two digits.
            _ if look.style == Style::FeetInchesSixteenths => Ok(()),
            Pieces { inches: None, fraction: None, .. } => Ok(()),
            Pieces { fraction, .. } => {
                if let Some(fraction) = fraction {
                    out.write_str(look.join.text())?;
                    write_fraction(fraction, look.join, out)?;
                }
                out.write_str(look.marks.after(Unit::Inch))
            }
        }
    }
}
