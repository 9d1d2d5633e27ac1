//! Random calculations against big rationals, and every small text with a hyphen against its two readings.
//! Calculations by hand are in `calculating.rs`.

use std::fmt::{self, Display};

use num_bigint::BigInt;
use num_rational::{BigRational, Ratio};
use quickcheck::{Arbitrary, Gen, quickcheck};
use scantling::{ParseErrorKind as Kind, Quantity, Unit, evaluate};

/// An operand as it is written, in 64ths or in whole units.
#[derive(Clone, Copy, Debug)]
enum Leaf {
    /// So many 64ths, without a unit.
    Bare(u8),
    /// So many 64ths of an inch.
    Inches(u8),
    Millimeters(u8),
}

#[derive(Clone, Debug)]
enum Tree {
    Leaf(Leaf),
    Negative(Box<Tree>),
    Pair(Box<Tree>, char, Box<Tree>),
}

impl Tree {
    fn grow(source: &mut Gen, depth: usize) -> Self {
        let part = |source: &mut Gen| Box::new(Self::grow(source, depth - 1));
        match u8::arbitrary(source) % 8 {
            _ if depth == 0 => Self::Leaf(Leaf::arbitrary(source)),
            0 => Self::Leaf(Leaf::arbitrary(source)),
            1 => Self::Negative(part(source)),
            _ => Self::Pair(part(source), *source.choose(&['+', '-', '*', '/']).unwrap(), part(source)),
        }
    }
}

impl Arbitrary for Leaf {
    fn arbitrary(source: &mut Gen) -> Self {
        let size = u8::arbitrary(source) % 64;
        *source.choose(&[Self::Bare(size), Self::Inches(size), Self::Inches(size), Self::Millimeters(size)]).unwrap()
    }
}

impl Arbitrary for Tree {
    fn arbitrary(source: &mut Gen) -> Self {
        Self::grow(source, 3)
    }

    fn shrink(&self) -> Box<dyn Iterator<Item = Self>> {
        match self.clone() {
            Self::Leaf(_) => quickcheck::empty_shrinker(),
            Self::Negative(part) => quickcheck::single_shrinker(*part),
            Self::Pair(left, _, right) => Box::new([*left, *right].into_iter()),
        }
    }
}

/// Every pair and every bare number in brackets, so that nothing hangs on order or has two readings.
impl Display for Tree {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Leaf(Leaf::Bare(size)) if size % 3 == 0 => write!(out, "({size})"),
            Self::Leaf(Leaf::Bare(size)) => write!(out, "({size}/64)"),
            Self::Leaf(Leaf::Inches(size)) => write!(out, "{size} {size}/64\""),
            Self::Leaf(Leaf::Millimeters(size)) => write!(out, "{size} mm"),
            Self::Negative(part) => write!(out, "-{part}"),
            Self::Pair(left, sign, right) => write!(out, "({left} {sign} {right})"),
        }
    }
}

/// A value by the rules of the calculation: the number in millimeters to the power of the dimension, and what units
/// are in it: 0 for none, 1 for inches alone, 2 for others.
#[derive(Clone, Debug, PartialEq)]
struct Worth {
    value: BigRational,
    dimension: i32,
    units: u8,
}

fn big(num: i128, den: i128) -> BigRational {
    BigRational::new(num.into(), den.into())
}

impl Tree {
    /// `None` where the calculation has no answer.
    fn worth(&self) -> Option<Worth> {
        let leaf = |value, dimension, units| Some(Worth { value, dimension, units });
        match self {
            Self::Leaf(Leaf::Bare(size)) if size % 3 == 0 => leaf(big((*size).into(), 1), 0, 0),
            Self::Leaf(Leaf::Bare(size)) => leaf(big((*size).into(), 64), 0, 0),
            Self::Leaf(Leaf::Inches(size)) => leaf(big(i128::from(*size) * 65, 64) * big(127, 5), 1, 1),
            Self::Leaf(Leaf::Millimeters(size)) => leaf(big((*size).into(), 1), 1, 2),
            Self::Negative(part) => part.worth().map(|part| Worth { value: -part.value, ..part }),
            Self::Pair(left, sign, right) => combined(left.worth()?, *sign, right.worth()?),
        }
    }
}

/// A bare number beside a length in inches is inches.
fn beside(number: Worth, length: &Worth) -> Worth {
    match (number.units, length.dimension, length.units) {
        (0, 1, 1) => Worth { value: number.value * big(127, 5), dimension: 1, units: 1 },
        _ => number,
    }
}

fn combined(left: Worth, sign: char, right: Worth) -> Option<Worth> {
    let units = left.units.max(right.units);
    let (value, dimension) = match sign {
        '*' => (left.value * right.value, left.dimension + right.dimension),
        '/' if right.value == big(0, 1) => return None,
        '/' => (left.value / right.value, left.dimension - right.dimension),
        _ => {
            let (left, right) = (beside(left.clone(), &right), beside(right, &left));
            let value = if sign == '+' { left.value + right.value } else { left.value - right.value };
            if left.dimension != right.dimension {
                return None;
            }
            (value, left.dimension)
        }
    };
    (0..=3).contains(&dimension).then_some(Worth { value, dimension, units })
}

/// The same value as the parser gives it.
fn found(quantity: Quantity) -> (BigRational, i32) {
    let exact = |ratio: Ratio<i128>| big(*ratio.numer(), *ratio.denom());
    match quantity {
        Quantity::Number(number) => (exact(number), 0),
        Quantity::Length(length) => (exact(length.in_unit(Unit::Millimeter)), 1),
        Quantity::Area(area) => (exact(area.checked_in_square(Unit::Inch).unwrap()) * big(127, 5).pow(2), 2),
        Quantity::Volume(volume) => (exact(volume.checked_in_cubic(Unit::Inch).unwrap()) * big(127, 5).pow(3), 3),
        _ => unreachable!(),
    }
}

/// Whether a step on the way is too much for a denominator of 64 bits or a numerator of 128.
fn is_large(tree: &Tree) -> bool {
    let own = tree.worth().is_some_and(|worth| {
        let limit = BigInt::from(1) << 60;
        *worth.value.numer() > limit || *worth.value.denom() > limit
    });
    own || match tree {
        Tree::Leaf(_) => false,
        Tree::Negative(part) => is_large(part),
        Tree::Pair(left, _, right) => is_large(left) || is_large(right),
    }
}

quickcheck! {
    fn a_calculation_comes_to_what_big_rationals_come_to(tree: Tree) -> bool {
        match (evaluate(&tree.to_string()), tree.worth()) {
            (Ok(quantity), Some(worth)) => found(quantity) == (worth.value, worth.dimension),
            (Err(error), Some(_)) => error.kind() == Kind::ResultOutOfRange && is_large(&tree),
            (Err(error), None) => matches!(
                error.kind(),
                Kind::BareNumber | Kind::NumberInSum | Kind::UnlikeSum | Kind::BeyondVolume | Kind::InverseLength
                    | Kind::DivisionByZero | Kind::ResultOutOfRange
            ),
            (Ok(_), None) => false,
        }
    }

    /// Without brackets products go first, and like signs from left to right.
    fn signs_go_in_the_usual_order(first: u8, rest: Vec<(u8, u8)>) -> bool {
        let rest: Vec<_> = rest.into_iter().take(6).map(|(sign, size)| (['+', '-', '*', '/'][usize::from(sign % 4)], size.max(1))).collect();
        let text = rest.iter().fold(format!("{first} 1/2"), |text, (sign, size)| format!("{text} {sign} {size} 1/2"));
        let half = |size: u8| big(i128::from(size) * 2 + 1, 2);
        let (mut total, mut product) = (big(0, 1), half(first));
        for (sign, size) in rest {
            match sign {
                '*' => product *= half(size),
                '/' => product /= half(size),
                '+' => (total, product) = (total + product, half(size)),
                _ => (total, product) = (total + product, -half(size)),
            }
        }
        found(evaluate(&text).unwrap()) == (total + product, 0)
    }
}

/// Both the trees with an answer and those without must be there, or the property above would prove nothing.
#[test]
fn random_calculations_are_of_every_kind() {
    let mut source = Gen::new(100);
    let mut kinds = [0; 5];
    for _ in 0..2_000 {
        let worth = Tree::arbitrary(&mut source).worth();
        kinds[worth.map_or(4, |worth| usize::try_from(worth.dimension).unwrap())] += 1;
    }
    assert!(kinds.iter().all(|count| *count >= 20), "{kinds:?}");
}

/// Every text that takes one piece of each column.
fn every<'a>(columns: &[&[&'a str]]) -> Vec<Vec<&'a str>> {
    columns.iter().fold(vec![Vec::new()], |rows, column| {
        rows.iter().flat_map(|row| column.iter().map(move |piece| [row.as_slice(), &[piece]].concat())).collect()
    })
}

/// What a hyphen does is what one of its readings does: a blank in its place joins, a minus sign subtracts. Where both
/// are readings and differ, the text is refused, but for the everyday spellings named here.
#[test]
fn a_hyphen_is_never_guessed() {
    let (mut read, mut refused) = (0, 0);
    for parts in every(&[
        &["", "1 + ", "1\" - ", "100 - ", "2 * ", "-", "- -", "1\" / 2 - ", "("],
        &["72", "6'", "6 ft", "17 5/8", "1 m", "3\"", "2.5", "½", "12' 11", "2 yd", "5 1/2'", "2 yd 1 ft"],
        &["-", " - ", " -", "- ", "–", " – "],
        &["3/4", "½", "2", "2\"", "3 1/2\"", "11-1/2\"", "5'", "20 cm", "3/4\"", "0.5", "3 / 4", "9/8"],
        &["", " + 1\"", " - 1/2", " * 2", "*2\"", "/2", " / 2", ")"],
    ]) {
        let [before, left, hyphen, right, behind] = parts[..] else { unreachable!() };
        let text = parts.concat();
        // A hyphen joins nothing to meters and yards, though a blank does.
        let never = if left.ends_with(" m") || left.ends_with("yd") { "?" } else { "" };
        let joined = evaluate(&format!("{before}{left} {never}{right}{behind}"));
        let apart = evaluate(&format!("{before}{left} − {right}{behind}"));
        let both = joined.is_ok() && apart.is_ok() && joined != apart;
        let spaced = hyphen.starts_with(' ') && hyphen.ends_with(' ');
        let feet = left.ends_with('\'') || left.ends_with("ft");
        let alone = before.replace(['-', ' '], "").is_empty() && behind.is_empty();
        let everyday = feet && !hyphen.contains(' ') || alone && !spaced;
        let counts = behind.trim_start().starts_with('*');
        match evaluate(&text) {
            Ok(found) if both && everyday => assert_eq!(Ok(found), joined, "{text:?}"),
            Ok(found) if both => assert!(Ok(found) == apart && spaced && (!feet || counts), "{text:?}"),
            Ok(found) => assert!(Ok(found) == joined || Ok(found) == apart, "{text:?}"),
            Err(error) if error.kind() == Kind::HyphenReadings => assert!(joined.is_err() || joined != apart, "{text:?}"),
            Err(_) => assert!(joined.is_err() || apart.is_err(), "{text:?}"),
        }
        *if evaluate(&text).is_ok() { &mut read } else { &mut refused } += 1;
    }
    assert!(read > 10_000 && refused > 10_000, "{read} read, {refused} refused");
}

/// The same for a slash: brackets make a fraction of what stands round it, or keep the numerator with what is in front.
#[test]
fn a_slash_is_never_guessed() {
    let (mut read, mut refused) = (0, 0);
    for parts in every(&[
        &["12", "1 m", "6'", "6' 2\"", "½", "2 1/2", "3/8", "(5)", "2.5", "-12"],
        &["/", " / ", " /", "/ ", "÷", " * ", "*"],
        &["1", "3", "4"],
        &["/", " / ", " /", "/ "],
        &["2", "4", "16"],
        &["", "\"", " mm"],
    ]) {
        let [before, sign, num, slash, den, unit] = parts[..] else { unreachable!() };
        let text = parts.concat();
        let fraction = evaluate(&format!("({before}){sign}({num}/{den}{unit})"));
        let steps = evaluate(&format!("(({before}){sign}({num})) ÷ ({den}{unit})"));
        let both = fraction.is_ok() && steps.is_ok() && fraction != steps;
        match evaluate(&text) {
            Ok(found) if both && slash == "/" => assert!(Ok(found) == fraction && !unit.is_empty(), "{text:?}"),
            Ok(found) if both => assert!(Ok(found) == steps && slash == " / ", "{text:?}"),
            Ok(found) => assert!(Ok(found) == fraction || Ok(found) == steps, "{text:?}"),
            Err(error) if error.kind() == Kind::SlashReadings => assert!(fraction.is_err() || fraction != steps, "{text:?}"),
            Err(_) => assert!(fraction.is_err() || steps.is_err(), "{text:?}"),
        }
        *if evaluate(&text).is_ok() { &mut read } else { &mut refused } += 1;
    }
    assert!(read > 500 && refused > 500, "{read} read, {refused} refused");
}
