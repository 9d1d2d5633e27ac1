//! What can be typed behind `scantling cut`. What the texts mean is left to `items.rs`, files to `list.rs`.

use std::path::PathBuf;

use clap::{ArgGroup, Args, ValueEnum};
use scantling::KerfRule;

use crate::arguments::{Notation, TapeOptions};

/// Options that panels come from, and sheets. They go with none that are about lengths alone.
const PANELS: [&str; 3] = ["panel", "turnable", "panels"];
const SHEETS: [&str; 2] = ["sheet", "sheets"];
const LENGTHS: [&str; 11] =
    ["part", "joined", "parts", "stock", "stocks", "kerf_rule", "trim_near", "trim_far", "keep", "shortest_piece", "aim"];

/// Plan which parts to cut from which boards, with the marks to make and a proof of how good the plan is
///
/// A file of parts has the columns name, length, count and joined, one of boards name, length, count and price, one of
/// panels name, length, width, count and turnable, one of sheets name, length, width, count and price. Sizes are
/// needed, the order of columns is free. JSON is a list of objects with the same names.
#[derive(Args)]
#[command(override_usage = "scantling cut <PARTS> <BOARDS> [OPTIONS]\n       scantling cut <PANELS> <SHEETS> [OPTIONS]")]
#[command(group = ArgGroup::new("wanted").args(["part", "joined", "parts"]).args(PANELS).required(true).multiple(true))]
#[command(group = ArgGroup::new("there").args(["stock", "stocks"]).args(SHEETS).required(true).multiple(true))]
pub struct Cut {
    /// Parts of one length: rail=4@35-1/2 for four rails; the name may be left out
    #[arg(long, value_name = "NAME=COUNT@LENGTH", help_heading = "Parts")]
    pub part: Vec<String>,
    /// The same, of several pieces end to end where no board is long enough
    #[arg(long, value_name = "NAME=COUNT@LENGTH", help_heading = "Parts")]
    pub joined: Vec<String>,
    /// A file of parts, CSV or JSON by its name; - reads CSV from standard input
    #[arg(long, value_name = "FILE", help_heading = "Parts")]
    pub parts: Option<PathBuf>,
    /// Boards of one length: 8ft for as many as it takes, old=3@40 for three, 8ft:12.49 with a price for one
    #[arg(long, value_name = "NAME=COUNT@LENGTH:PRICE", help_heading = "Boards")]
    pub stock: Vec<String>,
    /// A file of boards, CSV or JSON by its name; - reads CSV from standard input
    #[arg(long, value_name = "FILE", help_heading = "Boards")]
    pub stocks: Option<PathBuf>,
    #[command(flatten)]
    pub panels: PanelOptions,
    /// The width of the saw's cut: measure that of the blade in the saw
    #[arg(long, value_name = "LENGTH", default_value = "1/8", help_heading = "Saw")]
    pub kerf: String,
    /// Which parts take a kerf
    #[arg(long, value_enum, default_value = "between", help_heading = "Saw")]
    pub kerf_rule: Rule,
    /// What is cut off both ends of every board, or off every edge of a sheet, first, saw cut included
    #[arg(long, value_name = "LENGTH", help_heading = "Saw")]
    pub trim: Option<String>,
    /// What is cut off the near end, where it is not the same
    #[arg(long, value_name = "LENGTH", help_heading = "Saw")]
    pub trim_near: Option<String>,
    /// What is cut off the far end, where it is not the same
    #[arg(long, value_name = "LENGTH", help_heading = "Saw")]
    pub trim_far: Option<String>,
    /// The shortest offcut worth keeping; shorter ones count as waste
    #[arg(long, value_name = "LENGTH", default_value = "0", help_heading = "Plan")]
    pub keep: String,
    /// The shortest piece that a joined part may be made of
    #[arg(long, value_name = "LENGTH", default_value = "0", help_heading = "Plan")]
    pub shortest_piece: String,
    /// What makes one plan better than another; without it the price if there are prices, else the length of boards
    #[arg(long, value_enum, help_heading = "Plan")]
    pub aim: Option<AimName>,
    /// How long to look for a better plan
    #[arg(long, value_name = "SECONDS", default_value_t = 10, help_heading = "Plan")]
    pub seconds: u64,
    /// Answer in JSON
    #[arg(long)]
    pub json: bool,
    #[command(flatten, next_help_heading = "Marks")]
    pub tape: TapeOptions,
    #[command(flatten, next_help_heading = "Notation")]
    pub notation: Notation,
}

/// Panels, and the sheets to cut them from.
#[derive(Args)]
#[command(next_help_heading = "Panels from sheets, by cuts from edge to edge")]
pub struct PanelOptions {
    /// Panels of one size, the grain along the length: side=2@72x15 for two sides 72 long and 15 wide
    #[arg(long, value_name = "NAME=COUNT@LENGTHxWIDTH", conflicts_with_all = LENGTHS)]
    pub panel: Vec<String>,
    /// The same, of which the grain may run either way
    #[arg(long, value_name = "NAME=COUNT@LENGTHxWIDTH", conflicts_with_all = LENGTHS)]
    pub turnable: Vec<String>,
    /// A file of panels, CSV or JSON by its name; - reads CSV from standard input
    #[arg(long, value_name = "FILE", conflicts_with_all = LENGTHS)]
    pub panels: Option<PathBuf>,
    /// Sheets of one size, the grain along the length: 96x48 for as many as it takes, old=1@60x48, 96x48:54.90
    #[arg(long, value_name = "NAME=COUNT@LENGTHxWIDTH:PRICE", conflicts_with_all = LENGTHS)]
    pub sheet: Vec<String>,
    /// A file of sheets, CSV or JSON by its name; - reads CSV from standard input
    #[arg(long, value_name = "FILE", conflicts_with_all = LENGTHS)]
    pub sheets: Option<PathBuf>,
    /// Save each sheet of the plan as an SVG picture; of several, kit.svg becomes kit-1.svg, kit-2.svg and so on
    #[cfg(feature = "svg")]
    #[arg(long, value_name = "FILE", conflicts_with_all = LENGTHS)]
    pub svg: Option<PathBuf>,
    /// Replace files that are there already
    #[cfg(feature = "svg")]
    #[arg(long, requires = "svg")]
    pub force: bool,
}

impl PanelOptions {
    pub fn is_given(&self) -> bool {
        let texts = [&self.panel, &self.turnable, &self.sheet];
        texts.iter().any(|texts| !texts.is_empty()) || self.panels.is_some() || self.sheets.is_some()
    }
}

#[derive(Clone, Copy, ValueEnum)]
pub enum Rule {
    /// kerfs lie between parts: one that ends where the board ends needs no cut
    Between,
    /// every part takes a kerf, the last one too
    EachPart,
}

impl From<Rule> for KerfRule {
    fn from(rule: Rule) -> Self {
        match rule {
            Rule::Between => Self::Between,
            Rule::EachPart => Self::EachPart,
        }
    }
}

#[derive(Clone, Copy, ValueEnum)]
pub enum AimName {
    /// the fewest boards, however long
    Boards,
    /// the least length of boards
    Length,
    /// the lowest price
    Price,
}

impl From<AimName> for scantling::Aim {
    fn from(aim: AimName) -> Self {
        match aim {
            AimName::Boards => Self::FewestBoards,
            AimName::Length => Self::LeastLength,
            AimName::Price => Self::LowestPrice,
        }
    }
}
