//! Why a run cannot be divided as asked. Every refusal carries the lengths that a person at the bench
//! would check next.

use core::fmt;

use num_rational::Ratio;
use thiserror::Error;

use super::{Narrowest, Widest};
use crate::length::Length;
use crate::tape::TapeError;

/// Why a spacing does not go over a run.
///
/// ```
/// use scantling::{Length, Spacing, SpacingError, Unit};
///
/// let shelf = Length::fraction(3, 4, Unit::Inch);
/// let run = Length::new(3, Unit::Inch);
/// let refused = Spacing::equal_openings(5, shelf).over(run).unwrap_err();
/// assert_eq!(refused, SpacingError::DoesNotFit { members: 5, need: 5 * shelf, run, short: 5 * shelf - run });
/// ```
#[derive(Clone, Copy, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum SpacingError {
    /// A run below zero.
    #[error("a run cannot be {run} long: it must not be below zero")]
    NegativeRun {
        /// The run that was given.
        run: Length,
    },
    /// A member thinner than nothing.
    #[error("a member cannot be {thickness} thick: it must not be below zero")]
    NegativeThickness {
        /// The thickness that was given.
        thickness: Length,
    },
    /// An end margin below zero, that is a member past the end of the run.
    #[error("a margin cannot be {margin}: the member would lie past the end of the run")]
    NegativeMargin {
        /// The margin that was given.
        margin: Length,
    },
    /// A run divided into no parts at all.
    #[error("a run cannot be divided into zero parts")]
    ZeroParts,
    /// A size below zero that an opening is held to, kept under or over, or brought near to.
    #[error("an opening cannot be {opening}: it must not be below zero")]
    NegativeOpening {
        /// The size that was given.
        opening: Length,
    },
    /// A pitch that leaves no room for the members that stand on it.
    #[error("members {thickness} thick cannot stand {pitch} on center: a pitch is above zero, and no less than the thickness")]
    PitchTooShort {
        /// The pitch that was given, center to center.
        pitch: Length,
        /// How thick the members are.
        thickness: Length,
    },
    /// Half a gap asked for at an end of members on center, where no gap is the equal one.
    #[error("members on center have no equal gap to halve at an end: give a margin there, or leave it open")]
    NoGapToHalve,
    /// Drawers that would grow by a ratio of zero, or by one that has no value.
    #[error("drawers cannot grow by a ratio of {ratio}: it must be above zero")]
    NotAGrowth {
        /// The ratio that was given.
        ratio: Ratio<i128>,
    },
    /// An opening that is to be held, where there are not so many.
    #[error("no opening comes after member {after}: there {}", There(*.members))]
    NoSuchOpening {
        /// How many members would stand before it.
        after: usize,
        /// How many there are.
        members: usize,
    },
    /// Members and margins alone are longer than the run.
    #[error("{} {need}; the run is {run}: {short} short", Needs(*.members))]
    DoesNotFit {
        /// How many members there are.
        members: usize,
        /// What the members and every gap of fixed size take up.
        need: Length,
        /// The run they have to fit in.
        run: Length,
        /// How much longer the run would have to be.
        short: Length,
    },
    /// The run is not filled, and every gap is of fixed size: flush at both ends with no second
    /// member, or a margin at both ends of one.
    #[error("{} {need}; the run is {run}, and no gap is free to take the {left} left over", Needs(*.members))]
    NothingToShare {
        /// How many members there are.
        members: usize,
        /// What the members and every gap of fixed size take up.
        need: Length,
        /// The run they should fill.
        run: Length,
        /// What they leave over.
        left: Length,
    },
    /// A gap that grows or shrinks along the run has come out below zero.
    #[error("a gap comes out at {gap} in a run of {run}: it must not be below zero")]
    NegativeGap {
        /// The gap.
        gap: Length,
        /// The run.
        run: Length,
    },
    /// An opening wider than asked for.
    #[error("with {} the gap {} {} {gap}: it must be {widest}", Members(*.members), At(*.after), Comes(*.as_cut))]
    GapTooWide {
        /// How many members the layout has.
        members: usize,
        /// How many of them stand before the gap.
        after: usize,
        /// The gap, exactly or as it will be cut.
        gap: Length,
        /// What was asked for.
        widest: Widest,
        /// Whether the gap is the one that comes of cutting to the marks of a tape.
        as_cut: bool,
    },
    /// An opening narrower than asked for.
    #[error("with {} the gap {} {} {gap}: it must be {narrowest}", Members(*.members), At(*.after), Comes(*.as_cut))]
    GapTooNarrow {
        /// How many members the layout has.
        members: usize,
        /// How many of them stand before the gap.
        after: usize,
        /// The gap, exactly or as it will be cut.
        gap: Length,
        /// What was asked for.
        narrowest: Narrowest,
        /// Whether the gap is the one that comes of cutting to the marks of a tape.
        as_cut: bool,
    },
    /// A number of members to be found by gaps as cut that the tape can hardly tell from nothing.
    #[error("a gap of {limit} cannot be judged as cut on a tape with a graduation every {step}: take a finer one")]
    BelowGraduation {
        /// The widest or the narrowest gap that was asked for.
        limit: Length,
        /// The graduation.
        step: Length,
    },
    /// More gaps than are gone over one by one to judge them as cut, in one layout or in all that are tried for an answer.
    #[error("the gaps between {members} members are too many to judge as cut: at most {most} gaps for one answer")]
    TooManyToJudge {
        /// How many members there are, or how many were tried last.
        members: usize,
        /// How many gaps are judged for one answer.
        most: usize,
    },
    /// The tape cannot mark the layout.
    #[error(transparent)]
    Tape(#[from] TapeError),
    /// Fewer than two openings that are meant to be equal: nothing to cut a spacer block for.
    #[error("no two openings are meant to be equal, so no spacer block serves them")]
    NoEqualOpenings,
    /// Openings so small that rounding down leaves nothing of a spacer block.
    #[error("an opening of {opening} is under one graduation of {step}: no spacer block can be cut for it")]
    NoBlock {
        /// The opening.
        opening: Length,
        /// The graduation.
        step: Length,
    },
    /// Sizes to change so that openings come out whole, where the pitch is given and not the openings.
    #[error("members on center keep their pitch: no change of a size makes their openings come out whole")]
    PitchIsGiven,
    /// A printed chain with running totals for some links alone.
    #[error("{links} links with {totals} running totals cannot be checked: there must be one total at the end of each link")]
    TotalsMissing {
        /// How many links there are.
        links: usize,
        /// How many totals there are.
        totals: usize,
    },
    /// The exact positions are too long, or too finely divided, to be held, or the members too many to be counted.
    #[error("the exact layout of a run of {run} is out of range: longer, or more finely divided, than a length can hold")]
    OutOfRange {
        /// The run.
        run: Length,
    },
    /// A slice with fewer places than there are marks.
    #[error("{members} marks do not fit in {places} places")]
    TooFewPlaces {
        /// How many marks there are.
        members: usize,
        /// How many places the slice has.
        places: usize,
    },
}

/// So many members.
struct Members(usize);

impl fmt::Display for Members {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.0 {
            1 => out.write_str("1 member"),
            members => write!(out, "{members} members"),
        }
    }
}

/// How many members there are.
struct There(usize);

impl fmt::Display for There {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{} {}", if self.0 == 1 { "is" } else { "are" }, Members(self.0))
    }
}

/// Where the gap with so many members before it lies.
struct At(usize);

impl fmt::Display for At {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.0 {
            0 => out.write_str("at the near end"),
            after => write!(out, "after member {after}"),
        }
    }
}

/// How a gap comes to be what it is.
struct Comes(bool);

impl fmt::Display for Comes {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(if self.0 { "would be cut at" } else { "comes out at" })
    }
}

/// The subject of a refusal: what needs the room.
struct Needs(usize);

impl fmt::Display for Needs {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}, with any fixed gaps, {}", Members(self.0), if self.0 == 1 { "needs" } else { "need" })
    }
}
