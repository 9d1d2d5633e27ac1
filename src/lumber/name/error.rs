//! Why a text is no name of stock: what is wrong, which bytes are to blame, what was expected, what to write instead.

use alloc::boxed::Box;
use alloc::string::{String, ToString};
use core::fmt;
use core::ops::Range;

use crate::parse::{ParseError, ParseErrorKind};

/// Why a name was not read, and the bytes of it that are to blame.
///
/// ```
/// use scantling::{Nominal, NominalErrorKind};
///
/// let error = "5/4".parse::<Nominal>().unwrap_err();
/// assert_eq!(error.kind(), NominalErrorKind::TwoReadings);
/// assert_eq!(error.span(), 0..3);
/// assert_eq!(error.hint(), Some("write 5/4 decking or 5/4 hardwood"));
/// ```
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct NominalError {
    kind: NominalErrorKind,
    span: Range<usize>,
    found: Box<str>,
    hint: Option<Box<str>>,
}

/// The kinds of [`NominalError`].
///
/// ```
/// use scantling::{Nominal, NominalErrorKind};
///
/// let kind = |text: &str| text.parse::<Nominal>().unwrap_err().kind();
/// assert_eq!(kind(""), NominalErrorKind::Empty);
/// assert_eq!(kind("2x4 balsa"), NominalErrorKind::UnknownWord);
/// assert_eq!(kind("4x2"), NominalErrorKind::ThicknessFirst);
/// assert_eq!(kind("2x4x96"), NominalErrorKind::LengthUnit);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum NominalErrorKind {
    /// Nothing but blanks.
    Empty,
    /// Words, and no number among them.
    NoSize,
    /// A number that cannot be read.
    Number(ParseErrorKind),
    /// A size of zero or less.
    NotAboveZero,
    /// A word or a sign that says nothing about stock.
    UnknownWord,
    /// An x with nothing before or behind it.
    LooseTimes,
    /// `5/4`, `3/4x4x8`: a name with two readings.
    TwoReadings,
    /// `3/4x6`: a measured size or a name.
    MeasuredSize,
    /// `4x2`: the width before the thickness.
    ThicknessFirst,
    /// `2x4x96`: a bare number that is hardly feet.
    LengthUnit,
    /// `2`: a thickness and nothing else.
    NoWidth,
    /// More numbers than a name has.
    TooManyNumbers,
    /// Numbers that do not make a panel: two that are thin, or one size of a sheet alone.
    NotAPanel,
    /// `2x4 walnut pine`, `3/4 ply rough`: words that do not go together.
    Disagree,
}

impl NominalErrorKind {
    const fn what(self) -> &'static str {
        match self {
            Self::Empty => "no name",
            Self::NoSize => "a name without a size",
            Self::Number(_) => "a number that cannot be read",
            Self::NotAboveZero => "a size that is not above zero",
            Self::UnknownWord => "an unknown word",
            Self::LooseTimes => "an x without two sizes round it",
            Self::TwoReadings => "a name with two readings",
            Self::MeasuredSize => "a measured size, or a name that looks like one",
            Self::ThicknessFirst => "the width before the thickness",
            Self::LengthUnit => "a length without its unit",
            Self::NoWidth => "a thickness without a width",
            Self::TooManyNumbers => "too many numbers",
            Self::NotAPanel => "no size of a panel",
            Self::Disagree => "words that do not go together",
        }
    }

    const fn expected(self) -> &'static str {
        match self {
            Self::Empty | Self::NoSize => "a name such as 2x4x8, 5/4x6, 8/4 hardwood or 3/4 ply",
            Self::Number(_) => "a number such as 2, 5/4 or 92-5/8\"",
            Self::NotAboveZero => "a size above zero",
            Self::UnknownWord => "sizes, and words such as board, decking, hardwood, ply, sheet, green, rough or S2S",
            Self::LooseTimes => "a size before the x and one behind it",
            Self::TwoReadings => "a name with one reading",
            Self::MeasuredSize => "a name in whole inches or quarters, such as 1x6 or 5/4x6",
            Self::ThicknessFirst => "the thickness, then the width",
            Self::LengthUnit => "whole feet to 40, or a unit behind the number",
            Self::NoWidth => "a thickness and a width, joined by x",
            Self::TooManyNumbers => "at most a thickness, a width and a length",
            Self::NotAPanel => "a thickness under 2 in, the two sides of the sheet, or all three",
            Self::Disagree => "words that say one thing",
        }
    }
}

impl NominalError {
    /// An error about known bytes of a text.
    pub(super) fn at(text: &str, span: Range<usize>, kind: NominalErrorKind) -> Self {
        const ROOM: usize = 24;
        let blamed = text.get(span.clone()).unwrap_or_default();
        let mut found: String = blamed.chars().take(ROOM).collect();
        if found.len() < blamed.len() {
            found.push('…');
        }
        Self { kind, span, found: found.into(), hint: None }
    }

    /// The same with a hint, if that comes out as one line of a length that is read.
    pub(super) fn hinting(self, hint: impl Into<Box<str>>) -> Self {
        const LONGEST: usize = 200;
        let hint = hint.into();
        let fits = hint.len() <= LONGEST && !hint.contains(char::is_control);
        Self { hint: fits.then_some(hint), ..self }
    }

    /// What is wrong with a number that starts at a place of the text.
    pub(super) fn number(text: &str, start: usize, error: &ParseError) -> Self {
        let (inner, kind) = (error.span(), NominalErrorKind::Number(error.kind()));
        let refused = Self::at(text, start + inner.start..start + inner.end, kind);
        match (error.kind(), error.hint()) {
            // What is said there of feet and inches, or of a crew's shorthand, is no way to write a name.
            (kind, _) if is_of_two_sizes(kind) => refused.hinting("join sizes by x, and mark the length, as in 2x4 - 8'"),
            (_, Some(hint)) => refused.hinting(hint.to_string()),
            (_, None) => refused,
        }
    }

    /// What kind of error this is.
    ///
    /// ```
    /// use scantling::{Nominal, NominalErrorKind};
    ///
    /// assert_eq!("2x".parse::<Nominal>().unwrap_err().kind(), NominalErrorKind::LooseTimes);
    /// ```
    #[must_use]
    pub const fn kind(&self) -> NominalErrorKind {
        self.kind
    }

    /// The bytes of the text that are to blame. Never cuts a character in two.
    ///
    /// ```
    /// use scantling::Nominal;
    ///
    /// assert_eq!("2x4 balsa".parse::<Nominal>().unwrap_err().span(), 4..9);
    /// ```
    #[must_use]
    pub fn span(&self) -> Range<usize> {
        self.span.clone()
    }

    /// What stands in the span: all of it if it is short, its beginning and an ellipsis if not.
    ///
    /// ```
    /// use scantling::Nominal;
    ///
    /// assert_eq!("2x4 balsa".parse::<Nominal>().unwrap_err().found(), "balsa");
    /// ```
    #[must_use]
    pub fn found(&self) -> &str {
        &self.found
    }

    /// What should have stood there.
    ///
    /// ```
    /// use scantling::Nominal;
    ///
    /// assert_eq!("4x2".parse::<Nominal>().unwrap_err().expected(), "the thickness, then the width");
    /// ```
    #[must_use]
    pub const fn expected(&self) -> &'static str {
        match self.kind {
            NominalErrorKind::Number(kind) if is_of_two_sizes(kind) => "one size, or a size and a length",
            kind => kind.expected(),
        }
    }

    /// What to write instead, where there is something to suggest.
    ///
    /// ```
    /// use scantling::Nominal;
    ///
    /// assert_eq!("4x2".parse::<Nominal>().unwrap_err().hint(), Some("write 2x4"));
    /// ```
    #[must_use]
    pub fn hint(&self) -> Option<&str> {
        self.hint.as_deref()
    }
}

/// Numbers side by side are the end of a name more often than parts of one length.
const fn is_of_two_sizes(kind: ParseErrorKind) -> bool {
    use ParseErrorKind::{CrewCode, FeetInchesSixteenths, JoinedNumbers, TwoNumbers};
    matches!(kind, TwoNumbers | JoinedNumbers | FeetInchesSixteenths | CrewCode)
}

impl fmt::Display for NominalErrorKind {
    /// What is wrong, in a few words.
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Number(kind) => fmt::Display::fmt(kind, out),
            _ => out.pad(self.what()),
        }
    }
}

impl fmt::Display for NominalError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}: found ", self.kind)?;
        match &*self.found {
            "" => out.write_str("nothing")?,
            found => write_found(found, out)?,
        }
        write!(out, " at bytes {}..{}, expected {}", self.span.start, self.span.end, self.expected())?;
        self.hint().map_or(Ok(()), |hint| write!(out, "; {hint}"))
    }
}

/// In quotation marks that no shop uses for inches, with unprintable characters spelled out.
fn write_found(found: &str, out: &mut fmt::Formatter<'_>) -> fmt::Result {
    out.write_str("`")?;
    found.chars().try_for_each(|letter| match letter {
        '"' | '\'' | '\\' => write!(out, "{letter}"),
        _ => write!(out, "{}", letter.escape_debug()),
    })?;
    out.write_str("`")
}

impl core::error::Error for NominalError {}
