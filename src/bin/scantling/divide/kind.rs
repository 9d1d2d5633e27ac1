//! The options of `scantling divide` made into a spacing of the library, and what it is called: one function
//! for each way to divide a run. What stands at the ends, is held or limited goes with any of them.

use std::collections::BTreeSet;

use num_rational::Ratio;
use scantling::{End, First, Growth, Length, LengthParser, Narrowest, Quantity, Spacing, Widest, evaluate};

use super::MOST_MARKS;
use super::arguments::Divide;
use crate::arguments::typed;
use crate::problem::{self, Problem};
use crate::words::Bench;

/// A spacing with what a person needs to be told of it.
pub struct Plan {
    pub spacing: Spacing,
    /// How the run is divided, where the members and the ends do not say it all.
    pub rules: Vec<String>,
    /// What all members have; none where there are lines, or several widths.
    pub thickness: Option<Length>,
    pub widths: Vec<Length>,
    /// Whether the openings are all meant to be equal, but for the ends.
    pub is_equal: bool,
}

impl Plan {
    fn equal(spacing: Spacing, thickness: Option<Length>) -> Self {
        Self { spacing, rules: Vec::new(), thickness, widths: Vec::new(), is_equal: true }
    }

    fn uneven(spacing: Spacing, thickness: Length, rule: String) -> Self {
        Self { spacing, rules: vec![rule], thickness: Some(thickness), widths: Vec::new(), is_equal: false }
    }

    /// Whether what is marked are lines without width, and what lies between them parts.
    pub fn is_of_parts(&self) -> bool {
        self.thickness.is_none() && self.widths.is_empty()
    }

    pub fn gap_name(&self) -> &'static str {
        if self.is_of_parts() { "part" } else { "opening" }
    }
}

/// What options are read with, and said in.
struct Reader<'a> {
    options: &'a Divide,
    parser: LengthParser,
    bench: Bench,
    limits: (Option<Widest>, Option<Narrowest>),
}

pub fn plan(options: &Divide, parser: LengthParser, bench: Bench) -> Result<Plan, Problem> {
    let mut reader = Reader { options, parser, bench, limits: (None, None) };
    reader.limits = (reader.widest()?, reader.narrowest()?);
    let mut plan = reader.rule()?;
    plan.spacing = plan.spacing.near_end(reader.end("--near-end", &options.ends.near_end)?);
    plan.spacing = plan.spacing.far_end(reader.end("--far-end", &options.ends.far_end)?);
    reader.hold(reader.limit(plan))
}

impl Reader<'_> {
    fn length(&self, option: &str, text: &str) -> Result<Length, Problem> {
        problem::read(self.parser, option, text)
    }

    fn optional(&self, option: &str, text: Option<&String>) -> Result<Option<Length>, Problem> {
        text.map(|text| self.length(option, text)).transpose()
    }

    fn rule(&self) -> Result<Plan, Problem> {
        let rule = &self.options.rule;
        let given = self.optional("--thickness", rule.thickness.as_ref())?;
        let thickness = given.unwrap_or_default();
        if let Some(parts) = rule.into {
            return Ok(Plan::equal(Spacing::equal_parts(parts), None));
        }
        if let Some(members) = rule.members {
            return Ok(Plan::equal(Spacing::equal_openings(members, thickness), given));
        }
        match (&rule.about, &rule.on_center, &rule.shares, rule.drawers) {
            (Some(about), ..) => self.about(about, given),
            (_, Some(pitch), ..) => self.on_center(pitch, thickness),
            (_, _, Some(shares), _) => proportional(shares, thickness),
            (.., Some(drawers)) => self.drawers(drawers, thickness),
            _ if rule.widths.is_empty() => self.counted(given),
            _ => self.widths(),
        }
    }

    fn about(&self, text: &str, thickness: Option<Length>) -> Result<Plan, Problem> {
        let about = self.length("--about", text)?;
        let spacing = Spacing::nearest_openings(thickness.unwrap_or_default(), about);
        let plan = Plan::equal(spacing, thickness);
        let rule = format!("equal {}s, as near to {} as they come", plan.gap_name(), self.bench.mark(about));
        Ok(Plan { rules: vec![rule], ..plan })
    }

    /// The limits themselves are put to the spacing where they are put to any other.
    fn counted(&self, thickness: Option<Length>) -> Result<Plan, Problem> {
        if self.limits == (None, None) {
            return Err(Problem::plain("nothing says how to divide the run")
                .hint("such as --into 5, --members 5 --thickness 3/4, or another way that `scantling help divide` lists"));
        }
        let Some(thickness) = thickness else {
            return Err(Problem::plain("a limit alone sets the number of members, and nothing says how thick they are")
                .hint("--thickness says it, 0 for lines"));
        };
        let (spacing, count) = match self.limits {
            (None, Some(narrowest)) => (Spacing::most_members(thickness, narrowest), "most"),
            (widest, _) => (Spacing::fewest_members(thickness, widest.unwrap_or(Widest::GUARD)), "fewest"),
        };
        let rule = format!("the {count} members that keep");
        Ok(Plan { rules: vec![rule], ..Plan::equal(spacing, Some(thickness)) })
    }

    fn on_center(&self, text: &str, thickness: Length) -> Result<Plan, Problem> {
        let pitch = self.length("--on-center", text)?;
        let first = self.first(pitch)?;
        let rule = format!("{} on center, {}", self.bench.mark(pitch), self.first_in_words(first));
        Ok(Plan::uneven(Spacing::on_center(pitch, thickness, first), thickness, rule))
    }

    fn first(&self, pitch: Length) -> Result<First, Problem> {
        let first = &self.options.first;
        Ok(match (&first.center_at, &first.face_at, &first.off_center_line) {
            (Some(text), ..) => First::CenterAt(self.length("--center-at", text)?),
            (_, Some(text), _) => First::FaceAt(self.length("--face-at", text)?),
            (.., Some(text)) => First::OffCenterLine(self.length("--off-center-line", text)?),
            _ if first.shared => First::Shared,
            _ => First::CenterAt(pitch),
        })
    }

    fn first_in_words(&self, first: First) -> String {
        match first {
            First::CenterAt(center) => format!("the first center {} from the near end", self.bench.mark(center)),
            First::FaceAt(face) => format!("the first near face {} from the near end", self.bench.mark(face)),
            First::OffCenterLine(off) if off.is_zero() => "one on the center line".into(),
            First::OffCenterLine(off) => format!("the first centers {} to either side of the center line", self.bench.mark(off)),
            _ => "the same remainder at both ends".into(),
        }
    }

    fn widths(&self) -> Result<Plan, Problem> {
        let texts = &self.options.rule.widths;
        let widths = texts.iter().map(|text| self.length("--widths", text)).collect::<Result<Vec<_>, _>>()?;
        let spacing = Spacing::unequal_members(widths.iter().copied());
        Ok(Plan { widths, ..Plan::equal(spacing, None) })
    }

    fn drawers(&self, count: usize, divider: Length) -> Result<Plan, Problem> {
        if count > MOST_MARKS {
            return Err(super::too_many(count));
        }
        let (growth, in_words) = self.growth()?;
        let (spacing, end) = if self.options.growth.from_bottom {
            (Spacing::drawers_from_bottom(count, divider, growth), "bottom")
        } else {
            (Spacing::drawers_from_top(count, divider, growth), "top")
        };
        let drawers = if count == 1 { "drawer" } else { "drawers" };
        let rule = format!("{count} {drawers}, {in_words}; the near end is the {end}");
        Ok(Plan::uneven(spacing, divider, rule))
    }

    fn growth(&self) -> Result<(Growth, String), Problem> {
        let growth = &self.options.growth;
        if let Some(text) = &growth.grow_times {
            let ratio = ratio("--grow-times", typed(text))?;
            return Ok((Growth::Ratio(ratio), format!("each lower one {} times as tall", crate::words::mixed(ratio))));
        }
        let read = |option, text| self.length(option, text).map(|length| (length, self.bench.mark(length)));
        Ok(match (&growth.grow_by, &growth.top, &growth.bottom) {
            (Some(text), ..) => {
                read("--grow-by", text).map(|(step, said)| (Growth::Step(step), format!("each lower one taller by {said}")))?
            }
            (_, Some(text), _) => read("--top", text).map(|(top, said)| (Growth::Top(top), format!("the top one {said}")))?,
            (.., Some(text)) => {
                read("--bottom", text).map(|(bottom, said)| (Growth::Bottom(bottom), format!("the bottom one {said}")))?
            }
            _ => (Growth::Step(Length::ZERO), "all equal".into()),
        })
    }

    fn end(&self, option: &str, text: &str) -> Result<End, Problem> {
        match text {
            "gap" => Ok(End::Gap),
            "half-gap" | "half" => Ok(End::HalfGap),
            "flush" => Ok(End::Flush),
            _ => self
                .length(option, text)
                .map(End::Margin)
                .map_err(|problem| problem.hint("an end is gap, half-gap, flush, or a margin such as 2-1/2")),
        }
    }

    fn widest(&self) -> Result<Option<Widest>, Problem> {
        let limits = &self.options.limits;
        if limits.guard {
            return Ok(Some(Widest::GUARD));
        }
        let widest = self.optional("--widest", limits.widest.as_ref())?.map(Widest::AtMost);
        let under = self.optional("--under", limits.under.as_ref())?.map(Widest::Under);
        Ok(widest.or(under))
    }

    fn narrowest(&self) -> Result<Option<Narrowest>, Problem> {
        let limits = &self.options.limits;
        let narrowest = self.optional("--narrowest", limits.narrowest.as_ref())?.map(Narrowest::AtLeast);
        let over = self.optional("--over", limits.over.as_ref())?.map(Narrowest::Over);
        Ok(narrowest.or(over))
    }

    fn limit(&self, mut plan: Plan) -> Plan {
        let (widest, narrowest) = self.limits;
        let name = plan.gap_name();
        if let Some(widest) = widest {
            let how = if matches!(widest, Widest::Under(_)) { "under" } else { "at most" };
            plan.rules.push(format!("every {name} {how} {} as cut", self.bench.mark(widest.length())));
            plan.spacing = plan.spacing.widest(widest);
        }
        if let Some(narrowest) = narrowest {
            let how = if matches!(narrowest, Narrowest::Over(_)) { "over" } else { "at least" };
            plan.rules.push(format!("every full {name} {how} {} as cut", self.bench.mark(narrowest.length())));
            plan.spacing = plan.spacing.narrowest(narrowest);
        }
        if widest.is_some() || narrowest.is_some() {
            plan.spacing = plan.spacing.as_cut_at(&self.bench.tape, self.options.edge.into());
        }
        plan
    }

    fn hold(&self, mut plan: Plan) -> Result<Plan, Problem> {
        let mut held = BTreeSet::new();
        for text in &self.options.ends.hold {
            let (after, opening) = self.held(text)?;
            let place = if after == 0 { "the first opening".into() } else { format!("the opening after member {after}") };
            if !held.insert(after) {
                return Err(Problem::plain(format!("--hold: {place} is held twice")));
            }
            plan.rules.push(format!("{place} held to {}", self.bench.mark(opening)));
            plan.spacing = plan.spacing.hold(after, opening);
            plan.is_equal = false;
        }
        Ok(plan)
    }

    fn held(&self, text: &str) -> Result<(usize, Length), Problem> {
        let parts = text.split_once('=').and_then(|(after, opening)| Some((after.trim().parse().ok()?, opening)));
        let (after, opening) = parts.ok_or_else(|| {
            Problem::plain(format!("--hold: a member's number, = and a length, not {}", typed(text)))
                .hint("2=18 holds the opening after member 2 to 18, 0=18 the one before the first")
        })?;
        self.length("--hold", opening).map(|opening| (after, opening))
    }
}

fn ratio(option: &str, text: &str) -> Result<Ratio<i128>, Problem> {
    match evaluate(text) {
        Ok(Quantity::Number(ratio)) => Ok(ratio),
        Ok(_) => Err(Problem::plain(format!("{option}: a number such as 2 or 6/5, not {text}"))),
        Err(error) => Err(Problem::unread(option, text, error)),
    }
}

fn proportional(text: &str, divider: Length) -> Result<Plan, Problem> {
    let shares = text.split(':').map(|share| share.trim().parse().ok()).collect::<Option<Vec<u64>>>();
    let shares = shares.ok_or_else(|| {
        Problem::plain(format!("--shares: whole numbers with colons between them, not {}", typed(text)))
            .hint("3:2:2 makes the first opening half as large again as the other two")
    })?;
    let in_words = shares.iter().map(u64::to_string).collect::<Vec<_>>().join(" : ");
    Ok(Plan::uneven(Spacing::proportional(shares, divider), divider, format!("openings as {in_words}")))
}
