//! Files: written under another name first, so that nobody finds half of one, and never over another file unasked.

use std::ffi::OsString;
use std::fs::{self, File};
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

use crate::problem::Problem;

/// Refuses a file that is there already, unless it may be replaced. For all files first, so that none is saved alone.
pub fn refuse_existing(path: &Path, force: bool) -> Result<(), Problem> {
    if force || path.symlink_metadata().is_err() {
        return Ok(());
    }
    Err(Problem::plain(format!("{} is there already", path.display())).hint("--force replaces it"))
}

/// Whether two names are of one file, however they are written.
pub fn is_same(one: &Path, other: &Path) -> bool {
    let place = |path: &Path| path.parent().map(|folder| Path::new(".").join(folder).canonicalize().ok());
    one.file_name() == other.file_name() && place(one) == place(other)
}

/// Saves a whole file or none.
pub fn save(path: &Path, content: &[u8], force: bool) -> Result<(), Problem> {
    refuse_existing(path, force)?;
    replace(path, content).map_err(|error| Problem::plain(format!("cannot save {}: {error}", path.display())))
}

fn replace(path: &Path, content: &[u8]) -> io::Result<()> {
    let unfinished = unfinished(path)?;
    let mut file = File::create_new(&unfinished)?;
    let saved = file.write_all(content).and_then(|()| file.sync_all()).and_then(|()| fs::rename(&unfinished, path));
    if saved.is_err() {
        // What went wrong first is what is told.
        let _ = fs::remove_file(&unfinished);
    }
    saved
}

/// A name that no other run of the program takes.
fn unfinished(path: &Path) -> io::Result<PathBuf> {
    let name = path.file_name().ok_or_else(|| io::Error::new(io::ErrorKind::InvalidInput, "that is no name of a file"))?;
    let mut hidden = OsString::from(".");
    hidden.push(name);
    hidden.push(format!(".{}.part", std::process::id()));
    Ok(path.with_file_name(hidden))
}
