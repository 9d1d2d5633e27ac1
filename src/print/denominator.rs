//! What fractions are counted in: their lowest terms, or one fixed denominator. Whether it suits a length is
//! left to `look.rs`, how fractions are written to `fraction.rs`.

/// What the fraction of an inch is counted in. Decimals pay no heed to it.
///
/// ```
/// use scantling::{Denominator, Length, LengthPrinter, Unit};
///
/// let rail = Length::fraction(19, 8, Unit::Inch);
/// let sixteenths = LengthPrinter::new().denominator(Denominator::Fixed(16));
/// assert_eq!(LengthPrinter::new().show(rail)?.to_string(), r#"2 3/8""#);
/// assert_eq!(sixteenths.show(rail)?.to_string(), r#"2 6/16""#);
/// assert!(sixteenths.show(rail / 8).is_err());
/// # Ok::<(), scantling::PrintError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Denominator {
    /// Lowest terms: `17 3/8"`.
    #[default]
    Lowest,
    /// This many parts of an inch: `17 6/16"`. A whole number has no fraction all the same: `17"`. A
    /// length that is no whole count of such parts is an error, never rounded.
    Fixed(u32),
}
