//! The board foot: a volume of 144 cubic inches, a foot square and an inch thick. Which sizes go into it, and what is
//! rounded, is left to `tally.rs`.

use num_rational::Ratio;

use crate::length::{Length, Unit, Volume};

impl Volume {
    /// How many board feet this is, exactly; `None` when the ratio cannot be held. A board foot is 144 cubic inches
    /// (International Correspondence Schools, "The Building Trades Pocketbook").
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::{Length, Unit};
    ///
    /// let plank = Length::new(2, Unit::Inch) * Length::new(10, Unit::Inch) * Length::new(8, Unit::Foot);
    /// assert_eq!(plank.checked_in_board_feet(), Some(Ratio::new(40, 3)));
    /// ```
    #[must_use]
    pub const fn checked_in_board_feet(self) -> Option<Ratio<i128>> {
        const FOOT: Length = Unit::Foot.length();
        match FOOT.checked_area(FOOT) {
            Some(square) => match square.checked_volume(Unit::Inch.length()) {
                Some(board_foot) => self.checked_ratio(board_foot),
                None => None,
            },
            None => None,
        }
    }
}
