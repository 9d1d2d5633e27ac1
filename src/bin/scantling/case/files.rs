//! What is saved: the job sheet, and the poles in true size. All of it, or nothing if any of it cannot be made. How a file
//! is saved is left to `save.rs`.

use std::path::PathBuf;

use super::Report;
use crate::problem::Problem;
use crate::save;

pub fn save(report: &Report<'_>) -> Result<(), Problem> {
    let options = &report.options.files;
    let mut files: Vec<(PathBuf, Vec<u8>)> = Vec::new();
    if let Some(path) = &options.html {
        files.push((path.clone(), report.html()?.into_bytes()));
    }
    #[cfg(any(feature = "svg", feature = "pdf"))]
    poles(report, &mut files)?;
    save::save(&files, options.force)
}

#[cfg(any(feature = "svg", feature = "pdf"))]
fn poles(report: &Report<'_>, files: &mut Vec<(PathBuf, Vec<u8>)>) -> Result<(), Problem> {
    let (options, tape) = (&report.options.files, &report.bench.tape);
    for pole in report.plan.poles() {
        let name = pole.name().replace(' ', "-");
        let name = pole.hand().map_or_else(|| name.clone(), |hand| format!("{name}-{hand}"));
        let refused = |error: scantling::PoleError| Problem::plain(error.to_string());
        #[cfg(feature = "svg")]
        if let Some(folder) = &options.svg {
            files.push((folder.join(format!("{name}.svg")), pole.svg(tape).map_err(refused)?.into_bytes()));
        }
        #[cfg(feature = "pdf")]
        if let Some(folder) = &options.pdf {
            files.push((folder.join(format!("{name}.pdf")), pole.pdf(tape, options.paper.into()).map_err(refused)?));
        }
    }
    Ok(())
}
