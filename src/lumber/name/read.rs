//! What a name comes to: which kind of stock its words and sizes mean. Cutting it up is left to `cut.rs`, what each size
//! is for to `sizes.rs`.

use core::str::FromStr;

use super::super::kind::LumberKind;
use super::super::nominal::Nominal;
use super::cut::cut;
use super::error::{NominalError, NominalErrorKind as Kind};
use super::number::Number;
use super::sizes::{Name, whole_span};
use super::words::Said;
use crate::length::{Length, Unit};

/// What the words and sizes mean.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Meaning {
    Softwood,
    Decking,
    Hardwood,
    Panel,
}

/// Reads a name as the trade writes it: `2x4x8`, `2 x 4`, `5/4x6`, `2x4 - 12'`, `8/4 walnut`, `3/4 ply 4x8`.
///
/// ```
/// use scantling::{Length, LumberKind, Nominal, Unit};
///
/// let panel: Nominal = "23/32 ply 4x8".parse()?;
/// assert_eq!((panel.kind(), panel.width()), (LumberKind::Panel, Some(Length::new(48, Unit::Inch))));
///
/// let refused = "2x4x96".parse::<Nominal>().unwrap_err();
/// assert_eq!(refused.hint(), Some("write 96' for feet or 96\" for inches"));
/// # Ok::<(), scantling::NominalError>(())
/// ```
///
/// # Errors
///
/// A [`NominalError`] with the bytes to blame, for what is no name and for what has two readings.
impl FromStr for Nominal {
    type Err = NominalError;

    fn from_str(text: &str) -> Result<Self, NominalError> {
        let cut = cut(text)?;
        if cut.numbers.is_empty() {
            let kind = if cut.said.is_empty() { Kind::Empty } else { Kind::NoSize };
            return Err(NominalError::at(text, whole_span(text), kind));
        }
        let name = Name { text, cut: &cut };
        let nominal = match meaning(&name)? {
            Meaning::Softwood => name.softwood(),
            Meaning::Decking => name.decking(),
            Meaning::Hardwood => name.hardwood(),
            Meaning::Panel => name.panel(),
        }?;
        finished(&name, nominal)
    }
}

/// By the words where they say it; fir plywood is a panel, and a cedar deck a deck.
fn meaning(name: &Name<'_>) -> Result<Meaning, NominalError> {
    let says = |said| name.cut.says(said);
    let of_panel = says(Said::Panel) || says(Said::Sheet);
    for (one, other) in [(of_panel, Said::Decking), (says(Said::Decking), Said::Hardwood)] {
        if let Some(place) = name.cut.place(other).filter(|_| one) {
            return Err(NominalError::at(name.text, place, Kind::Disagree));
        }
    }
    let of_any_width = says(Said::Hardwood) || says(Said::Decking) || name.first().quarters;
    if let Some(place) = name.cut.place(Said::Wide).filter(|_| of_panel || !of_any_width) {
        return Err(NominalError::at(name.text, place, Kind::Disagree));
    }
    if of_panel {
        return Ok(Meaning::Panel);
    }
    if let Some(place) = name.cut.place(Said::Hardwood).filter(|_| says(Said::Softwood)) {
        return Err(NominalError::at(name.text, place, Kind::Disagree));
    }
    match () {
        () if says(Said::Decking) => Ok(Meaning::Decking),
        () if says(Said::Hardwood) => Ok(Meaning::Hardwood),
        () if says(Said::Softwood) || says(Said::Named) && !name.first().quarters => Ok(Meaning::Softwood),
        () => guessed(name),
    }
}

/// By the sizes alone, where they can mean one kind only.
fn guessed(name: &Name<'_>) -> Result<Meaning, NominalError> {
    let (first, numbers) = (name.first(), &name.cut.numbers);
    let joined = numbers.get(1).is_some_and(|second| second.times);
    if first.quarters {
        return match first.length {
            five if five != Length::fraction(5, 4, Unit::Inch) => Ok(Meaning::Hardwood),
            _ if joined && numbers[1].is_inches() => Ok(Meaning::Decking),
            _ => Err(name.two_readings("decking", "hardwood")),
        };
    }
    // `3/4 4x8`: a size behind a blank, and the sides of a sheet.
    let spaced = numbers.len() == 3 && !numbers[1].times && numbers[2].times;
    if name.has_sides_of_sheet() || (spaced && !first.is_whole()) || is_of_panels_alone(first) {
        return Ok(Meaning::Panel);
    }
    match numbers.len() {
        1 if !first.is_whole() => Err(name.two_readings("ply", "hardwood")),
        // Four by eight could be inches or feet.
        3 if joined && !first.is_whole() && numbers[2].times && numbers[2].bare => Err(name.two_readings("board", "ply")),
        _ => Ok(Meaning::Softwood),
    }
}

/// No lumber is named in sixteenths or 32nds of an inch.
fn is_of_panels_alone(first: &Number) -> bool {
    let parts = *first.length.in_unit(Unit::Inch).denom();
    first.is_inches() && matches!(parts, 16 | 32) && first.length < Length::new(2, Unit::Inch)
}

/// The same, with what was said about how it was seasoned and planed: each once, and of no panel.
fn finished(name: &Name<'_>, nominal: Nominal) -> Result<Nominal, NominalError> {
    let is_panel = matches!(nominal.kind(), LumberKind::Panel | LumberKind::Sheet);
    name.cut.said.iter().try_fold(nominal, |finished, (said, place)| match *said {
        Said::Seasoned(seasoning) if !is_panel && finished.seasoning().is_none() => Ok(finished.seasoned(seasoning)),
        Said::Surfaced(surface) if !is_panel && finished.surface().is_none() => Ok(finished.surfaced(surface)),
        Said::Seasoned(_) | Said::Surfaced(_) => Err(NominalError::at(name.text, place.clone(), Kind::Disagree)),
        _ => Ok(finished),
    })
}
