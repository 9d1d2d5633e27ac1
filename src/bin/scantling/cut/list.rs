//! Lists of parts and boards in files: CSV with a header, or JSON. Nothing is skipped: a column, a line or a name that is not
//! known is refused with its place.

use std::path::Path;

use serde_json::Value;

use super::items::Item;
use crate::input::Input;
use crate::problem::Problem;

/// Longer lists are not planned in one go.
const MOST_ITEMS: usize = 100_000;
/// No name and no size needs as many bytes.
const LONGEST_FIELD: usize = 10_000;

/// The items in a file, with the fields that it may have.
pub fn items(path: &Path, known: &[&'static str]) -> Result<Vec<Item>, Problem> {
    let input = Input::read(path)?;
    let (name, bytes) = (&input.name, input.bytes());
    let items = match path.extension() {
        Some(extension) if extension.eq_ignore_ascii_case("json") => of_json(name, bytes, known)?,
        _ => of_csv(name, bytes, known)?,
    };
    if items.is_empty() { Err(Problem::plain(format!("{name}: nothing is listed in it"))) } else { Ok(items) }
}

fn of_csv(name: &str, bytes: &[u8], known: &[&'static str]) -> Result<Vec<Item>, Problem> {
    let mut table = csv::ReaderBuilder::new().flexible(true).has_headers(false).from_reader(bytes);
    let mut columns: Option<Vec<&'static str>> = None;
    let mut items = Vec::new();
    let mut lines = Lines { bytes, at: 0, line: 1 };
    for record in table.byte_records() {
        let record = record.map_err(|error| Problem::plain(format!("{name}: {error}")))?;
        let place = format!("{name}, line {}", lines.line_of(&record));
        match &columns {
            None => columns = Some(header(&place, &record, known)?),
            Some(columns) if columns.len() == record.len() => {
                refuse_many(name, items.len() + 1)?;
                let fields = columns.iter().copied().zip(texts(&place, &record)).map(|(name, text)| Ok((name, text?)));
                let fields = fields.collect::<Result<_, Problem>>()?;
                items.push(Item { place, fields });
            }
            Some(columns) => {
                let (is, are) = (record.len(), columns.len());
                return Err(Problem::plain(format!("{place}: {is} columns where the header has {are}"))
                    .hint("quote a text that has a comma in it"));
            }
        }
    }
    Ok(items)
}

/// Lines counted on from one record to the next, so that a long file is counted through once.
struct Lines<'a> {
    bytes: &'a [u8],
    at: usize,
    line: usize,
}

impl Lines<'_> {
    /// The line that a record begins in. Blank lines before it count as part of it to the reader of CSV, but not to people.
    fn line_of(&mut self, record: &csv::ByteRecord) -> usize {
        let begin = record.position().map_or(0, csv::Position::byte);
        let begin = usize::try_from(begin).map_or(self.bytes.len(), |begin| begin.clamp(self.at, self.bytes.len()));
        let blank = self.bytes[begin..].iter().take_while(|byte| matches!(byte, b'\n' | b'\r')).count();
        self.line += self.bytes[self.at..begin + blank].iter().map(|byte| usize::from(*byte == b'\n')).sum::<usize>();
        self.at = begin + blank;
        self.line
    }
}

fn refuse_many(name: &str, items: usize) -> Result<(), Problem> {
    if items <= MOST_ITEMS {
        return Ok(());
    }
    Err(Problem::plain(format!("{name}: more than {MOST_ITEMS} are listed in it")).hint("give what is alike one count"))
}

fn refuse_long(place: &str, text: &str) -> Result<(), Problem> {
    if text.len() <= LONGEST_FIELD {
        return Ok(());
    }
    Err(Problem::plain(format!("{place}: longer than {LONGEST_FIELD} bytes")))
}

/// One by one, so that nothing is kept of a line that is refused at its beginning.
fn texts(place: &str, record: &csv::ByteRecord) -> impl Iterator<Item = Result<String, Problem>> {
    (1..).zip(record).map(move |(column, field)| {
        let place = format!("{place}, column {column}");
        let text = std::str::from_utf8(field).map_err(|_| Problem::plain(format!("{place}: not text (UTF-8)")))?;
        refuse_long(&place, text)?;
        Ok(text.to_owned())
    })
}

fn header(place: &str, record: &csv::ByteRecord, known: &[&'static str]) -> Result<Vec<&'static str>, Problem> {
    let mut columns = Vec::new();
    for (number, text) in (1..).zip(texts(place, record)) {
        let text = text?;
        let column = known_name(&text, known).ok_or_else(|| {
            Problem::plain(format!("{place}, column {number}: no column is called {text:?}")).hint(in_first_line(&text, known))
        })?;
        if columns.contains(&column) {
            return Err(Problem::plain(format!("{place}, column {number}: {column} stands there twice")));
        }
        columns.push(column);
    }
    if columns.contains(&"length") {
        return Ok(columns);
    }
    Err(Problem::plain(format!("{place}: no column is called length")).hint(these(known)))
}

fn known_name(text: &str, known: &[&'static str]) -> Option<&'static str> {
    known.iter().copied().find(|known| known.eq_ignore_ascii_case(text.trim()))
}

/// What the first line should have been.
fn in_first_line(text: &str, known: &[&str]) -> String {
    if text.contains([';', '\t']) {
        return format!("put commas between the columns, which are {}", known.join(", "));
    }
    format!("the first line names the columns, which are {}", known.join(", "))
}

fn these(known: &[&str]) -> String {
    format!("the columns are {}", known.join(", "))
}

fn of_json(name: &str, bytes: &[u8], known: &[&'static str]) -> Result<Vec<Item>, Problem> {
    let value: Value = serde_json::from_slice(bytes).map_err(|error| Problem::plain(format!("{name}: {error}")))?;
    let Value::Array(entries) = value else {
        return Err(Problem::plain(format!("{name}: a list of objects was expected")));
    };
    refuse_many(name, entries.len())?;
    (1..).zip(entries).map(|(number, entry)| of_entry(format!("{name}, entry {number}"), entry, known)).collect()
}

fn of_entry(place: String, entry: Value, known: &[&'static str]) -> Result<Item, Problem> {
    let Value::Object(object) = entry else { return Err(Problem::plain(format!("{place}: an object was expected"))) };
    let mut fields = Vec::new();
    for (key, value) in object {
        let field = known_name(&key, known)
            .ok_or_else(|| Problem::plain(format!("{place}: nothing is called {key:?}")).hint(these(known)))?;
        let text = match value {
            Value::String(text) => text,
            Value::Number(number) => number.to_string(),
            Value::Bool(yes) => yes.to_string(),
            Value::Null => String::new(),
            _ => return Err(Problem::plain(format!("{place}, {field}: a text or a number was expected"))),
        };
        refuse_long(&format!("{place}, {field}"), &text)?;
        fields.push((field, text));
    }
    Ok(Item { place, fields })
}
