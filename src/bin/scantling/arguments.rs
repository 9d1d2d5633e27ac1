//! What can be typed behind `scantling`: commands and options in the words of the trade. What the texts
//! mean is left to the library, so that a bad one is shown with its place.

use std::ffi::OsString;
#[cfg(feature = "svg")]
use std::path::PathBuf;
use std::str::FromStr;

use clap::{Args, Parser, Subcommand, ValueEnum};
use scantling::{Comma, LengthParser, RoundingMode, Shorthand, Strokes, Unit};

use crate::case::Case;
use crate::cut::Cut;
use crate::divide::Divide;
use crate::lumber::Lumber;
use crate::pole::Pole;

/// The same for every command.
const EXIT_STATUS: &str = "\
Exit status:
  0  answered, even if the reader of the answer stopped early (| head)
  2  not answered, or not every line: something was not understood, does not fit, or cannot be read or written;
     standard error says what. A file is saved whole or not at all, and never over another one without --force.";

/// Exact shop measurement: lengths as people write them, openings, tape marks.
///
/// Lengths are typed as on paper: 72, 17-5/8, 6ft3, 75-1/4, 365mm, "6'-3 1/2". A bare number is inches.
/// Quote what has a blank or a mark in it.
#[derive(Parser)]
#[command(name = "scantling", version, max_term_width = 100, after_help = EXIT_STATUS)]
pub struct Scantling {
    #[command(subcommand)]
    pub command: Command,
}

#[derive(Subcommand)]
pub enum Command {
    /// Read lengths and show each one on the tape, in every notation and in words
    Read(Read),
    /// Calculate with lengths: + - * / and brackets
    Calc(Calc),
    /// Divide a run into equal parts, or between members that share it, and give the marks
    Divide(Box<Divide>),
    /// Say what lumber is by its name, what it measures, how much it is and what it costs
    Lumber(Box<Lumber>),
    /// Put every mark of a job on one stick, check it, and print it in true size
    Pole(Box<Pole>),
    /// Plan which parts to cut from which boards, with the marks to make and a proof of how good the plan is
    Cut(Box<Cut>),
    /// Work out a whole case: what to buy and to cut, where it is marked and fastened, and that it all adds up
    Case(Box<Case>),
}

#[derive(Args)]
pub struct Read {
    /// Lengths, each quoted if it has a blank in it; - reads lines from standard input
    #[arg(required = true, value_name = "LENGTH")]
    pub texts: Vec<String>,
    #[command(flatten)]
    pub notation: Notation,
    #[command(flatten)]
    pub tape: TapeOptions,
    /// Draw the tape with the mark on it, and say in words where the mark lies
    #[arg(long, value_enum, value_name = "STROKES", num_args = 0..=1, require_equals = true, default_missing_value = "lines", conflicts_with = "json")]
    pub draw: Option<StrokesName>,
    /// Save the drawing of one length as an SVG picture
    #[cfg(feature = "svg")]
    #[arg(long, value_name = "FILE")]
    pub svg: Option<PathBuf>,
    /// The scale of the picture: 1 for true size, 2 for twice that, 1/4 for a quarter
    #[cfg(feature = "svg")]
    #[arg(long, requires = "svg")]
    pub scale: Option<String>,
    /// Replace the file if there is one already
    #[cfg(feature = "svg")]
    #[arg(long, requires = "svg")]
    pub force: bool,
    /// Answer in JSON, one object a line
    #[arg(long)]
    pub json: bool,
}

impl Read {
    pub fn is_standard_input(&self) -> bool {
        self.texts == ["-"]
    }
}

#[derive(Args)]
pub struct Calc {
    /// The calculation, such as "72 - 2*3/4" or "(6' 2 + 20 cm) / 2"; several words are one calculation
    #[arg(required = true, value_name = "CALCULATION")]
    pub words: Vec<String>,
    #[command(flatten)]
    pub notation: Notation,
    #[command(flatten)]
    pub tape: TapeOptions,
    /// Answer in JSON
    #[arg(long)]
    pub json: bool,
}

/// How typed lengths are read.
#[derive(Args)]
pub struct Notation {
    /// The unit of a bare number
    #[arg(long, value_enum, default_value = "in")]
    unit: UnitName,
    /// What a comma between digits means
    #[arg(long, value_enum, default_value = "refuse")]
    comma: CommaName,
    /// A crew's shorthand, read beside everything else
    #[arg(long, value_enum, default_value = "none")]
    shorthand: ShorthandName,
}

impl Notation {
    pub fn parser(&self) -> LengthParser {
        let unit = match self.unit {
            UnitName::In => Unit::Inch,
            UnitName::Ft => Unit::Foot,
            UnitName::Yd => Unit::Yard,
            UnitName::Mm => Unit::Millimeter,
            UnitName::Cm => Unit::Centimeter,
            UnitName::M => Unit::Meter,
        };
        let comma = match self.comma {
            CommaName::Refuse => Comma::Refuse,
            CommaName::Groups => Comma::Groups,
            CommaName::Decimal => Comma::Decimal,
        };
        let shorthand = match self.shorthand {
            ShorthandName::None => Shorthand::None,
            ShorthandName::FeetInchesSixteenths => Shorthand::FeetInchesSixteenths,
            ShorthandName::FeetInches => Shorthand::FeetInches,
            ShorthandName::InchesSixteenths => Shorthand::InchesSixteenths,
        };
        LengthParser::new().default_unit(unit).comma(comma).shorthand(shorthand)
    }
}

/// The tape that positions are marked with.
#[derive(Args)]
pub struct TapeOptions {
    /// The tape's graduation
    #[arg(long, value_name = "GRADUATION", default_value = "1/16")]
    pub tape: String,
    /// Which graduation is taken for a place between two
    #[arg(long, value_enum, default_value = "nearest")]
    pub round: Round,
    /// The reading laid on the datum, for a tape whose end is worn: 1 to burn an inch
    #[arg(long, value_name = "READING", default_value = "0")]
    pub burn: String,
}

#[derive(Clone, Copy, ValueEnum)]
enum UnitName {
    In,
    Ft,
    Yd,
    Mm,
    Cm,
    M,
}

#[derive(Clone, Copy, ValueEnum)]
enum CommaName {
    /// an error that names both readings
    Refuse,
    /// it groups thousands
    Groups,
    /// it is the decimal sign
    Decimal,
}

#[derive(Clone, Copy, ValueEnum)]
enum ShorthandName {
    /// an error that names the mode
    None,
    /// 12-04-08 or packed 120408: 12 ft 4 8/16 in
    FeetInchesSixteenths,
    /// 2-6 or two-six: 2 ft 6 in
    FeetInches,
    /// 36-12 or 36-twelve: 36 12/16 in
    InchesSixteenths,
}

#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Round {
    /// the nearest graduation; midway goes up
    Nearest,
    /// the nearest; midway goes to the even graduation
    NearestEven,
    /// the nearest; midway goes away from zero
    NearestAway,
    /// the graduation below, for what must fit inside
    Down,
    /// the graduation above
    Up,
    /// the graduation nearer to zero
    TowardZero,
}

impl From<Round> for RoundingMode {
    fn from(round: Round) -> Self {
        match round {
            Round::Nearest => Self::TiesUp,
            Round::NearestEven => Self::TiesEven,
            Round::NearestAway => Self::TiesAway,
            Round::Down => Self::Down,
            Round::Up => Self::Up,
            Round::TowardZero => Self::TowardZero,
        }
    }
}

#[derive(Clone, Copy, ValueEnum)]
pub enum StrokesName {
    /// lines and corners, as most terminals have them
    Lines,
    /// plain ASCII
    Ascii,
}

impl From<StrokesName> for Strokes {
    fn from(strokes: StrokesName) -> Self {
        match strokes {
            StrokesName::Lines => Self::Unicode,
            StrokesName::Ascii => Self::Ascii,
        }
    }
}

/// The arguments with a blank before each that begins with a minus and a number, so that `-1/2` is a length
/// and `--json` stays an option. The library skips the blank, and [`typed`] takes it off again.
pub fn shielded(arguments: impl Iterator<Item = OsString>) -> impl Iterator<Item = OsString> {
    arguments.map(|argument| match argument.to_str() {
        Some(text) if is_negative(text) => format!(" {text}").into(),
        _ => argument,
    })
}

fn is_negative(text: &str) -> bool {
    text.strip_prefix('-').and_then(|rest| rest.chars().next()).is_some_and(|next| next != '-' && !next.is_ascii_alphabetic())
}

/// A count of members, bays, sticks and the like.
pub fn count<T: FromStr>(text: &str) -> Result<T, String> {
    typed(text).parse().map_err(|_| "a whole number was expected, such as 5".to_owned())
}

/// An argument as it was typed.
pub fn typed(argument: &str) -> &str {
    argument.strip_prefix(' ').filter(|rest| is_negative(rest)).unwrap_or(argument)
}
