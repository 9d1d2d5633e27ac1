//! `scantling lumber`: what a name of stock stands for, what the piece measures, how much it is and what it costs. How
//! an answer is worded is left to `text.rs` and `object.rs`.

use num_rational::Ratio;
use scantling::{
    Actual, Catalog, Length, LengthParser, LumberError, LumberKind, Money, Nominal, Price, Tallied, Tally, Unit, Volume,
};

use crate::Outcome;
use crate::arguments::typed;
use crate::problem::{self, Problem};
use crate::words::Bench;

mod arguments;
mod object;
mod text;

pub use arguments::Lumber;

/// What belongs below every figure.
const CAUTIONS: [&str; 2] = [
    "Sellers differ and wood moves: measure the piece itself before anything is cut to fit it.",
    "What a joist, beam, post or shelf may carry is for local codes and licensed practice, not for these figures.",
];

/// What the limits of panels are not for (from memory: no document on hardwood plywood was at hand).
const NOT_FOR: &str = "hardwood plywood and imported panels: often thinner, 1/4\" may measure 5.2 mm (from memory)";

/// One name, and all that is known about it.
struct Entry<'a> {
    text: &'a str,
    nominal: Nominal,
    actual: Actual<'static>,
    amount: Option<Amount>,
}

/// How much it is, and what that costs.
struct Amount {
    tallied: Tallied,
    cost: Option<Money>,
}

/// All that the answer is made from.
struct Report<'a> {
    entries: Vec<Entry<'a>>,
    bench: Bench,
    tally: Tally,
    price: Option<Price>,
}

pub fn run(options: &Lumber) -> Outcome {
    let parser = options.notation.parser();
    let bench = Bench::new(&options.tape, parser)?.unburned();
    let names = names(options, parser)?;
    let price = options.price.as_deref().map(str::parse).transpose().map_err(|error| because("--price", &error))?;
    let mut tally = Tally::new(options.tally.into());
    let entries = names.into_iter().map(|(text, nominal)| {
        let actual = Catalog::new().actual(&nominal).map_err(|error| because(text, &error))?;
        let amount = amount(&mut tally, &nominal, price, options).map_err(|error| explained(text, &error))?;
        Ok(Entry { text, nominal, actual, amount })
    });
    let report = Report { entries: entries.collect::<Result<_, Problem>>()?, bench, tally, price };
    if options.json { report.objects() } else { report.text() }
}

impl Report<'_> {
    fn amounts(&self) -> impl Iterator<Item = &Amount> {
        self.entries.iter().filter_map(|entry| entry.amount.as_ref())
    }

    /// The names that no amount is known of.
    fn without_amount(&self) -> Vec<&str> {
        self.entries.iter().filter(|entry| entry.amount.is_none()).map(|entry| entry.text).collect()
    }

    /// The board feet of all, where several have some.
    fn board_feet(&self) -> Result<Option<Ratio<i128>>, Problem> {
        let volumes = || self.amounts().filter_map(|amount| amount.tallied.board_feet());
        let sum = || volumes().try_fold(Volume::ZERO, Volume::checked_add)?.checked_in_board_feet();
        (volumes().count() > 1).then(|| sum().ok_or_else(out_of_range)).transpose()
    }

    /// What all cost, where several have a price.
    fn cost(&self) -> Result<Option<Money>, Problem> {
        let costs = || self.amounts().filter_map(|amount| amount.cost);
        let sum = || costs().try_fold(Money::ZERO, Money::checked_add);
        (costs().count() > 1).then(|| sum().ok_or_else(out_of_range)).transpose()
    }
}

fn out_of_range() -> Problem {
    Problem::plain(LumberError::OutOfRange.to_string())
}

/// Every name, with the sizes that were given for all.
fn names(options: &Lumber, parser: LengthParser) -> Result<Vec<(&str, Nominal)>, Problem> {
    let width = options.width.as_deref().map(|width| problem::read(parser, "--width", width)).transpose()?;
    let length = options.length.as_deref().map(|length| length_with_unit(parser, length)).transpose()?;
    let mut names = Vec::new();
    for name in &options.names {
        let text = typed(name);
        let unnamed = |error| Problem::unnamed(text, &error).or_hint(|| count_in_front(text));
        let refused = |error| forgotten_quotes(options).unwrap_or_else(|| unnamed(error));
        names.push((text, text.parse::<Nominal>().map_err(refused)?));
    }
    fill(&mut names, "--width", width, Nominal::width, Nominal::wide)?;
    fill(&mut names, "--length", length, Nominal::length, Nominal::long)?;
    Ok(names)
}

/// Gives the size of an option to every name that does not say it, of which there must be one.
fn fill(
    names: &mut [(&str, Nominal)],
    option: &str,
    given: Option<Length>,
    known: impl Fn(&Nominal) -> Option<Length>,
    with: impl Fn(Nominal, Length) -> Nominal,
) -> Result<(), Problem> {
    let Some(given) = given else { return Ok(()) };
    if names.iter().all(|(_, nominal)| known(nominal).is_some()) {
        return Err(Problem::plain(format!("{option} {given} is of no use: every name says its own")));
    }
    for (_, nominal) in names.iter_mut().filter(|(_, nominal)| known(nominal).is_none()) {
        *nominal = with(*nominal, given);
    }
    Ok(())
}

/// A length by itself could be feet, as lumber is sold, or inches, as everything else is typed here.
fn length_with_unit(parser: LengthParser, text: &str) -> Result<Length, Problem> {
    let length = problem::read(parser, "--length", text)?;
    let is_bare = |unit| parser.default_unit(unit).parse(typed(text)) != Ok(length);
    if is_bare(Unit::Inch) || is_bare(Unit::Yard) {
        return Err(Problem::plain(format!("--length: {text} without a unit")).hint(format!("write {text}ft or {text}in")));
    }
    Ok(length)
}

/// Several words that are a name only together.
fn forgotten_quotes(options: &Lumber) -> Option<Problem> {
    let all = options.names.iter().map(|name| typed(name)).collect::<Vec<_>>().join(" ");
    let is_name = options.names.len() > 1 && all.parse::<Nominal>().is_ok();
    is_name.then(|| Problem::plain(format!("several words and no quotes: {all}")).hint(format!("write \"{all}\" for one name")))
}

/// `6 2x4x8`: how many, and a name.
fn count_in_front(text: &str) -> Option<String> {
    let (count, name) = text.split_once(' ')?;
    let is_count = count.parse::<u32>().is_ok() && name.parse::<Nominal>().is_ok();
    is_count.then(|| format!("write \"{}\" --pieces {count}, if {count} is how many", name.trim()))
}

/// How much it is, where its sizes are known or it was asked for.
fn amount(tally: &mut Tally, nominal: &Nominal, price: Option<Price>, options: &Lumber) -> Result<Option<Amount>, LumberError> {
    let tallied = match tally.add(nominal, options.pieces.unwrap_or(1)) {
        Err(LumberError::Missing { .. }) if options.pieces.is_none() && price.is_none() => return Ok(None),
        tallied => tallied?,
    };
    let cost = price.map(|price| price.of(&tallied)).transpose()?;
    Ok(Some(Amount { tallied, cost }))
}

fn because(what: &str, error: &LumberError) -> Problem {
    Problem::plain(format!("{what}: {error}"))
}

fn explained(text: &str, error: &LumberError) -> Problem {
    let problem = Problem::plain(error.to_string());
    let is_panel = text.parse::<Nominal>().is_ok_and(|name| name.kind() == LumberKind::Panel);
    match error {
        LumberError::Missing { .. } if is_panel => problem.hint("say both sides of the sheet in the name, as in \"3/4 ply 4x8\""),
        LumberError::Missing { missing: "length", .. } => problem.hint("say it in the name, as in 2x4x8, or with --length 8ft"),
        LumberError::Missing { missing: "width", .. } => problem.hint("say it in the name, as in \"8/4 x 6\", or with --width 6"),
        _ => because(text, error),
    }
}
