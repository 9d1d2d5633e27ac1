//! Any bytes, as text or as a run of pieces that shop texts are made of, through every reader. The first byte chooses
//! the options, the second what the others are taken for.
#![no_main]

use libfuzzer_sys::fuzz_target;
use scantling_fuzz::texts::{PIECES, parser, read_by_all};

fuzz_target!(|bytes: &[u8]| {
    let [options, kind, bytes @ ..] = bytes else { return };
    let parser = parser((*options).into());
    if kind % 2 == 0 {
        let pieces: String = bytes.iter().map(|piece| PIECES[usize::from(*piece) % PIECES.len()]).collect();
        return read_by_all(parser, &pieces);
    }
    read_by_all(parser, &String::from_utf8_lossy(bytes));
    let valid = bytes.utf8_chunks().map(|chunk| chunk.valid()).max_by_key(|valid| valid.len());
    read_by_all(parser, valid.unwrap_or(""));
});
