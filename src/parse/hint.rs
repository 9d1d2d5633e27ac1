//! What to write instead: fixed words for most kinds of error, worked out from the text for the few
//! where the right answer can be named.

use core::fmt;

use super::error::{ParseError, ParseErrorKind as Kind};
use super::expression::{either_hyphen, either_slash};
use super::glyph::{Glyph, glyph};
use super::misspelled::nearest;
use super::number::{Form, Number, lost_blank};
use super::proposal;
use super::reading::Reading;
use super::scan::{dash, push_digit, slash};

/// A suggestion, to be shown as it is.
///
/// ```
/// use scantling::Length;
///
/// let error = "1,250".parse::<Length>().unwrap_err();
/// assert_eq!(
///     error.hint().unwrap().to_string(),
///     "this is 1250 if the comma groups thousands, 1.250 if it is a decimal comma: write it so, or say which a comma is"
/// );
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Hint<'a> {
    kind: Kind,
    found: &'a str,
    readings: [Option<Reading>; 2],
}

impl<'a> Hint<'a> {
    pub(super) fn new(error: &'a ParseError) -> Option<Self> {
        // Nothing can be worked out from the beginning of a long text alone, and a hint is one line.
        let found = error.found();
        let found = if found.len() == error.span().len() && !found.contains(char::is_control) { found } else { "" };
        let hint = Self { kind: error.kind(), found, readings: error.readings() };
        let of_figures = matches!(
            hint.kind,
            Kind::ImproperFraction
                | Kind::LostBlank
                | Kind::CommaReadings
                | Kind::ApostropheReadings
                | Kind::HyphenReadings
                | Kind::DashReadings
                | Kind::JoinedNumbers
                | Kind::SlashReadings
        );
        let of_words = matches!(hint.kind, Kind::SpokenReadings | Kind::CrewCode);
        let misspelled = hint.kind == Kind::UnknownUnit && nearest(found).is_some();
        (of_figures || of_words || misspelled || !error.kind().wording().hint.is_empty()).then_some(hint)
    }

    fn joined(self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.found.split_once('-') {
            Some((first, second)) => {
                write!(out, "write {first}'-{second}\" for feet and inches; to subtract, calculate {first} - {second}")
            }
            None => out.write_str("mark the feet and the inches; to subtract, calculate"),
        }
    }

    fn improper(self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let [Some(said), _] = self.readings {
            let (whole, num, den) = said.parts();
            out.write_str("write ")?;
            let fraction = Number { whole: 0, num: num.into(), den: den.into(), form: Form::Fraction };
            carried_over(out, u128::from(whole + num / den), &fraction)?;
            return said.unit().map_or(Ok(()), |unit| write!(out, " {}", unit.symbol()));
        }
        let known = mixed(self.found);
        let Some((fraction, carried)) = known.and_then(|(whole, it)| Some((it, whole.checked_add(it.num / it.den)?))) else {
            return out.write_str("carry the whole part of the fraction");
        };
        // Behind feet the fraction is of an inch.
        let [_, feet] = self.readings;
        let feet = |out: &mut fmt::Formatter<'_>| feet.map_or(Ok(()), |feet| write!(out, "{feet}' "));
        let mark = self.readings[1].map_or("", |_| "\"");
        out.write_str("write ")?;
        feet(out)?;
        carried_over(out, carried, &fraction)?;
        out.write_str(mark)?;
        match lost_blank(fraction.num, fraction.den).filter(|_| carried == fraction.num / fraction.den) {
            Some((whole, part)) => {
                out.write_str(", or ")?;
                feet(out)?;
                write!(out, "{whole} {part}/{}{mark} if a blank was lost", fraction.den)
            }
            None => Ok(()),
        }
    }

    /// What is worked out from numbers; `None` where they are out of sight, or no others are asked for.
    fn proposal(self, out: &mut fmt::Formatter<'_>) -> Option<fmt::Result> {
        match (self.kind, self.readings) {
            _ if self.found.is_empty() => None,
            (Kind::MinusJoins, [Some(first), Some(second)]) => Some(proposal::minus(first, second, out)),
            (Kind::PointReadings, [Some(first), Some(second)]) => {
                Some(proposal::point((first, first.unit()?), self.found, second, out))
            }
            (Kind::MeterDecimals, [Some(first), _]) => Some(proposal::meters(first, self.found, out)),
            (Kind::FractionNotLast, [Some(first), Some(second)]) => Some(proposal::carried(first, second, out)),
            (Kind::ToleranceUnit | Kind::SizeUnits, [Some(nominal), _]) => {
                Some(proposal::tolerance(self.found, nominal.unit()?, out))
            }
            (Kind::ToleranceOneSign | Kind::ToleranceReadings | Kind::NoTolerance, _) => {
                proposal::sides(self.kind, self.found, out)
            }
            (Kind::TwoNumbers, _) => proposal::two_numbers(self.found, out),
            (Kind::SizeOrProduct, _) => proposal::product(self.found, out),
            (Kind::FeetInchesSixteenths, _) => Some(proposal::sixteenths(self.found, out)),
            (Kind::UnknownUnit, _) => Some(write!(out, "write {} if that is meant", nearest(self.found)?)),
            (Kind::PointGroup, _) => {
                let (thousands, rest) = self.found.split_once('.')?;
                Some(write!(out, "write {thousands}{rest} for the thousands, {thousands},{rest} for the decimals"))
            }
            _ => None,
        }
    }

    /// Both readings, each only where it is one: groups have three digits, decimals have one comma.
    fn comma(self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let plain = self.found.bytes().all(|byte| byte.is_ascii_digit() || matches!(byte, b',' | b'.'));
        if self.found.is_empty() || !plain {
            return out.write_str("write it without a comma, or say which a comma is");
        }
        let groups = self.found.split(',').skip(1).all(|group| group.split('.').next().is_some_and(|it| it.len() == 3));
        let decimal = self.found.matches(',').count() == 1 && !self.found.contains('.');
        out.write_str("this is ")?;
        if groups {
            self.found.split(',').try_for_each(|group| out.write_str(group))?;
            out.write_str(" if the comma groups thousands")?;
        }
        if let (true, Some((whole, decimals))) = (decimal, self.found.split_once(',')) {
            write!(out, "{}{whole}.{decimals} if it is a decimal comma", if groups { ", " } else { "" })?;
        }
        if !groups && !decimal {
            out.write_str("neither grouped thousands nor a decimal")?;
        }
        out.write_str(": write it so, or say which a comma is")
    }

    /// What the words could mean, in the order of its finding.
    fn spoken(self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let [Some(one), Some(other)] = self.readings else {
            return out.write_str("put a unit behind the whole number, as in twenty inches and five eighths");
        };
        write!(out, "write {one} or {other}")?;
        other.unit().map_or(Ok(()), |unit| write!(out, " {}", unit.symbol()))
    }

    /// What crews mean by two numbers, each only where it can be meant.
    fn crew_code(self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        const UNITS: &str = "put a unit behind each number";
        let [Some(first), Some(second)] = self.readings else {
            return out.write_str(UNITS);
        };
        let ((many, ..), (few, num, den)) = (first.parts(), second.parts());
        let is_one_number = (1..100).contains(&many) && (10..100).contains(&few) && num == 0;
        if few >= 16 && !is_one_number {
            return out.write_str(UNITS);
        }
        out.write_str("write ")?;
        if few < 12 {
            write!(out, "{first}'-{second}\" for feet and inches, ")?;
        }
        if few < 16 {
            write!(out, "{first} {}/{} for inches and sixteenths", few * den + num, 16 * den)?;
        }
        if is_one_number {
            write!(out, "{}{} for one number", if few < 16 { ", " } else { "" }, many * 100 + few)?;
        }
        Ok(())
    }

    fn apostrophe(self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let parts = self.found.split_once(|mark: char| !mark.is_ascii_digit());
        let Some((feet, rest)) = parts.filter(|(_, rest)| rest.bytes().all(|byte| byte.is_ascii_digit())) else {
            return out.write_str("put a blank behind the foot mark, or leave the mark out");
        };
        write!(out, "this is {feet}{rest} if the mark groups thousands, {feet}' {rest}\" if it means feet: write it so")
    }
}

impl fmt::Display for Hint<'_> {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.kind {
            Kind::ImproperFraction | Kind::LostBlank => self.improper(out),
            Kind::CommaReadings => self.comma(out),
            Kind::ApostropheReadings => self.apostrophe(out),
            Kind::SpokenReadings => self.spoken(out),
            Kind::CrewCode => self.crew_code(out),
            Kind::HyphenReadings | Kind::DashReadings => either_hyphen(self.found, self.kind == Kind::DashReadings, out),
            Kind::JoinedNumbers => self.joined(out),
            Kind::SlashReadings => either_slash(self.found, out),
            kind => self.proposal(out).unwrap_or_else(|| out.write_str(kind.wording().hint)),
        }
    }
}

/// A whole number and a fraction, with what the fraction holds of whole ones already added.
fn carried_over(out: &mut fmt::Formatter<'_>, whole: u128, fraction: &Number) -> fmt::Result {
    match fraction.num % fraction.den {
        0 => write!(out, "{whole}"),
        rest => write!(out, "{whole} {rest}/{}", fraction.den),
    }
}

/// The whole number, zero if there is none, and the fraction of a text such as `17 9/8`, `17–9⁄8` or `61/2`. Not through
/// `number.rs`, which refuses the very texts that need a hint.
fn mixed(found: &str) -> Option<(u128, Number)> {
    let (first, rest) = run(found)?;
    let bytes = rest.as_bytes();
    let (whole, (num, rest)) = match slash(rest.trim_start().as_bytes()) {
        Some(_) => (0, (first, rest.trim_start())),
        None => (first, run(dash(bytes).map_or(rest, |behind| &rest[rest.len() - behind.len()..]).trim_start())?),
    };
    let behind = slash(rest.trim_start().as_bytes())?;
    let (den, _) = run(rest[rest.len() - behind.len()..].trim_start())?;
    (den > 0).then_some((whole, Number { whole: 0, num, den, form: Form::Fraction }))
}

/// A run of digits, on the line or raised or lowered, and what stands behind it.
fn run(text: &str) -> Option<(u128, &str)> {
    let digit = |letter: char| match glyph(letter.encode_utf8(&mut [0; 4]).as_bytes()) {
        Some((Glyph::Raised(digit) | Glyph::Lowered(digit), _)) => Some(digit),
        _ => letter.to_digit(10).and_then(|digit| u8::try_from(digit).ok()),
    };
    let end = text.find(|letter| digit(letter).is_none()).unwrap_or(text.len());
    let value = text[..end].chars().filter_map(digit).try_fold(0, push_digit)?;
    Some((value, &text[end..]))
}
