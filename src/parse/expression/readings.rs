//! Where a hyphen or a slash could be read two ways in a calculation: taken the one way where there is only
//! one, or where both come to the same; refused where they differ. What the two readings come to is left to
//! `both.rs`.

use super::Calculation;
use super::figure::{Figure, figure};
use super::operator::{Operator, operator};
use crate::length::Unit;
use crate::parse::error::ParseErrorKind as Kind;
use crate::parse::number::Form;
use crate::parse::refuse::fault;
use crate::parse::scan::{Bytes, Fault, blanks, dash, digits, slash};

/// What stands in front of an operand, as far as it decides between two readings.
#[derive(Clone, Copy)]
pub(super) struct Place {
    pub(super) front: Front,
    /// The sign in front is a minus without blanks round it.
    pub(super) chained: bool,
}

#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Front {
    Added,
    /// What is joined to the operand then goes the same way as what is subtracted behind it.
    TakenAway,
    /// A sign multiplies or divides by the operand.
    Scaled,
}

impl Front {
    /// With one more minus sign.
    pub(super) const fn turned(self) -> Self {
        match self {
            Self::Added => Self::TakenAway,
            Self::TakenAway => Self::Added,
            Self::Scaled => Self::Scaled,
        }
    }
}

/// A sign between two figures, with the blanks round it.
#[derive(Clone, Copy)]
pub(super) struct Sign<'a> {
    /// The text behind the sign and its blanks.
    pub(super) next: Bytes<'a>,
    before: bool,
    behind: bool,
}

impl<'a> Sign<'a> {
    /// A sign of the given kind behind `end`.
    pub(super) fn find(end: Bytes<'a>, kind: impl Fn(Bytes<'a>) -> Option<Bytes<'a>>) -> Option<Self> {
        let start = blanks(end);
        let tail = kind(start)?;
        let next = blanks(tail);
        Some(Self { next, before: start.len() < end.len(), behind: next.len() < tail.len() })
    }

    /// Blanks on both sides.
    pub(super) const fn spaced(&self) -> bool {
        self.before && self.behind
    }

    /// No blanks at all.
    pub(super) const fn glued(&self) -> bool {
        !self.before && !self.behind
    }
}

impl Calculation {
    /// The figure that a dash joins to the one before it. It joins feet to inches and a whole number to its
    /// fraction, and subtracts everywhere else.
    pub(super) fn joined<'a>(self, last: &Figure<'a>, sign: &Sign<'a>, place: Place) -> Result<Option<Figure<'a>>, Fault> {
        let Ok((_, next)) = figure(sign.next, self.parser.comma) else { return Ok(None) };
        if let Some(end) = sixteenths(last, sign, &next).filter(|_| !place.chained) {
            return Err(fault(Kind::FeetInchesSixteenths, last.start, end));
        }
        let (next, divides) = if last.unit.is_none() { self.with_denominator(next) } else { (next, false) };
        let factor = operator(blanks(next.end)).map(|(operator, _)| operator).filter(|operator| operator.scales());
        // `8' - 2 * 3/4"`: a bare number with a sign behind it is how many, not inches.
        let counts = next.unit.is_none() && factor == Some(Operator::Times);
        let could_join = match (last.form, last.unit) {
            (Form::Whole, None) => next.form == Form::Fraction && !sign.spaced(),
            (Form::Whole, Some(Unit::Foot)) => matches!(next.unit, None | Some(Unit::Inch)) && !(sign.spaced() && counts),
            _ => false,
        };
        let everyday = sign.glued() && last.unit.is_some() && !counts;
        let plain = self.compound && !sign.spaced() && !divides;
        let same = place.front == Front::TakenAway && factor.is_none();
        match could_join {
            false => Ok(None),
            true if everyday || plain => Ok(Some(next)),
            // `72 -3/4` is no spelling of a plain length, so it goes piece by piece.
            true if same => Ok((last.unit.is_some() || sign.glued()).then_some(next)),
            true => Err(fault(Kind::HyphenReadings, last.start, if last.unit.is_some() { next.end } else { next.behind })),
        }
    }

    /// `72-3 / 4`: the figure behind the dash with the rest of its fraction, and whether the slash has the blanks of
    /// one that divides.
    fn with_denominator(self, next: Figure<'_>) -> (Figure<'_>, bool) {
        let Some(line) = Sign::find(next.end, slash) else { return (next, false) };
        match self.fraction_over(&next, &line) {
            Some((fraction, true)) => (fraction, line.spaced()),
            _ => (next, false),
        }
    }

    /// The fraction that a slash with blanks round it makes all the same: `3 / 4"`, since a number cannot be
    /// divided by a length. Behind feet, and behind a sign that would take the numerator, it has two readings.
    pub(super) fn loose_fraction<'a>(
        self,
        last: &Figure<'a>,
        stand: Stand,
        sign: &Sign<'a>,
        place: Place,
    ) -> Result<Option<Figure<'a>>, Fault> {
        let Some((fraction, proper)) = self.fraction_over(last, sign) else { return Ok(None) };
        let measured = stand == Stand::First && fraction.unit.is_some();
        let open = match stand {
            Stand::First => measured && place.front == Front::Scaled && (proper || !sign.spaced()),
            Stand::BehindFeet => proper,
            Stand::Elsewhere => false,
        };
        match () {
            () if self.alone && !sign.spaced() => Ok(Some(fraction)),
            () if open => Err(fault(Kind::SlashReadings, last.start, fraction.end)),
            () if measured && proper => Ok(Some(fraction)),
            () => Ok(None),
        }
    }

    /// Two bare whole numbers with a slash and blanks between them as a fraction, and whether it is below one.
    fn fraction_over<'a>(self, last: &Figure<'a>, sign: &Sign<'a>) -> Option<(Figure<'a>, bool)> {
        let (_, below) = figure(sign.next, self.parser.comma).ok()?;
        let (_, num) = digits(last.start).ok()?;
        let (_, den) = digits(sign.next).ok()?;
        let whole = last.form == Form::Whole && last.unit.is_none() && below.form == Form::Whole;
        (whole && !sign.glued()).then_some((Figure { form: Form::Fraction, start: last.start, ..below }, num < den))
    }
}

/// Where in its operand a figure stands.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Stand {
    First,
    BehindFeet,
    Elsewhere,
}

/// The end of `25-0-14`, which is feet, inches and sixteenths on a truss sheet. In `96-3-3-3` there are too many.
fn sixteenths<'a>(last: &Figure<'a>, sign: &Sign<'a>, next: &Figure<'a>) -> Option<Bytes<'a>> {
    let third = dash(next.end)?;
    let (_, inches) = digits(next.start).ok()?;
    let (end, part) = digits(third).ok()?;
    let bare = last.unit.is_none() && next.unit.is_none() && slash(end).is_none() && dash(end).is_none();
    let whole = last.form == Form::Whole && next.form == Form::Whole;
    (bare && whole && sign.glued() && inches < 12 && part < 16).then_some(end)
}

/// How an operand looks to a slash beside it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Shape {
    /// A bare whole number, which may be either part of a fraction.
    Whole,
    /// A fraction in plain digits without a unit, which may be two steps of a division.
    Fraction,
    Other,
    Bracket,
}

/// Whether a division's slash leaves open what is divided by what: `12 / 3/4`, `72/3/4`, `12 / 3 /4`.
pub(super) fn is_open(before: Shape, before_is_divisor: bool, sign: &Sign<'_>, divisor: Shape) -> bool {
    let above = before == Shape::Fraction || before == Shape::Whole && before_is_divisor;
    divisor == Shape::Fraction || divisor == Shape::Whole && above && !sign.spaced()
}
