//! The whole answer as one JSON object, every figure exact.

use scantling::{Edge, Length};
use serde_json::{Map, Value, json};

use super::Report;
use super::heading::CAUTION;
use crate::json;
use crate::words::millimeter_count;

impl Report<'_> {
    pub(super) fn object(&self) -> Value {
        let mut object = self.asked();
        json::extend(&mut object, self.marked());
        json::extend(&mut object, self.block.iter().map(|block| ("spacer_block".to_owned(), self.block_object(block))));
        let friendly = self.friendly.iter().map(|friendly| ("friendly_sizes".to_owned(), self.friendly_object(friendly)));
        json::extend(&mut object, friendly);
        object
    }

    fn asked(&self) -> Value {
        let ends = &self.options.ends;
        let mut object = json!({
            "run": self.figure(self.layout.run()),
            "members": self.layout.members(),
            "thickness": self.plan.thickness.map(|thickness| self.figure(thickness)),
            "near_end": ends.near_end,
            "far_end": ends.far_end,
            "edge": self.edge(),
            "graduation": self.in_words(self.bench.tape.step()),
            "burned": self.in_words(self.bench.tape.datum_reading()),
            "opening": self.figure(self.layout.opening()),
        });
        let widths = self.plan.widths.iter().map(|width| self.figure(*width)).collect::<Vec<_>>();
        json::extend(&mut object, (!widths.is_empty()).then(|| ("widths".to_owned(), widths.into())));
        json::extend(&mut object, (!self.plan.rules.is_empty()).then(|| ("rules".to_owned(), json!(self.plan.rules))));
        json::extend(&mut object, self.options.limits.guard.then(|| ("caution".to_owned(), CAUTION.replace('\n', " ").into())));
        object
    }

    fn edge(&self) -> &'static str {
        match self.on_tape.edge() {
            _ if self.plan.is_of_parts() => "line",
            Edge::Near => "near",
            Edge::Center => "center",
            Edge::Far => "far",
        }
    }

    fn marked(&self) -> Map<String, Value> {
        let marks = self.on_tape.marks().map(|mark| {
            let mut object = json!({ "number": mark.number() });
            json::extend(&mut object, json::reading_of(&mark.reading(), self.bench));
            object
        });
        let fields = [
            ("marks", marks.collect()),
            ("gaps", self.gaps().collect()),
            ("as_cut", self.cut().map(|gap| self.figure(gap)).collect()),
            (
                "ends_as_cut",
                self.ends_as_cut().map(|(end, gap)| (end.to_owned(), self.figure(gap))).collect::<Map<_, _>>().into(),
            ),
            ("spread", self.figure(self.spread())),
            ("worst", self.figure(self.on_tape.worst())),
        ];
        fields.into_iter().map(|(name, value)| (name.to_owned(), value)).collect()
    }

    /// Every gap, whatever it is, by how many members stand before it.
    fn gaps(&self) -> impl Iterator<Item = Value> {
        self.layout.gaps().zip(self.on_tape.gaps()).enumerate().map(|(after, (exact, cut))| {
            json!({
                "after": after,
                "exact": self.in_words(exact),
                "as_cut": self.in_words(cut),
                "mm": millimeter_count(exact),
            })
        })
    }

    pub(super) fn figure(&self, length: Length) -> Value {
        json::length(length, self.bench.unburned()).map_or(Value::Null, Value::Object)
    }

    pub(super) fn in_words(&self, length: Length) -> String {
        json::in_words(length, self.bench)
    }
}
