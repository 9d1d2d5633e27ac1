//! Story poles as values: what is made of them keeps every place exactly, and what is wrong with them is found. How
//! they are drawn stands in `pole_pictures.rs`.

use crate::support::Shop;
use quickcheck::{Arbitrary, Gen};
use scantling::{
    Datum, Edge, Finding, Hand, Length, Mark, PartSide, PoleError, Row, Spacing, StoryPole, Strokes, Tape, Unit, Widest,
};

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

fn whole(count: i64) -> Length {
    Length::new(count, Unit::Inch)
}

fn past(place: Length, name: &str) -> Mark {
    Mark::new(place, name, PartSide::Past)
}

fn positions(row: &Row) -> Vec<Length> {
    row.marks().iter().map(|mark| mark.position).collect()
}

fn texts(pole: &StoryPole) -> Vec<String> {
    pole.check(&Tape::sixteenths()).iter().map(ToString::to_string).collect()
}

// Field case L055: one squared end is zero, every position is measured from it, never from mark to mark. Worked by
// hand: eleven gaps of 2 8/11 in between twelve pickets of 5 1/2 in (field case L012); the last begins at 90 1/2 in.
#[test]
fn every_mark_is_read_from_the_one_datum() {
    let pickets = Spacing::equal_openings(12, inches(11, 2)).near_end(scantling::End::Flush).far_end(scantling::End::Flush);
    let row = Row::try_from_layout("rail", "picket", &pickets.over(whole(96)).unwrap(), Edge::Near).unwrap();
    let pole =
        StoryPole::new("pickets", whole(96)).measured_from(Datum::Left).with(row.closing(Length::ZERO, whole(96))).unwrap();
    assert_eq!(pole.rows()[0].marks()[11].position, inches(181, 2));
    assert_eq!(pole.check(&Tape::sixteenths()), []);
    // Stepped off by 8 1/4 in each, as 8 5/22 in rounds up to, the last would stand at 90 3/4 in.
    let listed = pole.listed(&Tape::sixteenths()).unwrap().to_string();
    assert!(listed.contains("measured to the right from the left end\n"), "{listed}");
    assert!(listed.contains("hook it at the left end, and leave it there for every mark\n"), "{listed}");
    assert!(listed.contains("12   90-1/2\"     dead on            90 1/2\" "), "{listed}");
}

// Field case L060: a run of cases recorded on four faces of one stick. Figures invented.
#[test]
fn four_rows_share_the_datum() {
    let row = |name, sizes: &[i64]| {
        let names: Vec<String> = (1..=sizes.len()).map(|number| format!("{name} {number}")).collect();
        let parts = names.iter().map(String::as_str).zip(sizes.iter().map(|size| whole(*size)));
        Row::try_from_parts(name, parts).unwrap().closing(Length::ZERO, whole(96))
    };
    let stick = [("base cases", &[36, 30, 30][..]), ("base doors", &[18, 18, 15, 15, 15, 15]), ("upper cases", &[36, 30, 30])];
    let pole = StoryPole::new("north wall", whole(96)).measured_from(Datum::Left);
    let pole = stick.into_iter().try_fold(pole, |pole, (name, sizes)| pole.with(row(name, sizes))).unwrap();
    let pole = pole.with(row("upper doors", &[18, 18, 30, 15, 15])).unwrap();
    assert_eq!(pole.check(&Tape::sixteenths()), []);
    // Every case begins where a door does.
    assert_eq!(positions(&pole.rows()[0]), [0, 36, 66].map(whole));
    assert_eq!(positions(&pole.rows()[1]), [0, 18, 36, 51, 66, 81].map(whole));
    let doors = pole.only(["upper doors", "base doors"]).unwrap();
    assert_eq!(doors.rows().iter().map(Row::name).collect::<Vec<_>>(), ["upper doors", "base doors"]);
}

// Field case L057: mirror images carry a hand and keep their heights from the same end.
#[test]
fn a_mirrored_pair_keeps_its_heights() {
    let side =
        StoryPole::new("partition 5", whole(30)).row("holes", [past(whole(7), "peg 1"), past(whole(14), "peg 2")]).unwrap();
    let [left, right] = side.pair();
    assert_eq!((left.hand(), right.hand()), (Some(Hand::Left), Some(Hand::Right)));
    assert_eq!((left.rows(), left.datum()), (right.rows(), right.datum()));
    assert_ne!(left, right);
    assert_eq!(right.pair(), [left, right]);
}

// Field case L061: totals are added up again, and the difference is reported. Figures invented.
#[test]
fn a_row_that_does_not_close_says_by_how_much() {
    let row = |last| Row::try_from_parts("cases", [("case 1", whole(36)), ("case 2", last)]).unwrap();
    let closed = |row: Row| texts(&StoryPole::new("wall", whole(72)).with(row).unwrap());
    let close = |row: Row| row.closing(Length::ZERO, whole(72));
    assert_eq!(closed(close(row(whole(36)))), [""; 0]);
    assert_eq!(closed(close(row(inches(285, 8)))), [r#"row cases should end at 72" and ends at 71 5/8": 3/8" short"#]);
    let shifted = close(row(whole(36))).try_shifted(whole(-1)).unwrap().closing(Length::ZERO, whole(72));
    assert_eq!(
        closed(shifted),
        [
            r#"row cases: case 1 is marked at -1", off the stick, which is 72" long"#,
            r#"row cases should begin at 0" and begins at -1": 1" short"#,
            r#"row cases should end at 72" and ends at 71": 1" short"#,
        ]
    );
    assert_eq!(closed(Row::new("cases", []).closing(Length::ZERO, whole(72))).len(), 2);
}

// Field case L054: six modules of a sixth of the wall and a pencil line each, 1/2 in over in the end.
#[test]
fn six_modules_are_over_by_six_pencil_lines() {
    let names = ["1", "2", "3", "4", "5", "6"];
    let size = whole(144).checked_div(6).unwrap() + inches(1, 12);
    let row = Row::try_from_parts("modules", names.map(|name| (name, size))).unwrap().closing(Length::ZERO, whole(144));
    let pole = StoryPole::new("wall", whole(144)).with(row).unwrap();
    assert!(pole.check(&Tape::sixteenths()).contains(&Finding::NotClosed {
        row: "modules".into(),
        at_end: true,
        should: whole(144),
        is: Some(inches(289, 2)),
    }));
}

// Field case L001: a piece read as 25 in from the 1 in line is 24 in.
#[test]
fn a_stick_read_from_its_one_inch_line() {
    let burned = Tape::sixteenths().offset(whole(1));
    let mark = Mark::try_from_reading(whole(25), &burned, "rail", PartSide::Past).unwrap();
    let pole = StoryPole::new("stick", whole(30)).row("read", [mark]).unwrap();
    assert_eq!(positions(&pole.rows()[0]), [whole(24)]);
    let listed = pole.listed(&burned).unwrap().to_string();
    assert!(listed.contains("lay its 1\" line on the bottom end: it shows 1\" more than each exact place"), "{listed}");
    assert!(listed.contains("  1   25\"       dead on         24\" "), "{listed}");
}

#[test]
fn what_cannot_be_a_pole_is_refused() {
    let pole = || StoryPole::new("case", whole(72));
    let refused = |result: Result<StoryPole, PoleError>| result.unwrap_err().to_string();
    let cases = [
        (StoryPole::new("case", Length::ZERO).row("a", []), r#"a pole cannot be 0" long: it must be above zero"#),
        (pole().row("a", []).and_then(|pole| pole.row("a", [])), "the pole has a row a already: each row has a name of its own"),
        (pole().row("a", [past(whole(1), "x").thick(whole(-1))]), r#"x cannot be -1" thick: it must not be below zero"#),
        (
            pole().row("a", [Mark::new(whole(1), "x", PartSide::Line).thick(whole(1))]),
            r#"x is a line alone, and cannot be 1" thick: say on which side of it the part lies"#,
        ),
        (
            pole().with(Row::new("a", []).closing(whole(3), whole(3))),
            r#"row a cannot close from 3" to 3": it must end past where it begins"#,
        ),
        (pole().row("a", [past(Length::MIN, "x")]), "x is out of range: farther, or more finely divided, than a length can hold"),
        (pole().try_shifted(whole(-72)), r#"a pole cannot be 0" long: it must be above zero"#),
        (pole().only(["b"]), "the pole has no row b"),
        (StoryPole::merged("none", []), "there is no pole to merge"),
        (
            StoryPole::merged("two", [(&pole(), Length::ZERO), (&pole().flipped(), Length::ZERO)]),
            "one pole is measured from the bottom, the other from the top: flip one of them first",
        ),
        (
            StoryPole::merged("two", [(&pole().pair()[1], Length::ZERO), (&pole().pair()[0], Length::ZERO)]),
            "one pole is for the left hand, the other for the right: mirror one of them first",
        ),
    ];
    for (result, text) in cases {
        assert_eq!(refused(result), text);
    }
    let sticks = |stick, overlap| pole().sticks(stick, overlap).unwrap_err().to_string();
    assert_eq!(
        sticks(whole(48), whole(48)),
        r#"sticks of 48" cannot overlap by 48": the overlap must be above zero and shorter than the stick"#
    );
    assert_eq!(sticks(inches(1, 50), inches(1, 100)), "that makes 7199 sticks: at most 1000");
    assert!(sticks(Length::MAX, Length::ZERO).starts_with("sticks of "));
}

// Worked by hand: 100 in on sticks of 48 in that overlap by 6 in begin at 0, 42 and 84 in.
#[test]
fn sticks_slide_on_each_other() {
    let marks =
        [past(whole(44), "low"), past(inches(175, 2), "high").thick(whole(1)), past(whole(90), "at the end").thick(whole(4))];
    let pole = StoryPole::new("wall", whole(100)).row("studs", marks).unwrap();
    let sticks = pole.sticks(whole(48), whole(6)).unwrap();
    let joints =
        |stick: &StoryPole| stick.rows()[1].marks().iter().map(|mark| (mark.position, mark.name.clone())).collect::<Vec<_>>();
    let named =
        |places: &[(i64, u8)]| places.iter().map(|(place, joint)| (whole(*place), format!("joint {joint}"))).collect::<Vec<_>>();
    assert_eq!(sticks.iter().map(StoryPole::length).collect::<Vec<_>>(), [48, 48, 16].map(whole));
    assert_eq!(sticks[1].name(), "wall, stick 2 of 3, from 42\"");
    assert_eq!(joints(&sticks[0]), named(&[(42, 1), (48, 2)]));
    assert_eq!(joints(&sticks[1]), named(&[(0, 1), (6, 2), (42, 3), (48, 4)]));
    assert_eq!(joints(&sticks[2]), named(&[(0, 3), (6, 4)]));
    let studs = sticks.iter().map(|stick| positions(&stick.rows()[0])).collect::<Vec<_>>();
    assert_eq!(studs, [vec![whole(44)], vec![whole(2), inches(91, 2), whole(48)], vec![inches(7, 2), whole(6)]]);
    let cut = &sticks[1].rows()[0].marks()[2];
    assert_eq!((cut.thickness, cut.note.as_deref()), (None, Some("4\" thick, cut by the end of this stick")));
    assert_eq!(sticks[2].rows()[0].marks()[1].thickness, Some(whole(4)));
    assert_eq!(pole.sticks(whole(100), whole(6)).unwrap(), std::slice::from_ref(&pole));
    assert!(sticks.iter().all(|stick| stick.check(&Tape::sixteenths()).is_empty()));
}

// Worked by hand: sticks of 600 mm that overlap by 100 mm begin at 0 and 500 mm.
#[test]
fn sticks_of_a_metric_pole_are_told_in_millimeters_and_lose_no_mark() {
    let millimeters = |count| Length::new(count, Unit::Millimeter);
    let mark = |place, name, thickness| past(millimeters(place), name).thick(millimeters(thickness));
    let row = [mark(-40, "below", 18), mark(590, "shelf", 18), mark(1102, "above", 18)];
    let sticks = StoryPole::new("case", millimeters(1000)).row("side", row).unwrap();
    let sticks = sticks.sticks(millimeters(600), millimeters(100)).unwrap();
    assert_eq!(
        sticks.iter().map(StoryPole::name).collect::<Vec<_>>(),
        ["case, stick 1 of 2, from 0 mm", "case, stick 2 of 2, from 500 mm"]
    );
    assert_eq!(positions(&sticks[0].rows()[0]), [-40, 590].map(millimeters));
    assert_eq!(sticks[0].rows()[0].marks()[1].note.as_deref(), Some("18 mm thick, cut by the end of this stick"));
    assert_eq!(positions(&sticks[1].rows()[0]), [90, 602].map(millimeters));
    for (stick, name) in sticks.iter().zip(["below", "above"]) {
        assert!(matches!(&stick.check(&Tape::millimeters())[..], [Finding::OffStick { mark, .. }] if mark == name));
    }
}

#[test]
fn metric_figures_and_hostile_names_are_listed_on_one_line_each() {
    let marks = [past(inches(1, 3), "third\n\u{202E}evil").noted("a\tnote"), past(Length::new(365, Unit::Millimeter), "x")];
    let pole = StoryPole::new("a\nb", Length::new(1, Unit::Meter)).row("r", marks).unwrap();
    let listed = pole.listed(&Tape::millimeters()).unwrap().to_string();
    assert_eq!(
        listed,
        "Story pole  a b\n\
         Stick       1000 mm long, measured up from the bottom\n\
         Tape        a line every 1 mm; hook it at the bottom end, and leave it there for every mark\n\
         \n\
         Row  r\n      \
         line at   true place is              exact place   it is the    the X goes   mark\n  \
         1     8 mm    strong by about 0.467 mm   8 7/15 mm     lower edge   above it     third \u{FFFD}evil (a note)\n  \
         2   365 mm    dead on                    365 mm        lower edge   above it     x\n"
    );
    let long =
        StoryPole::new("y".repeat(10_000), whole(1)).row("z".repeat(10_000), [past(whole(0), &"w".repeat(10_000))]).unwrap();
    assert!(long.listed(&Tape::sixteenths()).unwrap().to_string().len() < 600);
    assert!(long.drawing().strokes(Strokes::Ascii).to_string().len() < 400);
    assert!(long.listed(&Tape::sixteenths().length(inches(-1, 1))).unwrap_err().to_string().contains("tape"));
}

/// A pole with marks as a shop has them.
#[derive(Clone, Debug)]
struct Any(StoryPole);

impl Arbitrary for Any {
    fn arbitrary(random: &mut Gen) -> Self {
        let length = Shop::arbitrary(random).0.abs() + whole(1);
        let datum = *random.choose(&[Datum::Bottom, Datum::Top, Datum::Left, Datum::Right]).unwrap();
        let hand = *random.choose(&[None, Some(Hand::Left), Some(Hand::Right)]).unwrap();
        let pole = StoryPole::new("any", length).measured_from(datum);
        let pole = hand.map_or(pole.clone(), |hand| pole.for_hand(hand));
        Self((0..u8::arbitrary(random) % 4).fold(pole, |pole, row| {
            let marks: Vec<_> = (0..u8::arbitrary(random) % 6).map(|_| mark(random)).collect();
            let row = Row::new(format!("row {row}"), marks);
            let closed = bool::arbitrary(random);
            pole.with(if closed { row.closing(Length::ZERO, length) } else { row }).unwrap()
        }))
    }
}

fn mark(random: &mut Gen) -> Mark {
    let side = *random.choose(&[PartSide::Past, PartSide::Before, PartSide::Centered, PartSide::Line]).unwrap();
    let name = *random.choose(&["shelf", "rail", "stile", ""]).unwrap();
    let mark = Mark::new(Shop::arbitrary(random).0, name, side);
    let is_thick = bool::arbitrary(random) && side != PartSide::Line;
    if is_thick { mark.thick(Shop::arbitrary(random).0.abs()) } else { mark }
}

properties! {
    fn flipped_twice_is_the_same_pole(pole: Any) -> bool {
        let flipped = pole.0.flipped();
        let places = |pole: &StoryPole| pole.rows().iter().flat_map(positions).collect::<Vec<_>>();
        let length = pole.0.length();
        let mut turned: Vec<_> = places(&flipped).into_iter().map(|place| length - place).collect();
        let mut own = places(&pole.0);
        own.sort();
        turned.sort();
        flipped.flipped() == pole.0 && own == turned && flipped.datum() == pole.0.datum().opposite()
    }

    fn mirrored_keeps_heights_and_twice_is_the_same_pole(pole: Any) -> bool {
        let mirrored = pole.0.mirrored();
        mirrored.rows() == pole.0.rows() && mirrored.mirrored() == pole.0
    }

    fn merging_is_free_of_order(one: Any, other: Any, third: Any, by: Shop) -> bool {
        let by = by.0.abs();
        let merged = |poles: &[(&StoryPole, Length)]| StoryPole::merged("all", poles.iter().copied());
        let (one, other, third) = ((&one.0, Length::ZERO), (&other.0, by), (&third.0, Length::ZERO));
        let all = merged(&[one, other, third]);
        match (all, merged(&[third, other, one]), merged(&[other, one, third])) {
            (Ok(all), Ok(backward), Ok(mixed)) => {
                let stepped = merged(&[one, other]).and_then(|two| merged(&[(&two, Length::ZERO), third]));
                all == backward && all == mixed && stepped == Ok(all)
            }
            (one, other, third) => one.is_err() && other.is_err() && third.is_err(),
        }
    }

    fn shifted_there_and_back_is_the_same_pole(pole: Any, by: Shop) -> bool {
        let shifted = pole.0.try_shifted(by.0.abs()).unwrap();
        shifted.try_shifted(-by.0.abs()) == Ok(pole.0)
    }

    fn sticks_keep_every_mark_where_it_was(pole: Any, stick: u8, overlap: u8) -> bool {
        let (stick, overlap) = (whole(i64::from(stick)), whole(i64::from(overlap)));
        let Ok(sticks) = pole.0.sticks(stick, overlap) else { return overlap.is_zero() || overlap >= stick || pole.0.length() > whole(200) };
        let begins = |number: usize| (stick - overlap) * i64::try_from(number).unwrap();
        pole.0.rows().iter().enumerate().all(|(number, row)| {
            row.marks().iter().all(|mark| {
                let on = |(count, stick): (usize, &StoryPole)| {
                    stick.rows()[number].marks().iter().any(|other| other.position + begins(count) == mark.position)
                };
                sticks.iter().enumerate().any(on)
            })
        })
    }

    fn any_pole_is_checked_listed_and_drawn(pole: Any) -> bool {
        let tape = Tape::sixteenths();
        pole.0.check(&tape).iter().all(|finding| !finding.to_string().is_empty())
            && pole.0.listed(&tape).is_ok()
            && pole.0.drawing().to_string().lines().all(|line| line.chars().count() <= 79)
    }
}

#[test]
fn a_limit_on_a_layout_is_none_of_a_pole() {
    // A layout may have far more members than anybody marks.
    let many = Spacing::equal_parts(2_000_000).widest(Widest::AtMost(whole(1))).over(whole(72)).unwrap();
    let refused = Row::try_from_layout("a", "part", &many, Edge::Near).unwrap_err();
    assert_eq!(refused.to_string(), "that makes 1999999 marks: at most 1000000");
}
