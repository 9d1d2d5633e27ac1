//! The order of work: what is done when, and which list or pole is at hand then.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::back::Back;
use super::base::Base;
use super::case::TopAt;
use super::front_set::FrontKind;
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
            String::from(
                "Cut the parts of the cut list; mark the face and the edge that show, and which end is up. Mark left and right.",
            ),
            self.marking(),
        ]);
        steps.extend(self.joinery());
        steps.push(format!("Dry-fit the box. Its two diagonals must agree. Then join it{}.", self.closing_up()));
        steps.extend(self.front());
        steps.push("Sand, finish, and fasten the case to the wall where it could tip.".into());
        steps
    }

    fn marking(&self) -> String {
        let what = if self.levels().holes.is_empty() { "bottom, shelves and top" } else { "bottom, top and the rows of holes" };
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
            steps.push("Mark stiles and rails from the pole \"frame\", join the frame, and nail it along the nail lines.".into());
        }
        steps.extend(self.case.fronts.map(|set| hanging(set.kind, set.mount)));
        if self.case.molding > Length::ZERO {
            steps.push("Miter the molding: cut to the long points, the front first, the returns to fit it.".into());
        }
        steps
    }
}

fn hanging(kind: FrontKind, mount: Mount) -> String {
    let (what, how) = match kind {
        FrontKind::Doors(_) => ("doors", "hang them"),
        FrontKind::Drawers(0 | 1, _) => ("drawer fronts", "fasten them"),
        FrontKind::Drawers(..) => ("drawer fronts", "mark their places from the pole \"drawer fronts\", and fasten them"),
    };
    match mount {
        Mount::Inset { gap } => {
            format!("Measure the openings as they are, cut the {what} to them, and {how} with a gap of {gap} all round.")
        }
        Mount::Overlay { past, gap } => {
            format!("Cut the {what}, and {how} {past} past each edge of the opening, with a gap of {gap} between two.")
        }
    }
}
