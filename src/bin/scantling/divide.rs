//! `scantling divide`: a run divided into equal parts or equal openings, and the marks to make.

use std::fmt::Write as _;

use scantling::{Edge, End, Layout, Length, LengthParser, OnTape, Spacing};
use serde_json::{Value, json};

use crate::arguments::Divide;
use crate::problem::{self, Problem};
use crate::table::table;
use crate::words::Bench;
use crate::{Outcome, json};

/// More marks than this are no list that a person works from.
const MOST_MARKS: usize = 10_000;
/// Openings are listed one by one up to here, and counted by size beyond.
const MOST_OPENINGS_LISTED: usize = 12;

pub fn run(options: &Divide) -> Outcome {
    let parser = options.notation.parser();
    let bench = Bench::new(&options.tape, parser)?;
    let run = problem::read(parser, "", &options.run)?;
    let thickness = options.thickness.as_deref().map(|text| problem::read(parser, "--thickness", text)).transpose()?;
    let marks = options.members.or(options.into).unwrap_or_default();
    let layout = spacing(options, thickness, parser)?.over(run).map_err(|error| Problem::plain(error.to_string()))?;
    if marks > MOST_MARKS {
        return Err(Problem::plain(format!("{marks} are too many to list: at most {MOST_MARKS}")));
    }
    let on_tape = layout.on_edge(&bench.tape, options.edge.into()).map_err(|error| Problem::plain(error.to_string()))?;
    if let Some(overlap) = on_tape.gaps().find(|gap| gap.is_negative()) {
        let overlap = bench.amount(overlap.abs());
        return Err(Problem::plain(format!("marked with this tape, two members would overlap by {overlap}"))
            .hint("take a tape with finer graduations, fewer members or thinner ones"));
    }
    let report = Report { options, bench, layout: &layout, on_tape: &on_tape, thickness };
    if options.json { Ok(format!("{}\n", report.object())) } else { Ok(report.text()) }
}

fn spacing(options: &Divide, thickness: Option<Length>, parser: LengthParser) -> Result<Spacing, Problem> {
    match (options.members, thickness) {
        (Some(members), Some(thickness)) => Ok(Spacing::equal_openings(members, thickness)
            .near_end(end("--near-end", &options.near_end, parser)?)
            .far_end(end("--far-end", &options.far_end, parser)?)),
        _ => Ok(Spacing::equal_parts(options.into.unwrap_or_default())),
    }
}

fn end(option: &str, text: &str, parser: LengthParser) -> Result<End, Problem> {
    match text {
        "gap" => Ok(End::Gap),
        "half-gap" | "half" => Ok(End::HalfGap),
        "flush" => Ok(End::Flush),
        _ => problem::read(parser, option, text)
            .map(End::Margin)
            .map_err(|problem| problem.hint("an end is gap, half-gap, flush, or a margin such as 2-1/2")),
    }
}

struct Report<'a> {
    options: &'a Divide,
    bench: Bench,
    layout: &'a Layout,
    on_tape: &'a OnTape<'a>,
    thickness: Option<Length>,
}

impl Report<'_> {
    fn text(&self) -> String {
        let mut text = self.heading();
        if self.layout.marks().len() > 0 {
            let _ = write!(text, "\n{}\n\n{}", self.how_to_mark(), self.marks());
        }
        text + "\n" + &self.openings()
    }

    /// What the run is, so that nobody takes it for another.
    fn heading(&self) -> String {
        let mut text = format!("Run      {}", self.bench.mark_in_feet_too(self.layout.run()));
        if let Some(thickness) = self.thickness {
            let (count, thickness) = (self.layout.members(), self.bench.mark(thickness));
            let _ = write!(text, ", {}\nMembers  {count}, each {thickness} along the run", self.ends());
        } else {
            let parts = self.options.into.unwrap_or_default();
            let _ = write!(text, ", into {parts} equal part{}", if parts == 1 { "" } else { "s" });
        }
        let _ = writeln!(text, "\nTape     {}", self.bench.tape_in_words(self.options.tape.round));
        text
    }

    fn ends(&self) -> String {
        let (near, far) = (end_in_words(&self.options.near_end), end_in_words(&self.options.far_end));
        if near == far { format!("{near} at each end") } else { format!("{near} at the near end, {far} at the far end") }
    }

    fn how_to_mark(&self) -> String {
        let datum = self.bench.tape.datum_reading();
        let hook = if datum.is_zero() {
            "Hook the tape at the near end and leave it there for every mark.".into()
        } else {
            let burned = self.bench.mark(datum);
            format!(
                "Lay the {burned} line of the tape on the near end and leave it there for every mark:\n\
                 the tape then shows {burned} more than each exact place."
            )
        };
        let side = match (self.thickness, self.on_tape.edge()) {
            (None, _) => "Each line ends one part and begins the next.",
            (_, Edge::Near) => "The line is the near edge of the member: the member lies past it, away from the near end.",
            (_, Edge::Center) => "The line is the center of the member: half of it lies on each side.",
            (_, Edge::Far) => "The line is the far edge of the member: the member lies before it, toward the near end.",
        };
        format!("{hook}\n{side}")
    }

    fn marks(&self) -> String {
        let (what, edge) = match (self.thickness, self.on_tape.edge()) {
            (None, _) => ("line", "line at"),
            (_, Edge::Near) => ("member", "near edge at"),
            (_, Edge::Center) => ("member", "center at"),
            (_, Edge::Far) => ("member", "far edge at"),
        };
        let rows = self.on_tape.marks().map(|mark| {
            let reading = mark.reading();
            [
                mark.number().to_string(),
                self.bench.mark(reading.shown()),
                self.bench.lean(&reading),
                self.bench.exact(reading.true_position()),
            ]
        });
        table([what, edge, "true place is", "exact place"], ['r', 'r', 'l', 'r'], rows)
    }

    fn openings(&self) -> String {
        let name = if self.thickness.is_some() { "opening" } else { "part" };
        let cut: Vec<_> = self.cut().collect();
        let mut text = format!("Each full {name} is {} exactly.\n", self.bench.exact(self.layout.opening()));
        let _ = writeln!(text, "As cut, from the near end: {}.", self.sizes(cut));
        for (end, gap) in self.ends_as_cut() {
            let _ = writeln!(text, "At the {end} end, as cut: {}.", self.bench.amount(gap));
        }
        let spread = self.spread();
        if spread.is_zero() {
            let _ = writeln!(text, "The full {name}s will be equal as cut.");
        } else {
            let _ = writeln!(text, "The widest and the narrowest full {name} differ by {}.", self.bench.amount(spread));
        }
        let worst = self.on_tape.worst();
        if !worst.is_zero() {
            let _ = writeln!(text, "No mark is off its true place by more than {}.", self.bench.amount(worst));
        }
        text
    }

    /// The full openings as cut. What is at an end and is something else has a line of its own.
    fn cut(&self) -> impl Iterator<Item = Length> {
        let full = self.layout.gaps().map(|gap| gap == self.layout.opening());
        self.on_tape.gaps().zip(full).filter(|(_, full)| *full).map(|(gap, _)| gap)
    }

    /// How far the full openings will differ, whatever is at the ends.
    fn spread(&self) -> Length {
        let widest = self.cut().max().unwrap_or_default();
        widest - self.cut().min().unwrap_or_default()
    }

    /// Half openings and margins at the ends; where a member is flush there is neither.
    fn ends_as_cut(&self) -> impl Iterator<Item = (&'static str, Length)> {
        let last = self.layout.members();
        let name = move |place| if place == 0 { "near" } else { "far" };
        let ends =
            self.on_tape.gaps().enumerate().zip(self.layout.gaps()).filter(move |((place, _), _)| [0, last].contains(place));
        let odd = ends.filter(|(_, exact)| *exact != self.layout.opening() && !exact.is_zero());
        odd.map(move |((place, gap), _)| (name(place), gap))
    }

    /// One by one, or counted by size where there are many.
    fn sizes(&self, cut: Vec<Length>) -> String {
        let amounts: Vec<_> = if cut.len() <= MOST_OPENINGS_LISTED {
            cut.into_iter().map(|gap| self.bench.amount(gap)).collect()
        } else {
            let mut counted = std::collections::BTreeMap::new();
            for gap in cut {
                *counted.entry(gap).or_insert(0_usize) += 1;
            }
            counted.into_iter().map(|(gap, count)| format!("{count} of {}", self.bench.amount(gap))).collect()
        };
        amounts.join(", ")
    }

    fn object(&self) -> Value {
        let figure = |length| json::length(length, self.bench.unburned()).map_or(Value::Null, Value::Object);
        let marks = self.on_tape.marks().map(|mark| {
            let mut object = json!({ "number": mark.number() });
            json::extend(&mut object, json::reading_of(&mark.reading(), self.bench));
            object
        });
        json!({
            "run": figure(self.layout.run()),
            "members": self.layout.members(),
            "thickness": self.thickness.map(figure),
            "near_end": self.options.near_end,
            "far_end": self.options.far_end,
            "edge": match (self.thickness, self.on_tape.edge()) {
                (None, _) => "line",
                (_, Edge::Near) => "near",
                (_, Edge::Center) => "center",
                (_, Edge::Far) => "far",
            },
            "graduation": json::in_words(self.bench.tape.step(), self.bench),
            "burned": json::in_words(self.bench.tape.datum_reading(), self.bench),
            "opening": figure(self.layout.opening()),
            "marks": marks.collect::<Vec<_>>(),
            "as_cut": self.cut().map(figure).collect::<Vec<_>>(),
            "ends_as_cut": self.ends_as_cut().map(|(end, gap)| (end.to_owned(), figure(gap))).collect::<serde_json::Map<_, _>>(),
            "spread": figure(self.spread()),
            "worst": figure(self.on_tape.worst()),
        })
    }
}

fn end_in_words(end: &str) -> String {
    match end {
        "gap" => "an opening".into(),
        "half-gap" | "half" => "half an opening".into(),
        "flush" => "a member flush".into(),
        margin => format!("a margin of {margin}"),
    }
}
