//! What each kind of error says, in one place, so that the words can be read together. Hints that must
//! be worked out from the text are left to `hint.rs`.

use super::error::ParseErrorKind as Kind;

/// The fixed texts of one kind.
pub(super) struct Wording {
    /// What is wrong.
    pub(super) what: &'static str,
    /// What should have stood there.
    pub(super) expected: &'static str,
    /// What to do about it; empty where there is nothing to suggest, or where it depends on the text.
    pub(super) hint: &'static str,
}

const fn wording(what: &'static str, expected: &'static str, hint: &'static str) -> Wording {
    Wording { what, expected, hint }
}

impl Kind {
    /// A flat list: one kind, its three texts.
    #[allow(clippy::too_many_lines)]
    pub(super) const fn wording(self) -> Wording {
        match self {
            Self::Empty => wording("no length", "a length such as 17 5/8 or 6'-3\"", ""),
            Self::TextTooLong => wording("too much text", "less than 4 GiB", ""),
            Self::NotANumber => wording("no number", "a number such as 17, 5/8, 3½ or 17.625", ""),
            Self::LoneSign => wording("a sign without a number", "a number behind the sign", ""),
            Self::ImproperFraction => {
                wording("a fraction part of one or more", "a fraction below one behind the whole number", "")
            }
            Self::LostBlank => wording("a fraction with two readings", "a blank behind the whole number", ""),
            Self::ZeroDenominator => {
                wording("a fraction over zero", "a number above zero below the line", "check the number below the line")
            }
            Self::MissingDenominator => {
                wording("half a fraction", "a number below the line", "write the fraction out, as in 3/8")
            }
            Self::ChainedFraction => {
                wording("a fraction of a fraction", "one number over one number", "write one fraction, as in 5/8")
            }
            Self::DecimalWithFraction => {
                wording("a decimal together with a fraction", "the one or the other", "write 17 7/8 or 17.875, not both at once")
            }
            Self::TwoNumbers => wording(
                "two numbers and nothing to tell them apart",
                "one number, or a unit behind the first",
                "put a unit behind each, as in 5' 3\", or write a fraction out, as in 5 3/8",
            ),
            Self::DashReadings => {
                wording("a dash with two readings, joined or subtracted", "a dash without blanks, or a calculation", "")
            }
            Self::JoinedNumbers => wording("two whole numbers joined by a dash", "one length", ""),
            Self::FeetInchesSixteenths => wording(
                "three numbers joined by dashes",
                "one length",
                "if this is feet-inches-sixteenths, ask for that mode; else mark each number with its unit",
            ),
            Self::MinusJoins => wording(
                "a minus sign inside a number",
                "a hyphen to join, or a calculation",
                "a hyphen joins, as in 17-5/8; to subtract, calculate 17 - 5/8",
            ),
            Self::CommaReadings => wording("a comma with two readings", "digits without a comma", ""),
            Self::BadGroup => {
                wording("a comma that does not group", "three digits behind each comma", "use a point for decimals")
            }
            Self::PointGroup => wording(
                "a point that may group thousands",
                "a comma for decimals, or no point",
                "leave the point out for thousands, put a comma in its place for decimals",
            ),
            Self::ApostropheReadings => wording("a mark with two readings", "at most two digits behind a foot mark", ""),
            Self::PointReadings => wording(
                "a point with two readings",
                "a blank behind an abbreviation's full stop",
                "put a blank behind the full stop, or a zero before the decimal point",
            ),
            Self::MeterDecimals => {
                wording("digits glued to the meter", "two digits, as in 1m20", "put a unit behind each number, as in 1 m 5 mm")
            }
            Self::NominalName => wording(
                "the name of a board, not a length",
                "one length",
                "a board is thinner than its name: a 2x4 measures 1 1/2 x 3 1/2; ask for one of its lengths",
            ),
            Self::SizeNotLength => wording("a size, not a length", "one length", "give one length of the size at a time"),
            Self::SpokenReadings => wording("words with two readings", "words that make one length only", ""),
            Self::CrewCode => wording("two numbers side by side", "one number, or a unit behind the first", ""),
            Self::TooManyWords => wording("too many words", "one length", "say one length at a time"),
            Self::ToleranceNotLength => {
                wording("a length with a tolerance", "a length alone", "give the length without its tolerance")
            }
            Self::Qualified => wording(
                "a length with a qualifier",
                "a length alone",
                "how much strong or shy is differs from shop to shop: write the length itself, as in 17 41/64",
            ),
            Self::Arithmetic => wording("a calculation, not a length", "one length", "work it out first, or calculate it"),
            Self::RepeatedUnit => wording(
                "the same unit twice",
                "a smaller unit behind a larger one",
                "if the first should be feet, mark it ' or ft",
            ),
            Self::RisingUnit => {
                wording("a larger unit behind a smaller one", "a smaller unit behind a larger one", "put the feet first")
            }
            Self::MixedSystems => wording(
                "metric and imperial in one length",
                "units of one system",
                "to put the two together, calculate 1 m + 3 in",
            ),
            Self::DashBetween => wording(
                "a dash between units",
                "a blank between units",
                "a dash joins feet to inches and a whole to its fraction; to subtract, calculate",
            ),
            Self::UnknownUnit => wording("an unknown unit", "in, ft, yd, mm, cm or m", ""),
            Self::NoUnit => wording("a number without a unit", "a unit behind the number", "write the unit, as in 17 5/8 in"),
            Self::AreaUnit => wording("no unit of area", "sq in, sq ft, sq yd, sq mm, sq cm or sq m behind the number", ""),
            Self::VolumeUnit => wording("no unit of volume", "cu in, cu ft, cu yd, cu mm, cu cm or cu m behind the number", ""),
            Self::FractionNotLast => wording(
                "a part of a unit before the last number",
                "a whole number of every unit but the last",
                "give the part with the last unit alone, as in 5'-9\"",
            ),
            Self::LooseTail => wording(
                "a number behind a finished length",
                "the end of the length, or a unit behind the number",
                "put a fraction before its unit, as in 3 1/2 in; a slope is not a length",
            ),
            Self::TooLarge => wording("a number too large to hold", "fewer digits", ""),
            Self::TooFine => wording("a number too fine to hold exactly", "fewer decimals or a smaller denominator", ""),
            Self::Trailing => wording("something behind the length", "the end of the length", ""),
            Self::QualifiersDisagree => wording("strong and shy at once", "qualifiers that lie on one side of the mark", ""),
            Self::QualifierSide => wording(
                "a qualifier that says no side",
                "strong, over and the like, or shy, under and the like",
                "say on which side of the mark it is, as in 3/4 strong or 3/4 shy",
            ),
            Self::NotASize => wording(
                "one length, not a size",
                "two or three lengths",
                "join the lengths of a size by x, as in 3/4\" x 4' x 8'",
            ),
            Self::TooManyLengths => wording("too many lengths for a size", "two or three lengths", ""),
            Self::SizeUnits => wording(
                "a size with units on some lengths only",
                "a unit on every length, on none, or on the last for all",
                "mark each length, as in 6' x 8'",
            ),
            Self::AxisTwice => wording("an axis named twice", "each of T, W, L, H, D once", ""),
            Self::UnknownAxis => wording("no axis", "T, W, L, H or D, or its name", ""),
            Self::LegendMismatch => wording("a legend that does not fit its size", "as many names as there are lengths", ""),
            Self::RestatedOtherwise => wording(
                "a size restated as another size",
                "the same size within 1/16 in",
                "one of the two is a misprint: check which",
            ),
            Self::NoTolerance => {
                wording("a length without a tolerance", "±, or + and - with a length each", "write 24 ±1/32 or 24 +1/32 -0")
            }
            Self::ToleranceUnit => wording(
                "a length and a tolerance whose units do not fit together",
                "a unit behind each number, or behind the last for all, or inches",
                "write the unit behind each number, or once at the end for all of them",
            ),
            Self::ToleranceOneSign => wording(
                "two sides of a tolerance with the same sign",
                "one side behind +, the other behind -",
                "where both limits lie on one side, give a length between them",
            ),
            Self::ToleranceReadings => wording(
                "a hyphen before a tolerance with two readings, joined or the side under",
                "the side over first, or no blank before a hyphen that joins",
                "write the side over first, or leave out the blank before a hyphen that joins",
            ),
            Self::FieldTooLarge => {
                wording("a place past its end", "inches to 11 and sixteenths to 15", "carry what is too much to the place before")
            }
            Self::PackedTooShort => wording(
                "too few digits for packed feet, inches and sixteenths",
                "two digits for sixteenths, two for inches, and feet before them",
                "mark a plain length, as in 72\"; pack 6 ft as 60000",
            ),
            Self::ToleranceSigns => wording("a tolerance below zero", "amounts of zero or more behind their signs", ""),
            Self::MissingOperand => wording("a missing number", "a number or an opening bracket", ""),
            Self::MissingOperator => wording(
                "two things side by side and no sign between them",
                "+, -, *, / or the end",
                "to multiply, write *; a unit goes behind its number, not behind a bracket",
            ),
            Self::UnclosedBracket => wording("a bracket that is never closed", "a closing bracket for it", ""),
            Self::StrayBracket => wording("a closing bracket that none opens", "an opening bracket before it", ""),
            Self::TooDeep => {
                wording("brackets too deep in brackets", "at most 64 open at once", "work out the innermost ones first")
            }
            Self::HyphenReadings => {
                wording("a hyphen with two readings, joined or subtracted", "a hyphen that reads one way only", "")
            }
            Self::SlashReadings => {
                wording("a slash with two readings, a fraction's or a division's", "a slash that reads one way only", "")
            }
            Self::SizeOrProduct => wording(
                "a size or a product",
                "a sign that only multiplies",
                "to multiply, write *; a size such as 3/4 x 4' x 8' is not one length",
            ),
            Self::BareNumber => wording(
                "a bare number beside a length in another unit",
                "a number with its unit",
                "say what it measures, as in 72 in or 72 mm",
            ),
            Self::NumberInSum => wording(
                "a plain number in a sum with a length, an area or a volume",
                "a number with its unit",
                "a number can multiply or divide a length, not be added to it",
            ),
            Self::UnlikeSum => wording(
                "lengths, areas or volumes mixed in one sum",
                "lengths alone, areas alone or volumes alone",
                "a length times a length is an area; to take a length several times, multiply it by a bare number",
            ),
            Self::BeyondVolume => wording("a product of more than three lengths", "at most a volume", ""),
            Self::InverseLength => wording(
                "a number divided by a length, or a length by an area",
                "a divisor of the same kind, or a plain number",
                "to count how often it goes in, give both their unit, as in 72 in / 3 in; a fraction has no blanks, as in 3/4 in",
            ),
            Self::DivisionByZero => wording("a division by zero", "a divisor other than zero", ""),
            Self::ResultOutOfRange => wording("an answer out of range", "an answer that can be held exactly", ""),
            Self::NumberResult => wording(
                "a number where a length is due",
                "a calculation that comes to a length",
                "a length divided by a length is how often it goes in",
            ),
            Self::AreaResult => wording(
                "an area where a length is due",
                "a calculation that comes to a length",
                "a length times a length is an area; to take a length several times, multiply it by a bare number",
            ),
            Self::VolumeResult => wording(
                "a volume where a length is due",
                "a calculation that comes to a length",
                "three lengths multiplied are a volume; to take a length several times, multiply it by a bare number",
            ),
        }
    }
}
