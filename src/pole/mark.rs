//! One mark on a story pole: its line, exactly, and the part that belongs to it. What belongs together is left to
//! `row.rs`.

use alloc::string::String;

use super::{PartSide, PoleError};
use crate::length::Length;
use crate::tape::Tape;

/// A mark: where its line is, what for, and on which side of the line the part lies.
///
/// A mark is known by its name: marks of one name, in whatever row, are taken to be of one part, and must agree. Those
/// without a name are never compared.
///
/// ```
/// use scantling::{Length, Mark, PartSide, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let rail = Mark::new(inches(72, 5), "rail", PartSide::Centered).thick(inches(3, 2)).noted("dowels, not screws");
/// assert_eq!(rail.checked_edges(), Some((inches(273, 20), inches(303, 20))));
/// ```
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub struct Mark {
    /// Where the line is, measured from the datum.
    pub position: Length,
    /// What the mark is for.
    pub name: String,
    /// On which side of the line the part lies.
    pub side: PartSide,
    /// How thick the part is along the pole, if it is known: both edges show then.
    pub thickness: Option<Length>,
    /// Anything else to be read beside it.
    pub note: Option<String>,
}

impl Mark {
    /// A mark for a part whose thickness is not known or does not matter.
    ///
    /// ```
    /// use scantling::{Length, Mark, PartSide, Unit};
    ///
    /// let level = Mark::new(Length::new(36, Unit::Inch), "bench top", PartSide::Line);
    /// assert_eq!((level.thickness, level.note), (None, None));
    /// ```
    #[must_use]
    pub fn new(position: Length, name: impl Into<String>, side: PartSide) -> Self {
        Self { position, name: name.into(), side, thickness: None, note: None }
    }

    /// A mark read off a stick: what the tape shows there, less what it shows at the datum, so that a stick may be read
    /// from the 1 in line.
    ///
    /// ```
    /// use scantling::{Length, Mark, PartSide, Tape, Unit};
    ///
    /// let burned = Tape::sixteenths().offset(Unit::Inch.length());
    /// let shown = Length::fraction(123, 8, Unit::Inch); // 15 3/8 in
    /// let shelf = Mark::try_from_reading(shown, &burned, "shelf", PartSide::Past)?;
    /// assert_eq!(shelf.position, Length::fraction(115, 8, Unit::Inch)); // 14 3/8 in
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`PoleError::OutOfRange`] when the position cannot be held.
    pub fn try_from_reading(shown: Length, tape: &Tape, name: impl Into<String>, side: PartSide) -> Result<Self, PoleError> {
        let name = name.into();
        match shown.checked_sub(tape.datum_reading()) {
            Some(position) => Ok(Self::new(position, name, side)),
            None => Err(PoleError::out_of_range(&name)),
        }
    }

    /// The same for a part of this thickness along the pole.
    ///
    /// ```
    /// use scantling::{Length, Mark, PartSide, Unit};
    ///
    /// let top = Mark::new(Length::new(72, Unit::Inch), "top", PartSide::Before).thick(Length::new(1, Unit::Inch));
    /// assert_eq!(top.thickness, Some(Length::new(1, Unit::Inch)));
    /// ```
    #[must_use]
    pub fn thick(self, thickness: Length) -> Self {
        Self { thickness: Some(thickness), ..self }
    }

    /// The same with a note.
    ///
    /// ```
    /// use scantling::{Length, Mark, PartSide};
    ///
    /// let floor = Mark::new(Length::ZERO, "floor", PartSide::Line).noted("out of level by the door");
    /// assert_eq!(floor.note.as_deref(), Some("out of level by the door"));
    /// ```
    #[must_use]
    pub fn noted(self, note: impl Into<String>) -> Self {
        Self { note: Some(note.into()), ..self }
    }

    /// Both edges of the part, the one nearer to the datum first; both are the line where no thickness is known. `None`
    /// when one of them cannot be held, which is refused when the mark comes to a pole.
    ///
    /// ```
    /// use scantling::{Length, Mark, PartSide, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let seat = Mark::new(inches(18), "seat", PartSide::Before);
    /// assert_eq!(seat.checked_edges(), Some((inches(18), inches(18))));
    /// assert_eq!(seat.thick(inches(2)).checked_edges(), Some((inches(16), inches(18))));
    /// ```
    #[must_use]
    pub fn checked_edges(&self) -> Option<(Length, Length)> {
        let line = self.position;
        let Some(thickness) = self.thickness else { return Some((line, line)) };
        match self.side {
            PartSide::Past => Some((line, line.checked_add(thickness)?)),
            PartSide::Before => Some((line.checked_sub(thickness)?, line)),
            PartSide::Centered => {
                let half = thickness.checked_div(2)?;
                Some((line.checked_sub(half)?, line.checked_add(half)?))
            }
            PartSide::Line => Some((line, line)),
        }
    }

    /// The same at another place.
    pub(super) fn moved(&self, position: Length) -> Self {
        Self { position, ..self.clone() }
    }
}
