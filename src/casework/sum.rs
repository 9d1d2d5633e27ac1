//! A figure and where it comes from: sizes added and taken away, each with its name. The figure is what they come to.

use alloc::vec::Vec;
use core::fmt;

use super::error::CaseworkError;
use crate::length::Length;

/// A size as the sum that it comes from, in words a person can follow with a pencil.
///
/// ```
/// use scantling::{Length, Sum, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let shelf = Sum::of("overall width", inches(36, 1)).less(2, "side", inches(3, 4)).plus(2, "dado", inches(1, 4));
/// assert_eq!(shelf.total()?, inches(35, 1));
/// assert_eq!(shelf.to_string(), "overall width 36\", less two sides of 3/4\", plus two dadoes of 1/4\"");
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Sum {
    terms: Vec<Term>,
    /// Parts that share it equally.
    shares: u32,
}

#[derive(Clone, Debug, PartialEq, Eq, Hash)]
struct Term {
    times: i64,
    name: &'static str,
    size: Length,
}

impl Sum {
    /// A size to begin with.
    ///
    /// ```
    /// use scantling::{Length, Sum, Unit};
    ///
    /// assert_eq!(Sum::of("overall height", Length::new(72, Unit::Inch)).to_string(), "overall height 72\"");
    /// ```
    #[must_use]
    pub fn of(name: &'static str, size: Length) -> Self {
        Self { terms: Vec::from([Term { times: 1, name, size }]), shares: 1 }
    }

    /// The same and so many times another size. What comes to nothing is left out.
    ///
    /// ```
    /// use scantling::{Length, Sum, Unit};
    ///
    /// let inch = Length::new(1, Unit::Inch);
    /// assert_eq!(Sum::of("opening", inch).plus(2, "overlay", inch).plus(0, "play", inch).to_string(), "opening 1\", plus two overlays of 1\"");
    /// ```
    #[must_use]
    pub fn plus(self, times: u32, name: &'static str, size: Length) -> Self {
        self.and(times.into(), name, size)
    }

    /// The same, less so many times another size.
    ///
    /// ```
    /// use scantling::{Length, Sum, Unit};
    ///
    /// let inch = Length::new(1, Unit::Inch);
    /// assert_eq!(Sum::of("opening", 5 * inch).less(3, "gap", inch).total(), Ok(2 * inch));
    /// ```
    #[must_use]
    pub fn less(self, times: u32, name: &'static str, size: Length) -> Self {
        self.and(-i64::from(times), name, size)
    }

    fn and(mut self, times: i64, name: &'static str, size: Length) -> Self {
        if times != 0 && size != Length::ZERO {
            self.terms.push(Term { times, name, size });
        }
        self
    }

    /// The whole of it, shared equally by so many.
    pub(super) const fn shared_by(mut self, shares: u32) -> Self {
        self.shares = shares;
        self
    }

    /// What it comes to, exactly.
    ///
    /// # Errors
    ///
    /// When the total cannot be held.
    ///
    /// ```
    /// use scantling::{CaseworkError, Length, Sum};
    ///
    /// let two = Sum::of("width", Length::MAX).plus(1, "width", Length::MAX);
    /// assert_eq!(two.total(), Err(CaseworkError::TooLarge));
    /// ```
    pub fn total(&self) -> Result<Length, CaseworkError> {
        let add = |total: Length, term: &Term| total.checked_add(term.size.checked_mul(term.times)?);
        let whole = self.terms.iter().try_fold(Length::ZERO, add);
        whole.and_then(|whole| whole.checked_div(self.shares.into())).ok_or(CaseworkError::TooLarge)
    }
}

impl fmt::Display for Sum {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (place, Term { times, name, size }) in self.terms.iter().enumerate() {
            let joint = if *times < 0 { "less" } else { "plus" };
            match times.unsigned_abs() {
                1 if place == 0 => write!(out, "{name} {size}")?,
                1 => write!(out, ", {joint} the {name}, {size}")?,
                count => write!(out, ", {joint} {} {} of {size}", Count(count), Plural(name))?,
            }
        }
        if self.shares == 1 { Ok(()) } else { write!(out, ", shared by {}", Count(self.shares.into())) }
    }
}

/// A count in words where that is short.
struct Count(u64);

impl fmt::Display for Count {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        const WORDS: [&str; 13] =
            ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];
        match usize::try_from(self.0).ok().and_then(|count| WORDS.get(count)) {
            Some(word) => out.write_str(word),
            None => write!(out, "{}", self.0),
        }
    }
}

/// More than one of a part.
struct Plural<'a>(&'a str);

impl fmt::Display for Plural<'_> {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.0 {
            name if name.ends_with("shelf") => write!(out, "{}ves", &name[..name.len() - 1]),
            name if name.ends_with("dado") => write!(out, "{name}es"),
            name => write!(out, "{name}s"),
        }
    }
}
