//! Where the figures of a table come from, so that every one of them can say it.

use core::fmt;

/// Where figures come from, and whether they were read there.
///
/// ```
/// use scantling::{Seen, Source};
///
/// let shelf_tags = Source::new("the yard's own list", Seen::Stated);
/// assert_eq!(shelf_tags.to_string(), "the yard's own list");
/// assert_eq!(Source::new("sizes as sold", Seen::FromMemory).to_string(), "sizes as sold (from memory)");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Source<'a> {
    document: &'a str,
    seen: Seen,
}

/// How figures came into a table.
///
/// ```
/// use scantling::{Catalog, Seen};
///
/// assert_eq!(Catalog::new().hardwood().source().seen(), Seen::Read);
/// assert_eq!(Catalog::new().sheets().source().seen(), Seen::FromMemory);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(clippy::exhaustive_enums)] // there are no others
pub enum Seen {
    /// They were read in the document, or in a copy of it.
    Read,
    /// They were recalled: no document was at hand.
    FromMemory,
    /// Whoever brought the table vouches for them.
    Stated,
}

impl<'a> Source<'a> {
    /// A document, and how its figures were got.
    ///
    /// ```
    /// use scantling::{Seen, Source};
    ///
    /// assert_eq!(Source::new("the mill's price list", Seen::Stated).document(), "the mill's price list");
    /// ```
    #[must_use]
    pub const fn new(document: &'a str, seen: Seen) -> Self {
        Self { document, seen }
    }

    /// The document.
    ///
    /// ```
    /// use scantling::Catalog;
    ///
    /// assert!(Catalog::new().dimension_widths().source().document().contains("Standard, Table 4"));
    /// ```
    #[must_use]
    pub const fn document(&self) -> &'a str {
        self.document
    }

    /// How its figures were got.
    ///
    /// ```
    /// use scantling::{Catalog, Seen};
    ///
    /// assert_eq!(Catalog::new().panels().source().seen(), Seen::Read);
    /// ```
    #[must_use]
    pub const fn seen(&self) -> Seen {
        self.seen
    }
}

/// The document, and `(from memory)` behind it where that is so.
///
/// ```
/// assert!(scantling::Catalog::new().sheets().source().to_string().ends_with("(from memory)"));
/// ```
impl fmt::Display for Source<'_> {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(self.document)?;
        out.write_str(if self.seen == Seen::FromMemory { " (from memory)" } else { "" })
    }
}
