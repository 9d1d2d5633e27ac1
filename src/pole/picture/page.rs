//! The pages of a pole: how much of it goes on each, how they overlap, and in which order they come.

use alloc::format;
use alloc::vec::Vec;

use super::sheet::Stretch;
use super::{Picture, Place, Sheet, paper};
use crate::length::{Length, Unit};
use crate::pole::PoleError;

/// How much of the pole is on both of two neighbors.
const OVERLAP: Place = paper::mils(1000);
/// The longest page that the document format has, less a little: 200 in.
const LONGEST_PAGE: Place = paper::mils(199_000);
/// More pages than anybody joins.
const MOST_PAGES: usize = 2000;
/// The narrowest roll with room for one row, and the widest that is made.
const LEAST_ROLL: Length =
    Length::fraction(2 * paper::MARGIN + paper::HEADING + paper::BAND + paper::CHECK, 1_000_000, Unit::Inch);
const MOST_ROLL: Length = Length::new(72, Unit::Inch);

/// What a pole is printed on, in true size.
///
/// Sheets lie on their side, and the pole goes along them; on a roll it goes along the roll, on one page if it is no
/// longer than 16 ft.
///
/// ```
/// use scantling::{Length, Paper, Unit};
///
/// assert_eq!(Paper::default(), Paper::Letter);
/// assert_ne!(Paper::Roll(Length::new(24, Unit::Inch)), Paper::Roll(Length::new(36, Unit::Inch)));
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Paper {
    /// 8 1/2 in by 11 in.
    #[default]
    Letter,
    /// 210 mm by 297 mm.
    A4,
    /// A roll this wide.
    Roll(Length),
}

impl Paper {
    /// How wide and how high its pages are for a pole.
    fn size(self, picture: &Picture<'_>) -> Result<(Place, Place), PoleError> {
        let width = match self {
            Self::Letter => return Ok((paper::mils(11_000), paper::mils(8_500))),
            // 297 mm and 210 mm, to the nearest millionth of an inch.
            Self::A4 => return Ok((11_692_913, 8_267_717)),
            Self::Roll(width) => width,
        };
        let fits = (LEAST_ROLL..=MOST_ROLL).contains(&width);
        let refused = PoleError::RollWidth { width, least: LEAST_ROLL, most: MOST_ROLL };
        let high = super::place(width).filter(|_| fits).ok_or(refused)?;
        let wide = picture.length.max(paper::LEAST_WIDTH) + 2 * (paper::MARGIN + paper::DATUM);
        Ok((wide.min(LONGEST_PAGE), high))
    }
}

/// How a pole is cut into pages.
pub(in crate::pole) struct Pages<'a> {
    picture: &'a Picture<'a>,
    size: (Place, Place),
    /// How much of the pole is on a page, and how far the next begins from it.
    room: Place,
    advance: Place,
    along: usize,
    /// How many rows are on a page, and how many pages that makes for each stretch.
    rows: usize,
    deep: usize,
}

impl<'a> Pages<'a> {
    pub(in crate::pole) fn new(picture: &'a Picture<'a>, on: Paper) -> Result<Self, PoleError> {
        let size = on.size(picture)?;
        let whole = size.0 - 2 * (paper::MARGIN + paper::DATUM);
        // To half an inch on sheets, so that pages begin at round numbers.
        let half = paper::mils(500);
        let room = if matches!(on, Paper::Roll(_)) { whole } else { whole - whole % half };
        let advance = room - OVERLAP;
        let more = (picture.length - room).max(0);
        let along = usize::try_from(more / advance + i64::from(more % advance > 0) + 1).unwrap_or(usize::MAX);
        let rows = (size.1 - 2 * paper::MARGIN - paper::HEADING - paper::CHECK) / paper::BAND;
        let rows = usize::try_from(rows).unwrap_or(1).max(1);
        let deep = picture.rows.len().max(1).div_ceil(rows);
        let count = along.saturating_mul(deep);
        if count > MOST_PAGES {
            return Err(PoleError::TooMany { count: count as u128, what: "pages", most: MOST_PAGES as u128 });
        }
        Ok(Self { picture, size, room, advance, along, rows, deep })
    }

    pub(in crate::pole) fn count(&self) -> usize {
        self.along * self.deep
    }

    /// Every page of the first rows from the datum on, then those of the next.
    pub(in crate::pole) fn sheets(&self) -> impl Iterator<Item = Sheet> {
        let all = (0..self.deep).flat_map(|deep| (0..self.along).map(move |along| (along, deep)));
        all.zip(1..).map(|((along, deep), number)| self.sheet(along, deep, number))
    }

    fn sheet(&self, along: usize, deep: usize, number: usize) -> Sheet {
        let stretch = self.stretch(along);
        let rows: Vec<_> = self.picture.rows.chunks(self.rows).collect();
        let rows = rows.get(deep).copied().unwrap_or_default();
        let figure = |place| self.picture.figures.mark_text(Length::fraction(place, 1_000_000, Unit::Inch));
        let from = figure(stretch.from);
        let to = if stretch.behind.is_none() { "the end".into() } else { figure(stretch.to) };
        let mut which = format!("page {number} of {}: from {from} to {to}", self.count());
        if self.along > 1 {
            which += "; cut at a join, and lay it on the join of that number on the page beside it";
        }
        Sheet::new(self.picture, self.size, &stretch, rows, &which)
    }

    #[allow(clippy::cast_possible_wrap)] // at most `MOST_PAGES`
    fn stretch(&self, along: usize) -> Stretch {
        let from = along as i64 * self.advance;
        let end = from + self.room;
        let behind = (along + 1 < self.along).then(|| (along + 1, end - OVERLAP / 2));
        let before = (along > 0).then(|| (along, from + OVERLAP / 2));
        let left = (self.size.0 - self.room) / 2;
        Stretch { from, to: end.min(self.picture.length), end, left, before, behind }
    }
}
