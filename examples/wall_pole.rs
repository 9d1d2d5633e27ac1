//! The pole of a wall in the ware room: a window, outlets and the cases along it, each on a face of the stick, all from
//! the left end. A row of cases that does not make the wall is found before wood is cut.
//!
//! The pole records where outlets are. Where they may be, and what may stand before them, is for the local electrical code
//! and a licensed electrician to say; the power is off before a case is cut around one.

use scantling::{Datum, Finding, Length, Mark, PartSide, Row, StoryPole, Tape, Unit};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    let wall = inches(1151, 8); // 11 ft 11 7/8 in
    let cases = [("case 1", inches(36, 1)), ("case 2", inches(30, 1)), ("case 3", inches(36, 1)), ("case 4", inches(42, 1))];
    let pole = StoryPole::new("ware room, north wall", wall)
        .measured_from(Datum::Left)
        .row("window", [Mark::new(inches(62, 1), "window", PartSide::Past).thick(inches(107, 4))])?
        .row(
            "outlets",
            [
                Mark::new(inches(16, 1), "outlet 1", PartSide::Centered).noted("44 in above the floor"),
                Mark::new(inches(112, 1), "outlet 2", PartSide::Centered).noted("44 in above the floor"),
            ],
        )?;
    let tape = Tape::sixteenths();

    // As drawn, the cases are an eighth too long for the wall.
    let drawn = Row::try_from_parts("cases", cases)?.closing(Length::ZERO, wall);
    let findings = pole.clone().with(drawn)?.check(&tape);
    for finding in &findings {
        println!("Look again: {finding}");
    }
    let over = inches(1, 8);
    assert!(findings.iter().any(|finding| matches!(
        finding,
        Finding::NotClosed { should, is: Some(is), .. } if *is - *should == over
    )));

    // The last one gives way, and now they close.
    let cut = cases.map(|(name, size)| (name, if name == "case 4" { size - over } else { size }));
    let pole = pole.with(Row::try_from_parts("cases", cut)?.closing(Length::ZERO, wall))?;
    print!("{}\n{}", pole.listed(&tape)?, pole.drawing());
    assert_eq!(pole.check(&tape), []);
    assert_eq!(cut.iter().map(|(_, size)| *size).sum::<Length>(), wall);
    assert_eq!(pole.mirrored().datum(), Datum::Right);
    Ok(())
}
