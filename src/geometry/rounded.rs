//! A length that no fraction is equal to, as it can be marked: the graduation, and on which side of it the
//! true length lies. Found by comparing alone, so that it is right to the last graduation. How a root or a
//! tangent is compared is left to `root.rs` and `tangent.rs`.

use core::cmp::Ordering;
use core::fmt::{self, Write};

use super::GeometryError;
use super::natural::Natural;
use crate::length::{Floor, Length, LengthError, Rounding, RoundingMode};
use crate::print::{Join, LengthPrinter, Written, padded};
use crate::tape::Lean;

/// A length rounded to a graduation, where the true length may be a square root or a tangent and then has
/// no exact fraction: the mark, on which side of it the true length lies, and how far off it can be.
///
/// The mark is right: it is the one that the true length rounds to, not the one of some decimal near it.
///
/// ```
/// use scantling::{Lean, Length, Unit, diagonal};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// let across = diagonal(inches(24), inches(36), Length::fraction(1, 64, Unit::Inch))?;
/// assert_eq!(across.mark(), Length::fraction(2769, 64, Unit::Inch)); // 43 17/64 in
/// assert_eq!(across.lean(), Lean::Strong); // the true diagonal is a hair past it
/// assert_eq!(across.bound(), Length::fraction(1, 128, Unit::Inch));
/// assert_eq!(across.exact(), None);
/// # Ok::<(), scantling::GeometryError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Rounded {
    mark: Length,
    lean: Lean,
    bound: Length,
}

impl Rounded {
    /// The graduation.
    ///
    /// ```
    /// # use scantling::{Length, Unit, diagonal};
    /// let unit_square = diagonal(Unit::Foot.length(), Unit::Foot.length(), Unit::Inch.length())?;
    /// assert_eq!(unit_square.mark(), Length::new(17, Unit::Inch));
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn mark(&self) -> Length {
        self.mark
    }

    /// On which side of the mark the true length lies.
    ///
    /// ```
    /// # use scantling::{Lean, Unit, diagonal};
    /// let unit_square = diagonal(Unit::Foot.length(), Unit::Foot.length(), Unit::Inch.length())?;
    /// assert_eq!(unit_square.lean(), Lean::Shy); // 16.97 in
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn lean(&self) -> Lean {
        self.lean
    }

    /// The true length, where it is the mark itself.
    ///
    /// ```
    /// # use scantling::{Length, Unit, diagonal};
    /// let feet = |count| Length::new(count, Unit::Foot);
    /// assert_eq!(diagonal(feet(3), feet(4), Unit::Inch.length())?.exact(), Some(feet(5)));
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub fn exact(&self) -> Option<Length> {
        (self.lean == Lean::DeadOn).then_some(self.mark)
    }

    /// How far the true length can be from the mark: half a graduation to the nearest, a whole one where
    /// the mode rounds up or down on purpose, and nothing at all where the mark is dead on.
    ///
    /// ```
    /// use scantling::{Length, Rounding, RoundingMode, Unit, diagonal};
    ///
    /// let (foot, sixteenth) = (Unit::Foot.length(), Length::fraction(1, 16, Unit::Inch));
    /// let down = Rounding::to(sixteenth).mode(RoundingMode::Down);
    /// assert_eq!(diagonal(foot, foot, sixteenth)?.bound(), sixteenth / 2);
    /// assert_eq!(diagonal(foot, foot, down)?.bound(), sixteenth);
    /// # Ok::<(), scantling::GeometryError>(())
    /// ```
    #[must_use]
    pub const fn bound(&self) -> Length {
        self.bound
    }

    /// Of a length that is known exactly.
    pub(super) fn of(length: Length, rounding: Rounding) -> Result<Self, GeometryError> {
        let mark = length.round(rounding).map_err(|error| match error {
            LengthError::NotAStep { step } => GeometryError::NotAStep { step },
            _ => GeometryError::OutOfRange { length },
        })?;
        let lean = match length.cmp(&mark) {
            Ordering::Greater => Lean::Strong,
            Ordering::Equal => Lean::DeadOn,
            Ordering::Less => Lean::Shy,
        };
        Ok(Self { mark, lean, bound: bound(rounding, lean) })
    }

    /// Of a length, not below zero, that can only be compared: `beside` says how it lies beside so many half
    /// steps, or `None` where that is past telling. A length of the problem goes with a refusal.
    pub(super) fn found(
        rounding: Rounding,
        beside: impl Fn(&Natural) -> Option<Ordering>,
        length: Length,
    ) -> Result<Self, GeometryError> {
        let step = rounding.step();
        if step <= Length::ZERO {
            return Err(GeometryError::NotAStep { step });
        }
        let out_of_range = GeometryError::OutOfRange { length };
        let beside = |halves: Natural| beside(&halves).ok_or(GeometryError::TooCloseToCall { length, step });
        let whole = whole_steps(&beside)?.ok_or(out_of_range)?;
        let (at_whole, at_half) = (beside(halves(whole, 0))?, beside(halves(whole, 1))?);
        // The rest above the whole steps, in quarters of a step: enough for the kernel, which only asks
        // whether there is one and how it compares with a half.
        let rest: u8 = match (at_whole, at_half) {
            (Ordering::Equal, _) => 0,
            (_, Ordering::Less) => 1,
            (_, Ordering::Equal) => 2,
            (_, Ordering::Greater) => 3,
        };
        let whole = i128::try_from(whole).map_err(|_| out_of_range)?;
        let rises = Floor::new(whole, rest, 4).rises(rounding.rounding_mode(), false);
        let count = whole.checked_add(rises.into()).ok_or(out_of_range)?;
        let mark = Length::from_ticks(step.ticks().checked_mul_int(count).ok_or(out_of_range)?);
        let lean = match (rest, rises) {
            (0, _) => Lean::DeadOn,
            (_, true) => Lean::Shy,
            (_, false) => Lean::Strong,
        };
        Ok(Self { mark, lean, bound: bound(rounding, lean) })
    }
}

fn bound(rounding: Rounding, lean: Lean) -> Length {
    let step = rounding.step();
    match rounding.rounding_mode() {
        _ if lean == Lean::DeadOn => Length::ZERO,
        RoundingMode::Down | RoundingMode::Up | RoundingMode::TowardZero => step,
        // A step so fine that its half cannot be held is a bound as well.
        _ => step.checked_div(2).unwrap_or(step),
    }
}

/// So many half steps: twice the whole ones and `half`.
fn halves(whole: u128, half: u128) -> Natural {
    Natural::from(whole).times(&Natural::from(2_u64)).plus(&Natural::from(half))
}

/// The whole steps in a length, bit by bit from the top, as a square root is taken by hand; `None` when
/// there are 2^127 of them or more, which no length has.
fn whole_steps(beside: &impl Fn(Natural) -> Result<Ordering, GeometryError>) -> Result<Option<u128>, GeometryError> {
    let reaches = |count| beside(halves(count, 0)).map(Ordering::is_ge);
    let mut bit: u128 = 1;
    while reaches(bit)? {
        if bit == 1 << 127 {
            return Ok(None);
        }
        bit <<= 1;
    }
    let mut count = 0;
    while bit > 1 {
        bit >>= 1;
        if reaches(count + bit)? {
            count += bit;
        }
    }
    Ok(Some(count))
}

/// The mark, its fraction joined by a hyphen, and how it leans: `43-17/64" strong`, or the mark alone when
/// it is dead on.
///
/// ```
/// use scantling::{Length, Unit, diagonal};
///
/// let inches = |count| Length::new(count, Unit::Inch);
/// let across = diagonal(inches(24), inches(36), Length::fraction(1, 64, Unit::Inch))?;
/// assert_eq!(across.to_string(), r#"43-17/64" strong"#);
/// # Ok::<(), scantling::GeometryError>(())
/// ```
impl fmt::Display for Rounded {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(*self, out)
    }
}

impl Written for Rounded {
    fn write(self, out: &mut impl Write) -> fmt::Result {
        // Inches in lowest terms suit any length.
        let mark = LengthPrinter::new().join(Join::Hyphen).show(self.mark).map_err(|_| fmt::Error)?;
        match self.lean {
            Lean::DeadOn => write!(out, "{mark}"),
            lean => write!(out, "{mark} {lean}"),
        }
    }
}
