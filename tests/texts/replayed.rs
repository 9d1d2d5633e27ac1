//! What was kept from fuzzing, as few inputs as reach what all of them reached, is put through the same targets again. Where they
//! come from stands in DEVELOPERS.md.

use crate::support::bytes::{calculation, replay, text, values};

#[test]
fn texts() {
    replay(include_str!("../data/fuzz_text.txt"), text);
}

#[test]
fn lengths_printed_and_read_back() {
    replay(include_str!("../data/fuzz_values.txt"), values);
}

#[test]
fn calculations() {
    replay(include_str!("../data/fuzz_calculation.txt"), calculation);
}
