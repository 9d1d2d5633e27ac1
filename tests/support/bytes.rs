//! Choices made by bytes, and texts: how the fuzz targets take what they are given, and `texts/replayed.rs` what was kept from them.

use super::calculation::Tree;
use super::printers::{both_come_back, comes_back, length, one_of, printer, reading_comes_back, several_come_back};
use super::texts::{PIECES, parser, read_by_all};
use scantling::{Tape, Unit};

/// Choices made by bytes, as few as it takes for each. When the bytes are used up, the first of everything is chosen.
pub fn choices(bytes: &[u8]) -> impl FnMut(u64) -> u64 + '_ {
    let mut bytes = bytes.iter();
    move |below| {
        let mut most = below - 1;
        let mut choice = 0;
        while most > 0 {
            let Some(byte) = bytes.next() else { break };
            (choice, most) = (choice << 8 | u64::from(*byte), most >> 8);
        }
        choice % below
    }
}

/// Any bytes, as text or as a run of pieces that shop texts are made of, through every reader. The first byte chooses the options,
/// the second what the others are taken for.
///
/// # Panics
///
/// When something does not hold.
pub fn text(bytes: &[u8]) {
    let [options, kind, bytes @ ..] = bytes else { return };
    let parser = parser((*options).into());
    if kind % 2 == 0 {
        let pieces: String = bytes.iter().map(|piece| PIECES[usize::from(*piece) % PIECES.len()]).collect();
        return read_by_all(parser, &pieces);
    }
    read_by_all(parser, &String::from_utf8_lossy(bytes));
    let valid = bytes.utf8_chunks().map(|chunk| chunk.valid()).max_by_key(|valid| valid.len());
    read_by_all(parser, valid.unwrap_or(""));
}

/// Any lengths, by printers with any settings, written and said, alone and several in one text, and read back.
///
/// # Panics
///
/// When something does not hold.
pub fn values(bytes: &[u8]) {
    let mut choose = choices(bytes);
    let (size, first, second, step) = (length(&mut choose), printer(&mut choose), printer(&mut choose), length(&mut choose));
    comes_back(size, first);
    both_come_back(size, first, second, step);
    reading_comes_back(size, &Tape::sixteenths().offset(step), first, second);
    let sizes = [size, step, length(&mut choose)];
    several_come_back(sizes, second, &mut choose);
}

/// Any calculation, from its text and in big rationals.
///
/// # Panics
///
/// When something does not hold.
pub fn calculation(bytes: &[u8]) {
    let mut choose = choices(bytes);
    let unit = one_of(&mut choose, &Unit::ALL);
    Tree::grow(&mut choose, 6).comes_out_right(unit);
}

/// Each of the inputs kept from fuzzing, which are lines of hexadecimal digits.
///
/// # Panics
///
/// When a line is none, and when something does not hold.
pub fn replay(kept: &str, target: fn(&[u8])) {
    let digit = |digits: &str| u8::from_str_radix(digits, 16).expect("hexadecimal digits");
    for line in kept.lines() {
        let bytes: Vec<u8> = (0..line.len()).step_by(2).map(|place| digit(&line[place..place + 2])).collect();
        target(&bytes);
    }
}
