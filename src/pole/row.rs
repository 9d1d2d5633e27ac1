//! A row: the marks on one face of the stick, in order from the datum. Laying rows side by side on one stick is left
//! to `mod.rs`.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::label::name;
use super::{Mark, PartSide, PoleError};
use crate::length::Length;
use crate::spacing::{Edge, Layout};

/// More members than this are no row that anybody marks.
const MOST_MARKS: usize = 1_000_000;

/// One face of a [`StoryPole`](crate::StoryPole): base cases, doors, the frame.
///
/// Marks stand in order from the datum, whatever the order they came in.
///
/// ```
/// use scantling::{Length, Mark, PartSide, Row, Unit};
///
/// let at = |count, name| Mark::new(Length::new(count, Unit::Inch), name, PartSide::Past);
/// let row = Row::new("frame", [at(40, "upper rail"), at(4, "lower rail")]);
/// assert_eq!(row.marks()[0].name, "lower rail");
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Row {
    pub(super) name: String,
    pub(super) marks: Vec<Mark>,
    pub(super) closes: Option<(Length, Length)>,
}

impl Row {
    /// A row of these marks.
    ///
    /// ```
    /// use scantling::Row;
    ///
    /// assert_eq!(Row::new("doors", []).name(), "doors");
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, marks: impl IntoIterator<Item = Mark>) -> Self {
        let mut marks: Vec<_> = marks.into_iter().collect();
        marks.sort();
        Self { name: name.into(), marks, closes: None }
    }

    /// A row of the members of a layout, marked at this edge: `shelf 1`, `shelf 2`, each with its thickness. Members
    /// without width, as between equal parts, are lines alone.
    ///
    /// ```
    /// use scantling::{Edge, Length, PartSide, Row, Spacing, Unit};
    ///
    /// let shelves = Spacing::equal_openings(4, Length::fraction(3, 4, Unit::Inch)).over(Length::new(72, Unit::Inch))?;
    /// let row = Row::try_from_layout("side", "shelf", &shelves, Edge::Near)?;
    /// let second = &row.marks()[1];
    /// assert_eq!((second.name.as_str(), second.side), ("shelf 2", PartSide::Past));
    /// assert_eq!(second.position, Length::fraction(567, 20, Unit::Inch)); // 28 7/20 in
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`PoleError::TooMany`] for more than a million members, [`PoleError::OutOfRange`] when a width cannot be held.
    pub fn try_from_layout(name: impl Into<String>, part: &str, layout: &Layout, edge: Edge) -> Result<Self, PoleError> {
        if layout.members() > MOST_MARKS {
            let (count, most) = (layout.members() as u128, MOST_MARKS as u128);
            return Err(PoleError::TooMany { count, what: "marks", most });
        }
        let mark = |member: crate::spacing::MemberMark| {
            let named = format!("{part} {}", member.number());
            let thickness = member.far().checked_sub(member.near()).ok_or_else(|| PoleError::out_of_range(&named))?;
            Ok(if thickness.is_zero() {
                Mark::new(member.near(), named, PartSide::Line)
            } else {
                Mark::new(member.at(edge), named, edge.into()).thick(thickness)
            })
        };
        let marks = layout.marks().map(mark).collect::<Result<Vec<_>, PoleError>>()?;
        Ok(Self::new(name, marks))
    }

    /// A row of parts laid end to end from the datum, each marked at its nearer edge: the sizes on a drawing, added up.
    /// With [`closing`](Self::closing) the check of a pole tells whether they make the total that is printed there.
    ///
    /// ```
    /// use scantling::{Length, Row, Unit};
    ///
    /// let inches = |count| Length::new(count, Unit::Inch);
    /// let row = Row::try_from_parts("base cases", [("case 1", inches(36)), ("case 2", inches(30))])?;
    /// assert_eq!(row.marks()[1].checked_edges(), Some((inches(36), inches(66))));
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`PoleError::OutOfRange`] when a place cannot be held.
    pub fn try_from_parts<'a>(
        name: impl Into<String>,
        parts: impl IntoIterator<Item = (&'a str, Length)>,
    ) -> Result<Self, PoleError> {
        let mut next = Length::ZERO;
        let place = |(part, size): (&str, Length)| {
            let mark = Mark::new(next, part, PartSide::Past).thick(size);
            next = next.checked_add(size).ok_or_else(|| PoleError::out_of_range(part))?;
            Ok(mark)
        };
        Ok(Self::new(name, parts.into_iter().map(place).collect::<Result<Vec<_>, PoleError>>()?))
    }

    /// The same row, which must reach from one place to another: the check of a pole tells if it does not.
    ///
    /// ```
    /// use scantling::{Length, Row, Unit};
    ///
    /// let wall = Length::new(120, Unit::Inch);
    /// assert_eq!(Row::new("base cases", []).closing(Length::ZERO, wall).closes(), Some((Length::ZERO, wall)));
    /// ```
    #[must_use]
    pub fn closing(self, from: Length, to: Length) -> Self {
        Self { closes: Some((from, to)), ..self }
    }

    /// The same row farther from the datum by this much: what lies inside a case, moved up by its bottom.
    ///
    /// ```
    /// use scantling::{Length, Mark, PartSide, Row, Unit};
    ///
    /// let bottom = Length::fraction(3, 4, Unit::Inch);
    /// let row = Row::new("side", [Mark::new(Length::new(14, Unit::Inch), "shelf", PartSide::Past)]);
    /// assert_eq!(row.try_shifted(bottom)?.marks()[0].position, Length::fraction(59, 4, Unit::Inch));
    /// # Ok::<(), scantling::PoleError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`PoleError::OutOfRange`] when a place cannot be held.
    pub fn try_shifted(&self, by: Length) -> Result<Self, PoleError> {
        let out_of_range = || PoleError::out_of_range(&self.name);
        let moved = |mark: &Mark| Some(mark.moved(mark.position.checked_add(by)?));
        let marks = self.marks.iter().map(moved).collect::<Option<Vec<_>>>().ok_or_else(out_of_range)?;
        let closes = match self.closes {
            Some((from, to)) => Some((from.checked_add(by).zip(to.checked_add(by))).ok_or_else(out_of_range)?),
            None => None,
        };
        Ok(Self { name: self.name.clone(), marks, closes })
    }

    /// What the row is called.
    ///
    /// ```
    /// assert_eq!(scantling::Row::new("upper doors", []).name(), "upper doors");
    /// ```
    #[must_use]
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Its marks, in order from the datum.
    ///
    /// ```
    /// assert!(scantling::Row::new("upper doors", []).marks().is_empty());
    /// ```
    #[must_use]
    pub fn marks(&self) -> &[Mark] {
        &self.marks
    }

    /// From where to where the row must reach, if that was said.
    ///
    /// ```
    /// assert_eq!(scantling::Row::new("upper doors", []).closes(), None);
    /// ```
    #[must_use]
    pub const fn closes(&self) -> Option<(Length, Length)> {
        self.closes
    }

    /// Seen from the other end of a stick. All that is worked out here could be held when the row came to its pole.
    pub(super) fn flipped(&self, length: Length) -> Self {
        let turned = |place: Length| length.checked_sub(place).unwrap_or_default();
        let flip = |mark: &Mark| Mark { side: mark.side.flipped(), ..mark.moved(turned(mark.position)) };
        let closes = self.closes.map(|(from, to)| (turned(to), turned(from)));
        Self { closes, ..Self::new(self.name.clone(), self.marks.iter().map(flip)) }
    }

    /// Whether all that belongs to it can be held, from either end of a stick of this length.
    pub(super) fn held(&self, length: Length) -> Result<(), PoleError> {
        let from_both = |place: Length| length.checked_sub(place).and_then(|turned| length.checked_sub(turned));
        for mark in &self.marks {
            match mark.thickness {
                Some(thickness) if mark.side == PartSide::Line => {
                    return Err(PoleError::ThickLine { mark: name(&mark.name), thickness });
                }
                Some(thickness) if thickness.is_negative() => {
                    return Err(PoleError::NegativeThickness { mark: name(&mark.name), thickness });
                }
                _ => {}
            }
            let edges = mark.checked_edges().and_then(|(near, far)| from_both(near).zip(from_both(far)));
            if edges.and(from_both(mark.position)).is_none() {
                return Err(PoleError::out_of_range(&mark.name));
            }
        }
        match self.closes {
            Some((from, to)) if from >= to => Err(PoleError::ClosesBackward { row: name(&self.name), from, to }),
            Some((from, to)) if from_both(from).zip(from_both(to)).is_none() => Err(PoleError::out_of_range(&self.name)),
            _ => Ok(()),
        }
    }
}
