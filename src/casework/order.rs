//! The order of work: what is done when, and which list or pole is at hand then.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::back::Back;
use super::base::Base;
use super::case::TopAt;
use super::front_set::{FrontKind, FrontSet};
use super::fronts::Mount;
use super::joint::Joint;
use super::plan::CasePlan;
use super::shelving::PinHoles;
use crate::length::Length;

impl CasePlan {
    /// The steps of the work in order, each naming the list or the story pole to use. Common practice, no source.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// let steps = Case::new(3 * foot, 6 * foot, foot).plan()?.order_of_work();
    /// assert!(steps[0].starts_with("Measure the stock"));
    /// assert!(steps.iter().any(|step| step.contains("pole \"side\"")));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn order_of_work(&self) -> Vec<String> {
        let mut steps = Vec::from([
            String::from(
                "Measure the stock itself: where a sheet differs from the thickness given here, work the case out again.",
            ),
            String::from("Make the story poles, and check each against its list with a tape from the datum."),
            self.cutting(),
            self.marking(),
        ]);
        steps.extend(self.joinery());
        steps.push(format!("Dry-fit the box. Its two diagonals must agree. Then join it{}.", self.closing_up()));
        steps.extend(self.front());
        steps.push("Sand, finish, and fasten the case to the wall where it could tip.".into());
        steps
    }

    /// Inset fronts are cut when their openings can be measured.
    fn cutting(&self) -> String {
        let but = match self.case.fronts {
            Some(FrontSet { kind, mount: Mount::Inset { .. }, .. }) => format!(" but the {}", kind.plural()),
            _ => String::new(),
        };
        format!(
            "Cut the parts of the cut list{but}; mark the face and the edge that show, and which end is up. Mark left and right."
        )
    }

    /// What stands on the pole of the sides.
    fn marking(&self) -> String {
        let levels = self.levels();
        let rest = [
            (!levels.shelves.is_empty(), "shelves"),
            (matches!(self.case.top_at, TopAt::BetweenSides(_)), "top"),
            (!levels.holes.is_empty(), "the rows of holes"),
        ];
        let rest: Vec<&str> = rest.into_iter().filter_map(|(is_there, what)| is_there.then_some(what)).collect();
        let what = match &rest[..] {
            [] => String::from("bottom"),
            [last] => format!("bottom and {last}"),
            [middle @ .., last] => format!("bottom, {} and {last}", middle.join(", ")),
        };
        format!(
            "Lay the sides down as a pair, lower ends level, and mark {what} from the pole \"side\" on both at once; X where the part lies."
        )
    }

    fn joinery(&self) -> Vec<String> {
        let mut steps = Vec::new();
        let as_thick = "to the actual thickness of the part that goes in";
        match self.case.joint {
            Joint::Butt => {}
            Joint::Dado(depth) => {
                steps.push(format!("Cut the dadoes {depth} deep, {as_thick}; {}.", self.how_far_dadoes_run()));
            }
            Joint::Rabbet(depth) => steps.push(format!("Cut the rabbets {depth} deep, {as_thick}.")),
        }
        match self.case.top_at {
            TopAt::BetweenSides(Joint::Rabbet(depth)) => steps.push(format!("Cut the rabbets for the top, {depth} deep.")),
            TopAt::BetweenSides(Joint::Dado(depth)) => {
                steps.push(format!("Cut the dadoes for the top, {depth} deep; {}.", self.how_far_dadoes_run()));
            }
            _ => {}
        }
        steps.extend(self.notching());
        steps
            .extend(self.notch().map(|(back, up)| {
                format!("Notch the lower front corner of both sides for the toe space: {back} back, {up} up.")
            }));
        if let Some(PinHoles { from_edges, deep, .. }) = self.case.shelves.pins() {
            steps.push(format!(
                "Drill the pin holes {deep} deep, in two rows: {from_edges} from the front edge, and {from_edges} from the rear edge of the shelf."
            ));
        }
        match self.case.back {
            Back::Rabbet { thickness, depth } => {
                steps.push(format!(
                    "Rabbet the rear edges of the sides for the back: {depth} into the thickness, {thickness} from the rear."
                ));
            }
            Back::Groove { thickness, depth, set_in } => {
                steps.push(format!(
                    "Groove sides, bottom and top for the back: {thickness} wide, {depth} deep, {set_in} in from the rear."
                ));
            }
            Back::None | Back::Applied { .. } => {}
        }
        if self.case.bays > 1 {
            steps.push("Mark the partitions on bottom and top together, from the pole \"bottom and top\".".into());
        }
        steps
    }

    /// How far back and how high each side is notched. The recess is measured from the face of a frame, the notch from the
    /// edge that the frame covers.
    fn notch(&self) -> Option<(Length, Length)> {
        let Base::SidesToFloor { height, recess, .. } = self.case.base else { return None };
        let back = recess.checked_sub(self.case.frame_stock())?;
        (back > Length::ZERO).then_some((back, height))
    }

    const fn closing_up(&self) -> &'static str {
        match self.case.back {
            Back::None => "",
            Back::Groove { .. } => ", the back loose in its groove",
            Back::Applied { .. } | Back::Rabbet { .. } => ", and let the back hold it square",
        }
    }

    fn front(&self) -> Vec<String> {
        let mut steps = Vec::new();
        if let Base::Separate { .. } = self.case.base {
            steps.push("Build the base, level it from the high point of the floor, and set the case on it.".into());
        }
        if self.case.frame.is_some() {
            let mullions = if self.case.bays > 1 { ", the mullions on the rails from the pole \"rails\"" } else { "" };
            steps.push(format!(
                "Mark stiles and rails from the pole \"frame\"{mullions}, join the frame, and nail it along the nail lines."
            ));
        }
        steps.extend(self.case.fronts.map(hanging));
        if self.case.molding > Length::ZERO {
            steps.push("Miter the molding: cut to the long points, the front first, the returns to fit it.".into());
        }
        steps
    }
}

/// Inset fronts are cut to their openings, all others are cut already.
fn hanging(FrontSet { kind, mount, .. }: FrontSet) -> String {
    match mount {
        Mount::Inset { gap } => {
            let fasten = match kind {
                FrontKind::Doors(_) => "and hang them",
                FrontKind::Drawers(0 | 1, _) => "and fasten them",
                FrontKind::Drawers(..) => "mark their places from the pole \"drawer fronts\", and fasten them",
            };
            format!(
                "Measure the openings as they are, cut the {} to them, {fasten} with a gap of {gap} all round.",
                kind.plural()
            )
        }
        Mount::Overlay { past, gap } => {
            let fasten = match kind {
                FrontKind::Doors(_) => "Hang the doors",
                FrontKind::Drawers(0 | 1, _) => "Fasten the drawer fronts",
                FrontKind::Drawers(..) => "Mark the places of the drawer fronts from the pole \"drawer fronts\", and fasten them",
            };
            format!("{fasten} {past} past each edge of the opening, with a gap of {gap} between two.")
        }
    }
}
