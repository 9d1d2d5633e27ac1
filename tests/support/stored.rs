//! What must hold for any stored case and any stored pole whatever: it is refused, or it can be worked with to the end, and comes
//! back as it was. The choices come from elsewhere: from `forms/disturbed.rs`, and from the fuzz target `stored`.

use std::fmt::Debug;

use scantling::{
    Allowances, Back, Base, Case, Closing, FaceFrame, Joint, Length, Mark, Overall, PartSide, PinHoles, Shelves, StoryPole, Tape,
    Unit,
};
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::{Value, json};

use super::bytes::choices;
use super::texts::PIECES;

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

/// Stored as a shop would store them.
fn seed(choose: &mut impl FnMut(u64) -> u64) -> Value {
    let case = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).sheet(inches(23, 32));
    let rabbet = Back::Rabbet { thickness: inches(7, 32), depth: inches(3, 8) };
    let pins = PinHoles::new(inches(1, 1), inches(4, 1), inches(3, 2), inches(3, 8));
    let framed = case
        .clone()
        .measured_over(Overall::Frame)
        .frame(FaceFrame::new(inches(3, 4), inches(7, 4)))
        .joined(Joint::Dado(inches(1, 4)))
        .back(rabbet)
        .bays(2, inches(23, 32))
        .base(Base::SidesToFloor { height: inches(4, 1), recess: inches(3, 1), stock: inches(3, 4) })
        .allowing(Allowances::USUAL)
        .shelves(Shelves::Equal(4));
    let marks = [14, 28, 42].map(|at| Mark::new(inches(at, 1), format!("shelf at {at}"), PartSide::Past).thick(inches(3, 4)));
    let pole = StoryPole::new("ware case", inches(72, 1)).row("side", marks).expect("marks in order");
    match choose(4) {
        0 => stored(&framed),
        1 => stored(&case.shelves(Shelves::Adjustable(5, pins))),
        2 => stored(&case.shelves(Shelves::Proportional(vec![3, 2, 2]))),
        _ => stored(&pole),
    }
}

fn stored(value: &impl Serialize) -> Value {
    serde_json::to_value(value).expect("a form for every value")
}

/// A stored case or pole with a few places changed.
pub fn disturbed(choose: &mut impl FnMut(u64) -> u64) -> Value {
    let mut value = seed(choose);
    for _ in 0..choose(4) {
        disturb(&mut value, choose);
    }
    value
}

/// One of them, by bytes.
///
/// # Panics
///
/// When something does not hold.
pub fn stored_by_bytes(bytes: &[u8]) {
    can_be_worked_with(&disturbed(&mut choices(bytes)));
}

/// Goes down to a place, and puts something else there.
fn disturb(value: &mut Value, choose: &mut impl FnMut(u64) -> u64) {
    let goes_on = choose(8) > 0;
    match value {
        Value::Object(fields) if goes_on && !fields.is_empty() => {
            let place = usize::try_from(choose(fields.len() as u64)).expect("a place");
            let name = fields.keys().nth(place).expect("a field").clone();
            if choose(16) == 0 {
                fields.remove(&name);
            } else {
                disturb(&mut fields[&name], choose);
            }
        }
        Value::Array(items) if goes_on && !items.is_empty() => {
            let place = usize::try_from(choose(items.len() as u64)).expect("a place");
            if choose(4) == 0 {
                items.push(items[place].clone());
            } else {
                disturb(&mut items[place], choose);
            }
        }
        _ => *value = other(value, choose),
    }
}

fn other(value: &Value, choose: &mut impl FnMut(u64) -> u64) -> Value {
    let number = [0, 1, 2, 3, 7, 16, 1000, 1 << 31, u64::MAX][usize::try_from(choose(9)).expect("one of nine")];
    match choose(8) {
        0 => Value::Null,
        1 => json!(number),
        2 => json!([value, value]),
        3 => json!(PIECES[usize::try_from(choose(PIECES.len() as u64)).expect("a piece")]),
        4 => json!(format!("{}/{} in", choose(1 << 20), 1 + choose(100))),
        5 => json!(format!("-{} in", choose(100))),
        6 => json!(format!("{number} ft")),
        _ => json!(format!("{} {}/64 in", choose(80), choose(64))),
    }
}

/// Everything that can be made of it.
///
/// # Panics
///
/// When something does not hold.
pub fn can_be_worked_with(stored: &Value) {
    let tape = Tape::sixteenths();
    if let Some(pole) = read::<StoryPole>(stored) {
        pole_can_be_worked_with(&pole, &tape);
    }
    let Some(case) = read::<Case>(stored) else { return };
    let Ok(plan) = case.plan() else { return };
    assert!(plan.parts().iter().all(|part| part.length().total().is_ok_and(|length| length > Length::ZERO)), "{case:?}");
    assert!(plan.closings().iter().all(Closing::is_closed), "{case:?}");
    plan.poles().iter().for_each(|pole| pole_can_be_worked_with(pole, &tape));
    let _ = (
        plan.advice(&tape),
        plan.cautions(),
        plan.order_of_work(),
        plan.finished_area(),
        plan.square(inches(1, 16)),
        plan.tip_up(inches(1, 16)),
    );
}

fn pole_can_be_worked_with(pole: &StoryPole, tape: &Tape) {
    assert_eq!((pole.flipped().flipped(), pole.mirrored().mirrored()), (pole.clone(), pole.clone()));
    pole.check(tape).iter().for_each(|finding| assert!(!finding.told(tape).contains(char::is_control), "{finding:?}"));
    let _ =
        (pole.listed(tape).map(|list| list.to_string()), pole.drawing().to_string(), pole.sticks(inches(48, 1), inches(2, 1)));
}

/// What is taken in comes back as it was.
fn read<T: Serialize + DeserializeOwned + PartialEq + Debug>(value: &Value) -> Option<T> {
    let taken: T = serde_json::from_value(value.clone()).ok()?;
    assert_eq!(serde_json::from_value::<T>(stored(&taken)).expect("its own form"), taken);
    Some(taken)
}
