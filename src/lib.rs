//! Exact shop measurement: from sizes as people type them to marks on a tape.
//!
//! ```text
//! text ──parse──▶ Length ──spacing──▶ exact positions ──tape──▶ marks ──print──▶ text
//!                 exact               exact                     rounded once,    nothing is rounded here
//!                                                               leftover kept
//! ```
//!
//! A case 72 inches high, divided in five, on a tape that reads sixteenths:
//!
//! ```
//! use scantling::{Length, Spacing, Tape};
//!
//! let height: Length = "6'-0".parse()?;
//! let layout = Spacing::equal_parts(5).over(height)?;
//! assert_eq!(layout.opening().to_string(), r#"14 2/5""#);
//!
//! let marked = layout.on(&Tape::sixteenths())?;
//! let readings: Vec<String> = marked.marks().map(|mark| mark.reading().to_string()).collect();
//! assert_eq!(readings[0], r#"14-3/8" strong by 1/40""#);
//! assert_eq!(readings[3], r#"57-5/8" shy by 1/40""#); // rounded from the datum, not stepped off
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```
//!
//! | to | use |
//! | --- | --- |
//! | hold and reckon exact lengths, areas, volumes | [`Length`], [`Area`], [`Volume`], [`Unit`] |
//! | round to any step in a named mode | [`Length::round`], [`Rounding`], [`RoundingMode`] |
//! | read a length, a size, a tolerance, a called length | [`LengthParser`], [`Size`], [`Toleranced`], [`Called`] |
//! | read very many lengths, one a line | [`LengthParser::parse_lines`], [`LengthParser::parse_lines_into`] |
//! | say where text is wrong, and what to write instead | [`ParseError`], [`ParseErrorKind`] |
//! | find where a place falls on a tape | [`Tape`], [`Reading`] |
//! | write a length | [`LengthPrinter`], or `Display` |
//! | draw a tape with the mark on it, or say where it lies | [`TapeDrawing`], [`MarkInWords`] |
//! | divide a run, in any of the ways that [`Spacing`] lists | [`Spacing`], [`Layout`], [`OnTape`] |
//! | print dimensions that add up | [`Chain`] |
//! | put a whole layout on one stick, check it, show it | [`StoryPole`], [`Row`], [`Mark`], [`Finding`] |
//! | check for square, cut miters, lay a rule on the slant | [`diagonal()`], [`out_of_square()`], [`Molding`], [`slanted_rule()`] |
//! | know what a `2x4`, an `8/4` or a sheet measures | [`Nominal`], [`Catalog`], [`Actual`] |
//! | count board feet by a rule of the trade, and what they cost | [`Tally`], [`TallyRule`], [`Price`], [`Money`] |
//! | cut parts from boards, and know how good the plan is | [`Cutting`], [`Plan`] |
//! | lay panels out on sheets, with cuts from edge to edge | [`SheetCutting`], [`SheetPlan`] |
//! | work out a whole case, with sums that close | [`Case`], [`CasePlan`] |
//! | choose a shelf by how far it sags | [`LoadedShelf`], [`material()`] |
//!
//! # What holds everywhere
//!
//! * A length is an exact rational; nothing on the way to the tape is a float, and only [`Length::round`] rounds.
//! * Operators panic when the exact answer cannot be held, in release builds too; `checked_…` methods give an
//!   `Option`, `try_…` methods a `Result`. Nothing is clamped.
//! * Text with two readings of different value is an error that names both.
//!
//! # Features
//!
//! The library is `no_std` with `alloc`, and has no default features.
//!
//! * `cli`: the `scantling` program. It brings in `serde`.
//! * `serde`: lengths, tapes, poles, whole cases and the rest in the formats of other programs, as exact text or reduced
//!   pairs; fields that must be plain numbers, too. The forms stand in the documentation of module `serde`.
//! * `svg`: a drawn tape as a picture, `TapeDrawing::svg`, and a story pole in true size, `StoryPole::svg`. It brings in
//!   the standard library.
//! * `pdf`: a story pole in true size, page by page, `StoryPole::pdf`. It brings in the standard library.
#![no_std]

extern crate alloc;
#[cfg(test)]
extern crate std;

// The folders in the order of the data: text → exact length → layout → tape marks → text.
mod length;

mod parse;

mod tape;

mod print;

mod spacing;

mod pole;

mod geometry;

mod lumber;

mod cutting;

mod casework;

// Outside of that order: the same values in the formats of other programs.
#[cfg(feature = "serde")]
pub mod serde;

pub use casework::{
    Advice, Allowances, Back, Base, Case, CasePart, CasePlan, CaseworkError, Caution, Closing, FaceFrame, FrameJoint, FrontKind,
    FrontSet, Fronts, Joint, Level, Levels, LoadedShelf, Material, Modulus, Mount, Movement, MovingPart, NailLine, Notch,
    OnFront, Overall, Pieces, PinHoles, PocketHole, SagLimit, ShelfLoad, Shelves, Site, Species, StoppedDado, Sum, TopAt,
    all_species, material, materials, pocket_hole, species,
};
pub use cutting::{
    Aim, Cut, CutBoard, CutSheet, Cutting, CuttingError, KerfRule, Panel, PanelPlace, Part, PlacedPanel, Plan, PlanCost, Sheet,
    SheetCut, SheetCutting, SheetError, SheetPlan, Stock, Way,
};
pub use geometry::{
    Angle, Corner, FrameSize, GeometryError, Hook, Mitered, MiteredMarks, Miters, Molding, OutOfSquare, Polygon, Rounded,
    SlantedRule, Squareness, Triple, burned_inch, center_from_ends, check_miters, diagonal, exact_diagonal, hinges, midpoint,
    out_of_square, slanted_reading, slanted_rule, squared_diagonal,
};
pub use length::{Area, Length, LengthError, Rounding, RoundingMode, Unit, Volume};
pub use lumber::{
    Actual, Catalog, HardwoodRow, LumberError, LumberKind, Money, Nominal, NominalError, NominalErrorKind, PanelRow, Price,
    PricedBy, Seasoning, Seen, SheetRow, SoftwoodRow, Source, Surface, Table, Tallied, Tally, TallyRule, TimberRow,
};
pub use parse::{
    Axis, Called, Comma, Dimension, FindIter, Found, Hint, LengthParser, LineError, LineIter, ParseError, ParseErrorKind,
    Precision, Quantity, Shorthand, Side, Size, Toleranced, UnitMark, Warning, Written, evaluate,
};
#[cfg(feature = "pdf")]
pub use pole::Paper;
pub use pole::{Datum, Finding, Hand, Mark, PartSide, PoleDrawing, PoleError, PoleList, Row, StoryPole};
pub use print::{
    Column, Denominator, DrawingError, DualPrinter, InColumn, Join, LengthPrinter, MarkInWords, Marks, Places, PrintError,
    ReadingPrinter, Shown, ShownDual, ShownReading, Sign, Spoken, Strokes, Style, TapeDrawing, Zeros,
};
pub use spacing::{
    Chain, ChainLink, ChainSlip, Change, Edge, End, First, FriendlySize, Growth, Layout, MemberMark, Narrowest, OnTape,
    Remainder, SpacerBlock, Spacing, SpacingError, TapeMark, Widest,
};
pub use tape::{Lean, Reading, Tape, TapeError};

// The code in these guides is run like any other example.
#[cfg(doctest)]
#[doc = include_str!("../README.md")]
struct Readme;

#[cfg(doctest)]
#[doc = include_str!("../DEVELOPERS.md")]
struct Developers;
