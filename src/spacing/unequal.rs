//! Runs in which not everything is equal: members of several widths, openings in proportion, and openings
//! that are held to a size while the others share the rest.

use super::Spacing;
use super::pattern::Gap;
use super::rule::Rule;
use crate::length::Length;

impl Spacing {
    /// Members of these widths in this order, from the datum, with equal openings between them and, unless told
    /// otherwise, at both ends: frames on a wall.
    ///
    /// ```
    /// use scantling::{Edge, Length, Spacing, Unit};
    ///
    /// // Framed test tiles, 13, 20 and 13 in wide, on a wall of 7 ft.
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let layout = Spacing::unequal_members([13, 20, 13].map(inches)).over(Length::new(7, Unit::Foot))?;
    /// assert_eq!(layout.opening(), Length::fraction(19, 2, Unit::Inch)); // 9 1/2 in
    /// assert!(layout.marks().map(|frame| frame.at(Edge::Center)).eq([16, 42, 68].map(inches))); // the hooks
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub fn unequal_members(widths: impl IntoIterator<Item = Length>) -> Self {
        Self::by(Rule::Widths(widths.into_iter().collect()))
    }

    /// Openings in proportion, from the datum on, with a divider between each two: 3 : 2 : 2.
    ///
    /// An end that is not open has a member more, see [`End`](crate::End). A share of zero is an opening of nothing.
    ///
    /// ```
    /// use scantling::{Length, Spacing, Unit};
    ///
    /// // A ware case 36 in wide, the bay for tall pots half as wide again as the other two.
    /// let divider = Length::fraction(3, 4, Unit::Inch);
    /// let layout = Spacing::proportional([3, 2, 2], divider).over(Length::new(36, Unit::Inch))?;
    /// assert!(layout.gaps().eq([3, 2, 2].map(|share| share * Length::fraction(69, 14, Unit::Inch))));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub fn proportional(shares: impl IntoIterator<Item = u64>, divider: Length) -> Self {
        Self::by(Rule::Shares { shares: shares.into_iter().collect(), divider })
    }

    /// The same with one opening held to a size, whatever the others come to; they share the rest.
    ///
    /// The opening is known by how many members stand before it, as in [`Layout::gap`](crate::Layout::gap).
    /// Held twice, it has the size it was given last.
    ///
    /// ```
    /// use scantling::{Length, Spacing, Unit};
    ///
    /// // Four shelves; crocks need 18 in between the first and the second.
    /// let (shelf, crocks) = (Length::fraction(3, 4, Unit::Inch), Length::new(18, Unit::Inch));
    /// let case = Spacing::equal_openings(4, shelf).hold(1, crocks);
    /// let layout = case.over(Length::new(72, Unit::Inch))?;
    /// assert_eq!(layout.gap(1), Some(crocks));
    /// assert_eq!(layout.opening(), Length::fraction(51, 4, Unit::Inch)); // 12 3/4 in, four times
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub fn hold(mut self, after: usize, opening: Length) -> Self {
        self.held.insert(after, Gap::fixed(opening));
        self
    }
}
