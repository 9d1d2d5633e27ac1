//! A layout seen from its far end. Nothing is solved anew: the same stretches, back to front.

use alloc::vec::Vec;

use super::Layout;
use super::layout::push;

impl Layout {
    /// The same layout with the datum at the other end: member 1 is what was the last, and what lay at `h` lies at the
    /// run less `h`, exactly.
    ///
    /// *Marks* on a tape are another matter. Each is rounded from its own exact place, and places that lie midway
    /// between two graduations go the same way from either end, so the two sets of marks can be a graduation apart
    /// there; and they need not meet at all where the run itself is no whole number of graduations.
    ///
    /// ```
    /// use scantling::{Growth, Length, Spacing, Unit};
    ///
    /// let (divider, run) = (Length::fraction(3, 4, Unit::Inch), Length::new(36, Unit::Inch));
    /// let growth = Growth::Step(divider);
    /// let down = Spacing::drawers_from_top(5, divider, growth).over(run)?;
    /// let up = Spacing::drawers_from_bottom(5, divider, growth).over(run)?;
    /// assert!(down.reversed().marks().eq(up.marks()));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub fn reversed(&self) -> Self {
        let mut stretches = Vec::with_capacity(2 * self.stretches.len());
        let mut before = self.last;
        for stretch in self.stretches.iter().rev() {
            push(&mut stretches, 1, before, stretch.width);
            push(&mut stretches, stretch.count - 1, stretch.space, stretch.width);
            before = stretch.space;
        }
        Self { stretches, last: before, ..*self }
    }
}
