//! What a calculation can come to: a number, a length, an area or a volume, and their arithmetic. Which
//! operand is to blame when two do not go together is left to `value.rs`.

use num_rational::Ratio;

use crate::length::{Area, Fraction, Length, Volume};

/// The answer of a calculation, exact.
///
/// ```
/// use scantling::{Length, Quantity, Unit, evaluate};
///
/// let foot = Length::new(1, Unit::Foot);
/// assert_eq!(evaluate("12\"")?, Quantity::Length(foot));
/// assert_eq!(evaluate("12\" * 1'")?, Quantity::Area(foot * foot));
/// assert_eq!(evaluate("3' / 12\"")?, Quantity::Number(3.into()));
/// # Ok::<(), scantling::ParseError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Quantity {
    /// A ratio of like quantities, or what a calculation without units comes to.
    Number(Ratio<i128>),
    /// A length.
    Length(Length),
    /// A length times a length.
    Area(Area),
    /// An area times a length.
    Volume(Volume),
}

impl Quantity {
    /// The number, if it is one.
    ///
    /// ```
    /// assert_eq!(scantling::evaluate("1/2 + 1/4")?.number(), Some((3, 4).into()));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn number(self) -> Option<Ratio<i128>> {
        if let Self::Number(number) = self { Some(number) } else { None }
    }

    /// The length, if it is one.
    ///
    /// ```
    /// use scantling::{Length, Unit, evaluate};
    ///
    /// assert_eq!(evaluate("4 * 6' 4\"")?.length(), Some(Length::new(304, Unit::Inch)));
    /// assert_eq!(evaluate("4 * 6")?.length(), None);
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn length(self) -> Option<Length> {
        if let Self::Length(length) = self { Some(length) } else { None }
    }

    /// The area, if it is one.
    ///
    /// ```
    /// use scantling::{Unit, evaluate};
    ///
    /// let sheet = evaluate("4' * 8'")?.area().unwrap();
    /// assert_eq!(sheet.checked_in_square(Unit::Foot), Some(32.into()));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn area(self) -> Option<Area> {
        if let Self::Area(area) = self { Some(area) } else { None }
    }

    /// The volume, if it is one.
    ///
    /// ```
    /// use scantling::{Unit, evaluate};
    ///
    /// let board_foot = evaluate("12\" * 12\" * 1\"")?.volume().unwrap();
    /// assert_eq!(board_foot.checked_in_cubic(Unit::Inch), Some(144.into()));
    /// # Ok::<(), scantling::ParseError>(())
    /// ```
    #[must_use]
    pub const fn volume(self) -> Option<Volume> {
        if let Self::Volume(volume) = self { Some(volume) } else { None }
    }

    /// The sum of two like quantities; `None` when they are unlike or the sum cannot be held. A number is
    /// held as long as its denominator stays under 2^64.
    ///
    /// ```
    /// use scantling::{Quantity, Unit};
    ///
    /// let foot = Quantity::Length(Unit::Foot.length());
    /// assert_eq!(foot.checked_add(foot), Some(Quantity::Length(2 * Unit::Foot.length())));
    /// assert_eq!(foot.checked_add(Quantity::Number(1.into())), None);
    /// ```
    #[must_use]
    pub fn checked_add(self, other: Self) -> Option<Self> {
        match (self, other) {
            (Self::Number(a), Self::Number(b)) => fraction(a)?.checked_add(fraction(b)?).map(number),
            (Self::Length(a), Self::Length(b)) => a.checked_add(b).map(Self::Length),
            (Self::Area(a), Self::Area(b)) => a.checked_add(b).map(Self::Area),
            (Self::Volume(a), Self::Volume(b)) => a.checked_add(b).map(Self::Volume),
            _ => None,
        }
    }

    /// The difference of two like quantities; `None` when they are unlike or it cannot be held.
    ///
    /// ```
    /// use scantling::{Quantity, Unit};
    ///
    /// let foot = Quantity::Length(Unit::Foot.length());
    /// assert_eq!(foot.checked_sub(Quantity::Length(12 * Unit::Inch.length())), Some(Quantity::Length(Default::default())));
    /// ```
    #[must_use]
    pub fn checked_sub(self, other: Self) -> Option<Self> {
        self.checked_add(other.checked_neg()?)
    }

    /// The same with its sign turned; `None` for a number that cannot be held.
    ///
    /// ```
    /// use scantling::Quantity;
    ///
    /// assert_eq!(Quantity::Number(2.into()).checked_neg(), Some(Quantity::Number((-2).into())));
    /// ```
    #[must_use]
    pub fn checked_neg(self) -> Option<Self> {
        match self {
            Self::Number(value) => Some(number(fraction(value)?.negated())),
            Self::Length(length) => Some(Self::Length(-length)),
            Self::Area(area) => Some(Self::Area(-area)),
            Self::Volume(volume) => Some(Self::Volume(-volume)),
        }
    }

    /// The product, up to a volume; `None` past that, or when it cannot be held.
    ///
    /// ```
    /// use scantling::{Quantity, Unit};
    ///
    /// let inch = Quantity::Length(Unit::Inch.length());
    /// let square = inch.checked_mul(inch).unwrap();
    /// assert!(square.checked_mul(inch).unwrap().volume().is_some());
    /// assert_eq!(square.checked_mul(square), None);
    /// ```
    #[must_use]
    pub fn checked_mul(self, other: Self) -> Option<Self> {
        match (self, other) {
            (Self::Number(a), Self::Number(b)) => {
                let b = fraction(b)?;
                fraction(a)?.checked_scale(b.num(), b.den().into()).map(number)
            }
            (Self::Number(factor), Self::Length(length)) | (Self::Length(length), Self::Number(factor)) => {
                length.checked_mul_ratio(factor).map(Self::Length)
            }
            (Self::Number(factor), Self::Area(area)) | (Self::Area(area), Self::Number(factor)) => {
                area.checked_mul_ratio(factor).map(Self::Area)
            }
            (Self::Number(factor), Self::Volume(volume)) | (Self::Volume(volume), Self::Number(factor)) => {
                volume.checked_mul_ratio(factor).map(Self::Volume)
            }
            (Self::Length(a), Self::Length(b)) => a.checked_area(b).map(Self::Area),
            (Self::Length(length), Self::Area(area)) | (Self::Area(area), Self::Length(length)) => {
                area.checked_volume(length).map(Self::Volume)
            }
            _ => None,
        }
    }

    /// The quotient; `None` when the divisor is zero, when it has more dimensions than what is divided, or when the
    /// quotient cannot be held.
    ///
    /// ```
    /// use scantling::{Quantity, Unit};
    ///
    /// let (inch, foot) = (Quantity::Length(Unit::Inch.length()), Quantity::Length(Unit::Foot.length()));
    /// assert_eq!(foot.checked_div(inch), Some(Quantity::Number(12.into())));
    /// assert_eq!(Quantity::Number(12.into()).checked_div(inch), None);
    /// assert_eq!(foot.checked_div(Quantity::Number(0.into())), None);
    /// ```
    #[must_use]
    pub fn checked_div(self, other: Self) -> Option<Self> {
        match (self, other) {
            (Self::Number(a), Self::Number(b)) => {
                let b = fraction(b)?;
                let over = if b.num() < 0 { -i128::from(b.den()) } else { b.den().into() };
                fraction(a)?.checked_scale(over, b.num().unsigned_abs()).map(number)
            }
            (Self::Length(length), Self::Number(divisor)) => length.checked_div_ratio(divisor).map(Self::Length),
            (Self::Area(area), Self::Number(divisor)) => area.checked_div_ratio(divisor).map(Self::Area),
            (Self::Volume(volume), Self::Number(divisor)) => volume.checked_div_ratio(divisor).map(Self::Volume),
            (Self::Length(a), Self::Length(b)) => a.checked_ratio(b).map(Self::Number),
            (Self::Area(a), Self::Area(b)) => a.checked_ratio(b).map(Self::Number),
            (Self::Volume(a), Self::Volume(b)) => a.checked_ratio(b).map(Self::Number),
            (Self::Area(area), Self::Length(width)) => area.checked_div_length(width).map(Self::Length),
            (Self::Volume(volume), Self::Length(thickness)) => volume.checked_div_length(thickness).map(Self::Area),
            (Self::Volume(volume), Self::Area(section)) => volume.checked_div_area(section).map(Self::Length),
            _ => None,
        }
    }

    /// How many lengths are multiplied in it.
    pub(super) const fn dimension(self) -> u8 {
        match self {
            Self::Number(_) => 0,
            Self::Length(_) => 1,
            Self::Area(_) => 2,
            Self::Volume(_) => 3,
        }
    }

    pub(super) const fn is_zero(self) -> bool {
        match self {
            Self::Number(number) => *number.numer() == 0,
            Self::Length(length) => length.is_zero(),
            Self::Area(area) => area.is_zero(),
            Self::Volume(volume) => volume.is_zero(),
        }
    }
}

/// The number as this crate holds fractions, so that no sum wraps or refuses what fits. It may come from
/// anywhere, so it is not trusted to be in lowest terms or to have a positive denominator.
fn fraction(number: Ratio<i128>) -> Option<Fraction> {
    let (num, den) = (*number.numer(), *number.denom());
    let num = if den < 0 { num.checked_neg()? } else { num };
    Fraction::reduced(num, den.unsigned_abs())
}

fn number(fraction: Fraction) -> Quantity {
    Quantity::Number(Ratio::new_raw(fraction.num(), fraction.den().into()))
}
