//! `scantling read`: one length in every notation, lined up, and what is rounded said to be. Figures were worked
//! by hand. Lines from standard input are answered in one line each, and JSON is the same either way.
use std::fmt::Write as _;
use std::io::{BufRead, BufReader, Read, Write};
use std::process::{Command, Output, Stdio};

fn command(arguments: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_scantling"));
    command.args(arguments);
    command
}

/// What it prints for good input.
#[track_caller]
fn prints(arguments: &[&str], expected: &str) {
    let Output { status, stdout, stderr } = command(arguments).output().unwrap();
    let text = |bytes| String::from_utf8(bytes).unwrap();
    assert_eq!((text(stderr), status.code()), (String::new(), Some(0)));
    assert_eq!(format!("\n{}", text(stdout)), expected);
}

#[test]
fn every_notation_at_once() {
    prints(
        &["read", "17 5/8\""],
        r#"
17 5/8"
  on the tape        17-5/8" = 1'-5-5/8", dead on
  inches                  17 5/8"
  feet and inches       1'-5 5/8"
  feet-inches-16ths  1-05-10
  decimal inches          17.625"
  decimal feet             1.46875'
  millimeters            447.675 mm
  centimeters             44.7675 cm
  meters                   0.447675 m
  in words           seventeen and five eighths inches
"#,
    );
}

#[test]
fn what_does_not_come_out_even_is_about() {
    prints(
        &["read", "1/3"],
        r#"
1/3
  on the tape        5/16", strong by 1/48"
  strong by          about 0.0208", about 0.529 mm
  inches                           1/3"
  feet and inches             0'-0 1/3"
  feet-inches-16ths  about 0-00-05
  decimal inches           about 0.3333"
  decimal feet             about 0.02778'
  millimeters              about 8.467 mm
  centimeters              about 0.8467 cm
  meters                   about 0.008467 m
  in words           one third inch
"#,
    );
}

#[test]
fn zero_and_below_in_every_notation() {
    prints(
        &["read", "0", "-74 1/2"],
        r#"
0
  on the tape        0", dead on
  inches                   0"
  feet and inches       0'-0"
  feet-inches-16ths  0-00-00
  decimal inches           0"
  decimal feet             0'
  millimeters              0 mm
  centimeters              0 cm
  meters                   0 m
  in words           zero inches

-74 1/2
  on the tape        -74-1/2" = -6'-2-1/2", dead on
  inches                        -74 1/2"
  feet and inches             -6'-2 1/2"
  feet-inches-16ths        -6-02-08
  decimal inches                -74.5"
  decimal feet             about -6.20833'
  millimeters                 -1892.3 mm
  centimeters                  -189.23 cm
  meters                         -1.8923 m
  in words           minus seventy-four and a half inches
"#,
    );
}

#[test]
fn the_tape_and_the_words_are_in_the_units_asked_for() {
    let lines = |arguments: &[&str]| {
        let output = command(arguments).output().unwrap();
        let text = String::from_utf8(output.stdout).unwrap();
        let line = |name: &str| text.lines().find_map(|line| line.strip_prefix(name)).map(|figure| figure.trim().to_owned());
        [line("  on the tape"), line("  in words")].map(Option::unwrap_or_default)
    };
    let cases: [(&[&str], [&str; 2]); 5] = [
        (&["read", "6ft3"], ["75\" = 6'-3\", dead on", "six feet three inches"]),
        (&["read", "365.2mm", "--tape", "1mm"], ["365 mm, strong by 0.2 mm", "three hundred sixty-five point two millimeters"]),
        (&["read", "17.4"], ["17-3/8\" = 1'-5-3/8\", strong by 1/40\"", "seventeen point four inches"]),
        (&["read", "17.4", "--round", "up"], ["17-7/16\" = 1'-5-7/16\", shy by 3/80\"", "seventeen point four inches"]),
        (&["calc", "2 * 37 1/4"], ["74-1/2\" = 6'-2-1/2\", dead on", "seventy-four and a half inches"]),
    ];
    for (arguments, expected) in cases {
        assert_eq!(lines(arguments), expected, "{arguments:?}");
    }
}

#[test]
fn nothing_is_wrapped_in_a_narrow_terminal() {
    for width in ["20", "80"] {
        let narrow = command(&["read", "365mm"]).env("COLUMNS", width).output().unwrap();
        assert_eq!(narrow.stdout, command(&["read", "365mm"]).output().unwrap().stdout);
    }
}

fn answers(arguments: &[&str], lines: &str) -> Output {
    let mut child = command(arguments).stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap();
    let (mut stdin, lines) = (child.stdin.take().unwrap(), lines.to_owned());
    let writer = std::thread::spawn(move || stdin.write_all(lines.as_bytes()));
    let output = child.wait_with_output().unwrap();
    writer.join().unwrap().unwrap();
    output
}

#[test]
fn lines_are_answered_one_by_one() {
    let output = answers(&["read", "-"], "17 5/8\"\n\n1/3\n17 9/8\n");
    let expected = "1: 17-5/8\", dead on (17 5/8\", 447.675 mm)\n3: 5/16\", strong by 1/48\" (1/3\", 8 7/15 mm)\n";
    assert_eq!((output.status.code(), String::from_utf8(output.stdout).unwrap().as_str()), (Some(2), expected));
    let refused = String::from_utf8(output.stderr).unwrap();
    assert!(refused.starts_with("line 4: error: a fraction part of one or more\n  |\n4 | 17 9/8\n"), "{refused}");
    assert!(refused.ends_with("1 line could not be read\n"), "{refused}");
}

#[test]
fn json_has_one_form_for_arguments_and_for_lines() {
    let object =
        r#""text":"1/3","exact":"1/3 in","tape":"5/16 in","leftover":"1/48 in","lean":"strong","mm":"8 7/15"}"#.to_owned() + "\n";
    prints(&["read", "1/3", "--json"], &format!("\n{{{object}"));
    let output = answers(&["read", "-", "--json"], "1/3\n");
    assert_eq!(String::from_utf8(output.stdout).unwrap(), format!("{{\"line\":1,{object}"));
}

/// Enough for many shares of every thread; one in a hundred cannot be read.
#[test]
fn many_lines_keep_their_order() {
    let (mut lines, mut expected, mut refused) = (String::new(), String::new(), String::new());
    for number in 1..=60_000 {
        if number % 100 == 0 {
            lines += "1/0\n";
            let _ = writeln!(refused, "line {number}: error: a fraction over zero");
        } else {
            let inches = number % 1000;
            let _ = writeln!(lines, "{inches}");
            let _ = writeln!(expected, "{number}: {inches}\", dead on ({inches}\", {} mm)", decimal(inches * 254));
        }
    }
    let output = answers(&["read", "-"], &lines);
    assert_eq!(output.status.code(), Some(2));
    assert!(String::from_utf8(output.stdout).unwrap() == expected);
    let said = String::from_utf8(output.stderr).unwrap();
    assert!(said.lines().filter(|line| line.starts_with("line ")).eq(refused.lines()));
    assert!(said.ends_with("600 lines could not be read\n"));
}

/// A count of tenths.
fn decimal(tenths: u32) -> String {
    format!("{}.{}", tenths / 10, tenths % 10).trim_end_matches(".0").to_owned()
}

#[test]
fn a_line_is_answered_when_it_is_entered() {
    let mut child = command(&["read", "-"]).stdin(Stdio::piped()).stdout(Stdio::piped()).spawn().unwrap();
    let (mut stdin, mut stdout) = (child.stdin.take().unwrap(), BufReader::new(child.stdout.take().unwrap()));
    for number in 1..=3 {
        stdin.write_all(b"1/2\n7 3").unwrap(); // and half of the next
        let mut answer = String::new();
        stdout.read_line(&mut answer).unwrap();
        assert_eq!(answer, format!("{}: 1/2\", dead on (1/2\", 12.7 mm)\n", 2 * number - 1));
        stdin.write_all(b"/4\n").unwrap();
        answer.clear();
        stdout.read_line(&mut answer).unwrap();
        assert_eq!(answer, format!("{}: 7-3/4\", dead on (7 3/4\", 196.85 mm)\n", 2 * number));
    }
    drop(stdin);
    assert_eq!((stdout.read_to_end(&mut Vec::new()).unwrap(), child.wait().unwrap().code()), (0, Some(0)));
}

#[test]
fn a_reader_that_has_seen_enough_ends_it_quietly() {
    let mut child = command(&["read", "-"]).stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().unwrap();
    let mut stdin = child.stdin.take().unwrap();
    stdin.write_all(b"1/2\n").unwrap();
    BufReader::new(child.stdout.take().unwrap()).read_line(&mut String::new()).unwrap(); // and closes it
    // Standard input stays open: nobody waits for more of it. Another test that begins a program at this very moment holds
    // what was closed for as long as that takes, so one more line may still be answered.
    let ended = (0..1000).find_map(|_| {
        let _ = stdin.write_all(b"1/2\n");
        std::thread::sleep(std::time::Duration::from_millis(20));
        child.try_wait().unwrap()
    });
    assert_eq!(ended.and_then(|status| status.code()), Some(0));
    assert_eq!(child.stderr.unwrap().read_to_end(&mut Vec::new()).unwrap(), 0);
}

#[test]
fn a_line_that_is_too_long_is_refused_and_the_next_is_read() {
    let (longest, longer) = (" ".repeat(65_535), " ".repeat(65_536));
    let output = answers(&["read", "-"], &format!("{longest}\n{longer}\n{longer}{longer}{longer}\n7\n{longer}"));
    let text = |bytes| String::from_utf8(bytes).unwrap();
    assert_eq!(text(output.stdout), "4: 7\", dead on (7\", 177.8 mm)\n");
    let refused: String = [2, 3, 5].map(|line| format!("line {line}: error: longer than 65536 bytes\n")).concat();
    assert_eq!(text(output.stderr), refused + "3 lines could not be read\n");
}
