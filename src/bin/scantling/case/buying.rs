//! What to buy: panels laid out on sheets of each thickness, all else cut from boards of each width. The plans are left to
//! the library; `scantling cut` shows one with every mark.

use scantling::{Advice, CasePart, Cutting, Length, LengthParser, Panel, Part, Sheet, SheetCutting, Stock};

use super::arguments::BuyOptions;
use super::total;
use crate::problem::{self, Problem};

/// Steps to look for a better plan: a moment, on any machine the same.
const PATIENCE: u64 = 100_000;

/// What stands below boards, whose sizes are those of their parts.
pub const FINISHED: &str = "Boards stand by their finished sizes: buy them thicker and wider, to be planed and ripped.";

/// Sheets or boards of one section.
pub struct Bought {
    pub thickness: Length,
    /// Of a board; a sheet's is in its size.
    pub width: Option<Length>,
    /// Panels of solid wood, which few boards are wide enough for.
    pub is_glued_up: bool,
    pub parts: Vec<String>,
    /// What to take, or why no plan was found.
    pub plan: Result<Take, String>,
}

impl Bought {
    /// Whether it is planed and ripped to its size; a molding is as it is bought.
    pub fn is_ripped(&self) -> bool {
        self.width.is_some_and(|width| !width.is_zero())
    }
}

pub struct Take {
    /// How many, and how long and, of a sheet, how wide each is.
    pub pieces: Vec<(u64, Length, Option<Length>)>,
    pub is_least: bool,
}

/// What is cut from, and by which saw.
pub struct Saw {
    kerf: Length,
    sheet: (Length, Length),
    boards: Vec<Length>,
    /// Panels of solid wood.
    solid: Vec<String>,
}

impl Saw {
    pub fn new(options: &BuyOptions, solid: &[String], parser: LengthParser) -> Result<Self, Problem> {
        let text = &options.from_sheets;
        let size = problem::read_size(parser, "--from-sheets", text)?;
        let mut sides = size.lengths().iter().map(scantling::Dimension::length);
        let (Some(length), Some(width), None) = (sides.next(), sides.next(), sides.next()) else {
            return Err(Problem::plain(format!("--from-sheets: {text} has no length and width alone")).hint("write 96x48"));
        };
        let boards = options.from_boards.iter().map(|text| problem::read(parser, "--from-boards", text));
        Ok(Self {
            kerf: problem::read_kerf(parser, &options.kerf)?,
            sheet: (length, width),
            boards: boards.collect::<Result<_, _>>()?,
            solid: solid.to_vec(),
        })
    }

    pub fn is_solid(&self, part: &CasePart) -> bool {
        !part.is_panel() || self.solid.iter().any(|solid| solid == part.name())
    }

    /// Whether a part is cut from a sheet with its grain across.
    pub fn turns(&self, part: &CasePart) -> bool {
        !self.is_solid(part) && part.is_turned_on(self.sheet.0, self.sheet.1)
    }

    /// What speaks against cutting a part from what there is.
    pub fn advice(&self, part: &CasePart) -> Vec<Advice> {
        if self.is_solid(part) {
            return self.boards.iter().max().and_then(|longest| part.advice_on_board(*longest)).into_iter().collect();
        }
        part.advice_on_sheet(self.sheet.0, self.sheet.1)
    }
}

pub fn buying(parts: &[CasePart], saw: &Saw) -> Result<Vec<Bought>, Problem> {
    let mut groups: Vec<(Length, Option<Length>, Vec<&CasePart>)> = Vec::new();
    for part in parts {
        let width = if saw.is_solid(part) { Some(total(part.sawn_width())?) } else { None };
        match groups.iter_mut().find(|group| (group.0, group.1) == (part.thickness(), width)) {
            Some(group) => group.2.push(part),
            None => groups.push((part.thickness(), width, vec![part])),
        }
    }
    groups.into_iter().map(|(thickness, width, parts)| bought(thickness, width, &parts, saw)).collect()
}

fn bought(thickness: Length, width: Option<Length>, parts: &[&CasePart], saw: &Saw) -> Result<Bought, Problem> {
    let plan = if width.is_none() { sheets(parts, saw)? } else { boards(parts, saw)? };
    let is_glued_up = width.is_some() && parts.iter().any(|part| part.is_panel());
    let mut counts: Vec<(u64, &str)> = Vec::new();
    for part in parts {
        match counts.iter_mut().find(|(_, name)| *name == part.name()) {
            Some((count, _)) => *count += part.pieces().count(),
            None => counts.push((part.pieces().count(), part.name())),
        }
    }
    let parts = counts.into_iter().map(|(count, name)| format!("{count} x {name}")).collect();
    Ok(Bought { thickness, width, is_glued_up, parts, plan })
}

fn sheets(parts: &[&CasePart], saw: &Saw) -> Result<Result<Take, String>, Problem> {
    let (length, width) = saw.sheet;
    let mut cutting = SheetCutting::new().kerf(saw.kerf).sheet(Sheet::new("sheet", length, width)).patience(PATIENCE);
    for part in parts {
        let (length, width) = (total(part.length())?, total(part.sawn_width())?);
        let panel = Panel::new(part.name(), length, width, part.pieces().count());
        cutting = cutting.panel(if saw.turns(part) { panel.turnable() } else { panel });
    }
    let take = cutting.plan().map(|plan| Take {
        pieces: plan.taken().map(|(sheet, count)| (count, sheet.length, Some(sheet.width))).collect(),
        is_least: plan.is_optimal(),
    });
    Ok(take.map_err(|error| error.to_string()))
}

fn boards(parts: &[&CasePart], saw: &Saw) -> Result<Result<Take, String>, Problem> {
    let mut cutting = Cutting::new().kerf(saw.kerf).patience(PATIENCE);
    for part in parts {
        cutting = cutting.part(Part::new(part.name(), total(part.length())?, part.pieces().count()));
    }
    for length in &saw.boards {
        cutting = cutting.stock(Stock::new("board", *length));
    }
    let take = cutting.plan().map(|plan| Take {
        pieces: plan.taken().filter(|(_, count)| *count > 0).map(|(stock, count)| (count, stock.length, None)).collect(),
        is_least: plan.is_optimal(),
    });
    Ok(take.map_err(|error| error.to_string()))
}
