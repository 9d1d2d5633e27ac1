//! What must hold for any text whatever, by every reader and under every option. The texts come from
//! elsewhere: from `texts/round_trips.rs`, and from the fuzz target `text`.

use scantling::{
    Comma, Length, LengthParser, Nominal, ParseError, ParseErrorKind as Kind, Quantity, Shorthand, Toleranced, Unit,
};

const COMMAS: [Comma; 3] = [Comma::Refuse, Comma::Groups, Comma::Decimal];
const SHORTHANDS: [Shorthand; 4] =
    [Shorthand::None, Shorthand::FeetInchesSixteenths, Shorthand::FeetInches, Shorthand::InchesSixteenths];

/// How many parsers there are.
pub const PARSERS: usize = Unit::ALL.len() * COMMAS.len() * SHORTHANDS.len();

/// One parser of each kind, by its number.
pub fn parser(number: usize) -> LengthParser {
    let (unit, number) = (Unit::ALL[number % Unit::ALL.len()], number / Unit::ALL.len());
    let (comma, number) = (COMMAS[number % COMMAS.len()], number / COMMAS.len());
    LengthParser::new().default_unit(unit).comma(comma).shorthand(SHORTHANDS[number % SHORTHANDS.len()])
}

/// What texts of the shop are made of, and what stands near it.
#[rustfmt::skip] // read in rows
pub const PIECES: [&str; 128] = [
    "0", "1", "2", "3", "5", "6", "8", "9", "12", "16", "17", "000", "64", "120408", "9999999999999999999", "1/2",
    "5/8", "9/8", "3/4", ".", ",", "/", "-", "+", "'", "\"", "''", " ", "  ", " - ", "½", "⅝",
    "↉", "⅟", "²", "⁰", "₈", "₀", "⁄", "∕", "′", "″", "’", "”", "×", "x", " by ", "·",
    "÷", "±", "+/-", "−", "–", "\u{2010}", "\u{A0}", "\u{2009}", "\u{3000}", "\t", "\n", "\r\n", "*", "(", ")", "in",
    "inch", "inches", "ft", "feet", "foot", "yd", "mm", "cm", "m", "meter", " in", " ft", " mm", "IN.", "th", "ths",
    "nds", " of ", " an ", "a ", " and ", "one", "two ", "five", "twelve", "twenty ", "fifty", "hundred ", " thousand", "eighth", "eighths", "half",
    " halves", "quarters", "third", "sixteenths", "sixty-fourths", " point ", "oh", "minus ", " plus", "strong", " shy", "just ", " hair ", " over ", " by 1/40", "W",
    "H: ", "thick", ":", ";", "=", "e", "é", "€", "🪚", "\u{202E}", "\u{FEFF}", "\u{85}", "#", "&", " times ", " divided by ",
];

/// Every text of four pieces.
pub fn of_four<'a>(pieces: &'a [&'a str]) -> impl Iterator<Item = String> + 'a {
    let count = pieces.len();
    (0..count.pow(4)).map(move |number| (0..4).map(|place| pieces[number / count.pow(place) % count]).collect())
}

/// Puts a text through every reader, and holds what they say against one another.
///
/// # Panics
///
/// When anything does not hold.
pub fn read_by_all(parser: LengthParser, text: &str) {
    let length = parser.parse(text);
    let length = checked(text, &length).copied();
    the_slow_way_agrees(parser, text);
    let written = parser.parse_written(text);
    assert_eq!(checked(text, &written).map(|(found, _)| *found), length, "as it was written: {text:?} {parser:?}");
    let called = parser.parse_called(text);
    let called = checked(text, &called);
    if let Some(length) = length {
        assert_eq!(called.map(|called| (called.mark(), called.steps())), Some((length, Some(0))), "called: {text:?} {parser:?}");
    }
    let size = parser.parse_size(text);
    assert!(checked(text, &size).is_none_or(|size| matches!(size.lengths().len(), 2 | 3)), "{text:?}");
    let range = parser.parse_toleranced(text);
    let in_order = |range: &Toleranced| range.least() <= range.nominal() && range.nominal() <= range.most();
    assert!(checked(text, &range).is_none_or(in_order), "{text:?}");
    at_the_start(parser, text);
    in_running_text(parser, text);
    calculated(parser, text);
    named(text);
}

/// A name of stock is written in such a way that it reads as the same; what is no name has an error that points into the
/// text and is one line.
///
/// # Panics
///
/// When that does not hold.
pub fn named(text: &str) {
    match text.parse::<Nominal>() {
        Ok(name) => {
            assert_eq!(name.to_string().parse(), Ok(name), "{name} of {text:?}");
            let sizes = [name.thickness(), name.width(), name.length()];
            assert!(sizes.into_iter().flatten().all(|size| size > Length::ZERO), "{text:?}");
        }
        Err(error) => {
            let found = text.get(error.span()).unwrap_or_else(|| panic!("{error:?} does not point into {text:?}"));
            assert!(found.starts_with(error.found().trim_end_matches('…')), "{error:?} of {text:?}");
            let message = error.to_string();
            assert!(!error.expected().is_empty() && !message.contains(char::is_control), "{message:?}");
        }
    }
}

/// What was read; of what was not, nothing but a look at the error.
fn checked<'a, T>(text: &str, read: &'a Result<T, ParseError>) -> Option<&'a T> {
    read.as_ref().map_err(|error| points_into(text, error)).ok()
}

/// An error's bytes lie in the text and cut no character, what it found stands there, and it has something to say,
/// in one line.
fn points_into(text: &str, error: &ParseError) {
    let found = text.get(error.span()).unwrap_or_else(|| panic!("{error:?} does not point into {text:?}"));
    assert!(found.starts_with(error.found()), "{error:?} of {text:?}");
    assert!(!error.expected().is_empty() && error.hint().is_none_or(|hint| !hint.to_string().is_empty()), "{error:?}");
    let message = error.to_string();
    assert!(!message.is_empty() && !message.contains(char::is_control), "{message:?}");
}

/// A blank in front is nothing to the grammar, but keeps the quick way from being certain.
fn the_slow_way_agrees(parser: LengthParser, text: &str) {
    let outcome = |text: &str| parser.parse(text).map_err(|error| error.kind());
    let quick = outcome(text);
    for around in [format!(" {text}"), format!("{text} "), format!("\n{text}\r\n"), format!("\u{A0}{text}\u{2009}")] {
        assert_eq!(outcome(&around), quick, "{around:?} {parser:?}");
    }
}

/// A length at the start ends inside the text, and is what it would be by itself. It is not cut out of a longer one,
/// but for a comma, behind which there may be another.
fn at_the_start(parser: LengthParser, text: &str) {
    let prefix = parser.parse_prefix(text);
    let Some(&(length, end)) = checked(text, &prefix) else { return };
    let alone = text.get(..end).unwrap_or_else(|| panic!("{text:?} is cut at {end}"));
    assert_eq!(parser.parse(alone), Ok(length), "alone: {alone:?} of {text:?} {parser:?}");
    let listed = text[end..].trim_start().starts_with(',');
    let whole = parser.parse(text).unwrap_or(length);
    assert!(whole == length || listed, "read in part: {text:?} {parser:?} {whole:?}");
}

/// Lengths and errors in a running text come in order, do not overlap, and are what they would be by themselves.
fn in_running_text(parser: LengthParser, text: &str) {
    let mut place = 0;
    for found in parser.find_iter(text) {
        let span = match &found {
            Ok(found) => {
                let alone = text.get(found.span()).unwrap_or_else(|| panic!("{found:?} does not point into {text:?}"));
                assert_eq!(parser.parse(alone), Ok(found.length()), "found: {alone:?} of {text:?} {parser:?}");
                found.span()
            }
            Err(error) => {
                points_into(text, error);
                error.span()
            }
        };
        assert!(span.start >= place && span.end > span.start, "{span:?} after {place} in {text:?}");
        place = span.end;
    }
}

/// A calculation that comes to a length is that length where a length is due, and a plain length is worth what it
/// reads as.
fn calculated(parser: LengthParser, text: &str) {
    let (quantity, length) = (parser.evaluate(text), parser.evaluate_length(text));
    match (checked(text, &quantity), checked(text, &length)) {
        (Some(Quantity::Length(found)), length) => assert_eq!(length, Some(found), "{text:?}"),
        (Some(Quantity::Number(_)), None) => {
            let kind = length.unwrap_err().kind();
            assert!(matches!(kind, Kind::NumberResult | Kind::ResultOutOfRange), "{kind:?} of {text:?}");
        }
        (Some(_), length) => assert!(matches!(quantity, Ok(Quantity::Number(_))) || length.is_none(), "{text:?}"),
        (None, length) => assert_eq!(length, None, "{text:?}"),
    }
    if let (Ok(length), Ok(plain)) = (length, parser.parse(text)) {
        assert_eq!(length, plain, "calculated or read: {text:?} {parser:?}");
    }
}
