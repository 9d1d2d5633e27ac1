//! Where a line lies on the tape, in words for people who do not read fractions: from the numbers and the
//! longer lines, by counting. Which of them is counted from is left to `place.rs`.

use core::fmt::{self, Write};

use super::place::{Landmark, Place};
use super::rule::{Kind, Rule};
use crate::print::written::{Written, padded};

/// A line of a tape in words, made by [`TapeDrawing::words`](crate::TapeDrawing::words).
///
/// Two lines of one tape never have the same words. They name a landmark, or count from one:
///
/// | on the tape | landmarks, by the length of their lines |
/// | --- | --- |
/// | inches | *longest*: the numbers; *long*: the half; *medium*: the quarter and the three-quarter |
/// | millimeters | *longest*: the numbers, every 10; *long*: the middle line, every 5 |
/// | any other step | *longest*: the numbers |
///
/// Every line between two landmarks counts as one, whatever its length: the words say *line* and not *short line*, since
/// who counts the shortest alone, and passes over the eighths of an inch, marks a place a sixteenth off. Counting goes away from zero, *past* a landmark, or toward zero, *before* one, where that is nearer by far.
/// Below zero the words are those of the line as far above zero, with `below zero` behind them.
///
/// Its `Display` cannot fail and honors width and alignment, as that of [`Shown`](crate::Shown) does.
///
/// ```
/// use scantling::{Length, Tape, TapeDrawing, Unit};
///
/// let words = |tape: Tape, length| {
///     let drawing = TapeDrawing::new(&tape, &tape.read(length).unwrap()).unwrap();
///     drawing.words().to_string()
/// };
/// let sixteenths = |count| words(Tape::sixteenths(), Length::fraction(count, 16, Unit::Inch));
///
/// assert_eq!(sixteenths(272), "the longest line, at 17");
/// assert_eq!(sixteenths(273), "the first line past 17");
/// assert_eq!(sixteenths(276), "the medium line halfway between 17 and the half");
/// assert_eq!(sixteenths(280), "the long line halfway between 17 and 18");
/// assert_eq!(sixteenths(283), "the third line past the half, between 17 and 18");
/// assert_eq!(sixteenths(-283), "the third line past the half, between 17 and 18, below zero");
/// assert_eq!(sixteenths(30 * 12 * 16), "the longest line, at 360 (30 ft)");
///
/// let metric = words(Tape::millimeters(), Length::new(367, Unit::Millimeter));
/// assert_eq!(metric, "the second line past the middle line, between 360 and 370");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MarkInWords {
    pub(super) rule: Rule,
    pub(super) line: i128,
}

impl MarkInWords {
    /// The number at the nearest numbered line toward zero, without its sign, or at the next one out.
    fn number(self, next: bool) -> i128 {
        let whole = self.rule.interval(0);
        let size = self.line.abs();
        let toward_zero = size - size % whole;
        self.rule.number(if next { toward_zero + whole } else { toward_zero }).unwrap_or(0)
    }

    /// `17`, `the half`.
    fn name(self, at: Landmark, out: &mut impl Write) -> fmt::Result {
        match (at.part, at.parts, self.rule.kind) {
            (0, ..) => write!(out, "{}", self.number(false)),
            (part, parts, _) if part == parts => write!(out, "{}", self.number(true)),
            (_, 2, Kind::Millimeters) => out.write_str("the middle line"),
            (1, 4, _) => out.write_str("the quarter"),
            (3, 4, _) => out.write_str("the three-quarter"),
            _ => out.write_str("the half"),
        }
    }

    fn say_numbered(self, out: &mut impl Write) -> fmt::Result {
        let (number, (unit, _)) = (self.number(false), self.rule.flagged());
        let line = if self.rule.sizes() > 1 { "longest line, at" } else { "line at" };
        write!(out, "the {line} {number}")?;
        match self.rule.flag(self.line.abs()) {
            Some(flag) => write!(out, " ({flag} {})", unit.symbol()),
            None => Ok(()),
        }
    }

    /// `the long line halfway between 17 and 18`, `the medium line halfway between the half and 18`.
    fn say_landmark(self, at: Landmark, out: &mut impl Write) -> fmt::Result {
        let (length, around) = if 2 * at.part == at.parts { ("long", at.part) } else { ("medium", 1) };
        write!(out, "the {length} line halfway between ")?;
        self.name(Landmark { part: at.part - around, ..at }, out)?;
        out.write_str(" and ")?;
        self.name(Landmark { part: at.part + around, ..at }, out)
    }

    /// `the third line past the half, between 17 and 18`, `the first line past 17`.
    fn say_counted(self, from: Landmark, (lines, alone): (i128, bool), way: &str, out: &mut impl Write) -> fmt::Result {
        out.write_str("the ")?;
        if alone {
            write!(out, "line just {way} ")?;
        } else {
            write_ordinal(lines, out)?;
            write!(out, " line {way} ")?;
        }
        self.name(from, out)?;
        if from.part % from.parts == 0 {
            return Ok(());
        }
        write!(out, ", between {} and {}", self.number(false), self.number(true))
    }
}

impl Written for MarkInWords {
    fn write(self, out: &mut impl Write) -> fmt::Result {
        match self.rule.place(self.line) {
            Place::Numbered => self.say_numbered(out)?,
            Place::Landmark(at) => self.say_landmark(at, out)?,
            Place::Counted { from, lines, past, alone } => {
                self.say_counted(from, (lines, alone), if past { "past" } else { "before" }, out)?;
            }
        }
        out.write_str(if self.line < 0 { ", below zero" } else { "" })
    }
}

impl fmt::Display for MarkInWords {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(*self, out)
    }
}

/// `first`, `second`; past ten in figures, which are found faster on a long row: `11th`, `63rd`.
fn write_ordinal(count: i128, out: &mut impl Write) -> fmt::Result {
    const FEW: [&str; 10] = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];
    match (count, count % 100, count % 10) {
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // from one to ten
        (1..=10, ..) => out.write_str(FEW[count as usize - 1]),
        (_, 11..=13, _) => write!(out, "{count}th"),
        (.., 1) => write!(out, "{count}st"),
        (.., 2) => write!(out, "{count}nd"),
        (.., 3) => write!(out, "{count}rd"),
        _ => write!(out, "{count}th"),
    }
}
