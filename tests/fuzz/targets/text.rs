//! Any bytes as text: see `tests/support/bytes.rs`.
#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| scantling_fuzz::bytes::text(bytes));
