//! The doors and drawer fronts of a case: the openings they lie before, their lines in the cut list, the pole of drawer fronts,
//! and that they fill what they cover. What was asked for is left to `front_set.rs`.

use alloc::format;
use alloc::vec::Vec;

use super::case::Case;
use super::closing::Closing;
use super::error::CaseworkError;
use super::front_set::{FrontKind, FrontSet};
use super::fronts::{Fronts, Mount, shared};
use super::part::{CasePart, Pieces};
use super::sum::Sum;
use crate::length::Length;
use crate::pole::{Datum, Mark, PartSide, StoryPole};

/// Openings of one size, and the fronts before each.
struct Fronted {
    openings: u32,
    width: Length,
    height: Length,
    fronts: Fronts,
}

impl Case {
    /// The openings that fronts lie before, those of one width together.
    fn fronted(&self, set: FrontSet) -> Result<Vec<Fronted>, CaseworkError> {
        let mut groups: Vec<Fronted> = Vec::new();
        for opening in self.front_openings()? {
            let (width, height) = (opening.width()?, opening.height()?);
            match groups.iter_mut().find(|group| group.width == width) {
                Some(group) => group.openings += 1,
                None => groups.push(Fronted { openings: 1, width, height, fronts: set.before(width, height)? }),
            }
        }
        Ok(groups)
    }

    pub(super) fn front_parts(&self) -> Result<Vec<CasePart>, CaseworkError> {
        let Some(set) = self.fronts else { return Ok(Vec::new()) };
        let mut parts = Vec::new();
        for group in self.fronted(set)? {
            parts.extend(lines(set, &group)?);
        }
        Ok(parts)
    }

    /// Where each drawer front lies, from the lower edge of the opening, or of the lowest front where this covers it.
    pub(super) fn front_pole(&self) -> Result<Option<StoryPole>, CaseworkError> {
        let Some(set @ FrontSet { kind: FrontKind::Drawers(2.., _), .. }) = self.fronts else { return Ok(None) };
        let Some(Fronted { height, fronts, .. }) = self.fronted(set)?.into_iter().next() else { return Ok(None) };
        let (from, mut lower, length) = match set.mount {
            Mount::Inset { gap } => ("from the lower edge of the opening", gap, height),
            Mount::Overlay { .. } => ("from the lower edge of the lowest front", Length::ZERO, fronts.run),
        };
        let mut marks = Vec::new();
        for (number, high) in fronts.heights.into_iter().enumerate() {
            marks.push(Mark::new(lower, format!("drawer front {}", number + 1), PartSide::Past).thick(high));
            lower = lower.checked_add(high).and_then(|upper| upper.checked_add(fronts.gap)).ok_or(CaseworkError::TooLarge)?;
        }
        Ok(Some(StoryPole::new("drawer fronts", length).measured_from(Datum::Bottom).row(from, marks)?))
    }

    /// That the fronts before each width of opening, as they are cut, fill it with their gaps, or what they cover of it.
    pub(super) fn close_fronts(&self, parts: &[CasePart]) -> Result<Vec<Closing>, CaseworkError> {
        let Some(set) = self.fronts else { return Ok(Vec::new()) };
        let mut fronts = parts.iter().filter(|part| [DOOR, DRAWER].contains(&part.name()));
        let mut closings = Vec::new();
        for group in self.fronted(set)? {
            let lines: Vec<&CasePart> = fronts.by_ref().take(lines(set, &group)?.len()).collect();
            let mut each = Vec::new();
            for part in lines {
                let before_one = part.pieces().count() / u64::from(group.openings);
                let size = (part.name(), part.width().total()?, part.length().total()?);
                each.extend((0..before_one).map(|_| size));
            }
            let widths = || each.iter().map(|(name, width, _)| (*name, *width)).collect();
            let lengths = || each.iter().map(|(name, _, length)| (*name, *length)).collect::<Vec<_>>();
            let one = || lengths().into_iter().take(1).collect();
            let (across, up) = match set.kind {
                FrontKind::Doors(_) => (widths(), one()),
                FrontKind::Drawers(..) => (one(), widths()),
            };
            closings.push(closed("width across the fronts", group.width, set.mount, across)?);
            closings.push(closed("height over the fronts", group.height, set.mount, up)?);
        }
        Ok(closings)
    }
}

pub(super) const DOOR: &str = "door";
pub(super) const DRAWER: &str = "drawer front";

/// What stands in the cut list for openings of one size.
fn lines(set: FrontSet, group: &Fronted) -> Result<Vec<CasePart>, CaseworkError> {
    match set.kind {
        FrontKind::Doors(across) => Ok(Vec::from([door(set, group, across)?])),
        FrontKind::Drawers(..) => Ok(drawer_fronts(set, group)),
    }
}

fn door(set: FrontSet, group: &Fronted, across: u32) -> Result<CasePart, CaseworkError> {
    let pieces = Pieces::Alike(across.checked_mul(group.openings).ok_or(CaseworkError::TooLarge)?);
    let length = shared(set.mount, group.height, 1);
    let part = CasePart::new(DOOR, pieces, set.stock, group.fronts.width.clone(), length);
    Ok(fitted(set.mount, part).showing("front face, all edges"))
}

/// One line for each height: the grain of a drawer front runs from side to side.
fn drawer_fronts(set: FrontSet, group: &Fronted) -> Vec<CasePart> {
    let heights = &group.fronts.heights;
    let are_equal = heights.iter().all(|height| Some(height) == heights.first());
    let rows = u32::try_from(heights.len()).unwrap_or(u32::MAX);
    let width = |height: Length| {
        if are_equal { shared(set.mount, group.height, rows) } else { Sum::of("graduated share of the height", height) }
    };
    let mut parts: Vec<CasePart> = Vec::new();
    let mut last = None;
    for height in heights {
        let same = parts.last_mut().filter(|_| last == Some(*height));
        if let Some(CasePart { pieces: Pieces::Alike(count), .. }) = same {
            *count = count.saturating_add(group.openings);
            continue;
        }
        let part = CasePart::new(DRAWER, Pieces::Alike(group.openings), set.stock, width(*height), group.fronts.width.clone());
        parts.push(fitted(set.mount, part).showing("front face, all edges"));
        last = Some(*height);
    }
    parts
}

fn fitted(mount: Mount, part: CasePart) -> CasePart {
    if matches!(mount, Mount::Inset { .. }) { part.panel().inside() } else { part.panel() }
}

/// Fronts with a gap between each two, and where they are inset, one at each end.
fn closed(
    what: &'static str,
    opening: Length,
    mount: Mount,
    fronts: Vec<(&'static str, Length)>,
) -> Result<Closing, CaseworkError> {
    let (gap, past) = (mount.gap(), mount.past().max(Length::ZERO));
    let whole = past.checked_mul(2).and_then(|past| past.checked_add(opening)).ok_or(CaseworkError::TooLarge)?;
    let at_ends = (-mount.past()).max(Length::ZERO);
    let mut links = Vec::from([("gap", at_ends)]);
    for (place, front) in fronts.into_iter().enumerate() {
        links.extend((place > 0).then_some(("gap", gap)));
        links.push(front);
    }
    links.push(("gap", at_ends));
    Closing::new(what, whole, links)
}
