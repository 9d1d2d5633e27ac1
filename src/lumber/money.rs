//! An exact amount of money in some currency, which it does not name. What it buys is left to `price.rs`.

use core::fmt;
use core::str::FromStr;

use num_rational::Ratio;

use super::error::LumberError;
use crate::length::{Floor, Fraction, RoundingMode};
use crate::print::{Written, padded};

/// An exact amount of money. A third of it is a third: nothing is rounded but by [`Money::to_cents`].
///
/// ```
/// use num_rational::Ratio;
/// use scantling::{Money, RoundingMode};
///
/// let board_foot: Money = "8.75".parse()?;
/// let board = board_foot.checked_times(Ratio::new(40, 3)).unwrap();
/// assert_eq!(board.to_string(), "116 2/3");
/// assert_eq!(board.to_cents(RoundingMode::TiesUp)?.to_string(), "116.67");
/// # Ok::<(), scantling::LumberError>(())
/// ```
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct Money {
    amount: Fraction,
}

impl Money {
    /// None at all.
    pub const ZERO: Self = Self { amount: Fraction::ZERO };

    /// A whole number of cents.
    ///
    /// ```
    /// assert_eq!(scantling::Money::cents(875).to_string(), "8.75");
    /// ```
    #[must_use]
    pub const fn cents(count: i64) -> Self {
        match Fraction::reduced(count as i128, 100) {
            Some(amount) => Self { amount },
            None => unreachable!(), // any i64 over a hundred can be held
        }
    }

    /// The sum, or `None` when it cannot be held.
    ///
    /// ```
    /// use scantling::Money;
    ///
    /// assert_eq!(Money::cents(50).checked_add(Money::cents(75)), Some(Money::cents(125)));
    /// ```
    #[must_use]
    pub const fn checked_add(self, other: Self) -> Option<Self> {
        match self.amount.checked_add(other.amount) {
            Some(amount) => Some(Self { amount }),
            None => None,
        }
    }

    /// So many times over, or `None` when that cannot be held or the count has no value.
    ///
    /// ```
    /// use num_rational::Ratio;
    /// use scantling::Money;
    ///
    /// assert_eq!(Money::cents(60).checked_times(Ratio::new(5, 2)), Some(Money::cents(150)));
    /// ```
    #[must_use]
    pub const fn checked_times(self, count: Ratio<i128>) -> Option<Self> {
        let (num, den) = (*count.numer(), *count.denom());
        let own = if den < 0 { self.amount.negated() } else { self.amount };
        match own.checked_scale(num, den.unsigned_abs()) {
            Some(amount) => Some(Self { amount }),
            None => None,
        }
    }

    /// The amount as an exact ratio of the currency's unit.
    ///
    /// ```
    /// use num_rational::Ratio;
    ///
    /// assert_eq!(scantling::Money::cents(875).in_units(), Ratio::new(35, 4));
    /// ```
    #[must_use]
    pub const fn in_units(self) -> Ratio<i128> {
        // From a u64.
        Ratio::new_raw(self.amount.num(), self.amount.den() as i128)
    }

    /// The amount rounded to the cent, on purpose.
    ///
    /// ```
    /// use scantling::{Money, RoundingMode};
    ///
    /// let fuel: Money = "3.459".parse()?;
    /// assert_eq!(fuel.to_cents(RoundingMode::TiesUp)?, Money::cents(346));
    /// assert_eq!(fuel.to_cents(RoundingMode::Down)?, Money::cents(345));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`LumberError::OutOfRange`] when the cents cannot be counted.
    pub fn to_cents(self, mode: RoundingMode) -> Result<Self, LumberError> {
        let hundredfold = self.amount.checked_mul_int(100).ok_or(LumberError::OutOfRange)?;
        let den = i128::from(hundredfold.den());
        let (whole, rest) = (hundredfold.num().div_euclid(den), hundredfold.num().rem_euclid(den));
        let up = Floor::new(whole, rest, den).rises(mode, hundredfold.num() < 0);
        let cents = whole.checked_add(up.into()).and_then(|cents| Fraction::reduced(cents, 100));
        cents.map(|amount| Self { amount }).ok_or(LumberError::OutOfRange)
    }

    /// Over one line, in lowest terms.
    #[cfg(feature = "serde")]
    pub(crate) const fn parts(self) -> (i128, u128) {
        (self.amount.num(), self.amount.den() as u128)
    }

    /// `None` when it cannot be held.
    #[cfg(feature = "serde")]
    pub(crate) const fn of_parts(num: i128, den: u128) -> Option<Self> {
        match Fraction::reduced(num, den) {
            Some(amount) => Some(Self { amount }),
            None => None,
        }
    }

    /// How many decimals write it in full, at least two; `None` where none do.
    fn decimals(self) -> Option<usize> {
        (2..=18).find(|places| 10_u64.pow(*places) % self.amount.den() == 0).and_then(|places| usize::try_from(places).ok())
    }
}

impl Default for Money {
    fn default() -> Self {
        Self::ZERO
    }
}

/// Reads a decimal, a fraction or both, with a minus or a dollar sign in front or neither: `8.75`, `$8.75`, `.62`, `116 2/3`.
/// A comma is refused, for it has two readings.
impl FromStr for Money {
    type Err = LumberError;

    fn from_str(text: &str) -> Result<Self, LumberError> {
        let amount = || {
            let number = text.trim();
            let (size, negative) = number.strip_prefix('-').map_or((number, false), |size| (size, true));
            let size = size.strip_prefix('$').unwrap_or(size).trim_start();
            let amount = match size.split_once(' ') {
                Some((whole, part)) => decimal(whole, "")?.checked_add(proper(part)?)?,
                None if size.contains('/') => proper(size)?,
                None => size.split_once('.').map_or_else(|| decimal(size, ""), |(whole, decimals)| decimal(whole, decimals))?,
            };
            Some(Self { amount: if negative { amount.negated() } else { amount } })
        };
        amount().ok_or_else(|| LumberError::NotMoney { text: text.chars().take(24).collect() })
    }
}

/// Digits before and behind a point. As many as an amount can have are far fewer than thirty.
fn decimal(whole: &str, decimals: &str) -> Option<Fraction> {
    let digits = whole.bytes().chain(decimals.bytes());
    let count = whole.len() + decimals.len();
    let plain = (1..=30).contains(&count) && digits.clone().all(|byte| byte.is_ascii_digit());
    let num = plain.then(|| digits.fold(0, |value: i128, digit| value * 10 + i128::from(digit - b'0')))?;
    Fraction::reduced(num, (0..decimals.len()).fold(1, |scale, _| scale * 10))
}

/// A fraction under one.
fn proper(text: &str) -> Option<Fraction> {
    let (num, den) = text.split_once('/')?;
    let [num, den] = [decimal(num, "")?, decimal(den, "")?].map(Fraction::num);
    (num < den).then(|| Fraction::reduced(num, den.unsigned_abs()))?
}

impl PartialOrd for Money {
    fn partial_cmp(&self, other: &Self) -> Option<core::cmp::Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Money {
    fn cmp(&self, other: &Self) -> core::cmp::Ordering {
        self.amount.compare(other.amount)
    }
}

impl Written for Money {
    fn write(self, out: &mut impl fmt::Write) -> fmt::Result {
        let (num, den) = (self.amount.num().unsigned_abs(), u128::from(self.amount.den()));
        let (whole, rest) = (num / den, num % den);
        out.write_str(if self.amount.num() < 0 { "-" } else { "" })?;
        match self.decimals() {
            Some(places) => {
                let scale = (0..places).fold(1, |scale: u128, _| scale * 10);
                write!(out, "{whole}.{:0>places$}", rest * (scale / den))
            }
            None if whole == 0 => write!(out, "{rest}/{den}"),
            None => write!(out, "{whole} {rest}/{den}"),
        }
    }
}

/// Exact: in decimals, at least two, where they end: `8.75`, `0.625`. Else as a fraction: `116 2/3`.
///
/// ```
/// let third = scantling::Money::cents(100).checked_times(num_rational::Ratio::new(1, 3)).unwrap();
/// assert_eq!(format!("[{third:>5}]"), "[  1/3]");
/// ```
impl fmt::Display for Money {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        padded(*self, out)
    }
}

impl fmt::Debug for Money {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "Money({self})")
    }
}
