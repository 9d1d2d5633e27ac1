//! `scantling case`: one case by options, by a job file and as a job sheet, which must all say the same. The figures of the
//! ware case were worked by hand, apart from the crate. The whole text stands in the README.
use std::fs;
use std::io::Write as _;
use std::path::PathBuf;
use std::process::{Command, Output, Stdio};

use serde_json::Value;

const WARE_CASE: &str = "--width 36 --height 72 --depth 12 --over frame --sheet 23/32 --back rabbet:7/32:3/8 \
    --frame 3/4:1-3/4:2-1/4:1-1/2 --past 1/4 --level-with-rail --joint dado:1/4 --top-joint rabbet:1/4 \
    --base separate:4:3:3/4:1/2 --ties 1 --shelves 4";

fn ran(arguments: &[&str], input: &str) -> (String, String, Option<i32>) {
    let mut command = Command::new(env!("CARGO_BIN_EXE_scantling"));
    command.arg("case").args(arguments).stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = command.spawn().unwrap();
    child.stdin.take().unwrap().write_all(input.as_bytes()).unwrap();
    let Output { status, stdout, stderr } = child.wait_with_output().unwrap();
    let text = |bytes| String::from_utf8(bytes).unwrap();
    (text(stdout), text(stderr), status.code())
}

#[track_caller]
pub fn prints(arguments: &str, input: &str) -> String {
    let (stdout, stderr, status) = ran(&arguments.split_whitespace().collect::<Vec<_>>(), input);
    assert_eq!((stderr.as_str(), status), ("", Some(0)), "{arguments}");
    stdout
}

#[track_caller]
pub fn refuses(arguments: &[&str], input: &str, message: &str) {
    let (stdout, stderr, status) = ran(arguments, input);
    assert_eq!((stdout.as_str(), status), ("", Some(2)), "{arguments:?}");
    assert!(stderr.contains(message), "{stderr}");
}

pub fn object(arguments: &str, input: &str) -> Value {
    serde_json::from_str(&prints(&format!("{arguments} --json"), input)).unwrap()
}

/// A folder of its own for each test.
pub fn folder(name: &str) -> PathBuf {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("case").join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).unwrap();
    folder
}

#[test]
fn the_ware_case() {
    let answer = object(WARE_CASE, "");
    let parts = answer["parts"].as_array().unwrap();
    let line = |part: &Value| {
        ["name", "pieces", "thickness"].map(|field| part[field].as_str().unwrap().to_owned()).join("|")
            + &["width", "length"].map(|side| format!("|{}|{}", part[side]["exact"], part[side]["tape"])).concat()
    };
    assert_eq!(line(&parts[0]), r#"side|1 left + 1 right|23/32 in|"11 1/4 in"|"11 1/4 in"|"68 in"|"68 in""#);
    // What goes inside another part is rounded down: 11 1/32 in is midway.
    assert_eq!(line(&parts[3]), r#"shelf|4|23/32 in|"11 1/32 in"|"11 in"|"34 9/16 in"|"34 9/16 in""#);
    assert_eq!(line(&parts[4]), r#"back|1|7/32 in|"34 3/4 in"|"34 3/4 in"|"67 15/16 in"|"67 15/16 in""#);
    assert_eq!(parts.len(), 10);
    let shelves = answer["levels"]["shelves"].as_array().unwrap();
    let marks: Vec<_> = shelves.iter().map(|shelf| shelf["lower"]["tape"].as_str().unwrap()).collect();
    assert_eq!(marks, ["14 1/16 in", "27 3/8 in", "40 11/16 in", "54 in"]);
    let openings = answer["levels"]["openings"].as_array().unwrap();
    let as_cut: Vec<_> = openings.iter().map(|opening| opening["as_cut"].as_str().unwrap()).collect();
    assert_eq!(as_cut, ["12 9/16 in", "12 19/32 in", "12 19/32 in", "12 19/32 in", "12 9/16 in"]);
    assert_eq!(answer["nail_lines"][0]["at"]["exact"], "39/64 in");
    assert!(answer["sums"].as_array().unwrap().iter().all(|sum| sum["closes"] == true));
    // The root of 72 squared and 12 squared is 72.99 in.
    assert_eq!(answer["tip_up"]["tape"], "73 in");
    assert_eq!(answer["buy"][1]["pieces"], serde_json::json!([{ "count": 1, "length": "96 in", "width": "48 in" }]));
}

#[test]
fn an_answer_is_a_job() {
    let answer = object(WARE_CASE, "");
    let job = answer["case"].to_string();
    assert_eq!(object("--job -", &job), answer);
    let file = folder("job").join("case.json");
    fs::write(&file, &job).unwrap();
    let taller = object(&format!("--job {} --height 73", file.display()), "");
    assert_eq!(taller["parts"][0]["length"]["exact"], "69 in");
}

#[test]
fn stock_by_name() {
    let job = r#"{"name":"rack","width":"36 in","height":"72 in","depth":"12 in","sheet":"3/4 ply","shelf":"1x4",
        "back":{"kind":"applied","thickness":"1/4 ply"}}"#;
    let answer = object("--job -", job);
    // The labels of both categories, by the table of `data/ply_ps1.csv`; a 1x4 is 3/4 in.
    assert_eq!((&answer["case"]["side"], &answer["case"]["shelf"]), (&"367/500 in".into(), &"3/4 in".into()));
    assert_eq!(answer["case"]["back"]["thickness"], "9/40 in");
    assert_eq!(answer["stock"].as_array().unwrap().len(), 3);
    let text = prints("--job - --side 23/32", job);
    assert!(text.contains(
        "sheet: \"3/4 ply\" is reckoned as 0.734\", 0.016\" under its name; panels of that name are 23/32\" to 25/32\""
    ));
    assert!(text.contains("\n [ ]   1 left + 1 right   side     23/32\""), "{text}");
}

#[test]
fn in_millimeters_all_is() {
    let arguments = "--unit mm --tape 1 --width 900 --height 1800 --depth 400 --sheet 18 --shelves 2 --joint dado:6 \
        --base toe:100:60:18 --kerf 3";
    let text = prints(arguments, "");
    let (lists, cautions) = text.split_once("\nCautions\n").unwrap();
    assert!(lists.contains("less two sides of 18 mm, plus two dadoes of 6 mm"), "{lists}");
    assert!(lists.contains("height 1800 mm: below the bottom 100 mm + bottom 18 mm + opening"), "{lists}");
    assert!(!lists.contains("/127"), "{lists}");
    assert!(cautions.contains("begins at 27 in"));
}

/// What is read with a tool in hand has a hyphen before its fraction; a space has only what is exact, in a place of its own.
#[test]
fn what_is_cut_cannot_be_misread() {
    let arguments = "--width 36 --height 72 --depth 12 --side 4-1/2 --joint dado:1-5/8 --base toe:4-1/4:3-1/8:3/4 --openings 10-1/32 \
        --back groove:1/4:1/4:1-3/8 --molding 1-1/4 --kerf 3/8";
    let text = prints(arguments, "");
    let (told, _) = text.split_once("\nCut list").unwrap();
    let characters: Vec<char> = told.chars().collect();
    assert!(characters.windows(5).all(|five| !matches!(five, ['0'..='9', ' ', '0'..='9', '/', '0'..='9'])), "{told}");
    for said in [
        "a dado of 1-5/8\" is deeper than a third of the 4-1/2\" side",
        // 4 1/4, 3/4 and 10 1/32, which is midway.
        "is marked at 15-1/16\" from below",
        "Cut the dadoes 1-5/8\" deep",
        "3-1/8\" back, 4-1/4\" up",
        "1-3/8\" in from the rear",
    ] {
        assert!(told.contains(said), "{said} {told}");
    }
    // The width of a molding is none of the case's figures, and so never nothing.
    assert!(text.contains("1-1/4\"   as bought") && text.contains("1 1/4\" x as bought x "), "{text}");
    assert!(!text.contains("x 0\""), "{text}");
}

#[test]
fn shelves_under_load() {
    // 5 × (15/144) × 34.0625⁴ / (32 × 1,740,000 × (23/32)³) in is 0.0339 in, by hand; one part in 240 is 0.1419 in.
    let answer = object(&format!("{WARE_CASE} --material ash,white --load kitchen --limit 240"), "");
    let sag = &answer["sag"];
    assert_eq!((&sag["limit"], &sag["span"]["exact"], &sag["within"]), (&240.into(), &"34 1/16 in".into(), &true.into()));
    assert_eq!((&sag["sag"]["tape"], &sag["sag"]["lean"]), (&"1/16 in".into(), &"shy".into()));
    refuses(
        &["--width", "36", "--height", "72", "--depth", "12", "--shelves", "2", "--material", "red maple plywood"],
        "",
        "no figure for `red maple plywood`",
    );
}

#[test]
fn what_is_refused() {
    let size = ["--width", "36", "--height", "72", "--depth", "12"];
    let with = |more: &[&'static str]| [&size[..], more].concat();
    refuses(&["--width", "36"], "", "--height");
    refuses(&with(&["--joint", "tenon"]), "", "--joint: tenon is not understood");
    refuses(&with(&["--joint", "dado:3/0"]), "", "--joint: ");
    refuses(&with(&["--back", "rabbet:1/4"]), "", "write none, applied:7/32, rabbet:7/32:3/8 or groove:1/4:1/4:1/2");
    refuses(&with(&["--past", "1/4"]), "", "--past and --stiles-between are for a face frame");
    refuses(&with(&["--ties", "1"]), "", "--ties are for a separate base");
    refuses(&with(&["--load", "library"]), "", "a load and a limit say nothing without a material");
    refuses(&with(&["--shelves", "99999999"]), "", "100000000 openings are too many to list");
    refuses(&with(&["--bays", "60"]), "", "the clear width of a bay would come out");
    refuses(&["--job", "-"], "{}", "standard input has no case: missing field `width`");
    refuses(&["--job", "-"], "[", "standard input has no case: ");
    refuses(&["--job", "-"], r#"{"width":"36 inchs"}"#, "standard input has no case: width: an unknown unit: found `inchs`");
    let back = r#"{"width":"36 in","height":"72 in","depth":"12 in","back":{"kind":"applied","thickness":"1/4"}}"#;
    refuses(&["--job", "-"], back, "standard input has no case: back.thickness: a number without a unit");
    let sheet = r#"{"width":"36 in","height":"72 in","depth":"12 in","sheet":"3/4"}"#;
    refuses(&["--job", "-"], sheet, "standard input has no case: sheet: a number without a unit");
    let between = r#"{"height":"72 in","depth":"12 in","site":{"widths":["36"]}}"#;
    refuses(&["--job", "-"], between, "standard input has no case: site.widths[0]: a number without a unit");
    refuses(&["--job", "-"], r#"{"limit":"high"}"#, "standard input has no case: limit: invalid type");
    refuses(&["--job", "-"], r#"{"width":"36 in","height":"72 in","depth":"12 in","shelfs":4}"#, "unknown field `shelfs`");
}

/// The tags of a page, each closed where HTML wants it to be; no attribute without quotes.
#[track_caller]
pub fn is_well_formed(page: &str) {
    const VOID: [&str; 4] = ["meta", "input", "br", "link"];
    let mut open = Vec::new();
    let (_, body) = page.split_once("<!DOCTYPE html>").unwrap();
    for piece in body.split('<').skip(1) {
        let (tag, text) = piece.split_once('>').expect(piece);
        assert!(!text.contains('>'), "{piece}");
        assert_eq!(tag.matches('"').count() % 2, 0, "{piece}");
        let name = tag.split(' ').next().unwrap();
        match name.strip_prefix('/') {
            Some(name) => assert_eq!(open.pop(), Some(name), "{piece}"),
            None if VOID.contains(&name) => {}
            None => open.push(name),
        }
    }
    assert!(open.is_empty(), "{open:?}");
}

#[test]
fn the_job_sheet() {
    let file = folder("sheet").join("ware.html");
    let path = file.to_str().unwrap();
    let arguments: Vec<&str> = WARE_CASE.split_whitespace().chain(["--html", path]).collect();
    let named = |name| [&[name], &arguments[..]].concat();
    let (text, errors, status) = ran(&named("<script>alert('1')</script> & \"ware\"\u{7}"), "");
    assert_eq!((errors.as_str(), status), ("", Some(0)));
    let page = fs::read_to_string(&file).unwrap();
    is_well_formed(&page);
    assert!(page.contains("<title>&lt;script&gt;alert('1')&lt;/script&gt; &amp; &quot;ware&quot; </title>"));
    assert!(!page.contains("<script") && !page.contains("http") && !page.contains("url(") && !page.contains('\u{7}'));
    assert!(page.contains(r#"content="width=device-width, initial-scale=1""#) && page.contains("<svg viewBox="));

    // Every size of the text, every mark and every opening stands on the sheet, too.
    let plain = page.replace("&quot;", "\"").replace('\u{a0}', " ").replace('\u{2060}', "");
    for size in [
        "23/32\" × 11-1/4\" × 68\"",
        "23/32\" × 11\" × 34-9/16\"",
        "7/32\" × 34-3/4\" × 67-15/16\"",
        "3/4\" × 4\" × 7-1/2\"",
        "14-1/16\"",
        "27-3/8\"",
        "40-11/16\"",
        "54\"",
        "12-9/16\"",
        "12-19/32\"",
        "exactly 39/64\"",
        "width 36\": left overhang 1/4\" + side 23/32\" + clear 34 1/16\" + side 23/32\" + right overhang 1/4\"",
    ] {
        assert!(plain.contains(size), "{size}");
    }
    let columns = text.lines().filter_map(|line| line.strip_prefix(" [ ]   "));
    for line in columns {
        let sizes: Vec<_> = line.split("   ").map(str::trim).filter(|cell| cell.ends_with('"')).collect();
        assert!(plain.contains(&sizes[..3].join(" × ")), "{line}");
        assert!(plain.contains(&sizes[3].replace(" x ", " × ")), "{line}");
    }
    refuses(&named("again"), "", "is there already");
    assert!(ran(&[&named("again")[..], &["--force"]].concat(), "").0.starts_with("Case     again\n"));
}

#[test]
fn a_case_too_large_to_draw_still_has_a_sheet() {
    let file = folder("large").join("large.html");
    prints(&format!("--width 99999999ft --height 99999999ft --depth 12 --html {}", file.display()), "");
    assert!(!fs::read_to_string(&file).unwrap().contains("<svg"));
}

#[cfg(all(feature = "svg", feature = "pdf"))]
#[test]
fn poles_in_true_size() {
    let folder = folder("poles");
    let shown = folder.display();
    prints(&format!("{WARE_CASE} --svg {shown} --pdf {shown} --paper a4"), "");
    let mut names: Vec<_> = fs::read_dir(&folder).unwrap().map(|file| file.unwrap().file_name().into_string().unwrap()).collect();
    names.sort();
    assert_eq!(names, ["frame.pdf", "frame.svg", "side-left.pdf", "side-left.svg", "side-right.pdf", "side-right.svg"]);
    refuses(
        &[&WARE_CASE.split_whitespace().collect::<Vec<_>>()[..], &["--svg", folder.to_str().unwrap()]].concat(),
        "",
        "is there already",
    );
}

/// Flush parts are ripped at one setting: 12 less 7/32 is 11 25/32, midway and so rounded up, for a shelf as for a side. What is less
/// deep than the sides goes inside, and is rounded down.
#[test]
fn what_is_flush_is_as_wide_on_the_tape() {
    let flush = prints("--width 36 --height 72 --depth 12 --shelves 4 --sheet 23/32 --joint dado:1/4 --back applied:7/32", "");
    let inside =
        prints("--width 36 --height 72 --depth 12-1/32 --shelves 4 --sheet 23/32 --joint dado:1/4 --back groove:1/4:1/4:1/2", "");
    for (text, part, wide) in [
        (&flush, "side", "11-13/16\""),
        (&flush, "bottom", "11-13/16\""),
        (&flush, "top", "11-13/16\""),
        (&flush, "shelf", "11-13/16\""),
        // 12 1/32, which is midway; 1/2 in front of the back and the back's 1/4 come off the shelves.
        (&inside, "side", "12-1/16\""),
        (&inside, "bottom", "12-1/16\""),
        (&inside, "shelf", "11-1/4\""),
    ] {
        let line = text.lines().find(|line| line.starts_with(" [ ]") && line.contains(&format!(" {part} "))).unwrap();
        assert!(line.contains(&format!(" 23/32\"   {wide} ")), "{line}");
    }
}

#[test]
fn a_sag_that_is_not_worked_out_is_said_to_be_so() {
    let said = "Shelves under load\n  how far they sag is not worked out: --material names what they are made of\n";
    assert!(prints("--width 60 --height 72 --depth 12 --shelves 4", "").contains(said));
    assert!(!prints("--width 60 --height 72 --depth 12", "").contains("Shelves under load"));
}
