//! Drawers that are graduated, each lower one taller by a rule, as openings of one bank. Dividers and ends
//! are left to `rule.rs`.

use alloc::vec::Vec;

use num_rational::Ratio;

use super::pattern::Gap;
use super::rule::Rule;
use super::{Spacing, SpacingError};
use crate::length::{Fraction, Length};

/// How the drawers of a bank grow from the top to the bottom.
///
/// Uniform, arithmetic and geometric progressions are in common use; no source for one over another. A step
/// of nothing or a ratio of one makes them equal, a step below zero or a ratio below one makes the lower ones
/// the shallower.
///
/// ```
/// use num_rational::Ratio;
/// use scantling::{Growth, Length, Spacing, Unit};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// let heights = |growth| -> Vec<Length> {
///     Spacing::drawers_from_top(3, Length::ZERO, growth).over(inches(91)).unwrap().gaps().collect()
/// };
/// assert_eq!(heights(Growth::Ratio(Ratio::new(6, 5))), [25, 30, 36].map(inches));
/// assert_eq!(heights(Growth::Step(inches(5)))[0], Length::fraction(76, 3, Unit::Inch)); // 25 1/3 in
/// assert_eq!(heights(Growth::Top(inches(21)))[1..], [91, 119].map(|thirds| Length::fraction(thirds, 3, Unit::Inch)));
/// assert_eq!(heights(Growth::Bottom(inches(40)))[2], inches(40));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Growth {
    /// Each is this much taller than the one above it. [`Layout::opening`](crate::Layout::opening) is the top one.
    Step(Length),
    /// Each is this many times as tall as the one above it. [`Layout::opening`](crate::Layout::opening) is the
    /// top one.
    Ratio(Ratio<i128>),
    /// The top one is this tall, and the others grow by whatever equal step fills the run:
    /// [`Layout::opening`](crate::Layout::opening) is that step, below zero if they must shrink.
    Top(Length),
    /// The bottom one is this tall, and the others shrink upward by whatever equal step fills the run:
    /// [`Layout::opening`](crate::Layout::opening) is how much taller each is than the one *below* it, and so
    /// below zero if they shrink.
    Bottom(Length),
}

/// A bank of drawers, and from which end it is measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Drawers {
    count: usize,
    pub(super) divider: Length,
    growth: Growth,
    is_from_top: bool,
}

impl Spacing {
    /// Graduated drawers, positions measured **down from the top** of the opening, and so numbered from the top:
    /// as drawers are spoken of.
    ///
    /// There is a divider between each two; an end that is not open has one more, see [`End`](crate::End).
    ///
    /// ```
    /// use scantling::{Growth, Length, Spacing, Unit};
    ///
    /// // Five drawers in an opening 36 in high, each lower one 3/4 in taller, four dividers of 3/4 in.
    /// let step = Length::fraction(3, 4, Unit::Inch);
    /// let layout = Spacing::drawers_from_top(5, step, Growth::Step(step)).over(Length::new(36, Unit::Inch))?;
    /// let heights = [102, 117, 132, 147, 162].map(|twentieths| Length::fraction(twentieths, 20, Unit::Inch));
    /// assert!(layout.gaps().eq(heights));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn drawers_from_top(count: usize, divider: Length, growth: Growth) -> Self {
        Self::by(Rule::Drawers(Drawers { count, divider, growth, is_from_top: true }))
    }

    /// The same drawers, positions measured **up from the bottom** of the opening, and so numbered from the
    /// bottom, the tallest first: as a story pole stands on the floor.
    ///
    /// ```
    /// use scantling::{Growth, Length, Spacing, Tape, Unit};
    ///
    /// let step = Length::fraction(3, 4, Unit::Inch);
    /// let layout = Spacing::drawers_from_bottom(5, step, Growth::Step(step)).over(Length::new(36, Unit::Inch)).unwrap();
    /// let dividers = [130, 259, 377, 482].map(|sixteenths| Length::fraction(sixteenths, 16, Unit::Inch));
    /// assert!(layout.on(&Tape::sixteenths())?.marks().map(|divider| divider.reading().mark()).eq(dividers));
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub const fn drawers_from_bottom(count: usize, divider: Length, growth: Growth) -> Self {
        Self::by(Rule::Drawers(Drawers { count, divider, growth, is_from_top: false }))
    }
}

impl Drawers {
    /// The openings, from the datum on.
    pub(super) fn gaps(&self, run: Length) -> Result<impl Iterator<Item = Gap>, SpacingError> {
        if let Growth::Top(opening) | Growth::Bottom(opening) = self.growth {
            if opening.is_negative() {
                return Err(SpacingError::NegativeOpening { opening });
            }
        }
        let mut gaps = match self.growth {
            Growth::Ratio(ratio) => powers(ratio, self.count, run)?,
            _ => (0..self.count).map(|above| self.gap(above)).collect::<Option<_>>().ok_or(SpacingError::OutOfRange { run })?,
        };
        if !self.is_from_top {
            gaps.reverse();
        }
        Ok(gaps.into_iter())
    }

    /// The drawer with so many above it, where they grow by equal steps.
    fn gap(&self, above: usize) -> Option<Gap> {
        let steps = |count: usize| Ratio::from_integer(count as i128);
        match self.growth {
            Growth::Step(step) => Some(Gap { fixed: step.checked_mul_ratio(steps(above))?, ..Gap::OPEN }),
            Growth::Top(top) => Some(Gap { weight: steps(above), fixed: top }),
            Growth::Bottom(bottom) => Some(Gap { weight: steps(self.count - 1 - above), fixed: bottom }),
            Growth::Ratio(_) => None,
        }
    }
}

/// Weights that grow by a ratio.
fn powers(ratio: Ratio<i128>, count: usize, run: Length) -> Result<Vec<Gap>, SpacingError> {
    let (num, den) = (*ratio.numer(), *ratio.denom());
    if num <= 0 || den <= 0 {
        return Err(SpacingError::NotAGrowth { ratio });
    }
    let mut weight = Fraction::whole(1);
    let mut next = || {
        let this = weight?;
        weight = this.checked_scale(num, den.unsigned_abs());
        Some(Gap { weight: Ratio::new_raw(this.num(), this.den().into()), ..Gap::OPEN })
    };
    (0..count).map(|_| next()).collect::<Option<_>>().ok_or(SpacingError::OutOfRange { run })
}
