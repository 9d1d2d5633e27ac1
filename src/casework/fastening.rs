//! Where nails go, and how stock is pocketed: settings by thickness, lines by position. Common practice, no source, where
//! nothing else is said.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::case::{Case, TopAt};
use super::error::CaseworkError;
use super::levels::{Level, Levels};
use crate::length::{Length, Unit};

/// A line along which nails go.
///
/// ```
/// use scantling::{Case, FaceFrame, Length, Overall, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let frame = FaceFrame::new(inches(3, 4), inches(3, 2)).past_sides(inches(1, 4), inches(1, 4));
/// let case = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).frame(frame).measured_over(Overall::Frame);
/// let plan = case.plan()?;
/// assert_eq!(plan.nail_lines()[0].to_string(), "5/8\" from the outer edge of the left stile, into the middle of the side's edge");
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct NailLine {
    /// How far it is from where it is measured.
    pub at: Length,
    /// What it is measured from.
    pub from: &'static str,
    /// What the nails go into.
    pub into: String,
}

impl core::fmt::Display for NailLine {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(out, "{} from {}, into {}", self.at, self.from, self.into)
    }
}

impl Case {
    /// A frame is nailed into the middle of the edges that it covers, which its overhang moves; the bottom, fixed shelves and a
    /// top between the sides are nailed through the sides, on lines that are given on their outsides; a top that lies on the
    /// sides is nailed down into their upper ends. Partitions are nailed through bottom and top.
    pub(super) fn find_nail_lines(&self, levels: &Levels) -> Result<Vec<NailLine>, CaseworkError> {
        let half = self.side.checked_div(2).ok_or(CaseworkError::TooLarge)?;
        let mut lines = Vec::new();
        if let Some(frame) = self.frame {
            let stiles =
                [("the outer edge of the left stile", frame.past[0]), ("the outer edge of the right stile", frame.past[1])];
            for (from, past) in stiles {
                let at = half.checked_add(past).ok_or(CaseworkError::TooLarge)?;
                lines.push(NailLine { at, from, into: "the middle of the side's edge".into() });
            }
        }
        lines.push(through_side(levels.bottom, "the bottom")?);
        for (number, level) in levels.shelves.iter().enumerate() {
            lines.push(through_side(*level, &format!("shelf {}", number + 1))?);
        }
        lines.push(match self.top_at {
            TopAt::BetweenSides(_) => through_side(levels.top, "the top")?,
            TopAt::OverSides { past_sides, .. } => {
                let at = half.checked_add(past_sides).ok_or(CaseworkError::TooLarge)?;
                let into = "the middle of the side's upper end".into();
                NailLine { at, from: "each end of the top, on its upper face", into }
            }
        });
        for number in 1..self.bays {
            let at = self.partition_center(number).ok_or(CaseworkError::TooLarge)?;
            let into = format!("the middle of partition {number}");
            lines.push(NailLine { at, from: "the outside of the left side, on the bottom and on the top", into });
        }
        Ok(lines)
    }
}

/// Into the middle of the edge of a panel that lies flat.
fn through_side(level: Level, panel: &str) -> Result<NailLine, CaseworkError> {
    let middle = level.lower.checked_add(level.upper).and_then(|sum| sum.checked_div(2));
    let at = middle.ok_or(CaseworkError::TooLarge)?;
    Ok(NailLine { at, from: "the lower end of each side, on its outside", into: format!("the middle of {panel}") })
}

/// How stock is pocketed and screwed. Try it on scrap first: screws differ.
///
/// ```
/// use scantling::{Length, Unit, pocket_hole};
///
/// let three_quarters = Length::fraction(3, 4, Unit::Inch);
/// let pocket = pocket_hole(three_quarters, three_quarters)?;
/// assert_eq!((pocket.setting, pocket.screw), (three_quarters, Length::fraction(5, 4, Unit::Inch)));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct PocketHole {
    /// The thickness that the guide is set to.
    pub setting: Length,
    /// How long the screw is.
    pub screw: Length,
}

/// The pocket in stock of one thickness, for a screw into stock of another. Both decide.
///
/// Common practice, no source: 1/2 in into 1/2 in takes 1 in screws and 3/4 in into 3/4 in takes 1 1/4 in; 1 1/2 in into
/// 1 1/2 in takes 2 1/2 in, as a trade page has it.
///
/// # Errors
///
/// When these thicknesses are not among them: nothing is read between two entries.
///
/// ```
/// use scantling::{Length, Unit, pocket_hole};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let refused = pocket_hole(inches(3, 4), inches(1, 2)).unwrap_err();
/// assert_eq!(refused.to_string(), "no pocket setting is known for 3/4\" into 1/2\" stock: ask the maker of the screws");
/// ```
pub fn pocket_hole(held: Length, into: Length) -> Result<PocketHole, CaseworkError> {
    const fn quarters(count: i64) -> Length {
        Length::fraction(count, 4, Unit::Inch)
    }
    const ROWS: [(Length, Length, Length); 3] = [
        (quarters(2), quarters(2), quarters(4)),
        (quarters(3), quarters(3), quarters(5)),
        (quarters(6), quarters(6), quarters(10)),
    ];
    let row = ROWS.iter().find(|row| (row.0, row.1) == (held, into));
    row.map(|row| PocketHole { setting: row.0, screw: row.2 }).ok_or(CaseworkError::NoSetting { held, into })
}
