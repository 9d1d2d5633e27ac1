//! `scantling divide`: the kinds of spacing by their options, and what is refused. Figures were worked by hand.
//! How a whole answer looks is left to `readme.rs`.
use std::process::{Command, Output};

use serde_json::Value;

fn scantling(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_scantling")).arg("divide").args(arguments).output().unwrap()
}

fn text(bytes: &[u8]) -> &str {
    std::str::from_utf8(bytes).unwrap()
}

/// The answer to good input.
#[track_caller]
fn answer(arguments: &str) -> String {
    let Output { status, stdout, stderr } = scantling(&arguments.split(' ').collect::<Vec<_>>());
    assert_eq!((text(&stderr), status.code()), ("", Some(0)));
    text(&stdout).to_owned()
}

#[track_caller]
fn object(arguments: &str) -> Value {
    serde_json::from_str(&answer(&format!("{arguments} --json"))).unwrap()
}

/// A field of every object in a list.
fn each(object: &Value, list: &str, field: &str) -> Vec<String> {
    object[list].as_array().unwrap().iter().map(|entry| entry[field].as_str().unwrap().to_owned()).collect()
}

const DRAWERS: &str = "36 --drawers 5 --thickness 3/4 --grow-by 3/4";

#[test]
fn graduated_drawers_from_the_top() {
    let bank = object(DRAWERS);
    assert_eq!(bank["members"], 4);
    assert_eq!(each(&bank, "gaps", "exact"), ["5 1/10 in", "5 17/20 in", "6 3/5 in", "7 7/20 in", "8 1/10 in"]);
}

#[test]
fn graduated_drawers_on_a_story_pole() {
    let bank = object(&format!("{DRAWERS} --from-bottom"));
    assert_eq!(each(&bank, "marks", "tape"), ["8 1/8 in", "16 3/16 in", "23 9/16 in", "30 1/8 in"]);
    assert_eq!(each(&bank, "gaps", "as_cut"), ["8 1/8 in", "7 5/16 in", "6 5/8 in", "5 13/16 in", "5 1/8 in"]);
    let table = r#"
 opening     as cut    exactly
       1   8-1/8"     8 1/10"
       2   7-5/16"    7 7/20"
       3   6-5/8"     6 3/5"
       4   5-13/16"   5 17/20"
       5   5-1/8"     5 1/10"
"#;
    let answer = answer(&format!("{DRAWERS} --from-bottom"));
    assert!(answer.contains(table), "{answer}");
}

#[test]
fn the_fewest_slats_of_a_guarded_rail() {
    for limit in ["--under 4", "--guard"] {
        let rail = object(&format!("80-1/2 --thickness 1-1/2 {limit}"));
        assert_eq!(rail["members"], 15);
        assert_eq!(each(&rail, "gaps", "as_cut"), ["3 5/8 in"; 16]);
        let eighths = (0..15).map(|slat| 29 + slat * 41);
        let marks = eighths.map(|place| match place % 8 {
            0 => format!("{} in", place / 8),
            part if part % 4 == 0 => format!("{} 1/2 in", place / 8),
            part if part % 2 == 0 => format!("{} {}/4 in", place / 8, part / 2),
            part => format!("{} {part}/8 in", place / 8),
        });
        assert!(each(&rail, "marks", "tape").into_iter().eq(marks));
        assert_eq!(rail["marks"][14]["exact"], "75 3/8 in");
        assert_eq!(rail.get("caution").is_some(), limit == "--guard");
    }
    let guarded = answer("80-1/2 --thickness 1-1/2 --guard");
    assert!(guarded.contains("\nCaution. ") && guarded.contains("Ask the local building department"), "{guarded}");
}

#[test]
fn every_kind_by_its_near_edges() {
    let cases: [(&str, &[&str]); 17] = [
        // Bars of a drying rack: just 4 in will do, and will not.
        ("9-1/4 --thickness 1-1/4 --widest 4", &["4 in"]),
        ("9-1/4 --thickness 1-1/4 --under 4", &["2 1/4 in", "5 3/4 in"]),
        // Hooks: just 7 in will do, and will not.
        ("28 --thickness 0 --narrowest 7", &["7 in", "14 in", "21 in"]),
        ("28 --thickness 0 --over 7", &["9 1/3 in", "18 2/3 in"]),
        ("42 --about 10", &["10 1/2 in", "21 in", "31 1/2 in"]),
        ("44 --about 10 --thickness 2", &["9 1/2 in", "21 in", "32 1/2 in"]),
        // Racks of 4 in, 12 in on center, as in the documentation of the library.
        ("42 --on-center 12 --thickness 4", &["10 in", "22 in", "34 in"]),
        ("42 --on-center 12 --thickness 4 --center-at 6", &["4 in", "16 in", "28 in"]),
        ("42 --on-center 12 --thickness 4 --face-at 0", &["0 in", "12 in", "24 in", "36 in"]),
        ("42 --on-center 12 --thickness 4 --off-center-line 0", &["7 in", "19 in", "31 in"]),
        ("42 --on-center 12 --thickness 4 --shared", &["1 in", "13 in", "25 in", "37 in"]),
        ("84 --widths 13 20 13", &["9 1/2 in", "32 in", "61 1/2 in"]),
        // Four glaze shelves, crocks between the first and the second.
        ("72 --members 4 --thickness 3/4 --hold 1=18", &["12 3/4 in", "31 1/2 in", "45 in", "58 1/2 in"]),
        ("37 --shares 3:2:2 --thickness 1", &["15 in", "26 in"]),
        ("91 --drawers 3 --thickness 0 --grow-times 6/5", &["25 in", "55 in"]),
        ("90 --drawers 3 --thickness 0 --top 20", &["20 in", "50 in"]),
        ("90 --drawers 3 --thickness 0 --bottom 40", &["20 in", "50 in"]),
    ];
    for (arguments, edges) in cases {
        assert_eq!(each(&object(arguments), "marks", "exact"), edges, "{arguments}");
    }
}

#[test]
fn the_run_is_drawn_no_wider_than_a_terminal() {
    // 76 characters for the run: 8 1/10 in are 17.1 of them, 16 1/5 in 34.2, 23 11/20 in 49.7, 30 3/20 in 63.65.
    let sketch = r#"
                   1                2               3             4
                   v                v               v             v
 |-----------------#----------------#---------------#-------------#-----------|
       8-1/8"           7-5/16"          6-5/8"        5-13/16"      5-1/8"
"#;
    let drawers = answer(&format!("{DRAWERS} --from-bottom"));
    assert!(drawers.contains(sketch), "{drawers}");
    // Frames of 11 3/4, 18.1 and 11 3/4 characters, marked at their centers.
    let frames = " |---------[#########]---------[################]---------[#########]---------|\n";
    assert!(answer("84 --widths 13 20 13 --edge center").contains(frames));
    for arguments in ["72 --into 76", "72 --members 50 --thickness 1", "72 --members 36 --thickness 2", "7in --into 2"] {
        let answer = answer(arguments);
        let drawn: Vec<_> = answer.lines().filter(|row| row.starts_with(" |")).collect();
        assert_eq!(drawn.iter().map(|row| row.len()).collect::<Vec<_>>(), [79], "{answer}");
    }
    // Too many to be told apart, and nothing to draw.
    for arguments in ["72 --into 78", "72 --members 0 --thickness 1", "0 --into 4"] {
        assert!(!answer(arguments).contains('|'), "{arguments}");
    }
}

#[test]
fn a_spacer_block_and_where_the_remainder_goes() {
    // Five shelves of 3/4 in in 72 1/4 in: openings of 11 5/12 in, blocks of 11 3/8 in, 1/4 in over.
    let case = "72-1/4 --members 5 --thickness 3/4";
    let cases = [
        ("--block", 5, "11 5/8 in", "11 3/8 in", "the last of the openings set by it is left at 11 5/8\"."),
        ("--block=last", 5, "11 5/8 in", "11 3/8 in", "the last of the openings set by it is left at 11 5/8\"."),
        ("--block=first", 5, "11 5/8 in", "11 5/8 in", "the first of the openings set by it is left at 11 5/8\"."),
        ("--block=split", 4, "11 1/2 in", "11 1/2 in", "the first and the last of the openings set by it are left at 11 1/2\"."),
    ];
    for (option, times, left, first, said) in cases {
        let block = &object(&format!("{case} {option}"))["spacer_block"];
        assert_eq!((&block["block"]["exact"], &block["times"]), (&"11 3/8 in".into(), &times.into()));
        assert_eq!((&block["left"]["exact"], &block["near_edges"][0]), (&left.into(), &first.into()), "{option}");
        let answer = answer(&format!("{case} {option}"));
        let cut = format!("\nSpacer block: cut it 11-3/8\" long and set openings with it {times} times;\n{said}\n");
        assert!(answer.ends_with(&cut), "{answer}");
    }
}

#[test]
fn friendly_sizes_within_a_limit() {
    // Five equal parts come out whole when the run is a multiple of 5/16 in: 1150 and 1155 sixteenths are next to 1152.
    let parts = object("72 --into 5 --friendly 1/4");
    assert_eq!(each(&parts, "friendly_sizes", "change"), ["-1/8 in", "3/16 in"]);
    assert_eq!(each(&parts, "friendly_sizes", "size"), ["71 7/8 in", "72 3/16 in"]);
    assert_eq!(each(&parts, "friendly_sizes", "opening"), ["14 3/8 in", "14 7/16 in"]);
    let table = r#"
Every part is a whole count of 1/16" with one of these changes:

 change               by         to   each full part
 the run   less    1/8"    71 7/8"          14 3/8"
 the run   more    3/16"   72 3/16"         14 7/16"
"#;
    let parts = answer("72 --into 5 --friendly 1/4");
    assert!(parts.ends_with(table), "{parts}");
    let none = answer("72 --into 5 --friendly 1/16");
    assert!(none.ends_with("\nNo one change of up to 1/16\" makes every part a whole count of 1/16\".\n"), "{none}");
    // A size that was held may change as well, by what the run may.
    let held = object("72-1/8 --members 4 --thickness 3/4 --hold 1=18 --friendly 1/8");
    let openings: Vec<_> = held["friendly_sizes"].as_array().unwrap().iter().filter(|size| size["after"] == 1).collect();
    assert_eq!(openings.iter().map(|size| &size["size"]).collect::<Vec<_>>(), ["17 7/8 in", "18 1/8 in"]);
}

#[test]
fn what_is_refused_and_why() {
    let cases = [
        ("72", "nothing says how to divide the run"),
        ("72 --into five", "a whole number was expected, such as 5"),
        ("72 --members 2.5 --thickness 1", "a whole number was expected, such as 5"),
        ("72 --drawers -3 --thickness 1", "a whole number was expected, such as 5"),
        ("72 --under 4", "nothing says how thick they are"),
        ("72 --members 3", "--thickness <LENGTH>"),
        ("72 --into 3 --members 3 --thickness 1", "cannot be used with"),
        ("72 --into 3 --grow-by 1", "cannot be used with"),
        ("72 --members 3 --thickness 1 --shared", "cannot be used with"),
        ("72 --drawers 3 --thickness 1 --top 3 --bottom 4", "cannot be used with"),
        ("72 --thickness 1 --under 4 --guard", "cannot be used with"),
        ("72 --thickness 1 --under 4 --grow-by 1", "--drawers <COUNT>"),
        ("72 --widths 3 4 --thickness 1", "cannot be used with"),
        ("72 --widths 3 x", "--widths: "),
        ("72 --on-center 16,5 --thickness 1", "--on-center: "),
        ("72 --shares 3:x --thickness 1", "--shares: whole numbers with colons between them, not 3:x"),
        ("72 --drawers 3 --thickness 1 --grow-times 2in", "--grow-times: a number such as 2 or 6/5, not 2in"),
        ("72 --drawers 10001 --thickness 0", "10001 are too many to list: at most 10000"),
        ("72 --members 3 --thickness 1 --hold 3", "--hold: a member's number, = and a length, not 3"),
        ("72 --members 3 --thickness 1 --hold 9=3", "no opening comes after member 9: there are 3 members"),
        ("72 --members 3 --thickness 1 --hold 1=3 --hold 1=4", "--hold: the opening after member 1 is held twice"),
        ("80-1/2 --members 14 --thickness 1-1/2 --under 4", "with 14 members the gap after member 1 would be cut at 4\""),
        ("36 --drawers 5 --thickness 3/4 --grow-by 3/4 --block", "--block: no two openings are meant to be equal"),
        ("72 --on-center 16 --thickness 1 --friendly 1", "--friendly: members on center keep their pitch"),
        ("72 --into 5 --friendly -1/2", "--friendly: "),
        ("72 --into 5 --friendly 10000", "--friendly: over 10000 sizes lie within 10000\""),
        ("72 --on-center 16 --thickness 1 --near-end half-gap", "no equal gap to halve at an end"),
    ];
    for (arguments, said) in cases {
        let refused = scantling(&arguments.split(' ').collect::<Vec<_>>());
        assert_eq!((refused.status.code(), text(&refused.stdout)), (Some(2), ""), "{arguments}");
        assert!(text(&refused.stderr).contains(said), "{arguments}: {}", text(&refused.stderr));
    }
}

/// A fraction above one is read as it stands, and said to be, once, beside the answer and not in it.
#[test]
fn what_may_be_mistyped_is_named() {
    for (arguments, said) in [
        ("72 --members 3 --thickness 13/4", "look again at --thickness 13/4: "),
        ("72 --widest 13/4 --thickness 1", "look again at --widest 13/4: "),
        ("31/2 --into 5", "look again at 31/2: "),
    ] {
        let output = scantling(&arguments.split(' ').collect::<Vec<_>>());
        let (stdout, stderr) = (text(&output.stdout), text(&output.stderr));
        assert_eq!((output.status.code(), stderr.lines().count()), (Some(0), 1), "{arguments}: {stderr}");
        assert!(stderr.starts_with(said) && !stdout.contains("look again"), "{arguments}: {stderr}");
    }
}
