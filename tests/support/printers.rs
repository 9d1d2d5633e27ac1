//! Lengths and printers of every kind, made from a run of choices, and what must hold for any two of them: what one
//! writes or says is read back as the length it came from. The choices come from elsewhere: from
//! `texts/round_trips.rs`, and from the fuzz target `values`.

use scantling::{
    Comma, Denominator, Dimension, DualPrinter, Join, Length, LengthParser, LengthPrinter, Marks, ParseError, ParseErrorKind,
    Places, PrintError, ReadingPrinter, Rounding, Shorthand, Side, Sign, Style, Tape, Toleranced, Unit, Zeros,
};

use super::texts::{PARSERS, parser};

/// A number below another, chosen by whoever asks.
pub type Choose<'a> = dyn FnMut(u64) -> u64 + 'a;

/// Every style.
pub const STYLES: [Style; 9] = [
    Style::Inches,
    Style::FeetInches,
    Style::FeetInchesSixteenths,
    Style::Yards,
    Style::DecimalInches,
    Style::DecimalFeet,
    Style::Millimeters,
    Style::Centimeters,
    Style::Meters,
];

/// One of several, each as likely as the next.
pub fn one_of<T: Copy>(choose: &mut Choose<'_>, all: &[T]) -> T {
    all[usize::try_from(choose(all.len() as u64)).unwrap()]
}

/// A length as shops have them, or any at all.
#[allow(clippy::cast_possible_wrap)] // of any sign
pub fn length(choose: &mut Choose<'_>) -> Length {
    let count = choose(60_000) as i64 - 30_000;
    let parts = choose(300) + 1;
    match choose(10) {
        0 => Length::new(count % 300, Unit::Inch),
        1 => Length::fraction(count, 64, Unit::Inch),
        2 => Length::fraction(count, 1000, Unit::Foot),
        3 => Length::fraction(count, 10, Unit::Millimeter),
        4 => Length::fraction(count, 192, Unit::Inch),
        5 => Length::fraction(count % 512, one_of(choose, &[2, 4, 8, 16, 32, 64, 128]), Unit::Inch),
        6 => Length::fraction(count, parts, one_of(choose, &Unit::ALL)),
        7 => Length::new(choose(u64::MAX) as i64, one_of(choose, &Unit::ALL)),
        8 => Length::fraction(choose(u64::MAX) as i64, choose(u64::MAX).max(1), Unit::Inch),
        _ => one_of(choose, &[Length::MAX, Length::MIN, Length::ZERO, Length::fraction(1, u64::MAX, Unit::Inch)]),
    }
}

/// A printer with any of its settings.
pub fn printer(choose: &mut Choose<'_>) -> LengthPrinter {
    let any = u32::try_from(choose(1 << 32)).unwrap();
    let denominator = Denominator::Fixed(one_of(choose, &[2, 8, 16, 64, 192, 1 + any % 1000, any]));
    let places = Places::Exactly(u8::try_from(choose(27)).unwrap());
    LengthPrinter::new()
        .style(one_of(choose, &STYLES))
        .join(one_of(choose, &[Join::Space, Join::Hyphen, Join::Glyph]))
        .marks(one_of(choose, &[Marks::Quotes, Marks::Primes, Marks::Words]))
        .sign(one_of(choose, &[Sign::Minus, Sign::TrueMinus, Sign::Plus]))
        .zeros(one_of(choose, &[Zeros::Kept, Zeros::Dropped]))
        .denominator(one_of(choose, &[Denominator::Lowest, Denominator::Lowest, denominator]))
        .places(one_of(choose, &[Places::Shortest, Places::Shortest, places]))
}

/// Whether it writes feet, inches and sixteenths, which only a parser in that mode reads.
fn is_for_trusses(printer: LengthPrinter) -> bool {
    printer == printer.style(Style::FeetInchesSixteenths)
}

/// Whether a printed point was refused because it may group where the comma is the decimal sign.
fn is_open_point<T>(read: &Result<T, ParseError>, parser: LengthParser) -> bool {
    let decimal = parser == parser.comma(Comma::Decimal);
    decimal && read.as_ref().is_err_and(|error| error.kind() == ParseErrorKind::PointGroup)
}

/// Writes and says a length, and reads both back by every parser; tells whether the printer could write it.
///
/// # Panics
///
/// When either does not come back.
pub fn comes_back(length: Length, printer: LengthPrinter) -> bool {
    let (shown, said) = (printer.show(length), printer.say(length));
    assert_eq!(shown.is_ok(), said.is_ok(), "{length:?} by {printer:?}");
    let (shown, said) = match (shown, said) {
        (Ok(shown), Ok(said)) => (shown.to_string(), said.to_string()),
        (Err(error), _) => {
            use PrintError::{NoWholeCount, TooManyPlaces, Uneven, ZeroDenominator};
            let cannot = matches!(error, Uneven { .. } | NoWholeCount { .. } | TooManyPlaces { .. } | ZeroDenominator { .. });
            assert!(cannot, "{error:?}: {length:?} by {printer:?}");
            return false;
        }
        (Ok(_), Err(_)) => unreachable!("both or none"),
    };
    for parser in (0..PARSERS).map(parser) {
        let in_mode = if is_for_trusses(printer) { parser.shorthand(Shorthand::FeetInchesSixteenths) } else { parser };
        let read = in_mode.parse(&shown);
        if !is_open_point(&read, in_mode) {
            assert_eq!(read, Ok(length), "written: {shown:?} by {printer:?}, {in_mode:?}");
        }
        let heard = parser.parse(&said);
        if said.contains("illion") {
            assert!(heard.is_err(), "said: {said:?} {heard:?}"); // past all that is read in words
        } else {
            assert_eq!(heard, Ok(length), "said: {said:?} by {printer:?}, {parser:?}");
        }
    }
    true
}

/// A length in two ways at once: the first comes back, the second is no further from it than the rounding allows.
///
/// # Panics
///
/// When it is not so.
pub fn both_come_back(length: Length, first: LengthPrinter, second: LengthPrinter, step: Length) -> bool {
    let Ok(shown) = DualPrinter::new(first, second, Rounding::to(step)).show(length) else { return false };
    let text = shown.to_string();
    let (front, back) = text.strip_suffix(']').and_then(|text| text.split_once(" [")).expect("two dimensions");
    let (back, marked) = back.strip_prefix('≈').map_or((back, false), |back| (back, true));
    let parser = LengthParser::new().shorthand(Shorthand::FeetInchesSixteenths);
    let rounded = parser.parse(back).unwrap_or_else(|error| panic!("{text:?}: {error}"));
    assert_eq!(parser.parse(front), Ok(length), "{text:?}");
    let apart = rounded.checked_sub(length).and_then(|apart| apart.abs().checked_mul(2));
    assert!(apart.is_none_or(|apart| apart <= step), "{text:?}");
    assert_eq!((marked, shown.is_exact()), (rounded != length, rounded == length), "{text:?}");
    true
}

/// The reading of a place on a tape: what it shows and its exact leftover come back as a called length.
///
/// # Panics
///
/// When they do not.
pub fn reading_comes_back(place: Length, tape: &Tape, mark: LengthPrinter, leftover: LengthPrinter) -> bool {
    let Ok(reading) = tape.read(place) else { return false };
    let Ok(shown) = ReadingPrinter::new().mark(mark).leftover(leftover).show(&reading) else { return false };
    let text = shown.to_string();
    let parser = LengthParser::new().shorthand(Shorthand::FeetInchesSixteenths);
    let called = parser.parse_called(&text).unwrap_or_else(|error| panic!("{text:?}: {error}"));
    let amount = called.said().unwrap_or_default();
    let leftover = if called.side() == Side::Under { -amount } else { amount };
    assert_eq!((called.mark(), leftover), (reading.shown(), reading.leftover()), "{text:?}");
    true
}

/// Two or three lengths put together as a size, a length with a tolerance, a called length.
///
/// # Panics
///
/// When any of them is not read back.
pub fn several_come_back(lengths: [Length; 3], printer: LengthPrinter, choose: &mut Choose<'_>) -> bool {
    let [one, two, three] = lengths.map(Length::abs);
    let write = |length| printer.sign(Sign::Minus).show(length).map(|shown| shown.to_string());
    let (Ok(a), Ok(b), Ok(c)) = (write(one), write(two), write(three)) else { return false };
    if is_for_trusses(printer) {
        return false;
    }
    let parser = parser(usize::try_from(choose(PARSERS as u64)).unwrap());
    if [&a, &b, &c].iter().any(|text| is_open_point(&parser.parse(text), parser)) {
        return false;
    }
    let by = one_of(choose, &[" x ", " X ", " × ", "×", " by "]);
    for (text, lengths) in [(format!("{a}{by}{b}"), &[one, two][..]), (format!("{a}{by}{b}{by}{c}"), &[one, two, three])] {
        let size = parser.parse_size(&text).unwrap_or_else(|error| panic!("{text:?}: {error}, {parser:?}"));
        assert!(size.lengths().iter().map(Dimension::length).eq(lengths.iter().copied()), "{text:?}, {parser:?}");
    }
    for (text, over, under) in [
        (format!("{a} ±{b}"), two, two),
        (format!("{a} +/- {b}"), two, two),
        (format!("{a} +{b} -{c}"), two, three),
        (format!("{a} -{c}, +{b}"), two, three),
        (format!("{a} +{b}/-{c}"), two, three),
    ] {
        let read = parser.parse_toleranced(&text).ok();
        assert_eq!(read, Toleranced::checked_new(one, over, under), "{text:?}, {parser:?}");
    }
    for (text, side, steps, said) in [
        (format!("{a} strong"), Side::Over, Some(1), None),
        (format!("{a} minus"), Side::Under, Some(1), None),
        (format!("{a}+"), Side::Over, Some(1), None),
        (format!("{a} shy by {b}"), Side::Under, None, Some(two)),
        (format!("just over {a}"), Side::Over, Some(1), None),
    ] {
        let read = parser.parse_called(&text).map(|called| (called.mark(), called.side(), called.steps(), called.said()));
        assert_eq!(read, Ok((one, side, steps, said)), "{text:?}, {parser:?}");
    }
    true
}
