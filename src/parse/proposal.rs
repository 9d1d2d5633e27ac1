//! What to write for a text that was refused, spelled out from its numbers. Which kind of error asks for which, and the
//! hints that need no more than the text to blame, are left to `hint.rs`.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

use num_rational::Ratio;

use super::error::ParseErrorKind as Kind;
use super::expression::either_hyphen;
use super::number::number;
use super::parser::{Comma, LengthParser};
use super::piece::Piece;
use super::reading::Reading;
use super::scan::blanks;
use super::separator::split;
use super::sides::two_sides;
use crate::length::Unit;

type Out<'a, 'b> = &'a mut fmt::Formatter<'b>;

/// `17−5/8`, `6'−3"`: joined or subtracted, where it can be joined.
pub(super) fn minus(first: Reading, second: Reading, out: Out<'_, '_>) -> fmt::Result {
    let (left, right) = (Marked(first), Marked(second));
    let (whole, part) = (first.parts().1 == 0, second.parts());
    let is_part = part.0 == 0 && part.1 > 0;
    let inches = matches!(second.unit(), None | Some(Unit::Inch));
    match first.unit() {
        None if whole && is_part => either_hyphen(&format!("{left}-{right}"), true, out),
        Some(Unit::Foot) if whole && inches => either_hyphen(&format!("{left}-{right}"), true, out),
        None if whole && second.unit().is_none() && part.1 == 0 => {
            write!(out, "write {left}'-{right}\" for feet and inches; to subtract, calculate {left} - {right}")
        }
        _ => write!(out, "to subtract, calculate {left} - {right}"),
    }
}

/// `5 ft.10 in`: the point of the abbreviation, or of the number.
pub(super) fn point((first, unit): (Reading, Unit), found: &str, second: Reading, out: Out<'_, '_>) -> fmt::Result {
    let (digits, unit) = (found.trim_start_matches('.'), unit.symbol());
    let behind = second.unit().map_or("", Unit::symbol);
    let (first, gap) = (Plain(first), if behind.is_empty() { "" } else { " " });
    write!(
        out,
        "this is {first} {unit} {digits}{gap}{behind} if the point ends {unit}, \
         {first} {unit} 0.{digits}{gap}{behind} if it is a decimal point: write it so"
    )
}

/// `1m5`, `1m200`: decimals, or millimeters.
pub(super) fn meters(first: Reading, found: &str, out: Out<'_, '_>) -> fmt::Result {
    let first = Plain(first);
    let plain = found.bytes().all(|byte| byte.is_ascii_digit());
    match found.len() {
        1 => write!(out, "write {first}.{found} m, {first}.0{found} m or {first} m {found} mm"),
        3 if plain => write!(out, "write {first}.{found} m or {first} m {found} mm"),
        _ => write!(out, "write a unit behind each number, as in {first} m {found} cm or {first} m {found} mm"),
    }
}

/// `5 1/2' 3"`: the same length with whole feet.
pub(super) fn carried(first: Reading, second: Reading, out: Out<'_, '_>) -> fmt::Result {
    let (Some(large), Some(small)) = (first.unit(), second.unit()) else { return out.write_str("put the part last") };
    let ratio = |reading: Reading| {
        let (whole, num, den) = reading.parts();
        Ratio::new(i128::from(whole * den + num), i128::from(den))
    };
    let scale = Ratio::new(large.ticks(), small.ticks());
    let total = ratio(first) * scale + ratio(second);
    let whole = (total / scale).to_integer();
    let rest = total - scale * whole;
    let marked = (large, small) == (Unit::Foot, Unit::Inch);
    let rest = Mixed(rest);
    if marked {
        write!(out, "write {whole}'-{rest}\"")?;
    } else {
        write!(out, "write {whole} {} {rest} {}", large.symbol(), small.symbol())?;
    }
    write!(out, " if {} and {} add up", Marked(first), Marked(second))
}

/// `5 3`, `29 000`, `1/2 3/4`: every way that two numbers side by side can be meant.
pub(super) fn two_numbers(found: &str, out: Out<'_, '_>) -> Option<fmt::Result> {
    let (rest, first) = number(found.as_bytes(), Comma::Refuse).ok()?;
    let behind = blanks(rest);
    let (end, second) = number(behind, Comma::Refuse).ok()?;
    let text = |from: usize, to: usize| found.get(found.len() - from..found.len() - to);
    let (one, other) = (text(found.len(), rest.len())?, text(behind.len(), end.len())?);
    if !end.is_empty() {
        return None;
    }
    let is_group = |text: &str| text.len() == 3 && text.bytes().all(|digit| digit.is_ascii_digit());
    let of_tape = [8, 16, 32, 64].into_iter().find(|den| second.whole < *den && second.whole % 2 == 1 && second.num == 0);
    Some(if first.num > 0 {
        write!(out, "give one length at a time, {one} or {other}; to add them, calculate {one} + {other}")
    } else if is_group(other) && one.len() <= 3 {
        write!(out, "write {one}{other} if the blank groups thousands, or say that a comma does; else put a unit behind {one}")
    } else if second.whole >= 12 {
        match of_tape {
            Some(den) => write!(out, "write {one} {other}/{den} for a fraction, or put a unit behind {one}"),
            None => write!(out, "put a unit behind {one}, or give one length at a time"),
        }
    } else {
        let feet = write!(out, "write {one}' {other}\" for feet and inches");
        feet.and_then(|()| of_tape.map_or(Ok(()), |den| write!(out, ", {one} {other}/{den} for a fraction")))
    })
}

/// `3 x 24 1/2` in a calculation: the same with the sign that only multiplies.
pub(super) fn product(found: &str, out: Out<'_, '_>) -> Option<fmt::Result> {
    let (pieces, count) = split(Piece::new(found)).ok()?;
    let factors = pieces[..count].iter().map(|piece| piece.text()).collect::<Vec<_>>();
    let known = factors.iter().all(|factor| !factor.is_empty());
    known.then(|| write!(out, "to multiply, write {}; a size such as 3/4 x 4' x 8' is not one length", factors.join(" * ")))
}

/// `12-04-08`: feet, inches and sixteenths, as far as its places can be.
pub(super) fn sixteenths(found: &str, out: Out<'_, '_>) -> fmt::Result {
    let mut fields = found.split(super::shorthand::DASHES).map(|field| field.parse::<u32>().ok());
    let fields = [(); 3].map(|()| fields.next().flatten());
    let [Some(feet), Some(inches @ ..12), Some(sixteenths @ ..16)] = fields else {
        return out.write_str("these are no feet-inches-sixteenths, which end at 11 and 15: mark each number with its unit");
    };
    write!(out, "if this is feet-inches-sixteenths, ask for that mode; else write {feet}'-{inches} {sixteenths}/16\"")
}

/// A bare tolerance behind a length in another unit than inches.
pub(super) fn tolerance(amount: &str, unit: Unit, out: Out<'_, '_>) -> fmt::Result {
    match unit {
        Unit::Inch => write!(out, "write {amount} in"),
        unit => write!(out, "write {amount} in or {amount} {}", unit.symbol()),
    }
}

/// Two sides with one sign, a hyphen that may join, or one side under with nothing over.
pub(super) fn sides(kind: Kind, found: &str, out: Out<'_, '_>) -> Option<fmt::Result> {
    if kind == Kind::NoTolerance {
        return one_side(found, out);
    }
    let [nominal, one, other] = two_sides(found)?;
    Some(if kind == Kind::ToleranceOneSign {
        write!(out, "write +{one} -{other}, or where both limits lie on one side, give a length between them")
    } else {
        // Only behind inches may a tolerance go without its unit, and what a hyphen joins to feet is inches.
        let mark = |amount: &str| if amount.ends_with(|last: char| last.is_ascii_digit()) { "\"" } else { "" };
        let (under, over) = (mark(one), mark(other));
        write!(
            out,
            "write {nominal}-{one}{under} +{other}{over} if the hyphen joins, \
             {nominal} +{other}{over} -{one}{under} if it is the side under"
        )
    })
}

/// `24 -1/32`: the side under alone, or a hyphen that joins and no tolerance at all.
fn one_side(found: &str, out: Out<'_, '_>) -> Option<fmt::Result> {
    let (nominal, under) = found.rsplit_once([' ', '('])?;
    let under = under.strip_prefix(['-', '−', '–'])?.trim_end_matches(')');
    let nominal = nominal.trim_end();
    let joined = format!("{nominal}-{under}");
    let joins = LengthParser::new().parse(&joined).is_ok();
    let written = match (under, joins) {
        ("", _) => return None,
        (_, true) => format!(", {joined} and its tolerance if the hyphen joins"),
        (_, false) => String::new(),
    };
    Some(write!(out, "write {nominal} +0 -{under} if it may only be under{written}"))
}

/// A number without its unit.
struct Plain(Reading);

/// A number with the mark or the symbol of its unit.
struct Marked(Reading);

/// A whole number and a fraction.
struct Mixed(Ratio<i128>);

impl fmt::Display for Plain {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (whole, num, den) = self.0.parts();
        let places = den.ilog10() as usize;
        // What was written in decimals is shown so.
        if places > 0 && den == 10_u64.pow(den.ilog10()) { write!(out, "{whole}.{num:0places$}") } else { self.0.fmt(out) }
    }
}

impl fmt::Display for Marked {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let number = Plain(self.0);
        match self.0.unit() {
            None => number.fmt(out),
            Some(Unit::Foot) => write!(out, "{number}'"),
            Some(Unit::Inch) => write!(out, "{number}\""),
            Some(unit) => write!(out, "{number} {}", unit.symbol()),
        }
    }
}

impl fmt::Display for Mixed {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (whole, part) = (self.0.to_integer(), self.0.fract());
        match (whole, *part.numer()) {
            (_, 0) => write!(out, "{whole}"),
            (0, _) => write!(out, "{part}"),
            _ => write!(out, "{whole} {part}"),
        }
    }
}
