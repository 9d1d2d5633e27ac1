//! The words of the trade that stand round the sizes of a name, and what each says. What they come to together is left
//! to `sizes.rs`.

use super::super::kind::{Seasoning, Surface};

/// What one word says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Said {
    /// That this is wood, which was known.
    Nothing,
    /// That the last size is the length.
    Long,
    /// That the second size is the width.
    Wide,
    /// A board by name, whatever its sizes look like.
    Named,
    Softwood,
    Decking,
    Hardwood,
    Panel,
    /// A sheet, so a panel.
    Sheet,
    Seasoned(Seasoning),
    Surfaced(Surface),
}

/// What a word says, in any case; `None` for one that is not known.
pub(super) fn said(word: &str) -> Option<Said> {
    let is = |known: &&str| word.eq_ignore_ascii_case(known);
    LISTS.iter().find(|(words, _)| words.iter().any(is)).map(|(_, said)| *said)
}

#[rustfmt::skip] // one line for what is said alike
const LISTS: &[(&[&str], Said)] = &[
    (&["lumber", "wood", "stock", "of", "a", "piece", "pieces", "s"], Said::Nothing),
    (&["long"], Said::Long),
    (&["wide"], Said::Wide),
    (&["treated", "pressure-treated", "pressure", "pt"], Said::Nothing),
    (&["red", "white", "yellow", "black", "hard", "soft", "sugar", "southern", "eastern", "western", "douglas"], Said::Nothing),
    (&["board", "boards", "plank", "planks", "nominal", "dimension", "dimensional"], Said::Named),
    (&["timber", "timbers", "post", "posts", "beam", "beams", "stud", "studs", "joist", "joists", "rafter", "rafters"], Said::Softwood),
    (&["softwood", "pine", "fir", "spruce", "cedar", "hemlock", "redwood", "larch", "cypress", "spf"], Said::Softwood),
    (&["decking", "deck"], Said::Decking),
    (&["hardwood", "oak", "maple", "cherry", "walnut", "ash", "birch", "beech", "poplar", "alder", "hickory", "mahogany", "sapele", "basswood", "elm", "sycamore", "pecan"], Said::Hardwood),
    (&["ply", "plywood", "panel", "panels", "osb", "sheathing", "cdx", "acx", "bcx", "baltic"], Said::Panel),
    (&["sheet", "sheets"], Said::Sheet),
    (&["dry", "kd", "dried", "kiln", "kiln-dried", "s-dry", "air-dried"], Said::Seasoned(Seasoning::Dry)),
    (&["green", "s-green", "s-grn"], Said::Seasoned(Seasoning::Green)),
    (&["rough", "rough-sawn", "sawn"], Said::Surfaced(Surface::Rough)),
    (&["s1s"], Said::Surfaced(Surface::OneSide)),
    (&["s2s"], Said::Surfaced(Surface::TwoSides)),
    (&["s4s"], Said::Surfaced(Surface::FourSides)),
];

/// Words that are part of a number or its unit, and so are read with it.
pub(super) fn is_of_number(word: &str) -> bool {
    #[rustfmt::skip] // read in rows
    const NUMBERS: &[&str] = &[
        "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen",
        "eighteen", "twenty", "quarter", "quarters", "half", "halves", "eighth", "eighths", "sixteenths", "and", "ths",
    ];
    is_unit(word) || NUMBERS.iter().any(|number| word.eq_ignore_ascii_case(number))
}

/// Units, in the spellings that stand behind sizes.
pub(super) fn is_unit(word: &str) -> bool {
    #[rustfmt::skip] // read in rows
    const UNITS: &[&str] = &[
        "in", "ins", "inch", "inches", "ft", "foot", "feet", "yd", "yds", "mm", "cm", "m", "meter", "meters", "millimeters", "centimeters", "millimeter",
    ];
    UNITS.iter().any(|unit| word.eq_ignore_ascii_case(unit))
}
