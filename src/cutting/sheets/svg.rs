//! A sheet as a picture: panels with their names and sizes, offcuts dashed. Black on white, and nothing told by color alone. What is
//! read with a saw in hand has its fractions joined by a hyphen.

use alloc::format;
use alloc::string::{String, ToString};

use svg::Document;
use svg::Node as _;
use svg::node::Text;
use svg::node::element::{Description, Element, Group, Rectangle, Title};

use super::{CutSheet, PanelPlace, SheetPlan};
use crate::length::{Length, Rounding};
use crate::pole::figure::Figures;

/// How many units the longer side of the sheet has; a unit is about as fine as print.
const UNITS: i64 = 2000;
const MARGIN: i128 = 60;
const LINE: i128 = 4;
/// The size of type, where there is room for it, and the smallest that can be read.
const TYPE: (i128, i128) = (48, 22);

impl SheetPlan {
    /// A sheet of the plan as an SVG document, 10 in wide if it is longer than wide: its length from left to right, its near edge at the
    /// bottom, as [`sketch`](Self::sketch) has it. Sizes are in the unit of the sheet's own, with their fractions joined by a hyphen.
    ///
    /// ```
    /// use scantling::{Length, Panel, Sheet, SheetCutting, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let plan = SheetCutting::new()
    ///     .panel(Panel::new("shelf", inches(36), Length::fraction(29, 2, Unit::Inch), 2))
    ///     .sheet(Sheet::new("4 x 4 ft", inches(48), inches(48)))
    ///     .plan()?;
    /// let document = plan.svg(&plan.sheets()[0]);
    /// assert!(document.starts_with("<svg ") && document.matches(">shelf</text>").count() == 2);
    /// assert!(document.contains(" x 14-1/2"));
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    #[must_use]
    pub fn svg(&self, cut: &CutSheet) -> String {
        let sheet = self.sheet(cut);
        let paper = Paper { unit: sheet.length.max(sheet.width).checked_div(UNITS).unwrap_or_default(), top: sheet.width };
        let (length, width) = (paper.units(sheet.length), paper.units(sheet.width));
        let figures = Figures::plain(sheet.length);
        let size = |place: &PanelPlace| size(figures, place);
        let whole = PanelPlace { along: Length::ZERO, across: Length::ZERO, length: sheet.length, width: sheet.width };
        let mut document = Document::new()
            .set("width", format!("{}mm", (length + 2 * MARGIN) * 254 / 2000))
            .set("height", format!("{}mm", (width + 2 * MARGIN) * 254 / 2000))
            .set("viewBox", format!("{} {} {} {}", -MARGIN, -MARGIN, length + 2 * MARGIN, width + 2 * MARGIN))
            .set("role", "img")
            .add(Title::new(format!("{}, {} by {}", sheet.name, figures.mark_text(sheet.length), figures.mark_text(sheet.width))))
            .add(Description::new().add(Text::new(self.in_words(cut, figures))))
            .add(rectangle([-MARGIN, -MARGIN, length + 2 * MARGIN, width + 2 * MARGIN]).set("fill", "#fff"));
        for offcut in &cut.offcuts {
            document = document.add(paper.outline(offcut).set("stroke-dasharray", "16 12").set("stroke", "#555"));
            document = document.add(paper.label(offcut, &[&["left".to_string(), size(offcut)]]));
        }
        for placed in &cut.panels {
            let turned = if placed.is_turned { ", turned" } else { "" };
            document = document.add(paper.outline(&placed.place).set("fill", "#f3ead7"));
            let name = format!("{}{turned}", self.panel(placed).name);
            let (whole, number) = ([name.clone(), size(&placed.place)], [(placed.panel + 1).to_string()]);
            document = document.add(paper.label(&placed.place, &[&whole, &[name], &number]));
        }
        // Last, so that it is whole where something is left beside it.
        let document = document.add(paper.outline(&whole).set("stroke-width", (2 * LINE).to_string()));
        format!("{document}\n")
    }

    fn in_words(&self, cut: &CutSheet, figures: Figures) -> String {
        let panels = cut.panels.iter().map(|placed| {
            let PanelPlace { along, across, .. } = placed.place;
            format!(
                "{}, {}, {} from the near end and {} from the near edge",
                self.panel(placed).name,
                size(figures, &placed.place),
                figures.mark_text(along),
                figures.mark_text(across)
            )
        });
        panels.collect::<alloc::vec::Vec<_>>().join("; ")
    }
}

fn size(figures: Figures, place: &PanelPlace) -> String {
    format!("{} x {}", figures.mark_text(place.length), figures.mark_text(place.width))
}

struct Paper {
    unit: Length,
    /// The width of the sheet, since the picture counts from above.
    top: Length,
}

impl Paper {
    fn units(&self, length: Length) -> i128 {
        let count = length.round(Rounding::to(self.unit)).ok().and_then(|length| length.checked_ratio(self.unit));
        count.map_or(0, |count| count.to_integer())
    }

    /// Left, top, width and height in the picture, from the rounded edges, so that neighbors meet.
    fn frame(&self, place: &PanelPlace) -> [i128; 4] {
        let end = |from: Length, size: Length| from.checked_add(size).unwrap_or(from);
        let (left, right) = (self.units(place.along), self.units(end(place.along, place.length)));
        let (bottom, top) = (self.units(place.across), self.units(end(place.across, place.width)));
        [left, self.units(self.top) - top, right - left, top - bottom]
    }

    fn outline(&self, place: &PanelPlace) -> Rectangle {
        rectangle(self.frame(place)).set("fill", "none").set("stroke", "#000").set("stroke-width", LINE.to_string())
    }

    /// The first text that there is room for in a place, in its middle, turned where the place is narrow.
    fn label(&self, place: &PanelPlace, texts: &[&[String]]) -> Group {
        let [left, top, width, height] = self.frame(place);
        let is_turned = height > 2 * width;
        let (room, tall) = if is_turned { (height, width) } else { (width, height) };
        let mut group = Group::new().set("font-family", "Helvetica, Arial, sans-serif").set("text-anchor", "middle");
        let turn = if is_turned { " rotate(-90)" } else { "" };
        group.assign("transform", format!("translate({} {}){turn}", left + width / 2, top + height / 2));
        let fitting = texts.iter().map(|lines| (lines, type_size(lines, room, tall))).find(|(_, size)| *size >= TYPE.1);
        let Some((lines, size)) = fitting else { return group };
        let first = size * 3 / 10 - (lines.len() as i128 - 1) * size * 6 / 10;
        for (number, line) in (0..).zip(*lines) {
            let mut element = Element::new("text");
            element.append(Text::new(line.as_str()));
            element.assign("y", (first + number * size * 12 / 10).to_string());
            element.assign("font-size", size.to_string());
            group = group.add(element);
        }
        group
    }
}

/// How large lines may be in a room. Letters are 0.6 of their height wide at the most, on average.
fn type_size(lines: &[String], room: i128, tall: i128) -> i128 {
    let longest = lines.iter().map(|line| line.chars().count()).max().unwrap_or(0);
    (room * 10 / 6 / (longest as i128 + 1)).min(tall * 10 / (12 * lines.len() as i128 + 4)).min(TYPE.0)
}

fn rectangle([x, y, width, height]: [i128; 4]) -> Rectangle {
    let text = |number: i128| number.to_string();
    Rectangle::new().set("x", text(x)).set("y", text(y)).set("width", text(width)).set("height", text(height))
}
