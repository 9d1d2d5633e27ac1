//! Several poles laid on one stick. Which of their marks then disagree is left to `check.rs`.

use alloc::collections::BTreeMap;
use alloc::string::String;
use alloc::vec::Vec;

use super::{Mark, PoleError, Row, StoryPole};
use crate::length::Length;

/// What is gathered of the rows of one name.
#[derive(Default)]
struct Gathered {
    marks: Vec<Mark>,
    closes: Option<(Length, Length)>,
}

impl StoryPole {
    /// One pole with the marks of several, each with its datum this far from the new one.
    ///
    /// Rows of one name become one row; a mark that is there twice, alike in everything, is kept once. The new pole
    /// reaches as far as the farthest of them. Its rows stand in the order of their names, so that nothing depends on
    /// the order in which poles are merged.
    ///
    /// ```
    /// use scantling::{Length, Mark, PartSide, StoryPole, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let rail = |place, name| Mark::new(inches(place), name, PartSide::Past);
    /// let base = StoryPole::new("base", inches(34)).row("frame", [rail(4, "kick rail")])?;
    /// let upper = StoryPole::new("upper", inches(30)).row("frame", [rail(0, "upper rail")])?;
    /// let wall = StoryPole::merged("wall", [(&base, Length::ZERO), (&upper, inches(54))])?;
    /// assert_eq!(wall.length(), inches(84));
    /// assert_eq!(wall.rows()[0].marks()[1].position, inches(54));
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`PoleError::NothingToMerge`]; [`PoleError::DatumsDiffer`] and [`PoleError::HandsDiffer`] for poles that cannot
    /// be laid on each other; [`PoleError::NoLength`] and [`PoleError::OutOfRange`] as for any pole.
    pub fn merged<'a>(name: &str, poles: impl IntoIterator<Item = (&'a Self, Length)>) -> Result<Self, PoleError> {
        let mut merged: Option<Self> = None;
        let mut rows: BTreeMap<String, Gathered> = BTreeMap::new();
        for (pole, offset) in poles {
            pole.has_length()?;
            let end = pole.length.checked_add(offset).ok_or_else(|| PoleError::out_of_range(&pole.name))?;
            let so_far = merged.get_or_insert_with(|| Self { name: name.into(), length: end, ..pole.bare() });
            so_far.agree(pole)?;
            so_far.length = so_far.length.max(end);
            for row in &pole.rows {
                rows.entry(row.name.clone()).or_default().add(row.try_shifted(offset)?);
            }
        }
        let merged = merged.ok_or(PoleError::NothingToMerge)?;
        merged.has_length()?;
        rows.into_iter().try_fold(merged, |pole, (name, gathered)| pole.with(gathered.row(name)))
    }

    /// Takes on the hand of another pole, if that is no contradiction.
    fn agree(&mut self, other: &Self) -> Result<(), PoleError> {
        if self.datum != other.datum {
            // Told in one order, whichever came first.
            let (one, other) = (self.datum.min(other.datum), self.datum.max(other.datum));
            return Err(PoleError::DatumsDiffer { one, other });
        }
        match (self.hand, other.hand) {
            (Some(one), Some(other)) if one != other => {
                Err(PoleError::HandsDiffer { one: one.min(other), other: one.max(other) })
            }
            (hand, other) => {
                self.hand = hand.or(other);
                Ok(())
            }
        }
    }
}

impl Gathered {
    fn add(&mut self, row: Row) {
        self.marks.extend(row.marks);
        self.closes = match (self.closes, row.closes) {
            (Some((from, to)), Some((other_from, other_to))) => Some((from.min(other_from), to.max(other_to))),
            (closes, other) => closes.or(other),
        };
    }

    fn row(self, name: String) -> Row {
        let mut row = Row { closes: self.closes, ..Row::new(name, self.marks) };
        row.marks.dedup();
        row
    }
}
