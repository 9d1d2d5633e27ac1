//! Stored cases and poles with places changed, taken in and worked with to the end.
#![no_main]

use libfuzzer_sys::fuzz_target;
use scantling_fuzz::choices;
use scantling_fuzz::stored::{can_be_worked_with, disturbed};

fuzz_target!(|bytes: &[u8]| can_be_worked_with(&disturbed(&mut choices(bytes))));
