//! Cuts a length with a tolerance into its pieces: the length, what it may be over, what it may be under. The signs
//! come as marks or as words, the sides in brackets or not. What the pieces amount to is left to `toleranced.rs`.

use super::error::{ParseError, ParseErrorKind as Kind};
use super::parser::LengthParser;
use super::piece::Piece;
use super::scan::Bytes;
use super::shorthand::DASHES;
use crate::length::Unit;

/// The pieces of a length with a tolerance, their signs taken off.
pub(super) struct Parts<'a> {
    pub(super) nominal: Piece<'a>,
    pub(super) sides: Sides<'a>,
    /// The last piece of the text, whose unit may serve the others.
    pub(super) last: Piece<'a>,
    /// The unit behind a bracket, for all.
    pub(super) unit: Option<Unit>,
}

pub(super) enum Sides<'a> {
    Both(Piece<'a>),
    /// Over and under, either of which may be left out.
    Each(Option<Piece<'a>>, Option<Piece<'a>>),
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Sign {
    Over,
    Under,
    Both,
}

/// A sign, and the bytes that it takes.
#[derive(Clone, Copy)]
struct Mark {
    sign: Sign,
    from: usize,
    to: usize,
}

impl<'a> Parts<'a> {
    pub(super) fn of(text: Piece<'a>, parser: LengthParser) -> Result<Self, ParseError> {
        let cut = Cut::of(text);
        let marks = Marks::of(cut.whole.text());
        let (nominal, sides, last) = match (marks.both, marks.last_two) {
            (Some(both), _) => {
                let amount = cut.behind(both);
                (cut.before(both), Sides::Both(amount), amount)
            }
            (None, [None, Some(over)]) if over.sign == Sign::Over => {
                let amount = cut.behind(over);
                (cut.before(over), Sides::Each(Some(amount), None), amount)
            }
            (None, [Some(first), Some(second)]) => cut.each(first, second, text, parser)?,
            _ => return Err(text.refuse(Kind::NoTolerance)),
        };
        Ok(Self { nominal, sides, last, unit: cut.unit })
    }
}

/// The length and the two amounts of a text with two signs: `24 +1/32 +1/64`, or without the length.
pub(super) fn two_sides(text: &str) -> Option<[&str; 3]> {
    // A sign that begins a text belongs to its length, unless there is none.
    let first = sign_at(text).filter(|_| Marks::of(text).last_two[0].is_none());
    let [earlier, second] = Marks::of(text).last_two;
    let first = first.map(|(sign, to)| Mark { sign, from: 0, to }).or(earlier)?;
    let second = second?;
    let trim = |text: &'_ str| text.trim_matches(is_between).len();
    let piece = |from: usize, to: usize| {
        let part = &text[from..to];
        let start = part.len() - part.trim_start_matches(is_between).len();
        &text[from + start..from + start + trim(part)]
    };
    Some([piece(0, first.from), piece(first.to, second.from), piece(second.to, text.len())])
}

/// What may stand between the pieces, beside blanks and words.
fn is_between(letter: char) -> bool {
    letter.is_whitespace() || matches!(letter, '/' | ',' | ';')
}

/// `24 +1/32 and -1/64`
fn without_and(piece: Piece<'_>) -> Piece<'_> {
    let text = piece.text();
    let front = text.len().saturating_sub("and".len());
    let is_and = text.get(front..).is_some_and(|word| word.eq_ignore_ascii_case("and")) && text[..front].ends_with(' ');
    if is_and { piece.part(0, front) } else { piece }
}

/// A text without the bracket that closes its sides, or without the two round all of it.
struct Cut<'a> {
    whole: Piece<'a>,
    /// Whether the bracket that opens the sides is still in it.
    opened: bool,
    /// The unit behind the bracket.
    unit: Option<Unit>,
}

impl<'a> Cut<'a> {
    /// Of `24 (+1/32, -0)` or `(25 ± 0.2) mm`. A text whose brackets hold something else is left as it is, to be refused
    /// as that.
    fn of(whole: Piece<'a>) -> Self {
        let text = whole.text();
        let pairs = [('(', ')'), ('[', ']')].into_iter();
        let brackets =
            pairs.filter_map(|(open, close)| text.find(open).zip(text.rfind(close))).find(|(open, close)| open < close);
        let uncut = Self { whole, opened: false, unit: None };
        let Some((open, close)) = brackets else { return uncut };
        let (inside, tail) = (whole.part(open + 1, close), whole.part(close + 1, text.len()));
        let unit = tail.unit();
        let one = !inside.text().contains(['(', '[', ')', ']']) && (unit.is_some() || tail.text().is_empty());
        match open {
            0 if one => Self { whole: inside, opened: false, unit },
            _ if one && sign_at(inside.text()).is_some() => Self { whole: whole.part(0, close), opened: true, unit },
            _ => uncut,
        }
    }

    fn piece(&self, from: usize, to: usize) -> Piece<'a> {
        self.whole.trimmed_of(from, to, |text| text.trim_end_matches(is_between))
    }

    /// The length before its first sign.
    fn before(&self, first: Mark) -> Piece<'a> {
        let piece = self.piece(0, first.from);
        let bracket = usize::from(self.opened && piece.text().ends_with(['(', '[']));
        self.piece(0, piece.text().len() - bracket)
    }

    fn behind(&self, last: Mark) -> Piece<'a> {
        self.piece(last.to, self.whole.text().len())
    }

    /// The pieces of a text with two signs.
    fn each(
        &self,
        first: Mark,
        second: Mark,
        text: Piece<'a>,
        parser: LengthParser,
    ) -> Result<(Piece<'a>, Sides<'a>, Piece<'a>), ParseError> {
        let (nominal, last) = (self.before(first), self.behind(second));
        let one = without_and(self.piece(first.to, second.from));
        let sides = match (first.sign, second.sign) {
            (Sign::Over, Sign::Under) => Sides::Each(Some(one), Some(last)),
            (Sign::Under, Sign::Over) => Sides::Each(Some(last), Some(one)),
            _ => return Err(self.piece(first.from, self.whole.text().len()).refuse(Kind::ToleranceOneSign)),
        };
        // `8' -5/8" +1/32`: the hyphen may as well join the length. A comma or a slash says that two sides follow.
        let joined = self.whole.part(0, second.from).read(parser);
        if first.sign == Sign::Under && joined.is_ok() && joined != nominal.read(parser) {
            return Err(text.refuse(Kind::ToleranceReadings));
        }
        Ok((nominal, sides, last))
    }
}

/// The signs of a text that may be those of a tolerance.
#[derive(Default)]
struct Marks {
    /// The first that stands for both sides.
    both: Option<Mark>,
    /// The last two of the others.
    last_two: [Option<Mark>; 2],
    /// Whether a fraction or a decimal stands behind the last of them.
    has_part: bool,
}

impl Marks {
    fn of(text: &str) -> Self {
        let mut marks = Self::default();
        // The sign of the length itself.
        let mut at = sign_at(text).map_or(0, |(_, to)| to);
        while let Some(letter) = text[at..].chars().next() {
            let found = sign_at(&text[at..]).filter(|(sign, _)| marks.stands_alone(text, at, *sign));
            let Some((sign, length)) = found else {
                marks.has_part |= matches!(letter, '/' | '.');
                at += letter.len_utf8();
                continue;
            };
            let mark = Mark { sign, from: at, to: at + length };
            at = mark.to;
            match sign {
                Sign::Both => marks.both = marks.both.or(Some(mark)),
                _ => marks.last_two = [marks.last_two[1], Some(mark)],
            }
            marks.has_part = false;
        }
        marks
    }

    /// Whether a sign is one, and no hyphen inside a number: `17-5/8 ±1/64`, but `+1/32-1/64`, where nothing could be
    /// joined.
    fn stands_alone(&self, text: &str, at: usize, sign: Sign) -> bool {
        let before = &text[..at];
        let is_word = text[at..].starts_with(|letter: char| letter.is_ascii_alphabetic());
        let ends_word = before.ends_with(|letter: char| letter.is_alphanumeric());
        match self.last_two[1] {
            _ if is_word => !ends_word,
            _ if sign != Sign::Under => true,
            Some(_) if self.has_part => true,
            _ => before.ends_with(is_between) || before.ends_with(['(', '[']),
        }
    }
}

/// The bytes of the sign for both sides that a text begins with, if it begins with one or with the bracket before it.
pub(super) fn both_sign(text: Bytes<'_>) -> Option<usize> {
    // No sign is longer; the rest of a long text is not gone through for each of its lengths.
    let near = text.get(..32).unwrap_or(text);
    let valid = core::str::from_utf8(near).map_or_else(|error| error.valid_up_to(), str::len);
    let text = core::str::from_utf8(&near[..valid]).ok()?;
    let inside = text.strip_prefix(['(', '[']).unwrap_or(text);
    let is_sign = inside.starts_with(['+', '±', '∓', 'p', 'P']);
    let (sign, to) = sign_at(inside).filter(|_| is_sign)?;
    (sign == Sign::Both || (sign == Sign::Over && inside.len() < text.len())).then_some(text.len() - inside.len() + to)
}

/// The sign that a text begins with: `+`, `minus`, `±`, or two in one as in `+/-` and `plus or minus`.
fn sign_at(text: &str) -> Option<(Sign, usize)> {
    let (first, length) = simple_sign(text)?;
    let behind = &text[length..];
    let is_word = text.starts_with(|letter: char| letter.is_ascii_alphabetic());
    let trimmed = behind.trim_start();
    let or = trimmed.get(..2).filter(|word| word.eq_ignore_ascii_case("or")).map(|_| &trimmed[2..]);
    let joined = or.or_else(|| trimmed.strip_prefix('/')).map(str::trim_start);
    let worded = || if is_word { trimmed.strip_prefix('-').unwrap_or(trimmed) } else { behind };
    let second = joined.unwrap_or_else(worded);
    match simple_sign(second) {
        Some((other, to)) if other != first && first != Sign::Both && other != Sign::Both => {
            Some((Sign::Both, text.len() - second.len() + to))
        }
        _ => Some((first, length)),
    }
}

fn simple_sign(text: &str) -> Option<(Sign, usize)> {
    const WORDS: [(&str, Sign); 4] =
        [("plus", Sign::Over), ("minus", Sign::Under), ("give or take", Sign::Both), ("within", Sign::Both)];
    let first = text.chars().next()?;
    let sign = match first {
        '+' => Sign::Over,
        '±' | '∓' => Sign::Both,
        '\u{2212}' => Sign::Under,
        _ if DASHES.contains(&first) => Sign::Under,
        _ => {
            let is = |word: &str| text.get(..word.len()).is_some_and(|found| found.eq_ignore_ascii_case(word));
            let ends = |word: &str| !text[word.len()..].starts_with(|letter: char| letter.is_alphanumeric());
            return WORDS.into_iter().find(|(word, _)| is(word) && ends(word)).map(|(word, sign)| (sign, word.len()));
        }
    };
    Some((sign, first.len_utf8()))
}
