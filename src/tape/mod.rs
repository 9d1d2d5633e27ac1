//! The tape: where an exact position falls on a rule, and what is left over. Every mark is rounded
//! here, once, by the kernel in `length/`. How a reading is written is left to `print/`.

use crate::length::{Length, Rounding, RoundingMode, Unit};

mod error;
mod grain;
mod reading;

pub use error::TapeError;
pub use reading::{Lean, Reading};

pub(crate) use grain::Grain;

/// A tape or rule: its graduation, how a position between two graduations is read, what it shows at
/// the datum, and how far it reaches.
///
/// ```
/// use scantling::{Length, RoundingMode, Tape, Unit};
///
/// // A shelf that must fit inside: down, on a tape read from its 1 in line.
/// const TAPE: Tape = Tape::sixteenths().mode(RoundingMode::Down).offset(Length::new(1, Unit::Inch));
///
/// let reading = TAPE.read(Length::fraction(144, 10, Unit::Inch))?;
/// assert_eq!(reading.mark(), Length::fraction(230, 16, Unit::Inch)); // 14 3/8 in from the datum
/// assert_eq!(reading.shown(), Length::fraction(246, 16, Unit::Inch)); // 15 3/8 in on the tape
/// assert_eq!(reading.leftover(), Length::fraction(1, 40, Unit::Inch));
/// # Ok::<(), scantling::TapeError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Tape {
    rounding: Rounding,
    offset: Length,
    length: Option<Length>,
}

impl Tape {
    /// A tape in eighths of an inch.
    ///
    /// ```
    /// # use scantling::{Length, Tape, Unit};
    /// assert_eq!(Tape::eighths().step(), Length::fraction(1, 8, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn eighths() -> Self {
        Self::of(Length::fraction(1, 8, Unit::Inch))
    }

    /// A tape in sixteenths of an inch, as most shop tapes are: the default.
    ///
    /// ```
    /// # use scantling::{Length, Tape, Unit};
    /// assert_eq!(Tape::sixteenths().step(), Length::fraction(1, 16, Unit::Inch));
    /// assert_eq!(Tape::default(), Tape::sixteenths());
    /// ```
    #[must_use]
    pub const fn sixteenths() -> Self {
        Self::of(Length::fraction(1, 16, Unit::Inch))
    }

    /// A rule in thirty-seconds of an inch.
    ///
    /// ```
    /// # use scantling::{Length, Tape, Unit};
    /// assert_eq!(Tape::thirty_seconds().step(), Length::fraction(1, 32, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn thirty_seconds() -> Self {
        Self::of(Length::fraction(1, 32, Unit::Inch))
    }

    /// A rule in sixty-fourths of an inch.
    ///
    /// ```
    /// # use scantling::{Length, Tape, Unit};
    /// assert_eq!(Tape::sixty_fourths().step(), Length::fraction(1, 64, Unit::Inch));
    /// ```
    #[must_use]
    pub const fn sixty_fourths() -> Self {
        Self::of(Length::fraction(1, 64, Unit::Inch))
    }

    /// A tape in millimeters.
    ///
    /// ```
    /// # use scantling::{Tape, Unit};
    /// assert_eq!(Tape::millimeters().step(), Unit::Millimeter.length());
    /// ```
    #[must_use]
    pub const fn millimeters() -> Self {
        Self::of(Length::new(1, Unit::Millimeter))
    }

    /// A rule in half millimeters.
    ///
    /// ```
    /// # use scantling::{Length, Tape, Unit};
    /// assert_eq!(Tape::half_millimeters().step(), Length::fraction(1, 2, Unit::Millimeter));
    /// ```
    #[must_use]
    pub const fn half_millimeters() -> Self {
        Self::of(Length::fraction(1, 2, Unit::Millimeter))
    }

    /// A rule with any other graduation.
    ///
    /// ```
    /// use scantling::{Length, Tape, TapeError, Unit};
    ///
    /// let tenths_of_a_foot = Tape::with_step(Length::fraction(1, 10, Unit::Foot))?;
    /// let reading = tenths_of_a_foot.read(Length::new(30, Unit::Inch))?;
    /// assert_eq!(reading.mark(), Length::fraction(25, 10, Unit::Foot));
    /// # Ok::<(), TapeError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`TapeError::NotAStep`] when the step is not above zero.
    pub const fn with_step(step: Length) -> Result<Self, TapeError> {
        if step.is_zero() || step.is_negative() { Err(TapeError::NotAStep { step }) } else { Ok(Self::of(step)) }
    }

    const fn of(step: Length) -> Self {
        Self { rounding: Rounding::to(step), offset: Length::ZERO, length: None }
    }

    /// The same tape, read in another mode. The default is the nearest graduation, ties up.
    ///
    /// ```
    /// # use scantling::{RoundingMode, Tape};
    /// let tape = Tape::sixteenths().mode(RoundingMode::Down);
    /// assert_eq!(tape.rounding_mode(), RoundingMode::Down);
    /// ```
    #[must_use]
    pub const fn mode(self, mode: RoundingMode) -> Self {
        Self { rounding: self.rounding.mode(mode), ..self }
    }

    /// The same tape, held so that it shows `offset` at the datum: 1 in for a tape read from its 1 in
    /// line. Everything it shows is that much more.
    ///
    /// ```
    /// # use scantling::{Tape, Unit};
    /// let tape = Tape::sixteenths().offset(Unit::Inch.length());
    /// assert_eq!(tape.datum_reading(), Unit::Inch.length());
    /// ```
    #[must_use]
    pub const fn offset(self, offset: Length) -> Self {
        Self { offset, ..self }
    }

    /// The same tape with an end: `length` is the longest reading it has, zero the shortest. Without
    /// a length a tape reads any position, on either side of its zero.
    ///
    /// ```
    /// # use scantling::{Length, Tape, Unit};
    /// let tape = Tape::sixteenths().length(Length::new(16, Unit::Foot));
    /// assert_eq!(tape.longest_reading(), Some(Length::new(16, Unit::Foot)));
    /// ```
    #[must_use]
    pub const fn length(self, length: Length) -> Self {
        Self { length: Some(length), ..self }
    }

    /// The distance between two graduations.
    ///
    /// ```
    /// # use scantling::{Tape, Unit};
    /// assert_eq!(Tape::millimeters().step(), Unit::Millimeter.length());
    /// ```
    #[must_use]
    pub const fn step(&self) -> Length {
        self.rounding.step()
    }

    /// How a position between two graduations is read.
    ///
    /// ```
    /// # use scantling::{RoundingMode, Tape};
    /// assert_eq!(Tape::sixteenths().rounding_mode(), RoundingMode::TiesUp);
    /// ```
    #[must_use]
    pub const fn rounding_mode(&self) -> RoundingMode {
        self.rounding.rounding_mode()
    }

    /// What the tape shows at the datum: its offset.
    ///
    /// ```
    /// # use scantling::{Length, Tape};
    /// assert_eq!(Tape::sixteenths().datum_reading(), Length::ZERO);
    /// ```
    #[must_use]
    pub const fn datum_reading(&self) -> Length {
        self.offset
    }

    /// The longest reading the tape has, if it has an end.
    ///
    /// ```
    /// # use scantling::Tape;
    /// assert_eq!(Tape::sixteenths().longest_reading(), None);
    /// ```
    #[must_use]
    pub const fn longest_reading(&self) -> Option<Length> {
        self.length
    }

    /// Finds the graduation for a position, measured from the datum.
    ///
    /// Graduations lie at whole steps of the tape itself, so what is rounded is what the tape would
    /// show, the position plus the offset.
    ///
    /// ```
    /// use scantling::{Lean, Length, Tape, Unit};
    ///
    /// let meter = Tape::thirty_seconds().read(Length::new(1, Unit::Meter))?;
    /// assert_eq!(meter.mark(), Length::fraction(315, 8, Unit::Inch)); // 39 3/8 in
    /// assert_eq!(meter.lean(), Lean::Shy);
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`TapeError::PastEnd`] and [`TapeError::BelowZero`] when the tape has a length and the graduation
    /// is not on it; [`TapeError::OutOfRange`] when the reading cannot be held.
    pub fn read(&self, position: Length) -> Result<Reading, TapeError> {
        let out_of_range = TapeError::OutOfRange { position };
        let exact = position.checked_add(self.offset).ok_or(out_of_range)?;
        let shown = exact.round(self.rounding).map_err(|_| out_of_range)?;
        self.reaches(shown)?;
        let leftover = exact.checked_sub(shown).ok_or(out_of_range)?;
        let mark = shown.checked_sub(self.offset).ok_or(out_of_range)?;
        let grain = Grain::of(leftover);
        Ok(Reading::new(mark, self.offset, leftover.ticks().num(), grain))
    }

    fn reaches(&self, shown: Length) -> Result<(), TapeError> {
        match self.length {
            Some(_) if shown.is_negative() => Err(TapeError::BelowZero { shown }),
            Some(length) if shown > length => Err(TapeError::PastEnd { shown, length }),
            _ => Ok(()),
        }
    }
}

impl Default for Tape {
    fn default() -> Self {
        Self::sixteenths()
    }
}

#[cfg(test)]
mod tests;
