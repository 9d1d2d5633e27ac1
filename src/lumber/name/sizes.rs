//! What each size in a name is for, once it is known what kind of stock the name means.

use alloc::format;
use alloc::string::String;
use core::ops::Range;

use super::super::nominal::Nominal;
use super::cut::Cut;
use super::error::{NominalError, NominalErrorKind as Kind};
use super::number::Number;
use super::words::Said;
use crate::length::{Length, Unit};

/// A name that was cut up.
#[derive(Clone, Copy)]
pub(super) struct Name<'a> {
    pub(super) text: &'a str,
    /// With one number or more.
    pub(super) cut: &'a Cut,
}

/// Bare lengths past this are hardly feet: no lumber is sold so long (common practice, no source).
const MOST_FEET: i64 = 40;

/// Bare sides of a sheet to the first are feet, and past the last millimeters; one side is no more than the middle one, in
/// feet (common practice, no source).
const FEET_OF_SHEET: Length = Length::new(12, Unit::Inch);
const NARROW_SHEET: Length = Length::new(5, Unit::Inch);
const INCHES_OF_SHEET: Length = Length::new(400, Unit::Inch);

/// Boards are seldom wider (common practice, no source).
pub(in super::super) const WIDEST: Length = LEAST_SIDE;

/// No board is named so wide: PS 20 ends at 16 in.
const LEAST_SIDE: Length = Length::new(24, Unit::Inch);

impl Name<'_> {
    pub(super) fn first(&self) -> &Number {
        &self.cut.numbers[0]
    }

    fn blame(&self, number: &Number, kind: Kind) -> NominalError {
        NominalError::at(self.text, number.span.clone(), kind)
    }

    fn blame_all(&self, kind: Kind) -> NominalError {
        let last = self.cut.numbers.last().map_or(0, |last| last.span.end);
        NominalError::at(self.text, self.first().span.start..last, kind)
    }

    /// The sizes could be of either kind.
    pub(super) fn two_readings(&self, one: &str, other: &str) -> NominalError {
        let refused = self.blame_all(Kind::TwoReadings);
        let sizes = &self.text[refused.span()];
        let hint = format!("write {sizes} {one} or {sizes} {other}");
        refused.hinting(hint)
    }

    /// Thickness and width by name, then a length.
    pub(super) fn softwood(&self) -> Result<Nominal, NominalError> {
        self.not_by_quarters()?;
        let (thickness, width) = (self.first(), self.width()?.ok_or_else(|| self.blame(self.first(), Kind::NoWidth))?);
        let named = self.cut.says(Said::Named) || self.cut.says(Said::Softwood);
        for side in [thickness, width] {
            if !side.is_inches() || !(side.is_whole() || named) {
                return Err(self.measured(thickness, width));
            }
        }
        self.not_all_metric()?;
        if thickness.length > width.length {
            let [width, thickness] = [width, thickness].map(|side| &self.text[side.span.clone()]);
            return Err(self.blame_all(Kind::ThicknessFirst).hinting(format!("write {width}x{thickness}")));
        }
        self.with_length(Nominal::softwood(thickness.length, width.length), 2)
    }

    /// `8/4 pine`: dressed to less, or rough? Five and six quarters are softwood sizes too.
    fn not_by_quarters(&self) -> Result<(), NominalError> {
        let thickness = self.first();
        if !thickness.quarters || !(thickness.is_whole() || thickness.length > Length::new(2, Unit::Inch)) {
            return Ok(());
        }
        let (quarters, inches) = (&self.text[thickness.span.clone()], thickness.length.in_unit(Unit::Inch));
        let hint =
            format!("write {inches} for {quarters} if it is dressed by that name; no table has rough softwood by quarters");
        Err(self.blame_all(Kind::TwoReadings).hinting(hint))
    }

    /// `18 x 90 x 2400 mm`: the unit behind the last of sizes joined by x serves them all.
    fn not_all_metric(&self) -> Result<(), NominalError> {
        let last = self.cut.numbers.last().filter(|last| last.times && !last.bare);
        match (last, self.shared_unit()) {
            (Some(last), Some(Unit::Millimeter | Unit::Centimeter)) => {
                let [name, length] = [self.first().span.start..self.before(last), last.span.clone()].map(|span| &self.text[span]);
                let hint = format!("write {name} - {length} if {name} is the name");
                Err(self.blame_all(Kind::MeasuredSize).hinting(hint))
            }
            _ => Ok(()),
        }
    }

    /// Where the size before another ends.
    fn before(&self, number: &Number) -> usize {
        self.cut.numbers.iter().map(|other| other.span.end).filter(|end| *end <= number.span.start).max().unwrap_or(0)
    }

    fn measured(&self, thickness: &Number, width: &Number) -> NominalError {
        let both = NominalError::at(self.text, thickness.span.start..width.span.end, Kind::MeasuredSize);
        let sizes = [thickness, width].map(|side| &self.text[side.span.clone()]);
        if !thickness.is_inches() || !width.is_inches() {
            return both;
        }
        let [thickness, width] = sizes;
        both.hinting(format!("write {thickness} x {width} board if this is the name; what it measures is no name"))
    }

    pub(super) fn decking(&self) -> Result<Nominal, NominalError> {
        self.by_thickness(Nominal::decking(self.first().length))
    }

    pub(super) fn hardwood(&self) -> Result<Nominal, NominalError> {
        let thickness = self.first();
        if thickness.length > WIDEST {
            return Err(self.blame(thickness, Kind::MeasuredSize));
        }
        self.not_a_sheet()?;
        let width = self.width()?;
        // Hardwood sold dressed has softwood's names and sizes.
        if let Some(width) = width.filter(|_| thickness.bare && thickness.is_whole() && !thickness.quarters) {
            let (inches, sides) = (thickness.length.in_unit(Unit::Inch), &self.text[thickness.span.start..width.span.end]);
            let quarters = thickness.length.checked_mul(4).map_or(inches, |fourfold| fourfold.in_unit(Unit::Inch));
            let refused = NominalError::at(self.text, thickness.span.start..width.span.end, Kind::TwoReadings);
            let hint = format!(
                "write {quarters}/4 for rough hardwood; dressed by a softwood name it is {sides} without the word hardwood"
            );
            return Err(refused.hinting(hint));
        }
        self.by_thickness(Nominal::hardwood(thickness.length))
    }

    /// `3/4 birch 4x8`: a board 4 in wide, or a sheet of birch plywood 4 ft wide?
    fn not_a_sheet(&self) -> Result<(), NominalError> {
        let [thickness, width, length] = &self.cut.numbers[..] else { return Ok(()) };
        let thin = !thickness.quarters && thickness.length < Length::new(2, Unit::Inch);
        let bare = width.bare && length.bare && length.times && !self.cut.says(Said::Wide) && !self.cut.says(Said::Long);
        let could_be = bare && width.length.min(length.length) <= NARROW_SHEET;
        let is_one = width.unit == Some(Unit::Foot);
        let [thickness, width, length, sides] =
            [thickness.span.clone(), width.span.clone(), length.span.clone(), width.span.start..length.span.end]
                .map(|span| &self.text[span]);
        let hint = match thin {
            true if is_one => format!("write {thickness} ply {sides} for a panel; the width of a board is in inches"),
            true if could_be => {
                format!("write {width}\" x {length}' for a board, or {thickness} ply {width}x{length} for a panel")
            }
            _ => return Ok(()),
        };
        Err(self.blame_all(Kind::TwoReadings).hinting(hint))
    }

    /// A thickness, perhaps a width, perhaps a length.
    fn by_thickness(&self, nominal: Nominal) -> Result<Nominal, NominalError> {
        if !self.first().is_inches() {
            return Err(self.blame(self.first(), Kind::MeasuredSize));
        }
        self.not_all_metric()?;
        let (wide, long) = (self.cut.says(Said::Wide), self.cut.says(Said::Long));
        match (self.width_by_place()?, self.cut.numbers.len()) {
            // So wide a board is rare: the width, or the length?
            (Some(width), 2) if !wide && (long || width.length > WIDEST) => {
                let size = &self.text[width.span.clone()];
                let refused = self.blame(width, Kind::TwoReadings);
                Err(refused.hinting(format!("write {size} wide, or - {size} long")))
            }
            (None, 2) if !long => self.not_a_width(&self.cut.numbers[1]).and_then(|()| self.with_length(nominal, 1)),
            (Some(width), _) => self.with_length(nominal.wide(width.length), 2),
            (None, _) => self.with_length(nominal, 1),
        }
    }

    /// `4/4 walnut 8`: behind a thickness alone, a figure that could be a width is not taken for the length.
    fn not_a_width(&self, number: &Number) -> Result<(), NominalError> {
        if !number.is_inches() || number.length > WIDEST {
            return Ok(());
        }
        let size = &self.text[number.span.clone()];
        let [inch, foot] = if number.bare { ["\"", "'"] } else { [""; 2] };
        let hint = format!("write {size}{inch} wide, or {size}{foot} long");
        Err(self.blame(number, Kind::TwoReadings).hinting(hint))
    }

    /// The width, which may also stand behind a blank, where it is said to be one or the length behind it has an x.
    fn width_by_place(&self) -> Result<Option<&Number>, NominalError> {
        match &self.cut.numbers[..] {
            [_, second] if self.cut.says(Said::Wide) && second.is_inches() => Ok(Some(second)),
            [_, second, third] if !second.times && third.times && second.is_inches() => Ok(Some(second)),
            _ => self.width(),
        }
    }

    /// The second size, if an x stands before it and it is not in feet.
    fn width(&self) -> Result<Option<&Number>, NominalError> {
        let Some(second) = self.cut.numbers.get(1) else { return Ok(None) };
        match second.unit {
            _ if !second.times => Ok(None),
            Some(Unit::Foot | Unit::Yard | Unit::Meter) => Ok(None),
            Some(Unit::Millimeter | Unit::Centimeter) => Err(self.blame(second, Kind::MeasuredSize)),
            Some(Unit::Inch) | None => Ok(Some(second)),
        }
    }

    /// The size at a place as the length, where there is one, and nothing behind it.
    fn with_length(&self, nominal: Nominal, place: usize) -> Result<Nominal, NominalError> {
        if let Some(more) = self.cut.numbers.get(place + 1) {
            return Err(self.blame(more, Kind::TooManyNumbers));
        }
        let Some(number) = self.cut.numbers.get(place) else { return Ok(nominal) };
        if !number.bare {
            return Ok(nominal.long(number.length));
        }
        let figure = &self.text[number.span.clone()];
        let refused = || {
            let thin = !number.is_whole() && number.length < Length::new(2, Unit::Inch);
            let sides = &self.text[self.first().span.start..self.before(number)];
            let panel = if thin { format!(", or {figure} ply {sides} for a panel") } else { String::new() };
            let hint = format!("write {figure}' for feet or {figure}\" for inches{panel}");
            self.blame(number, Kind::LengthUnit).hinting(hint)
        };
        let feet = number.taken_as(self.text, Unit::Foot).ok_or_else(refused)?;
        let plain = number.is_whole() && feet <= Length::new(MOST_FEET, Unit::Foot);
        if plain { Ok(nominal.long(feet)) } else { Err(refused()) }
    }

    /// A category, the sides of a sheet, or both, in any order: the one thin size is the thickness.
    pub(super) fn panel(&self) -> Result<Nominal, NominalError> {
        let metric = self.shared_unit();
        let size = |number: &Number| metric.and_then(|unit| number.taken_as(self.text, unit)).unwrap_or(number.length);
        let is_thin = |number: &&Number| size(number) < Length::new(2, Unit::Inch);
        let mut thin = self.cut.numbers.iter().filter(is_thin);
        let thickness = thin.next();
        let mut sides = self.cut.numbers.iter().filter(|number| !is_thin(number));
        // `4x8 3/4`: a side of 8 3/4, or a thickness of 3/4.
        if let Some(odd) =
            sides.clone().find(|side| side.bare && !side.is_whole() && side.length <= FEET_OF_SHEET && metric.is_none())
        {
            return Err(self.blame(odd, Kind::NotAPanel).hinting("put the thickness in front, as in 3/4 ply 4x8"));
        }
        let sheet = match (sides.next(), sides.next(), sides.next()) {
            (Some(width), Some(length), None) if length.times => {
                Some([width, length].map(|side| if metric.is_some() { size(side) } else { side_of_sheet(side, self.text) }))
            }
            (None, None, None) => None,
            _ => return Err(self.blame_all(Kind::NotAPanel)),
        };
        match (thickness.map(size), sheet, thin.next()) {
            (Some(category), None, None) => Ok(Nominal::panel(category)),
            (Some(category), Some([width, length]), None) => Ok(Nominal::panel(category).wide(width).long(length)),
            (None, Some([width, length]), _) => Ok(Nominal::sheet(width, length)),
            _ => Err(self.blame_all(Kind::NotAPanel)),
        }
    }

    /// Whether two sizes joined by an x are in feet or too wide for boards, and so the sides of a sheet.
    pub(super) fn has_sides_of_sheet(&self) -> bool {
        let metric = self.shared_unit().filter(|unit| *unit != Unit::Meter);
        let is_side = |side: &Number| match side.unit {
            Some(Unit::Foot | Unit::Yard | Unit::Meter) => true,
            _ => metric.and_then(|unit| side.taken_as(self.text, unit)).unwrap_or(side.length) >= LEAST_SIDE,
        };
        self.cut.numbers.windows(2).any(|pair| pair[1].times && pair.iter().all(is_side))
    }

    /// The metric unit behind the last size, which serves those before it that have none.
    fn shared_unit(&self) -> Option<Unit> {
        let unit = self.cut.numbers.last()?.unit.filter(|unit| unit.is_metric())?;
        self.cut.numbers[..self.cut.numbers.len() - 1].iter().any(|number| number.bare).then_some(unit)
    }
}

/// A bare side is in the unit that makes a sheet of it.
fn side_of_sheet(side: &Number, text: &str) -> Length {
    let unit = match side.length {
        length if length <= FEET_OF_SHEET => Unit::Foot,
        length if length <= INCHES_OF_SHEET => Unit::Inch,
        _ => Unit::Millimeter,
    };
    side.taken_as(text, unit).unwrap_or(side.length)
}

/// A text without the blanks at its ends.
pub(super) fn whole_span(text: &str) -> Range<usize> {
    let start = text.len() - text.trim_start().len();
    start..start + text.trim().len()
}
