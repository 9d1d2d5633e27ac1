//! Files that cannot be saved, that two runs save at once, that a run is saving when it ends too soon: the old file stays as
//! it was, byte for byte, or the new one is there and whole. All else is left to `rough.rs`, whose limits hold here too.

use std::ffi::{OsStr, OsString};
use std::fs;
use std::os::unix::ffi::OsStrExt as _;
use std::os::unix::fs::{PermissionsExt as _, symlink};
use std::path::{Path, PathBuf};
use std::process::{Child, Output};

use super::rough::{folder, limited, refused, scantling, text};

fn names(folder: &Path) -> Vec<String> {
    let mut names: Vec<_> =
        fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
    names.sort();
    names
}

#[test]
fn the_name_of_a_file_is_any_that_the_disk_takes() {
    let folder = folder("names");
    let longest = "x".repeat(251) + ".csv";
    for name in [&b"\xFF.csv"[..], b"new\nline.csv", b"--force", b" ", longest.as_bytes()] {
        let path = folder.join(OsStr::from_bytes(name));
        if fs::write(&path, "length\n12\n").is_err() {
            continue; // Not every disk takes every name.
        }
        let mut parts = OsString::from("--parts=");
        parts.push(&path);
        let output = scantling(&[OsStr::new("cut"), OsStr::new("--stock=8ft"), &parts]).output().unwrap();
        assert_eq!((text(&output.stderr), output.status.code()), (String::new(), Some(0)));
        let mut html = OsString::from("--html=");
        html.push(&path);
        let mut arguments: Vec<_> = "case --width 36 --height 72 --depth 12".split(' ').map(OsString::from).collect();
        arguments.extend([html, "--force".into()]);
        assert!(scantling(&arguments).output().unwrap().status.success());
        assert!(fs::read_to_string(&path).unwrap().ends_with("</html>\n"));
    }
    assert!(names_of_parts(&folder).is_empty());
}

fn names_of_parts(folder: &Path) -> Vec<OsString> {
    let names = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().file_name());
    names.filter(|name| name.as_bytes().ends_with(b".part")).collect()
}

/// Everything that saves a file, with a place for its path.
fn savers() -> Vec<Vec<&'static str>> {
    let savers = [
        "case --width 36 --height 72 --depth 12 --html PATH",
        #[cfg(feature = "svg")]
        "read 17-5/8 --svg PATH",
        #[cfg(feature = "svg")]
        "pole --length 72 --svg PATH",
        #[cfg(feature = "svg")]
        "cut --panel sides=2@72x12 --sheet 96x48 --svg PATH",
        #[cfg(feature = "pdf")]
        "pole --length 72 --pdf PATH",
    ];
    savers.into_iter().map(|arguments| arguments.split(' ').collect()).collect()
}

fn to(saver: &[&str], path: &Path, force: bool) -> Vec<OsString> {
    let place = |word: &&str| if *word == "PATH" { path.as_os_str().to_owned() } else { OsString::from(word) };
    saver.iter().map(place).chain(force.then(|| OsString::from("--force"))).collect()
}

#[test]
fn what_cannot_be_saved_leaves_everything_as_it_was() {
    let folder = folder("unsaved");
    let (file, inside, link) = (folder.join("file"), folder.join("folder"), folder.join("link"));
    fs::write(&file, "old").unwrap();
    fs::create_dir(&inside).unwrap();
    symlink("/dev/null", &link).unwrap();
    let before = names(&folder);
    for saver in savers() {
        for (path, force, said) in [
            (&file, false, "file is there already"),
            (&inside, false, "folder is there already"),
            (&link, false, "link is there already"),
            (&PathBuf::from("/dev/null"), false, "/dev/null is there already"),
            (&inside, true, "folder is no file that could be replaced"),
            (&link, true, "link is no file that could be replaced"),
            (&PathBuf::from("/dev/null"), true, "/dev/null is no file that could be replaced"),
            (&PathBuf::from("/"), true, "/ is no file that could be replaced"),
            (&file.join("shelf"), true, "cannot save "),
            (&file.join("shelf"), false, "cannot save "),
            (&folder.join("missing").join("shelf"), false, "cannot save "),
            (&folder.join("missing").join(""), false, "cannot save "),
            (&folder.join("x".repeat(300)), false, "cannot save "),
            (&folder.join("missing").join(".."), false, "cannot save "),
            (&PathBuf::from("/proc/shelf"), false, "cannot save /proc/shelf: "),
            (&PathBuf::from("/proc/shelf"), true, "cannot save /proc/shelf: "),
            (&PathBuf::new(), false, "error: "),
        ] {
            if path.starts_with("/proc") && !cfg!(target_os = "linux") {
                continue;
            }
            refused(&scantling(&to(&saver, path, force)).output().unwrap(), said);
        }
    }
    assert_eq!((fs::read_to_string(&file).unwrap().as_str(), names(&folder)), ("old", before));
}

/// No file may be larger than nothing: the error comes while the new file is written, as on a full disk. Where the signal that
/// goes with it is not ignored, it ends the run there and then.
#[test]
fn a_disk_that_is_full_leaves_the_old_file() {
    let folder = folder("full");
    let path = folder.join("old");
    for saver in savers() {
        fs::write(&path, "old").unwrap();
        let output = limited("trap '' XFSZ; ulimit -f 0", &to(&saver, &path, true)).output().unwrap();
        refused(&output, "cannot save ");
        assert_eq!((fs::read(&path).unwrap().as_slice(), names(&folder)), (&b"old"[..], vec!["old".to_owned()]));
        let output = limited("ulimit -f 0; ulimit -c 0", &to(&saver, &path, true)).output().unwrap();
        assert!(output.stdout.is_empty() && !output.status.success());
        assert_eq!(fs::read(&path).unwrap(), b"old");
        // What a killed run leaves is in nobody's way.
        assert!(scantling(&to(&saver, &path, true)).output().unwrap().status.success());
        assert_ne!(fs::read(&path).unwrap(), b"old");
        for name in names_of_parts(&folder) {
            fs::remove_file(folder.join(name)).unwrap();
        }
    }
}

#[cfg(all(feature = "svg", feature = "pdf"))]
#[test]
fn of_several_files_all_are_saved_or_none() {
    let folder = folder("several");
    let (svg, pdf) = (folder.join("pole.svg"), folder.join("missing").join("pole.pdf"));
    let arguments = ["pole", "--length", "72", "--svg", svg.to_str().unwrap(), "--pdf", pdf.to_str().unwrap()];
    refused(&scantling(&arguments).output().unwrap(), "cannot save ");
    assert!(names(&folder).is_empty());
}

#[test]
fn the_new_file_is_as_private_as_the_old_one_and_a_link_stays_a_link() {
    let folder = folder("private");
    let (file, link) = (folder.join("file"), folder.join("link"));
    for saver in savers() {
        let _ = fs::remove_file(&link);
        fs::write(&file, "old").unwrap();
        fs::set_permissions(&file, fs::Permissions::from_mode(0o600)).unwrap();
        symlink("file", &link).unwrap();
        assert!(scantling(&to(&saver, &link, true)).output().unwrap().status.success());
        assert!(link.symlink_metadata().unwrap().is_symlink());
        assert_eq!(file.metadata().unwrap().permissions().mode() & 0o777, 0o600);
        assert_ne!(fs::read(&file).unwrap(), b"old");
    }
}

/// Two lengths of one file, so that a mixture would be seen.
fn at_once(path: &Path, force: bool) -> Vec<(usize, Output)> {
    let case = |number: usize| format!("case --width 36 --height {} --depth 12 --shelves {number} --html PATH", 20 + 8 * number);
    let start = |number: usize| {
        let (case, path) = (case(number), path.to_owned());
        (number, scantling(&to(&case.split(' ').collect::<Vec<_>>(), &path, force)).spawn().unwrap())
    };
    let runs: Vec<(usize, Child)> = (1..=8).map(start).collect();
    runs.into_iter().map(|(number, run)| (number, run.wait_with_output().unwrap())).collect()
}

fn alone(folder: &Path, number: usize) -> Vec<u8> {
    let path = folder.join(format!("alone-{number}"));
    if !path.exists() {
        let arguments = format!("case --width 36 --height {} --depth 12 --shelves {number} --html PATH", 20 + 8 * number);
        assert!(scantling(&to(&arguments.split(' ').collect::<Vec<_>>(), &path, false)).output().unwrap().status.success());
    }
    fs::read(path).unwrap()
}

#[test]
fn of_two_runs_at_once_one_file_is_whole() {
    let (folder, apart) = (folder("at once"), folder("apart"));
    for round in 0..3 {
        let path = folder.join(format!("{round}.html"));
        let runs = at_once(&path, false);
        let (won, lost): (Vec<_>, Vec<_>) = runs.iter().partition(|(_, output)| output.status.success());
        assert_eq!((won.len(), lost.len()), (1, 7));
        for (_, output) in lost {
            refused(output, "is there already");
        }
        assert_eq!(fs::read(&path).unwrap(), alone(&apart, won[0].0));
        assert!(at_once(&path, true).iter().all(|(_, output)| output.status.success()));
        let whole = fs::read(&path).unwrap();
        assert!((1..=8).any(|number| whole == alone(&apart, number)));
    }
    assert_eq!(names(&folder), ["0.html", "1.html", "2.html"]);
}

/// Killed sooner or later: the file is the old one or the new one.
#[test]
fn a_run_killed_at_any_moment_leaves_one_whole_file() {
    let folder = folder("killed");
    let (path, new) = (folder.join("file"), folder.join("new"));
    for saver in savers() {
        let _ = fs::remove_file(&new);
        assert!(scantling(&to(&saver, &new, false)).output().unwrap().status.success());
        let new = fs::read(&new).unwrap();
        for delay in 0..12 {
            fs::write(&path, "old").unwrap();
            let mut child = scantling(&to(&saver, &path, true)).spawn().unwrap();
            std::thread::sleep(std::time::Duration::from_millis(3 * delay));
            let _ = child.kill();
            child.wait().unwrap();
            let left = fs::read(&path).unwrap();
            assert!(left == b"old" || left == new, "{saver:?} after {delay}");
        }
    }
}
