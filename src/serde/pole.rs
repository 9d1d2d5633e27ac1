//! Story poles, their rows and marks. A row whose marks do not stand in order from the datum is refused: it is more
//! likely that two digits changed places than that nobody cared.

use alloc::string::String;
use alloc::vec::Vec;
use core::convert::Infallible;

use thiserror::Error;

use super::object::object;
use super::word::words;
use crate::length::Length;
use crate::pole::{Datum, Hand, Mark, PartSide, PoleError, Row, StoryPole, label};

words!(Datum, "an end of a pole", 0 Bottom "bottom", 1 Top "top", 2 Left "left", 3 Right "right");
words!(Hand, "a hand", 0 Left "left", 1 Right "right");
words!(PartSide, "a side of the line", 0 Past "past", 1 Before "before", 2 Centered "centered", 3 Line "line");

object! {
    Mark, "a mark on a pole", of_mark,
    |position, name: String, side, thickness, note| Ok::<_, Infallible>(Mark { thickness, note, ..Mark::new(position, name, side) }),
    position: Length, name: String, side: PartSide, thickness: Option<Length>, note: Option<String>
}

object! {
    Row, "a row of marks", of_row, to_row,
    name: String, marks: Vec<Mark>, closes: Option<Closes>
}

object! {
    StoryPole, "a story pole", of_pole, to_pole,
    name: String, length: Length, datum: Datum, hand: Option<Hand>, rows: Vec<Row>
}

/// From where to where a row must reach.
#[derive(Clone, Copy)]
struct Closes {
    from: Length,
    to: Length,
}

object! {
    Closes, "from where to where a row must reach", |closes: &Self| (closes.from, closes.to),
    |from, to| Ok::<_, Infallible>(Closes { from, to }),
    from: Length, to: Length
}

#[derive(Debug, Error)]
#[error("the marks of a row stand in order from the datum: mark {number} of row {row}, at {after}, comes after one at {before}")]
struct OutOfOrder {
    row: String,
    number: usize,
    before: Length,
    after: Length,
}

type MarkParts<'a> = (Length, &'a str, PartSide, Option<Length>, Option<&'a str>);

fn of_mark(mark: &Mark) -> MarkParts<'_> {
    (mark.position, &mark.name, mark.side, mark.thickness, mark.note.as_deref())
}

fn of_row(row: &Row) -> (&str, &[Mark], Option<Closes>) {
    (row.name(), row.marks(), row.closes().map(|(from, to)| Closes { from, to }))
}

fn to_row(name: String, marks: Vec<Mark>, closes: Option<Closes>) -> Result<Row, OutOfOrder> {
    let mut places = (2..).zip(marks.windows(2)).map(|(number, pair)| (number, pair[0].position, pair[1].position));
    if let Some((number, before, after)) = places.find(|(_, before, after)| before > after) {
        return Err(OutOfOrder { row: label::name(&name), number, before, after });
    }
    let row = Row::new(name, marks);
    Ok(match closes {
        Some(closes) => row.closing(closes.from, closes.to),
        None => row,
    })
}

fn of_pole(pole: &StoryPole) -> (&str, Length, Datum, Option<Hand>, &[Row]) {
    (pole.name(), pole.length(), pole.datum(), pole.hand(), pole.rows())
}

fn to_pole(name: String, length: Length, datum: Datum, hand: Option<Hand>, rows: Vec<Row>) -> Result<StoryPole, PoleError> {
    if length.is_zero() || length.is_negative() {
        return Err(PoleError::NoLength { length });
    }
    let pole = StoryPole::new(name, length).measured_from(datum);
    let pole = match hand {
        Some(hand) => pole.for_hand(hand),
        None => pole,
    };
    rows.into_iter().try_fold(pole, StoryPole::with)
}
