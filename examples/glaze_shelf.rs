//! A glaze shelf of the pottery studio: buckets below, jars above, in three bays under a top that stands past the box. What
//! the shelves bear decides how long they may be.

use std::error::Error;

use scantling::{Case, Joint, Length, LoadedShelf, Overall, SagLimit, ShelfLoad, Shelves, Tape, TopAt, Unit, material};

fn main() -> Result<(), Box<dyn Error>> {
    let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    let sheet = inches(23, 32);
    let plan = Case::new(inches(80, 1), inches(42, 1), inches(16, 1))
        .measured_over(Overall::Top)
        .sheet(sheet)
        .joined(Joint::Dado(inches(7, 32)))
        .top_at(TopAt::OverSides { past_sides: inches(1, 1), past_front: inches(1, 1) })
        .bays(3, sheet)
        .shelves(Shelves::Openings(vec![inches(18, 1), inches(10, 1)])) // what is left is for the jars
        .plan()?;

    let tape = Tape::sixteenths();
    let marks: Vec<String> =
        plan.levels().shelves.iter().map(|shelf| tape.read(shelf.lower).map(|at| at.to_string())).collect::<Result<_, _>>()?;
    println!("shelves, from the lower end of the sides: {}", marks.join("; "));
    println!("openings: {:?}", plan.levels().openings().map(|opening| opening.to_string()).collect::<Vec<_>>());

    // A bucket of glaze is some 30 pounds, and three stand on each two square feet: weigh yours.
    let shelf = LoadedShelf::new(sheet, material("Douglas-fir veneer-core plywood")?.modulus(), ShelfLoad::of_pounds(90, 2))?;
    let clear = plan.closings()[0].links().iter().find(|(name, _)| *name == "clear").map_or(Length::ZERO, |(_, clear)| *clear);
    let longest = shelf.greatest_span(SagLimit::STANDARD, inches(1, 16))?;
    println!("a shelf is {clear} long, and may be {longest} under that load");
    assert!(clear < longest);

    for closing in plan.closings() {
        println!("{closing}");
        assert!(closing.is_closed());
    }
    let openings: Length = plan.levels().openings().fold(Length::ZERO, |sum, opening| sum + opening);
    assert_eq!(openings + 4 * sheet, inches(42, 1)); // with bottom, two shelves and top
    Ok(())
}
