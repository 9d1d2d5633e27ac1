//! What can go wrong once a name has been read: a size that no table has, a sum that lacks a length, a price that is
//! asked of the wrong thing. Why a text is no name is left to `name/error.rs`.

use alloc::boxed::Box;
use core::fmt;

use thiserror::Error;

use super::as_sold::AsSold;
use super::kind::{LumberKind, Seasoning, Surface};
use super::name::NominalError;
use super::price::PricedBy;
use crate::length::Length;

/// Why a size, an amount or a cost of lumber could not be found.
///
/// ```
/// use scantling::{Catalog, Length, LumberError, Nominal, Unit};
///
/// let odd: Nominal = "2x7".parse()?;
/// let refused = Catalog::new().actual(&odd).unwrap_err();
/// assert_eq!(refused.to_string(), r#"7" is no width of dimension lumber in the table; the nearest are 6" and 8""#);
/// # Ok::<(), LumberError>(())
/// ```
#[derive(Clone, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum LumberError {
    /// A text that is no name.
    #[error(transparent)]
    Name(#[from] NominalError),
    /// A size that is not in the table. Nothing is read between two entries.
    #[error("{} is no {what} in the table{}", AsSold(*.given), Nearest(.nearest))]
    NotInTable {
        /// What it was looked up as.
        what: &'static str,
        /// The size by name.
        given: Length,
        /// The entries below and above it, as far as there are such.
        nearest: Box<[Length]>,
    },
    /// A table without any size for the way the wood was seasoned or planed.
    #[error("the table has no sizes of {kind}, {surface}, {seasoning}")]
    NoSuchSizes {
        /// What was looked up.
        kind: LumberKind,
        /// How it is planed.
        surface: Surface,
        /// How it is seasoned.
        seasoning: Seasoning,
    },
    /// A sheet of a size that is not in the table.
    #[error("{} x {} is no size of sheets in the table{}", AsSold(*.width), AsSold(*.length), NearestSheets(.nearest))]
    NoSuchSheet {
        /// How wide it is.
        width: Length,
        /// How long it is.
        length: Length,
        /// The two sizes that differ least, width and length.
        nearest: Box<[(Length, Length)]>,
    },
    /// An amount that needs a size which was not said.
    #[error("{name} has no {missing}, and that is needed to say how much it is")]
    Missing {
        /// The piece by name.
        name: Box<str>,
        /// What was not said.
        missing: &'static str,
    },
    /// A size of zero or less.
    #[error("the {what} of a piece must be above zero: it was given as {given}")]
    NotAboveZero {
        /// Which size.
        what: &'static str,
        /// What was given.
        given: Length,
    },
    /// A price by something that the piece is not measured in.
    #[error("{kind} has no price by the {by}")]
    NotPricedSo {
        /// What has the price.
        kind: LumberKind,
        /// What the price is for one of.
        by: PricedBy,
    },
    /// A text that is no amount of money.
    #[error("`{}` is no amount of money: write it as 8.75, with no comma", .text.escape_debug())]
    NotMoney {
        /// The text, or its beginning.
        text: Box<str>,
    },
    /// A text that is no price.
    #[error("`{}` is no price: write an amount and what it buys, as in 8.75/bf, 0.62/ft, 1.90/sqft or 54.98/piece", .text.escape_debug())]
    NotAPrice {
        /// The text, or its beginning.
        text: Box<str>,
    },
    /// An amount or a cost too large, or too finely divided, to be held.
    #[error("the exact amount is out of range: larger, or more finely divided, than can be held")]
    OutOfRange,
}

/// The entries on both sides of one that is not there.
struct Nearest<'a>(&'a [Length]);

impl fmt::Display for Nearest<'_> {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.0 {
            [] => Ok(()),
            [one] => write!(out, "; the nearest is {}", AsSold(*one)),
            [below, rest @ ..] => {
                write!(out, "; the nearest are {}", AsSold(*below))?;
                rest.iter().try_for_each(|above| write!(out, " and {}", AsSold(*above)))
            }
        }
    }
}

struct NearestSheets<'a>(&'a [(Length, Length)]);

impl fmt::Display for NearestSheets<'_> {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().enumerate().try_for_each(|(place, (width, length))| {
            let before = if place == 0 { "; the nearest are" } else { " and" };
            write!(out, "{before} {} x {}", AsSold(*width), AsSold(*length))
        })
    }
}
