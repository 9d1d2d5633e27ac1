//! Called lengths: the mark, the side, and either steps that only the crew knows or a length that was said.

use super::error::Refusal;
use super::object::object;
use super::word::Word;
use crate::length::Length;
use crate::parse::{Called, Side};

object! {
    Called, "a called length", of_called, to_called,
    mark: Length, side: Side, steps: Option<u8>, said: Option<Length>
}

const fn of_called(called: &Called) -> (Length, Side, Option<u8>, Option<Length>) {
    (called.mark(), called.side(), called.steps(), called.said())
}

fn to_called(mark: Length, side: Side, steps: Option<u8>, said: Option<Length>) -> Result<Called, Refusal> {
    let called = match (steps, said) {
        (Some(steps), None) => Called::checked_new(mark, side, steps),
        (None, Some(said)) => Called::checked_by(mark, side, said),
        _ => return Err(Refusal::Amount),
    };
    let refusal = if side == Side::On { Refusal::OnTheMark } else { Refusal::OffTheMark { side: side.word() } };
    called.ok_or(refusal)
}
