//! Doors and drawers as they are typed. What they come to is left to the library.

use scantling::{Case, FrontKind, FrontSet, Growth, Length, LengthParser, Mount, Unit};

use super::arguments::FrontOptions;
use super::stock::{Named, thickness};
use super::typed::{measures, unread};
use crate::problem::{self, Problem};

/// What is not said is so: common practice, no source.
const USUAL: FrontSet =
    FrontSet::doors(1, Mount::Inset { gap: Length::fraction(1, 8, Unit::Inch) }, Length::fraction(3, 4, Unit::Inch));

pub fn fronts(case: &mut Case, options: &FrontOptions, parser: LengthParser, named: &mut Vec<Named>) -> Result<(), Problem> {
    let kind = match (options.doors, options.drawers) {
        (Some(across), _) => Some(FrontKind::Doors(across)),
        (None, Some(rows)) => Some(FrontKind::Drawers(rows, growth_of(case))),
        (None, None) => case.fronts.map(|set| set.kind),
    };
    let Some(kind) = kind else {
        let is_of_fronts = options.mount.is_some() || options.front_stock.is_some() || options.graduated.is_some();
        let lacking = Problem::plain("--mount, --front-stock and --graduated are for fronts").hint("--doors 2 or --drawers 4");
        return if is_of_fronts { Err(lacking) } else { Ok(()) };
    };
    let mut set = case.fronts.unwrap_or(USUAL);
    set.kind = kind;
    if let Some(text) = &options.graduated {
        let FrontKind::Drawers(_, growth) = &mut set.kind else {
            return Err(Problem::plain("--graduated is for drawers").hint("--drawers 4"));
        };
        *growth = graduated(text, parser)?;
    }
    if let Some(text) = &options.mount {
        set.mount = mount(text, parser)?;
    }
    if let Some(text) = &options.front_stock {
        set.stock = thickness("front-stock", text, parser, named)?;
    }
    case.fronts = Some(set);
    Ok(())
}

/// That of the drawers that are there already, else none.
fn growth_of(case: &Case) -> Growth {
    match case.fronts.map(|set| set.kind) {
        Some(FrontKind::Drawers(_, growth)) => growth,
        _ => Growth::Step(Length::ZERO),
    }
}

fn graduated(text: &str, parser: LengthParser) -> Result<Growth, Problem> {
    let length = |text| problem::read(parser, "--graduated", text);
    match text.split_once(':') {
        None => length(text).map(Growth::Step),
        Some(("top", height)) => length(height).map(Growth::Top),
        Some(("bottom", height)) => length(height).map(Growth::Bottom),
        Some(_) => Err(unread("--graduated", text, "1, top:5 or bottom:10")),
    }
}

fn mount(text: &str, parser: LengthParser) -> Result<Mount, Problem> {
    match text.split_once(':') {
        Some(("inset", gap)) => Ok(Mount::Inset { gap: problem::read(parser, "--mount", gap)? }),
        Some(("overlay", two)) if two.contains(':') => {
            let [past, gap] = measures("--mount", two, parser)?;
            Ok(Mount::Overlay { past, gap })
        }
        _ => Err(unread("--mount", text, "inset:1/8 or overlay:1/2:1/8")),
    }
}
