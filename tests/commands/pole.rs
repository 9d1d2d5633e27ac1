//! `scantling pole`: what is typed, read, answered, saved and refused. What a pole is stands in `layout/pole.rs`, how it looks on
//! paper in `layout/pole_pictures.rs`.
use std::fs;
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

use serde_json::Value;

fn scantling(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_scantling")).arg("pole").args(arguments).output().unwrap()
}

fn text(bytes: &[u8]) -> &str {
    std::str::from_utf8(bytes).unwrap()
}

fn answer(arguments: &[&str]) -> String {
    let output = scantling(arguments);
    assert!(output.status.success(), "{arguments:?}: {}", text(&output.stderr));
    text(&output.stdout).to_owned()
}

fn objects(arguments: &[&str]) -> Vec<Value> {
    let answer = answer(&[arguments, &["--json"]].concat());
    answer.lines().map(|line| serde_json::from_str(line).unwrap()).collect()
}

/// The exact places of a row.
fn places(object: &Value, row: usize) -> Vec<String> {
    let marks = object["rows"][row]["marks"].as_array().unwrap().iter();
    marks.map(|mark| mark["exact"].as_str().unwrap().to_owned()).collect()
}

/// A folder of its own, empty.
fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("pole").join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).unwrap();
    folder
}

fn saved(folder: &Path, name: &str, arguments: &[&str]) -> String {
    let path = folder.join(name);
    fs::write(&path, objects(arguments)[0]["pole"].to_string()).unwrap();
    path.to_str().unwrap().to_owned()
}

const CASE: [&str; 7] = ["ware case", "--length", "72", "--past", "side/shelf=14-2/5:3/4", "--centered", "side/lock=36"];

// Worked by hand.
#[test]
fn every_kind_of_mark_can_be_typed() {
    let object = &objects(&[&CASE[..], &["--before", "doors/top rail=72:2", "--line", "level=30"]].concat())[0];
    assert_eq!(object["findings"], Value::Array(Vec::new()));
    let side = &object["pole"]["rows"][0];
    assert_eq!(side["name"], "side");
    assert_eq!(
        side["marks"][0].to_string(),
        r#"{"position":"14 2/5 in","name":"shelf","side":"past","thickness":"3/4 in","note":null}"#
    );
    assert_eq!((&side["marks"][1]["side"], &side["marks"][1]["thickness"]), (&"centered".into(), &Value::Null));
    assert_eq!(object["pole"]["rows"][2]["name"], "marks");
    let shelf = &object["rows"][0]["marks"][0];
    assert_eq!(
        (&shelf["tape"], &shelf["lean"], &shelf["far_edge"]["tape"]),
        (&"14 3/8 in".into(), &"strong".into(), &"15 1/8 in".into())
    );
    // Four shelves of 3/4 in from 4 in to 76 in: openings of 13 4/5 in.
    let equal = &objects(&["--length", "76", "--equal", "side/shelf=4:3/4:4:76"])[0];
    assert_eq!(places(equal, 0), ["17 4/5 in", "32 7/20 in", "46 9/10 in", "61 9/20 in"]);
}

#[test]
fn a_stick_is_read_as_the_tape_shows_it() {
    let stick = ["--length", "30", "--past", "a=25", "--past", "b=17-3/8 strong by 1/64", "--as-read", "--burn", "1"];
    let object = &objects(&stick)[0];
    assert_eq!(places(object, 0), ["16 25/64 in", "24 in"]);
    assert_eq!(object["rows"][0]["marks"][1]["tape"], "25 in");
    // All places are read so: nine inches between 1 in and 10 in on the tape, and one line in their middle.
    let all = ["--length", "9", "--equal", "a/x=1:0:1:10", "--closes", "b=1:10", "--as-read", "--burn", "1"];
    let object = &objects(&all)[0];
    assert_eq!(places(object, 0), ["4 1/2 in"]);
    assert_eq!(object["pole"]["rows"][1]["closes"].to_string(), r#"{"from":"0 in","to":"9 in"}"#);
}

#[test]
fn poles_are_changed_in_the_order_of_the_help() {
    let changed = |more: &[&str]| objects(&[&CASE[..], more].concat()).remove(0);
    assert_eq!(places(&changed(&["--flip"]), 0), ["36 in", "57 3/5 in"]);
    assert_eq!(changed(&["--flip"])["pole"]["datum"], "top");
    assert_eq!(places(&changed(&["--shift", "4"]), 0), ["18 2/5 in", "40 in"]);
    assert_eq!(places(&changed(&["--shift", "4", "--flip"]), 0), ["36 in", "57 3/5 in"]);
    let mirrored = changed(&["--hand", "left", "--mirror"]);
    assert_eq!((&mirrored["pole"]["hand"], places(&mirrored, 0)), (&"right".into(), vec!["14 2/5 in".into(), "36 in".into()]));
    let wall = &objects(&["--length", "72", "--past", "window=30", "--from", "left", "--mirror"])[0];
    assert_eq!((&wall["pole"]["datum"], places(wall, 0)), (&"right".into(), vec!["30 in".into()]));
    assert_eq!(changed(&["--line", "level=30", "--only", "marks"])["pole"]["rows"].as_array().unwrap().len(), 1);
    let sticks = objects(&[&CASE[..], &["--stick", "48", "--overlap", "6"]].concat());
    assert_eq!(sticks.len(), 2);
    assert_eq!(sticks[1]["pole"]["name"], "ware case, stick 2 of 2, from 42\"");
    let second = objects(&[&CASE[..], &["--stick", "48", "--overlap", "6", "--number", "2"]].concat());
    assert_eq!(second, sticks[1..]);
}

#[test]
fn a_job_comes_back_from_a_file_and_from_standard_input() {
    let folder = folder("job");
    let job = saved(&folder, "case.json", &CASE);
    assert_eq!(answer(&["--job", &job]), answer(&CASE));
    // The whole answer is a job, too.
    let whole = folder.join("answer.json");
    fs::write(&whole, answer(&[&CASE[..], &["--json"]].concat())).unwrap();
    assert_eq!(answer(&["--job", whole.to_str().unwrap()]), answer(&CASE));
    // So is one that an editor has put a mark before.
    fs::write(&whole, ["\u{FEFF}", &fs::read_to_string(&job).unwrap()].concat()).unwrap();
    assert_eq!(answer(&["--job", whole.to_str().unwrap()]), answer(&CASE));
    let mut child = Command::new(env!("CARGO_BIN_EXE_scantling"))
        .args(["pole", "--job", "-"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    child.stdin.take().unwrap().write_all(&fs::read(&job).unwrap()).unwrap();
    assert_eq!(text(&child.wait_with_output().unwrap().stdout), answer(&CASE));
    // More marks for a row of it, and another pole on top.
    let more = &objects(&["--job", &job, "--past", "side/crock shelf=50:3/4"])[0];
    assert_eq!(places(more, 0), ["14 2/5 in", "36 in", "50 in"]);
    let upper = saved(&folder, "upper.json", &["upper", "--length", "30", "--past", "side/upper shelf=10:3/4"]);
    let wall = &objects(&["wall", "--job", &job, "--merge", &format!("{upper}=72")])[0];
    assert_eq!((&wall["pole"]["name"], &wall["pole"]["length"]), (&"wall".into(), &"102 in".into()));
    assert_eq!(places(wall, 0), ["14 2/5 in", "36 in", "82 in"]);
}

#[test]
fn what_should_be_looked_at_is_said_below_the_list() {
    let good = answer(&CASE);
    assert!(
        good.ends_with("\nChecked: every mark is on the stick, no two parts overlap, and marks of one name agree.\n"),
        "{good}"
    );
    let bad = answer(&["--length", "20", "--past", "a=3", "--past", "b=3-1/64", "--closes", "marks=0:20"]);
    assert!(
        bad.ends_with(
            "\nLook again before you cut:\n  \
             row marks: a and b are 1/64\" apart, at 3\" and 3 1/64\", less than one graduation of 1/16\"\n  \
             row marks should begin at 0\" and begins at 3\": 3\" over\n  \
             row marks should end at 20\" and ends at 3 1/64\": 16 63/64\" short\n"
        ),
        "{bad}"
    );
    // What no stick can tell by itself is told on each.
    let cut = [
        "--length",
        "1 m",
        "--closes",
        "a=0:1 m",
        "--past",
        "a/x=102 cm",
        "--tape",
        "1 mm",
        "--stick",
        "60 cm",
        "--overlap",
        "10 cm",
    ];
    let cut = answer(&cut);
    assert_eq!(
        cut.matches("  the whole pole: row a should end at 1000 mm and ends at 1020 mm: 20 mm over\n").count(),
        2,
        "{cut}"
    );
    assert!(cut.ends_with("  row a: x is marked at 520 mm, off the stick, which is 500 mm long\n"), "{cut}");
    let drawn = answer(&[&CASE[..], &["--draw=ascii"]].concat());
    assert!(drawn.contains("\n |--------------"), "{drawn}");
}

#[test]
fn what_is_refused_and_why() {
    let folder = folder("refused");
    let write = |name: &str, content: &str| {
        fs::write(folder.join(name), content).unwrap();
        folder.join(name).to_str().unwrap().to_owned()
    };
    let pole = |rows: &str| format!(r#"{{"name":"x","length":"72 in","datum":"bottom","rows":[{rows}]}}"#);
    let unsorted = r#"{"name":"a","marks":[{"position":"1102 mm","name":"a","side":"past"},{"position":"912 mm","name":"b","side":"past"}]}"#;
    let unsorted = write("unsorted.json", &pole(unsorted));
    let unknown = write("unknown.json", &pole(r#"{"name":"a","marks":[],"color":"red"}"#));
    let empty = write("empty.json", "");
    // Answers: one that was mended by hand, and those of two sticks.
    let mended = write("mended.json", &answer(&[&CASE[..], &["--json"]].concat()).replace("past", "passed"));
    let two = write("two.json", &answer(&[&CASE[..], &["--stick", "48", "--overlap", "6", "--json"]].concat()));
    let cases: Vec<(Vec<&str>, &str)> = vec![
        (vec![], "--length <LENGTH>"),
        (vec!["--length", "0"], "a pole cannot be 0\" long: it must be above zero"),
        (vec!["--length", "7 2"], "--length: "),
        (vec!["--length", "72", "--job", &empty], "cannot be used with"),
        (vec!["--length", "72", "--past", "14"], "--past: a name, = and a place were expected, not 14"),
        (vec!["--length", "72", "--past", "a=1,5"], "--past a: a comma with two readings"),
        (vec!["--length", "72", "--past", "a=1:-1"], "a cannot be -1\" thick: it must not be below zero"),
        (vec!["--length", "72", "--line", "a=1:1"], "a is a line alone, and cannot be 1\" thick"),
        (vec!["--length", "72", "--past", "a=3 strong", "--as-read"], "--past a: nothing says by how much: 3 strong"),
        (vec!["--length", "72", "--equal", "a=5"], "--equal: a name, =, how many and how thick were expected, not a=5"),
        (vec!["--length", "2", "--equal", "a=5:3/4"], "--equal a: 5 members, with any fixed gaps, need 3 3/4\""),
        (vec!["--length", "72", "--closes", "a=5"], "--closes: a row, = and two places were expected, not a=5"),
        (vec!["--length", "72", "--closes", "a=0:10", "--closes", "a=0:20"], "--closes a: the row cannot close in two ways"),
        (vec!["--length", "72", "--past", "=14"], "--past: a name, = and a place were expected, not =14"),
        (vec!["--length", "72", "--line", "side/ =14"], "--line: a name, = and a place were expected, not side/ =14"),
        (vec!["--length", "72", "--equal", "/shelf=5:3/4"], "--equal: a name, =, how many and how thick were expected"),
        (vec!["--length", "72", "--only", "b"], "the pole has no row b"),
        (vec!["--length", "72", "--mirror"], "--mirror: the pole is for neither hand"),
        (vec!["--length", "72", "--stick", "48"], "--overlap <LENGTH>"),
        (vec!["--length", "72", "--stick", "48", "--overlap", "50"], "sticks of 48\" cannot overlap by 50\""),
        (
            vec!["--length", "72", "--stick", "48", "--overlap", "6", "--number", "3"],
            "--number 3: there is no such stick, the sticks are 2",
        ),
        (vec!["--job", "no such file"], "cannot read no such file: "),
        (vec!["--job", &empty], "has no story pole: EOF while parsing a value"),
        (vec!["--job", &mended], "mended.json has no story pole: rows[0].marks[0].side: unknown variant"),
        (vec!["--job", &two], "two.json has no story pole: it has several, one a line, where one is read"),
        (
            vec!["--job", &unknown],
            "has no story pole: rows[0].color: unknown field `color`, expected one of `name`, `marks`, `closes`",
        ),
        (
            vec!["--job", &unsorted],
            "the marks of a row stand in order from the datum: mark 2 of row a, at 35 115/127\", comes after one at 43 49/127\"",
        ),
    ];
    for (arguments, said) in cases {
        let refused = scantling(&arguments);
        assert_eq!((refused.status.code(), text(&refused.stdout)), (Some(2), ""), "{arguments:?}");
        assert!(text(&refused.stderr).contains(said), "{arguments:?}: {}", text(&refused.stderr));
    }
}

#[cfg(all(feature = "svg", feature = "pdf"))]
#[test]
fn pictures_are_saved_whole_or_not_at_all() {
    let folder = folder("saved");
    let (svg, pdf) = (folder.join("pole.svg"), folder.join("pole.pdf"));
    let files = ["--svg", svg.to_str().unwrap(), "--pdf", pdf.to_str().unwrap()];
    let names = || {
        let mut names: Vec<_> =
            fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
        names.sort();
        names
    };
    let refuse = |more: &[&str], said: &str| {
        let refused = scantling(&[&CASE[..], &files[..], more].concat());
        assert_eq!((refused.status.code(), text(&refused.stdout)), (Some(2), ""), "{more:?}");
        assert!(text(&refused.stderr).contains(said), "{more:?}: {}", text(&refused.stderr));
    };
    refuse(&["--paper", "2"], "a roll 2\" wide cannot take the pole");
    refuse(&["--paper", "tabloid"], "--paper: ");
    refuse(&["--stick", "48", "--overlap", "6"], "--svg takes one pole; this one is cut to 2 sticks");
    assert_eq!(names(), [""; 0]);
    assert_eq!(answer(&[&CASE[..], &files[..]].concat()), answer(&CASE));
    assert!(fs::read_to_string(&svg).unwrap().ends_with("</svg>\n") && fs::read(&pdf).unwrap().starts_with(b"%PDF-"));
    let first = fs::read(&svg).unwrap();
    // If one of them is there, neither is written.
    fs::remove_file(&svg).unwrap();
    refuse(&[], "pole.pdf is there already");
    assert_eq!(names(), ["pole.pdf"]);
    answer(&[&CASE[..], &files[..], &["--force", "--paper", "a4"]].concat());
    assert_eq!((names(), fs::read(&svg).unwrap()), (vec!["pole.pdf".into(), "pole.svg".into()], first));
    let twice = format!("{}/../saved/pole.svg", folder.display());
    let refused = scantling(&[&CASE[..], &["--svg", svg.to_str().unwrap(), "--pdf", &twice, "--force"]].concat());
    assert!(text(&refused.stderr).contains("pole.svg would be saved twice"), "{}", text(&refused.stderr));
    let missing = folder.join("missing").join("pole.pdf");
    let refused = scantling(&[&CASE[..], &["--pdf", missing.to_str().unwrap()]].concat());
    assert!(text(&refused.stderr).contains("cannot save "), "{}", text(&refused.stderr));
}
