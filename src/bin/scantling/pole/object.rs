//! The answer as one JSON object: the pole in the form that is read back, every mark on the tape, and the findings.

use scantling::{Length, Mark, StoryPole};
use serde_json::{Value, json};

use super::build::refused;
use crate::json;
use crate::problem::Problem;
use crate::words::Bench;

pub fn object(pole: &StoryPole, findings: &[String], bench: Bench) -> Result<Value, Problem> {
    let stored = serde_json::to_value(pole).map_err(|error| Problem::plain(error.to_string()))?;
    let rows = pole.rows().iter().map(|row| {
        let marks = row.marks().iter().map(|mark| marked(mark, bench)).collect::<Result<Vec<_>, Problem>>()?;
        Ok(json!({ "name": row.name(), "marks": marks }))
    });
    Ok(json!({
        "pole": stored,
        "length": json::length(pole.length(), bench.unburned())?,
        "graduation": json::in_words(bench.tape.step(), bench),
        "burned": json::in_words(bench.tape.datum_reading(), bench),
        "rows": rows.collect::<Result<Vec<_>, Problem>>()?,
        "findings": findings,
    }))
}

/// A mark as the tape shows it, with both edges of its part where they are known.
fn marked(mark: &Mark, bench: Bench) -> Result<Value, Problem> {
    let reading = bench.tape.read(mark.position).map_err(|error| refused(error.into()))?;
    let mut object = json!({ "name": mark.name });
    json::extend(&mut object, json::reading_of(&reading, bench));
    let edges = mark.thickness.and(mark.checked_edges());
    let edge = |place: Length| json::length(place, bench).map(Value::Object);
    if let Some((near, far)) = edges {
        let fields = [("near_edge", edge(near)?), ("far_edge", edge(far)?)];
        json::extend(&mut object, fields.map(|(name, value)| (name.to_owned(), value)));
    }
    Ok(object)
}
