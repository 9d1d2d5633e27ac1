//! The answer as JSON: one object a name, every figure exact.

use num_rational::Ratio;
use scantling::{Length, Money, RoundingMode, Unit, Volume};
use serde_json::{Map, Value, json};

use super::{Amount, CAUTIONS, Entry, NOT_FOR, Report};
use crate::Outcome;
use crate::json;
use crate::problem::Problem;
use crate::words::mixed;

impl Report<'_> {
    pub(super) fn objects(&self) -> Outcome {
        self.entries.iter().try_fold(String::new(), |lines, entry| Ok(format!("{lines}{}\n", self.object(entry)?)))
    }

    fn object(&self, entry: &Entry<'_>) -> Result<Value, Problem> {
        let (nominal, actual) = (&entry.nominal, &entry.actual);
        let panel = actual.panel().map(|panel| {
            json!({
                "least": self.figure(panel.minimum()),
                "most": self.figure(panel.maximum()),
                "label": self.figure(panel.label()),
                "not_for": NOT_FOR,
            })
        });
        let mut object = json!({
            "text": entry.text,
            "name": nominal.to_string(),
            "kind": nominal.kind().to_string(),
            "surface": actual.surface().map(|surface| surface.to_string()),
            "seasoning": actual.seasoning().map(|seasoning| seasoning.to_string()),
            "nominal": self.figures([nominal.thickness(), nominal.width(), nominal.length()]),
            "actual": self.figures([actual.thickness(), actual.width(), actual.length()]),
            "panel": panel,
            "sources": actual.sources().map(|source| source.to_string()).collect::<Vec<_>>(),
        });
        if let Some(amount) = &entry.amount {
            json::extend(&mut object, self.amount_fields(amount)?);
        }
        json::extend(&mut object, [("caution".to_owned(), CAUTIONS.join(" ").into())]);
        Ok(object)
    }

    fn amount_fields(&self, amount: &Amount) -> Result<Map<String, Value>, Problem> {
        let tallied = &amount.tallied;
        let count = |count: Option<Ratio<i128>>| count.map(mixed);
        let cents = |cost: Money| cost.to_cents(RoundingMode::TiesUp).map_err(|error| Problem::plain(error.to_string()));
        let fields = json!({
            "pieces": tallied.pieces(),
            "linear_feet": count(tallied.linear().map(|linear| linear.in_unit(Unit::Foot))),
            "square_feet": count(tallied.face().checked_in_square(Unit::Foot)),
            "board_feet": count(tallied.board_feet().and_then(Volume::checked_in_board_feet)),
            "tally": self.tally.rule().to_string(),
            "price": self.price.map(|price| price.to_string()),
            "cost": amount.cost.map(|cost| cost.to_string()),
            "cost_to_the_cent": amount.cost.map(cents).transpose()?.map(|cost| cost.to_string()),
        });
        Ok(fields.as_object().cloned().unwrap_or_default())
    }

    fn figures(&self, sides: [Option<Length>; 3]) -> Value {
        let [thickness, width, length] = sides.map(|side| side.map(|side| self.figure(side)));
        json!({ "thickness": thickness, "width": width, "length": length })
    }

    fn figure(&self, length: Length) -> Value {
        json::length(length, self.bench).map_or(Value::Null, Value::Object)
    }
}
