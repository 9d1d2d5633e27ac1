//! What is possible but unwise in a case, named with its figures. Where each is found is left to `advise.rs`, `placing.rs` and
//! `movement.rs`; what is impossible is an error, in `error.rs`.

use core::fmt;

use super::joint::Joint;
use crate::length::Length;

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
    /// A joint deeper than a third of the panel that it is cut into. Common practice, no source.
    DeepJoint {
        /// The joint.
        joint: Joint,
        /// The panel: `side`, `bottom`, `top`.
        panel: &'static str,
        /// How thick it is.
        thickness: Length,
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
    /// A part longer than what it is cut from.
    LongPart {
        /// The part.
        part: &'static str,
        /// How long it is.
        length: Length,
        /// What it is cut from: `sheet`, `board`.
        stock: &'static str,
        /// How long that is.
        longest: Length,
    },
    /// A panel wider than the sheet that it is cut from.
    WidePart {
        /// The part.
        part: &'static str,
        /// How wide it is.
        width: Length,
        /// How wide the sheet is.
        sheet: Length,
    },
    /// Rows of pin holes that lie on one line, or the front one behind the rear one.
    PinRowsCross {
        /// From the edges to the rows.
        from_edges: Length,
        /// From the front edge to the rear edge of the shelf.
        depth: Length,
    },
    /// Rows of pin holes on the edges of the side, or past them.
    PinRowsOff {
        /// From the edges to the rows.
        from_edges: Length,
        /// From the front edge of the side to the rear edge of the shelf.
        depth: Length,
    },
    /// A front row of pin holes before the front edge of the shelves.
    PinRowBare {
        /// From the front edge of the side to the row.
        from_edge: Length,
        /// From there to the shelves.
        set_back: Length,
    },
    /// Dadoes that show before the front edges of the shelves in them.
    DadoShows {
        /// How much of each.
        by: Length,
    },
    /// Shelves where the drawers are to run.
    ShelvesBehindDrawers,
    /// Fronts without a gap.
    NoGap,
    /// Inset fronts thicker than what they lie in, so that they would strike the shelves.
    FrontsReachIn {
        /// How far behind the front edges of the panels.
        by: Length,
        /// How far the shelves lie behind these.
        set_back: Length,
    },
    /// Fronts that reach past what they are laid on.
    OverlayPast {
        /// How far past the edge of the opening.
        past: Length,
        /// What they are laid on: `stile`, `bottom rail`, `top`...
        onto: &'static str,
        /// How wide that is.
        wide: Length,
    },
    /// Fronts that reach up over the edge of a top which stands past the front.
    TopInTheWay {
        /// How far past the edge of the opening they lie.
        past: Length,
        /// How far the top stands past the front.
        past_front: Length,
    },
    /// Fronts of two openings that meet over what parts these.
    FrontsMeet {
        /// What two overlays and a gap take.
        needed: Length,
        /// What parts the openings: `mullion`, `partition`.
        between: &'static str,
        /// How wide that is.
        wide: Length,
    },
    /// A part of solid wood that swells by as much as there is room for it, or more.
    Binds {
        /// The part.
        part: &'static str,
        /// By how much it closes its gap, or takes up its play.
        swells: Length,
        /// The gap or the play.
        room: Length,
    },
    /// A fixed shelf and the side that holds it, of which one is of solid wood and moves, and the other is not.
    HeldAcross {
        /// What moves.
        part: &'static str,
        /// What holds it.
        by: &'static str,
        /// By how much.
        moves: Length,
    },
    /// A case wider than its place.
    TooWide {
        /// Over all that stands out from it.
        width: Length,
        /// What is left between the walls, less the room for scribing.
        room: Length,
    },
    /// A case higher than its place.
    TooHigh {
        /// How high it is.
        height: Length,
        /// From the high point of the floor to the ceiling.
        ceiling: Length,
    },
    /// A case that cannot be tipped up under its ceiling.
    NoTipUp {
        /// What it takes.
        needed: Length,
        /// From the high point of the floor to the ceiling.
        ceiling: Length,
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
    #[allow(clippy::too_many_lines)] // one sentence a variant, so that none can be forgotten
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::DeepJoint { joint, panel, thickness } => {
                let (name, depth) = (joint.name(), joint.depth());
                write!(out, "a {name} of {depth} is deeper than a third of the {thickness} {panel}: it weakens it")
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
            Self::EndMatters { shelf, from_below, from_above } => {
                write!(
                    out,
                    "shelf {shelf} is marked at {from_below} from below, and at {from_above} when it is measured from above: "
                )?;
                out.write_str("measure both sides from below")
            }
            Self::LongPart { part, length, stock, longest } => {
                write!(out, "the {part} is {length} long: longer than a {stock} of {longest}")
            }
            Self::WidePart { part, width, sheet } => {
                write!(out, "the {part} is {width} wide: wider than a sheet of {sheet}; join it of two, its grain one way")
            }
            Self::PinRowsCross { from_edges, depth } => {
                write!(
                    out,
                    "pin rows {from_edges} from the edges of a shelf {depth} deep lie on one line, or cross: bring them nearer to the edges"
                )
            }
            Self::PinRowsOff { from_edges, .. } if *from_edges == Length::ZERO => {
                out.write_str("pin rows right on the edges: no hole holds there")
            }
            Self::PinRowsOff { from_edges, depth } => {
                write!(
                    out,
                    "pin rows {from_edges} from the edges fall off a side that is {depth} deep to the rear edge of the shelf"
                )
            }
            Self::PinRowBare { from_edge, set_back } => {
                write!(
                    out,
                    "the front pin row is {from_edge} from the front edge, and the shelves begin {set_back} from it: no pin bears there"
                )
            }
            Self::DadoShows { by } => {
                write!(out, "the shelves are set back, and {by} of each dado shows before them: stop the dadoes there")
            }
            Self::ShelvesBehindDrawers => {
                out.write_str("shelves lie behind the drawer fronts: a drawer runs only between two of them")
            }
            Self::FrontsReachIn { by, set_back } if *set_back == Length::ZERO => {
                write!(out, "inset fronts reach {by} behind the front edges and strike the shelves: set these back by more")
            }
            Self::FrontsReachIn { by, set_back } => {
                write!(
                    out,
                    "inset fronts reach {by} behind the front edges and strike the shelves, which are set back {set_back}"
                )
            }
            Self::OverlayPast { past, onto, wide } => {
                write!(out, "fronts that lie {past} past the opening reach over the {onto}, which is {wide} wide")
            }
            Self::TopInTheWay { past, past_front } => {
                write!(
                    out,
                    "fronts that lie {past} past the opening strike the top, which stands {past_front} past the front: "
                )?;
                out.write_str("make them inset, or give the case a frame")
            }
            Self::FrontsMeet { needed, between, wide } => {
                write!(out, "fronts of two openings meet: two overlays and a gap take {needed}, and the {between} is {wide} wide")
            }
            Self::Binds { part, swells, room } => {
                write!(out, "the {part} swells {swells} and has {room} of room: it will bind")
            }
            Self::HeldAcross { part, by, moves } => {
                write!(out, "the {part} moves {moves} across the grain, and the {by} does not: ")?;
                out.write_str("glue or nail them together near the front edge alone")
            }
            Self::TooWide { width, room } => {
                write!(out, "the case is {width} wide over all, and there is room for {room} between the walls")
            }
            Self::TooHigh { height, ceiling } => {
                write!(out, "the case is {height} high, and the ceiling {ceiling}")
            }
            Self::NoTipUp { needed, ceiling } => {
                write!(out, "tipped up, the case takes {needed}, and the ceiling is {ceiling}: build it standing, or in two")
            }
            Self::NoGap => out.write_str("fronts without a gap bind against each other or against the opening"),
        }
    }
}
