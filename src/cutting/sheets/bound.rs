//! What no layout costs less than: by area, and by panels of which no two fit on one sheet.

use super::layout::{Blank, Item, sides, turns};

/// The higher of the two. Kerfs count on both sides, for panels and sheets alike.
pub(super) fn bound(items: &[Item], blanks: &[Blank]) -> u128 {
    by_area(items, blanks).max(by_large_panels(items, blanks))
}

/// The area of all panels, at what the cheapest sheet costs for its area.
fn by_area(items: &[Item], blanks: &[Blank]) -> u128 {
    let area = |length: u64, width: u64| u128::from(length) * u128::from(width);
    let total: u128 = items.iter().map(|item| area(item.length, item.width)).sum();
    let cost = |blank: &Blank| (total * blank.cost).div_ceil(area(blank.length, blank.width));
    blanks.iter().map(cost).min().unwrap_or(0)
}

/// Two panels on one sheet lie on two sides of a cut. Those that are longer than half of every sheet and wider than half of it, however
/// they are turned, are never two on one sheet.
fn by_large_panels(items: &[Item], blanks: &[Blank]) -> u128 {
    let cheapest = blanks.iter().map(|blank| blank.cost).min().unwrap_or(0);
    let is_large = |item: &Item| {
        blanks.iter().all(|blank| {
            turns(item).all(|is_turned| {
                let (length, width) = sides(item, is_turned);
                length > blank.length / 2 && width > blank.width / 2
            })
        })
    };
    items.iter().filter(|item| is_large(item)).count() as u128 * cheapest
}
