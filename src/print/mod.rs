//! Text out: how an exact length is written, and how it is said. Nothing is rounded here: round first,
//! then print. What is rounded on request, the second of two dimensions and a leftover, carries a mark.
//!
//! | settings of a `LengthPrinter`                     | 75 1/2 in is written       |
//! | ------------------------------------------------- | -------------------------- |
//! | `Style::Inches`                                   | `75 1/2"`                  |
//! | `Style::FeetInches`                               | `6'-3 1/2"`                |
//! | `Style::FeetInchesSixteenths`                     | `6-03-08`                  |
//! | `Style::Yards`                                    | `2 yd 0'-3 1/2"`           |
//! | `Style::DecimalInches`                            | `75.5"`                    |
//! | `Style::DecimalFeet`                              | an error: 6.291666... feet |
//! | `Style::Millimeters`                              | `1917.7 mm`                |
//! | `Style::Centimeters`                              | `191.77 cm`                |
//! | `Style::Meters`                                   | `1.9177 m`                 |
//! | `Join::Space`                                     | `75 1/2"`                  |
//! | `Join::Hyphen`                                    | `75-1/2"`                  |
//! | `Join::Glyph`                                     | `75½"`                     |
//! | `Style::FeetInches`, `Join::Hyphen`               | `6'-3-1/2"`                |
//! | `Style::FeetInches`, `Join::Glyph`                | `6'-3½"`                   |
//! | `Marks::Quotes`                                   | `75 1/2"`                  |
//! | `Marks::Primes`                                   | `75 1/2″`                  |
//! | `Marks::Words`                                    | `75 1/2 in`                |
//! | `Style::FeetInches`, `Marks::Primes`              | `6′-3 1/2″`                |
//! | `Style::FeetInches`, `Marks::Words`               | `6 ft 3 1/2 in`            |
//! | `Style::Yards`, `Marks::Words`                    | `2 yd 0 ft 3 1/2 in`       |
//! | `Sign::Minus`                                     | `75 1/2"`                  |
//! | `Sign::TrueMinus`                                 | `75 1/2"`                  |
//! | `Sign::Plus`                                      | `+75 1/2"`                 |
//! | `Style::Yards`, `Zeros::Kept`                     | `2 yd 0'-3 1/2"`           |
//! | `Style::Yards`, `Zeros::Dropped`                  | `2 yd 3 1/2"`              |
//! | `Denominator::Lowest`                             | `75 1/2"`                  |
//! | `Denominator::Fixed(16)`                          | `75 8/16"`                 |
//! | `Denominator::Fixed(16)`, `Join::Glyph`           | `75⁸⁄₁₆"`                  |
//! | `Style::DecimalInches`, `Places::Shortest`        | `75.5"`                    |
//! | `Style::DecimalInches`, `Places::Exactly(3)`      | `75.500"`                  |
//!
//! The first value of each setting is the default. Below zero a `-`, or with `Sign::TrueMinus` a `−`, covers
//! the whole value. A `DualPrinter` adds a second dimension in brackets, `75 1/2" [≈1918 mm]`; `say` gives the
//! words, `six feet three and a half inches`. A `ReadingPrinter` writes the mark and the leftover, `17-3/8" strong
//! by 0.635 mm`. A `Column` lines up what stands below each other. A `TapeDrawing` shows a reading as a stretch of tape.
//!
//! Reading is left to `parse/`, choosing the mark on a tape to `tape/`. Text is written straight to where
//! it goes, in a few pieces; nothing is allocated but for a drawing.

mod column;
mod decimal;
mod denominator;
mod display;
mod drawn;
mod dual;
mod error;
mod fraction;
mod in_kind;
mod inches;
mod join;
mod look;
mod marks;
mod pieces;
mod places;
mod printer;
mod reading;
mod reading_printer;
mod rounded;
mod shown;
mod sign;
mod sixteenths;
mod spoken;
mod style;
mod table;
mod words;
mod written;
mod zeros;

pub use column::{Column, InColumn};
pub use denominator::Denominator;
pub use drawn::{DrawingError, MarkInWords, Strokes, TapeDrawing};
pub use dual::{DualPrinter, ShownDual};
pub use error::PrintError;
pub use join::Join;
pub use marks::Marks;
pub use places::Places;
pub use printer::LengthPrinter;
pub use reading::ShownReading;
pub use reading_printer::ReadingPrinter;
pub use shown::Shown;
pub use sign::Sign;
pub use spoken::Spoken;
pub use style::Style;
pub use zeros::Zeros;

pub(crate) use inches::WithSymbol;
pub(crate) use written::{Written, padded};

#[cfg(test)]
mod tests;
