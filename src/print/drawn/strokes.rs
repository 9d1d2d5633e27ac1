//! What lines are made of in a drawing of characters. Where they stand is left to `characters.rs`.

/// The characters that a tape is drawn with.
///
/// ```
/// use scantling::{Length, Strokes, Tape, TapeDrawing, Unit};
///
/// let tape = Tape::eighths().length(Length::new(1, Unit::Inch));
/// let drawing = TapeDrawing::new(&tape, &tape.read(Length::fraction(5, 8, Unit::Inch))?)?;
/// assert_eq!(
///     format!("\n{}", drawing.strokes(Strokes::Ascii)),
///     r#"
///                   5/8"
///                     v
/// +---+---+---+---+---+---+---+---+
/// |       '       |       '       |
/// |                               |
/// | 0                           1 |
/// +-------------------------------+
/// "#
/// );
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Strokes {
    /// Box-drawing characters, the marked line a heavy one.
    #[default]
    Unicode,
    /// Plain ASCII.
    Ascii,
}

/// One set of characters.
pub(super) struct Pen {
    pub(super) arrow: &'static str,
    /// The edges of the tape, and what they end in where the tape goes on.
    pub(super) edge: char,
    pub(super) onward: char,
    /// A line as it leaves the upper edge, down a whole character, and down half of one.
    pub(super) line: [char; 3],
    pub(super) marked: [char; 3],
    /// An end of the tape, and its corners: upper and lower on the left, then on the right.
    pub(super) side: char,
    pub(super) corners: [[char; 2]; 2],
}

impl Strokes {
    pub(super) const fn pen(self) -> Pen {
        match self {
            Self::Unicode => Pen {
                arrow: "▼",
                edge: '─',
                onward: '╌',
                line: ['┬', '│', '╵'],
                marked: ['┰', '┃', '╹'],
                side: '│',
                corners: [['┌', '└'], ['┐', '┘']],
            },
            Self::Ascii => Pen {
                arrow: "v",
                edge: '-',
                onward: '~',
                line: ['+', '|', '\''],
                marked: ['+', '|', '\''],
                side: '|',
                corners: [['+', '+'], ['+', '+']],
            },
        }
    }
}
