//! Texts as a shop types them, each beside the same number in the forms that simpler readers take. What
//! is done with them is left to the benchmarks that read and write text.

use scantling::{Length, Unit};

use super::{Random, SEED};

/// One measurement as text.
pub struct Typed {
    /// As it was typed: `6'-3 1/2"`, `365 mm`.
    pub text: String,
    /// A bare decimal: inches, or for metric the number as typed.
    pub decimal: String,
    /// The unit of that.
    pub unit: Unit,
    /// A fraction of an inch in lowest terms: `151/2`.
    pub fraction: String,
    /// The exact length.
    pub exact: Length,
}

/// A kind of text: its name, how many of a hundred texts are of it or of one before it, and how one is made.
pub type Kind = (&'static str, u64, fn(&mut Random) -> Typed);

/// Twenty in a hundred are whole inches, and so on: the mixture that the goals in time were set with.
pub const KINDS: [Kind; 9] = [
    ("whole", 20, whole),
    ("blank", 40, |random| mixed(random, " ")),
    ("hyphen", 50, |random| mixed(random, "-")),
    ("proper", 55, proper),
    ("feet_and_part", 70, |random| feet(random, true)),
    ("feet", 77, |random| feet(random, false)),
    ("glyph", 85, glyph),
    ("decimal", 92, decimal),
    ("metric", 100, metric),
];

/// A mixture of every kind, in random order. From 100,000 up, no branch predictor learns it by heart.
pub fn typed(count: usize) -> Vec<Typed> {
    let mut random = Random::new(SEED);
    let one = |_| {
        let place = random.below(100);
        let (.., make) = KINDS.iter().find(|(_, end, _)| place < *end).expect("the last ends at a hundred");
        make(&mut random)
    };
    (0..count).map(one).collect()
}

/// Texts of one kind alone, which a branch predictor soon knows.
pub fn typed_as((_, _, make): Kind, count: usize) -> Vec<Typed> {
    let mut random = Random::new(SEED);
    (0..count).map(|_| make(&mut random)).collect()
}

/// What stands in no length.
pub const SLIPS: [char; 7] = ['#', '?', '_', '=', '\\', 'q', 'z'];

/// A text and its decimal, each with one sign too many at a random place: neither can be read.
pub fn broken(typed: &Typed, random: &mut Random) -> (String, String) {
    let mut slip = |text: &str| {
        let places: Vec<usize> = text.char_indices().map(|(place, _)| place).chain([text.len()]).collect();
        let (place, sign) = (random.pick(&places), random.pick(&SLIPS));
        format!("{}{sign}{}", &text[..place], &text[place..])
    };
    (slip(&typed.text), slip(&typed.decimal))
}

/// Texts packed as the lines of one, so that reading them is timed and not the memory. It is needed to the end of the program.
pub fn packed<'a>(texts: impl IntoIterator<Item = &'a String>) -> &'static str {
    texts.into_iter().flat_map(|text| [text, "\n"]).collect::<String>().leak()
}

pub fn lines(packed: &'static str) -> Vec<&'static str> {
    packed.lines().collect()
}

/// An inch mark, or none.
fn mark(random: &mut Random) -> &'static str {
    random.pick(&["", "\"", "in", " in", "″", "''"])
}

/// A count of sixty-fourths as typed.
fn inches(text: String, sixty_fourths: u64) -> Typed {
    let (whole, rest) = (sixty_fourths / 64, sixty_fourths % 64);
    // A sixty-fourth is 0.015625 in, and so six places are exact.
    let places = format!("{whole}.{:06}", rest * 15_625);
    let decimal = places.trim_end_matches('0').trim_end_matches('.').to_owned();
    let exact = Length::fraction(i64::try_from(sixty_fourths).expect("a short length"), 64, Unit::Inch);
    Typed { text, decimal, unit: Unit::Inch, fraction: fraction(exact), exact }
}

fn fraction(exact: Length) -> String {
    let inches = exact.in_unit(Unit::Inch);
    format!("{}/{}", inches.numer(), inches.denom())
}

/// A proper fraction in lowest terms, as typed and in sixty-fourths.
fn part(random: &mut Random) -> (String, u64) {
    let den = random.pick(&[2, 4, 8, 16, 32, 64]);
    let num = random.below(den / 2) * 2 + 1;
    (format!("{num}/{den}"), num * 64 / den)
}

fn whole(random: &mut Random) -> Typed {
    let whole = 1 + random.below(120);
    inches(format!("{whole}{}", mark(random)), whole * 64)
}

fn mixed(random: &mut Random, joint: &str) -> Typed {
    let (whole, (part, rest)) = (1 + random.below(120), part(random));
    inches(format!("{whole}{joint}{part}{}", mark(random)), whole * 64 + rest)
}

fn proper(random: &mut Random) -> Typed {
    let (part, rest) = part(random);
    inches(format!("{part}{}", mark(random)), rest)
}

fn feet(random: &mut Random, with_part: bool) -> Typed {
    let (feet, whole) = (1 + random.below(12), random.below(12));
    let (part, rest) = if with_part { part(random) } else { (String::new(), 0) };
    let joint = if with_part { " " } else { "" };
    let foot = random.pick(&["'", "' ", "'-", " ft ", "′ "]);
    inches(format!("{feet}{foot}{whole}{joint}{part}{}", mark(random)), (feet * 12 + whole) * 64 + rest)
}

fn glyph(random: &mut Random) -> Typed {
    let (glyph, rest) = random.pick(&[('½', 32), ('¼', 16), ('¾', 48), ('⅛', 8), ('⅜', 24), ('⅝', 40), ('⅞', 56)]);
    let whole = 1 + random.below(120);
    inches(format!("{whole}{glyph}{}", mark(random)), whole * 64 + rest)
}

fn decimal(random: &mut Random) -> Typed {
    let typed = inches(String::new(), random.below(120 * 8) * 8);
    Typed { text: format!("{}{}", typed.decimal, mark(random)), ..typed }
}

/// Whole millimeters, tenths of a centimeter, or hundredths of a meter.
fn metric(random: &mut Random) -> Typed {
    let count = 1 + random.below(3000);
    let (decimal, unit, mark, millimeters) = match random.below(3) {
        0 => (count.to_string(), Unit::Millimeter, random.pick(&["mm", " mm"]), count),
        1 => (format!("{}.{}", count / 10, count % 10), Unit::Centimeter, random.pick(&["cm", " cm"]), count),
        _ => (format!("{}.{:02}", count / 100, count % 100), Unit::Meter, random.pick(&["m", " m"]), count * 10),
    };
    let exact = Length::new(i64::try_from(millimeters).expect("a short length"), Unit::Millimeter);
    Typed { text: format!("{decimal}{mark}"), decimal, unit, fraction: fraction(exact), exact }
}
