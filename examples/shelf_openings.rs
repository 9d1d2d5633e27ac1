//! The ware case of a pottery studio: four shelves between its bottom and its top, equal openings, marks
//! for a tape that reads sixteenths.

use scantling::{Length, Spacing, Tape, Unit};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let inside_height: Length = "5'-6 1/4".parse()?;
    let shelf: Length = "23/32".parse()?;
    let layout = Spacing::equal_openings(4, shelf).over(inside_height)?;
    let tape = Tape::sixteenths();

    println!("Ware case, {inside_height} inside, 4 shelves of {shelf}, an opening below and above");
    println!("Each opening: {} exactly", layout.opening());
    let marked = layout.on(&tape)?;
    for mark in marked.marks() {
        println!("Shelf {}: bottom edge at {}", mark.number(), mark.reading());
    }
    println!("Openings as cut differ by {} at most", marked.spread());

    // The parts close on the whole, to the last fraction.
    let openings: Length = layout.gaps().sum();
    assert_eq!(openings + 4 * shelf, inside_height);
    assert!(marked.worst() <= Length::fraction(1, 32, Unit::Inch));
    Ok(())
}
