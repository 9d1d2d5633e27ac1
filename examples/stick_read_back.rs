//! A drying rack without a drawing: its heights are read off an old stick from the 1 in line, checked against the pole
//! that was drawn for it, and carried over.

use scantling::{Called, Finding, Length, Mark, PartSide, StoryPole, Tape, Unit};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    let burned = Tape::sixteenths().offset(inches(1, 1));
    let step = inches(1, 64);
    let read = [("rung 1", "9 1/4"), ("rung 2", "17 3/8 strong"), ("rung 3", "25 5/8"), ("rung 4", "33 3/4 shy")];
    let marks = read.into_iter().map(|(name, called)| {
        let shown = called.parse::<Called>()?.checked_length(step).ok_or("out of range")?;
        Ok(Mark::try_from_reading(shown, &burned, name, PartSide::Past)?)
    });
    let marks = marks.collect::<Result<Vec<_>, Box<dyn std::error::Error>>>()?;
    let stick = StoryPole::new("drying rack", inches(42, 1)).row("old stick", marks)?;

    // The rungs were meant to be 8 1/6 in apart, from 8 1/4 in up.
    let drawn = (0..4).map(|count| {
        let place = inches(33, 4) + count * inches(49, 6);
        Mark::new(place, format!("rung {}", count + 1), PartSide::Past)
    });
    let both = stick.row("drawing", drawn)?;
    println!("{}", both.listed(&burned)?);
    let findings = both.check(&burned);
    for finding in &findings {
        println!("Look again: {finding}");
    }
    // Three rungs were only marked to the nearest line; the exact places are kept.
    assert_eq!(findings.iter().filter(|finding| matches!(finding, Finding::OnlyByRounding { .. })).count(), 3);

    let kept = both.only(["drawing"])?;
    let places: Vec<Length> = kept.rows()[0].marks().iter().map(|mark| mark.position).collect();
    assert_eq!(places[3] - places[0], 3 * inches(49, 6));
    assert_eq!(places[3], inches(131, 4)); // 32 3/4 in: the stick shows an inch more
    assert!(kept.check(&burned).is_empty());
    Ok(())
}
