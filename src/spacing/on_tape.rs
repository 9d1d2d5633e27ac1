//! A layout as it will be marked and cut: every mark rounded once from its own exact position, the gaps
//! that come of it, and how far they are from what was meant. Stepping is left to `walk.rs`, the choice of a
//! graduation to the kernel in `length/`.

use alloc::vec;
use core::cmp::Ordering;
use core::iter::FusedIterator;

use super::layout::{Space, Stretch};
use super::walk::{Dial, Hand, Place, Walk};
use super::{Edge, Layout};
use crate::length::Length;
use crate::tape::{Grain, Reading, Tape, TapeError};

/// A [`Layout`] marked with a tape at one edge of every member. It keeps no marks: each is worked out
/// as it is asked for, at the same cost for ten members and for ten million.
///
/// ```
/// use scantling::{End, Length, Spacing, Tape, Unit};
///
/// // Twelve pickets of 5 1/2 in on a 96 in rail, one at either end.
/// let pickets = Spacing::equal_openings(12, Length::fraction(11, 2, Unit::Inch));
/// let layout = pickets.near_end(End::Flush).far_end(End::Flush).over(Length::new(96, Unit::Inch)).unwrap();
///
/// let marked = layout.on(&Tape::sixteenths())?;
/// assert_eq!(marked.spread(), Length::fraction(1, 16, Unit::Inch));
/// assert_eq!(marked.worst(), Length::fraction(5, 176, Unit::Inch)); // under half a graduation, 1/32 in
/// # Ok::<(), scantling::TapeError>(())
/// ```
#[derive(Clone, Debug)]
pub struct OnTape<'a> {
    pub(super) layout: &'a Layout,
    pub(super) tape: Tape,
    edge: Edge,
    /// Measures layout and tape alike; `scale` of it are one grain of the layout. The step and the
    /// offset of the tape are counted in it too.
    grain: Grain,
    scale: i128,
    step: i128,
    offset: i128,
    /// Measures the graduations alone, and is nearly always the tick. The step and the offset again.
    rule: Grain,
    rule_step: i128,
    rule_offset: i128,
    /// Whether every mark, in grains of the rule, fits in 64 bits.
    pub(super) is_narrow: bool,
}

/// One member as it is marked: which one, at which edge, and the reading.
///
/// ```
/// use scantling::{Edge, Lean, Length, Spacing, Tape, Unit};
///
/// let layout = Spacing::equal_parts(5).over(Length::new(72, Unit::Inch)).unwrap();
/// let first = layout.on(&Tape::sixteenths())?.mark(1).unwrap();
/// assert_eq!((first.number(), first.edge()), (1, Edge::Near));
/// assert_eq!(first.reading().mark(), Length::fraction(115, 8, Unit::Inch)); // 14 3/8 in
/// assert_eq!(first.reading().lean(), Lean::Strong); // by 1/40 in
/// # Ok::<(), scantling::TapeError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TapeMark {
    number: usize,
    edge: Edge,
    reading: Reading,
}

impl TapeMark {
    /// Which member this is, counted from 1 at the datum.
    ///
    /// ```
    /// # use scantling::{Spacing, Tape, Unit};
    /// let layout = Spacing::equal_parts(3).over(Unit::Foot.length()).unwrap();
    /// assert!(layout.on(&Tape::sixteenths())?.marks().map(|mark| mark.number()).eq([1, 2]));
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub const fn number(&self) -> usize {
        self.number
    }

    /// Which edge of the member the mark is for.
    ///
    /// ```
    /// # use scantling::{Edge, Spacing, Tape, Unit};
    /// let layout = Spacing::equal_parts(3).over(Unit::Foot.length()).unwrap();
    /// let marked = layout.on_edge(&Tape::sixteenths(), Edge::Far)?;
    /// assert_eq!(marked.mark(1).unwrap().edge(), Edge::Far);
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub const fn edge(&self) -> Edge {
        self.edge
    }

    /// Where the mark is and what is left over.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Tape, Unit};
    /// let layout = Spacing::equal_parts(3).over(Unit::Foot.length()).unwrap();
    /// let marked = layout.on(&Tape::sixteenths())?;
    /// assert_eq!(marked.mark(1).unwrap().reading().mark(), Length::new(4, Unit::Inch));
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[inline]
    #[must_use]
    pub const fn reading(&self) -> Reading {
        self.reading
    }
}

impl<'a> OnTape<'a> {
    pub(super) fn new(layout: &'a Layout, tape: Tape, edge: Edge) -> Result<Self, TapeError> {
        if tape.longest_reading().is_some() {
            // Positions only rise along a run, so if both ends are on the tape, all marks are.
            for mark in layout.marks().next().into_iter().chain(layout.marks().next_back()) {
                tape.read(mark.at(edge))?;
            }
        }
        Self::measured(layout, tape, edge).ok_or(TapeError::OutOfRange { position: layout.run() })
    }

    fn measured(layout: &'a Layout, tape: Tape, edge: Edge) -> Option<Self> {
        let rule = Grain::of(tape.step()).common(Grain::of(tape.datum_reading()))?;
        let grain = rule.common(layout.grain)?;
        let (step, offset) = (grain.count(tape.step())?, grain.count(tape.datum_reading())?);
        // The farthest that any sum below goes: a pitch past the run, a step on either side, the offset.
        let run = grain.count(layout.run())?.checked_mul(2)?;
        let reach = step.checked_mul(2)?.checked_add(offset.checked_abs()?)?.checked_add(run)?;
        Some(Self {
            layout,
            tape,
            edge,
            grain,
            scale: grain.in_one_of(layout.grain),
            step,
            offset,
            rule,
            rule_step: rule.count(tape.step())?,
            rule_offset: rule.count(tape.datum_reading())?,
            is_narrow: i64::try_from(reach / grain.in_one_of(rule)).is_ok(),
        })
    }

    /// The tape the layout is marked with.
    ///
    /// ```
    /// # use scantling::{Spacing, Tape, Unit};
    /// let layout = Spacing::equal_parts(3).over(Unit::Foot.length()).unwrap();
    /// assert_eq!(layout.on(&Tape::eighths())?.tape(), Tape::eighths());
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub const fn tape(&self) -> Tape {
        self.tape
    }

    /// The edge that is marked.
    ///
    /// ```
    /// # use scantling::{Edge, Spacing, Tape, Unit};
    /// let layout = Spacing::equal_parts(3).over(Unit::Foot.length()).unwrap();
    /// assert_eq!(layout.on(&Tape::eighths())?.edge(), Edge::Near);
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub const fn edge(&self) -> Edge {
        self.edge
    }

    /// The mark of the member with this number, counted from 1; `None` when there is none.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Tape, Unit};
    /// let layout = Spacing::equal_parts(5).over(Length::new(72, Unit::Inch)).unwrap();
    /// let marked = layout.on(&Tape::sixteenths())?;
    /// assert_eq!(marked.mark(4).unwrap().reading().mark(), Length::fraction(461, 8, Unit::Inch));
    /// assert_eq!(marked.mark(5), None);
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub fn mark(&self, number: usize) -> Option<TapeMark> {
        (1..=self.layout.members()).contains(&number).then(|| {
            let stretch = self.layout.stretch(number - 1);
            let (mark, leftover) = self.dial(stretch, number - 1).reads(self.tape.rounding_mode());
            self.tape_mark(Place { number, mark, leftover, space: stretch.space })
        })
    }

    /// Every mark from the datum to the far end.
    ///
    /// For long rows, `for_each`, `fold` and what is built on them go about twice as fast as a `for` loop.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Tape, Unit};
    /// let layout = Spacing::equal_parts(1_000_000).over(Length::new(1, Unit::Meter)).unwrap();
    /// let marked = layout.on(&Tape::half_millimeters())?;
    /// let last = marked.marks().last().unwrap();
    /// assert_eq!(last.reading().mark(), Length::new(1, Unit::Meter));
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub fn marks(&self) -> impl ExactSizeIterator<Item = TapeMark> + FusedIterator + Clone {
        Walk::new(self).map(|place| self.tape_mark(place))
    }

    /// The gaps as they will be cut, one more than there are members.
    ///
    /// The first runs from the datum to the first member, each later one from the true far face of a
    /// member, its mark plus its true thickness, to the mark of the next, the last to the end of the run.
    /// A gap below zero means what it says: two members marked so would overlap by that much.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Tape, Unit};
    /// let layout = Spacing::equal_parts(5).over(Length::new(72, Unit::Inch)).unwrap();
    /// let gaps = [230, 231, 230, 231, 230].map(|sixteenths| Length::fraction(sixteenths, 16, Unit::Inch));
    /// assert!(layout.on(&Tape::sixteenths())?.gaps().eq(gaps));
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub fn gaps(&self) -> impl FusedIterator<Item = Length> + Clone {
        self.cut().map(|gap| self.grain.length(gap.size))
    }

    /// The gap as cut with so many members before it, counted as by [`Layout::gap`]; `None` past the last.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Tape, Unit};
    /// let layout = Spacing::equal_parts(5).over(Length::new(72, Unit::Inch)).unwrap();
    /// let marked = layout.on(&Tape::sixteenths())?;
    /// assert_eq!(marked.gap(1), Some(Length::fraction(231, 16, Unit::Inch)));
    /// assert_eq!(marked.gap(5), None);
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub fn gap(&self, index: usize) -> Option<Length> {
        let members = self.layout.members();
        let leftover = |index: usize| {
            let (_, leftover) = self.dial(self.layout.stretch(index), index).reads(self.tape.rounding_mode());
            leftover
        };
        let before = index.checked_sub(1).filter(|_| index <= members).map_or(0, leftover);
        let (size, here) = match index.cmp(&members) {
            Ordering::Less => (self.layout.stretch(index).space.size, leftover(index)),
            Ordering::Equal => (self.layout.last.size, 0),
            Ordering::Greater => return None,
        };
        Some(self.grain.length(size * self.scale + before - here))
    }

    /// The largest gap as cut less the smallest, among gaps that are meant to be equal: the same share
    /// of the opening and the same fixed size. Where there are several kinds, half gaps at the ends, say,
    /// each kind is compared with its own, and the widest spread is given. One pass over the marks.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Tape, Unit};
    /// let layout = Spacing::equal_parts(5).over(Length::new(72, Unit::Inch)).unwrap();
    /// assert_eq!(layout.on(&Tape::sixteenths())?.spread(), Length::fraction(1, 16, Unit::Inch));
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub fn spread(&self) -> Length {
        let mut kinds = vec![None; self.layout.kinds];
        self.cut().for_each(|Space { size, kind }| {
            let (least, most) = kinds[kind].unwrap_or((size, size));
            kinds[kind] = Some((size.min(least), size.max(most)));
        });
        self.grain.length(kinds.into_iter().flatten().map(|(least, most)| most - least).max().unwrap_or(0))
    }

    /// How far off its true position the worst mark is, strong or shy. One pass over the marks.
    ///
    /// ```
    /// # use scantling::{Length, Spacing, Tape, Unit};
    /// let layout = Spacing::equal_parts(5).over(Length::new(72, Unit::Inch)).unwrap();
    /// assert_eq!(layout.on(&Tape::sixteenths())?.worst(), Length::fraction(1, 40, Unit::Inch));
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub fn worst(&self) -> Length {
        self.grain.length(Walk::new(self).map(|place| place.leftover.abs()).max().unwrap_or(0))
    }

    /// A member that is marked strong is set that much short of its true place, and the gap before it
    /// loses what the gap after it gains.
    fn cut(&self) -> impl FusedIterator<Item = Space> + Clone {
        let members = Walk::new(self).map(|place| (place.space, place.leftover));
        let mut before = 0;
        members.chain([(self.layout.last, 0)]).map(move |(space, leftover)| {
            let size = space.size * self.scale + before - leftover;
            before = leftover;
            Space { size, ..space }
        })
    }

    /// Set at one member, and to step along the stretch it lies in.
    pub(super) fn dial(&self, stretch: &Stretch, index: usize) -> Dial<i128> {
        let hand = |grains: i128| {
            let steps = grains.div_euclid(self.step);
            Hand { steps, rest: grains - steps * self.step }
        };
        let edge = stretch.near(index) + self.edge.shift(stretch.width);
        Dial {
            at: hand(edge * self.scale + self.offset),
            pitch: hand(stretch.pitch() * self.scale),
            step: self.step,
            rule_step: self.rule_step,
            rule_offset: self.rule_offset,
        }
    }

    #[inline]
    fn tape_mark(&self, place: Place) -> TapeMark {
        let mark = self.rule.length(place.mark);
        let reading = Reading::new(mark, self.tape.datum_reading(), place.leftover, self.grain);
        TapeMark { number: place.number, edge: self.edge, reading }
    }
}
