//! What is wanted and what it is cut from: panels and sheets, each a length and a width, the grain along the length.

use alloc::string::String;

use num_rational::Ratio;

use crate::length::Length;

/// Panels of one size to be cut.
///
/// ```
/// use scantling::{Panel, Unit};
///
/// let shelf = Panel::new("shelf", Unit::Yard.length(), Unit::Foot.length(), 4);
/// assert!(!shelf.may_be_turned && shelf.turnable().may_be_turned);
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct Panel {
    /// What it is called; need not be unique.
    pub name: String,
    /// How long it is, along the grain.
    pub length: Length,
    /// How wide it is, across the grain.
    pub width: Length,
    /// How many are wanted.
    pub count: u64,
    /// Whether its grain may run either way.
    pub may_be_turned: bool,
}

impl Panel {
    /// So many panels, the grain of the sheet along each.
    ///
    /// ```
    /// use scantling::{Panel, Unit};
    ///
    /// assert_eq!(Panel::new("door", Unit::Yard.length(), Unit::Foot.length(), 2).count, 2);
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, length: Length, width: Length, count: u64) -> Self {
        Self { name: name.into(), length, width, count, may_be_turned: false }
    }

    /// The same with the grain either way: for hardboard, melamine, what is painted.
    ///
    /// ```
    /// use scantling::{Panel, Unit};
    ///
    /// assert!(Panel::new("back", Unit::Yard.length(), Unit::Foot.length(), 1).turnable().may_be_turned);
    /// ```
    #[must_use]
    pub fn turnable(self) -> Self {
        Self { may_be_turned: true, ..self }
    }
}

/// Sheets of one size to cut from.
///
/// ```
/// use scantling::{Length, Sheet, Unit};
///
/// let feet = |count| Length::new(count, Unit::Foot);
/// assert_eq!(Sheet::new("4 x 8 ft", feet(8), feet(4)).limit(2).limit, Some(2));
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct Sheet {
    /// What it is called; need not be unique.
    pub name: String,
    /// How long it is, along the grain, before anything is trimmed.
    pub length: Length,
    /// How wide it is.
    pub width: Length,
    /// How many there are; `None` for as many as it takes.
    pub limit: Option<u64>,
    /// What one costs, in any currency.
    pub price: Option<Ratio<i128>>,
}

impl Sheet {
    /// As many sheets as it takes, without a price.
    ///
    /// ```
    /// use scantling::{Length, Sheet, Unit};
    ///
    /// let sheet = Sheet::new("metric", Length::new(2440, Unit::Millimeter), Length::new(1220, Unit::Millimeter));
    /// assert_eq!(sheet.price, None);
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, length: Length, width: Length) -> Self {
        Self { name: name.into(), length, width, limit: None, price: None }
    }

    /// The same, of which there are only so many.
    ///
    /// ```
    /// use scantling::{Sheet, Unit};
    ///
    /// assert_eq!(Sheet::new("left over", Unit::Yard.length(), Unit::Foot.length()).limit(1).limit, Some(1));
    /// ```
    #[must_use]
    pub fn limit(self, limit: u64) -> Self {
        Self { limit: Some(limit), ..self }
    }

    /// The same at a price for one sheet.
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::{Sheet, Unit};
    ///
    /// let sheet = Sheet::new("strip", Unit::Yard.length(), Unit::Foot.length()).price(Ratio::new(25, 2));
    /// assert_eq!(sheet.price, Some(Ratio::new(25, 2)));
    /// ```
    #[must_use]
    pub fn price(self, price: Ratio<i128>) -> Self {
        Self { price: Some(price), ..self }
    }
}
