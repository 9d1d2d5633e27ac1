//! How wide and how narrow a gap may be, and a layout held to it: exactly, or as it will be cut with
//! a tape. How many members that takes is left to `count.rs`.

use core::fmt;

use super::{Edge, Layout, Spacing, SpacingError};
use crate::length::{Length, Unit};
use crate::tape::Tape;

/// More gaps than any run in a shop has; as cut they are gone over one by one, for one answer no more of them than this.
pub(super) const MOST_JUDGED: usize = 4_000_000;
/// What laying a candidate out costs, in gaps judged: measured, some hundreds at the least.
const LAID_OUT: usize = 1000;

/// How wide a gap may be.
///
/// ```
/// use scantling::{Length, SpacingError, Spacing, Unit, Widest};
///
/// let four = Length::new(4, Unit::Inch);
/// let slat = Length::fraction(3, 2, Unit::Inch);
/// let run = Length::fraction(147, 2, Unit::Inch); // 73 1/2 in
/// assert_eq!(Spacing::fewest_members(slat, Widest::Under(four)).over(run)?.members(), 13);
///
/// let refused = Spacing::equal_openings(12, slat).widest(Widest::AtMost(four)).over(run).unwrap_err();
/// assert_eq!(refused.to_string(), r#"with 12 members the gap at the near end comes out at 4 7/26": it must be at most 4""#);
/// # Ok::<(), SpacingError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Widest {
    /// Every gap stays under this: just this much is too wide.
    Under(Length),
    /// No gap is over this: just this much will do.
    AtMost(Length),
}

/// How narrow a gap may be.
///
/// Only full gaps are held to it. An end that is flush, half a gap or a margin is meant to be what it is.
///
/// ```
/// use scantling::{End, Length, Narrowest, Spacing, Unit};
///
/// // Deck boards of 5 1/2 in on 10 ft, none of them ripped, at least 1/8 in for the water between them.
/// let board = Length::fraction(11, 2, Unit::Inch);
/// let deck = Spacing::most_members(board, Narrowest::AtLeast(Length::fraction(1, 8, Unit::Inch)));
/// let layout = deck.near_end(End::Flush).far_end(End::Flush).over(Length::new(10, Unit::Foot))?;
/// assert_eq!((layout.members(), layout.opening()), (21, Length::fraction(9, 40, Unit::Inch)));
/// # Ok::<(), scantling::SpacingError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Narrowest {
    /// Every gap stays over this: just this much is too narrow.
    Over(Length),
    /// No gap is under this: just this much will do.
    AtLeast(Length),
}

impl Widest {
    /// The opening of a guard along a raised floor: under 4 in, so that a ball of 4 in does not pass.
    ///
    /// **Caution.** This is the general rule of the *International Residential Code*, R312.1.3 (2018 edition): no
    /// opening of a required guard, from the walking surface up to the required height, may let a sphere of 4 in
    /// (102 mm) through. The same section sets other sizes for stairs, other codes set others, and what is in
    /// force is what the local building department says. Ask there before building, judge the gaps
    /// [as they will be cut](Spacing::as_cut), and measure what was built: members bow, and wood shrinks.
    ///
    /// ```
    /// use scantling::{Length, Spacing, Tape, Unit, Widest};
    ///
    /// let slat = Length::fraction(3, 2, Unit::Inch);
    /// let rail = Length::fraction(161, 2, Unit::Inch); // 80 1/2 in between the posts
    /// let guard = Spacing::fewest_members(slat, Widest::GUARD);
    /// // Fourteen leave 3 29/30 in exactly, but some of the gaps would be cut at 4 in.
    /// assert_eq!(guard.over(rail)?.members(), 14);
    /// assert_eq!(guard.as_cut(&Tape::sixteenths()).over(rail)?.members(), 15);
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    pub const GUARD: Self = Self::Under(Length::new(4, Unit::Inch));

    /// Whether a gap is not too wide.
    ///
    /// ```
    /// use scantling::{Length, Unit, Widest};
    ///
    /// let four = Length::new(4, Unit::Inch);
    /// assert!(Widest::AtMost(four).allows(four) && !Widest::Under(four).allows(four));
    /// ```
    #[must_use]
    pub fn allows(self, gap: Length) -> bool {
        match self {
            Self::Under(limit) => gap < limit,
            Self::AtMost(limit) => gap <= limit,
        }
    }

    /// The size that gaps stay under or do not pass.
    ///
    /// ```
    /// use scantling::{Length, Unit, Widest};
    ///
    /// assert_eq!(Widest::GUARD.length(), Length::new(4, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn length(self) -> Length {
        match self {
            Self::Under(limit) | Self::AtMost(limit) => limit,
        }
    }
}

impl Narrowest {
    /// Whether a gap is not too narrow.
    ///
    /// ```
    /// use scantling::{Length, Narrowest, Unit};
    ///
    /// let eighth = Length::fraction(1, 8, Unit::Inch);
    /// assert!(Narrowest::AtLeast(eighth).allows(eighth) && !Narrowest::Over(eighth).allows(eighth));
    /// ```
    #[must_use]
    pub fn allows(self, gap: Length) -> bool {
        match self {
            Self::Over(limit) => gap > limit,
            Self::AtLeast(limit) => gap >= limit,
        }
    }

    /// The size that gaps stay over or do not fall short of.
    ///
    /// ```
    /// use scantling::{Length, Narrowest, Unit};
    ///
    /// let eighth = Length::fraction(1, 8, Unit::Inch);
    /// assert_eq!(Narrowest::Over(eighth).length(), eighth);
    /// ```
    #[must_use]
    pub const fn length(self) -> Length {
        match self {
            Self::Over(limit) | Self::AtLeast(limit) => limit,
        }
    }
}

/// As it ends a sentence: `under 4"`, `at most 4"`.
impl fmt::Display for Widest {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{} {}", if matches!(self, Self::Under(_)) { "under" } else { "at most" }, self.length())
    }
}

/// As it ends a sentence: `over 1/8"`, `at least 1/8"`.
impl fmt::Display for Narrowest {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{} {}", if matches!(self, Self::Over(_)) { "over" } else { "at least" }, self.length())
    }
}

/// What every gap of a spacing must keep to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Limits {
    pub(super) widest: Option<Widest>,
    pub(super) narrowest: Option<Narrowest>,
    /// The tape, and the edge marked with it, if gaps are judged as cut.
    pub(super) cut: Option<(Tape, Edge)>,
}

impl Limits {
    pub(super) const NONE: Self = Self { widest: None, narrowest: None, cut: None };

    pub(super) fn check(&self) -> Result<(), SpacingError> {
        let sizes = [self.widest.map(Widest::length), self.narrowest.map(Narrowest::length)];
        match sizes.into_iter().flatten().find(|size| size.is_negative()) {
            Some(opening) => Err(SpacingError::NegativeOpening { opening }),
            None => Ok(()),
        }
    }
}

/// How many gaps as cut may still be gone over for one answer, however many layouts are tried for it.
pub(super) struct Patience {
    left: usize,
}

impl Patience {
    pub(super) const fn fresh() -> Self {
        Self { left: MOST_JUDGED }
    }

    fn spend(&mut self, gaps: usize, members: usize) -> Result<(), SpacingError> {
        let left = self.left.checked_sub(gaps).ok_or(SpacingError::TooManyToJudge { members, most: MOST_JUDGED })?;
        self.left = left;
        Ok(())
    }
}

impl Spacing {
    /// Holds every gap to the limits, as cut if so asked.
    pub(super) fn judge(&self, layout: &Layout, patience: &mut Patience) -> Result<(), SpacingError> {
        let (true, Some((tape, edge))) = (self.is_limited(), self.limits.cut) else { return self.judge_exactly(layout) };
        let members = layout.members();
        if members > MOST_JUDGED {
            // Known before the first of them is judged.
            return Err(SpacingError::TooManyToJudge { members, most: MOST_JUDGED });
        }
        patience.spend(layout.stretches.len().saturating_add(LAID_OUT), members)?;
        let marked = layout.on_edge(&tape, edge)?;
        // The last one first: most layouts that fail do so at once, or there.
        let last = marked.gap(members).map(|gap| (members, gap));
        last.into_iter().chain(marked.gaps().enumerate()).try_for_each(|(after, gap)| {
            patience.spend(1, members)?;
            self.judge_gap(members, true, after, gap)
        })
    }

    /// Holds the exact gaps to the limits.
    pub(super) fn judge_exactly(&self, layout: &Layout) -> Result<(), SpacingError> {
        layout.some_of_each_kind().try_for_each(|(after, gap)| self.judge_gap(layout.members(), false, after, gap))
    }

    pub(super) fn is_limited(&self) -> bool {
        self.limits.widest.is_some() || self.limits.narrowest.is_some()
    }

    /// Whether the gap with so many members before it is a full one, and so may be too narrow.
    pub(super) fn is_full(&self, after: usize, members: usize) -> bool {
        !(after == 0 && self.near.is_set_apart() || after == members && self.far.is_set_apart())
    }

    /// Holds one gap to the limits, the one with so many of the members before it.
    pub(super) fn judge_gap(&self, members: usize, as_cut: bool, after: usize, gap: Length) -> Result<(), SpacingError> {
        if let Some(widest) = self.limits.widest.filter(|widest| !widest.allows(gap)) {
            return Err(SpacingError::GapTooWide { members, after, gap, widest, as_cut });
        }
        let narrowest = self.limits.narrowest.filter(|narrowest| self.is_full(after, members) && !narrowest.allows(gap));
        narrowest.map_or(Ok(()), |narrowest| Err(SpacingError::GapTooNarrow { members, after, gap, narrowest, as_cut }))
    }
}
