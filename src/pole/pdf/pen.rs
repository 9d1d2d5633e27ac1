//! The content of a page. The document format has floats for numbers, and this is the one file of a pole that has them:
//! whole millionths of an inch become points here, off by less than a ten-thousandth of an inch on the longest page.

use alloc::vec::Vec;

use pdf_writer::{Content, Name, Rect, Str};

use super::letters::encoded;
use crate::pole::picture::{Anchor, Kind, Place, Sheet, Text, Turn, paper, width};

/// Writes onto a page whose places are counted from its upper left corner.
pub(super) struct Pen {
    content: Content,
    height: Place,
    dashed: bool,
}

/// Points: 72 to the inch.
#[allow(clippy::cast_precision_loss, clippy::cast_possible_truncation)] // at most 200 in, see above
fn points(place: Place) -> f32 {
    (place as f64 * 72.0 / 1_000_000.0) as f32
}

/// The page itself.
pub(super) fn frame(sheet: &Sheet) -> Rect {
    Rect::new(0.0, 0.0, points(sheet.width), points(sheet.height))
}

impl Pen {
    pub(super) fn new(height: Place) -> Self {
        let mut content = Content::new();
        content.set_line_width(points(paper::LINE));
        Self { content, height, dashed: false }
    }

    fn at(&self, (x, y): (Place, Place)) -> (f32, f32) {
        (points(x), points(self.height - y))
    }

    pub(super) fn stroke(&mut self, kind: Kind, from: (Place, Place), to: (Place, Place)) {
        let dashed = kind == Kind::Join;
        if dashed != self.dashed {
            let dash = points(paper::DASH);
            let pattern: &[f32] = if dashed { &[dash, dash] } else { &[] };
            self.content.set_dash_pattern(pattern.iter().copied(), 0.0);
            self.dashed = dashed;
        }
        let (from, to) = (self.at(from), self.at(to));
        self.content.move_to(from.0, from.1).line_to(to.0, to.1).stroke();
    }

    pub(super) fn shape(&mut self, corners: &[(Place, Place)]) {
        for (number, corner) in corners.iter().enumerate() {
            let (x, y) = self.at(*corner);
            if number == 0 {
                self.content.move_to(x, y)
            } else {
                self.content.line_to(x, y)
            };
        }
        self.content.close_path().fill_nonzero();
    }

    pub(super) fn text(&mut self, text: &Text, font: Name<'_>) {
        let back = match text.anchor {
            Anchor::Start => 0,
            Anchor::Middle => width(&text.written, text.bold) / 2,
            Anchor::End => width(&text.written, text.bold),
        };
        let (x, y) = text.at;
        let (start, [right, up, to_left, upright]) = match text.turn {
            Turn::Across => ((x - back, y), [1.0, 0.0, 0.0, 1.0]),
            Turn::Down => ((x, y - back), [0.0, -1.0, 1.0, 0.0]),
            Turn::Up => ((x, y + back), [0.0, 1.0, -1.0, 0.0]),
        };
        let start = self.at(start);
        let content = self.content.begin_text().set_font(font, points(paper::TYPE));
        content.set_text_matrix([right, up, to_left, upright, start.0, start.1]).show(Str(&encoded(&text.written))).end_text();
    }

    pub(super) fn finish(self) -> Vec<u8> {
        self.content.finish().into_vec()
    }
}
