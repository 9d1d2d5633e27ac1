//! Friendly sizes: the smallest changes of the run, of the members or of one fixed opening after which every opening
//! is a whole number of graduations, in order. Which rows they lie on is found in `whole.rs`; here they are gone along.

use alloc::collections::{BTreeMap, BTreeSet};
use alloc::vec;
use alloc::vec::Vec;

use super::limit::{MOST_JUDGED, Patience};
use super::pattern::{Gap, Pattern};
use super::progression::common_grain;
use super::rule::Rule;
use super::whole::{Row, Task};
use super::{End, Spacing, SpacingError};
use crate::length::Length;
use crate::tape::{Grain, Tape};

/// What is made longer or shorter.
///
/// ```
/// use scantling::{Change, Length, Spacing, Tape, Unit};
///
/// let shelves = Spacing::equal_openings(4, Length::fraction(3, 4, Unit::Inch)).hold(1, Length::new(18, Unit::Inch));
/// let limit = Length::fraction(1, 8, Unit::Inch);
/// let mut sizes = shelves.friendly_sizes(Length::fraction(577, 8, Unit::Inch), &Tape::sixteenths(), limit)?;
/// let first = sizes.next().unwrap();
/// assert_eq!(first.what(), Change::Thickness); // by 1/32 in; the run and the opening would have to change by 1/8 in
/// # Ok::<(), scantling::SpacingError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Change {
    /// The run, the others as they are.
    Run,
    /// The thickness of every member, where they all have one.
    Thickness,
    /// One opening that was given a size, a held one or a margin.
    Opening {
        /// How many members stand before it.
        after: usize,
    },
}

/// A size that makes every opening a whole number of graduations.
///
/// ```
/// use scantling::{Change, Length, Spacing, Tape, Unit};
///
/// // Five equal parts of 72 in are 14 2/5 in, which no tape shows.
/// let limit = Length::new(1, Unit::Inch);
/// let mut sizes = Spacing::equal_parts(5).friendly_sizes(Length::new(72, Unit::Inch), &Tape::sixteenths(), limit)?;
/// let nearest = sizes.next().unwrap();
/// assert_eq!(nearest.what(), Change::Run);
/// assert_eq!(nearest.change(), Length::fraction(-1, 8, Unit::Inch));
/// assert_eq!(nearest.size(), Length::fraction(575, 8, Unit::Inch)); // 71 7/8 in
/// assert_eq!(nearest.opening(), Length::fraction(115, 8, Unit::Inch)); // 14 3/8 in
/// # Ok::<(), scantling::SpacingError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FriendlySize {
    what: Change,
    change: Length,
    size: Length,
    opening: Length,
}

impl FriendlySize {
    /// What is changed.
    ///
    /// ```
    /// # use scantling::{Change, Length, Spacing, Tape, Unit};
    /// # let mut sizes = Spacing::equal_parts(5).friendly_sizes(Length::new(72, Unit::Inch), &Tape::sixteenths(), Unit::Inch.length())?;
    /// assert!(sizes.all(|size| size.what() == Change::Run)); // lines have no thickness
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn what(&self) -> Change {
        self.what
    }

    /// By how much: below zero for shorter or thinner.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Tape, Unit};
    /// # let sizes = Spacing::equal_parts(5).friendly_sizes(Length::new(72, Unit::Inch), &Tape::sixteenths(), Unit::Inch.length())?;
    /// let sixteenths = [-2, 3, -7, 8, -12, 13].map(|count| Length::fraction(count, 16, Unit::Inch));
    /// assert!(sizes.map(|size| size.change()).eq(sixteenths));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn change(&self) -> Length {
        self.change
    }

    /// What it is then.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Tape, Unit};
    /// # let run = Length::new(72, Unit::Inch);
    /// # let mut sizes = Spacing::equal_parts(5).friendly_sizes(run, &Tape::sixteenths(), Unit::Inch.length())?;
    /// assert!(sizes.all(|size| size.size() == run + size.change()));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn size(&self) -> Length {
        self.size
    }

    /// What [`Layout::opening`](crate::Layout::opening) is then.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Tape, Unit};
    /// # let run = Length::new(72, Unit::Inch);
    /// # let mut sizes = Spacing::equal_parts(5).friendly_sizes(run, &Tape::sixteenths(), Unit::Inch.length())?;
    /// assert!(sizes.all(|size| 5 * size.opening() == size.size()));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn opening(&self) -> Length {
        self.opening
    }
}

impl Spacing {
    /// The sizes near to those given with which *every* opening is a whole number of graduations: each one a change of the
    /// run alone, of the thickness of the members alone, or of one held opening or margin alone. The smallest change
    /// comes first, of equal ones the shorter, and every one within the limit is there, in no more memory than one takes.
    ///
    /// Sizes are exact, and need not be whole graduations themselves. Members stay as many as they are over this
    /// run. A spacing that is whole as it is has a change of nothing first. A layout that would break the limits of the
    /// spacing is left out, and so is one that is too finely divided to be judged as cut where that is asked for.
    ///
    /// ```
    /// use scantling::{Change, Length, Spacing, Tape, Unit};
    ///
    /// // Three shelves 23/32 in thick: which heights of about 60 in give openings that a tape in eighths shows?
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let shelves = Spacing::equal_openings(3, inches(23, 32));
    /// let sizes = shelves.friendly_sizes(inches(60, 1), &Tape::eighths(), inches(1, 2))?;
    /// let heights: Vec<Length> = sizes.filter(|size| size.what() == Change::Run).map(|size| size.size()).collect();
    /// assert_eq!(heights, [inches(1925, 32), inches(1909, 32)]); // 60 5/32 and 59 21/32 in
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Those of [`Spacing::over`] for what cannot be built, though not for what does not fit;
    /// [`SpacingError::PitchIsGiven`] for members on center; [`SpacingError::OutOfRange`] when the sizes cannot be held;
    /// [`SpacingError::TooManyToJudge`] when it would take judging some million gaps as cut to tell which sizes keep to the
    /// limits: ask for smaller changes, or a tape no coarser than the one the openings are to be whole on.
    pub fn friendly_sizes(
        &self,
        run: Length,
        tape: &Tape,
        limit: Length,
    ) -> Result<impl Iterator<Item = FriendlySize> + Clone + use<>, SpacingError> {
        if matches!(self.rule, Rule::OnCenter(_)) {
            return Err(SpacingError::PitchIsGiven);
        }
        let pattern = self.pattern(run)?;
        let out_of_range = SpacingError::OutOfRange { run };
        // So many members that they cannot be counted have no sums either.
        pattern.sums().ok_or(out_of_range)?;
        let task = Task { spacing: self, pattern: &pattern, run, graduation: tape.step(), limit };
        let mut rows = Vec::new();
        if let Some(whole) = task.whole()? {
            for what in self.changes(&pattern) {
                rows.extend(task.row(what, whole)?);
            }
        }
        refuse_too_many(&rows, pattern.members())?;
        let grain = common_grain(rows.iter().flat_map(Row::lengths)).ok_or(out_of_range)?;
        let rows = rows.iter().map(|row| Cursor::new(row, grain)).collect::<Option<_>>().ok_or(out_of_range)?;
        Ok(FriendlySizes { spacing: self.clone(), pattern, run, grain, rows })
    }

    /// What may be changed: of openings those alone that were given a size.
    fn changes(&self, pattern: &Pattern) -> Vec<Change> {
        let mut changes = vec![Change::Run];
        changes.extend(pattern.thickness().map(|_| Change::Thickness));
        let ends = [(self.near, 0), (self.far, pattern.members())];
        let margins = ends.into_iter().filter(|(end, _)| matches!(end, End::Margin(_))).map(|(_, after)| after);
        let given: BTreeSet<usize> = self.held.keys().copied().chain(margins).collect();
        let given = given.into_iter().filter(|after| pattern.gap(*after).is_fixed());
        changes.extend(given.map(|after| Change::Opening { after }));
        changes
    }

    /// Whether a changed size keeps to the limits as cut.
    fn allows(&self, size: FriendlySize, pattern: &Pattern, run: Length) -> bool {
        let changed = || match size.what {
            Change::Run => pattern.over(size.size),
            Change::Thickness => pattern.of_thickness(size.size).over(run),
            Change::Opening { after } => {
                pattern.clone().setting(&BTreeMap::from([(after, Gap::fixed(size.size))]), run)?.over(run)
            }
        };
        changed().is_ok_and(|layout| self.judge(&layout, &mut Patience::fresh()).is_ok())
    }
}

/// Sizes of which it takes judging to tell whether they will do are skipped, so there must be a bound to how many gaps
/// that can take.
fn refuse_too_many(rows: &[Row<Length>], members: usize) -> Result<(), SpacingError> {
    // Laying a size out costs what judging some gaps does, and as much again where no two members are alike.
    let gaps = 2 * (members as u128 + 64);
    let unsure = rows.iter().map(|row| row.places.count() - row.sure.count());
    let all = unsure.fold(0_u128, u128::saturating_add).saturating_mul(gaps);
    if all > MOST_JUDGED as u128 { Err(SpacingError::TooManyToJudge { members, most: MOST_JUDGED }) } else { Ok(()) }
}

/// Goes along all rows at once, from no change outward to both sides.
#[derive(Clone)]
struct FriendlySizes {
    spacing: Spacing,
    pattern: Pattern,
    run: Length,
    grain: Grain,
    rows: Vec<Cursor>,
}

/// A row in counts of a grain, and the next two places on it: `above` leads to changes of zero and more, `below` to those
/// under zero.
#[derive(Clone)]
struct Cursor {
    row: Row<i128>,
    above: i128,
    below: i128,
}

impl Cursor {
    /// `None` when the counts cannot be held.
    fn new(row: &Row<Length>, grain: Grain) -> Option<Self> {
        let row = row.counted(grain)?;
        let at_zero = (-row.first).div_euclid(row.step) + i128::from((-row.first).rem_euclid(row.step) != 0);
        let above = at_zero.clamp(row.places.low, row.places.high.checked_add(1)?);
        Some(Self { row, above, below: above.checked_sub(1)? })
    }

    /// The smaller of the next two changes; of equal ones the one below zero.
    fn next(&self) -> Option<i128> {
        let above = (self.above <= self.row.places.high).then_some(self.above);
        let below = (self.below >= self.row.places.low).then_some(self.below);
        [below, above].into_iter().flatten().min_by_key(|place| self.row.change(*place).abs())
    }

    fn pass(&mut self, place: i128) {
        if place == self.above { self.above += 1 } else { self.below -= 1 }
    }
}

impl Iterator for FriendlySizes {
    type Item = FriendlySize;

    fn next(&mut self) -> Option<FriendlySize> {
        loop {
            let nexts = self.rows.iter_mut().filter_map(|cursor| cursor.next().map(|place| (place, cursor)));
            let (place, cursor) = nexts.min_by_key(|(place, cursor)| cursor.row.change(*place).abs())?;
            cursor.pass(place);
            let length = |count| self.grain.length(count);
            let (row, change) = (&cursor.row, cursor.row.change(place));
            let size = FriendlySize {
                what: row.what,
                change: length(change),
                size: length(row.old + change),
                opening: length(row.opening + place * row.opening_step),
            };
            if row.sure.contains(place) || self.spacing.allows(size, &self.pattern, self.run) {
                return Some(size);
            }
        }
    }
}
