//! The lines above the table: what the run is, so that nobody takes it for another, and how to mark it.

use std::fmt::Write as _;

use scantling::Edge;

use super::Report;

/// What goes with a guard, always.
pub const CAUTION: &str = "Under 4\" is the general rule of the International Residential Code, R312.1.3 (2018); stairs and\n\
    other codes have other sizes. Ask the local building department before you build, and measure what was built.";
/// Widths are listed one by one up to here.
const MOST_WIDTHS_LISTED: usize = 12;

impl Report<'_> {
    pub(super) fn heading(&self) -> String {
        let mut text = format!("Run      {}", self.bench.mark_in_feet_too(self.layout.run()));
        if self.plan.is_of_parts() {
            let parts = self.layout.members() + 1;
            let _ = write!(text, ", into {parts} equal part{}", if parts == 1 { "" } else { "s" });
        } else {
            let _ = write!(text, ", {}\nMembers  {}", self.ends(), self.members());
        }
        for (number, rule) in self.plan.rules.iter().enumerate() {
            let _ = write!(text, "\n{}{rule}", if number == 0 { "Rule     " } else { "         " });
        }
        let _ = writeln!(text, "\nTape     {}", self.bench.tape_in_words(self.options.tape.round));
        if self.options.limits.guard {
            let _ = writeln!(text, "\nCaution. {CAUTION}");
        }
        text
    }

    fn members(&self) -> String {
        let count = self.layout.members();
        match self.plan.thickness {
            Some(thickness) => format!("{count}, each {} along the run", self.bench.mark(thickness)),
            None if count > MOST_WIDTHS_LISTED => format!("{count} of several widths"),
            None => {
                let widths: Vec<_> = self.plan.widths.iter().map(|width| self.bench.mark(*width)).collect();
                format!("{count}, along the run {}", widths.join(", "))
            }
        }
    }

    fn ends(&self) -> String {
        let ends = &self.options.ends;
        let (near, far) = (end_in_words(&ends.near_end), end_in_words(&ends.far_end));
        if near == far { format!("{near} at each end") } else { format!("{near} at the near end, {far} at the far end") }
    }

    pub(super) fn how_to_mark(&self) -> String {
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
        let side = match self.on_tape.edge() {
            _ if self.plan.is_of_parts() => "Each line ends one part and begins the next.",
            Edge::Near => "The line is the near edge of the member: the member lies past it, away from the near end.",
            Edge::Center => "The line is the center of the member: half of it lies on each side.",
            Edge::Far => "The line is the far edge of the member: the member lies before it, toward the near end.",
        };
        format!("{hook}\n{side}")
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
