//! Sizes: two or three lengths joined by `x`, `×` or `by`, as boards, sheets and cases are given. The
//! lengths themselves are read as anywhere else; the names of boards are left to the lumber layer.

use core::str::FromStr;

use super::axis::{Axis, split_axis};
use super::error::{ParseError, ParseErrorKind as Kind};
use super::legend::{Outline, last_bracket};
use super::number::lost_blank;
use super::parser::LengthParser;
use super::piece::Piece;
use super::separator::split;
use super::shorthand::DASHES;
use super::written::Written;
use crate::length::{Length, Unit};

/// Two or three lengths of one thing, in the order they were written.
///
/// A unit stands behind every length, behind none, or behind the last alone for all of them.
///
/// ```
/// use scantling::{Axis, Length, Size, Unit};
///
/// let sheet: Size = "3/4\" x 4' x 8'".parse()?;
/// assert_eq!(sheet.lengths().len(), 3);
/// assert_eq!(sheet.lengths()[1].length(), Length::new(48, Unit::Inch));
///
/// let board: Size = "600x300x18mm".parse()?;
/// assert_eq!(board.lengths()[0].length(), Length::new(600, Unit::Millimeter));
///
/// let frame: Size = "28 7/8 H x 15 3/8 W".parse()?;
/// assert_eq!(frame.along(Axis::Height), Some(Length::fraction(231, 8, Unit::Inch)));
/// # Ok::<(), scantling::ParseError>(())
/// ```
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct Size {
    lengths: [Dimension; 3],
    count: usize,
}

/// One length of a [`Size`], and which way it runs if that was written.
///
/// ```
/// let size: scantling::Size = "24 W x 36 H".parse()?;
/// assert_eq!(size.lengths()[0].axis(), Some(scantling::Axis::Width));
/// # Ok::<(), scantling::ParseError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Dimension {
    length: Length,
    axis: Option<Axis>,
}

impl Dimension {
    /// A length, and which way it runs if that is known.
    ///
    /// ```
    /// use scantling::{Axis, Dimension, Size, Unit};
    ///
    /// let size: Size = "12 W x 36".parse()?;
    /// assert_eq!(size.lengths()[0], Dimension::new(Unit::Foot.length(), Some(Axis::Width)));
    /// assert_eq!(size.lengths()[1], Dimension::new(Unit::Yard.length(), None));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn new(length: Length, axis: Option<Axis>) -> Self {
        Self { length, axis }
    }

    /// The length.
    ///
    /// ```
    /// use scantling::{Length, Size, Unit};
    ///
    /// let size: Size = "24 x 36".parse()?;
    /// assert_eq!(size.lengths()[0].length(), Length::new(24, Unit::Inch));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn length(&self) -> Length {
        self.length
    }

    /// Which way it runs, if that was written beside it.
    ///
    /// ```
    /// let size: scantling::Size = "24 x 36".parse()?;
    /// assert_eq!(size.lengths()[0].axis(), None);
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn axis(&self) -> Option<Axis> {
        self.axis
    }
}

impl Size {
    /// A size of two or three lengths; `None` for fewer or more, and for an axis named twice.
    ///
    /// ```
    /// use scantling::{Axis, Dimension, Size, Unit};
    ///
    /// let wide = Dimension::new(Unit::Foot.length(), Some(Axis::Width));
    /// let high = Dimension::new(Unit::Yard.length(), Some(Axis::Height));
    /// assert_eq!(Size::checked_new(&[wide, high]), "12 W x 36 H".parse().ok());
    /// assert_eq!(Size::checked_new(&[wide]), None);
    /// assert_eq!(Size::checked_new(&[wide, wide]), None);
    /// ```
    #[must_use]
    pub fn checked_new(dimensions: &[Dimension]) -> Option<Self> {
        let count = dimensions.len();
        let mut lengths = [Dimension::default(); 3];
        lengths.get_mut(..count)?.copy_from_slice(dimensions);
        let named = |place: usize| lengths[place].axis.is_some();
        let twice = |place: usize| lengths[..place].iter().any(|earlier| earlier.axis == lengths[place].axis);
        let clear = count >= 2 && !(0..count).any(|place| named(place) && twice(place));
        clear.then_some(Self { lengths, count })
    }

    /// The two or three lengths, in the order they were written.
    ///
    /// ```
    /// let size: scantling::Size = "24 x 36".parse()?;
    /// assert_eq!(size.lengths().len(), 2);
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub fn lengths(&self) -> &[Dimension] {
        &self.lengths[..self.count]
    }

    /// The length that was written for an axis.
    ///
    /// ```
    /// use scantling::{Axis, Length, Size, Unit};
    ///
    /// let size: Size = "W 24 x H 36".parse()?;
    /// assert_eq!(size.along(Axis::Height), Some(Length::new(36, Unit::Inch)));
    /// assert_eq!(size.along(Axis::Depth), None);
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub fn along(&self, axis: Axis) -> Option<Length> {
        self.lengths().iter().find(|dimension| dimension.axis == Some(axis)).map(Dimension::length)
    }
}

impl LengthParser {
    /// Reads a text that is one size and nothing else: lengths with `x`, `×`, `*` or `by` between, or, where each names
    /// its axis, a comma, an `and` or a blank. A legend of the axes may stand in front or behind, the same size in other
    /// units in brackets behind it or behind each length, and must then agree within 1/16 in; an axis may be named in either.
    ///
    /// ```
    /// use scantling::{Comma, Length, LengthParser, Unit};
    ///
    /// let sheet = LengthParser::new().comma(Comma::Groups).parse_size("2,440 × 1,220 mm")?;
    /// assert_eq!(sheet.lengths()[0].length(), Length::new(2440, Unit::Millimeter));
    ///
    /// let case = LengthParser::new().parse_size("HxWxD: 28 7/8 x 15 3/8 x 14 1/4 in")?;
    /// assert_eq!(Some(case), LengthParser::new().parse_size("28 7/8 (H), 15 3/8 (W), 14 1/4 (D) in").ok());
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// A [`ParseError`] with the bytes to blame: a length that cannot be read, one length or more than
    /// three, units on some lengths and not on others, an axis named twice, a legend or a size in other units that does
    /// not fit, the name of a board.
    pub fn parse_size(&self, text: &str) -> Result<Size, ParseError> {
        self.parse_size_written(text).map(|(size, _)| size)
    }

    /// Reads a size as [`parse_size`](Self::parse_size) does, and says how each of its lengths was written: what is
    /// suspicious is read as it stands, with a warning. Where there are but two, the third is as
    /// [`Written::default`].
    ///
    /// ```
    /// use scantling::{Length, LengthParser, Unit, Warning};
    ///
    /// // Surely 1 3/4 x 3 1/2 was meant.
    /// let (size, written) = LengthParser::new().parse_size_written("13/4 x 31/2")?;
    /// assert_eq!(size.lengths()[0].length(), Length::fraction(13, 4, Unit::Inch));
    /// assert_eq!(written.map(|written| written.warning()), [Some(Warning::LostBlank), Some(Warning::LostBlank), None]);
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// As [`parse_size`](Self::parse_size).
    pub fn parse_size_written(&self, text: &str) -> Result<(Size, [Written; 3]), ParseError> {
        let outline = Outline::of(Piece::new(text))?;
        let (size, written) = read_size(outline, *self)?;
        let size = outline.restated.map_or(Ok(size), |restated| agreeing(size, restated, *self))?;
        Ok((size, written))
    }
}

/// Reads as [`LengthParser::new`] does.
impl FromStr for Size {
    type Err = ParseError;

    fn from_str(text: &str) -> Result<Self, ParseError> {
        LengthParser::new().parse_size(text)
    }
}

fn read_size(outline: Outline<'_>, parser: LengthParser) -> Result<(Size, [Written; 3]), ParseError> {
    let (pieces, count) = split(outline.lengths)?;
    let named = outline.legend.map_or(Ok([None; 3]), |legend| legend.axes_of(count))?;
    let mut lengths = [Dimension::default(); 3];
    let mut bodies = [outline.lengths; 3];
    let mut restated = [None; 3];
    for place in 0..count {
        let (body, also) = without_restated(pieces[place], parser);
        let (body, axis) = split_axis(body);
        let (body, again) = without_restated(body, parser);
        (bodies[place], restated[place]) = (without_hyphen(body, pieces[count - 1]), also.or(again));
        lengths[place].axis = axis.or(named[place]);
        let differs = axis.is_some() && named[place].is_some_and(|named| axis != Some(named));
        if differs || lengths[..place].iter().any(|it| it.axis.is_some() && it.axis == lengths[place].axis) {
            return Err(pieces[place].refuse(Kind::AxisTwice));
        }
    }
    let parser = with_shared_unit(&bodies[..count], outline, parser)?;
    let mut written = [Written::default(); 3];
    for place in 0..count {
        (lengths[place].length, written[place]) = bodies[place].read_written(parser)?;
        restated[place].map_or(Ok(()), |other: Piece<'_>| same(lengths[place].length, other.read(parser)?, other))?;
    }
    Ok((Size { lengths, count }, written))
}

/// The parser for all lengths: with the unit that stands behind them all, or that the last one has for all, where it
/// alone has one.
fn with_shared_unit(bodies: &[Piece<'_>], outline: Outline<'_>, parser: LengthParser) -> Result<LengthParser, ParseError> {
    // What cannot be read at all has nothing to do with units.
    bodies.iter().try_for_each(|body| body.read(parser).map(|_| ()))?;
    let (last, earlier) = (bodies[bodies.len() - 1], &bodies[..bodies.len() - 1]);
    let bare = |body: &&Piece<'_>| body.is_bare(parser) && !is_inches_beside(**body, bodies, parser);
    let (first_bare, all_bare, last_bare) = (earlier.iter().find(bare), earlier.iter().all(|body| bare(&body)), bare(&&last));
    let unmarked = all_bare && outline.unit.is_none() && (last_bare || bodies.len() == 3);
    if unmarked && is_name(bodies, parser) {
        return Err(outline.lengths.refuse(Kind::NominalName));
    }
    let refuse = |body: Piece<'_>| Err(body.refuse_beside(Kind::SizeUnits, bodies.iter().find_map(|it| it.last_unit(parser))));
    let unit = outline.unit.or_else(|| last.only_unit(parser));
    if let Some(marked) = bodies.iter().find(|body| !bare(body)).filter(|_| outline.unit.is_some()) {
        return Err(marked.refuse(Kind::SizeUnits));
    }
    match first_bare {
        // A bare zero takes any unit, and needs none.
        _ if unit.is_none() && bodies.iter().all(|body| body.is_unmarked(parser)) => Ok(parser),
        None if last_bare && !earlier.is_empty() => refuse(last),
        Some(body) if all_bare => shared(unit, earlier, parser).map_or_else(|| refuse(*body), Ok),
        Some(body) => refuse(*body),
        None => Ok(parser),
    }
}

/// `24- x 36-inch`: a number that waits for the unit behind the last.
fn without_hyphen<'a>(body: Piece<'a>, last: Piece<'_>) -> Piece<'a> {
    let hyphenated = |text: &str| text.rsplit_once(DASHES).is_some_and(|(_, unit)| unit.starts_with(char::is_alphabetic));
    let front = body.text().strip_suffix(DASHES).filter(|_| hyphenated(last.text()));
    front.map_or(body, |front| body.part(0, front.len()))
}

/// `2-6 x 6-8 x 1-3/8`: beside feet and inches in a shorthand, a bare fraction is of an inch.
fn is_inches_beside(body: Piece<'_>, bodies: &[Piece<'_>], parser: LengthParser) -> bool {
    let beside = || bodies.iter().any(|body| parser.shorthand.written(body.text()).is_some());
    parser.default_unit == Unit::Inch && body.has_fraction(parser) && beside()
}

/// One unit for all lengths. Not where another unit was asked for, and not feet for
/// lengths with fractions: boards are written inches by inches by feet.
fn shared(unit: Option<Unit>, earlier: &[Piece<'_>], parser: LengthParser) -> Option<LengthParser> {
    let unit = unit?;
    let asked_for = parser.default_unit == Unit::Inch || parser.default_unit == unit;
    let long = matches!(unit, Unit::Foot | Unit::Yard);
    let is_whole = |body: &Piece<'_>| body.read(parser).is_ok_and(|length| length.in_unit(parser.default_unit).is_integer());
    let whole = earlier.iter().all(|body| !body.has_fraction(parser) && is_whole(body));
    (asked_for && (whole || !long)).then(|| parser.default_unit(unit))
}

/// `2x4`, `5/4x6`, `2x4x8 ft`, `2x4x92-5/8"`: thickness and width by name, in whole inches or quarters.
fn is_name(bodies: &[Piece<'_>], parser: LengthParser) -> bool {
    let inches = |body: Piece<'_>| parser.default_unit(Unit::Inch).parse(body.text()).ok();
    let whole = |text: &str| !text.contains(|letter: char| !letter.is_ascii_alphanumeric());
    let (Some(thick), Some(wide)) = (inches(bodies[0]), inches(bodies[1])) else { return false };
    // `13/4` is no name, but may be 1 3/4 that lost its blank: read with a warning.
    let is_count = |text: &str| text.parse().is_ok_and(|quarters| lost_blank(quarters, 4).is_none());
    let quarters = bodies[0].text().strip_suffix("/4").is_some_and(is_count) && thick >= Unit::Inch.length();
    let named = |length: Length, most: i64| length <= Length::new(most, Unit::Inch);
    let thickness = quarters || (whole(bodies[0].text()) && named(thick, 6));
    thickness && whole(bodies[1].text()) && named(wide, 16) && parser.default_unit == Unit::Inch
}

/// A length, and the same length restated in brackets behind it, in a unit: `24" (610 mm)`.
fn without_restated(piece: Piece<'_>, parser: LengthParser) -> (Piece<'_>, Option<Piece<'_>>) {
    let restated = last_bracket(piece).filter(|(open, inside)| *open > 0 && inside.last_unit(parser).is_some());
    restated.map_or((piece, None), |(open, inside)| (piece.part(0, open), Some(inside)))
}

/// A restated size is rounded, and so may differ by half of what shops round to; more is a misprint.
///
/// An axis may be named in either of the two.
fn agreeing(size: Size, restated: Piece<'_>, parser: LengthParser) -> Result<Size, ParseError> {
    let outline = Outline::of(restated)?;
    let (other, _) = read_size(outline, parser)?;
    let both = || size.lengths().iter().zip(other.lengths());
    let same_axis = |(a, b): (&Dimension, &Dimension)| a.axis.is_none() || b.axis.is_none() || a.axis == b.axis;
    if size.count != other.count || outline.restated.is_some() || !both().all(same_axis) {
        return Err(restated.refuse(Kind::RestatedOtherwise));
    }
    both().try_for_each(|(a, b)| same(a.length, b.length, restated))?;
    let mut lengths = size.lengths;
    lengths.iter_mut().zip(other.lengths).for_each(|(it, other)| it.axis = it.axis.or(other.axis));
    Size::checked_new(&lengths[..size.count]).ok_or_else(|| restated.refuse(Kind::AxisTwice))
}

fn same(length: Length, other: Length, restated: Piece<'_>) -> Result<(), ParseError> {
    const LEAST: Length = Length::fraction(1, 16, Unit::Inch);
    let near = length.checked_sub(other).is_some_and(|apart| apart.abs() <= LEAST);
    if near { Ok(()) } else { Err(restated.refuse(Kind::RestatedOtherwise)) }
}

impl core::fmt::Debug for Size {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        out.debug_list().entries(self.lengths()).finish()
    }
}
