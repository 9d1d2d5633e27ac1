//! Where a case is unwise: its joints, its holes, its openings, its frame and its fronts looked at. How each is said is left to
//! `advice.rs`, whether the case goes into its place and its parts into their stock to `placing.rs`.

use alloc::vec::Vec;

use super::advice::Advice;
use super::case::{Case, TopAt};
use super::front_set::{FrontKind, FrontSet};
use super::fronts::Mount;
use super::joint::Joint;
use super::plan::CasePlan;
use crate::length::{Length, Unit};
use crate::tape::Tape;

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
        found.extend(self.thin_partition());
        found.extend(self.deep_joint());
        found.extend(self.holes_through());
        found.extend(self.pin_rows());
        found.extend(self.dado_shows());
        found
            .extend(self.levels().openings().filter(|opening| *opening < THREE).map(|opening| Advice::NarrowOpening { opening }));
        found.extend(self.frame_advice());
        found.extend(self.front_advice());
        found.extend(self.ends_that_matter(tape));
        found
    }

    fn deep_joint(&self) -> Option<Advice> {
        let case = &self.case;
        let mut joints = Vec::from([(case.joint, "side", case.side)]);
        // A rabbet at the end of a side weakens it less than a dado there.
        if let TopAt::BetweenSides(joint @ Joint::Dado(_)) = case.top_at {
            joints.push((joint, "side", case.side));
        }
        if case.bays > 1 {
            joints.extend([(case.joint, "bottom", case.bottom), (case.joint, "top", case.top)]);
        }
        let is_deep =
            |(joint, _, thickness): &(Joint, _, Length)| joint.depth().checked_mul(3).is_some_and(|three| three > *thickness);
        let deep = joints.into_iter().find(is_deep)?;
        Some(Advice::DeepJoint { joint: deep.0, panel: deep.1, thickness: deep.2 })
    }

    fn holes_through(&self) -> Option<Advice> {
        let (deep, side) = (self.case.shelves.pins()?.deep, self.case.side);
        (deep >= side).then_some(Advice::HolesThrough { deep, side })
    }

    /// The front row lies from the front edge of the side, the rear one from the rear edge of the shelf.
    fn pin_rows(&self) -> Option<Advice> {
        let from_edges = self.case.shelves.pins()?.from_edges;
        let (depth, set_back) = (self.case.shelf_depth().total().ok()?, self.case.set_back);
        if from_edges == Length::ZERO || from_edges >= depth {
            return Some(Advice::PinRowsOff { from_edges, depth });
        }
        if from_edges.checked_mul(2)? >= depth {
            return Some(Advice::PinRowsCross { from_edges, depth });
        }
        (from_edges <= set_back).then_some(Advice::PinRowBare { from_edge: from_edges, set_back })
    }

    fn dado_shows(&self) -> Option<Advice> {
        let by = self.case.set_back.checked_sub(self.case.stopped)?;
        (by > Length::ZERO && self.case.has_dadoed_shelves()).then_some(Advice::DadoShows { by })
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

    fn front_advice(&self) -> Vec<Advice> {
        let Some(set) = self.case.fronts else { return Vec::new() };
        let mut found = Vec::new();
        match set.mount {
            Mount::Inset { .. } => found.extend(self.reaching_in(set)),
            Mount::Overlay { past, gap } => {
                let past_all = self.case.laid_on().into_iter().find(|(_, wide)| past > *wide);
                found.extend(past_all.map(|(onto, wide)| Advice::OverlayPast { past, onto, wide }));
                found.extend(self.top_in_the_way(past));
                found.extend(self.fronts_that_meet(past, gap));
            }
        }
        let has_drawers = matches!(set.kind, FrontKind::Drawers(..));
        found.extend((has_drawers && self.case.shelves.count() > 0).then_some(Advice::ShelvesBehindDrawers));
        found.extend((set.mount.gap() == Length::ZERO).then_some(Advice::NoGap));
        found
    }

    fn reaching_in(&self, set: FrontSet) -> Option<Advice> {
        let (by, set_back) = (set.stock.checked_sub(self.case.frame_stock())?, self.case.set_back);
        let strikes = by > set_back && self.case.shelves.count() > 0;
        strikes.then_some(Advice::FrontsReachIn { by, set_back })
    }

    /// The top rail of a frame lies below a top that stands past the front, and has room for fronts.
    fn top_in_the_way(&self, past: Length) -> Option<Advice> {
        let (TopAt::OverSides { past_front, .. }, None) = (self.case.top_at, self.case.frame) else { return None };
        (past > Length::ZERO && past_front > Length::ZERO).then_some(Advice::TopInTheWay { past, past_front })
    }

    fn fronts_that_meet(&self, past: Length, gap: Length) -> Option<Advice> {
        let (between, wide) = match self.case.frame {
            Some(frame) => ("mullion", frame.stile),
            None => ("partition", self.case.partition),
        };
        let needed = past.checked_mul(2)?.checked_add(gap)?;
        (self.case.bays > 1 && needed > wide).then_some(Advice::FrontsMeet { needed, between, wide })
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

impl Case {
    /// What fronts are laid on around an opening, and how wide that is.
    fn laid_on(&self) -> Vec<(&'static str, Length)> {
        match self.frame {
            Some(frame) => Vec::from([("stile", frame.stile), ("bottom rail", frame.bottom_rail), ("top rail", frame.top_rail)]),
            None => Vec::from([("side", self.side), ("bottom", self.bottom), ("top", self.top)]),
        }
    }
}
