//! The same pole seen from the other end, in a mirror, from another datum, or with fewer rows. Laying several on each
//! other is left to `merge.rs`, cutting one to `stick.rs`.

use alloc::vec::Vec;

use super::label::name;
use super::{Hand, PoleError, StoryPole};
use crate::length::Length;

impl StoryPole {
    /// Read from the other end: what lay at `h` lies at the length less `h`, exactly, and what lay past its line lies
    /// before it. Twice is the same pole.
    ///
    /// ```
    /// use scantling::{Datum, Length, Mark, PartSide, StoryPole, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let shelf = Mark::new(inches(72, 5), "shelf", PartSide::Past);
    /// let up = StoryPole::new("ware case", inches(72, 1)).row("side", [shelf])?;
    /// let down = up.flipped();
    /// assert_eq!((down.datum(), down.rows()[0].marks()[0].position), (Datum::Top, inches(288, 5)));
    /// assert_eq!(down.rows()[0].marks()[0].side, PartSide::Before);
    /// assert_eq!(down.flipped(), up);
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    #[must_use]
    pub fn flipped(&self) -> Self {
        let rows = self.rows.iter().map(|row| row.flipped(self.length)).collect();
        Self { rows, datum: self.datum.opposite(), ..self.bare() }
    }

    /// The mirror image: the other hand, and left for right. Every position keeps its number, so that heights are those
    /// of the twin, and what was measured from the left end is measured from the right one.
    ///
    /// ```
    /// use scantling::{Datum, Hand, StoryPole, Unit};
    ///
    /// let left = StoryPole::new("side", Unit::Yard.length()).for_hand(Hand::Left);
    /// assert_eq!(left.mirrored(), left.clone().for_hand(Hand::Right));
    /// let wall = StoryPole::new("wall", Unit::Yard.length()).measured_from(Datum::Left);
    /// assert_eq!(wall.mirrored().datum(), Datum::Right);
    /// ```
    #[must_use]
    pub fn mirrored(&self) -> Self {
        Self { datum: self.datum.mirrored(), hand: self.hand.map(Hand::other), ..self.clone() }
    }

    /// The pair of mirror images, left hand first. A pole for neither hand is taken for the left one.
    ///
    /// ```
    /// use scantling::{Hand, StoryPole, Unit};
    ///
    /// let [left, right] = StoryPole::new("side", Unit::Yard.length()).pair();
    /// assert_eq!((left.hand(), right.hand()), (Some(Hand::Left), Some(Hand::Right)));
    /// assert_eq!(left.mirrored(), right);
    /// ```
    #[must_use]
    pub fn pair(&self) -> [Self; 2] {
        let own = self.clone().for_hand(self.hand.unwrap_or(Hand::Left));
        let twin = own.mirrored();
        if own.hand == Some(Hand::Left) { [own, twin] } else { [twin, own] }
    }

    /// Measured from a datum that lies farther out by this much, with the stick longer by it: a base below a case, an
    /// inch burned. Below zero the datum moves in, and the stick gets shorter.
    ///
    /// ```
    /// use scantling::{Length, Mark, PartSide, StoryPole, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let shelf = Mark::new(inches(14), "shelf", PartSide::Past);
    /// let on_base = StoryPole::new("ware case", inches(72)).row("side", [shelf])?.try_shifted(inches(4))?;
    /// assert_eq!((on_base.length(), on_base.rows()[0].marks()[0].position), (inches(76), inches(18)));
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`PoleError::NoLength`] when nothing is left of the stick, [`PoleError::OutOfRange`] when a place cannot be held.
    pub fn try_shifted(&self, by: Length) -> Result<Self, PoleError> {
        let length = self.length.checked_add(by).ok_or_else(|| PoleError::out_of_range(&self.name))?;
        let shifted = Self { length, ..self.bare() };
        shifted.has_length()?;
        self.rows.iter().try_fold(shifted, |pole, row| pole.with(row.try_shifted(by)?))
    }

    /// With these rows alone, in this order.
    ///
    /// ```
    /// use scantling::{Length, StoryPole, Unit};
    ///
    /// let pole = StoryPole::new("wall", Length::new(96, Unit::Inch)).row("cases", [])?.row("doors", [])?;
    /// assert_eq!(pole.only(["doors"])?.rows().len(), 1);
    /// assert_eq!(pole.only(["drawers"]).unwrap_err().to_string(), "the pole has no row drawers");
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`PoleError::NoSuchRow`], and [`PoleError::RowTwice`] when one is asked for twice.
    pub fn only<'a>(&self, rows: impl IntoIterator<Item = &'a str>) -> Result<Self, PoleError> {
        let mut kept: Vec<&str> = Vec::new();
        let mut pole = self.bare();
        for wanted in rows {
            let row = self.rows.iter().find(|row| row.name == wanted);
            let row = row.ok_or_else(|| PoleError::NoSuchRow { row: name(wanted) })?;
            if kept.contains(&wanted) {
                return Err(PoleError::RowTwice { row: name(wanted) });
            }
            kept.push(wanted);
            pole.rows.push(row.clone());
        }
        Ok(pole)
    }
}
