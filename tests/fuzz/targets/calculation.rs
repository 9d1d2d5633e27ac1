//! Any calculation, from its text and in big rationals.
#![no_main]

use libfuzzer_sys::fuzz_target;
use scantling::Unit;
use scantling_fuzz::calculation::Tree;
use scantling_fuzz::choices;
use scantling_fuzz::printers::one_of;

fuzz_target!(|bytes: &[u8]| {
    let mut choose = choices(bytes);
    let unit = one_of(&mut choose, &Unit::ALL);
    Tree::grow(&mut choose, 6).comes_out_right(unit);
});
