//! Stored cases and poles with something changed in them, by chance: none breaks anything. What is refused, and how, stands in
//! `refusing.rs` and `cases.rs`.

use crate::support::Choices;
use crate::support::bytes::replay;
use crate::support::chance::random;
use crate::support::stored::{can_be_worked_with, disturbed, stored_by_bytes};

#[test]
fn whatever_is_stored_is_refused_or_can_be_worked_with() {
    let holds = |choices: Choices| can_be_worked_with(&disturbed(&mut choices.take()));
    random().tests(2000).quickcheck(holds as fn(Choices));
}

/// What was kept from fuzzing: see `texts/replayed.rs`.
#[test]
fn what_was_kept_is_refused_or_can_be_worked_with() {
    replay(include_str!("../data/fuzz_stored.txt"), stored_by_bytes);
}
