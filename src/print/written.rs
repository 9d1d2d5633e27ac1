//! Something that can be written piece by piece, and how it is padded to a width.
//! The pieces are left to `inches.rs` and `decimal.rs`.

use core::fmt::{self, Alignment, Formatter, Write};

/// A text that is written piece by piece, straight to where it goes: no buffer to be sized, no byte to
/// be checked, nothing allocated. Small, and handed on by value.
pub(crate) trait Written: Copy {
    fn write(self, out: &mut impl Write) -> fmt::Result;
}

impl Written for &str {
    fn write(self, out: &mut impl Write) -> fmt::Result {
        out.write_str(self)
    }
}

/// Writes a text with the width, fill and alignment asked for. A precision is passed over: `17 5/8"` cut
/// to four characters would be another length.
#[inline]
pub(crate) fn padded(text: impl Written, out: &mut Formatter<'_>) -> fmt::Result {
    match out.width() {
        None => text.write(out),
        Some(width) => pad_to(width, text, out),
    }
}

#[inline(never)]
fn pad_to(width: usize, text: impl Written, out: &mut Formatter<'_>) -> fmt::Result {
    let room = width.saturating_sub(self::width(text));
    let before = match out.align() {
        None | Some(Alignment::Left) => 0,
        Some(Alignment::Center) => room / 2,
        Some(Alignment::Right) => room,
    };
    let fill = out.fill();
    (0..before).try_for_each(|_| out.write_char(fill))?;
    text.write(out)?;
    (before..room).try_for_each(|_| out.write_char(fill))
}

/// How many characters a text has.
pub(super) fn width(text: impl Written) -> usize {
    let mut count = Count(0);
    // Counting takes everything, so that nothing can fail.
    let _ = text.write(&mut count);
    count.0
}

/// Counts the characters that are written to it.
struct Count(usize);

impl Write for Count {
    fn write_str(&mut self, text: &str) -> fmt::Result {
        self.0 += text.chars().count();
        Ok(())
    }
}
