//! `scantling cut`: parts and boards from options and files, and what is refused. Figures were worked by hand. How a whole answer
//! looks is left to `readme.rs`, what a plan promises to `stock/cutting_properties.rs`.
use std::io::Write as _;
use std::path::PathBuf;
use std::process::{Command, Output, Stdio};

use serde_json::Value;

fn scantling(arguments: &[&str], input: &[u8]) -> Output {
    let mut command = Command::new(env!("CARGO_BIN_EXE_scantling"));
    let command = command.arg("cut").args(arguments).stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = command.spawn().unwrap();
    // A command that refuses its options reads nothing.
    let _ = child.stdin.take().unwrap().write_all(input);
    child.wait_with_output().unwrap()
}

fn text(bytes: &[u8]) -> &str {
    std::str::from_utf8(bytes).unwrap()
}

#[track_caller]
fn answer(arguments: &[&str], input: &[u8]) -> String {
    let Output { status, stdout, stderr } = scantling(arguments, input);
    assert_eq!((text(&stderr), status.code()), ("", Some(0)));
    text(&stdout).to_owned()
}

#[track_caller]
fn object(arguments: &str) -> Value {
    serde_json::from_str(&answer(&format!("{arguments} --json").split_whitespace().collect::<Vec<_>>(), b"")).unwrap()
}

/// What is said on standard error; nothing is printed beside it.
#[track_caller]
fn refused(arguments: &[&str], input: &[u8]) -> String {
    let Output { status, stdout, stderr } = scantling(arguments, input);
    assert_eq!((text(&stdout), status.code()), ("", Some(2)));
    text(&stderr).to_owned()
}

fn file(name: &str, content: &str) -> PathBuf {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
    std::fs::write(&path, content).unwrap();
    path
}

#[test]
fn both_marks_of_every_cut() {
    let plan = object("--part stile=1@60 --part rail=1@35 --stock 8ft");
    let cuts = plan["boards"][0]["cuts"].as_array().unwrap();
    let marks: Vec<_> =
        cuts.iter().map(|cut| (&cut["part"], &cut["from_near_end"]["tape"], &cut["from_fresh_end"]["tape"])).collect();
    assert_eq!(
        format!("{marks:?}"),
        r#"[(String("stile"), String("60 in"), String("60 in")), (String("rail"), String("95 1/8 in"), String("35 in"))]"#
    );
    assert_eq!((&plan["cost"]["boards"], &plan["optimal"]), (&1.into(), &true.into()));
    assert_eq!((&plan["boards"][0]["offcut"]["exact"], &plan["waste"]["exact"]), (&"3/4 in".into(), &"1/4 in".into()));
}

#[test]
fn prices_limits_rules_and_trims() {
    // Old boards for nothing hold one shelf each, the other two take a new one.
    let plan = object("--part shelf=4@3ft --stock old=2@40:0 --stock new=8ft:12.49");
    assert_eq!(
        (&plan["cost"]["price"], &plan["take"][0]["count"], &plan["take"][1]["count"]),
        (&"1249/100".into(), &2.into(), &1.into())
    );
    let count = |options: &str| object(&format!("--part p=3@31-11/12 --stock 8ft {options}"))["cost"]["boards"].as_u64().unwrap();
    let counts = ["", "--kerf 0", "--kerf 9/64", "--kerf-rule each-part", "--trim-far 1/64"].map(count);
    assert_eq!(counts, [1, 1, 2, 2, 2]);
}

#[test]
fn files_in_both_forms() {
    let csv = file("parts.csv", "\u{FEFF}count, Length ,name\n4,35-1/2,rail\n\n2,\"5'\",\"stile, long\"\n");
    let json = file(
        "parts.json",
        r#"[{"name": "rail", "length": 35.5, "count": 4}, {"length": "5'", "count": 2, "name": "stile, long", "joined": false}]"#,
    );
    let stocks = file("stocks.csv", "length,count,price\n8ft,,9.50\n40,1,0\n");
    let plans = [csv, json].map(|parts| answer(&["--parts", parts.to_str().unwrap(), "--stocks", stocks.to_str().unwrap()], b""));
    assert_eq!(plans[0], plans[1]);
    assert!(plans[0].contains("a price of 28.50; no plan takes less (proved)"), "{}", plans[0]);
    let piped = answer(&["--parts", "-", "--stock", "8ft"], b"length\n12\n");
    assert!(piped.contains("[ ]   12"), "{piped}");
}

#[test]
#[rustfmt::skip]
fn what_is_wrong_in_a_file_is_told_with_line_and_column() {
    for (lines, message) in [
        ("name,size\nrail,3\n", "error: standard input, line 1, column 2: no column is called \"size\""),
        ("name,length,name\nrail,3,x\n", "error: standard input, line 1, column 3: name stands there twice"),
        ("name,count\nrail,3\n", "error: standard input, line 1: no column is called length"),
        ("name,length\nrail,3\nstile\n", "error: standard input, line 3: 1 columns where the header has 2"),
        ("name,length\nrail,3,4\n", "error: standard input, line 2: 3 columns where the header has 2"),
        ("name,length\nrail,\n", "error: standard input, line 2: no length"),
        ("name,length\nrail,3\n\nstile,17 9/8\n", "error: standard input, line 4, length: "),
        ("name,length,count\nrail,3,two\n", "error: standard input, line 2, count: a whole number above zero was expected, not two"),
        ("name,length,count\nrail,3,0\n", "error: standard input, line 2, count: a whole number above zero was expected, not 0"),
        ("name,length,joined\nrail,3,maybe\n", "error: standard input, line 2, joined: yes or no was expected, not maybe"),
        ("name,length\n", "error: standard input: nothing is listed in it"),
        ("", "error: standard input: nothing is listed in it"),
    ] {
        let said = refused(&["--parts", "-", "--stock", "8ft"], lines.as_bytes());
        assert!(said.starts_with(message), "{lines}: {said}");
    }
    let said = refused(&["--parts", "-", "--stock", "8ft"], b"length\n12\n\xFF\n");
    assert!(said.starts_with("error: standard input, line 3, column 1: not text (UTF-8)"), "{said}");
    for (json, message) in [
        ("{}", ": a list of objects was expected"),
        ("[3]", ", entry 1: an object was expected"),
        ("[{\"length\": 3}, {\"size\": 3}]", ", entry 2: nothing is called \"size\""),
        ("[{\"length\": [3]}]", ", entry 1, length: a text or a number was expected"),
        ("[{\"length\": 3},]", ": trailing comma at line 1 column 16"),
    ] {
        let path = file("bad.json", json);
        let said = refused(&["--parts", path.to_str().unwrap(), "--stock", "8ft"], b"");
        assert!(said.contains(message), "{json}: {said}");
    }
}

#[test]
fn what_is_wrong_in_an_option_is_shown() {
    let told = |arguments: &str| refused(&arguments.split(' ').collect::<Vec<_>>(), b"");
    assert!(told("--part rail=4@17-9/8 --stock 8ft").contains("17-9/8\n"));
    assert!(told("--part rail=four@17 --stock 8ft").contains("--part, count: a whole number above zero was expected, not four"));
    assert!(told("--part rail=4@17 --stock 8ft:cheap").contains("--stock, price"));
    assert!(
        told("--part rail=4@9ft --stock 8ft")
            .contains("rail, 108\" long, is 12\" longer than the longest part that a board gives: 8ft gives 96\"")
    );
    assert!(told("--part rail=4@17").contains("required"));
    assert!(told("--part rail=4@17 --stock 8ft --kerf -1/8").contains("a kerf cannot be -1/8\": it must not be below zero"));
}

#[test]
fn a_plan_is_printed_with_boxes_and_cautions() {
    let paper = answer(&["--part", "rail=6@35", "--joined", "cap=1@10ft", "--stock", "8ft", "--keep", "1ft", "--burn", "1"], b"");
    for line in [
        "Plan     4 boards; no plan takes less (proved)",
        "  [ ] 4 of 8ft, 96\" = 8'-0\" long",
        "lay the 1\" line of the tape on the near end of the board",
        "cap, piece 1 of 2",
        "cut 2 like this  [ ] [ ]",
        "Nothing is left.",
        "Left: 25-3/4\", to keep.",
        "Left: 1-5/8\", waste.",
        "Follow the manual of the saw and of its blade",
    ] {
        assert!(paper.contains(line), "{line} in\n{paper}");
    }
}

#[test]
fn panels_from_sheets() {
    let plan = object("--panel side=2@72x15 --turnable cleat=1@12x2-1/4 --sheet 96x48");
    assert_eq!((&plan["cost"]["sheets"], &plan["optimal"]), (&1.into(), &true.into()));
    assert_eq!(plan["sheets"][0]["panels"].as_array().unwrap().len(), 3);
    let paper = answer(&["--panel", "side=2@72x15", "--trim", "1/4", "--sheet", "ply=96x48:54.90"], b"");
    for line in [
        "Trim     1/4\" off every edge first, saw cuts included",
        "Plan     a price of 54.90; no plan takes less (proved)",
        "  [ ] 1 of ply, 96\" x 48\", at 54.90 each",
        "of the piece",
        "95-1/2\" x 47-1/2\"",
        "Sheets   32 square feet\nPanels   15 square feet\nLeft     17 square feet",
        "Follow the manual of the saw and of its blade",
    ] {
        assert!(paper.contains(line), "{line} in\n{paper}");
    }
    let csv = answer(&["--panels", "-", "--sheet", "96x48"], b"width,length,turnable,count\n15,72,no,2\n12,2-1/4,yes,1\n");
    assert!(csv.contains("Panels   3\n"), "{csv}");
}

#[test]
fn panels_and_parts_are_not_mixed() {
    let told = |arguments: &str| refused(&arguments.split(' ').collect::<Vec<_>>(), b"");
    assert!(told("--part 3 --sheet 96x48").contains("cannot be used with"));
    assert!(told("--panel 3x4-1/2 --stock 8ft").contains("cannot be used with"));
    assert!(told("--panel 3x4-1/2 --sheet 96x48 --keep 3").contains("cannot be used with"));
    assert!(told("--panel 3 --sheet 96x48").contains("one length, not a size"));
    assert!(told("--panel 3x4-1/2x5 --sheet 96x48").contains("a length and a width were expected, not 3x4-1/2x5"));
    assert!(told("--panel 2x12 --sheet 96x48").contains("write 2in x 12in or 2ft x 12ft, whichever is meant"));
    assert!(told("--panel 97x12 --sheet 96x48").contains("is larger than every sheet gives"));
}

#[cfg(feature = "svg")]
#[test]
fn sheets_as_pictures() {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("sheets");
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir(&folder).unwrap();
    let (kit, second) = (folder.join("kit.svg"), folder.join("kit-2.svg"));
    let svg = ["--svg", kit.to_str().unwrap()];
    let names = || {
        let mut names: Vec<_> = std::fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().file_name()).collect();
        names.sort();
        names
    };
    let one = [&["--panel", "a<b=72x15", "--sheet", "96x48"][..], &svg].concat();
    assert!(answer(&one, b"").contains("Sheet 1: 96x48"));
    let picture = std::fs::read_to_string(&kit).unwrap();
    assert!(picture.starts_with("<svg ") && picture.contains(">a&lt;b</text>"), "{picture}");
    assert!(refused(&one, b"").contains("kit.svg is there already"));
    std::fs::write(&kit, "old").unwrap();
    assert_eq!(answer(&[&one[..], &["--force", "--json"]].concat(), b"").lines().count(), 1);
    assert_eq!((std::fs::read_to_string(&kit).unwrap(), names()), (picture, vec!["kit.svg".into()]));
    // Of several sheets none is saved when one may not be.
    let two = [&["--panel", "a=90x40", "--panel", "b=80x40", "--sheet", "96x48"][..], &svg].concat();
    std::fs::write(&second, "old").unwrap();
    assert!(refused(&two, b"").contains("kit-2.svg is there already"));
    assert_eq!(names(), ["kit-2.svg", "kit.svg"]);
    answer(&[&two[..], &["--force"]].concat(), b"");
    assert_eq!(names(), ["kit-1.svg", "kit-2.svg", "kit.svg"]);
    assert!(std::fs::read_to_string(&second).unwrap().contains(">b</text>"));
    assert!(refused(&["--part", "3", "--stock", "8ft", svg[0], svg[1]], b"").contains("cannot be used with"));
}

#[test]
fn trimmed_ends_are_told() {
    let paper = answer(&["--part", "35", "--stock", "8ft", "--trim-near", "1/2"], b"");
    assert!(paper.contains("Trim     1/2\" off the near end and 0\" off the far end, saw cuts included"), "{paper}");
    assert!(paper.contains("35-1/2\"") && paper.contains("Or trim the near end, cut,"), "{paper}");
}

#[test]
fn what_may_be_a_slip_is_told_once() {
    for (kerf, said) in [
        ("1", "look again at --kerf 1: a saw cuts about 1/8\" wide\n"),
        ("9/16", "look again at --kerf 9/16: a saw cuts about 1/8\" wide\n"),
        ("1/2", ""),
        ("3mm", ""),
    ] {
        for part in [["--part", "rail=2@12", "--stock", "8ft"], ["--panel", "side=2@24x12", "--sheet", "96x48"]] {
            let output =
                Command::new(env!("CARGO_BIN_EXE_scantling")).arg("cut").args(part).args(["--kerf", kerf]).output().unwrap();
            assert_eq!((String::from_utf8(output.stderr).unwrap().as_str(), output.status.code()), (said, Some(0)), "{kerf}");
        }
    }
}
