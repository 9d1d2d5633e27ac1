//! `scantling lumber`: every figure with its name and its source, and nothing where a name is not good. Figures were worked
//! by hand from the published tables in `data/`.
use std::process::{Command, Output};

fn output(arguments: &[&str]) -> (String, String, Option<i32>) {
    let mut command = Command::new(env!("CARGO_BIN_EXE_scantling"));
    let Output { status, stdout, stderr } = command.arg("lumber").args(arguments).output().unwrap();
    let text = |bytes| String::from_utf8(bytes).unwrap();
    (text(stdout), text(stderr), status.code())
}

const CAUTIONS: &str = "
Sellers differ and wood moves: measure the piece itself before anything is cut to fit it.
What a joist, beam, post or shelf may carry is for local codes and licensed practice, not for these figures.
";

/// What it prints for good input.
#[track_caller]
fn prints(arguments: &[&str], expected: &str) {
    let (stdout, stderr, status) = output(arguments);
    assert_eq!((stderr, status), (String::new(), Some(0)));
    assert_eq!(format!("\n{stdout}"), format!("{expected}{CAUTIONS}"));
}

#[test]
fn feet_are_worded_so_that_they_can_be_grasped() {
    let (stdout, _, _) = output(&["2x4 - 2400 mm"]);
    let amount = "1 piece, about 7.87 linear feet, about 2.62 square feet of face, about 5.25 board feet";
    assert!(stdout.contains(amount), "{stdout}");
    let (stdout, _, _) = output(&["1x12 - 1'"]);
    assert!(stdout.contains("1 piece, 1 linear foot, 1 square foot of face, 1 board foot\n"), "{stdout}");
}

/// What it says for bad input, in which case it prints nothing.
#[track_caller]
fn refuses(arguments: &[&str], expected: &str) {
    let (stdout, stderr, status) = output(arguments);
    assert_eq!((stdout, status), (String::new(), Some(2)));
    // How far in a hint stands that has no line of text above it depends on the version of the renderer.
    let stderr = stderr.replace("\n |\n = help", "\n  |\n  = help");
    assert_eq!(format!("\n{}", stderr.trim_end()), expected.trim_end());
}

#[test]
fn softwood_with_its_amount_and_cost() {
    prints(
        &["2x4x8", "--pieces", "6", "--price", "0.62/bf"],
        r#"
2x4x8
  what it is         dimension lumber, S4S, dry
  thickness          1-1/2", 2" by name
  width              3-1/2", 4" by name
  length             96" = 8'-0"
  figures from       Tennessee Comp. R. & Regs. 0080-07-07-.06, which equals the American Softwood Lumber Standard, Table 4
  how much           6 pieces, 48 linear feet, 16 square feet of face, 32 board feet
  tallied by name    exact, under 1" thick counted as 1"
  cost               19.84, at 0.62 a board foot
"#,
    );
}

#[test]
fn hardwood_rough_and_planed() {
    prints(
        &["8/4"],
        r#"
8/4
  what it is         hardwood
  thickness          2" rough, 1-13/16" S1S, 1-3/4" S2S
  figures from       Hardwood lumber sizes, a secondary copy; planed, the least that grading allows
"#,
    );
    prints(
        &[
            "4/4 walnut S2S",
            "--width",
            "7-1/2",
            "--length",
            "9ft",
            "--pieces",
            "3",
            "--price",
            "9.75/bf",
            "--tally",
            "nearest-foot",
        ],
        r#"
4/4 walnut S2S
  what it is         hardwood, S2S
  thickness          13/16", 1" by name
  width              7-1/2"
  length             108" = 9'-0"
  figures from       Hardwood lumber sizes, a secondary copy; planed, the least that grading allows
  how much           3 pieces, 27 linear feet, 18 square feet of face, 18 board feet
  tallied by name    the face of each board to the nearest whole foot, halves up, under 1" thick counted as 1"
  cost               175.50, at 9.75 a board foot
"#,
    );
}

#[test]
fn panels_have_limits_and_sheets_their_own_units() {
    prints(
        &["3/4 ply 4x8", "1220x2440 mm"],
        r#"
3/4 ply 4x8
  what it is         panel
  thickness          23/32" to 25/32" unsanded or touch-sanded, labeled 0.734"
  width              48"
  length             96" = 8'-0"
  limits not for     hardwood plywood and imported panels: often thinner, 1/4" may measure 5.2 mm (from memory)
  figures from       APA Europe, Performance Category and Thickness, after PS 1
  figures from       sheet sizes as sold, common practice (from memory)
  how much           1 piece, 32 square feet of face

1220x2440 mm
  what it is         sheet
  width              1220 mm
  length             2440 mm
  figures from       sheet sizes as sold, common practice (from memory)
  how much           1 piece, about 32.04 square feet of face
"#,
    );
}

#[test]
fn several_come_to_a_total() {
    let (stdout, _, _) = output(&["5/4x6", "2x4x8", "1x12x6", "--length", "10ft", "--price", "0.7/bf"]);
    let together = "\ntogether\n  board feet         17 7/12\n  cost               12.31, exactly 12 37/120\n";
    assert!(stdout.ends_with(&format!("{together}{CAUTIONS}")), "{stdout}");
    // What cannot be counted is not left out in silence.
    let (stdout, _, _) = output(&["2x4x8", "1x12x6", "2x4", "8/4"]);
    let together = "\ntogether\n  board feet         11 1/3\n  not counted        2x4, 8/4: a width or a length was not said\n";
    assert!(stdout.ends_with(&format!("{together}{CAUTIONS}")), "{stdout}");
}

#[test]
fn json_has_every_figure() {
    let (stdout, _, _) = output(&["1x12 - 6'", "--pieces", "4", "--price", "1.15/bf", "--json"]);
    let object: serde_json::Value = serde_json::from_str(&stdout).unwrap();
    let text = |pointer: &str| object.pointer(pointer).and_then(|value| value.as_str()).unwrap_or_else(|| panic!("{pointer}"));
    for (pointer, expected) in [
        ("/text", "1x12 - 6'"),
        ("/kind", "softwood board"),
        ("/surface", "S4S"),
        ("/seasoning", "dry"),
        ("/nominal/width/exact", "12 in"),
        ("/actual/thickness/exact", "3/4 in"),
        ("/actual/width/exact", "11 1/4 in"),
        ("/actual/width/mm", "285.75"),
        ("/actual/length/exact", "72 in"),
        ("/sources/0", "PS 20 softwood sizes, a secondary copy"),
        ("/linear_feet", "24"),
        ("/square_feet", "24"),
        ("/board_feet", "24"),
        ("/price", "1.15 a board foot"),
        ("/cost", "27.60"),
        ("/cost_to_the_cent", "27.60"),
    ] {
        assert_eq!(text(pointer), expected, "{pointer}");
    }
    assert!(text("/caution").contains("local codes"), "{stdout}");
    let (stdout, _, _) = output(&["1/4 birch ply", "--json"]);
    let object: serde_json::Value = serde_json::from_str(&stdout).unwrap();
    assert_eq!(object["panel"]["least"]["exact"], "7/32 in");
    assert!(object["panel"]["not_for"].as_str().unwrap().starts_with("hardwood plywood"), "{stdout}");
}

#[test]
fn what_is_not_good_is_shown_in_its_place() {
    refuses(
        &["5/4"],
        "
error: a name with two readings
  |
1 | 5/4
  | ^^^ expected a name with one reading
  |
  = help: write 5/4 decking or 5/4 hardwood",
    );
    refuses(
        &["2x4x96"],
        "
error: a length without its unit
  |
1 | 2x4x96
  |     ^^ expected whole feet to 40, or a unit behind the number
  |
  = help: write 96' for feet or 96\" for inches",
    );
    refuses(&["2x7"], "\nerror: 2x7: 7\" is no width of dimension lumber in the table; the nearest are 6\" and 8\"");
    refuses(
        &["8/4", "walnut"],
        "\nerror: several words and no quotes: 8/4 walnut\n  |\n  = help: write \"8/4 walnut\" for one name",
    );
    refuses(
        &["2x4", "--pieces", "3"],
        "\nerror: 2x4 has no length, and that is needed to say how much it is\n  |\n  = help: say it in the name, as in 2x4x8, or with --length 8ft",
    );
    refuses(
        &["3/4 ply", "--price", "54/sheet"],
        "\nerror: 3/4\" ply has no width, and that is needed to say how much it is\n  |\n  = help: say both sides of the sheet in the name, as in \"3/4 ply 4x8\"",
    );
    refuses(
        &["2x4x8", "--pieces", "4294967296"],
        "\nerror: invalid value '4294967296' for '--pieces <COUNT>': a whole number from 1 to 4294967295 was expected\n\nFor more information, try '--help'.",
    );
    refuses(&["2x4", "--length", "8"], "\nerror: --length: 8 without a unit\n  |\n  = help: write 8ft or 8in");
    refuses(&["2x4x8", "--length", "8ft"], "\nerror: --length 96\" is of no use: every name says its own");
    refuses(&["4x8 sheet", "--price", "3/bf"], "\nerror: 4x8 sheet: sheet has no price by the board foot");
    // One bad name among good ones, and nothing is printed.
    refuses(&["2x4x8", "1x13"], "\nerror: 1x13: 13\" is no width of boards in the table; the nearest are 12\" and 14\"");
}

#[test]
fn a_name_given_as_a_length_is_pointed_here() {
    let mut command = Command::new(env!("CARGO_BIN_EXE_scantling"));
    let refused = String::from_utf8(command.args(["read", "2x4"]).output().unwrap().stderr).unwrap();
    assert!(refused.trim_end().ends_with("ask for one of its lengths; scantling lumber says what they are"), "{refused}");
}
