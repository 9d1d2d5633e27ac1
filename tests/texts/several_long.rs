//! Sizes, tolerances and called lengths of any pieces and any length: no panic, and no text gone through again and
//! again. What they are read as is left to `several.rs`.

use crate::support::texts::of_four;
use scantling::{Called, Size, Toleranced};

#[test]
fn no_pieces_make_it_panic() {
    let pieces = [
        "1", "½", "x", "×", " ", "by", "W", "(", ")", ":", "±", "+", "-", "/", "'", ",", "é", "strong", "by ", "mm", "−", "–",
        "[", "plus",
    ];
    for text in of_four(&pieces) {
        for error in [text.parse::<Size>().err(), text.parse::<Toleranced>().err(), text.parse::<Called>().err()] {
            assert!(error.is_none_or(|error| text.get(error.span()).is_some()), "{text:?}");
        }
    }
}

#[test]
fn long_texts_are_gone_through_once() {
    for piece in [" ", ",", "-", "+", "/ ", "W ", "x ", "1 W, ", "a ", "strong ", "+-", "(", "1 ", ". ", "1 over ", "by "] {
        let text = format!("1{}", piece.repeat(200_000 / piece.len()));
        let (size, toleranced, called) = (text.parse::<Size>(), text.parse::<Toleranced>(), text.parse::<Called>());
        assert!(size.is_err() && toleranced.is_err(), "{piece:?}");
        assert_eq!(called.is_ok(), matches!(piece, " " | "-" | "+" | "strong "), "{piece:?}");
    }
}
