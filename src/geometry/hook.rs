//! A tape that does not start at its zero: read from another line, or with a hook that is bent or worn.
//! Marking out from such a line is left to the offset of a tape, in the tape layer.

use super::GeometryError;
use super::error::not_below_zero;
use crate::length::Length;

/// How long a piece is that was measured from another line than the zero of the tape, mostly the 1 in line,
/// where a worn end or a loose hook does no harm: burning an inch. What the tape shows, less that line.
///
/// Forgotten, the inch is cut off the piece. To mark out from the same line, give the tape its
/// [offset](crate::Tape::offset) instead.
///
/// ```
/// use scantling::{Length, Unit, burned_inch};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// assert_eq!(burned_inch(inches(25), inches(1))?, inches(24));
/// # Ok::<(), scantling::GeometryError>(())
/// ```
///
/// # Errors
///
/// [`GeometryError::ShortOfTheLine`] when the tape shows less than the line it is read from,
/// [`GeometryError::OutOfRange`] when the length cannot be held.
pub fn burned_inch(shown: Length, line: Length) -> Result<Length, GeometryError> {
    match shown.checked_sub(line) {
        Some(length) if length.is_negative() => Err(GeometryError::ShortOfTheLine { shown, line }),
        Some(length) => Ok(length),
        None => Err(GeometryError::OutOfRange { length: shown }),
    }
}

/// The hook of a tape, which slides: pulled out it measures outsides from its inner face, pushed in it
/// measures insides from its outer face. Both agree only while it slides by exactly its own thickness.
///
/// ```
/// use scantling::{Hook, Length, Unit};
///
/// // A hook of 1/16 in whose rivets have worn: it slides 3/32 in.
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let hook = Hook::new(inches(1, 16)).slide(inches(3, 32));
/// assert_eq!(hook.outside(inches(30, 1))?, inches(30, 1));
/// assert_eq!(hook.inside(inches(30, 1))?, inches(959, 32)); // 29 31/32 in: it shows 1/32 in too much
/// # Ok::<(), scantling::GeometryError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Hook {
    thickness: Length,
    slide: Length,
    bent: Length,
}

impl Hook {
    /// A good hook: it slides by its thickness, nominally 1/16 in, and is not bent.
    ///
    /// ```
    /// # use scantling::{Hook, Length, Unit};
    /// let hook = Hook::new(Length::fraction(1, 16, Unit::Inch));
    /// assert_eq!(hook.inside_error()?, Length::ZERO);
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn new(thickness: Length) -> Self {
        Self { thickness, slide: thickness, bent: Length::ZERO }
    }

    /// The same with another slide, as its rivets let it.
    ///
    /// ```
    /// # use scantling::{Hook, Length, Unit};
    /// let sixteenth = Length::fraction(1, 16, Unit::Inch);
    /// let stuck = Hook::new(sixteenth).slide(Length::ZERO);
    /// assert_eq!(stuck.inside_error()?, -sixteenth);
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn slide(self, slide: Length) -> Self {
        Self { slide, ..self }
    }

    /// The same, bent or hammered: `shows_more` is what a hooked tape shows past the true length of a piece
    /// that is known, below zero where it shows less. It shifts every reading by as much.
    ///
    /// ```
    /// # use scantling::{Hook, Length, Unit};
    /// let (sixteenth, yard) = (Length::fraction(1, 16, Unit::Inch), Unit::Yard.length());
    /// let hook = Hook::new(sixteenth).bent(-sixteenth);
    /// assert_eq!(hook.outside(yard - sixteenth)?, yard);
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn bent(self, shows_more: Length) -> Self {
        Self { bent: shows_more, ..self }
    }

    /// How much too much the tape shows with its hook pulled over an edge. As the
    /// [offset](crate::Tape::offset) of a tape it puts every mark in its true place.
    ///
    /// ```
    /// use scantling::{Hook, Length, Tape, Unit};
    ///
    /// let (sixteenth, foot) = (Length::fraction(1, 16, Unit::Inch), Unit::Foot.length());
    /// let hook = Hook::new(sixteenth).bent(sixteenth);
    /// let tape = Tape::sixteenths().offset(hook.outside_error());
    /// assert_eq!(tape.read(foot)?.shown(), foot + sixteenth);
    /// # Ok::<(), scantling::TapeError>(())
    /// ```
    #[must_use]
    pub const fn outside_error(&self) -> Length {
        self.bent
    }

    /// How much too much the tape shows with its hook pushed against a face: the error over an edge, and the
    /// slide less the thickness.
    ///
    /// ```
    /// # use scantling::{Hook, Length, Unit};
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let hook = Hook::new(inches(1, 16)).slide(inches(3, 32)).bent(inches(1, 32));
    /// assert_eq!(hook.inside_error()?, inches(1, 16));
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`GeometryError::BelowZero`] for the thickness or the slide, [`GeometryError::OutOfRange`] when the error
    /// cannot be held.
    pub fn inside_error(&self) -> Result<Length, GeometryError> {
        let slide = not_below_zero("the slide of a hook", self.slide)?;
        let loose = slide.checked_sub(not_below_zero("the thickness of a hook", self.thickness)?);
        let error = loose.and_then(|loose| loose.checked_add(self.bent));
        error.ok_or(GeometryError::OutOfRange { length: self.slide })
    }

    /// The true length of what was measured with the hook pulled over its edge.
    ///
    /// ```
    /// # use scantling::{Hook, Length, Unit};
    /// let (sixteenth, yard) = (Length::fraction(1, 16, Unit::Inch), Unit::Yard.length());
    /// assert_eq!(Hook::new(sixteenth).bent(sixteenth).outside(yard)?, yard - sixteenth);
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Those of [`burned_inch`].
    pub fn outside(&self, shown: Length) -> Result<Length, GeometryError> {
        burned_inch(shown, self.bent)
    }

    /// The true width of what was measured with the hook pushed against one side of it.
    ///
    /// ```
    /// # use scantling::{Hook, Length, Unit};
    /// let (sixteenth, yard) = (Length::fraction(1, 16, Unit::Inch), Unit::Yard.length());
    /// assert_eq!(Hook::new(sixteenth).slide(Length::ZERO).inside(yard)?, yard + sixteenth);
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Those of [`Hook::inside_error`] and of [`burned_inch`].
    pub fn inside(&self, shown: Length) -> Result<Length, GeometryError> {
        burned_inch(shown, self.inside_error()?)
    }
}
