//! The mark on the tape, drawn: a stretch of tape around a reading, with its lines, its numbers and an arrow,
//! in characters, as a picture, and in words. Everything is placed by counts of graduations, exactly. Which
//! graduation is marked is left to `tape/`.

use alloc::format;
use alloc::string::{String, ToString};

#[cfg(feature = "svg")]
use num_rational::Ratio;

use super::pieces::split;
use super::{Join, LengthPrinter, Style};
use crate::length::{Length, Unit};
use crate::tape::{Lean, Reading, Tape};

mod characters;
mod error;
mod labels;
mod place;
mod rule;
mod stretch;
mod strokes;
#[cfg(feature = "svg")]
mod svg;
mod words;

pub use error::DrawingError;
pub use strokes::Strokes;
pub use words::MarkInWords;

use rule::Rule;
use stretch::{Reach, Stretch};

/// A stretch of tape around a reading, with an arrow at the mark.
///
/// Lines are drawn as on the rule that the graduation belongs to: the longest at an inch, then the half, the
/// quarter, the eighth and so on, or at 10 mm, 5 mm, 1 mm and 1/2 mm, each size shorter than the one before.
/// A graduation of no such rule is drawn plainly, with longer lines at the whole inches or millimeters among
/// them. The lines that lead up to the mark, if any, are counted beside the arrow; [`words`](Self::words)
/// says which they are. Whole feet or meters are flagged below the numbers.
///
/// The tape begins at its zero and ends at its length, if it has one; for a reading below zero it is drawn on
/// both sides. On a tape that shows something else than zero at the datum the drawing says so.
///
/// Its `Display` cannot fail; it pays no heed to width or alignment.
///
/// ```
/// use scantling::{Length, Tape, TapeDrawing, Unit};
///
/// let tape = Tape::sixteenths();
/// let reading = tape.read(Length::fraction(87, 5, Unit::Inch))?;
/// let drawing = TapeDrawing::new(&tape, &reading)?;
/// assert_eq!(
///     format!("\n{drawing}"),
///     r#"
///                       17-3/8" strong by 1/40"
///                                1 ▼
/// ╌┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┰─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬╌
///  ╵   │   ╵   │   ╵   │   ╵   │   ╹   │   ╵   │   ╵   │   ╵   │   ╵   │   ╵
///      ╵               │               ╵               │               ╵
///                      ╵                               ╵
///                     17                              18
/// ╌─────────────────────────────────────────────────────────────────────────╌
/// "#
/// );
/// assert_eq!(drawing.words().to_string(), "the second line past the quarter, between 17 and 18");
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TapeDrawing {
    reading: Reading,
    rule: Rule,
    /// Which line the mark is, counted from the zero of the tape.
    line: i128,
    reach: Reach,
    /// What is drawn in characters, found when the drawing was made so that writing it cannot fail.
    stretch: Stretch,
    strokes: Strokes,
    #[cfg(feature = "svg")]
    scale: Option<Ratio<i128>>,
}

impl TapeDrawing {
    /// Of a reading that was taken on this tape, or on one with the same graduation. The offset is that of
    /// the reading.
    ///
    /// ```
    /// use scantling::{Length, Tape, TapeDrawing, Unit};
    ///
    /// let rule = Tape::half_millimeters();
    /// let drawing = TapeDrawing::new(&rule, &rule.read(Length::fraction(73, 2, Unit::Millimeter))?)?;
    /// assert_eq!(drawing.words().to_string(), "the third line past the middle line, between 30 and 40");
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`DrawingError::BetweenLines`] and [`DrawingError::OffTape`] when the tape does not have the mark;
    /// [`DrawingError::OutOfRange`] when its lines are too many to be counted.
    pub fn new(tape: &Tape, reading: &Reading) -> Result<Self, DrawingError> {
        let (shown, step) = (reading.shown(), tape.step());
        let out_of_range = DrawingError::OutOfRange { shown, step };
        let reach = Reach { from_zero: !shown.is_negative(), length: tape.longest_reading() };
        match reach.length {
            Some(length) if shown.is_negative() || shown > length => return Err(DrawingError::OffTape { shown, length }),
            _ => {}
        }
        let lines = shown.checked_ratio(step).ok_or(out_of_range)?;
        // The least number has no size, and the words need one.
        if *lines.numer() == i128::MIN {
            return Err(out_of_range);
        }
        if !lines.is_integer() {
            return Err(DrawingError::BetweenLines { shown, step });
        }
        let (rule, line) = (Rule::of(step), lines.to_integer());
        let stretch = Stretch::around(line, &rule, reach, characters::room(&rule)).ok_or(out_of_range)?;
        Ok(Self {
            reading: *reading,
            rule,
            line,
            reach,
            stretch,
            strokes: Strokes::Unicode,
            #[cfg(feature = "svg")]
            scale: None,
        })
    }

    /// The same with other characters.
    ///
    /// ```
    /// use scantling::{Length, Strokes, Tape, TapeDrawing, Unit};
    ///
    /// let tape = Tape::sixteenths();
    /// let drawing = TapeDrawing::new(&tape, &tape.read(Length::new(30, Unit::Foot))?)?;
    /// assert!(drawing.strokes(Strokes::Ascii).to_string().is_ascii());
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub const fn strokes(self, strokes: Strokes) -> Self {
        Self { strokes, ..self }
    }

    /// Where the mark lies, in words.
    ///
    /// ```
    /// use scantling::{Length, Tape, TapeDrawing, Unit};
    ///
    /// let tape = Tape::thirty_seconds();
    /// let drawing = TapeDrawing::new(&tape, &tape.read(Length::fraction(35, 2, Unit::Inch))?)?;
    /// assert_eq!(drawing.words().to_string(), "the long line halfway between 17 and 18");
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub const fn words(&self) -> MarkInWords {
        MarkInWords { rule: self.rule, line: self.line }
    }

    /// What the tape shows and what is left over: `17-3/8" strong by 1/40"`, `365 mm`.
    fn caption(&self) -> String {
        if self.rule.unit == Unit::Inch {
            return self.reading.to_string();
        }
        let shown = self.figure(self.reading.shown());
        match self.reading.lean() {
            Lean::DeadOn => shown,
            lean => format!("{shown} {lean} by {}", self.figure(self.reading.leftover().abs())),
        }
    }

    /// What the tape is held at, where that is not its zero.
    fn datum(&self) -> Option<String> {
        let (mark, shown) = (self.reading.mark(), self.reading.shown());
        let held = shown.checked_sub(mark).filter(|held| !held.is_zero())?;
        Some(format!("Held at {}: the mark is {} from there.", self.figure(held), self.figure(mark)))
    }

    /// A length in the unit of the tape, its fraction joined by a hyphen.
    fn figure(&self, length: Length) -> String {
        let style = if self.rule.unit == Unit::Inch { Style::Inches } else { Style::Millimeters };
        let shown = LengthPrinter::new().style(style).join(Join::Hyphen).show(length);
        shown.map_or_else(|_| in_fractions(length), |shown| shown.to_string())
    }
}

/// Millimeters whose decimals do not end.
fn in_fractions(length: Length) -> String {
    let (whole, (num, den)) = split(length.in_unit_parts(Unit::Millimeter));
    let sign = if length.is_negative() { "-" } else { "" };
    let joined = if whole > 0 { format!("{whole}-") } else { String::new() };
    format!("{sign}{joined}{num}/{den} mm")
}

#[cfg(test)]
mod tests;
