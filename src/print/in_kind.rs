//! Answering in kind: a printer that writes lengths in the units and marks in which one was written.
//! How a text was written is found out in `parse/`.

use super::{LengthPrinter, Marks, Style};
use crate::length::Unit;
use crate::parse::{Precision, UnitMark, Written};

/// The units, the marks and the choice between fractions and decimals of a text that was read.
///
/// ```
/// use scantling::{Length, LengthParser, LengthPrinter, Unit};
///
/// let in_kind = |text| -> Result<String, Box<dyn std::error::Error>> {
///     let (length, written) = LengthParser::new().parse_written(text)?;
///     Ok(LengthPrinter::from(written).show(2 * length)?.to_string())
/// };
/// assert_eq!(in_kind("6 ft 3 1/2 in")?, "12 ft 7 in");
/// assert_eq!(in_kind("17.625")?, "35.25\"");
/// assert_eq!(in_kind("36.5 cm")?, "73 cm");
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
impl From<Written> for LengthPrinter {
    fn from(written: Written) -> Self {
        let decimal = matches!(written.precision(), Precision::Decimals(_));
        let style = match (written.unit(), written.last_unit()) {
            (Some(Unit::Foot), last) if decimal && last == written.first_unit() => Style::DecimalFeet,
            (Some(Unit::Foot), _) => Style::FeetInches,
            (Some(Unit::Yard), _) => Style::Yards,
            (Some(Unit::Millimeter), _) => Style::Millimeters,
            (Some(Unit::Centimeter), _) => Style::Centimeters,
            (Some(Unit::Meter), _) => Style::Meters,
            (Some(Unit::Inch) | None, _) if decimal => Style::DecimalInches,
            (Some(Unit::Inch) | None, _) => Style::Inches,
        };
        let marks = match written.mark() {
            UnitMark::None | UnitMark::Quote => Marks::Quotes,
            UnitMark::Prime => Marks::Primes,
            UnitMark::Word => Marks::Words,
        };
        Self::new().style(style).marks(marks)
    }
}
