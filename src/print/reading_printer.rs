//! The printer of readings: how the mark is written, how the leftover, and to what the leftover is rounded.
//! Putting the words together is left to `reading.rs`.

use super::rounded::RoundedShown;
use super::{Join, LengthPrinter, PrintError, ShownReading};
use crate::length::Rounding;
use crate::tape::Reading;

/// A way to write readings: the mark, how the true place leans to it, and by how much.
///
/// The leftover has a printer of its own, and is exact unless a rounding is asked for. Where rounding changed
/// it, `≈` (U+2248) stands before it. *strong*, *shy*, or neither of them, is always that of the exact leftover.
///
/// | settings                                      | 17.4 in on sixteenths          | 1/3 in                    |
/// | --------------------------------------------- | ------------------------------ | ------------------------- |
/// | none                                          | `17-3/8" strong by 1/40"`      | `5/16" strong by 1/48"`   |
/// | `leftover` in decimal inches                  | `17-3/8" strong by 0.025"`     | an error: 0.0208333...    |
/// | and `rounded` to 1/1000 in                    | `17-3/8" strong by 0.025"`     | `5/16" strong by ≈0.021"` |
/// | `leftover` in mm, `rounded` to 1/100 mm       | `17-3/8" strong by ≈0.64 mm`   | `5/16" strong by ≈0.53 mm`|
/// | the same in `mark`, on a tape in millimeters  | `442 mm shy by 0.04 mm`        | `8 mm strong by ≈0.47 mm` |
///
/// ```
/// use scantling::{Length, LengthPrinter, ReadingPrinter, Rounding, Style, Tape, Unit};
///
/// const METRIC: LengthPrinter = LengthPrinter::new().style(Style::Millimeters);
/// const BENCH: ReadingPrinter = ReadingPrinter::new().leftover(METRIC);
/// const HUNDREDTH: Rounding = Rounding::to(Length::fraction(1, 100, Unit::Millimeter));
///
/// let shelf = Tape::sixteenths().read(Length::fraction(87, 5, Unit::Inch))?;
/// assert_eq!(BENCH.show(&shelf)?.to_string(), r#"17-3/8" strong by 0.635 mm"#);
/// assert_eq!(BENCH.rounded(HUNDREDTH).show(&shelf)?.to_string(), r#"17-3/8" strong by ≈0.64 mm"#);
///
/// let opening = Tape::millimeters().read(Length::fraction(1, 3, Unit::Inch))?;
/// let metric = ReadingPrinter::new().mark(METRIC).leftover(METRIC).rounded(HUNDREDTH);
/// assert_eq!(metric.show(&opening)?.to_string(), "8 mm strong by ≈0.47 mm");
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct ReadingPrinter {
    mark: LengthPrinter,
    leftover: LengthPrinter,
    rounding: Option<Rounding>,
}

impl ReadingPrinter {
    /// The mark and the exact leftover in inches, fractions joined by a hyphen, as the `Display` of [`Reading`]
    /// writes them.
    ///
    /// ```
    /// use scantling::{Length, ReadingPrinter, Tape, Unit};
    ///
    /// let reading = Tape::sixteenths().read(Length::fraction(87, 5, Unit::Inch))?;
    /// assert_eq!(ReadingPrinter::new().show(&reading)?.to_string(), reading.to_string());
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub const fn new() -> Self {
        let inches = LengthPrinter::new().join(Join::Hyphen);
        Self { mark: inches, leftover: inches, rounding: None }
    }

    /// The same with the mark written by another printer.
    ///
    /// ```
    /// use scantling::{Join, Length, LengthPrinter, ReadingPrinter, Style, Tape, Unit};
    ///
    /// let feet = ReadingPrinter::new().mark(LengthPrinter::new().style(Style::FeetInches).join(Join::Hyphen));
    /// let reading = Tape::sixteenths().read(Length::fraction(87, 5, Unit::Inch))?;
    /// assert_eq!(feet.show(&reading)?.to_string(), r#"1'-5-3/8" strong by 1/40""#);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub const fn mark(self, mark: LengthPrinter) -> Self {
        Self { mark, ..self }
    }

    /// The same with the leftover written by another printer.
    ///
    /// ```
    /// use scantling::{Length, LengthPrinter, ReadingPrinter, Style, Tape, Unit};
    ///
    /// let decimals = ReadingPrinter::new().leftover(LengthPrinter::new().style(Style::DecimalInches));
    /// let reading = Tape::sixteenths().read(Length::fraction(87, 5, Unit::Inch))?;
    /// assert_eq!(decimals.show(&reading)?.to_string(), r#"17-3/8" strong by 0.025""#);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub const fn leftover(self, leftover: LengthPrinter) -> Self {
        Self { leftover, ..self }
    }

    /// The same with the leftover rounded. The mark is not rounded again.
    ///
    /// ```
    /// use scantling::{Length, ReadingPrinter, Rounding, Tape, Unit};
    ///
    /// let sixty_fourths = ReadingPrinter::new().rounded(Rounding::to(Length::fraction(1, 64, Unit::Inch)));
    /// let reading = Tape::sixteenths().read(Length::fraction(1, 3, Unit::Inch))?;
    /// assert_eq!(sixty_fourths.show(&reading)?.to_string(), r#"5/16" strong by ≈1/64""#);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub const fn rounded(self, rounding: Rounding) -> Self {
        Self { rounding: Some(rounding), ..self }
    }

    /// A reading made ready to be written in this way.
    ///
    /// ```
    /// use scantling::{ReadingPrinter, Tape, Unit};
    ///
    /// let reading = Tape::sixteenths().read(Unit::Foot.length())?;
    /// assert_eq!(ReadingPrinter::new().show(&reading)?.to_string(), r#"12""#);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Those of [`LengthPrinter::show`] for the mark and for the size of the leftover, and
    /// [`PrintError::NotRounded`] when the step to round to is not above zero.
    pub fn show(self, reading: &Reading) -> Result<ShownReading, PrintError> {
        let leftover = reading.leftover().abs();
        let leftover = match self.rounding {
            Some(rounding) => RoundedShown::of(leftover, rounding, self.leftover)?,
            None => RoundedShown { shown: self.leftover.show(leftover)?, exact: true },
        };
        Ok(ShownReading { mark: self.mark.show(reading.shown())?, lean: reading.lean(), leftover })
    }
}

impl Default for ReadingPrinter {
    fn default() -> Self {
        Self::new()
    }
}
