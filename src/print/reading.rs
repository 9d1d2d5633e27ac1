//! How a reading is said in the shop: the mark first, then what the true place has more or less than it.
//! Which mark that is, is left to `tape/`.

use core::fmt::{self, Write};

use super::inches::Inches;
use super::written::{Written, padded};
use super::{Join, Marks};
use crate::tape::{Lean, Reading};

/// `strong`, `shy` or `dead on`.
///
/// ```
/// assert_eq!(scantling::Lean::Strong.to_string(), "strong");
/// ```
impl fmt::Display for Lean {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(&self.word(), out)
    }
}

impl Lean {
    const fn word(self) -> &'static str {
        match self {
            Self::Strong => "strong",
            Self::Shy => "shy",
            Self::DeadOn => "dead on",
        }
    }
}

/// What the tape shows, its fraction joined by a hyphen, and the exact leftover: `17-3/8" strong by 1/40"`,
/// or the mark alone when the place is dead on.
///
/// ```
/// use scantling::{Length, Tape, Unit};
///
/// let place = Length::fraction(87, 5, Unit::Inch);
/// assert_eq!(Tape::sixteenths().read(place)?.to_string(), r#"17-3/8" strong by 1/40""#);
/// assert_eq!(Tape::sixteenths().read(Unit::Foot.length())?.to_string(), r#"12""#);
/// # Ok::<(), scantling::TapeError>(())
/// ```
impl fmt::Display for Reading {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(&Said(self), out)
    }
}

struct Said<'a>(&'a Reading);

impl Written for Said<'_> {
    fn write(&self, out: &mut impl Write) -> fmt::Result {
        let (join, marks, lean) = (Join::Hyphen, Marks::Quotes, self.0.lean());
        Inches { length: self.0.shown(), join, marks }.write(out)?;
        if lean == Lean::DeadOn {
            return Ok(());
        }
        write!(out, " {} by ", lean.word())?;
        Inches { length: self.0.leftover().abs(), join, marks }.write(out)
    }
}
