//! What to buy: panels laid out on sheets of each thickness, all else cut from boards of each width. The plans are left to
//! the library; `scantling cut` shows one with every mark.

use scantling::{CasePart, Cutting, Length, LengthParser, Panel, Part, Sheet, SheetCutting, Stock};

use super::arguments::BuyOptions;
use super::total;
use crate::problem::{self, Problem};

/// Parts that are cut from sheets.
const PANELS: [&str; 6] = ["side", "bottom", "top", "partition", "shelf", "back"];
/// Steps to look for a better plan: a moment, on any machine the same.
const PATIENCE: u64 = 100_000;

/// Sheets or boards of one section.
pub struct Bought {
    pub thickness: Length,
    /// Of a board; a sheet's is in its size.
    pub width: Option<Length>,
    pub parts: Vec<String>,
    /// What to take, or why no plan was found.
    pub plan: Result<Take, String>,
}

pub struct Take {
    /// How many, and how long and, of a sheet, how wide each is.
    pub pieces: Vec<(u64, Length, Option<Length>)>,
    pub is_least: bool,
}

struct Saw {
    kerf: Length,
    sheet: (Length, Length),
    boards: Vec<Length>,
}

pub fn buying(parts: &[CasePart], options: &BuyOptions, parser: LengthParser) -> Result<Vec<Bought>, Problem> {
    let saw = saw(options, parser)?;
    let mut groups: Vec<(Length, Option<Length>, Vec<&CasePart>)> = Vec::new();
    for part in parts {
        let width = if PANELS.contains(&part.name()) { None } else { Some(total(part.sawn_width())?) };
        match groups.iter_mut().find(|group| (group.0, group.1) == (part.thickness(), width)) {
            Some(group) => group.2.push(part),
            None => groups.push((part.thickness(), width, vec![part])),
        }
    }
    groups.into_iter().map(|(thickness, width, parts)| bought(thickness, width, &parts, &saw)).collect()
}

fn saw(options: &BuyOptions, parser: LengthParser) -> Result<Saw, Problem> {
    let text = &options.from_sheets;
    let size = parser.parse_size(text).map_err(|error| Problem::unread("--from-sheets", text, error))?;
    let mut sides = size.lengths().iter().map(scantling::Dimension::length);
    let (Some(length), Some(width), None) = (sides.next(), sides.next(), sides.next()) else {
        return Err(Problem::plain(format!("--from-sheets: {text} has no length and width alone")).hint("write 96x48"));
    };
    let boards = options.from_boards.iter().map(|text| problem::read(parser, "--from-boards", text));
    Ok(Saw {
        kerf: problem::read(parser, "--kerf", &options.kerf)?,
        sheet: (length, width),
        boards: boards.collect::<Result<_, _>>()?,
    })
}

fn bought(thickness: Length, width: Option<Length>, parts: &[&CasePart], saw: &Saw) -> Result<Bought, Problem> {
    let plan = if width.is_none() { sheets(parts, saw)? } else { boards(parts, saw)? };
    let parts = parts.iter().map(|part| format!("{} x {}", part.pieces().count(), part.name())).collect();
    Ok(Bought { thickness, width, parts, plan })
}

fn sheets(parts: &[&CasePart], saw: &Saw) -> Result<Result<Take, String>, Problem> {
    let (length, width) = saw.sheet;
    let mut cutting = SheetCutting::new().kerf(saw.kerf).sheet(Sheet::new("sheet", length, width)).patience(PATIENCE);
    for part in parts {
        let (length, width) = (total(part.length())?, total(part.sawn_width())?);
        cutting = cutting.panel(Panel::new(part.name(), length, width, part.pieces().count()));
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
