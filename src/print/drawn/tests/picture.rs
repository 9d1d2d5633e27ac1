//! Pictures read back: whether lines have their lengths and places, whether the tape is in true size, and
//! whether any two texts meet. Sizes on paper are compared in thousandths of an inch.

use std::string::{String, ToString};
use std::vec::Vec;
use std::{format, vec};

use num_rational::Ratio;
use quickcheck::quickcheck;
use svg::node::element::tag::Type;
use svg::parser::Event;

use super::{drawn, every, inches, kinds, millimeters};
use crate::length::{Length, Unit};
use crate::print::TapeDrawing;
use crate::tape::Tape;

type Exact = Ratio<i128>;

/// What was found in a document.
#[derive(Default)]
struct Seen {
    /// The width of the picture, in its own unit of length, and what that unit is.
    width: Exact,
    metric: bool,
    frame: Vec<i128>,
    /// Lines of the tape: place, length, thickness. The marked one is the last.
    lines: Vec<[i128; 3]>,
    arrow: Vec<i128>,
    texts: Vec<Written>,
    words: Vec<String>,
}

#[derive(Clone, Debug, Default)]
struct Written {
    text: String,
    anchor: String,
    x: i128,
    foot: i128,
    size: i128,
    bold: bool,
}

fn numbers(text: &str) -> Vec<i128> {
    text.split([' ', ',']).map(|number| number.parse().unwrap()).collect()
}

/// `5.25in` as an exact number, and whether it is in millimeters.
fn size(text: &str) -> (Exact, bool) {
    let (number, metric) =
        text.strip_suffix("mm").map_or((text.strip_suffix("in").unwrap_or(text), false), |number| (number, true));
    let (whole, decimals) = number.split_once('.').unwrap_or((number, ""));
    let digits: i128 = format!("{whole}{decimals}").parse().unwrap();
    (Ratio::new(digits, 10_i128.pow(decimals.len().try_into().unwrap())), metric)
}

fn seen(document: &str) -> Seen {
    let mut seen = Seen::default();
    for event in svg::read(document).unwrap() {
        match event {
            Event::Tag(name, kind, attributes) if !matches!(kind, Type::End) => {
                let get = |name: &str| attributes.get(name).map_or("", |value| value);
                let number = |name: &str| get(name).parse().unwrap_or(0);
                match name {
                    "svg" => {
                        (seen.width, seen.metric) = size(get("width"));
                        seen.frame = numbers(get("viewBox"));
                    }
                    "path" if get("d").contains('v') => {
                        for stroke in get("d").split('M').skip(1) {
                            let (place, length) = stroke.split_once(" 0v").unwrap();
                            seen.lines.push([place.parse().unwrap(), length.parse().unwrap(), number("stroke-width")]);
                        }
                    }
                    "polygon" => seen.arrow = numbers(get("points")),
                    "text" => seen.texts.push(Written {
                        anchor: get("text-anchor").into(),
                        x: number("x"),
                        foot: number("y"),
                        size: number("font-size"),
                        bold: get("font-weight") == "bold",
                        text: String::new(),
                    }),
                    _ => {}
                }
            }
            Event::Error(error) => panic!("{error}\n{document}"),
            Event::Text(text) if text.trim().is_empty() => {}
            Event::Text(text) => match seen.texts.last_mut().filter(|written| written.text.is_empty()) {
                Some(written) => written.text = text.into(),
                None => seen.words.push(text.into()),
            },
            _ => {}
        }
    }
    seen
}

impl Seen {
    /// One unit of the picture on paper, in inches.
    fn unit(&self) -> Exact {
        let unit = self.width / self.frame[2];
        if self.metric { unit * Ratio::new(5, 127) } else { unit }
    }

    fn mils(&self, units: i128) -> i128 {
        (self.unit() * units * 1000).round().to_integer()
    }

    fn marked(&self) -> [i128; 3] {
        *self.lines.last().unwrap()
    }

    /// The places of all lines from left to right.
    fn places(&self) -> Vec<i128> {
        let mut places: Vec<_> = self.lines.iter().map(|line| line[0]).collect();
        places.sort_unstable();
        places
    }
}

impl Written {
    /// Left, top, right and bottom. Letters are taken to be as wide as those of wide fonts.
    fn bounds(&self) -> [i128; 4] {
        let length = i128::try_from(self.text.chars().count()).unwrap();
        let width = length * self.size * if self.bold { 7 } else { 6 } / 10;
        let left = match self.anchor.as_str() {
            "middle" => self.x - width / 2,
            "end" => self.x - width,
            _ => self.x,
        };
        [left, self.foot - self.size * 3 / 4, left + width, self.foot + self.size / 5]
    }
}

fn meet(one: [i128; 4], other: [i128; 4]) -> bool {
    one[0] < other[2] && other[0] < one[2] && one[1] < other[3] && other[1] < one[3]
}

fn svg(drawing: &TapeDrawing) -> Seen {
    seen(&drawing.svg().unwrap())
}

fn whole(number: i128) -> Exact {
    Ratio::from_integer(number)
}

#[test]
fn each_line_has_its_place_and_its_length() {
    // In thousandths of an inch, the longest first; every line between two numbers, by its size.
    let halves =
        |power: u32| (0..1_i64 << power).map(move |line| if line == 0 { 0 } else { (power - line.trailing_zeros()) as usize });
    let inch = [500, 380, 300, 230, 170, 125, 90];
    let metric = [500, 380, 230, 150];
    let plain = [500, 230];
    let cases: Vec<(Tape, Vec<usize>, &[i128])> = vec![
        (every(inches(1, 1)), halves(0).collect(), &inch),
        (every(inches(1, 2)), halves(1).collect(), &inch),
        (every(inches(1, 4)), halves(2).collect(), &inch),
        (Tape::eighths(), halves(3).collect(), &inch),
        (Tape::sixteenths(), halves(4).collect(), &inch),
        (Tape::thirty_seconds(), halves(5).collect(), &inch),
        (Tape::sixty_fourths(), halves(6).collect(), &inch),
        (every(millimeters(10, 1)), vec![0], &metric),
        (every(millimeters(5, 1)), vec![0, 1], &metric),
        (Tape::millimeters(), vec![0, 2, 2, 2, 2, 1, 2, 2, 2, 2], &metric),
        (Tape::half_millimeters(), vec![0, 3, 2, 3, 2, 3, 2, 3, 2, 3, 1, 3, 2, 3, 2, 3, 2, 3, 2, 3], &metric),
        (every(inches(1, 3)), vec![0, 1, 1], &plain),
        (every(millimeters(2, 1)), vec![0], &plain),
    ];
    for (tape, sizes, lengths) in cases {
        let seen = svg(&drawn(tape, tape.step()));
        assert!(seen.lines.len() >= 4);
        for [place, length, _] in &seen.lines {
            // The tape begins at zero, so places are counted from there.
            let line = whole(*place) / (seen.marked()[0]);
            assert!(line.is_integer(), "{place} every {}", tape.step());
            let size = sizes[usize::try_from(line.to_integer()).unwrap() % sizes.len()];
            assert!((seen.mils(*length) - lengths[size]).abs() <= 1, "{line}: {length} every {}", tape.step());
        }
    }
}

#[test]
fn at_a_scale_of_one_the_tape_has_its_true_size() {
    for (tape, per_number, _) in kinds() {
        for (num, den) in [(1, 1), (2, 1), (1, 4)] {
            let drawing = drawn(tape, tape.step() * (per_number * 3 + 1)).scale(Ratio::new(num, den));
            let seen = svg(&drawing);
            let places = seen.places();
            let (first, last) = (places[0], places[places.len() - 1]);
            let measured = seen.unit() * (last - first) * Ratio::new(den, num);
            let meant = tape.step().in_unit(Unit::Inch) * i128::try_from(places.len() - 1).unwrap();
            let off = if measured > meant { measured - meant } else { meant - measured };
            // The paper is known to a millionth, and the tape takes up less than all of it.
            assert!(off <= Ratio::new(den, num * 1_000_000), "{measured} is not {meant}, every {}", tape.step());
            let even = |pair: &[i128]| pair[1] - pair[0] == places[1] - places[0];
            assert!(places.windows(2).all(even), "every {}", tape.step());
        }
    }
}

#[test]
fn without_a_scale_lines_can_be_told_apart() {
    for (tape, ..) in kinds() {
        let seen = svg(&drawn(tape, tape.step() * 100));
        let places = seen.places();
        let step = seen.mils(places[1] - places[0]);
        assert!((62..=1000).contains(&step), "{step} every {}", tape.step());
    }
    let step = |tape: Tape| {
        let seen = svg(&drawn(tape, tape.step() * 100));
        seen.mils(seen.places()[1] - seen.places()[0])
    };
    // Sixteenths and eighths in true size, thirty-seconds and millimeters twice as large.
    assert_eq!((step(Tape::sixteenths()), step(Tape::eighths())), (63, 125));
    assert_eq!((step(Tape::thirty_seconds()), step(Tape::millimeters())), (63, 79));
}

#[test]
fn there_is_more_white_than_black_between_lines() {
    for (tape, ..) in kinds() {
        for scale in [Ratio::new(1, 1), Ratio::new(1, 4), Ratio::new(8, 1)] {
            let seen = svg(&drawn(tape, tape.step() * 100).scale(scale));
            let step = seen.places()[1] - seen.places()[0];
            assert!(seen.lines.iter().all(|line| line[2] >= 1 && (2 * line[2] < step || step <= 2)), "every {}", tape.step());
        }
    }
    let seen = svg(&drawn(Tape::sixteenths(), inches(141, 8)));
    assert_eq!((seen.mils(seen.lines[0][2]), seen.mils(seen.marked()[2])), (10, 20));
}

quickcheck! {
    fn the_arrow_stands_exactly_at_the_reading(kind: usize, line: i32, num: u8, den: u8) -> bool {
        let kinds = kinds();
        let (tape, per_number, number) = kinds[kind % kinds.len()];
        let drawing = drawn(tape, tape.step() * i64::from(line));
        let scale = Ratio::new(i128::from(num) + 1, i128::from(den) + 1);
        [drawing, drawing.scale(scale)].into_iter().all(|drawing| {
            let seen = svg(&drawing);
            let (tip, places) = (seen.arrow[0], seen.places());
            let step = places[1] - places[0];
            // From each number that stands in the middle below its line, in steps of the tape, exactly.
            let on_lines = seen.texts.iter().filter(|text| text.foot > 0 && text.bold && text.anchor == "middle");
            let numbered: Vec<_> = on_lines.filter_map(|text| Some((text.x, text.text.parse::<i128>().ok()?))).collect();
            tip == seen.marked()[0] && numbered.iter().all(|(x, at)| {
                let from_zero = whole(*at) / i128::from(number) * i128::from(per_number);
                from_zero + Ratio::new(tip - x, step) == whole(line.into())
            })
        })
    }
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
        let inside = left < one[0] && top < one[1] && one[2] < left + width && one[3] < top + height;
        assert!(inside, "{text} leaves the picture");
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
                are_apart(&svg(&scale.map_or(drawing, |scale| drawing.scale(scale))));
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
            are_apart(&svg(&drawn(tape, position)));
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

#[test]
fn a_scale_that_is_none_is_refused() {
    let drawing = drawn(Tape::sixteenths(), inches(141, 8));
    let refused = |num, den| drawing.scale(Ratio::new_raw(num, den)).svg().unwrap_err().to_string();
    assert_eq!(refused(0, 1), "cannot draw a tape at a scale of 0: it must be above zero");
    assert_eq!(refused(-1, 2), "cannot draw a tape at a scale of -1/2: it must be above zero");
    assert_eq!(refused(1, 0), "cannot draw a tape at a scale of 1/0: it must be above zero");
    assert_eq!(refused(3, -4), "cannot draw a tape at a scale of 3/-4: it must be above zero");
    assert_eq!(
        refused(i128::MAX, 1),
        "the tape around 17 5/8\", with a line every 1/16\", cannot be drawn: its lines are out of range"
    );
    let unreduced = drawing.scale(Ratio::new_raw(-4, -2)).svg();
    assert_eq!(unreduced, drawing.scale(Ratio::new(2, 1)).svg());
}

#[test]
fn a_small_picture() {
    let tape = every(inches(1, 2)).length(inches(1, 1)).offset(inches(1, 4));
    let document = drawn(tape, inches(1, 4)).svg().unwrap();
    assert_eq!(
        format!("\n{document}"),
        r##"
<svg height="1.791016in" role="img" viewBox="-133 -451 3575 1834" width="3.491211in" xmlns="http://www.w3.org/2000/svg">
<title>1/2"</title>
<desc>the long line halfway between 0 and 1</desc>
<rect fill="#fff" height="1834" width="3575" x="-133" y="-451"/>
<g>
<path d="M0 0H1024V768H0Z" fill="#fdf6e3" stroke="#000" stroke-width="10"/>
<rect fill="#000" height="860" width="51" x="-51" y="0"/>
</g>
<g stroke="#000">
<path d="M0 0v512M1024 0v512" stroke-width="10"/>
<path d="M512 0v389" stroke-width="20"/>
</g>
<polygon fill="#000" points="512,0 461,-154 563,-154"/>
<g fill="#000" font-family="Helvetica, Arial, sans-serif">
<text font-size="174" font-weight="bold" text-anchor="middle" x="512" y="-195">1/2"</text>
<text font-size="174" font-weight="bold" text-anchor="start" x="41" y="666">0</text>
<text font-size="174" font-weight="bold" text-anchor="end" x="983" y="666">1</text>
<text font-size="133" x="0" y="993">the long line halfway between 0 and 1</text>
<text font-size="133" x="0" y="1198">Held at 1/4": the mark is 1/4" from there.</text>
</g>
</svg>
"##
    );
}
