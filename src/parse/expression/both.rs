//! Both readings of a hyphen or of a slash, worked out and spelled out from the piece of text that has them.
//! When there are two is left to `readings.rs`.

use alloc::format;
use alloc::string::String;
use core::fmt;

use num_rational::Ratio;

use crate::length::{Length, Unit};
use crate::parse::parser::LengthParser;
use crate::parse::scan::{dash, slash};

/// What to write for each reading of a hyphen: `72-3/4`, `6' - 2"`. A length alone is not subtracted from: that is to be
/// calculated.
pub(in crate::parse) fn either_hyphen(found: &str, is_length: bool, out: &mut fmt::Formatter<'_>) -> fmt::Result {
    match hyphen(found) {
        Some((subtracted, [joined, apart])) => {
            let calculate = if is_length { "calculate " } else { "" };
            write!(out, "this is {joined} joined, {apart} subtracted: write {joined} or {calculate}{subtracted}")
        }
        None => out.write_str("write a blank in its place to join, brackets round what it takes away to subtract"),
    }
}

/// What to write for each reading of a slash: `12 / 3/4`, `72/3/4`, `/ 3/4`, or a fraction with blanks in it.
pub(in crate::parse) fn either_slash(found: &str, out: &mut fmt::Formatter<'_>) -> fmt::Result {
    let Some((first, num, den)) = slashes(found) else {
        return out.write_str("write the fraction in brackets, as in (3/4), or put brackets round what is divided");
    };
    match quotients(first, num, den) {
        Some([one, two]) => write!(
            out,
            "this is {one} if {num}/{den} is a fraction, {two} if both signs divide: \
             write {first} / ({num}/{den}) or ({first} / {num}) / {den}"
        ),
        None => write!(out, "write / ({num}/{den}) to divide by the fraction, / {num} / {den} to divide twice"),
    }
}

/// How to write the subtraction, and the two values.
fn hyphen(found: &str) -> Option<(String, [Shown; 2])> {
    let (place, rest) = found.char_indices().skip(1).find_map(|(place, _)| Some((place, dash(&found.as_bytes()[place..])?)))?;
    let (left, right) = (found[..place].trim(), found[found.len() - rest.len()..].trim());
    let read = |text: &'_ str| LengthParser::new().read(text.as_bytes()).ok().map(|found| (found.length, found.last.unit));
    let ((whole, feet), (part, inches)) = (read(left)?, read(right)?);
    let subtracted = match (feet, inches) {
        (None, _) => format!("{left} - {right}"),
        (Some(_), Some(_)) => format!("{left} - ({right})"),
        (Some(_), None) => format!("{left} - ({right}\")"), // a bare number is not subtracted from feet
    };
    let shown = |length: Option<Length>| Some(Shown { length: length?, unit: feet.map(|_| Unit::Inch) });
    Some((subtracted, [shown(whole.checked_add(part))?, shown(whole.checked_sub(part))?]))
}

/// What is divided, which may be out of sight, and the two numbers behind it.
fn slashes(found: &str) -> Option<(&str, i64, i64)> {
    let is_slash = |char: char| slash(char.encode_utf8(&mut [0; 4]).as_bytes()).is_some();
    let (before, den) = found.rsplit_once(is_slash)?;
    let before = before.trim_end();
    let first = before.trim_end_matches(|char: char| char.is_ascii_digit());
    let num = &before[first.len()..];
    let first = first.trim_end();
    let divided = first.strip_suffix("divided by").or_else(|| first.strip_suffix(|char| is_slash(char) || char == '÷'))?;
    Some((divided.trim_end(), num.parse().ok()?, den.trim_start().parse().ok()?))
}

fn quotients(first: &str, num: i64, den: i64) -> Option<[Shown; 2]> {
    let found = LengthParser::new().read(first.as_bytes()).ok()?;
    let unit = if found.is_bare(first.as_bytes()) { None } else { Some(found.unit) };
    let by_both = found.length.checked_div(num)?.checked_div(den)?;
    let by_one = found.length.checked_mul(den)?.checked_div(num)?;
    Some([by_one, by_both].map(|length| Shown { length, unit }))
}

/// A length in one unit as a mixed number, without the unit's symbol where none was written.
struct Shown {
    length: Length,
    unit: Option<Unit>,
}

impl fmt::Display for Shown {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let ratio = self.length.in_unit(self.unit.unwrap_or(Unit::Inch));
        let (whole, part) = (ratio.to_integer(), Ratio::new_raw(ratio.numer() % ratio.denom(), *ratio.denom()));
        match (whole, *part.numer()) {
            (whole, 0) => write!(out, "{whole}")?,
            (0, _) => write!(out, "{part}")?,
            (whole, num) => write!(out, "{whole} {}/{}", num.unsigned_abs(), part.denom())?,
        }
        match self.unit {
            Some(unit) => write!(out, " {}", unit.symbol()),
            None => Ok(()),
        }
    }
}
