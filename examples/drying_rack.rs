//! The drying rack of a pottery studio: which boards to cut its parts from, in which order, with a mark for every cut.

use scantling::{Cutting, Length, Part, Stock, Tape};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let length = |text: &str| text.parse::<Length>();
    let plan = Cutting::new()
        .kerf(length("1/8")?)
        .keep_offcuts_from(length("1 ft")?)
        .part(Part::new("stile", length("5'-0")?, 4))
        .part(Part::new("rail", length("35 1/2")?, 8))
        .part(Part::new("cleat", length("17 13/16")?, 12))
        .stock(Stock::new("8 ft board", length("8 ft")?))
        .stock(Stock::new("left over", length("40 1/4")?).limit(2))
        .plan()?;

    for (stock, count) in plan.taken() {
        println!("Take {count} of {}, {} long", stock.name, stock.length);
    }
    let tape = Tape::sixteenths();
    for board in plan.boards() {
        println!("{} of {}, from the near end:", board.times(), plan.stock(board).name);
        for cut in board.cuts() {
            println!("  {} up to {}", plan.part(cut).name, tape.read(cut.far())?);
        }
        println!("  left: {}", board.offcut());
    }
    println!("{}; no plan takes less than {}", plan.cost(), plan.bound());

    // Nothing is lost on the way: parts, offcuts and waste are the boards.
    assert_eq!(plan.used() + plan.kept() + plan.waste(), plan.bought());
    Ok(())
}
