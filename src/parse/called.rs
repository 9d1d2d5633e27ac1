//! Lengths as they are called across the shop: a mark, and whether the true size is strong or shy of it.
//! How much that is differs from crew to crew, so no number is invented. The mark itself is read as
//! anywhere else.

use core::str::FromStr;

use super::error::{ParseError, ParseErrorKind as Kind};
use super::parser::LengthParser;
use super::phrase::{names_side, phrase};
use super::piece::Piece;
use crate::length::Length;

/// A mark with its qualifier: `17 5/8 strong`, `3/4+`, `7/16 minus`, `just shy of 3/4`.
///
/// ```
/// use scantling::{Called, Length, Side, Unit};
///
/// let called: Called = "17 5/8 strong".parse()?;
/// assert_eq!(called.mark(), Length::fraction(141, 8, Unit::Inch));
/// assert_eq!(called.side(), Side::Over);
///
/// // A crew that means a sixty-fourth by it says so.
/// let step = Length::fraction(1, 64, Unit::Inch);
/// assert_eq!(called.checked_length(step), Some(Length::fraction(1129, 64, Unit::Inch)));
/// # Ok::<(), scantling::ParseError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Called {
    mark: Length,
    side: Side,
    amount: Amount,
}

/// On which side of its mark a called length lies.
///
/// ```
/// use scantling::{Called, Side};
///
/// let side = |text: &str| text.parse::<Called>().map(|called| called.side());
/// assert_eq!(side("5/8 shy"), Ok(Side::Under));
/// assert_eq!(side("5/8"), Ok(Side::On));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(clippy::exhaustive_enums)] // there are no others
pub enum Side {
    /// Longer than the mark: strong, plus, big, heavy, full.
    Over,
    /// On the mark, with no qualifier.
    On,
    /// Shorter than the mark: shy, minus, light, scant, bare.
    Under,
}

/// How far from the mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(super) enum Amount {
    /// So many of a step that the crew knows and the text does not say.
    Steps(u8),
    /// As said: `strong by 1/40`.
    Said(Length),
}

impl Called {
    /// A mark called so many steps strong or shy, whatever a step is to the crew; `None` when it is called on
    /// the mark and yet steps from it, or off the mark by no step.
    ///
    /// ```
    /// use scantling::{Called, Side, Unit};
    ///
    /// let foot = Unit::Foot.length();
    /// assert_eq!(Called::checked_new(foot, Side::Over, 2), "12 plus plus".parse().ok());
    /// assert_eq!(Called::checked_new(foot, Side::On, 0), "12".parse().ok());
    /// assert_eq!(Called::checked_new(foot, Side::Under, 0), None);
    /// ```
    #[must_use]
    pub fn checked_new(mark: Length, side: Side, steps: u8) -> Option<Self> {
        ((side == Side::On) == (steps == 0)).then_some(Self { mark, side, amount: Amount::Steps(steps) })
    }

    /// A mark called strong or shy by a length; `None` when it is called on the mark, or the length is below
    /// zero.
    ///
    /// ```
    /// use scantling::{Called, Length, Side, Unit};
    ///
    /// let (foot, fortieth) = (Unit::Foot.length(), Length::fraction(1, 40, Unit::Inch));
    /// assert_eq!(Called::checked_by(foot, Side::Over, fortieth), "12 strong by 1/40".parse().ok());
    /// assert_eq!(Called::checked_by(foot, Side::On, fortieth), None);
    /// assert_eq!(Called::checked_by(foot, Side::Over, -fortieth), None);
    /// ```
    #[must_use]
    pub fn checked_by(mark: Length, side: Side, said: Length) -> Option<Self> {
        let clear = side != Side::On && !said.is_negative();
        clear.then_some(Self { mark, side, amount: Amount::Said(said) })
    }

    /// The mark that was called.
    ///
    /// ```
    /// use scantling::{Called, Length, Unit};
    ///
    /// let called: Called = "a hair over 11-1/4".parse()?;
    /// assert_eq!(called.mark(), Length::fraction(45, 4, Unit::Inch));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn mark(&self) -> Length {
        self.mark
    }

    /// On which side of the mark the true length lies.
    ///
    /// ```
    /// use scantling::{Called, Side};
    ///
    /// assert_eq!("7/16 minus".parse::<Called>()?.side(), Side::Under);
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn side(&self) -> Side {
        self.side
    }

    /// How many steps from the mark, where the text counts them: two for `plus plus`, none for a plain
    /// mark; `None` where it says a length instead.
    ///
    /// ```
    /// use scantling::Called;
    ///
    /// assert_eq!("48 7/16 plus plus".parse::<Called>()?.steps(), Some(2));
    /// assert_eq!("17 3/8 strong by 1/40".parse::<Called>()?.steps(), None);
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn steps(&self) -> Option<u8> {
        match self.amount {
            Amount::Steps(count) => Some(count),
            Amount::Said(_) => None,
        }
    }

    /// How far from the mark, where the text says it.
    ///
    /// ```
    /// use scantling::{Called, Length, Unit};
    ///
    /// let called: Called = "17 3/8 strong by 1/40".parse()?;
    /// assert_eq!(called.said(), Some(Length::fraction(1, 40, Unit::Inch)));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn said(&self) -> Option<Length> {
        match self.amount {
            Amount::Steps(_) => None,
            Amount::Said(length) => Some(length),
        }
    }

    /// The length itself, for a crew whose qualifier means `step`; a length that was said stands.
    /// `None` when it cannot be held.
    ///
    /// ```
    /// use scantling::{Called, Length, Unit};
    ///
    /// // Three crews, three steps.
    /// let big_eighth: Called = "1/8+".parse()?;
    /// let sixteenth = Length::fraction(1, 16, Unit::Inch);
    /// assert_eq!(big_eighth.checked_length(sixteenth), Some(Length::fraction(3, 16, Unit::Inch)));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub fn checked_length(&self, step: Length) -> Option<Length> {
        let apart = match self.amount {
            Amount::Steps(count) => step.checked_mul(count.into())?,
            Amount::Said(length) => length,
        };
        match self.side {
            Side::Over => self.mark.checked_add(apart),
            Side::On => Some(self.mark),
            Side::Under => self.mark.checked_sub(apart),
        }
    }
}

impl Called {
    fn of(mark: Length, side: Side, amount: Amount) -> Option<Self> {
        match amount {
            Amount::Steps(_) => Some(Self { mark, side, amount }),
            Amount::Said(said) => Self::checked_by(mark, side, said),
        }
    }
}

impl LengthParser {
    /// Reads a text that is one length with or without a qualifier, and nothing else.
    ///
    /// ```
    /// use scantling::{Called, LengthParser, Side};
    ///
    /// assert_eq!(LengthParser::new().parse_called("just shy of 3/4")?.side(), Side::Under);
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// A [`ParseError`] with the bytes to blame: a length that cannot be read, qualifiers that contradict each other,
    /// as `strong by -1/40` does, or one that says no side, as in `barely 3/4`.
    pub fn parse_called(&self, text: &str) -> Result<Called, ParseError> {
        let whole = Piece::new(text);
        let (said, mark) = phrase(whole, *self)?;
        let mark = match mark.read(*self) {
            Ok(mark) => mark,
            Err(error) if error.kind() == Kind::Qualified && !names_side(error.found()) => {
                return Err(error.of_kind(Kind::QualifierSide));
            }
            // `a full inch`, `big eighth`: one that nobody counts.
            Err(error) if said.side != Side::On => mark.read_one(*self).ok_or(error)?,
            Err(error) => return Err(error),
        };
        Called::of(mark, said.side, said.amount).ok_or_else(|| whole.refuse(Kind::QualifiersDisagree))
    }
}

/// Reads as [`LengthParser::new`] does.
impl FromStr for Called {
    type Err = ParseError;

    fn from_str(text: &str) -> Result<Self, ParseError> {
        LengthParser::new().parse_called(text)
    }
}
