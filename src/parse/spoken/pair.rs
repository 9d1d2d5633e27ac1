//! Two whole numbers side by side, as crews call them: `two-six` for a door of 2'-6", `36-twelve` for 36
//! inches and twelve sixteenths. What they mean depends on who says them, and is left to the caller.

use super::ambiguity::Outcome;
use super::count::cardinals;
use super::grammar::number;
use super::tokens::Tokens;
use super::words::{Ending, Word};
use crate::parse::number::{Form, Number};
use crate::parse::parser::Comma;
use crate::parse::scan::Bytes;

/// Two numbers with nothing between them that says what they are.
#[derive(Clone, Copy, Debug)]
pub(in crate::parse) struct Pair<'a> {
    pub(in crate::parse) first: Number,
    /// Whole, or whole and fraction as in `36-twelve and a half`.
    pub(in crate::parse) second: Number,
    /// The text behind the pair.
    pub(in crate::parse) end: Bytes<'a>,
}

/// The pair that a text without a sign begins with.
pub(in crate::parse) fn side_by_side(text: Bytes<'_>, comma: Comma) -> Option<Pair<'_>> {
    let tokens = Tokens::read(text, comma).ok()?;
    let first = cardinals(tokens.all()).last()?;
    let behind = &tokens.all()[first.length..];
    let (length, second) = match behind.first()?.word {
        Word::Oh => (1, Number::whole(0)),
        Word::Numeral(_, Ending::Cardinal) => match number(behind) {
            Outcome::One(length, number) if matches!(number.form, Form::Whole | Form::Mixed) => (length, number),
            _ => return None,
        },
        _ => return None,
    };
    Some(Pair { first: Number::whole(first.value), second, end: behind[length - 1].end })
}

#[cfg(test)]
mod tests {
    use super::side_by_side;
    use crate::parse::number::{Form, Number};
    use crate::parse::parser::Comma;

    #[test]
    fn two_numbers_and_what_is_behind_them() {
        let half = Number { whole: 12, num: 1, den: 2, form: Form::Mixed };
        for (text, first, second, end) in [
            ("two-six", 2, Number::whole(6), ""),
            ("three-oh", 3, Number::whole(0), ""),
            ("thirty six eleven strong", 36, Number::whole(11), " strong"),
            ("36-twelve and a half, shy", 36, half, ", shy"),
        ] {
            let pair = side_by_side(text.as_bytes(), Comma::Refuse).unwrap();
            assert_eq!((pair.first, pair.second, pair.end), (Number::whole(first), second, end.as_bytes()), "{text:?}");
        }
    }

    #[test]
    fn one_number_and_other_words_are_no_pair() {
        for text in ["", "six", "sixty six", "six and two", "six foot two", "oh six", "six a half", "six five eighths"] {
            assert!(side_by_side(text.as_bytes(), Comma::Refuse).is_none(), "{text:?}");
        }
    }
}
