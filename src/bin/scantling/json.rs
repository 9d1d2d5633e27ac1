//! JSON in and out. What is wrong with a stored thing is told with the key that it stands behind. A length is written in every
//! notation a program may want, as text, so that no digit is lost.

use scantling::{Length, LengthPrinter, Marks, Reading};
use serde::{Deserialize, Deserializer};
use serde_json::{Map, Value};

use crate::problem::Problem;
use crate::words::{Bench, millimeter_count};

type Fields = Map<String, Value>;

/// What stands in JSON, or what is wrong with it, and behind which key.
pub fn read<'de, T: Deserialize<'de>>(json: impl Deserializer<'de, Error = serde_json::Error>) -> Result<T, String> {
    read_behind("", json)
}

fn read_behind<'de, T: Deserialize<'de>>(
    key: &str,
    json: impl Deserializer<'de, Error = serde_json::Error>,
) -> Result<T, String> {
    serde_path_to_error::deserialize(json).map_err(|error| {
        let (path, error) = (error.path().to_string(), error.into_inner());
        match (key, &*path) {
            ("", ".") => error.to_string(),
            ("", path) | (path, ".") => format!("{path}: {error}"),
            _ if path.starts_with('[') => format!("{key}{path}: {error}"),
            _ => format!("{key}.{path}: {error}"),
        }
    })
}

/// The same for a field that an object may do without.
pub fn taken<T: for<'de> Deserialize<'de>>(fields: &mut Fields, key: &str) -> Result<Option<T>, String> {
    fields.remove(key).map_or(Ok(None), |value| read_behind::<Option<T>>(key, value))
}

/// Puts more fields behind those of an object.
pub fn extend(object: &mut Value, more: impl IntoIterator<Item = (String, Value)>) {
    if let Some(fields) = object.as_object_mut() {
        fields.extend(more);
    }
}

/// `{"exact":"17 2/5 in","tape":"17 3/8 in","leftover":"1/40 in","lean":"strong","mm":"441.96"}`.
pub fn length(length: Length, bench: Bench) -> Result<Fields, Problem> {
    let reading = bench.tape.read(length).map_err(|error| Problem::plain(error.to_string()))?;
    Ok(reading_of(&reading, bench))
}

/// The same for a place that has been read on the tape already.
pub fn reading_of(reading: &Reading, bench: Bench) -> Fields {
    let text = |length| in_words(length, bench);
    let fields = [
        ("exact", text(reading.true_position())),
        ("tape", text(reading.shown())),
        ("leftover", text(reading.leftover().abs())),
        ("lean", reading.lean().to_string()),
        ("mm", millimeter_count(reading.true_position())),
    ];
    fields.into_iter().map(|(name, value)| (name.to_owned(), value.into())).collect()
}

/// A length with its unit in letters, which needs no escaping.
pub fn in_words(length: Length, bench: Bench) -> String {
    if bench.is_metric() {
        return crate::words::millimeters(length);
    }
    LengthPrinter::new().marks(Marks::Words).show(length).map_or_else(|_| length.to_string(), |shown| shown.to_string())
}
