//! The answer as one JSON object: the case in the form that is read back, and everything that follows from it.

use scantling::{CasePart, Length, Level, Reading, Site, Sum, Tape, TapeError};
use serde_json::{Value, json};

use super::arguments::SawnName;
use super::buying::Bought;
use super::{Report, refused, total};
use crate::json;
use crate::problem::Problem;

impl Report<'_> {
    pub(super) fn object(&self) -> Result<Value, Problem> {
        let parts = self.plan.parts().iter().map(|part| self.part(part)).collect::<Result<Vec<_>, _>>()?;
        let poles = self.plan.poles().iter().map(serde_json::to_value).collect::<Result<Vec<_>, _>>().map_err(unwritten)?;
        let figure = |length| json::length(length, self.bench.unburned()).map(Value::Object);
        let step = self.bench.tape.step();
        Ok(json!({
            "case": self.stored()?,
            "stock": self.job.named.iter().map(|named| json!({
                "of": named.of, "name": named.name, "by_name": named.nominal, "reckoned": named.actual,
                "least": named.panel.map(|panel| panel.minimum()), "most": named.panel.map(|panel| panel.maximum()),
            })).collect::<Vec<_>>(),
            "look_again": self.advice()?,
            "place": self.place_object()?,
            "order_of_work": self.steps(),
            "buy": self.bought.iter().map(bought_object).collect::<Vec<_>>(),
            "parts": parts,
            "levels": self.levels()?,
            "poles": poles,
            "stopped_dadoes": self.plan.stopped_dadoes().iter().map(|dado| {
                Ok(json!({ "panel": dado.panel, "short": figure(dado.short)?, "long": figure(dado.long)? }))
            }).collect::<Result<Vec<_>, Problem>>()?,
            "nail_lines": self.plan.nail_lines().iter().map(|line| {
                Ok(json!({ "at": json::length(line.at, self.bench)?, "from": line.from, "into": line.into }))
            }).collect::<Result<Vec<_>, Problem>>()?,
            "pockets": self.pockets(),
            "sums": self.plan.closings().iter().map(|closing| json!({
                "what": closing.what(), "whole": closing.whole(), "sum": closing.sum(), "closes": closing.is_closed(),
                "links": closing.links().iter().map(|(name, size)| json!({ "name": name, "size": size })).collect::<Vec<_>>(),
            })).collect::<Vec<_>>(),
            "diagonal": figure(self.plan.square(step).map_err(refused)?.mark())?,
            "tip_up": figure(self.plan.tip_up(step).map_err(refused)?.mark())?,
            "finish": self.plan.finished_area().map_err(refused)?,
            "sag": self.sag.as_ref().map(|sag| Ok::<_, Problem>(json!({
                "material": sag.material.name(), "span": figure(sag.span)?, "sag": figure(sag.depth)?, "limit": sag.limit.parts(),
                "greatest_span": figure(sag.greatest)?, "within": sag.is_within(), "source": sag.material.source().to_string(),
            }))).transpose()?,
            "seasons": self.seasons_object()?,
            "cautions": self.plan.cautions().iter().map(ToString::to_string).collect::<Vec<_>>(),
        }))
    }

    /// The job, with sizes in the place of names.
    fn stored(&self) -> Result<Value, Problem> {
        let mut case = serde_json::to_value(self.plan.case()).map_err(unwritten)?;
        let seasons = &self.job.seasons;
        let words = [
            ("name", Some(self.job.name.as_str())),
            ("material", self.job.material.as_deref()),
            ("load", self.job.load.as_deref()),
            ("species", seasons.species.as_deref()),
            ("sawn", seasons.sawn.map(SawnName::word)),
            ("coefficient", seasons.coefficient.as_deref()),
            ("moisture", seasons.moisture.as_deref()),
        ];
        json::extend(&mut case, words.into_iter().filter_map(|(name, word)| Some((name.to_owned(), word?.into()))));
        json::extend(&mut case, self.job.limit.map(|limit| ("limit".to_owned(), limit.into())));
        let solid = &seasons.solid;
        json::extend(&mut case, (!solid.is_empty()).then(|| ("solid".to_owned(), solid.clone().into())));
        if self.job.site != Site::OPEN {
            let site = serde_json::to_value(self.job.site).map_err(unwritten)?;
            json::extend(&mut case, [("site".to_owned(), site)]);
        }
        Ok(case)
    }

    fn part(&self, part: &CasePart) -> Result<Value, Problem> {
        type On = fn(&CasePart, &Tape, Length) -> Result<Reading, TapeError>;
        let figure = |sum: &Sum, on: On| {
            let bench = self.bench.unburned();
            let reading = on(part, &bench.tape, total(sum)?).map_err(|error| Problem::plain(error.to_string()))?;
            let mut object = Value::Object(json::reading_of(&reading, bench));
            json::extend(&mut object, [("from".to_owned(), self.bench.said(&sum.to_string()).into())]);
            Ok::<_, Problem>(object)
        };
        let length = |length| json::length(length, self.bench.unburned()).map(Value::Object);
        Ok(json!({
            "name": part.name(),
            "pieces": part.pieces().to_string(),
            "count": part.pieces().count(),
            "thickness": part.thickness(),
            "width": figure(part.width(), CasePart::width_on)?,
            "sawn_width": figure(part.sawn_width(), CasePart::width_on)?,
            "length": figure(part.length(), CasePart::length_on)?,
            "notch": part.notch().map(|notch| Ok::<_, Problem>(json!({
                "deep": length(notch.deep)?, "back": length(notch.back)?,
            }))).transpose()?,
            "turned": self.saw.turns(part),
            "shows": part.shows(),
        }))
    }

    fn levels(&self) -> Result<Value, Problem> {
        let levels = self.plan.levels();
        let place = |length| json::length(length, self.bench).map(Value::Object);
        let level = |level: &Level| Ok::<_, Problem>(json!({ "lower": place(level.lower)?, "upper": place(level.upper)? }));
        let as_cut = levels.openings_on(&self.bench.unburned().tape).map_err(|error| Problem::plain(error.to_string()))?;
        Ok(json!({
            "bottom": level(&levels.bottom)?,
            "shelves": levels.shelves.iter().map(level).collect::<Result<Vec<_>, _>>()?,
            "holes": levels.holes.iter().map(|hole| place(*hole)).collect::<Result<Vec<_>, _>>()?,
            "top": level(&levels.top)?,
            "openings": levels.openings().zip(as_cut).map(|(exact, cut)| json!({ "exact": exact, "as_cut": cut })).collect::<Vec<_>>(),
        }))
    }
}

fn bought_object(bought: &Bought) -> Value {
    let take = bought.plan.as_ref().ok();
    json!({
        "thickness": bought.thickness,
        "width": bought.width,
        "for": bought.parts,
        "pieces": take.map(|take| take.pieces.iter().map(|(count, length, width)| {
            json!({ "count": count, "length": length, "width": width })
        }).collect::<Vec<_>>()),
        "least": take.map(|take| take.is_least),
        "refused": bought.plan.as_ref().err(),
    })
}

#[allow(clippy::needless_pass_by_value)] // so that it can stand behind `map_err`
fn unwritten(error: serde_json::Error) -> Problem {
    Problem::plain(error.to_string())
}
