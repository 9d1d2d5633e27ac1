//! Members on center: so many as stand in a run at a given pitch, center to center. Where the first one
//! stands, and whether one more closes the run at either end, is all that sets the ways of doing it apart.

use num_rational::Ratio;

use super::pattern::{Gap, Pattern};
use super::rule::{Rule, refuse_negative};
use super::{End, Spacing, SpacingError};
use crate::length::{Length, Rounding, RoundingMode};

/// Where a row of members on center begins.
///
/// ```
/// use scantling::{First, Length, Spacing, Unit};
///
/// // Racks of 4 in, 12 in on center, in a run of 42 in: where the near face of each one is.
/// let inches = |count| Length::new(count, Unit::Inch);
/// let faces = |first| -> Vec<Length> {
///     let layout = Spacing::on_center(inches(12), inches(4), first).over(inches(42)).unwrap();
///     layout.marks().map(|rack| rack.near()).collect()
/// };
/// assert_eq!(faces(First::CenterAt(inches(12))), [10, 22, 34].map(inches)); // from the end
/// assert_eq!(faces(First::FaceAt(inches(0))), [0, 12, 24, 36].map(inches)); // from a face
/// assert_eq!(faces(First::OffCenterLine(inches(0))), [7, 19, 31].map(inches)); // one on the center line
/// assert_eq!(faces(First::OffCenterLine(inches(6))), [1, 13, 25, 37].map(inches)); // a bay on it
/// assert_eq!(faces(First::Shared), [1, 13, 25, 37].map(inches)); // the remainder at both ends
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum First {
    /// The first center lies this far from the near end of the run: one pitch, so that sheets laid from that end meet
    /// on a center; another length where the sheets begin elsewhere.
    CenterAt(Length),
    /// The near face of the first member lies this far from the near end; zero for flush.
    FaceAt(Length),
    /// From the center of the run to both sides: the first centers lie this far to either side of it. Zero puts one
    /// member on the center line, half a pitch a bay.
    OffCenterLine(Length),
    /// Wherever it comes to stand when as many as fit leave the same remainder at both ends.
    Shared,
}

/// The rule of a row on center.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Row {
    pitch: Length,
    thickness: Length,
    first: First,
}

impl Spacing {
    /// Members of one thickness at a pitch, center to center: as many as fit.
    ///
    /// What is left over at an end is left there, unless that end is not open: [`End::Flush`] and
    /// [`End::Margin`] stand for one member more that closes the run, and the bay beside it is shortened. Where a
    /// regular member would run into that one, it is set back against it, so that no bay is longer than the pitch.
    /// To share the remainder between the ends, begin with [`First::Shared`]; to share it among all bays, see
    /// [`Spacing::nearest_openings`].
    ///
    /// ```
    /// use scantling::{End, First, Length, Spacing, Unit};
    ///
    /// // Studs 16 in on center in a wall of 8 ft 2 in, one flush with either end.
    /// let (pitch, stud) = (Length::new(16, Unit::Inch), Length::fraction(3, 2, Unit::Inch));
    /// let studs = Spacing::on_center(pitch, stud, First::CenterAt(pitch)).near_end(End::Flush).far_end(End::Flush);
    /// let layout = studs.over(Length::new(98, Unit::Inch))?;
    /// let marks: Vec<Length> = layout.marks().map(|stud| stud.near()).collect();
    /// // The first marks are 0 and 15 1/4 in; the last bay is shortened.
    /// assert_eq!(marks, [0, 61, 125, 189, 253, 317, 380, 386].map(|quarters| Length::fraction(quarters, 4, Unit::Inch)));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn on_center(pitch: Length, thickness: Length, first: First) -> Self {
        Self::by(Rule::OnCenter(Row { pitch, thickness, first }))
    }
}

/// The members of a row to one side of where it is counted from.
struct Side {
    count: usize,
    /// Whether one more is set back against the member that closes the run.
    is_set_back: bool,
}

/// The run between what closes it: where the members may stand.
struct Room {
    near: Option<Gap>,
    far: Option<Gap>,
    from: Length,
    to: Length,
}

/// A pattern that members are added to by where they stand.
struct Line {
    pattern: Pattern,
    thickness: Length,
    /// The far face of the last of them, or the datum.
    face: Length,
}

impl Row {
    pub(super) fn pattern(&self, near: End, far: End, run: Length) -> Result<Pattern, SpacingError> {
        refuse_negative(self.thickness)?;
        if self.pitch <= Length::ZERO || self.pitch < self.thickness {
            return Err(SpacingError::PitchTooShort { pitch: self.pitch, thickness: self.thickness });
        }
        let (near, far) = (closing(near)?, closing(far)?);
        self.room(near, far, run).and_then(|room| self.filled(&room, run)).ok_or(SpacingError::OutOfRange { run })
    }

    fn room(&self, near: Option<Gap>, far: Option<Gap>, run: Length) -> Option<Room> {
        let taken = |end: Option<Gap>| end.map_or(Some(Length::ZERO), |gap| gap.fixed.checked_add(self.thickness));
        Some(Room { near, far, from: taken(near)?, to: run.checked_sub(taken(far)?)? })
    }

    fn filled(&self, room: &Room, run: Length) -> Option<Pattern> {
        let half = self.thickness.checked_div(2)?;
        match self.first {
            First::CenterAt(center) => self.along_from_end(room, center),
            First::FaceAt(face) => self.along_from_end(room, face.checked_add(half)?),
            First::OffCenterLine(off) => self.out_from_center_line(room, off, run.checked_div(2)?),
            First::Shared => self.shared(room),
        }
    }

    fn along_from_end(&self, room: &Room, center: Length) -> Option<Pattern> {
        let side = self.side(center, room.to, room.far)?;
        let mut line = Line::begin(room, self.thickness)?;
        line.row(center, side.count, self.pitch)?;
        Some(line.closed(side.is_set_back, room.far))
    }

    fn out_from_center_line(&self, room: &Room, off: Length, middle: Length) -> Option<Pattern> {
        // A member on the center line belongs to the near side alone.
        let beyond = if off.is_zero() { self.pitch } else { off };
        let left = self.side(off, middle.checked_sub(room.from)?, room.near)?;
        let right = self.side(beyond, room.to.checked_sub(middle)?, room.far)?;
        let mut line = Line::begin(room, self.thickness)?;
        if left.is_set_back {
            line.stand(room.from)?;
        }
        let reach = self.pitch.checked_mul_ratio(whole(left.count.saturating_sub(1)))?.checked_add(off)?;
        line.row(middle.checked_sub(reach)?, left.count, self.pitch)?;
        line.row(middle.checked_add(beyond)?, right.count, self.pitch)?;
        Some(line.closed(right.is_set_back, room.far))
    }

    fn shared(&self, room: &Room) -> Option<Pattern> {
        let half = self.thickness.checked_div(2)?;
        let Side { count, .. } = self.side(half, room.to.checked_sub(room.from)?, None)?;
        let mut line = Line::begin(room, self.thickness)?;
        line.pattern.push(count.min(1), Gap::OPEN, self.thickness);
        line.pattern.push(count.saturating_sub(1), Gap::fixed(self.pitch.checked_sub(self.thickness)?), self.thickness);
        Some(line.closed(false, room.far))
    }

    /// How many stand clear of a limit, when their centers lie `first`, `first + pitch` .. from where they are
    /// counted from.
    fn side(&self, first: Length, limit: Length, closing: Option<Gap>) -> Option<Side> {
        let half = self.thickness.checked_div(2)?;
        let spare = limit.checked_sub(first)?.checked_sub(half)?;
        let pitches = Rounding::to(self.pitch).mode(RoundingMode::Down);
        let count = if spare.is_negative() { 0 } else { spare.steps(pitches).ok()?.checked_add(1)? };
        let count = usize::try_from(count).ok()?;
        // The next one does not stand clear, but is due before the closing one: without it the bay would be too long.
        let next = self.pitch.checked_mul_ratio(whole(count))?.checked_add(first)?;
        Some(Side { count, is_set_back: closing.is_some() && next < limit.checked_add(half)? })
    }
}

impl Line {
    fn begin(room: &Room, thickness: Length) -> Option<Self> {
        let mut line = Self { pattern: Pattern::open(), thickness, face: Length::ZERO };
        if let Some(near) = room.near {
            line.stand(near.fixed)?;
        }
        Some(line)
    }

    /// One more member, its near face here.
    fn stand(&mut self, near: Length) -> Option<()> {
        self.pattern.push(1, Gap::fixed(near.checked_sub(self.face)?), self.thickness);
        self.face = near.checked_add(self.thickness)?;
        Some(())
    }

    /// So many more, the center of the first one here.
    fn row(&mut self, center: Length, count: usize, pitch: Length) -> Option<()> {
        let Some(others) = count.checked_sub(1) else { return Some(()) };
        self.stand(center.checked_sub(self.thickness.checked_div(2)?)?)?;
        self.pattern.push(others, Gap::fixed(pitch.checked_sub(self.thickness)?), self.thickness);
        self.face = pitch.checked_mul_ratio(whole(others))?.checked_add(self.face)?;
        Some(())
    }

    /// What is left over, and what stands behind it.
    fn closed(mut self, is_set_back: bool, far: Option<Gap>) -> Pattern {
        self.pattern.last = Gap::OPEN;
        let behind = [is_set_back.then_some(Gap::NONE), far];
        for gap in behind.into_iter().flatten() {
            let before = core::mem::replace(&mut self.pattern.last, gap);
            self.pattern.push(1, before, self.thickness);
        }
        self.pattern
    }
}

/// What lies beyond the member that closes an end; `None` where the end is open.
fn closing(end: End) -> Result<Option<Gap>, SpacingError> {
    match end {
        End::Gap => Ok(None),
        End::HalfGap => Err(SpacingError::NoGapToHalve),
        _ => end.gap().map(Some),
    }
}

fn whole(count: usize) -> Ratio<i128> {
    Ratio::from_integer(count as i128)
}
