//! `scantling case`: the place, doors and drawers, stopped dadoes, solid wood and the stock it is cut from, by options and by a
//! job file. Worked by hand, apart from the crate.

use std::fs;

use serde_json::{Value, json};

use crate::case::{folder, is_well_formed, object, prints, refuses};

/// A part's pieces, width and length, exactly.
fn parts(answer: &Value, name: &str) -> Vec<[String; 3]> {
    let all = answer["parts"].as_array().unwrap().iter().filter(|part| part["name"] == name);
    all.map(|part| [&part["pieces"], &part["width"]["exact"], &part["length"]["exact"]].map(|text| text.as_str().unwrap().into()))
        .collect()
}

fn said(answer: &Value) -> Vec<&str> {
    answer["look_again"].as_array().unwrap().iter().map(|line| line.as_str().unwrap()).collect()
}

/// What was typed is what comes back.
#[track_caller]
fn is_a_job(answer: &Value) {
    assert_eq!(&object("--job -", &answer["case"].to_string())["case"], &answer["case"]);
}

const NICHE: &str = "--between-walls 60-1/8:60:60-3/16 --scribe 1/2:3/4 --floor 3/8 --ceiling 84 --height 80 --depth 24";

#[test]
fn the_place() {
    let answer = object(NICHE, "");
    // 60 - 1/2 - 3/4; the walls run out by 3/16.
    assert_eq!(answer["case"]["width"], "58 3/4 in");
    let place = &answer["place"];
    assert_eq!((&place["narrowest"]["exact"], &place["room"]["exact"]), (&"60 in".into(), &"58 3/4 in".into()));
    assert_eq!((&place["strips"][0]["exact"], &place["strips"][1]["exact"]), (&"11/16 in".into(), &"15/16 in".into()));
    assert_eq!((&place["shim"]["exact"], &place["ceiling"]["exact"]), (&"3/8 in".into(), &"84 in".into()));
    is_a_job(&answer);
    let job = answer["case"].to_string();
    assert_eq!(object("--job - --between-walls 50", &job)["case"]["width"], "48 3/4 in");
    let wide = object("--job - --width 59", &job);
    assert_eq!(said(&wide), ["the case is 59\" wide over all, and there is room for 58-3/4\" between the walls"]);
    let given =
        json!({ "height": "80 in", "depth": "2 ft", "site": { "widths": ["60 in", "60 in", "5 ft"], "ceiling": "80 1/2 in" } });
    let answer = object("--job -", &given.to_string());
    assert_eq!(answer["case"]["width"], "60 in");
    // 80² + 24² is 6976; 83 1/2 squared is 6972 1/4, and a sixteenth more is enough.
    assert_eq!(said(&answer), ["tipped up, the case takes 83-9/16\", and the ceiling is 80-1/2\": build it standing, or in two"]);

    let text = prints(NICHE, "");
    let (before, _) = text.split_once("\nOrder of work\n").unwrap();
    for line in [
        "Between the walls 60\" = 5'-0\" at the narrowest; scribing takes 1/2\" at the left, 3/4\" at the",
        "The case fills it: 58-3/4\" over all.",
        "Scribe strips, rough and not in the cut list: 11/16\" wide at the left, 15/16\" wide at the right,",
        "80\" long, as the walls run out",
        "shims of up to 3/8\" at the low one.",
        "the case takes 80\" standing, 83-9/16\"",
    ] {
        assert!(before.contains(line), "{line} {before}");
    }
    assert!(!prints("--width 36 --height 72 --depth 12", "").contains("\nPlace\n"));
    // 60 - 1/2 - 1/2 - 36
    let spare = prints("--between-walls 60 --scribe 1/2 --width 36 --height 72 --depth 12", "");
    assert!(spare.contains("23\"\n    more to share between them"), "{spare}");
    let sloped = ["--width", "36", "--height", "30", "--depth", "12", "--floor", "-1"];
    refuses(&sloped, "", "--floor: the high point cannot lie 1\" below the low one");
    let walls = ["--height", "30", "--depth", "12", "--between-walls", "36", "--scribe", "20"];
    refuses(&walls, "", "scribing takes 20\" and 20\" of 36\" between the walls: nothing is left for the case");
}

#[test]
fn doors_and_drawers() {
    let drawers = object("--width 18 --height 30 --depth 20 --drawers 4 --graduated 1", "");
    // 28 1/2 less five gaps of 1/8 is 27 7/8, less 6 is four of 5 15/32.
    let front = |wide: &str| ["1", wide, "16 1/4 in"].map(String::from);
    let graduated = ["8 15/32 in", "7 15/32 in", "6 15/32 in", "5 15/32 in"].map(front);
    assert_eq!(parts(&drawers, "drawer front"), graduated);
    assert!(drawers["sums"].as_array().unwrap().iter().all(|sum| sum["closes"] == true));
    is_a_job(&drawers);
    let job = drawers["case"].to_string();
    // 28 less 3 is three of 8 1/3.
    let three = ["10 1/3 in", "9 1/3 in", "8 1/3 in"].map(front);
    assert_eq!(parts(&object("--job - --drawers 3", &job), "drawer front"), three);
    let pair = object("--job - --doors 2 --mount overlay:1/2:1/8 --front-stock 1/2", &job);
    // (16 1/2 + 1 - 1/8) / 2 by 28 1/2 + 1
    assert_eq!(parts(&pair, "door"), [["2", "8 11/16 in", "29 1/2 in"].map(String::from)]);
    assert_eq!(parts(&pair, "drawer front"), Vec::<[String; 3]>::new());
    assert_eq!(pair["case"]["fronts"]["stock"], "1/2 in");

    let named = r#"{"width":"18 in","height":"30 in","depth":"20 in","fronts":{"kind":"doors","count":1,
        "mount":{"kind":"inset","gap":"1/8 in"},"stock":"1x6"}}"#;
    assert_eq!(object("--job -", named)["case"]["fronts"]["stock"], "3/4 in");
    let one = ["--width", "18", "--height", "30", "--depth", "20", "--drawers", "1", "--graduated", "top:5"];
    refuses(&one, "", "drawer fronts and gaps of given sizes come to 5\", and 28 1/4\" is to be filled");
    let text = prints("--width 18 --height 30 --depth 20 --drawers 4 --graduated 1", "");
    assert!(text.contains("for 2 x side, 1 x bottom, 1 x top, 4 x drawer front"), "{text}");
    let steps = drawers["order_of_work"].to_string();
    assert!(steps.contains("and fasten them with a gap of 1/8\\\" all round."), "{steps}");
}

#[test]
fn stopped_dadoes() {
    let answer = object("--width 36 --height 72 --depth 12 --joint dado:1/4 --stopped 1/2 --set-back 1/8 --shelves 2", "");
    let notches: Vec<_> = answer["parts"].as_array().unwrap().iter().filter(|part| !part["notch"].is_null()).collect();
    let line = |part: &Value| [&part["name"], &part["notch"]["deep"]["exact"], &part["notch"]["back"]["exact"]].map(Value::clone);
    // The shelves lie 1/8 behind, and need 3/8.
    assert_eq!(line(notches[0]), ["bottom", "1/4 in", "1/2 in"].map(Value::from));
    assert_eq!(line(notches[1]), ["shelf", "1/4 in", "3/8 in"].map(Value::from));
    let dado = &answer["stopped_dadoes"][0];
    assert_eq!((&dado["panel"], &dado["long"]["exact"]), (&"sides".into(), &"11 1/2 in".into()));
    is_a_job(&answer);
    let text = prints("--width 36 --height 72 --depth 12 --joint dado:1/4 --stopped 1/2 --shelves 2", "");
    assert!(text.contains("notch     both front corners, 1/4\" off each end, 1/2\" back"), "{text}");
}

#[test]
fn solid_wood() {
    let case = "--width 18 --height 30 --depth 12 --doors 1 --moisture 6:10 --solid door";
    let answer = object(&format!("{case} --species maple,red"), "");
    // 16 1/4 in × 0.00289 × 4 percent, by the table of `data/wood_coeffs.csv`; quarter-sawn 0.00137.
    let door = &answer["seasons"]["parts"][0];
    assert_eq!((&door["name"], &door["change"]["exact"]), (&"door".into(), &"3757/20000 in".into()));
    assert_eq!(
        (&door["binds"], said(&answer)),
        (&true.into(), vec!["the door swells about 0.1879\" and has 1/8\" of room: it will bind"])
    );
    is_a_job(&answer);
    let quarter = object(&format!("{case} --species maple,red --sawn quarter --mount inset:3/16"), "");
    // 16 1/8 × 0.00137 × 4
    assert_eq!(quarter["seasons"]["parts"][0]["change"]["exact"], "17673/200000 in");
    assert_eq!(said(&quarter), [""; 0]);
    is_a_job(&quarter);
    let own = object(&format!("{case} --coefficient 0.002"), "");
    // 16 1/4 × 0.008
    assert_eq!(own["seasons"]["parts"][0]["change"]["exact"], "13/100 in");
    is_a_job(&own);
    let drying = prints("--width 18 --height 30 --depth 12 --doors 1 --solid door --moisture 10:6 --coefficient 0.002", "");
    assert!(drying.contains("door, 16-1/4\" wide: shrinks 0.13\""), "{drying}");
    assert!(drying.contains("3/4\" x 16-1/4\" boards, glued up: 1 of 96\""), "{drying}");

    // 12 × 0.002 × 4 percent; the sides are of sheets.
    let shelf = "--width 36 --height 30 --depth 12 --shelves 1 --solid shelf --coefficient 0.002 --moisture 10:6";
    let shelf = object(shelf, "");
    assert_eq!(
        said(&shelf),
        ["the shelf moves 0.096\" across the grain, and the side does not: glue or nail them together near the front edge alone"]
    );
    assert_eq!(shelf["seasons"]["parts"][0]["binds"], false);

    let size = ["--width", "18", "--height", "30", "--depth", "12"];
    let with = |more: &[&'static str]| [&size[..], more].concat();
    refuses(&with(&["--species", "teak"]), "", "nothing says how the moisture of the wood changes");
    // Two words in common come before one.
    let unknown = "no figure for `northern red oak`: another wood's figure would be a guess; there is `Red oak, commercial`,";
    refuses(&with(&["--species", "northern red oak", "--moisture", "6:12"]), "", unknown);
    refuses(&with(&["--moisture", "6:12"]), "", "--moisture and --sawn say nothing without a wood");
    refuses(&with(&["--species", "teak", "--moisture", "6:31"]), "", "percent between 0 and 30");
    refuses(&with(&["--species", "teak", "--sawn", "quarter", "--moisture", "6:12"]), "", "no figure for quarter-sawn Teak");
    refuses(&with(&["--species", "teak", "--moisture", "6:12", "--solid", "roof"]), "", "--solid: the case has no roof");
    refuses(&with(&["--coefficient", "0.0000001", "--moisture", "6:12"]), "", "--coefficient: 0.0000001 is not understood");
    refuses(&with(&["--graduated", "1"]), "", "--mount, --front-stock and --graduated are for fronts");
    refuses(&with(&["--doors", "2", "--mount", "inlay:1/8"]), "", "write inset:1/8 or overlay:1/2:1/8");
    refuses(&with(&["--scribe", "1/2"]), "", "a strip is scribed to a wall, and there is none");
    refuses(&with(&["--stopped", "1/2"]), "", "only a dado can be stopped short of the front edge");
    refuses(&with(&["--doors", "10001"]), "", "10001 fronts are too many to list");
    refuses(&["--job", "-"], r#"{"height":"6 ft","depth":"1 ft","site":{}}"#, "missing field `width`");
    refuses(
        &["--job", "-"],
        r#"{"width":"1 ft","height":"6 ft","depth":"1 ft","sawn":"rift"}"#,
        "\"sawn\" is `flat` or `quarter`",
    );
}

/// A sheet of the size that is there, for panels alone; boards for all else.
#[test]
fn what_it_is_cut_from() {
    let case = "--width 36 --height 100 --depth 12 --frame 3/4:1-1/2:1-1/2:3/4";
    let lines = |more: &str| {
        let answer = object(&format!("{case} {more}"), "");
        said(&answer).iter().map(|line| (*line).to_owned()).collect::<Vec<_>>()
    };
    let side = "the side is 100\" long: longer than a sheet of 96\"";
    let stile = "the stile is 100\" long: longer than a board of 96\"";
    assert_eq!(lines(""), [side, stile]);
    assert_eq!(lines("--from-sheets 120x60"), [stile]);
    assert_eq!(lines("--from-boards 8ft --from-boards 10ft"), [side]);
    assert_eq!(
        lines("--from-boards 10ft --from-sheets 120x11"),
        [
            "the side is 12\" wide: wider than a sheet of 11\"; join it of two, its grain one way",
            "the bottom is 12\" wide: wider than a sheet of 11\"; join it of two, its grain one way",
            "the top is 12\" wide: wider than a sheet of 11\"; join it of two, its grain one way",
        ]
    );
    // A back of 60 × 40 goes on a sheet of 48 with its grain across.
    let turned = object("--width 60 --height 40 --depth 12 --back applied:1/4", "");
    assert_eq!(said(&turned), [""; 0]);
    let flags: Vec<_> = turned["parts"].as_array().unwrap().iter().map(|part| part["turned"].as_bool().unwrap()).collect();
    assert_eq!(flags, [false, false, false, true]);
    assert_eq!(turned["buy"][1]["pieces"], json!([{ "count": 1, "length": "96 in", "width": "48 in" }]));
    assert!(prints("--width 60 --height 40 --depth 12 --back applied:1/4", "").contains("grain     across, from side to side"));
    let wide = object("--width 60 --height 50 --depth 12 --back applied:1/4", "");
    assert_eq!(said(&wide), ["the back is 60\" wide: wider than a sheet of 48\"; join it of two, its grain one way"]);
}

/// A fraction that no tape shows is joined by a space, in feet and inches, too.
#[test]
fn feet_join_what_a_tape_shows_alone() {
    let text = prints("--width 36-1/7 --height 72-1/8 --depth 12", "");
    assert!(text.contains("Overall  36 1/7\" = 3'-0 1/7\" wide, 72-1/8\" = 6'-0-1/8\" high"), "{text}");
}

/// What was given in millimeters is told in them, on a tape in inches.
#[test]
fn rows_of_32_are_told_in_millimeters() {
    let text = prints("--width 36 --height 72 --depth 12 --pins 32 --shelves 2", "");
    assert!(text.contains("Drill the pin holes 13 mm deep, in two rows: 37 mm from the front edge"), "{text}");
}

#[test]
fn the_job_sheet() {
    let file = folder("around").join("niche.html");
    prints(&format!("{NICHE} --doors 2 --species teak --moisture 6:12 --solid door --html {}", file.display()), "");
    let page = fs::read_to_string(&file).unwrap();
    is_well_formed(&page);
    let at = |text: &str| page.find(text).unwrap_or_else(|| panic!("{text}"));
    let order =
        ["<svg", "<h2>Place</h2>", "<h2>Order of work</h2>", "<h2>Cut list</h2>", "<h2>Solid wood through the seasons</h2>"];
    assert!(order.windows(2).all(|two| at(two[0]) < at(two[1])));
    assert_eq!(page.matches("<rect class=\"front\"").count(), 2);
    assert!(page.contains("doors and drawers in dashes"));
}

#[test]
fn the_jobs_of_the_readme() {
    let readme = include_str!("../../README.md");
    let jobs = readme.split("```json\n").skip(1).filter_map(|block| block.split("```").next());
    let widths: Vec<_> = jobs.map(|job| object("--job -", job)["case"]["width"].clone()).collect();
    assert_eq!(widths, ["36 in", "58 3/4 in"]);
}
