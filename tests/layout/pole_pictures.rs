//! Story poles on paper are measured: documents are read back, and every line must be where it is in truth, to far less
//! than 1/128 in, on every page. How the pages look was judged by eye.
#![cfg(all(feature = "svg", feature = "pdf"))]

use hayro_syntax::Pdf;
use hayro_syntax::content::ops::TypedInstruction as Op;
use scantling::{Edge, Length, Mark, Paper, PartSide, Row, Spacing, StoryPole, Tape, Unit};
use svg::node::element::tag::Type;
use svg::parser::Event;

/// A tenth of a thousandth of an inch: 1/128 in is 78 of them.
const NEAR: f64 = 0.000_1;

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

/// 40 in with marks at elevenths, at thirds, and at the first and the last place there is.
fn forty() -> (StoryPole, [Vec<f64>; 2]) {
    let line = |place, name: String| Mark::new(place, name, PartSide::Past).thick(inches(3, 4));
    let elevenths = (0..11).map(|count| line(inches(40 * count, 11), format!("eleventh {count}")));
    let thirds = (0..=6).map(|count| Mark::new(inches(20 * count, 3), format!("third {count}"), PartSide::Line));
    let pole = StoryPole::new("glaze shelves", inches(40, 1)).row("side", elevenths).unwrap();
    let places = [
        (0..11).map(|count| 40.0 * f64::from(count) / 11.0).collect(),
        (0..=6).map(|count| 20.0 * f64::from(count) / 3.0).collect(),
    ];
    (pole.row("front", thirds).unwrap(), places)
}

/// What is on a page, in inches from its upper left corner.
#[derive(Default)]
struct Seen {
    size: [f64; 2],
    strokes: Vec<[[f64; 2]; 2]>,
    dashed: Vec<f64>,
    texts: Vec<Written>,
    thinnest: f64,
    smallest: f64,
}

struct Written {
    text: Vec<u8>,
    at: [f64; 2],
    turned: bool,
}

impl Seen {
    /// Where upright strokes of a length are, in those rows that have any, from the top row down.
    fn upright(&self, length: f64) -> Vec<Vec<f64>> {
        let mut rows: Vec<(f64, Vec<f64>)> = Vec::new();
        for [from, to] in &self.strokes {
            if (from[0] - to[0]).abs() < NEAR && ((to[1] - from[1]) - length).abs() < NEAR {
                match rows.iter_mut().find(|(top, _)| (*top - from[1]).abs() < NEAR) {
                    Some((_, row)) => row.push(from[0]),
                    None => rows.push((from[1], vec![from[0]])),
                }
            }
        }
        rows.sort_by(|one, other| one.0.total_cmp(&other.0));
        rows.into_iter().map(|(_, row)| row).collect()
    }

    /// Lengths of level strokes below everything else.
    fn bars(&self) -> Vec<f64> {
        let lowest = self.strokes.iter().map(|[from, _]| from[1]).fold(0.0, f64::max);
        let level = self.strokes.iter().filter(|[from, to]| is_level(*from, *to) && from[1] > lowest - 0.2);
        level.map(|[from, to]| to[0] - from[0]).collect()
    }

    fn has(&self, text: &str) -> bool {
        self.texts.iter().any(|written| written.text == text.as_bytes())
    }
}

fn pages(pole: &StoryPole, paper: Paper) -> Vec<Seen> {
    let document = pole.pdf(&Tape::sixteenths(), paper).unwrap();
    let pdf = Pdf::new(document).unwrap();
    pdf.pages()
        .iter()
        .map(|page| {
            let (width, height) = page.base_dimensions();
            let down = |x: f64, y: f64| [x / 72.0, (f64::from(height) - y) / 72.0];
            let mut seen = Seen { size: [f64::from(width) / 72.0, f64::from(height) / 72.0], ..Seen::default() };
            (seen.thinnest, seen.smallest) = (f64::MAX, f64::MAX);
            let (mut from, mut matrix, mut dashed) = ([0.0; 2], [0.0; 6], false);
            let mut operations = page.typed_operations();
            while let Some(operation) = operations.next() {
                match operation {
                    Op::LineWidth(width) => seen.thinnest = seen.thinnest.min(width.0.as_f64() / 72.0),
                    Op::DashPattern(pattern) => dashed = pattern.0.raw_iter().count() > 0,
                    Op::MoveTo(to) => from = down(to.0.as_f64(), to.1.as_f64()),
                    Op::LineTo(to) => {
                        let to = down(to.0.as_f64(), to.1.as_f64());
                        if dashed {
                            seen.dashed.push(from[0]);
                        } else {
                            seen.strokes.push([from, to]);
                        }
                        from = to;
                    }
                    Op::TextFont(font) => seen.smallest = seen.smallest.min(font.1.as_f64()),
                    Op::SetTextMatrix(to) => matrix = [to.0, to.1, to.2, to.3, to.4, to.5].map(|number| number.as_f64()),
                    Op::ShowText(text) => seen.texts.push(Written {
                        text: text.0.as_bytes().to_vec(),
                        at: down(matrix[4], matrix[5]),
                        turned: matrix[0] == 0.0,
                    }),
                    _ => {}
                }
            }
            seen
        })
        .collect()
}

fn is_level(from: [f64; 2], to: [f64; 2]) -> bool {
    (from[1] - to[1]).abs() < NEAR
}

#[track_caller]
fn same(seen: &[f64], truth: &[f64]) {
    assert_eq!(seen.len(), truth.len(), "{seen:?}, {truth:?}");
    for (seen, truth) in seen.iter().zip(truth) {
        assert!((seen - truth).abs() < NEAR, "{seen}, {truth}");
    }
}

// Worked by hand: Letter lies on its side with 10 in of the pole, A4 with 10 1/2 in, neighbors share 1 in.
#[test]
fn every_mark_on_every_page_is_where_it_is_in_truth() {
    let (pole, truth) = forty();
    let sheets = [
        (Paper::Letter, [11.0, 8.5], 10.0, vec![0.0, 9.0, 18.0, 27.0, 36.0]),
        (Paper::A4, [297.0 / 25.4, 210.0 / 25.4], 10.5, vec![0.0, 9.5, 19.0, 28.5, 38.0]),
        (Paper::Roll(inches(24, 1)), [40.92, 24.0], 40.0, vec![0.0]),
    ];
    for (paper, size, room, starts) in sheets {
        let pages = pages(&pole, paper);
        assert_eq!(pages.len(), starts.len(), "{paper:?}");
        for (number, (page, start)) in (1..).zip(pages.iter().zip(&starts)) {
            same(&page.size, &size);
            let left = (size[0] - room) / 2.0;
            // The line of a mark reaches 0.06 in out of a stick of 0.5 in on either side.
            let rows = page.upright(0.62);
            let on = truth.iter().map(|row| {
                let places = row.iter().filter(|place| (*start - NEAR..=start + room + NEAR).contains(*place));
                places.map(|place| left + place - start).collect::<Vec<_>>()
            });
            let on: Vec<_> = on.filter(|row| !row.is_empty()).collect();
            assert_eq!(rows.len(), on.len());
            rows.iter().zip(&on).for_each(|(seen, truth)| same(seen, truth));
            same(&page.bars(), &[4.0, 100.0 / 25.4]);
            assert!(page.has("4 in") && page.has("100 mm"));
            assert!(page.has("print it again at 100 % (actual size), not fitted to the page."));
            let numbered = format!("page {number} of {}: from ", starts.len());
            assert!(page.texts.iter().any(|text| text.text.starts_with(numbered.as_bytes())), "{numbered}");
            // Capitals of Helvetica are 0.718 of its size.
            assert!(page.smallest * 0.718 / 72.0 * 25.4 >= 3.0 && page.thinnest * 25.4 >= 0.35);
        }
        // The same join lies at one place of the pole on both of its pages, half an inch from the end of each.
        for (pair, starts) in pages.windows(2).zip(starts.windows(2)) {
            let left = (size[0] - room) / 2.0;
            let behind = pair[0].dashed.iter().copied().fold(0.0, f64::max) - left + starts[0];
            let before = pair[1].dashed.iter().copied().fold(f64::MAX, f64::min) - left + starts[1];
            same(&[behind, before], &[starts[1] + 0.5; 2]);
        }
    }
}

/// Strokes of a class, as pairs of points in inches.
fn strokes(document: &str, class: &str) -> Vec<[[f64; 2]; 2]> {
    let mut found = Vec::new();
    for event in svg::read(document).unwrap() {
        if let Event::Tag("path", Type::Empty, attributes) = event {
            if attributes.get("class").is_some_and(|value| **value == *class) {
                for stroke in attributes["d"].split('M').skip(1) {
                    let numbers: Vec<f64> = stroke.split([' ', 'L']).map(|number| number.parse().unwrap()).collect();
                    found.push([[numbers[0] / 1000.0, numbers[1] / 1000.0], [numbers[2] / 1000.0, numbers[3] / 1000.0]]);
                }
            }
        }
    }
    found
}

#[test]
fn the_picture_is_in_true_size() {
    let (pole, truth) = forty();
    let document = pole.svg(&Tape::sixteenths()).unwrap();
    // 40 in, with 0.4 in and a block of 0.06 in on either side; two rows of 3.1 in with heading, check and margins.
    assert!(document.starts_with(r#"<svg height="8.2in" role="img" viewBox="0 0 40920 8200" width="40.92in""#), "{document}");
    let marks: Vec<f64> = strokes(&document, "mark").iter().map(|[from, _]| from[0] - 0.46).collect();
    same(&marks, &truth.concat());
    let edges: Vec<f64> = strokes(&document, "edge").iter().map(|[from, _]| from[0] - 0.46).collect();
    same(&edges, &truth[0].iter().map(|place| place + 0.75).collect::<Vec<_>>());
    let bars = strokes(&document, "bar").into_iter().filter(|[from, to]| is_level(*from, *to)).map(|[from, to]| to[0] - from[0]);
    same(&bars.collect::<Vec<_>>(), &[4.0, 100.0 / 25.4]);
    assert!(document.contains(r#"font-size="166.667""#) && document.contains(r#"stroke-width="15""#));
    assert!(!document.contains("class=\"join\""));
    // Measured with a browser: without this the pole is printed at two thirds of its size.
    assert!(document.contains("@page{size:40.92in 8.2in;margin:0}"));
}

#[test]
fn the_x_lies_on_the_side_of_the_part() {
    let mark = |side| Mark::new(inches(20, 1), "rail", side);
    let crosses = |mark: Mark| {
        let pole = StoryPole::new("case", inches(40, 1)).row("front", [mark]).unwrap();
        let document = pole.svg(&Tape::sixteenths()).unwrap();
        let ends = strokes(&document, "cross").concat();
        let (least, most) = ends.iter().fold((f64::MAX, f64::MIN), |(least, most), [x, _]| (least.min(*x), most.max(*x)));
        [least - 0.46, most - 0.46]
    };
    for (mark, ends) in [
        (mark(PartSide::Past), [20.0, 20.25]),
        (mark(PartSide::Before), [19.75, 20.0]),
        (mark(PartSide::Centered), [19.75, 20.25]),
        (mark(PartSide::Past).thick(inches(3, 4)), [20.0, 20.75]),
        (mark(PartSide::Before).thick(inches(3, 4)), [19.25, 20.0]),
        (mark(PartSide::Centered).thick(inches(3, 2)), [19.25, 20.75]),
        // One at either edge of a wide part.
        (mark(PartSide::Past).thick(inches(12, 1)), [20.0, 32.0]),
        // Cut off where the stick ends.
        (mark(PartSide::Past).thick(inches(99, 1)), [20.0, 20.5]),
    ] {
        same(&crosses(mark), &ends);
    }
}

#[test]
fn names_never_meet() {
    let mut crowded: Vec<_> =
        (0..30).map(|count| Mark::new(inches(60 + count, 16), format!("peg {count}"), PartSide::Past)).collect();
    for many in [3, 23, 24, 30] {
        crowded.truncate(30);
        let row: Vec<_> = crowded.iter().take(many).cloned().collect();
        let pole = StoryPole::new("rack", inches(10, 1)).row("pegs", row).unwrap();
        for page in pages(&pole, Paper::Letter) {
            let mut feet: Vec<f64> = page.texts.iter().filter(|text| text.turned).map(|text| text.at[0]).collect();
            feet.sort_by(f64::total_cmp);
            assert!(feet.windows(2).all(|pair| pair[1] - pair[0] > 0.2), "{many}: {feet:?}");
            assert!(feet.iter().all(|foot| (0.5..=10.5).contains(foot)), "{many}: {feet:?}");
            assert_eq!(feet.len(), if many <= 23 { 2 * many } else { many });
        }
    }
    // More names than there is room for are left out, and said to be.
    let many = (0..100).map(|count| Mark::new(inches(count, 10), format!("peg {count}"), PartSide::Past));
    let pole = StoryPole::new("rack", inches(10, 1)).row("pegs", many).unwrap();
    let page = &pages(&pole, Paper::Letter)[0];
    let named = page.texts.iter().filter(|text| text.turned).count();
    assert!(page.has(&format!("{} marks here lie too close to be named: see the list", 100 - named)));
}

/// A letter is about as wide as half its size, 12 points; so wide at least must be the room for a text.
fn overlapping(page: &Seen, width: f64) -> Vec<String> {
    let letter = 0.075;
    let mut across: Vec<_> = page
        .texts
        .iter()
        .filter(|text| !text.turned)
        .map(|text| {
            let wide = letter * f64::from(u16::try_from(text.text.len()).unwrap());
            (text.at[1], text.at[0], text.at[0] + wide, String::from_utf8_lossy(&text.text).into_owned())
        })
        .collect();
    across.sort_by(|one, other| one.0.total_cmp(&other.0).then(one.1.total_cmp(&other.1)));
    let meet = across.windows(2).filter(|pair| pair[1].0 - pair[0].0 < 0.1 && pair[1].1 < pair[0].2);
    let off = across.iter().filter(|(_, from, to, _)| *from < 0.3 || *to > width - 0.3);
    meet.map(|pair| format!("{} | {}", pair[0].3, pair[1].3)).chain(off.map(|(.., text)| text.clone())).collect()
}

#[test]
fn what_is_said_about_a_page_never_meets() {
    let long = "a long name, of the sort that people give to what they care for in a pottery studio";
    let crowd = |count| Mark::new(inches(count, 9), format!("peg {count}"), PartSide::Past);
    for length in [inches(72, 1), inches(72 * 9973 + 1, 9973), Length::fraction(1_000_003 * 40 + 1, 1_000_003, Unit::Millimeter)]
    {
        let pole = StoryPole::new(long, length).measured_from(scantling::Datum::Left).for_hand(scantling::Hand::Right);
        let pole = pole.row(long, (-5..100_i64).map(crowd)).unwrap().row("\u{5D0}\u{5D1} 40", []).unwrap();
        for (paper, width) in [(Paper::Letter, 11.0), (Paper::A4, 297.0 / 25.4)] {
            for page in pages(&pole, paper) {
                assert_eq!(overlapping(&page, width), [""; 0], "{length}");
                assert!(page.texts.iter().any(|text| text.text.ends_with(b"lie off the stick and are not drawn")));
            }
        }
    }
    // The figures behind a name that is read from right to left stay behind it.
    let pole = StoryPole::new("\u{5D0}\u{5D1}", inches(40, 1));
    assert!(pole.svg(&Tape::sixteenths()).unwrap().contains(">\u{2068}\u{5D0}\u{5D1}\u{2069}: 40"));
    assert!(pages(&pole, Paper::Letter)[0].has("??: 40\" = 3'-4\", measured up from the bottom"));
}

#[test]
fn hostile_names_break_nothing() {
    let names = [
        "</text><script>alert(1)</script>",
        "a & b \"quoted\" 'once'",
        "\u{202E}dne eht morf\u{202C}",
        "\u{5D0}\u{5D1}\u{5D2}",
        "\u{1F3FA}\u{200D}\u{1F525}",
        "nul\0 bell\u{7} escape\u{1b}[31m\u{FFFE}",
        "(unbalanced \\ parentheses",
    ];
    let long = "w".repeat(10_000);
    let names = names.into_iter().chain([long.as_str(), ""]);
    let marks = (1..).zip(names).map(|(count, name)| Mark::new(inches(count, 1), name, PartSide::Past).noted(name));
    let pole = StoryPole::new(long.as_str(), inches(20, 1)).row("<row>\n", marks).unwrap();
    let document = pole.svg(&Tape::sixteenths()).unwrap();
    let mut texts = Vec::new();
    for event in svg::read(&document).unwrap() {
        match event {
            Event::Tag(name, ..) => {
                assert!(["svg", "title", "style", "rect", "g", "path", "polygon", "text"].contains(&name), "{name}");
            }
            Event::Text(text) => texts.push(text.trim().to_owned()),
            _ => {}
        }
    }
    assert!(texts.iter().all(|text| text.chars().count() < 90), "{texts:?}");
    assert!(document.chars().all(|char| !char.is_control() || char == '\n'));
    assert!(!document.contains('\u{202E}') && document.contains("&lt;/text&gt;"));
    assert!(document.len() < 20_000);
    let pages = pages(&pole, Paper::A4);
    let texts = || pages.iter().flat_map(|page| &page.texts);
    assert!(texts().all(|text| text.text.len() < 120 && text.text.iter().all(|byte| *byte >= b' ')));
    assert!(texts().any(|text| text.text.starts_with(b"(unbalanced \\ ") && text.text.ends_with(b"\x85")));
}

#[test]
fn what_lies_off_the_stick_is_said_and_not_drawn() {
    let marks = [-1, 3, 25].map(|place| Mark::new(inches(place, 1), "x", PartSide::Past).thick(inches(1, 1)));
    let pole = StoryPole::new("case", inches(20, 1)).row("front", marks).unwrap();
    let document = pole.svg(&Tape::sixteenths()).unwrap();
    assert_eq!(strokes(&document, "mark").len(), 1);
    assert!(document.contains(">2 marks lie off the stick and are not drawn</text>"));
}

#[test]
fn what_cannot_be_printed_is_refused() {
    let pole = |length| StoryPole::new("case", length).row("front", []).unwrap();
    let refused = |pole: &StoryPole, paper| pole.pdf(&Tape::sixteenths(), paper).unwrap_err().to_string();
    let short = pole(inches(20, 1));
    for width in [inches(51, 10) - inches(1, 100), inches(73, 1), Length::ZERO] {
        let text = format!("a roll {width} wide cannot take the pole: 5 1/10\" at least, 72\" at most");
        assert_eq!(refused(&short, Paper::Roll(width)), text);
    }
    assert!(short.pdf(&Tape::sixteenths(), Paper::Roll(inches(51, 10))).is_ok());
    let long = pole(Length::new(101, Unit::Yard));
    assert_eq!(refused(&long, Paper::Letter), "a pole 3636\" long is too long to draw in true size: at most 3600\"");
    assert_eq!(long.svg(&Tape::sixteenths()).unwrap_err().to_string(), refused(&long, Paper::A4));
    let rows = (0..20).try_fold(pole(Length::new(100, Unit::Yard)), |pole, row| pole.row(format!("row {row}"), []));
    assert_eq!(refused(&rows.unwrap(), Paper::Letter), "that makes 4400 pages: at most 2000");
    let short_tape = Tape::sixteenths().length(inches(10, 1));
    let marked = StoryPole::new("case", inches(20, 1)).row("a", [Mark::new(inches(12, 1), "x", PartSide::Line)]).unwrap();
    assert!(marked.svg(&short_tape).is_err() && marked.pdf(&short_tape, Paper::A4).is_err());
    assert!(StoryPole::new("none", Length::ZERO).svg(&Tape::sixteenths()).is_err());
}

/// 10,000 marks, and a document that grows as the marks do.
#[test]
fn ten_thousand_marks_are_drawn() {
    let pole = |count: usize| {
        let layout = Spacing::equal_openings(count, inches(1, 1000)).over(inches(96, 1)).unwrap();
        StoryPole::new("many", inches(96, 1)).with(Row::try_from_layout("row", "slat", &layout, Edge::Near).unwrap()).unwrap()
    };
    let (half, all) = (pole(5_000), pole(10_000));
    let (tape, size) = (Tape::sixteenths(), |pole: &StoryPole| {
        let documents = (pole.svg(&Tape::sixteenths()).unwrap(), pole.pdf(&Tape::sixteenths(), Paper::Letter).unwrap());
        (documents.0.len(), documents.1.len())
    });
    let (svg, pdf) = size(&all);
    assert!(all.listed(&tape).unwrap().to_string().lines().count() > 10_000 && all.check(&tape).len() < 20_000);
    let (half_svg, half_pdf) = size(&half);
    assert!(svg < half_svg * 21 / 10 && pdf < half_pdf * 21 / 10, "{half_svg}, {svg}, {half_pdf}, {pdf}");
}
