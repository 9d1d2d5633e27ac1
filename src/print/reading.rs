//! How a reading is said in the shop: the mark first, then what the true place has more or less than it.
//! Which mark that is, is left to `tape/`, the settings to `reading_printer.rs`.

use core::fmt::{self, Write};

use super::look::Look;
use super::rounded::RoundedShown;
use super::written::{Written, padded};
use super::{Join, LengthPrinter, Shown};
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
/// or the mark alone when the place is dead on. A [`ReadingPrinter`](crate::ReadingPrinter) writes it in other ways.
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
        // Fractions in lowest terms suit any length.
        let look = Look::plain(LengthPrinter::new().join(Join::Hyphen));
        let leftover = Shown { length: self.leftover().abs(), look };
        let mark = Shown { length: self.shown(), look };
        padded(ShownReading { mark, lean: self.lean(), leftover: RoundedShown { shown: leftover, exact: true } }, out)
    }
}

/// A reading that is ready to be written, made by [`ReadingPrinter::show`](crate::ReadingPrinter::show).
///
/// Its `Display` cannot fail and honors width, fill and alignment, as that of [`Shown`] does.
///
/// ```
/// use scantling::{Length, ReadingPrinter, Tape, Unit};
///
/// let reading = Tape::sixteenths().read(Length::fraction(87, 5, Unit::Inch))?;
/// let shown = ReadingPrinter::new().show(&reading)?;
/// assert_eq!(format!("{shown:>25}"), r#"  17-3/8" strong by 1/40""#);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct ShownReading {
    pub(super) mark: Shown,
    pub(super) lean: Lean,
    pub(super) leftover: RoundedShown,
}

impl ShownReading {
    /// Whether the leftover is written to its last digit, not rounded.
    ///
    /// ```
    /// use scantling::{Length, ReadingPrinter, Rounding, Tape, Unit};
    ///
    /// let to_the_mil = ReadingPrinter::new().rounded(Rounding::to(Length::fraction(1, 1000, Unit::Inch)));
    /// let is_exact = |place| to_the_mil.show(&Tape::sixteenths().read(place).unwrap()).unwrap().is_exact();
    /// assert!(is_exact(Length::fraction(87, 5, Unit::Inch)));
    /// assert!(!is_exact(Length::fraction(1, 3, Unit::Inch)));
    /// ```
    #[must_use]
    pub const fn is_exact(&self) -> bool {
        self.leftover.exact
    }

    /// Writes the text, without padding.
    ///
    /// ```
    /// use scantling::{Length, ReadingPrinter, Tape, Unit};
    ///
    /// let mut line = String::from("shelf at ");
    /// let reading = Tape::sixteenths().read(Length::fraction(-1, 3, Unit::Inch))?;
    /// ReadingPrinter::new().show(&reading)?.write_to(&mut line)?;
    /// assert_eq!(line, r#"shelf at -5/16" shy by 1/48""#);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    ///
    /// # Errors
    ///
    /// What the sink gives; none of its own.
    pub fn write_to(&self, out: &mut impl Write) -> fmt::Result {
        self.mark.write_to(out)?;
        match self.lean {
            Lean::DeadOn => Ok(()),
            lean => {
                write!(out, " {} by ", lean.word())?;
                self.leftover.write(out)
            }
        }
    }
}

impl Written for ShownReading {
    fn write(self, out: &mut impl Write) -> fmt::Result {
        self.write_to(out)
    }
}

impl fmt::Display for ShownReading {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(*self, out)
    }
}
