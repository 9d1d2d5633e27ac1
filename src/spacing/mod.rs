//! Dividing a run: equal parts, equal openings between members, and what happens at either end.
//!
//! One idea carries all of it, in `pattern.rs`: every gap is `weight × x + fixed`, every member has a
//! width, and `x` is what makes the sum come out. This file only says how a rule becomes such a
//! pattern. Positions are left to `layout.rs`, marks on a tape to `on_tape.rs`.

use alloc::vec::Vec;

use crate::length::Length;

mod error;
mod layout;
mod mark;
mod on_tape;
mod pattern;
mod walk;

pub use error::SpacingError;
pub use layout::Layout;
pub use mark::{Edge, MemberMark};
pub use on_tape::{OnTape, TapeMark};

use pattern::{Gap, Pattern, Segment};

/// How a run is divided: the rule, before it meets a length.
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
}

#[derive(Clone, Debug, PartialEq, Eq)]
enum Rule {
    Parts(usize),
    Openings { members: usize, thickness: Length },
}

/// What lies between an end of the run and the nearest member.
///
/// ```
/// use scantling::{End, Length, Spacing, Unit};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// let first = |end| Spacing::equal_openings(2, inches(4)).near_end(end).over(inches(48)).unwrap().gap(0).unwrap();
/// assert_eq!(first(End::Gap), Length::fraction(40, 3, Unit::Inch)); // one of three equal gaps
/// assert_eq!(first(End::HalfGap), inches(8)); // half as much as the others, 16 in each
/// assert_eq!(first(End::Flush), inches(0));
/// assert_eq!(first(End::Margin(inches(2))), inches(2));
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum End {
    /// A gap like those between the members.
    #[default]
    Gap,
    /// Half such a gap.
    HalfGap,
    /// None: the member stands at the end of the run.
    Flush,
    /// This much, whatever the others come to.
    Margin(Length),
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
        Self { rule: Rule::Parts(parts), near: End::Gap, far: End::Gap }
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
        Self { rule: Rule::Openings { members, thickness }, near: End::Gap, far: End::Gap }
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
    ///   both ends without a second member, or margins at both.
    /// - [`SpacingError::ZeroParts`], [`SpacingError::NegativeRun`], [`SpacingError::NegativeThickness`],
    ///   [`SpacingError::NegativeMargin`] for what cannot be built.
    /// - [`SpacingError::OutOfRange`] when the exact positions cannot be held.
    pub fn over(&self, run: Length) -> Result<Layout, SpacingError> {
        self.pattern()?.over(run)
    }

    fn pattern(&self) -> Result<Pattern, SpacingError> {
        let (near, far) = (self.near.gap()?, self.far.gap()?);
        let (members, thickness) = match self.rule {
            Rule::Parts(parts) => (parts.checked_sub(1).ok_or(SpacingError::ZeroParts)?, Length::ZERO),
            Rule::Openings { members, thickness } => (members, thickness),
        };
        if thickness.is_negative() {
            return Err(SpacingError::NegativeThickness { thickness });
        }
        Ok(equal_openings(members, thickness, near, far))
    }
}

impl End {
    fn gap(self) -> Result<Gap, SpacingError> {
        match self {
            Self::Gap => Ok(Gap::OPEN),
            Self::HalfGap => Ok(Gap::HALF),
            Self::Flush => Ok(Gap::NONE),
            Self::Margin(margin) if margin.is_negative() => Err(SpacingError::NegativeMargin { margin }),
            Self::Margin(margin) => Ok(Gap { fixed: margin, ..Gap::NONE }),
        }
    }
}

fn equal_openings(members: usize, width: Length, near: Gap, far: Gap) -> Pattern {
    if members == 0 {
        return Pattern { segments: Vec::new(), last: near.met_by(far) };
    }
    let first = Segment { count: 1, gap: near, width };
    let others = Segment { count: members - 1, gap: Gap::OPEN, width };
    Pattern { segments: [first, others].into_iter().filter(|segment| segment.count > 0).collect(), last: far }
}

#[cfg(test)]
mod tests;
