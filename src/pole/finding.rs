//! What is odd about a pole, said so that it can be looked at before wood is cut. How it is found is left to
//! `check.rs`.

use alloc::string::String;
use core::fmt;

use super::label::name;
use crate::length::Length;

/// Something about a pole that should be looked at again: a mistake, or something that is easily taken for one place.
///
/// Names in it are whole; `Display` shortens them.
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
    /// Two lines of a row that are less than one graduation apart, or one line with two parts on one side of it.
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
        /// How much of the pole both take up.
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

impl fmt::Display for Finding {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::OffStick { row, mark, position, length } => {
                write!(out, "row {}: {} is marked at {position}, off the stick, which is {length} long", name(row), name(mark))
            }
            Self::PastEnd { row, mark, edge, length } => {
                write!(
                    out,
                    "row {}: {} reaches to {edge}, past the end of the stick, which is {length} long",
                    name(row),
                    name(mark)
                )
            }
            Self::TooClose { row, marks: [one, other], places: [first, second], .. } if first == second => {
                write!(out, "row {}: {} and {} lie on the same side of one line, at {first}", name(row), name(one), name(other))
            }
            Self::TooClose { row, marks: [one, other], places, step } => {
                write!(out, "row {}: {} and {} ", name(row), name(one), name(other))?;
                apart(*places, *step, out)
            }
            Self::Overlap { row, marks: [one, other], by } => {
                write!(out, "row {}: {} and {} overlap by {by}", name(row), name(one), name(other))
            }
            Self::Disagree { mark, rows: [first, second], places: [one, other] } if one == other => {
                write!(
                    out,
                    "{} lies on another side of {} in row {} than in row {}",
                    name(mark),
                    one.0,
                    name(second),
                    name(first)
                )
            }
            Self::Disagree { mark, rows: [first, second], places } if first == second => {
                write!(out, "row {} has {} twice: ", name(first), name(mark))?;
                from_to(places[0], out)?;
                out.write_str(" and ")?;
                from_to(places[1], out)
            }
            Self::Disagree { mark, rows: [first, second], places } => {
                write!(out, "{} is ", name(mark))?;
                from_to(places[0], out)?;
                write!(out, " in row {} and ", name(first))?;
                from_to(places[1], out)?;
                write!(out, " in row {}", name(second))
            }
            Self::OnlyByRounding { marks: [one, other], rows: [first, second], places, step } => {
                write!(out, "{} in row {} and {} in row {} ", name(one), name(first), name(other), name(second))?;
                apart(*places, *step, out)?;
                out.write_str(": if they are one place, take the exact one for both")
            }
            Self::NotClosed { row, at_end, should, is } => {
                let (verb, end) = if *at_end { ("end", "ends") } else { ("begin", "begins") };
                match is {
                    None => write!(out, "row {} should {verb} at {should} and has no mark", name(row)),
                    Some(is) => {
                        write!(out, "row {} should {verb} at {should} and {end} at {is}", name(row))?;
                        off(*is, *should, out)
                    }
                }
            }
        }
    }
}

fn from_to((near, far): (Length, Length), out: &mut fmt::Formatter<'_>) -> fmt::Result {
    if near == far { write!(out, "at {near}") } else { write!(out, "from {near} to {far}") }
}

fn apart([one, other]: [Length; 2], step: Length, out: &mut fmt::Formatter<'_>) -> fmt::Result {
    match one.checked_sub(other) {
        Some(apart) => write!(out, "are {} apart, at {one} and {other}, less than one graduation of {step}", apart.abs()),
        None => write!(out, "are at {one} and {other}, less than one graduation of {step} apart"),
    }
}

fn off(is: Length, should: Length, out: &mut fmt::Formatter<'_>) -> fmt::Result {
    match is.checked_sub(should) {
        Some(off) => write!(out, ": {} {}", off.abs(), if off.is_negative() { "short" } else { "over" }),
        None => Ok(()),
    }
}
