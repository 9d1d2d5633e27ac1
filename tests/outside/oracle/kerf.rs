//! Pieces cut from boards with a kerf for each part or one fewer, boards that are just long enough, and boards that are not.

use csv::StringRecord;
use scantling::{Cut, Cutting, KerfRule, Length, Part, Stock};

use super::{all_inches, golden, inches};

const RULES: [(usize, KerfRule); 2] = [(5, KerfRule::Between), (6, KerfRule::EachPart)];

fn cutting(row: &StringRecord, rule: KerfRule) -> Cutting {
    let cutting = Cutting::new().kerf(inches(&row[1])).kerf_rule(rule).trim(inches(&row[2]), inches(&row[3]));
    cutting.stock(Stock::new("board", inches(&row[4])))
}

/// So many pieces go on a board, and one more does not.
fn equal_pieces(row: &StringRecord) {
    let piece = inches(&row[0]);
    for (column, rule) in RULES {
        let count: u64 = row[column].parse().unwrap();
        let boards = |count| cutting(row, rule).part(Part::new("piece", piece, count)).plan().map(|plan| plan.board_count()).ok();
        assert_eq!(boards(count.max(1)), (count > 0).then_some(1), "{rule:?}: {row:?}");
        assert_eq!(boards(count + 1), (count > 0).then_some(2), "{rule:?}: {row:?}");
    }
    let count = row[5].parse().unwrap();
    let plan = cutting(row, KerfRule::Between).part(Part::new("piece", piece, count)).plan().unwrap();
    let nears: Vec<Length> = plan.boards()[0].cuts().iter().map(Cut::near).collect();
    assert_eq!((nears, plan.boards()[0].offcut()), (all_inches(&row[7]), inches(&row[8])), "{row:?}");
}

fn fewest_boards(row: &StringRecord) {
    for (column, rule) in RULES {
        let parts = all_inches(&row[0]).into_iter().map(|length| Part::new("part", length, 1));
        let plan = parts.fold(cutting(row, rule), Cutting::part).plan().unwrap();
        assert_eq!((plan.board_count(), plan.is_optimal()), (row[column].parse().unwrap(), true), "{rule:?}: {row:?}");
    }
}

#[test]
fn every_board() {
    let rows = golden("kerf.csv");
    for row in &rows {
        if row[7].is_empty() { fewest_boards(row) } else { equal_pieces(row) }
    }
    assert_eq!(rows.len(), 515);
}
