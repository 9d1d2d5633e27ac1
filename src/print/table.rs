//! The numbers and fractions a shop writes all day, as ready strings. A common length is then two
//! strings to copy, which measured a quarter faster than to fill a buffer with digits and check it.
//! Where they are used is left to `inches.rs`.

use core::fmt::{self, Write};

use super::{Join, Marks};

/// Writes a whole number, from the table where it is under 1000.
#[inline]
pub(super) fn write_number(number: usize, out: &mut impl Write) -> fmt::Result {
    if number >= 1000 {
        return write!(out, "{number}");
    }
    let zeros = usize::from(number < 100) + usize::from(number < 10);
    out.write_str(&NUMBERS[3 * number + zeros..3 * number + 3])
}

/// From `000` to `999`, end to end.
const NUMBERS: &str = match core::str::from_utf8(&DIGITS) {
    Ok(numbers) => numbers,
    Err(_) => panic!("digits are text"),
};

static DIGITS: [u8; 3000] = {
    let mut digits = [b'0'; 3000];
    let mut place = 0;
    while place < digits.len() {
        let number = place / 3;
        let digit = [number / 100, number / 10, number][place % 3] % 10;
        digits[place] = b"0123456789"[digit];
        place += 1;
    }
    digits
};

/// What follows a whole number of feet: its mark, and inches up to eleven.
#[inline]
pub(super) fn inches_behind_feet(marks: Marks) -> &'static [&'static str; 12] {
    match marks {
        Marks::Quotes => &FOOT_QUOTE,
        Marks::Primes => &FOOT_PRIME,
        Marks::Words => &FOOT_WORD,
    }
}

/// The strings of one foot mark.
macro_rules! inches {
    ($mark:literal) => { inches!($mark, 0 1 2 3 4 5 6 7 8 9 10 11) };
    ($mark:literal, $($inches:literal)*) => { [$(concat!($mark, $inches)),*] };
}

static FOOT_QUOTE: [&str; 12] = inches!("'-");
static FOOT_PRIME: [&str; 12] = inches!("′-");
static FOOT_WORD: [&str; 12] = inches!(" ft ");

/// What follows a whole number of inches: the fraction of a count of 64ths, joined, and the inch mark.
#[inline]
pub(super) fn joined_fractions(join: Join, marks: Marks) -> &'static [&'static str; 64] {
    match (join, marks) {
        (Join::Space, Marks::Quotes) => &SPACE_QUOTES,
        (Join::Space, Marks::Primes) => &SPACE_PRIMES,
        (Join::Space, Marks::Words) => &SPACE_WORDS,
        (Join::Hyphen, Marks::Quotes) => &HYPHEN_QUOTES,
        (Join::Hyphen, Marks::Primes) => &HYPHEN_PRIMES,
        (Join::Hyphen, Marks::Words) => &HYPHEN_WORDS,
        (Join::Glyph, Marks::Quotes) => &GLYPH_QUOTES,
        (Join::Glyph, Marks::Primes) => &GLYPH_PRIMES,
        (Join::Glyph, Marks::Words) => &GLYPH_WORDS,
    }
}

/// The strings of one join and one mark, from no 64ths to 63 of them.
macro_rules! sixty_fourths {
    ($join:literal, $mark:literal) => {
        sixty_fourths! { $join, $mark,
            "1/64" "1/32" "3/64" "1/16" "5/64" "3/32" "7/64"
            "1/8" "9/64" "5/32" "11/64" "3/16" "13/64" "7/32" "15/64"
            "1/4" "17/64" "9/32" "19/64" "5/16" "21/64" "11/32" "23/64"
            "3/8" "25/64" "13/32" "27/64" "7/16" "29/64" "15/32" "31/64"
            "1/2" "33/64" "17/32" "35/64" "9/16" "37/64" "19/32" "39/64"
            "5/8" "41/64" "21/32" "43/64" "11/16" "45/64" "23/32" "47/64"
            "3/4" "49/64" "25/32" "51/64" "13/16" "53/64" "27/32" "55/64"
            "7/8" "57/64" "29/32" "59/64" "15/16" "61/64" "31/32" "63/64"
        }
    };
    (glyphs $mark:literal) => {
        sixty_fourths! { "", $mark,
            "¹⁄₆₄" "¹⁄₃₂" "³⁄₆₄" "¹⁄₁₆" "⁵⁄₆₄" "³⁄₃₂" "⁷⁄₆₄"
            "⅛" "⁹⁄₆₄" "⁵⁄₃₂" "¹¹⁄₆₄" "³⁄₁₆" "¹³⁄₆₄" "⁷⁄₃₂" "¹⁵⁄₆₄"
            "¼" "¹⁷⁄₆₄" "⁹⁄₃₂" "¹⁹⁄₆₄" "⁵⁄₁₆" "²¹⁄₆₄" "¹¹⁄₃₂" "²³⁄₆₄"
            "⅜" "²⁵⁄₆₄" "¹³⁄₃₂" "²⁷⁄₆₄" "⁷⁄₁₆" "²⁹⁄₆₄" "¹⁵⁄₃₂" "³¹⁄₆₄"
            "½" "³³⁄₆₄" "¹⁷⁄₃₂" "³⁵⁄₆₄" "⁹⁄₁₆" "³⁷⁄₆₄" "¹⁹⁄₃₂" "³⁹⁄₆₄"
            "⅝" "⁴¹⁄₆₄" "²¹⁄₃₂" "⁴³⁄₆₄" "¹¹⁄₁₆" "⁴⁵⁄₆₄" "²³⁄₃₂" "⁴⁷⁄₆₄"
            "¾" "⁴⁹⁄₆₄" "²⁵⁄₃₂" "⁵¹⁄₆₄" "¹³⁄₁₆" "⁵³⁄₆₄" "²⁷⁄₃₂" "⁵⁵⁄₆₄"
            "⅞" "⁵⁷⁄₆₄" "²⁹⁄₃₂" "⁵⁹⁄₆₄" "¹⁵⁄₁₆" "⁶¹⁄₆₄" "³¹⁄₃₂" "⁶³⁄₆₄"
        }
    };
    ($join:literal, $mark:literal, $($fraction:literal)*) => {
        [$mark, $(concat!($join, $fraction, $mark)),*]
    };
}

static SPACE_QUOTES: [&str; 64] = sixty_fourths!(" ", "\"");
static SPACE_PRIMES: [&str; 64] = sixty_fourths!(" ", "″");
static SPACE_WORDS: [&str; 64] = sixty_fourths!(" ", " in");
static HYPHEN_QUOTES: [&str; 64] = sixty_fourths!("-", "\"");
static HYPHEN_PRIMES: [&str; 64] = sixty_fourths!("-", "″");
static HYPHEN_WORDS: [&str; 64] = sixty_fourths!("-", " in");
static GLYPH_QUOTES: [&str; 64] = sixty_fourths!(glyphs "\"");
static GLYPH_PRIMES: [&str; 64] = sixty_fourths!(glyphs "″");
static GLYPH_WORDS: [&str; 64] = sixty_fourths!(glyphs " in");
