//! The midpoints between 64ths, odd 128ths, in decimals to four places, against `data/ics_midpoints_128ths.csv`.
//!
//! Source, as named in the file: ICS is "The Building Trades Pocketbook" of the International Correspondence Schools, decimal equivalents
//! of 64ths (about 1900). Sixteen of its 64 midpoints are one too high in the last place, because they were taken between neighbors that
//! had been rounded already; the column `correct_4dp` was worked out apart from this crate.

use crate::support::tables::{figure, rows};
use scantling::{Length, LengthPrinter, Places, Rounding, RoundingMode, Style, Unit};

const PLACE: Length = Length::fraction(1, 10_000, Unit::Inch);

#[test]
fn every_midpoint_and_the_sixteen_misprints() {
    let rows = rows("ics_midpoints_128ths.csv");
    let decimals = LengthPrinter::new().style(Style::DecimalInches);
    let mut misprints = 0;
    for row in &rows {
        let midpoint = Length::fraction(row["k128"].parse().unwrap(), 128, Unit::Inch);
        assert_eq!(midpoint.to_string(), format!("{}\"", row["fraction"]));
        assert_eq!(decimals.show(midpoint).unwrap().to_string(), format!("{}\"", row["exact_decimal"]));
        // Seven places that end in 5: a tie at four never arises, so every nearest mode gives the same.
        for mode in [RoundingMode::TiesUp, RoundingMode::TiesEven, RoundingMode::TiesAway] {
            let rounded = midpoint.round(Rounding::to(PLACE).mode(mode)).unwrap();
            let text = decimals.places(Places::Exactly(4)).show(rounded).unwrap().to_string();
            assert_eq!(text, format!("{}\"", row["correct_4dp"]), "{mode:?}");
        }
        let is_right = midpoint.round(PLACE).unwrap() == figure(&format!("0{}", row["printed"]));
        assert_eq!(is_right, row["printed_is_correct"] == "yes", "{row:?}");
        misprints += usize::from(!is_right);
    }
    assert_eq!((rows.len(), misprints), (64, 16));
}

/// Twice rounded as the book did it: both neighbors to four places, and the mean of those once more.
#[test]
fn how_the_misprints_came_about() {
    for row in rows("ics_midpoints_128ths.csv") {
        let count: i64 = row["k128"].parse().unwrap();
        let neighbor = |count| Length::fraction(count, 128, Unit::Inch).round(PLACE).unwrap();
        let mean = (neighbor(count - 1) + neighbor(count + 1)) / 2;
        assert_eq!(mean.round(PLACE).unwrap(), figure(&format!("0{}", row["printed"])), "{row:?}");
    }
}
