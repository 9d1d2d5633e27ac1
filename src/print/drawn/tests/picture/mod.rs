//! Pictures read back: what is drawn is found again by its numbers. Sizes on paper are compared in
//! thousandths of an inch.

use std::format;
use std::string::{String, ToString};
use std::vec::Vec;

use num_rational::Ratio;
use svg::node::element::tag::Type;
use svg::parser::Event;

use super::{drawn, every, inches};
use crate::print::TapeDrawing;
use crate::tape::Tape;

mod lines;
mod texts;

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
    /// How far the blade reaches inside of its torn ends: left, right and bottom.
    blade: [i128; 3],
    /// The grounds of flags: left, top, right and bottom.
    flags: Vec<[i128; 4]>,
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

/// The innermost points on either side of an outline.
fn blade(outline: &str) -> [i128; 3] {
    let commands = outline.replace(['M', 'L', 'H', 'V', 'Z'], " ");
    let right = outline.split_once('H').unwrap().1.split(['L', 'V']).next().unwrap().parse::<i128>().unwrap();
    let bottom = outline.split_once('V').unwrap().1.split(['H', 'L']).next().unwrap().parse().unwrap();
    let points: Vec<i128> = commands.split_whitespace().map(|number| number.parse().unwrap()).collect();
    let teeth = || outline.split('L').skip(1).map(|tooth| numbers(tooth.split(['L', 'V', 'Z']).next().unwrap())[0]);
    let middle = (points[0] + right) / 2;
    let left = teeth().filter(|x| *x < middle).chain([points[0]]).max().unwrap();
    [left, teeth().filter(|x| *x > middle).chain([right]).min().unwrap(), bottom]
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
                    "path" => seen.blade = blade(get("d")),
                    "rect" if !get("rx").is_empty() => {
                        let [x, y, width, height] = ["x", "y", "width", "height"].map(number);
                        seen.flags.push([x, y, x + width, y + height]);
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
    /// Left, top, right and bottom. Letters are taken to be as wide, and to reach as deep, as those of
    /// large fonts.
    fn bounds(&self) -> [i128; 4] {
        let length = i128::try_from(self.text.chars().count()).unwrap();
        let width = length * self.size * if self.bold { 7 } else { 6 } / 10;
        let left = match self.anchor.as_str() {
            "middle" => self.x - width / 2,
            "end" => self.x - width,
            _ => self.x,
        };
        [left, self.foot - self.size * 3 / 4, left + width, self.foot + self.size / 4]
    }
}

fn svg(drawing: &TapeDrawing) -> Seen {
    seen(&drawing.svg().unwrap())
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
<svg height="1.742188in" role="img" viewBox="-133 -471 3575 1784" width="3.491211in" xmlns="http://www.w3.org/2000/svg">
<title>1/2"</title>
<desc>the long line halfway between 0 and 1</desc>
<rect fill="#fff" height="1784" width="3575" x="-133" y="-471"/>
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
<text font-size="174" font-weight="bold" text-anchor="middle" x="512" y="-215">1/2"</text>
<text font-size="174" font-weight="bold" text-anchor="start" x="41" y="666">0</text>
<text font-size="174" font-weight="bold" text-anchor="end" x="983" y="666">1</text>
<text font-size="133" x="0" y="993">the long line halfway between 0 and 1</text>
<text font-size="133" x="0" y="1198">Held at 1/4": the mark is 1/4" from there.</text>
</g>
</svg>
"##
    );
}
