//! The doors and drawers of a case, and the place that it is built for.

use core::convert::Infallible;

use super::error::Refusal;
use super::object::object;
use super::word::kinds;
use crate::casework::{FrontKind, FrontSet, Mount, Site};
use crate::length::Length;
use crate::spacing::Growth;

kinds!(Fronted, "a kind of fronts", 0 Doors "doors", 1 Drawers "drawers");
kinds!(Mounted, "a mount of fronts", 0 Inset "inset", 1 Overlay "overlay");

object!(Mount, "a mount of fronts", of_mount, to_mount, kind: Mounted, past: Option<Length>, gap: Length);

const fn of_mount(mount: &Mount) -> (Mounted, Option<Length>, Length) {
    match *mount {
        Mount::Inset { gap } => (Mounted::Inset, None, gap),
        Mount::Overlay { past, gap } => (Mounted::Overlay, Some(past), gap),
    }
}

fn to_mount(kind: Mounted, past: Option<Length>, gap: Length) -> Result<Mount, Refusal> {
    match (kind, past) {
        (Mounted::Inset, None) => Ok(Mount::Inset { gap }),
        (Mounted::Overlay, Some(past)) => Ok(Mount::Overlay { past, gap }),
        (kind, _) => Err(kind.refused()),
    }
}

object! {
    FrontSet, "the fronts of a case", of_set, to_set,
    kind: Fronted, count: u32, growth: Option<Growth>, mount: Mount, stock: Length
}

const fn of_set(set: &FrontSet) -> (Fronted, u32, Option<Growth>, Mount, Length) {
    match set.kind {
        FrontKind::Doors(across) => (Fronted::Doors, across, None, set.mount, set.stock),
        FrontKind::Drawers(rows, growth) => (Fronted::Drawers, rows, Some(growth), set.mount, set.stock),
    }
}

fn to_set(kind: Fronted, count: u32, growth: Option<Growth>, mount: Mount, stock: Length) -> Result<FrontSet, Refusal> {
    match (kind, growth) {
        (Fronted::Doors, None) => Ok(FrontSet::doors(count, mount, stock)),
        (Fronted::Drawers, growth) => Ok(FrontSet::drawers(count, growth.unwrap_or(Growth::Step(Length::ZERO)), mount, stock)),
        (kind, _) => Err(kind.refused()),
    }
}

type SiteParts = (Option<[Length; 3]>, Option<[Length; 2]>, Option<[Length; 2]>, Option<Length>);

object! {
    Site, "a place for a case", of_site,
    |widths, scribes: Option<[Length; 2]>, floor: Option<[Length; 2]>, ceiling| {
        let open = Site::OPEN;
        let (scribes, floor) = (scribes.unwrap_or(open.scribes), floor.unwrap_or(open.floor));
        Ok::<_, Infallible>(Site { widths, scribes, floor, ceiling, ..open })
    },
    widths: Option<[Length; 3]>, scribes: Option<[Length; 2]>, floor: Option<[Length; 2]>, ceiling: Option<Length>
}

const fn of_site(site: &Site) -> SiteParts {
    (site.widths, Some(site.scribes), Some(site.floor), site.ceiling)
}
