//! Every 64th of an inch from twelve feet below zero to twelve feet above it: by every printer and back, and on every tape in every
//! mode, against counts worked out here in whole numbers. In a debug build every 97th of them, in release all.

use std::fmt::Write;

use scantling::{
    Denominator, Join, Length, LengthParser, LengthPrinter, Marks, Places, RoundingMode, Shorthand, Sign, Style, Tape, Unit,
    Zeros,
};

const ENDS: i64 = 12 * 12 * 64;
/// A prime, so that every numerator turns up.
const STRIDE: usize = if cfg!(debug_assertions) { 97 } else { 1 };

fn sixty_fourths() -> impl Iterator<Item = i64> {
    (-ENDS..=ENDS).step_by(STRIDE)
}

/// All settings that change anything: joins, zeros and a denominator of fractions, the count of places of decimals.
fn printers() -> Vec<LengthPrinter> {
    use Style::{Centimeters, DecimalFeet, DecimalInches, FeetInches, FeetInchesSixteenths, Inches, Meters, Millimeters, Yards};
    let mut all = Vec::new();
    for marks in [Marks::Quotes, Marks::Primes, Marks::Words] {
        for sign in [Sign::Minus, Sign::TrueMinus, Sign::Plus] {
            let plain = LengthPrinter::new().marks(marks).sign(sign);
            for join in [Join::Space, Join::Hyphen, Join::Glyph] {
                let joined = plain.join(join);
                let styles = [joined.style(Inches), joined.style(FeetInches), joined.style(Yards)];
                let dropped = [FeetInches, Yards].map(|style| joined.style(style).zeros(Zeros::Dropped));
                let lowest = styles.into_iter().chain(dropped);
                all.extend(lowest.flat_map(|printer| [printer, printer.denominator(Denominator::Fixed(64))]));
            }
            let decimals = [DecimalInches, DecimalFeet, Millimeters, Centimeters, Meters].map(|style| plain.style(style));
            all.extend(decimals.into_iter().flat_map(|printer| [printer, printer.places(Places::Exactly(9))]));
            all.push(plain.style(FeetInchesSixteenths));
        }
    }
    all
}

#[test]
fn by_every_printer_and_back() {
    let (printers, parser) = (printers(), LengthParser::new());
    let trusses = parser.shorthand(Shorthand::FeetInchesSixteenths);
    let (mut text, mut written, mut refused) = (String::new(), 0_usize, 0_usize);
    for count in sixty_fourths() {
        let length = Length::fraction(count, 64, Unit::Inch);
        for printer in &printers {
            let Ok(shown) = printer.show(length) else {
                refused += 1;
                continue;
            };
            text.clear();
            shown.write_to(&mut text).unwrap();
            let reader = if *printer == printer.style(Style::FeetInchesSixteenths) { trusses } else { parser };
            assert_eq!(reader.parse(&text), Ok(length), "{count}/64 is written {text:?}");
            assert!(count != 0 || !text.starts_with(['-', '−', '+']), "nothing has the sign {text:?}");
            written += 1;
        }
    }
    let counts = sixty_fourths().count();
    // Refused are decimals of a foot that do not end, and what is no sixteenth: of 64ths, three in four.
    assert_eq!((printers.len(), written + refused), (9 * (30 + 10 + 1), printers.len() * counts));
    assert!(refused * 100 < written * 7, "{refused} of {written} refused");
}

#[test]
fn in_words_and_back() {
    let parser = LengthParser::new();
    for count in sixty_fourths().step_by(7) {
        let length = Length::fraction(count, 64, Unit::Inch);
        for style in [Style::Inches, Style::FeetInches, Style::Yards, Style::Millimeters] {
            let said = LengthPrinter::new().style(style).say(length).unwrap().to_string();
            assert_eq!(parser.parse(&said), Ok(length), "{count}/64 is said {said:?}");
        }
    }
}

/// 1/81280 in measures 64ths of an inch and tenths of a millimeter alike: 1270 and 320 of it.
const GRAINS: u64 = 64 * 1270;
const MODES: [RoundingMode; 6] = [
    RoundingMode::TiesUp,
    RoundingMode::TiesEven,
    RoundingMode::TiesAway,
    RoundingMode::Down,
    RoundingMode::Up,
    RoundingMode::TowardZero,
];

/// Tapes, and their steps in grains.
const TAPES: [(Tape, i64); 6] = [
    (Tape::eighths(), 8 * 1270),
    (Tape::sixteenths(), 4 * 1270),
    (Tape::thirty_seconds(), 2 * 1270),
    (Tape::sixty_fourths(), 1270),
    (Tape::millimeters(), 3200),
    (Tape::half_millimeters(), 1600),
];

/// How many steps a mode takes for so many grains.
fn steps(grains: i64, step: i64, mode: RoundingMode) -> i64 {
    let below = grains.div_euclid(step);
    let twice = 2 * grains.rem_euclid(step);
    let rises = match mode {
        RoundingMode::Down => false,
        RoundingMode::Up => twice > 0,
        RoundingMode::TowardZero => twice > 0 && grains < 0,
        _ if twice != step => twice > step,
        RoundingMode::TiesUp => true,
        RoundingMode::TiesEven => below % 2 != 0,
        _ => grains > 0,
    };
    below + i64::from(rises)
}

#[test]
fn on_every_tape_in_every_mode() {
    for (tape, step) in TAPES {
        for (mode, offset) in MODES.into_iter().flat_map(|mode| [(mode, 0), (mode, 1)]) {
            let tape = tape.mode(mode).offset(Length::new(offset, Unit::Inch));
            let offset = offset * 64 * 1270;
            for count in sixty_fourths() {
                let place = count * 1270 + offset;
                let shown = steps(place, step, mode) * step;
                let reading = tape.read(Length::fraction(count, 64, Unit::Inch)).unwrap();
                let figures = [reading.shown(), reading.mark(), reading.leftover()];
                let expected = [shown, shown - offset, place - shown].map(|grains| Length::fraction(grains, GRAINS, Unit::Inch));
                assert_eq!(figures, expected, "{count}/64 on {tape:?}");
                // Said once more as the promise is worded.
                let off = (place - shown).abs();
                let is_nearest = matches!(mode, RoundingMode::TiesUp | RoundingMode::TiesEven | RoundingMode::TiesAway);
                assert!(if is_nearest { 2 * off <= step } else { off < step }, "{count}/64 on {tape:?}");
            }
        }
    }
}

/// A mark carries into the inch and the foot before it is split: what is written is what the whole count of graduations comes to.
#[test]
fn a_mark_carries_before_it_is_written() {
    let feet = LengthPrinter::new().style(Style::FeetInches);
    let mut text = String::new();
    for (tape, parts) in TAPES.iter().map(|(tape, _)| *tape).zip([8, 16, 32, 64]) {
        let step = 64 / parts;
        for mode in MODES {
            for count in sixty_fourths() {
                let marked = tape.mode(mode).read(Length::fraction(count, 64, Unit::Inch)).unwrap().mark();
                text.clear();
                feet.show(marked).unwrap().write_to(&mut text).unwrap();
                assert_eq!(text, by_hand(steps(count, step, mode), parts), "{count}/64 in {parts} parts, {mode:?}");
            }
        }
    }
}

fn by_hand(count: i64, parts: i64) -> String {
    let (whole, mut part, mut parts) = (count.abs() / parts, count.abs() % parts, parts);
    let mut text = format!("{}{}'-{}", if count < 0 { "-" } else { "" }, whole / 12, whole % 12);
    if part > 0 {
        while part % 2 == 0 {
            (part, parts) = (part / 2, parts / 2);
        }
        write!(text, " {part}/{parts}").unwrap();
    }
    text + "\""
}
