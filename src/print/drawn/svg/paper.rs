//! The sizes of a picture on paper, each with its reason. They stay the same at every scale, which only
//! moves the lines apart. Where things stand is left to `sheet.rs`.

use crate::length::{Length, Unit};
use crate::print::drawn::rule::Kind;

const fn mils(thousandths: i64) -> Length {
    Length::fraction(thousandths, 1000, Unit::Inch)
}

/// How much paper the tape takes: with its margins within a page of 8 1/2 in or 210 mm, and 480 of a browser's
/// 96 pixels to the inch.
pub(super) const TAPE: Length = Length::new(5, Unit::Inch);

/// The least distance of two lines where no scale is asked for: six pixels, and 64ths still fit on the tape
/// with a number on either side of them.
pub(super) const LEAST_STEP: Length = Length::fraction(1, 16, Unit::Inch);

/// The greatest such distance: five lines are enough to see what lies between two.
pub(super) const GREATEST_STEP: Length = Unit::Inch.length();

/// One pixel of a screen, three dots of a plain printer, 0.7 of a printer's points.
pub(super) const LINE: Length = mils(10);

/// The marked line: twice as wide, so that it is found without the arrow.
pub(super) const MARKED_LINE: Length = mils(20);

/// The arrow. It ends in a point on the edge of the tape, and leaves room for counts beside the point.
pub(super) const ARROW: (Length, Length) = (mils(100), mils(150));

/// How wide the arrow is where counts stand beside it, as high as they reach: half of what it is at its top.
pub(super) const ARROW_BESIDE_COUNT: Length = mils(50);

/// Sizes of type. 0.17 in is 12 points, the figures of a tape; 0.13 in is 9 points, for reading; counts are as
/// small as goes between lines a sixteenth apart.
pub(super) const READING: Length = mils(170);
pub(super) const COUNT: Length = mils(70);
pub(super) const NUMBER: Length = mils(170);
pub(super) const FLAG: Length = mils(110);
pub(super) const WORDS: Length = mils(130);

/// How far above the edge the reading stands: letters such as the `y` of `shy` reach up to a quarter of
/// their size below the line, and must not touch the arrow.
pub(super) const READING_FOOT: Length = mils(210);

/// How far below the edge the feet of numbers stand, the band of flags begins and ends, and their feet stand:
/// clear of the longest line, and of each other.
pub(super) const NUMBER_FOOT: Length = mils(650);
pub(super) const FLAG_BAND: (Length, Length) = (mils(700), mils(860));
pub(super) const FLAG_FOOT: Length = mils(820);

/// How far apart the feet of lines of text stand.
pub(super) const LEADING: Length = mils(200);

/// A blade as wide as a 3/4 in tape, and a 1 in tape where it has flags.
pub(super) const BLADE: Length = mils(750);
pub(super) const FLAGGED_BLADE: Length = mils(950);

/// Between texts, and between the drawing and the rim of the picture.
pub(super) const GAP: Length = mils(40);
pub(super) const MARGIN: Length = mils(80);

/// How deep the torn ends of a tape that goes on are, and the hook where it begins.
pub(super) const TORN: Length = mils(30);
pub(super) const HOOK: (Length, Length) = (mils(50), mils(90));

/// Lines on rules: each size clearly shorter than the one before, the sixteenth long enough to be seen first.
/// Like sizes are equally long on every tape: an eighth is an eighth.
pub(super) const fn line(kind: Kind, size: usize) -> Length {
    const INCHES: [i64; 7] = [500, 380, 300, 230, 170, 125, 90];
    const MILLIMETERS: [i64; 4] = [500, 380, 230, 150];
    const PLAIN: [i64; 2] = [500, 230];
    mils(match kind {
        Kind::Inches => INCHES[size],
        Kind::Millimeters => MILLIMETERS[size],
        Kind::Plain => PLAIN[size],
    })
}
