//! Calculations made from a run of choices, as text and as what they come to in big rationals by the rules of
//! `evaluate`. The choices come from elsewhere: from `texts/random_calculations.rs`, and from the fuzz target
//! `calculation`. Nothing here goes through the crate's own parser of lengths.

use std::fmt::{self, Display};

use num_bigint::BigInt;
use num_rational::{BigRational, Ratio};
use scantling::{LengthParser, ParseError, ParseErrorKind as Kind, Quantity, Unit};

use super::printers::{Choose, one_of};

/// A calculation, every pair in brackets, so that nothing hangs on order or has two readings.
#[derive(Clone, Debug)]
pub enum Tree {
    Leaf(Leaf),
    Negative(Box<Tree>),
    Pair(Box<Tree>, char, Box<Tree>),
}

/// An operand as it is written: so many, in some spelling.
#[derive(Clone, Copy, Debug)]
pub struct Leaf {
    spelling: Spelling,
    size: u32,
}

#[derive(Clone, Copy, Debug)]
enum Spelling {
    /// `(5)`
    Bare,
    /// `(5/64)`
    Bare64ths,
    /// `5 5/64"`
    Mixed,
    /// `5'-5 1/2"`
    FeetInches,
    /// `5' 5½`
    FeetGlyph,
    /// `5.125` with a unit's symbol
    Decimal(Unit),
    /// `5 m 5 cm`
    Meters,
    /// `(5 yd 2 ft)`
    Yards,
}

const SPELLINGS: [Spelling; 16] = [
    Spelling::Bare,
    Spelling::Bare,
    Spelling::Bare64ths,
    Spelling::Mixed,
    Spelling::Mixed,
    Spelling::Mixed,
    Spelling::FeetInches,
    Spelling::FeetGlyph,
    Spelling::Decimal(Unit::Inch),
    Spelling::Decimal(Unit::Foot),
    Spelling::Decimal(Unit::Yard),
    Spelling::Decimal(Unit::Millimeter),
    Spelling::Decimal(Unit::Centimeter),
    Spelling::Decimal(Unit::Meter),
    Spelling::Meters,
    Spelling::Yards,
];

impl Tree {
    /// A calculation, at most so many pairs deep.
    pub fn grow(choose: &mut Choose<'_>, depth: usize) -> Self {
        let kind = if depth == 0 { 0 } else { choose(8) };
        let mut part = || Box::new(Self::grow(choose, depth - 1));
        match kind {
            0 => Self::Leaf(Leaf { spelling: one_of(choose, &SPELLINGS), size: size(choose) }),
            1 => Self::Negative(part()),
            _ => {
                let (left, right) = (part(), part());
                Self::Pair(left, one_of(choose, &['+', '-', '*', '/']), right)
            }
        }
    }

    /// What it comes to; `None` where it has no answer.
    pub fn worth(&self, default_unit: Unit) -> Option<Worth> {
        match self {
            Self::Leaf(leaf) => Some(leaf.worth(default_unit)),
            Self::Negative(part) => part.worth(default_unit).map(|part| Worth { value: -part.value, ..part }),
            Self::Pair(left, sign, right) => combined(left.worth(default_unit)?, *sign, right.worth(default_unit)?, default_unit),
        }
    }

    /// Whether every step on the way can be held, a bare number as the length that it may be besides.
    fn is_held(&self, default_unit: Unit) -> bool {
        self.worth(default_unit).is_none_or(|worth| worth.is_held(default_unit))
            && match self {
                Self::Leaf(_) => true,
                Self::Negative(part) => part.is_held(default_unit),
                Self::Pair(left, _, right) => left.is_held(default_unit) && right.is_held(default_unit),
            }
    }

    /// Calculates it from its text, and holds the answer against what it comes to.
    ///
    /// # Panics
    ///
    /// When the two differ.
    pub fn comes_out_right(&self, default_unit: Unit) {
        let (text, parser) = (self.to_string(), LengthParser::new().default_unit(default_unit));
        let worth = self.worth(default_unit);
        let found = parser.evaluate(&text);
        self.is_answer(&text, found.map(found_worth), worth.as_ref(), default_unit);
        let found = parser.evaluate_length(&text);
        match worth.map(|worth| worth.due_as_length(default_unit)) {
            Some(Err(kind)) => assert!(is_refused(&found, &[kind, Kind::ResultOutOfRange]), "{text:?}: {found:?}"),
            Some(Ok(worth)) => {
                let found = found.map(|length| found_worth(Quantity::Length(length)));
                self.is_answer(&text, found, Some(&worth), default_unit);
            }
            None => assert!(is_refused(&found, &UNANSWERED), "{text:?}: {found:?}"),
        }
    }

    fn is_answer(&self, text: &str, found: Result<(BigRational, i32), ParseError>, worth: Option<&Worth>, default_unit: Unit) {
        match (found, worth) {
            (Ok(found), Some(worth)) => assert_eq!(found, (worth.value.clone(), worth.dimension), "{text:?}"),
            (Err(error), Some(_)) => {
                assert!(error.kind() == Kind::ResultOutOfRange && !self.is_held(default_unit), "{text:?}: {error}");
            }
            (found, None) => assert!(is_refused(&found, &UNANSWERED), "{text:?}: {found:?}"),
        }
    }
}

/// What a calculation without an answer is refused as. A step out of range may come before the slip.
const UNANSWERED: [Kind; 7] = [
    Kind::BareNumber,
    Kind::NumberInSum,
    Kind::UnlikeSum,
    Kind::BeyondVolume,
    Kind::InverseLength,
    Kind::DivisionByZero,
    Kind::ResultOutOfRange,
];

fn is_refused<T>(found: &Result<T, ParseError>, kinds: &[Kind]) -> bool {
    found.as_ref().is_err_and(|error| kinds.contains(&error.kind()))
}

/// Small, mostly.
fn size(choose: &mut Choose<'_>) -> u32 {
    let most = one_of(choose, &[4, 64, 64, 1000, u32::MAX.into()]);
    u32::try_from(choose(most)).unwrap()
}

impl Display for Tree {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Leaf(leaf) => write!(out, "{leaf}"),
            Self::Negative(part) => write!(out, "-{part}"),
            Self::Pair(left, sign, right) => write!(out, "({left} {sign} {right})"),
        }
    }
}

impl Display for Leaf {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { spelling, size } = self;
        match spelling {
            Spelling::Bare => write!(out, "({size})"),
            Spelling::Bare64ths => write!(out, "({}/64)", size % 100),
            Spelling::Mixed => write!(out, "{size} {}/64\"", size % 64),
            Spelling::FeetInches => write!(out, "{size}'-{} 1/2\"", size % 12),
            Spelling::FeetGlyph => write!(out, "{size}' {}½", size % 12),
            Spelling::Decimal(unit) => write!(out, "{size}.125 {}", unit.symbol()),
            Spelling::Meters => write!(out, "{size} m {} cm", size % 100),
            Spelling::Yards => write!(out, "({size} yd {} ft)", size % 3),
        }
    }
}

impl Leaf {
    fn worth(self, default_unit: Unit) -> Worth {
        let (size, part) = (i128::from(self.size), |count: u32| i128::from(self.size % count));
        let of = |num: i128, den: i128, unit: Unit| (big(num, den) * per(unit), unit);
        let (value, unit) = match self.spelling {
            Spelling::Bare => return Worth::number(big(size, 1)),
            Spelling::Bare64ths => return Worth::number(big(part(100), 64)),
            Spelling::Mixed => of(size * 64 + part(64), 64, Unit::Inch),
            Spelling::FeetInches | Spelling::FeetGlyph => of(size * 24 + part(12) * 2 + 1, 2, Unit::Inch),
            Spelling::Decimal(unit) => of(size * 8 + 1, 8, unit),
            Spelling::Meters => of(size * 100 + part(100), 1, Unit::Centimeter),
            Spelling::Yards => of(size * 3 + part(3), 1, Unit::Foot),
        };
        Worth { value, dimension: 1, units: if unit == default_unit { Units::Default } else { Units::Other } }
    }
}

/// A value by the rules of the calculation: inches to the power of the dimension, and what units are in it.
#[derive(Clone, Debug, PartialEq)]
pub struct Worth {
    pub value: BigRational,
    pub dimension: i32,
    units: Units,
}

/// The greater one wins when two values come together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Units {
    None,
    Default,
    Other,
}

impl Worth {
    fn number(value: BigRational) -> Self {
        Self { value, dimension: 0, units: Units::None }
    }

    /// A number without any unit is a length in the default unit where a length is due.
    fn due_as_length(self, default_unit: Unit) -> Result<Self, Kind> {
        match (self.dimension, self.units) {
            (0, Units::None) => Ok(Self { value: self.value * per(default_unit), dimension: 1, units: Units::Default }),
            (0, _) => Err(Kind::NumberResult),
            (1, _) => Ok(self),
            (2, _) => Err(Kind::AreaResult),
            _ => Err(Kind::VolumeResult),
        }
    }

    /// Held are an `i128` over a `u64`: of numbers, of square and cubic inches, and of ticks.
    fn is_held(&self, default_unit: Unit) -> bool {
        let fits = |value: &BigRational| {
            let num = i128::try_from(value.numer()).is_ok_and(|num| num != i128::MIN);
            num && u64::try_from(value.denom()).is_ok()
        };
        // The ticks of an inch, 2^10 × 3^3 × 5^6 × 7 × 11 × 13 × 127: worked by hand.
        let ticks = big(54_918_864_000_000, 1);
        match self.dimension {
            0 if self.units == Units::None => fits(&self.value) && fits(&(&self.value * per(default_unit) * ticks)),
            1 => fits(&(&self.value * ticks)),
            _ => fits(&self.value),
        }
    }
}

fn big(num: i128, den: i128) -> BigRational {
    BigRational::new(BigInt::from(num), BigInt::from(den))
}

/// The inches of a unit. The inch is 25.4 mm, by the international yard and pound agreement of 1959.
fn per(unit: Unit) -> BigRational {
    match unit {
        Unit::Inch => big(1, 1),
        Unit::Foot => big(12, 1),
        Unit::Yard => big(36, 1),
        Unit::Millimeter => big(5, 127),
        Unit::Centimeter => big(50, 127),
        Unit::Meter => big(5000, 127),
    }
}

/// A bare number beside a length in the default unit is a length in it.
fn beside(number: Worth, length: &Worth, default_unit: Unit) -> Worth {
    match (number.dimension, number.units, length.dimension, length.units) {
        (0, Units::None, 1, Units::Default) => {
            Worth { value: number.value * per(default_unit), dimension: 1, units: Units::Default }
        }
        _ => number,
    }
}

fn combined(left: Worth, sign: char, right: Worth, default_unit: Unit) -> Option<Worth> {
    let units = left.units.max(right.units);
    let (value, dimension) = match sign {
        '*' => (left.value * right.value, left.dimension + right.dimension),
        '/' if right.value == big(0, 1) => return None,
        '/' => (left.value / right.value, left.dimension - right.dimension),
        _ => {
            let (left, right) = (beside(left.clone(), &right, default_unit), beside(right, &left, default_unit));
            if left.dimension != right.dimension {
                return None;
            }
            (if sign == '+' { left.value + right.value } else { left.value - right.value }, left.dimension)
        }
    };
    (0..=3).contains(&dimension).then_some(Worth { value, dimension, units })
}

/// The same value as the parser gives it.
fn found_worth(quantity: Quantity) -> (BigRational, i32) {
    let exact = |ratio: Ratio<i128>| big(*ratio.numer(), *ratio.denom());
    match quantity {
        Quantity::Number(number) => (exact(number), 0),
        Quantity::Length(length) => (exact(length.in_unit(Unit::Inch)), 1),
        Quantity::Area(area) => (exact(area.checked_in_square(Unit::Inch).unwrap()), 2),
        Quantity::Volume(volume) => (exact(volume.checked_in_cubic(Unit::Inch).unwrap()), 3),
        _ => unreachable!(),
    }
}
