//! How much lumber there is: board feet, surface measure, square feet and feet of length, by one of the trade's rules.
//! What pieces measure plays no part: lumber is sold by its name. What it costs is left to `price.rs`.

use alloc::string::ToString;

use super::error::LumberError;
use super::kind::LumberKind;
use super::nominal::Nominal;
use crate::length::{Area, Length, Rounding, RoundingMode, Unit, Volume};

/// How a board is tallied: thickness times width in inches times length in feet over 12, on the sizes of its name.
///
/// | rule | 1/2 x 8, 12 ft | 2 x 6 1/4, 8 ft | two of 1 x 6, 9 ft | source |
/// | --- | --- | --- | --- | --- |
/// | `Exact` | 4 | 8 1/3 | 9 | "Builder" and "Engineering Aid", United States Navy |
/// | `OneInchMinimum` | 8 | 8 1/3 | 9 | Griffith, "Carpentry"; Danforth, "Mechanical Processes" |
/// | `NearestFoot` | 8 | 8 | 10 | American Hardwood Export Council, "Measurement" |
/// | `HalvesByTurns` | 8 | 8 | 9 | Wengert, "Rounding Numbers when Figuring Board Feet" |
///
/// ```
/// use scantling::{Length, TallyRule, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let feet = |rule: TallyRule| rule.board_feet(inches(2, 1), inches(25, 4), Length::new(8, Unit::Foot));
/// assert_eq!(feet(TallyRule::Exact)?.checked_in_board_feet(), Some(num_rational::Ratio::new(25, 3)));
/// assert_eq!(feet(TallyRule::NearestFoot)?.checked_in_board_feet(), Some(8.into()));
/// # Ok::<(), scantling::LumberError>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum TallyRule {
    /// Nothing is rounded, and thin stock counts as thick as its name.
    Exact,
    /// Nothing is rounded, and stock under 1 in thick counts as 1 in: the default.
    #[default]
    OneInchMinimum,
    /// The surface measure of each board goes to the nearest whole foot, halves up, and is multiplied by the thickness,
    /// which is 1 in or more.
    NearestFoot,
    /// The same, but of boards at just half a foot the first goes up, the next down, and so by turns through the tally.
    HalvesByTurns,
}

impl TallyRule {
    /// Every rule, in the order of the definition.
    pub const ALL: [Self; 4] = [Self::Exact, Self::OneInchMinimum, Self::NearestFoot, Self::HalvesByTurns];

    /// The surface measure of one board: the square feet of one face, to the whole foot where the rule says so.
    ///
    /// ```
    /// use scantling::{Length, TallyRule, Unit};
    ///
    /// let nine_and_a_quarter = Length::fraction(37, 4, Unit::Inch);
    /// let measure = TallyRule::NearestFoot.surface_measure(nine_and_a_quarter, Length::new(12, Unit::Foot))?;
    /// assert_eq!(measure.checked_in_square(Unit::Foot), Some(9.into()));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`LumberError::NotAboveZero`], [`LumberError::OutOfRange`].
    pub fn surface_measure(self, width: Length, length: Length) -> Result<Area, LumberError> {
        Ok(self.face(width, length)?.up)
    }

    /// The board feet of one board.
    ///
    /// ```
    /// use scantling::{Length, TallyRule, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let thin = |rule: TallyRule| rule.board_feet(inches(1, 2), inches(8, 1), Length::new(12, Unit::Foot));
    /// assert_eq!(thin(TallyRule::Exact)?.checked_in_board_feet(), Some(4.into()));
    /// assert_eq!(thin(TallyRule::OneInchMinimum)?.checked_in_board_feet(), Some(8.into()));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`LumberError::NotAboveZero`], [`LumberError::OutOfRange`].
    pub fn board_feet(self, thickness: Length, width: Length, length: Length) -> Result<Volume, LumberError> {
        let thickness = self.counted(thickness)?;
        self.surface_measure(width, length)?.checked_volume(thickness).ok_or(LumberError::OutOfRange)
    }

    /// The thickness that counts.
    fn counted(self, thickness: Length) -> Result<Length, LumberError> {
        above_zero("thickness", thickness)?;
        Ok(if self == Self::Exact { thickness } else { thickness.max(Unit::Inch.length()) })
    }

    /// The face of one board, which at just half a foot may go either way.
    fn face(self, width: Length, length: Length) -> Result<Face, LumberError> {
        above_zero("width", width)?;
        above_zero("length", length)?;
        let exact = width.checked_area(length).ok_or(LumberError::OutOfRange)?;
        if matches!(self, Self::Exact | Self::OneInchMinimum) {
            return Ok(Face { up: exact, down: exact });
        }
        // A strip a foot wide is as many feet long as the face has square feet, and lengths can be rounded.
        let foot = Unit::Foot.length();
        let strip = exact.checked_div_length(foot).ok_or(LumberError::OutOfRange)?;
        let whole = |mode| strip.round(Rounding::to(foot).mode(mode)).ok()?.checked_area(foot);
        let at_half = strip.checked_mul(2).is_some_and(|twice| twice.in_unit(Unit::Foot).is_integer())
            && !strip.in_unit(Unit::Foot).is_integer();
        let other = if at_half && self == Self::HalvesByTurns { RoundingMode::Down } else { RoundingMode::TiesUp };
        let [up, down] = [whole(RoundingMode::TiesUp), whole(other)];
        Ok(Face { up: up.ok_or(LumberError::OutOfRange)?, down: down.ok_or(LumberError::OutOfRange)? })
    }
}

/// In words: what is rounded, and what thin stock counts as.
///
/// ```
/// assert_eq!(scantling::TallyRule::Exact.to_string(), "exact, as thick as by name");
/// ```
impl core::fmt::Display for TallyRule {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        out.pad(match self {
            Self::Exact => "exact, as thick as by name",
            Self::OneInchMinimum => "exact, under 1\" thick counted as 1\"",
            Self::NearestFoot => "the face of each board to the nearest whole foot, halves up, under 1\" thick counted as 1\"",
            Self::HalvesByTurns => {
                "the face of each board to the nearest whole foot, halves up and down by turns, under 1\" thick counted as 1\""
            }
        })
    }
}

/// The surface measure of one board, and what it is instead when its half goes down.
#[derive(Clone, Copy)]
struct Face {
    up: Area,
    down: Area,
}

/// A tally: pieces added up by one rule, which remembers whether the next half foot goes up or down.
///
/// ```
/// use scantling::{Nominal, Tally, TallyRule};
///
/// let board: Nominal = "4/4 x 6 - 9'".parse()?; // 4 1/2 ft of face
/// let mut tally = Tally::new(TallyRule::HalvesByTurns);
/// let feet: Vec<_> = (0..3).map(|_| tally.add(&board, 1).unwrap().board_feet().unwrap().checked_in_board_feet().unwrap()).collect();
/// assert_eq!(feet, [5.into(), 4.into(), 5.into()]);
/// # Ok::<(), scantling::LumberError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Tally {
    rule: TallyRule,
    next_goes_down: bool,
}

impl Tally {
    /// A tally of nothing yet.
    ///
    /// ```
    /// use scantling::{Tally, TallyRule};
    ///
    /// assert_eq!(Tally::new(TallyRule::Exact).rule(), TallyRule::Exact);
    /// ```
    #[must_use]
    pub const fn new(rule: TallyRule) -> Self {
        Self { rule, next_goes_down: false }
    }

    /// The rule.
    ///
    /// ```
    /// use scantling::{Tally, TallyRule};
    ///
    /// assert_eq!(Tally::new(TallyRule::NearestFoot).rule(), TallyRule::NearestFoot);
    /// ```
    #[must_use]
    pub const fn rule(&self) -> TallyRule {
        self.rule
    }

    /// Tallies so many pieces, and says how much they are together. A panel has a face, and neither board feet nor feet
    /// of length.
    ///
    /// ```
    /// use scantling::{Length, Nominal, Tally, TallyRule, Unit};
    ///
    /// let studs: Nominal = "2x4x8".parse()?;
    /// let tallied = Tally::new(TallyRule::OneInchMinimum).add(&studs, 6)?;
    /// assert_eq!(tallied.linear(), Some(Length::new(48, Unit::Foot)));
    /// assert_eq!(tallied.board_feet().and_then(|volume| volume.checked_in_board_feet()), Some(32.into()));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// [`LumberError::Missing`] without a width or a length, [`LumberError::NotAboveZero`], [`LumberError::OutOfRange`].
    /// The tally is then as it was.
    pub fn add(&mut self, piece: &Nominal, pieces: u32) -> Result<Tallied, LumberError> {
        let missing = |missing| LumberError::Missing { name: piece.to_string().into(), missing };
        let width = piece.width().ok_or_else(|| missing("width"))?;
        let length = piece.length().ok_or_else(|| missing("length"))?;
        let kind = piece.kind();
        if matches!(kind, LumberKind::Panel | LumberKind::Sheet) {
            let face = TallyRule::Exact.face(width, length)?.up.checked_mul(pieces.into()).ok_or(LumberError::OutOfRange)?;
            return Ok(Tallied { kind, pieces, linear: None, face, board_feet: None });
        }
        let thickness = self.rule.counted(piece.thickness().ok_or_else(|| missing("thickness"))?)?;
        let each = self.rule.face(width, length)?;
        let tallied = self.sum(each, pieces).and_then(|face| {
            let linear = Some(length.checked_mul(pieces.into())?);
            Some(Tallied { kind, pieces, linear, face, board_feet: Some(face.checked_volume(thickness)?) })
        });
        let tallied = tallied.ok_or(LumberError::OutOfRange)?;
        self.next_goes_down ^= each.up != each.down && pieces % 2 == 1;
        Ok(tallied)
    }

    /// The faces of so many boards, every other half of them down.
    fn sum(self, each: Face, pieces: u32) -> Option<Area> {
        let down = if self.next_goes_down { pieces.div_ceil(2) } else { pieces / 2 };
        each.up.checked_mul((pieces - down).into())?.checked_add(each.down.checked_mul(down.into())?)
    }
}

fn above_zero(what: &'static str, given: Length) -> Result<(), LumberError> {
    if given > Length::ZERO { Ok(()) } else { Err(LumberError::NotAboveZero { what, given }) }
}

/// How much so many pieces are.
///
/// ```
/// use scantling::{LumberKind, Nominal, Tally, TallyRule};
///
/// let boards: Nominal = "1x12 - 6'".parse()?;
/// let tallied = Tally::new(TallyRule::OneInchMinimum).add(&boards, 5)?;
/// assert_eq!((tallied.kind(), tallied.pieces()), (LumberKind::Board, 5));
/// # Ok::<(), scantling::LumberError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Tallied {
    kind: LumberKind,
    pieces: u32,
    linear: Option<Length>,
    face: Area,
    board_feet: Option<Volume>,
}

impl Tallied {
    /// What was tallied.
    ///
    /// ```
    /// use scantling::{LumberKind, Nominal, Tally, TallyRule};
    ///
    /// let sheet: Nominal = "3/4 ply 4x8".parse()?;
    /// assert_eq!(Tally::new(TallyRule::Exact).add(&sheet, 1)?.kind(), LumberKind::Panel);
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub const fn kind(&self) -> LumberKind {
        self.kind
    }

    /// How many pieces.
    ///
    /// ```
    /// use scantling::{Nominal, Tally, TallyRule};
    ///
    /// let studs: Nominal = "2x4x8".parse()?;
    /// assert_eq!(Tally::new(TallyRule::Exact).add(&studs, 12)?.pieces(), 12);
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub const fn pieces(&self) -> u32 {
        self.pieces
    }

    /// The length of all pieces end to end; `None` for panels.
    ///
    /// ```
    /// use scantling::{Length, Nominal, Tally, TallyRule, Unit};
    ///
    /// let studs: Nominal = "2x4x8".parse()?;
    /// assert_eq!(Tally::new(TallyRule::Exact).add(&studs, 2)?.linear(), Some(Length::new(16, Unit::Foot)));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub const fn linear(&self) -> Option<Length> {
        self.linear
    }

    /// One face of all pieces: the surface measure of lumber, rounded where the rule says so, the exact square feet of panels.
    ///
    /// ```
    /// use scantling::{Nominal, Tally, TallyRule, Unit};
    ///
    /// let sheets: Nominal = "3/4 ply 4x8".parse()?;
    /// let tallied = Tally::new(TallyRule::Exact).add(&sheets, 2)?;
    /// assert_eq!(tallied.face().checked_in_square(Unit::Foot), Some(64.into()));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub const fn face(&self) -> Area {
        self.face
    }

    /// The board feet of all pieces, as a volume; `None` for panels.
    ///
    /// ```
    /// use scantling::{Nominal, Tally, TallyRule};
    ///
    /// let planks: Nominal = "2x10 - 18'".parse()?;
    /// let tallied = Tally::new(TallyRule::Exact).add(&planks, 1)?;
    /// assert_eq!(tallied.board_feet().and_then(|volume| volume.checked_in_board_feet()), Some(30.into()));
    /// # Ok::<(), scantling::LumberError>(())
    /// ```
    #[must_use]
    pub const fn board_feet(&self) -> Option<Volume> {
        self.board_feet
    }
}
