//! The same opening by a cut spacer block: how long to cut it, how often it is used, and what is left
//! for the opening that it is not used for.

use alloc::collections::BTreeMap;
use core::cmp::Reverse;

use super::pattern::{Gap, Pattern};
use super::{Layout, Spacing, SpacingError};
use crate::length::{Length, Rounding, RoundingMode};
use crate::tape::Tape;

/// Which opening takes what a block, cut down to a graduation, leaves over.
///
/// ```
/// use scantling::{Length, Remainder, Spacing, Tape, Unit};
///
/// let parts = Spacing::equal_parts(5);
/// let left = |remainder| parts.spacer_block(Length::new(72, Unit::Inch), &Tape::sixteenths(), remainder).unwrap().left();
/// assert_eq!(left(Remainder::Last), Length::fraction(29, 2, Unit::Inch)); // 14 1/2 in, four blocks of 14 3/8 in
/// assert_eq!(left(Remainder::Split), Length::fraction(231, 16, Unit::Inch)); // 14 7/16 in at both ends
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Remainder {
    /// The last of them, at the far end: it is what is left when the block is used from the datum on.
    #[default]
    Last,
    /// The first of them, at the datum: the block is used from the far end.
    First,
    /// The first and the last, each the same.
    Split,
}

/// A block to set equal openings by, and the layout that comes of it.
///
/// ```
/// use scantling::{Length, Remainder, Spacing, Tape, Unit};
///
/// // Five shelves of 3/4 in in 72 1/4 in: openings of 11 5/12 in.
/// let shelves = Spacing::equal_openings(5, Length::fraction(3, 4, Unit::Inch));
/// let block = shelves.spacer_block(Length::fraction(289, 4, Unit::Inch), &Tape::sixteenths(), Remainder::Last)?;
/// assert_eq!(block.block(), Length::fraction(91, 8, Unit::Inch)); // cut 11 3/8 in
/// assert_eq!((block.times(), block.left()), (5, Length::fraction(93, 8, Unit::Inch))); // 11 5/8 in at the top
/// # Ok::<(), scantling::SpacingError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SpacerBlock {
    block: Length,
    times: usize,
    layout: Layout,
}

impl SpacerBlock {
    /// How long to cut the block: the opening, down to a graduation.
    ///
    /// ```
    /// # use scantling::{Length, Remainder, Spacing, Tape, Unit};
    /// # let block = Spacing::equal_parts(3).spacer_block(Unit::Yard.length(), &Tape::eighths(), Remainder::Last)?;
    /// assert_eq!(block.block(), Unit::Foot.length());
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn block(&self) -> Length {
        self.block
    }

    /// How many openings are set with it. What it is too long or too short by counts that often in what is left.
    ///
    /// ```
    /// # use scantling::{Length, Remainder, Spacing, Tape, Unit};
    /// # let block = Spacing::equal_parts(3).spacer_block(Unit::Yard.length(), &Tape::eighths(), Remainder::Last)?;
    /// assert_eq!(block.times(), 2);
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn times(&self) -> usize {
        self.times
    }

    /// The opening that is not set with it, or each of the two; never less than the block.
    ///
    /// ```
    /// # use scantling::{Length, Remainder, Spacing, Tape, Unit};
    /// # let block = Spacing::equal_parts(3).spacer_block(Unit::Yard.length(), &Tape::eighths(), Remainder::Last)?;
    /// assert_eq!(block.left(), Unit::Foot.length());
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn left(&self) -> Length {
        self.layout.opening()
    }

    /// Where the members come to stand.
    ///
    /// ```
    /// # use scantling::{Length, Remainder, Spacing, Tape, Unit};
    /// # let block = Spacing::equal_parts(3).spacer_block(Unit::Yard.length(), &Tape::eighths(), Remainder::Last)?;
    /// assert_eq!(block.layout().mark(2).unwrap().near(), 2 * Unit::Foot.length());
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn layout(&self) -> &Layout {
        &self.layout
    }
}

impl Spacing {
    /// The block to set the equal openings of a run by, cut **down** to a graduation of the tape, whatever its mode, so
    /// that the blocks never need more room than there is.
    ///
    /// Openings that are meant to be equal are set by it; where there are several kinds, those that are the most, and of
    /// as many the kind that comes first.
    ///
    /// ```
    /// use scantling::{End, Length, Remainder, Spacing, Tape, Unit};
    ///
    /// // Pickets of 5 1/2 in, flush at both ends of 96 in, 2 8/11 in apart.
    /// let pickets = Spacing::equal_openings(12, Length::fraction(11, 2, Unit::Inch));
    /// let pickets = pickets.near_end(End::Flush).far_end(End::Flush);
    /// let block = pickets.spacer_block(Length::new(96, Unit::Inch), &Tape::sixteenths(), Remainder::Last)?;
    /// assert_eq!(block.block(), Length::fraction(43, 16, Unit::Inch)); // 2 11/16 in, ten times
    /// assert_eq!((block.times(), block.left()), (10, Length::fraction(25, 8, Unit::Inch)));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Those of [`Spacing::over`], and of holding what is left to the limits of the spacing;
    /// [`SpacingError::NoEqualOpenings`] when no two are meant to be equal; [`SpacingError::NoBlock`] when they are
    /// under one graduation.
    pub fn spacer_block(&self, run: Length, tape: &Tape, remainder: Remainder) -> Result<SpacerBlock, SpacingError> {
        let pattern = self.pattern(run)?;
        let opening = pattern.over(run)?.opening();
        let (gap, places) = pattern.most_common().ok_or(SpacingError::NoEqualOpenings)?;
        let (size, step) = (gap.solved(opening, run)?, tape.step());
        let block = size.round(Rounding::to(step).mode(RoundingMode::Down)).map_err(|_| SpacingError::OutOfRange { run })?;
        if block.is_zero() {
            return Err(SpacingError::NoBlock { opening: size, step });
        }
        let open: &[usize] = match remainder {
            Remainder::Last => &[places.last],
            Remainder::First => &[places.first],
            Remainder::Split => &[places.first, places.last],
        };
        let set = pattern.set_by(|other| if other == gap { Ok(block) } else { other.solved(opening, run) })?;
        let layout = set.setting(&open.iter().map(|after| (*after, Gap::OPEN)).collect(), run)?.over(run)?;
        self.judge_exactly(&layout)?;
        Ok(SpacerBlock { block, times: places.count - open.len(), layout })
    }
}

/// The gaps of one kind: how many, and how many members stand before the first and the last of them.
struct Places {
    count: usize,
    first: usize,
    last: usize,
}

impl Pattern {
    /// The gap that comes most often, twice at least, and where it does. What is flush is no gap.
    fn most_common(&self) -> Option<(Gap, Places)> {
        let mut kinds: BTreeMap<Gap, Places> = BTreeMap::new();
        let mut before = 0;
        let segments = self.segments.iter().map(|segment| (segment.gap, segment.count));
        for (gap, count) in segments.chain([(self.last, 1)]) {
            let kind = kinds.entry(gap).or_insert(Places { count: 0, first: before, last: before });
            before += count;
            (kind.count, kind.last) = (kind.count + count, before - 1);
        }
        kinds.remove(&Gap::NONE);
        kinds.into_iter().filter(|(_, places)| places.count > 1).min_by_key(|(_, places)| (Reverse(places.count), places.first))
    }

    /// The same with every gap of a fixed size.
    fn set_by(&self, size: impl Fn(Gap) -> Result<Length, SpacingError>) -> Result<Self, SpacingError> {
        let mut set = Self::open();
        for segment in &self.segments {
            set.push(segment.count, Gap::fixed(size(segment.gap)?), segment.width);
        }
        set.last = Gap::fixed(size(self.last)?);
        Ok(set)
    }
}
