//! The unit that a misspelled word for one is nearest to. What is a unit is left to `unit.rs`; nothing misspelled is read
//! as one.

/// Words long enough to be told from one another by more than one letter.
const WORDS: [&str; 12] = [
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
];

/// The word for a unit that is one slip away: a letter too many or too few, another letter, or two the wrong way round.
pub(super) fn nearest(word: &str) -> Option<&'static str> {
    WORDS.into_iter().find(|unit| is_slip(word.as_bytes(), unit.as_bytes()))
}

fn is_slip(word: &[u8], unit: &[u8]) -> bool {
    let alike = |(one, other): &(&u8, &u8)| one.eq_ignore_ascii_case(other);
    let front = word.iter().zip(unit).take_while(alike).count();
    let (word, unit) = (&word[front..], &unit[front..]);
    let back = word.iter().rev().zip(unit.iter().rev()).take_while(alike).count();
    match (&word[..word.len() - back], &unit[..unit.len() - back]) {
        ([] | [_], [_]) | ([_], []) => true,
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
