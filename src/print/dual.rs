//! Dual dimensions: a length in two ways at once, the second in brackets and rounded. How the first is written
//! is left to `shown.rs`, the second to `rounded.rs`.

use core::fmt;

use super::rounded::RoundedShown;
use super::written::{Written, padded};
use super::{LengthPrinter, PrintError, Shown};
use crate::length::{Length, Rounding};

/// A way to write lengths twice: exactly, and in brackets as another tape would have them.
///
/// A length of the second unit seldom ends on its graduation, so the second dimension is rounded, once, to
/// the step given here. Where that changed the value, `≈` (U+2248) stands before it; an exact second
/// dimension has no such mark.
///
/// ```
/// use scantling::{DualPrinter, Length, LengthPrinter, Rounding, Style, Unit};
///
/// const TENTH: Length = Length::fraction(1, 10, Unit::Millimeter);
/// const METRIC: LengthPrinter = LengthPrinter::new().style(Style::Millimeters);
/// const DRAWING: DualPrinter = DualPrinter::new(LengthPrinter::new(), METRIC, Rounding::to(TENTH));
///
/// let stile = Length::fraction(141, 8, Unit::Inch); // 447.675 mm
/// let shelf = Length::new(17, Unit::Inch); // 431.8 mm
/// assert_eq!(DRAWING.show(stile)?.to_string(), r#"17 5/8" [≈447.7 mm]"#);
/// assert_eq!(DRAWING.show(shelf)?.to_string(), r#"17" [431.8 mm]"#);
/// # Ok::<(), scantling::PrintError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct DualPrinter {
    first: LengthPrinter,
    second: LengthPrinter,
    rounding: Rounding,
}

impl DualPrinter {
    /// The first dimension by one printer, the second by another after rounding.
    ///
    /// ```
    /// use scantling::{DualPrinter, Length, LengthPrinter, Rounding, Style, Unit};
    ///
    /// let sixteenth = Rounding::to(Length::fraction(1, 16, Unit::Inch));
    /// let metric = LengthPrinter::new().style(Style::Millimeters);
    /// let plan = DualPrinter::new(metric, LengthPrinter::new(), sixteenth);
    /// assert_eq!(plan.show(Length::new(1000, Unit::Millimeter))?.to_string(), r#"1000 mm [≈39 3/8"]"#);
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    #[must_use]
    pub const fn new(first: LengthPrinter, second: LengthPrinter, rounding: Rounding) -> Self {
        Self { first, second, rounding }
    }

    /// A length made ready to be written in this way.
    ///
    /// ```
    /// use scantling::{DualPrinter, Length, LengthPrinter, Style, Unit};
    ///
    /// let metric = LengthPrinter::new().style(Style::Millimeters);
    /// let plan = DualPrinter::new(LengthPrinter::new(), metric, Unit::Millimeter.length().into());
    /// assert_eq!(format!("{:>19}", plan.show(Length::fraction(1, 2, Unit::Inch))?), r#"      1/2" [≈13 mm]"#);
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Those of [`LengthPrinter::show`] for either dimension, and [`PrintError::NotRounded`] when the step is
    /// not above zero or the rounded length cannot be held.
    pub fn show(self, length: Length) -> Result<ShownDual, PrintError> {
        let second = RoundedShown::of(length, self.rounding, self.second)?;
        Ok(ShownDual { first: self.first.show(length)?, second })
    }
}

/// A length that is ready to be written twice, made by [`DualPrinter::show`].
///
/// Its `Display` cannot fail and honors width, fill and alignment, as that of [`Shown`] does.
///
/// ```
/// use scantling::{DualPrinter, Length, LengthPrinter, Style, Unit};
///
/// let metric = LengthPrinter::new().style(Style::Millimeters);
/// let plan = DualPrinter::new(LengthPrinter::new(), metric, Unit::Millimeter.length().into());
/// assert!(plan.show(Length::new(5, Unit::Inch))?.is_exact());
/// assert!(!plan.show(Length::new(1, Unit::Inch))?.is_exact());
/// # Ok::<(), scantling::PrintError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct ShownDual {
    first: Shown,
    second: RoundedShown,
}

impl ShownDual {
    /// Whether the second dimension is the length itself, not a rounded one.
    ///
    /// ```
    /// use scantling::{DualPrinter, Length, LengthPrinter, Style, Unit};
    ///
    /// let metric = LengthPrinter::new().style(Style::Millimeters);
    /// let plan = DualPrinter::new(LengthPrinter::new(), metric, Unit::Millimeter.length().into());
    /// let shown = plan.show(Length::new(5, Unit::Inch))?;
    /// assert!(shown.is_exact());
    /// assert_eq!(shown.to_string(), r#"5" [127 mm]"#);
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    #[must_use]
    pub const fn is_exact(&self) -> bool {
        self.second.exact
    }

    /// Writes the text, without padding.
    ///
    /// ```
    /// use scantling::{DualPrinter, Length, LengthPrinter, Style, Unit};
    ///
    /// let metric = LengthPrinter::new().style(Style::Millimeters);
    /// let plan = DualPrinter::new(LengthPrinter::new(), metric, Unit::Millimeter.length().into());
    /// let mut line = String::from("rail ");
    /// plan.show(Length::new(5, Unit::Inch))?.write_to(&mut line).unwrap();
    /// assert_eq!(line, r#"rail 5" [127 mm]"#);
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// What the sink gives; none of its own.
    pub fn write_to(&self, out: &mut impl fmt::Write) -> fmt::Result {
        self.first.write_to(out)?;
        out.write_str(" [")?;
        self.second.write(out)?;
        out.write_str("]")
    }
}

impl Written for ShownDual {
    fn write(self, out: &mut impl fmt::Write) -> fmt::Result {
        self.write_to(out)
    }
}

impl fmt::Display for ShownDual {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(*self, out)
    }
}
