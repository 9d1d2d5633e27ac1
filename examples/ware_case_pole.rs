//! The side pole of a ware case: bottom, shelves and top from one datum, the pair for both hands, and the same pole read
//! from the top. All of it is checked, and the sums close.

use scantling::{Edge, Hand, Length, Mark, PartSide, Row, Spacing, StoryPole, Tape};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let (height, panel): (Length, Length) = ("6'-0".parse()?, "23/32".parse()?);
    let inside = height - 2 * panel;
    let shelves = Spacing::equal_openings(4, panel).over(inside)?;

    let row = Row::try_from_layout("shelves", "shelf", &shelves, Edge::Near)?.try_shifted(panel)?;
    let side = StoryPole::new("ware case, side", height).with(row)?.row(
        "ends",
        [Mark::new(Length::ZERO, "bottom", PartSide::Past).thick(panel), Mark::new(height, "top", PartSide::Before).thick(panel)],
    )?;
    let tape = Tape::sixteenths();
    let [left, right] = side.pair();
    print!("{}\n{}", left.listed(&tape)?, left.drawing());
    assert_eq!((left.check(&tape).len(), right.hand()), (0, Some(Hand::Right)));

    // Five openings, four shelves, bottom and top are the height, to the last fraction.
    let marks = left.rows()[0].marks();
    let opening = shelves.opening();
    assert_eq!(marks[0].position, panel + opening);
    assert_eq!(marks[3].position + panel + opening + panel, height);
    assert_eq!(5 * opening + 6 * panel, height);
    // What lies at h from the bottom lies at the height less h from the top.
    let down = left.flipped();
    let sums = marks.iter().zip(down.rows()[0].marks().iter().rev()).map(|(up, down)| up.position + down.position);
    assert!(sums.into_iter().all(|sum| sum == height));
    Ok(())
}
