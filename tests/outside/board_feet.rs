//! Board feet and surface measure against printed tables and worked problems in `data/`, and the rules for halves.
//!
//! Sources, as named in the files: TN.05 is Tennessee Comp. R. & Regs. 0080-07-07-.05, Table 3; ETM Ewen and Nelson,
//! "Elementary Technical Mathematics"; ICS the International Correspondence Schools, "The Building Trades Pocketbook";
//! GRIFFITH Griffith, "Carpentry"; DANFORTH "Mechanical Processes"; NAV14069, NAV14044 and EN5155 training courses of the
//! United States Navy and Army; HODGSON "ABC of the Steel Square"; NOYES "Handwork in Wood"; AHEC the American Hardwood
//! Export Council, "Measurement"; KING "Elements of Woodwork".

use crate::support::tables::{figure, rows};
use num_rational::Ratio;
use scantling::{Length, LumberError, Money, Nominal, Price, Rounding, RoundingMode, Tally, TallyRule, Unit};

fn feet(rule: TallyRule, piece: &Nominal, pieces: u32) -> Ratio<i128> {
    Tally::new(rule).add(piece, pieces).unwrap().board_feet().unwrap().checked_in_board_feet().unwrap()
}

fn ratio(cell: &str) -> Ratio<i128> {
    figure(cell).in_unit(Unit::Inch)
}

/// A length given as a plain number of feet.
fn feet_long(cell: &str) -> Length {
    figure(cell) * 12
}

#[test]
fn every_cell_of_the_printed_table() {
    let rows = rows("board_foot_table_2in.csv");
    for row in &rows {
        let piece = Nominal::softwood(figure(&row["thickness_nominal_in"]), figure(&row["width_nominal_in"]));
        let exact = feet(TallyRule::OneInchMinimum, &piece.long(feet_long(&row["length_ft"])), 1);
        assert_eq!(exact, ratio(&row["exact_bf"]), "{row:?}");
        let tenth = Length::fraction(1, 10, Unit::Inch);
        let printed = Length::try_from_ratio(exact, Unit::Inch).unwrap().round(tenth).unwrap();
        assert_eq!(printed, figure(&row["printed_bf"]), "{row:?}");
    }
    assert_eq!(rows.len(), 17);
}

#[test]
fn every_worked_problem() {
    let rows = rows("board_feet.csv");
    for row in &rows {
        let rule = match row["rule"].as_str() {
            "1 in minimum" => TallyRule::OneInchMinimum,
            "nearest foot" => TallyRule::NearestFoot,
            other => panic!("{other}"),
        };
        let piece = Nominal::softwood(figure(&row["thickness_in"]), figure(&row["width_in"])).long(feet_long(&row["length_ft"]));
        let pieces = row["pieces"].parse().unwrap();
        assert_eq!(feet(rule, &piece, pieces), ratio(&row["printed"]), "{row:?}");
        // By turns it is the same, for none of these has a half.
        if rule == TallyRule::NearestFoot {
            assert_eq!(feet(TallyRule::HalvesByTurns, &piece, pieces), ratio(&row["printed"]), "{row:?}");
        }
    }
    assert_eq!(rows.len(), 22);
}

/// NAV14044 prints 19.26 board feet for 1 x 7 x 33 ft, from 6.42 rounded and multiplied by three.
#[test]
fn a_printed_slip_is_not_copied() {
    let board: Nominal = "1x7x33".parse().unwrap();
    assert_eq!(feet(TallyRule::Exact, &board, 1), Ratio::new(77, 4));
}

/// Worked by hand: a face of 4 1/2 square feet, by Wengert's rule up the first time and down the next.
#[test]
#[rustfmt::skip] // one line a case
fn halves_go_up_and_down_by_turns() {
    let half: Nominal = "4/4 x 6 - 9'".parse().unwrap();
    let plain: Nominal = "4/4 x 6 - 8'".parse().unwrap();
    for (pieces, up, by_turns) in [(1, 5, 5), (2, 10, 9), (3, 15, 14), (4, 20, 18), (7, 35, 32), (0, 0, 0)] {
        assert_eq!(feet(TallyRule::NearestFoot, &half, pieces), up.into(), "{pieces}");
        assert_eq!(feet(TallyRule::HalvesByTurns, &half, pieces), by_turns.into(), "{pieces}");
    }
    // The turn is kept from one entry to the next, and boards without a half do not take one.
    let mut tally = Tally::new(TallyRule::HalvesByTurns);
    let mut add = |piece: &Nominal, pieces| tally.add(piece, pieces).unwrap().board_feet().unwrap().checked_in_board_feet().unwrap();
    assert_eq!([add(&half, 1), add(&plain, 5), add(&half, 3), add(&half, 1), add(&half, 1)], [5, 20, 13, 5, 4].map(Ratio::from));
    // However many there are, they are as if added one at a time.
    for pieces in 0..6 {
        let mut one_by_one = Tally::new(TallyRule::HalvesByTurns);
        let sum: Ratio<i128> = (0..pieces).map(|_| one_by_one.add(&half, 1).unwrap().board_feet().unwrap().checked_in_board_feet().unwrap()).sum();
        let mut at_once = Tally::new(TallyRule::HalvesByTurns);
        assert_eq!(at_once.add(&half, pieces).unwrap().board_feet().unwrap().checked_in_board_feet(), Some(sum));
        assert_eq!(at_once, one_by_one);
    }
}

/// Worked by hand.
#[test]
#[rustfmt::skip] // one line a case
fn each_rule() {
    use TallyRule::{Exact, HalvesByTurns, NearestFoot, OneInchMinimum};
    for (name, pieces, expected) in [
        ("1/2 x 8 board - 12'", 1, [(4, 1), (8, 1), (8, 1), (8, 1)]),
        ("8/4 x 6 1/4 - 8'", 1, [(25, 3), (25, 3), (8, 1), (8, 1)]),
        ("5/4 x 6 hardwood - 10'", 1, [(25, 4), (25, 4), (25, 4), (25, 4)]),
        ("4/4 x 6 - 9'", 2, [(9, 1), (9, 1), (10, 1), (9, 1)]),
        ("2x4x92-5/8\"", 1, [(247, 48), (247, 48), (6, 1), (6, 1)]),
        ("4/4 x 3 - 1'", 1, [(1, 4), (1, 4), (0, 1), (0, 1)]),
    ] {
        let piece: Nominal = name.parse().unwrap_or_else(|error| panic!("{name}: {error}"));
        let found = [Exact, OneInchMinimum, NearestFoot, HalvesByTurns].map(|rule| feet(rule, &piece, pieces));
        assert_eq!(found, expected.map(|(num, den)| Ratio::new(num, den)), "{name}");
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn what_cannot_be_tallied() {
    for (name, message) in [
        ("2x4", "2x4 has no length, and that is needed to say how much it is"),
        ("8/4", "8/4 hardwood has no width, and that is needed to say how much it is"),
        ("3/4 ply", "3/4\" ply has no width, and that is needed to say how much it is"),
    ] {
        let piece: Nominal = name.parse().unwrap();
        assert_eq!(Tally::new(TallyRule::Exact).add(&piece, 1).unwrap_err().to_string(), message);
    }
    let inch = |count| Length::new(count, Unit::Inch);
    for (piece, what) in [
        (Nominal::softwood(inch(0), inch(4)).long(inch(96)), "thickness"),
        (Nominal::softwood(inch(2), inch(-4)).long(inch(96)), "width"),
        (Nominal::hardwood(inch(2)).wide(inch(4)).long(inch(0)), "length"),
    ] {
        let refused = Tally::new(TallyRule::HalvesByTurns).add(&piece, 1).unwrap_err();
        assert!(matches!(refused, LumberError::NotAboveZero { what: found, .. } if found == what), "{refused}");
    }
    let endless = Nominal::softwood(Length::MAX, Length::MAX).long(Length::MAX);
    for rule in TallyRule::ALL {
        let mut tally = Tally::new(rule);
        assert_eq!(tally.add(&endless, u32::MAX), Err(LumberError::OutOfRange));
        assert_eq!(tally, Tally::new(rule));
    }
}

/// Worked by hand.
#[test]
#[rustfmt::skip] // one line a case
fn costs_are_exact() {
    for (name, pieces, price, cost, cents) in [
        ("2x4x8", 6, "0.62/bf", "19.84", 1984),
        ("2x4x8", 6, "0.415/ft", "19.92", 1992),
        ("1x12 - 7'", 1, "$4.25 a board foot", "29.75", 2975),
        ("4/4 x 8 - 5'", 1, "8.75/bf", "29 1/6", 2917),
        ("3/4 ply 4x8", 3, "54.98/sheet", "164.94", 16_494),
        ("3/4 ply 4x8", 3, "1.90 per sq ft", "182.40", 18_240),
        ("2x4x8", 12, "3.985 each", "47.82", 4782),
        ("2x4x8", 1, "3.985/pc.", "3.985", 399),
        ("2x4x8", 2, "3.98 a stud", "7.96", 796),
        ("2x4x8", 1, "0.63 per board ft.", "3.36", 336),
        ("2x4x8", 1, "0.50 a lineal foot", "4.00", 400),
    ] {
        let piece: Nominal = name.parse().unwrap();
        let tallied = Tally::new(TallyRule::OneInchMinimum).add(&piece, pieces).unwrap();
        let found = price.parse::<Price>().unwrap_or_else(|error| panic!("{error}")).of(&tallied).unwrap();
        assert_eq!((found.to_string().as_str(), found.to_cents(RoundingMode::TiesUp)), (cost, Ok(Money::cents(cents))), "{name} at {price}");
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn money_rounds_as_lengths_do() {
    use RoundingMode::{Down, TiesAway, TiesEven, TiesUp, TowardZero, Up};
    for parts in -300..300_i64 {
        let money = Money::cents(parts).checked_times(Ratio::new(1, 8)).unwrap();
        let length = Length::fraction(parts, 8, Unit::Inch);
        for mode in [TiesUp, TiesEven, TiesAway, Down, Up, TowardZero] {
            let inches = length.round(Rounding::to(Unit::Inch.length()).mode(mode)).unwrap().in_unit(Unit::Inch);
            assert_eq!(money.to_cents(mode).unwrap().in_units() * 100, inches, "{parts}, {mode:?}");
        }
    }
}

properties! {
    fn money_is_written_and_read_back(num: i64, den: u32) -> bool {
        let money = Money::cents(num).checked_times(Ratio::new(100, i128::from(den.max(1)))).unwrap();
        money.to_string().parse() == Ok(money) && money.in_units() == Ratio::new(num.into(), i128::from(den.max(1)))
    }
}

#[test]
#[rustfmt::skip] // one line a case
fn what_is_no_price() {
    for text in ["", "8.75", "/bf", "8,75/bf", "8.75/", "8.75/bushel", "8.75/bf/ft", "8.75 a board foot more", "-8/bf", "8.7.5/bf", "8 75/bf", "999999999999999999999999999999999/bf"] {
        assert!(matches!(text.parse::<Price>(), Err(LumberError::NotAPrice { .. })), "{text}");
    }
    assert_eq!("8,75/bf".parse::<Price>().unwrap_err().to_string(), "`8,75/bf` is no price: write an amount and what it buys, as in 8.75/bf, 0.62/ft, 1.90/sqft or 54.98/piece");
    for text in ["8.75 a board foot", "0.62 a linear foot", "1.90 a square foot", "54.98 a piece"] {
        assert_eq!(text.parse::<Price>().unwrap().to_string(), text);
    }
    for text in ["", ".", "$", "1,000", "1e3", "--1", "½", "1/2/3", "7 9/8", "1 2", "1/0", "8.5 1/2"] {
        assert!(matches!(text.parse::<Money>(), Err(LumberError::NotMoney { .. })), "{text}");
    }
    let stud: Nominal = "2x4x8".parse().unwrap();
    let sheet: Nominal = "4x8 sheet".parse().unwrap();
    let refused = |piece: &Nominal, price: &str| price.parse::<Price>().unwrap().of(&Tally::new(TallyRule::Exact).add(piece, 1).unwrap());
    assert_eq!(refused(&sheet, "8.75/bf").unwrap_err().to_string(), "sheet has no price by the board foot");
    assert_eq!(refused(&sheet, "8.75/ft").unwrap_err().to_string(), "sheet has no price by the linear foot");
    assert!(refused(&stud, "8.75/sqft").is_ok());
}
