//! What can be typed behind `scantling pole`. What the texts mean is left to `build.rs`, what is done with the pole to
//! `mod.rs`.

use std::path::PathBuf;

use clap::{Args, ValueEnum};
use scantling::{Datum, Hand};

use crate::arguments::{Notation, StrokesName, TapeOptions, count};

#[derive(Args)]
#[command(override_usage = "scantling pole [NAME] <--length LENGTH | --job FILE> [MARKS] [OPTIONS]")]
pub struct Pole {
    /// What the pole is for
    #[arg(value_name = "NAME")]
    pub name: Option<String>,
    /// How long the stick is
    #[arg(long, value_name = "LENGTH", required_unless_present = "job", conflicts_with = "job")]
    pub length: Option<String>,
    /// A pole as JSON, as --json gives it; - reads it from standard input
    #[arg(long, value_name = "FILE")]
    pub job: Option<PathBuf>,
    /// The end that everything is measured from
    #[arg(long, value_enum, value_name = "END", conflicts_with = "job")]
    pub from: Option<End>,
    /// Which of two mirror images it is for
    #[arg(long, value_enum)]
    pub hand: Option<HandName>,
    /// Answer in JSON, one object a pole
    #[arg(long)]
    pub json: bool,
    #[command(flatten)]
    pub marks: MarkOptions,
    #[command(flatten)]
    pub changes: ChangeOptions,
    #[command(flatten)]
    pub pictures: PictureOptions,
    #[command(flatten, next_help_heading = "Tape")]
    pub tape: TapeOptions,
    #[command(flatten, next_help_heading = "Notation")]
    pub notation: Notation,
}

/// The marks. Each may be given more than once.
#[derive(Args)]
#[command(next_help_heading = "Marks: ROW/NAME=PLACE, or ROW/NAME=PLACE:THICKNESS")]
pub struct MarkOptions {
    /// A line with its part past it, away from the datum: "side/shelf 1=14-2/5:3/4"
    #[arg(long, value_name = "MARK")]
    pub past: Vec<String>,
    /// A line with its part before it, toward the datum
    #[arg(long, value_name = "MARK")]
    pub before: Vec<String>,
    /// A center line
    #[arg(long, value_name = "MARK")]
    pub centered: Vec<String>,
    /// A line alone
    #[arg(long, value_name = "MARK")]
    pub line: Vec<String>,
    /// Members with equal openings between them over the whole pole, or from one place to another:
    /// "side/shelf=5:3/4" or "side/shelf=5:3/4:4:76"
    #[arg(long, value_name = "ROW/NAME=COUNT:THICKNESS")]
    pub equal: Vec<String>,
    /// A row that must reach from one place to another: "base cases=0:120"
    #[arg(long, value_name = "ROW=FROM:TO")]
    pub closes: Vec<String>,
    /// Places are what the tape shows on a real stick: what it shows at the datum (--burn) is taken off, and
    /// "17-3/8 strong by 1/64" is read
    #[arg(long)]
    pub as_read: bool,
}

/// Other poles made of it, in this order.
#[derive(Args)]
#[command(next_help_heading = "Changes, in this order")]
pub struct ChangeOptions {
    /// Lay another pole on this one, its datum this far from the datum: upper.json=54; may be given more than once
    #[arg(long, value_name = "FILE=PLACE")]
    pub merge: Vec<String>,
    /// With these rows alone
    #[arg(long, value_name = "ROW", num_args = 1..)]
    pub only: Vec<String>,
    /// Move the datum out by this much: a base below
    #[arg(long, value_name = "LENGTH")]
    pub shift: Option<String>,
    /// Read from the other end
    #[arg(long)]
    pub flip: bool,
    /// The mirror image, for the other hand
    #[arg(long)]
    pub mirror: bool,
    /// Cut to sticks this long, which slide on each other
    #[arg(long, value_name = "LENGTH", requires = "overlap")]
    pub stick: Option<String>,
    /// By how much sticks overlap
    #[arg(long, value_name = "LENGTH", requires = "stick")]
    pub overlap: Option<String>,
    /// This one of the sticks alone, counted from the datum
    #[arg(long, value_parser = count::<usize>, value_name = "NUMBER", requires = "stick")]
    pub number: Option<usize>,
}

/// What is drawn and saved.
#[derive(Args)]
#[command(next_help_heading = "Pictures")]
pub struct PictureOptions {
    /// Draw the pole in characters
    #[arg(long, value_enum, value_name = "STROKES", num_args = 0..=1, require_equals = true, default_missing_value = "lines", conflicts_with = "json")]
    pub draw: Option<StrokesName>,
    /// Save the pole in true size as an SVG picture
    #[cfg(feature = "svg")]
    #[arg(long, value_name = "FILE")]
    pub svg: Option<PathBuf>,
    /// Save the pole in true size as a PDF document, page by page
    #[cfg(feature = "pdf")]
    #[arg(long, value_name = "FILE")]
    pub pdf: Option<PathBuf>,
    /// What the document is printed on: letter, a4, or the width of a roll
    #[cfg(feature = "pdf")]
    #[arg(long, value_name = "PAPER", default_value = "letter", requires = "pdf")]
    pub paper: String,
    /// Replace files that are there already
    #[cfg(any(feature = "svg", feature = "pdf"))]
    #[arg(long)]
    pub force: bool,
}

#[derive(Clone, Copy, ValueEnum)]
pub enum End {
    /// up from the bottom, as without this option
    Bottom,
    /// down from the top
    Top,
    /// to the right from the left end
    Left,
    /// to the left from the right end
    Right,
}

impl From<End> for Datum {
    fn from(end: End) -> Self {
        match end {
            End::Bottom => Self::Bottom,
            End::Top => Self::Top,
            End::Left => Self::Left,
            End::Right => Self::Right,
        }
    }
}

#[derive(Clone, Copy, ValueEnum)]
pub enum HandName {
    Left,
    Right,
}

impl From<HandName> for Hand {
    fn from(hand: HandName) -> Self {
        match hand {
            HandName::Left => Self::Left,
            HandName::Right => Self::Right,
        }
    }
}
