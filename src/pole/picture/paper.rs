//! The sizes of a pole on paper, each with its reason. Along the pole nothing has a size but the pole itself.

use super::Place;

pub(in crate::pole) const fn mils(thousandths: i64) -> Place {
    thousandths * 1000
}

/// What no printer can be trusted to print on.
pub(in crate::pole) const MARGIN: Place = mils(400);

/// 12 points: capitals 0.12 in or 3 mm high, which are read at arm's length.
pub(in crate::pole) const TYPE: Place = 166_667;
/// How high capitals are, and how far letters such as `g` reach below their line.
pub(super) const CAPITAL: Place = mils(120);
pub(super) const BELOW: Place = mils(36);
/// From one line of text to the next.
pub(super) const LEADING: Place = mils(210);

/// Thickness of every stroke: 0.38 mm.
pub(in crate::pole) const LINE: Place = mils(15);
/// The strokes and gaps of a dashed line.
pub(in crate::pole) const DASH: Place = mils(60);

/// Two lines of heading, and what lies between them and the rows.
pub(in crate::pole) const HEADING: Place = mils(480);

/// From the top of one row to the next: its name, the stick, the leaders, the names of its marks.
pub(super) const NAME_FOOT: Place = mils(190);
pub(super) const STICK_TOP: Place = mils(300);
pub(super) const STICK: Place = mils(500);
pub(super) const LEADER: Place = mils(250);
pub(super) const NAMES: Place = mils(2000);
pub(in crate::pole) const BAND: Place = STICK_TOP + STICK + LEADER + NAMES + mils(50);

/// How far the line of a mark reaches out of the stick, so that it is told from the other edge of its part.
pub(super) const TAIL: Place = mils(60);
/// How wide an X is at most, and where no thickness is known.
pub(super) const WIDEST_CROSS: Place = mils(1000);
pub(super) const CROSS: Place = mils(500);
pub(super) const SMALL_CROSS: Place = mils(250);

/// How wide texts may be in the widths of Helvetica. Fonts that stand in for it are up to a sixth wider: measured,
/// `DejaVu Sans Bold`.
pub(super) const LABEL: Place = mils(1660);
pub(super) const ROW_NAME: Place = mils(4000);
pub(super) const TITLE: Place = mils(8500);
/// The part of the title behind the name, and the name of a row of which more has to be said.
pub(super) const DESCRIBED: Place = mils(6500);
pub(super) const SHORT_ROW_NAME: Place = mils(2500);

/// How far apart two labels of two lines stand, and two of one line.
pub(super) const TWO_LINES: Place = mils(420);
pub(super) const ONE_LINE: Place = mils(215);

/// The scale check: its bars with their ends, and two lines of text.
pub(in crate::pole) const CHECK: Place = mils(720);
pub(super) const BAR_END: Place = mils(120);
pub(super) const SECOND_BAR: Place = mils(5000);

/// The least room along the pole: for both bars with their names.
pub(in crate::pole) const LEAST_WIDTH: Place = mils(10_000);

/// The block that the datum end of the stick is drawn with.
pub(super) const DATUM: Place = mils(60);
