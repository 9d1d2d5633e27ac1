//! One row on a sheet: its name, the stick with lines and X, and the names of its marks on leaders. Where rows stand is
//! left to `sheet.rs`, which names lie where to `spread.rs`.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::sheet::Stretch;
use super::spread::{spread, thinned};
use super::width::fitted;
use super::{Anchor, Item, Kind, Picture, Place, Placed, Strip, Text, Turn, paper};
use crate::pole::{Datum, PartSide};

/// A row being drawn on a stretch of paper, from this height down.
pub(super) struct Band<'a> {
    pub(super) picture: &'a Picture<'a>,
    pub(super) strip: &'a Strip,
    pub(super) stretch: &'a Stretch,
    pub(super) y: Place,
}

/// How marks are named: how many lines each name has, how far apart they stand, and which marks have one.
struct Naming {
    two_lines: bool,
    pitch: Place,
    named: Vec<usize>,
}

impl Band<'_> {
    pub(super) fn draw(&self, items: &mut Vec<Item>) {
        let here: Vec<_> = self.strip.marks.iter().filter(|mark| self.touches(mark)).collect();
        self.stick(items);
        for mark in &here {
            self.part(mark, items);
        }
        let lines: Vec<_> = here.into_iter().filter(|mark| self.stretch.has(mark.at)).collect();
        for mark in &lines {
            let (top, bottom) = (self.top() - paper::TAIL, self.bottom() + paper::TAIL);
            self.upright(Kind::Mark, mark.at, top, bottom, items);
        }
        let naming = self.naming(&lines);
        self.names(&lines, &naming, items);
        self.title(lines.len() - naming.named.len(), items);
    }

    fn top(&self) -> Place {
        self.y + paper::STICK_TOP
    }

    fn bottom(&self) -> Place {
        self.top() + paper::STICK
    }

    /// Whether anything of a mark lies on this stretch.
    fn touches(&self, mark: &Placed) -> bool {
        let reach = paper::SMALL_CROSS;
        let (near, far) = mark.edges.unwrap_or((mark.at, mark.at));
        near.min(mark.at) - reach <= self.stretch.to && far.max(mark.at) + reach >= self.stretch.from
    }

    fn upright(&self, kind: Kind, at: Place, top: Place, bottom: Place, items: &mut Vec<Item>) {
        let x = self.stretch.x(at);
        items.push(Item::Stroke { kind, from: (x, top), to: (x, bottom) });
    }

    /// The stick: its edges, the block at its datum end, the line at its other end, and the joints of pages.
    fn stick(&self, items: &mut Vec<Item>) {
        let Stretch { from, to, .. } = *self.stretch;
        let (top, bottom, length) = (self.top(), self.bottom(), self.picture.length);
        let (left, right) = (self.stretch.x(from), self.stretch.x(to.min(length)));
        for y in [top, bottom] {
            items.push(Item::Stroke { kind: Kind::Stick, from: (left, y), to: (right, y) });
        }
        if from == 0 {
            let block = [(-paper::DATUM, top), (0, top), (0, bottom), (-paper::DATUM, bottom)];
            items.push(Item::Shape(block.map(|(x, y)| (left + x, y)).into()));
        }
        if length <= to {
            self.upright(Kind::Stick, length, top, bottom, items);
        }
        for (number, join) in self.stretch.joins() {
            self.upright(Kind::Join, join, self.y + paper::NAME_FOOT + paper::BELOW, bottom, items);
            let at = (self.stretch.x(join), self.y + paper::NAME_FOOT);
            items.push(text(at, format!("join {number}"), true, Anchor::Middle, Turn::Across));
        }
    }

    /// The other edge of a part, or both, and the X.
    fn part(&self, mark: &Placed, items: &mut Vec<Item>) {
        let (small, line) = (paper::SMALL_CROSS, mark.at);
        let Some((near, far)) = mark.edges else {
            match mark.side {
                PartSide::Past => self.cross(line, line + small, small, items),
                PartSide::Before => self.cross(line - small, line, small, items),
                PartSide::Centered => {
                    self.cross(line - small, line, small, items);
                    self.cross(line, line + small, small, items);
                }
                PartSide::Line => {}
            }
            return;
        };
        for edge in [near, far].into_iter().filter(|edge| *edge != line && self.stretch.has(*edge)) {
            self.upright(Kind::Edge, edge, self.top(), self.bottom(), items);
        }
        let high = paper::STICK - 2 * paper::TAIL;
        if far - near <= paper::WIDEST_CROSS {
            self.cross(near, far, high, items);
        } else {
            self.cross(near, near + paper::CROSS, high, items);
            self.cross(far - paper::CROSS, far, high, items);
        }
    }

    /// An X from one place of the stick to another, cut off where the paper ends.
    fn cross(&self, near: Place, far: Place, high: Place, items: &mut Vec<Item>) {
        let top = self.top() + (paper::STICK - high) / 2;
        let Stretch { from, to, .. } = *self.stretch;
        let (left, right) = (near.max(from).max(0), far.min(to).min(self.picture.length));
        if left >= right {
            return;
        }
        let height = |x: Place| high * (x - near) / (far - near);
        for down in [true, false] {
            let y = |x| if down { top + height(x) } else { top + high - height(x) };
            let ends = [left, right].map(|x| (self.stretch.x(x), y(x)));
            items.push(Item::Stroke { kind: Kind::Cross, from: ends[0], to: ends[1] });
        }
    }

    fn room(&self, pitch: Place) -> (Place, Place) {
        let Stretch { from, end, .. } = *self.stretch;
        (from + pitch / 2, end - pitch / 2)
    }

    fn naming(&self, lines: &[&Placed]) -> Naming {
        for (two_lines, pitch) in [(true, paper::TWO_LINES), (false, paper::ONE_LINE)] {
            if self.fits(lines.len(), pitch) {
                return Naming { two_lines, pitch, named: (0..lines.len()).collect() };
            }
        }
        let pitch = paper::ONE_LINE;
        let places: Vec<_> = lines.iter().map(|mark| mark.at).collect();
        let most = (0..lines.len()).rev().find(|count| self.fits(*count, pitch)).unwrap_or(0);
        Naming { two_lines: false, pitch, named: thinned(&places, pitch, most) }
    }

    fn fits(&self, count: usize, pitch: Place) -> bool {
        let (near, far) = self.room(pitch);
        i64::try_from(count).is_ok_and(|count| (count - 1) * pitch <= far - near)
    }

    fn names(&self, lines: &[&Placed], naming: &Naming, items: &mut Vec<Item>) {
        let Naming { two_lines, pitch, ref named } = *naming;
        let wanted: Vec<_> = named.iter().map(|number| lines[*number].at).collect();
        let (top, bottom) = (self.bottom() + paper::TAIL, self.bottom() + paper::LEADER);
        for (number, place) in named.iter().zip(spread(&wanted, pitch, self.room(pitch))) {
            let (mark, center) = (lines[*number], self.stretch.x(place));
            let leader = Item::Stroke { kind: Kind::Leader, from: (self.stretch.x(mark.at), top), to: (center, bottom) };
            items.push(leader);
            self.label(mark, two_lines, (center, bottom + paper::BELOW), items);
        }
    }

    /// A name and below it what the tape shows, or the name alone. What is below, where it is read, is to the left for a
    /// text that is read down and to the right for one that is read up.
    fn label(&self, mark: &Placed, two_lines: bool, (center, y): (Place, Place), items: &mut Vec<Item>) {
        let (turn, anchor, below) = match self.picture.pole.datum() {
            Datum::Bottom => (Turn::Down, Anchor::Start, -1),
            Datum::Top | Datum::Left | Datum::Right => (Turn::Up, Anchor::End, 1),
        };
        let texts: Vec<&String> = [&mark.name, &mark.reading].into_iter().filter(|text| !text.is_empty()).collect();
        let texts = if two_lines { &texts[..] } else { &texts[..texts.len().min(1)] };
        let lines = if texts.len() == 2 { paper::LEADING } else { 0 };
        // From the foot of the first line to the middle of the block.
        let middle = (lines + paper::BELOW - paper::CAPITAL) / 2;
        for (number, written) in (0..).zip(texts) {
            let foot = center + below * (number * paper::LEADING - middle);
            items.push(text((foot, y), (*written).clone(), number == 0, anchor, turn));
        }
    }

    /// The name of the row, which way positions are counted, and what was left out.
    fn title(&self, unnamed: usize, items: &mut Vec<Item>) {
        let most = if unnamed > 0 { paper::SHORT_ROW_NAME } else { paper::ROW_NAME };
        let name = fitted(&self.strip.name, most);
        let x = self.stretch.x(self.stretch.from) + if self.stretch.from > 0 { paper::mils(1000) } else { 0 };
        let foot = self.y + paper::NAME_FOOT;
        let arrow = x + super::width(&name, true) * 7 / 6 + paper::mils(100);
        items.push(text((x, foot), name, true, Anchor::Start, Turn::Across));
        let (y, head) = (foot - paper::CAPITAL / 2, arrow + paper::mils(350));
        items.push(Item::Stroke { kind: Kind::Stick, from: (arrow, y), to: (head, y) });
        let half = paper::mils(50);
        items.push(Item::Shape([(head, y - half), (head + 2 * half, y), (head, y + half)].into()));
        if unnamed > 0 {
            let words = format!("{unnamed} marks here lie too close to be named: see the list");
            items.push(text((head + 4 * half, foot), words, false, Anchor::Start, Turn::Across));
        }
    }
}

pub(super) fn text(at: (Place, Place), written: String, bold: bool, anchor: Anchor, turn: Turn) -> Item {
    Item::Text(Text { at, written, bold, anchor, turn })
}
