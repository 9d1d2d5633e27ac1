//! Whether units of which there are none are written. Where they are dropped is left to `pieces.rs`.

/// Whether the styles of several units write the units of which there are none.
///
/// ```
/// use scantling::{Length, LengthPrinter, Style, Unit, Zeros};
///
/// let feet = LengthPrinter::new().style(Style::FeetInches);
/// let (door, rail) = (Length::new(6, Unit::Foot), Length::new(6, Unit::Inch));
/// assert_eq!(feet.show(door)?.to_string(), r#"6'-0""#);
/// assert_eq!(feet.show(rail)?.to_string(), r#"0'-6""#);
/// assert_eq!(feet.zeros(Zeros::Dropped).show(door)?.to_string(), "6'");
/// assert_eq!(feet.zeros(Zeros::Dropped).show(rail)?.to_string(), r#"6""#);
/// # Ok::<(), scantling::PrintError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Zeros {
    /// They are: `6'-0"`, `0'-6"`, `0'-0 3/4"`.
    #[default]
    Kept,
    /// They are not: `6'`, `6"`, `3/4"`. Zero inches stay between feet and a fraction, which would else be
    /// easy to overlook: `5'-0 3/4"`. Nothing at all is `0"`.
    Dropped,
}
