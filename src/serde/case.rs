//! A case as it is asked for. Only its overall sizes must be there; what is left out is as in [`Case::new`]. What has
//! several kinds is an object with the name of its kind and the measures that this kind has, and no others.

use alloc::vec::Vec;
use core::convert::Infallible;

use num_rational::Ratio;

use super::error::Refusal;
use super::object::object;
use super::word::{kinds, words};
use crate::casework::{Allowances, Back, Base, Case, FaceFrame, FrameJoint, FrontSet, Joint, Overall, PinHoles, Shelves, TopAt};
use crate::length::Length;
use crate::spacing::Growth;

words!(Overall, "what a case is measured over", 0 Box "box", 1 Frame "frame", 2 Top "top", 3 Molding "molding");
words!(FrameJoint, "a joint of a frame", 0 RailsBetween "rails between", 1 StilesBetween "stiles between");

kinds!(JointKind, "a kind of joint", 0 Butt "butt", 1 Dado "dado", 2 Rabbet "rabbet");
kinds!(TopKind, "a place of the top", 0 Between "between sides", 1 Over "over sides");
kinds!(BackKind, "a kind of back", 0 None "none", 1 Applied "applied", 2 Rabbet "rabbet", 3 Groove "groove");
kinds!(BaseKind, "a kind of base", 0 None "none", 1 Sides "sides to floor", 2 Separate "separate");
kinds!(GrowthKind, "a kind of growth", 0 Step "step", 1 Ratio "ratio", 2 Top "top", 3 Bottom "bottom");
kinds! {
    ShelvesKind, "a kind of shelves",
    0 Equal "equal", 1 Openings "openings", 2 Proportional "proportional", 3 Growing "growing", 4 Adjustable "adjustable"
}

object!(Joint, "a joint", of_joint, to_joint, kind: JointKind, depth: Option<Length>);

const fn of_joint(joint: &Joint) -> (JointKind, Option<Length>) {
    match *joint {
        Joint::Butt => (JointKind::Butt, None),
        Joint::Dado(depth) => (JointKind::Dado, Some(depth)),
        Joint::Rabbet(depth) => (JointKind::Rabbet, Some(depth)),
    }
}

fn to_joint(kind: JointKind, depth: Option<Length>) -> Result<Joint, Refusal> {
    match (kind, depth) {
        (JointKind::Butt, None) => Ok(Joint::Butt),
        (JointKind::Dado, Some(depth)) => Ok(Joint::Dado(depth)),
        (JointKind::Rabbet, Some(depth)) => Ok(Joint::Rabbet(depth)),
        (kind, _) => Err(kind.refused()),
    }
}

object! {
    TopAt, "a place of the top", of_top, to_top,
    kind: TopKind, joint: Option<Joint>, past_sides: Option<Length>, past_front: Option<Length>
}

const fn of_top(top: &TopAt) -> (TopKind, Option<Joint>, Option<Length>, Option<Length>) {
    match *top {
        TopAt::BetweenSides(joint) => (TopKind::Between, Some(joint), None, None),
        TopAt::OverSides { past_sides, past_front } => (TopKind::Over, None, Some(past_sides), Some(past_front)),
    }
}

fn to_top(kind: TopKind, joint: Option<Joint>, sides: Option<Length>, front: Option<Length>) -> Result<TopAt, Refusal> {
    match (kind, joint, sides, front) {
        (TopKind::Between, joint, None, None) => Ok(TopAt::BetweenSides(joint.unwrap_or(Joint::Butt))),
        (TopKind::Over, None, sides, front) => {
            Ok(TopAt::OverSides { past_sides: sides.unwrap_or_default(), past_front: front.unwrap_or_default() })
        }
        (kind, ..) => Err(kind.refused()),
    }
}

object! {
    Back, "a back", of_back, to_back,
    kind: BackKind, thickness: Option<Length>, depth: Option<Length>, set_in: Option<Length>
}

const fn of_back(back: &Back) -> (BackKind, Option<Length>, Option<Length>, Option<Length>) {
    match *back {
        Back::None => (BackKind::None, None, None, None),
        Back::Applied { thickness } => (BackKind::Applied, Some(thickness), None, None),
        Back::Rabbet { thickness, depth } => (BackKind::Rabbet, Some(thickness), Some(depth), None),
        Back::Groove { thickness, depth, set_in } => (BackKind::Groove, Some(thickness), Some(depth), Some(set_in)),
    }
}

fn to_back(kind: BackKind, thickness: Option<Length>, depth: Option<Length>, set_in: Option<Length>) -> Result<Back, Refusal> {
    match (kind, thickness, depth, set_in) {
        (BackKind::None, None, None, None) => Ok(Back::None),
        (BackKind::Applied, Some(thickness), None, None) => Ok(Back::Applied { thickness }),
        (BackKind::Rabbet, Some(thickness), Some(depth), None) => Ok(Back::Rabbet { thickness, depth }),
        (BackKind::Groove, Some(thickness), Some(depth), Some(set_in)) => Ok(Back::Groove { thickness, depth, set_in }),
        (kind, ..) => Err(kind.refused()),
    }
}

object! {
    Base, "a base", of_base, to_base,
    kind: BaseKind, height: Option<Length>, recess: Option<Length>, stock: Option<Length>, from_sides: Option<Length>,
    ties: Option<u32>
}

type BaseParts = (BaseKind, Option<Length>, Option<Length>, Option<Length>, Option<Length>, Option<u32>);

const fn of_base(base: &Base) -> BaseParts {
    match *base {
        Base::None => (BaseKind::None, None, None, None, None, None),
        Base::SidesToFloor { height, recess, stock } => (BaseKind::Sides, Some(height), Some(recess), Some(stock), None, None),
        Base::Separate { height, stock, from_front, from_sides, ties } => {
            (BaseKind::Separate, Some(height), Some(from_front), Some(stock), Some(from_sides), Some(ties))
        }
    }
}

fn to_base(
    kind: BaseKind,
    height: Option<Length>,
    recess: Option<Length>,
    stock: Option<Length>,
    from_sides: Option<Length>,
    ties: Option<u32>,
) -> Result<Base, Refusal> {
    match (kind, height, recess, stock, from_sides, ties) {
        (BaseKind::None, None, None, None, None, None) => Ok(Base::None),
        (BaseKind::Sides, Some(height), Some(recess), Some(stock), None, None) => {
            Ok(Base::SidesToFloor { height, recess, stock })
        }
        (BaseKind::Separate, Some(height), Some(from_front), Some(stock), Some(from_sides), ties) => {
            Ok(Base::Separate { height, stock, from_front, from_sides, ties: ties.unwrap_or(0) })
        }
        (kind, ..) => Err(kind.refused()),
    }
}

object! {
    FaceFrame, "a face frame", of_frame,
    |stock, stile, top: Option<Length>, bottom: Option<Length>, left: Option<Length>, right: Option<Length>, joint: Option<FrameJoint>| {
        Ok::<_, Infallible>(
            FaceFrame::new(stock, stile)
                .rails(top.unwrap_or(stile), bottom.unwrap_or(stile))
                .past_sides(left.unwrap_or_default(), right.unwrap_or_default())
                .joined(joint.unwrap_or(FrameJoint::RailsBetween)),
        )
    },
    stock: Length, stile: Length, top_rail: Option<Length>, bottom_rail: Option<Length>, past_left: Option<Length>,
    past_right: Option<Length>, joint: Option<FrameJoint>
}

type FrameParts = (Length, Length, Option<Length>, Option<Length>, Option<Length>, Option<Length>, Option<FrameJoint>);

const fn of_frame(frame: &FaceFrame) -> FrameParts {
    let FaceFrame { stock, stile, top_rail, bottom_rail, past: [left, right], joint } = *frame;
    (stock, stile, Some(top_rail), Some(bottom_rail), Some(left), Some(right), Some(joint))
}

object! {
    Allowances, "allowances for the fit", |own: &Self| (Some(own.back), Some(own.adjustable_shelf), Some(own.glue)),
    |back: Option<Length>, shelf: Option<Length>, glue: Option<Length>| {
        let usual = Allowances::USUAL;
        let shelf = shelf.unwrap_or(usual.adjustable_shelf);
        Ok::<_, Infallible>(Allowances::new(back.unwrap_or(usual.back), shelf, glue.unwrap_or(usual.glue)))
    },
    back: Option<Length>, adjustable_shelf: Option<Length>, glue: Option<Length>
}

object! {
    PinHoles, "rows of holes", |pins: &Self| (pins.pitch, pins.first, pins.from_edges, pins.deep),
    |pitch, first, from_edges, deep| Ok::<_, Infallible>(PinHoles::new(pitch, first, from_edges, deep)),
    pitch: Length, first: Length, from_edges: Length, deep: Length
}

object!(Growth, "a growth", of_growth, to_growth, kind: GrowthKind, length: Option<Length>, ratio: Option<(i128, i128)>);

const fn of_growth(growth: &Growth) -> (GrowthKind, Option<Length>, Option<(i128, i128)>) {
    match growth {
        Growth::Step(length) => (GrowthKind::Step, Some(*length), None),
        Growth::Ratio(ratio) => (GrowthKind::Ratio, None, Some((*ratio.numer(), *ratio.denom()))),
        Growth::Top(length) => (GrowthKind::Top, Some(*length), None),
        Growth::Bottom(length) => (GrowthKind::Bottom, Some(*length), None),
    }
}

fn to_growth(kind: GrowthKind, length: Option<Length>, ratio: Option<(i128, i128)>) -> Result<Growth, Refusal> {
    match (kind, length, ratio) {
        (GrowthKind::Step, Some(length), None) => Ok(Growth::Step(length)),
        (GrowthKind::Ratio, None, Some((num, den))) if num > 0 && den > 0 => Ok(Growth::Ratio(Ratio::new(num, den))),
        (GrowthKind::Top, Some(length), None) => Ok(Growth::Top(length)),
        (GrowthKind::Bottom, Some(length), None) => Ok(Growth::Bottom(length)),
        (kind, ..) => Err(kind.refused()),
    }
}

object! {
    Shelves, "the shelves of a case", of_shelves, to_shelves,
    kind: ShelvesKind, count: Option<u64>, openings: Option<Vec<Length>>, shares: Option<Vec<u64>>, growth: Option<Growth>,
    pins: Option<PinHoles>
}

type ShelvesParts<'a> = (ShelvesKind, Option<u64>, Option<&'a [Length]>, Option<&'a [u64]>, Option<Growth>, Option<PinHoles>);

fn of_shelves(shelves: &Shelves) -> ShelvesParts<'_> {
    match shelves {
        Shelves::Equal(count) => (ShelvesKind::Equal, Some(*count as u64), None, None, None, None),
        Shelves::Openings(openings) => (ShelvesKind::Openings, None, Some(openings), None, None, None),
        Shelves::Proportional(shares) => (ShelvesKind::Proportional, None, None, Some(shares), None, None),
        Shelves::Growing(count, growth) => (ShelvesKind::Growing, Some(*count as u64), None, None, Some(*growth), None),
        Shelves::Adjustable(count, pins) => (ShelvesKind::Adjustable, Some(*count as u64), None, None, None, Some(*pins)),
    }
}

fn to_shelves(
    kind: ShelvesKind,
    count: Option<u64>,
    openings: Option<Vec<Length>>,
    shares: Option<Vec<u64>>,
    growth: Option<Growth>,
    pins: Option<PinHoles>,
) -> Result<Shelves, Refusal> {
    let count = count.map(usize::try_from).transpose().map_err(|_| kind.refused())?;
    match (kind, count, openings, shares, growth, pins) {
        (ShelvesKind::Equal, Some(count), None, None, None, None) => Ok(Shelves::Equal(count)),
        (ShelvesKind::Openings, None, Some(openings), None, None, None) => Ok(Shelves::Openings(openings)),
        (ShelvesKind::Proportional, None, None, Some(shares), None, None) => Ok(Shelves::Proportional(shares)),
        (ShelvesKind::Growing, Some(count), None, None, Some(growth), None) => Ok(Shelves::Growing(count, growth)),
        (ShelvesKind::Adjustable, Some(count), None, None, None, Some(pins)) => Ok(Shelves::Adjustable(count, pins)),
        (kind, ..) => Err(kind.refused()),
    }
}

object! {
    Case, "a case",
    |case: &Self| {
        let case = case.clone();
        (
            case.width, case.height, case.depth, Some(case.over), Some(case.side), Some(case.shelf), Some(case.top),
            Some(case.bottom), Some(case.joint), Some(case.top_at), Some(case.level_with_rail), Some(case.back),
            Some(case.base), case.frame, Some(case.bays), Some(case.partition), Some(case.shelves), Some(case.edging),
            Some(case.molding), Some(case.allowances), case.fronts, Some(case.set_back), Some(case.stopped),
        )
    },
    |width, height, depth, over: Option<Overall>, side: Option<Length>, shelf: Option<Length>, top: Option<Length>,
     bottom: Option<Length>, joint: Option<Joint>, top_at: Option<TopAt>, level_with_rail: Option<bool>, back: Option<Back>,
     base: Option<Base>, frame: Option<FaceFrame>, bays: Option<u32>, partition: Option<Length>, shelves: Option<Shelves>,
     edging: Option<Length>, molding: Option<Length>, allowances: Option<Allowances>, fronts: Option<FrontSet>,
     set_back: Option<Length>, stopped: Option<Length>| {
        let usual = Case::new(width, height, depth);
        Ok::<_, Infallible>(Case {
            over: over.unwrap_or(usual.over),
            side: side.unwrap_or(usual.side),
            shelf: shelf.unwrap_or(usual.shelf),
            top: top.unwrap_or(usual.top),
            bottom: bottom.unwrap_or(usual.bottom),
            joint: joint.unwrap_or(usual.joint),
            top_at: top_at.unwrap_or(usual.top_at),
            level_with_rail: level_with_rail.unwrap_or(usual.level_with_rail),
            back: back.unwrap_or(usual.back),
            base: base.unwrap_or(usual.base),
            frame,
            bays: bays.unwrap_or(usual.bays),
            partition: partition.unwrap_or(usual.partition),
            shelves: shelves.unwrap_or(usual.shelves),
            edging: edging.unwrap_or(usual.edging),
            molding: molding.unwrap_or(usual.molding),
            allowances: allowances.unwrap_or(usual.allowances),
            fronts,
            set_back: set_back.unwrap_or(usual.set_back),
            stopped: stopped.unwrap_or(usual.stopped),
            ..usual
        })
    },
    width: Length, height: Length, depth: Length, over: Option<Overall>, side: Option<Length>, shelf: Option<Length>,
    top: Option<Length>, bottom: Option<Length>, joint: Option<Joint>, top_at: Option<TopAt>, level_with_rail: Option<bool>,
    back: Option<Back>, base: Option<Base>, frame: Option<FaceFrame>, bays: Option<u32>, partition: Option<Length>,
    shelves: Option<Shelves>, edging: Option<Length>, molding: Option<Length>, allowances: Option<Allowances>,
    fronts: Option<FrontSet>, set_back: Option<Length>, stopped: Option<Length>
}
