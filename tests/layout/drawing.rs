//! Tapes of every kind, drawn at every reading: whatever the lengths are, the answer is a drawing or an error.
//! What drawings look like is left to the tests in `src/print/drawn/`.

use crate::support::chance::{random, source};
use crate::support::{Any, Shop};
use quickcheck::{Arbitrary, Gen};
use scantling::{DrawingError, Length, Strokes, Tape, TapeDrawing, Unit};

/// A tape and a place on it, sensible or not.
#[derive(Clone, Copy, Debug)]
struct Marked {
    tape: Tape,
    position: Length,
}

impl Arbitrary for Marked {
    fn arbitrary(random: &mut Gen) -> Self {
        let any = |random: &mut Gen| Any::arbitrary(random).0;
        let shop = |random: &mut Gen| Shop::arbitrary(random).0;
        let step = match u8::arbitrary(random) % 4 {
            0 => Length::fraction(1, 1 << (u8::arbitrary(random) % 10), Unit::Inch),
            1 => Length::fraction(1, u64::from(u8::arbitrary(random) % 3) + 1, Unit::Millimeter),
            2 => shop(random).abs(),
            _ => any(random).abs(),
        };
        let tape = Tape::with_step(step).unwrap_or_default();
        let tape = if bool::arbitrary(random) { tape.offset(any(random)) } else { tape.offset(shop(random)) };
        let tape = if bool::arbitrary(random) { tape.length(any(random).abs()) } else { tape };
        Self { tape, position: any(random) }
    }
}

/// Draws in every way there is. The count of what could be drawn tells whether the property tests anything.
fn is_drawn(marked: Marked) -> Option<TapeDrawing> {
    let reading = marked.tape.read(marked.position).ok()?;
    match TapeDrawing::new(&marked.tape, &reading) {
        Ok(drawing) => Some(drawing),
        Err(DrawingError::OutOfRange { shown, step }) => {
            assert_eq!((shown, step), (reading.shown(), marked.tape.step()));
            None
        }
        Err(error) => panic!("{error}: the tape read it"),
    }
}

#[test]
fn any_reading_of_any_tape_is_drawn_or_refused() {
    fn property(marked: Marked) -> bool {
        let Some(drawing) = is_drawn(marked) else { return true };
        let (lines, ascii, words) =
            (drawing.to_string(), drawing.strokes(Strokes::Ascii).to_string(), drawing.words().to_string());
        lines.contains('▼') && ascii.contains('v') && ascii.is_ascii() && words.starts_with("the ")
    }
    random().tests(4000).quickcheck(property as fn(Marked) -> bool);
    let mut random = source();
    let drawn = (0..1000).filter(|_| is_drawn(Marked::arbitrary(&mut random)).is_some()).count();
    assert!(drawn > 300, "{drawn} of 1000");
}

#[test]
fn the_next_line_has_other_words() {
    fn property(marked: Marked) -> bool {
        let at = |position: Option<Length>| is_drawn(Marked { position: position?, ..marked });
        let next = marked.position.checked_add(marked.tape.step());
        match (at(Some(marked.position)), at(next)) {
            (Some(one), Some(other)) => one.words().to_string() != other.words().to_string(),
            _ => true,
        }
    }
    random().tests(2000).quickcheck(property as fn(Marked) -> bool);
}

#[cfg(feature = "svg")]
mod pictures {
    use num_rational::Ratio;

    use super::*;

    #[test]
    fn any_reading_has_a_picture_at_any_scale_or_is_refused() {
        fn property(marked: Marked, num: i128, den: i128, small: (u8, u8)) -> bool {
            let Some(drawing) = is_drawn(marked) else { return true };
            let scales =
                [Ratio::new_raw(num, den), Ratio::new_raw(small.0.into(), small.1.into()), Ratio::new_raw(i128::MIN, i128::MIN)];
            let pictures = scales.into_iter().map(|scale| (scale, drawing.scale(scale).svg()));
            pictures.chain([(Ratio::from_integer(1), drawing.svg())]).all(|(scale, picture)| match picture {
                Ok(document) => document.starts_with("<svg ") && document.ends_with("</svg>\n"),
                Err(DrawingError::NotAScale { scale: refused }) => {
                    refused == scale
                        && (*scale.numer() == 0 || *scale.denom() == 0 || (*scale.numer() < 0) != (*scale.denom() < 0))
                }
                Err(error) => matches!(error, DrawingError::OutOfRange { .. }),
            })
        }
        random().tests(1500).quickcheck(property as fn(Marked, i128, i128, (u8, u8)) -> bool);
    }
}
