//! The texts of a picture: no two of them meet, nor do they meet an arrow, a line or an end of the tape.

use std::vec::Vec;

use num_rational::Ratio;

use super::{Seen, Written, svg};
use crate::length::{Length, Unit};
use crate::print::TapeDrawing;
use crate::print::drawn::tests::{drawn, inches, kinds, millimeters};
use crate::tape::Tape;

fn meet(one: [i128; 4], other: [i128; 4]) -> bool {
    one[0] < other[2] && other[0] < one[2] && one[1] < other[3] && other[1] < one[3]
}

/// Every text against every other, the arrow, the lines and the frame.
#[track_caller]
fn are_apart(seen: &Seen) {
    let bounds: Vec<_> = seen.texts.iter().map(|text| (text.bounds(), &text.text)).collect();
    let (tip, height) = (seen.arrow[0], -seen.arrow[3]);
    let half = (seen.arrow[4] - seen.arrow[2]) / 2;
    for (place, (one, text)) in bounds.iter().enumerate() {
        for (other, beside) in &bounds[place + 1..] {
            assert!(!meet(*one, *other), "{text} and {beside}");
        }
        // The arrow in slices, each as wide as at its top.
        for slice in 0..10 {
            let (top, bottom) = (-height * (slice + 1) / 10, -height * slice / 10);
            let wide = half * (slice + 1) / 10;
            assert!(!meet(*one, [tip - wide, top, tip + wide, bottom]), "{text} and the arrow");
        }
        assert!(seen.lines.iter().all(|[x, length, _]| !meet(*one, [*x, 0, x + 1, *length])), "{text} and a line");
        let [left, top, width, height] = seen.frame[..] else { panic!("a frame has four sides") };
        let [near, far, bottom] = seen.blade;
        let on_blade = near < one[0] && one[2] < far && one[3] < bottom;
        assert!(on_blade || one[3] <= 0 || one[1] >= bottom, "{text} lies over an end of the tape");
        let inside = left < one[0] && top < one[1] && one[2] < left + width && one[3] < top + height;
        assert!(inside, "{text} leaves the picture");
    }
}

/// Each flag round its own text, and clear of the others.
#[track_caller]
fn have_their_ground(seen: &Seen) {
    let flagged: Vec<_> = seen.texts.iter().filter(|text| [" ft", " m"].iter().any(|unit| text.text.ends_with(unit))).collect();
    assert_eq!(flagged.len(), seen.flags.len());
    for (flag, own) in seen.flags.iter().zip(flagged) {
        let text = own.bounds();
        assert!(flag[0] <= text[0] && flag[1] <= text[1] && text[2] <= flag[2] && text[3] <= flag[3], "{own:?} in {flag:?}");
        let others = seen.texts.iter().filter(|other| other.text != own.text);
        assert!(others.map(Written::bounds).all(|other| !meet(*flag, other)), "{flag:?} in {:?}", seen.texts);
        let [near, far, bottom] = seen.blade;
        assert!(near < flag[0] && flag[2] < far && flag[3] < bottom, "{flag:?} lies over an end of the tape");
        assert!(seen.flags.iter().filter(|other| *other != flag).all(|other| !meet(*flag, *other)), "{:?}", seen.flags);
    }
}

#[test]
fn texts_never_meet_in_pictures() {
    let mut pictures = 0;
    for (tape, per_number, _) in kinds() {
        let shorter = tape.length(tape.step() * (per_number * 40) + tape.step() / 3);
        for (tape, scale) in [(tape, None), (tape.offset(tape.step() * 3), Some(1)), (shorter, None), (shorter, Some(3))] {
            for line in [-1, 0, 1, 8, 37, 40 * per_number, 40 * per_number - 3, 360 * per_number, 123_456] {
                let Ok(reading) = tape.read(tape.step() * line + tape.step() / 5) else { continue };
                let drawing = TapeDrawing::new(&tape, &reading).unwrap();
                let scale = scale.map(|scale| Ratio::new(scale, 2));
                let seen = svg(&scale.map_or(drawing, |scale| drawing.scale(scale)));
                are_apart(&seen);
                have_their_ground(&seen);
                pictures += 1;
            }
        }
    }
    assert!(pictures > 600, "{pictures}");
}

#[test]
fn texts_never_meet_at_half_an_inch_and_at_thirty_feet() {
    for (tape, ..) in kinds() {
        for position in [inches(1, 2), Length::new(30, Unit::Foot), millimeters(25, 2), millimeters(9144, 1)] {
            let seen = svg(&drawn(tape, position));
            are_apart(&seen);
            have_their_ground(&seen);
        }
    }
    let seen = svg(&drawn(Tape::sixteenths(), Length::new(30, Unit::Foot)));
    let texts: Vec<_> = seen.texts.iter().map(|text| text.text.as_str()).collect();
    assert_eq!(texts, ["360\"", "358", "359", "360", "361", "362", "30 ft", "the longest line, at 360 (30 ft)"]);
    assert_eq!(seen.words, ["360\"", "the longest line, at 360 (30 ft)"]);
}

#[test]
fn every_line_between_two_numbers_can_be_drawn_without_texts_that_meet() {
    for tape in [Tape::sixteenths(), Tape::thirty_seconds(), Tape::sixty_fourths(), Tape::millimeters(), Tape::half_millimeters()]
    {
        for line in 0..=64 {
            are_apart(&svg(&drawn(tape, Length::new(30, Unit::Foot) + tape.step() * line)));
        }
    }
}
