//! The job sheet: one file that needs no other, for the phone in the shop and for paper. Every figure in it is one of the
//! text or of the plan; the picture is left to `elevation.rs`, each list to `lists.rs`.

use maud::{DOCTYPE, Markup, PreEscaped, html};

use super::text::{MIRRORED, unbroken};
use super::{Report, seasons, strength};
use crate::Outcome;
use crate::problem::Problem;

mod elevation;
mod lists;

/// Letter and A4 alike, and no wider than a phone.
const STYLE: &str = include_str!("style.css");

impl Report<'_> {
    pub(super) fn html(&self) -> Outcome {
        let page = html! {
            (DOCTYPE)
            html lang="en" {
                head {
                    meta charset="utf-8";
                    meta name="viewport" content="width=device-width, initial-scale=1";
                    title { (self.job.name) }
                    style { (PreEscaped(STYLE)) }
                }
                body { (self.body()?) }
            }
        };
        Ok(page.into_string() + "\n")
    }

    fn body(&self) -> Result<Markup, Problem> {
        let (advice, place, moving) = (self.advice()?, self.place_lines()?, self.season_lines());
        Ok(html! {
            h1 { bdi { (self.job.name) } }
            p { (whole(&self.overall())) }
            p.small { "Tape: " (self.bench.tape_in_words(self.options.tape.round)) "; a part that goes inside another to the one below." }
            @for line in self.named() { p.small { "Stock: " (whole(&line)) } }
            @if !advice.is_empty() {
                section.warn { h2 { "Look again before you cut" } (lines(&advice)) }
            }
            (self.elevation())
            @if !place.is_empty() { section { h2 { "Place" } ul.ticks.hang { @for line in &place { li { (tick()) (whole(line)) } } } } }
            section { h2 { "Order of work" } ol.ticks { @for step in self.steps() { li { (tick()) (whole(&step)) } } } }
            section { h2 { "Buy" } (self.buy_list()) }
            section { h2 { "Cut list" } p.small { "Thick × wide × long; the length runs with the grain." } (self.part_list()?) }
            @for pole in self.different_poles() {
                section {
                    h2 { "Story pole: " (pole.name()) @if pole.hand().is_some() { ", left and right" } }
                    (self.pole_table(pole)?)
                    @if pole.hand().is_some() { p.small { (MIRRORED) } }
                }
            }
            (self.openings_section()?)
            section { h2 { "Nails and screws" } p.small { "Common practice, no source." } (self.nail_table()?) (lines(&self.pockets())) }
            section { h2 { "Sums that close, exactly" } @for closing in self.closings() { p { (whole(&closing)) } } }
            section { h2 { "Checks" } ul.ticks.hang { @for check in self.checks()? { li { (tick()) (whole(&check)) } } } }
            @if !self.sag_lines().is_empty() {
                section { h2 { "Shelves under load" } (lines(&self.sag_lines())) p.small { (strength::HELP) } }
            }
            @if !moving.is_empty() {
                section { h2 { "Solid wood through the seasons" } (lines(&moving)) p.small { (seasons::HELP) } }
            }
            section.warn { h2 { "Cautions" } ul { @for caution in self.plan.cautions() { li { (caution) } } } }
        })
    }
}

fn lines(lines: &[String]) -> Markup {
    html! { ul { @for line in lines { li { (whole(line)) } } } }
}

/// A box to tick.
fn tick() -> Markup {
    html! { input type="checkbox" aria-label="done"; " " }
}

/// A text whose figures stay whole at the end of a line, where browsers break behind a hyphen, too.
fn whole(text: &str) -> String {
    let mut whole = String::new();
    let mut rest = unbroken(text);
    while let Some(place) = rest.find('-') {
        let after = rest.split_off(place + 1);
        let is_joint = rest[..place].ends_with(|last: char| last.is_ascii_digit())
            && after.starts_with(|first: char| first.is_ascii_digit());
        whole += &rest;
        if is_joint {
            whole.push(WORD_JOINER);
        }
        rest = after;
    }
    whole + &rest
}

const WORD_JOINER: char = '\u{2060}';
