//! Parts and boards from their texts, wherever those stand: in an option, in a line of a file. What is wrong is shown with the
//! option, or with the line and the column.

use num_rational::Ratio;
use scantling::{Length, LengthParser, Panel, ParseErrorKind, Part, Quantity, Sheet, Shorthand, Stock};

use crate::problem::{self, Problem};

/// The texts of one part or one kind of boards, each with what it is called.
pub struct Item {
    /// The option, or the file and the line in it.
    pub place: String,
    pub fields: Vec<(&'static str, String)>,
}

/// What a file of parts has columns for.
pub const PART_FIELDS: [&str; 4] = ["name", "length", "count", "joined"];
/// What a file of panels has columns for.
pub const PANEL_FIELDS: [&str; 5] = ["name", "length", "width", "count", "turnable"];
/// What a file of sheets has columns for.
pub const SHEET_FIELDS: [&str; 5] = ["name", "length", "width", "count", "price"];
/// What a file of boards has columns for.
pub const STOCK_FIELDS: [&str; 4] = ["name", "length", "count", "price"];

impl Item {
    /// `NAME=COUNT@LENGTH:PRICE`, all but the length left out at will; boards alone have a price. What the last field is called is
    /// told: a length or a size.
    pub fn of_option(option: &str, text: &str, last: &'static str, has_price: bool) -> Self {
        let mut fields = Vec::new();
        let mut rest = text;
        if let Some((name, after)) = rest.split_once('=') {
            fields.push(("name", name.to_owned()));
            rest = after;
        }
        if let Some((count, after)) = rest.split_once('@') {
            fields.push(("count", count.to_owned()));
            rest = after;
        }
        if let Some((before, price)) = rest.rsplit_once(':').filter(|_| has_price) {
            fields.push(("price", price.to_owned()));
            rest = before;
        }
        fields.push((last, rest.to_owned()));
        Self { place: option.to_owned(), fields }
    }

    /// A field that is there and not blank.
    fn field(&self, name: &str) -> Option<&str> {
        let field = self.fields.iter().find(|(other, _)| *other == name).map(|(_, text)| text.trim());
        field.filter(|text| !text.is_empty())
    }

    /// Where a field stands, to be told.
    fn at(&self, name: &str) -> String {
        format!("{}, {name}", self.place)
    }

    fn wrong(&self, name: &str, text: &str, expected: &str) -> Problem {
        Problem::plain(format!("{}: {expected}, not {text}", self.at(name)))
    }

    fn name_and_length(&self, parser: LengthParser) -> Result<(String, Length), Problem> {
        let text = self.field("length").ok_or_else(|| Problem::plain(format!("{}: no length", self.place)))?;
        Ok((self.field("name").unwrap_or(text).to_owned(), self.length(parser, text)?))
    }

    fn length(&self, parser: LengthParser, text: &str) -> Result<Length, Problem> {
        problem::read(parser, &self.at("length"), text).map_err(|problem| {
            match parser.parse(text).map_err(|error| error.kind()) {
                Err(ParseErrorKind::NominalName | ParseErrorKind::SizeNotLength) => match no_size(&self.place, text) {
                    Some(hint) => problem.hint(hint),
                    None => problem,
                },
                _ => problem.or_hint(|| instead(&self.place, text)),
            }
        })
    }

    fn count(&self) -> Result<Option<u64>, Problem> {
        let count = self.field("count").map(|text| {
            let count = text.parse().ok().filter(|count| *count > 0);
            let is_name = self.place.starts_with("--") && text.contains(char::is_alphabetic);
            let named = || is_name.then(|| "a name stands before =, as in rail=4@35-1/2".to_owned());
            count.ok_or_else(|| self.wrong("count", text, "a whole number above zero was expected").or_hint(named))
        });
        count.transpose()
    }

    /// A part; one of it, where no count is given.
    pub fn part(&self, parser: LengthParser) -> Result<Part, Problem> {
        let (name, length) = self.name_and_length(parser)?;
        let part = Part::new(name, length, self.count()?.unwrap_or(1));
        Ok(if self.yes("joined")? { part.joined() } else { part })
    }

    fn yes(&self, name: &str) -> Result<bool, Problem> {
        match self.field(name).map(str::to_ascii_lowercase).as_deref() {
            None | Some("no" | "false" | "0") => Ok(false),
            Some("yes" | "true" | "1" | "x") => Ok(true),
            Some(text) => Err(self.wrong(name, text, "yes or no was expected")),
        }
    }

    /// A name, and a length and a width, in one text or in two.
    fn name_and_sides(&self, parser: LengthParser) -> Result<(String, [Length; 2]), Problem> {
        if let Some(text) = self.field("size") {
            let size = problem::read_size(parser, &self.place, text)?;
            let [length, width] = size.lengths() else {
                return Err(Problem::plain(format!("{}: a length and a width were expected, not {text}", self.place)));
            };
            return Ok((self.field("name").unwrap_or(text).to_owned(), [length.length(), width.length()]));
        }
        let (name, length) = self.name_and_length(parser)?;
        let text = self.field("width").ok_or_else(|| Problem::plain(format!("{}: no width", self.place)))?;
        Ok((name, [length, problem::read(parser, &self.at("width"), text)?]))
    }

    /// A panel; one of it, where no count is given.
    pub fn panel(&self, parser: LengthParser) -> Result<Panel, Problem> {
        let (name, [length, width]) = self.name_and_sides(parser)?;
        let panel = Panel::new(name, length, width, self.count()?.unwrap_or(1));
        Ok(if self.yes("turnable")? { panel.turnable() } else { panel })
    }

    /// Sheets; as many as it takes, where no count is given.
    pub fn sheet(&self, parser: LengthParser) -> Result<Sheet, Problem> {
        let (name, [length, width]) = self.name_and_sides(parser)?;
        let mut sheet = Sheet::new(name, length, width);
        if let Some(limit) = self.count()? {
            sheet = sheet.limit(limit);
        }
        match self.field("price") {
            Some(text) => Ok(sheet.price(self.price(text, parser)?)),
            None => Ok(sheet),
        }
    }

    /// Boards; as many as it takes, where no count is given.
    pub fn stock(&self, parser: LengthParser) -> Result<Stock, Problem> {
        let (name, length) = self.name_and_length(parser)?;
        let mut stock = Stock::new(name, length);
        if let Some(limit) = self.count()? {
            stock = stock.limit(limit);
        }
        match self.field("price") {
            Some(text) => Ok(stock.price(self.price(text, parser)?)),
            None => Ok(stock),
        }
    }

    fn price(&self, text: &str, parser: LengthParser) -> Result<Ratio<i128>, Problem> {
        let text = text.strip_prefix('$').unwrap_or(text);
        match parser.shorthand(Shorthand::None).evaluate(text) {
            Ok(Quantity::Number(price)) => Ok(price),
            Ok(_) => Err(self.wrong("price", text, "a number such as 12.49 was expected")),
            Err(error) => Err(Problem::unread(&self.at("price"), text, error)),
        }
    }
}

/// What may have been meant by a text that is no length.
fn instead(place: &str, text: &str) -> Option<String> {
    const MONTHS: [&str; 12] = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
    let is_month = |word: &str| word.get(..3).is_some_and(|word| MONTHS.iter().any(|month| month.eq_ignore_ascii_case(word)));
    let example =
        if place == "--stock" { "old=3@40:9.50 is three boards of 40" } else { "rail=4@35-1/2 is four rails of 35-1/2" };
    match place.starts_with("--") {
        true => Some(format!("{example}, each in its unit and inches where there is none")),
        false if text.split(['-', ' ']).any(is_month) => {
            Some("a spreadsheet makes dates of fractions: give it the column as text".into())
        }
        false => None,
    }
}

/// A size where a length alone is due: a count before it, or a panel.
fn no_size(place: &str, text: &str) -> Option<String> {
    let (count, length) = text.split_once(['x', 'X']).map(|(count, length)| (count.trim(), length.trim()))?;
    let is_count = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    let pieces = |count: &str, length: &str| format!("{count}@{length} is {count} pieces of {length}");
    match place {
        "--stock" => Some("a board has a length alone; a sheet is --sheet".to_owned()),
        "--part" | "--joined" if is_count(count) && is_count(length) => {
            Some(format!("{}, {}; a panel is --panel", pieces(count, length), pieces(length, count)))
        }
        "--part" | "--joined" if is_count(count) => Some(format!("{}; a panel is --panel", pieces(count, length))),
        "--part" | "--joined" => Some("a part of a board has a length alone; a panel is --panel".to_owned()),
        _ => None,
    }
}
