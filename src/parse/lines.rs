//! Many lengths at once, one a line. A line is read as any text is, by `parser.rs`; here it is only cut from the text, and what is
//! wrong with it placed. Threads are left to whoever has them: a text cut behind a line end can be read in pieces.

use alloc::vec::Vec;
use core::ops::Range;

use thiserror::Error;

use super::error::{ParseError, ParseErrorKind};
use super::parser::LengthParser;
use crate::length::Length;

/// A line that was not read: which, and what is wrong with it.
///
/// ```
/// use scantling::LengthParser;
///
/// let text = "17 5/8\n\n17 9/8\n";
/// let error = LengthParser::new().parse_lines(text).find_map(Result::err).unwrap();
/// assert_eq!((error.line(), &text[error.span()]), (3, "17 9/8"));
/// assert!(error.to_string().starts_with("line 3: a fraction part of one or more: found `17 9/8` at bytes 0..6"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Error)]
#[error("line {line}: {error}")]
pub struct LineError {
    line: usize,
    start: usize,
    error: ParseError,
}

impl LineError {
    /// The number of the line, counted from one.
    ///
    /// ```
    /// use scantling::LengthParser;
    ///
    /// let error = LengthParser::new().parse_lines("1/2\n1/0").find_map(Result::err).unwrap();
    /// assert_eq!(error.line(), 2);
    /// ```
    #[must_use]
    pub const fn line(&self) -> usize {
        self.line
    }

    /// What is wrong, with the bytes to blame counted from the start of the line.
    ///
    /// ```
    /// use scantling::LengthParser;
    ///
    /// let error = LengthParser::new().parse_lines("1/2\n12 furlongs").find_map(Result::err).unwrap();
    /// assert_eq!(error.error().span(), 3..11);
    /// ```
    #[must_use]
    pub const fn error(&self) -> ParseError {
        self.error
    }

    /// The bytes to blame, counted from the start of the whole text.
    ///
    /// ```
    /// use scantling::LengthParser;
    ///
    /// let error = LengthParser::new().parse_lines("1/2\n12 furlongs").find_map(Result::err).unwrap();
    /// assert_eq!(error.span(), 7..15);
    /// ```
    #[must_use]
    pub fn span(&self) -> Range<usize> {
        let Range { start, end } = self.error.span();
        self.start + start..self.start + end
    }
}

impl LengthParser {
    /// Reads a text line by line: each line one length, and nothing else. Lines of nothing but blanks are passed over.
    ///
    /// Nothing is stored, so a fold over any number of lines needs no memory. An error does not end it.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, LineError, Unit};
    ///
    /// let total = LengthParser::new().parse_lines("17 5/8\n6'-3\r\n\n365 mm\n").try_fold(Length::ZERO, |sum, line| Ok(sum + line?));
    /// assert_eq!(total, Ok::<_, LineError>(Length::fraction(741, 8, Unit::Inch) + Length::new(365, Unit::Millimeter)));
    /// ```
    #[must_use]
    pub const fn parse_lines<'a>(&self, text: &'a str) -> LineIter<'a> {
        LineIter { parser: *self, text, at: 0, line: 0 }
    }

    /// The same into a list that is kept, behind what it holds: one that is used again costs no new memory.
    ///
    /// ```
    /// use scantling::{Length, LengthParser, Unit};
    ///
    /// let (parser, mut lengths) = (LengthParser::new(), vec![]);
    /// parser.parse_lines_into("17 5/8\n34\n", &mut lengths)?;
    /// assert!(parser.parse_lines_into("1/2\n1/0\n", &mut lengths).is_err());
    /// assert_eq!(lengths, [Length::fraction(141, 8, Unit::Inch), Length::new(34, Unit::Inch)]);
    /// # Ok::<(), scantling::LineError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// A [`LineError`] for the first line that is no length. The list is then as it was.
    pub fn parse_lines_into(&self, text: &str, lengths: &mut Vec<Length>) -> Result<(), LineError> {
        let before = lengths.len();
        for line in self.parse_lines(text) {
            match line {
                Ok(length) => lengths.push(length),
                Err(error) => {
                    lengths.truncate(before);
                    return Err(error);
                }
            }
        }
        Ok(())
    }
}

/// The lengths of a text with one a line, made by [`LengthParser::parse_lines`].
///
/// ```
/// use scantling::LengthParser;
///
/// assert_eq!(LengthParser::new().parse_lines("17 5/8\n34").count(), 2);
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LineIter<'a> {
    parser: LengthParser,
    text: &'a str,
    /// The first byte that is not yet read, and how many lines are before it.
    at: usize,
    line: usize,
}

impl Iterator for LineIter<'_> {
    type Item = Result<Length, LineError>;

    #[inline]
    fn next(&mut self) -> Option<Self::Item> {
        loop {
            let (start, rest) = (self.at, self.text.get(self.at..).filter(|rest| !rest.is_empty())?);
            let length = rest.bytes().position(|byte| byte == b'\n').unwrap_or(rest.len());
            (self.at, self.line) = (self.text.len().min(start + length + 1), self.line + 1);
            let line = &rest[..length];
            match self.parser.parse(line.strip_suffix('\r').unwrap_or(line)) {
                Ok(length) => return Some(Ok(length)),
                Err(error) if error.kind() == ParseErrorKind::Empty => {}
                Err(error) => return Some(Err(LineError { line: self.line, start, error })),
            }
        }
    }
}

impl core::iter::FusedIterator for LineIter<'_> {}
