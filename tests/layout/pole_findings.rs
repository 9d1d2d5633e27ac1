//! What is odd about a story pole is found, and what only comes near is let through. What a pole is stands in `pole.rs`.

use scantling::{Finding, Length, Mark, PartSide, StoryPole, Tape, Unit};

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

fn whole(count: i64) -> Length {
    Length::new(count, Unit::Inch)
}

fn past(place: Length, name: &str) -> Mark {
    Mark::new(place, name, PartSide::Past)
}

fn findings(rows: Rows<'_>) -> Vec<Finding> {
    let pole = StoryPole::new("case", whole(72));
    let pole = rows.into_iter().try_fold(pole, |pole, (name, marks)| pole.row(name, marks)).unwrap();
    pole.check(&Tape::sixteenths())
}

fn texts(rows: Rows<'_>) -> Vec<String> {
    findings(rows).iter().map(ToString::to_string).collect()
}

/// Rows by their names.
type Rows<'a> = Vec<(&'a str, Vec<Mark>)>;

// Worked by hand; common practice, no source.
#[test]
fn mistakes_are_found_before_wood_is_cut() {
    let thick = |place, name, side| Mark::new(place, name, side).thick(whole(1));
    let cases: Vec<(Rows<'_>, &[&str])> = vec![
        (vec![("a", vec![past(whole(73), "x")])], &[r#"row a: x is marked at 73", off the stick, which is 72" long"#]),
        (
            vec![("a", vec![thick(whole(72), "x", PartSide::Past)])],
            &[r#"row a: x reaches to 73", past the end of the stick, which is 72" long"#],
        ),
        (
            vec![("a", vec![thick(Length::ZERO, "x", PartSide::Centered)])],
            &[r#"row a: x reaches to -1/2", past the datum end of the stick, which is 72" long"#],
        ),
        (
            vec![("a", vec![past(whole(3), "x"), past(inches(97, 32), "y")])],
            &[r#"row a: x and y are 1/32" apart, at 3" and 3 1/32", less than one graduation of 1/16""#],
        ),
        // A whole graduation apart is fine; so are neighbors back to back.
        (vec![("a", vec![past(whole(3), "x"), past(inches(49, 16), "y")])], &[]),
        (vec![("a", vec![thick(whole(3), "x", PartSide::Before), thick(whole(3), "y", PartSide::Past)])], &[]),
        (vec![("a", vec![past(whole(3), "x"), past(whole(3), "y")])], &[r#"row a: x and y overlap at 3""#]),
        // The same lines, one X on the other side.
        (vec![("a", vec![thick(whole(3), "x", PartSide::Past), thick(whole(4), "y", PartSide::Past)])], &[]),
        (
            vec![("a", vec![thick(whole(3), "x", PartSide::Past), thick(inches(9, 2), "y", PartSide::Before)])],
            &[r#"row a: x and y overlap by 1/2", from 3 1/2" on"#],
        ),
        // A small part within a great one, and one past it.
        (
            vec![(
                "a",
                vec![
                    past(whole(3), "x").thick(whole(9)),
                    thick(whole(5), "y", PartSide::Past),
                    thick(whole(11), "z", PartSide::Past),
                ],
            )],
            &[r#"row a: x and y overlap by 1", from 5" on"#, r#"row a: x and z overlap by 1", from 11" on"#],
        ),
        (
            vec![("a", vec![past(whole(3), "x")]), ("b", vec![past(whole(4), "x")])],
            &[r#"x is at 3" in row a and at 4" in row b"#],
        ),
        (
            vec![("a", vec![thick(whole(3), "x", PartSide::Past)]), ("b", vec![past(whole(3), "x").thick(whole(2))])],
            &[r#"x is from 3" to 4" in row a and from 3" to 5" in row b"#],
        ),
        (
            vec![("a", vec![past(whole(3), "x")]), ("b", vec![Mark::new(whole(3), "x", PartSide::Before)])],
            &[r#"x lies on another side of 3" in row b than in row a"#],
        ),
        // One part, marked at its lower edge here and at its upper edge there.
        (vec![("a", vec![thick(whole(3), "x", PartSide::Past)]), ("b", vec![thick(whole(4), "x", PartSide::Before)])], &[]),
        (vec![("a", vec![past(whole(3), "x"), past(whole(5), "x")])], &[r#"row a has x twice: at 3" and at 5""#]),
        (
            vec![("a", vec![past(inches(72, 5), "x")]), ("b", vec![past(inches(115, 8), "x")])],
            &["x in row a and x in row b are 1/40\" apart, at 14 2/5\" and 14 3/8\", less than one graduation of 1/16\": \
               if they are one place, take the exact one for both"],
        ),
        (
            vec![("a", vec![past(inches(72, 5), "x")]), ("b", vec![past(inches(115, 8), "y")])],
            &["y in row b and x in row a are 1/40\" apart, at 14 3/8\" and 14 2/5\", less than one graduation of 1/16\": \
               if they are one place, take the exact one for both"],
        ),
        (vec![("a", vec![past(whole(3), "")]), ("b", vec![past(whole(9), "")])], &[]),
    ];
    for (rows, found) in cases {
        let shown = format!("{rows:?}");
        assert_eq!(texts(rows), found, "{shown}");
    }
}

// Worked by hand. A part of unknown thickness takes up something on its side of the line, however little.
#[test]
fn parts_of_unknown_thickness_overlap_too() {
    let shelf = || past(whole(14), "shelf").thick(whole(1));
    for (place, side, is_found) in [
        (whole(14), PartSide::Past, true),
        (inches(29, 2), PartSide::Past, true),
        (whole(15), PartSide::Past, false),
        (whole(14), PartSide::Before, false),
        (inches(29, 2), PartSide::Before, true),
        (whole(15), PartSide::Before, true),
        (whole(14), PartSide::Centered, true),
        (whole(15), PartSide::Centered, true),
        (whole(16), PartSide::Centered, false),
        (inches(29, 2), PartSide::Line, false),
    ] {
        let found = texts(vec![("a", vec![shelf(), Mark::new(place, "rail", side)])]);
        assert_eq!(found.len(), usize::from(is_found), "{place} {side:?}: {found:?}");
        assert!(found.iter().all(|text| text.contains(" overlap at ")), "{found:?}");
    }
    // Between two lines there may be a third one.
    let three = [("x", PartSide::Past), ("y", PartSide::Before), ("z", PartSide::Past)];
    let three = three.map(|(name, side)| Mark::new(whole(3), name, side));
    assert_eq!(texts(vec![("a", three.into())]), [r#"row a: x and z overlap at 3""#]);
}

// Worked by hand: one part, marked at its edges and its center, with and without its thickness.
#[test]
fn one_part_marked_twice_is_one_part() {
    let side = |side, place| Mark::new(place, "shelf", side);
    let both = [side(PartSide::Past, whole(14)), side(PartSide::Before, whole(15)), side(PartSide::Centered, inches(29, 2))];
    let thick: Vec<_> = both.clone().into_iter().map(|mark| mark.thick(whole(1))).collect();
    assert_eq!(findings(vec![("a", thick.clone())]), []);
    for mark in both {
        assert_eq!(findings(vec![("a", thick.clone()), ("b", vec![mark.clone()])]), []);
        assert_eq!(findings(vec![("a", vec![mark]), ("b", thick.clone())]), []);
    }
    for mark in [side(PartSide::Before, whole(14)), side(PartSide::Past, whole(15)), side(PartSide::Line, whole(14))] {
        assert_eq!(findings(vec![("a", thick.clone()), ("b", vec![mark])]).len(), 1);
    }
}

#[test]
fn findings_are_told_in_the_unit_of_the_tape() {
    let millimeters = |count| Length::new(count, Unit::Millimeter);
    let board = |name, place| past(millimeters(place), name).thick(millimeters(18));
    let pole = StoryPole::new("case", millimeters(1000));
    let pole = pole.row("side", [board("lower", 400), board("upper", 410), board("top", 990)]).unwrap();
    let told: Vec<_> = pole.check(&Tape::millimeters()).iter().map(|found| found.told(&Tape::millimeters())).collect();
    assert_eq!(
        told,
        [
            "row side: top reaches to 1008 mm, past the end of the stick, which is 1000 mm long",
            "row side: lower and upper overlap by 8 mm, from 410 mm on",
        ]
    );
}
