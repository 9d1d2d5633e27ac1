//! The picture itself: the blade, its lines, the arrow and the texts. Black on white, so that it loses
//! nothing in print, and nothing is told by color alone. Sizes are left to `paper.rs`, places along the tape
//! to `sheet.rs` and `labels.rs`.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::ops::Range;

use svg::Document;
use svg::Node as _;
use svg::node::Text;
use svg::node::element::{Description, Element, Group, Path, Polygon, Rectangle, Title};

use super::paper;
use super::sheet::Sheet;
use crate::length::Length;
use crate::print::drawn::labels::{Label, Row};

const INK: &str = "#000";
const PAPER: &str = "#fff";
/// A blade between the two, which prints as good as white.
const TINT: &str = "#fdf6e3";

/// A sheet and how far the drawing reaches on it, in its units, from the first line and the upper edge of the tape.
pub(super) struct Picture<'a> {
    sheet: Sheet<'a>,
    labels: Vec<Label>,
    left: i128,
    right: i128,
    blade: i128,
}

impl<'a> Picture<'a> {
    /// `None` where a size is out of range, here and below.
    pub(super) fn new(sheet: Sheet<'a>) -> Option<Self> {
        let (laid, torn) = (&sheet.laid, torn(&sheet)?);
        // The teeth lie about midway to the next line, or near the last one where that is far off.
        let onward = (laid.measure.step + torn).min(5 * torn) / 2;
        let left = if laid.stretch.begins { 0 } else { -onward };
        let right = laid.end.unwrap_or(laid.width() + onward);
        // A number or a flag that would lie over a torn end is left out.
        let clear = torn + laid.measure.gap / 2;
        let near = (!laid.stretch.begins).then_some(left + clear);
        let far = laid.end.is_none().then_some(right - clear);
        let is_whole = |label: &Label| match label.row {
            Row::Reading | Row::Count => true,
            Row::Number | Row::Flag => {
                near.is_none_or(|near| near <= label.span.start) && far.is_none_or(|far| label.span.end <= far)
            }
        };
        let labels: Vec<_> = laid.labels().into_iter().filter(is_whole).collect();
        let flagged = labels.iter().any(|label| label.row == Row::Flag);
        let blade = sheet.units(if flagged { paper::FLAGGED_BLADE } else { paper::BLADE })?;
        Some(Self { sheet, labels, left, right, blade })
    }

    /// The whole document.
    pub(super) fn document(&self) -> Option<String> {
        let drawing = self.sheet.laid.drawing;
        let frame @ [x, y, width, height] = self.frame()?;
        let document = Document::new()
            .set("width", self.sheet.on_paper(width)?)
            .set("height", self.sheet.on_paper(height)?)
            .set("viewBox", format!("{x} {y} {width} {height}"))
            .set("role", "img")
            .add(Title::new(drawing.caption()))
            .add(Description::new().add(Text::new(drawing.words().to_string())))
            .add(rectangle(frame).set("fill", PAPER))
            .add(self.outline()?)
            .add(self.lines()?)
            .add(self.arrow()?)
            .add(self.texts()?);
        Some(format!("{document}\n"))
    }

    /// What is seen: left, top, width and height.
    fn frame(&self) -> Option<[i128; 4]> {
        let units = |size| self.sheet.units(size);
        let margin = units(paper::MARGIN)?;
        let notes = self.notes()?;
        let spans = || self.labels.iter().map(|label| &label.span).chain(notes.iter().map(|note| &note.span));
        let left = spans().map(|span| span.start).fold(self.left - units(paper::HOOK.0)?, i128::min) - margin;
        let right = spans().map(|span| span.end).fold(self.right, i128::max) + margin;
        let top = self.reading_foot()? - units(paper::READING)? - margin;
        let bottom = self.note_foot(notes.len() - 1)? + units(paper::WORDS)? / 4 + margin;
        Some([left, top, right - left, bottom - top])
    }

    /// The blade, torn where the tape goes on, with a hook where it begins.
    fn outline(&self) -> Option<Group> {
        let Self { left, right, blade, .. } = *self;
        let (torn, laid) = (torn(&self.sheet)?, &self.sheet.laid);
        let near = if laid.stretch.begins { String::new() } else { teeth(left, torn, blade, true) };
        let far = if laid.end.is_some() { String::new() } else { teeth(right, -torn, blade, false) };
        let path = Path::new().set("d", format!("M{left} 0H{right}{far}V{blade}H{left}{near}Z"));
        let ink = text(self.thickness(paper::LINE)?);
        let mut group = Group::new().add(path.set("fill", TINT).set("stroke", INK).set("stroke-width", ink));
        if laid.stretch.begins {
            let (width, drop) = (self.sheet.units(paper::HOOK.0)?, self.sheet.units(paper::HOOK.1)?);
            group = group.add(rectangle([-width, 0, width, blade + drop]).set("fill", INK));
        }
        Some(group)
    }

    /// Every line as one stroke down from the edge: those of one size in one path, the marked line in its own.
    fn lines(&self) -> Option<Group> {
        let laid = &self.sheet.laid;
        let (rule, mark) = (&laid.drawing.rule, laid.drawing.line);
        let (thin, thick) = (self.thickness(paper::LINE)?, self.thickness(paper::MARKED_LINE)?);
        let mut group = Group::new().set("stroke", INK);
        for size in 0..rule.sizes() {
            let others: Vec<_> = laid.stretch.lines().filter(|line| rule.size(*line) == size && *line != mark).collect();
            if !others.is_empty() {
                group = group.add(self.strokes(&others, size, thin)?);
            }
        }
        Some(group.add(self.strokes(&[mark], rule.size(mark), thick)?))
    }

    fn strokes(&self, lines: &[i128], size: usize, thickness: i128) -> Option<Path> {
        let length = self.sheet.units(paper::line(self.sheet.laid.drawing.rule.kind, size))?;
        let strokes: Vec<_> = lines.iter().map(|line| format!("M{} 0v{length}", self.sheet.laid.at(*line))).collect();
        Some(Path::new().set("d", strokes.concat()).set("stroke-width", text(thickness)))
    }

    /// How thick a stroke is: at most as thick as leaves more white than black between two lines.
    fn thickness(&self, stroke: Length) -> Option<i128> {
        let most = self.sheet.laid.measure.step * 2 / 5;
        Some(self.sheet.units(stroke)?.min(most).max(1))
    }

    fn arrow(&self) -> Option<Polygon> {
        let (width, height) = (self.sheet.units(paper::ARROW.0)?, self.sheet.units(paper::ARROW.1)?);
        let (tip, half) = (self.sheet.laid.at(self.sheet.laid.drawing.line), width / 2);
        let points = format!("{tip},0 {},{} {},{}", tip - half, -height, tip + half, -height);
        Some(Polygon::new().set("points", points).set("fill", INK))
    }

    fn texts(&self) -> Option<Group> {
        let mut group = Group::new().set("font-family", "Helvetica, Arial, sans-serif").set("fill", INK);
        for label in &self.labels {
            let (size, foot) = match label.row {
                Row::Reading => (paper::READING, self.reading_foot()?),
                Row::Count => (paper::COUNT, -self.sheet.units(paper::GAP)? / 2),
                Row::Number => (paper::NUMBER, self.sheet.units(paper::NUMBER_FOOT)?),
                Row::Flag => (paper::FLAG, self.sheet.units(paper::FLAG_FOOT)?),
            };
            let (anchor, x) = self.anchor(label);
            let mut written = self.written(&label.text, x, foot, size)?;
            written.assign("text-anchor", anchor);
            written.assign("font-weight", "bold");
            if label.row == Row::Flag {
                written.assign("fill", PAPER);
                group = group.add(self.flag(label)?);
            }
            group = group.add(written);
        }
        for (number, note) in self.notes()?.into_iter().enumerate() {
            group = group.add(self.written(&note.text, note.span.start, self.note_foot(number)?, paper::WORDS)?);
        }
        Some(group)
    }

    /// Where a text is held, so that it stands well in a font that is narrower than the room kept for it: at its
    /// line, or at the end of the tape that it was moved in from.
    fn anchor(&self, label: &Label) -> (&'static str, i128) {
        let at = self.sheet.laid.at(label.line);
        let center = label.span.start + (label.span.end - label.span.start) / 2;
        match center - at {
            -1..=1 => ("middle", at),
            2.. if label.row != Row::Flag => ("start", label.span.start),
            ..-1 if label.row != Row::Flag => ("end", label.span.end),
            _ => ("middle", center),
        }
    }

    /// Built by hand, because the element for texts puts line breaks around them.
    fn written(&self, words: &str, x: i128, foot: i128, size: Length) -> Option<Element> {
        let mut element = Element::new("text");
        element.append(Text::new(words));
        element.assign("x", text(x));
        element.assign("y", text(foot));
        element.assign("font-size", text(self.sheet.units(size)?));
        Some(element)
    }

    /// The dark ground of a flag.
    fn flag(&self, label: &Label) -> Option<Rectangle> {
        let (top, bottom) = (self.sheet.units(paper::FLAG_BAND.0)?, self.sheet.units(paper::FLAG_BAND.1)?);
        let around = self.sheet.laid.measure.gap / 2;
        let width = label.span.end - label.span.start + 2 * around;
        let round = text(around);
        Some(rectangle([label.span.start - around, top, width, bottom - top]).set("rx", round).set("fill", INK))
    }

    /// What stands below the tape: the words, and what the tape is held at.
    fn notes(&self) -> Option<Vec<Note>> {
        let drawing = self.sheet.laid.drawing;
        let advance = self.sheet.units(paper::WORDS)? * 3 / 5 + 1;
        let note = |text: String| {
            #[allow(clippy::cast_possible_wrap)] // a text has no 2^63 characters
            let width = text.chars().count() as i128 * advance;
            Note { text, span: self.left..self.left + width }
        };
        Some([drawing.words().to_string()].into_iter().chain(drawing.datum()).map(note).collect())
    }

    fn reading_foot(&self) -> Option<i128> {
        Some(-self.sheet.units(paper::READING_FOOT)?)
    }

    #[allow(clippy::cast_possible_wrap)] // one or two notes
    fn note_foot(&self, number: usize) -> Option<i128> {
        let first = self.blade + self.sheet.units(paper::HOOK.1)? + self.sheet.units(paper::WORDS)?;
        Some(first + number as i128 * self.sheet.units(paper::LEADING)?)
    }
}

/// A line of text below the tape.
struct Note {
    text: String,
    span: Range<i128>,
}

/// How deep torn ends are: at most half a step, so that no line is touched.
fn torn(sheet: &Sheet<'_>) -> Option<i128> {
    Some(sheet.units(paper::TORN)?.min(sheet.laid.measure.step / 2))
}

/// The points of a torn edge, from the top down or from the bottom up.
fn teeth(at: i128, deep: i128, blade: i128, up: bool) -> String {
    const TEETH: i128 = 8;
    let points = (1..=TEETH).map(|tooth| {
        let y = blade * tooth / TEETH;
        format!("L{} {}", if tooth % 2 == 0 { at } else { at + deep }, if up { blade - y } else { y })
    });
    points.collect()
}

fn rectangle([x, y, width, height]: [i128; 4]) -> Rectangle {
    Rectangle::new().set("x", text(x)).set("y", text(y)).set("width", text(width)).set("height", text(height))
}

fn text(number: i128) -> String {
    number.to_string()
}
