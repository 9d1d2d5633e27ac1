//! The case from the front, with its dimensions. Places come from the sums that close; only here, where nothing is
//! measured, are they rounded to the points of a picture.

use maud::{Markup, html};
use scantling::{Base, Closing, Length, TopAt, Unit};

use super::super::Report;

/// The room for the case in points: about that of a phone held upright, less the dimensions.
const MOST: (i64, i64) = (200, 380);
/// Around the case, for dimensions.
const MARGIN: i64 = 58;
/// At the right, for an opening that no tape shows.
const ROOM: i64 = 98;
/// The longest figure, in letters, that fits there by itself.
const SHORT: usize = 9;
/// Openings lower than this have no room for a figure.
const LEAST: i64 = 13;

/// Larger cases are drawn by nobody, and their sums might not be held.
const MOST_DRAWN: Length = Length::new(1_000_000, Unit::Inch);

/// From lengths to points.
struct Scale {
    point: Length,
    left: Length,
    high: Length,
}

impl Scale {
    fn points(&self, length: Length) -> i64 {
        let ratio = length.checked_ratio(self.point).map_or(0, |ratio| ratio.round().to_integer());
        i64::try_from(ratio).unwrap_or(0)
    }

    fn x(&self, place: Length) -> i64 {
        MARGIN + self.points(place - self.left)
    }

    fn y(&self, height: Length) -> i64 {
        MARGIN / 3 + self.points(self.high - height)
    }

    /// A panel between two places and two heights.
    fn panel(&self, class: &str, across: (Length, Length), up: (Length, Length)) -> Markup {
        let (x, y) = (self.x(across.0), self.y(up.1));
        let (wide, high) = ((self.x(across.1) - x).max(1), (self.y(up.0) - y).max(1));
        let (fill, stroke, dashes) = match class {
            "frame" => ("none", "#06c", None),
            "front" => ("none", "#111", Some("5 3")),
            _ => ("#e6d3b3", "#654", None),
        };
        html! { rect class=(class) x=(x) y=(y) width=(wide) height=(high) fill=(fill) stroke=(stroke) stroke-dasharray=[dashes] {} }
    }
}

/// What lies between two places along a chain, with its name.
type Spans = Vec<(&'static str, Length, Length)>;

fn spans(closing: &Closing, start: Length) -> Spans {
    let mut place = start;
    let span = |(name, size): &(&'static str, Length)| {
        let near = place;
        place += *size;
        (*name, near, place)
    };
    closing.links().iter().map(span).collect()
}

impl Report<'_> {
    pub(super) fn elevation(&self) -> Markup {
        let [wide, high, ..] = self.plan.closings() else { return html! {} };
        let stile = self.plan.case().frame.map_or(Length::ZERO, |frame| frame.stile);
        let largest = [wide.whole(), high.whole(), self.farthest_out(), stile].into_iter().max().unwrap_or_default();
        if largest > MOST_DRAWN {
            return html! {};
        }
        let across = spans(wide, Length::ZERO);
        let up = spans(high, Length::ZERO);
        let Some(box_of) = between(&across, "side") else { return html! {} };
        let out = self.farthest_out();
        let (left, right) = ((box_of.0 - out).min(Length::ZERO), (box_of.1 + out).max(wide.whole()));
        let Some(scale) = scale(left, right, high.whole()) else { return html! {} };
        let size = (scale.x(right) + ROOM, scale.y(Length::ZERO) + 46);
        html! {
            figure {
                svg viewBox=(format!("0 0 {} {}", size.0, size.1)) role="img" aria-label="the case from the front, with its dimensions" {
                    (self.panels(&scale, &across, &up, box_of))
                    (self.front(&scale, box_of))
                    (self.fronts(&scale, box_of))
                    (self.dimensions(&scale, wide.whole(), &up, right))
                }
                figcaption.small {
                    "From the front" @if self.plan.case().frame.is_some() { ", the face frame in outline" }
                    @if self.plan.case().fronts.is_some() { ", doors and drawers in dashes" }
                    "; openings as cut, at the right. Depth " (self.bench.unburned().mark(self.plan.case().depth)) ". Not to be measured."
                }
            }
        }
    }

    /// How far anything stands past the box.
    fn farthest_out(&self) -> Length {
        let case = self.plan.case();
        let top = if let TopAt::OverSides { past_sides, .. } = case.top_at { past_sides } else { Length::ZERO };
        let frame = case.frame.map_or(Length::ZERO, |frame| frame.past[0].max(frame.past[1]));
        top.max(frame).max(case.molding)
    }

    fn panels(&self, scale: &Scale, across: &Spans, up: &Spans, box_of: (Length, Length)) -> Markup {
        let case = self.plan.case();
        let (levels, lower) = (self.plan.levels(), self.lower_end());
        let top = up.last().map_or(case.height, |(_, near, _)| *near);
        let upper = if matches!(case.top_at, TopAt::OverSides { .. }) { top } else { case.height };
        let inside = across.iter().filter(|(name, ..)| *name == "clear");
        let standing = across.iter().filter(|(name, ..)| ["side", "partition"].contains(name));
        let lying = up.iter().filter(|(name, ..)| ["bottom", "shelf", "top"].contains(name));
        let over = match case.top_at {
            TopAt::OverSides { past_sides, .. } => Some((box_of.0 - past_sides, box_of.1 + past_sides)),
            _ => None,
        };
        html! {
            (self.base(scale, box_of))
            @for (_, left, right) in inside {
                @for (_, low, high) in lying.clone() { (scale.panel("panel", (*left, *right), (*low, *high))) }
                @for hole in &levels.holes {
                    circle cx=(scale.x(*left) + 3) cy=(scale.y(lower + *hole)) r="1" {}
                    circle cx=(scale.x(*right) - 3) cy=(scale.y(lower + *hole)) r="1" {}
                }
            }
            @for (_, left, right) in standing { (scale.panel("panel", (*left, *right), (lower, upper))) }
            @if let Some(over) = over { (scale.panel("panel", over, (top, case.height))) }
        }
    }

    /// From the floor to the lower end of the sides.
    fn lower_end(&self) -> Length {
        match self.plan.case().base {
            Base::Separate { height, .. } => height,
            _ => Length::ZERO,
        }
    }

    fn base(&self, scale: &Scale, box_of: (Length, Length)) -> Markup {
        let case = self.plan.case();
        let inset = match case.base {
            Base::SidesToFloor { .. } => case.side,
            Base::Separate { from_sides, .. } => from_sides,
            _ => return html! {},
        };
        scale.panel("panel", (box_of.0 + inset, box_of.1 - inset), (Length::ZERO, case.base.height()))
    }

    fn front(&self, scale: &Scale, box_of: (Length, Length)) -> Markup {
        let case = self.plan.case();
        let Some(frame) = case.frame else { return html! {} };
        let pole = self.plan.poles().iter().find(|pole| pole.name() == "frame");
        let (low, long) = (case.base.height(), pole.map_or(Length::ZERO, scantling::StoryPole::length));
        let (left, right) = (box_of.0 - frame.past[0], box_of.1 + frame.past[1]);
        let inner = (low + frame.bottom_rail, low + long - frame.top_rail);
        let openings = self.plan.front_openings().unwrap_or_default();
        html! {
            (scale.panel("frame", (left, right), (low, low + long)))
            @for opening in openings { (scale.panel("frame", (box_of.0 + opening.left, box_of.0 + opening.right), inner)) }
        }
    }

    /// Doors and drawers in dashes: what lies behind them is seen.
    fn fronts(&self, scale: &Scale, box_of: (Length, Length)) -> Markup {
        let (low, left) = (self.lower_end(), box_of.0);
        html! {
            @for front in self.plan.front_places().unwrap_or_default() {
                (scale.panel("front", (left + front.left, left + front.right), (low + front.lower, low + front.upper)))
            }
        }
    }

    /// What fits beside an opening; the list has the whole figure.
    fn near(&self, opening: Length) -> String {
        let bench = self.bench.unburned();
        let exact = bench.amount(opening);
        match bench.tape.read(opening) {
            Ok(reading) if exact.len() > SHORT => format!("about {}", bench.mark(reading.mark())),
            _ => exact,
        }
    }

    fn dimensions(&self, scale: &Scale, width: Length, up: &Spans, right: Length) -> Markup {
        let case = self.plan.case();
        let bench = self.bench.unburned();
        let (floor, top) = (scale.y(Length::ZERO), scale.y(case.height));
        let (x0, x1, beside) = (scale.x(Length::ZERO), scale.x(width), scale.x(right) + 6);
        let cut = self.plan.levels().openings_on(&bench.tape).unwrap_or_default();
        let openings = up.iter().filter(|(name, ..)| *name == "opening").zip(cut);
        let side = MARGIN - 14;
        html! {
            (line((x0, floor + 14), (x1, floor + 14)))
            text x=(middle(x0, x1)) y=(floor + 30) text-anchor="middle" { (bench.mark(width)) }
            (line((side, floor), (side, top)))
            text transform=(format!("translate({} {}) rotate(-90)", side - 6, middle(floor, top))) text-anchor="middle" {
                (bench.mark(case.height))
            }
            @for ((_, low, high), cut) in openings {
                @let (low, high) = (scale.y(*low), scale.y(*high));
                @if low - high >= LEAST { text x=(beside) y=(middle(low, high) + 4) { (self.near(cut)) } }
            }
        }
    }
}

/// A dimension line with a stroke at each end.
fn line(from: (i64, i64), to: (i64, i64)) -> Markup {
    let (across, up) = if from.1 == to.1 { (0, 4) } else { (4, 0) };
    let end = |(x, y): (i64, i64)| format!("M{} {}L{} {}", x - across, y - up, x + across, y + up);
    let path = format!("M{} {}L{} {}{}{}", from.0, from.1, to.0, to.1, end(from), end(to));
    html! { path d=(path) stroke="#111" fill="none" {} }
}

/// From the first to the last of a name.
fn between(spans: &Spans, name: &str) -> Option<(Length, Length)> {
    let mut named = spans.iter().filter(|span| span.0 == name);
    let first = named.next()?;
    Some((first.1, named.next_back()?.2))
}

/// As large as fits.
fn scale(left: Length, right: Length, high: Length) -> Option<Scale> {
    let across = right.checked_sub(left)?.checked_div(MOST.0)?;
    let point = across.max(high.checked_div(MOST.1)?);
    (point > Length::ZERO).then_some(Scale { point, left, high })
}

const fn middle(first: i64, second: i64) -> i64 {
    (first + second) / 2
}
