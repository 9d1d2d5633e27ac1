//! What is written on and above the tape, and how far each text reaches along it, so that no two meet.
//! The same for characters and for pictures, which differ in their measures alone.

use alloc::string::{String, ToString};
use alloc::vec::Vec;
use alloc::{format, vec};
use core::ops::Range;

use super::TapeDrawing;
use super::stretch::Stretch;

/// Where a text stands: rows lie one below the other, so only texts of one row can meet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Row {
    /// Above the arrow: what the tape shows, and the leftover.
    Reading,
    /// Beside the arrow: the lines that are counted on the way to it.
    Count,
    /// Below the longest lines.
    Number,
    /// Feet or meters, below the numbers.
    Flag,
}

/// A text and how far it reaches, in units of the measure from the first line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Label {
    pub(super) row: Row,
    /// The line it belongs to.
    pub(super) line: i128,
    pub(super) text: String,
    pub(super) span: Range<i128>,
}

/// The sizes of what is drawn along the tape: in columns, or in the units of a picture.
#[derive(Clone, Copy, Debug)]
pub(super) struct Measure {
    /// From one line to the next.
    pub(super) step: i128,
    /// How wide a line is taken to be when a text is centered on it.
    pub(super) line: i128,
    /// How wide the arrow is where counts stand beside it.
    pub(super) arrow: i128,
    /// How far texts stay from each other, and from the ends of the tape.
    pub(super) gap: i128,
    /// How wide a character is at most, for each row in turn.
    pub(super) advance: [i128; 4],
}

/// A stretch of tape laid out with a measure.
pub(super) struct Laid<'a> {
    pub(super) drawing: &'a TapeDrawing,
    pub(super) stretch: Stretch,
    pub(super) measure: Measure,
    /// The place of the tape's end, if it has one here.
    pub(super) end: Option<i128>,
}

impl Laid<'_> {
    /// The place of a line, from the first one.
    pub(super) const fn at(&self, line: i128) -> i128 {
        (line - self.stretch.first) * self.measure.step
    }

    /// Where the tape, or the part of it that is drawn, ends.
    pub(super) fn width(&self) -> i128 {
        self.end.unwrap_or(self.at(self.stretch.last)) + self.measure.line
    }

    /// Every text.
    pub(super) fn labels(&self) -> Vec<Label> {
        let Measure { line, gap, .. } = self.measure;
        let rule = &self.drawing.rule;
        let flag = |line| Some(format!("{} {}", rule.flag(line)?, rule.flagged().0));
        let numbers = self.on_tape(Row::Number, rule.interval(0), |line| Some(rule.number(line)?.to_string()));
        let flags = self.on_tape(Row::Flag, rule.per_flag(), flag);
        let ends = (self.stretch.begins.then_some(line + gap), self.end.map(|end| end - gap));

        let reading = self.centered(Row::Reading, self.drawing.caption(), self.drawing.line);
        let mut labels = vec![reading.kept_within(Some(0), Some(self.width()))];
        labels.extend(self.counts());
        labels.extend(numbers.chain(flags).map(|label| label.kept_within(ends.0, ends.1)));
        labels
    }

    /// The texts of the lines that have one or, where these would meet, of every second, fifth, tenth .. such line.
    fn on_tape(&self, row: Row, every: i128, text: impl Fn(i128) -> Option<String>) -> impl Iterator<Item = Label> {
        const MANY: [i128; 9] = [1, 2, 5, 10, 20, 50, 100, 200, 500];
        let Measure { step, line, gap, .. } = self.measure;
        let written = self.stretch.lines().filter_map(|line| Some(self.centered(row, text(line)?, line)));
        let mut labels: Vec<_> = written.collect();
        let widest = labels.iter().map(Label::width).max().unwrap_or(0);
        // At an end of the tape a text is moved in, by half its width and what lies outside of it.
        let moved = if self.stretch.begins || self.end.is_some() { widest / 2 + gap + line } else { 0 };
        let needed = widest + gap + moved;
        // No stretch has as many steps as the last: it leaves one text.
        let fits = |many: i128| many * every > self.stretch.steps() || many * every * step >= needed;
        let many = MANY.into_iter().find(|many| fits(*many)).unwrap_or(MANY[MANY.len() - 1]);
        labels.retain(|label| label.line % (many * every) == 0);
        labels.into_iter()
    }

    /// The counts beside the arrow, if there is room for them between the lines.
    fn counts(&self) -> impl Iterator<Item = Label> {
        let Measure { step, arrow, advance, .. } = self.measure;
        let digit = advance[Row::Count as usize];
        let has_room = digit <= step && digit + arrow <= 2 * step;
        let counted = self.drawing.rule.counted(self.drawing.line).filter(move |_| has_room);
        counted.map(|(line, count)| self.centered(Row::Count, count.to_string(), line))
    }

    #[allow(clippy::cast_possible_wrap)] // a text has no 2^63 characters
    fn centered(&self, row: Row, text: String, line: i128) -> Label {
        let width = text.chars().count() as i128 * self.measure.advance[row as usize];
        let left = self.at(line) + (self.measure.line - width).div_euclid(2);
        Label { row, line, text, span: left..left + width }
    }
}

impl Label {
    fn width(&self) -> i128 {
        self.span.end - self.span.start
    }

    /// Moved as little as puts it behind `near` and, where it is short enough for both, before `far`.
    fn kept_within(self, near: Option<i128>, far: Option<i128>) -> Self {
        let width = self.width();
        let left = far.map_or(self.span.start, |far| self.span.start.min(far - width));
        let left = near.map_or(left, |near| left.max(near));
        Self { span: left..left + width, ..self }
    }
}
