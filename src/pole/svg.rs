//! A pole as an SVG document in true size. What is on it is left to `picture/`; places are written in thousandths of an
//! inch, as decimals that lose nothing.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt::Write as _;

use svg::Document;
use svg::Node as _;
use svg::node::element::{Element, Group, Path, Polygon, Rectangle, Style, Title};

use super::picture::{Anchor, Item, Kind, Picture, Place, Sheet, Text, Turn, paper};
use super::{PoleError, StoryPole};
use crate::tape::Tape;

const INK: &str = "#000";
const PAPER: &str = "#fff";

impl StoryPole {
    /// The pole as an SVG document in true size: its size is given in inches, and that of the page it is printed on too,
    /// so that a browser or a plotter that is told nothing else prints it so, on a roll. It has a scale check to hold a
    /// rule to. Readings are those of this tape.
    ///
    /// Strokes are in groups of the classes `stick`, `mark`, `edge`, `cross`, `leader` and `bar`.
    ///
    /// ```
    /// use scantling::{Length, Mark, PartSide, StoryPole, Tape, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let pole = StoryPole::new("ware case", inches(40)).row("side", [Mark::new(inches(14), "shelf", PartSide::Past)])?;
    /// let document = pole.svg(&Tape::sixteenths())?;
    /// assert!(document.starts_with(r#"<svg height="5.1in" "#));
    /// assert!(document.contains(">shelf</text>"));
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`PoleError::TooLongToDraw`] past a hundred yards, [`PoleError::NoLength`], [`PoleError::Tape`] when the tape does
    /// not reach a mark, [`PoleError::OutOfRange`].
    pub fn svg(&self, tape: &Tape) -> Result<String, PoleError> {
        let sheet = Sheet::whole(&Picture::new(self, tape)?);
        let (width, height) = (decimal(sheet.width), decimal(sheet.height));
        let (wide, high) = (format!("{}in", inches(sheet.width)), format!("{}in", inches(sheet.height)));
        // A browser shrinks what is larger than its page, so the page is told to be as large as the picture.
        let paper = format!("{wide} {high}");
        let document = Document::new()
            .set("width", wide)
            .set("height", high)
            .set("viewBox", format!("0 0 {width} {height}"))
            .set("role", "img")
            .add(Title::new(self.title(80)))
            .add(Style::new(format!("@page{{size:{paper};margin:0}}")))
            .add(Rectangle::new().set("width", width).set("height", height).set("fill", PAPER));
        let kinds = [Kind::Stick, Kind::Mark, Kind::Edge, Kind::Cross, Kind::Leader, Kind::Join, Kind::Bar];
        let strokes = kinds.into_iter().filter_map(|kind| strokes(kind, &sheet.items));
        let document = strokes.fold(document, Document::add).add(shapes(&sheet.items)).add(texts(&sheet.items));
        Ok(format!("{document}\n"))
    }
}

/// All strokes of one kind as one path.
fn strokes(kind: Kind, items: &[Item]) -> Option<Path> {
    let mut path = String::new();
    for item in items {
        match item {
            Item::Stroke { kind: other, from, to } if *other == kind => {
                let _ = write!(path, "M{} {}L{} {}", decimal(from.0), decimal(from.1), decimal(to.0), decimal(to.1));
            }
            _ => {}
        }
    }
    let class = match kind {
        Kind::Stick => "stick",
        Kind::Mark => "mark",
        Kind::Edge => "edge",
        Kind::Cross => "cross",
        Kind::Leader => "leader",
        Kind::Join => "join",
        Kind::Bar => "bar",
    };
    if path.is_empty() {
        return None;
    }
    let path = Path::new().set("class", class).set("d", path).set("stroke", INK).set("stroke-width", decimal(paper::LINE));
    Some(if kind == Kind::Join { path.set("stroke-dasharray", decimal(paper::DASH)) } else { path })
}

fn shapes(items: &[Item]) -> Group {
    let mut group = Group::new().set("fill", INK);
    for item in items {
        if let Item::Shape(corners) = item {
            let corners: Vec<_> = corners.iter().map(|(x, y)| format!("{},{}", decimal(*x), decimal(*y))).collect();
            group.append(Polygon::new().set("points", corners.join(" ")));
        }
    }
    group
}

fn texts(items: &[Item]) -> Group {
    let mut group = Group::new()
        .set("font-family", "Helvetica, Arial, 'Liberation Sans', sans-serif")
        .set("font-size", decimal(paper::TYPE))
        .set("fill", INK);
    for item in items {
        if let Item::Text(text) = item {
            group.append(written(text));
        }
    }
    group
}

/// Built by hand, because the element for texts puts line breaks around them.
fn written(text: &Text) -> Element {
    let (x, y) = (decimal(text.at.0), decimal(text.at.1));
    let mut element = Element::new("text");
    element.append(svg::node::Text::new(text.written.clone()));
    match text.anchor {
        Anchor::Start => {}
        Anchor::Middle => element.assign("text-anchor", "middle"),
        Anchor::End => element.assign("text-anchor", "end"),
    }
    if text.bold {
        element.assign("font-weight", "bold");
    }
    match text.turn {
        Turn::Across => {
            element.assign("x", x);
            element.assign("y", y);
        }
        Turn::Down => element.assign("transform", format!("translate({x} {y}) rotate(90)")),
        Turn::Up => element.assign("transform", format!("translate({x} {y}) rotate(-90)")),
    }
    element
}

/// Thousandths of an inch, exactly.
fn decimal(place: Place) -> String {
    pointed(place, 1000, 3)
}

/// Inches, exactly.
fn inches(place: Place) -> String {
    pointed(place, 1_000_000, 6)
}

fn pointed(place: Place, one: i64, places: usize) -> String {
    let (size, sign) = (place.unsigned_abs(), if place < 0 { "-" } else { "" });
    let (whole, rest) = (size / one.unsigned_abs(), size % one.unsigned_abs());
    let text = format!("{sign}{whole}.{rest:0places$}");
    text.trim_end_matches('0').trim_end_matches('.').to_string()
}
