//! Text out: how an exact length is written. Nothing is rounded here: round first, then print.
//!
//! | setting of a `LengthPrinter`                  | 75 1/2 in is written       |
//! | --------------------------------------------- | -------------------------- |
//! | `Style::Inches`                               | `75 1/2"`                  |
//! | `Style::Inches`, `Marks::Words`               | `75 1/2 in`                |
//! | `Style::Inches`, `Join::Hyphen`               | `75-1/2"`                  |
//! | `Style::FeetInches`                           | `6'-3 1/2"`                |
//! | `Style::FeetInches`, `Marks::Words`           | `6 ft 3 1/2 in`            |
//! | `Style::FeetInches`, `Join::Hyphen`           | `6'-3-1/2"`                |
//! | `Style::DecimalInches`                        | `75.5"`                    |
//! | `Style::DecimalInches`, `Places::Exactly(3)`  | `75.500"`                  |
//! | `Style::DecimalFeet`                          | an error: 6.291666... feet |
//! | `Style::Millimeters`                          | `1917.7 mm`                |
//! | `Style::Centimeters`                          | `191.77 cm`                |
//! | `Style::Meters`                               | `1.9177 m`                 |
//!
//! Reading is left to `parse/`, choosing the mark on a tape to `tape/`. Text is written straight to where
//! it goes, in a few pieces; nothing is allocated.

mod decimal;
mod display;
mod error;
mod inches;
mod printer;
mod reading;
mod shown;
mod style;
mod table;
mod written;

pub use error::PrintError;
pub use printer::LengthPrinter;
pub use shown::Shown;
pub use style::{Join, Marks, Places, Style};

#[cfg(test)]
mod tests;
