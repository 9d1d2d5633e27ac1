//! A long pole cut to sticks that overlap, to be slid on each other. Where a mark lies twice, it is on both.

use alloc::format;
use alloc::vec::Vec;

use super::figure::Figures;
use super::{Mark, PartSide, PoleError, Row, StoryPole};
use crate::length::Length;

/// More sticks than anybody lays end to end.
const MOST_STICKS: i128 = 1000;
/// The row with the lines that lie on each other where two sticks are joined.
const JOINTS: &str = "joints";

impl StoryPole {
    /// The pole on sticks of one length, each overlapping the next; the last may be shorter. Every stick is measured
    /// from its own end, and a row `joints` has the lines that two neighbors share: slide them until both meet.
    ///
    /// A part that is cut by the end of a stick loses its thickness there, and has a note that says so. A pole that is
    /// no longer than a stick stays one, without joints. Where a row must begin and end is a matter of the whole pole: no
    /// stick tells it, so [`check`](Self::check) the pole before it is cut. A mark that lies off the pole stays with the
    /// stick at that end of it.
    ///
    /// ```
    /// use scantling::{Length, Mark, PartSide, StoryPole, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let top = Mark::new(inches(80), "top", PartSide::Past);
    /// let pole = StoryPole::new("ware case", inches(84)).row("side", [top])?;
    /// let sticks = pole.sticks(inches(48), inches(6))?;
    /// assert_eq!(sticks.iter().map(StoryPole::length).collect::<Vec<_>>(), [inches(48), inches(42)]);
    /// // The second begins at 42 in.
    /// assert_eq!(sticks[1].rows()[0].marks()[0].position, inches(38));
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`PoleError::NoAdvance`] for an overlap that is not above zero and shorter than the stick;
    /// [`PoleError::TooMany`]; [`PoleError::RowTwice`] when the pole has a row of joints of its own;
    /// [`PoleError::OutOfRange`].
    pub fn sticks(&self, stick: Length, overlap: Length) -> Result<Vec<Self>, PoleError> {
        self.has_length()?;
        if overlap.is_zero() || overlap.is_negative() || overlap >= stick {
            return Err(PoleError::NoAdvance { stick, overlap });
        }
        if self.length <= stick {
            return Ok(Vec::from([self.clone()]));
        }
        let out_of_range = || PoleError::out_of_range(&self.name);
        let advance = stick.checked_sub(overlap).ok_or_else(out_of_range)?;
        let more = self.length.checked_sub(stick).and_then(|rest| rest.checked_ratio(advance)).ok_or_else(out_of_range)?;
        // The ratio's own rounding up can run over.
        let count = more.to_integer().saturating_add(1 + i128::from(!more.is_integer()));
        if count > MOST_STICKS {
            return Err(PoleError::TooMany { count: count.unsigned_abs(), what: "sticks", most: MOST_STICKS.unsigned_abs() });
        }
        let starts = (0..count).map(|number| {
            let start = i64::try_from(number).ok().and_then(|number| advance.checked_mul(number));
            start.ok_or_else(out_of_range)
        });
        let cut = Cut { pole: self, stick, overlap, count, figures: Figures::plain(advance) };
        (1..).zip(starts).map(|(number, start)| cut.stick(number, start?)).collect()
    }
}

/// How a pole is cut.
struct Cut<'a> {
    pole: &'a StoryPole,
    stick: Length,
    overlap: Length,
    count: i128,
    figures: Figures,
}

impl Cut<'_> {
    fn stick(&self, number: i128, start: Length) -> Result<StoryPole, PoleError> {
        let Self { pole, stick, count, figures, .. } = *self;
        let out_of_range = || PoleError::out_of_range(&pole.name);
        let rest = pole.length.checked_sub(start).ok_or_else(out_of_range)?;
        let length = rest.min(stick);
        let name = format!("{}, stick {number} of {count}, from {}", pole.name, figures.exact_text(start));
        let mut cut = StoryPole { name, length, ..pole.bare() };
        let (is_first, is_last) = (number == 1, number == count);
        let is_here = |mark: &Mark| (is_first || !mark.position.is_negative()) && (is_last || mark.position <= length);
        for row in &pole.rows {
            let marks = row.try_shifted(-start)?.marks.into_iter().filter(is_here);
            cut = cut.row(row.name.clone(), marks.map(|mark| whole_or_line(mark, length)))?;
        }
        cut.with(Row::new(JOINTS, self.joints(number, length).ok_or_else(out_of_range)?))
    }

    /// The lines that a stick shares with its neighbors.
    fn joints(&self, number: i128, length: Length) -> Option<Vec<Mark>> {
        let joint = |place, which| Mark::new(place, format!("joint {which}"), PartSide::Line);
        let mut joints = Vec::new();
        if number > 1 {
            joints.extend([joint(Length::ZERO, 2 * number - 3), joint(self.overlap.min(length), 2 * number - 2)]);
        }
        if number < self.count {
            let begins = length.checked_sub(self.overlap)?;
            joints.extend([joint(begins, 2 * number - 1), joint(length, 2 * number)]);
        }
        Some(joints)
    }
}

/// A part that reaches past the end of its stick is left with its line alone.
fn whole_or_line(mark: Mark, length: Length) -> Mark {
    let is_on = |place: Length| !place.is_negative() && place <= length;
    let is_cut = is_on(mark.position) && mark.checked_edges().is_none_or(|(near, far)| !is_on(near) || !is_on(far));
    match mark.thickness {
        Some(thickness) if is_cut => {
            let cut = format!("{} thick, cut by the end of this stick", Figures::plain(thickness).exact_text(thickness));
            let note = mark.note.as_ref().map_or_else(|| cut.clone(), |note| format!("{note}; {cut}"));
            Mark { thickness: None, ..mark }.noted(note)
        }
        _ => mark,
    }
}
