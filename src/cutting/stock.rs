//! What parts are cut from: boards of one length, with a name.

use alloc::string::String;

use num_rational::Ratio;

use crate::length::Length;

/// Boards of one length to cut from.
///
/// ```
/// use num_rational::Ratio;
/// use scantling::{Length, Stock, Unit};
///
/// // Three boards left over from the glaze shelves, and as many new ones as it takes.
/// let left_over = Stock::new("left over", Length::new(40, Unit::Inch)).limit(3).price(Ratio::from_integer(0));
/// let new = Stock::new("8 ft", Length::new(8, Unit::Foot)).price(Ratio::new(1_249, 100));
/// assert_eq!((left_over.limit, new.limit), (Some(3), None));
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct Stock {
    /// What it is called; need not be unique.
    pub name: String,
    /// How long a board is, before anything is trimmed.
    pub length: Length,
    /// How many there are; `None` for as many as it takes.
    pub limit: Option<u64>,
    /// What one costs, in any currency. What is there already costs nothing.
    pub price: Option<Ratio<i128>>,
}

impl Stock {
    /// As many boards as it takes, without a price.
    ///
    /// ```
    /// use scantling::{Length, Stock, Unit};
    ///
    /// assert_eq!(Stock::new("10 ft", Length::new(10, Unit::Foot)).price, None);
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, length: Length) -> Self {
        Self { name: name.into(), length, limit: None, price: None }
    }

    /// The same, of which there are only so many.
    ///
    /// ```
    /// use scantling::{Length, Stock, Unit};
    ///
    /// assert_eq!(Stock::new("10 ft", Length::new(10, Unit::Foot)).limit(2).limit, Some(2));
    /// ```
    #[must_use]
    pub fn limit(self, limit: u64) -> Self {
        Self { limit: Some(limit), ..self }
    }

    /// The same at a price for one board.
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::{Length, Stock, Unit};
    ///
    /// let board = Stock::new("10 ft", Length::new(10, Unit::Foot)).price(Ratio::new(33, 2));
    /// assert_eq!(board.price, Some(Ratio::new(33, 2)));
    /// ```
    #[must_use]
    pub fn price(self, price: Ratio<i128>) -> Self {
        Self { price: Some(price), ..self }
    }
}
