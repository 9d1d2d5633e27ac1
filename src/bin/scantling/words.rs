//! How a figure is said to a person with a saw in hand: fractions joined by a hyphen, the mark first, then
//! what the true place has more or less than it. Feet are never without their mark.

use num_rational::Ratio;
use scantling::{Column, Join, Lean, Length, LengthPrinter, Places, Reading, Rounding, Shorthand, Shown, Style, Unit};

use crate::arguments::{Round, TapeOptions};
use crate::problem::{self, Problem};

/// The tape in use, and with it the units that figures are given in.
#[derive(Clone, Copy)]
pub struct Bench {
    pub tape: scantling::Tape,
    metric: bool,
}

impl Bench {
    pub fn new(options: &TapeOptions, parser: scantling::LengthParser) -> Result<Self, Problem> {
        let step = problem::read(parser.shorthand(Shorthand::None), "--tape", &options.tape).map_err(|problem| {
            problem.or_hint(|| Some("write 1/16 for a tape that reads sixteenths, 1mm for millimeters".into()))
        })?;
        if options.tape.bytes().all(|byte| byte.is_ascii_digit()) && step >= Unit::Inch.length() {
            let sixteenths = format!("write 1/{0} for a tape that reads {0}ths, or the unit if that is meant", options.tape);
            return Err(Problem::plain(format!("--tape: graduations {step} apart")).hint(sixteenths));
        }
        let burned = problem::read(parser.shorthand(Shorthand::None), "--burn", &options.burn)?;
        let tape = scantling::Tape::with_step(step).map_err(|error| Problem::plain(format!("--tape: {error}")))?;
        // A tape is metric when its graduation is a whole part of a millimeter or a whole count of them.
        let in_millimeters = step.in_unit(Unit::Millimeter);
        let metric = [*in_millimeters.numer(), *in_millimeters.denom()].iter().all(|part| part.abs() <= 100);
        Ok(Self { tape: tape.mode(options.round.into()).offset(burned), metric })
    }

    /// The same with the tape's own zero on the datum: for sizes, which are no places.
    pub fn unburned(self) -> Self {
        Self { tape: self.tape.offset(Length::ZERO), ..self }
    }

    pub fn is_metric(self) -> bool {
        self.metric
    }

    /// What the tape shows, as it is found there; a figure that no tape shows is not made to look like one.
    pub fn mark(self, mark: Length) -> String {
        self.exact_joined(mark, joined_as_found(mark))
    }

    /// The same, in feet and inches as well where it is a foot or more.
    pub fn mark_in_feet_too(self, mark: Length) -> String {
        let feet = LengthPrinter::new().style(Style::FeetInches).join(joined_as_found(mark));
        match shown(feet, mark) {
            Some(feet) if !self.metric && mark.abs() >= Unit::Foot.length() => format!("{} = {feet}", self.mark(mark)),
            _ => self.mark(mark),
        }
    }

    /// A size to be measured, and how it is shown: what no tape in inches has by the graduation beside it.
    pub fn measured(self, size: Length, show: impl Fn(Self, Length) -> String) -> String {
        let bench = self.unburned();
        let is_shown = if self.metric { self.shown(size, Join::Space).is_some() } else { joined_as_found(size) == Join::Hyphen };
        match bench.tape.read(size) {
            _ if size.abs() < self.tape.step() => self.amount(size),
            Ok(reading) if !is_shown => format!("{} {}", show(bench, reading.shown()), bench.lean(&reading)),
            _ => show(bench, size),
        }
    }

    /// An exact figure, in a column where no mark is looked for.
    pub fn exact(self, length: Length) -> String {
        self.exact_joined(length, Join::Space)
    }

    fn exact_joined(self, length: Length, join: Join) -> String {
        self.shown(length, join).map_or_else(|| self.unshown(length), |shown| shown.to_string())
    }

    fn shown(self, length: Length, join: Join) -> Option<Shown> {
        let printer = if self.metric { millimeter_decimals() } else { LengthPrinter::new().join(join) };
        printer.show(length).ok()
    }

    /// What no printer shows.
    fn unshown(self, length: Length) -> String {
        if self.metric { millimeters(length) } else { length.to_string() }
    }

    /// A column of what the tape shows, lined up where whole numbers end.
    pub fn marks(self, marks: impl Iterator<Item = Length>) -> Vec<String> {
        self.column(marks.map(|mark| (mark, joined_as_found(mark))))
    }

    /// A column of exact figures.
    pub fn exacts(self, lengths: impl Iterator<Item = Length>) -> Vec<String> {
        self.column(lengths.map(|length| (length, Join::Space)))
    }

    fn column(self, lengths: impl Iterator<Item = (Length, Join)>) -> Vec<String> {
        let cells: Vec<_> = lengths.map(|(length, join)| (length, self.shown(length, join))).collect();
        let column: Column = cells.iter().filter_map(|(_, shown)| *shown).collect();
        let text = |(length, shown): (Length, Option<Shown>)| {
            shown.map_or_else(|| self.unshown(length), |shown| column.cell(shown).to_string())
        };
        cells.into_iter().map(text).collect()
    }

    /// How the true place lies to its mark.
    pub fn lean(self, reading: &Reading) -> String {
        match reading.lean() {
            Lean::DeadOn => "dead on".into(),
            Lean::Strong => format!("strong by {}", self.amount(reading.leftover())),
            Lean::Shy => format!("shy by {}", self.amount(reading.leftover().abs())),
        }
    }

    /// A small amount: exact where that can be grasped, else rounded and said to be.
    pub fn amount(self, length: Length) -> String {
        let graspable = if self.metric {
            shown(LengthPrinter::new().style(Style::Millimeters), length).is_some_and(|text| text.len() <= 9)
        } else {
            *length.in_unit(Unit::Inch).denom() <= 1000
        };
        if graspable { self.mark(length) } else { self.about(length) }
    }

    /// Rounded to what can be grasped, and said to be.
    fn about(self, length: Length) -> String {
        let (unit, places, style) =
            if self.metric { (Unit::Millimeter, 1000, Style::Millimeters) } else { (Unit::Inch, 10_000, Style::DecimalInches) };
        let rounded = length.round(Rounding::to(Length::fraction(1, places, unit)));
        let about = rounded.ok().and_then(|rounded| shown(LengthPrinter::new().style(style), rounded));
        about.map_or_else(|| self.mark(length), |about| format!("about {about}"))
    }

    /// An amount that no tape needs to show: a fraction of a tape as it is, any other in decimals.
    pub fn decimal_amount(self, length: Length) -> String {
        if self.metric || joined_as_found(length) == Join::Hyphen {
            return self.amount(length);
        }
        let printer = LengthPrinter::new().style(Style::DecimalInches).places(Places::Shortest);
        match shown(printer, length).filter(|text| text.len() <= 7) {
            Some(text) => text,
            None => self.about(length),
        }
    }

    /// A sentence of the library, which speaks of inches, with its lengths in the units of this tape, exactly.
    pub fn said(self, sentence: &str) -> String {
        if self.metric { said(sentence, |length| self.exact(length)) } else { sentence.into() }
    }

    /// The same for a sentence that is read with a tool in hand: its lengths as they are found on the tape.
    pub fn told(self, sentence: &str) -> String {
        said(sentence, |length| if is_in_millimeters(length) { millimeters(length) } else { self.mark(length) })
    }

    /// The same for a sentence about what moves: its lengths as amounts.
    pub fn roughly(self, sentence: &str) -> String {
        said(sentence, |length| self.decimal_amount(length))
    }

    /// The graduation, in a few words.
    pub fn tape_in_words(self, round: Round) -> String {
        let step = self.mark(self.tape.step());
        let how = match round {
            Round::Nearest => "to the nearest graduation",
            Round::NearestEven => "to the nearest graduation, midway to the even one",
            Round::NearestAway => "to the nearest graduation, midway away from zero",
            Round::Down => "to the graduation below",
            Round::Up => "to the graduation above",
            Round::TowardZero => "to the graduation nearer to zero",
        };
        format!("{step} graduations, each place {how}")
    }
}

/// A sentence with each of its lengths in inches shown another way.
fn said(sentence: &str, show: impl Fn(Length) -> String) -> String {
    let (mut said, mut end) = (String::new(), 0);
    let lengths = scantling::LengthParser::new().find_iter(sentence).filter_map(Result::ok);
    for found in lengths.filter(|found| sentence[found.span()].ends_with('"')) {
        said += &sentence[end..found.span().start];
        said += &show(found.length());
        end = found.span().end;
    }
    said + &sentence[end..]
}

fn shown(printer: LengthPrinter, length: Length) -> Option<String> {
    printer.show(length).ok().map(|shown| shown.to_string())
}

/// What was given in millimeters, and no tape in inches shows: an inch is 127 fifths of one.
fn is_in_millimeters(length: Length) -> bool {
    *length.in_unit(Unit::Inch).denom() % 127 == 0 && *length.in_unit(Unit::Millimeter).denom() <= 100
}

/// A hyphen for what a tape may show.
fn joined_as_found(mark: Length) -> Join {
    let parts = *mark.in_unit(Unit::Inch).denom();
    if parts <= 128 && parts.count_ones() == 1 { Join::Hyphen } else { Join::Space }
}

const fn millimeter_decimals() -> LengthPrinter {
    LengthPrinter::new().style(Style::Millimeters).places(Places::Shortest)
}

/// Millimeters, exact: decimals where they end, else a fraction.
pub fn millimeters(length: Length) -> String {
    format!("{} mm", millimeter_count(length))
}

/// The count of millimeters without its unit.
pub fn millimeter_count(length: Length) -> String {
    match shown(millimeter_decimals(), length) {
        Some(text) => text.trim_end_matches(" mm").into(),
        None => mixed(length.in_unit(Unit::Millimeter)),
    }
}

/// A whole number and a fraction.
pub fn mixed(ratio: Ratio<i128>) -> String {
    let (num, den) = (ratio.numer().unsigned_abs(), ratio.denom().unsigned_abs());
    let sign = if *ratio.numer() < 0 { "-" } else { "" };
    match num / den {
        whole if num % den == 0 => format!("{sign}{whole}"),
        0 => format!("{sign}{num}/{den}"),
        whole => format!("{sign}{whole} {}/{den}", num % den),
    }
}
