//! Units against their published definitions. Exact conversion of any length is left to
//! `tests/arithmetic.rs`.
//!
//! Sources: IYP1959, the international yard and pound agreement; FR2020, 85 FR 62698; ICS, The Building
//! Trades Pocketbook; HAWKINS, Self-Help Mechanical Drawing.

use num_rational::Ratio;
use scantling::{Length, Unit};

use crate::support::tables::rows;

#[test]
fn units_are_as_published() {
    let mut checked = 0;
    for row in rows("units_exact.csv") {
        let figure = |column: &str| row[column].parse::<i128>().unwrap();
        let expected = Ratio::new(figure("mm_numerator"), figure("mm_denominator"));
        let foot = Length::new(1, Unit::Foot);
        let got = match row["unit"].as_str() {
            "inch" => Length::new(1, Unit::Inch).in_unit(Unit::Millimeter),
            "foot" => foot.in_unit(Unit::Millimeter),
            "yard" => Length::new(1, Unit::Yard).in_unit(Unit::Millimeter),
            "1/64 inch" => Length::fraction(1, 64, Unit::Inch).in_unit(Unit::Millimeter),
            // Its figure is in cubic inches.
            "board foot" => (foot * foot * Length::new(1, Unit::Inch)).checked_in_cubic(Unit::Inch).unwrap(),
            // Left out of the crate on purpose: retired at the end of 2022 by the notice it is quoted from.
            "US survey foot" => continue,
            unknown => panic!("what is a {unknown}?"),
        };
        assert_eq!(got, expected, "{}, printed {} in {}", row["unit"], row["printed"], row["source"]);
        checked += 1;
    }
    assert_eq!(checked, 5);
}

#[test]
fn each_unit_in_each_other() {
    // From the definitions alone, worked by hand: micrometers in one of each unit.
    let micrometers = [25_400, 304_800, 914_400, 1_000, 10_000, 1_000_000];
    for (from, own) in Unit::ALL.into_iter().zip(micrometers) {
        for (to, other) in Unit::ALL.into_iter().zip(micrometers) {
            assert_eq!(Length::new(1, from).in_unit(to), Ratio::new(own, other), "{from:?} in {to:?}");
        }
    }
}
