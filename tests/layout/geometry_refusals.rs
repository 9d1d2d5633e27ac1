//! What geometry refuses, with the lengths in it, and the words it is refused in. Every row is worked by hand.

use scantling::{
    Angle, FrameSize, GeometryError, Hook, Length, Molding, Polygon, Triple, Unit, burned_inch, center_from_ends, check_miters,
    diagonal, exact_diagonal, midpoint, out_of_square, slanted_reading, slanted_rule, squared_diagonal,
};

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn whole(count: i64) -> Length {
    Length::new(count, Unit::Inch)
}

#[test]
#[rustfmt::skip]
fn refusals() {
    use GeometryError::{BelowZero, NotAMiter, NotAStep, NotAboveZero, NothingLeft, OutOfReach, OutOfRange};
    let (zero, inch, less) = (Length::ZERO, whole(1), whole(-1));
    let stock = Molding::new(whole(2));
    let side = FrameSize::Outside(whole(3));
    let fine = inches(1, u64::MAX);
    let rows = [
        (diagonal(zero, inch, inch).err(), NotAboveZero { what: "a side", given: zero }),
        (diagonal(inch, less, inch).err(), NotAboveZero { what: "a side", given: less }),
        (diagonal(inch, inch, zero).err(), NotAStep { step: zero }),
        (diagonal(Length::MAX, Length::MAX, inch).err(), OutOfRange { length: Length::MAX }),
        (diagonal(Length::MAX, inch, fine).err(), OutOfRange { length: Length::MAX }),
        (exact_diagonal(zero, inch).err(), NotAboveZero { what: "a side", given: zero }),
        (exact_diagonal(Length::MAX, fine).err(), OutOfRange { length: Length::MAX }),
        (squared_diagonal(Length::MAX, inch).err(), OutOfRange { length: Length::MAX }),
        (squared_diagonal(inch, less).err(), NotAboveZero { what: "a side", given: less }),
        (out_of_square(inch, zero).err(), NotAboveZero { what: "a diagonal", given: zero }),
        (out_of_square(whole(9), inch).unwrap().sideways(zero).err(), NotAboveZero { what: "a side", given: zero }),
        (out_of_square(whole(9), inch).unwrap().sideways(whole(4)).err(), GeometryError::NoSuchFrame { long: whole(9), short: inch, side: whole(4) }),
        (out_of_square(whole(9), inch).unwrap().sideways(whole(5)).err(), GeometryError::NoSuchFrame { long: whole(9), short: inch, side: whole(5) }),
        (out_of_square(whole(9), inch).unwrap().squared(less).err(), NotAStep { step: less }),
        (Triple::new(0, 5, 5).err(), GeometryError::NotATriple { short: 0, long: 5, across: 5 }),
        (Triple::new(6, 5, 8).err(), GeometryError::NotATriple { short: 5, long: 6, across: 8 }),
        (Triple::THREE_FOUR_FIVE.within(whole(47), whole(47), whole(12)).err(), OutOfReach { triple: Triple::THREE_FOUR_FIVE, unit: whole(12), first: whole(47), second: whole(47) }),
        (Triple::THREE_FOUR_FIVE.within(whole(47), zero, inch).err(), NotAboveZero { what: "the reach along a side", given: zero }),
        (Triple::THREE_FOUR_FIVE.within(whole(47), whole(47), zero).err(), NotAboveZero { what: "a unit", given: zero }),
        (Triple::THREE_FOUR_FIVE.within(Length::MAX, Length::MAX, inches(1, 64)).err(), OutOfRange { length: inches(1, 64) }),
        (Polygon::new(2).err(), GeometryError::TooFewSides { sides: 2 }),
        (Molding::new(zero).piece(side).err(), NotAboveZero { what: "a stock width", given: zero }),
        (stock.rabbet(less).piece(side).err(), BelowZero { what: "a rabbet", given: less }),
        (stock.rabbet(whole(2)).piece(side).err(), GeometryError::RabbetTooDeep { rabbet: whole(2), width: whole(2) }),
        (stock.allowance(less).piece(side).err(), BelowZero { what: "an allowance", given: less }),
        (stock.piece(FrameSize::Outside(zero)).err(), NotAboveZero { what: "an outside size", given: zero }),
        (stock.piece(FrameSize::Opening(zero)).err(), NotAboveZero { what: "an opening", given: zero }),
        (stock.piece(FrameSize::Picture(zero)).err(), NotAboveZero { what: "a picture size", given: zero }),
        (stock.piece(FrameSize::Opening(Length::MAX)).err(), OutOfRange { length: Length::MAX }),
        (stock.piece(side).err(), NothingLeft { side: whole(3), depth: whole(2), setting: Angle::degrees(45) }),
        (stock.piece_at(side, Angle::degrees(40), inch).err(), NothingLeft { side: whole(3), depth: whole(2), setting: Angle::degrees(40) }),
        (stock.piece_at(side, Angle::degrees(90), inch).err(), NotAMiter { setting: Angle::degrees(90) }),
        (stock.piece_at(side, Angle::degrees(-1), inch).err(), NotAMiter { setting: Angle::degrees(-1) }),
        (stock.piece_at(side, Angle::degrees(30), zero).err(), NotAStep { step: zero }),
        (stock.piece_at(side, Angle::degrees(45), zero).err(), NotAStep { step: zero }),
        (check_miters(zero, inch, inch, zero).err(), NotAboveZero { what: "a stock width", given: zero }),
        (check_miters(inch, zero, inch, zero).err(), NotAboveZero { what: "an outer edge", given: zero }),
        (check_miters(inch, inch, less, zero).err(), BelowZero { what: "an inner edge", given: less }),
        (check_miters(inch, inch, inch, less).err(), BelowZero { what: "a limit", given: less }),
        (midpoint(Length::MAX, inch).err(), OutOfRange { length: Length::MAX }),
        (center_from_ends(zero, zero).err(), NotAboveZero { what: "a measure", given: zero }),
        (center_from_ends(inch, whole(2)).err(), GeometryError::OverlapTooLong { measure: inch, overlap: whole(2) }),
        (slanted_rule(zero, 3, inch).err(), NotAboveZero { what: "the width of a board", given: zero }),
        (slanted_rule(whole(3), 0, inch).err(), GeometryError::ZeroStrips),
        (slanted_rule(whole(3), 3, inch).err(), GeometryError::RuleTooShort { reading: inch, width: whole(3) }),
        (slanted_rule(whole(3), 7, Length::MAX).err(), OutOfRange { length: Length::MAX }),
        (slanted_reading(whole(3), 0, inch, whole(6)).err(), GeometryError::ZeroStrips),
        (slanted_reading(whole(3), 3, zero, whole(6)).err(), NotAboveZero { what: "a unit", given: zero }),
        (slanted_reading(whole(7), 3, inch, whole(6)).err(), GeometryError::RuleTooShort { reading: whole(6), width: whole(7) }),
        (slanted_reading(whole(7), 5, inch, whole(9)).err(), GeometryError::NoReading { reading: whole(10), rule: whole(9), width: whole(7) }),
        (burned_inch(inches(3, 4), inch).err(), GeometryError::ShortOfTheLine { shown: inches(3, 4), line: inch }),
        (burned_inch(Length::MAX, less).err(), OutOfRange { length: Length::MAX }),
        (Hook::new(less).inside(inch).err(), BelowZero { what: "the slide of a hook", given: less }),
        (Hook::new(less).slide(inch).inside(inch).err(), BelowZero { what: "the thickness of a hook", given: less }),
    ];
    for (place, (refused, expected)) in rows.into_iter().enumerate() {
        assert_eq!(refused, Some(expected), "row {place}");
    }
}

#[test]
#[rustfmt::skip]
fn refusals_in_words() {
    let rows = [
        (GeometryError::NotAboveZero { what: "a side", given: whole(-1) }, "a side cannot be -1\": it must be above zero"),
        (GeometryError::BelowZero { what: "a rabbet", given: inches(-1, 8) }, "a rabbet cannot be -1/8\": it must not be below zero"),
        (GeometryError::NotAStep { step: whole(0) }, "cannot round to a graduation of 0\": it must be above zero"),
        (
            GeometryError::NoSuchFrame { long: whole(9), short: whole(1), side: whole(4) },
            "diagonals of 9\" and 1\" do not go with a side of 4\": measure again",
        ),
        (
            GeometryError::NotATriple { short: 5, long: 6, across: 8 },
            "5-6-8 does not make a square corner: 5 squared and 6 squared are not 8 squared",
        ),
        (
            GeometryError::OutOfReach { triple: Triple::FIVE_TWELVE_THIRTEEN, unit: whole(12), first: whole(47), second: whole(40) },
            "5-12-13 in units of 12\" does not fit in 47\" by 40\", either way round",
        ),
        (GeometryError::TooFewSides { sides: 2 }, "a frame of 2 sides does not close: it needs 3 at least"),
        (
            GeometryError::NotAMiter { setting: Angle::fraction(181, 2) },
            "a miter cannot be set to 90 1/2°: it goes from 0°, a square cut, to less than 90°",
        ),
        (
            GeometryError::RabbetTooDeep { rabbet: whole(2), width: inches(3, 2) },
            "a rabbet of 2\" leaves nothing of stock 1 1/2\" wide",
        ),
        (
            GeometryError::NothingLeft { side: whole(3), depth: whole(2), setting: Angle::degrees(45) },
            "a side of 3\" has no inner edge 2\" further in: mitered at 45°, its ends meet before",
        ),
        (
            GeometryError::TooCloseToCall { length: whole(3), step: inches(1, 16) },
            "what follows from 3\" lies too near to the middle or the end of a graduation of 1/16\" to say which is right",
        ),
        (GeometryError::ZeroStrips, "a board cannot be divided into zero strips"),
        (
            GeometryError::RuleTooShort { reading: whole(6), width: inches(31, 4) },
            "a rule that reads 6\" does not reach across a board 7 3/4\" wide",
        ),
        (
            GeometryError::NoReading { reading: whole(10), rule: whole(9), width: whole(7) },
            "the least reading that divides as asked across 7\" is 10\", past the end of a rule 9\" long",
        ),
        (
            GeometryError::ShortOfTheLine { shown: inches(3, 4), line: whole(1) },
            "the tape shows 3/4\", short of the 1\" that it is read from",
        ),
        (
            GeometryError::OverlapTooLong { measure: whole(40), overlap: whole(41) },
            "measures of 40\" from both ends cannot overlap by 41\": each would start past the other end",
        ),
        (
            GeometryError::OutOfRange { length: whole(3) },
            "what follows from 3\" is out of range: longer, or more finely divided, than a length can hold",
        ),
    ];
    for (error, text) in rows {
        assert_eq!(error.to_string(), text);
    }
}
