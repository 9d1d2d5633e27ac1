//! The lists and tables of the job sheet. Which figures they show is left to the plan, how each is said to `words.rs`.

use maud::{Markup, html};
use scantling::{CasePart, Datum, Mark, PartSide, StoryPole};

use super::super::buying::{Bought, FINISHED};
use super::super::{Report, total};
use super::{tick, whole};
use crate::problem::Problem;

/// So many boxes to tick for a part; more have one for all.
const MOST_TICKS: u64 = 12;

impl Report<'_> {
    pub(super) fn buy_list(&self) -> Markup {
        html! {
            ul.ticks.hang {
                @for bought in &self.bought {
                    li { (tick()) (whole(&self.take(bought))) " " span.small { "for " (bought.parts.join(", ")) } }
                }
            }
            @if self.bought.iter().any(Bought::is_ripped) { p.small { (FINISHED) } }
        }
    }

    pub(super) fn part_list(&self) -> Result<Markup, Problem> {
        let parts = self.plan.parts().iter().map(|part| self.part_item(part)).collect::<Result<Vec<_>, _>>()?;
        Ok(html! { ul.ticks { @for part in parts { (part) } } })
    }

    fn part_item(&self, part: &CasePart) -> Result<Markup, Problem> {
        let (width, length) = (total(part.sawn_width())?, total(part.length())?);
        let tape = [self.thick(part.thickness()), self.wide(part, width)?, self.long(part, length)?];
        let exact = self.exactly(part)?;
        let count = part.pieces().count();
        let ticks = if count > MOST_TICKS { 1 } else { count };
        Ok(html! {
            li {
                @for _ in 0..ticks { (tick()) }
                strong { (part.pieces()) " " (part.name()) }
                span.size { (whole(&tape.join(" × "))) }
                span.small {
                    "exactly " (whole(&exact.join(" × ")))
                    @for (what, from) in self.origin(part) { br; (what) ": " (whole(&from)) }
                }
            }
        })
    }

    pub(super) fn pole_table(&self, pole: &StoryPole) -> Result<Markup, Problem> {
        let long = self.bench.unburned().mark_in_feet_too(pole.length());
        let mut rows = Vec::new();
        for row in pole.rows() {
            let marks = row.marks().iter().map(|mark| self.mark_row(mark, pole.datum())).collect::<Result<Vec<_>, _>>()?;
            rows.push((row.name(), marks));
        }
        Ok(html! {
            p.small { (whole(&long)) " long; hook the tape at the " (pole.datum()) " end and leave it there. The X goes where the part lies." }
            @for (name, marks) in rows {
                h3 { (name) }
                table {
                    thead { tr { th { "line at" } th { "mark" } th { "the X goes" } } }
                    tbody { @for mark in marks { (mark) } }
                }
            }
        })
    }

    fn mark_row(&self, mark: &Mark, datum: Datum) -> Result<Markup, Problem> {
        let read = |place| self.bench.tape.read(place).map_err(|error| Problem::plain(error.to_string()));
        let reading = read(mark.position)?;
        let edges = mark.thickness.and(mark.checked_edges());
        let far = match (mark.side, edges) {
            (PartSide::Past, Some((_, far))) | (PartSide::Before, Some((far, _))) => Some(self.bench.mark(read(far)?.shown())),
            _ => None,
        };
        Ok(html! {
            tr {
                td { span.mark { (tick()) (whole(&self.bench.mark(reading.shown()))) } br; span.small { (whole(&self.bench.lean(&reading))) } }
                td { (mark.name) br; span.small { "exactly " (whole(&self.bench.exact(mark.position))) } }
                td {
                    (on_which_side(mark.side, datum))
                    @if let Some(far) = far { ", to " (whole(&far)) }
                }
            }
        })
    }

    pub(super) fn openings_section(&self) -> Result<Markup, Problem> {
        let openings = self.openings()?;
        Ok(html! {
            @if !openings.is_empty() {
                section {
                    h2 { "Openings, from the lowest" }
                    table {
                        thead { tr { th { "opening" } th { "as cut" } th { "exactly" } } }
                        tbody { @for [number, cut, exact] in openings { tr { td { (number) } td { strong { (whole(&cut)) } } td { (whole(&exact)) } } } }
                    }
                }
            }
        })
    }

    pub(super) fn nail_table(&self) -> Result<Markup, Problem> {
        let lines = self.nail_lines()?;
        Ok(html! {
            @if !lines.is_empty() {
                table {
                    thead { tr { th { "nail line at" } th { "measured" } } }
                    tbody {
                        @for [mark, exact, measured] in lines {
                            tr { td { span.mark { (whole(&mark)) } br; span.small { "exactly " (whole(&exact)) } } td { (measured) } }
                        }
                    }
                }
            }
        })
    }
}

/// Where the part lies, as one sees it who looks along the pole.
const fn on_which_side(side: PartSide, datum: Datum) -> &'static str {
    match (side, datum) {
        (PartSide::Line, _) => "no X: a line alone",
        (PartSide::Centered, _) => "on both sides of it",
        (PartSide::Past, Datum::Bottom) | (PartSide::Before, Datum::Top) => "above it",
        (PartSide::Past, Datum::Top) | (PartSide::Before, Datum::Bottom) => "below it",
        (PartSide::Past, Datum::Left) | (PartSide::Before, Datum::Right) => "to the right of it",
        (PartSide::Past, Datum::Right) | (PartSide::Before, Datum::Left) => "to the left of it",
    }
}
