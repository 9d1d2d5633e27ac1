//! What stands round the lengths of a size: a legend such as `H x W x D:`, the same size restated in other units, a
//! unit for all behind a bracket or an axis. The lengths themselves are left to `size.rs`.

use super::axis::{Axis, split_axis};
use super::error::{ParseError, ParseErrorKind as Kind};
use super::piece::Piece;
use super::separator::{is_times, separator, split};
use crate::length::Unit;

/// A size, taken apart.
#[derive(Clone, Copy)]
pub(super) struct Outline<'a> {
    pub(super) lengths: Piece<'a>,
    pub(super) legend: Option<Legend<'a>>,
    /// The same size in other units.
    pub(super) restated: Option<Piece<'a>>,
    /// The unit for all that stands behind a bracket or an axis.
    pub(super) unit: Option<Unit>,
}

/// The axes of all lengths, and where they are named.
#[derive(Clone, Copy)]
pub(super) struct Legend<'a> {
    piece: Piece<'a>,
    axes: [Option<Axis>; 3],
    count: usize,
}

impl<'a> Outline<'a> {
    pub(super) fn of(whole: Piece<'a>) -> Result<Self, ParseError> {
        let mut outline = Self { lengths: whole, legend: None, restated: None, unit: None };
        outline.front()?;
        // A legend, a unit and a restated size may stand behind the lengths, each once.
        for _ in 0..3 {
            outline.behind();
        }
        Ok(outline)
    }

    /// `H x W x D: 97 x 50.5 x 58`, with an equals sign, in brackets, or all in one word.
    fn front(&mut self) -> Result<(), ParseError> {
        let text = self.lengths.text();
        if let Some(at) = text.find([':', '=']) {
            let (piece, lengths) = self.lengths.around(at, at + 1);
            // `W: 24 x H: 36` has its colons inside; a legend has its separators before the colon.
            if let Some(legend) = Legend::of(piece) {
                (self.legend, self.lengths) = (Some(legend), lengths);
            } else if separator(piece.text()).is_some() && !piece.text().contains(|letter: char| letter.is_ascii_digit()) {
                return Err(unknown(piece));
            }
            return Ok(());
        }
        let end = match text.find(')').filter(|_| text.starts_with('(')) {
            Some(close) => close + 1,
            None => text.find(char::is_whitespace).unwrap_or(0),
        };
        if let Some(legend) = Legend::of(self.lengths.part(0, end)) {
            (self.legend, self.lengths) = (Some(legend), self.lengths.part(end, text.len()));
        }
        Ok(())
    }

    /// What stands behind the lengths, one thing at a time.
    fn behind(&mut self) {
        if let Some((open, inside)) = last_bracket(self.lengths) {
            return self.bracket(self.lengths.part(0, open), inside);
        }
        let text = self.lengths.text();
        let is_size = |piece: Piece<'_>| separator(piece.text()).is_some();
        let halves = text.find(" / ").map(|at| self.lengths.around(at, at + 3));
        match halves.filter(|(front, behind)| is_size(*front) && is_size(*behind)) {
            Some((front, behind)) if self.restated.is_none() => (self.restated, self.lengths) = (Some(behind), front),
            _ => self.word(),
        }
    }

    fn bracket(&mut self, front: Piece<'a>, inside: Piece<'a>) {
        match Legend::of(inside) {
            Some(legend) if self.legend.is_none() => (self.legend, self.lengths) = (Some(legend), front),
            None if front.text().is_empty() => self.lengths = inside,
            None if self.unit.is_none() && inside.unit().is_some() => (self.unit, self.lengths) = (inside.unit(), front),
            None if self.restated.is_none() && separator(inside.text()).is_some() => {
                (self.restated, self.lengths) = (Some(inside), front);
            }
            _ => {}
        }
    }

    fn word(&mut self) {
        let text = self.lengths.text();
        let is_end = |letter: char| letter.is_whitespace() || matches!(letter, ')' | ']');
        let Some(end) = text.char_indices().rfind(|(_, letter)| is_end(*letter)) else { return };
        let at = end.0 + end.1.len_utf8();
        let (front, last) = self.lengths.around(at, at);
        match (Legend::of(last), last.unit()) {
            (Some(legend), _) if self.legend.is_none() => (self.legend, self.lengths) = (Some(legend), front),
            (None, Some(unit)) if self.unit.is_none() && may_share(front) => (self.unit, self.lengths) = (Some(unit), front),
            _ => {}
        }
    }
}

/// Whether a unit behind this one is for all lengths: behind an axis, or behind a bracket round a size.
fn may_share(front: Piece<'_>) -> bool {
    let in_brackets = || last_bracket(front).is_some_and(|(_, inside)| separator(inside.text()).is_some());
    front.text().ends_with(|letter: char| letter.is_ascii_alphabetic() || letter == ')')
        && (split_axis(front).1.is_some() || in_brackets())
}

/// The bracket that ends a piece: where it opens, and what is inside.
pub(super) fn last_bracket(piece: Piece<'_>) -> Option<(usize, Piece<'_>)> {
    let text = piece.text();
    let open = match text.as_bytes() {
        [.., b')'] => text.rfind('(')?,
        [.., b']'] => text.rfind('[')?,
        _ => return None,
    };
    Some((open, piece.part(open + 1, text.len() - 1)))
}

impl<'a> Legend<'a> {
    /// Two or three names of axes and nothing else, in brackets or not: `H x W x D`, `HxWxD`, `(W by H)`.
    fn of(piece: Piece<'a>) -> Option<Self> {
        let inside = last_bracket(piece).filter(|(open, _)| *open == 0).map_or(piece, |(_, inside)| inside);
        let (mut axes, mut count) = ([None; 3], 0);
        let times = |letter: char| is_times(letter) || matches!(letter, 'x' | 'X');
        for name in inside.text().split(times).flat_map(|names| names.split(" by ")) {
            *axes.get_mut(count)? = Some(Axis::named(name.trim().trim_end_matches('.'))?);
            count += 1;
        }
        (count > 1).then_some(Self { piece, axes, count })
    }

    /// The axes of as many lengths, which must be all that it names.
    pub(super) fn axes_of(&self, count: usize) -> Result<[Option<Axis>; 3], ParseError> {
        if self.count == count { Ok(self.axes) } else { Err(self.piece.refuse(Kind::LegendMismatch)) }
    }
}

/// The word of a legend that names no axis.
fn unknown(legend: Piece<'_>) -> ParseError {
    match split(legend) {
        Ok((pieces, count)) => {
            let odd = pieces[..count].iter().find(|piece| Axis::named(piece.text()).is_none());
            odd.unwrap_or(&legend).refuse(Kind::UnknownAxis)
        }
        Err(error) => error,
    }
}
