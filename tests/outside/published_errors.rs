//! Figures that were printed wrong, kept so that none of them is ever copied as an expected value: for each the crate gives the right
//! one, and not the printed one. `data/published_errors.csv` says what is wrong and, where it can be told, how it came about.
//!
//! Sources, as named in the file: AMS is a metal supplier's fraction chart (undated); NAV14044 NAVEDTRA 14044, "Builder"; WH13 the Wood
//! Handbook, FPL-GTR-190 (2010), chapter 13; APA-EU-OSB APA Europe, "OSB Thickness and Performance Category"; KP44 and EHOW how-to pages;
//! KCMA the cabinet tests of A161.1, retold; IATSE a trade test's mathematics; MST a course on timber structures; OSX `OpenStax` Prealgebra
//! 2e; BHE a page on proportions; MCENT Math Central, University of Regina (2009).

use crate::support::tables::{figure, rows};
use num_rational::Ratio;
use scantling::{Catalog, End, Length, Nominal, PanelRow, Spacing, Tally, TallyRule, Unit};

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

/// A plain number as so many inches, the measure of every cell in the file.
fn plain(number: Ratio<i128>) -> Length {
    Length::try_from_ratio(number, Unit::Inch).unwrap()
}

fn category(size: Length) -> PanelRow {
    Catalog::new().actual(&Nominal::panel(size)).unwrap().panel().unwrap()
}

fn worked_out(id: &str) -> Length {
    let in_millimeters = |length: Length| plain(length.in_unit(Unit::Millimeter));
    match id {
        "ams-35" => inches(35, 64),
        "nav-33" => {
            let board = Nominal::softwood(inches(1, 1), inches(7, 1)).long(inches(33 * 12, 1));
            plain(Tally::new(TallyRule::Exact).add(&board, 1).unwrap().board_feet().unwrap().checked_in_board_feet().unwrap())
        }
        "wh-232" => Length::new(232, Unit::Millimeter),
        "osb-min" => category(inches(1, 4)).minimum(),
        "osb-max" => category(inches(19, 32)).maximum(),
        "kp-1mm" => Length::new(1, Unit::Millimeter),
        "kcma-sag" => Length::fraction(16, 10, Unit::Millimeter),
        "ehow-gap" => Spacing::equal_openings(15, inches(2, 1)).over(inches(75, 1)).unwrap().opening(),
        "iatse-a" => inches(89, 16) + inches(31, 8) - inches(72_369, 10_000) + inches(119, 12),
        "mst-b" => inches(53, 4) * Ratio::new(100_000 - 3_881, 100_000) / Ratio::new(100_000 - 1_946, 100_000),
        "osx-kili" => plain(Length::new(5895, Unit::Meter).in_unit(Unit::Foot)),
        // The other way round: four gaps and the far one are given, the width is what one opening comes to.
        "bhe-slat" => {
            let gaps = Spacing::equal_openings(5, inches(28_375, 10_000));
            gaps.near_end(End::Flush).far_end(End::Flush).over(inches(575, 16)).unwrap().opening()
        }
        "mcent-20" => Spacing::equal_parts(3).over(inches(240, 1)).unwrap().opening(),
        "s2s-54" => in_millimeters(inches(17, 16)),
        "s2s-58" => in_millimeters(inches(7, 16)),
        _ => panic!("nothing worked out for {id}"),
    }
}

#[test]
fn every_misprint_is_one() {
    let rows = rows("published_errors.csv");
    for row in &rows {
        let value = worked_out(&row["id"]).round(figure(&row["step"])).unwrap();
        assert_eq!(value, figure(&row["correct"]), "{row:?}");
        assert_ne!(value, figure(&row["printed"]), "{row:?}");
    }
    assert_eq!(rows.len(), 15);
}
