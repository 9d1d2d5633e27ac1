//! How a fraction is joined to its whole number. What a fraction looks like is left to `fraction.rs`.

/// How a fraction is joined to its whole number.
///
/// ```
/// use scantling::{Join, Length, LengthPrinter, Unit};
///
/// let stile = Length::fraction(141, 8, Unit::Inch);
/// let cut_list = LengthPrinter::new().join(Join::Hyphen);
/// assert_eq!(cut_list.show(stile)?.to_string(), r#"17-5/8""#);
/// assert_eq!(cut_list.join(Join::Glyph).show(stile)?.to_string(), r#"17⅝""#);
/// # Ok::<(), scantling::PrintError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Join {
    /// By a space: `17 5/8"`, `6'-3 1/2"`.
    #[default]
    Space,
    /// By a hyphen, for text read at arm's length, where `1 1/16` could be taken for 11/16:
    /// `17-5/8"`, `6'-3-1/2"`.
    Hyphen,
    /// By nothing, the fraction being one raised sign: `17⅝"`, `6'-3½"`. Where there is no single sign for
    /// it, raised and lowered digits stand round a fraction slash (U+2044): `4¹⁵⁄₁₆"`.
    Glyph,
}

impl Join {
    /// What stands between a whole number and its fraction.
    #[inline]
    pub(super) const fn text(self) -> &'static str {
        match self {
            Self::Space => " ",
            Self::Hyphen => "-",
            Self::Glyph => "",
        }
    }
}
