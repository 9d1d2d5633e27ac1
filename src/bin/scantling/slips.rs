//! Slips at the keyboard of which the reader of options alone knows little: an option of another command or of another build,
//! and a length that fell apart at its blank. What a good line means is left to `arguments.rs`.

use std::ffi::OsString;

use clap::error::{ContextKind, ContextValue, ErrorKind};
use clap::{CommandFactory as _, Error};
use scantling::{LengthParser, Nominal};

use crate::arguments::{Command, Scantling, typed};
use crate::problem::Problem;

/// Options of pictures, with the commands that have them and the feature that brings them.
const PICTURES: [(&str, &[&str], &str); 5] = [
    ("svg", &["read", "pole", "cut", "case"], "svg"),
    ("scale", &["read"], "svg"),
    ("force", &["read", "cut", "pole"], "svg"),
    ("pdf", &["pole", "case"], "pdf"),
    ("paper", &["pole", "case"], "pdf"),
];

/// The features of pictures that this build has.
const BUILT: &[&str] = &[
    #[cfg(feature = "svg")]
    "svg",
    #[cfg(feature = "pdf")]
    "pdf",
];

/// What a command calls that which another has an option for.
const OWN_WORDS: [(&str, &str, &str); 10] = [
    ("divide", "shelves", "here 4 shelves are --members 4 --thickness 3/4"),
    ("divide", "bays", "here 3 bays are --into 3, or with partitions between them --members 2 --thickness 3/4"),
    ("divide", "doors", "here 3 doors are --into 3"),
    ("divide", "openings", "here equal openings of about a size are --about 12"),
    ("divide", "proportions", "here openings in proportion are --shares 3:2:2"),
    ("divide", "sheet", "here --thickness is how thick each member is"),
    ("divide", "length", "here the length stands alone, as in scantling divide 72 --into 5"),
    ("divide", "height", "here the height stands alone, as in scantling divide 72 --into 5"),
    ("case", "members", "here 4 members are --shelves 4"),
    ("case", "thickness", "here --sheet is how thick the panels are"),
];

/// The same error about what was typed.
pub fn unshielded(mut error: Error) -> Error {
    for kind in [ContextKind::InvalidValue, ContextKind::InvalidArg] {
        if let Some(ContextValue::String(value)) = error.get(kind) {
            let value = ContextValue::String(typed(value).to_owned());
            let _ = error.insert(kind, value);
        }
    }
    error
}

/// More than was said about an argument that was not expected, where more is known.
pub fn explained(error: &Error, arguments: &[OsString]) -> Option<Problem> {
    let Some(ContextValue::String(found)) = error.get(ContextKind::InvalidArg) else { return None };
    let command = arguments.get(1)?.to_str()?;
    Scantling::command().find_subcommand(command)?;
    match found.strip_prefix("--") {
        _ if error.kind() != ErrorKind::UnknownArgument => None,
        Some(option) => {
            let option = option.split('=').next().unwrap_or(option);
            without_pictures(command, option, BUILT).or_else(|| elsewhere(command, option))
        }
        None => loose(command, found, arguments),
    }
}

/// Something that belongs to what stands before it, or wants an option of its own.
fn loose(command: &str, found: &str, arguments: &[OsString]) -> Option<Problem> {
    let is_word = |text: &str| text.starts_with(|first: char| first.is_ascii_alphabetic());
    if let Some(before) = before(found, arguments).find(|before| belongs(before, found)) {
        return Some(apart(before, found));
    }
    match command {
        "cut" => {
            let problem = Problem::plain(format!("no option says what {found} is"));
            Some(problem.hint("each part and each board has an option of its own: --part rail=4@35-1/2 --stock 8ft"))
        }
        "divide" if found.bytes().all(|byte| byte.is_ascii_digit()) => {
            let problem = Problem::plain(format!("no option says what {found} is"));
            Some(
                problem
                    .hint(format!("{found} equal parts are --into {found}, {found} members --members {found} --thickness 3/4")),
            )
        }
        "case" | "pole" if is_word(found) => {
            let before = before(found, arguments).find(|before| is_word(before))?;
            let problem = Problem::plain(format!("a name without its quotes: {before} and {found}"));
            Some(problem.hint(format!("write \"{before} {found}\" for one name")))
        }
        _ => None,
    }
}

/// An option of a feature that was left out of the build.
fn without_pictures(command: &str, option: &str, built: &[&str]) -> Option<Problem> {
    let here = |(name, commands, feature): &&(&str, &[&str], &str)| {
        *name == option && commands.contains(&command) && !built.contains(feature)
    };
    let (_, _, feature) = PICTURES.iter().find(here)?;
    let features = [&["cli"], built, &[*feature]].concat().join(",");
    let problem = Problem::plain(format!("this build has no --{option}"));
    Some(problem.hint(format!("pictures come with feature {feature}: cargo install --path . --features {features}")))
}

/// An option of other commands.
fn elsewhere(command: &str, option: &str) -> Option<Problem> {
    let commands = Scantling::command();
    let has = |other: &&clap::Command| other.get_arguments().any(|argument| argument.get_long() == Some(option));
    let built: Vec<_> = commands.get_subcommands().filter(has).map(clap::Command::get_name).collect();
    if built.contains(&command) {
        return Some(Problem::plain(format!("--{option} stands behind --")).hint("options stand before it"));
    }
    let drawn = PICTURES.iter().find(|(name, ..)| *name == option).map_or(&[][..], |(_, commands, _)| *commands);
    let names = if built.is_empty() { drawn } else { &built[..] };
    let own = OWN_WORDS.iter().find(|(of, name, _)| (*of, *name) == (command, option)).map(|(_, _, words)| *words);
    let told = own.into_iter().map(str::to_owned).chain(listed(names)).collect::<Vec<_>>().join("; ");
    (!told.is_empty()).then(|| Problem::plain(format!("scantling {command} has no option --{option}")).hint(told))
}

fn listed(names: &[&str]) -> Option<String> {
    let (last, others) = names.split_last()?;
    match others {
        [] => Some(format!("scantling {last} has one")),
        _ => Some(format!("scantling {} and {last} have one", others.join(", "))),
    }
}

/// `--draw ascii`, where the word stands for a length or a name.
pub fn unequaled(command: &Command) -> Option<Problem> {
    let is_strokes = |text: &&String| ["ascii", "lines"].contains(&text.as_str());
    let strokes = match command {
        Command::Read(options) if options.draw.is_some() => options.texts.iter().find(is_strokes)?,
        Command::Pole(options) if options.pictures.draw.is_some() => options.name.iter().find(is_strokes)?,
        _ => return None,
    };
    Some(Problem::plain(format!("{strokes} stands apart from --draw")).hint(format!("write --draw={strokes}")))
}

/// A good line in which a length has lost its quotes, so that its end stands for something else.
pub fn unquoted(command: &Command, arguments: &[OsString]) -> Option<Problem> {
    let (lengths, name): (&[String], _) = match command {
        Command::Read(options) => (&options.texts, None),
        Command::Divide(options) => (&options.rule.widths, None),
        Command::Case(options) => (&options.shelves.openings, options.name.as_deref()),
        Command::Pole(options) => (&[], options.name.as_deref()),
        _ => return None,
    };
    let pair = lengths.windows(2).find(|pair| is_fraction(&pair[1]) && belongs(&pair[0], &pair[1]));
    if let Some([first, second]) = pair {
        let first = typed(first);
        let title = format!("two lengths, or one without its quotes: {first} and {second}");
        let one = Problem::plain(title);
        return Some(
            one.hint(format!("write \"{first} {second}\" or {first}-{second} for one length, {first}in {second} for two")),
        );
    }
    let before = before(name?, arguments).find(|before| belongs(before, name.unwrap_or_default()))?;
    Some(apart(before, name?))
}

/// The arguments that stand right before one.
fn before<'a>(found: &str, arguments: &'a [OsString]) -> impl Iterator<Item = &'a str> {
    let pairs = arguments.windows(2).filter_map(|pair| Some((pair[0].to_str()?, pair[1].to_str()?)));
    pairs.filter(move |(_, second)| typed(second) == found).map(|(first, _)| typed(first))
}

/// Whether an argument goes on where the number at the end of the one before it stops: `24` and `1/2`, `a=2@35` and `1/2`; or
/// `3/4` and `ply`, which is stock.
fn belongs(before: &str, found: &str) -> bool {
    let number = before.rsplit(['=', '@', ':']).next().unwrap_or(before);
    let is_number = number.starts_with(|first: char| first.is_ascii_digit() || matches!(first, '-' | '.'));
    let both = format!("{number} {found}");
    is_number && (LengthParser::new().parse(&both).is_ok() || number.contains('/') && both.parse::<Nominal>().is_ok())
}

fn is_fraction(text: &str) -> bool {
    text.contains('/') && text.starts_with(|first: char| first.is_ascii_digit())
}

fn apart(before: &str, found: &str) -> Problem {
    let joined = if is_fraction(found) { format!(" or {before}-{found}") } else { String::new() };
    let problem = Problem::plain(format!("a text without its quotes: {before} and {found}"));
    problem.hint(format!("write \"{before} {found}\"{joined}, so that the two are one"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_build_without_pictures_says_how_to_get_one_with_them() {
        for (command, option, built, feature, features) in [
            ("read", "svg", &[][..], "svg", "cli,svg"),
            ("read", "scale", &["pdf"], "svg", "cli,pdf,svg"),
            ("case", "pdf", &["svg"], "pdf", "cli,svg,pdf"),
            ("pole", "paper", &[], "pdf", "cli,pdf"),
        ] {
            let said = without_pictures(command, option, built).map(|problem| problem.to_string()).unwrap_or_default();
            let hint = format!("pictures come with feature {feature}: cargo install --path . --features {features}");
            assert!(said.contains(&format!("this build has no --{option}")) && said.ends_with(&hint), "{said}");
        }
        for (command, option, built) in [("divide", "svg", &[][..]), ("read", "svg", &["svg"]), ("read", "shelves", &[])] {
            assert!(without_pictures(command, option, built).is_none(), "{command} --{option}");
        }
    }
}
