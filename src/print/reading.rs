//! How a reading is said in the shop: the mark first, then what the true place has more or less than it.
//! Which mark that is, is left to `tape/`.

use core::fmt::{self, Write};

use super::inches::Inches;
use super::look::Look;
use super::written::{Written, padded};
use super::{Join, LengthPrinter};
use crate::tape::{Lean, Reading};

/// `strong`, `shy` or `dead on`.
///
/// ```
/// assert_eq!(scantling::Lean::Strong.to_string(), "strong");
/// ```
impl fmt::Display for Lean {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(self.word(), out)
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
        padded(Said(*self), out)
    }
}

#[derive(Clone, Copy)]
struct Said(Reading);

impl Written for Said {
    fn write(self, out: &mut impl Write) -> fmt::Result {
        let look = Look::plain(LengthPrinter::new().join(Join::Hyphen));
        Inches { length: self.0.shown(), look }.write(out)?;
        match self.0.lean() {
            Lean::DeadOn => Ok(()),
            lean => {
                write!(out, " {} by ", lean.word())?;
                Inches { length: self.0.leftover().abs(), look }.write(out)
            }
        }
    }
}
