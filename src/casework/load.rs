//! What a shelf bears, and how far it may sag under it. How far it does is left to `shelf.rs`.

use num_rational::Ratio;

/// A load spread evenly over a shelf, in pounds on each square foot. Exact.
///
/// The named ones are design loads of published standards. What a shelf really bears, fired pots say, is weighed, and what
/// it must bear by law is said by local codes.
///
/// ```
/// use num_rational::Ratio;
/// use scantling::ShelfLoad;
///
/// assert_eq!(ShelfLoad::LIBRARY, ShelfLoad::new(Ratio::from(50)));
/// assert_eq!(ShelfLoad::of_pounds(30, 2), ShelfLoad::new(Ratio::from(15)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct ShelfLoad {
    psf: Ratio<i128>,
}

impl ShelfLoad {
    /// School, hospital, library and book shelves: 50 pounds on a square foot, and not over 200 pounds on one shelf.
    /// Source: Architectural Woodwork Standards, edition 1, 1.2.21.
    pub const LIBRARY: Self = Self::new(Ratio::new_raw(50, 1));
    /// All other shelves: 40 pounds on a square foot. Source: Architectural Woodwork Standards, edition 1, 1.2.21.
    pub const OTHER: Self = Self::new(Ratio::new_raw(40, 1));
    /// Kitchen cabinet shelves and bottoms: 15 pounds on a square foot. Source: KCMA A161.1, as retold.
    pub const KITCHEN: Self = Self::new(Ratio::new_raw(15, 1));

    /// So many pounds on each square foot.
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::ShelfLoad;
    ///
    /// assert_eq!(ShelfLoad::new(Ratio::from(40)), ShelfLoad::OTHER);
    /// ```
    #[must_use]
    pub const fn new(pounds_per_square_foot: Ratio<i128>) -> Self {
        Self { psf: pounds_per_square_foot }
    }

    /// So many pounds in all over so many square feet.
    ///
    /// # Panics
    ///
    /// When there are no square feet.
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::ShelfLoad;
    ///
    /// // Glazed bowls: 90 pounds over a shelf of 3 square feet.
    /// assert_eq!(ShelfLoad::of_pounds(90, 3).pounds_per_square_foot(), Ratio::from(30));
    /// ```
    #[must_use]
    pub fn of_pounds(pounds: u32, square_feet: u32) -> Self {
        assert!(square_feet > 0, "a load over no square feet");
        Self::new(Ratio::new(pounds.into(), square_feet.into()))
    }

    /// The pounds on each square foot.
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::ShelfLoad;
    ///
    /// assert_eq!(ShelfLoad::KITCHEN.pounds_per_square_foot(), Ratio::from(15));
    /// ```
    #[must_use]
    pub const fn pounds_per_square_foot(self) -> Ratio<i128> {
        self.psf
    }
}

/// How far a shelf may sag: at most one part in so many of its span.
///
/// ```
/// use scantling::SagLimit;
///
/// assert_eq!(SagLimit::part_of_span(144), SagLimit::STANDARD);
/// assert_eq!(SagLimit::FINE.parts(), 384);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct SagLimit {
    parts: u32,
}

impl SagLimit {
    /// L/144, a quarter inch in a yard. Source: Architectural Woodwork Standards, edition 1, 1.2.21.
    pub const STANDARD: Self = Self::part_of_span(144);
    /// L/240, about where a sag begins to be seen. Source: trade guidance for particleboard and MDF, as retold.
    pub const SEEN: Self = Self::part_of_span(240);
    /// L/384, 1/32 in a foot. Common practice, no source.
    pub const FINE: Self = Self::part_of_span(384);

    /// One part in so many of the span.
    ///
    /// # Panics
    ///
    /// When there are no parts.
    ///
    /// ```
    /// use scantling::SagLimit;
    ///
    /// assert_eq!(SagLimit::part_of_span(240), SagLimit::SEEN);
    /// ```
    #[must_use]
    pub const fn part_of_span(parts: u32) -> Self {
        assert!(parts > 0, "a sag of a part in none");
        Self { parts }
    }

    /// How many parts of the span the sag is one of.
    ///
    /// ```
    /// assert_eq!(scantling::SagLimit::STANDARD.parts(), 144);
    /// ```
    #[must_use]
    pub const fn parts(self) -> u32 {
        self.parts
    }
}
