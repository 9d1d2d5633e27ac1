//! The plain `Display` of lengths, units, areas and volumes: exact, and readable back.
//! Each honors width, fill and alignment. Settings are left to `printer.rs`.

use core::fmt;

use super::inches::{Inches, WithSymbol};
use super::look::Look;
use super::written::padded;
use super::{LengthPrinter, Style};
use crate::length::{Area, Length, Unit, Volume};

/// Inches and a fraction, exact: `17 5/8"`, `17 2/5"`, `-1/2"`, `0"`. The alternate form is feet and
/// inches: `6'-3 1/2"`, `-0'-6"`, where the sign covers the whole value.
///
/// Width, fill and alignment are honored, to the left where none is given; a precision is passed over.
///
/// ```
/// use scantling::{Length, Unit};
///
/// let post = Length::fraction(151, 2, Unit::Inch);
/// assert_eq!(format!("{post} {post:#} [{post:>9}]"), r#"75 1/2" 6'-3 1/2" [  75 1/2"]"#);
/// assert_eq!(format!("{} {:#}", -post, -post), r#"-75 1/2" -6'-3 1/2""#);
/// ```
impl fmt::Display for Length {
    #[inline]
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (length, look) = (*self, Look::plain(LengthPrinter::new()));
        // Two calls, so that each is compiled for its settings alone.
        if out.alternate() {
            padded(Inches { length, look: Look { style: Style::FeetInches, ..look } }, out)
        } else {
            padded(Inches { length, look }, out)
        }
    }
}

/// The symbol: `in`, `ft`, `yd`, `mm`, `cm`, `m`.
///
/// ```
/// assert_eq!(scantling::Unit::Foot.to_string(), "ft");
/// ```
impl fmt::Display for Unit {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(self.symbol(), out)
    }
}

/// Square inches and a fraction, exact: `1872 sq in`, `3 1/2 sq in`.
///
/// ```
/// use scantling::{Length, Unit};
///
/// let shelf = Length::new(72, Unit::Inch) * Length::new(26, Unit::Inch);
/// assert_eq!(shelf.to_string(), "1872 sq in");
/// ```
impl fmt::Display for Area {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(WithSymbol { parts: self.parts(), symbol: " sq in" }, out)
    }
}

/// Cubic inches and a fraction, exact: `144 cu in`, `1/2 cu in`.
///
/// ```
/// use scantling::{Length, Unit};
///
/// let foot = Length::new(1, Unit::Foot);
/// assert_eq!((foot * foot * Length::new(1, Unit::Inch)).to_string(), "144 cu in");
/// ```
impl fmt::Display for Volume {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(WithSymbol { parts: self.parts(), symbol: " cu in" }, out)
    }
}
