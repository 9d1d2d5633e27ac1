//! Sizes: two or three lengths joined by `x`, `×` or `by`, as boards, sheets and cases are given. The
//! lengths themselves are read as anywhere else; the names of boards are left to the lumber layer.

use core::str::FromStr;

use super::axis::{Axis, split_axis};
use super::error::{ParseError, ParseErrorKind as Kind};
use super::parser::LengthParser;
use super::piece::Piece;
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
    /// Reads a text that is one size and nothing else.
    ///
    /// ```
    /// use scantling::{Comma, Length, LengthParser, Unit};
    ///
    /// let sheet = LengthParser::new().comma(Comma::Groups).parse_size("2,440 × 1,220 mm")?;
    /// assert_eq!(sheet.lengths()[0].length(), Length::new(2440, Unit::Millimeter));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// A [`ParseError`] with the bytes to blame: a length that cannot be read, one length or more than
    /// three, units on some lengths and not on others, an axis named twice, the name of a board.
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
        let whole = Piece::new(text);
        let (legend, lengths) = match whole.text().find(':').map(|colon| whole.around(colon, colon + 1)) {
            // `W: 24 x H: 36` has its colons inside; a legend has its separators before the colon.
            Some((legend, lengths)) if separator(legend.text(), 0).is_some() => (axes(legend)?, lengths),
            _ => ([None; 3], whole),
        };
        let (lengths, restated) = split_restated(lengths);
        let (size, written) = read_size(lengths, legend, *self)?;
        restated.map_or(Ok(()), |restated| agreeing(size, restated, *self))?;
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

fn read_size(whole: Piece<'_>, legend: [Option<Axis>; 3], parser: LengthParser) -> Result<(Size, [Written; 3]), ParseError> {
    let (pieces, count) = split(whole)?;
    let mut lengths = [Dimension::default(); 3];
    let mut bodies = [whole; 3];
    for place in 0..count {
        let (body, axis) = split_axis(pieces[place]);
        bodies[place] = body;
        lengths[place].axis = axis.or(legend[place]);
        let twice = lengths[..place].iter().any(|earlier| earlier.axis.is_some() && earlier.axis == lengths[place].axis);
        if twice {
            return Err(pieces[place].refuse(Kind::AxisTwice));
        }
    }
    let parser = with_shared_unit(&bodies[..count], whole, parser)?;
    let mut written = [Written::default(); 3];
    for place in 0..count {
        (lengths[place].length, written[place]) = bodies[place].read_written(parser)?;
    }
    Ok((Size { lengths, count }, written))
}

/// The parser for all lengths: with the unit that the last one has for all, where it alone has one.
fn with_shared_unit(bodies: &[Piece<'_>], whole: Piece<'_>, parser: LengthParser) -> Result<LengthParser, ParseError> {
    // What cannot be read at all has nothing to do with units.
    bodies.iter().try_for_each(|body| body.read(parser).map(|_| ()))?;
    let (last, earlier) = (bodies[bodies.len() - 1], &bodies[..bodies.len() - 1]);
    let bare = |body: &&Piece<'_>| body.is_bare(parser);
    let first_bare = earlier.iter().find(bare);
    let all_bare = earlier.iter().all(|body| bare(&body));
    let last_bare = bare(&&last);
    if all_bare && (last_bare || bodies.len() == 3) && is_name(bodies, parser) {
        return Err(whole.refuse(Kind::NominalName));
    }
    match first_bare {
        None if last_bare && !earlier.is_empty() => Err(last.refuse(Kind::SizeUnits)),
        Some(_) if all_bare && last_bare => Ok(parser),
        Some(body) if all_bare => shared(last, earlier, parser).ok_or_else(|| body.refuse(Kind::SizeUnits)),
        Some(body) => Err(body.refuse(Kind::SizeUnits)),
        None => Ok(parser),
    }
}

/// The unit of the last length for all of them. Not where another unit was asked for, and not feet for
/// lengths with fractions: boards are written inches by inches by feet.
fn shared(last: Piece<'_>, earlier: &[Piece<'_>], parser: LengthParser) -> Option<LengthParser> {
    let unit = last.only_unit(parser)?;
    let asked_for = parser.default_unit == Unit::Inch || parser.default_unit == unit;
    let long = matches!(unit, Unit::Foot | Unit::Yard);
    let whole = earlier.iter().all(|body| body.text().bytes().all(|byte| byte.is_ascii_digit()));
    (asked_for && (whole || !long)).then(|| parser.default_unit(unit))
}

/// `2x4`, `5/4x6`, `2x4x8 ft`, `2x4x92-5/8"`: thickness and width by name, in whole inches or quarters.
fn is_name(bodies: &[Piece<'_>], parser: LengthParser) -> bool {
    let inches = |body: Piece<'_>| parser.default_unit(Unit::Inch).parse(body.text()).ok();
    let whole = |text: &str| !text.contains(|letter: char| !letter.is_ascii_alphanumeric());
    let (Some(thick), Some(wide)) = (inches(bodies[0]), inches(bodies[1])) else { return false };
    let quarters = bodies[0].text().strip_suffix("/4").is_some_and(whole) && thick >= Unit::Inch.length();
    let named = |length: Length, most: i64| length <= Length::new(most, Unit::Inch);
    let thickness = quarters || (whole(bodies[0].text()) && named(thick, 6));
    thickness && whole(bodies[1].text()) && named(wide, 16) && parser.default_unit == Unit::Inch
}

/// The pieces between the separators.
fn split(whole: Piece<'_>) -> Result<([Piece<'_>; 3], usize), ParseError> {
    let (mut pieces, mut count, mut rest) = ([whole; 3], 0, whole);
    while let Some((from, to)) = next_separator(rest) {
        let (piece, behind) = rest.around(from, to);
        if count == 2 {
            return Err(behind.refuse(Kind::TooManyLengths));
        }
        pieces[count] = piece;
        (count, rest) = (count + 1, behind);
    }
    if count == 0 {
        return Err(whole.refuse(Kind::NotASize));
    }
    pieces[count] = rest;
    Ok((pieces, count + 1))
}

/// An `x` and the like, or the comma between lengths that all name their axis: `28.875 (H), 15.375 (W)`.
fn next_separator(piece: Piece<'_>) -> Option<(usize, usize)> {
    let text = piece.text();
    separator(text, 0).or_else(|| {
        let comma = text.find([',', ';'])?;
        let named = |part: Piece<'_>| split_axis(part).1.is_some();
        let (before, _) = piece.around(comma, comma + 1);
        named(before).then_some((comma, comma + 1))
    })
}

/// The bytes of the first `x`, `X`, `×` or `by` that stands between two lengths.
fn separator(text: &str, from: usize) -> Option<(usize, usize)> {
    let mut word = from;
    for (at, letter) in text.char_indices().chain([(text.len(), ' ')]).skip_while(|(at, _)| *at < from) {
        if letter == '×' {
            return Some((at, at + letter.len_utf8()));
        }
        if letter.is_ascii_alphabetic() {
            continue;
        }
        let name = &text[word..at];
        if name.eq_ignore_ascii_case("by") || name.eq_ignore_ascii_case("x") {
            return Some((word, at));
        }
        // Glued to a unit or an axis, as in `600mmx300mm`; `ex` and `six` are words.
        if let Some(unit) = name.strip_suffix(['x', 'X']).filter(|unit| is_glued(unit)) {
            return Some((word + unit.len(), at));
        }
        // Or to an axis behind it: `H24xW36`.
        if name.strip_prefix(['x', 'X']).is_some_and(|axis| Axis::named(axis).is_some()) {
            return Some((word, word + 1));
        }
        word = at + letter.len_utf8();
    }
    None
}

fn is_glued(word: &str) -> bool {
    Axis::named(word).is_some() || ["in", "ft", "yd", "mm", "cm", "m"].iter().any(|unit| word.eq_ignore_ascii_case(unit))
}

/// The axes of a legend such as `H x W x D`.
fn axes(legend: Piece<'_>) -> Result<[Option<Axis>; 3], ParseError> {
    let (pieces, count) = split(legend)?;
    let mut named = [None; 3];
    for place in 0..count {
        let axis = Axis::named(pieces[place].text());
        named[place] = Some(axis.ok_or_else(|| pieces[place].refuse(Kind::UnknownAxis))?);
    }
    Ok(named)
}

/// A size, and the same size restated in other units in brackets behind it.
fn split_restated(whole: Piece<'_>) -> (Piece<'_>, Option<Piece<'_>>) {
    let text = whole.text();
    let open = text.rfind('(').filter(|open| text.ends_with(')') && separator(&text[*open..], 0).is_some());
    match open {
        Some(open) => (whole.part(0, open), Some(whole.part(open + 1, text.len() - 1))),
        None => (whole, None),
    }
}

/// A restated size is rounded, and so may differ by half of what shops round to; more is a misprint.
fn agreeing(size: Size, restated: Piece<'_>, parser: LengthParser) -> Result<(), ParseError> {
    const LEAST: Length = Length::fraction(1, 16, Unit::Inch);
    let (other, _) = read_size(restated, [None; 3], parser)?;
    let near = |(a, b): (&Dimension, &Dimension)| a.length.checked_sub(b.length).is_some_and(|apart| apart.abs() <= LEAST);
    let agree = size.count == other.count && size.lengths().iter().zip(other.lengths()).all(near);
    if agree { Ok(()) } else { Err(restated.refuse(Kind::RestatedOtherwise)) }
}

impl core::fmt::Debug for Size {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        out.debug_list().entries(self.lengths()).finish()
    }
}
