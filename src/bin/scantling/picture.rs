//! The drawing of one length saved as a picture: whole or not at all, and never over another file unasked.

use std::ffi::OsString;
use std::fs::{self, File};
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

use num_rational::Ratio;
use scantling::{Length, Quantity, evaluate};

use crate::arguments::{Read, typed};
use crate::draw::drawing;
use crate::problem::Problem;
use crate::words::Bench;

/// Refuses a picture of lengths of which there may be many.
pub fn refuse_many(options: &Read) -> Result<(), Problem> {
    let given = match options.texts.len() {
        _ if options.svg.is_none() => return Ok(()),
        1 if !options.is_standard_input() => return Ok(()),
        1 => "lines from standard input were asked for".to_owned(),
        many => format!("{many} were given"),
    };
    Err(Problem::plain(format!("--svg takes the picture of one length; {given}")))
}

/// Saves the picture, if one was asked for.
pub fn save(length: Length, options: &Read, bench: Bench) -> Result<(), Problem> {
    let Some(path) = &options.svg else { return Ok(()) };
    let drawing = drawing(length, bench)?;
    let drawing = match &options.scale {
        Some(text) => drawing.scale(scale(typed(text))?),
        None => drawing,
    };
    let document = drawing.svg().map_err(|error| Problem::plain(error.to_string()))?;
    if !options.force && path.symlink_metadata().is_ok() {
        let there = Problem::plain(format!("{} is there already", path.display()));
        return Err(there.hint("--force replaces it"));
    }
    replace(path, &document).map_err(|error| Problem::plain(format!("cannot save {}: {error}", path.display())))
}

fn scale(text: &str) -> Result<Ratio<i128>, Problem> {
    match evaluate(text) {
        Ok(Quantity::Number(scale)) => Ok(scale),
        Ok(_) => Err(Problem::plain(format!("--scale: a number such as 2 or 1/4, not {text}"))),
        Err(error) => Err(Problem::unread("--scale", text, error)),
    }
}

/// Under another name beside it first, so that nobody finds half a picture.
fn replace(path: &Path, document: &str) -> io::Result<()> {
    let unfinished = unfinished(path)?;
    let mut file = File::create_new(&unfinished)?;
    let saved = file.write_all(document.as_bytes()).and_then(|()| file.sync_all()).and_then(|()| fs::rename(&unfinished, path));
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
