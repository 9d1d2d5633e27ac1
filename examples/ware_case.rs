//! A ware case of the pottery studio: four fixed shelves in dadoes, a rabbeted back, a face frame on a base. From overall
//! sizes to a cut list and marks.

use std::error::Error;

use scantling::{Back, Base, Case, FaceFrame, Joint, Length, Overall, Shelves, Tape, TopAt, Unit};

fn main() -> Result<(), Box<dyn Error>> {
    let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    let frame =
        FaceFrame::new(inches(3, 4), inches(7, 4)).rails(inches(9, 4), inches(3, 2)).past_sides(inches(1, 4), inches(1, 4));
    let base =
        Base::Separate { height: inches(4, 1), stock: inches(3, 4), from_front: inches(3, 1), from_sides: inches(1, 2), ties: 1 };
    let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1))
        .measured_over(Overall::Frame)
        .sheet(inches(23, 32)) // measured on the sheet that was bought as 3/4
        .joined(Joint::Dado(inches(1, 4)))
        .top_at(TopAt::BetweenSides(Joint::Rabbet(inches(1, 4))))
        .back(Back::Rabbet { thickness: inches(7, 32), depth: inches(3, 8) })
        .frame(frame)
        .level_with_rail(true)
        .base(base)
        .shelves(Shelves::Equal(4))
        .plan()?;

    let tape = Tape::sixteenths();
    for part in plan.parts() {
        let [width, length] = [part.width().total()?, part.length().total()?];
        let [width, length] = [part.width_on(&tape, width)?.mark(), part.length_on(&tape, length)?.mark()];
        println!("{:<16} {:<20} {} x {width} x {length}", part.pieces().to_string(), part.name(), part.thickness());
    }
    for pole in plan.poles() {
        println!("\n{}", pole.listed(&tape)?);
    }
    for line in plan.nail_lines() {
        println!("{line}");
    }
    for advice in plan.advice(&tape) {
        println!("look again: {advice}");
    }
    for closing in plan.closings() {
        println!("{closing}");
        assert!(closing.is_closed());
    }
    Ok(())
}
