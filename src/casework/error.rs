//! Why a question about a case has no answer. Every refusal carries the figures that a person at the bench would
//! check next.

use alloc::boxed::Box;
use core::fmt;

use thiserror::Error;

use crate::geometry::GeometryError;
use crate::length::Length;
use crate::pole::PoleError;
use crate::spacing::SpacingError;

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
    /// Sizes measured over, or level with, what the case does not have.
    #[error("the case has no {what} to measure {measure}")]
    NothingThere {
        /// What it does not have.
        what: &'static str,
        /// What was to be measured, or set level.
        measure: &'static str,
    },
    /// A case without any bay.
    #[error("a case has at least one bay")]
    NoBays,
    /// A joint as deep as the panel is thick that it is cut into.
    #[error("a joint {depth} deep goes through the {thickness} {panel}")]
    Through {
        /// How deep it is.
        depth: Length,
        /// The panel: `side`, `bottom`, `top`, `partition`.
        panel: &'static str,
        /// How thick it is.
        thickness: Length,
    },
    /// A length to stop dadoes short by, where there is no dado.
    #[error("only a dado can be stopped short of the front edge, and the case has none")]
    NothingToStop,
    /// A clear space of which nothing is left.
    #[error("the clear {what} would come out {size}: the overall sizes leave no room for it")]
    NothingClear {
        /// What lies clear.
        what: &'static str,
        /// What is left of it.
        size: Length,
    },
    /// A bottom thicker than the rail that it is to be level with is wide.
    #[error("a bottom of {bottom} is thicker than the bottom rail is wide: it would lie below the sides")]
    RailTooNarrow {
        /// How thick the bottom is.
        bottom: Length,
    },
    /// Doors or drawers without a single front.
    #[error("there is at least one front across an opening")]
    NoFront,
    /// Drawer fronts of given heights that come to more than there is, or to less.
    #[error("drawer fronts and gaps of given sizes come to {need}, and {run} is to be filled: give other heights")]
    FrontsOfOtherRun {
        /// What they come to.
        need: Length,
        /// How high the opening is, with what they cover of the case, or less the gaps at its ends.
        run: Length,
    },
    /// Walls between which scribing leaves nothing.
    #[error("scribing takes {left} and {right} of {narrowest} between the walls: nothing is left for the case")]
    NothingBetweenWalls {
        /// The room for scribing at the left.
        left: Length,
        /// The same at the right.
        right: Length,
        /// From wall to wall where they are nearest.
        narrowest: Length,
    },
    /// A part for which nothing is left.
    #[error("the {part} would come out {size} {dimension}: the overall sizes leave no room for it")]
    NoRoom {
        /// The part.
        part: &'static str,
        /// `thick`, `wide` or `long`.
        dimension: &'static str,
        /// What is left for it.
        size: Length,
    },
    /// Rows of holes that do not fit, or have no end.
    #[error("no row of holes every {pitch}, the first {first} up, fits between bottom and top")]
    NoHoles {
        /// From hole to hole.
        pitch: Length,
        /// From the bottom to the first.
        first: Length,
    },
    /// Stock for which no setting is known.
    #[error("no pocket setting is known for {held} into {into} stock: ask the maker of the screws")]
    NoSetting {
        /// How thick the stock with the pocket is.
        held: Length,
        /// How thick the stock is that the screw goes into.
        into: Length,
    },
    /// A measure that is zero or negative where it cannot be, or a diagonal that cannot be worked out.
    #[error(transparent)]
    Geometry(#[from] GeometryError),
    /// Shelves that cannot be spread.
    #[error(transparent)]
    Spacing(#[from] SpacingError),
    /// Marks that make no pole.
    #[error(transparent)]
    Pole(#[from] PoleError),
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
