//! A length with its settings, found fit to be written. How the pieces are put together is left to
//! `inches.rs` and `decimal.rs`, padding to `written.rs`.

use core::fmt;

use super::decimal::Decimal;
use super::inches::{FeetInches, Inches};
use super::written::{Written, padded};
use super::{Join, LengthPrinter, Marks, PrintError, Style};
use crate::length::Length;

/// A length that is ready to be written, made by [`LengthPrinter::show`].
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
    length: Length,
    style: Style,
    join: Join,
    marks: Marks,
    /// The decimals that a decimal style writes, already found to be enough.
    places: u8,
}

impl Shown {
    #[inline]
    pub(super) fn new(length: Length, printer: LengthPrinter) -> Result<Self, PrintError> {
        let LengthPrinter { style, join, marks, places } = printer;
        let places = match style.decimal_unit() {
            Some(unit) => places.needed(length, unit)?,
            None => 0,
        };
        Ok(Self { length, style, join, marks, places })
    }

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
        let Self { length, style, join, marks, places } = *self;
        match style.decimal_unit() {
            Some(unit) => Decimal { length, unit, places, mark: marks.after(unit) }.write(out),
            None if style == Style::FeetInches => FeetInches { length, join, marks }.write(out),
            None => Inches { length, join, marks }.write(out),
        }
    }
}

impl Written for Shown {
    #[inline]
    fn write(&self, out: &mut impl fmt::Write) -> fmt::Result {
        self.write_to(out)
    }
}

impl fmt::Display for Shown {
    #[inline]
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(self, out)
    }
}
