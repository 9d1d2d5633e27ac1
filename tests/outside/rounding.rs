//! Rounding against published examples in `data/rounding_examples.csv` and `data/fraction_mm.csv`, and by published rules.
//!
//! Sources: E29, APA-EU and IOWA, ASTM E29, PS 1 and the half-up variant of E29, as quoted by a testing
//! manual, APA Europe and Iowa DOT IM 202; EDRAW, British rules in Dimensions of Engineering Drawing;
//! CSA125, CSA B125.1 annex A; FAA, Maintenance Technician Handbook; ICS, The Building Trades Pocketbook;
//! SP811 and LC1137, NIST; KP44, printed conversion tables; HB44, NIST Handbook 44, section 10.3.

use crate::support::tables::{Row, figure, rows};
use scantling::{Length, Rounding, RoundingMode, Unit};

const NEAREST: [RoundingMode; 3] = [RoundingMode::TiesUp, RoundingMode::TiesEven, RoundingMode::TiesAway];

fn rounded(row: &Row, mode: RoundingMode) -> Length {
    figure(&row["value"]).round(Rounding::to(figure(&row["increment"])).mode(mode)).unwrap()
}

#[test]
fn published_examples() {
    let (agreeing, misprints): (Vec<Row>, Vec<Row>) =
        rows("rounding_examples.csv").into_iter().partition(|row| row["agrees"] == "yes");
    assert_eq!((agreeing.len(), misprints.len()), (62, 1));
    for row in agreeing {
        let modes = match row["rule"].as_str() {
            "half-even" => &[RoundingMode::TiesEven][..],
            "half-up" => &[RoundingMode::TiesUp, RoundingMode::TiesAway],
            "nearest" => &NEAREST,
            unknown => panic!("what is {unknown}?"),
        };
        for mode in modes {
            assert_eq!(rounded(&row, *mode), figure(&row["printed_result"]), "{mode:?}, {row:?}");
        }
    }
}

#[test]
fn published_examples_part_the_modes() {
    // Where the table says which rules lead to the printed result, the others must not.
    let named = [("even", RoundingMode::TiesEven), ("up", RoundingMode::TiesUp)];
    let named = named.into_iter().chain([("floor", RoundingMode::Down), ("ceil", RoundingMode::Up)]);
    for row in rows("rounding_examples.csv").into_iter().filter(|row| row["recomputed_modes_or_value"].contains('+')) {
        for (name, mode) in named.clone() {
            let leads = row["recomputed_modes_or_value"].split('+').any(|other| other == name);
            assert_eq!(rounded(&row, mode) == figure(&row["printed_result"]), leads, "{name}, {row:?}");
        }
    }
}

#[test]
fn the_misprint_is_one() {
    // A table of millimeters in sixteenths prints 0 for 1 mm, which is 0.63 of a sixteenth.
    let row = rows("rounding_examples.csv").into_iter().find(|row| row["agrees"] == "NO").unwrap();
    let (value, printed, sixteenth) = (figure(&row["value"]), figure(&row["printed_result"]), figure("1/16"));
    assert_eq!((value, printed), (Length::new(1, Unit::Millimeter), Length::ZERO));
    for mode in NEAREST {
        assert_eq!(rounded(&row, mode), sixteenth, "{mode:?}");
    }
    assert!((value - sixteenth).abs() < (value - printed).abs(), "the printed figure is not the nearest");
}

#[test]
fn sixty_fourths_in_millimeters() {
    // Charts printed from floats have six of these wrong by one in the last place.
    let place = Length::fraction(1, 10_000, Unit::Millimeter);
    let rows = rows("fraction_mm.csv");
    assert_eq!(rows.len(), 64);
    for row in rows {
        let value = figure(&row["fraction"]);
        let in_millimeters = |column: &str| figure(&format!("{} mm", row[column]));
        assert_eq!(value, figure(&row["exact_decimal"]), "{row:?}");
        assert_eq!(value, in_millimeters("exact_mm_decimal"), "{row:?}");
        assert_eq!(value.round(place), Ok(in_millimeters("mm_4dp_half_up")), "{row:?}");
        let even = Rounding::to(place).mode(RoundingMode::TiesEven);
        assert_eq!(value.round(even), Ok(in_millimeters("mm_4dp_half_even")), "{row:?}");
    }
}

#[test]
fn a_tie_on_a_scale_goes_to_the_even_graduation() {
    // The rule is of HB44, the lines are worked by hand: odd thirty-seconds, in sixteenths.
    let even = Rounding::to(Length::fraction(1, 16, Unit::Inch)).mode(RoundingMode::TiesEven);
    for (thirty_seconds, sixteenths) in
        [(1, 0), (3, 2), (5, 2), (7, 4), (9, 4), (29, 14), (31, 16), (-1, 0), (-3, -2), (-5, -2), (-7, -4)]
    {
        let value = Length::fraction(thirty_seconds, 32, Unit::Inch);
        assert_eq!(value.round(even), Ok(Length::fraction(sixteenths, 16, Unit::Inch)), "{thirty_seconds}/32");
    }
}
