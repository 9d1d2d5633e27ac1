//! Files: written under another name first, so that nobody finds half of one, and never over another file unasked. What a
//! killed run leaves is a `.scantling-….part`, which nobody needs and no later run minds.

use std::fs::{self, File};
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

use crate::problem::Problem;

/// Saves every file, or none: all are written before the first of them takes its name.
pub fn save(files: &[(PathBuf, Vec<u8>)], force: bool) -> Result<(), Problem> {
    for (number, (path, _)) in files.iter().enumerate() {
        if files[..number].iter().any(|(other, _)| is_same(other, path)) {
            let twice = Problem::plain(format!("{} would be saved twice", path.display()));
            return Err(twice.hint("give each file a name of its own"));
        }
        refuse(path, force)?;
    }
    let written =
        files.iter().map(|(path, content)| Unfinished::written(path, content, force).map_err(|error| unsaved(path, &error)));
    let written = written.collect::<Result<Vec<_>, Problem>>()?;
    let mut named = files.iter().zip(written);
    named.try_for_each(|((path, _), file)| file.finish(force).map_err(|error| unsaved(path, &error)))
}

/// Whether two names are of one file, however they are written.
fn is_same(one: &Path, other: &Path) -> bool {
    let place = |path: &Path| path.parent().map(|folder| Path::new(".").join(folder).canonicalize().ok());
    one.file_name() == other.file_name() && place(one) == place(other)
}

/// Refuses what is there already, unless it is a file and may be replaced. For all files first: nothing is written in vain.
fn refuse(path: &Path, force: bool) -> Result<(), Problem> {
    if path.symlink_metadata().is_err() {
        return Ok(());
    }
    if !force {
        return Err(there_already(path));
    }
    match path.metadata() {
        Ok(there) if !there.is_file() => Err(Problem::plain(format!("{} is no file that could be replaced", path.display()))),
        _ => Ok(()),
    }
}

fn there_already(path: &Path) -> Problem {
    Problem::plain(format!("{} is there already", path.display())).hint("--force replaces it")
}

fn unsaved(path: &Path, error: &io::Error) -> Problem {
    match error.kind() {
        // Another run came first.
        io::ErrorKind::AlreadyExists => there_already(path),
        _ => Problem::plain(format!("cannot save {}: {error}", path.display())),
    }
}

/// A whole file under a name for the time being. Without [`Unfinished::finish`] nothing is left of it.
struct Unfinished {
    name: PathBuf,
    target: PathBuf,
}

impl Unfinished {
    fn written(path: &Path, content: &[u8], force: bool) -> io::Result<Self> {
        if path.file_name().is_none() {
            return Err(io::Error::new(io::ErrorKind::InvalidInput, "that is no name of a file"));
        }
        // What is replaced is the file, not a link to it.
        let real = if force { path.canonicalize().ok() } else { None };
        let target = real.unwrap_or_else(|| path.to_owned());
        let (name, mut file) = create(&target)?;
        let unfinished = Self { name, target };
        if force {
            // Whoever may not read the old file shall not read the new one.
            unfinished.target.metadata().map_or(Ok(()), |old| file.set_permissions(old.permissions()))?;
        }
        file.write_all(content)?;
        file.sync_all()?;
        Ok(unfinished)
    }

    /// Gives the file its name: in the place of another, or only if there is no other at this very moment.
    fn finish(self, force: bool) -> io::Result<()> {
        if force { fs::rename(&self.name, &self.target) } else { self.finish_anew() }
    }

    fn finish_anew(&self) -> io::Result<()> {
        match fs::hard_link(&self.name, &self.target) {
            Err(error) if error.kind() != io::ErrorKind::AlreadyExists => self.finish_without_links(),
            linked => linked,
        }
    }

    /// Not every disk has links. An empty file takes the name there, and the run that made it alone replaces it.
    fn finish_without_links(&self) -> io::Result<()> {
        File::create_new(&self.target)?;
        let replaced = fs::rename(&self.name, &self.target);
        if replaced.is_err() {
            let _ = fs::remove_file(&self.target);
        }
        replaced
    }
}

impl Drop for Unfinished {
    /// After a rename it is gone already; what went wrong before is what is told.
    fn drop(&mut self) {
        let _ = fs::remove_file(&self.name);
    }
}

/// A new file beside the target, under a name that no other run has. A killed run may have had the same number.
fn create(target: &Path) -> io::Result<(PathBuf, File)> {
    let mut last = io::ErrorKind::AlreadyExists.into();
    for number in 0..1000 {
        let name = target.with_file_name(format!(".scantling-{}-{number}.part", std::process::id()));
        match File::create_new(&name) {
            Err(error) if error.kind() == io::ErrorKind::AlreadyExists => last = error,
            created => return created.map(|file| (name, file)),
        }
    }
    Err(last)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn folder(name: &str) -> PathBuf {
        let folder = std::env::temp_dir().join(format!("scantling-{name}-{}", std::process::id()));
        fs::create_dir_all(&folder).unwrap();
        folder
    }

    /// On a disk that has links these steps are not taken, so they are taken here.
    #[test]
    fn without_links_a_file_takes_its_name_once() {
        let folder = folder("without-links");
        let target = folder.join("shelf.svg");
        let finish = |content: &[u8]| Unfinished::written(&target, content, false).unwrap().finish_without_links();
        assert!(finish(b"first").is_ok());
        assert_eq!(finish(b"second").unwrap_err().kind(), io::ErrorKind::AlreadyExists);
        assert_eq!(fs::read(&target).unwrap(), b"first");
        assert_eq!(fs::read_dir(&folder).unwrap().count(), 1);
        fs::remove_dir_all(&folder).unwrap();
    }

    /// Numbers of runs come again.
    #[test]
    fn what_a_killed_run_of_the_same_number_left_is_passed_by() {
        let folder = folder("passed-by");
        let (left, target) = (folder.join(format!(".scantling-{}-0.part", std::process::id())), folder.join("shelf.svg"));
        fs::write(&left, "left").unwrap();
        assert!(save(&[(target.clone(), b"new".to_vec())], false).is_ok());
        assert_eq!((fs::read(&left).unwrap(), fs::read(&target).unwrap()), (b"left".to_vec(), b"new".to_vec()));
        assert_eq!(fs::read_dir(&folder).unwrap().count(), 2);
        fs::remove_dir_all(&folder).unwrap();
    }
}
