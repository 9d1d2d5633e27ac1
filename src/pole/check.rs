//! Looking for mistakes: each row by itself, then marks of one name, then rows against each other. How a finding is
//! said is left to `finding.rs`.

use alloc::collections::BTreeMap;
use alloc::string::String;
use alloc::vec::Vec;

use super::{Finding, Mark, PartSide, Row, StoryPole};
use crate::length::Length;
use crate::tape::Tape;

impl StoryPole {
    /// Everything about the pole that should be looked at again before wood is cut; nothing is a good sign. The tape
    /// tells how close two lines may be before they are taken for one.
    ///
    /// Of marks that share a name, the first that does not agree with the first of all is told. In time that grows
    /// hardly faster than the marks do, whatever is found.
    ///
    /// ```
    /// use scantling::{Length, Mark, PartSide, StoryPole, Tape, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let shelf = |place| Mark::new(place, "crock shelf", PartSide::Past).thick(inches(3, 4));
    /// let pole = StoryPole::new("ware case", inches(72, 1))
    ///     .row("left side", [shelf(inches(72, 5))])?
    ///     .row("right side", [shelf(inches(115, 8))])?;
    /// assert_eq!(
    ///     pole.check(&Tape::sixteenths())[0].to_string(),
    ///     "crock shelf in row left side and crock shelf in row right side are 1/40\" apart, at 14 2/5\" and 14 3/8\", \
    ///      less than one graduation of 1/16\": if they are one place, take the exact one for both"
    /// );
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    #[must_use]
    pub fn check(&self, tape: &Tape) -> Vec<Finding> {
        let mut check = Check { pole: self, step: tape.step(), findings: Vec::new() };
        for row in self.rows() {
            check.on_stick(row);
            check.apart(row);
            check.overlaps(row);
            check.closes(row);
        }
        check.names();
        check.across();
        check.findings
    }
}

struct Check<'a> {
    pole: &'a StoryPole,
    step: Length,
    findings: Vec<Finding>,
}

impl Check<'_> {
    fn on_stick(&mut self, row: &Row) {
        let length = self.pole.length();
        let is_off = |place: Length| place.is_negative() || place > length;
        for mark in row.marks() {
            let (near, far) = edges(mark);
            let (row, name) = (row.name.clone(), mark.name.clone());
            if is_off(mark.position) {
                self.findings.push(Finding::OffStick { row, mark: name, position: mark.position, length });
            } else if let Some(edge) = [near, far].into_iter().find(|edge| is_off(*edge)) {
                self.findings.push(Finding::PastEnd { row, mark: name, edge, length });
            }
        }
    }

    /// Neighbors of one row. Marks of one name are left to `names`, parts in one place to `overlaps`.
    fn apart(&mut self, row: &Row) {
        for pair in row.marks().windows(2) {
            let [one, other] = pair else { continue };
            if is_other(one, other) && self.is_close(one.position, other.position) {
                self.findings.push(Finding::TooClose {
                    row: row.name.clone(),
                    marks: [one.name.clone(), other.name.clone()],
                    places: [one.position, other.position],
                    step: self.step,
                });
            }
        }
    }

    /// Each part against the one that reaches farthest of those before it.
    fn overlaps(&mut self, row: &Row) {
        let mut parts: Vec<_> = row.marks().iter().map(|mark| (solid(mark), mark)).collect();
        parts.retain(|((near, far), _)| near < far);
        parts.sort_by_key(|(ends, _)| *ends);
        let mut farthest: Option<(End, &Mark)> = None;
        for ((near, far), mark) in parts {
            if let Some((end, before)) = farthest.filter(|(end, before)| *end > near && is_other(before, mark)) {
                self.findings.push(Finding::Overlap {
                    row: row.name.clone(),
                    marks: [before.name.clone(), mark.name.clone()],
                    from: near.0,
                    by: end.min(far).0.checked_sub(near.0).unwrap_or_default(),
                });
            }
            farthest = Some(farthest.filter(|(end, _)| *end >= far).unwrap_or((far, mark)));
        }
    }

    fn closes(&mut self, row: &Row) {
        let Some((from, to)) = row.closes else { return };
        let begins = row.marks().iter().map(|mark| edges(mark).0).min();
        let ends = row.marks().iter().map(|mark| edges(mark).1).max();
        for (at_end, should, is) in [(false, from, begins), (true, to, ends)] {
            if is != Some(should) {
                self.findings.push(Finding::NotClosed { row: row.name.clone(), at_end, should, is });
            }
        }
    }

    /// Marks of one name, in whatever rows.
    fn names(&mut self) {
        let mut named: BTreeMap<&str, Vec<(&Row, &Mark)>> = BTreeMap::new();
        for row in self.pole.rows() {
            for mark in row.marks().iter().filter(|mark| !mark.name.is_empty()) {
                named.entry(&mark.name).or_default().push((row, mark));
            }
        }
        for marks in named.into_values() {
            let (first, rest) = (marks[0], &marks[1..]);
            let Some(other) = rest.iter().find(|other| !agree(first.1, other.1)) else { continue };
            let pair = [first, *other];
            let rows = pair.map(|(row, _)| row.name.clone());
            let [one, two] = pair.map(|(_, mark)| edges(mark));
            let by_rounding = self.is_near(one.0, two.0) && self.is_near(one.1, two.1);
            let finding = if by_rounding && one != two {
                let places = if one.0 == two.0 { [one.1, two.1] } else { [one.0, two.0] };
                self.by_rounding(pair.map(|(_, mark)| mark), rows, places)
            } else {
                Finding::Disagree { mark: first.1.name.clone(), rows, places: [one, two] }
            };
            self.findings.push(finding);
        }
    }

    /// Neighbors of different rows and different names.
    fn across(&mut self) {
        let rows = self.pole.rows().iter();
        let mut all: Vec<_> = rows.flat_map(|row| row.marks().iter().map(move |mark| (mark.position, row, mark))).collect();
        all.sort_by_key(|(position, ..)| *position);
        for pair in all.windows(2) {
            let [(one, row, mark), (other, other_row, other_mark)] = pair else { continue };
            if row.name != other_row.name && is_other(mark, other_mark) && self.is_close(*one, *other) {
                let rows = [row.name.clone(), other_row.name.clone()];
                let finding = self.by_rounding([mark, other_mark], rows, [*one, *other]);
                self.findings.push(finding);
            }
        }
    }

    fn by_rounding(&self, marks: [&Mark; 2], rows: [String; 2], places: [Length; 2]) -> Finding {
        Finding::OnlyByRounding { marks: marks.map(|mark| mark.name.clone()), rows, places, step: self.step }
    }

    /// Less than a graduation apart.
    fn is_near(&self, one: Length, other: Length) -> bool {
        one.checked_sub(other).is_some_and(|apart| apart.abs() < self.step)
    }

    /// The same, and not one place.
    fn is_close(&self, one: Length, other: Length) -> bool {
        one != other && self.is_near(one, other)
    }
}

/// The edges of a mark of a pole, which can always be held.
fn edges(mark: &Mark) -> (Length, Length) {
    mark.checked_edges().unwrap_or((mark.position, mark.position))
}

/// Where a part ends: at a place, or a hair before or past it.
type End = (Length, i8);

/// What a part takes up. Of a part whose thickness is not known that is a hair on its side of the line: something of it
/// is there, whatever its size.
fn solid(mark: &Mark) -> (End, End) {
    let (near, far) = edges(mark);
    let (before, past) = match (mark.thickness, mark.side) {
        (Some(_), _) | (None, PartSide::Line) => (0, 0),
        (None, PartSide::Past) => (0, 1),
        (None, PartSide::Before) => (-1, 0),
        (None, PartSide::Centered) => (-1, 1),
    };
    ((near, before), (far, past))
}

/// Whether two marks are not of one name.
fn is_other(one: &Mark, other: &Mark) -> bool {
    one.name != other.name || one.name.is_empty()
}

/// Whether two marks are of one place: by their edges where both have a thickness, else by line and side, as the one with
/// a thickness has them.
fn agree(one: &Mark, other: &Mark) -> bool {
    match (one.thickness, other.thickness) {
        (Some(_), Some(_)) => edges(one) == edges(other),
        (Some(_), None) => has_line(edges(one), other),
        (None, Some(_)) => has_line(edges(other), one),
        (None, None) => one.position == other.position && one.side == other.side,
    }
}

/// Whether a part with these edges has such a line.
fn has_line((near, far): (Length, Length), mark: &Mark) -> bool {
    match mark.side {
        PartSide::Past => mark.position == near,
        PartSide::Before => mark.position == far,
        PartSide::Centered => far.checked_sub(mark.position) == mark.position.checked_sub(near),
        PartSide::Line => false,
    }
}
