//! How far a loaded shelf sags, and how long it may be. Exact: the beam formula has nothing but products and quotients
//! in it, and the greatest span is found by comparing, not by a root.

use num_rational::Ratio;

use super::error::CaseworkError;
use super::load::{SagLimit, ShelfLoad};
use super::material::Modulus;
use crate::geometry::above_zero;
use crate::length::Length;

/// A shelf on two supports, evenly loaded, its ends free to turn: `sag = 5 w L⁴ / (384 E I)`, with `I = b t³ / 12`, so that its
/// depth from front to back does not count. Source: Wood Handbook, chapter 9, for the frame of the formula; the 5/384 is
/// from memory, and gives the twelve printed lengths of Architectural Woodwork Standards, edition 1, 4.4.14.
///
/// This is help in choosing a shelf, not engineering. Under load for months wood creeps, and may sag to twice as much or more (from
/// memory); shear, joints, pins and knots are not reckoned. Where a fall could hurt someone, ask a licensed designer,
/// and local codes come first.
///
/// ```
/// use scantling::{Length, LoadedShelf, Modulus, SagLimit, ShelfLoad, Unit};
///
/// let oak = Modulus::psi(1_820_000);
/// let shelf = LoadedShelf::new(Length::fraction(3, 4, Unit::Inch), oak, ShelfLoad::OTHER)?;
/// let inch = Length::new(1, Unit::Inch);
/// assert_eq!(shelf.greatest_span(SagLimit::STANDARD, inch)?, Length::new(49, Unit::Inch));
/// assert_eq!(shelf.greatest_span(SagLimit::FINE, inch)?, Length::new(35, Unit::Inch));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct LoadedShelf {
    thickness: Length,
    modulus: Modulus,
    load: ShelfLoad,
}

impl LoadedShelf {
    /// A shelf of one thickness and material under one load.
    ///
    /// # Errors
    ///
    /// When the thickness, the stiffness or the load is not above zero.
    ///
    /// ```
    /// use scantling::{Length, LoadedShelf, Modulus, ShelfLoad};
    ///
    /// assert!(LoadedShelf::new(Length::ZERO, Modulus::psi(950_000), ShelfLoad::KITCHEN).is_err());
    /// ```
    pub fn new(thickness: Length, modulus: Modulus, load: ShelfLoad) -> Result<Self, CaseworkError> {
        above_zero("a thickness", thickness)?;
        if !is_above_zero(modulus.in_psi()) {
            return Err(CaseworkError::NoLoad { what: "a modulus of elasticity" });
        }
        if !is_above_zero(load.pounds_per_square_foot()) {
            return Err(CaseworkError::NoLoad { what: "a load" });
        }
        Ok(Self { thickness, modulus, load })
    }

    /// How far it sags in the middle of a span, exactly.
    ///
    /// # Errors
    ///
    /// When the span is not above zero, or the figures are too large or too fine.
    ///
    /// ```
    /// use scantling::{Length, LoadedShelf, Modulus, ShelfLoad, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let shelf = LoadedShelf::new(inches(3, 4), Modulus::psi(950_000), ShelfLoad::OTHER)?;
    /// // Worked by hand: 5 × (40/144) × 36⁴ / (32 × 950,000 × 27/64)
    /// assert_eq!(shelf.sag(inches(36, 1))?, inches(432, 2375));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn sag(&self, span: Length) -> Result<Length, CaseworkError> {
        above_zero("a span", span)?;
        self.sagged(span).ok_or(CaseworkError::TooLarge)
    }

    /// The part of itself that a span sags by is `5 q L³ / (32 E t³)`, for a load `q` on each square inch.
    fn sagged(&self, span: Length) -> Option<Length> {
        let cube = |side: Length| side.checked_area(side)?.checked_volume(side);
        let slenderness = cube(span)?.checked_ratio(cube(self.thickness)?)?;
        let (load, modulus) = (self.load.pounds_per_square_foot(), self.modulus.in_psi());
        let part = Ratio::new_raw(5, 32 * 144);
        span.checked_mul_ratio(slenderness)?.checked_mul_ratio(part)?.checked_mul_ratio(load)?.checked_div_ratio(modulus)
    }

    /// The longest span, in whole steps, that sags no more than the limit. Shorter is stiffer: never rounded up.
    ///
    /// # Errors
    ///
    /// When the step is not above zero, when even one step sags too far, or the figures are too large or too fine.
    ///
    /// ```
    /// use scantling::{Length, LoadedShelf, Modulus, SagLimit, ShelfLoad, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let shelf = LoadedShelf::new(inches(3, 4), Modulus::psi(1_800_000), ShelfLoad::LIBRARY)?;
    /// assert_eq!(shelf.greatest_span(SagLimit::STANDARD, inches(1, 16))?, inches(735, 16));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    pub fn greatest_span(&self, limit: SagLimit, step: Length) -> Result<Length, CaseworkError> {
        above_zero("a graduation", step)?;
        let holds = |steps: i64| -> Result<bool, CaseworkError> {
            let span = step.checked_mul(steps).ok_or(CaseworkError::TooLarge)?;
            let sag = self.sag(span)?.checked_mul(limit.parts().into()).ok_or(CaseworkError::TooLarge)?;
            Ok(sag <= span)
        };
        if !holds(1)? {
            return Err(CaseworkError::NoSpan { step });
        }
        let (mut held, mut sagged) = (1, 2);
        while holds(sagged)? {
            (held, sagged) = (sagged, sagged.checked_mul(2).ok_or(CaseworkError::TooLarge)?);
        }
        while sagged - held > 1 {
            let middle = held + (sagged - held) / 2;
            if holds(middle)? { held = middle } else { sagged = middle }
        }
        step.checked_mul(held).ok_or(CaseworkError::TooLarge)
    }
}

/// A ratio may come unreduced, its sign below the line or nothing there.
fn is_above_zero(ratio: Ratio<i128>) -> bool {
    (*ratio.numer() > 0 && *ratio.denom() > 0) || (*ratio.numer() < 0 && *ratio.denom() < 0)
}
