//! The sheets of a plan saved as pictures, a file for each. What is in a picture is left to the library, how a file is saved to
//! `save.rs`.

use std::ffi::OsString;
use std::path::{Path, PathBuf};

use scantling::SheetPlan;

use super::arguments::PanelOptions;
use crate::problem::Problem;
use crate::save;

/// Saves all of them, or none if one may not be saved.
pub fn save(plan: &SheetPlan, options: &PanelOptions) -> Result<(), Problem> {
    let Some(path) = &options.svg else { return Ok(()) };
    let many = plan.sheets().len();
    let paths = (1..=many).map(|number| if many == 1 { path.clone() } else { numbered(path, number) });
    let files: Vec<_> = paths.zip(plan.sheets().iter().map(|sheet| plan.svg(sheet).into_bytes())).collect();
    save::save(&files, options.force)
}

/// `kit.svg` as `kit-2.svg`.
fn numbered(path: &Path, number: usize) -> PathBuf {
    let mut name = path.file_stem().map(OsString::from).unwrap_or_default();
    name.push(format!("-{number}"));
    if let Some(extension) = path.extension() {
        name.push(".");
        name.push(extension);
    }
    path.with_file_name(name)
}
