//! A run laid out: where every member stands and how wide every gap is, exactly. However many members
//! there are, only the stretches of equal ones are kept; each position is worked out when it is asked for.
//! How `x` was found is left to `pattern.rs`, seeing it from the far end to `reversed.rs`, rounding to `on_tape.rs`.

use alloc::collections::BTreeMap;
use alloc::vec::Vec;

use super::pattern::{Gap, Pattern};
use super::{Edge, MemberMark, OnTape, SpacingError};
use crate::length::Length;
use crate::tape::{Grain, Tape, TapeError};

/// A run divided by a [`Spacing`](crate::Spacing), exact to the last digit: gaps and members together
/// are the run.
///
/// ```
/// use scantling::{Length, Spacing, Unit};
///
/// let shelf = Length::fraction(3, 4, Unit::Inch);
/// let layout = Spacing::equal_openings(5, shelf).over(Length::new(72, Unit::Inch))?;
/// assert_eq!(layout.members(), 5);
/// assert_eq!(layout.gaps().sum::<Length>() + 5 * shelf, layout.run());
/// # Ok::<(), scantling::SpacingError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Layout {
    pub(super) run: Length,
    pub(super) opening: Length,
    pub(super) members: usize,
    pub(super) grain: Grain,
    pub(super) stretches: Vec<Stretch>,
    pub(super) last: Space,
    pub(super) kinds: usize,
}

/// Equal members one after the other, each with the same gap before it; lengths in grains.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Stretch {
    /// Members before this stretch.
    pub(super) first: usize,
    pub(super) count: usize,
    /// The far face of the member before this stretch, or the datum.
    start: i128,
    pub(super) space: Space,
    pub(super) width: i128,
}

/// A gap in grains; gaps of one kind are meant to be equal.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Space {
    pub(super) size: i128,
    pub(super) kind: usize,
}

impl Stretch {
    #[inline]
    pub(super) const fn pitch(&self) -> i128 {
        self.space.size + self.width
    }

    /// The near edge of the member with so many before it. No product here leaves the run.
    #[inline]
    pub(super) const fn near(&self, index: usize) -> i128 {
        self.start + (index - self.first) as i128 * self.pitch() + self.space.size
    }

    /// Members up to the end of this stretch.
    const fn end(&self) -> usize {
        self.first + self.count
    }

    /// The far face of its last member.
    const fn far(&self) -> i128 {
        self.start + self.count as i128 * self.pitch()
    }
}

/// Goes on with so many members, each behind the same gap.
pub(super) fn push(stretches: &mut Vec<Stretch>, count: usize, space: Space, width: i128) {
    let (first, start) = stretches.last().map_or((0, 0), |last| (last.end(), last.far()));
    match stretches.last_mut() {
        _ if count == 0 => {}
        Some(last) if last.space == space && last.width == width => last.count += count,
        _ => stretches.push(Stretch { first, count, start, space, width }),
    }
}

/// Numbers the kinds of gap as they turn up.
#[derive(Default)]
struct Kinds(BTreeMap<Gap, usize>);

impl Kinds {
    fn of(&mut self, gap: Gap) -> usize {
        let next = self.0.len();
        *self.0.entry(gap).or_insert(next)
    }
}

impl Layout {
    /// The layout of a pattern once its `x` is known.
    pub(super) fn new(pattern: &Pattern, run: Length, opening: Length) -> Result<Self, SpacingError> {
        let out_of_range = SpacingError::OutOfRange { run };
        let grain = common_grain(pattern, run, opening)?;
        let mut kinds = Kinds::default();
        let mut space = |gap: Gap| {
            let size = grain.count(gap.solved(opening, run)?).ok_or(out_of_range)?;
            Ok::<_, SpacingError>(Space { size, kind: kinds.of(gap) })
        };
        let mut stretches = Vec::with_capacity(pattern.segments.len());
        for segment in &pattern.segments {
            let width = grain.count(segment.width).ok_or(out_of_range)?;
            push(&mut stretches, segment.count, space(segment.gap)?, width);
        }
        let last = space(pattern.last)?;
        let (members, far) = stretches.last().map_or((0, 0), |last| (last.end(), last.far()));
        debug_assert_eq!(Some(far + last.size), grain.count(run), "the parts add up to the run");
        Ok(Self { run, opening, members, grain, stretches, last, kinds: kinds.0.len() })
    }

    /// The run that was divided.
    ///
    /// ```
    /// # use scantling::{Spacing, Unit};
    /// assert_eq!(Spacing::equal_parts(5).over(Unit::Yard.length())?.run(), Unit::Yard.length());
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn run(&self) -> Length {
        self.run
    }

    /// The `x` that makes the sum come out, exactly: the full equal gap; half a gap at an end is half of
    /// this. Zero when no gap shares the run: a single member that fills it.
    ///
    /// For shares it is what one share comes to, for drawers what [`Growth`](crate::Growth) says, for members
    /// on center the gap that takes the remainder.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Unit};
    /// let baluster = Length::fraction(3, 2, Unit::Inch);
    /// let layout = Spacing::equal_openings(13, baluster).over(Length::new(72, Unit::Inch))?;
    /// assert_eq!(layout.opening(), Length::fraction(15, 4, Unit::Inch));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn opening(&self) -> Length {
        self.opening
    }

    /// How many members there are; for equal parts, how many lines between them.
    ///
    /// ```
    /// # use scantling::{Spacing, Unit};
    /// assert_eq!(Spacing::equal_parts(5).over(Unit::Yard.length())?.members(), 4);
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn members(&self) -> usize {
        self.members
    }

    /// The gap with so many members before it, exactly: gap 0 lies at the datum, the last one, numbered
    /// like the count of members, at the far end. A flush end is a gap of zero. `None` past the last.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Unit};
    /// let layout = Spacing::equal_parts(5).over(Length::new(72, Unit::Inch))?;
    /// assert_eq!(layout.gap(4), Some(Length::fraction(72, 5, Unit::Inch)));
    /// assert_eq!(layout.gap(5), None);
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub fn gap(&self, index: usize) -> Option<Length> {
        (index <= self.members).then(|| self.gap_at(index))
    }

    /// Every gap from the datum to the far end, one more than there are members.
    ///
    /// ```
    /// # use scantling::{End, Length, Spacing, Unit};
    /// let flush = Spacing::equal_openings(3, Length::ZERO).near_end(End::Flush).far_end(End::Flush);
    /// let layout = flush.over(Length::new(2, Unit::Foot))?;
    /// assert!(layout.gaps().eq([Length::ZERO, Unit::Foot.length(), Unit::Foot.length(), Length::ZERO]));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub fn gaps(&self) -> impl DoubleEndedIterator<Item = Length> + ExactSizeIterator + Clone {
        let gaps = self.members + 1;
        (0..gaps).map(|index| self.gap_at(index))
    }

    /// The member with this number, counted from 1 at the datum; `None` when there is none.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Unit};
    /// let layout = Spacing::equal_parts(5).over(Length::new(72, Unit::Inch))?;
    /// assert_eq!(layout.mark(4).unwrap().near(), Length::fraction(288, 5, Unit::Inch));
    /// assert_eq!(layout.mark(5), None);
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub fn mark(&self, number: usize) -> Option<MemberMark> {
        (1..=self.members).contains(&number).then(|| self.mark_at(number - 1))
    }

    /// Every member from the datum to the far end. For one of a great many, [`Layout::mark`] goes straight
    /// to it.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Unit};
    /// let layout = Spacing::equal_openings(7, Length::new(12, Unit::Inch)).over(Length::new(180, Unit::Inch))?;
    /// assert_eq!(layout.marks().len(), 7);
    /// let last = layout.marks().next_back().unwrap();
    /// assert_eq!(last.far() + layout.opening(), layout.run());
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub fn marks(&self) -> impl DoubleEndedIterator<Item = MemberMark> + ExactSizeIterator + Clone {
        (0..self.members).map(|index| self.mark_at(index))
    }

    /// Writes the near edge of every member into a slice that the caller keeps, and returns the part
    /// that was filled.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Unit};
    /// let layout = Spacing::equal_parts(3).over(Unit::Yard.length())?;
    /// let mut kept = [Length::ZERO; 8];
    /// assert_eq!(layout.fill(&mut kept)?, [Length::new(1, Unit::Foot), Length::new(2, Unit::Foot)]);
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`SpacingError::TooFewPlaces`] when the slice is shorter than there are members; nothing is
    /// written then.
    pub fn fill<'a>(&self, places: &'a mut [Length]) -> Result<&'a mut [Length], SpacingError> {
        let (members, given) = (self.members, places.len());
        let filled = places.get_mut(..members).ok_or(SpacingError::TooFewPlaces { members, places: given })?;
        let mut rest = &mut *filled;
        for stretch in &self.stretches {
            let (places, later) = rest.split_at_mut(stretch.count);
            let mut near = stretch.near(stretch.first);
            for place in places {
                *place = self.grain.length(near);
                near += stretch.pitch();
            }
            rest = later;
        }
        Ok(filled)
    }

    /// The layout as it will be marked with a tape, at the near edge of every member.
    ///
    /// ```
    /// use scantling::{Length, Spacing, Tape, Unit};
    ///
    /// let layout = Spacing::equal_parts(5).over(Length::new(72, Unit::Inch)).unwrap();
    /// let marked = layout.on(&Tape::sixteenths())?;
    /// let marks = [230, 461, 691, 922].map(|sixteenths| Length::fraction(sixteenths, 16, Unit::Inch));
    /// assert!(marked.marks().map(|mark| mark.reading().mark()).eq(marks));
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Those of [`Tape::read`] for the first and the last mark, and [`TapeError::OutOfRange`] when tape
    /// and layout together are too finely divided for exact leftovers.
    pub fn on(&self, tape: &Tape) -> Result<OnTape<'_>, TapeError> {
        self.on_edge(tape, Edge::Near)
    }

    /// The layout as it will be marked with a tape, at one edge or the center of every member.
    ///
    /// ```
    /// use scantling::{Edge, Length, Spacing, Tape, Unit};
    ///
    /// let frames = Spacing::equal_openings(2, Length::new(13, Unit::Inch)).over(Length::new(47, Unit::Inch)).unwrap();
    /// let nails = frames.on_edge(&Tape::sixteenths(), Edge::Center)?;
    /// let marks = [27, 67].map(|halves| Length::fraction(halves, 2, Unit::Inch));
    /// assert!(nails.marks().map(|mark| mark.reading().mark()).eq(marks));
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// As for [`Layout::on`].
    pub fn on_edge(&self, tape: &Tape, edge: Edge) -> Result<OnTape<'_>, TapeError> {
        OnTape::new(self, *tape, edge)
    }

    /// The gaps worth a look: two of each stretch, since at an end the first may have a right of its own, and
    /// the last; each with how many members stand before it.
    pub(super) fn some_of_each_kind(&self) -> impl Iterator<Item = (usize, Length)> {
        let inner = self.stretches.iter().flat_map(|stretch| {
            let gap = self.grain.length(stretch.space.size);
            (stretch.first..stretch.end()).take(2).map(move |after| (after, gap))
        });
        inner.chain([(self.members, self.grain.length(self.last.size))])
    }

    fn gap_at(&self, index: usize) -> Length {
        let space = if index == self.members { self.last } else { self.stretch(index).space };
        self.grain.length(space.size)
    }

    #[inline]
    fn mark_at(&self, index: usize) -> MemberMark {
        let stretch = self.stretch(index);
        MemberMark::new(index + 1, stretch.near(index), stretch.width, self.grain)
    }

    /// The stretch that holds the member with so many before it.
    #[inline]
    pub(super) fn stretch(&self, index: usize) -> &Stretch {
        &self.stretches[self.stretches.partition_point(|stretch| stretch.end() <= index)]
    }
}

/// A grain that measures every gap and half of every member in whole counts; halves, so that centers
/// come out whole too.
fn common_grain(pattern: &Pattern, run: Length, opening: Length) -> Result<Grain, SpacingError> {
    let out_of_range = SpacingError::OutOfRange { run };
    let mut grain = Grain::of(run);
    let mut include = |length| {
        grain = grain.common(Grain::of(length)).ok_or(out_of_range)?;
        Ok::<_, SpacingError>(())
    };
    for segment in &pattern.segments {
        include(segment.gap.solved(opening, run)?)?;
        include(segment.width.checked_div(2).ok_or(out_of_range)?)?;
    }
    include(pattern.last.solved(opening, run)?)?;
    // Everything that is measured from here on is a part of the run, so it fits where the run does.
    grain.count(run).ok_or(out_of_range)?;
    Ok(grain)
}
