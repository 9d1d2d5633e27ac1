//! Mitered pieces of a frame, from whichever of its sizes is known: long point and short point, exact at 45
//! degrees, and to the right graduation at any other angle. Whether a cut piece has its miters the right way
//! round is left to `miters.rs`, tangents to `tangent.rs`.

use super::error::{above_zero, not_below_zero};
use super::tangent::Slope;
use super::{Angle, GeometryError, Rounded};
use crate::length::{Length, Rounding};

/// The stock of a mitered frame: how wide it is, the rabbet that holds the picture, and how much room the
/// picture gets.
///
/// ```
/// use scantling::{FrameSize, Length, Molding, Unit};
///
/// let (inch, eighth) = (Unit::Inch.length(), Length::fraction(1, 8, Unit::Inch));
/// let molding = Molding::new(2 * inch).rabbet(eighth);
/// let piece = molding.piece(FrameSize::Picture(8 * inch))?;
/// assert_eq!(piece.long_point(), Length::fraction(47, 4, Unit::Inch)); // 11 3/4 in
/// assert_eq!(piece.short_point(), Length::fraction(31, 4, Unit::Inch));
/// # Ok::<(), scantling::GeometryError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Molding {
    width: Length,
    rabbet: Length,
    allowance: Length,
}

/// Which size of a side of the frame is known.
///
/// ```
/// use scantling::{FrameSize, Length, Molding, Unit};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// let long_point = |size| Molding::new(inches(2)).piece(size).unwrap().long_point();
/// assert_eq!(long_point(FrameSize::Outside(inches(12))), inches(12));
/// assert_eq!(long_point(FrameSize::Opening(inches(8))), inches(12));
/// assert_eq!(long_point(FrameSize::Picture(inches(8))), inches(12)); // without a rabbet, the same
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum FrameSize {
    /// From long point to long point, along the outer edge.
    Outside(Length),
    /// From short point to short point, along the inner edge: what is seen of the picture.
    Opening(Length),
    /// The picture, which reaches into the rabbet at both ends.
    Picture(Length),
}

/// A piece with a miter of 45 degrees at both ends, exact.
///
/// The miters converge: they lean toward each other, and the inner edge is the shorter one. Cut parallel, as
/// a stop block invites to after turning the piece end for end without turning it over, no four pieces make
/// a frame. Mark the waste side of both lines before cutting.
///
/// ```
/// use scantling::{FrameSize, Length, Molding, Unit};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// let piece = Molding::new(inches(2)).piece(FrameSize::Opening(inches(20)))?;
/// assert_eq!(piece.long_point() - piece.short_point(), inches(4)); // the stock width at either end
/// # Ok::<(), scantling::GeometryError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Mitered {
    long: Length,
    short: Length,
}

/// A piece with a miter of any one angle at both ends, each point to a graduation.
///
/// The two are rounded apart, each right by itself. Cut to the long point, and take the short one for a check.
///
/// ```
/// use scantling::{Angle, FrameSize, Length, Molding, Polygon, Unit};
///
/// // A mirror of eight sides, each 12 in outside, in stock 2 in wide.
/// let (inch, sixteenth) = (Unit::Inch.length(), Length::fraction(1, 16, Unit::Inch));
/// let side = FrameSize::Outside(12 * inch);
/// let piece = Molding::new(2 * inch).piece_at(side, Polygon::new(8)?.setting(), sixteenth)?;
/// assert_eq!(piece.long_point().exact(), Some(12 * inch));
/// assert_eq!(piece.short_point().to_string(), r#"10-5/16" strong"#); // 10.343 in
/// # Ok::<(), scantling::GeometryError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct MiteredMarks {
    long: Rounded,
    short: Rounded,
}

impl Molding {
    /// Stock of a width, measured from the outer edge of the frame to the inner one, without a rabbet.
    ///
    /// ```
    /// # use scantling::{Molding, Unit};
    /// const CASING: Molding = Molding::new(Unit::Inch.length());
    /// assert_eq!(CASING.width(), Unit::Inch.length());
    /// ```
    #[must_use]
    pub const fn new(width: Length) -> Self {
        Self { width, rabbet: Length::ZERO, allowance: Length::ZERO }
    }

    /// The same with a rabbet that reaches so far under the stock, from the inner edge.
    ///
    /// ```
    /// # use scantling::{FrameSize, Length, Molding, Unit};
    /// let inch = Unit::Inch.length();
    /// let piece = Molding::new(2 * inch).rabbet(inch / 4).piece(FrameSize::Picture(8 * inch))?;
    /// assert_eq!(piece.short_point(), Length::fraction(15, 2, Unit::Inch)); // 1/4 in covered at either end
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn rabbet(self, rabbet: Length) -> Self {
        Self { rabbet, ..self }
    }

    /// The same with so much room for the picture, both ends together: 1/8 in is common
    /// practice, without a source.
    ///
    /// ```
    /// # use scantling::{FrameSize, Length, Molding, Unit};
    /// let inch = Unit::Inch.length();
    /// let piece = Molding::new(2 * inch).allowance(inch / 8).piece(FrameSize::Picture(8 * inch))?;
    /// assert_eq!(piece.short_point(), Length::fraction(65, 8, Unit::Inch));
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn allowance(self, allowance: Length) -> Self {
        Self { allowance, ..self }
    }

    /// The stock width.
    ///
    /// ```
    /// # use scantling::{Molding, Unit};
    /// assert_eq!(Molding::new(Unit::Inch.length()).width(), Unit::Inch.length());
    /// ```
    #[must_use]
    pub const fn width(&self) -> Length {
        self.width
    }

    /// One piece of a frame with square corners, mitered at 45 degrees: exact. A frame takes two such pieces
    /// for its width and two for its height.
    ///
    /// ```
    /// # use scantling::{FrameSize, GeometryError, Length, Molding, Unit};
    /// let inch = Unit::Inch.length();
    /// let refused = Molding::new(2 * inch).piece(FrameSize::Outside(3 * inch)).unwrap_err();
    /// assert!(matches!(refused, GeometryError::NothingLeft { .. }));
    /// ```
    ///
    /// # Errors
    ///
    /// - [`GeometryError::NotAboveZero`] for the size or the stock width, [`GeometryError::BelowZero`] for the
    ///   rabbet or the allowance.
    /// - [`GeometryError::RabbetTooDeep`] when the rabbet takes the whole width.
    /// - [`GeometryError::NothingLeft`] when the miters meet before the inner edge.
    /// - [`GeometryError::OutOfRange`] when a point cannot be held.
    pub fn piece(&self, size: FrameSize) -> Result<Mitered, GeometryError> {
        let points = self.points(size)?;
        let at_45 = |slope: Slope| slope.at_45().ok_or(GeometryError::OutOfRange { length: slope.base });
        let (long, short) = (at_45(points.long)?, at_45(points.short)?);
        if short.is_negative() { Err(points.nothing_left(Angle::degrees(45))) } else { Ok(Mitered { long, short }) }
    }

    /// One piece mitered at any setting, measured from a square cut, both points to the right graduation.
    /// [`Polygon::setting`](crate::Polygon::setting) gives that of a frame with equal sides.
    ///
    /// Tangents are known here to better than 50 significant decimals; where that does not settle which graduation is
    /// right, and no case is known, the piece is refused.
    ///
    /// ```
    /// # use scantling::{Angle, FrameSize, Length, Molding, Unit};
    /// let (inch, sixteenth) = (Unit::Inch.length(), Length::fraction(1, 16, Unit::Inch));
    /// let piece = Molding::new(2 * inch).piece_at(FrameSize::Opening(8 * inch), Angle::degrees(30), sixteenth)?;
    /// assert_eq!(piece.long_point().to_string(), r#"10-5/16" shy"#); // 10.309 in
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Those of [`Molding::piece`]; [`GeometryError::NotAMiter`] for the setting, [`GeometryError::NotAStep`]
    /// for a step that is not above zero, and [`GeometryError::TooCloseToCall`] as said above.
    pub fn piece_at(
        &self,
        size: FrameSize,
        setting: Angle,
        rounding: impl Into<Rounding>,
    ) -> Result<MiteredMarks, GeometryError> {
        let (points, setting, rounding) = (self.points(size)?, setting.miter()?, rounding.into());
        let rounded = |slope: Slope| slope.round(setting, rounding)?.ok_or_else(|| points.nothing_left(setting));
        Ok(MiteredMarks { long: rounded(points.long)?, short: rounded(points.short)? })
    }

    /// How the two points follow from the size that is known: each is farther out or in by a part of the
    /// stock width, and longer or shorter by as much times the tangent at either end.
    fn points(&self, size: FrameSize) -> Result<Points, GeometryError> {
        let Self { width, rabbet, allowance } = *self;
        above_zero("a stock width", width)?;
        not_below_zero("an allowance", allowance)?;
        if not_below_zero("a rabbet", rabbet)? >= width {
            return Err(GeometryError::RabbetTooDeep { rabbet, width });
        }
        let (what, known, room, depth) = match size {
            FrameSize::Outside(known) => ("an outside size", known, Length::ZERO, width),
            FrameSize::Opening(known) => ("an opening", known, Length::ZERO, Length::ZERO),
            FrameSize::Picture(known) => ("a picture size", known, allowance, rabbet),
        };
        let out_of_range = GeometryError::out_of_range(known);
        let base = above_zero(what, known)?.checked_add(room).ok_or_else(&out_of_range)?;
        let outward = width.checked_sub(depth).and_then(|outer| outer.checked_mul(2)).ok_or_else(&out_of_range)?;
        let inward = depth.checked_mul(-2).ok_or_else(&out_of_range)?;
        Ok(Points { long: Slope { base, run: outward }, short: Slope { base, run: inward }, depth })
    }
}

/// The points of a piece before its angle is known.
#[derive(Clone, Copy)]
struct Points {
    long: Slope,
    short: Slope,
    depth: Length,
}

impl Points {
    const fn nothing_left(self, setting: Angle) -> GeometryError {
        GeometryError::NothingLeft { side: self.short.base, depth: self.depth, setting }
    }
}

impl Mitered {
    /// Along the outer edge, from long point to long point.
    ///
    /// ```
    /// # use scantling::{FrameSize, Molding, Unit};
    /// let piece = Molding::new(Unit::Inch.length()).piece(FrameSize::Outside(Unit::Foot.length()))?;
    /// assert_eq!(piece.long_point(), Unit::Foot.length());
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn long_point(&self) -> Length {
        self.long
    }

    /// Along the inner edge, from short point to short point.
    ///
    /// ```
    /// # use scantling::{FrameSize, Molding, Unit};
    /// let piece = Molding::new(Unit::Inch.length()).piece(FrameSize::Outside(Unit::Foot.length()))?;
    /// assert_eq!(piece.short_point(), 10 * Unit::Inch.length());
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn short_point(&self) -> Length {
        self.short
    }
}

impl MiteredMarks {
    /// Along the outer edge, from long point to long point.
    ///
    /// ```
    /// # use scantling::{Angle, FrameSize, Molding, Unit};
    /// let (inch, foot) = (Unit::Inch.length(), Unit::Foot.length());
    /// let piece = Molding::new(inch).piece_at(FrameSize::Outside(foot), Angle::degrees(30), inch)?;
    /// assert_eq!(piece.long_point().exact(), Some(foot));
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn long_point(&self) -> Rounded {
        self.long
    }

    /// Along the inner edge, from short point to short point.
    ///
    /// ```
    /// # use scantling::{Angle, FrameSize, Molding, Unit};
    /// let (inch, foot) = (Unit::Inch.length(), Unit::Foot.length());
    /// let piece = Molding::new(inch).piece_at(FrameSize::Outside(foot), Angle::degrees(30), inch)?;
    /// assert_eq!(piece.short_point().mark(), 11 * inch); // 10.845 in
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn short_point(&self) -> Rounded {
        self.short
    }
}
