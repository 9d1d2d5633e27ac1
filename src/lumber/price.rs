//! A price: an amount of money, and what it buys one of. How much there is to buy is left to `tally.rs`.

use core::fmt;
use core::str::FromStr;

use num_rational::Ratio;

use super::error::LumberError;
use super::money::Money;
use super::tally::Tallied;
use crate::length::Unit;

/// What a price is for one of.
///
/// ```
/// use scantling::{Price, PricedBy};
///
/// assert_eq!("54.98/sheet".parse::<Price>()?.by(), PricedBy::Piece);
/// # Ok::<(), scantling::LumberError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum PricedBy {
    /// A board foot, as hardwood is sold.
    BoardFoot,
    /// A foot of length, as molding and softwood are.
    LinearFoot,
    /// A square foot of face.
    SquareFoot,
    /// A piece: a stud, a board or a sheet.
    Piece,
}

/// In words: `board foot`, `linear foot`, `square foot`, `piece`.
///
/// ```
/// assert_eq!(scantling::PricedBy::BoardFoot.to_string(), "board foot");
/// ```
impl fmt::Display for PricedBy {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.pad(match self {
            Self::BoardFoot => "board foot",
            Self::LinearFoot => "linear foot",
            Self::SquareFoot => "square foot",
            Self::Piece => "piece",
        })
    }
}

/// An exact price.
///
/// ```
/// use scantling::{Money, Nominal, Price, Tally, TallyRule};
///
/// let planks: Nominal = "8/4 x 6 - 8'".parse()?;
/// let tallied = Tally::new(TallyRule::NearestFoot).add(&planks, 3)?;
/// let price: Price = "9.50/bf".parse()?;
/// assert_eq!(price.of(&tallied)?, Money::cents(228_00));
/// # Ok::<(), scantling::LumberError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Price {
    money: Money,
    by: PricedBy,
}

impl Price {
    /// An amount for one of something.
    ///
    /// ```
    /// use scantling::{Money, Price, PricedBy};
    ///
    /// assert_eq!("0.62/ft".parse(), Ok(Price::new(Money::cents(62), PricedBy::LinearFoot)));
    /// ```
    #[must_use]
    pub const fn new(money: Money, by: PricedBy) -> Self {
        Self { money, by }
    }

    /// The amount.
    ///
    /// ```
    /// use scantling::{Money, Price};
    ///
    /// assert_eq!("8.75 a board foot".parse::<Price>()?.money(), Money::cents(875));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub const fn money(&self) -> Money {
        self.money
    }

    /// What it buys one of.
    ///
    /// ```
    /// use scantling::{Price, PricedBy};
    ///
    /// assert_eq!("1.90/sqft".parse::<Price>()?.by(), PricedBy::SquareFoot);
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub const fn by(&self) -> PricedBy {
        self.by
    }

    /// What so much costs, exactly.
    ///
    /// ```
    /// use scantling::{Money, Nominal, Price, Tally, TallyRule};
    ///
    /// let sheets: Nominal = "3/4 ply 4x8".parse()?;
    /// let tallied = Tally::new(TallyRule::OneInchMinimum).add(&sheets, 2)?;
    /// assert_eq!("54.98/sheet".parse::<Price>()?.of(&tallied)?, Money::cents(109_96));
    /// assert!("8.75/bf".parse::<Price>()?.of(&tallied).is_err());
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`LumberError::NotPricedSo`] for a panel by the board foot or the foot of length, [`LumberError::OutOfRange`].
    pub fn of(&self, tallied: &Tallied) -> Result<Money, LumberError> {
        let not_so = || LumberError::NotPricedSo { kind: tallied.kind(), by: self.by };
        let count = match self.by {
            PricedBy::BoardFoot => tallied.board_feet().ok_or_else(not_so)?.checked_in_board_feet(),
            PricedBy::LinearFoot => Some(tallied.linear().ok_or_else(not_so)?.in_unit(Unit::Foot)),
            PricedBy::SquareFoot => tallied.face().checked_in_square(Unit::Foot),
            PricedBy::Piece => Some(Ratio::from_integer(tallied.pieces().into())),
        };
        count.and_then(|count| self.money.checked_times(count)).ok_or(LumberError::OutOfRange)
    }
}

/// Reads an amount and what it buys, with a slash, `per` or `a` between: `8.75/bf`, `0.62 per ft`, `54.98 a sheet`.
impl FromStr for Price {
    type Err = LumberError;

    fn from_str(text: &str) -> Result<Self, LumberError> {
        let refuse = || LumberError::NotAPrice { text: text.chars().take(24).collect() };
        // The last slash: an earlier one is a fraction's.
        let word = text.find(char::is_alphabetic).ok_or_else(refuse)?;
        let slash = text[..word].trim_end().strip_suffix('/');
        let amount = slash.unwrap_or(&text[..word]);
        let mut words = text[word..].split_whitespace().peekable();
        if slash.is_none() {
            words.next_if(|word| ["per", "a"].iter().any(|between| word.eq_ignore_ascii_case(between)));
        }
        let by = by_name(words).ok_or_else(refuse)?;
        let money = amount.parse().ok().filter(|money| *money >= Money::ZERO).ok_or_else(refuse)?;
        Ok(Self { money, by })
    }
}

fn by_name<'a>(mut words: impl Iterator<Item = &'a str>) -> Option<PricedBy> {
    const NAMES: [(&[&str], PricedBy); 4] = [
        (&["bf", "bdft", "bd ft", "board ft", "board foot"], PricedBy::BoardFoot),
        (&["ft", "foot", "lf", "lin ft", "linear ft", "linear foot", "lineal foot"], PricedBy::LinearFoot),
        (&["sf", "sqft", "sq ft", "square ft", "square foot"], PricedBy::SquareFoot),
        (&["piece", "pc", "sheet", "board", "stud", "stick", "each", "ea"], PricedBy::Piece),
    ];
    let (first, second) = (words.next()?, words.next());
    let is = |name: &&&str| {
        let mut parts = name.split(' ');
        let same = |part: Option<&str>, word: Option<&str>| match (part, word) {
            (Some(part), Some(word)) => word.trim_end_matches('.').eq_ignore_ascii_case(part),
            (None, None) => true,
            _ => false,
        };
        same(parts.next(), Some(first)) && same(parts.next(), second)
    };
    let known = NAMES.iter().find(|(names, _)| names.iter().any(|name| is(&name)));
    known.map(|(_, by)| *by).filter(|_| words.next().is_none())
}

/// `8.75 a board foot`, readable back.
///
/// ```
/// use scantling::{Money, Price, PricedBy};
///
/// assert_eq!(Price::new(Money::cents(62), PricedBy::LinearFoot).to_string(), "0.62 a linear foot");
/// ```
impl fmt::Display for Price {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{} a {}", self.money, self.by)
    }
}
