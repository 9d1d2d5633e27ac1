//! What can be typed behind `scantling lumber`. What the names mean is left to the library.

use clap::{Args, ValueEnum};
use scantling::TallyRule;

use crate::arguments::{Notation, TapeOptions, typed};

#[derive(Args)]
pub struct Lumber {
    /// Names of stock, each quoted if it has a blank in it: 2x4x8, 5/4x6, "8/4 walnut S2S", "3/4 ply 4x8", "2x4 - 12'"
    #[arg(required = true, value_name = "NAME")]
    pub names: Vec<String>,
    /// How many pieces of each
    #[arg(long, value_parser = count, value_name = "COUNT")]
    pub pieces: Option<u32>,
    /// The length of each, with its unit, where the name does not say it
    #[arg(long, value_name = "LENGTH")]
    pub length: Option<String>,
    /// The width of each, where the name does not say it: of hardwood, as measured
    #[arg(long, value_name = "LENGTH")]
    pub width: Option<String>,
    /// What it costs: 8.75/bf, 0.62/ft, 1.90/sqft or 54.98/piece
    #[arg(long, value_name = "PRICE")]
    pub price: Option<String>,
    /// What the tally rounds
    #[arg(long, value_enum, value_name = "RULE", default_value = "one-inch-minimum")]
    pub tally: Rule,
    /// Answer in JSON, one object a line
    #[arg(long)]
    pub json: bool,
    #[command(flatten, next_help_heading = "Figures as read on a tape")]
    pub tape: TapeOptions,
    #[command(flatten, next_help_heading = "Notation")]
    pub notation: Notation,
}

#[derive(Clone, Copy, ValueEnum)]
pub enum Rule {
    /// nothing, and thin stock counts as thick as it is called
    Exact,
    /// nothing, and stock under 1 in counts as 1 in thick
    OneInchMinimum,
    /// the face of each board, to the nearest whole square foot, halves up
    NearestFoot,
    /// the same, with halves up and down by turns
    HalvesByTurns,
}

impl From<Rule> for TallyRule {
    fn from(rule: Rule) -> Self {
        match rule {
            Rule::Exact => Self::Exact,
            Rule::OneInchMinimum => Self::OneInchMinimum,
            Rule::NearestFoot => Self::NearestFoot,
            Rule::HalvesByTurns => Self::HalvesByTurns,
        }
    }
}

fn count(text: &str) -> Result<u32, String> {
    typed(text)
        .parse()
        .ok()
        .filter(|count| *count > 0)
        .ok_or_else(|| format!("a whole number from 1 to {} was expected", u32::MAX))
}
