//! A length with its settings, found fit to be written. How the pieces are put together is left to
//! `inches.rs`, `sixteenths.rs` and `decimal.rs`, padding to `written.rs`.

use core::fmt;

use super::Style;
use super::decimal::Decimal;
use super::inches::Inches;
use super::look::Look;
use super::sixteenths::Sixteenths;
use super::written::{Written, padded};
use crate::length::{Length, Unit};

/// A length that is ready to be written, made by [`LengthPrinter::show`](crate::LengthPrinter::show).
///
/// Its `Display` cannot fail. It honors width, fill and alignment, and stands to the left where no
/// alignment is given, as Rust's text does and not as its numbers do. A precision never cuts it
/// short: that and every other flag is passed over.
///
/// ```
/// use scantling::{Length, LengthPrinter, Unit};
///
/// let rail = LengthPrinter::new().show(Length::fraction(27, 2, Unit::Inch))?;
/// assert_eq!(rail.to_string(), r#"13 1/2""#);
/// assert_eq!(format!("[{rail:9}] [{rail:>9}] [{rail:.^9.2}]"), r#"[13 1/2"  ] [  13 1/2"] [.13 1/2".]"#);
/// # Ok::<(), scantling::PrintError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Shown {
    pub(super) length: Length,
    pub(super) look: Look,
}

impl Shown {
    /// Writes the text, without padding.
    ///
    /// ```
    /// use scantling::{Length, LengthPrinter, Unit};
    ///
    /// let mut line = String::from("rail ");
    /// LengthPrinter::new().show(Length::fraction(27, 2, Unit::Inch))?.write_to(&mut line).unwrap();
    /// assert_eq!(line, r#"rail 13 1/2""#);
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// What the sink gives; none of its own.
    #[inline]
    pub fn write_to(&self, out: &mut impl fmt::Write) -> fmt::Result {
        let Self { length, look } = *self;
        match (look.style.decimal_unit(), look.style) {
            (Some(unit), _) => self.write_decimal(unit, out),
            (None, Style::FeetInchesSixteenths) => Sixteenths { length, look }.write(out),
            (None, _) => Inches { length, look }.write(out),
        }
    }

    #[inline(never)]
    fn write_decimal(self, unit: Unit, out: &mut impl fmt::Write) -> fmt::Result {
        self.look.sign.write(self.length, out)?;
        Decimal::of(self.length, unit, self.look.places).write(out)?;
        out.write_str(self.look.marks.after(unit))
    }
}

impl Written for Shown {
    #[inline]
    fn write(self, out: &mut impl fmt::Write) -> fmt::Result {
        self.write_to(out)
    }
}

impl fmt::Display for Shown {
    #[inline]
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(*self, out)
    }
}
