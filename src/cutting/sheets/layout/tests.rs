//! Each rule by itself, on rectangles chosen so that every other rule decides otherwise, and the choice among all layouts against all
//! of them made one by one. All worked by hand.

use core::cmp::Reverse;
use std::format;
use std::vec::Vec;

use super::{Blank, FITS, Item, Laid, ORDERS, Rect, Rules, SPLITS, lay, layout, open, ordered, place, spot};
use crate::cutting::patience::Patience;

fn item(panel: usize, length: u64, width: u64) -> Item {
    Item { panel, length, width, may_be_turned: false }
}

fn blank(length: u64, width: u64, cost: u128) -> Blank {
    Blank { length, width, cost, limit: None }
}

/// A sheet with pieces of such sizes; where they lie makes no difference.
fn sheet(pieces: &[(u64, u64)]) -> Laid {
    let free = pieces.iter().map(|(length, width)| Rect { along: 0, across: 0, length: *length, width: *width });
    Laid { blank: 0, placed: Vec::new(), cuts: Vec::new(), free: free.collect() }
}

#[test]
fn orders() {
    let items = [(10, 10), (4, 24), (16, 7), (20, 5), (15, 15)];
    let items: Vec<Item> = (0..).zip(items).map(|(panel, (length, width))| item(panel, length, width)).collect();
    // By area 225, 112, 100 twice with the longer first, 96; by the longer side; by width; by length; by both together.
    let wanted = [[4, 2, 3, 0, 1], [1, 3, 2, 4, 0], [1, 4, 0, 2, 3], [3, 2, 4, 0, 1], [4, 1, 3, 2, 0]];
    for (order, wanted) in wanted.into_iter().enumerate() {
        assert_eq!(ordered(&items, order).iter().map(|item| item.panel).collect::<Vec<_>>(), wanted, "{order}");
    }
}

/// Where a panel of 2 x 2 goes.
#[test]
fn fits() {
    for (fit, pieces, wanted) in [
        // The smaller area, whatever the sum or the share of the sides is.
        (0, [(10, 10), (3, 30)], 1),
        (0, [(30, 10), (50, 5)], 1),
        // The least left on one side: 2 and 3, 1 and 3 along, 1 and 3 across, 6 and 7.
        (1, [(10, 5), (20, 4)], 1),
        (1, [(6, 5), (3, 20)], 1),
        (1, [(5, 6), (20, 3)], 1),
        (1, [(20, 9), (8, 20)], 1),
        // The least left on the other: 8 and 18.
        (2, [(20, 4), (10, 5)], 1),
        // Of two alike the first.
        (0, [(9, 9), (9, 9)], 0),
        (1, [(9, 9), (9, 9)], 0),
    ] {
        assert_eq!(spot(&[sheet(&pieces)], &item(0, 2, 2), fit), Some((0, wanted, false)), "{fit}: {pieces:?}");
    }
    assert_eq!(spot(&[sheet(&[(10, 1), (1, 10)])], &item(0, 2, 2), 0), None);
}

/// Whether the first cut is a rip, from a piece of 10 x 10.
#[test]
fn splits() {
    for (split, length, width, is_rip) in [
        // Less is left along than across, 2 and 5; as much.
        (0, 8, 5, true),
        (0, 5, 5, false),
        (1, 5, 5, true),
        (1, 8, 5, false),
        // What is left beside the panel is smaller than what is left behind it: 10 and 40, 30 and 20, 16 and 36, 25 twice.
        (2, 5, 8, true),
        (2, 6, 5, false),
        (2, 4, 6, true),
        (2, 5, 5, false),
        (3, 6, 5, true),
        (3, 4, 6, false),
        (3, 5, 5, true),
        (4, 5, 8, true),
        (4, 8, 5, true),
        (5, 5, 8, false),
        (5, 8, 5, false),
    ] {
        let mut sheet = sheet(&[(10, 10)]);
        place(&mut sheet, 0, &item(0, length, width), false, 0, split);
        assert_eq!(sheet.cuts[0].is_rip, is_rip, "{split}: {length} x {width}");
    }
}

/// A panel that the first sheet is too small for takes what costs least for its area.
#[test]
fn sheets_to_open() {
    for (blanks, wanted) in [
        // 30 for 1600 and 20 for 700; 30 for 300 and for 400.
        ([blank(1, 1, 1), blank(40, 40, 30), blank(10, 70, 20)], 1),
        ([blank(1, 1, 1), blank(30, 10, 30), blank(20, 20, 30)], 2),
    ] {
        let mut sheets = Vec::new();
        assert_eq!(open(&mut sheets, &blanks, &item(0, 10, 10), 0), Some(false));
        assert_eq!(sheets[0].blank, wanted);
    }
}

/// The cost of a layout and its largest piece, the larger the better.
fn goodness(sheets: &[Laid], blanks: &[Blank]) -> (u128, Reverse<u64>) {
    let pieces = sheets.iter().flat_map(|sheet| &sheet.free);
    let largest = pieces.map(|rect| rect.length * rect.width).max().unwrap_or(0);
    (sheets.iter().map(|sheet| blanks[sheet.blank].cost).sum(), Reverse(largest))
}

fn layouts(items: &[Item], blanks: &[Blank], orders: usize) -> Vec<Laid> {
    let rules = (0..orders).flat_map(|order| (0..FITS).map(move |fit| (order, fit)));
    let rules = rules.flat_map(|(order, fit)| (0..SPLITS).map(move |split| Rules { order, fit, split, blank: 0 }));
    let made = rules.filter_map(|rules| lay(items, blanks, 1, rules, &mut Patience::new(0, &|| true)));
    made.min_by_key(|sheets| goodness(sheets, blanks)).unwrap()
}

/// The first of the best by all rules; by the first order alone where that is good enough; by the first rules alone without patience.
#[test]
fn the_best_of_all_layouts() {
    let (mut random, mut differ) = (7919_u64, [0, 0]);
    let mut between = |least: u64, most: u64| {
        random = (random ^ (random << 13)) & 0xffff_ffff;
        random ^= random >> 17;
        random = (random ^ (random << 5)) & 0xffff_ffff;
        least + random % (most - least + 1)
    };
    let blanks = [blank(60, 40, 1)];
    for _ in 0..40 {
        let items: Vec<Item> = (0..8).map(|panel| item(panel, between(8, 40), between(6, 30))).collect();
        let told =
            |enough, steps| format!("{:?}", layout(&items, &blanks, 1, enough, &mut Patience::new(steps, &|| true)).unwrap());
        let first =
            lay(&items, &blanks, 1, Rules { order: 0, fit: 0, split: 0, blank: 0 }, &mut Patience::new(0, &|| true)).unwrap();
        let [by_area, by_all] = [1, ORDERS].map(|orders| layouts(&items, &blanks, orders));
        let good_enough = goodness(&by_area, &blanks).0;
        assert_eq!(told(good_enough, u64::MAX), format!("{by_area:?}"));
        assert_eq!(told(0, u64::MAX), format!("{by_all:?}"));
        assert_eq!(told(0, 0), format!("{first:?}"));
        differ[0] += usize::from(format!("{by_area:?}") != format!("{by_all:?}"));
        differ[1] += usize::from(format!("{first:?}") != format!("{by_area:?}"));
    }
    assert!(differ[0] > 10 && differ[1] > 10, "{differ:?}");
}
