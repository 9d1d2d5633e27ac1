//! Lengths with a tolerance: `24 ±1/32`, `25 +0/-0.2 mm`. The lengths are read as anywhere else.

use core::str::FromStr;

use super::error::{ParseError, ParseErrorKind as Kind};
use super::parser::LengthParser;
use super::piece::Piece;
use super::sides::{Parts, Sides};
use super::written::Written;
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
    /// Reads a text that is one length with its tolerance and nothing else: `±`, `+/-` or `plus or minus` for both
    /// sides, `+1/32 -0` or `+0/-0.2` for each, `+1/16` for the one side alone, in brackets or not.
    ///
    /// A unit behind the tolerance, or behind its bracket, serves the length too. A bare tolerance behind a length with a unit is
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
    /// same sign, a hyphen that may as well join the length, a bare tolerance behind another unit than inches.
    pub fn parse_toleranced(&self, text: &str) -> Result<Toleranced, ParseError> {
        self.parse_toleranced_written(text).map(|(toleranced, _)| toleranced)
    }

    /// Reads as [`parse_toleranced`](Self::parse_toleranced) does, and says how the length was written, what it may be
    /// over and what it may be under; a side that was left out is as [`Written::default`].
    ///
    /// ```
    /// use scantling::{LengthParser, Precision, Warning};
    ///
    /// let (_, written) = LengthParser::new().parse_toleranced_written("13/4 ±1/32")?;
    /// assert_eq!(written[0].warning(), Some(Warning::LostBlank));
    /// assert_eq!(written.map(|written| written.precision()), [4, 32, 32].map(Precision::Fraction));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// As [`parse_toleranced`](Self::parse_toleranced).
    pub fn parse_toleranced_written(&self, text: &str) -> Result<(Toleranced, [Written; 3]), ParseError> {
        let whole = Piece::new(text);
        let parts = Parts::of(whole, *self)?;
        let parser = parts.shared_unit(*self)?;
        let (over, under) = match parts.sides {
            Sides::Both(amount) => (Some(amount), Some(amount)),
            Sides::Each(over, under) => (over, under),
        };
        let side = |piece: Option<Piece<'_>>| piece.map_or(Ok(Default::default()), |piece| piece.read_written(parser));
        let [nominal, over, under] = [side(Some(parts.nominal))?, side(over)?, side(under)?];
        let below_zero = over.0.is_negative() || under.0.is_negative();
        let kind = if below_zero { Kind::ToleranceSigns } else { Kind::TooLarge };
        let toleranced = Toleranced::checked_new(nominal.0, over.0, under.0).ok_or_else(|| whole.refuse(kind))?;
        Ok((toleranced, [nominal.1, over.1, under.1]))
    }
}

/// Reads as [`LengthParser::new`] does.
impl FromStr for Toleranced {
    type Err = ParseError;

    fn from_str(text: &str) -> Result<Self, ParseError> {
        LengthParser::new().parse_toleranced(text)
    }
}

impl Parts<'_> {
    /// The parser with the unit that serves all of the pieces.
    fn shared_unit(&self, parser: LengthParser) -> Result<LengthParser, ParseError> {
        // What cannot be read at all has nothing to do with units.
        self.nominal.read(parser)?;
        self.amounts().try_for_each(|amount| amount.read(parser).map(|_| ()))?;
        let bare_amount = self.amounts().find(|amount| amount.is_bare(parser));
        match self.unit {
            Some(unit) => self.with_unit_behind(unit, parser),
            None if self.nominal.is_bare(parser) => self.with_last_unit(parser),
            None => match bare_amount.filter(|_| self.nominal.last_unit(parser) != Some(Unit::Inch)) {
                Some(amount) => Err(amount.refuse_unit(self.nominal.last_unit(parser))),
                None => Ok(parser.default_unit(Unit::Inch)),
            },
        }
    }

    /// The unit behind a bracket is that of all, none of which has another.
    fn with_unit_behind(&self, unit: Unit, parser: LengthParser) -> Result<LengthParser, ParseError> {
        let marked = core::iter::once(self.nominal).chain(self.amounts()).find(|piece| has_unit(*piece, parser));
        match marked.or_else(|| Some(self.nominal).filter(|_| !may_take(unit, parser))) {
            Some(piece) => Err(piece.refuse(Kind::ToleranceUnit)),
            None => Ok(parser.default_unit(unit)),
        }
    }

    /// The length takes the unit behind its tolerance, which must then be one, and none but the one asked for.
    fn with_last_unit(&self, parser: LengthParser) -> Result<LengthParser, ParseError> {
        let Some(unit) = self.last.only_unit(parser) else {
            let odd = self.amounts().find(|amount| has_unit(*amount, parser));
            return odd.map_or(Ok(parser), |amount| Err(amount.refuse(Kind::ToleranceUnit)));
        };
        let alike = self.amounts().filter_map(|amount| amount.last_unit(parser)).all(|other| other == unit);
        if alike && may_take(unit, parser) { Ok(parser.default_unit(unit)) } else { Err(self.last.refuse(Kind::ToleranceUnit)) }
    }

    fn amounts(&self) -> impl Iterator<Item = Piece<'_>> {
        let amounts = match self.sides {
            Sides::Both(amount) => [Some(amount), None],
            Sides::Each(over, under) => [over, under],
        };
        amounts.into_iter().flatten()
    }
}

/// Whether a length that can be read has a unit of its own; nothing is as much in every unit.
fn has_unit(piece: Piece<'_>, parser: LengthParser) -> bool {
    !piece.is_bare(parser) && piece.read(parser).is_ok_and(|length| !length.is_zero())
}

/// Whether bare numbers may take a unit: not where another was asked for.
fn may_take(unit: Unit, parser: LengthParser) -> bool {
    parser.default_unit == Unit::Inch || parser.default_unit == unit
}
