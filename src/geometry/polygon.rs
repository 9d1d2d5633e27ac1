//! The angles of a frame with equal sides. The pieces are left to `miter.rs`.

use super::{Angle, GeometryError};

/// A frame of any number of equal sides, and its angles as exact fractions of a degree.
///
/// ```
/// use scantling::{Angle, Polygon};
///
/// let octagon = Polygon::new(8)?;
/// assert_eq!(octagon.setting(), Angle::fraction(45, 2));
/// assert_eq!(octagon.turn(), Angle::degrees(45));
/// assert_eq!(octagon.corner(), Angle::degrees(135));
/// # Ok::<(), scantling::GeometryError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Polygon {
    sides: u32,
}

impl Polygon {
    /// A frame of so many sides.
    ///
    /// ```
    /// # use scantling::{GeometryError, Polygon};
    /// assert_eq!(Polygon::new(2), Err(GeometryError::TooFewSides { sides: 2 }));
    /// ```
    ///
    /// # Errors
    ///
    /// [`GeometryError::TooFewSides`] when there are fewer than three.
    pub const fn new(sides: u32) -> Result<Self, GeometryError> {
        if sides < 3 { Err(GeometryError::TooFewSides { sides }) } else { Ok(Self { sides }) }
    }

    /// How many sides it has.
    ///
    /// ```
    /// # use scantling::Polygon;
    /// assert_eq!(Polygon::new(6)?.sides(), 6);
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn sides(self) -> u32 {
        self.sides
    }

    /// What the saw is set to, from a square cut: 180 degrees over the number of sides. A gauge that shows 90
    /// at a square cut reads 90 less this.
    ///
    /// ```
    /// # use scantling::{Angle, Polygon};
    /// assert_eq!(Polygon::new(4)?.setting(), Angle::degrees(45));
    /// assert_eq!(Polygon::new(7)?.setting(), Angle::fraction(180, 7)); // 25 5/7 degrees
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn setting(self) -> Angle {
        Angle::fraction(180, self.sides as u64)
    }

    /// How far the frame turns at each corner, which is what the two miters of a joint take off together:
    /// twice the setting, 360 degrees over the number of sides.
    ///
    /// ```
    /// # use scantling::{Angle, Polygon};
    /// assert_eq!(Polygon::new(5)?.turn(), Angle::degrees(72));
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn turn(self) -> Angle {
        Angle::fraction(360, self.sides as u64)
    }

    /// The full angle between two sides, inside the frame: 180 degrees less the turn.
    ///
    /// ```
    /// # use scantling::{Angle, Polygon};
    /// assert_eq!(Polygon::new(3)?.corner(), Angle::degrees(60));
    /// assert_eq!(Polygon::new(6)?.corner(), Angle::degrees(120));
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn corner(self) -> Angle {
        Angle::fraction(180 * (self.sides as i64 - 2), self.sides as u64)
    }
}
