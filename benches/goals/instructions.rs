//! The table in instructions: this program once more under valgrind, which counts what each subject does in one pass and gives the
//! counts in their order. Corpora are small, since nothing here depends on what a processor can learn.

use std::process::Command;
use std::{env, fs, io};

use crate::rows::{Matter, Row, Share, matters};
use crate::support::pair::Case;

/// A twentieth of each corpus.
const PART: usize = 20;

/// The function that is counted, and no other: `support::pair::counted`.
const COUNTED: &str = "goals::support::pair::counted";

/// What is run under valgrind.
pub fn pass() {
    for matter in matters() {
        let mut case = (matter.case)(PART);
        for subject in counted(&case, &matter) {
            case.subjects[subject].count();
        }
    }
}

/// The places of the subjects that the rows with a limit speak of.
fn counted(case: &Case, matter: &Matter) -> Vec<usize> {
    let others = matter.rows.iter().filter(|row| row.most.is_some()).filter_map(|row| match row.share {
        Share::Over(other) => Some(case.place_of(other)),
        _ => None,
    });
    let mut places: Vec<usize> = others.collect();
    if !places.is_empty() {
        places.insert(0, 0);
    }
    places
}

/// Whether every limit was kept; where there is no valgrind, none is passed.
pub fn compare() -> bool {
    if Command::new("valgrind").arg("--version").output().is_err_and(|error| error.kind() == io::ErrorKind::NotFound) {
        println!("Skipped: there is no valgrind here, and instructions were not counted.");
        return true;
    }
    let counts = match counts() {
        Ok(counts) => counts,
        Err(error) => {
            println!("Not counted: {error}");
            return false;
        }
    };
    println!("Share of instructions. Less is better.\n");
    println!("{:<5} {:<45} {:>10} {:>10} {:>7} {:>7}", "row", "what", "ours", "theirs", "share", "most");
    let (mut counts, mut kept) = (counts.into_iter(), true);
    for matter in matters() {
        let case = (matter.case)(PART);
        let mut costs = vec![0.0; case.subjects.len()];
        for subject in counted(&case, &matter) {
            costs[subject] = counts.next().expect("a count for every subject");
        }
        for row in &matter.rows {
            kept &= row.most.is_none_or(|most| told(row, most, &case, &costs));
        }
    }
    assert_eq!(counts.next(), None, "a count for every subject and no more");
    kept
}

fn told(row: &Row, most: f64, case: &Case, costs: &[f64]) -> bool {
    let share = row.share_of(case, costs);
    let Row { number, what, share: kind, .. } = row;
    let theirs = if let Share::Over(other) = kind { costs[case.place_of(other)] } else { 0.0 };
    let word = if share <= most { "" } else { "  too many" };
    println!("{number:<5} {what:<45} {:>10.0} {theirs:>10.0} {share:>7.4} {most:>7.4}{word}", costs[0]);
    assert!(costs[0] > 1000.0 && theirs > 1000.0, "something was counted");
    share <= most
}

/// One count for each subject.
fn counts() -> io::Result<Vec<f64>> {
    let folder = env::temp_dir().join(format!("goals-{}", std::process::id()));
    fs::create_dir_all(&folder)?;
    let counted = counts_in(&folder);
    fs::remove_dir_all(&folder)?;
    counted
}

fn counts_in(folder: &std::path::Path) -> io::Result<Vec<f64>> {
    let file = folder.join("counts");
    let mut valgrind = Command::new("valgrind");
    valgrind.args(["--tool=callgrind", "--combine-dumps=yes"]);
    valgrind.args([format!("--toggle-collect={COUNTED}"), format!("--dump-after={COUNTED}")]);
    valgrind.arg(format!("--callgrind-out-file={}", file.display())).arg(env::current_exe()?).arg("--counted");
    let output = valgrind.output()?;
    if !output.status.success() {
        return Err(io::Error::other(String::from_utf8_lossy(&output.stderr)));
    }
    let totals = fs::read_to_string(file)?;
    let totals = totals.lines().filter_map(|line| line.strip_prefix("summary: "));
    Ok(totals.filter_map(|total| total.trim().parse().ok()).filter(|count| *count > 0.0).collect())
}
