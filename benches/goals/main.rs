//! Every goal of speed in one table: how our time compares with that of another way to do the same, both taken in the same rounds.
//!
//! ```text
//! cargo bench --bench goals                       times, beside goals and gates
//! cargo bench --profile release --all-features --bench goals -- --instructions
//!                                                 instructions, counted by valgrind, beside limits
//! ```
//!
//! Either ends with a status of failure where a gate or a limit is passed. Times need a machine with little else to do; what varies
//! too much is taken again, and said to be noisy if that does not help. Instructions are the same everywhere, within the few in a
//! hundred that another build of the same source may bring.

mod instructions;
mod rows;
#[path = "../support/mod.rs"]
mod support;
mod times;

use std::process::ExitCode;

fn main() -> ExitCode {
    let asked = |option: &str| std::env::args().any(|argument| argument == option);
    let kept = if asked("--test") {
        try_all();
        true
    } else if asked("--counted") {
        instructions::pass();
        true
    } else if asked("--instructions") {
        instructions::compare()
    } else {
        times::compare()
    };
    if kept { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}

/// Once through, over a hundredth of each corpus.
fn try_all() {
    for matter in rows::matters() {
        (matter.case)(100).rounds(1);
    }
    assert_eq!(support::cases::layout::wrong_marks(200).ours, 0);
}
