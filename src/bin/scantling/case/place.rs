//! The place that a case is built for: how it is typed, and what it says about the case. Whether the case goes in is left to
//! the library.

use scantling::{Length, LengthParser, Site};
use serde_json::{Value, json};

use super::arguments::PlaceOptions;
use super::typed::{measures, two};
use super::{Report, refused};
use crate::json;
use crate::problem::{self, Problem};

/// The place of a job, with what was typed.
pub fn place(site: &mut Site, options: &PlaceOptions, parser: LengthParser) -> Result<(), Problem> {
    if let Some(text) = &options.between_walls {
        let everywhere = || problem::read(parser, "--between-walls", text).map(|width| [width; 3]);
        let three = || measures("--between-walls", text, parser);
        site.widths = Some(if text.contains(':') { three() } else { everywhere() }?);
    }
    if let Some(text) = &options.scribe {
        site.scribes = two("--scribe", text, parser)?;
    }
    if let Some(text) = &options.floor {
        let rise = || match problem::read(parser, "--floor", text)? {
            high if high.is_negative() => {
                Err(Problem::plain(format!("--floor: the high point cannot lie {} below the low one", high.abs())))
            }
            high => Ok([high, Length::ZERO]),
        };
        site.floor = if text.contains(':') { measures("--floor", text, parser) } else { rise() }?;
    }
    if let Some(text) = &options.ceiling {
        site.ceiling = Some(problem::read(parser, "--ceiling", text)?);
    }
    match (site.widths, site.scribes.iter().any(|scribe| !scribe.is_zero())) {
        (None, true) => Err(Problem::plain("a strip is scribed to a wall, and there is none").hint("--between-walls 60")),
        _ => Ok(()),
    }
}

impl Report<'_> {
    /// What the place says about the case; nothing where none was measured.
    pub(super) fn place_lines(&self) -> Result<Vec<String>, Problem> {
        let (site, bench) = (&self.job.site, self.bench.unburned());
        let mut lines = self.between_walls()?;
        if let Some(shim) = site.shim().filter(|shim| !shim.is_zero()) {
            let shim = bench.mark(shim);
            lines.push(format!("Level the case from the high point of the floor: shims of up to {shim} at the low one."));
        }
        if let Some(ceiling) = site.ceiling {
            let tip_up = self.plan.tip_up(bench.tape.step()).map_err(refused)?.mark();
            lines.push(format!(
                "Ceiling {} above the high point of the floor: the case takes {} standing, {} tipped up.",
                bench.mark_in_feet_too(ceiling),
                bench.mark(self.plan.case().height),
                bench.mark(tip_up)
            ));
        }
        Ok(lines)
    }

    /// The room between the walls, how the case fills it, and what is scribed to them.
    fn between_walls(&self) -> Result<Vec<String>, Problem> {
        let (site, bench) = (&self.job.site, self.bench.unburned());
        let (Some(narrowest), Some(room)) = (site.narrowest(), site.box_width().map_err(refused)?) else {
            return Ok(Vec::new());
        };
        let walls = bench.mark_in_feet_too(narrowest);
        let [left, right] = site.scribes.map(|scribe| bench.mark(scribe));
        let scribed = match site.scribes {
            [Length::ZERO, Length::ZERO] => ".".into(),
            _ => format!("; scribing takes {left} at the left, {right} at the right: room for {}.", bench.mark(room)),
        };
        let full = self.plan.full_width().map_err(refused)?;
        let spare = room.checked_sub(full).filter(|spare| !spare.is_negative());
        let over_all = bench.mark(full);
        let fills = match spare {
            Some(Length::ZERO) => format!("The case fills it: {over_all} over all."),
            Some(spare) => format!("The case is {over_all} over all and leaves {} of it.", bench.mark(spare)),
            None => format!("The case is {over_all} over all, and does NOT go in."),
        };
        let mut lines = vec![format!("Between the walls {walls} at the narrowest{scribed}"), fills];
        lines.extend(self.strips(spare));
        Ok(lines)
    }

    /// As long as the case is high; what the case leaves of the room is theirs to fill.
    fn strips(&self, spare: Option<Length>) -> Option<String> {
        let (site, bench) = (&self.job.site, self.bench.unburned());
        let strips = site.strips().filter(|_| site.scribes.iter().any(|scribe| !scribe.is_zero()))?;
        let [left, right] = [0, 1].map(|side| match site.scribes[side] {
            scribe if scribe.is_zero() => "none".to_owned(),
            _ => format!("{} wide", bench.mark(strips[side])),
        });
        let more = match spare {
            None | Some(Length::ZERO) => String::new(),
            Some(spare) => format!(", {} more to share between them", bench.mark(spare)),
        };
        let long = bench.mark(self.plan.case().height);
        Some(format!(
            "Scribe strips, rough and not in the cut list: {left} at the left, {right} at the right{more}, {long} long, as the walls run out; scribe each to its wall."
        ))
    }

    pub(super) fn place_object(&self) -> Result<Option<Value>, Problem> {
        let site = &self.job.site;
        if *site == Site::OPEN {
            return Ok(None);
        }
        let figure = |length| json::length(length, self.bench.unburned()).map(Value::Object);
        let some = |length: Option<Length>| length.map(figure).transpose();
        Ok(Some(json!({
            "narrowest": some(site.narrowest())?,
            "room": some(site.box_width().map_err(refused)?)?,
            "full_width": figure(self.plan.full_width().map_err(refused)?)?,
            "strips": site.strips().map(|strips| strips.map(figure).into_iter().collect::<Result<Vec<_>, _>>()).transpose()?,
            "shim": some(site.shim())?,
            "ceiling": some(site.ceiling)?,
        })))
    }
}
