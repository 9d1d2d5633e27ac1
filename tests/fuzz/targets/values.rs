//! Any lengths, by printers with any settings, written and said, alone and several in one text, and read back.
#![no_main]

use libfuzzer_sys::fuzz_target;
use scantling::Tape;
use scantling_fuzz::choices;
use scantling_fuzz::printers::{both_come_back, comes_back, length, printer, reading_comes_back, several_come_back};

fuzz_target!(|bytes: &[u8]| {
    let mut choose = choices(bytes);
    let (size, first, second, step) = (length(&mut choose), printer(&mut choose), printer(&mut choose), length(&mut choose));
    comes_back(size, first);
    both_come_back(size, first, second, step);
    reading_comes_back(size, &Tape::sixteenths().offset(step), first, second);
    let sizes = [size, step, length(&mut choose)];
    several_come_back(sizes, second, &mut choose);
});
