//! What can be typed behind `scantling divide`. One option says how the run is divided, the others what it
//! leaves open; which of them go together is told to `clap`, what their texts mean is left to `kind.rs`.

use clap::{ArgGroup, Args, ValueEnum};
use scantling::Edge;

use crate::arguments::{Notation, TapeOptions, count};

/// The ways to divide a run, but for members on center and drawers, which have options of their own.
const PLAIN_RULES: [&str; 5] = ["into", "members", "about", "widths", "shares"];

#[derive(Args)]
#[command(override_usage = "scantling divide <RUN> <HOW TO DIVIDE> [OPTIONS]")]
#[command(group = ArgGroup::new("rule").args(PLAIN_RULES).args(["on_center", "drawers"]))]
pub struct Divide {
    /// The run to divide, inside what stands at its ends: a case height between top and bottom, say
    #[arg(value_name = "RUN")]
    pub run: String,
    /// Answer in JSON
    #[arg(long)]
    pub json: bool,
    #[command(flatten)]
    pub rule: RuleOptions,
    #[command(flatten)]
    pub limits: LimitOptions,
    #[command(flatten)]
    pub first: FirstOptions,
    #[command(flatten)]
    pub growth: GrowthOptions,
    #[command(flatten)]
    pub ends: EndOptions,
    /// Which edge of each member is marked
    #[arg(long, value_enum, default_value = "near", conflicts_with = "into", help_heading = "Marks")]
    pub edge: MarkedEdge,
    #[command(flatten, next_help_heading = "Marks")]
    pub tape: TapeOptions,
    /// The block to set equal openings by, cut down to a graduation, and which of them takes what it leaves
    #[arg(
        long,
        value_enum,
        value_name = "REMAINDER",
        num_args = 0..=1,
        require_equals = true,
        default_missing_value = "last",
        help_heading = "More answers"
    )]
    pub block: Option<Left>,
    /// The changes of one size, up to this, that make every opening a whole number of graduations
    #[arg(long, value_name = "LENGTH", help_heading = "More answers")]
    pub friendly: Option<String>,
    #[command(flatten, next_help_heading = "Notation")]
    pub notation: Notation,
}

/// How the run is divided.
#[derive(Args)]
#[command(next_help_heading = "How to divide (one of these, or a limit with --thickness)")]
pub struct RuleOptions {
    /// Equal parts, with nothing between them
    #[arg(long, value_parser = count::<usize>, value_name = "PARTS")]
    pub into: Option<usize>,
    /// So many members (shelves, pickets, dividers) with equal openings
    #[arg(long, value_parser = count::<usize>, value_name = "COUNT", requires = "thickness")]
    pub members: Option<usize>,
    /// As many as bring equal openings nearest to this; equal parts, where no thickness is given
    #[arg(long, value_name = "LENGTH")]
    pub about: Option<String>,
    /// Members at this pitch, center to center
    #[arg(long, value_name = "PITCH", requires = "thickness")]
    pub on_center: Option<String>,
    /// Members of these widths in this order, equal openings between them: --widths 13 20-1/2 13
    #[arg(long, value_name = "LENGTH", num_args = 1.., conflicts_with = "thickness")]
    pub widths: Vec<String>,
    /// Openings in proportion, a divider between each two: 3:2:2
    #[arg(long, value_name = "SHARES", requires = "thickness")]
    pub shares: Option<String>,
    /// So many drawers with a divider between each two
    #[arg(long, value_parser = count::<usize>, value_name = "COUNT", requires = "thickness")]
    pub drawers: Option<usize>,
    /// How thick each member or divider is, along the run
    #[arg(long, value_name = "LENGTH", conflicts_with = "into")]
    pub thickness: Option<String>,
}

/// What every opening must keep to, as cut.
#[derive(Args)]
#[command(next_help_heading = "Limits, as cut (alone, they set the number of members)")]
pub struct LimitOptions {
    /// No opening wider than this; alone, the fewest members that do it
    #[arg(long, value_name = "LENGTH", conflicts_with_all = ["under", "guard"])]
    pub widest: Option<String>,
    /// Every opening under this: just this much is too wide
    #[arg(long, value_name = "LENGTH", conflicts_with = "guard")]
    pub under: Option<String>,
    /// Every opening under 4 in, as a guard along a raised floor has them: ask the local building department
    #[arg(long)]
    pub guard: bool,
    /// No full opening narrower than this; alone, the most members that do it
    #[arg(long, value_name = "LENGTH", conflicts_with = "over")]
    pub narrowest: Option<String>,
    /// Every full opening over this: just this much is too narrow
    #[arg(long, value_name = "LENGTH")]
    pub over: Option<String>,
}

/// Where the first member on center stands.
#[derive(Args)]
#[command(group = ArgGroup::new("first").args(["center_at", "face_at", "off_center_line", "shared"]))]
#[command(next_help_heading = "On center (the first center one pitch from the near end, unless told otherwise)")]
pub struct FirstOptions {
    /// The first center this far from the near end
    #[arg(long, value_name = "LENGTH", requires = "on_center", conflicts_with_all = PLAIN_RULES)]
    pub center_at: Option<String>,
    /// The near face of the first member this far from the near end: 0 for flush
    #[arg(long, value_name = "LENGTH", requires = "on_center", conflicts_with_all = PLAIN_RULES)]
    pub face_at: Option<String>,
    /// From the center line of the run to both sides, the first centers this far off it
    #[arg(long, value_name = "LENGTH", requires = "on_center", conflicts_with_all = PLAIN_RULES)]
    pub off_center_line: Option<String>,
    /// As many as fit, the same remainder at both ends
    #[arg(long, requires = "on_center", conflicts_with_all = PLAIN_RULES)]
    pub shared: bool,
}

/// How drawers grow toward the bottom.
#[derive(Args)]
#[command(group = ArgGroup::new("growth").args(["grow_by", "grow_times", "top", "bottom"]))]
#[command(next_help_heading = "Drawers (equal, unless told otherwise)")]
pub struct GrowthOptions {
    /// Each lower drawer this much taller
    #[arg(long, value_name = "LENGTH", requires = "drawers", conflicts_with_all = PLAIN_RULES)]
    pub grow_by: Option<String>,
    /// Each lower drawer so many times as tall: 6/5
    #[arg(long, value_name = "RATIO", requires = "drawers", conflicts_with_all = PLAIN_RULES)]
    pub grow_times: Option<String>,
    /// The top drawer this tall, the others growing by equal steps
    #[arg(long, value_name = "LENGTH", requires = "drawers", conflicts_with_all = PLAIN_RULES)]
    pub top: Option<String>,
    /// The bottom drawer this tall, the others shrinking by equal steps
    #[arg(long, value_name = "LENGTH", requires = "drawers", conflicts_with_all = PLAIN_RULES)]
    pub bottom: Option<String>,
    /// Measure and number from the bottom up, not from the top down
    #[arg(long, requires = "drawers", conflicts_with_all = PLAIN_RULES)]
    pub from_bottom: bool,
}

/// What is at the ends, and what is held.
#[derive(Args)]
#[command(next_help_heading = "Ends and held openings")]
pub struct EndOptions {
    /// What lies at the near end: gap, half-gap, flush, or a margin such as 2-1/2
    #[arg(long, value_name = "END", default_value = "gap", conflicts_with = "into")]
    pub near_end: String,
    /// What lies at the far end
    #[arg(long, value_name = "END", default_value = "gap", conflicts_with = "into")]
    pub far_end: String,
    /// Hold the opening after a member to a size: 2=18 for the one after member 2, 0=18 for the one before
    /// the first; may be given more than once
    #[arg(long, value_name = "MEMBER=LENGTH")]
    pub hold: Vec<String>,
}

#[derive(Clone, Copy, ValueEnum)]
pub enum Left {
    /// the last of them, at the far end
    Last,
    /// the first of them, at the near end
    First,
    /// the first and the last, each the same
    Split,
}

#[derive(Clone, Copy, ValueEnum)]
pub enum MarkedEdge {
    /// the edge nearer to the datum
    Near,
    /// the center line
    Center,
    /// the edge away from the datum
    Far,
}

impl From<MarkedEdge> for Edge {
    fn from(edge: MarkedEdge) -> Self {
        match edge {
            MarkedEdge::Near => Self::Near,
            MarkedEdge::Center => Self::Center,
            MarkedEdge::Far => Self::Far,
        }
    }
}
