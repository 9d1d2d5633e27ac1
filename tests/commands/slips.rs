//! What is said to slips at the keyboard: an option of another command, a length that fell apart at its blank, a price with its
//! sign, a size or a product. Each is refused with what to write instead, or read with a warning.
use std::process::{Command, Output};

fn ran(arguments: &[&str]) -> (String, String, Option<i32>) {
    let Output { status, stdout, stderr } =
        Command::new(env!("CARGO_BIN_EXE_scantling")).args(arguments).stdin(std::process::Stdio::null()).output().unwrap();
    let text = |bytes| String::from_utf8(bytes).unwrap();
    (text(stdout), text(stderr), status.code())
}

/// What is refused with one line and one hint, however far in the hint stands.
#[track_caller]
fn refuses(arguments: &[&str], title: &str, hint: &str) {
    let (answer, said, status) = ran(arguments);
    let lines: Vec<_> = said.lines().map(str::trim_start).collect();
    assert_eq!((answer.as_str(), status), ("", Some(2)), "{arguments:?}");
    assert_eq!(lines, [&*format!("error: {title}"), "|", &format!("= help: {hint}")], "{arguments:?}");
}

#[test]
fn an_option_of_another_command() {
    for (command, option, hint) in [
        ("divide", "--shelves", "here 4 shelves are --members 4 --thickness 3/4; scantling case has one"),
        ("divide", "--kerf", "scantling cut and case have one"),
        (
            "divide",
            "--length",
            "here the length stands alone, as in scantling divide 72 --into 5; scantling lumber and pole have one",
        ),
        ("divide", "--height", "here the height stands alone, as in scantling divide 72 --into 5; scantling case has one"),
        ("case", "--members", "here 4 members are --shelves 4; scantling divide has one"),
        ("case", "--thickness", "here --sheet is how thick the panels are; scantling divide has one"),
        ("divide", "--svg", "scantling read, pole, cut and case have one"),
        ("calc", "--draw", "scantling read and pole have one"),
        ("case", "--price=4", "scantling lumber has one"),
    ] {
        let option_alone = option.split('=').next().unwrap();
        refuses(&[command, "72", option, "4"], &format!("scantling {command} has no option {option_alone}"), hint);
    }
    for option in [&["--into", "3"][..], &["--into=3"]] {
        let arguments = [&["divide", "--", "72"][..], option].concat();
        refuses(&arguments, "--into stands behind --", "options stand before it");
    }
    let (_, said, status) = ran(&["divide", "72", "--into", "-1"]);
    assert!(status == Some(2) && said.starts_with("error: invalid value '-1' for '--into <PARTS>'"), "{said}");
    let (_, said, status) = ran(&["divide", "72", "--into", "3", "-5"]);
    assert!(status == Some(2) && said.starts_with("error: unexpected argument '-5' found"), "{said}");
    let (_, said, status) = ran(&["--json", "read", "5"]);
    assert!(status == Some(2) && said.starts_with("error: unexpected argument '--json' found"), "{said}");
    // Of what no command has, no more is known.
    let (_, said, status) = ran(&["divide", "72", "--sideways"]);
    assert!(status == Some(2) && said.starts_with("error: unexpected argument '--sideways' found\n"), "{said}");
}

#[test]
#[rustfmt::skip] // one line a case
fn a_length_that_fell_apart_at_its_blank() {
    for (arguments, title, hint) in [
        ("read 24 1/2", "two lengths, or one without its quotes: 24 and 1/2", "write \"24 1/2\" or 24-1/2 for one length, 24in 1/2 for two"),
        ("divide 40 --widths 13 1/2 13", "two lengths, or one without its quotes: 13 and 1/2", "write \"13 1/2\" or 13-1/2 for one length, 13in 1/2 for two"),
        ("divide 24 1/2 --into 4", "a text without its quotes: 24 and 1/2", "write \"24 1/2\" or 24-1/2, so that the two are one"),
        ("divide 72 5", "no option says what 5 is", "5 equal parts are --into 5, 5 members --members 5 --thickness 3/4"),
        ("divide 6 ft --into 4", "a text without its quotes: 6 and ft", "write \"6 ft\", so that the two are one"),
        ("divide 72 --about 12 in", "a text without its quotes: 12 and in", "write \"12 in\", so that the two are one"),
        ("cut --part a=2@35 1/2 --stock 8ft", "a text without its quotes: a=2@35 and 1/2", "write \"a=2@35 1/2\" or a=2@35-1/2, so that the two are one"),
        // What is left over would else be the name, and the length too short.
        ("case --width 36 1/2 --height 72 --depth 12", "a text without its quotes: 36 and 1/2", "write \"36 1/2\" or 36-1/2, so that the two are one"),
        ("case --width 3 ft --height 72 --depth 12", "a text without its quotes: 3 and ft", "write \"3 ft\", so that the two are one"),
        ("case --width 36 --height 72 --depth 12 --openings 10 1/2 12", "two lengths, or one without its quotes: 10 and 1/2", "write \"10 1/2\" or 10-1/2 for one length, 10in 1/2 for two"),
        ("pole --length 72 1/2", "a text without its quotes: 72 and 1/2", "write \"72 1/2\" or 72-1/2, so that the two are one"),
        ("pole --length 72 --past shelf=14 1/2", "a text without its quotes: shelf=14 and 1/2", "write \"shelf=14 1/2\" or shelf=14-1/2, so that the two are one"),
        ("case --width 36 --height 72 --depth 12 --sheet 3/4 ply", "a text without its quotes: 3/4 and ply", "write \"3/4 ply\", so that the two are one"),
        ("case ware case --width 36 --height 72 --depth 12", "a name without its quotes: ware and case", "write \"ware case\" for one name"),
        ("pole left side --length 72", "a name without its quotes: left and side", "write \"left side\" for one name"),
        ("cut --part a=2@12 b=3@14 --stock 8ft", "no option says what b=3@14 is", "each part and each board has an option of its own: --part rail=4@35-1/2 --stock 8ft"),
    ] {
        refuses(&arguments.split(' ').collect::<Vec<_>>(), title, hint);
    }
    for good in [
        "read 24in 1/2",
        "read 1/2 24",
        "divide 40 --widths 13in 1/2 13",
        "divide --into 5 3/4",
        "case 1 --width 36 --height 72 --depth 12",
        "pole --length 72 1",
        "lumber --pieces 6 4/4 --width 6 --length 8ft",
    ] {
        let (_, said, status) = ran(&good.split(' ').collect::<Vec<_>>());
        assert_eq!((said.as_str(), status), ("", Some(0)), "{good}");
    }
}

#[test]
fn a_price_with_its_sign() {
    let plan = |stock: &str| ran(&["cut", "--part", "a=2@35", "--stock", stock]);
    assert_eq!(plan("8ft:$12.49"), plan("8ft:12.49"));
    assert!(plan("8ft:$12.49").0.contains("a price of 12.49; "));
    let grouped = ["cut", "--part", "a=2@35", "--stock", "8ft:$1,012.49"];
    assert!(ran(&grouped).1.starts_with("error: --stock, price: a comma with two readings\n"));
    assert!(ran(&[&grouped[..], &["--comma", "groups"]].concat()).0.contains("a price of 1012.49; "));
    let sheet = |price: &str| ran(&["cut", "--panel", "20x10", "--sheet", &format!("96x48:{price}")]).0;
    assert!(!sheet("54.90").is_empty());
    assert_eq!(sheet("$54.90"), sheet("54.90"));
}

#[test]
fn names_and_lost_blanks_in_a_size() {
    let hint = |panel: &str| {
        let (_, said, status) = ran(&["cut", "--panel", panel, "--sheet", "96x48"]);
        assert_eq!(status, Some(2), "{panel}: {said}");
        said.split_once("help: ").map(|(_, hint)| hint.trim_end().to_owned()).unwrap_or_default()
    };
    assert_eq!(hint("12"), "join the lengths of a size by x, as in 3/4\" x 4' x 8'");
    assert_eq!(hint("5/4 X 6"), "write 5/4in x 6in, if that is meant");
    assert_eq!(hint("4 x 8"), "write 4in x 8in or 4ft x 8ft, whichever is meant");
    for (arguments, warned) in [
        ("cut --panel a=1@13/4x12 --sheet 96x48", "look again at --panel 13/4x12: "),
        ("case --width 36 --height 12 --depth 12 --from-sheets 96x91/2", "look again at --from-sheets 96x91/2: "),
    ] {
        let (_, said, status) = ran(&arguments.split(' ').collect::<Vec<_>>());
        let lost = "a fraction above one: a blank may have been lost, as from 1 3/4 to 13/4\n";
        assert_eq!((said, status), (format!("{warned}{lost}"), Some(0)), "{arguments}");
    }
}

/// The last line of what is said is the hint.
#[test]
#[rustfmt::skip] // one line a case
fn what_to_write_instead() {
    let csv = |name: &str, lines: &str| {
        let path = std::path::PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
        std::fs::write(&path, lines).unwrap();
        path.to_str().unwrap().to_owned()
    };
    let (dates, points, bare) = (csv("dates.csv", "length\n3-May\n"), csv("points.csv", "name;length\nrail;35\n"), csv("bare.csv", "rail,35\n"));
    for (arguments, hint) in [
        (&["cut", "--part", "a=3x12", "--stock", "8ft"][..], "3@12 is 3 pieces of 12, 12@3 is 12 pieces of 3; a panel is --panel"),
        (&["cut", "--part", "3 x 12 1/2", "--stock", "8ft"], "3@12 1/2 is 3 pieces of 12 1/2; a panel is --panel"),
        (&["cut", "--part", "rail 4@35", "--stock", "8ft"], "a name stands before =, as in rail=4@35-1/2"),
        (&["cut", "--joined", "12 1/2 x 3 x 4", "--stock", "8ft"], "a part of a board has a length alone; a panel is --panel"),
        (&["cut", "--part", "a=12", "--stock", "96x48"], "a board has a length alone; a sheet is --sheet"),
        (&["cut", "--part", "a:12", "--stock", "8ft"], "rail=4@35-1/2 is four rails of 35-1/2, each in its unit and inches where there is none"),
        (&["cut", "--part", "12", "--stock", "long"], "old=3@40:9.50 is three boards of 40, each in its unit and inches where there is none"),
        (&["cut", "--parts", &dates, "--stock", "8ft"], "a spreadsheet makes dates of fractions: give it the column as text"),
        (&["cut", "--parts", &points, "--stock", "8ft"], "put commas between the columns, which are name, length, count, joined"),
        (&["cut", "--parts", &bare, "--stock", "8ft"], "the first line names the columns, which are name, length, count, joined"),
        (&["case", "--width", "36", "--height", "72", "--depth", "12", "--from-sheets", "4x8"], "write 4in x 8in or 4ft x 8ft, whichever is meant"),
        (&["lumber", "6 2x4x8"], "write \"2x4x8\" --pieces 6, if 6 is how many"),
        (&["read", "3/4", "--draw", "ascii"], "write --draw=ascii"),
        (&["pole", "--length", "72", "--draw", "lines"], "write --draw=lines"),
        (&["read", "3/4", "--tape", "16ths"], "write 1/16 for a tape that reads sixteenths, 1mm for millimeters"),
        (&["calc", "32 sq ft / 4'"], "an area is a length times a length, as in 2' * 16'"),
        (&["read", "72 - 2*3/4"], "work it out first, or calculate it, with scantling calc"),
        (&["read", "24 -1/32"], "this is 24 1/32 joined, 23 31/32 subtracted: write 24 1/32 or calculate 24 - 1/32, with scantling calc"),
        (&["calc", "24 -1/32"], "this is 24 1/32 joined, 23 31/32 subtracted: write 24 1/32 or 24 - 1/32"),
        (&["calc", "15% of 36"], "write a share as a fraction, as in 36 * 15/100"),
        (&["calc", "72 / 5 ="], "leave it out: what a calculation comes to is the answer"),
        (&["calc", "3^2"], "write a power out, as in 3 * 3"),
        (&["calc", "36 to mm"], "leave it out: an answer is given in every unit"),
        (&["calc", "36 in mm"], "leave it out: an answer is given in every unit"),
        (&["calc", "36 inches To mm"], "leave it out: an answer is given in every unit"),
        (&["calc", "12 milimeters + 3"], "write millimeters if that is meant"),
        (&["read", "17 inchs"], "write inches if that is meant"),
        (&["calc", "3 x 24 1/2"], "to multiply, write 3 * 24 1/2; a size such as 3/4 x 4' x 8' is not one length"),
    ] {
        let (answer, said, status) = ran(arguments);
        let last = said.lines().last().map(str::trim_start);
        assert_eq!((answer.as_str(), last, status), ("", Some(&*format!("= help: {hint}")), Some(2)), "{said}");
    }
    for arguments in ["case --shelves four", "case --ties -1", "case --bays 2.5", "pole --length 9 --stick 8 --number x", "divide 72 --into -5"] {
        let (_, said, _) = ran(&arguments.split(' ').collect::<Vec<_>>());
        let first = said.lines().next().unwrap();
        assert!(first.ends_with(": a whole number was expected, such as 5"), "{arguments}: {said}");
    }
}

#[test]
fn a_calculation_warns_as_a_reading_does() {
    let warning = "decimal feet: 5.6' is not 5 ft 6 in";
    for calculation in ["5.6' + 1\"", "5.6' * 2'", "5.6' / 2'"] {
        let (answer, said, status) = ran(&["calc", calculation]);
        assert_eq!((said.as_str(), status), ("", Some(0)));
        let last = answer.lines().last().unwrap();
        assert!(last.starts_with("  look again") && last.ends_with(warning), "{answer}");
        let (object, ..) = ran(&["calc", calculation, "--json"]);
        assert!(object.ends_with(&format!(",\"warning\":\"{warning}\"}}\n")), "{object}");
    }
    assert!(!ran(&["calc", "13/4"]).0.contains("look again"));
}

/// Worked by hand: 24.1 - 3 * 7.9 - 3 * 1/8 leaves 1/40; 96 - 40.3 - 1/8 leaves 55.575, 1/80 past 55-9/16.
#[test]
fn what_is_left_is_told_as_a_tape_shows_it() {
    for (arguments, told) in [
        ("--part a=3@7.9 --stock 24.1", "Left: 1/40\", to keep."),
        ("--part a=40.3 --stock 96", "Left: 55-9/16\" strong by 1/80\", to keep."),
        ("--part a=40.3 --stock 96", "Kept     55-9/16\" = 4'-7-9/16\" strong by 1/80\""),
        ("--part a=40.3 --stock 96", "Parts    40-5/16\" = 3'-4-5/16\" shy by 1/80\""),
        ("--part a=17-5/32 --stock 24", "Left: 6-23/32\", to keep."),
        ("--part a=40.3 --stock 96 --tape 1mm", "Left: 1411.605 mm, to keep."),
        ("--panel a=1@20x10.1 --sheet 24x24", "a       20\" x 10-1/8\" shy by 1/40\""),
        ("--panel a=1@20x10.1 --sheet 24x24", "13-3/4\" strong by 1/40\""),
    ] {
        let (answer, ..) = ran(&[&["cut"][..], &arguments.split(' ').collect::<Vec<_>>()].concat());
        assert!(answer.contains(told), "{told}: {answer}");
    }
}

#[test]
fn boards_are_told_to_be_finished() {
    const SAID: &str = "Boards stand by their finished sizes: buy them thicker and wider, to be planed and ripped.\n";
    let case = "case --width 36 --height 72 --depth 12";
    for (options, said) in [("", false), (" --frame 3/4:1-1/2", true), (" --molding 1-1/2", false)] {
        let (answer, ..) = ran(&format!("{case}{options}").split(' ').collect::<Vec<_>>());
        assert_eq!((answer.contains(SAID), answer.contains("Buy")), (said, true), "{options}");
        let sheet = format!("{}/finished.html", env!("CARGO_TARGET_TMPDIR"));
        ran(&format!("{case}{options} --force --html {sheet}").split(' ').collect::<Vec<_>>());
        assert_eq!(std::fs::read_to_string(sheet).unwrap().contains(SAID.trim_end()), said, "{options}");
    }
}

/// What help shows as an example is no deeper than a third of the stock that the README measures.
#[test]
fn the_joint_that_help_shows_does_not_warn() {
    let (help, ..) = ran(&["help", "case"]);
    assert!(help.contains("butt, dado:7/32, rabbet:7/32"), "{help}");
    for joint in ["butt", "dado:7/32", "rabbet:7/32"] {
        let options = format!("case --width 36 --height 72 --depth 12 --sheet 23/32 --shelves 4 --joint {joint}");
        let (answer, said, status) = ran(&options.split(' ').collect::<Vec<_>>());
        assert_eq!((said.as_str(), status, answer.contains("Look again")), ("", Some(0), false), "{joint}: {answer}");
    }
}
