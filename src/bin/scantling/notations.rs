//! One length in every notation a shop writes, one below the other so that whole numbers line up. What does not
//! come out even is rounded here, and said to be.

use scantling::{Column, Length, LengthPrinter, Reading, Shown, Style, Unit, Written};

/// A notation, and what a length is rounded to where it does not come out even in it.
#[derive(Clone, Copy)]
struct Notation {
    name: &'static str,
    printer: LengthPrinter,
    step: Length,
}

const fn notation(name: &'static str, style: Style, step: Length) -> Notation {
    Notation { name, printer: LengthPrinter::new().style(style), step }
}

const SIXTEENTH: Length = Length::fraction(1, 16, Unit::Inch);
const MICROMETER: Length = Length::fraction(1, 1000, Unit::Millimeter);

const DECIMAL_INCHES: Notation = notation("decimal inches", Style::DecimalInches, Length::fraction(1, 10_000, Unit::Inch));
const MILLIMETERS: Notation = notation("millimeters", Style::Millimeters, MICROMETER);

const NOTATIONS: [Notation; 8] = [
    // These two write any length to its last digit.
    notation("inches", Style::Inches, SIXTEENTH),
    notation("feet and inches", Style::FeetInches, SIXTEENTH),
    notation("feet-inches-16ths", Style::FeetInchesSixteenths, SIXTEENTH),
    DECIMAL_INCHES,
    notation("decimal feet", Style::DecimalFeet, Length::fraction(1, 100_000, Unit::Foot)),
    MILLIMETERS,
    notation("centimeters", Style::Centimeters, MICROMETER),
    notation("meters", Style::Meters, MICROMETER),
];

impl Notation {
    /// The length and whether it is exact; `None` where it cannot be rounded.
    fn show(self, length: Length) -> Option<(Shown, bool)> {
        if let Ok(shown) = self.printer.show(length) {
            return Some((shown, true));
        }
        let rounded = length.round(self.step).ok()?;
        Some((self.printer.show(rounded).ok()?, false))
    }

    fn text(self, length: Length) -> Option<String> {
        let (shown, exact) = self.show(length)?;
        Some(if exact { shown.to_string() } else { format!("{ABOUT}{shown}") })
    }
}

const ABOUT: &str = "about ";

/// Names and figures, these lined up.
pub fn rows(length: Length) -> Vec<(&'static str, String)> {
    let shown = NOTATIONS.iter().filter_map(|notation| Some((notation.name, notation.show(length)?)));
    let shown: Vec<_> = shown.collect();
    let column: Column = shown.iter().map(|(_, (shown, _))| *shown).collect();
    let room = if shown.iter().all(|(_, (_, exact))| *exact) { 0 } else { ABOUT.len() };
    let figure = |shown, exact| {
        let cell = column.cell(shown).to_string();
        let figure = format!("{}{}", if exact { "" } else { ABOUT }, cell.trim_start());
        format!("{figure:>width$}", width = room + cell.len())
    };
    shown.into_iter().map(|(name, (shown, exact))| (name, figure(shown, exact))).collect()
}

/// The leftover of a reading where there is one: how the true place leans, and by how much, in decimals and metric.
pub fn leftover(reading: &Reading) -> Option<(String, String)> {
    let size = reading.leftover().abs();
    let amounts = [DECIMAL_INCHES.text(size)?, MILLIMETERS.text(size)?];
    (!size.is_zero()).then(|| (format!("{} by", reading.lean()), amounts.join(", ")))
}

/// In words, in the units that it was written in.
pub fn words(length: Length, written: Option<Written>) -> Option<String> {
    let in_kind = written.map(LengthPrinter::from).and_then(|printer| printer.say(length).ok());
    Some(in_kind.or_else(|| LengthPrinter::new().say(length).ok())?.to_string())
}
