//! Why a job cannot be cut as asked. Every refusal names the part or the board, and carries the lengths that a person at the
//! saw would check next.

use alloc::boxed::Box;
use alloc::format;
use alloc::string::String;

use thiserror::Error;

use crate::length::Length;

/// Why there is no plan.
///
/// ```
/// use scantling::{Cutting, Length, Part, Stock, Unit};
///
/// let inches = |sixty_fourths| Length::fraction(sixty_fourths, 64, Unit::Inch);
/// let cutting = Cutting::new().part(Part::new("side", inches(96 * 64 + 1), 2)).stock(Stock::new("8 ft", inches(96 * 64)));
/// assert_eq!(
///     cutting.plan().unwrap_err().to_string(),
///     r#"side, 96 1/64" long, is 1/64" longer than the longest part that a board gives: 8 ft gives 96""#
/// );
/// ```
#[derive(Clone, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum CuttingError {
    /// Nothing to cut.
    #[error("there are no parts to cut")]
    NoParts,
    /// Nothing to cut from.
    #[error("there are no boards to cut from")]
    NoStock,
    /// A part that is no length.
    #[error("{name} cannot be {length} long: a part is longer than nothing")]
    PartLength {
        /// The part.
        name: Box<str>,
        /// The length that was given.
        length: Length,
    },
    /// A part of which none are wanted.
    #[error("none of {name} are wanted: leave it out, or say how many")]
    NoneWanted {
        /// The part.
        name: Box<str>,
    },
    /// Boards of which there are none.
    #[error("there are none of {name}: leave it out, or say how many")]
    NoneThere {
        /// The boards.
        name: Box<str>,
    },
    /// A kerf below zero.
    #[error("a kerf cannot be {kerf}: it must not be below zero")]
    NegativeKerf {
        /// The kerf that was given.
        kerf: Length,
    },
    /// A trim below zero.
    #[error("an end cannot be trimmed by {trim}: it must not be below zero")]
    NegativeTrim {
        /// The trim that was given.
        trim: Length,
    },
    /// An offcut or a piece to keep to that is below zero.
    #[error("an offcut or a piece cannot be {length} at the least: it must not be below zero")]
    NegativeLeast {
        /// The length that was given.
        length: Length,
    },
    /// Boards of which trimming leaves nothing.
    #[error("nothing is left of {name}, {length} long, when {trim} is trimmed off")]
    NothingLeft {
        /// The boards.
        name: Box<str>,
        /// How long they are.
        length: Length,
        /// What is trimmed off both ends together.
        trim: Length,
    },
    /// A part longer than any board gives, that may not be joined.
    #[error("{name}, {length} long, is {short} longer than the longest part that a board gives: {stock} gives {}", *.length - *.short)]
    PartTooLong {
        /// The part.
        name: Box<str>,
        /// How long it is.
        length: Length,
        /// The boards that give the longest part, trimmed and with its kerf.
        stock: Box<str>,
        /// How much is missing.
        short: Length,
    },
    /// A part whose pieces would be shorter than the shortest piece that is allowed.
    #[error("{name} cannot be joined of pieces between {least} and {gives}: ask for a shorter piece")]
    PieceTooShort {
        /// The part.
        name: Box<str>,
        /// The shortest piece that was asked for.
        least: Length,
        /// The longest piece that a board gives.
        gives: Length,
    },
    /// The boards that are there do not give the parts, or the pieces that joined parts are made of, whichever way they are cut.
    #[error("the boards are too few, or too short, however they are cut: {}", needed(*.need, *.give))]
    NotEnoughStock {
        /// What the parts take, kerfs and all.
        need: Length,
        /// What all boards give, trimmed; `None` where there are as many of some as it takes.
        give: Option<Length>,
    },
    /// Patience ended before a plan was found for boards of which there are only so many.
    #[error("no plan was found in the time there was: {}; allow more time, or more boards", needed(*.need, *.give))]
    NoPlanYet {
        /// What the parts take, kerfs and all.
        need: Length,
        /// What all boards give, trimmed; `None` where there are as many of some as it takes.
        give: Option<Length>,
    },
    /// Some boards have a price and some have none.
    #[error("{priced} has a price and {unpriced} has none: give a price for each, 0 for what is there already")]
    MixedPrices {
        /// Boards with a price.
        priced: Box<str>,
        /// Boards without.
        unpriced: Box<str>,
    },
    /// The lowest price is aimed at, and nothing has one.
    #[error("the boards have no prices, so no plan can be the cheapest: give what each costs")]
    NoPrices,
    /// A price below zero, or one without a value.
    #[error("the price of {name} must be a number, and not below zero")]
    BadPrice {
        /// The boards.
        name: Box<str>,
    },
    /// As many boards as it takes, for nothing.
    #[error("there cannot be as many of {name} as it takes for nothing: say how many there are, or what one costs")]
    FreeWithoutLimit {
        /// The boards.
        name: Box<str>,
    },
    /// More parts than a plan is made for, pieces of joined parts counted.
    #[error("{parts} parts are too many for one plan: at most {most}")]
    TooManyParts {
        /// How many there are, at the least.
        parts: u64,
        /// How many there may be.
        most: u64,
    },
    /// Lengths or prices so different that no common measure can count them.
    #[error("the {what} are too large, or too finely divided beside each other, to be counted in one measure")]
    OutOfRange {
        /// What they are: lengths or prices.
        what: &'static str,
    },
}

fn needed(need: Length, give: Option<Length>) -> String {
    match give {
        Some(give) => format!("the parts take {need} with their kerfs and the boards give {give}"),
        None => format!("the parts take {need} with their kerfs, and of the boards that are long enough there are only so many"),
    }
}
