//! Marks as they are typed: `side/shelf 1=14-2/5:3/4`. What they are added to is left to `build.rs`.

use scantling::{Edge, Length, LengthParser, Mark, PartSide, Row, Side, Spacing, StoryPole};

use super::arguments::MarkOptions;
use super::build::refused;
use crate::problem::{self, Problem};
use crate::words::Bench;

/// The row of a mark that names none.
const ROW: &str = "marks";

/// More marks than this are no list that a person works from.
const MOST_MARKS: usize = 10_000;

pub struct Typed<'a> {
    pub options: &'a MarkOptions,
    pub parser: LengthParser,
    pub bench: Bench,
}

impl Typed<'_> {
    pub fn is_empty(&self) -> bool {
        let MarkOptions { past, before, centered, line, equal, closes, .. } = self.options;
        [past, before, centered, line, equal, closes].into_iter().all(Vec::is_empty)
    }

    /// The pole with these marks too. Those of a job are merged with them, so that rows may be added to.
    pub fn onto(&self, pole: &StoryPole, merge: bool) -> Result<StoryPole, Problem> {
        let bare = pole.only([]).map_err(refused)?;
        let typed = self.rows(pole.length())?.into_iter().try_fold(bare, StoryPole::with).map_err(refused)?;
        if merge {
            return StoryPole::merged(pole.name(), [(pole, Length::ZERO), (&typed, Length::ZERO)]).map_err(refused);
        }
        Ok(typed)
    }

    /// The rows in the order in which they are first named.
    fn rows(&self, length: Length) -> Result<Vec<Row>, Problem> {
        let MarkOptions { past, before, centered, line, equal, closes, .. } = self.options;
        let mut rows: Vec<(String, Vec<Mark>)> = Vec::new();
        let mut add = |row: &str, marks: Vec<Mark>| match rows.iter_mut().find(|(name, _)| name == row) {
            Some((_, before)) => before.extend(marks),
            None => rows.push((row.to_owned(), marks)),
        };
        for (option, texts, side) in [
            ("--past", past, PartSide::Past),
            ("--before", before, PartSide::Before),
            ("--centered", centered, PartSide::Centered),
            ("--line", line, PartSide::Line),
        ] {
            for text in texts {
                let (row, mark) = self.mark(option, text, side)?;
                add(row, vec![mark]);
            }
        }
        for text in equal {
            let (row, marks) = self.equal(text, length)?;
            add(row, marks);
        }
        let closes = self.all_closes(closes)?;
        for (row, ..) in &closes {
            add(row, Vec::new());
        }
        let row = |(name, marks): (String, Vec<Mark>)| {
            let row = Row::new(name, marks);
            let closing = closes.iter().find(|(name, ..)| *name == row.name());
            match closing {
                Some((_, from, to)) => row.closing(*from, *to),
                None => row,
            }
        };
        Ok(rows.into_iter().map(row).collect())
    }

    fn mark<'a>(&self, option: &str, text: &'a str, side: PartSide) -> Result<(&'a str, Mark), Problem> {
        let form = || Problem::plain(format!("{option}: a name, = and a place were expected, not {text}"));
        let (row, name, figures) = named(text).ok_or_else(|| form().hint(format!("{option} \"side/shelf 1=14-2/5:3/4\"")))?;
        let (place, thickness) = figures.split_once(':').map_or((figures, None), |(place, thick)| (place, Some(thick)));
        let what = format!("{option} {name}");
        let mark = Mark::new(self.place(&what, place)?, name, side);
        Ok((
            row,
            match thickness {
                Some(thickness) => mark.thick(problem::read(self.parser, &what, thickness)?),
                None => mark,
            },
        ))
    }

    /// A place as it is, or as it is read off a stick, where it may be called strong or shy by so much.
    fn place(&self, what: &str, text: &str) -> Result<Length, Problem> {
        if !self.options.as_read {
            return problem::read(self.parser, what, text);
        }
        let called = self.parser.parse_called(text).map_err(|error| Problem::unread(what, text, error))?;
        if called.side() != Side::On && called.said().is_none() {
            return Err(Problem::plain(format!("{what}: nothing says by how much: {text}"))
                .hint("write it behind, as in 17-3/8 strong by 1/64"));
        }
        let tape = &self.bench.tape;
        let place = called.checked_length(tape.step()).and_then(|shown| shown.checked_sub(tape.datum_reading()));
        place.ok_or_else(|| Problem::plain(format!("{what}: {text} is out of range")))
    }

    fn equal<'a>(&self, text: &'a str, length: Length) -> Result<(&'a str, Vec<Mark>), Problem> {
        let form = || {
            Problem::plain(format!("--equal: a name, =, how many and how thick were expected, not {text}"))
                .hint("--equal side/shelf=5:3/4, or side/shelf=5:3/4:4:76 from one place to another")
        };
        let (row, name, figures) = named(text).ok_or_else(form)?;
        let figures: Vec<_> = figures.split(':').collect();
        let what = format!("--equal {name}");
        let read = |text: &str| problem::read(self.parser, &what, text);
        let (count, thickness, from, to) = match figures[..] {
            [count, thickness] => (count, read(thickness)?, Length::ZERO, length),
            [count, thickness, from, to] => (count, read(thickness)?, self.place(&what, from)?, self.place(&what, to)?),
            _ => return Err(form()),
        };
        let count = count.trim().parse().map_err(|_| form())?;
        if count > MOST_MARKS {
            return Err(Problem::plain(format!("{what}: {count} are too many to list: at most {MOST_MARKS}")));
        }
        let run = to.checked_sub(from).ok_or_else(form)?;
        let layout = Spacing::equal_openings(count, thickness).over(run);
        let layout = layout.map_err(|error| Problem::plain(format!("{what}: {error}")))?;
        let members = Row::try_from_layout(row, name, &layout, Edge::Near).and_then(|row| row.try_shifted(from));
        Ok((row, members.map_err(refused)?.marks().to_vec()))
    }

    fn all_closes<'a>(&self, texts: &'a [String]) -> Result<Vec<(&'a str, Length, Length)>, Problem> {
        let closes = texts.iter().map(|text| self.closes(text)).collect::<Result<Vec<_>, Problem>>()?;
        for (number, (row, ..)) in closes.iter().enumerate() {
            if closes[..number].iter().any(|(before, ..)| before == row) {
                return Err(Problem::plain(format!("--closes {row}: the row cannot close in two ways")));
            }
        }
        Ok(closes)
    }

    fn closes<'a>(&self, text: &'a str) -> Result<(&'a str, Length, Length), Problem> {
        let split = text.rsplit_once('=').and_then(|(row, places)| Some((row.trim(), places.split_once(':')?)));
        let (row, (from, to)) = split.ok_or_else(|| {
            let form = format!("--closes: a row, = and two places were expected, not {text}");
            Problem::plain(form).hint("--closes \"base cases=0:120\"")
        })?;
        let what = format!("--closes {row}");
        Ok((row, self.place(&what, from)?, self.place(&what, to)?))
    }
}

/// Row, name and figures; figures have no equals sign, and the others are never empty.
fn named(text: &str) -> Option<(&str, &str, &str)> {
    let (name, figures) = text.rsplit_once('=')?;
    let (row, name) = name.split_once('/').unwrap_or((ROW, name));
    let (row, name) = (row.trim(), name.trim());
    (!row.is_empty() && !name.is_empty()).then_some((row, name, figures))
}
