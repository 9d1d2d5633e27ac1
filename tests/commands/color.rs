//! Color goes to a terminal and nowhere else, and not there either where it is not wanted. The terminal is one
//! that `script` of util-linux makes, so these tests run on Linux. Where there is no `script`, those that need a
//! terminal say so and stop, unless the variable CI is set: there it must be.
#![cfg(all(feature = "cli", target_os = "linux"))]

use std::process::{Command, Stdio};

const PROGRAM: &str = env!("CARGO_BIN_EXE_scantling");

/// Settings of the environment that have a say in it, none of which is taken from whoever runs the tests.
const SETTINGS: [&str; 5] = ["NO_COLOR", "CLICOLOR", "CLICOLOR_FORCE", "COLORTERM", "CI"];

fn output(mut command: Command, settings: &[(&str, &str)]) -> String {
    for name in SETTINGS {
        command.env_remove(name);
    }
    let output = command.env("TERM", "xterm").envs(settings.iter().copied()).stdin(Stdio::null()).output().unwrap();
    String::from_utf8([output.stdout, output.stderr].concat()).unwrap()
}

fn has_terminal() -> bool {
    let found = Command::new("script").arg("--version").stdout(Stdio::null()).status().is_ok();
    assert!(found || std::env::var_os("CI").is_none(), "no `script` to make a terminal with");
    if !found {
        eprintln!("not tried: there is no `script` to make a terminal with");
    }
    found
}

/// Both streams of the program at a terminal.
fn at_terminal(arguments: &str, settings: &[(&str, &str)]) -> String {
    let mut command = Command::new("script");
    command.args(["-qec", &format!("'{PROGRAM}' {arguments}"), "/dev/null"]);
    output(command, settings)
}

fn piped(arguments: &str, settings: &[(&str, &str)]) -> String {
    let mut command = Command::new(PROGRAM);
    command.args(arguments.split(' '));
    output(command, settings)
}

fn is_colored(text: &str) -> bool {
    text.contains("\u{1b}[")
}

/// A text with two readings, and an option there is none of.
const BAD: [&str; 2] = ["read 1,250", "read 3 --bogus"];

#[test]
fn errors_are_colored_at_a_terminal_unless_that_is_not_wanted() {
    for arguments in BAD.into_iter().filter(|_| has_terminal()) {
        let cases: [(&[(&str, &str)], bool); 6] = [
            (&[], true),
            (&[("NO_COLOR", "1")], false),
            // The standard of that name: an empty one counts as none.
            (&[("NO_COLOR", "")], true),
            (&[("TERM", "dumb")], false),
            (&[("CLICOLOR", "0")], false),
            (&[("CLICOLOR", "1")], true),
        ];
        for (settings, colored) in cases {
            let text = at_terminal(arguments, settings);
            assert!(text.contains("error"), "{text}");
            assert_eq!(is_colored(&text), colored, "{arguments}, {settings:?}: {text:?}");
        }
    }
}

#[test]
fn nothing_is_colored_in_a_file_or_a_pipe() {
    for arguments in BAD.into_iter().chain(["read 17-5/8", "read 17-5/8 --draw", "divide 72 --into 5", "--help", "help read"]) {
        let text = piped(arguments, &[]);
        assert!(!text.is_empty() && !is_colored(&text), "{arguments}: {text:?}");
    }
}

#[test]
fn answers_are_the_same_at_a_terminal() {
    for arguments in ["read 17-5/8", "read 17-5/8 --draw", "read 1/3 --json", "calc 72/5"].into_iter().filter(|_| has_terminal())
    {
        assert_eq!(at_terminal(arguments, &[]).replace("\r\n", "\n"), piped(arguments, &[]), "{arguments}");
    }
}
