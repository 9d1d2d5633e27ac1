//! The printer: the settings of one way to write lengths, put together once and used for many.
//! Writing itself is left to `shown.rs`, saying to `spoken.rs`.

use super::look::Look;
use super::{Denominator, Join, Marks, Places, PrintError, Shown, Sign, Spoken, Style, Zeros};
use crate::length::Length;

/// A way to write lengths.
///
/// Printing never rounds. A length that does not come out even in the decimals, or in the denominator,
/// asked for is an error: round it first, with [`Length::round`].
///
/// ```
/// use scantling::{Join, Length, LengthPrinter, Marks, Style, Unit};
///
/// const CUT_LIST: LengthPrinter = LengthPrinter::new().join(Join::Hyphen);
/// const PLAN: LengthPrinter = LengthPrinter::new().style(Style::FeetInches).marks(Marks::Words);
/// const DRAWING: LengthPrinter = LengthPrinter::new().style(Style::Millimeters);
///
/// let ware_case = Length::fraction(151, 2, Unit::Inch);
/// assert_eq!(CUT_LIST.show(ware_case)?.to_string(), r#"75-1/2""#);
/// assert_eq!(PLAN.show(ware_case)?.to_string(), "6 ft 3 1/2 in");
/// assert_eq!(DRAWING.show(ware_case)?.to_string(), "1917.7 mm");
///
/// let opening = ware_case / 7;
/// assert!(DRAWING.show(opening).is_err());
/// let rounded = opening.round(Length::fraction(1, 10, Unit::Millimeter)).unwrap();
/// assert_eq!(DRAWING.show(rounded)?.to_string(), "274 mm");
/// # Ok::<(), scantling::PrintError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct LengthPrinter {
    pub(super) style: Style,
    pub(super) join: Join,
    pub(super) marks: Marks,
    pub(super) sign: Sign,
    pub(super) zeros: Zeros,
    pub(super) denominator: Denominator,
    pub(super) places: Places,
}

impl LengthPrinter {
    /// Inches and a fraction joined by a space, marked with a quote: `17 5/8"`, as the `Display` of
    /// [`Length`] writes it.
    ///
    /// ```
    /// use scantling::{Length, LengthPrinter, Unit};
    ///
    /// let stile = Length::fraction(141, 8, Unit::Inch);
    /// assert_eq!(LengthPrinter::new().show(stile)?.to_string(), stile.to_string());
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    #[must_use]
    pub const fn new() -> Self {
        Self {
            style: Style::Inches,
            join: Join::Space,
            marks: Marks::Quotes,
            sign: Sign::Minus,
            zeros: Zeros::Kept,
            denominator: Denominator::Lowest,
            places: Places::Shortest,
        }
    }

    /// The same in other units.
    ///
    /// ```
    /// use scantling::{Length, LengthPrinter, Style, Unit};
    ///
    /// let feet = LengthPrinter::new().style(Style::DecimalFeet);
    /// assert_eq!(feet.show(Length::new(63, Unit::Inch))?.to_string(), "5.25'");
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    #[must_use]
    pub const fn style(self, style: Style) -> Self {
        Self { style, ..self }
    }

    /// The same with fractions joined in another way.
    ///
    /// ```
    /// use scantling::{Join, Length, LengthPrinter, Style, Unit};
    ///
    /// let hyphens = LengthPrinter::new().style(Style::FeetInches).join(Join::Hyphen);
    /// assert_eq!(hyphens.show(Length::fraction(151, 2, Unit::Inch))?.to_string(), r#"6'-3-1/2""#);
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    #[must_use]
    pub const fn join(self, join: Join) -> Self {
        Self { join, ..self }
    }

    /// The same with other marks for feet and inches.
    ///
    /// ```
    /// use scantling::{Length, LengthPrinter, Marks, Unit};
    ///
    /// let words = LengthPrinter::new().marks(Marks::Words);
    /// assert_eq!(words.show(Length::fraction(141, 8, Unit::Inch))?.to_string(), "17 5/8 in");
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    #[must_use]
    pub const fn marks(self, marks: Marks) -> Self {
        Self { marks, ..self }
    }

    /// The same with another sign.
    ///
    /// ```
    /// use scantling::{Length, LengthPrinter, Sign, Unit};
    ///
    /// let typeset = LengthPrinter::new().sign(Sign::TrueMinus);
    /// assert_eq!(typeset.show(Length::fraction(-13, 4, Unit::Inch))?.to_string(), r#"−3 1/4""#);
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    #[must_use]
    pub const fn sign(self, sign: Sign) -> Self {
        Self { sign, ..self }
    }

    /// The same with units of which there are none written or left out.
    ///
    /// ```
    /// use scantling::{Length, LengthPrinter, Style, Unit, Zeros};
    ///
    /// let short = LengthPrinter::new().style(Style::FeetInches).zeros(Zeros::Dropped);
    /// assert_eq!(short.show(Length::new(8, Unit::Foot))?.to_string(), "8'");
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    #[must_use]
    pub const fn zeros(self, zeros: Zeros) -> Self {
        Self { zeros, ..self }
    }

    /// The same with fractions counted in another denominator.
    ///
    /// ```
    /// use scantling::{Denominator, Length, LengthPrinter, Unit};
    ///
    /// let eighths = LengthPrinter::new().denominator(Denominator::Fixed(8));
    /// assert_eq!(eighths.show(Length::fraction(5, 2, Unit::Inch))?.to_string(), r#"2 4/8""#);
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    #[must_use]
    pub const fn denominator(self, denominator: Denominator) -> Self {
        Self { denominator, ..self }
    }

    /// The same with another count of decimals.
    ///
    /// ```
    /// use scantling::{Length, LengthPrinter, Places, Style, Unit};
    ///
    /// let tenths = LengthPrinter::new().style(Style::Millimeters).places(Places::Exactly(1));
    /// assert_eq!(tenths.show(Length::new(18, Unit::Millimeter))?.to_string(), "18.0 mm");
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    #[must_use]
    pub const fn places(self, places: Places) -> Self {
        Self { places, ..self }
    }

    /// A length made ready to be written in this way.
    ///
    /// ```
    /// use scantling::{Length, LengthPrinter, Unit};
    ///
    /// let shown = LengthPrinter::new().show(Length::fraction(-1, 2, Unit::Inch))?;
    /// assert_eq!(format!("{shown:>8}"), r#"   -1/2""#);
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`PrintError::Uneven`] when a decimal style has too few decimals for the exact value,
    /// [`PrintError::TooManyPlaces`] when more than [`Places::MOST`] are asked for;
    /// [`PrintError::NoWholeCount`] when the value is no whole count of a fixed denominator,
    /// [`PrintError::ZeroDenominator`] when that is zero. Fractions in lowest terms cannot fail.
    #[inline]
    pub fn show(self, length: Length) -> Result<Shown, PrintError> {
        Ok(Shown { length, look: Look::of(length, self)? })
    }

    /// A length made ready to be said in words, by the same style, sign, denominator and count of decimals.
    /// Units of which there are none are left out.
    ///
    /// ```
    /// use scantling::{Length, LengthPrinter, Style, Unit};
    ///
    /// let stile = Length::fraction(141, 8, Unit::Inch);
    /// assert_eq!(LengthPrinter::new().say(stile)?.to_string(), "seventeen and five eighths inches");
    ///
    /// let metric = LengthPrinter::new().style(Style::Millimeters);
    /// let said = metric.say(stile)?.to_string();
    /// assert_eq!(said, "four hundred forty-seven point six seven five millimeters");
    /// # Ok::<(), scantling::PrintError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Those of [`show`](Self::show).
    pub fn say(self, length: Length) -> Result<Spoken, PrintError> {
        Ok(Spoken { length, look: Look::of(length, self)? })
    }
}
