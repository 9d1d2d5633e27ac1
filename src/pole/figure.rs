//! How figures are written beside a pole: what the tape shows with its fraction joined by a hyphen, how the true place
//! leans, and exact places as no tape shows them. The printers themselves are those of `print/`.

use alloc::format;
use alloc::string::{String, ToString};

use crate::length::{Length, Rounding, Unit};
use crate::print::{Join, LengthPrinter, Shown, Style, WithSymbol, Written as _};
use crate::tape::{Lean, Reading, Tape};

/// The units that figures are given in: those of the tape.
#[derive(Clone, Copy)]
pub(crate) struct Figures {
    metric: bool,
}

impl Figures {
    pub(super) const INCHES: Self = Self { metric: false };

    /// A tape is metric when its graduation is a whole part of a millimeter or a whole count of them.
    pub(super) fn of(tape: &Tape) -> Self {
        let step = tape.step().in_unit(Unit::Millimeter);
        Self { metric: [*step.numer(), *step.denom()].into_iter().all(|part| part <= 100) }
    }

    /// Those in which a length that comes without a tape is plain: millimeters if it is whole in them and on no tape in
    /// inches.
    pub(crate) fn plain(length: Length) -> Self {
        Self { metric: length.in_unit(Unit::Millimeter).is_integer() && !is_on_tape(length) }
    }

    /// What the tape shows.
    pub(super) fn mark(self, length: Length) -> Option<Shown> {
        self.shown(length, join(length))
    }

    /// An exact place.
    pub(super) fn exact(self, length: Length) -> Option<Shown> {
        self.shown(length, Join::Space)
    }

    fn shown(self, length: Length, join: Join) -> Option<Shown> {
        let style = if self.metric { Style::Millimeters } else { Style::Inches };
        LengthPrinter::new().style(style).join(join).show(length).ok()
    }

    /// What no printer shows: millimeters whose decimals do not end.
    pub(super) fn unshown(self, length: Length) -> String {
        let mut text = String::new();
        let (parts, symbol) =
            if self.metric { (length.in_unit_parts(Unit::Millimeter), " mm") } else { (length.in_unit_parts(Unit::Inch), "\"") };
        // A string takes whatever is written.
        let _ = WithSymbol { parts, symbol }.write(&mut text);
        text
    }

    pub(crate) fn mark_text(self, length: Length) -> String {
        self.mark(length).map_or_else(|| self.unshown(length), |shown| shown.to_string())
    }

    pub(super) fn exact_text(self, length: Length) -> String {
        self.exact(length).map_or_else(|| self.unshown(length), |shown| shown.to_string())
    }

    /// The same as on a tape, in feet and inches as well where that helps.
    pub(super) fn long(self, length: Length) -> String {
        let feet = LengthPrinter::new().style(Style::FeetInches).join(join(length)).show(length);
        match feet {
            Ok(feet) if !self.metric && length >= Unit::Foot.length() => format!("{} = {feet}", self.mark_text(length)),
            _ => self.mark_text(length),
        }
    }

    /// How the true place lies to its mark.
    pub(super) fn lean(self, reading: &Reading) -> String {
        match reading.lean() {
            Lean::DeadOn => Lean::DeadOn.to_string(),
            lean => format!("{lean} by {}", self.amount(reading.leftover().abs())),
        }
    }

    /// A small amount: exact where that can be grasped, else rounded and said to be.
    fn amount(self, length: Length) -> String {
        let (unit, parts, style) =
            if self.metric { (Unit::Millimeter, 1000, Style::Millimeters) } else { (Unit::Inch, 10_000, Style::DecimalInches) };
        let is_graspable = if self.metric {
            self.mark(length).is_some_and(|shown| shown.to_string().len() <= 9)
        } else {
            *length.in_unit(Unit::Inch).denom() <= 1000
        };
        if is_graspable {
            return self.mark_text(length);
        }
        let rounded = length.round(Rounding::to(Length::fraction(1, parts, unit))).ok();
        let about = rounded.and_then(|rounded| LengthPrinter::new().style(style).show(rounded).ok());
        about.map_or_else(|| self.mark_text(length), |about| format!("about {about}"))
    }
}

/// A hyphen joins only what a tape may show, so that nothing else looks like it.
fn join(length: Length) -> Join {
    if is_on_tape(length) { Join::Hyphen } else { Join::Space }
}

fn is_on_tape(length: Length) -> bool {
    let parts = *length.in_unit(Unit::Inch).denom();
    parts <= 128 && parts.count_ones() == 1
}
