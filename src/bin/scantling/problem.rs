//! What is shown when the input was bad: the text, a caret under the place, what was expected, what to do.

use std::io::Write as _;
use std::ops::Range;
use std::process::ExitCode;

use annotate_snippets::{AnnotationKind, Group, Level, Renderer, Snippet};
use scantling::{Length, LengthParser, NominalError, ParseError, ParseErrorKind, Size, Unit, Warning, Written};

/// The exit status where there is no answer, or not all of it: for bad input, and for what cannot be read or written.
pub const BAD_INPUT: u8 = 2;

/// Something to tell the person, and to exit with.
pub struct Problem {
    title: String,
    place: Option<Box<Place>>,
    hint: Option<String>,
}

/// A text, the line it stands in and the bytes of it that are to blame.
struct Place {
    text: String,
    line: usize,
    span: Range<usize>,
    expected: &'static str,
}

impl Place {
    fn boxed(text: &str, span: Range<usize>, expected: &'static str) -> Box<Self> {
        Box::new(Self { text: text.into(), line: 1, span, expected })
    }
}

impl Problem {
    pub fn plain(title: impl Into<String>) -> Self {
        Self { title: title.into(), place: None, hint: None }
    }

    pub fn hint(mut self, hint: impl Into<String>) -> Self {
        self.hint = Some(hint.into());
        self
    }

    /// In which line of many the text stands.
    pub fn in_line(mut self, number: usize) -> Self {
        self.place.iter_mut().for_each(|place| place.line = number);
        self
    }

    /// With a hint where there is none yet.
    pub fn or_hint(self, hint: impl FnOnce() -> Option<String>) -> Self {
        Self { hint: self.hint.or_else(hint), ..self }
    }

    pub fn title(&self) -> &str {
        &self.title
    }

    /// A text that was not read. `what` names it: an option, or nothing for the main text.
    pub fn unread(what: &str, text: &str, error: ParseError) -> Self {
        let title = if what.is_empty() { error.kind().to_string() } else { format!("{what}: {}", error.kind()) };
        let hint = error.hint().map(|hint| match error.kind() {
            ParseErrorKind::CommaReadings => format!("{hint}, with --comma"),
            ParseErrorKind::FeetInchesSixteenths => format!("{hint}; --shorthand feet-inches-sixteenths asks for it"),
            ParseErrorKind::CrewCode => format!("{hint}; --shorthand feet-inches or inches-sixteenths asks for it"),
            ParseErrorKind::NominalName => format!("{hint}; scantling lumber says what they are"),
            ParseErrorKind::Arithmetic | ParseErrorKind::DashReadings => format!("{hint}, with scantling calc"),
            _ => hint.to_string(),
        });
        let is_area = error.kind() == ParseErrorKind::UnknownUnit && ["sq", "sqft", "sf", "square"].contains(&error.found());
        let hint = hint.or_else(|| is_area.then(|| "an area is a length times a length, as in 2' * 16'".to_owned()));
        Self { title, place: Some(Place::boxed(text, error.span(), error.expected())), hint }
    }

    /// A name of stock that was not read.
    pub fn unnamed(text: &str, error: &NominalError) -> Self {
        let place = Some(Place::boxed(text, error.span(), error.expected()));
        Self { title: error.kind().to_string(), place, hint: error.hint().map(str::to_owned) }
    }

    /// Shows it on standard error, in color only to a terminal.
    pub fn report(&self) -> ExitCode {
        warn(self);
        ExitCode::from(BAD_INPUT)
    }
}

impl std::fmt::Display for Problem {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let mut group = Group::with_title(Level::ERROR.primary_title(&self.title));
        if let Some(Place { text, line, span, expected }) = self.place.as_deref() {
            let label = format!("expected {expected}");
            let mark = AnnotationKind::Primary.span(span.clone()).label(label);
            group = group.element(Snippet::source(text).line_start(*line).annotation(mark));
        }
        if let Some(hint) = &self.hint {
            group = group.element(Level::HELP.message(hint));
        }
        out.write_str(&Renderer::styled().render(&[group]))
    }
}

/// Says it on standard error. Where that cannot be written, which `eprintln` would panic at, the exit status alone tells.
pub fn warn(text: impl std::fmt::Display) {
    let _ = writeln!(anstream::stderr().lock(), "{text}");
}

/// Reads one text, or says what is wrong with it; on standard error, that it should be looked at again.
pub fn read(parser: LengthParser, what: &str, argument: &str) -> Result<Length, Problem> {
    let (length, written) = read_written(parser, what, argument)?;
    look_again(what, argument, written.warning());
    Ok(length)
}

/// Reads a size, as `read` reads a length. One that is the name of a board may be a size all the same, in a unit that is not said.
pub fn read_size(parser: LengthParser, what: &str, text: &str) -> Result<Size, Problem> {
    let with = |unit: &str| text.split(['x', 'X']).map(|side| side.trim().to_owned() + unit).collect::<Vec<_>>().join(" x ");
    let (size, written) = parser.parse_size_written(text).map_err(|error| match error.kind() {
        ParseErrorKind::NominalName if text.contains('/') => {
            Problem::unread(what, text, error).hint(format!("write {}, if that is meant", with("in")))
        }
        ParseErrorKind::NominalName => {
            Problem::unread(what, text, error).hint(format!("write {} or {}, whichever is meant", with("in"), with("ft")))
        }
        _ => Problem::unread(what, text, error),
    })?;
    look_again(what, text, written.iter().find_map(Written::warning));
    Ok(size)
}

/// Says on standard error that a text should be looked at again, if it should.
fn look_again(what: &str, text: &str, warning: Option<Warning>) {
    if let Some(warning) = warning {
        warn(format_args!("look again at {}: {warning}", [what, text].join(" ").trim_start()));
    }
}

/// Reads a kerf: one that no saw of a shop cuts is to be looked at again.
pub fn read_kerf(parser: LengthParser, argument: &str) -> Result<Length, Problem> {
    let kerf = read(parser, "--kerf", argument)?;
    if kerf > Length::fraction(1, 2, Unit::Inch) {
        warn(format_args!("look again at --kerf {argument}: a saw cuts about 1/8\" wide"));
    }
    Ok(kerf)
}

/// The same as `read`, with how it was written.
pub fn read_written(parser: LengthParser, what: &str, argument: &str) -> Result<(Length, Written), Problem> {
    let text = crate::arguments::typed(argument);
    parser.parse_written(text).map_err(|error| Problem::unread(what, text, error))
}
