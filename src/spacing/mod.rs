//! Dividing a run: between members or into parts, from one end to the other, exactly.
//!
//! One idea carries all of it, in `pattern.rs`: every gap is `weight × x + fixed`, every member has a
//! width, and `x` is what makes the sum come out. Each kind of spacing only says what its gaps and members are.
//! Positions are left to `layout.rs`, marks on a tape to `on_tape.rs`, and what a shop makes of them to
//! `spacer.rs`, `friendly.rs` and `chain.rs`.

use alloc::collections::BTreeMap;

use crate::length::Length;
use crate::tape::Tape;

mod chain;
mod count;
mod drawers;
mod end;
mod error;
mod friendly;
mod layout;
mod limit;
mod mark;
mod on_center;
mod on_tape;
mod pattern;
mod progression;
mod reversed;
mod room;
mod rule;
mod spacer;
mod unequal;
mod walk;
mod whole;

pub use chain::{Chain, ChainLink, ChainSlip};
pub use drawers::Growth;
pub use end::End;
pub use error::SpacingError;
pub use friendly::{Change, FriendlySize};
pub use layout::Layout;
pub use limit::{Narrowest, Widest};
pub use mark::{Edge, MemberMark};
pub use on_center::First;
pub use on_tape::{OnTape, TapeMark};
pub use spacer::{Remainder, SpacerBlock};

use limit::{Limits, Patience};
use pattern::Gap;
use rule::Rule;

/// How a run is divided: the rule, before it meets a length.
///
/// | to lay out | write |
/// | --- | --- |
/// | equal parts: the steps of a stair, rivets in a row | [`equal_parts`](Self::equal_parts) |
/// | equal parts of about a size: courses of siding | [`nearest_parts`](Self::nearest_parts) |
/// | members with equal openings between them: shelves, slats | [`equal_openings`](Self::equal_openings) |
/// | as few members as a widest opening allows: balusters of a guard | [`fewest_members`](Self::fewest_members), [`Widest`] |
/// | as many members as a narrowest opening allows: hooks, deck boards | [`most_members`](Self::most_members), [`Narrowest`] |
/// | members with openings of about a size | [`nearest_openings`](Self::nearest_openings) |
/// | members of several widths, equal openings: frames on a wall | [`unequal_members`](Self::unequal_members) |
/// | openings in proportion: 3 : 2 : 2 | [`proportional`](Self::proportional) |
/// | drawers that grow by a step, by a ratio, from a given top one or to a given bottom one | [`drawers_from_top`](Self::drawers_from_top), [`drawers_from_bottom`](Self::drawers_from_bottom), [`Growth`] |
/// | members on center: studs, joists, racks; from an end, from a face, from the center | [`on_center`](Self::on_center), [`First`] |
/// | its remainder left at the end | [`on_center`](Self::on_center), [`far_end`](Self::far_end) left as it is |
/// | its last bay shortened | the same with [`far_end`](Self::far_end)[`(End::Flush)`](End::Flush) |
/// | its remainder shared by both ends | [`First::Shared`] |
/// | its remainder shared by all bays | [`nearest_openings`](Self::nearest_openings) |
/// | **then:** an end that is flush, half a gap or a margin | [`near_end`](Self::near_end), [`far_end`](Self::far_end), [`End`] |
/// | one opening held to a size, the others share the rest | [`hold`](Self::hold) |
/// | no gap wider or narrower than asked | [`widest`](Self::widest), [`narrowest`](Self::narrowest) |
/// | the same for the gaps as they will be cut | [`as_cut`](Self::as_cut) |
/// | exact positions | [`over`](Self::over), [`Layout`] |
/// | the same from the other end | [`Layout::reversed`] |
/// | marks for a tape | [`Layout::on`], [`OnTape`] |
/// | a block to set the openings by | [`spacer_block`](Self::spacer_block) |
/// | sizes that would make every opening a whole graduation | [`friendly_sizes`](Self::friendly_sizes) |
/// | dimensions for a drawing, which add up as printed | [`Chain`] |
///
/// ```
/// use scantling::{End, Length, Spacing, Unit};
///
/// // Five shelves of 3/4 in in a ware case 72 in high inside, an opening at both ends.
/// let shelves = Spacing::equal_openings(5, Length::fraction(3, 4, Unit::Inch));
/// let layout = shelves.over(Length::new(72, Unit::Inch))?;
/// assert_eq!(layout.opening(), Length::fraction(91, 8, Unit::Inch)); // 11 3/8 in
///
/// // Twelve hooks along a rail, half a space before the first and after the last.
/// let hooks = Spacing::equal_openings(12, Length::ZERO).near_end(End::HalfGap).far_end(End::HalfGap);
/// let layout = hooks.over(Length::new(92, Unit::Inch))?;
/// assert_eq!(layout.opening(), Length::fraction(23, 3, Unit::Inch)); // 7 2/3 in
/// # Ok::<(), scantling::SpacingError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Spacing {
    rule: Rule,
    near: End,
    far: End,
    /// Openings of a given size, by how many members stand before them.
    held: BTreeMap<usize, Gap>,
    limits: Limits,
}

impl Spacing {
    /// A run divided into equal parts: `parts - 1` marks without width.
    ///
    /// The ends can be changed here too: they stand for the first and the last part.
    ///
    /// ```
    /// use scantling::{Length, Spacing, Unit};
    ///
    /// let layout = Spacing::equal_parts(5).over(Length::new(72, Unit::Inch))?;
    /// let marks: Vec<Length> = layout.marks().map(|mark| mark.near()).collect();
    /// assert_eq!(marks, [72, 144, 216, 288].map(|fifths| Length::fraction(fifths, 5, Unit::Inch)));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn equal_parts(parts: usize) -> Self {
        Self::by(Rule::Parts(parts))
    }

    /// Members of one thickness with equal openings between them, and unless told otherwise at both
    /// ends.
    ///
    /// Members may touch: openings of exactly nothing are a layout. No members make one opening, the
    /// whole run wide, whatever the ends ask for, as long as one of them asks for a gap.
    ///
    /// ```
    /// use scantling::{End, Length, Spacing, Unit};
    ///
    /// let pickets = Spacing::equal_openings(12, Length::fraction(11, 2, Unit::Inch));
    /// let layout = pickets.near_end(End::Flush).far_end(End::Flush).over(Length::new(96, Unit::Inch))?;
    /// assert_eq!(layout.opening(), Length::fraction(30, 11, Unit::Inch)); // 2 8/11 in
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn equal_openings(members: usize, thickness: Length) -> Self {
        Self::by(Rule::Openings { members, thickness })
    }

    /// The same with another near end, the one that positions are measured from.
    ///
    /// ```
    /// use scantling::{End, Length, Spacing, Unit};
    ///
    /// let pegs = Spacing::equal_openings(5, Length::ZERO).near_end(End::Flush);
    /// let layout = pegs.over(Length::new(25, Unit::Inch))?;
    /// assert_eq!(layout.mark(1).unwrap().near(), Length::ZERO);
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn near_end(mut self, end: End) -> Self {
        self.near = end;
        self
    }

    /// The same with another far end.
    ///
    /// ```
    /// use scantling::{End, Length, Spacing, Unit};
    ///
    /// let pegs = Spacing::equal_openings(5, Length::ZERO).far_end(End::Flush);
    /// let layout = pegs.over(Length::new(25, Unit::Inch))?;
    /// assert_eq!(layout.mark(5).unwrap().far(), Length::new(25, Unit::Inch));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn far_end(mut self, end: End) -> Self {
        self.far = end;
        self
    }

    /// The same with no gap wider than asked: a layout with one is refused, and the gap named.
    ///
    /// ```
    /// use scantling::{Length, Spacing, Unit, Widest};
    ///
    /// let pegs = Spacing::equal_openings(5, Length::ZERO).widest(Widest::AtMost(Length::new(6, Unit::Inch)));
    /// assert!(pegs.over(Length::new(36, Unit::Inch)).is_ok());
    /// let refused = pegs.over(Length::new(39, Unit::Inch)).unwrap_err();
    /// assert_eq!(refused.to_string(), r#"with 5 members the gap at the near end comes out at 6 1/2": it must be at most 6""#);
    /// ```
    #[must_use]
    pub const fn widest(mut self, widest: Widest) -> Self {
        self.limits.widest = Some(widest);
        self
    }

    /// The same with no full gap narrower than asked: a layout with one is refused, and the gap named.
    ///
    /// ```
    /// use scantling::{Length, Narrowest, Spacing, Unit};
    ///
    /// let pegs = Spacing::equal_openings(5, Length::ZERO).narrowest(Narrowest::Over(Length::new(6, Unit::Inch)));
    /// assert!(pegs.over(Length::new(39, Unit::Inch)).is_ok());
    /// let refused = pegs.over(Length::new(36, Unit::Inch)).unwrap_err();
    /// assert_eq!(refused.to_string(), r#"with 5 members the gap at the near end comes out at 6": it must be over 6""#);
    /// ```
    #[must_use]
    pub const fn narrowest(mut self, narrowest: Narrowest) -> Self {
        self.limits.narrowest = Some(narrowest);
        self
    }

    /// The same with its gaps judged as they will be cut, when near edges are marked with a tape. A gap that is
    /// just narrow enough exactly may be cut a graduation wider.
    ///
    /// ```
    /// use scantling::{Length, Spacing, Tape, Unit, Widest};
    ///
    /// let slats = Spacing::equal_openings(14, Length::fraction(3, 2, Unit::Inch)).widest(Widest::GUARD);
    /// let rail = Length::fraction(161, 2, Unit::Inch);
    /// assert!(slats.over(rail).is_ok()); // 3 29/30 in
    /// let refused = slats.as_cut(&Tape::sixteenths()).over(rail).unwrap_err();
    /// assert_eq!(refused.to_string(), r#"with 14 members the gap after member 1 would be cut at 4": it must be under 4""#);
    /// ```
    #[must_use]
    pub const fn as_cut(self, tape: &Tape) -> Self {
        self.as_cut_at(tape, Edge::Near)
    }

    /// The same with its gaps judged as they will be cut, when this edge of every member is marked.
    ///
    /// ```
    /// # use scantling::{Edge, Length, Spacing, Tape, Unit, Widest};
    /// let slats = Spacing::equal_openings(14, Length::fraction(3, 2, Unit::Inch)).widest(Widest::GUARD);
    /// let rail = Length::fraction(161, 2, Unit::Inch);
    /// assert!(slats.as_cut_at(&Tape::sixteenths(), Edge::Center).over(rail).is_err());
    /// ```
    #[must_use]
    pub const fn as_cut_at(mut self, tape: &Tape, edge: Edge) -> Self {
        self.limits.cut = Some((*tape, edge));
        self
    }

    /// Lays the spacing out over a run, exactly.
    ///
    /// ```
    /// use scantling::{Length, Spacing, Unit};
    ///
    /// let shelf = Length::fraction(3, 4, Unit::Inch);
    /// let refused = Spacing::equal_openings(5, shelf).over(Length::new(3, Unit::Inch)).unwrap_err();
    /// assert!(refused.to_string().contains("short"));
    /// ```
    ///
    /// # Errors
    ///
    /// - [`SpacingError::DoesNotFit`] when members and margins are longer than the run.
    /// - [`SpacingError::NothingToShare`] when they are shorter and no gap is free to grow: flush at
    ///   both ends without a second member, margins at both, or shares that are all zero.
    /// - [`SpacingError::NegativeGap`] when a gap that grows or shrinks along the run, or stands at a fixed place, comes
    ///   out below zero.
    /// - [`SpacingError::GapTooWide`], [`SpacingError::GapTooNarrow`] when a gap is not within its limits, or no number
    ///   of members keeps every gap within them.
    /// - [`SpacingError::BelowGraduation`], [`SpacingError::TooManyToJudge`], [`SpacingError::Tape`] when gaps cannot be
    ///   judged as cut.
    /// - [`SpacingError::ZeroParts`], [`SpacingError::NegativeRun`], [`SpacingError::NegativeThickness`],
    ///   [`SpacingError::NegativeMargin`], [`SpacingError::NegativeOpening`], [`SpacingError::PitchTooShort`],
    ///   [`SpacingError::NoGapToHalve`], [`SpacingError::NotAGrowth`], [`SpacingError::NoSuchOpening`] for what
    ///   cannot be built.
    /// - [`SpacingError::OutOfRange`] when the exact positions cannot be held.
    pub fn over(&self, run: Length) -> Result<Layout, SpacingError> {
        let layout = self.pattern(run)?.over(run)?;
        self.judge(&layout, &mut Patience::fresh())?;
        Ok(layout)
    }

    /// A rule with nothing said about ends, held openings and limits.
    const fn by(rule: Rule) -> Self {
        Self { rule, near: End::Gap, far: End::Gap, held: BTreeMap::new(), limits: Limits::NONE }
    }
}

#[cfg(test)]
mod tests;
