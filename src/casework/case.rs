//! A case as it is asked for: overall sizes, stock, joints, what it stands on and what stands before it. What follows
//! from that is left to `plan.rs`.

use super::allowance::Allowances;
use super::back::Back;
use super::base::Base;
use super::frame::FaceFrame;
use super::front_set::FrontSet;
use super::joint::Joint;
use super::shelving::Shelves;
use crate::length::{Length, Unit};

/// A case, described by its overall sizes and what it is made of. [`plan`](Self::plan) works out the rest.
///
/// All stock is 3/4 in until it is said to be another: measure the sheet, not its name.
///
/// ```
/// use scantling::{Case, Length, Shelves, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).shelves(Shelves::Equal(4)).plan()?;
/// let shelf = plan.parts().iter().find(|part| part.name() == "shelf").unwrap();
/// assert_eq!(shelf.length().total()?, inches(69, 2));
/// assert_eq!(shelf.length().to_string(), "overall width 36\", less two sides of 3/4\"");
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Case {
    /// The overall width.
    pub width: Length,
    /// The overall height, from the floor to the highest panel.
    pub height: Length,
    /// The overall depth.
    pub depth: Length,
    /// What width and depth are measured over.
    pub over: Overall,
    /// How thick the sides are.
    pub side: Length,
    /// How thick the shelves are.
    pub shelf: Length,
    /// How thick the top is.
    pub top: Length,
    /// How thick the bottom is.
    pub bottom: Length,
    /// How fixed shelves, the bottom and partitions meet the panels that hold them.
    pub joint: Joint,
    /// Where the top lies, and how it meets the sides.
    pub top_at: TopAt,
    /// Whether the upper face of the bottom is level with the upper edge of the frame's bottom rail.
    pub level_with_rail: bool,
    /// How the back is held.
    pub back: Back,
    /// What the case stands on.
    pub base: Base,
    /// The frame before it, if there is one.
    pub frame: Option<FaceFrame>,
    /// How many equal bays stand side by side.
    pub bays: u32,
    /// How thick the partitions between them are.
    pub partition: Length,
    /// How the shelves of each bay are spread.
    pub shelves: Shelves,
    /// How far the shelves lie behind the front edges of the panels that hold them.
    pub set_back: Length,
    /// How far dadoes stop short of the front edge; nothing where they run through.
    pub stopped: Length,
    /// How thick the edging of the shelves is; nothing for none.
    pub edging: Length,
    /// How far the molding at the top stands out; nothing for none.
    pub molding: Length,
    /// The doors or drawers before it.
    pub fronts: Option<FrontSet>,
    /// What is left off for the fit.
    pub allowances: Allowances,
}

/// What the overall width and depth of a case are measured over. The height is always from the floor to the highest panel.
///
/// ```
/// assert_ne!(scantling::Overall::Box, scantling::Overall::Frame);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Overall {
    /// Over the sides, from the rear of the back to the front edges.
    Box,
    /// Over the face frame, too.
    Frame,
    /// Over a top that stands past the box or its frame.
    Top,
    /// Over a molding that is mitered round the front and the sides.
    Molding,
}

/// Where the top lies.
///
/// ```
/// use scantling::{Joint, TopAt};
///
/// assert_ne!(TopAt::BetweenSides(Joint::Butt), TopAt::OVER_SIDES);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum TopAt {
    /// Between the sides, flush with their upper ends.
    BetweenSides(Joint),
    /// On the upper ends of the sides, standing past each side and past the front by so much.
    OverSides {
        /// Past the box, on each side.
        past_sides: Length,
        /// Past the front of the case, its frame with it.
        past_front: Length,
    },
}

impl TopAt {
    /// On the upper ends of the sides, flush with the box.
    pub const OVER_SIDES: Self = Self::OverSides { past_sides: Length::ZERO, past_front: Length::ZERO };
}

const THREE_QUARTERS: Length = Length::fraction(3, 4, Unit::Inch);

impl Case {
    /// A box of this width, height and depth: 3/4 in stock, butt joints, top and bottom between the sides, no back, no shelves.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let feet = |count| Length::new(count, Unit::Foot);
    /// assert_eq!(Case::new(feet(3), feet(6), feet(1)).plan()?.parts().len(), 3);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn new(width: Length, height: Length, depth: Length) -> Self {
        Self {
            width,
            height,
            depth,
            over: Overall::Box,
            side: THREE_QUARTERS,
            shelf: THREE_QUARTERS,
            top: THREE_QUARTERS,
            bottom: THREE_QUARTERS,
            joint: Joint::Butt,
            top_at: TopAt::BetweenSides(Joint::Butt),
            level_with_rail: false,
            back: Back::None,
            base: Base::None,
            frame: None,
            bays: 1,
            partition: THREE_QUARTERS,
            shelves: Shelves::Equal(0),
            set_back: Length::ZERO,
            stopped: Length::ZERO,
            edging: Length::ZERO,
            molding: Length::ZERO,
            fronts: None,
            allowances: Allowances::USUAL,
        }
    }
}

/// One setter for each line: what it sets, with its type, and an example of a case that has it.
macro_rules! setters {
    ($($(#[doc = $doc:literal])* $name:ident($($field:ident: $type:ty),+) $example:literal;)+) => {
        impl Case {
            $(
                $(#[doc = $doc])*
                ///
                /// ```
                /// # use scantling::*;
                /// # let inches = |num, den| Length::fraction(num, den, Unit::Inch);
                #[doc = concat!("let case = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).", $example, ";")]
                /// assert!(case.plan().is_ok());
                /// ```
                #[must_use]
                pub fn $name(mut self, $($field: $type),+) -> Self {
                    $(self.$field = $field;)+
                    self
                }
            )+
        }
    };
}

setters! {
    /// What the overall width and depth are measured over: the box, until this says otherwise.
    measured_over(over: Overall) "frame(FaceFrame::new(inches(3, 4), inches(3, 2))).measured_over(Overall::Frame)";
    /// Sides of this thickness.
    sides_of(side: Length) "sides_of(inches(23, 32))";
    /// Shelves of this thickness.
    shelves_of(shelf: Length) "shelves_of(inches(1, 1))";
    /// A top of this thickness.
    top_of(top: Length) "top_of(inches(1, 1))";
    /// A bottom of this thickness.
    bottom_of(bottom: Length) "bottom_of(inches(23, 32))";
    /// How fixed shelves, the bottom and partitions meet the panels that hold them.
    joined(joint: Joint) "joined(Joint::Dado(inches(1, 4)))";
    /// Where the top lies, and how it meets the sides.
    top_at(top_at: TopAt) "top_at(TopAt::OVER_SIDES)";
    /// Whether the upper face of the bottom is level with the upper edge of the frame's bottom rail.
    level_with_rail(level_with_rail: bool) "frame(FaceFrame::new(inches(3, 4), inches(3, 2))).level_with_rail(true)";
    /// How the back is held.
    back(back: Back) "back(Back::Applied { thickness: inches(1, 4) })";
    /// What the case stands on.
    base(base: Base) "base(Base::SidesToFloor { height: inches(4, 1), recess: inches(3, 1), stock: inches(3, 4) })";
    /// So many equal bays side by side, with partitions of this thickness between them.
    bays(bays: u32, partition: Length) "bays(3, inches(3, 4))";
    /// How the shelves of each bay are spread.
    shelves(shelves: Shelves) "shelves(Shelves::Proportional(vec![3, 2, 2]))";
    /// Shelves that lie so far behind the front edges of the panels that hold them: that much narrower.
    set_back(set_back: Length) "shelves(Shelves::Equal(2)).set_back(inches(3, 4))";
    /// Dadoes that stop so far short of the front edge: what goes into them is notched at its front corners, unless it lies
    /// as far back.
    stopped(stopped: Length) "joined(Joint::Dado(inches(1, 4))).stopped(inches(1, 2))";
    /// Edging so thick on the front edges of the shelves: they are sawn that much narrower.
    edging(edging: Length) "shelves(Shelves::Equal(2)).edging(inches(1, 4))";
    /// A molding this far out, mitered round the front and the sides at the top.
    molding(molding: Length) "molding(inches(3, 4))";
    /// What is left off for the fit, joint by joint.
    allowing(allowances: Allowances) "allowing(Allowances::NONE)";
}

impl Case {
    /// All panels of one sheet, so thick: sides, shelves, top, bottom and partitions.
    ///
    /// ```
    /// use scantling::{Case, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let sheet = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).sheet(inches(23, 32));
    /// assert_eq!(sheet.plan()?.parts()[1].length().total()?, inches(36, 1) - inches(23, 16));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn sheet(self, thickness: Length) -> Self {
        let case = self.sides_of(thickness).shelves_of(thickness).top_of(thickness).bottom_of(thickness);
        Self { partition: thickness, ..case }
    }

    /// With doors or drawers before every opening.
    ///
    /// ```
    /// use scantling::{Case, FrontSet, Length, Mount, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let doors = FrontSet::doors(1, Mount::Overlay { past: inches(1, 2), gap: inches(1, 8) }, inches(3, 4));
    /// let plan = Case::new(inches(18, 1), inches(30, 1), inches(12, 1)).fronts(doors).plan()?;
    /// assert_eq!(plan.parts()[3].width().to_string(), "opening 16 1/2\", plus two overlays of 1/2\"");
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn fronts(self, fronts: FrontSet) -> Self {
        Self { fronts: Some(fronts), ..self }
    }

    /// With a face frame.
    ///
    /// ```
    /// use scantling::{Case, FaceFrame, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let frame = FaceFrame::new(inches(3, 4), inches(3, 2));
    /// let plan = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).frame(frame).plan()?;
    /// assert!(plan.parts().iter().any(|part| part.name() == "stile"));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn frame(self, frame: FaceFrame) -> Self {
        Self { frame: Some(frame), ..self }
    }
}
