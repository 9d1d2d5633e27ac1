//! Anything stored: see `tests/support/stored.rs`.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| scantling_fuzz::stored::stored_by_bytes(bytes));
