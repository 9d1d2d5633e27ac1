//! What is odd about a pole, said so that it can be looked at before wood is cut. How it is found is left to
//! `check.rs`.

use alloc::format;
use alloc::string::{String, ToString as _};
use core::fmt;

use super::figure::Figures;
use super::label::name;
use crate::length::Length;
use crate::tape::Tape;

/// Something about a pole that should be looked at again: a mistake, or something that is easily taken for one place.
///
/// Names in it are whole; `Display` shortens them. Lengths are exact, and shown in inches; [`told`](Self::told) shows them
/// in the unit of a tape.
///
/// ```
/// use scantling::{Finding, Length, Mark, PartSide, StoryPole, Tape, Unit};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// let top = Mark::new(inches(73), "top", PartSide::Before);
/// let pole = StoryPole::new("ware case", inches(72)).row("side", [top])?;
/// let findings = pole.check(&Tape::sixteenths());
/// assert!(matches!(&findings[..], [Finding::OffStick { mark, .. }] if mark == "top"));
/// assert_eq!(findings[0].to_string(), r#"row side: top is marked at 73", off the stick, which is 72" long"#);
/// # Ok::<(), scantling::PoleError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Finding {
    /// A line that does not lie on the stick.
    OffStick {
        /// The row.
        row: String,
        /// The mark.
        mark: String,
        /// Where its line is.
        position: Length,
        /// How long the stick is.
        length: Length,
    },
    /// A part whose line is on the stick, and which reaches past an end of it.
    PastEnd {
        /// The row.
        row: String,
        /// The mark.
        mark: String,
        /// The edge that is off the stick.
        edge: Length,
        /// How long the stick is.
        length: Length,
    },
    /// Two lines of a row that are less than one graduation apart.
    TooClose {
        /// The row.
        row: String,
        /// The two marks.
        marks: [String; 2],
        /// Where their lines are.
        places: [Length; 2],
        /// One graduation.
        step: Length,
    },
    /// Two parts of a row in one place: position, thickness and side taken together.
    Overlap {
        /// The row.
        row: String,
        /// The two marks.
        marks: [String; 2],
        /// Where both of them are, from the place nearest to the datum on.
        from: Length,
        /// How much of the pole both take up; zero where the thickness of one of them is not known.
        by: Length,
    },
    /// Two marks of one name that are not of one place.
    Disagree {
        /// The name.
        mark: String,
        /// The rows they are in, which may be one.
        rows: [String; 2],
        /// The edges of the part as each has it; the line twice, where no thickness is known.
        places: [(Length, Length); 2],
    },
    /// Two marks that are less than one graduation apart without being at one place: most likely one of them was
    /// rounded, and the other not.
    OnlyByRounding {
        /// The two marks.
        marks: [String; 2],
        /// The rows they are in.
        rows: [String; 2],
        /// Where they are.
        places: [Length; 2],
        /// One graduation.
        step: Length,
    },
    /// A row that does not begin or does not end where it must.
    NotClosed {
        /// The row.
        row: String,
        /// Whether it is its end that is elsewhere, or its beginning.
        at_end: bool,
        /// Where it should be.
        should: Length,
        /// Where it is, unless the row has no mark.
        is: Option<Length>,
    },
}

impl Finding {
    /// The finding in words, with lengths in the unit of this tape.
    ///
    /// ```
    /// use scantling::{Length, Mark, PartSide, StoryPole, Tape, Unit};
    ///
    /// let millimeters = |count| Length::new(count, Unit::Millimeter);
    /// let top = Mark::new(millimeters(1102), "top", PartSide::Before);
    /// let pole = StoryPole::new("ware case", millimeters(1000)).row("side", [top])?;
    /// let tape = Tape::millimeters();
    /// assert_eq!(
    ///     pole.check(&tape)[0].told(&tape),
    ///     "row side: top is marked at 1102 mm, off the stick, which is 1000 mm long"
    /// );
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    #[must_use]
    pub fn told(&self, tape: &Tape) -> String {
        Told { finding: self, figures: Figures::of(tape) }.to_string()
    }
}

impl fmt::Display for Finding {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        Told { finding: self, figures: Figures::INCHES }.fmt(out)
    }
}

struct Told<'a> {
    finding: &'a Finding,
    figures: Figures,
}

impl fmt::Display for Told<'_> {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let at = |length: &Length| self.figures.exact_text(*length);
        match self.finding {
            Finding::OffStick { row, mark, position, length } => {
                let (row, mark) = (name(row), name(mark));
                write!(out, "row {row}: {mark} is marked at {}, off the stick, which is {} long", at(position), at(length))
            }
            Finding::PastEnd { row, mark, edge, length } => {
                let (row, mark, end) = (name(row), name(mark), if edge.is_negative() { "datum end" } else { "end" });
                write!(
                    out,
                    "row {row}: {mark} reaches to {}, past the {end} of the stick, which is {} long",
                    at(edge),
                    at(length)
                )
            }
            Finding::TooClose { row, marks: [one, other], places, step } => {
                write!(out, "row {}: {} and {} ", name(row), name(one), name(other))?;
                self.apart(*places, *step, out)
            }
            Finding::Overlap { row, marks: [one, other], from, by } => {
                write!(out, "row {}: {} and {} overlap ", name(row), name(one), name(other))?;
                if by.is_zero() { write!(out, "at {}", at(from)) } else { write!(out, "by {}, from {} on", at(by), at(from)) }
            }
            Finding::Disagree { mark, rows: [first, second], places: [one, other] } if one == other => {
                let (mark, first, second) = (name(mark), name(first), name(second));
                write!(out, "{mark} lies on another side of {} in row {second} than in row {first}", at(&one.0))
            }
            Finding::Disagree { mark, rows: [first, second], places: [one, other] } => {
                let (one, other) = (self.between(*one), self.between(*other));
                let (mark, row, next) = (name(mark), name(first), name(second));
                if first == second {
                    return write!(out, "row {row} has {mark} twice: {one} and {other}");
                }
                write!(out, "{mark} is {one} in row {row} and {other} in row {next}")
            }
            Finding::OnlyByRounding { marks: [one, other], rows: [first, second], places, step } => {
                write!(out, "{} in row {} and {} in row {} ", name(one), name(first), name(other), name(second))?;
                self.apart(*places, *step, out)?;
                out.write_str(": if they are one place, take the exact one for both")
            }
            Finding::NotClosed { row, at_end, should, is } => {
                let (verb, end) = if *at_end { ("end", "ends") } else { ("begin", "begins") };
                write!(out, "row {} should {verb} at {} and ", name(row), at(should))?;
                match is {
                    None => out.write_str("has no mark"),
                    Some(is) => write!(out, "{end} at {}{}", at(is), self.off(*is, *should)),
                }
            }
        }
    }
}

impl Told<'_> {
    fn between(&self, (near, far): (Length, Length)) -> String {
        let at = |length| self.figures.exact_text(length);
        if near == far { format!("at {}", at(near)) } else { format!("from {} to {}", at(near), at(far)) }
    }

    fn apart(&self, [one, other]: [Length; 2], step: Length, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let [at, to, step] = [one, other, step].map(|length| self.figures.exact_text(length));
        match one.checked_sub(other).map(|apart| self.figures.exact_text(apart.abs())) {
            Some(apart) => write!(out, "are {apart} apart, at {at} and {to}, less than one graduation of {step}"),
            None => write!(out, "are at {at} and {to}, less than one graduation of {step} apart"),
        }
    }

    /// By how much a row does not close: what lies nearer to the datum than it should is short, farther is over.
    fn off(&self, is: Length, should: Length) -> String {
        let words = |off: Length| {
            let way = if off.is_negative() { "short" } else { "over" };
            format!(": {} {way}", self.figures.exact_text(off.abs()))
        };
        is.checked_sub(should).map_or_else(String::new, words)
    }
}
