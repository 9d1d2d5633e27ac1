//! How wide texts are: the widths of Helvetica and Helvetica-Bold, in thousandths of the size of type, from the font
//! metrics that every reader of the document format knows (Adobe Core 14 fonts, AFM files; from memory). Letters beyond
//! ASCII are taken to be as wide as Latin ones of the first page are on average, any other as wide as high.

use alloc::string::String;

use super::Place;
use super::paper::TYPE;

/// From the blank to the tilde.
const PLAIN: [u16; 95] = [
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556,
    556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778,
    722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222,
    500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
];
const BOLD: [u16; 95] = [
    278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556,
    556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833, 722, 778, 667, 778,
    722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278,
    556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584,
];
const LATIN: u16 = 611;
const OTHER: u16 = 1000;

fn letter(char: char, bold: bool) -> Place {
    let table = if bold { &BOLD } else { &PLAIN };
    let ascii = u32::from(char).checked_sub(32).and_then(|place| table.get(usize::try_from(place).ok()?)).copied();
    ascii.unwrap_or(if u32::from(char) < 0x180 { LATIN } else { OTHER }).into()
}

pub(in crate::pole) fn width(text: &str, bold: bool) -> Place {
    text.chars().map(|char| letter(char, bold)).sum::<Place>() * TYPE / 1000
}

/// A name shortened to a width in bold.
pub(super) fn fitted(text: &str, most: Place) -> String {
    if width(text, true) <= most {
        return text.into();
    }
    let mut left = most - width("…", true);
    let fits = |char: &char| {
        left -= letter(*char, true) * TYPE / 1000 + 1;
        left >= 0
    };
    let mut short: String = text.chars().take_while(fits).collect();
    short.push('…');
    short
}
