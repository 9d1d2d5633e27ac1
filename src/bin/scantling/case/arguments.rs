//! What can be typed behind `scantling case`. What the texts mean is left to `typed.rs`, a job in a file to `job.rs`.

use std::path::PathBuf;

use clap::{Args, ValueEnum};

use crate::arguments::{Notation, TapeOptions, count};

/// Work out a whole case: what to buy and to cut, where it is marked and fastened, and that it all adds up
///
/// Several measures of one thing are joined by colons: --frame 3/4:1-3/4 is stock and stile. A thickness may be a name of
/// stock, such as "3/4 ply"; what the sheet measures is better.
#[derive(Args)]
#[command(
    override_usage = "scantling case [NAME] <--width W --height H --depth D | --between-walls W --height H --depth D | --job FILE> [OPTIONS]"
)]
pub struct Case {
    /// What the case is called
    #[arg(value_name = "NAME")]
    pub name: Option<String>,
    /// A case as JSON, as --json gives it behind "case"; - reads it from standard input. Options change what it says
    #[arg(long, value_name = "FILE")]
    pub job: Option<PathBuf>,
    /// The overall width
    #[arg(long, value_name = "LENGTH", required_unless_present_any = ["job", "between_walls"])]
    pub width: Option<String>,
    /// The overall height, from the floor to the highest panel
    #[arg(long, value_name = "LENGTH", required_unless_present = "job")]
    pub height: Option<String>,
    /// The overall depth
    #[arg(long, value_name = "LENGTH", required_unless_present = "job")]
    pub depth: Option<String>,
    /// What width and depth are measured over
    #[arg(long, value_enum)]
    pub over: Option<OverName>,
    /// Answer in JSON
    #[arg(long)]
    pub json: bool,
    #[command(flatten)]
    pub stock: StockOptions,
    #[command(flatten)]
    pub build: BuildOptions,
    #[command(flatten)]
    pub shelves: ShelfOptions,
    #[command(flatten)]
    pub fronts: FrontOptions,
    #[command(flatten)]
    pub place: PlaceOptions,
    #[command(flatten)]
    pub seasons: SeasonOptions,
    #[command(flatten)]
    pub buying: BuyOptions,
    #[command(flatten)]
    pub files: FileOptions,
    #[command(flatten, next_help_heading = "Tape")]
    pub tape: TapeOptions,
    #[command(flatten, next_help_heading = "Notation")]
    pub notation: Notation,
}

/// How thick everything is: 3/4 in until it is said to be another.
#[derive(Args)]
#[command(next_help_heading = "Thicknesses, measured or by a name of stock")]
pub struct StockOptions {
    /// Of all panels: sides, shelves, top, bottom and partitions
    #[arg(long, value_name = "THICKNESS")]
    pub sheet: Option<String>,
    /// Of the sides
    #[arg(long, value_name = "THICKNESS")]
    pub side: Option<String>,
    /// Of the shelves
    #[arg(long, value_name = "THICKNESS")]
    pub shelf: Option<String>,
    /// Of the top
    #[arg(long, value_name = "THICKNESS")]
    pub top: Option<String>,
    /// Of the bottom
    #[arg(long, value_name = "THICKNESS")]
    pub bottom: Option<String>,
    /// Of the partitions between bays
    #[arg(long, value_name = "THICKNESS")]
    pub partition: Option<String>,
    /// Of an edging on the front edges of the shelves
    #[arg(long, value_name = "THICKNESS")]
    pub edging: Option<String>,
}

/// How it is put together.
#[derive(Args)]
#[command(next_help_heading = "Joints, back, base, front")]
pub struct BuildOptions {
    /// How shelves, bottom and partitions meet what holds them: butt, dado:7/32, rabbet:7/32
    #[arg(long, value_name = "JOINT")]
    pub joint: Option<String>,
    /// Dadoes stop this far short of the front edge; what goes into them is notched there, unless it is set back as far
    #[arg(long, value_name = "LENGTH")]
    pub stopped: Option<String>,
    /// How a top between the sides meets them, as --joint
    #[arg(long, value_name = "JOINT", conflicts_with = "top_over")]
    pub top_joint: Option<String>,
    /// A top that lies on the sides, past them and past the front by so much: 0, or 1:1-1/2
    #[arg(long, value_name = "SIDES:FRONT")]
    pub top_over: Option<String>,
    /// The back: none, applied:7/32, rabbet:7/32:3/8 (thickness, depth), groove:1/4:1/4:1/2 (and how far in from the rear)
    #[arg(long, value_name = "BACK")]
    pub back: Option<String>,
    /// What it stands on: none, toe:HEIGHT:RECESS:STOCK for sides notched at the floor, separate:HEIGHT:RECESS:STOCK:AT-SIDES
    #[arg(long, value_name = "BASE")]
    pub base: Option<String>,
    /// Pieces across a separate base besides the two at its ends
    #[arg(long, value_parser = count::<u32>, value_name = "COUNT")]
    pub ties: Option<u32>,
    /// A face frame: stock and stile, and where they are other, top rail and bottom rail
    #[arg(long, value_name = "STOCK:STILE:TOP:BOTTOM")]
    pub frame: Option<String>,
    /// How far the frame stands past the sides: 1/4, or 0:1/4 for left and right
    #[arg(long, value_name = "LEFT:RIGHT")]
    pub past: Option<String>,
    /// The rails of the frame run through, its stiles lie between them
    #[arg(long)]
    pub stiles_between: bool,
    /// The bottom's upper face is level with the upper edge of the bottom rail
    #[arg(long)]
    pub level_with_rail: bool,
    /// A molding mitered round front and sides at the top, this far out
    #[arg(long, value_name = "LENGTH")]
    pub molding: Option<String>,
    /// What is left off for the fit: of the back, of a shelf on pins, for glue in a joint
    #[arg(long, value_name = "BACK:SHELF:GLUE")]
    pub play: Option<String>,
}

/// The shelves of each bay.
#[derive(Args)]
#[command(next_help_heading = "Bays and shelves")]
pub struct ShelfOptions {
    /// Equal bays side by side
    #[arg(long, value_parser = count::<u32>, value_name = "COUNT")]
    pub bays: Option<u32>,
    /// Shelves in each bay, with equal openings
    #[arg(long, value_parser = count::<usize>, value_name = "COUNT")]
    pub shelves: Option<usize>,
    /// The openings below the shelves, from the lowest; what is left is above the last
    #[arg(long, value_name = "LENGTH", num_args = 1.., conflicts_with_all = ["shelves", "proportions"])]
    pub openings: Vec<String>,
    /// Openings in these proportions, from the lowest: 3:2:2
    #[arg(long, value_name = "SHARES", conflicts_with = "shelves")]
    pub proportions: Option<String>,
    /// Each lower opening is this much taller
    #[arg(long, value_name = "LENGTH", requires = "shelves", allow_hyphen_values = true)]
    pub grow_by: Option<String>,
    /// Shelves on pins: 32 for the rows of the 32 mm system, or the pitch, the first hole up, from the edges, the depth
    #[arg(long, value_name = "PITCH:FIRST:EDGES:DEEP", requires = "shelves", conflicts_with = "grow_by")]
    pub pins: Option<String>,
    /// The shelves lie this far behind the front edges: that much narrower
    #[arg(long, value_name = "LENGTH")]
    pub set_back: Option<String>,
    /// What the shelves are made of, for how far they sag: "northern red oak", "douglas-fir veneer-core plywood"
    #[arg(long, value_name = "MATERIAL")]
    pub material: Option<String>,
    /// What they bear: kitchen, library, other (40), or pounds on a square foot
    #[arg(long, value_name = "LOAD")]
    pub load: Option<String>,
    /// How far they may sag: one part in so many of the span
    #[arg(long, value_parser = count::<u32>, value_name = "PARTS")]
    pub limit: Option<u32>,
}

/// What stands before it.
#[derive(Args)]
#[command(next_help_heading = "Doors and drawers, before every opening")]
pub struct FrontOptions {
    /// Doors side by side before each opening
    #[arg(long, value_parser = count::<u32>, value_name = "COUNT", conflicts_with = "drawers")]
    pub doors: Option<u32>,
    /// Drawers one above the other before each opening
    #[arg(long, value_parser = count::<u32>, value_name = "COUNT")]
    pub drawers: Option<u32>,
    /// How the fronts lie: inset:GAP all round, overlay:PAST:GAP past each edge and between two [default: inset:1/8]
    #[arg(long, value_name = "MOUNT")]
    pub mount: Option<String>,
    /// How thick the fronts are, as the thicknesses above [default: 3/4]
    #[arg(long, value_name = "THICKNESS")]
    pub front_stock: Option<String>,
    /// Drawers graduated: each lower front is this much taller, or top:HEIGHT or bottom:HEIGHT, and equal steps
    #[arg(long, value_name = "STEP", conflicts_with = "doors", allow_hyphen_values = true)]
    pub graduated: Option<String>,
}

/// Where it is to stand.
#[derive(Args)]
#[command(next_help_heading = "The place it is built for")]
pub struct PlaceOptions {
    /// From wall to wall: one width, or at the floor, in the middle and at the top; without --width the case fills the narrowest
    #[arg(long, value_name = "LOW:MIDDLE:HIGH")]
    pub between_walls: Option<String>,
    /// Room for a strip scribed to each wall: 1/2, or 0:1/2 for left and right
    #[arg(long, value_name = "LEFT:RIGHT")]
    pub scribe: Option<String>,
    /// How far the high point of the floor lies above the low one; or both, from any level line
    #[arg(long, value_name = "HIGH:LOW", allow_hyphen_values = true)]
    pub floor: Option<String>,
    /// From the high point of the floor to the ceiling
    #[arg(long, value_name = "LENGTH")]
    pub ceiling: Option<String>,
}

/// How it moves.
#[derive(Args)]
#[command(next_help_heading = "Solid wood through the seasons")]
pub struct SeasonOptions {
    /// The wood, for how far it swells and shrinks across the grain: "red maple", "teak"
    #[arg(long, value_name = "WOOD", conflicts_with = "coefficient")]
    pub species: Option<String>,
    /// How it was sawn: flat moves most [default: flat]
    #[arg(long, value_enum)]
    pub sawn: Option<SawnName>,
    /// The part of its width by which each percent of moisture changes it, where the table lacks the wood: 0.00190
    #[arg(long, value_name = "DECIMALS")]
    pub coefficient: Option<String>,
    /// Its moisture in percent, as it is cut and as it will be: 6:12
    #[arg(long, value_name = "FROM:TO")]
    pub moisture: Option<String>,
    /// A panel of solid wood, by its name in the cut list: cut from boards, and it moves as all else does that is; more than once
    #[arg(long, value_name = "PART")]
    pub solid: Vec<String>,
}

/// What it is cut from.
#[derive(Args)]
#[command(next_help_heading = "What to buy")]
pub struct BuyOptions {
    /// The size of the sheets that panels are cut from, the grain along the length
    #[arg(long, value_name = "LENGTHxWIDTH", default_value = "8ft x 4ft")]
    pub from_sheets: String,
    /// The length of the boards that all else is cut from; may be given more than once
    #[arg(long, value_name = "LENGTH", default_value = "8ft")]
    pub from_boards: Vec<String>,
    /// The width of the saw's cut: measure that of the blade in the saw
    #[arg(long, value_name = "LENGTH", default_value = "1/8in")]
    pub kerf: String,
}

/// What is saved.
#[derive(Args)]
#[command(next_help_heading = "Files")]
pub struct FileOptions {
    /// Save a job sheet for the phone and the printer, in one file that needs no other
    #[arg(long, value_name = "FILE")]
    pub html: Option<PathBuf>,
    /// Save every story pole in true size as an SVG picture in this folder
    #[cfg(feature = "svg")]
    #[arg(long, value_name = "FOLDER")]
    pub svg: Option<PathBuf>,
    /// Save every story pole in true size as a PDF document, page by page, in this folder
    #[cfg(feature = "pdf")]
    #[arg(long, value_name = "FOLDER")]
    pub pdf: Option<PathBuf>,
    /// What the documents are printed on: letter or a4
    #[cfg(feature = "pdf")]
    #[arg(long, value_enum, default_value = "letter", requires = "pdf")]
    pub paper: PaperName,
    /// Replace files that are there already
    #[arg(long)]
    pub force: bool,
}

#[derive(Clone, Copy, ValueEnum)]
pub enum OverName {
    /// the sides, from the rear of the back to the front edges
    Box,
    /// the face frame too
    Frame,
    /// a top that stands past the box
    Top,
    /// the molding
    Molding,
}

#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum SawnName {
    /// flat-sawn: the rings run along the width
    Flat,
    /// quarter-sawn: the rings run through the thickness
    Quarter,
}

impl SawnName {
    pub const fn word(self) -> &'static str {
        match self {
            Self::Flat => "flat",
            Self::Quarter => "quarter",
        }
    }

    pub fn of_word(word: &str) -> Option<Self> {
        [Self::Flat, Self::Quarter].into_iter().find(|sawn| sawn.word() == word)
    }
}

impl From<OverName> for scantling::Overall {
    fn from(over: OverName) -> Self {
        match over {
            OverName::Box => Self::Box,
            OverName::Frame => Self::Frame,
            OverName::Top => Self::Top,
            OverName::Molding => Self::Molding,
        }
    }
}

#[cfg(feature = "pdf")]
#[derive(Clone, Copy, ValueEnum)]
pub enum PaperName {
    Letter,
    A4,
}

#[cfg(feature = "pdf")]
impl From<PaperName> for scantling::Paper {
    fn from(paper: PaperName) -> Self {
        match paper {
            PaperName::Letter => Self::Letter,
            PaperName::A4 => Self::A4,
        }
    }
}
