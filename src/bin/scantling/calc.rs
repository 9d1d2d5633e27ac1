//! `scantling calc`: a calculation with lengths, and what it comes to.

use num_rational::Ratio;
use scantling::{Area, LengthParser, ParseErrorKind, Quantity, Unit, Volume, Warning};
use serde_json::{Value, json};

use crate::arguments::{Calc, typed};
use crate::problem::Problem;
use crate::words::{Bench, mixed};
use crate::{Outcome, json, read};

pub fn run(options: &Calc) -> Outcome {
    let parser = options.notation.parser();
    let bench = Bench::new(&options.tape, parser)?;
    let typed: Vec<_> = options.words.iter().map(|word| typed(word)).collect();
    let text = typed.join(" ");
    // A calculation of bare numbers is one of lengths in the unit that bare numbers have.
    let quantity = match parser.evaluate_length(&text) {
        Ok(length) => Ok(Quantity::Length(length)),
        Err(error) if is_no_length(error.kind()) => parser.evaluate(&text),
        Err(error) => Err(error),
    };
    let quantity =
        quantity.map_err(|error| Problem::unread("", &text, error).or_hint(|| text.get(error.span().start..).and_then(slip)))?;
    let warning = parser.evaluate_warned(&text).ok().and_then(|(_, warning)| warning);
    if options.json { object(&text, quantity, warning, bench) } else { answer(&text, quantity, warning, bench) }
}

/// What to write where a sign or a word of another notation stands, at the front of the rest of the text.
fn slip(rest: &str) -> Option<String> {
    let hint = match rest.chars().next()? {
        '=' => "leave it out: what a calculation comes to is the answer",
        '%' => "write a share as a fraction, as in 36 * 15/100",
        '^' => "write a power out, as in 3 * 3",
        _ if asks_for_a_unit(rest) => "leave it out: an answer is given in every unit",
        _ => return None,
    };
    Some(hint.to_owned())
}

/// `to mm`, or `mm` where no unit is due, at the end of the text.
fn asks_for_a_unit(rest: &str) -> bool {
    let unit = rest.get(..3).filter(|word| word.eq_ignore_ascii_case("to ")).map_or(rest, |word| &rest[word.len()..]).trim();
    let counted = LengthParser::new().parse_written(&format!("1 {unit}"));
    unit.bytes().all(|byte| byte.is_ascii_alphabetic()) && counted.is_ok_and(|(_, written)| written.first_unit().is_some())
}

const fn is_no_length(kind: ParseErrorKind) -> bool {
    matches!(kind, ParseErrorKind::NumberResult | ParseErrorKind::AreaResult | ParseErrorKind::VolumeResult)
}

fn answer(text: &str, quantity: Quantity, warning: Option<Warning>, bench: Bench) -> Outcome {
    if let Quantity::Length(length) = quantity {
        return read::block(text, length, None, warning, bench);
    }
    let look_again = warning.map(|warning| ("look again", warning.to_string()));
    let lines = figures(quantity).into_iter().chain(look_again).map(|(name, figure)| format!("  {name:<16}{figure}\n"));
    Ok(lines.fold(format!("{text}\n"), |answer, line| answer + &line))
}

fn object(text: &str, quantity: Quantity, warning: Option<Warning>, bench: Bench) -> Outcome {
    if let Quantity::Length(length) = quantity {
        return Ok(format!("{}\n", read::object(text, length, warning, bench)?));
    }
    let figures = figures(quantity).into_iter().map(|(name, figure)| (name.replace(' ', "_"), Value::from(figure)));
    let mut object = json!({ "text": text });
    json::extend(&mut object, figures);
    json::extend(&mut object, warning.map(|warning| ("warning".to_owned(), warning.to_string().into())));
    Ok(format!("{object}\n"))
}

/// What is no length, exactly, in each unit that it is asked for in.
fn figures(quantity: Quantity) -> Vec<(&'static str, String)> {
    match quantity {
        Quantity::Number(number) => vec![("number", mixed(number))],
        Quantity::Area(area) => areas(area),
        Quantity::Volume(volume) => volumes(volume),
        // A length has a block of its own.
        _ => Vec::new(),
    }
}

fn areas(area: Area) -> Vec<(&'static str, String)> {
    let units = [("square inches", Unit::Inch), ("square feet", Unit::Foot), ("square meters", Unit::Meter)];
    known(units.map(|(name, unit)| (name, area.checked_in_square(unit))))
}

fn volumes(volume: Volume) -> Vec<(&'static str, String)> {
    let inch = Unit::Inch.length();
    let board_foot = Unit::Foot.length() * Unit::Foot.length() * inch;
    let cubic = |unit| volume.checked_in_cubic(unit);
    known([
        ("cubic inches", cubic(Unit::Inch)),
        ("cubic feet", cubic(Unit::Foot)),
        ("board feet", volume.checked_ratio(board_foot)),
        ("cubic meters", cubic(Unit::Meter)),
    ])
}

fn known<const COUNT: usize>(figures: [(&'static str, Option<Ratio<i128>>); COUNT]) -> Vec<(&'static str, String)> {
    figures.into_iter().filter_map(|(name, figure)| Some((name, mixed(figure?)))).collect()
}
