//! `scantling read` with a drawing: what is printed, what is saved, and what is left alone. How the answer
//! looks beside it is left to `readme.rs`.
use std::process::{Command, Output};

fn scantling(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_scantling")).args(arguments).output().unwrap()
}

fn text(bytes: &[u8]) -> &str {
    std::str::from_utf8(bytes).unwrap()
}

#[test]
fn the_drawing_stands_below_the_answer_in_either_kind_of_characters() {
    let plain = scantling(&["read", "17-11/16"]);
    for (option, arrow) in [("--draw", '▼'), ("--draw=lines", '▼'), ("--draw=ascii", 'v')] {
        let drawn = scantling(&["read", "17-11/16", option]);
        let below = text(&drawn.stdout).strip_prefix(text(&plain.stdout)).unwrap();
        assert!(below.starts_with("\n  ") && below.contains(arrow), "{below}");
        assert!(below.ends_with("\n\n  Mark the third line past the half, between 17 and 18.\n"), "{below}");
        assert!(below.lines().all(|row| row.chars().count() < 80), "{below}");
    }
}

#[test]
fn the_tape_and_what_it_is_held_at_are_those_that_were_asked_for() {
    let drawn = scantling(&["read", "365mm", "--tape", "1mm", "--burn", "10mm", "--draw=ascii"]);
    let rows = "\n   Held at 10 mm: the mark is 365 mm from there.\n\n  Mark the long line halfway between 370 and 380.\n";
    assert!(text(&drawn.stdout).ends_with(rows), "{}", text(&drawn.stdout));
}

#[test]
fn each_of_several_lengths_has_its_own() {
    let drawn = scantling(&["read", "1/2", "-1/2", "--draw"]);
    let marks: Vec<_> = text(&drawn.stdout).lines().filter(|row| row.starts_with("  Mark ")).collect();
    assert_eq!(
        marks,
        ["  Mark the long line halfway between 0 and 1.", "  Mark the long line halfway between 0 and 1, below zero."]
    );
}

#[test]
fn json_has_no_room_for_a_drawing() {
    let refused = scantling(&["read", "1/2", "--draw", "--json"]);
    assert_eq!((refused.status.code(), text(&refused.stdout)), (Some(2), ""));
}

#[cfg(feature = "svg")]
mod saved {
    use std::fs;
    use std::path::{Path, PathBuf};

    use super::{scantling, text};

    /// A folder of its own, empty.
    fn folder(name: &str) -> PathBuf {
        let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
        let _ = fs::remove_dir_all(&folder);
        fs::create_dir_all(&folder).unwrap();
        folder
    }

    fn names(folder: &Path) -> Vec<String> {
        fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect()
    }

    #[test]
    fn a_picture_is_saved_whole_and_not_over_another_file() {
        let folder = folder("saved");
        let path = folder.join("shelf.svg");
        let file = path.to_str().unwrap();
        let answer = scantling(&["read", "17-5/8", "--svg", file]);
        assert_eq!(answer.stdout, scantling(&["read", "17-5/8"]).stdout);
        let first = fs::read_to_string(&path).unwrap();
        assert!(first.contains("<title>17-5/8\"</title>") && first.ends_with("</svg>\n"));

        let refused = scantling(&["read", "3", "--svg", file]);
        assert_eq!((refused.status.code(), text(&refused.stdout)), (Some(2), ""));
        assert!(text(&refused.stderr).contains("is there already") && text(&refused.stderr).contains("--force replaces it"));
        assert_eq!(fs::read_to_string(&path).unwrap(), first);

        assert!(scantling(&["read", "3", "--svg", file, "--force"]).status.success());
        assert!(fs::read_to_string(&path).unwrap().contains("<title>3\"</title>"));
        assert_eq!(names(&folder), ["shelf.svg"]);
    }

    #[test]
    fn the_scale_is_that_which_was_asked_for() {
        let folder = folder("scale");
        let path = folder.join("shelf.svg");
        let file = path.to_str().unwrap();
        let width = |scale: &str| {
            assert!(scantling(&["read", "365mm", "--tape", "1mm", "--svg", file, "--force", "--scale", scale]).status.success());
            let document = fs::read_to_string(&path).unwrap();
            // Places of the first two lines of one size.
            let places = document.split('M').filter_map(|stroke| stroke.split_once(" 0v")?.0.parse::<i64>().ok());
            let places: Vec<_> = places.take(2).collect();
            places[1] - places[0]
        };
        // 10 mm in fortieths of a millimeter.
        assert_eq!([width("1"), width("2"), width("1/2"), width("1.5")], [400, 800, 200, 600]);
    }

    #[test]
    fn what_cannot_be_saved_is_said_and_leaves_nothing() {
        let folder = folder("refused");
        let path = folder.join("shelf.svg");
        let missing = folder.join("missing").join("shelf.svg");
        let (file, missing) = (path.to_str().unwrap(), missing.to_str().unwrap());
        let cases: [(&[&str], &str); 8] = [
            (&["read", "1", "2", "--svg", file], "--svg takes the picture of one length; 2 were given"),
            (&["read", "-", "--svg", file], "--svg takes the picture of one length; lines from standard input were asked for"),
            (&["read", "1", "--svg", file, "--scale", "0"], "cannot draw a tape at a scale of 0: it must be above zero"),
            (&["read", "1", "--svg", file, "--scale", "-1/2"], "cannot draw a tape at a scale of -1/2: it must be above zero"),
            (&["read", "1", "--svg", file, "--scale", "1 in"], "--scale: a number such as 2 or 1/4, not 1 in"),
            (&["read", "1", "--svg", file, "--scale", "half"], "--scale: "),
            (&["read", "1", "--svg", missing], "cannot save "),
            (&["read", "1", "--force"], "--svg"),
        ];
        for (arguments, said) in cases {
            let refused = scantling(arguments);
            assert_eq!((refused.status.code(), text(&refused.stdout)), (Some(2), ""), "{arguments:?}");
            assert!(text(&refused.stderr).contains(said), "{}", text(&refused.stderr));
        }
        assert_eq!(names(&folder), [""; 0]);
    }
}
