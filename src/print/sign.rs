//! Which sign a length is written with. The sign always covers the whole value.

use core::fmt::{self, Write};

use crate::length::Length;

/// The sign in front of a length, which covers all of it. Zero has none.
///
/// ```
/// use scantling::{Length, LengthPrinter, Sign, Unit};
///
/// let leftover = Length::fraction(1, 64, Unit::Inch);
/// let signed = LengthPrinter::new().sign(Sign::Plus);
/// assert_eq!(signed.show(leftover)?.to_string(), r#"+1/64""#);
/// assert_eq!(signed.show(-leftover)?.to_string(), r#"-1/64""#);
/// assert_eq!(signed.show(Length::ZERO)?.to_string(), r#"0""#);
/// # Ok::<(), scantling::PrintError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Sign {
    /// A minus below zero, in plain ASCII: `-17 5/8"`.
    #[default]
    Minus,
    /// The true minus sign (U+2212) below zero, which no reader takes for a joining hyphen: `−17 5/8"`.
    TrueMinus,
    /// A minus below zero and a plus above it, both in plain ASCII: `+1/2"`, `-1/2"`.
    Plus,
}

impl Sign {
    /// Writes the sign of a length, if it has one.
    #[inline]
    pub(super) fn write(self, length: Length, out: &mut impl Write) -> fmt::Result {
        match self {
            Self::TrueMinus if length.is_negative() => out.write_str("−"),
            _ if length.is_negative() => out.write_str("-"),
            Self::Plus if !length.is_zero() => out.write_str("+"),
            _ => Ok(()),
        }
    }

    /// Says the sign of a length, with a blank behind it.
    pub(super) fn say(self, length: Length, out: &mut impl Write) -> fmt::Result {
        match self {
            _ if length.is_negative() => out.write_str("minus "),
            Self::Plus if !length.is_zero() => out.write_str("plus "),
            _ => Ok(()),
        }
    }
}
