//! Numbers and units as words: cardinals, the ordinals below a fraction's line, the names of units. How
//! they make up a length is left to `spoken.rs`.

use core::fmt::{self, Write};

use super::fraction::Digits;
use crate::length::Unit;

#[rustfmt::skip] // read in rows
const UNITS: [&str; 20] = [
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen",
    "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
];

const TENS: [&str; 10] = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

/// Short scale, up to the largest number of 128 bits.
#[rustfmt::skip] // read in rows
const THOUSANDS: [&str; 13] = [
    "", " thousand", " million", " billion", " trillion", " quadrillion", " quintillion", " sextillion", " septillion",
    " octillion", " nonillion", " decillion", " undecillion",
];

#[rustfmt::skip] // read in rows
const ORDINALS: [&str; 20] = [
    "", "first", "half", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth",
    "thirteenth", "fourteenth", "fifteenth", "sixteenth", "seventeenth", "eighteenth", "nineteenth",
];

/// `one hundred forty-four`: without an `and`, which stands between a whole number and a fraction and
/// nowhere else.
pub(super) fn write_cardinal(number: u128, out: &mut impl Write) -> fmt::Result {
    if number == 0 {
        return out.write_str(UNITS[0]);
    }
    let mut blank = "";
    for (power, name) in THOUSANDS.iter().enumerate().rev() {
        #[allow(clippy::cast_possible_truncation)] // three digits, and a power of at most 36
        let group = (number / 10_u128.pow(3 * power as u32) % 1000) as usize;
        if group > 0 {
            out.write_str(blank)?;
            write_group(group, out)?;
            out.write_str(name)?;
            blank = " ";
        }
    }
    Ok(())
}

/// From one to 999.
fn write_group(group: usize, out: &mut impl Write) -> fmt::Result {
    let (hundreds, rest) = (group / 100, group % 100);
    if hundreds > 0 {
        out.write_str(UNITS[hundreds])?;
        out.write_str(if rest > 0 { " hundred " } else { " hundred" })?;
    }
    match (rest / 10, rest % 10) {
        _ if rest == 0 => Ok(()),
        (0 | 1, _) => out.write_str(UNITS[rest]),
        (tens, 0) => out.write_str(TENS[tens]),
        (tens, ones) => write!(out, "{}-{}", TENS[tens], UNITS[ones]),
    }
}

/// `six seven five`, each digit by itself, as they are said behind a decimal point.
pub(super) fn digits_said<W: Write>(out: &mut W) -> Digits<'_, W> {
    const DIGITS: [&str; 10] = [" zero", " one", " two", " three", " four", " five", " six", " seven", " eight", " nine"];
    Digits { out, forms: &DIGITS }
}

/// The largest denominator that is said as an ordinal. Past it ordinals run into the number above the
/// line: `one one hundred twenty-eighth` could be 1/128 or 101/28.
pub(super) const LAST_ORDINAL: u128 = 64;

/// `eighth`, `sixteenths`, `thirty-second`: what a fraction of two to 64 parts is named after.
pub(super) fn write_ordinal(den: usize, plural: bool, out: &mut impl Write) -> fmt::Result {
    match (den, den / 10, den % 10) {
        (4, ..) => out.write_str("quarter")?,
        (0..20, ..) => out.write_str(ORDINALS[den])?,
        (_, tens, 0) => write!(out, "{}ieth", TENS[tens].trim_end_matches('y'))?,
        (_, tens, 2) => write!(out, "{}-second", TENS[tens])?,
        (_, tens, ones) => write!(out, "{}-{}", TENS[tens], ORDINALS[ones])?,
    }
    out.write_str(if plural { "s" } else { "" })
}

pub(super) const fn plural(unit: Unit) -> &'static str {
    match unit {
        Unit::Inch => "inches",
        Unit::Foot => "feet",
        Unit::Yard => "yards",
        Unit::Millimeter => "millimeters",
        Unit::Centimeter => "centimeters",
        Unit::Meter => "meters",
    }
}

/// A unit as it follows one of it, or any other number.
pub(super) const fn named(unit: Unit, one: bool) -> &'static str {
    match unit {
        _ if !one => plural(unit),
        Unit::Inch => "inch",
        Unit::Foot => "foot",
        Unit::Yard => "yard",
        Unit::Millimeter => "millimeter",
        Unit::Centimeter => "centimeter",
        Unit::Meter => "meter",
    }
}
