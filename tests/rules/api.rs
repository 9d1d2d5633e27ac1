//! What every public type promises beside its functions: it can be sent to another thread and kept, it shows itself, and an error is
//! one to any program. A type that is not listed here is found by its name in `src/lib.rs`.

use std::error::Error;
use std::fmt::Debug;
use std::fs;

macro_rules! keep {
    ($($name:ident$(<$row:ty>)?),* $(,)?) => {
        const KEPT: &[&str] = &[$(stringify!($name)),*];

        #[test]
        fn every_type_can_be_kept_and_sent() {
            const fn is_kept<T: Debug + Send + Sync + Unpin + 'static>() {}
            $(is_kept::<scantling::$name$(<$row>)?>();)*
        }
    };
}

keep! {
    Actual, Advice, Aim, Allowances, Angle, Area, Axis, Back, Base, Called, Case, CasePart, CasePlan, CaseworkError, Catalog,
    Caution, Chain, ChainLink, ChainSlip, Change, Closing, Column, Comma, Corner, Cut, CutBoard, CutSheet, Cutting,
    CuttingError, Datum, Denominator, Dimension, DrawingError, DualPrinter, Edge, End, FaceFrame, FindIter, Finding,
    First, Found, FrameJoint, FrameSize, FriendlySize, FrontKind, FrontSet, Fronts, GeometryError, Growth, Hand, HardwoodRow,
    Hint, Hook, InColumn, Join, Joint, KerfRule, Layout, Lean, Length, LengthError, LengthParser, LengthPrinter, Level, Levels,
    LineError, LineIter,
    LoadedShelf, LumberError, LumberKind, Mark, MarkInWords, Marks, Material, MemberMark, Mitered, MiteredMarks, Miters,
    Modulus, Molding, Money, Mount, Movement, MovingPart, NailLine, Narrowest, Nominal, NominalError, NominalErrorKind, Notch,
    OnFront, OnTape, OutOfSquare, Overall, Panel, PanelPlace, PanelRow, ParseError, ParseErrorKind, Part, PartSide, Pieces,
    PinHoles, PlacedPanel, Places, Plan, PlanCost, PocketHole, PoleDrawing, PoleError, PoleList, Polygon, Precision, Price,
    PricedBy, PrintError, Quantity, Reading, ReadingPrinter, Remainder, Rounded, Rounding, RoundingMode, Row, SagLimit,
    Seasoning, Seen, Sheet, SheetCut, SheetCutting, SheetError, SheetPlan, SheetRow, ShelfLoad, Shelves, Shorthand, Shown,
    ShownDual, ShownReading, Side, Sign, Site, Size, SlantedRule, SoftwoodRow, Source, SpacerBlock, Spacing, SpacingError,
    Species, Spoken, Squareness, Stock, StoppedDado, StoryPole, Strokes, Style, Sum, Surface, Table<scantling::PanelRow>, Tallied, Tally, TallyRule,
    Tape, TapeDrawing, TapeError, TapeMark, TimberRow, Toleranced, TopAt, Triple, Unit, UnitMark, Volume, Warning, Way, Widest,
    Written, Zeros,
}

#[test]
fn every_error_is_one_to_any_program() {
    const fn is_error<T: Error + Clone + PartialEq + Send + Sync + 'static>() {}
    is_error::<scantling::CaseworkError>();
    is_error::<scantling::CuttingError>();
    is_error::<scantling::DrawingError>();
    is_error::<scantling::GeometryError>();
    is_error::<scantling::LengthError>();
    is_error::<scantling::LineError>();
    is_error::<scantling::LumberError>();
    is_error::<scantling::NominalError>();
    is_error::<scantling::ParseError>();
    is_error::<scantling::PoleError>();
    is_error::<scantling::PrintError>();
    is_error::<scantling::SheetError>();
    is_error::<scantling::SpacingError>();
    is_error::<scantling::TapeError>();
}

/// The names behind `pub use` that begin with a capital, but for those of a feature.
#[test]
fn every_public_type_is_listed() {
    let source = fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/src/lib.rs")).unwrap();
    let mut uses: Vec<&str> = Vec::new();
    let mut is_always_there = true;
    for statement in source.split_inclusive([';', ']']) {
        if let Some((_, names)) = statement.split_once("pub use ").filter(|_| is_always_there) {
            uses.extend(
                names.split(|letter: char| !letter.is_alphanumeric()).filter(|name| name.starts_with(char::is_uppercase)),
            );
        }
        is_always_there = !statement.contains("#[cfg(feature");
    }
    uses.sort_unstable();
    assert!(uses.len() > 150, "{}", uses.len());
    assert_eq!(uses, KEPT);
}
