//! A plan for sheets on paper: each sheet drawn, a box to tick for every cut in its order, the panels and what is left. The same as
//! one JSON object.

use std::fmt::Write as _;

use scantling::{CutSheet, Length, PanelPlace, PlanCost, SheetPlan, Unit, Way};
use serde_json::{Value, json};

use super::CAUTION;
use super::heading::{each, money};
use crate::arguments::Round;
use crate::problem::Problem;
use crate::table::table;
use crate::words::{Bench, mixed};
use crate::{Outcome, json};

/// All that the answer is made from.
pub struct SheetReport<'a> {
    pub plan: &'a SheetPlan,
    pub bench: Bench,
    pub kerf: Length,
    pub trim: Length,
    pub round: Round,
}

impl SheetReport<'_> {
    pub fn text(&self) -> Outcome {
        let mut text = self.heading();
        for (number, sheet) in (1..).zip(self.plan.sheets()) {
            text += &self.sheet(number, sheet)?;
        }
        let unit = if self.bench.is_metric() { Unit::Meter } else { Unit::Foot };
        let area = |area: scantling::Area| {
            let count = area.checked_in_square(unit).map_or_else(|| area.to_string(), mixed);
            format!("{count} square {}", if unit == Unit::Foot { "feet" } else { "meters" })
        };
        let (bought, used, waste) = (area(self.plan.bought()), area(self.plan.used()), area(self.plan.waste()));
        Ok(format!("{text}\nSheets   {bought}\nPanels   {used}\nLeft     {waste}, trim and dust in it\n\n{CAUTION}\n"))
    }

    fn heading(&self) -> String {
        let (plan, bench) = (self.plan, self.bench);
        let panels: u64 = plan.panels().iter().map(|panel| panel.count).sum();
        let mut text = format!("Panels   {panels}\nKerf     {} between panels\n", bench.mark(self.kerf));
        if !self.trim.is_zero() {
            let _ = writeln!(text, "Trim     {} off every edge first, saw cuts included", bench.mark(self.trim));
        }
        let (least, bound) = (cost(plan.cost()), cost(plan.bound()));
        let _ = if plan.is_optimal() {
            writeln!(text, "Plan     {least}; no plan takes less (proved)")
        } else {
            writeln!(text, "Plan     {least}; whether it can be done with less is not known, but not with less than {bound}")
        };
        let _ = writeln!(text, "Tape     {}\n\nTake", bench.tape_in_words(self.round));
        for (sheet, count) in plan.taken().filter(|(_, count)| *count > 0) {
            let price = each(sheet.price);
            let _ = writeln!(text, "  [ ] {count} of {}, {}{price}", sheet.name, self.size(sheet.length, sheet.width));
        }
        text += "\nEvery cut goes from edge to edge of the piece it cuts. The mark is measured on that piece: from its near\n\
                 edge (below) for a rip, along the grain, from its near end (left) for a crosscut. The kerf lies past the mark.\n";
        text
    }

    fn size(&self, length: Length, width: Length) -> String {
        [length, width].map(|side| self.bench.measured(side, Bench::mark)).join(" x ")
    }

    fn place(&self, place: &PanelPlace) -> String {
        self.size(place.length, place.width)
    }

    fn sheet(&self, number: usize, cut: &CutSheet) -> Outcome {
        let sheet = self.plan.sheet(cut);
        let mut text = format!("\nSheet {number}: {}, {}", sheet.name, self.size(sheet.length, sheet.width));
        if cut.times > 1 {
            let _ = write!(text, "; cut {} like this", cut.times);
        }
        let _ = write!(text, "\n\n{}\n{}", self.plan.sketch(cut), self.cuts(cut)?);
        let rows = cut.panels.iter().map(|placed| {
            let turned = if placed.is_turned { "turned" } else { "" };
            let (number, name) = ((placed.panel + 1).to_string(), self.plan.panel(placed).name.clone());
            ["[ ]".to_owned(), number, name, self.place(&placed.place), turned.to_owned()]
        });
        let _ = write!(text, "\n{}", table(["", "", "panel", "length x width", ""], ['l', 'r', 'l', 'l', 'l'], rows));
        let left: Vec<_> = cut.offcuts.iter().map(|place| self.place(place)).collect();
        let left = if left.is_empty() { "nothing".to_owned() } else { left.join(", ") };
        let _ = writeln!(text, "Left: {left}.");
        Ok(text)
    }

    fn cuts(&self, cut: &CutSheet) -> Outcome {
        let readings = cut.cuts.iter().map(|cut| self.bench.tape.read(cut.at)).collect::<Result<Vec<_>, _>>();
        let readings = readings.map_err(|error| Problem::plain(error.to_string()))?;
        let marks = self.bench.marks(readings.iter().map(scantling::Reading::shown));
        let rows = cut.cuts.iter().zip(&readings).zip(marks).enumerate().map(|(number, ((cut, reading), mark))| {
            let way = if cut.way == Way::Rip { "rip" } else { "crosscut" };
            let number = (number + 1).to_string();
            ["[ ]".to_owned(), number, way.to_owned(), mark, self.bench.lean(reading), self.place(&cut.piece)]
        });
        let heading = ["", "cut", "", "at", "true place is", "of the piece"];
        Ok(table(heading, ['l', 'r', 'l', 'r', 'l', 'l'], rows))
    }

    pub fn object(&self) -> Result<Value, Problem> {
        let plan = self.plan;
        let taken = plan.taken().filter(|(_, count)| *count > 0).map(|(sheet, count)| {
            let price = sheet.price.map(|price| price.to_string());
            json!({ "name": sheet.name, "length": self.words(sheet.length), "width": self.words(sheet.width), "count": count, "price": price })
        });
        let sheets = plan.sheets().iter().map(|cut| self.sheet_object(cut));
        Ok(json!({
            "cost": cost_object(plan.cost()),
            "bound": cost_object(plan.bound()),
            "optimal": plan.is_optimal(),
            "kerf": self.words(self.kerf),
            "take": taken.collect::<Vec<_>>(),
            "sheets": sheets.collect::<Result<Vec<_>, _>>()?,
            "caution": CAUTION.replace('\n', " "),
        }))
    }

    fn sheet_object(&self, cut: &CutSheet) -> Result<Value, Problem> {
        let panels = cut.panels.iter().map(|placed| {
            let name = &self.plan.panel(placed).name;
            json!({ "panel": name, "turned": placed.is_turned, "place": self.place_object(&placed.place) })
        });
        let cuts = cut.cuts.iter().map(|cut| {
            let way = if cut.way == Way::Rip { "rip" } else { "crosscut" };
            let at = json::length(cut.at, self.bench)?;
            Ok::<_, Problem>(json!({ "way": way, "at": at, "piece": self.place_object(&cut.piece) }))
        });
        let offcuts = cut.offcuts.iter().map(|place| self.place_object(place));
        Ok(json!({
            "sheet": self.plan.sheet(cut).name,
            "times": cut.times,
            "panels": panels.collect::<Vec<_>>(),
            "cuts": cuts.collect::<Result<Vec<_>, _>>()?,
            "offcuts": offcuts.collect::<Vec<_>>(),
        }))
    }

    fn place_object(&self, place: &PanelPlace) -> Value {
        json!({
            "along": self.words(place.along),
            "across": self.words(place.across),
            "length": self.words(place.length),
            "width": self.words(place.width),
        })
    }

    fn words(&self, length: Length) -> String {
        json::in_words(length, self.bench)
    }
}

fn cost(cost: PlanCost) -> String {
    match cost {
        PlanCost::Price(price) => format!("a price of {}", money(price)),
        other => other.to_string(),
    }
}

fn cost_object(cost: PlanCost) -> Value {
    match cost {
        PlanCost::Sheets(count) => json!({ "sheets": count }),
        PlanCost::Price(price) => json!({ "price": price.to_string() }),
        other => json!({ "area": other.to_string() }),
    }
}
