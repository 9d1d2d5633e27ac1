//! Holds the source to the order of its layers and to the rules of the house, which no compiler checks: a
//! layer uses those above it alone, every file says what it is and stays short, and floats keep to the files
//! that are named here. What the code does is left to the other tests.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// The layers from the top down. A layer may use those in the lines above its own, and its neighbors in the
/// line, but no two neighbors each other. The command line is a crate of its own and sees what is public.
const LAYERS: [&[&str]; 8] = [
    &["length"],
    &["parse"],
    &["tape"],
    &["print"],
    &["spacing", "pole", "geometry"],
    &["lumber", "cutting"],
    &["casework"],
    &["serde"],
];

/// The files that may compute with floats: the one way in and out, the plain numbers of other formats, and what is put on a page
/// of a document format whose numbers are floats.
const FLOATS: [&str; 3] = ["src/length/float.rs", "src/serde/plain.rs", "src/pole/pdf/pen.rs"];

const MOST_LINES: usize = 400;

/// What must not stand in any file, tests included. The last three are ways round the public face.
const NEVER: [&str; 7] = ["unsafe", "todo!", "unimplemented!", "dbg!", "include!", "#[path", "doc(hidden)"];

/// The code alone: comments, texts and characters blanked, so that every line keeps its number.
fn code(text: &str) -> String {
    let mut out = String::new();
    let mut rest = text;
    while let Some(first) = rest.chars().next() {
        let length = comment(rest).or_else(|| quoted(&out, rest));
        let (taken, after) = rest.split_at(length.unwrap_or(first.len_utf8()));
        out.extend(taken.chars().map(|char| if length.is_none() || char == '\n' { char } else { ' ' }));
        rest = after;
    }
    out
}

fn comment(rest: &str) -> Option<usize> {
    if rest.starts_with("//") {
        return Some(rest.find('\n').unwrap_or(rest.len()));
    }
    let mut depth = usize::from(rest.starts_with("/*"));
    let mut place = 2;
    while depth > 0 && place < rest.len() {
        let after = &rest.as_bytes()[place..];
        match () {
            () if after.starts_with(b"/*") => (depth, place) = (depth + 1, place + 2),
            () if after.starts_with(b"*/") => (depth, place) = (depth - 1, place + 2),
            () => place += 1,
        }
    }
    rest.starts_with("/*").then_some(place)
}

/// A text or a character, raw or not. A lifetime has no closing quote where a character has one.
fn quoted(before: &str, rest: &str) -> Option<usize> {
    let word = before.ends_with(|char: char| char.is_alphanumeric() || char == '_');
    let prefix = if word { "" } else { ["br", "cr", "r"].into_iter().find(|raw| rest.starts_with(raw)).unwrap_or("") };
    let hashes = rest[prefix.len()..].bytes().take_while(|byte| *byte == b'#').count();
    let opening = prefix.len() + hashes;
    if !prefix.is_empty() && rest[opening..].starts_with('"') {
        let closing = format!("\"{}", "#".repeat(hashes));
        return rest[opening + 1..].find(&closing).map(|end| opening + 1 + end + closing.len());
    }
    let quote = rest.chars().next().filter(|char| ['"', '\''].contains(char))?;
    let mut chars = rest.char_indices().skip(1);
    while let Some((place, char)) = chars.next() {
        match char {
            '\\' => _ = chars.next(),
            char if char == quote => return Some(place + 1),
            _ if quote == '\'' && !rest[place + char.len_utf8()..].starts_with('\'') => return None,
            _ => {}
        }
    }
    None
}

/// The code without what is compiled for tests only, still line for line.
fn untested(code: &str) -> String {
    const MARK: &str = "#[cfg(test)]";
    let Some(start) = code.find(MARK) else { return code.to_owned() };
    let item = &code[start..];
    let end = match (item.find('{'), item.find(';')) {
        (Some(open), semicolon) if semicolon.is_none_or(|semicolon| open < semicolon) => open + block(&item[open..]),
        (_, semicolon) => semicolon.map_or(item.len(), |semicolon| semicolon + 1),
    };
    let lines = "\n".repeat(item[..end].matches('\n').count());
    format!("{}{lines}{}", &code[..start], untested(&item[end..]))
}

/// How far a block in braces reaches from its opening one.
fn block(text: &str) -> usize {
    let mut depth = 0;
    let closing = text.char_indices().find(|(_, char)| {
        depth += i32::from(*char == '{') - i32::from(*char == '}');
        depth == 0
    });
    closing.map_or(text.len(), |(place, _)| place + 1)
}

fn is_word(char: char) -> bool {
    char.is_alphanumeric() || char == '_'
}

/// The places of a word that does not go on to the left, or to the right unless it ends in a sign.
fn places<'a>(code: &'a str, word: &'a str) -> impl Iterator<Item = usize> + 'a {
    code.match_indices(word).map(|(place, _)| place).filter(move |place| {
        let (before, after) = (&code[..*place], &code[place + word.len()..]);
        let goes_on =
            (word.starts_with(is_word) && before.ends_with(is_word), word.ends_with(is_word) && after.starts_with(is_word));
        goes_on == (false, false)
    })
}

fn line(code: &str, place: usize) -> usize {
    code[..place].matches('\n').count() + 1
}

/// The first names after a path's start, one or the heads of a group: `b` of `a::b::c`, `b` and `d` of `a::{b::c, d}`.
fn heads(after: &str) -> Vec<String> {
    let name = |text: &str| -> String {
        let text = text.trim_start();
        text.chars().take_while(|char| is_word(*char) || *char == '*').collect()
    };
    if !after.starts_with('{') {
        return vec![name(after)];
    }
    let mut depth = 0;
    let group = &after[1..block(after) - 1];
    let members = group.split(|char| {
        depth += i32::from(char == '{') - i32::from(char == '}');
        char == ',' && depth == 0
    });
    members.map(name).filter(|name| !name.is_empty()).collect()
}

/// The modules a file is in: none for the root, `length` and `area` for `src/length/area.rs`.
fn modules(path: &str) -> Vec<&str> {
    let path = path.trim_start_matches("src/").trim_end_matches(".rs").trim_end_matches("/mod");
    if path == "lib" { Vec::new() } else { path.split('/').collect() }
}

/// How many `mod name { .. }` stand open at a place.
fn inside(code: &str, place: usize) -> usize {
    let openings = places(&code[..place], "mod").filter(|start| {
        let open = code[*start..].find(['{', ';']).map(|open| start + open);
        open.is_some_and(|open| open < place && code[open..].starts_with('{') && open + block(&code[open..]) > place)
    });
    openings.count()
}

/// Names at the root that a file's code uses, with their lines: by `crate::`, or by enough `super::`.
fn from_root(path: &str, code: &str) -> Vec<(String, usize)> {
    let mut names = Vec::new();
    let mut take = |place: usize, after: &str| {
        names.extend(heads(after.trim_start()).into_iter().map(|name| (name, line(code, place))));
    };
    for place in places(code, "crate::") {
        take(place, &code[place + "crate::".len()..]);
    }
    for place in places(code, "super::").filter(|place| !code[..*place].ends_with("::")) {
        let after = code[place..].trim_start_matches("super::");
        let up = (code.len() - place - after.len()) / "super::".len();
        if up >= modules(path).len() + inside(code, place) {
            take(place, after);
        }
    }
    names
}

/// The layer of every public name, as the root re-exports it.
fn exports(root: &str) -> BTreeMap<String, String> {
    let mut names = BTreeMap::new();
    for place in places(root, "pub use ") {
        let tree = root[place + "pub use ".len()..].split(';').next().unwrap_or("");
        let (layer, tail) = tree.split_once("::").unwrap_or((tree, ""));
        names.extend(heads(tail.trim_start()).into_iter().map(|name| (name, layer.to_owned())));
    }
    names
}

fn rank(layer: &str) -> Option<usize> {
    LAYERS.iter().position(|row| row.contains(&layer))
}

/// What a file has against it; what it uses of its neighbors goes to `beside`.
struct Judge {
    exports: BTreeMap<String, String>,
    beside: Vec<(String, String)>,
    findings: Vec<String>,
}

impl Judge {
    fn new(root: &str) -> Self {
        Self { exports: exports(&code(root)), beside: Vec::new(), findings: Vec::new() }
    }

    fn file(&mut self, path: &str, text: &str) {
        if text.trim().is_empty() {
            return; // a place kept for a layer to come
        }
        if !text.starts_with("//!") {
            self.findings.push(format!("{path}: does not open with what it is"));
        }
        if text.lines().count() >= MOST_LINES {
            self.findings.push(format!("{path}: {} lines", text.lines().count()));
        }
        let code = code(text);
        for word in NEVER {
            let found = places(&code, word).map(|place| format!("{path}:{}: {word}", line(&code, place)));
            self.findings.extend(found);
        }
        let tests = path.ends_with("/tests.rs") || path.contains("/tests/");
        let code = if tests { String::new() } else { untested(&code) };
        if !FLOATS.contains(&path) {
            self.floats(path, &code);
        }
        if path != "src/lib.rs" && !path.starts_with("src/bin/") {
            self.layers(path, &code);
        }
    }

    fn floats(&mut self, path: &str, code: &str) {
        let named = ["f64", "f32"].into_iter().flat_map(|word| places(code, word));
        let written = code.match_indices('.').map(|(place, _)| place).filter(|place| {
            let digits = code[..*place].trim_end_matches(|char: char| char.is_ascii_digit() || char == '_');
            let number = digits.len() < *place && !digits.ends_with(|char| is_word(char) || char == '.');
            number && code[place + 1..].starts_with(|char: char| char.is_ascii_digit())
        });
        self.findings.extend(named.chain(written).map(|place| format!("{path}:{}: a float", line(code, place))));
    }

    fn layers(&mut self, path: &str, code: &str) {
        let own = modules(path)[0];
        let Some(place) = rank(own) else {
            return self.findings.push(format!("{path}: {own} has no place among the layers"));
        };
        for (name, line) in from_root(path, code) {
            let layer = self.exports.get(&name).unwrap_or(&name).clone();
            match rank(&layer) {
                None => self.findings.push(format!("{path}:{line}: {name} is of no layer")),
                Some(other) if other > place => self.findings.push(format!("{path}:{line}: {own} uses {layer} below it")),
                Some(other) if other == place && layer != own => self.beside.push((own.to_owned(), layer)),
                Some(_) => {}
            }
        }
    }

    fn finish(mut self) -> Vec<String> {
        let mutual = self.beside.iter().filter(|(a, b)| a < b && self.beside.contains(&(b.clone(), a.clone())));
        let mutual = mutual.map(|(a, b)| format!("{a} and {b} use each other"));
        self.findings.extend(mutual.collect::<std::collections::BTreeSet<_>>());
        self.findings
    }
}

fn each_source(folder: &Path, take: &mut impl FnMut(&Path)) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        match path.is_dir() {
            true => each_source(&path, take),
            false if path.extension().is_some_and(|extension| extension == "rs") => take(&path),
            false => {}
        }
    }
}

#[test]
fn the_source_keeps_to_its_rules() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut judge = Judge::new(&fs::read_to_string(top.join("src/lib.rs")).unwrap());
    let mut files = 0;
    each_source(&top.join("src"), &mut |path| {
        files += 1;
        let name = path.strip_prefix(top).unwrap().to_str().unwrap().replace('\\', "/");
        judge.file(&name, &fs::read_to_string(path).unwrap());
    });
    assert!(files > 15 && judge.exports.len() > 5, "{files} files, {:?}", judge.exports);
    let findings = judge.finish();
    assert!(findings.is_empty(), "\n{}\n", findings.join("\n"));
}

/// What the judge has against a made-up file, behind a made-up opening line.
fn against(path: &str, body: &str) -> Vec<String> {
    let mut judge = Judge::new("pub use length::{Length, Unit};\npub use tape::Tape;\npub use pole::StoryPole;");
    judge.file(path, &format!("//! Made up.\n{body}\n"));
    judge.finish()
}

#[test]
fn each_bad_line_is_found() {
    let at = |what: &str| vec![format!("src/parse/mod.rs:2: {what}")];
    for (body, what) in [
        ("use crate::tape::Tape;", "parse uses tape below it"),
        ("use crate::{Length, tape};", "parse uses tape below it"),
        ("use crate::{length::{gcd, Unit}, Tape};", "parse uses tape below it"),
        ("pub use super::print;", "parse uses print below it"),
        ("fn f() { crate::print::show(); }", "parse uses print below it"),
        ("mod inner { use super::super::Tape; }", "parse uses tape below it"),
        ("use crate::*;", "* is of no layer"),
        ("use crate::stray::Thing;", "stray is of no layer"),
        ("fn f() { unsafe { g() } }", "unsafe"),
        ("fn f() { todo!() }", "todo!"),
        ("#[cfg(test)] fn f() { unimplemented!() }", "unimplemented!"),
        ("#[path = \"../length/gcd.rs\"] mod gcd;", "#[path"),
        ("#[doc(hidden)] pub fn f() {}", "doc(hidden)"),
        ("fn f(x: f64) {}", "a float"),
        ("fn f() { g(x as f32) }", "a float"),
        ("const HALF: X = 0.5;", "a float"),
        ("const C: char = '\\''; const Q: char = '\"'; use crate::tape;", "parse uses tape below it"),
        ("fn f<'a>(x: &'a str) { r#\"\"\"#; crate::tape::f(x) }", "parse uses tape below it"),
    ] {
        assert_eq!(against("src/parse/mod.rs", body), at(what), "{body}");
    }
    assert_eq!(against("src/odd.rs", ""), ["src/odd.rs: odd has no place among the layers"]);
    assert_eq!(against("src/tape/read.rs", "use super::super::StoryPole;"), ["src/tape/read.rs:2: tape uses pole below it"]);
    assert_eq!(against("src/tape/mod.rs", &"\n".repeat(398)), ["src/tape/mod.rs: 400 lines"]);
}

#[test]
fn each_good_line_is_let_through() {
    for body in [
        "use crate::{Length, Unit, parse::Called};",
        "use super::super::length::Fraction;",
        "// crate::tape, unsafe, 0.5 f64\n/* crate::tape /* todo!() */ 1.5 */",
        "/// ```\n/// use crate::tape;\n/// ```",
        "fn f() -> &'static str { \"crate::tape::f unsafe 0.5\" }",
        "#[cfg(test)]\nmod tests { use crate::{Tape, print}; const X: f64 = 0.5; fn f() { {} } }",
        "fn f(x: X) -> X { x.0.1 + 1..2 + 3.max(4) + not_unsafe }",
        "mod inner { use super::Local; }",
        "use super::Local;",
    ] {
        assert_eq!(against("src/parse/size.rs", body), [""; 0], "{body}");
    }
    assert_eq!(against("src/parse/size/tests.rs", "use crate::print;\nconst X: f64 = 0.5;"), [""; 0]);
    assert_eq!(against("src/length/float.rs", "fn f(x: f64) {}"), [""; 0]);
    assert_eq!(against("src/bin/scantling/main.rs", "use crate::anything;"), [""; 0]);
    assert_eq!(against("src/pole/mod.rs", "use crate::spacing;"), [""; 0]);
}

#[test]
fn files_that_say_nothing_and_neighbors_that_lean_on_each_other_are_found() {
    let mut judge = Judge::new("");
    judge.file("src/pole/mod.rs", "//! Made up.\nuse crate::spacing;\n");
    judge.file("src/spacing/mod.rs", "//! Made up.\nuse crate::pole;\nuse crate::pole::StoryPole;\n");
    judge.file("src/tape/mod.rs", "\n//! Late.\n");
    assert_eq!(judge.finish(), ["src/tape/mod.rs: does not open with what it is", "pole and spacing use each other"]);
}
