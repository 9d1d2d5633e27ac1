//! How shelves sag and boards move, against published figures.
//!
//! Sources: `data/shelf_spans_aws.csv` is Architectural Woodwork Standards, edition 1 (2009), 4.4.14; `data/wood_moe.csv` and
//! `data/wood_coeffs.csv` name theirs line by line (the Wood Handbook, FPL-GTR-190, for the most part), and say which figures are
//! from memory. The examples of movement are named where they stand.

use csv::{Reader, StringRecord};
use num_rational::Ratio;
use scantling::{
    CaseworkError, Length, LoadedShelf, Modulus, Movement, SagLimit, Seen, ShelfLoad, Unit, all_species, material, materials,
    species,
};

fn rows(table: &'static str) -> Vec<StringRecord> {
    Reader::from_reader(table.as_bytes()).records().map(Result::unwrap).collect()
}

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

/// A decimal as it is printed.
fn decimal(text: &str) -> Ratio<i128> {
    let (whole, part) = text.split_once('.').unwrap_or((text, ""));
    let den = 10_i128.pow(u32::try_from(part.len()).unwrap());
    Ratio::new(format!("{whole}{part}").parse().unwrap(), den)
}

/// Of the twelve printed lengths eleven are the whole inches of the exact ones; the twelfth, 45.98, is printed as 46.
#[test]
fn printed_shelf_lengths() {
    let rows = rows(include_str!("../data/shelf_spans_aws.csv"));
    for row in &rows {
        let thickness = if &row[2] == "1" { inches(1, 1) } else { inches(3, 4) };
        let load = ShelfLoad::new(decimal(&row[3]));
        let shelf = LoadedShelf::new(thickness, Modulus::psi(row[1].parse().unwrap()), load).unwrap();
        let longest = |step| shelf.greatest_span(SagLimit::STANDARD, step).unwrap();
        let (printed, floor): (i64, i64) = (row[5].parse().unwrap(), row[7].parse().unwrap());
        assert_eq!(longest(inches(1, 1)), inches(floor, 1), "{row:?}");
        assert_eq!(printed != floor, row[8].starts_with("no"), "{row:?}");
        // The file's exact length has two decimals, to the nearest.
        let off = longest(inches(1, 1000)).in_unit(Unit::Inch) - decimal(&row[6]);
        assert!(Ratio::new(-6, 1000) <= off && off <= Ratio::new(5, 1000), "{row:?}");
    }
    assert_eq!(rows.len(), 12);
}

#[test]
fn the_greatest_span_is_just_within_the_limit() {
    let step = inches(1, 16);
    for (thickness, modulus, load) in materials().flat_map(|material| {
        [(inches(3, 4), ShelfLoad::KITCHEN), (inches(23, 32), ShelfLoad::LIBRARY), (inches(5, 4), ShelfLoad::of_pounds(100, 3))]
            .map(|(thickness, load)| (thickness, material.modulus(), load))
    }) {
        let shelf = LoadedShelf::new(thickness, modulus, load).unwrap();
        for limit in [SagLimit::STANDARD, SagLimit::SEEN, SagLimit::FINE] {
            let span = shelf.greatest_span(limit, step).unwrap();
            let is_within = |span| shelf.sag(span).unwrap() * i64::from(limit.parts()) <= span;
            assert!(is_within(span) && !is_within(span + step), "{shelf:?} {limit:?} {span}");
        }
    }
}

/// Worked by hand from the formula: load and stiffness in proportion, the span to the fourth power, the thickness to the third.
#[test]
fn sag_in_proportion() {
    let sag = |span, thickness, psi, load: i128| {
        LoadedShelf::new(thickness, Modulus::psi(psi), ShelfLoad::new(Ratio::from(load))).unwrap().sag(span).unwrap()
    };
    let one = sag(inches(24, 1), inches(3, 4), 1_000_000, 20);
    // 5 × (20/144) × 24⁴ / (32 × 1,000,000 × 27/64)
    assert_eq!(one, inches(32, 1875));
    for (other, times) in [
        (sag(inches(24, 1), inches(3, 4), 1_000_000, 40), (2, 1)),
        (sag(inches(24, 1), inches(3, 4), 2_000_000, 20), (1, 2)),
        (sag(inches(48, 1), inches(3, 4), 1_000_000, 20), (16, 1)),
        (sag(inches(24, 1), inches(3, 2), 1_000_000, 20), (1, 8)),
    ] {
        assert_eq!(other, one * Ratio::from(times));
    }
}

#[test]
fn every_stiffness_is_the_printed_one() {
    let rows = rows(include_str!("../data/wood_moe.csv"));
    for row in &rows {
        let found = material(&row[0]).unwrap();
        let modulus = match (&row[1], &row[2]) {
            (millions, "") => Modulus::psi((decimal(millions) * 1_000_000).to_integer().try_into().unwrap()),
            (_, megapascals) => Modulus::megapascals(megapascals.parse().unwrap()),
        };
        assert_eq!((found.name(), found.modulus()), (&row[0], modulus), "{row:?}");
        assert_eq!(found.source().seen() == Seen::FromMemory, &row[5] == "memory", "{row:?}");
    }
    assert_eq!(rows.len(), materials().count());
}

#[test]
fn every_coefficient_is_the_printed_one() {
    let rows = rows(include_str!("../data/wood_coeffs.csv"));
    for row in &rows {
        let found = species(&row[0]).unwrap();
        let coefficient = |text: &str| (!text.is_empty()).then(|| decimal(text));
        assert_eq!(found.radial().map(Movement::coefficient), coefficient(&row[2]), "{row:?}");
        assert_eq!(Some(found.tangential().coefficient()), coefficient(&row[3]), "{row:?}");
        assert_eq!(found.source().seen() == Seen::FromMemory, &row[10] == "memory", "{row:?}");
    }
    assert_eq!(rows.len(), all_species().count());
}

/// The fir is the example of the Wood Handbook, 13-18, its factor and step from memory; the mesquite a flooring chart's;
/// the last two a magazine's (red alder) and a course's (problem 4.34, 0.2 percent a point).
#[test]
fn worked_examples_of_movement() {
    for (coefficient, width, from, to, change) in [
        (245, Length::new(232, Unit::Millimeter), 8, 11, Length::fraction(17_052, 10_000, Unit::Millimeter)), // + 1.7 mm
        (129, inches(5, 1), 6, 9, inches(1935, 100_000)),                                                     // 0.019 in
        (260, inches(8, 1), 6, 12, inches(1248, 10_000)),                                                     // .1248 in
        (200, inches(53, 4), 19, 10, inches(-2385, 10_000)),                                                  // 13.01 in is left
    ] {
        let changed = Movement::new(coefficient).change(width, Ratio::from(from), Ratio::from(to));
        assert_eq!(changed, Ok(change), "{coefficient}");
    }
}

#[test]
fn refusals() {
    let shelf =
        |thickness, psi, load| LoadedShelf::new(thickness, Modulus::psi(psi), ShelfLoad::new(load)).unwrap_err().to_string();
    let (inch, one) = (inches(1, 1), Ratio::from(1));
    let good = LoadedShelf::new(inch, Modulus::psi(1_000_000), ShelfLoad::OTHER).unwrap();
    for (said, expected) in [
        (shelf(-inch, 1, one), "a thickness cannot be -1\": it must be above zero"),
        (shelf(inch, 0, one), "a modulus of elasticity must be above zero"),
        (shelf(inch, 1, Ratio::from(0)), "a load must be above zero"),
        (shelf(inch, 1, Ratio::new_raw(1, 0)), "a load must be above zero"),
        (shelf(inch, 1, Ratio::new_raw(-1, 2)), "a load must be above zero"),
        (good.sag(Length::ZERO).unwrap_err().to_string(), "a span cannot be 0\": it must be above zero"),
        (good.sag(Length::MAX).unwrap_err().to_string(), "the figures are too large or too fine to be worked out exactly"),
        (
            good.greatest_span(SagLimit::FINE, 100 * inch).unwrap_err().to_string(),
            "even a span of 100\" sags more than the limit",
        ),
        (
            good.greatest_span(SagLimit::FINE, -inch).unwrap_err().to_string(),
            "a graduation cannot be -1\": it must be above zero",
        ),
        (
            Movement::new(1).change(Length::ZERO, one, one).unwrap_err().to_string(),
            "a width cannot be 0\": it must be above zero",
        ),
        (
            material("red birch").unwrap_err().to_string(),
            "no figure for `red birch`: another wood's figure would be a guess; there is `Alder, red`, `Birch, yellow`, `Birch, paper`, \
             `Maple, red`, `Red pine`",
        ),
        (species("").unwrap_err().to_string(), "no figure for ``: another wood's figure would be a guess; bring your own"),
    ] {
        assert_eq!(said, expected);
    }
    assert_eq!(
        LoadedShelf::new(inch, Modulus::psi(7), ShelfLoad::new(Ratio::new_raw(-2, -4))).map(|_| ()),
        Ok::<(), CaseworkError>(())
    );
}

/// Names are found in either order of their words, whatever the capitals.
#[test]
fn names_as_they_are_written() {
    for (written, name) in [
        ("Oak, northern red", "Oak, northern red"),
        ("northern red oak", "Oak, northern red"),
        ("YELLOW  BIRCH", "Birch, yellow"),
        ("douglas-fir", "Douglas-fir"),
    ] {
        assert_eq!(material(written).map(|found| found.name()), Ok(name));
    }
    assert!(material("oak").is_err() && material("red oak").is_err());
}
