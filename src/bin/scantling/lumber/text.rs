//! The answer as text: one block a name, what they come to together, and the cautions that belong.

use num_rational::Ratio;
use scantling::{
    Catalog, Length, LengthPrinter, LumberKind, Money, PanelRow, Places, RoundingMode, Style, Surface, Unit, Volume,
};

use super::{Amount, CAUTIONS, Entry, NOT_FOR, Report};
use crate::Outcome;
use crate::problem::Problem;
use crate::words::{millimeters, mixed};

impl Report<'_> {
    pub(super) fn text(&self) -> Outcome {
        let mut blocks = Vec::new();
        for entry in &self.entries {
            blocks.push(block(entry.text, &self.lines(entry)?));
        }
        if self.entries.len() > 1 {
            blocks.extend(self.together()?.map(|lines| block("together", &lines)));
        }
        blocks.push(CAUTIONS.join("\n") + "\n");
        Ok(blocks.join("\n"))
    }

    fn lines(&self, entry: &Entry<'_>) -> Result<Vec<(&'static str, String)>, Problem> {
        let mut lines = vec![("what it is", what(entry))];
        lines.extend(self.sides(entry));
        lines.extend(entry.actual.panel().map(|_| ("limits not for", NOT_FOR.to_owned())));
        lines.extend(entry.actual.sources().map(|source| ("figures from", source.to_string())));
        if let Some(amount) = &entry.amount {
            lines.extend(self.amount(amount)?);
        }
        Ok(lines)
    }

    /// Each side with its name, so that none is taken for another.
    fn sides(&self, entry: &Entry<'_>) -> Vec<(&'static str, String)> {
        let (nominal, actual) = (&entry.nominal, &entry.actual);
        let by_name = |size: Length, name: Option<Length>| match name.filter(|name| *name != size) {
            Some(name) => format!("{}, {} by name", self.size(size), self.size(name)),
            None => self.size(size),
        };
        let thickness = match (actual.panel(), actual.thickness()) {
            (Some(panel), _) => Some(self.limits(panel)),
            (None, Some(rough)) if is_any_hardwood(entry) => Some(self.planed(entry, rough)),
            (None, thickness) => thickness.map(|size| by_name(size, nominal.thickness())),
        };
        let width = actual.width().map(|size| by_name(size, nominal.width()));
        let length = actual.length().map(|length| self.in_feet_too(length));
        [("thickness", thickness), ("width", width), ("length", length)]
            .into_iter()
            .filter_map(|(side, figure)| Some((side, figure?)))
            .collect()
    }

    /// In the units that it is sold in: 1220 mm are no inches.
    fn size(&self, size: Length) -> String {
        if is_metric(size) { millimeters(size) } else { self.bench.mark(size) }
    }

    fn in_feet_too(&self, length: Length) -> String {
        if is_metric(length) { millimeters(length) } else { self.bench.mark_in_feet_too(length) }
    }

    fn limits(&self, panel: PanelRow) -> String {
        let decimal = |length, places| {
            let shown = LengthPrinter::new().style(Style::DecimalInches).places(places).show(length);
            shown.map_or_else(|_| self.size(length), |shown| shown.to_string())
        };
        // Limits of 5 % lie on no tape.
        let on_tape = |length: Length| length.in_unit(Unit::Inch).denom().count_ones() == 1;
        let limit = |length| if on_tape(length) { self.size(length) } else { decimal(length, Places::Shortest) };
        let [least, most] = [panel.minimum(), panel.maximum()].map(limit);
        let label = decimal(panel.label(), Places::Exactly(3));
        format!("{least} to {most} unsanded or touch-sanded, labeled {label}")
    }

    /// A hardwood thickness in the rough, and what is left of it planed.
    fn planed(&self, entry: &Entry<'_>, rough: Length) -> String {
        let planed = [Surface::OneSide, Surface::TwoSides].into_iter().filter_map(|surface| {
            let actual = Catalog::new().actual(&entry.nominal.surfaced(surface)).ok()?;
            Some(format!("{} {surface}", self.size(actual.thickness()?)))
        });
        let all: Vec<_> = std::iter::once(format!("{} rough", self.size(rough))).chain(planed).collect();
        all.join(", ")
    }

    fn amount(&self, amount: &Amount) -> Result<Vec<(&'static str, String)>, Problem> {
        let tallied = &amount.tallied;
        let pieces = if tallied.pieces() == 1 { "1 piece".to_owned() } else { format!("{} pieces", tallied.pieces()) };
        let figures = [
            Some(pieces),
            feet(tallied.linear().map(|linear| linear.in_unit(Unit::Foot)), ["linear foot", "linear feet"]),
            feet(tallied.face().checked_in_square(Unit::Foot), ["square foot of face", "square feet of face"]),
            feet(tallied.board_feet().and_then(Volume::checked_in_board_feet), ["board foot", "board feet"]),
        ];
        let mut lines = vec![("how much", figures.into_iter().flatten().collect::<Vec<_>>().join(", "))];
        if tallied.board_feet().is_some() {
            lines.push(("tallied by name", self.tally.rule().to_string()));
        }
        if let (Some(cost), Some(price)) = (amount.cost, self.price) {
            lines.push(("cost", format!("{}, at {price}", in_cents(cost)?)));
        }
        Ok(lines)
    }

    /// The board feet and the cost of all; nothing where only one of them has any.
    fn together(&self) -> Result<Option<Vec<(&'static str, String)>>, Problem> {
        let mut lines = Vec::new();
        lines.extend(self.board_feet()?.map(|feet| ("board feet", graspable(feet))));
        lines.extend(self.cost()?.map(in_cents).transpose()?.map(|cost| ("cost", cost)));
        let without = self.without_amount();
        if !lines.is_empty() && !without.is_empty() {
            lines.push(("not counted", format!("{}: a width or a length was not said", without.join(", "))));
        }
        Ok((!lines.is_empty()).then_some(lines))
    }
}

fn what(entry: &Entry<'_>) -> String {
    let kind = entry.nominal.kind();
    match (kind, entry.actual.surface(), entry.actual.seasoning()) {
        (LumberKind::Hardwood, Some(surface), _) if !is_any_hardwood(entry) => format!("{kind}, {surface}"),
        (LumberKind::Hardwood, ..) | (_, None, _) | (_, _, None) => kind.to_string(),
        (_, Some(surface), Some(seasoning)) => format!("{kind}, {surface}, {seasoning}"),
    }
}

/// Hardwood of which nobody said how it is planed.
fn is_any_hardwood(entry: &Entry<'_>) -> bool {
    entry.nominal.kind() == LumberKind::Hardwood && entry.nominal.surface().is_none()
}

/// Five inches are just 127 mm, so a size in millimeters has a multiple of 127 below the line of its inches.
fn is_metric(size: Length) -> bool {
    size.in_unit(Unit::Inch).denom() % 127 == 0
}

/// One of it, or more.
fn feet(count: Option<Ratio<i128>>, [one, many]: [&str; 2]) -> Option<String> {
    count.map(|count| format!("{} {}", graspable(count), if count == Ratio::ONE { one } else { many }))
}

/// Exact where that can be grasped, else rounded and said to be.
fn graspable(count: Ratio<i128>) -> String {
    let about = || {
        let as_inches = Length::try_from_ratio(count, Unit::Inch).ok()?.round(Length::fraction(1, 100, Unit::Inch)).ok()?;
        let shown = LengthPrinter::new().style(Style::DecimalInches).show(as_inches).ok()?;
        Some(format!("about {}", shown.to_string().trim_end_matches('"')))
    };
    // Of millimeters no figure in feet can be grasped.
    if *count.denom() <= 1000 && count.denom() % 127 != 0 { mixed(count) } else { about().unwrap_or_else(|| mixed(count)) }
}

/// To the cent, and exactly where that is something else.
fn in_cents(cost: Money) -> Outcome {
    let rounded = cost.to_cents(RoundingMode::TiesUp).map_err(|error| Problem::plain(error.to_string()))?;
    Ok(if rounded == cost { cost.to_string() } else { format!("{rounded}, exactly {cost}") })
}

fn block(heading: &str, lines: &[(&str, String)]) -> String {
    lines.iter().fold(format!("{heading}\n"), |block, (name, figure)| format!("{block}  {name:<19}{figure}\n"))
}
