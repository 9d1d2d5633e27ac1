//! Lengths with a tolerance: `24 ±1/32`, `25 +0/-0.2 mm`. The lengths are read as anywhere else.

use core::str::FromStr;

use super::error::{ParseError, ParseErrorKind as Kind};
use super::parser::LengthParser;
use super::piece::Piece;
use crate::length::{Length, Unit};

/// A length, and how far it may be over and under.
///
/// ```
/// use scantling::{Length, Toleranced, Unit};
///
/// let pin: Toleranced = "25 +0/-0.2 mm".parse()?;
/// assert_eq!(pin.nominal(), Length::new(25, Unit::Millimeter));
/// assert_eq!(pin.least(), Length::fraction(248, 10, Unit::Millimeter));
/// assert_eq!(pin.most(), Length::new(25, Unit::Millimeter));
/// assert!(!pin.admits(Length::new(1, Unit::Inch)));
/// # Ok::<(), scantling::ParseError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Toleranced {
    nominal: Length,
    least: Length,
    most: Length,
}

impl Toleranced {
    /// A length that may be `over` more and `under` less; `None` when either is below zero or a limit
    /// cannot be held.
    ///
    /// ```
    /// use scantling::{Length, Toleranced, Unit};
    ///
    /// let hair = Length::fraction(1, 64, Unit::Inch);
    /// assert!(Toleranced::checked_new(Length::new(24, Unit::Inch), hair, Length::ZERO).is_some());
    /// assert!(Toleranced::checked_new(Length::new(24, Unit::Inch), -hair, hair).is_none());
    /// ```
    #[must_use]
    pub fn checked_new(nominal: Length, over: Length, under: Length) -> Option<Self> {
        if over.is_negative() || under.is_negative() {
            return None;
        }
        Some(Self { nominal, least: nominal.checked_sub(under)?, most: nominal.checked_add(over)? })
    }

    /// A length given with its limits; `None` when it does not lie between them.
    ///
    /// ```
    /// use scantling::{Length, Toleranced, Unit};
    ///
    /// let thirty_seconds = |count| Length::fraction(count, 32, Unit::Inch);
    /// let rail = Toleranced::checked_within(thirty_seconds(768), thirty_seconds(767), thirty_seconds(769));
    /// assert_eq!(rail, "24 ±1/32".parse().ok());
    /// assert_eq!(Toleranced::checked_within(thirty_seconds(768), thirty_seconds(769), thirty_seconds(769)), None);
    /// ```
    #[must_use]
    pub fn checked_within(nominal: Length, least: Length, most: Length) -> Option<Self> {
        (least <= nominal && nominal <= most).then_some(Self { nominal, least, most })
    }

    /// The length aimed at.
    ///
    /// ```
    /// use scantling::{Length, Toleranced, Unit};
    ///
    /// assert_eq!("24 ±1/32".parse::<Toleranced>()?.nominal(), Length::new(24, Unit::Inch));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn nominal(&self) -> Length {
        self.nominal
    }

    /// The shortest length that will do.
    ///
    /// ```
    /// use scantling::{Length, Toleranced, Unit};
    ///
    /// assert_eq!("24 ±1/32".parse::<Toleranced>()?.least(), Length::fraction(767, 32, Unit::Inch));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn least(&self) -> Length {
        self.least
    }

    /// The longest length that will do.
    ///
    /// ```
    /// use scantling::{Length, Toleranced, Unit};
    ///
    /// assert_eq!("24 ±1/32".parse::<Toleranced>()?.most(), Length::fraction(769, 32, Unit::Inch));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn most(&self) -> Length {
        self.most
    }

    /// Whether a length lies within the limits, both included.
    ///
    /// ```
    /// use scantling::{Length, Toleranced, Unit};
    ///
    /// let rail: Toleranced = "24 ±1/32".parse()?;
    /// assert!(rail.admits(Length::fraction(769, 32, Unit::Inch)));
    /// assert!(!rail.admits(Length::fraction(1539, 64, Unit::Inch)));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub fn admits(&self, length: Length) -> bool {
        self.least <= length && length <= self.most
    }

    /// Both end to end, in the worst case: limits add up; `None` when they cannot be held.
    ///
    /// ```
    /// use scantling::Toleranced;
    ///
    /// let (rail, stile): (Toleranced, Toleranced) = ("24 ±1/32".parse()?, "2 +1/16 -0".parse()?);
    /// assert_eq!(rail.checked_add(stile), Some("26 +3/32 -1/32".parse()?));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub fn checked_add(self, other: Self) -> Option<Self> {
        Some(Self {
            nominal: self.nominal.checked_add(other.nominal)?,
            least: self.least.checked_add(other.least)?,
            most: self.most.checked_add(other.most)?,
        })
    }

    /// Several end to end, in the worst case; `None` when the limits cannot be held.
    ///
    /// ```
    /// use scantling::Toleranced;
    ///
    /// let tile: Toleranced = "6 ±1/64".parse()?;
    /// assert_eq!(Toleranced::checked_worst_case([tile; 4]), Some("24 ±1/16".parse()?));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub fn checked_worst_case(lengths: impl IntoIterator<Item = Self>) -> Option<Self> {
        let none = Self { nominal: Length::ZERO, least: Length::ZERO, most: Length::ZERO };
        lengths.into_iter().try_fold(none, Self::checked_add)
    }
}

impl LengthParser {
    /// Reads a text that is one length with its tolerance and nothing else: `±` or `+/-` for both sides,
    /// `+1/32 -0` or `+0/-0.2` for each, `+1/16` for the one side alone.
    ///
    /// A unit behind the tolerance serves the length too. A bare tolerance behind a length with a unit is
    /// inches, and refused behind any other unit.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, Unit};
    ///
    /// let bore = LengthParser::new().parse_toleranced("25 ± 0.2 mm")?;
    /// assert_eq!(bore.most(), Length::fraction(252, 10, Unit::Millimeter));
    /// assert!(LengthParser::new().parse_toleranced("2 ft ±1/8").is_err());
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// A [`ParseError`] with the bytes to blame: a length that cannot be read, no tolerance, two of the
    /// same sign, a bare tolerance behind another unit than inches.
    pub fn parse_toleranced(&self, text: &str) -> Result<Toleranced, ParseError> {
        let whole = Piece::new(text);
        let parts = Parts::of(whole).ok_or_else(|| whole.refuse(Kind::NoTolerance))?;
        let parser = parts.shared_unit(*self)?;
        let nominal = parts.nominal.read(parser)?;
        let (over, under) = match parts.sides {
            Sides::Both(amount) => (amount.read(parser)?, amount.read(parser)?),
            Sides::Each(over, under) => (read_side(over, parser)?, read_side(under, parser)?),
        };
        let below_zero = over.is_negative() || under.is_negative();
        let kind = if below_zero { Kind::ToleranceSigns } else { Kind::TooLarge };
        Toleranced::checked_new(nominal, over, under).ok_or_else(|| whole.refuse(kind))
    }
}

fn read_side(side: Option<Piece<'_>>, parser: LengthParser) -> Result<Length, ParseError> {
    side.map_or(Ok(Length::ZERO), |piece| piece.read(parser))
}

/// Reads as [`LengthParser::new`] does.
impl FromStr for Toleranced {
    type Err = ParseError;

    fn from_str(text: &str) -> Result<Self, ParseError> {
        LengthParser::new().parse_toleranced(text)
    }
}

/// The pieces of a length with a tolerance, their signs taken off.
struct Parts<'a> {
    nominal: Piece<'a>,
    sides: Sides<'a>,
    last: Piece<'a>,
}

enum Sides<'a> {
    Both(Piece<'a>),
    /// Over and under, either of which may be left out.
    Each(Option<Piece<'a>>, Option<Piece<'a>>),
}

impl<'a> Parts<'a> {
    fn of(whole: Piece<'a>) -> Option<Self> {
        let text = whole.text();
        let both = ["±", "+/-", "+-", "+/−"].iter().find_map(|sign| text.find(sign).map(|at| (at, at + sign.len())));
        if let Some((from, to)) = both {
            let (nominal, amount) = whole.around(from, to);
            return Some(Self { nominal, sides: Sides::Both(amount), last: amount });
        }
        let first = first_side(text)?;
        let (nominal, rest) = whole.around(first, first);
        let second = second_side(rest.text());
        let (one, other) = match second {
            Some((from, to)) => (rest.part(0, from), Some(rest.part(to, rest.text().len()))),
            None => (rest, None),
        };
        Some(Self { nominal, sides: sides(one, other)?, last: other.unwrap_or(one) })
    }

    /// The parser with the unit that serves all of the pieces.
    fn shared_unit(&self, parser: LengthParser) -> Result<LengthParser, ParseError> {
        let bare = |piece: Piece<'_>| piece.is_bare(parser);
        let amounts = match self.sides {
            Sides::Both(amount) => [Some(amount), None],
            Sides::Each(over, under) => [over, under],
        };
        let amounts = || amounts.into_iter().flatten();
        let bare_amount = amounts().find(|amount| bare(*amount));
        let units = || amounts().filter_map(|amount| amount.last_unit(parser));
        if !bare(self.nominal) {
            return match bare_amount.filter(|_| self.nominal.last_unit(parser) != Some(Unit::Inch)) {
                Some(amount) => Err(amount.refuse(Kind::ToleranceUnit)),
                None => Ok(parser.default_unit(Unit::Inch)),
            };
        }
        // The length takes the unit behind its tolerance, which must then be one, and none but the one asked for.
        let Some(unit) = self.last.only_unit(parser) else {
            let odd = amounts().find(|amount| !bare(*amount) && amount.read(parser).is_ok_and(|amount| !amount.is_zero()));
            return odd.map_or(Ok(parser), |amount| Err(amount.refuse(Kind::ToleranceUnit)));
        };
        let asked_for = parser.default_unit == Unit::Inch || parser.default_unit == unit;
        if asked_for && units().all(|other| other == unit) {
            Ok(parser.default_unit(unit))
        } else {
            Err(self.last.refuse(Kind::ToleranceUnit))
        }
    }
}

/// Where the first signed side begins: at a plus, or at a minus that a plus follows.
fn first_side(text: &str) -> Option<usize> {
    let plus = text.char_indices().skip(1).find(|(_, letter)| *letter == '+')?.0;
    let minus = [" -", " −"].iter().filter_map(|sign| text[..plus].find(sign)).min().map(|blank| blank + 1);
    Some(minus.unwrap_or(plus)).filter(|first| *first > 0)
}

/// The bytes that separate two sides: a blank, a slash or a comma before the second sign.
fn second_side(text: &str) -> Option<(usize, usize)> {
    let signs = text.char_indices().skip(1).filter(|(_, letter)| matches!(letter, '+' | '-' | '−'));
    let mut starts = signs.map(|(at, _)| at);
    let separated = |at: &usize| text[..*at].ends_with([' ', '/', ',', '\u{A0}']);
    starts.find(separated).map(|at| (text[..at].trim_end_matches([' ', '/', ',', '\u{A0}']).len(), at))
}

/// Over and under, by their signs; `None` when both have the same sign.
fn sides<'a>(one: Piece<'a>, other: Option<Piece<'a>>) -> Option<Sides<'a>> {
    let sign = |piece: Piece<'_>| piece.text().chars().next();
    let body = |piece: Piece<'a>| piece.part(sign(piece).map_or(0, char::len_utf8), piece.text().len());
    let is_over = |piece: Piece<'_>| sign(piece) == Some('+');
    match other {
        None if is_over(one) => Some(Sides::Each(Some(body(one)), None)),
        Some(under) if is_over(one) && !is_over(under) => Some(Sides::Each(Some(body(one)), Some(body(under)))),
        Some(over) if !is_over(one) && is_over(over) => Some(Sides::Each(Some(body(over)), Some(body(one)))),
        _ => None,
    }
}
