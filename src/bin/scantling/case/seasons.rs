//! How far the solid wood of a case moves with the seasons, where its wood and its moisture are named: help, not engineering.
//! The formula and the figures are left to the library.

use num_rational::Ratio;
use scantling::{Advice, Movement, MovingPart, Quantity, evaluate, species};
use serde_json::{Value, json};

use super::arguments::{SawnName, SeasonOptions};
use super::buying::Saw;
use super::job::Job;
use super::typed::unread;
use super::{Report, refused};
use crate::json;
use crate::problem::Problem;
use crate::words::mixed;

/// What stands below the figures.
pub const HELP: &str = "Across the grain alone: along it wood hardly moves. The coefficients are averages, good from 6 to 14 percent of\n\
moisture (from memory); measure the moisture of the wood itself.";

/// Past this, wood swells no more. From memory.
const MOST_PERCENT: i128 = 30;

/// What was said about the wood and its moisture, word by word.
#[derive(Default)]
pub struct Words {
    pub species: Option<String>,
    pub sawn: Option<SawnName>,
    pub coefficient: Option<String>,
    pub moisture: Option<String>,
    pub solid: Vec<String>,
}

impl Words {
    /// With what was typed: a wood in the place of a coefficient, and the other way round.
    pub fn typed(&mut self, options: &SeasonOptions) {
        if options.species.is_some() || options.coefficient.is_some() {
            self.species.clone_from(&options.species);
            self.coefficient.clone_from(&options.coefficient);
        }
        self.sawn = options.sawn.or(self.sawn);
        self.moisture = options.moisture.clone().or(self.moisture.take());
        if !options.solid.is_empty() {
            self.solid.clone_from(&options.solid);
        }
    }
}

/// The wood, and what it does.
pub struct Seasons {
    wood: String,
    source: Option<String>,
    from: Ratio<i128>,
    to: Ratio<i128>,
    parts: Vec<MovingPart>,
}

impl Seasons {
    pub fn advice(&self) -> impl Iterator<Item = &Advice> {
        self.parts.iter().filter_map(|part| part.advice.as_ref())
    }
}

pub fn seasons(job: &Job, plan: &scantling::CasePlan, saw: &Saw) -> Result<Option<Seasons>, Problem> {
    let words = &job.seasons;
    if let Some(unknown) = words.solid.iter().find(|solid| !plan.parts().iter().any(|part| part.name() == *solid)) {
        let names = plan.parts().iter().filter(|part| part.is_panel()).map(scantling::CasePart::name).collect::<Vec<_>>();
        return Err(Problem::plain(format!("--solid: the case has no {unknown}")).hint(format!("it has {}", names.join(", "))));
    }
    let (movement, wood, source) = match (&words.species, &words.coefficient) {
        (None, None) if words.moisture.is_none() && words.sawn.is_none() => return Ok(None),
        (None, None) => {
            return Err(Problem::plain("--moisture and --sawn say nothing without a wood").hint("--species \"red maple\""));
        }
        (Some(name), _) => of_species(name, words.sawn)?,
        (None, Some(_)) if words.sawn.is_some() => {
            return Err(Problem::plain("a coefficient is for one way of sawing: --sawn goes with --species"));
        }
        (None, Some(text)) => (coefficient(text)?, format!("wood of coefficient {text}"), None),
    };
    let Some(text) = &words.moisture else {
        return Err(Problem::plain("nothing says how the moisture of the wood changes").hint("--moisture 6:12"));
    };
    let [from, to] = moisture(text)?;
    let parts = plan.moving(movement, from, to, |part| saw.is_solid(part)).map_err(refused)?;
    Ok(Some(Seasons { wood, source, from, to, parts }))
}

fn of_species(name: &str, sawn: Option<SawnName>) -> Result<(Movement, String, Option<String>), Problem> {
    let row = species(name).map_err(refused)?;
    let (movement, how) = match sawn {
        Some(SawnName::Quarter) => (row.radial(), "quarter-sawn"),
        _ => (Some(row.tangential()), "flat-sawn"),
    };
    let none = || Problem::plain(format!("the table has no figure for quarter-sawn {}", row.name()));
    let movement = movement.ok_or_else(|| none().hint("bring your own: --coefficient 0.00190"))?;
    Ok((movement, format!("{}, {how}", row.name()), Some(row.source().to_string())))
}

fn coefficient(text: &str) -> Result<Movement, Problem> {
    let parts = match evaluate(text) {
        Ok(Quantity::Number(number)) => (number * 100_000).to_integer().try_into().ok().filter(|whole: &u32| {
            number > Ratio::from(0) && number < Ratio::new(1, 100) && Ratio::from(i128::from(*whole)) == number * 100_000
        }),
        _ => None,
    };
    parts.map(Movement::new).ok_or_else(|| unread("--coefficient", text, "the part of its width for each percent: 0.00190"))
}

fn moisture(text: &str) -> Result<[Ratio<i128>; 2], Problem> {
    let refusal = || unread("--moisture", text, "percent between 0 and 30, from what to what: 6:12");
    let percent = |text: &str| match evaluate(text.trim().trim_end_matches('%')) {
        Ok(Quantity::Number(number)) if number >= Ratio::from(0) && number <= Ratio::from(MOST_PERCENT) => Ok(number),
        _ => Err(refusal()),
    };
    let (from, to) = text.split_once(':').ok_or_else(refusal)?;
    Ok([percent(from)?, percent(to)?])
}

impl Report<'_> {
    pub(super) fn season_lines(&self) -> Vec<String> {
        let Some(seasons) = &self.seasons else { return Vec::new() };
        let bench = self.bench.unburned();
        let mut lines =
            vec![format!("{}, from {} to {} percent of moisture", seasons.wood, mixed(seasons.from), mixed(seasons.to))];
        for part in &seasons.parts {
            let how = match part.change {
                change if change.is_zero() => "keeps its width".into(),
                change if change.is_negative() => format!("shrinks {}", bench.decimal_amount(change.abs())),
                change => format!("swells {}", bench.decimal_amount(change)),
            };
            lines.push(format!("{}, {} wide: {how}", part.part, bench.mark(part.width)));
        }
        if seasons.parts.is_empty() {
            lines.push("the case has no solid part; --solid names panels that are".into());
        }
        lines.extend(seasons.source.as_ref().map(|source| format!("its coefficient is from {source}")));
        lines
    }

    pub(super) fn seasons_object(&self) -> Result<Option<Value>, Problem> {
        let Some(seasons) = &self.seasons else { return Ok(None) };
        let figure = |length| json::length(length, self.bench.unburned()).map(Value::Object);
        let part = |part: &MovingPart| {
            Ok::<_, Problem>(json!({
                "name": part.part, "width": figure(part.width)?, "change": figure(part.change)?, "binds": matches!(part.advice, Some(Advice::Binds { .. })),
            }))
        };
        Ok(Some(json!({
            "wood": seasons.wood, "from": mixed(seasons.from), "to": mixed(seasons.to), "source": seasons.source,
            "parts": seasons.parts.iter().map(part).collect::<Result<Vec<_>, _>>()?,
        })))
    }
}
