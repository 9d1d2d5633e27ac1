//! A length in words, for a screen reader or for calling a cut across the shop. Words of one number or
//! unit are left to `words.rs`.

use core::fmt::{self, Write};

use super::Zeros;
use super::decimal::Decimal;
use super::look::Look;
use super::pieces::Pieces;
use super::words::{LAST_ORDINAL, digits_said, named, write_cardinal, write_ordinal};
use super::written::{Written, padded};
use crate::length::{Length, Unit};

/// A length that is ready to be said, made by [`LengthPrinter::say`](crate::LengthPrinter::say).
///
/// The words have one reading, hyphens heard or not:
///
/// - `and` stands before a fraction and nowhere else, never within a number. Two hundred and five eighths could be
///   205/8, so 200 5/8 in is `two hundred inches and five eighths`.
/// - A fraction alone is `of an inch` where a count could be heard: three quarter inch boards are three boards.
/// - A numerator of two words is never alone: twenty-one thirty-seconds could be 20 1/32, so 21/32 in is
///   `zero and twenty-one thirty-seconds inches`.
/// - Behind feet the zero inches of a fraction are said: of six feet and a half inch the last word is easily
///   lost, so 6'-0 1/2" is `six feet zero and a half inches`.
/// - Denominators past 64 are said with `over`, decimals digit by digit.
///
/// Its `Display` cannot fail and honors width, fill and alignment, as that of [`Shown`](crate::Shown) does.
///
/// ```
/// use scantling::{Length, LengthPrinter, Style, Unit};
///
/// let feet = LengthPrinter::new().style(Style::FeetInches);
/// let said = |sixteenths| feet.say(Length::fraction(sixteenths, 16, Unit::Inch)).unwrap().to_string();
///
/// assert_eq!(said(1192), "six feet two and a half inches");
/// assert_eq!(said(1162), "six feet zero and five eighths inches");
/// assert_eq!(said(1152), "six feet");
/// assert_eq!(said(10), "five eighths of an inch");
/// assert_eq!(said(-8), "minus one half inch");
/// assert_eq!(said(0), "zero inches");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Spoken {
    pub(super) length: Length,
    pub(super) look: Look,
}

impl Spoken {
    fn say_decimal(self, unit: Unit, out: &mut impl Write) -> fmt::Result {
        let decimal = Decimal::of(self.length, unit, self.look.places);
        write_cardinal(decimal.whole, out)?;
        if self.look.places > 0 {
            out.write_str(" point")?;
            decimal.write_decimals(&mut digits_said(out))?;
        }
        write!(out, " {}", named(unit, decimal.whole == 1 && self.look.places == 0))
    }

    fn say_fractions(self, out: &mut impl Write) -> fmt::Result {
        let Pieces { yards, feet, inches, fraction } = Pieces::of(self.length, Look { zeros: Zeros::Dropped, ..self.look });
        let mut blank = "";
        for (count, unit) in [(yards, Unit::Yard), (feet, Unit::Foot)] {
            let Some(count) = count else { continue };
            out.write_str(blank)?;
            say_count(count, unit, out)?;
            blank = " ";
        }
        if inches.is_some() || fraction.is_some() {
            out.write_str(blank)?;
        }
        match (inches, fraction) {
            (None, None) => Ok(()),
            (Some(count), None) => say_count(count, Unit::Inch, out),
            (None, Some(fraction)) => say_alone(fraction, out),
            (Some(whole), Some(fraction)) => say_mixed(whole, fraction, out),
        }
    }
}

impl Written for Spoken {
    fn write(self, out: &mut impl Write) -> fmt::Result {
        self.look.sign.say(self.length, out)?;
        match self.look.style.decimal_unit() {
            Some(unit) => self.say_decimal(unit, out),
            None => self.say_fractions(out),
        }
    }
}

impl fmt::Display for Spoken {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(*self, out)
    }
}

fn say_count(count: u128, unit: Unit, out: &mut impl Write) -> fmt::Result {
    write_cardinal(count, out)?;
    write!(out, " {}", named(unit, count == 1))
}

/// `one half inch`, `five eighths of an inch`, `zero and twenty-one thirty-seconds inches`.
fn say_alone((num, den): (u128, u128), out: &mut impl Write) -> fmt::Result {
    if in_one_word(num) {
        say_fraction((num, den), out)?;
        return out.write_str(if num == 1 && den <= LAST_ORDINAL { " inch" } else { " of an inch" });
    }
    say_mixed(0, (num, den), out)
}

fn in_one_word(number: u128) -> bool {
    number <= 20 || number < 100 && number % 10 == 0
}

/// `seventeen and five eighths inches`, `two hundred inches and five eighths`, `two hundred inches and nine over
/// one hundred twenty-seven of an inch`.
fn say_mixed(whole: u128, fraction: (u128, u128), out: &mut impl Write) -> fmt::Result {
    let hundreds = whole > 0 && whole % 100 == 0;
    write_cardinal(whole, out)?;
    write!(out, "{} and ", if hundreds { " inches" } else { "" })?;
    match fraction {
        (1, 2) => out.write_str("a half")?,
        _ => say_fraction(fraction, out)?,
    }
    out.write_str(match fraction {
        (_, den) if hundreds && den > LAST_ORDINAL => " of an inch",
        _ if hundreds => "",
        _ => " inches",
    })
}

/// `five eighths`, `fifty-five over one hundred twenty-seven`.
fn say_fraction((num, den): (u128, u128), out: &mut impl Write) -> fmt::Result {
    write_cardinal(num, out)?;
    if den > LAST_ORDINAL {
        out.write_str(" over ")?;
        return write_cardinal(den, out);
    }
    out.write_str(" ")?;
    #[allow(clippy::cast_possible_truncation)] // checked above
    write_ordinal(den as usize, num != 1, out)
}
