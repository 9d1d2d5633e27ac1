//! The doors or drawers that a case is to have: how many before each opening, of what stock, how they lie to it. How wide and
//! high each comes out is left to `fronts.rs`, the parts of a case to `fronted.rs`.

use super::error::CaseworkError;
use super::fronts::{Fronts, Mount};
use crate::length::Length;
use crate::spacing::Growth;

/// Doors or drawer fronts before every opening of a case.
///
/// ```
/// use scantling::{Case, FrontSet, Length, Mount, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let doors = FrontSet::doors(2, Mount::Inset { gap: inches(1, 8) }, inches(3, 4));
/// let plan = Case::new(inches(36, 1), inches(30, 1), inches(12, 1)).fronts(doors).plan()?;
/// let door = plan.parts().iter().find(|part| part.name() == "door").unwrap();
/// // (34 1/2 - 3/8) / 2 by 28 1/2 - 1/4
/// assert_eq!((door.width().total()?, door.length().total()?), (inches(273, 16), inches(113, 4)));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct FrontSet {
    /// Doors or drawers, and how many before each opening.
    pub kind: FrontKind,
    /// How they lie to it.
    pub mount: Mount,
    /// How thick they are.
    pub stock: Length,
}

/// What stands before an opening.
///
/// ```
/// use scantling::{FrontKind, Growth, Length};
///
/// assert_ne!(FrontKind::Doors(2), FrontKind::Drawers(2, Growth::Step(Length::ZERO)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum FrontKind {
    /// So many doors side by side, as high as the opening.
    Doors(u32),
    /// So many drawers one above the other, as wide as the opening, each lower one taller as this says; a step of nothing
    /// makes them equal.
    Drawers(u32, Growth),
}

impl FrontKind {
    pub(super) const fn plural(self) -> &'static str {
        match self {
            Self::Doors(_) => "doors",
            Self::Drawers(..) => "drawer fronts",
        }
    }
}

/// More fronts before one opening than any case has.
pub(super) const MOST: u32 = 10_000;

impl FrontSet {
    /// So many doors before each opening.
    ///
    /// ```
    /// use scantling::{FrontKind, FrontSet, Length, Mount, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// assert_eq!(FrontSet::doors(2, Mount::Inset { gap: inches(1, 8) }, inches(3, 4)).kind, FrontKind::Doors(2));
    /// ```
    #[must_use]
    pub const fn doors(across: u32, mount: Mount, stock: Length) -> Self {
        Self { kind: FrontKind::Doors(across), mount, stock }
    }

    /// So many drawers before each opening, each lower one taller as this says.
    ///
    /// ```
    /// use scantling::{Case, FrontSet, Growth, Length, Mount, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let mount = Mount::Overlay { past: inches(1, 2), gap: inches(1, 8) };
    /// let drawers = FrontSet::drawers(3, Growth::Step(inches(1, 1)), mount, inches(3, 4));
    /// let plan = Case::new(inches(18, 1), inches(30, 1), inches(20, 1)).fronts(drawers).plan()?;
    /// let heights: Vec<_> = plan.parts()[3..].iter().map(|part| part.width().total().unwrap()).collect();
    /// // From below: 28 1/2 + 1 - 1/4 shared by three, each an inch taller than the one above.
    /// assert_eq!(heights, [inches(43, 4), inches(39, 4), inches(35, 4)]);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn drawers(rows: u32, growth: Growth, mount: Mount, stock: Length) -> Self {
        Self { kind: FrontKind::Drawers(rows, growth), mount, stock }
    }

    /// The fronts before an opening of this width and height.
    pub(super) fn before(self, width: Length, height: Length) -> Result<Fronts, CaseworkError> {
        match self.kind {
            FrontKind::Doors(count) | FrontKind::Drawers(count, _) if count > MOST => Err(CaseworkError::TooLarge),
            FrontKind::Doors(across) => Fronts::before(width, height, self.mount, across),
            FrontKind::Drawers(0, _) => Err(CaseworkError::NoFront),
            FrontKind::Drawers(rows, growth) => {
                Fronts::before(width, height, self.mount, 1)?.graded(usize::try_from(rows).unwrap_or(usize::MAX), growth)
            }
        }
    }
}
