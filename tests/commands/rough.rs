//! What people, disks and other programs do to a command: too much, no text, nobody who reads, nowhere to write, two at once,
//! stopped half way. Each is answered in a moment and by one of two exit statuses, and an old file stays as it was. What is
//! expected follows from the exit statuses in `--help` and from what Unix says of its files. Each run has some seconds of the
//! processor and 4 GB, so that one that takes more fails on any machine, however busy.

use std::ffi::{OsStr, OsString};
use std::fs::{self, File, OpenOptions};
use std::io::{Read as _, Write as _};
use std::os::unix::ffi::OsStrExt as _;
use std::os::unix::process::ExitStatusExt as _;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Output, Stdio};
use std::time::Duration;

const TEN_MEGABYTES: usize = 10_000_000;

/// One of every command that has an answer, and one that is refused.
const COMMANDS: [(&str, &str); 7] = [
    ("read 17-5/8", "read 17-9/8"),
    ("calc 2*3/4", "calc 2*"),
    ("divide 72 --into 5", "divide 72 --into 0"),
    ("lumber 2x4x8", "lumber 2x"),
    ("pole --length 72 --past shelf=14", "pole --length 72 --past shelf"),
    ("cut --part rail=4@35 --stock 8ft", "cut --part rail=4@9ft --stock 8ft"),
    ("case --width 36 --height 72 --depth 12", "case --width 36 --height 0 --depth 12"),
];

fn words(arguments: &str) -> Vec<String> {
    arguments.split(' ').map(str::to_owned).collect()
}

/// The program behind some limits of a shell, which are set before it begins.
pub(super) fn limited(limits: &str, arguments: &[impl AsRef<OsStr>]) -> Command {
    let mut command = Command::new("sh");
    command.arg("-c").arg(format!("{limits}; exec \"$0\" \"$@\"")).arg(env!("CARGO_BIN_EXE_scantling")).args(arguments);
    command.stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::piped());
    command
}

pub(super) fn scantling(arguments: &[impl AsRef<OsStr>]) -> Command {
    limited("ulimit -t 10; ulimit -v 4000000 2>/dev/null || true", arguments)
}

fn fed(mut command: Command, input: Vec<u8>) -> Output {
    let mut child = command.stdin(Stdio::piped()).spawn().unwrap();
    let mut pipe = child.stdin.take().unwrap();
    // A command that has seen enough reads no more.
    let feeding = std::thread::spawn(move || drop(pipe.write_all(&input)));
    let output = child.wait_with_output().unwrap();
    feeding.join().unwrap();
    output
}

pub(super) fn text(bytes: &[u8]) -> String {
    String::from_utf8_lossy(bytes).into_owned()
}

/// No answer, the right status, and a message that a person can read.
#[track_caller]
pub(super) fn refused(output: &Output, said: &str) {
    let stderr = text(&output.stderr);
    assert_eq!((text(&output.stdout).as_str(), output.status.code()), ("", Some(2)), "{said}: {stderr:.500}");
    assert!(stderr.contains(said), "{said}: {stderr:.500}");
    assert!(!stderr.contains("panicked") && stderr.len() < 200_000, "{said}: {stderr:.500}");
}

/// A folder of its own, empty.
pub(super) fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("rough").join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).unwrap();
    folder
}

#[test]
fn one_exit_status_for_an_answer_and_one_for_none() {
    for (good, bad) in COMMANDS {
        let command = good.split(' ').next().unwrap();
        for (arguments, status) in [
            (good.to_owned(), 0),
            (format!("{good} --json"), 0),
            (format!("{command} --help"), 0),
            (format!("help {command}"), 0),
            (bad.to_owned(), 2),
            (format!("{bad} --json"), 2),
            (format!("{good} --sideways"), 2),
            (format!("{good} --tape none"), 2),
            (command.to_owned(), 2),
        ] {
            let Output { status: is, stdout, stderr } = scantling(&words(&arguments)).output().unwrap();
            assert_eq!(is.code(), Some(status), "{arguments}");
            assert_eq!((stdout.is_empty(), stderr.is_empty()), (status == 2, status == 0), "{arguments}: {}", text(&stderr));
        }
    }
    for (arguments, status) in [("--help", 0), ("--version", 0), ("help", 0), ("saw", 2), ("--saw", 2)] {
        assert_eq!(scantling(&[arguments]).output().unwrap().status.code(), Some(status), "{arguments}");
    }
    let help = text(&scantling(&["--help"]).output().unwrap().stdout);
    assert!(help.contains("Exit status:\n  0  answered") && help.contains("\n  2  not answered"), "{help}");
}

#[test]
fn ten_megabytes_are_answered() {
    let repeated = |head: &str, again: &str, tail: &str| {
        let count = TEN_MEGABYTES / again.len();
        [head, &again.repeat(count), tail].concat().into_bytes()
    };
    let long = format!("{}1\n", " ".repeat(60_000));
    let cases = [
        ("read -", repeated("", "1", ""), "longer than 65536 bytes"),
        ("read -", repeated("", &long, "17 9/8\n"), "1 line could not be read"),
        ("cut --stock 8ft --parts -", repeated("length\n", "12\n", ""), "standard input: more than 100000 are listed in it"),
        ("cut --stock 8ft --parts -", repeated("", ",", ""), "standard input, line 1, column 1: no column is called \"\""),
        ("cut --stock 8ft --parts -", repeated("length\n12", ",", ""), "line 2: 10000001 columns where the header has 1"),
        ("cut --stock 8ft --parts -", repeated("name,length\n", "x", ",12\n"), "line 2, column 1: longer than 10000 bytes"),
        ("cut --stock 8ft --parts -", repeated("length\n\"", "x\n", ""), "line 2, column 1: longer than 10000 bytes"),
        ("cut --sheet 96x48 --panels -", repeated("length,width\n", "12,9\n", ""), "more than 100000 are listed in it"),
        ("case --job -", repeated("{\"width\": \"", "1", "\"}"), "a number too large to hold"),
        ("case --job -", repeated("", " ", ""), "standard input has no case: EOF"),
        ("pole --job -", repeated("{\"name\":\"", "x", "\"}"), "missing field `length`"),
    ];
    for (arguments, input, said) in cases {
        let output = fed(scantling(&words(arguments)), input);
        let stderr = text(&output.stderr);
        assert!(output.status.code() == Some(2) && stderr.contains(said), "{arguments}, {said}: {stderr:.500}");
        assert!(stderr.len() < 2000, "{arguments}, {said}: {} bytes", stderr.len());
    }
}

/// There is always more in `/dev/zero`.
#[cfg(target_os = "linux")]
#[test]
fn what_has_no_end_is_not_read_to_it() {
    for arguments in [
        "case --job /dev/zero",
        "pole --job /dev/zero",
        "pole --length 72 --merge /dev/zero",
        "cut --stock 8ft --parts /dev/zero",
        "cut --part 12 --stocks /dev/zero",
        "cut --sheet 96x48 --panels /dev/zero",
    ] {
        refused(&scantling(&words(arguments)).output().unwrap(), "cannot read /dev/zero: it is larger than 16 MiB");
    }
}

#[test]
fn deep_nesting_is_refused() {
    // No argument is longer than 128 KiB.
    let deep = |text: &str| text.repeat(100_000 / text.len());
    for (arguments, said) in [
        (vec!["calc".to_owned(), deep("(")], "brackets"),
        (vec!["calc".to_owned(), deep("()").replace("()", "(") + "1" + &deep("()").replace("()", ")")], "brackets"),
        (vec!["calc".to_owned(), deep("1*(")], "brackets"),
        (vec!["divide".to_owned(), deep("("), "--into".to_owned(), "3".to_owned()], "error: "),
        (vec!["read".to_owned(), deep("((")], "error: "),
        (vec!["lumber".to_owned(), deep("((")], "error: "),
    ] {
        refused(&scantling(&arguments).output().unwrap(), said);
    }
    let folder = folder("deep");
    for (name, json) in [("list", deep("[")), ("object", deep("{\"name\":")), ("mixed", deep("[{\"length\":"))] {
        let path = folder.join(format!("{name}.json"));
        fs::write(&path, &json).unwrap();
        let list = ["cut".as_ref(), "--stock".as_ref(), "8ft".as_ref(), "--parts".as_ref(), path.as_os_str()];
        refused(&scantling(&list).output().unwrap(), "recursion limit exceeded");
        for command in ["case", "pole"] {
            refused(&fed(scantling(&[command, "--job", "-"]), json.clone().into_bytes()), "standard input has no ");
        }
    }
}

#[test]
fn absurd_counts_are_refused() {
    let case = "case --width 36 --height 72 --depth 12";
    let cases = [
        ("divide 72 --into COUNT", "too many to list"),
        ("divide 72 --drawers COUNT --thickness 0", "too many to list"),
        ("divide 72 --members COUNT --thickness 1/1000", "short"),
        ("divide 72 --about 1/COUNT --thickness 0", "error: "),
        ("divide COUNTft --on-center 1/16 --thickness 1/64", "error: "),
        ("divide 72 --members 5 --thickness 3/4 --friendly COUNT", "over 10000 sizes"),
        ("divide 72 --members 5 --thickness 3/4 --hold COUNT=3", "no opening comes after member"),
        ("pole --length 72 --equal x=COUNT:0", "are too many to list: at most 10000"),
        ("pole --length COUNT --stick 1/16 --overlap 1/32", "sticks: at most 1000"),
        ("cut --part COUNT@12 --stock 8ft", "parts are too many for one plan: at most 1048576"),
        ("cut --joined COUNT --stock 8ft", "parts are too many for one plan: at most 1048576"),
        ("cut --part COUNT --stock 8ft", "longer than the longest part"),
        ("cut --panel COUNT@12x12 --sheet 96x48", "panels are too many for one plan: at most 5000"),
        ("cut --panel 12x12 --sheet COUNTxCOUNT", "too large"),
        ("calc COUNT*COUNT*COUNT*COUNT*COUNT", "error: "),
    ];
    let cases = cases.map(|(arguments, said)| (arguments.to_owned(), said));
    let shelves = [("--shelves COUNT", "openings are too many to list"), ("--bays COUNT", ""), ("--doors COUNT", "")];
    let shelves = shelves.map(|(options, said)| (format!("{case} {options}"), said));
    for (arguments, said) in cases.into_iter().chain(shelves) {
        for count in ["1000000000", "1000000000000000000"] {
            refused(&scantling(&words(&arguments.replace("COUNT", count))).output().unwrap(), said);
        }
        // Beyond every type, whatever is said of it.
        refused(&scantling(&words(&arguments.replace("COUNT", &"9".repeat(60)))).output().unwrap(), "error: ");
    }
}

#[test]
fn what_is_no_text_is_refused() {
    for (arguments, said) in [
        ("read -", "line 1: error: not text (UTF-8)"),
        ("cut --stock 8ft --parts -", "standard input, line 1, column 1: not text (UTF-8)"),
        ("cut --part 12 --stocks -", "standard input, line 1, column 1: not text (UTF-8)"),
        ("case --job -", "cannot read standard input: not text (UTF-8)"),
        ("pole --job -", "cannot read standard input: not text (UTF-8)"),
    ] {
        refused(&fed(scantling(&words(arguments)), b"\xFF\xFE1\n".to_vec()), said);
    }
    for (arguments, input, said) in [
        ("read -", &b"\0\n"[..], "line 1: error: "),
        ("read -", b"1\x002\n", "line 1: error: "),
        ("cut --stock 8ft --parts -", b"length\n1\x002\n", "standard input, line 2, length: "),
        ("cut --stock 8ft --parts -", b"len\0gth\n12\n", "no column is called \"len\\0gth\""),
        ("case --job -", b"{\"width\": \"36\0\"}", "control character"),
        ("pole --job -", b"\0", "expected value"),
    ] {
        refused(&fed(scantling(&words(arguments)), input.to_vec()), said);
    }
}

#[test]
fn arguments_that_are_no_text_are_refused() {
    for (good, _) in COMMANDS {
        let mut arguments: Vec<OsString> = good.split(' ').map(OsString::from).collect();
        arguments.push(OsStr::from_bytes(b"\xFF12").to_owned());
        refused(&scantling(&arguments).output().unwrap(), "error: ");
    }
}

/// As with `| head`, when it is gone already. Help is an answer too.
#[test]
fn a_reader_that_stops_early_is_no_failure() {
    let others = ["--help", "--version", "divide 72 --members 5000 --thickness 0", "read -"];
    for arguments in COMMANDS.map(|(good, _)| good).into_iter().chain(others) {
        let mut child = scantling(&words(arguments)).stdin(Stdio::piped()).spawn().unwrap();
        drop(child.stdout.take());
        // What the command waits for, if it waits.
        let _ = child.stdin.take().unwrap().write_all(&b"17-5/8\n".repeat(2000));
        let output = child.wait_with_output().unwrap();
        assert_eq!((text(&output.stderr).as_str(), output.status.code()), ("", Some(0)), "{arguments}");
    }
}

#[cfg(target_os = "linux")]
#[test]
fn an_answer_that_cannot_be_written_is_a_failure() {
    let full = || OpenOptions::new().write(true).open("/dev/full").unwrap();
    let others = ["--help", "--version", "help cut", "read 1 2 3 --json"];
    for arguments in COMMANDS.map(|(good, _)| good).into_iter().chain(others) {
        let output = scantling(&words(arguments)).stdout(full()).output().unwrap();
        refused(&output, "error: cannot write the answer: No space left on device");
        let mute = scantling(&words(arguments)).stdout(full()).stderr(full()).status().unwrap();
        assert_eq!(mute.code(), Some(2), "{arguments}");
    }
    // Neither is what cannot be said about bad input.
    for (good, bad) in COMMANDS {
        assert_eq!(scantling(&words(bad)).stderr(full()).status().unwrap().code(), Some(2), "{bad}");
        assert_eq!(scantling(&words(good)).stderr(full()).status().unwrap().code(), Some(0), "{good}");
    }
    // A warning is no answer.
    assert_eq!(scantling(&["divide", "72", "--into", "5", "--burn", "34"]).stderr(full()).status().unwrap().code(), Some(0));
}

#[test]
fn nothing_open_at_all() {
    for (good, bad) in COMMANDS {
        for (arguments, expected) in [(good, 0), (bad, 2)] {
            let mut command = limited("exec <&- >&- 2>&-", &words(arguments));
            assert_eq!(command.status().unwrap().code(), Some(expected), "{arguments}");
        }
    }
}

fn signal(child: &Child, name: &str) {
    assert!(Command::new("kill").args(["-s", name, &child.id().to_string()]).status().unwrap().success());
}

/// What stands in the pipe of a run that waits for input is a signal's to end.
#[test]
fn a_run_that_waits_for_input_can_be_stopped() {
    for arguments in ["read -", "case --job -", "pole --job -", "cut --stock 8ft --parts -"] {
        let mut child = limited("true", &words(arguments)).stdin(Stdio::piped()).spawn().unwrap();
        signal(&child, "TERM");
        let status = child.wait().unwrap();
        assert_eq!(status.signal(), Some(15), "{arguments}");
        let mut said = String::new();
        child.stdout.take().unwrap().read_to_string(&mut said).unwrap();
        assert_eq!(said, "", "{arguments}");
    }
}

#[test]
fn a_folder_is_no_list() {
    let folder = folder("folder");
    for arguments in ["case --job", "pole --job", "pole --length 72 --merge", "cut --stock 8ft --parts"] {
        let mut arguments: Vec<OsString> = arguments.split(' ').map(OsString::from).collect();
        arguments.push(folder.clone().into_os_string());
        refused(&scantling(&arguments).output().unwrap(), "cannot read ");
    }
    for arguments in ["case --job -", "cut --stock 8ft --parts -"] {
        let output = scantling(&words(arguments)).stdin(File::open(&folder).unwrap()).output().unwrap();
        refused(&output, "cannot read standard input: ");
    }
}

/// A plan that takes long is stopped by Ctrl-C at once, and nothing has been said by then.
#[test]
fn a_long_search_can_be_stopped() {
    // Prices in cents leave a gap between plan and bound that was still open after 25 s of an optimized build.
    let parts = "5@10-13/16 4@36-1/16 6@26 4@9-3/8 1@27-5/16 6@35-1/16 6@42 6@22 4@37-9/16 2@16-1/2 2@37-7/8".split(' ');
    let boards = "6ft:8.29 8ft:10.46 10ft:10.35 12ft:14.90 3@14ft:16.19 16ft:25".split(' ');
    let given = parts.map(|part| ["--part", part]).chain(boards.map(|board| ["--stock", board])).flatten();
    let arguments: Vec<String> = ["cut", "--seconds", "600"].into_iter().chain(given).map(str::to_owned).collect();
    let mut child = limited("ulimit -t 60", &arguments).spawn().unwrap();
    std::thread::sleep(Duration::from_millis(300));
    assert!(child.try_wait().unwrap().is_none(), "the plan was found too soon");
    // Who runs the tests may have told them to ignore Ctrl-C.
    signal(&child, "INT");
    std::thread::sleep(Duration::from_millis(100));
    let _ = child.kill();
    let output = child.wait_with_output().unwrap();
    assert!(matches!(output.status.signal(), Some(2 | 9)) && output.stdout.is_empty(), "{}", output.status);
}
