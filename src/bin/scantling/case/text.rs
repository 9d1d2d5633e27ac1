//! The sheet as text, in the order of the work: what to look at again, what to buy, what to cut, where to mark and to
//! fasten it, what to check it by. Figures that a tape shows come first, exact ones have a column or a line of their own.

use std::fmt::Write as _;

use scantling::{
    CasePart, Closing, Hand, Length, NailLine, Overall, PocketHole, Reading, StoryPole, TapeError, Unit, pocket_hole,
};

use super::buying::{Bought, FINISHED};
use super::seasons::{self, Seasons};
use super::{Report, refused, strength, total};
use crate::Outcome;
use crate::problem::Problem;
use crate::table::table;
use crate::words::mixed;

/// The width of a molding, which the case does not decide.
const AS_BOUGHT: &str = "as bought";

/// What stands below the pole of one hand.
pub(super) const MIRRORED: &str =
    "The right side is its mirror image, and has the same marks: mark both at once, from the lower end.\n";

impl Report<'_> {
    pub(super) fn text(&self) -> Outcome {
        let mut text = self.heading();
        text += &self.look_again()?;
        text += &listed("Place", &self.place_lines()?, "");
        text += &numbered("Order of work", self.steps());
        text += &self.to_buy();
        text += &self.cut_list()?;
        text += &self.poles()?;
        text += &self.opening_table()?;
        text += &self.fastenings()?;
        text += &self.sums();
        text += &self.whole()?;
        text += &listed("Shelves under load", &self.sag_lines(), strength::HELP);
        text += &listed("Solid wood through the seasons", &self.season_lines(), seasons::HELP);
        text += &numbered("Cautions", self.plan.cautions().iter().map(|caution| format!("{caution}")));
        Ok(text)
    }

    pub(super) fn overall(&self) -> String {
        let case = self.plan.case();
        let [width, height, depth] =
            [case.width, case.height, case.depth].map(|size| self.bench.unburned().mark_in_feet_too(size));
        let over = match case.over {
            Overall::Frame => ", over the face frame",
            Overall::Top => ", over the top",
            Overall::Molding => ", over the molding",
            _ => ", over the box",
        };
        format!("{width} wide, {height} high, {depth} deep{over}")
    }

    fn heading(&self) -> String {
        let mut text = format!("Case     {}\nOverall  {}\n", self.job.name, self.overall());
        let tape = self.bench.tape_in_words(self.options.tape.round);
        let _ = writeln!(text, "Tape     {tape}; a part that goes inside another to the one below");
        for line in self.named() {
            let _ = writeln!(text, "Stock    {line}");
        }
        text
    }

    /// What names of stock were taken for.
    pub(super) fn named(&self) -> Vec<String> {
        let line = |named: &super::stock::Named| {
            let (thick, less) = (self.thick(named.actual), named.nominal.checked_sub(named.actual).unwrap_or_default());
            let differs = match less {
                less if less.is_zero() => String::new(),
                less if less.is_negative() => format!(", {} over its name", self.thick(-less)),
                less => format!(", {} under its name", self.thick(less)),
            };
            let limits = named.panel.map_or_else(String::new, |panel| {
                format!("; panels of that name are {} to {}", self.thick(panel.minimum()), self.thick(panel.maximum()))
            });
            format!("{}: \"{}\" is reckoned as {thick}{differs}{limits}. Measure it.", named.of, named.name)
        };
        self.job.named.iter().map(line).collect()
    }

    pub(super) fn steps(&self) -> Vec<String> {
        self.plan.order_of_work().iter().map(|step| self.bench.told(step)).collect()
    }

    fn look_again(&self) -> Outcome {
        Ok(listed("Look again before you cut:", &self.advice()?, ""))
    }

    /// What is unwise about the case, its stock and its place, and what is wrong with its poles.
    pub(super) fn advice(&self) -> Result<Vec<String>, Problem> {
        let (bench, tape) = (self.bench, self.bench.tape);
        let mut advice = self.plan.advice(&tape);
        advice.extend(self.plan.parts().iter().flat_map(|part| self.saw.advice(part)));
        advice.extend(self.plan.advice_at(&self.job.site, tape.step()).map_err(refused)?);
        let pole = |pole: &StoryPole| pole.check(&tape).into_iter().map(|finding| finding.to_string());
        let told = advice.iter().map(ToString::to_string).chain(self.different_poles().flat_map(pole));
        let moving = self.seasons.iter().flat_map(Seasons::advice).map(|advice| bench.roughly(&advice.to_string()));
        let mut said: Vec<String> = Vec::new();
        for sentence in told.map(|sentence| bench.told(&sentence)).chain(moving) {
            if !said.contains(&sentence) {
                said.push(sentence);
            }
        }
        Ok(said)
    }

    fn to_buy(&self) -> String {
        let mut text = String::from("\nBuy\n");
        for bought in &self.bought {
            let _ = writeln!(text, "  [ ] {}\n      for {}", self.take(bought), bought.parts.join(", "));
        }
        if self.bought.iter().any(Bought::is_ripped) {
            let _ = writeln!(text, "  {FINISHED}");
        }
        text
    }

    pub(super) fn take(&self, bought: &Bought) -> String {
        let section = match bought.width {
            None => format!("{} sheets", self.thick(bought.thickness)),
            Some(width) if width.is_zero() => "molding".into(),
            Some(width) => {
                let glued = if bought.is_glued_up { ", glued up" } else { "" };
                format!("{} x {} boards{glued}", self.thick(bought.thickness), self.bench.unburned().mark(width))
            }
        };
        let take = match &bought.plan {
            Ok(take) => take,
            Err(refusal) => return format!("{section}: {}", self.bench.told(refusal)),
        };
        let piece = |(count, length, width): &(u64, Length, Option<Length>)| {
            let bench = self.bench.unburned();
            let size = width.map_or_else(
                || bench.mark_in_feet_too(*length),
                |width| format!("{} x {}", bench.mark(*length), bench.mark(width)),
            );
            format!("{count} of {size}")
        };
        let pieces: Vec<_> = take.pieces.iter().map(piece).collect();
        let proof = if take.is_least { "none takes less (proved)" } else { "perhaps less will do" };
        format!("{section}: {}; {proof}", pieces.join(", "))
    }

    fn cut_list(&self) -> Outcome {
        let rows = self.plan.parts().iter().map(|part| self.line(part)).collect::<Result<Vec<_>, _>>()?;
        let heading = ["", "pieces", "part", "thick", "wide", "long", "exactly"];
        let table = table(heading, ['l', 'l', 'l', 'l', 'l', 'l', 'l'], rows);
        let mut text = format!("\nCut list: the length runs with the grain; mark the face and the edge that show\n\n{table}\n");
        for part in self.plan.parts() {
            let _ = writeln!(text, "  {}", part.name());
            for (what, from) in self.origin(part) {
                let _ = writeln!(text, "    {what:<9} {}", hanging(&from, 14));
            }
        }
        Ok(text)
    }

    fn line(&self, part: &CasePart) -> Result<[String; 7], Problem> {
        let (width, length) = (total(part.sawn_width())?, total(part.length())?);
        let exactly = self.exactly(part)?.join(" x ");
        let thick = self.thick(part.thickness());
        let (wide, long) = (self.wide(part, width)?, self.long(part, length)?);
        Ok(["[ ]".into(), part.pieces().to_string(), part.name().into(), thick, wide, long, exactly])
    }

    /// The three sizes of a part as they are, not as a tape shows them.
    pub(super) fn exactly(&self, part: &CasePart) -> Result<[String; 3], Problem> {
        let sizes = [part.thickness(), total(part.sawn_width())?, total(part.length())?];
        Ok(sizes.map(|size| if size.is_zero() { AS_BOUGHT.into() } else { self.bench.exact(size) }))
    }

    /// A width as the tape shows it; a molding is as wide as it is bought.
    pub(super) fn wide(&self, part: &CasePart, width: Length) -> Outcome {
        if width.is_zero() {
            return Ok(AS_BOUGHT.into());
        }
        self.shown(part.width_on(&self.bench.unburned().tape, width))
    }

    pub(super) fn long(&self, part: &CasePart, length: Length) -> Outcome {
        self.shown(part.length_on(&self.bench.unburned().tape, length))
    }

    fn shown(&self, reading: Result<Reading, TapeError>) -> Outcome {
        let reading = reading.map_err(|error| Problem::plain(error.to_string()))?;
        Ok(self.bench.unburned().mark(reading.mark()))
    }

    /// Where the sizes of a part come from, and what shows of it.
    pub(super) fn origin(&self, part: &CasePart) -> Vec<(&'static str, String)> {
        let is_edged = part.sawn_width() != part.width();
        let is_as_bought = part.width().total().is_ok_and(Length::is_zero);
        let lines = [
            ("wide", (!is_edged && !is_as_bought).then(|| part.width().to_string())),
            ("sawn", is_edged.then(|| part.sawn_width().to_string())),
            ("finished", is_edged.then(|| part.width().to_string())),
            ("long", Some(part.length().to_string())),
            ("notch", part.notch().map(|notch| format!("both front corners, {} off each end, {} back", notch.deep, notch.back))),
            ("grain", self.saw.turns(part).then(|| "across, from side to side: the sheet is too narrow for it upright".into())),
            ("shows", Some(part.shows().to_owned()).filter(|shows| !shows.is_empty())),
        ];
        lines.into_iter().filter_map(|(what, line)| Some((what, self.bench.said(&line?)))).collect()
    }

    fn poles(&self) -> Outcome {
        self.different_poles().try_fold(String::new(), |text, pole| {
            let list = pole.listed(&self.bench.tape).map_err(|error| Problem::plain(error.to_string()))?;
            let other = if pole.hand().is_some() { MIRRORED } else { "" };
            Ok(format!("{text}\n{list}{other}"))
        })
    }

    /// The poles, of two that are mirror images the left one alone: their marks are the same.
    pub(super) fn different_poles(&self) -> impl Iterator<Item = &StoryPole> {
        self.plan.poles().iter().filter(|pole| pole.hand() != Some(Hand::Right))
    }

    /// Each opening: its number from below, as it will be cut, exactly.
    pub(super) fn openings(&self) -> Result<Vec<[String; 3]>, Problem> {
        let levels = self.plan.levels();
        if levels.shelves.is_empty() {
            return Ok(Vec::new());
        }
        let bench = self.bench.unburned();
        let as_cut = levels.openings_on(&bench.tape).map_err(|error| Problem::plain(error.to_string()))?;
        let rows = levels.openings().zip(as_cut).enumerate();
        Ok(rows.map(|(number, (exact, cut))| [(number + 1).to_string(), bench.amount(cut), bench.exact(exact)]).collect())
    }

    fn opening_table(&self) -> Outcome {
        let rows = self.openings()?;
        if rows.is_empty() {
            return Ok(String::new());
        }
        Ok(format!("\nOpenings, from the lowest\n\n{}", table(["opening", "as cut", "exactly"], ['r', 'l', 'l'], rows)))
    }

    /// Each line: what the tape shows, exactly, and from where to where.
    pub(super) fn nail_lines(&self) -> Result<Vec<[String; 3]>, Problem> {
        let line = |line: &NailLine| {
            let reading = self.bench.tape.read(line.at).map_err(|error| Problem::plain(error.to_string()))?;
            let measured = format!("from {}, into {}", line.from, line.into);
            Ok([self.bench.mark(reading.shown()), self.bench.exact(line.at), measured])
        };
        self.plan.nail_lines().iter().map(line).collect()
    }

    fn fastenings(&self) -> Outcome {
        let rows = self.nail_lines()?;
        let mut text = String::from("\nNails and screws (common practice, no source)\n");
        if !rows.is_empty() {
            let _ = write!(text, "\n{}", table(["nail line at", "exact place", "measured"], ['l', 'l', 'l'], rows));
        }
        for line in self.pockets() {
            let _ = writeln!(text, "  {line}");
        }
        Ok(text)
    }

    /// The pocket settings of what is screwed, by thickness.
    pub(super) fn pockets(&self) -> Vec<String> {
        let case = self.plan.case();
        let frame = case.frame.map(|frame| ("frame, rails and stiles", frame.stock, frame.stock));
        let butted = (case.joint == scantling::Joint::Butt).then_some((
            "bottom and fixed shelves, where pocketed",
            case.bottom,
            case.side,
        ));
        let pocket = |(what, held, into)| match pocket_hole(held, into) {
            Ok(PocketHole { setting, screw, .. }) => {
                format!(
                    "{what}: pocket guide at {}, screws {}; try it on scrap",
                    self.bench.mark(setting),
                    self.bench.mark(screw)
                )
            }
            Err(refusal) => format!("{what}: {}", self.bench.told(&refusal.to_string())),
        };
        frame.into_iter().chain(butted).map(pocket).collect()
    }

    fn sums(&self) -> String {
        let mut text = String::from("\nSums that close, exactly\n");
        for closing in self.closings() {
            let _ = writeln!(text, "  {}", hanging(&closing, 4));
        }
        text
    }

    pub(super) fn closings(&self) -> Vec<String> {
        let closed = |closing: &Closing| {
            let links: Vec<_> =
                closing.links().iter().map(|(name, size)| format!("{name} {}", self.bench.exact(*size))).collect();
            let sum = if closing.is_closed() { "" } else { ", which is not the whole" };
            format!("{} {}: {}{sum}", closing.what(), self.bench.exact(closing.whole()), links.join(" + "))
        };
        self.plan.closings().iter().map(closed).collect()
    }

    fn whole(&self) -> Outcome {
        Ok(self.checks()?.iter().fold(String::from("\nChecks\n"), |text, line| format!("{text}  {line}\n")))
    }

    pub(super) fn checks(&self) -> Result<Vec<String>, Problem> {
        let bench = self.bench.unburned();
        let step = bench.tape.step();
        let (square, tip_up) = (self.plan.square(step).map_err(refused)?, self.plan.tip_up(step).map_err(refused)?);
        let finish = self.plan.finished_area().map_err(refused)?.checked_in_square(Unit::Foot);
        let mut lines = vec![
            format!(
                "Square: both diagonals of the box's front are {} long, to the nearest graduation.",
                bench.mark(square.mark())
            ),
            format!("Ceiling: tipped up from lying on its back it needs {}.", bench.mark_in_feet_too(tip_up.mark())),
        ];
        lines.extend(finish.map(|feet| format!("Finish: {} square feet, both faces of every part.", whole_feet(feet))));
        Ok(lines)
    }

    pub(super) fn sag_lines(&self) -> Vec<String> {
        let Some(sag) = &self.sag else {
            let untold = "how far they sag is not worked out: --material names what they are made of".to_owned();
            return if self.plan.case().shelves.count() > 0 { vec![untold] } else { Vec::new() };
        };
        let bench = self.bench.unburned();
        let (thick, parts) = (self.thick(self.plan.case().shelf), sag.limit.parts());
        let verdict = if sag.is_within() { "within" } else { "MORE than" };
        vec![
            format!("{}, {thick} thick", sag.material.name()),
            format!("under {} pounds on each square foot", mixed(sag.load.pounds_per_square_foot())),
            format!("it sags {} over {}, {verdict} one part in {parts}", bench.amount(sag.depth), bench.mark(sag.span)),
            format!("its greatest span for one part in {parts}: {}, in whole inches", bench.mark_in_feet_too(sag.greatest)),
            format!("its modulus is from {}", sag.material.source()),
        ]
    }
}

/// A heading, lines below it, and what goes for all of them.
fn listed(heading: &str, lines: &[String], below: &str) -> String {
    if lines.is_empty() {
        return String::new();
    }
    let lines = lines.iter().map(|line| format!("  {}\n", hanging(line, 4)));
    format!("\n{heading}\n{}{below}{}", lines.collect::<String>(), if below.is_empty() { "" } else { "\n" })
}

/// More than is needed, rather than less.
fn whole_feet(feet: num_rational::Ratio<i128>) -> String {
    if feet.is_integer() { mixed(feet) } else { format!("about {}", feet.ceil().to_integer()) }
}

fn numbered(heading: &str, lines: impl IntoIterator<Item = String>) -> String {
    let numbered = (1..).zip(lines).map(|(number, line)| format!("{number:>3}  {}\n", hanging(&line, 5)));
    format!("\n{heading}\n{}", numbered.collect::<String>())
}

/// Lines of a width that prints, the later ones set in so far.
fn hanging(text: &str, indent: usize) -> String {
    const MOST: usize = 100;
    let (text, mut column) = (unbroken(text), indent);
    let mut lines = String::new();
    for word in text.split(' ') {
        let wide = word.chars().count();
        if column > indent && column + 1 + wide > MOST {
            lines.push('\n');
            lines.extend(std::iter::repeat_n(' ', indent));
            column = indent;
        } else if column > indent {
            lines.push(' ');
            column += 1;
        }
        lines += word;
        column += wide;
    }
    lines.replace(NO_BREAK, " ")
}

const NO_BREAK: char = '\u{a0}';

/// A whole number never stands at the end of a line and its fraction, or its unit, at the start of the next.
pub(super) fn unbroken(text: &str) -> String {
    let is_rest = |word: &str| word == "mm" || (word.starts_with(|first: char| first.is_ascii_digit()) && word.contains('/'));
    let mut unbroken = String::new();
    for (place, word) in text.split(' ').enumerate() {
        let follows = unbroken.ends_with(|last: char| last.is_ascii_digit()) && is_rest(word);
        if place > 0 {
            unbroken.push(if follows { NO_BREAK } else { ' ' });
        }
        unbroken += word;
    }
    unbroken
}
