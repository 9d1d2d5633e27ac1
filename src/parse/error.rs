//! The error of every reader: what kind, where, what stood there. What each kind says is left to
//! `wording.rs`, the keeping of what stood there to `excerpt.rs`.

use core::fmt;
use core::ops::Range;

use super::excerpt::Excerpt;
use super::hint::Hint;
use super::reading::Reading;
use super::scan::Fault;

/// Why a text was not read, and the bytes of it that are to blame.
///
/// It is small and `Copy`: a kind, a place, the first bytes of what stood there and what they could mean.
/// The one-line `Display` holds what is wrong, what was found and where, what was expected, and what to
/// write instead.
///
/// ```
/// use scantling::{Length, ParseErrorKind};
///
/// let error = "17 9/8".parse::<Length>().unwrap_err();
/// assert_eq!(error.kind(), ParseErrorKind::ImproperFraction);
/// assert_eq!(error.span(), 0..6);
/// assert_eq!(error.found(), "17 9/8");
/// assert_eq!(error.hint().unwrap().to_string(), "write 18 1/8");
/// ```
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct ParseError {
    kind: ParseErrorKind,
    start: u32,
    end: u32,
    excerpt: Excerpt,
    readings: [Option<Reading>; 2],
}

/// The kinds of [`ParseError`].
///
/// ```
/// use scantling::{Length, ParseErrorKind};
///
/// let kind = |text: &str| text.parse::<Length>().unwrap_err().kind();
/// assert_eq!(kind(""), ParseErrorKind::Empty);
/// assert_eq!(kind("1/0"), ParseErrorKind::ZeroDenominator);
/// assert_eq!(kind("5 3"), ParseErrorKind::TwoNumbers);
/// assert_eq!(kind("2x4"), ParseErrorKind::NominalName);
/// assert_eq!(kind("twenty five eighths"), ParseErrorKind::SpokenReadings);
/// assert_eq!(kind("two-six"), ParseErrorKind::CrewCode);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum ParseErrorKind {
    /// Nothing but blanks.
    Empty,
    /// Something wrong 4 GiB or more from the start of the text, a place that could not be reported.
    TextTooLong,
    /// Something else where a number was due.
    NotANumber,
    /// A sign and nothing behind it.
    LoneSign,
    /// `17 9/8`: a fraction part of one or more.
    ImproperFraction,
    /// `341/2`: a whole number and a fraction that lost the blank between them, or a numerator of three digits.
    LostBlank,
    /// `1/0`.
    ZeroDenominator,
    /// `3/`.
    MissingDenominator,
    /// `1/2/3`.
    ChainedFraction,
    /// `17.5 3/8` or `1/2.5`.
    DecimalWithFraction,
    /// `5 3`: two numbers and no unit to tell them apart.
    TwoNumbers,
    /// `5 - 3/8`: a joined number or a subtraction.
    DashReadings,
    /// `2-3`: a range, feet and inches, or a subtraction.
    JoinedNumbers,
    /// `12-04-08`: feet, inches and sixteenths, which are read only when asked for.
    FeetInchesSixteenths,
    /// `17−5/8`: the minus sign never joins.
    MinusJoins,
    /// `1,250`: grouped thousands or a decimal comma.
    CommaReadings,
    /// `12,50` where commas group: not three digits behind one.
    BadGroup,
    /// `1.250` where a comma is the decimal sign: grouped thousands or decimals.
    PointGroup,
    /// `1'000`: grouped thousands or feet and inches.
    ApostropheReadings,
    /// `5 ft.10 in`: an abbreviation's full stop or a decimal point.
    PointReadings,
    /// `1m5` or `1m200`: not two digits glued to the meter.
    MeterDecimals,
    /// `2x4`: the name of a board, not a length.
    NominalName,
    /// `3/4 x 4' x 8'`: a size, not one length.
    SizeNotLength,
    /// `twenty five eighths`: words that make two different lengths, here 25/8 and 20 5/8.
    SpokenReadings,
    /// `two-six`: two numbers side by side, which only a crew knows how to read.
    CrewCode,
    /// `one one one …` and on and on: more words than any length has.
    TooManyWords,
    /// `24 ±1/32`: a length with a tolerance.
    ToleranceNotLength,
    /// `17 5/8 strong`: a length with a qualifier.
    Qualified,
    /// `72 + 3`: arithmetic.
    Arithmetic,
    /// `5" 3"`.
    RepeatedUnit,
    /// `5" 3'`.
    RisingUnit,
    /// `1 m 3 in`: metric and imperial in one length.
    MixedSystems,
    /// `1 m - 20 cm`: a dash between units that it does not join.
    DashBetween,
    /// A word that is no unit.
    UnknownUnit,
    /// `5 1/2' 3"`: a fraction or a decimal before the last number.
    FractionNotLast,
    /// `17` where the unit must be written.
    NoUnit,
    /// `1872 in`: no square unit behind the number of an area.
    AreaUnit,
    /// `144 sq in`: no cubic unit behind the number of a volume.
    VolumeUnit,
    /// `4 in 12`: a number behind a finished length, without a unit of its own.
    LooseTail,
    /// A number too long to be held.
    TooLarge,
    /// A number too finely divided to be held exactly.
    TooFine,
    /// Something else behind a complete length.
    Trailing,
    /// `17 5/8 strong minus`: qualifiers on both sides.
    QualifiersDisagree,
    /// `barely 3/4`: a qualifier that does not say which side of the mark.
    QualifierSide,
    /// One length where a size was due.
    NotASize,
    /// More than three lengths in a size.
    TooManyLengths,
    /// `6' x 8`: a unit on some lengths of a size and not on others.
    SizeUnits,
    /// `24 W x 36 W`.
    AxisTwice,
    /// A word that names no axis in the legend of a size.
    UnknownAxis,
    /// `H x W x D: 24 x 36`: a legend that does not fit the lengths of its size.
    LegendMismatch,
    /// `24 x 36 in (610 x 1914 mm)`: a size restated as another size.
    RestatedOtherwise,
    /// A length without a tolerance where one was due.
    NoTolerance,
    /// `2 ft ±1/8`, `25 +0.1 mm / -0.2`: units of a length and its tolerance that do not fit together.
    ToleranceUnit,
    /// `24 +1/32 +1/64`: two sides of a tolerance behind the same sign.
    ToleranceOneSign,
    /// `8' -5/8" +1/32`: a hyphen that joins the length, or the sign of the side under.
    ToleranceReadings,
    /// A tolerance below zero.
    ToleranceSigns,
    /// A place of a shorthand past its end: inches past 11, sixteenths past 15.
    FieldTooLarge,
    /// Too few digits for packed feet, inches and sixteenths.
    PackedTooShort,
    /// `72 -`, `2 * / 3` or `()`, calculated: no number or bracket where one was due.
    MissingOperand,
    /// `2 (3)`, calculated: two operands without a sign between, which are never multiplied.
    MissingOperator,
    /// `(72 - 3`: a bracket that is never closed.
    UnclosedBracket,
    /// `72 - 3)`: a closing bracket that none opens.
    StrayBracket,
    /// More than 64 brackets open at once.
    TooDeep,
    /// `2 * 72-3/4` or `6' - 2"`, calculated: a hyphen that may join or subtract.
    HyphenReadings,
    /// `12 / 3/4`, calculated: a slash that may be a fraction's or divide.
    SlashReadings,
    /// `4 x 6' 4"`, calculated: an x that may stand in a size or multiply.
    SizeOrProduct,
    /// `72 + 3 mm`: a bare number beside a length that is not in the default unit alone.
    BareNumber,
    /// `8' / 2' + 3"`: a ratio in a sum with a length, or any number in one with an area or a volume.
    NumberInSum,
    /// `6" + 2" * 3"`: a length, an area and a volume cannot be added to one another.
    UnlikeSum,
    /// A product of more than three lengths.
    BeyondVolume,
    /// `72 / 3"`: a quotient that is no number, length or area.
    InverseLength,
    /// `72 / (3 - 3)`.
    DivisionByZero,
    /// An answer, or a step on the way, that is too large or too fine to be held exactly.
    ResultOutOfRange,
    /// `8' / 2'` where a length is due.
    NumberResult,
    /// `8' * 2'` where a length is due.
    AreaResult,
    /// `8' * 2' * 1'` where a length is due.
    VolumeResult,
}

impl ParseError {
    /// What kind of error this is.
    ///
    /// ```
    /// use scantling::{Length, ParseErrorKind};
    ///
    /// let error = "12 furlongs".parse::<Length>().unwrap_err();
    /// assert_eq!(error.kind(), ParseErrorKind::UnknownUnit);
    /// ```
    #[must_use]
    pub const fn kind(&self) -> ParseErrorKind {
        self.kind
    }

    /// The bytes of the text that are to blame. Never cuts a character in two.
    ///
    /// ```
    /// use scantling::Length;
    ///
    /// assert_eq!("12 furlongs".parse::<Length>().unwrap_err().span(), 3..11);
    /// ```
    #[must_use]
    pub const fn span(&self) -> Range<usize> {
        self.start as usize..self.end as usize
    }

    /// What stands in the span: all of it if it is short, its first bytes if not, empty at the end of the text.
    ///
    /// ```
    /// use scantling::Length;
    ///
    /// assert_eq!("12 furlongs".parse::<Length>().unwrap_err().found(), "furlongs");
    /// ```
    #[must_use]
    pub fn found(&self) -> &str {
        self.excerpt.text()
    }

    /// What should have stood there.
    ///
    /// ```
    /// use scantling::Length;
    ///
    /// assert_eq!("12 furlongs".parse::<Length>().unwrap_err().expected(), "in, ft, yd, mm, cm or m");
    /// ```
    #[must_use]
    pub const fn expected(&self) -> &'static str {
        self.kind.wording().expected
    }

    /// What to write instead, where there is something to suggest.
    ///
    /// ```
    /// use scantling::Length;
    ///
    /// let error = "4 10/3".parse::<Length>().unwrap_err();
    /// assert_eq!(error.hint().unwrap().to_string(), "write 7 1/3");
    /// ```
    #[must_use]
    pub fn hint(&self) -> Option<Hint<'_>> {
        Hint::new(self)
    }

    /// The same error in a longer text, of which this one was a piece.
    pub(super) fn moved(self, by: usize) -> Self {
        let place = |place: u32| u32::try_from(by).ok()?.checked_add(place);
        match (place(self.start), place(self.end)) {
            (Some(start), Some(end)) => Self { start, end, ..self },
            _ => Self::OUT_OF_SIGHT,
        }
    }

    /// The same bytes to blame for something else.
    pub(super) const fn of_kind(self, kind: ParseErrorKind) -> Self {
        Self { kind, ..self }
    }

    /// An error about known bytes of a text.
    pub(super) fn at(text: &str, span: Range<usize>, kind: ParseErrorKind) -> Self {
        Self::locate(text, Fault { kind, from: text.len() - span.start, until: text.len() - span.end })
    }

    /// Turns what was left into where it is.
    #[inline(always)]
    pub(super) fn locate(text: &str, fault: Fault) -> Self {
        let (start, end) = (text.len() - fault.from, text.len() - fault.until);
        let whole = || text.get(start..end).map(|found| (start, end, found));
        let (start, end, found) = whole().unwrap_or_else(|| whole_characters(text, start, end));
        match (u32::try_from(start), u32::try_from(end)) {
            (Ok(start), Ok(end)) => Self { kind: fault.kind, start, end, excerpt: Excerpt::new(found), readings: [None; 2] },
            _ => Self::OUT_OF_SIGHT,
        }
    }

    /// At one sign or letter of ASCII, with the bytes that are left from it on.
    #[inline(always)]
    pub(super) fn at_lone(text: &str, kind: ParseErrorKind, byte: u8, left: usize) -> Self {
        match u32::try_from(text.len() - left) {
            Ok(start) if start < u32::MAX => {
                Self { kind, start, end: start + 1, excerpt: Excerpt::lone(byte), readings: [None; 2] }
            }
            _ => Self::OUT_OF_SIGHT,
        }
    }

    /// A place too far from the start of the text to be told.
    const OUT_OF_SIGHT: Self =
        Self { kind: ParseErrorKind::TextTooLong, start: u32::MAX, end: u32::MAX, excerpt: Excerpt::EMPTY, readings: [None; 2] };

    pub(super) const fn with_readings(self, readings: [Option<Reading>; 2]) -> Self {
        Self { readings, ..self }
    }

    /// What the text could mean, where its hint cannot be worked out from the excerpt.
    pub(super) const fn readings(&self) -> [Option<Reading>; 2] {
        self.readings
    }
}

/// The least run of whole characters that has two places in it.
#[cold]
fn whole_characters(text: &str, mut start: usize, mut end: usize) -> (usize, usize, &str) {
    while !text.is_char_boundary(start) {
        start -= 1;
    }
    end = end.max(start);
    while !text.is_char_boundary(end) {
        end += 1;
    }
    (start, end, &text[start..end])
}

impl fmt::Display for ParseError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let wording = self.kind.wording();
        write!(out, "{}: found ", wording.what)?;
        match self.found() {
            "" => out.write_str("nothing")?,
            _ => write!(out, "{}", self.excerpt)?,
        }
        write!(out, " at bytes {}..{}, expected {}", self.start, self.end, wording.expected)?;
        match self.hint() {
            Some(hint) => write!(out, "; {hint}"),
            None => Ok(()),
        }
    }
}

impl fmt::Debug for ParseError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "ParseError({:?}, {}..{}, {:?})", self.kind, self.start, self.end, self.found())
    }
}

impl core::error::Error for ParseError {}

/// What is wrong, in a few words.
///
/// ```
/// assert_eq!(scantling::ParseErrorKind::UnknownUnit.to_string(), "an unknown unit");
/// ```
impl fmt::Display for ParseErrorKind {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.pad(self.wording().what)
    }
}

#[cfg(test)]
mod tests;
