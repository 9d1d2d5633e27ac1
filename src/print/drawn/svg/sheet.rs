//! The paper a tape is drawn on: its scale, and a unit in which every line of the tape lies at a whole
//! number, so that nothing along the tape is rounded. What is drawn there is left to `picture.rs`.

use alloc::string::String;

use num_rational::Ratio;

use super::paper;
use crate::length::{Length, Unit};
use crate::print::Places;
use crate::print::decimal::Decimal;
use crate::print::drawn::TapeDrawing;
use crate::print::drawn::labels::{Laid, Measure};
use crate::print::drawn::stretch::Stretch;
use crate::print::written::Written;

/// A tape laid out on paper.
pub(super) struct Sheet<'a> {
    pub(super) laid: Laid<'a>,
    /// The unit that places are counted in, as a length on paper.
    unit: Length,
}

/// The fewest steps that show where a line lies, and the most that are drawn, however close they are.
const ROOM: (i128, i128) = (4, 160);

impl<'a> Sheet<'a> {
    /// `None` where a size or a place is out of range.
    pub(super) fn new(drawing: &'a TapeDrawing, scale: Option<Ratio<i128>>) -> Option<Self> {
        let step = match scale {
            Some(scale) => drawing.rule.step.checked_mul_ratio(scale)?,
            None => readable(drawing.rule.step)?,
        };
        let units = nearest(step, fineness(drawing.rule.unit))?;
        let unit = step.checked_mul_ratio(Ratio::new(1, units))?;
        let room = paper::TAPE.checked_ratio(step)?.to_integer().clamp(ROOM.0, ROOM.1);
        let stretch = Stretch::around(drawing.line, &drawing.rule, drawing.reach, room)?;
        let end = match stretch.ends {
            Some(part) => Some(stretch.steps() * units + part.numer().checked_mul(units)? / part.denom()),
            None => None,
        };
        let laid = Laid { drawing, stretch, measure: measure(units, unit)?, end };
        Some(Self { laid, unit })
    }

    /// A size on paper, to the nearest unit. Nothing is thinner than one.
    pub(super) fn units(&self, size: Length) -> Option<i128> {
        nearest(size, self.unit)
    }

    /// So many units on paper, to the nearest millionth of an inch or millimeter, with its unit: `5.25in`.
    pub(super) fn on_paper(&self, units: i128) -> Option<String> {
        let unit = self.laid.drawing.rule.unit;
        let size = self.unit.checked_mul_ratio(Ratio::from_integer(units))?;
        let size = size.round(Length::fraction(1, 1_000_000, unit)).ok()?;
        let mut text = String::new();
        Decimal::of(size, unit, Places::Shortest.needed(size, unit).ok()?).write(&mut text).ok()?;
        text.push_str(unit.symbol());
        Some(text)
    }
}

/// A step as it is drawn where no scale is asked for: doubled until lines can be told apart, or halved until
/// some fit on the paper.
fn readable(step: Length) -> Option<Length> {
    let mut step = step;
    while step < paper::LEAST_STEP {
        step = step.checked_mul(2)?;
    }
    while step > paper::GREATEST_STEP {
        step = step.checked_div(2)?;
    }
    Some(step)
}

/// About how fine the unit of places is: fine enough for the eye, and for rules a whole part of their step,
/// so that sizes on paper come out even.
const fn fineness(unit: Unit) -> Length {
    match unit {
        Unit::Millimeter => Length::fraction(1, 40, Unit::Millimeter),
        _ => Length::fraction(1, 1024, Unit::Inch),
    }
}

fn nearest(size: Length, unit: Length) -> Option<i128> {
    Some(size.checked_ratio(unit)?.round().to_integer().max(1))
}

fn measure(step: i128, unit: Length) -> Option<Measure> {
    let units = |size| nearest(size, unit);
    // Bold figures are up to 0.7 of their height wide in the fonts that browsers fall back to, and all other
    // texts here narrower still: measured, DejaVu Sans Bold, the widest of the usual ones.
    let advance = |size| Some(units(size)? * 7 / 10 + 1);
    Some(Measure {
        step,
        line: 0,
        arrow: units(paper::ARROW_BESIDE_COUNT)?,
        gap: units(paper::GAP)?,
        advance: [advance(paper::READING)?, advance(paper::COUNT)?, advance(paper::NUMBER)?, advance(paper::FLAG)?],
    })
}
