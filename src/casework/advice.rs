//! What is possible but unwise in a case, named with its figures. What is impossible is an error, in `error.rs`.

use alloc::vec::Vec;
use core::fmt;

use super::case::TopAt;
use super::joint::Joint;
use super::plan::CasePlan;
use crate::length::{Length, Unit};
use crate::tape::Tape;

/// Something in a case that a second pair of eyes would stop at.
///
/// ```
/// use scantling::{Case, Joint, Length, Tape, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).joined(Joint::Dado(inches(3, 8))).plan()?;
/// let advice = plan.advice(&Tape::sixteenths());
/// assert_eq!(advice[0].to_string(), "a dado of 3/8\" is deeper than a third of the 3/4\" side: it weakens it");
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Advice {
    /// A joint deeper than a third of the side. Common practice, no source.
    DeepJoint {
        /// The joint.
        joint: Joint,
        /// How thick the side is.
        side: Length,
    },
    /// Dadoes from both faces that leave less than a third of a partition between them. Common practice, no source.
    ThinWeb {
        /// What is left between them: below zero where they run into each other.
        web: Length,
        /// How thick the partition is.
        partition: Length,
    },
    /// Holes from both faces of a partition that meet, or nearly do.
    HolesMeet {
        /// What is left between them: below zero where they run into each other.
        left: Length,
    },
    /// Holes for shelf pins as deep as the side is thick.
    HolesThrough {
        /// How deep they are.
        deep: Length,
        /// How thick the side is.
        side: Length,
    },
    /// An opening that no hand gets into: under 3 in. Common practice, no source.
    NarrowOpening {
        /// How high it is.
        opening: Length,
    },
    /// A stile that does not cover the edge of its side.
    BareEdge {
        /// How wide the stile is.
        stile: Length,
        /// What it would have to cover.
        needed: Length,
    },
    /// A bottom rail that stands above the bottom: a lip to lift things over.
    Lip {
        /// How high the lip is.
        lip: Length,
    },
    /// A part longer than a sheet of 8 ft.
    LongPart {
        /// The part.
        part: &'static str,
        /// How long it is.
        length: Length,
    },
    /// A shelf that gets another mark when it is measured from the upper end of the side: measure both sides from below.
    EndMatters {
        /// The number of the shelf, from below.
        shelf: usize,
        /// Its mark, measured from below.
        from_below: Length,
        /// Where its mark is when it is measured from above, reckoned from below.
        from_above: Length,
    },
}

impl fmt::Display for Advice {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::DeepJoint { joint, side } => {
                let (name, depth) = (joint.name(), joint.depth());
                write!(out, "a {name} of {depth} is deeper than a third of the {side} side: it weakens it")
            }
            Self::ThinWeb { web, partition } if *web <= Length::ZERO => {
                write!(out, "dadoes from both faces cut the {partition} partition in two: leave a third, or stagger the shelves")
            }
            Self::ThinWeb { web, partition } => {
                write!(
                    out,
                    "dadoes from both faces leave {web} of the {partition} partition: leave a third, or stagger the shelves"
                )
            }
            Self::HolesMeet { left } if *left < Length::ZERO => {
                let deep = left.abs();
                write!(out, "holes from both faces run {deep} into each other: stagger the rows, or drill less deep")
            }
            Self::HolesMeet { left } => {
                write!(out, "holes from both faces leave {left} between them: stagger the rows, or drill less deep")
            }
            Self::HolesThrough { deep, side } => {
                write!(out, "pin holes {deep} deep go through the {side} side: drill less deep")
            }
            Self::NarrowOpening { opening } => write!(out, "an opening of {opening} is too low for a hand"),
            Self::BareEdge { stile, needed } => {
                write!(out, "a stile of {stile} leaves the edge of the side bare: overhang and side come to {needed}")
            }
            Self::Lip { lip } => write!(out, "the bottom rail stands {lip} above the bottom: a lip to lift things over"),
            Self::LongPart { part, length } => write!(out, "the {part} is {length} long: longer than a sheet of 96\""),
            Self::EndMatters { shelf, from_below, from_above } => {
                write!(
                    out,
                    "shelf {shelf} is marked at {from_below} from below, and at {from_above} when it is measured from above: "
                )?;
                out.write_str("measure both sides from below")
            }
        }
    }
}

impl CasePlan {
    /// What is possible and unwise, the marks judged on this tape.
    ///
    /// ```
    /// use scantling::{Case, Length, Shelves, Tape, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).shelves(Shelves::Equal(2)).plan()?;
    /// assert_eq!(plan.advice(&Tape::sixteenths()), []);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn advice(&self, tape: &Tape) -> Vec<Advice> {
        let mut found = Vec::new();
        found.extend(self.deep_joint());
        found.extend(self.holes_through());
        found.extend(self.thin_partition());
        found
            .extend(self.levels().openings().filter(|opening| *opening < THREE).map(|opening| Advice::NarrowOpening { opening }));
        found.extend(self.frame_advice());
        found.extend(self.parts().iter().filter_map(|part| {
            let length = part.length().total().ok()?;
            (length > SHEET).then_some(Advice::LongPart { part: part.name(), length })
        }));
        found.extend(self.ends_that_matter(tape));
        found
    }

    fn deep_joint(&self) -> Option<Advice> {
        let side = self.case.side;
        let third = side.checked_div(3)?;
        // A rabbet at the end of a side weakens it less than a dado there.
        let top = if let TopAt::BetweenSides(joint @ Joint::Dado(_)) = self.case.top_at { Some(joint) } else { None };
        let mut joints = core::iter::once(self.case.joint).chain(top);
        joints.find(|joint| joint.depth() > third).map(|joint| Advice::DeepJoint { joint, side })
    }

    fn holes_through(&self) -> Option<Advice> {
        let (deep, side) = (self.case.shelves.pins()?.deep, self.case.side);
        (deep >= side).then_some(Advice::HolesThrough { deep, side })
    }

    fn thin_partition(&self) -> Option<Advice> {
        let case = &self.case;
        let (partition, shelves) = (case.partition, case.shelves.count());
        if case.bays < 2 || shelves == 0 {
            return None;
        }
        if let Some(pins) = case.shelves.pins() {
            let left = partition.checked_sub(pins.deep.checked_mul(2)?)?;
            return (left < EIGHTH).then_some(Advice::HolesMeet { left });
        }
        let web = partition.checked_sub(case.joint.depth().checked_mul(2)?)?;
        (case.joint != Joint::Butt && web.checked_mul(3)? < partition).then_some(Advice::ThinWeb { web, partition })
    }

    fn frame_advice(&self) -> Vec<Advice> {
        let Some(frame) = self.case.frame else { return Vec::new() };
        let bare = frame.past.iter().filter_map(|past| {
            let needed = past.checked_add(self.case.side)?;
            (frame.stile < needed).then_some(Advice::BareEdge { stile: frame.stile, needed })
        });
        let floor = self.levels().bottom.upper - self.case.base.within_sides();
        let lip = frame.bottom_rail.checked_sub(floor).filter(|lip| *lip > Length::ZERO);
        bare.take(1).chain(lip.map(|lip| Advice::Lip { lip })).collect()
    }

    /// A mark halfway between two graduations goes up from either end, and so to two places.
    fn ends_that_matter(&self, tape: &Tape) -> impl Iterator<Item = Advice> {
        let height = self.case.side_height().total().unwrap_or_default();
        let marks = self.levels().shelves.iter().enumerate().filter_map(move |(number, level)| {
            let from_below = tape.read(level.lower).ok()?.mark();
            let from_above = height.checked_sub(tape.read(height.checked_sub(level.lower)?).ok()?.mark())?;
            (from_below != from_above).then_some(Advice::EndMatters { shelf: number + 1, from_below, from_above })
        });
        marks.collect::<Vec<_>>().into_iter()
    }
}

const THREE: Length = Length::new(3, Unit::Inch);
const EIGHTH: Length = Length::fraction(1, 8, Unit::Inch);
const SHEET: Length = Length::new(96, Unit::Inch);
