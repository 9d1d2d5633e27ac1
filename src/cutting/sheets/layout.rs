//! Panels laid out one by one, each in the corner of a piece that is left, which two cuts then set free: by many rules, the best
//! result kept. All in whole numbers, a kerf added to every panel and every sheet. How good that is, is left to `bound.rs`.

use alloc::vec::Vec;
use core::cmp::Reverse;

use crate::cutting::patience::Patience;

/// A panel to be laid out.
#[derive(Clone, Copy, Debug)]
pub(super) struct Item {
    /// Which panel of the cutting.
    pub(super) panel: usize,
    pub(super) length: u64,
    pub(super) width: u64,
    pub(super) may_be_turned: bool,
}

/// Sheets of one size.
#[derive(Clone, Copy, Debug)]
pub(super) struct Blank {
    pub(super) length: u64,
    pub(super) width: u64,
    pub(super) cost: u128,
    pub(super) limit: Option<u64>,
}

/// A piece of a sheet: where it lies and how large it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Rect {
    pub(super) along: u64,
    pub(super) across: u64,
    pub(super) length: u64,
    pub(super) width: u64,
}

impl Rect {
    pub(super) fn area(self) -> u128 {
        u128::from(self.length) * u128::from(self.width)
    }
}

#[derive(Clone, Copy, Debug)]
pub(super) struct Placed {
    pub(super) panel: usize,
    pub(super) rect: Rect,
    pub(super) is_turned: bool,
}

/// A cut through a whole piece, so far from its near edge.
#[derive(Clone, Copy, Debug)]
pub(super) struct Saw {
    pub(super) piece: Rect,
    pub(super) is_rip: bool,
    pub(super) at: u64,
}

/// A sheet as it is cut.
#[derive(Clone, Debug)]
pub(super) struct Laid {
    pub(super) blank: usize,
    pub(super) placed: Vec<Placed>,
    pub(super) cuts: Vec<Saw>,
    pub(super) free: Vec<Rect>,
}

/// How the next panel is chosen, where it goes, and which of the two cuts comes first.
#[derive(Clone, Copy)]
struct Rules {
    order: usize,
    fit: usize,
    split: usize,
    blank: usize,
}

const ORDERS: usize = 5;
const FITS: usize = 3;
const SPLITS: usize = 6;

/// The best layout by all rules; `None` when none has room for all panels. The first one is always finished.
pub(super) fn layout(items: &[Item], blanks: &[Blank], kerf: u64, enough: u128, patience: &mut Patience) -> Option<Vec<Laid>> {
    let mut best: Option<(u128, Reverse<u128>, Vec<Laid>)> = None;
    for blank in 0..blanks.len() {
        for order in 0..ORDERS {
            for (fit, split) in (0..FITS).flat_map(|fit| (0..SPLITS).map(move |split| (fit, split))) {
                if best.as_ref().is_some_and(|(cost, ..)| *cost <= enough && order > 0) || (best.is_some() && patience.is_out()) {
                    return best.map(|(.., sheets)| sheets);
                }
                let rules = Rules { order, fit, split, blank };
                let Some(sheets) = lay(items, blanks, kerf, rules, patience) else { continue };
                let cost = sheets.iter().map(|sheet| blanks[sheet.blank].cost).sum();
                // Of two that cost the same, the one that leaves the larger piece.
                let largest = sheets.iter().flat_map(|sheet| &sheet.free).map(|rect| rect.area()).max().unwrap_or(0);
                if best.as_ref().is_none_or(|(least, most, _)| (cost, Reverse(largest)) < (*least, *most)) {
                    best = Some((cost, Reverse(largest), sheets));
                }
            }
        }
    }
    best.map(|(.., sheets)| sheets)
}

fn lay(items: &[Item], blanks: &[Blank], kerf: u64, rules: Rules, patience: &mut Patience) -> Option<Vec<Laid>> {
    let mut sheets: Vec<Laid> = Vec::new();
    for item in ordered(items, rules.order) {
        let _ = patience.spend(1 + sheets.iter().map(|sheet| sheet.free.len() as u64).sum::<u64>());
        let (sheet, free, is_turned) = if let Some(spot) = spot(&sheets, &item, rules.fit) {
            spot
        } else {
            let is_turned = open(&mut sheets, blanks, &item, rules.blank)?;
            (sheets.len() - 1, 0, is_turned)
        };
        place(&mut sheets[sheet], free, &item, is_turned, kerf, rules.split);
    }
    Some(sheets)
}

/// The largest first, by one of several measures.
fn ordered(items: &[Item], order: usize) -> Vec<Item> {
    let mut items = items.to_vec();
    items.sort_by_key(|item| {
        let (length, width) = (u128::from(item.length), u128::from(item.width));
        Reverse(match order {
            0 => (length * width, length),
            1 => (length.max(width), length.min(width)),
            2 => (width, length),
            3 => (length, width),
            _ => (length + width, length),
        })
    });
    items
}

/// Where a panel fits best on the sheets in use: which sheet, which piece of it, and whether turned.
fn spot(sheets: &[Laid], item: &Item, fit: usize) -> Option<(usize, usize, bool)> {
    let mut best: Option<(u128, (usize, usize, bool))> = None;
    for (sheet, laid) in sheets.iter().enumerate() {
        for (free, rect) in laid.free.iter().enumerate() {
            for is_turned in turns(item) {
                let (length, width) = sides(item, is_turned);
                if length > rect.length || width > rect.width {
                    continue;
                }
                let (along, across) = (rect.length - length, rect.width - width);
                let badness = match fit {
                    0 => rect.area(),
                    1 => u128::from(along.min(across)),
                    _ => u128::from(along.max(across)),
                };
                if best.is_none_or(|(least, _)| badness < least) {
                    best = Some((badness, (sheet, free, is_turned)));
                }
            }
        }
    }
    best.map(|(_, spot)| spot)
}

pub(super) fn turns(item: &Item) -> impl Iterator<Item = bool> {
    [false, true].into_iter().filter(|is_turned| !is_turned || item.may_be_turned)
}

pub(super) fn sides(item: &Item, is_turned: bool) -> (u64, u64) {
    if is_turned { (item.width, item.length) } else { (item.length, item.width) }
}

/// Takes a new sheet: the preferred one if the panel fits on it and one is there, else the one that costs least for its area.
fn open(sheets: &mut Vec<Laid>, blanks: &[Blank], item: &Item, preferred: usize) -> Option<bool> {
    let fits = |blank: &Blank| {
        turns(item).find(|is_turned| {
            let (length, width) = sides(item, *is_turned);
            length <= blank.length && width <= blank.width
        })
    };
    let is_there = |index: usize| {
        let used = sheets.iter().filter(|sheet| sheet.blank == index).count() as u64;
        blanks[index].limit.is_none_or(|limit| used < limit)
    };
    let fitting = (0..blanks.len()).filter(|index| fits(&blanks[*index]).is_some() && is_there(*index));
    let area = |blank: &Blank| u128::from(blank.length) * u128::from(blank.width);
    let blank = fitting.min_by(|a, b| {
        let share = (blanks[*a].cost * area(&blanks[*b])).cmp(&(blanks[*b].cost * area(&blanks[*a])));
        (*a != preferred).cmp(&(*b != preferred)).then(share)
    })?;
    let Blank { length, width, .. } = blanks[blank];
    let free = Vec::from([Rect { along: 0, across: 0, length, width }]);
    sheets.push(Laid { blank, placed: Vec::new(), cuts: Vec::new(), free });
    fits(&blanks[blank])
}

/// Puts a panel in the near corner of a piece, and cuts it free.
fn place(sheet: &mut Laid, free: usize, item: &Item, is_turned: bool, kerf: u64, split: usize) {
    let piece = sheet.free.swap_remove(free);
    let (length, width) = sides(item, is_turned);
    let (along, across) = (piece.length - length, piece.width - width);
    let is_rip_first = match split {
        0 => along < across,
        1 => along >= across,
        2 => u128::from(length) * u128::from(across) < u128::from(along) * u128::from(width),
        3 => u128::from(length) * u128::from(across) >= u128::from(along) * u128::from(width),
        4 => true,
        _ => false,
    };
    // After the first cut, the second one goes through what holds the panel.
    let strip = if is_rip_first { Rect { width, ..piece } } else { Rect { length, ..piece } };
    for (piece, is_rip) in [(piece, is_rip_first), (strip, !is_rip_first)] {
        let (at, rest) = if is_rip { (width, across) } else { (length, along) };
        if rest == 0 {
            continue;
        }
        sheet.cuts.push(Saw { piece, is_rip, at });
        // No more than a kerf is dust.
        if rest > kerf {
            sheet.free.push(if is_rip {
                Rect { across: piece.across + at, width: rest, ..piece }
            } else {
                Rect { along: piece.along + at, length: rest, ..piece }
            });
        }
    }
    let rect = Rect { length, width, ..piece };
    sheet.placed.push(Placed { panel: item.panel, rect, is_turned });
}

#[cfg(test)]
mod tests;
