//! A drying rack of the pottery studio, in millimeters: boards on pins in the rows of the 32 mm system, open at the back
//! for the air. What is bought for its panels comes from the cutting layer.

use std::error::Error;

use scantling::{Case, Length, Panel, PinHoles, Sheet, SheetCutting, Shelves, Tape, Unit};

fn main() -> Result<(), Box<dyn Error>> {
    let millimeters = |count| Length::new(count, Unit::Millimeter);
    let plan = Case::new(millimeters(900), millimeters(1800), millimeters(400))
        .sheet(millimeters(18))
        .shelves(Shelves::Adjustable(8, PinHoles::ROWS_OF_32))
        .plan()?;

    let holes = &plan.levels().holes;
    println!(
        "{} holes in each row, the first at {} and the last at {} mm",
        holes.len(),
        in_mm(holes[0]),
        in_mm(holes[holes.len() - 1])
    );
    assert!(holes.windows(2).all(|pair| pair[1] - pair[0] == millimeters(32)));

    let mut cutting =
        SheetCutting::new().kerf(millimeters(3)).sheet(Sheet::new("2440 x 1220", millimeters(2440), millimeters(1220)));
    for part in plan.parts() {
        let [width, length] = [part.width().total()?, part.length().total()?];
        println!(
            "{:<16} {:<8} {} x {} x {} mm",
            part.pieces().to_string(),
            part.name(),
            in_mm(part.thickness()),
            in_mm(width),
            in_mm(length)
        );
        cutting = cutting.panel(Panel::new(part.name(), length, width, part.pieces().count()));
    }
    let bought = cutting.plan()?;
    println!("{} sheets", bought.sheet_count());

    let tape = Tape::millimeters();
    for pole in plan.poles() {
        assert_eq!(pole.check(&tape), []);
    }
    for closing in plan.closings() {
        assert!(closing.is_closed());
    }
    let wide = plan.closings()[0].links().iter().fold(Length::ZERO, |sum, (_, size)| sum + *size);
    assert_eq!(wide, millimeters(900));
    Ok(())
}

fn in_mm(length: Length) -> num_rational::Ratio<i128> {
    length.in_unit(Unit::Millimeter)
}
