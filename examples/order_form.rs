//! Another program calling the crate: it keeps its own records of glaze shelves, takes sizes as people
//! typed them, refuses what has two readings, and adds up what it must buy.

use scantling::{Length, ParseError, Unit};

/// One line of the program's own order form.
struct Order {
    label: &'static str,
    typed: &'static str,
    count: i64,
}

const ORDERS: [Order; 4] = [
    Order { label: "glaze shelf", typed: "2' 9 5/8\"", count: 6 },
    Order { label: "bracket rail", typed: "31-3/4", count: 4 },
    Order { label: "label strip", typed: "1,250", count: 2 },
    Order { label: "drip edge", typed: "2x4", count: 1 },
];

fn total(order: &Order) -> Result<Length, ParseError> {
    Ok(order.typed.parse::<Length>()? * order.count)
}

fn main() {
    let mut sum = Length::ZERO;
    for order in &ORDERS {
        match total(order) {
            Ok(length) => {
                println!("{}: {} of {} come to {length} ({length:#})", order.label, order.count, order.typed);
                sum += length;
            }
            Err(error) => println!("{}: please type it again: {error}", order.label),
        }
    }
    println!("To buy: {sum:#}, which is {} m exactly", sum.in_unit(Unit::Meter));
    assert_eq!(sum, Length::fraction(6 * 269 + 4 * 254, 8, Unit::Inch));
}
