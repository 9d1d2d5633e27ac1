//! The pottery studio orders lumber for its ware room: names as the yard writes them, what each piece measures, how
//! much it is by the yard's rules, and what the order costs to the cent.

use scantling::{Catalog, LumberError, Money, Nominal, Price, RoundingMode, Tally, TallyRule, Volume};

/// One line of the order: what it is for, what the yard calls it, how many, and its price.
const ORDER: [(&str, &str, u32, &str); 5] = [
    ("ware case sides", "1x12 - 6'", 4, "1.15/bf"),
    ("drying rack posts", "2x4x8", 6, "0.62/ft"),
    ("glaze shelf fronts", "8/4 x 6 - 9' walnut", 3, "9.75/bf"),
    ("case backs", "1/4 ply 4x8", 2, "24.98/sheet"),
    ("work table top", "5/4", 1, "1/bf"),
];

fn main() -> Result<(), LumberError> {
    let catalog = Catalog::new();
    let mut tally = Tally::new(TallyRule::HalvesByTurns);
    let (mut feet, mut cost) = (Volume::ZERO, Money::ZERO);
    for (purpose, name, pieces, price) in ORDER {
        let nominal: Nominal = match name.parse() {
            Ok(nominal) => nominal,
            Err(error) => {
                println!("{purpose}: ask the yard again: {error}");
                continue;
            }
        };
        let actual = catalog.actual(&nominal)?;
        let tallied = tally.add(&nominal, pieces)?;
        let price: Price = price.parse()?;
        let line = price.of(&tallied)?;
        match (actual.thickness(), actual.panel()) {
            (Some(thickness), _) => println!("{purpose}: {pieces} of {nominal}, {thickness} thick, {line} at {price}"),
            (None, Some(panel)) => {
                println!("{purpose}: {pieces} of {nominal}, {} to {}, {line} at {price}", panel.minimum(), panel.maximum());
            }
            (None, None) => println!("{purpose}: {pieces} of {nominal}, {line} at {price}"),
        }
        feet += tallied.board_feet().unwrap_or_default();
        cost = cost.checked_add(line).ok_or(LumberError::OutOfRange)?;
    }
    let board_feet = feet.checked_in_board_feet().ok_or(LumberError::OutOfRange)?;
    println!("Together {board_feet} board feet, {} to the cent", cost.to_cents(RoundingMode::TiesUp)?);
    // Faces of 6 ft, 2 2/3 ft and three of 4 1/2 ft go to 6, 3, and by turns to 5, 4 and 5.
    assert_eq!(board_feet, (4 * 6 + 6 * 3 * 2 + (5 + 4 + 5) * 2).into());
    assert_eq!(cost, Money::cents(4 * 6 * 115 + 6 * 8 * 62 + 28 * 975 + 2 * 2498));
    Ok(())
}
