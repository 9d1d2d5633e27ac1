//! A drying rack's plan is drawn in millimeters; the shop's tape reads thirty-seconds. Each size is
//! converted once and exactly, then read on the tape, with what the tape cannot show kept beside it.

use scantling::{LengthParser, LengthPrinter, Style, Tape, Unit};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let plan = LengthParser::new().default_unit(Unit::Millimeter);
    let metric = LengthPrinter::new().style(Style::Millimeters);
    let tape = Tape::thirty_seconds();

    println!("{:<10} {:>10}   on the tape", "part", "plan");
    for (part, text) in [("post", "1 830"), ("rail", "1,2 m"), ("slat", "914.4"), ("ware board", "36.5cm"), ("peg", "1/2\"")] {
        // The plan was typed by several hands: grouped thousands and decimal commas are two questions.
        let length = if text.contains(',') {
            plan.comma(scantling::Comma::Decimal).parse(text)?
        } else {
            plan.comma(scantling::Comma::Groups).parse(text)?
        };
        let reading = tape.read(length)?;
        println!("{part:<10} {:>10}   {reading}", metric.show(length)?);
        assert_eq!(reading.mark() + reading.leftover(), length);
    }
    Ok(())
}
