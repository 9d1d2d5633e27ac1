//! What is left of a board, and how many pieces it gives, where every kerf counts: printed problems, against `data/kerf_problems.csv`.
//!
//! Sources, as named in the file: ETM is Ewen and Nelson, "Elementary Technical Mathematics"; PLAIN, GUIDEF, HSST and SURV are
//! textbook questions and how-to pages, undated or seen without their date; DRM is the Math Forum's "Cutting equal strips", 2005; a
//! field note is a problem as it was asked in a shop.

use crate::support::saw::{Saw, check};
use crate::support::tables::{Row, figure, rows};
use scantling::{Cutting, KerfRule, Length, Part, Plan, Stock, Unit};

/// `3*17/8 2*23/4` in a row: so many pieces of so many inches.
fn pieces(row: &Row) -> Vec<Part> {
    let piece = |text: &str| {
        let (count, length) = text.split_once('*').unwrap();
        Part::new(text, figure(length), count.parse().unwrap())
    };
    row["pieces"].split(' ').map(piece).collect()
}

fn plan(row: &Row, rule: KerfRule) -> Plan {
    let saw = Saw { kerf: figure(&row["kerf"]), rule, ..Saw::default() };
    let cutting = pieces(row).into_iter().fold(saw.cutting(), Cutting::part);
    let plan = cutting.stock(Stock::new("stock", figure(&row["stock"]))).plan().unwrap();
    check(&plan, &saw);
    plan
}

/// A count where the printed answer is one.
fn count(pieces: usize) -> Length {
    Length::new(pieces.try_into().unwrap(), Unit::Inch)
}

#[test]
fn printed_problems() {
    let rows = rows("kerf_problems.csv");
    for row in &rows {
        let (id, printed) = (&row["id"], figure(&row["printed"]));
        let rule = if row["rule"] == "between" { KerfRule::Between } else { KerfRule::EachPart };
        let plan = plan(row, rule);
        match row["asked"].as_str() {
            "left" => assert_eq!((plan.board_count(), plan.boards()[0].offcut()), (1, printed), "{id}"),
            "most" => assert_eq!(count(plan.boards()[0].cuts().len()), printed, "{id}"),
            asked => panic!("{asked}"),
        }
    }
    assert_eq!(rows.len(), 11);
}

/// A kerf for each part needs another board where the last part ends with the board, and changes nothing where something is left.
#[test]
fn the_two_rules_differ_where_the_last_part_ends_the_board() {
    for row in rows("kerf_problems.csv").iter().filter(|row| row["asked"] == "left") {
        let boards = [KerfRule::Between, KerfRule::EachPart].map(|rule| plan(row, rule).board_count());
        let ends_the_board = figure(&row["printed"]).is_zero();
        assert_eq!(boards, if ends_the_board { [1, 2] } else { [1, 1] }, "{}", row["id"]);
    }
}
