//! Tapes and readings. A reading is written with more parts than it needs, so that nobody has to work one out,
//! and taken in only if they agree.

use super::error::Refusal;
use super::object::object;
use crate::length::{Length, RoundingMode};
use crate::tape::{Grain, Lean, Reading, Tape, TapeError};

object! {
    Tape, "a tape", of_tape, to_tape,
    step: Length, mode: RoundingMode, offset: Length, length: Option<Length>
}

object! {
    Reading, "a reading", of_reading, to_reading,
    mark: Length, shown: Length, leftover: Length, lean: Lean, true_position: Length
}

const fn of_tape(tape: &Tape) -> (Length, RoundingMode, Length, Option<Length>) {
    (tape.step(), tape.rounding_mode(), tape.datum_reading(), tape.longest_reading())
}

fn to_tape(step: Length, mode: RoundingMode, offset: Length, length: Option<Length>) -> Result<Tape, TapeError> {
    let tape = Tape::with_step(step)?.mode(mode).offset(offset);
    Ok(length.map_or(tape, |length| tape.length(length)))
}

fn of_reading(reading: &Reading) -> (Length, Length, Length, Lean, Length) {
    (reading.mark(), reading.shown(), reading.leftover(), reading.lean(), reading.true_position())
}

fn to_reading(mark: Length, shown: Length, leftover: Length, lean: Lean, position: Length) -> Result<Reading, Refusal> {
    if mark.checked_add(leftover) != Some(position) {
        return Err(Refusal::Apart { mark, leftover, position });
    }
    let offset = shown.checked_sub(mark).ok_or(Refusal::Offset { mark, shown })?;
    let reading = Reading::new(mark, offset, leftover.ticks().num(), Grain::of(leftover));
    match reading.lean() {
        is if is != lean => Err(Refusal::Lean { leftover, is, lean }),
        _ => Ok(reading),
    }
}
