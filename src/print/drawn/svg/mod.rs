//! The tape as a picture. Places along it are whole numbers of a unit that suits its graduation, so that the
//! picture is as exact as the reading; only the size of the paper is written in decimals.

use alloc::string::String;

use num_rational::Ratio;

use super::{DrawingError, TapeDrawing};

mod paper;
mod picture;
mod sheet;

use picture::Picture;
use sheet::Sheet;

impl TapeDrawing {
    /// The same with a picture drawn to scale: at 1 a printer that is told nothing else gives the tape in true
    /// size, at 2 an inch is two inches long. Lines and texts keep their size, so they can be read at any scale.
    ///
    /// Without a scale lines are a sixteenth of an inch apart or more: sixteenths and eighths in true size,
    /// thirty-seconds and millimeters at 2, sixty-fourths and half millimeters at 4.
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::{Length, Tape, TapeDrawing, Unit};
    ///
    /// let tape = Tape::millimeters();
    /// let drawing = TapeDrawing::new(&tape, &tape.read(Length::new(365, Unit::Millimeter))?)?;
    /// // 140 mm of tape and their margins, in true size.
    /// let true_size = drawing.scale(Ratio::from_integer(1)).svg()?;
    /// assert!(true_size.contains(r#"width="13"#));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub const fn scale(self, scale: Ratio<i128>) -> Self {
        Self { scale: Some(scale), ..self }
    }

    /// The drawing as an SVG document, with its words below and as a description for those who cannot see it.
    ///
    /// ```
    /// use scantling::{Length, Tape, TapeDrawing, Unit};
    ///
    /// let tape = Tape::sixteenths();
    /// let drawing = TapeDrawing::new(&tape, &tape.read(Length::fraction(141, 8, Unit::Inch))?)?;
    /// let document = drawing.svg()?;
    /// assert!(document.starts_with("<svg ") && document.contains(r#">17-5/8"</text>"#));
    /// assert!(document.contains("the second line past the half, between 17 and 18"));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`DrawingError::NotAScale`] when the scale is not above zero; [`DrawingError::OutOfRange`] when a size
    /// or a place on the paper cannot be held.
    pub fn svg(&self) -> Result<String, DrawingError> {
        if let Some(scale) = self.scale.filter(|scale| !is_above_zero(*scale)) {
            return Err(DrawingError::NotAScale { scale });
        }
        let (shown, step) = (self.reading.shown(), self.rule.step);
        let picture = Sheet::new(self, self.scale).and_then(Picture::new);
        picture.and_then(|picture| picture.document()).ok_or(DrawingError::OutOfRange { shown, step })
    }
}

/// Whether a ratio has a value and it is above zero. It is not trusted to be in lowest terms.
const fn is_above_zero(ratio: Ratio<i128>) -> bool {
    ratio.numer().signum() * ratio.denom().signum() > 0
}
