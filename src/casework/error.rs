//! Why a question about a case has no answer. Every refusal carries the figures that a person at the bench would
//! check next.

use alloc::boxed::Box;
use core::fmt;

use thiserror::Error;

use crate::length::Length;

/// Why a figure could not be worked out.
///
/// ```
/// use scantling::material;
///
/// let refused = material("balsa").unwrap_err();
/// assert_eq!(refused.to_string(), "no figure for `balsa`: another wood's figure would be a guess; bring your own");
/// ```
#[derive(Clone, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum CaseworkError {
    /// A wood or a panel that the tables do not have, or not for what was asked.
    #[error("no figure for `{name}`: another wood's figure would be a guess; {}", Known(.nearest))]
    NoFigure {
        /// What was asked for.
        name: Box<str>,
        /// Names in the table that share a word with it.
        nearest: Box<[&'static str]>,
    },
    /// A measure that is zero or negative.
    #[error("{what} cannot be {given}: it must be above zero")]
    NotAboveZero {
        /// What was measured, with its article: `a thickness`, `a span`.
        what: &'static str,
        /// The length that was given.
        given: Length,
    },
    /// A load or a stiffness that is zero or negative.
    #[error("{what} must be above zero")]
    NoLoad {
        /// What it was, with its article: `a load`, `a modulus`.
        what: &'static str,
    },
    /// No span of even one graduation stays within the limit.
    #[error("even a span of {step} sags more than the limit")]
    NoSpan {
        /// The graduation.
        step: Length,
    },
    /// Figures past what can be held exactly.
    #[error("the figures are too large or too fine to be worked out exactly")]
    TooLarge,
}

/// Names that may have been meant.
struct Known<'a>(&'a [&'static str]);

impl fmt::Display for Known<'_> {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.0.is_empty() {
            return out.write_str("bring your own");
        }
        out.write_str("there is ")?;
        for (place, name) in self.0.iter().enumerate() {
            out.write_str(if place > 0 { ", " } else { "" })?;
            write!(out, "`{name}`")?;
        }
        Ok(())
    }
}
