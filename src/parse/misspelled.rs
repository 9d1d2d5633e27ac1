//! The unit that a misspelled word for one is nearest to. What is a unit is left to `unit.rs`; nothing misspelled is read
//! as one.

/// Words for units of which a misspelled one reminds; shorter ones are too near to one another.
const WORDS: [&str; 18] = [
    "inches",
    "inch",
    "feet",
    "foot",
    "yards",
    "yard",
    "millimeters",
    "millimeter",
    "centimeters",
    "centimeter",
    "meters",
    "meter",
    "millimetres",
    "millimetre",
    "centimetres",
    "centimetre",
    "metres",
    "metre",
];

/// The word for a unit that is one slip behind its first letter away: a letter too many or too few, two the wrong way round, or
/// in a long word another letter. Four letters with one changed are often another word: `incl`, `yarn`.
pub(super) fn nearest(word: &str) -> Option<&'static str> {
    WORDS.into_iter().find(|unit| is_slip(word.as_bytes(), unit.as_bytes()))
}

fn is_slip(word: &[u8], unit: &[u8]) -> bool {
    let alike = |(one, other): &(&u8, &u8)| one.eq_ignore_ascii_case(other);
    let front = word.iter().zip(unit).take_while(alike).count();
    let (word, unit) = (&word[front..], &unit[front..]);
    let back = word.iter().rev().zip(unit.iter().rev()).take_while(alike).count();
    match (&word[..word.len() - back], &unit[..unit.len() - back]) {
        _ if front == 0 => false,
        ([], [_]) | ([_], []) => true,
        ([_], [_]) => front + 1 + back > 4,
        ([a, b], [c, d]) => alike(&(a, d)) && alike(&(b, c)),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::nearest;

    #[test]
    fn one_slip_and_no_more() {
        for (word, unit) in [
            ("inchs", Some("inches")),
            ("inchees", Some("inches")),
            ("Ich", Some("inch")),
            ("icnh", Some("inch")),
            ("feets", Some("feet")),
            ("fet", Some("feet")),
            ("foots", Some("foot")),
            ("yrads", Some("yards")),
            ("yrxd", None),
            ("yarfs", Some("yards")),
            ("milimetre", Some("millimetre")),
            ("incl", None),
            ("yarn", None),
            ("meet", None),
            ("pinch", None),
            ("netre", None),
            ("milimeters", Some("millimeters")),
            ("metters", Some("meters")),
            ("metr", Some("meter")),
            ("centimiter", Some("centimeter")),
            ("", None),
            ("in", None),
            ("ihcn", None),
            ("inhces", Some("inches")),
            ("ni", None),
            ("furlongs", None),
            ("month", None),
            ("fast", None),
            ("milliliters", None),
        ] {
            assert_eq!(nearest(word), unit, "{word:?}");
        }
    }
}
