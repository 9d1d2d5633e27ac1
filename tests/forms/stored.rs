//! The forms of everything that another program would store: exact JSON, exact bytes, and back, starting from
//! values. What is refused stands in `refusing.rs`, plain numbers in `plain.rs`.
use std::collections::BTreeMap;
use std::fmt::Debug;

use crate::support::{Any, below_the_line, wide};
use num_rational::Ratio;
use quickcheck::{Arbitrary, Gen};
use scantling::{
    Area, Axis, Called, Datum, Dimension, Edge, End, Hand, Lean, Length, LumberKind, Mark, Money, Nominal, PartSide, Price,
    PricedBy, Reading, RoundingMode, Row, Seasoning, Side, Size, StoryPole, Surface, TallyRule, Tape, Toleranced, Unit, Volume,
};
use serde::Serialize;
use serde::de::DeserializeOwned;

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

fn whole(count: i64) -> Length {
    Length::new(count, Unit::Inch)
}

/// Out and back, by a format for people, a compact one and a compact one with names.
fn comes_back<T: Serialize + DeserializeOwned + PartialEq>(value: &T) -> bool {
    let json = serde_json::to_string(value).unwrap();
    let tree = serde_json::to_value(value).unwrap();
    let bytes = postcard::to_allocvec(value).unwrap();
    let mut named = Vec::new();
    ciborium::into_writer(value, &mut named).unwrap();
    serde_json::from_str::<T>(&json).unwrap() == *value
        && serde_json::from_value::<T>(tree).unwrap() == *value
        && postcard::from_bytes::<T>(&bytes).unwrap() == *value
        && ciborium::from_reader::<T, _>(&*named).unwrap() == *value
}

/// Exactly this JSON, exactly these bytes, and back.
#[track_caller]
#[allow(clippy::needless_pass_by_value)] // so that a row is a value and nothing else
fn has<T: Serialize + DeserializeOwned + PartialEq + Debug>(value: T, json: &str, bytes: &[u8]) {
    assert_eq!(serde_json::to_string(&value).unwrap(), json);
    assert_eq!(postcard::to_allocvec(&value).unwrap(), bytes, "{json}");
    assert!(comes_back(&value), "{json}");
}

// The bytes are worked by hand from the format's description: integers past 8 bits in groups of 7 from the lowest,
// signed ones doubled first, less one if negative; a u8 as it is; before an optional value 0 or 1, before a list its length.

#[test]
fn quantities() {
    has(inches(87, 5), r#""17 2/5 in""#, &[0xAE, 1, 5]);
    has(whole(72), r#""72 in""#, &[0x90, 1, 1]);
    has(inches(-1, 2), r#""-1/2 in""#, &[1, 2]);
    has(Length::ZERO, r#""0 in""#, &[0, 1]);
    has(Length::new(365, Unit::Millimeter), r#""14 47/127 in""#, &[0xC2, 0x1C, 127]);
    has(whole(72) * whole(26), r#""1872 sq in""#, &[0xA0, 0x1D, 1]);
    has(inches(-7, 2) * whole(1), r#""-3 1/2 sq in""#, &[13, 2]);
    has(Area::ZERO, r#""0 sq in""#, &[0, 1]);
    has(whole(12) * whole(12) * whole(1), r#""144 cu in""#, &[0xA0, 2, 1]);
    has(inches(1, 2) * inches(1, 2) * inches(1, 2), r#""1/8 cu in""#, &[2, 8]);
    has(Volume::ZERO, r#""0 cu in""#, &[0, 1]);
}

#[test]
fn words() {
    for (place, (unit, word)) in (0..).zip(Unit::ALL.into_iter().zip(["in", "ft", "yd", "mm", "cm", "m"])) {
        has(unit, &format!("\"{word}\""), &[place]);
    }
    has(RoundingMode::TiesUp, r#""ties up""#, &[0]);
    has(RoundingMode::TiesEven, r#""ties even""#, &[1]);
    has(RoundingMode::TiesAway, r#""ties away""#, &[2]);
    has(RoundingMode::Down, r#""down""#, &[3]);
    has(RoundingMode::Up, r#""up""#, &[4]);
    has(RoundingMode::TowardZero, r#""toward zero""#, &[5]);
    has(Lean::Strong, r#""strong""#, &[0]);
    has(Lean::Shy, r#""shy""#, &[1]);
    has(Lean::DeadOn, r#""dead on""#, &[2]);
    has(Edge::Near, r#""near""#, &[0]);
    has(Edge::Center, r#""center""#, &[1]);
    has(Edge::Far, r#""far""#, &[2]);
    has(Axis::Thickness, r#""thickness""#, &[0]);
    has(Axis::Width, r#""width""#, &[1]);
    has(Axis::Length, r#""length""#, &[2]);
    has(Axis::Height, r#""height""#, &[3]);
    has(Axis::Depth, r#""depth""#, &[4]);
    has(Side::Over, r#""over""#, &[0]);
    has(Side::On, r#""on""#, &[1]);
    has(Side::Under, r#""under""#, &[2]);
}

#[test]
fn ends() {
    has(End::Gap, r#""gap""#, &[0, 0]);
    has(End::HalfGap, r#""half gap""#, &[1, 0]);
    has(End::Flush, r#""flush""#, &[2, 0]);
    has(End::Margin(whole(2)), r#"{"margin":"2 in"}"#, &[3, 1, 4, 1]);
}

#[test]
fn tapes_and_readings() {
    has(Tape::sixteenths(), r#"{"step":"1/16 in","mode":"ties up","offset":"0 in","length":null}"#, &[2, 16, 0, 0, 1, 0]);
    let burned = Tape::millimeters().mode(RoundingMode::Down).offset(whole(1)).length(Length::new(16, Unit::Foot));
    has(burned, r#"{"step":"5/127 in","mode":"down","offset":"1 in","length":"192 in"}"#, &[10, 127, 3, 2, 1, 1, 0x80, 3, 1]);
    let strong = Tape::sixteenths().offset(whole(1)).read(inches(72, 5)).unwrap();
    has(
        strong,
        r#"{"mark":"14 3/8 in","shown":"15 3/8 in","leftover":"1/40 in","lean":"strong","true_position":"14 2/5 in"}"#,
        &[0xE6, 1, 8, 0xF6, 1, 8, 2, 40, 0, 0x90, 1, 5],
    );
    let shy = Tape::sixteenths().read(inches(144, 5)).unwrap();
    has(
        shy,
        r#"{"mark":"28 13/16 in","shown":"28 13/16 in","leftover":"-1/80 in","lean":"shy","true_position":"28 4/5 in"}"#,
        &[0x9A, 7, 16, 0x9A, 7, 16, 1, 80, 1, 0xA0, 2, 5],
    );
    let dead_on = Tape::sixteenths().read(whole(12)).unwrap();
    has(
        dead_on,
        r#"{"mark":"12 in","shown":"12 in","leftover":"0 in","lean":"dead on","true_position":"12 in"}"#,
        &[24, 1, 24, 1, 0, 1, 2, 24, 1],
    );
}

#[test]
fn sizes_tolerances_and_calls() {
    let (wide, high) = (Dimension::new(whole(24), Some(Axis::Width)), Dimension::new(whole(36), None));
    has(wide, r#"{"length":"24 in","axis":"width"}"#, &[48, 1, 1, 1]);
    has(high, r#"{"length":"36 in","axis":null}"#, &[72, 1, 0]);
    has(
        Size::checked_new(&[wide, high]).unwrap(),
        r#"[{"length":"24 in","axis":"width"},{"length":"36 in","axis":null}]"#,
        &[2, 48, 1, 1, 1, 72, 1, 0],
    );
    has(
        Toleranced::checked_new(whole(24), inches(1, 32), Length::ZERO).unwrap(),
        r#"{"nominal":"24 in","least":"24 in","most":"24 1/32 in"}"#,
        &[48, 1, 48, 1, 0x82, 12, 32],
    );
    has(
        Called::checked_new(inches(139, 8), Side::Over, 1).unwrap(),
        r#"{"mark":"17 3/8 in","side":"over","steps":1,"said":null}"#,
        &[0x96, 2, 8, 0, 1, 1, 0],
    );
    has(
        Called::checked_by(inches(139, 8), Side::Under, inches(1, 64)).unwrap(),
        r#"{"mark":"17 3/8 in","side":"under","steps":null,"said":"1/64 in"}"#,
        &[0x96, 2, 8, 2, 0, 1, 2, 64],
    );
    has(
        Called::checked_new(whole(12), Side::On, 0).unwrap(),
        r#"{"mark":"12 in","side":"on","steps":0,"said":null}"#,
        &[24, 1, 1, 1, 0, 0],
    );
}

#[test]
fn story_poles() {
    for (place, (datum, word)) in
        (0..).zip([(Datum::Bottom, "bottom"), (Datum::Top, "top"), (Datum::Left, "left"), (Datum::Right, "right")])
    {
        has(datum, &format!("\"{word}\""), &[place]);
    }
    has(Hand::Left, r#""left""#, &[0]);
    has(Hand::Right, r#""right""#, &[1]);
    let sides = [PartSide::Past, PartSide::Before, PartSide::Centered, PartSide::Line];
    for (place, (side, word)) in (0..).zip(sides.into_iter().zip(["past", "before", "centered", "line"])) {
        has(side, &format!("\"{word}\""), &[place]);
    }
    let shelf = Mark::new(inches(72, 5), "shelf", PartSide::Past).thick(inches(3, 4));
    has(
        shelf.clone(),
        r#"{"position":"14 2/5 in","name":"shelf","side":"past","thickness":"3/4 in","note":null}"#,
        &[0x90, 1, 5, 5, b's', b'h', b'e', b'l', b'f', 0, 1, 6, 4, 0],
    );
    let level = Mark::new(whole(3), "", PartSide::Line).noted("x");
    has(
        level.clone(),
        r#"{"position":"3 in","name":"","side":"line","thickness":null,"note":"x"}"#,
        &[6, 1, 0, 3, 0, 1, 1, b'x'],
    );
    has(Row::new("a", []), r#"{"name":"a","marks":[],"closes":null}"#, &[1, b'a', 0, 0]);
    let closing = Row::new("a", [level]).closing(Length::ZERO, whole(72));
    has(
        closing.clone(),
        r#"{"name":"a","marks":[{"position":"3 in","name":"","side":"line","thickness":null,"note":"x"}],"closes":{"from":"0 in","to":"72 in"}}"#,
        &[1, b'a', 1, 6, 1, 0, 3, 0, 1, 1, b'x', 1, 0, 1, 0x90, 1, 1],
    );
    has(
        StoryPole::new("p", whole(72)).for_hand(Hand::Right),
        r#"{"name":"p","length":"72 in","datum":"bottom","hand":"right","rows":[]}"#,
        &[1, b'p', 0x90, 1, 1, 0, 1, 1, 0],
    );
    let pole = StoryPole::new("p\u{202E}<\"", whole(72)).measured_from(Datum::Left).with(closing).unwrap();
    assert!(comes_back(&pole.row("b", [shelf]).unwrap()));
}

#[test]
fn stock_and_prices() {
    for (place, (kind, word)) in
        (0..).zip(LumberKind::ALL.into_iter().zip(["board", "dimension", "timber", "decking", "hardwood", "panel", "sheet"]))
    {
        has(kind, &format!("\"{word}\""), &[place]);
    }
    for (place, (rule, word)) in
        (0..).zip(TallyRule::ALL.into_iter().zip(["exact", "one inch minimum", "nearest foot", "halves by turns"]))
    {
        has(rule, &format!("\"{word}\""), &[place]);
    }
    has(Seasoning::Dry, r#""dry""#, &[0]);
    has(Seasoning::Green, r#""green""#, &[1]);
    has(Surface::Rough, r#""rough""#, &[0]);
    has(Surface::OneSide, r#""S1S""#, &[1]);
    has(Surface::TwoSides, r#""S2S""#, &[2]);
    has(Surface::FourSides, r#""S4S""#, &[3]);
    has(PricedBy::BoardFoot, r#""board foot""#, &[0]);
    has(PricedBy::LinearFoot, r#""linear foot""#, &[1]);
    has(PricedBy::SquareFoot, r#""square foot""#, &[2]);
    has(PricedBy::Piece, r#""piece""#, &[3]);
    has(Money::cents(875), r#""8.75""#, &[70, 4]);
    has(Money::cents(-50), r#""-0.50""#, &[1, 2]);
    has(Money::ZERO, r#""0.00""#, &[0, 1]);
    let third = |count| Money::cents(100).checked_times(Ratio::new(count, 3)).unwrap();
    has(third(350), r#""116 2/3""#, &[0xBC, 5, 3]);
    has(third(-1), r#""-1/3""#, &[1, 3]);
    has(Price::new(Money::cents(62), PricedBy::LinearFoot), r#"{"money":"0.62","by":"linear foot"}"#, &[62, 50, 1]);
    has(
        Nominal::softwood(whole(2), whole(4)).long(whole(96)),
        r#"{"stock":"softwood","thickness":"2 in","width":"4 in","length":"96 in","seasoning":null,"surface":null}"#,
        &[0, 1, 4, 1, 1, 8, 1, 1, 0xC0, 1, 1, 0, 0],
    );
    has(
        Nominal::hardwood(whole(2)).seasoned(Seasoning::Green).surfaced(Surface::TwoSides),
        r#"{"stock":"hardwood","thickness":"2 in","width":null,"length":null,"seasoning":"green","surface":"S2S"}"#,
        &[2, 1, 4, 1, 0, 0, 1, 1, 1, 2],
    );
    has(
        Nominal::sheet(whole(48), whole(96)),
        r#"{"stock":"panel","thickness":null,"width":"48 in","length":"96 in","seasoning":null,"surface":null}"#,
        &[3, 0, 1, 96, 1, 1, 0xC0, 1, 1, 0, 0],
    );
    for piece in [Nominal::decking(inches(5, 4)), Nominal::panel(inches(23, 32))] {
        assert!(comes_back(&piece));
    }
}

#[test]
fn keys_of_a_map() {
    let openings = BTreeMap::from([(inches(27, 2), "upper"), (whole(9), "lower")]);
    assert_eq!(serde_json::to_string(&openings).unwrap(), r#"{"9 in":"lower","13 1/2 in":"upper"}"#);
    let back: BTreeMap<Length, String> = serde_json::from_str(r#"{"9 in":"lower","13 1/2 in":"upper"}"#).unwrap();
    assert!(back.keys().eq(openings.keys()));
}

#[test]
fn any_notation_with_a_unit_is_read() {
    // Values worked by hand.
    for (text, length) in [
        ("17 5/8\\\"", inches(141, 8)),
        ("6'-3 1/2\\\"", inches(151, 2)),
        ("6' 3", whole(75)),
        ("6ft3", whole(75)),
        ("365 mm", Length::new(365, Unit::Millimeter)),
        ("1m20", Length::new(120, Unit::Centimeter)),
        ("\\u00bd in", inches(1, 2)),
        (" -0' 6\\\" ", whole(-6)),
        ("0 in", Length::ZERO),
        ("two feet", whole(24)),
    ] {
        assert_eq!(serde_json::from_str::<Length>(&format!("\"{text}\"")).unwrap(), length, "{text}");
    }
    assert_eq!(serde_json::from_str::<Area>(r#""2 sq ft""#).unwrap(), whole(24) * whole(12));
    assert_eq!(serde_json::from_str::<Volume>(r#""1 cu ft""#).unwrap(), whole(12) * whole(12) * whole(12));
}

#[test]
fn fields_in_any_order_and_null_left_out() {
    let tape: Tape = serde_json::from_str(r#"{"offset":"1 in","mode":"up","step":"1 mm"}"#).unwrap();
    assert_eq!(tape, Tape::millimeters().mode(RoundingMode::Up).offset(whole(1)));
    let called: Called = serde_json::from_str(r#"{"side":"over","mark":"12 in","said":"1/40 in"}"#).unwrap();
    assert_eq!(Some(called), Called::checked_by(whole(12), Side::Over, inches(1, 40)));
    let size: Size = serde_json::from_str(r#"[{"length":"2 ft"},{"axis":"height","length":"3 ft"}]"#).unwrap();
    let high = Dimension::new(whole(36), Some(Axis::Height));
    assert_eq!(Some(size), Size::checked_new(&[Dimension::new(whole(24), None), high]));
}

#[test]
fn large_exact_numbers_keep_every_digit() {
    // Field case of another kind of measure: 1048576 must not come back as 1048600.
    has(whole(1_048_576), r#""1048576 in""#, &[0x80, 0x80, 0x80, 1, 1]);
    // 2^127 - 1 ticks, worked out with big integers elsewhere.
    let edge = r#""3098046300820592933817554 54777228105727/54918864000000 in""#;
    assert_eq!(serde_json::to_string(&Length::MAX).unwrap(), edge);
    assert_eq!(serde_json::from_str::<Length>(edge).unwrap(), Length::MAX);
}

#[derive(Clone, Debug)]
struct Values(Vec<Length>, Vec<Ratio<i128>>, Vec<u8>);

/// Lengths, ratios and choices to make values of.
impl Arbitrary for Values {
    fn arbitrary(random: &mut Gen) -> Self {
        let ratio = |random: &mut Gen| Ratio::new(wide(random), below_the_line(random).into());
        Self(
            (0..4).map(|_| Any::arbitrary(random).0).collect(),
            (0..2).map(|_| ratio(random)).collect(),
            (0..4).map(|_| u8::arbitrary(random)).collect(),
        )
    }
}

impl Values {
    fn choice<T: Copy>(&self, place: usize, among: &[T]) -> T {
        among[usize::from(self.2[place]) % among.len()]
    }

    fn mode(&self) -> RoundingMode {
        use RoundingMode::{Down, TiesAway, TiesEven, TiesUp, TowardZero, Up};
        self.choice(0, &[TiesUp, TiesEven, TiesAway, Down, Up, TowardZero])
    }

    fn tape(&self) -> Option<Tape> {
        let tape = Tape::with_step(self.0[0]).ok()?.mode(self.mode()).offset(self.0[1]);
        Some(if self.2[1] % 2 == 0 { tape } else { tape.length(self.0[2]) })
    }

    fn reading(&self) -> Option<Reading> {
        let steps = [Tape::sixteenths(), Tape::half_millimeters(), Tape::with_step(self.0[0].abs()).ok()?];
        self.choice(1, &steps).mode(self.mode()).offset(self.0[1]).read(self.0[3]).ok()
    }

    fn size(&self) -> Option<Size> {
        let axis = |place| self.choice(place, &[None, Some(Axis::Width), Some(Axis::Height), Some(Axis::Depth)]);
        let lengths: Vec<_> = (0..3).map(|place| Dimension::new(self.0[place], axis(place))).collect();
        Size::checked_new(&lengths[..self.choice(3, &[2, 3])])
    }

    fn called(&self) -> Option<Called> {
        let side = self.choice(0, &[Side::Over, Side::On, Side::Under]);
        let steps = if side == Side::On { 0 } else { self.2[1] };
        match self.2[2] % 2 {
            0 => Called::checked_new(self.0[0], side, steps),
            _ => Called::checked_by(self.0[0], side, self.0[1].abs()),
        }
    }
}

impl Values {
    fn pole(&self) -> Option<StoryPole> {
        let side = self.choice(0, &[PartSide::Past, PartSide::Before, PartSide::Centered]);
        let marks = self.0[..3].iter().map(|place| Mark::new(*place, "mark", side).thick(self.0[3].abs()));
        let pole = StoryPole::new("any", self.0[3].abs()).for_hand(self.choice(1, &[Hand::Left, Hand::Right]));
        pole.row("row", marks).ok()
    }
}

properties! {
    fn any_story_pole(values: Values) -> bool {
        comes_back(&values.pole())
    }

    fn any_quantity(values: Values) -> bool {
        let square = whole(1) * whole(1);
        let area = square.checked_mul_ratio(values.1[0]).unwrap_or(square);
        let volume = (square * whole(1)).checked_mul_ratio(values.1[1]).unwrap_or_default();
        comes_back(&values.0) && comes_back(&area) && comes_back(&volume) && comes_back(&End::Margin(values.0[0]))
    }

    fn any_tape_and_reading(values: Values) -> bool {
        comes_back(&values.tape()) && comes_back(&values.reading())
    }

    fn any_size_tolerance_and_call(values: Values) -> bool {
        let toleranced = Toleranced::checked_new(values.0[0], values.0[1].abs(), values.0[2].abs());
        comes_back(&values.size()) && comes_back(&toleranced) && comes_back(&values.called())
    }
}

#[test]
fn the_edges_of_what_can_be_held() {
    let square = whole(1) * whole(1);
    for ratio in [Ratio::from(i128::MAX), Ratio::from(-i128::MAX), Ratio::new(i128::MAX, u64::MAX.into())] {
        let area = square.checked_mul_ratio(ratio).unwrap();
        assert!(comes_back(&area) && comes_back(&area.checked_volume(whole(1))), "{ratio}");
    }
    for length in [Length::MAX, Length::MIN, inches(1, u64::MAX), crate::support::ticks(i128::MAX, u64::MAX)] {
        assert!(comes_back(&length), "{length}");
    }
}

#[test]
fn limits_that_no_amount_could_say() {
    // 2^61 - 1 is a prime, from memory; the two fractions have no denominator in common that could be held.
    let (nominal, most) = (inches(1, (1 << 61) - 1), inches(1, 1 << 60));
    assert_eq!(most.checked_sub(nominal), None);
    assert!(comes_back(&Toleranced::checked_within(nominal, Length::ZERO, most).unwrap()));
}
