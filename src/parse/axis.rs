//! Which way a length of a size runs: the letters and names that catalogs and drawings put beside it.
//! Sizes themselves are left to `size.rs`.

use super::piece::Piece;

/// Which way a length of a [`Size`](crate::Size) runs.
///
/// ```
/// use scantling::{Axis, Size};
///
/// let size: Size = "28 7/8 H x 15 3/8 W".parse()?;
/// assert_eq!(size.lengths()[1].axis(), Some(Axis::Width));
/// assert_eq!(Axis::Width.letter(), 'W');
/// # Ok::<(), scantling::ParseError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(clippy::exhaustive_enums)] // there are no others
pub enum Axis {
    /// `T`, thick.
    Thickness,
    /// `W`, wide.
    Width,
    /// `L`, long.
    Length,
    /// `H`, high.
    Height,
    /// `D`, deep.
    Depth,
}

impl Axis {
    const NAMES: [(Self, &'static [&'static str]); 5] = [
        (Self::Thickness, &["t", "th", "thk", "thick", "thickness"]),
        (Self::Width, &["w", "wd", "wide", "width"]),
        (Self::Length, &["l", "lg", "long", "length"]),
        (Self::Height, &["h", "ht", "high", "tall", "height"]),
        (Self::Depth, &["d", "dp", "deep", "depth"]),
    ];

    /// The letter that stands beside the number.
    ///
    /// ```
    /// assert_eq!(scantling::Axis::Thickness.letter(), 'T');
    /// ```
    #[must_use]
    pub const fn letter(self) -> char {
        match self {
            Self::Thickness => 'T',
            Self::Width => 'W',
            Self::Length => 'L',
            Self::Height => 'H',
            Self::Depth => 'D',
        }
    }

    /// The axis that a word names.
    pub(super) fn named(word: &str) -> Option<Self> {
        let is = |name: &&str| word.eq_ignore_ascii_case(name);
        Self::NAMES.iter().find(|(_, names)| names.iter().any(is)).map(|(axis, _)| *axis)
    }
}

/// On which side of its length an axis is named.
#[derive(Clone, Copy)]
pub(super) enum Place {
    InFront,
    Behind,
}

/// On which side a piece names its axis, if it does.
pub(super) fn axis_place(piece: Piece<'_>) -> Option<Place> {
    before(piece).map(|_| Place::InFront).or_else(|| behind(piece).map(|_| Place::Behind))
}

/// Takes the axis off a piece: `W 24`, `width: 24`, `W(24)`, `(W) 24`, `24 W`, `24" wide`, `24 (W)`.
pub(super) fn split_axis(piece: Piece<'_>) -> (Piece<'_>, Option<Axis>) {
    before(piece).or_else(|| behind(piece)).map_or((piece, None), |(rest, axis)| (rest, Some(axis)))
}

fn before(piece: Piece<'_>) -> Option<(Piece<'_>, Axis)> {
    let text = piece.text();
    let bracket = usize::from(text.starts_with('('));
    // No name is longer than this, and no longer word is gone through for each of its lengths.
    let letters = text[bracket..].bytes().take("thickness".len() + 1).position(|byte| !byte.is_ascii_alphabetic())?;
    let end = bracket + letters;
    let axis = Axis::named(&text[bracket..end])?;
    if bracket > 0 {
        return text[end..].starts_with(')').then(|| (piece.part(end + 1, text.len()), axis));
    }
    let colon = usize::from(text[end..].starts_with([':', '=']));
    let rest = piece.part(end + colon, text.len());
    let inside = rest.text().strip_prefix('(').and_then(|inside| inside.strip_suffix(')'));
    Some((inside.map_or(rest, |inside| rest.part(1, 1 + inside.len())), axis))
}

fn behind(piece: Piece<'_>) -> Option<(Piece<'_>, Axis)> {
    let text = piece.text();
    let bracketed = text.strip_suffix(')').unwrap_or(text).trim_end_matches('.');
    let start = bracketed.rfind(|letter: char| !letter.is_ascii_alphabetic())?;
    let start = start + text[start..].chars().next().map_or(1, char::len_utf8);
    let axis = Axis::named(&bracketed[start..])?;
    let open = text[..start].trim_end().strip_suffix('(').map_or(start, str::len);
    Some((piece.part(0, if text.ends_with(')') { open } else { start }), axis))
}
